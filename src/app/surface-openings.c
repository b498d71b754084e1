/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-openings.h"

#include <glib/gi18n.h>

#include "core/units.h"

/* A chord of a round outline strays no further than this from it. */
#define SAGITTA_MM 0.05

/* However small a hole is, it is taken hold of from so near its middle. */
#define LEAST_REACH_PX 5.0

/* Around a hole of the formed part its face is looked for so far from the rim, so many times. */
#define BESIDE_PX 3.0
#define N_LOOKS 8

/* Its place in the part's list; −1 for one that the person did not ask for. */
static int
index_of (const BfFold *fold, const BfOpeningResult *result)
{
  for (guint i = 0; i < fold->part->openings->len && i < fold->asked->openings->len; i++)
    if (g_ptr_array_index (fold->part->openings, i) == result->asked)
      return (int)i;
  return -1;
}

static BfBox
box_of (const BfOpeningResult *result)
{
  BfBox box = bf_box_empty ();
  bf_ring_extend_box (result->ring, &box);
  return box;
}

void
bf_surface_openings_add (GArray *edges, const BfFold *fold, guint face)
{
  g_return_if_fail (edges != NULL && fold != NULL);

  for (guint i = 0; i < fold->openings->len; i++)
    {
      const BfOpeningResult *result = bf_fold_opening (fold, i);
      int index = index_of (fold, result);
      if (result->face != face || index < 0)
        continue;
      BfBox box = box_of (result);
      BfSurfaceEdge edge = { .selection = bf_selection_opening ((int)face, (guint)index),
                             .blank = { box.min, box.max },
                             .formed = { box.min, box.max } };
      g_array_append_val (edges, edge);
    }
}

const BfOpeningResult *
bf_surface_opening_result (const BfFold *fold, BfSelection selection)
{
  if (fold == NULL || !bf_selection_is_opening (selection))
    return NULL;
  for (guint i = 0; i < fold->openings->len; i++)
    {
      const BfOpeningResult *result = bf_fold_opening (fold, i);
      if ((int)result->face == selection.face &&
          index_of (fold, result) == (int)bf_selection_opening_index (selection))
        return result;
    }
  return NULL;
}

/* Translators: %s is where it is: "front", "the base" */
static const char *const names[] = {
  [BF_OPENING_ROUND] = N_ ("Hole in %s"),          [BF_OPENING_SLOT] = N_ ("Slot in %s"),
  [BF_OPENING_RECTANGLE] = N_ ("Rectangle in %s"), [BF_OPENING_KEYHOLE] = N_ ("Keyhole in %s"),
  [BF_OPENING_OUTLINE] = N_ ("Cut-out in %s"),
};

char *
bf_surface_opening_name (const BfFold *fold, BfSelection selection)
{
  const BfOpeningResult *result = bf_surface_opening_result (fold, selection);
  g_return_val_if_fail (result != NULL, g_strdup (""));

  const BfOpening *opening = result->asked;
  const char *on = result->face == 0 ? _ ("the base") : opening->on;
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wformat-nonliteral"
  g_autofree char *name = g_strdup_printf (_ (names[opening->shape]), on);
#pragma GCC diagnostic pop
  double size = opening->shape == BF_OPENING_ROUND ? opening->diameter_mm : opening->length_mm;
  if (opening->shape == BF_OPENING_OUTLINE)
    return g_steal_pointer (&name);
  g_autofree char *length = bf_format_length (size, fold->part->units);
  return g_strdup_printf ("%s, %s", name, length);
}

static const BfBendResult *
bend_under (const BfFold *fold, int face)
{
  return bf_fold_bend (fold, (guint)bf_fold_face (fold, (guint)face)->bend);
}

void
bf_surface_opening_axes (const BfFold *fold, BfSelection selection, BfVec2 axes[2])
{
  g_return_if_fail (fold != NULL && bf_selection_is_opening (selection));

  axes[0] = bf_vec2 (1.0, 0.0);
  axes[1] = bf_vec2 (0.0, 1.0);
  if (selection.face == 0)
    return;
  const BfBendResult *bend = bend_under (fold, selection.face);
  axes[0] = bf_vec2_unit (bf_vec2_sub (bend->zone[1], bend->zone[0]));
  axes[1] = bf_vec2 (axes[0].y, -axes[0].x);
}

BfVec2
bf_surface_opening_datum (const BfFold *fold, BfSelection selection)
{
  g_return_val_if_fail (fold != NULL, bf_vec2 (0.0, 0.0));

  BfBox box = bf_box_empty ();
  if (selection.face != 0)
    return bf_vec2 (0.0, 0.0);
  for (guint i = 0; i < bf_part_n_points (fold->part); i++)
    bf_box_extend (&box, bf_part_point (fold->part, i));
  return box.min;
}

