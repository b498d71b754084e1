/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/round-marks.h"

#include "core/edit.h"
#include "core/tolerance.h"
#include "make/marking.h"
#include "make/round-web.h"

/* A gain below this, and a difference, is rounding. */
#define LEAST_MM 1e-6

/* ---- sizes -------------------------------------------------------------------------------- */

typedef enum
{
  SIZE_FLANGE,
  SIZE_EDGE,
  SIZE_OPENING_X,
  SIZE_OPENING_Y,
} SizeKind;

typedef struct
{
  SizeKind kind;
  guint at;
} Size;

static BfPinKind
pin_kind (const Size *size)
{
  return size->kind == SIZE_FLANGE ? BF_PIN_FLANGE
         : size->kind == SIZE_EDGE ? BF_PIN_EDGE
                                   : BF_PIN_OPENING;
}

static gboolean
is_pinned (const BfPart *part, const Size *size)
{
  return bf_part_is_pinned (part, pin_kind (size), size->at);
}

static double
size_mm (const BfPart *part, const Size *size)
{
  const BfOpening *opening;

  if (size->kind == SIZE_FLANGE)
    return bf_part_flange (part, size->at)->length_mm;
  if (size->kind == SIZE_EDGE)
    return bf_part_edge_length_mm (part, size->at);
  opening = g_ptr_array_index (part->openings, size->at);
  return size->kind == SIZE_OPENING_X ? opening->at_mm.x : opening->at_mm.y;
}

static BfPart *
change (const BfPart *part, const Size *size, double to_mm)
{
  const BfOpening *opening;

  if (size->kind == SIZE_FLANGE)
    return bf_edit_flange_length (part, bf_part_flange (part, size->at)->id, to_mm);
  if (size->kind == SIZE_EDGE)
    return bf_edit_edge_length (part, size->at, to_mm);
  opening = g_ptr_array_index (part->openings, size->at);
  return bf_edit_place_opening (part, size->at,
                                size->kind == SIZE_OPENING_X ? bf_vec2 (to_mm, opening->at_mm.y)
                                                             : bf_vec2 (opening->at_mm.x, to_mm));
}

static void
add_size (GArray *sizes, SizeKind kind, guint at)
{
  Size size = { kind, at };

  g_array_append_val (sizes, size);
}

/* Flanges, then the base between them, then what is in them, both sizes of an opening together. */
static GArray *
all_sizes (const BfPart *part)
{
  GArray *sizes = g_array_new (FALSE, FALSE, sizeof (Size));

  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    add_size (sizes, SIZE_FLANGE, i);
  for (guint i = 0; i < bf_part_n_points (part); i++)
    add_size (sizes, SIZE_EDGE, i);
  for (guint i = 0; i < part->openings->len; i++)
    if (((const BfOpening *)g_ptr_array_index (part->openings, i))->shape != BF_OPENING_OUTLINE)
      {
        add_size (sizes, SIZE_OPENING_X, i);
        add_size (sizes, SIZE_OPENING_Y, i);
      }
  return sizes;
}

/* ---- marks -------------------------------------------------------------------------------- */

static void
add_line (GArray *marks, const BfMarking *marking, BfVec2 a, BfVec2 b)
{
  BfMarkedPoint p = bf_marking_point (marking, a), q = bf_marking_point (marking, b);
  const BfMarked all[] = { p.x, p.y, q.x, q.y };
  gboolean level = fabs (a.y - b.y) < BF_TOLERANCE_SIZE_MM;
  gboolean upright = fabs (a.x - b.x) < BF_TOLERANCE_SIZE_MM;

  /* A line square to the edges is struck at one distance; another one joins two points. */
  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if ((!level || i == 1) && (!upright || i == 0))
      g_array_append_val (marks, all[i].exact_mm);
}

/* Every distance that is marked (double), in an order that a change of sizes leaves as it is. */
static GArray *
find_marks (BfFold *fold, double step_mm)
{
  GArray *marks = g_array_new (FALSE, FALSE, sizeof (double));
  g_autoptr (BfMarking) marking = bf_marking_new (fold, step_mm);

  for (guint i = 0; i < fold->bends->len; i++)
    add_line (marks, marking, bf_fold_bend (fold, i)->line[0], bf_fold_bend (fold, i)->line[1]);
  for (guint i = 0; i < fold->blank.rings->len; i++)
    {
      const BfRing *ring = bf_blank_ring (&fold->blank, i);
      BfArc arc;

      for (guint k = 0; !bf_fold_ring_is_slot (fold, i) && k < bf_ring_size (ring); k++)
        if (!bf_ring_arc (ring, k, &arc))
          add_line (marks, marking, bf_ring_vertex (ring, k)->p, bf_ring_vertex (ring, k + 1)->p);
    }
  for (guint i = 0; i < marking->holes->len; i++)
    {
      BfMarkedPoint at = g_array_index (marking->holes, BfMarkHole, i).centre;
      double both[] = { at.x.exact_mm, at.y.exact_mm };

      g_array_append_vals (marks, both, G_N_ELEMENTS (both));
    }
  return marks;
}

