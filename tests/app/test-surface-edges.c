/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/edge-edits.h"
#include "app/size-edits.h"
#include "app/surface-drag.h"
#include "core/first-part.h"
#include "surface-bench.h"

/* The edges that a person walks along, what is offered at them and done, and dragging them. */

#define CLOSE 1e-6

/* 200 × 120, a front wall of 40 with a lip of 12. */
static BfDocument *
lipped (void)
{
  static const BfVec2 points[] = { { 0.0, 0.0 }, { 200.0, 0.0 }, { 200.0, 120.0 }, { 0.0, 120.0 } };
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  g_autoptr (BfPart) base = bf_edit_outline (setup, points, 4);
  BfEdge front = { "base", BF_EDGE_INDEX, 0 };
  BfEdge tip = { "front", BF_EDGE_TIP, 0 };
  g_autoptr (BfPart) walled = bf_edit_add_flange (base, &front, BF_TURN_UP, NULL);
  g_autoptr (BfPart) high = bf_edit_flange_length (walled, "front", 40.0);
  g_autoptr (BfPart) part = bf_edit_add_flange (high, &tip, BF_TURN_UP, NULL);
  BfDocument *document = bf_document_new ();

  bf_document_set_part (document, part, NULL);
  return document;
}

static const char *const names[] = {
  "Base edge 1, 200 mm, front wall",
  "Start side of front, 34 mm", /* 40, less (R + t) at both bends */
  "Tip of front, 40 mm", /* at its ends the lip bends and the sides are bare: nothing to ask */
  "Start side of lip, 17 mm",
  "Start corner of lip",
  "Tip of lip, 20 mm",
  "End corner of lip",
  "End side of lip, 17 mm",
  "End side of front, 34 mm",
  "Base point 2",
  "Base edge 2, 120 mm",
  "Base point 3",
  "Base edge 3, 200 mm",
  "Base point 4",
  "Base edge 4, 120 mm",
  "Base point 1",
};

static void
test_all_are_there_and_named (void)
{
  g_autoptr (BfDocument) document = lipped ();
  const BfFold *fold = bf_document_get_fold (document);
  g_autoptr (GArray) edges = bf_surface_edges (fold);

  g_assert_cmpuint (edges->len, ==, G_N_ELEMENTS (names));
  for (guint i = 0; i < edges->len; i++)
    {
      const BfSurfaceEdge *edge = bf_surface_edge (edges, i);
      g_autofree char *name = bf_surface_edge_name (fold, edge);
      g_assert_cmpstr (name, ==, names[i]);
      g_assert_cmpint (bf_surface_edges_find (edges, edge->selection), ==, (int)i);
    }
}

/* What hangs on a flange's side is there, too. */
static void
test_a_flange_on_a_side (void)
{
  g_autoptr (BfDocument) document = lipped ();
  BfEdge side = { "front", BF_EDGE_END, 0 };
  g_autofree char *id = NULL;
  g_autoptr (BfPart) part =
      bf_edit_add_flange (bf_document_get_part (document), &side, BF_TURN_UP, &id);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (GArray) edges = bf_surface_edges (fold);
  BfSelection tip = { bf_fold_find_face (fold, id), BF_FLANGE_TIP };
  const BfSurfaceEdge *end = bf_surface_edge (edges, 9);
  g_autofree char *name = bf_surface_edge_name (fold, end);
  int face = bf_fold_find_face (fold, id);
  const BfBendResult *bend = bf_fold_bend (fold, (guint)bf_fold_face (fold, (guint)face)->bend);

  g_assert_cmpuint (edges->len, ==, G_N_ELEMENTS (names) + 6);
  g_assert_cmpint (bf_surface_edges_find (edges, tip), ==, 12);
  g_assert_cmpint (bf_surface_edges_find (edges, bf_selection_corner (end->selection.face, 1)), ==,
                   8); /* where the two lips meet */
  g_assert_true (g_str_has_prefix (name, "End side of front, "));
  g_assert_true (g_str_has_suffix (name, id));
  g_assert_cmpfloat_with_epsilon (end->blank[0].x, bend->line[0].x, CLOSE);
}

