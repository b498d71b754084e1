/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-openings.h"

#include <glib/gi18n.h>

#include "core/units.h"

/* A chord of a round outline strays no further than this from it. */
#define SAGITTA_MM 0.05

/* However small a hole is, it is taken hold of from so near its middle. */
#define LEAST_REACH_PX 5.0

/* So near the pointer takes hold of a point of an outline. */
#define POINT_REACH_PX 8.0

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

static void
add_points (GArray *edges, const BfFold *fold, const BfOpeningResult *result, guint index)
{
  for (guint i = 0; i < MIN (bf_opening_n_points (result->asked), BF_SELECTION_POINTS_MAX); i++)
    {
      BfVec2 p =
          bf_fold_face_point (fold, result->face, g_array_index (result->asked->points, BfVec2, i));
      BfSurfaceEdge edge = { .selection = bf_selection_opening_point ((int)result->face, index, i),
                             .blank = { p, p },
                             .formed = { p, p } };
      g_array_append_val (edges, edge);
    }
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
      add_points (edges, fold, result, (guint)index);
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
          index_of (fold, result) == (int)bf_selection_opening_index (selection) &&
          bf_selection_point_of_opening (selection) < (int)bf_opening_n_points (result->asked))
        return result;
    }
  return NULL;
}

BfVec2
bf_surface_opening_place (const BfOpening *opening, BfSelection selection)
{
  g_return_val_if_fail (opening != NULL, bf_vec2 (0.0, 0.0));

  int point = bf_selection_point_of_opening (selection);
  return point < 0 ? bf_opening_place_mm (opening) : g_array_index (opening->points, BfVec2, point);
}

gboolean
bf_surface_offers_points (BfSurfaceScene *scene, BfSelection opening)
{
  g_return_val_if_fail (scene != NULL, FALSE);

  BfSelection now = bf_surface_view_get_selection (bf_surface_scene_get_view (scene));
  return bf_selection_is_opening (now) &&
         bf_selection_is_same (bf_selection_whole_opening (now),
                               bf_selection_whole_opening (opening));
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
  int point = bf_selection_point_of_opening (selection);
  if (point >= 0)
    /* Translators: the number of a corner of a cut-out's outline; %s is where the cut-out is:
     * "front", "the base" */
    return g_strdup_printf (_ ("Point %d of the cut-out in %s"), point + 1, on);
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

void
bf_surface_opening_lines (const BfFold *fold, BfSelection selection, BfVec2 lines[2][2])
{
  const BfOpeningResult *result = bf_surface_opening_result (fold, selection);
  g_return_if_fail (result != NULL);

  BfVec2 axes[2];
  BfVec2 place = bf_surface_opening_place (result->asked, selection);
  BfVec2 at = bf_fold_face_point (fold, result->face, place);
  BfVec2 by = bf_vec2_sub (place, bf_surface_opening_datum (fold, selection));
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

/* Points are taken hold of where they are offered: those of the opening that one is busy with. */
static BfSelection
pick_point (BfSurfaceScene *scene, BfVec2 px, BfPicture picture)
{
  const GArray *edges = bf_surface_scene_get_edges (scene);

  for (guint i = 0; picture == BF_PICTURE_BLANK && i < edges->len; i++)
    {
      const BfSurfaceEdge *edge = bf_surface_edge (edges, i);
      BfVec2 at[2];
      if (bf_selection_is_opening (edge->selection) &&
          bf_selection_point_of_opening (edge->selection) >= 0 &&
          bf_surface_offers_points (scene, edge->selection) &&
          bf_surface_scene_edge_px (scene, edge, picture, at) &&
          bf_vec2_distance (px, at[0]) < POINT_REACH_PX)
        return edge->selection;
    }
  return BF_SELECTION_NONE;
}

BfSelection
bf_surface_openings_pick (BfSurfaceScene *scene, BfVec2 px, BfPicture picture)
{
  g_return_val_if_fail (scene != NULL, BF_SELECTION_NONE);

  const GArray *edges = bf_surface_scene_get_edges (scene);
  BfSelection point = edges != NULL ? pick_point (scene, px, picture) : BF_SELECTION_NONE;
  if (point.face >= 0)
    return point;
  for (guint i = 0; edges != NULL && i < edges->len; i++)
    {
      BfSelection selection = bf_surface_edge (edges, i)->selection;
      g_autoptr (GArray) outline = g_array_new (FALSE, FALSE, sizeof (BfVec2));
      if (bf_selection_is_opening (selection) && bf_selection_point_of_opening (selection) < 0 &&
          bf_surface_opening_px (scene, selection, picture, outline) && is_inside (outline, px) &&
          (picture == BF_PICTURE_BLANK || is_in_sight (scene, selection.face, outline)))
        return selection;
    }
  return BF_SELECTION_NONE;
}
