/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/openings.h"

/* Where an opening is drawn: its own x and y in the blank. */
typedef struct
{
  BfVec2 origin, x, y;
} Place;

static BfVec2
to_blank (const Place *place, double x, double y)
{
  return bf_vec2_along (bf_vec2_along (place->origin, place->x, x), place->y, y);
}

/* The place of a face's openings. On a flange they are drawn at finished distances: along the bend
 * from the parent edge's start, and out from the drawn line. */
static Place
face_place (const BfFlap *flap)
{
  double shrink;

  if (flap == NULL)
    return (Place){ { 0.0, 0.0 }, { 1.0, 0.0 }, { 0.0, 1.0 } };
  shrink = 2.0 * flap->sums.setback_mm - flap->sums.allowance_mm;
  return (Place){ bf_flap_at_v (flap, 0.0, -shrink), flap->flat_e, flap->flat_n };
}

/* The opening's own axes: x turned counter-clockwise, seen from the marking side, from the face's.
 */
static Place
opening_place (const Place *face, const BfOpening *opening)
{
  double a = isnan (opening->angle_deg) ? 0.0 : bf_deg_to_rad (opening->angle_deg);
  BfVec2 left = { -face->x.y, face->x.x };

  return (Place){ to_blank (face, opening->at_mm.x, opening->at_mm.y),
                  bf_vec2_along (bf_vec2_scale (face->x, cos (a)), left, sin (a)),
                  bf_vec2_along (bf_vec2_scale (left, cos (a)), face->x, -sin (a)) };
}

static void
add (BfRing *ring, const Place *place, double x, double y, double bulge)
{
  bf_ring_add (ring, to_blank (place, x, y), bulge);
}

static void
trace_round (BfRing *ring, const Place *place, double radius)
{
  add (ring, place, radius, 0.0, 1.0);
  add (ring, place, -radius, 0.0, 1.0);
}

static void
trace_slot (BfRing *ring, const Place *place, double length, double width)
{
  double x = MAX (length - width, 0.0) / 2.0, r = width / 2.0;

  add (ring, place, -x, -r, 0.0);
  add (ring, place, x, -r, 1.0);
  add (ring, place, x, r, 0.0);
  add (ring, place, -x, r, 1.0);
}

static void
trace_rectangle (BfRing *ring, const Place *place, double length, double width)
{
  double x = length / 2.0, y = width / 2.0;

  add (ring, place, -x, -y, 0.0);
  add (ring, place, x, -y, 0.0);
  add (ring, place, x, y, 0.0);
  add (ring, place, -x, y, 0.0);
}

/* A round with a narrow part that leads off along x and ends round, `length` from the centre. */
static void
trace_keyhole (BfRing *ring, const Place *place, const BfOpening *opening)
{
  double r = opening->diameter_mm / 2.0, y = MIN (opening->width_mm / 2.0, r);
  double from = sqrt (r * r - y * y), to = MAX (opening->length_mm - y, from);
  double open_rad = 2.0 * asin (y / r);

  add (ring, place, from, -y, 0.0);
  add (ring, place, to, -y, 1.0);
  add (ring, place, to, y, 0.0);
  add (ring, place, from, y, tan ((G_PI - open_rad / 2.0) / 4.0));
  add (ring, place, -r, 0.0, tan ((G_PI - open_rad / 2.0) / 4.0));
}

static void
trace_outline (BfRing *ring, const Place *face, const BfOpening *opening)
{
  for (guint i = 0; i < opening->points->len; i++)
    {
      BfVec2 p = g_array_index (opening->points, BfVec2, i);
      add (ring, face, p.x, p.y, 0.0);
    }
}

static BfRing *
trace (const BfOpening *opening, const Place *face)
{
  Place place = opening_place (face, opening);
  BfRing *ring = bf_ring_new ();

  switch (opening->shape)
    {
    case BF_OPENING_ROUND:
      trace_round (ring, &place, opening->diameter_mm / 2.0);
      break;
    case BF_OPENING_SLOT:
      trace_slot (ring, &place, opening->length_mm, opening->width_mm);
      break;
    case BF_OPENING_RECTANGLE:
      trace_rectangle (ring, &place, opening->length_mm, opening->width_mm);
      break;
    case BF_OPENING_KEYHOLE:
      trace_keyhole (ring, &place, opening);
      break;
    case BF_OPENING_OUTLINE:
    default:
      trace_outline (ring, face, opening);
      break;
    }
  bf_ring_make_counter_clockwise (ring);
  return ring;
}

/* The first point stays the first. */
static void
turn_points (GArray *points, double edge_length_mm)
{
  g_autoptr (GArray) old = g_array_copy (points);
  guint n = old->len;

  for (guint i = 0; i < n; i++)
    {
      BfVec2 p = g_array_index (old, BfVec2, (n - i) % n);

      g_array_index (points, BfVec2, i) = bf_vec2 (edge_length_mm - p.x, p.y);
    }
}

void
bf_openings_settle (const BfLayout *layout, BfPart *part)
{
  for (guint i = 0; i < part->openings->len; i++)
    {
      BfOpening *opening = g_ptr_array_index (part->openings, i);
      int flap = opening->from_end ? bf_layout_find_flap (layout, opening->on) : -1;

      if (flap < 0)
        continue;
      opening->from_end = FALSE;
      if (opening->points != NULL)
        turn_points (opening->points, layout->flaps[flap].edge_length_mm);
      else
        opening->at_mm.x = layout->flaps[flap].edge_length_mm - opening->at_mm.x;
    }
}

void
bf_openings_find (const BfLayout *layout, GArray *openings)
{
  const GPtrArray *asked = layout->part->openings;

  for (guint i = 0; i < asked->len; i++)
    {
      const BfOpening *opening = g_ptr_array_index (asked, i);
      int index = bf_layout_find_flap (layout, opening->on);
      const BfFlap *flap = index >= 0 ? &layout->flaps[index] : NULL;
      Place face = face_place (flap != NULL && flap->placed ? flap : NULL);
      BfOpeningResult result = { (guint)(index + 1), opening, NULL };

      if ((flap == NULL && strcmp (opening->on, "base") != 0) || (flap != NULL && !flap->placed))
        continue;
      result.ring = trace (opening, &face);
      g_array_append_val (openings, result);
    }
}

BfVec2
bf_fold_face_point (const BfFold *fold, guint face, BfVec2 at_mm)
{
  g_return_val_if_fail (fold != NULL && face < fold->faces->len, bf_vec2 (0.0, 0.0));

  const BfFlap *flap = face > 0 ? &fold->layout->flaps[face - 1] : NULL;
  if (flap != NULL && !flap->placed)
    return bf_vec2 (0.0, 0.0);
  Place place = face_place (flap);
  return to_blank (&place, at_mm.x, at_mm.y);
}