/* A bare side lies where the flange's metal ends, and points away from it. */
static void
test_where_sides_lie (void)
{
  g_autoptr (BfDocument) document = lipped ();
  const BfFold *fold = bf_document_get_fold (document);
  g_autoptr (GArray) edges = bf_surface_edges (fold);
  const BfSurfaceEdge *start = bf_surface_edge (edges, 1);
  const BfSurfaceEdge *end = bf_surface_edge (edges, 8);

  g_assert_cmpfloat_with_epsilon (start->blank[0].x, 0.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (end->blank[0].x, 200.0, CLOSE);
  g_assert_cmpfloat (start->blank[0].y, >, start->blank[1].y);
  g_assert_cmpfloat (end->blank[0].y, <, end->blank[1].y);
  g_assert_cmpfloat_with_epsilon (start->outward.x, -1.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (end->outward.x, 1.0, CLOSE);
}

/* Nothing can hang on a hem, so its sides are none. */
static void
test_a_hem_has_no_sides (void)
{
  g_autoptr (BfDocument) document = lipped ();
  g_autofree char *id = NULL;
  BfEdge back = { "base", BF_EDGE_INDEX, 2 };
  g_autoptr (BfPart) part =
      bf_edit_add_hem (bf_document_get_part (document), &back, BF_TURN_UP, &id);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (GArray) edges = bf_surface_edges (fold);
  int hem = bf_fold_find_face (fold, id);

  g_assert_cmpint (bf_surface_edges_find (edges, (BfSelection){ hem, BF_FLANGE_TIP }), >=, 0);
  g_assert_cmpint (bf_surface_edges_find (edges, (BfSelection){ hem, BF_FLANGE_START }), <, 0);
  g_assert_cmpint (bf_surface_edges_find (edges, (BfSelection){ hem, BF_FLANGE_END }), <, 0);
}

/* A tab belongs to its corner: it is no edge of the person's, and nothing can be done with it. */
static void
test_a_tab_is_left_alone (void)
{
  g_autoptr (BfDocument) document = lipped ();
  BfEdge right = { "base", BF_EDGE_INDEX, 1 };
  g_autoptr (BfPart) walls =
      bf_edit_add_flange (bf_document_get_part (document), &right, BF_TURN_UP, NULL);
  g_autoptr (BfPart) high = bf_edit_flange_length (walls, "right", 40.0);
  g_autoptr (BfPart) part = bf_edit_corner_join (high, "base", 1, BF_JOIN_TAB);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (GArray) edges = bf_surface_edges (fold);
  guint n_tabs = 0;

  for (guint i = 0; i < bf_part_n_flanges (fold->part); i++)
    {
      int face = bf_fold_find_face (fold, bf_part_flange (fold->part, i)->id);
      if (!bf_part_flange (fold->part, i)->is_tab)
        continue;
      n_tabs++;
      g_assert_cmpuint (bf_edge_offers (fold, (BfSelection){ face, -1 }), ==, 0);
      for (guint k = 0; k < edges->len; k++)
        g_assert_cmpint (bf_surface_edge (edges, k)->selection.face, !=, face);
    }
  g_assert_cmpuint (n_tabs, ==, 1);
}

/* From a side a flange is turned up there, which may take the side's face another number; taken
 * away again, the side is left selected. */
static void
test_a_side_is_turned_up (void)
{
  static const int sides[] = { BF_FLANGE_START, BF_FLANGE_END };

  for (guint i = 0; i < G_N_ELEMENTS (sides); i++)
    {
      g_autoptr (BfDocument) document = lipped ();
      int lip = bf_fold_find_face (bf_document_get_fold (document), "lip");
      BfSelection side = { lip, sides[i] };
      BfSelection then = bf_edge_do (document, side, BF_OFFER_TURN_UP);
      const BfFold *fold = bf_document_get_fold (document);
      const BfFlange *made = bf_selection_flange (fold, then);

      g_assert_cmpint (then.edge, ==, sides[i]);
      g_assert_cmpstr (bf_fold_face (fold, (guint)then.face)->id, ==, "lip");
      g_assert_cmpstr (made->on, ==, "lip");
      g_assert_cmpint (made->edge, ==, i == 0 ? BF_EDGE_START : BF_EDGE_END);
      g_assert_true (bf_selection_is_same (bf_selection_under (fold, made), then));
      then = bf_edge_do (document, then, BF_OFFER_REMOVE);
      g_assert_true (bf_selection_is_same (then, side));
      g_assert_null (bf_selection_flange (bf_document_get_fold (document), then));
    }
}

/* An edge that carries a flange lies at the bend line in the blank, and at the bend's beginning on
 * the formed part; a bare one beside a bend is as long as its metal. */
static void
test_where_they_lie (void)
{
  g_autoptr (BfDocument) document = lipped ();
  const BfFold *fold = bf_document_get_fold (document);
  g_autoptr (GArray) edges = bf_surface_edges (fold);
  int front = bf_fold_find_face (fold, "front");
  const BfBendResult *bend = bf_fold_bend (fold, (guint)bf_fold_face (fold, (guint)front)->bend);
  const BfSurfaceEdge *first = bf_surface_edge (edges, 0);
  const BfSurfaceEdge *right = bf_surface_edge (edges, 10);

  g_assert_cmpfloat_with_epsilon (first->blank[0].y, bend->line[0].y, CLOSE);
  g_assert_cmpfloat_with_epsilon (first->formed[0].y, bend->zone[0].y, CLOSE);
  g_assert_cmpfloat_with_epsilon (first->outward.y, -1.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (right->blank[0].y, bend->zone[0].y, CLOSE);
  g_assert_cmpfloat_with_epsilon (right->blank[1].y, 120.0, CLOSE);
}

typedef struct
{
  int face; /* 0 base, 1 front, 2 lip: by name below */
  int edge;
  guint offers;
} OfferCase;

#define OF_FLANGE                                                                                  \
  (BF_OFFER_LENGTH | BF_OFFER_ANGLE | BF_OFFER_TURN_DOWN | BF_OFFER_HOLE | BF_OFFER_REMOVE)
#define OF_BASE_EDGE (BF_OFFER_EDGE_LENGTH | BF_OFFER_POINT)

static const OfferCase offer_cases[] = {
  { 0, 0, OF_FLANGE | OF_BASE_EDGE | BF_OFFER_COPY },
  { 0, 1, OF_BASE_EDGE | BF_OFFER_TURN_UP | BF_OFFER_TURN_DOWN | BF_OFFER_HEM | BF_OFFER_HOLE },
  { 1, 2, OF_FLANGE | BF_OFFER_COPY },
  { 2, 2, OF_FLANGE | BF_OFFER_LIP | BF_OFFER_HEM },
  { 1, BF_FLANGE_START, BF_OFFER_TURN_UP | BF_OFFER_TURN_DOWN | BF_OFFER_HEM | BF_OFFER_HOLE },
  { 2, BF_FLANGE_END, BF_OFFER_TURN_UP | BF_OFFER_TURN_DOWN | BF_OFFER_HEM | BF_OFFER_HOLE },
  { 2, -1, OF_FLANGE | BF_OFFER_LIP | BF_OFFER_HEM },
  { 0, -1, 0 },
  { 0, -2, BF_OFFER_REMOVE },
  { -1, -1, 0 },
};

static void
test_what_is_offered (void)
{
  static const char *const ids[] = { "base", "front", "lip" };
  g_autoptr (BfDocument) document = lipped ();
  const BfFold *fold = bf_document_get_fold (document);

  for (guint i = 0; i < G_N_ELEMENTS (offer_cases); i++)
    {
      const OfferCase *c = &offer_cases[i];
      BfSelection at = { c->face < 0 ? -1 : bf_fold_find_face (fold, ids[c->face]), c->edge };
      g_assert_cmphex (bf_edge_offers (fold, at), ==, c->offers);
    }
}

static void
test_each_is_one_step (void)
{
  static const BfOffers offers[] = { BF_OFFER_TURN_UP, BF_OFFER_TURN_DOWN, BF_OFFER_HEM,
                                     BF_OFFER_HOLE, BF_OFFER_POINT };
  BfSelection right = { 0, 1 };

  for (guint i = 0; i < G_N_ELEMENTS (offers); i++)
    {
      g_autoptr (BfDocument) document = lipped ();
      BfPart *before = bf_document_get_part (document);
      bf_edge_do (document, right, offers[i]);
      g_assert_true (bf_document_get_part (document) != before);
      bf_document_undo (document);
      g_assert_true (bf_document_get_part (document) == before);
      g_assert_null (bf_document_get_undo_name (document));
    }
}

static void
test_what_is_not_offered_is_not_done (void)
{
  g_autoptr (BfDocument) document = lipped ();

  bf_edge_do (document, (BfSelection){ 0, 1 }, BF_OFFER_LIP);
  bf_edge_do (document, BF_SELECTION_NONE, BF_OFFER_REMOVE);
  g_assert_null (bf_document_get_undo_name (document));
}

/* What is made is selected, by its face in the new fold. */
static void
test_a_new_lip_is_selected (void)
{
  g_autoptr (BfDocument) document = lipped ();
  BfSelection lip = { bf_fold_find_face (bf_document_get_fold (document), "lip"), 2 };
  BfSelection then = bf_edge_do (document, lip, BF_OFFER_LIP);
  const BfFlange *flange = bf_selection_flange (bf_document_get_fold (document), then);

  g_assert_cmpstr (flange->id, ==, "lip 2");
  g_assert_cmpstr (flange->on, ==, "lip");
}

static void
test_sizes_are_named_steps (void)
{
  g_autoptr (BfDocument) document = lipped ();
  BfSizeTarget front = { "front", 0 };
  BfSizeTarget width = { NULL, 0 };

  bf_size_edit_length (document, &front, 40.0, FALSE);
  g_assert_null (bf_document_get_undo_name (document));
  bf_size_edit_length (document, &front, 41.0, TRUE);
  bf_size_edit_length (document, &front, 42.0, TRUE);
  g_assert_cmpstr (bf_document_get_undo_name (document), ==, "Length of front");
  bf_size_edit_angle (document, &front, 100.0, FALSE);
  g_assert_cmpstr (bf_document_get_undo_name (document), ==, "Angle of front");
  bf_size_edit_length (document, &width, 210.0, FALSE);
  g_assert_cmpstr (bf_document_get_undo_name (document), ==, "Width of the base");
  bf_document_undo (document);
  bf_document_undo (document);
  bf_document_undo (document);
  g_assert_null (bf_document_get_undo_name (document));
}

static void
test_angles_in_words (void)
{
  g_autofree char *in = bf_angle_in_words (105.0);
  g_autofree char *out = bf_angle_in_words (60.0);
  g_autofree char *square = bf_angle_in_words (90.0);

  g_assert_cmpstr (in, ==, "opening 75°, leans in");
  g_assert_cmpstr (out, ==, "opening 120°, leans out");
  g_assert_cmpstr (square, ==, "square");
}

/* Drags what is selected from there by so many mm to the right and up, in two goes. */
static void
drag_by (Bench *bench, BfSelection at, BfVec2 from_mm, BfVec2 by_mm)
{
  double scale = bf_surface_view_get_scale (bench->view);
  BfVec2 px = bf_surface_view_from_blank (bench->view, from_mm);
  BfVec2 by = bf_vec2 (by_mm.x * scale, -by_mm.y * scale);
  BfSurfaceDrag *drag = bf_surface_drag_begin (bench->document, bench->scene, at, px);

  g_assert_nonnull (drag);
  for (guint i = 1; i <= 2; i++)
    {
      bf_surface_drag_to (drag, bf_vec2_along (px, by, i / 2.0), FALSE);
      g_assert_true (bf_surface_drag_follow (drag));
      g_assert_false (bf_surface_drag_follow (drag));
      bf_surface_scene_set_fold (bench->scene, bf_document_get_fold (bench->document));
    }
  bf_surface_drag_end (drag, FALSE);
}

static void
test_dragging_is_one_step (void)
{
  Bench bench;
  bench_init (&bench, lipped ());
  BfPart *before = bf_document_get_part (bench.document);
  int front = bf_fold_find_face (bf_document_get_fold (bench.document), "front");

  drag_by (&bench, (BfSelection){ front, 2 }, bf_vec2 (100.0, -36.0), bf_vec2 (3.0, -20.3));
  g_assert_cmpfloat_with_epsilon (
      bf_part_find_flange (bf_document_get_part (bench.document), "front")->length_mm, 60.0, CLOSE);
  bf_document_undo (bench.document);
  g_assert_true (bf_document_get_part (bench.document) == before);
  g_assert_null (bf_document_get_undo_name (bench.document));
  bench_clear (&bench);
}

static void
test_a_side_is_dragged (void)
{
  Bench bench;
  bench_init (&bench, lipped ());

  drag_by (&bench, (BfSelection){ 0, 1 }, bf_vec2 (200.0, 60.0), bf_vec2 (30.2, 5.0));
  BfPart *part = bf_document_get_part (bench.document);
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, 1).x, 230.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, 2).x, 230.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, 2).y, 120.0, CLOSE);
  bench_clear (&bench);
}