/* Where the point that its place names lies in the blank. */
static BfVec2
place_in_blank (const BfOpeningResult *result)
{
  const BfOpening *opening = result->asked;
  BfBox box = box_of (result);

  if (opening->shape == BF_OPENING_KEYHOLE && bf_ring_size (result->ring) == 5)
    {
      /* The far side of its round is one of the ring's points, and lies opposite the narrow end. */
      BfVec2 far = bf_ring_vertex (result->ring, 4)->p;
      BfVec2 end = bf_vec2_scale (
          bf_vec2_add (bf_ring_vertex (result->ring, 1)->p, bf_ring_vertex (result->ring, 2)->p),
          0.5);
      return bf_vec2_along (far, bf_vec2_unit (bf_vec2_sub (end, far)), opening->diameter_mm / 2.0);
    }
  return bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);
}

void
bf_surface_opening_lines (const BfFold *fold, BfSelection selection, BfVec2 lines[2][2])
{
  const BfOpeningResult *result = bf_surface_opening_result (fold, selection);
  g_return_if_fail (result != NULL);

  BfVec2 axes[2];
  BfVec2 at = place_in_blank (result);
  BfVec2 by =
      bf_vec2_sub (bf_opening_place_mm (result->asked), bf_surface_opening_datum (fold, selection));
  bf_surface_opening_axes (fold, selection, axes);
  /* A bend takes some of the distance out from the drawn line: the bend line stands for it. */
  if (selection.face > 0)
    by.y = bf_vec2_dot (bf_vec2_sub (at, bend_under (fold, selection.face)->line[0]), axes[1]);
  lines[0][0] = bf_vec2_along (at, axes[0], -by.x);
  lines[1][0] = bf_vec2_along (at, axes[1], -by.y);
  lines[0][1] = lines[1][1] = at;
}

gboolean
bf_surface_opening_px (BfSurfaceScene *scene, BfSelection selection, BfPicture picture, GArray *px)
{
  g_return_val_if_fail (scene != NULL && px != NULL, FALSE);

  const BfOpeningResult *result =
      bf_surface_opening_result (bf_surface_scene_get_fold (scene), selection);
  if (result == NULL)
    return FALSE;
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  bf_ring_flatten (result->ring, SAGITTA_MM, points);
  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 at;
      if (!bf_surface_scene_point_px (scene, result->face, g_array_index (points, BfVec2, i),
                                      picture, &at))
        return FALSE;
      g_array_append_val (px, at);
    }
  return px->len > 2;
}

static BfVec2
middle_of (const GArray *px)
{
  BfBox box = bf_box_empty ();
  for (guint i = 0; i < px->len; i++)
    bf_box_extend (&box, g_array_index (px, BfVec2, i));
  return bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);
}

static gboolean
is_inside (const GArray *px, BfVec2 p)
{
  gboolean inside = bf_vec2_distance (middle_of (px), p) < LEAST_REACH_PX;
  gboolean odd = FALSE;

  for (guint i = 0; i < px->len; i++)
    {
      BfVec2 a = g_array_index (px, BfVec2, i);
      BfVec2 b = g_array_index (px, BfVec2, (i + 1) % px->len);
      if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x))
        odd = !odd;
    }
  return inside || odd;
}

/* A hole shows what is behind it; that it is seen itself, the face round it tells. */
static gboolean
is_in_sight (BfSurfaceScene *scene, int face, const GArray *px)
{
  BfVec2 middle = middle_of (px);
  guint seen = 0;

  for (guint i = 0; i < N_LOOKS; i++)
    {
      BfVec2 rim = g_array_index (px, BfVec2, i * px->len / N_LOOKS);
      BfVec2 away = bf_vec2_unit (bf_vec2_sub (rim, middle));
      if (bf_surface_scene_pick_formed (scene, bf_vec2_along (rim, away, BESIDE_PX)) == face)
        seen++;
    }
  return 2 * seen >= N_LOOKS;
}

BfSelection
bf_surface_openings_pick (BfSurfaceScene *scene, BfVec2 px, BfPicture picture)
{
  g_return_val_if_fail (scene != NULL, BF_SELECTION_NONE);

  const GArray *edges = bf_surface_scene_get_edges (scene);
  for (guint i = 0; edges != NULL && i < edges->len; i++)
    {
      BfSelection selection = bf_surface_edge (edges, i)->selection;
      g_autoptr (GArray) outline = g_array_new (FALSE, FALSE, sizeof (BfVec2));
      if (bf_selection_is_opening (selection) &&
          bf_surface_opening_px (scene, selection, picture, outline) && is_inside (outline, px) &&
          (picture == BF_PICTURE_BLANK || is_in_sight (scene, selection.face, outline)))
        return selection;
    }
  return BF_SELECTION_NONE;
}
