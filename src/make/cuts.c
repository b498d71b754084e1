/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/cuts.h"

#include "core/tolerance.h"
#include "fold/slot-plan.h"
#include "make/drill-list.h"

/* Less is filed, not cut. */
#define LEAST_CUT_MM 3.0

/* What snips turn in (common practice). */
#define SNIPS_INSIDE_MM 25.0

/* Lengths that differ by less are alike. */
#define ALIKE_MM 0.01

/* Edges whose directions differ by less go on in one line. */
#define STRAIGHT_SINE 1e-6

/* Centres no further apart than this are one: arcs that were cut and found again are off by less.
 */
#define ONE_CENTRE_MM 0.01

static gboolean
is_drilled (const BfFold *fold, const BfRing *ring, guint edge)
{
  BfArc arc;

  if (!bf_ring_arc (ring, edge, &arc))
    return FALSE;
  for (guint i = 0; i < fold->reliefs->len; i++)
    if (bf_fold_relief (fold, i)->drill != NULL &&
        bf_vec2_distance (bf_fold_relief (fold, i)->at, arc.centre) < ONE_CENTRE_MM)
      return TRUE;
  return FALSE;
}

static BfVec2
direction_of (const BfRing *ring, guint edge)
{
  return bf_vec2_unit (
      bf_vec2_sub (bf_ring_vertex (ring, edge + 1)->p, bf_ring_vertex (ring, edge)->p));
}

static gboolean
is_straight (const BfRing *ring, guint edge)
{
  BfArc arc;

  return !bf_ring_arc (ring, edge, &arc);
}

/* TRUE where the next edge goes on in the same line. */
static gboolean
goes_on (const BfRing *ring, guint edge)
{
  BfVec2 a = direction_of (ring, edge), b = direction_of (ring, edge + 1);

  return is_straight (ring, edge) && is_straight (ring, edge + 1) &&
         fabs (bf_vec2_cross (a, b)) < STRAIGHT_SINE && bf_vec2_dot (a, b) > 0.0;
}

static gboolean
lies_on_datum (const BfFold *fold, const BfCut *cut)
{
  BfVec2 corner = fold->blank.box.min;

  return (fabs (cut->from.x - corner.x) < BF_TOLERANCE_SIZE_MM &&
          fabs (cut->to.x - corner.x) < BF_TOLERANCE_SIZE_MM) ||
         (fabs (cut->from.y - corner.y) < BF_TOLERANCE_SIZE_MM &&
          fabs (cut->to.y - corner.y) < BF_TOLERANCE_SIZE_MM);
}

/* The cut that begins with that edge, and runs over n of them. */
static BfCut
make_cut (const BfFold *fold, const BfRing *ring, guint edge, guint n)
{
  guint before = edge + bf_ring_size (ring) - 1;
  BfCut cut = { .from = bf_ring_vertex (ring, edge)->p, .to = bf_ring_vertex (ring, edge + n)->p };
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (cut.to, cut.from));

  cut.length_mm = bf_vec2_distance (cut.from, cut.to);
  cut.waste = bf_vec2 (along.y, -along.x);
  cut.from_hole = is_drilled (fold, ring, before);
  cut.to_hole = is_drilled (fold, ring, edge + n);
  return cut;
}

double
bf_least_inside_cut_mm (const BfPart *part)
{
  g_return_val_if_fail (part != NULL, 0.0);

  if (part->cutting.by == BF_CUTTING_DISC)
    return bf_slot_tool (part).shortest_mm;
  return part->cutting.by == BF_CUTTING_SNIPS ? SNIPS_INSIDE_MM : 0.0;
}

static void
add_ring (const BfFold *fold, guint i, gboolean keep_datum, GArray *cuts)
{
  const BfRing *ring = bf_blank_ring (&fold->blank, i);
  guint size = bf_ring_size (ring);
  gboolean inside = i >= fold->blank.n_outer;
  double least_mm = inside ? MAX (LEAST_CUT_MM, bf_least_inside_cut_mm (fold->part)) : LEAST_CUT_MM;
  BfBox box = bf_box_empty ();

  bf_ring_extend_box (ring, &box);
  for (guint edge = 0; edge < size; edge++)
    {
      guint n = 1;
      BfCut cut;

      if (!is_straight (ring, edge) || goes_on (ring, edge + size - 1))
        continue;
      while (n < size && goes_on (ring, edge + n - 1))
        n++;
      cut = make_cut (fold, ring, edge, n);
      cut.inside = inside;
      cut.opening = box;
      if (cut.length_mm >= least_mm && (keep_datum || !lies_on_datum (fold, &cut)))
        g_array_append_val (cuts, cut);
    }
}

