/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/edge-edits.h"
#include "app/opening-edits.h"
#include "app/surface-drag.h"
#include "app/surface-openings.h"
#include "core/part-file.h"
#include "surface-bench.h"

/* Holes and cut-outs on the bench top: found under the pointer, named, added, dragged, nudged. */

#define CLOSE 1e-6

static const char text[] =
    "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1.5},"
    "\"base\": {\"outline\": [[10,20],[210,20],[210,140],[10,140]]},"
    "\"flanges\": [{\"id\": \"back\", \"on\": \"base\", \"edge\": 2, \"length\": 40, \"angle\": 90,"
    " \"turn\": \"up\"}],"
    "\"openings\": ["
    "{\"on\": \"base\", \"shape\": \"round\", \"at\": [60, 60], \"diameter\": 20},"
    "{\"on\": \"back\", \"shape\": \"slot\", \"at\": [50, 20], \"length\": 30, \"width\": 10},"
    "{\"on\": \"base\", \"shape\": \"outline\", \"points\": [[150,50],[190,50],[170,90]]},"
    "{\"on\": \"base\", \"shape\": \"keyhole\", \"at\": [60, 100], \"diameter\": 12, \"length\": "
    "15,"
    " \"width\": 6, \"angle\": 90}]}";

static BfDocument *
drilled (void)
{
  g_autoptr (BfPart) part = bf_part_from_text (text, -1, NULL);
  BfDocument *document = bf_document_new ();

  bf_document_set_part (document, part, NULL);
  return document;
}

static const BfOpening *
opening (const Bench *bench, guint i)
{
  return g_ptr_array_index (bf_document_get_part (bench->document)->openings, i);
}

static BfSelection
selection (const Bench *bench, guint i)
{
  int face = bf_fold_find_face (bf_document_get_fold (bench->document), opening (bench, i)->on);
  return bf_selection_opening (face, i);
}

static const char *const names[] = { "Hole in the base, 20 mm", "Slot in back, 30 mm",
                                     "Cut-out in the base", "Keyhole in the base, 15 mm" };

static void
test_all_are_there_and_named (void)
{
  Bench bench;
  bench_init (&bench, drilled ());
  const GArray *edges = bf_surface_scene_get_edges (bench.scene);

  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      int at = bf_surface_edges_find (edges, selection (&bench, i));
      g_assert_cmpint (at, >=, 0);
      g_autofree char *name = bf_surface_edge_name (bf_document_get_fold (bench.document),
                                                    bf_surface_edge (edges, (guint)at));
      g_assert_cmpstr (name, ==, names[i]);
    }
  bench_clear (&bench);
}

/* The middle of what is seen of an opening is taken for it in both pictures, unless metal hides it;
 * beside it its face is. */
static void
test_they_are_found_under_the_pointer (void)
{
  Bench bench;
  bench_init (&bench, drilled ());

  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    for (BfPicture picture = BF_PICTURE_BLANK; picture <= BF_PICTURE_FORMED; picture++)
      {
        g_autoptr (GArray) px = g_array_new (FALSE, FALSE, sizeof (BfVec2));
        BfVec2 sum = { 0.0, 0.0 };
        g_assert_true (bf_surface_opening_px (bench.scene, selection (&bench, i), picture, px));
        for (guint k = 0; k < px->len; k++)
          sum = bf_vec2_add (sum, g_array_index (px, BfVec2, k));
        BfVec2 middle = bf_vec2_scale (sum, 1.0 / px->len);
        BfSelection found = bf_surface_scene_pick (bench.scene, middle);
        g_assert_true (bf_selection_is_same (found, selection (&bench, i)));
      }
  BfVec2 beside = bf_surface_view_from_blank (bench.view, bf_vec2 (60.0, 75.0));
  g_assert_true (
      bf_selection_is_same (bf_surface_scene_pick (bench.scene, beside), (BfSelection){ 0, -1 }));
  bench_clear (&bench);
}

