/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/field-places.h"

/* From an edge to the field beside it, and from field to field. */
#define BESIDE_PX 8.0
#define APART_PX 3.0

/* How far out it may be pushed to find room, and by how much at a time. */
#define STEP_PX 14.0
#define N_STEPS 7

typedef struct
{
  const BfFieldAsk *asks;
  guint n_asks;
  const BfBox *room;
  const GArray *keep_off; /* BfBox */
  GArray *taken;          /* BfBox */
} Search;

static gboolean
boxes_overlap (const BfBox *a, const BfBox *b, double apart)
{
  return a->min.x < b->max.x + apart && b->min.x < a->max.x + apart &&
         a->min.y < b->max.y + apart && b->min.y < a->max.y + apart;
}

static BfBox
box_at (BfVec2 centre, BfVec2 size)
{
  /* On whole pixels, so that words stay sharp. */
  BfVec2 min = bf_vec2 (round (centre.x - size.x / 2.0), round (centre.y - size.y / 2.0));
  return (BfBox){ min, bf_vec2_add (min, size) };
}

static void
corners_of (const BfBox *box, BfVec2 corners[4])
{
  corners[0] = box->min;
  corners[1] = bf_vec2 (box->max.x, box->min.y);
  corners[2] = box->max;
  corners[3] = bf_vec2 (box->min.x, box->max.y);
}

/* Which way round a strip runs: its sides' inner sides are all on that hand. */
static double
hand_of (const BfVec2 strip[4])
{
  return bf_polygon_area (strip, 4) >= 0.0 ? 1.0 : -1.0;
}

/* TRUE where a side of the strip has the whole box on its outer side. A strip's sides are the only
 * ones looked at: boxes beyond its pointed corners count as on it. */
static gboolean
is_off_strip (const BfBox *box, const BfVec2 strip[4])
{
  double hand = hand_of (strip);
  BfVec2 corners[4];

  corners_of (box, corners);
  for (guint i = 0; i < 4; i++)
    {
      BfVec2 side = bf_vec2_sub (strip[(i + 1) % 4], strip[i]);
      gboolean all_out = TRUE;
      for (guint k = 0; k < 4; k++)
        all_out = all_out && hand * bf_vec2_cross (side, bf_vec2_sub (corners[k], strip[i])) <= 0.0;
      if (all_out)
        return TRUE;
    }
  return FALSE;
}

static gboolean
is_in_strip (const BfBox *box, const BfVec2 strip[4])
{
  double hand = hand_of (strip);
  BfVec2 corners[4];

  corners_of (box, corners);
  for (guint i = 0; i < 4; i++)
    {
      BfVec2 side = bf_vec2_unit (bf_vec2_sub (strip[(i + 1) % 4], strip[i]));
      for (guint k = 0; k < 4; k++)
        if (hand * bf_vec2_cross (side, bf_vec2_sub (corners[k], strip[i])) < 2.0)
          return FALSE;
    }
  return TRUE;
}

static gboolean
overlaps_any (const BfBox *box, const GArray *boxes, double apart)
{
  for (guint i = 0; i < boxes->len; i++)
    if (boxes_overlap (box, &g_array_index (boxes, BfBox, i), apart))
      return TRUE;
  return FALSE;
}

static gboolean
is_free (const Search *search, const BfBox *box)
{
  return box->min.x >= search->room->min.x && box->max.x <= search->room->max.x &&
         box->min.y >= search->room->min.y && box->max.y <= search->room->max.y &&
         !overlaps_any (box, search->keep_off, 0.0) && !overlaps_any (box, search->taken, APART_PX);
}

static gboolean
is_off_metal (const Search *search, const BfBox *box)
{
  for (guint i = 0; i < search->n_asks; i++)
    if (!search->asks[i].inside && !is_off_strip (box, search->asks[i].strip))
      return FALSE;
  return TRUE;
}

static BfVec2
middle_of_strip (const BfVec2 strip[4])
{
  BfVec2 sum = bf_vec2 (0.0, 0.0);
  for (guint i = 0; i < 4; i++)
    sum = bf_vec2_add (sum, strip[i]);
  return bf_vec2_scale (sum, 0.25);
}

/* Beside the edge, aside of its middle by so much of its length, `further` away than it has to
 * be. */