/* The sign of the first difference that is one. */
static int
first_sign (const double *differences, guint n)
{
  for (guint i = 0; i < n; i++)
    if (fabs (differences[i]) > ALIKE_MM)
      return differences[i] > 0.0 ? 1 : -1;
  return 0;
}

static int
compare_openings (const BfCut *a, const BfCut *b)
{
  BfVec2 off = bf_vec2_sub (bf_box_middle (&a->opening), bf_box_middle (&b->opening));

  return first_sign ((const double[]){ off.x, off.y }, 2);
}

gboolean
bf_cuts_share_opening (const BfCut *a, const BfCut *b)
{
  return a->inside && b->inside && compare_openings (a, b) == 0;
}

/* Inside first, opening by opening, then short before long; alike ones from left to right and from
 * below. */
static int
compare_cuts (gconstpointer x, gconstpointer y)
{
  const BfCut *a = x, *b = y;
  const double differences[] = { a->length_mm - b->length_mm,
                                 a->from.x + a->to.x - b->from.x - b->to.x,
                                 a->from.y + a->to.y - b->from.y - b->to.y };

  if (a->inside != b->inside)
    return a->inside ? -1 : 1;
  if (a->inside && compare_openings (a, b) != 0)
    return compare_openings (a, b);
  return first_sign (differences, G_N_ELEMENTS (differences));
}

GArray *
bf_cuts (const BfFold *fold, gboolean keep_datum)
{
  GArray *cuts = g_array_new (FALSE, FALSE, sizeof (BfCut));

  for (guint i = 0; i < fold->blank.rings->len; i++)
    if (!bf_fold_ring_is_slot (fold, i))
      add_ring (fold, i, keep_datum, cuts);
  g_array_sort (cuts, compare_cuts);
  return cuts;
}

/* TRUE where a drill or a straight cut makes that edge. */
static gboolean
is_made (const BfRing *ring, guint edge, const GArray *drilled, double least_mm)
{
  BfArc arc;

  if (!bf_ring_arc (ring, edge, &arc))
    return bf_vec2_distance (bf_ring_vertex (ring, edge)->p, bf_ring_vertex (ring, edge + 1)->p) >=
           least_mm;
  for (guint i = 0; i < drilled->len; i++)
    if (bf_vec2_distance (bf_drilled (drilled, i)->at, arc.centre) < ONE_CENTRE_MM)
      return TRUE;
  return FALSE;
}

guint
bf_count_filed_rounds (const BfFold *fold)
{
  g_autoptr (GArray) drilled = bf_drill_list (fold);
  guint count = 0;
  BfArc arc;

  for (guint i = 0; i < fold->blank.n_outer; i++)
    {
      const BfRing *ring = bf_blank_ring (&fold->blank, i);

      for (guint edge = 0; edge < bf_ring_size (ring); edge++)
        if (bf_ring_arc (ring, edge, &arc) && !is_made (ring, edge, drilled, 0.0))
          count++;
    }
  return count;
}

guint
bf_count_filed_openings (const BfFold *fold)
{
  g_autoptr (GArray) drilled = bf_drill_list (fold);
  double least_mm = bf_least_inside_cut_mm (fold->part);
  guint count = 0;

  for (guint i = fold->blank.n_outer; i < fold->blank.rings->len; i++)
    {
      const BfRing *ring = bf_blank_ring (&fold->blank, i);
      guint made = 0;

      for (guint edge = 0; edge < bf_ring_size (ring); edge++)
        made += is_made (ring, edge, drilled, least_mm) ? 1 : 0;
      count += made < bf_ring_size (ring) && !bf_fold_ring_is_slot (fold, i) ? 1 : 0;
    }
  return count;
}

double
bf_cut_lag_mm (double disc_mm, double thickness_mm)
{
  double deep = thickness_mm + BF_PLUNGE_BEYOND_MM;

  if (deep > disc_mm / 2.0)
    return NAN;
  return sqrt (deep * (disc_mm - deep)) -
         sqrt (BF_PLUNGE_BEYOND_MM * (disc_mm - BF_PLUNGE_BEYOND_MM));
}

void
bf_cut_guide (const BfCut *cut, double offset_mm, BfVec2 ends[2])
{
  ends[0] = bf_vec2_along (cut->from, cut->waste, -offset_mm);
  ends[1] = bf_vec2_along (cut->to, cut->waste, -offset_mm);
}