/* A flange's side is dragged inward by its inset, and never beyond the edge. */
static void
test_a_side_of_a_flange_is_dragged (void)
{
  Bench bench;
  bench_init (&bench, lipped ());
  int front = bf_fold_find_face (bf_document_get_fold (bench.document), "front");
  BfVec2 from = { 200.0, -20.0 };

  drag_by (&bench, (BfSelection){ front, BF_FLANGE_END }, from, bf_vec2 (-12.3, 4.0));
  const BfFlange *flange = bf_part_find_flange (bf_document_get_part (bench.document), "front");
  g_assert_cmpfloat_with_epsilon (flange->end_mm, 12.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (flange->start_mm, 0.0, CLOSE);
  g_assert_cmpstr (bf_document_get_undo_name (bench.document), ==, "Move a side of front");
  drag_by (&bench, (BfSelection){ front, BF_FLANGE_END }, from, bf_vec2 (40.0, 0.0));
  flange = bf_part_find_flange (bf_document_get_part (bench.document), "front");
  g_assert_cmpfloat_with_epsilon (flange->end_mm, 0.0, CLOSE);
  bench_clear (&bench);
}

static void
test_a_point_is_dragged (void)
{
  Bench bench;
  bench_init (&bench, lipped ());

  drag_by (&bench, bf_selection_point (2), bf_vec2 (200.0, 120.0), bf_vec2 (-40.3, 20.4));
  BfPart *part = bf_document_get_part (bench.document);
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, 2).x, 160.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, 2).y, 140.0, CLOSE);
  bench_clear (&bench);
}