static BfBox
beside (const BfFieldAsk *ask, BfVec2 size, double aside, double further)
{
  BfVec2 along = bf_vec2_sub (ask->edge[1], ask->edge[0]);
  BfVec2 middle = bf_vec2_along (ask->edge[0], along, 0.5 + aside);
  double reach = (fabs (ask->outward.x) * size.x + fabs (ask->outward.y) * size.y) / 2.0;
  double away = reach + BESIDE_PX + further;

  return box_at (bf_vec2_along (middle, ask->outward, ask->inside ? -away : away), size);
}

/* So far aside of an edge's middle, in its length, places are looked for. */
static const double asides[] = { 0.0, 0.25, -0.25, 0.4, -0.4, 0.15, -0.15 };

static gboolean
try_in_strip (const Search *search, const BfFieldAsk *ask, BfVec2 size, BfBox *box)
{
  BfVec2 along = bf_vec2_sub (ask->edge[1], ask->edge[0]);

  if (ask->inside)
    return FALSE;
  for (guint i = 0; i < G_N_ELEMENTS (asides); i++)
    {
      *box = box_at (bf_vec2_along (middle_of_strip (ask->strip), along, asides[i]), size);
      if (is_in_strip (box, ask->strip) && is_free (search, box))
        return TRUE;
    }
  return FALSE;
}

static gboolean
try_beside (const Search *search, const BfFieldAsk *ask, BfVec2 size, BfBox *box)
{
  for (guint i = 0; i < G_N_ELEMENTS (asides); i++)
    for (guint step = 0; step < N_STEPS; step++)
      {
        *box = beside (ask, size, asides[i], step * STEP_PX);
        if (is_free (search, box) && (ask->inside || is_off_metal (search, box)))
          return TRUE;
      }
  return FALSE;
}

static double
pushed_in (double least, double value, double most)
{
  return MAX (least, MIN (value, most));
}

/* What has to be seen is seen, on top of whatever is there. */
static BfBox
within_room (const Search *search, const BfFieldAsk *ask)
{
  BfBox box = beside (ask, ask->row, 0.0, 0.0);
  BfVec2 at = { pushed_in (search->room->min.x, box.min.x, search->room->max.x - ask->row.x),
                pushed_in (search->room->min.y, box.min.y, search->room->max.y - ask->row.y) };
  return (BfBox){ at, bf_vec2_add (at, ask->row) };
}

static void
place_one (const Search *search, const BfFieldAsk *ask, BfFieldPlace *place)
{
  /* Beside an upright edge a stack takes less of the room between the pictures. */
  gboolean stack_first = fabs (ask->outward.x) > fabs (ask->outward.y);
  BfVec2 first = stack_first ? ask->stack : ask->row;
  BfVec2 second = stack_first ? ask->row : ask->stack;
  BfBox box;

  *place = (BfFieldPlace){ .shown = TRUE };
  if (try_in_strip (search, ask, ask->row, &box))
    place->stacked = FALSE;
  else if (try_in_strip (search, ask, ask->stack, &box))
    place->stacked = TRUE;
  else if (try_beside (search, ask, first, &box))
    place->stacked = stack_first;
  else if (try_beside (search, ask, second, &box))
    place->stacked = !stack_first;
  else if (ask->must)
    box = within_room (search, ask);
  else
    place->shown = FALSE;
  place->at = box.min;
  if (place->shown)
    g_array_append_val (search->taken, box);
}

void
bf_field_ask_add (BfFieldAsk *ask, double width_px, double height_px)
{
  ask->row.x += width_px + (ask->row.x > 0.0 ? BF_FIELD_GAP_PX : 0.0);
  ask->row.y = MAX (ask->row.y, height_px);
  ask->stack.x = MAX (ask->stack.x, width_px);
  ask->stack.y += height_px;
}

void
bf_field_places (const BfFieldAsk *asks,
                 guint n_asks,
                 const BfBox *room,
                 const GArray *keep_off,
                 BfFieldPlace *places)
{
  g_return_if_fail (room != NULL && keep_off != NULL && (n_asks == 0 || places != NULL));

  g_autoptr (GArray) taken = g_array_new (FALSE, FALSE, sizeof (BfBox));
  Search search = { asks, n_asks, room, keep_off, taken };

  for (guint i = 0; i < n_asks; i++)
    place_one (&search, &asks[i], &places[i]);
}