double
bf_marks_off_mm (BfFold *fold, double step_mm)
{
  g_autoptr (GArray) marks = find_marks (fold, step_mm);
  double sum = 0.0;

  for (guint i = 0; i < marks->len; i++)
    sum += fabs (bf_round_lacks_mm (g_array_index (marks, double, i), step_mm));
  return sum;
}

/* ---- what hangs on what ------------------------------------------------------------------- */

typedef struct
{
  const BfPart *asked;
  double step_mm;
  const GArray *sizes; /* Size */
} Search;

static const Size *
size_at (const Search *search, guint i)
{
  return &g_array_index (search->sizes, Size, i);
}

/* A longer edge of the base may stretch others: none that is pinned, none by more than a step. */
static gboolean
keeps_to_it (const Search *search, const BfPart *tried)
{
  for (guint i = 0; i < search->sizes->len; i++)
    {
      double by = fabs (size_mm (tried, size_at (search, i)) -
                        size_mm (search->asked, size_at (search, i)));

      if (by > search->step_mm + LEAST_MM ||
          (by > BF_TOLERANCE_ZERO && is_pinned (search->asked, size_at (search, i))))
        return FALSE;
    }
  return TRUE;
}

/* A size that is pinned, stretches one that is, or changes what there is to mark is fixed. */
static void
find_rates (const Search *search, BfRoundWeb *web, guint at)
{
  double by = search->step_mm / 8.0;
  g_autoptr (BfPart) tried = change (search->asked, size_at (search, at),
                                     size_mm (search->asked, size_at (search, at)) + by);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GArray) marks = NULL;

  web->fixed[at] = TRUE;
  if (!keeps_to_it (search, tried))
    return;
  fold = bf_fold (tried);
  marks = find_marks (fold, search->step_mm);
  if (marks->len != web->n_marks)
    return;
  web->fixed[at] = FALSE;
  for (guint i = 0; i < web->n_marks; i++)
    web->rates[i * web->n_sizes + at] = (g_array_index (marks, double, i) - web->marks_mm[i]) / by;
  for (guint i = 0; i < web->n_sizes; i++)
    web->stretches[i * web->n_sizes + at] =
        (size_mm (tried, size_at (search, i)) - size_mm (search->asked, size_at (search, i))) / by;
}

static BfRoundWeb *
find_web (const Search *search, BfFold *fold)
{
  g_autoptr (GArray) marks = find_marks (fold, search->step_mm);
  BfRoundWeb *web = bf_round_web_new (marks->len, search->sizes->len, search->step_mm);

  for (guint i = 0; i < marks->len; i++)
    web->marks_mm[i] = g_array_index (marks, double, i);
  for (guint i = 0; i < search->sizes->len; i++)
    find_rates (search, web, i);
  return web;
}

static BfPart *
move_all (const Search *search, const BfRoundWeb *web)
{
  BfPart *part = bf_part_copy (search->asked);

  for (guint i = 0; i < web->n_sizes; i++)
    {
      const Size *size = size_at (search, i);
      BfPart *moved;

      if (fabs (web->moved_mm[i]) < LEAST_MM)
        continue;
      moved = change (part, size, size_mm (part, size) + web->moved_mm[i]);
      bf_part_unref (part);
      part = moved;
    }
  return part;
}

/* ---- what came of it ---------------------------------------------------------------------- */

static GArray *
list_sizes (const Search *search, const BfPart *part)
{
  GArray *list = g_array_new (FALSE, FALSE, sizeof (BfRoundSize));

  for (guint i = 0; i < search->sizes->len; i++)
    {
      const Size *size = size_at (search, i);
      BfRoundSize told = { pin_kind (size), size->at, size->kind == SIZE_OPENING_Y,
                           size_mm (search->asked, size), size_mm (part, size) };

      g_array_append_val (list, told);
    }
  return list;
}

gboolean
bf_round_size_moved (const BfRoundSize *size)
{
  return fabs (size->after_mm - size->before_mm) >= LEAST_MM;
}

BfPart *
bf_round_marks (const BfPart *part, double step_mm, GArray **told)
{
  g_autoptr (GArray) sizes = NULL;
  g_autoptr (BfPart) before = NULL, after = NULL;
  g_autoptr (BfFold) fold = NULL, rounded = NULL;
  g_autoptr (BfRoundWeb) web = NULL;
  Search search;

  g_return_val_if_fail (part != NULL && step_mm > 0.0 && told != NULL, NULL);
  sizes = all_sizes (part);
  before = bf_part_copy (part);
  search = (Search){ before, step_mm, sizes };
  fold = bf_fold (before);
  web = find_web (&search, fold);
  bf_round_web_settle (web);
  after = move_all (&search, web);
  rounded = bf_fold (after);
  if (!keeps_to_it (&search, after) ||
      bf_marks_off_mm (rounded, step_mm) > bf_marks_off_mm (fold, step_mm) - LEAST_MM)
    {
      bf_part_unref (after);
      after = bf_part_ref (before);
    }
  *told = list_sizes (&search, after);
  return g_steal_pointer (&after);
}