/* From below the base hides what stands on it. */
static void
test_what_is_hidden_is_not_found (void)
{
  Bench bench;
  bench_init (&bench, drilled ());
  g_autoptr (GArray) px = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  BfSelection slot = selection (&bench, 1);

  bf_surface_view_set_direction (bench.view, -G_PI_2, -1.2);
  g_assert_true (bf_surface_opening_px (bench.scene, slot, BF_PICTURE_FORMED, px));
  BfVec2 sum = { 0.0, 0.0 };
  for (guint k = 0; k < px->len; k++)
    sum = bf_vec2_add (sum, g_array_index (px, BfVec2, k));
  BfSelection found = bf_surface_scene_pick (bench.scene, bf_vec2_scale (sum, 1.0 / px->len));
  g_assert_false (bf_selection_is_same (found, slot));
  bench_clear (&bench);
}

/* The distances run from the base's least x and y, and on a flange from the edge's start and the
 * bend. */
static void
test_where_distances_are_measured_from (void)
{
  Bench bench;
  bench_init (&bench, drilled ());
  const BfFold *fold = bf_document_get_fold (bench.document);
  BfVec2 lines[2][2];

  bf_surface_opening_lines (fold, selection (&bench, 0), lines);
  g_assert_cmpfloat_with_epsilon (lines[0][0].x, 10.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (lines[1][0].y, 20.0, CLOSE);
  g_assert_cmpfloat (bf_vec2_distance (lines[0][1], bf_vec2 (60.0, 60.0)), <, CLOSE);
  bf_surface_opening_lines (fold, selection (&bench, 3), lines);
  g_assert_cmpfloat (bf_vec2_distance (lines[1][1], bf_vec2 (60.0, 100.0)), <, CLOSE);
  /* The back's edge runs from (210, 140) to the left. */
  bf_surface_opening_lines (fold, selection (&bench, 1), lines);
  g_assert_cmpfloat_with_epsilon (lines[0][0].x, 210.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (lines[0][1].x, 160.0, CLOSE);
  bench_clear (&bench);
}

static void
drag_by (Bench *bench, guint i, BfVec2 by_mm, gboolean finely)
{
  double scale = bf_surface_view_get_scale (bench->view);
  BfVec2 lines[2][2];

  bf_surface_opening_lines (bf_document_get_fold (bench->document), selection (bench, i), lines);
  BfVec2 px = bf_surface_view_from_blank (bench->view, lines[0][1]);
  BfSurfaceDrag *drag =
      bf_surface_drag_begin (bench->document, bench->scene, selection (bench, i), px);
  g_assert_nonnull (drag);
  for (guint k = 1; k <= 2; k++)
    {
      BfVec2 by = bf_vec2 (by_mm.x * scale * k / 2.0, -by_mm.y * scale * k / 2.0);
      bf_surface_drag_to (drag, bf_vec2_add (px, by), finely);
      g_assert_true (bf_surface_drag_follow (drag));
      bf_surface_scene_set_fold (bench->scene, bf_document_get_fold (bench->document));
    }
  bf_surface_drag_end (drag, FALSE);
}

typedef struct
{
  guint opening;
  BfVec2 by_mm, to_mm; /* dragged in the blank; where its place is then */
} DragCase;

static const DragCase drag_cases[] = {
  { 0, { 12.3, -7.4 }, { 72.0, 53.0 } },  /* to whole millimetres from the datum */
  { 0, { 49.4, 0.2 }, { 110.0, 60.0 } },  /* to the middle of the base, 110 */
  { 3, { 20.2, -40.3 }, { 80.0, 60.0 } }, /* level with the hole */
  { 2, { -20.2, 4.4 }, { 150.0, 74.0 } }, /* an outline by the middle of its box */
  { 1, { -14.6, 5.4 }, { 65.0, 25.0 } },  /* on the back, x runs the other way */
};

static void
test_each_is_dragged_to_whole_places (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (drag_cases); i++)
    {
      const DragCase *c = &drag_cases[i];
      Bench bench;
      bench_init (&bench, drilled ());
      BfPart *before = bf_document_get_part (bench.document);
      drag_by (&bench, c->opening, c->by_mm, FALSE);
      BfVec2 place = bf_opening_place_mm (opening (&bench, c->opening));
      g_assert_cmpfloat_with_epsilon (place.x, c->to_mm.x, CLOSE);
      g_assert_cmpfloat_with_epsilon (place.y, c->to_mm.y, CLOSE);
      g_assert_cmpstr (bf_document_get_undo_name (bench.document), ==, "Move a hole");
      bf_document_undo (bench.document);
      g_assert_true (bf_document_get_part (bench.document) == before);
      bench_clear (&bench);
    }
}

/* In the formed picture a pixel along the metal is as many millimetres as it is seen to be. */
static void
test_one_is_dragged_on_the_formed_part (void)
{
  Bench bench;
  bench_init (&bench, drilled ());
  BfSelection hole = selection (&bench, 0);
  BfVec2 from, to;
  g_assert_true (
      bf_surface_scene_point_px (bench.scene, 0, bf_vec2 (60.0, 60.0), BF_PICTURE_FORMED, &from));
  g_assert_true (
      bf_surface_scene_point_px (bench.scene, 0, bf_vec2 (85.1, 47.2), BF_PICTURE_FORMED, &to));
  BfSurfaceDrag *drag = bf_surface_drag_begin (bench.document, bench.scene, hole, from);

  bf_surface_drag_to (drag, to, FALSE);
  bf_surface_drag_end (drag, FALSE);
  BfVec2 place = bf_opening_place_mm (opening (&bench, 0));
  g_assert_cmpfloat (bf_vec2_distance (place, bf_vec2 (85.0, 47.0)), <, CLOSE);
  bench_clear (&bench);
}

/* An arrow moves it the way that it points in the blank, whatever way its face counts. */
static void
test_nudges_go_where_the_arrow_points (void)
{
  Bench bench;
  bench_init (&bench, drilled ());

  bf_opening_nudge (bench.document, selection (&bench, 0), bf_vec2 (1.0, 0.0), 1.0);
  bf_opening_nudge (bench.document, selection (&bench, 0), bf_vec2 (0.0, -1.0), 10.0);
  g_assert_cmpfloat (
      bf_vec2_distance (bf_opening_place_mm (opening (&bench, 0)), bf_vec2 (61.0, 50.0)), <, CLOSE);
  bf_document_undo (bench.document);
  g_assert_null (bf_document_get_undo_name (bench.document));
  bf_opening_nudge (bench.document, selection (&bench, 1), bf_vec2 (1.0, 0.0), 1.0);
  bf_opening_nudge (bench.document, selection (&bench, 1), bf_vec2 (0.0, 1.0), 1.0);
  g_assert_cmpfloat (
      bf_vec2_distance (bf_opening_place_mm (opening (&bench, 1)), bf_vec2 (49.0, 21.0)), <, CLOSE);
  bench_clear (&bench);
}

static const BfOpeningShape shapes[] = { BF_OPENING_ROUND, BF_OPENING_SLOT, BF_OPENING_RECTANGLE,
                                         BF_OPENING_KEYHOLE, BF_OPENING_OUTLINE };

/* Near a bare edge, in the middle of a flange, also from its side; each is one step that leaves
 * nothing to mend, and is selected. */
static void
test_each_shape_is_added (void)
{
  for (guint i = 0; i < 3 * G_N_ELEMENTS (shapes); i++)
    {
      Bench bench;
      bench_init (&bench, drilled ());
      int back = bf_fold_find_face (bf_document_get_fold (bench.document), "back");
      const BfSelection from[] = { { 0, 0 }, { back, BF_FLANGE_TIP }, { back, BF_FLANGE_END } };
      BfSelection then = bf_opening_add (bench.document, from[i % 3], shapes[i / 3]);
      const BfFold *fold = bf_document_get_fold (bench.document);
      const BfOpeningResult *made = bf_surface_opening_result (fold, then);

      g_assert_nonnull (made);
      g_assert_cmpint (made->asked->shape, ==, shapes[i / 3]);
      g_assert_cmpstr (made->asked->on, ==, i % 3 == 0 ? "base" : "back");
      g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
      bf_edge_do (bench.document, then, BF_OFFER_REMOVE);
      g_assert_cmpuint (bf_document_get_part (bench.document)->openings->len, ==, 4);
      bf_document_undo (bench.document);
      bf_document_undo (bench.document);
      g_assert_null (bf_document_get_undo_name (bench.document));
      bench_clear (&bench);
    }
}

static BfVec2
point_of (const Bench *bench, guint i, guint at)
{
  return g_array_index (opening (bench, i)->points, BfVec2, at);
}

/* Where each point of an outline is seen, its ring has a corner, on every face, also on one that
 * counts the other way; it is found there only while one is busy with that outline. */
static void
test_points_lie_on_their_outline (void)
{
  for (guint i = 0; i < 2; i++)
    {
      Bench bench;
      bench_init (&bench, drilled ());
      int back = bf_fold_find_face (bf_document_get_fold (bench.document), "back");
      BfSelection from = i == 0 ? (BfSelection){ 0, 0 } : (BfSelection){ back, BF_FLANGE_TIP };
      BfSelection whole = bf_opening_add (bench.document, from, BF_OPENING_OUTLINE);
      const BfFold *fold = bf_document_get_fold (bench.document);
      const BfRing *ring = bf_surface_opening_result (fold, whole)->ring;
      guint index = bf_selection_opening_index (whole);
      bf_surface_scene_set_fold (bench.scene, bf_document_get_fold (bench.document));
      const GArray *edges = bf_surface_scene_get_edges (bench.scene);
      for (guint k = 0; k < 4; k++)
        {
          BfSelection point = bf_selection_opening_point (whole.face, index, k);
          const BfSurfaceEdge *edge =
              bf_surface_edge (edges, (guint)bf_surface_edges_find (edges, point));
          BfVec2 px = bf_surface_view_from_blank (bench.view, edge->blank[0]);
          double nearest = HUGE_VAL;
          for (guint v = 0; v < bf_ring_size (ring); v++)
            nearest = MIN (nearest, bf_vec2_distance (bf_ring_vertex (ring, v)->p, edge->blank[0]));
          g_assert_cmpfloat (nearest, <, CLOSE);
          bf_surface_view_select (bench.view, BF_SELECTION_NONE);
          g_assert_false (bf_selection_is_same (bf_surface_scene_pick (bench.scene, px), point));
          bf_surface_view_select (bench.view, whole);
          g_assert_true (bf_selection_is_same (bf_surface_scene_pick (bench.scene, px), point));
        }
      g_assert_null (
          bf_surface_opening_result (fold, bf_selection_opening_point (whole.face, index, 4)));
      bench_clear (&bench);
    }
}

/* A point is nudged, put, made and taken away as what it is of is; each is a step. */
static void
test_points_are_edited (void)
{
  Bench bench;
  bench_init (&bench, drilled ());
  BfSelection first = bf_selection_opening_point (0, 2, 0);
  BfVec2 before = point_of (&bench, 2, 0);

  bf_opening_nudge (bench.document, first, bf_vec2 (1.0, 0.0), 10.0);
  g_assert_cmpfloat_with_epsilon (point_of (&bench, 2, 0).x, before.x + 10.0, CLOSE);
  g_assert_cmpstr (bf_document_get_undo_name (bench.document), ==, "Move a point");
  bf_opening_place (bench.document, first, bf_vec2 (before.x, before.y - 3.0), FALSE);
  g_assert_cmpfloat_with_epsilon (point_of (&bench, 2, 0).y, before.y - 3.0, CLOSE);
  bf_document_undo (bench.document);
  bf_document_undo (bench.document);
  g_assert_null (bf_document_get_undo_name (bench.document));

  guint n = bf_opening_n_points (opening (&bench, 2));
  BfSelection made = bf_opening_add_point (bench.document, first);
  g_assert_cmpint (bf_selection_point_of_opening (made), ==, 1);
  g_assert_cmpuint (bf_opening_n_points (opening (&bench, 2)), ==, n + 1);
  BfSelection then = bf_edge_do (bench.document, made, BF_OFFER_REMOVE);
  g_assert_true (bf_selection_is_same (then, bf_selection_whole_opening (made)));
  g_assert_cmpuint (bf_opening_n_points (opening (&bench, 2)), ==, n);
  while (bf_opening_n_points (opening (&bench, 2)) > 3)
    bf_opening_remove (bench.document, first);
  g_assert_true (bf_selection_is_same (bf_opening_remove (bench.document, first), first));
  g_assert_cmpuint (bf_opening_n_points (opening (&bench, 2)), ==, 3);
  bench_clear (&bench);
}

/* A dragged point goes to whole millimetres, or level with another of its outline. */
static void
test_a_point_is_dragged (void)
{
  Bench bench;
  bench_init (&bench, drilled ());
  BfSelection first = bf_selection_opening_point (0, 2, 0);
  BfVec2 next = point_of (&bench, 2, 1), from = point_of (&bench, 2, 0);
  BfVec2 px = bf_surface_view_from_blank (bench.view, from);
  double scale = bf_surface_view_get_scale (bench.view);
  BfSurfaceDrag *drag = bf_surface_drag_begin (bench.document, bench.scene, first, px);

  g_assert_nonnull (drag);
  bf_surface_drag_to (
      drag, bf_vec2_add (px, bf_vec2 ((next.x - from.x + 0.4) * scale, 7.3 * scale)), FALSE);
  bf_surface_drag_end (drag, FALSE);
  g_assert_cmpfloat_with_epsilon (point_of (&bench, 2, 0).x, next.x, CLOSE);
  g_assert_cmpfloat_with_epsilon (point_of (&bench, 2, 0).y, round (from.y - 7.3), 1.0);
  g_assert_cmpfloat_with_epsilon (point_of (&bench, 2, 1).x, next.x, CLOSE);
  bench_clear (&bench);
}

static void
test_sizes_are_named_steps (void)
{
  Bench bench;
  bench_init (&bench, drilled ());

  bf_opening_give (bench.document, selection (&bench, 0), BF_OPENING_DIAMETER, 20.0, FALSE);
  bf_opening_give (bench.document, selection (&bench, 0), BF_OPENING_LENGTH, 9.0, FALSE);
  g_assert_null (bf_document_get_undo_name (bench.document));
  bf_opening_give (bench.document, selection (&bench, 0), BF_OPENING_DIAMETER, 21.0, TRUE);
  bf_opening_give (bench.document, selection (&bench, 0), BF_OPENING_DIAMETER, 22.0, TRUE);
  g_assert_cmpstr (bf_document_get_undo_name (bench.document), ==, "Diameter of the hole");
  bf_document_undo (bench.document);
  g_assert_null (bf_document_get_undo_name (bench.document));
  bench_clear (&bench);
}

/* What is selected stays so where its face counts otherwise, and is nothing once it is gone. */
static void
test_a_selection_follows (void)
{
  Bench bench;
  bench_init (&bench, drilled ());
  BfEdge front = { "base", BF_EDGE_INDEX, 0 };
  g_autoptr (BfPart) more =
      bf_edit_add_flange (bf_document_get_part (bench.document), &front, BF_TURN_UP, NULL);
  g_autoptr (BfPart) fewer = bf_edit_remove_opening (more, 3);
  g_autoptr (BfFold) fold = bf_fold (fewer);
  BfSelection slot = bf_selection_in (fold, "back", selection (&bench, 1));

  g_assert_cmpint (slot.face, ==, bf_fold_find_face (fold, "back"));
  g_assert_cmpuint (bf_selection_opening_index (slot), ==, 1);
  g_assert_cmpint (bf_selection_in (fold, "base", selection (&bench, 3)).face, ==, -1);
  g_assert_cmpint (bf_selection_in (fold, "base", slot).face, ==, -1);
  bench_clear (&bench);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/surface-openings/named", test_all_are_there_and_named);
  g_test_add_func ("/surface-openings/under-the-pointer", test_they_are_found_under_the_pointer);
  g_test_add_func ("/surface-openings/hidden", test_what_is_hidden_is_not_found);
  g_test_add_func ("/surface-openings/distances", test_where_distances_are_measured_from);
  g_test_add_func ("/surface-openings/dragged", test_each_is_dragged_to_whole_places);
  g_test_add_func ("/surface-openings/dragged-formed", test_one_is_dragged_on_the_formed_part);
  g_test_add_func ("/surface-openings/points", test_points_lie_on_their_outline);
  g_test_add_func ("/surface-openings/points-edited", test_points_are_edited);
  g_test_add_func ("/surface-openings/point-dragged", test_a_point_is_dragged);
  g_test_add_func ("/surface-openings/nudged", test_nudges_go_where_the_arrow_points);
  g_test_add_func ("/surface-openings/added", test_each_shape_is_added);
  g_test_add_func ("/surface-openings/sizes-are-named-steps", test_sizes_are_named_steps);
  g_test_add_func ("/surface-openings/selection-follows", test_a_selection_follows);
  return g_test_run ();
}