/* A base never crosses itself on the way, and never gets less than a step wide. */
static void
test_a_drag_stops_short (void)
{
  Bench bench;
  bench_init (&bench, lipped ());
  BfVec2 px = bf_surface_view_from_blank (bench.view, bf_vec2 (200.0, 120.0));
  BfVec2 over = bf_surface_view_from_blank (bench.view, bf_vec2 (-50.0, -60.0));
  BfPart *before = bf_document_get_part (bench.document);
  BfSurfaceDrag *point =
      bf_surface_drag_begin (bench.document, bench.scene, bf_selection_point (2), px);

  bf_surface_drag_to (point, over, FALSE);
  g_assert_false (bf_surface_drag_follow (point));
  bf_surface_drag_end (point, FALSE);
  g_assert_true (bf_document_get_part (bench.document) == before);
  BfSurfaceDrag *side =
      bf_surface_drag_begin (bench.document, bench.scene, (BfSelection){ 0, 1 }, px);
  bf_surface_drag_to (side, over, FALSE);
  bf_surface_drag_follow (side);
  g_assert_cmpfloat_with_epsilon (bf_part_edge_length_mm (bf_document_get_part (bench.document), 0),
                                  1.0, CLOSE);
  bf_surface_drag_end (side, TRUE);
  g_assert_true (bf_document_get_part (bench.document) == before);
  bench_clear (&bench);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/surface-edges/named", test_all_are_there_and_named);
  g_test_add_func ("/surface-edges/on-a-side", test_a_flange_on_a_side);
  g_test_add_func ("/surface-edges/where-they-lie", test_where_they_lie);
  g_test_add_func ("/surface-edges/where-sides-lie", test_where_sides_lie);
  g_test_add_func ("/surface-edges/a-hem-has-no-sides", test_a_hem_has_no_sides);
  g_test_add_func ("/surface-edges/a-side-is-turned-up", test_a_side_is_turned_up);
  g_test_add_func ("/surface-edges/a-flange-side-is-dragged", test_a_side_of_a_flange_is_dragged);
  g_test_add_func ("/surface-edges/what-is-offered", test_what_is_offered);
  g_test_add_func ("/surface-edges/one-step-each", test_each_is_one_step);
  g_test_add_func ("/surface-edges/not-offered-not-done", test_what_is_not_offered_is_not_done);
  g_test_add_func ("/surface-edges/new-lip-is-selected", test_a_new_lip_is_selected);
  g_test_add_func ("/surface-edges/sizes-are-named-steps", test_sizes_are_named_steps);
  g_test_add_func ("/surface-edges/angles-in-words", test_angles_in_words);
  g_test_add_func ("/surface-edges/dragging-is-one-step", test_dragging_is_one_step);
  g_test_add_func ("/surface-edges/a-side-is-dragged", test_a_side_is_dragged);
  g_test_add_func ("/surface-edges/a-tab", test_a_tab_is_left_alone);
  g_test_add_func ("/surface-edges/a-point-is-dragged", test_a_point_is_dragged);
  g_test_add_func ("/surface-edges/a-drag-stops-short", test_a_drag_stops_short);
  return g_test_run ();
}
