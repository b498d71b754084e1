/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include "core/units.h"
#include "make/marking.h"

#include "make-part.h"

#define NEAR 1e-6
#define THIRTY_SECOND_MM (BF_MM_PER_INCH / 32.0)

static const BfMarkStretch *
stretch (const BfStrike *strike, guint i)
{
  return &g_array_index (strike->stretches, BfMarkStretch, i);
}

/* An angle of 100 × (40 + 30): one bend, no reliefs. By hand: allowance π/2·(1.5 + 0.42·1.5) =
 * 3.3458, deduction 2·3 − 3.3458 = 2.6542, so the blank is 100 × 67.3458, and its bend line lies
 * 30 − 3 + 3.3458/2 = 28.6729 from the bottom edge. The bar lies on the base, its front edge 1.5
 * past the tangent there: 27 + 3.3458 − 1.5 = 28.8458. */
static void
test_angle_by_hand (void)
{
  g_autoptr (BfPart) part = make_rectangle (100.0, 40.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (BfMarking) marking = NULL;
  const BfStrike *bend, *bar;

  add_flange (part, "wall", 0, 30.0, 90.0);
  fold = bf_fold (part);
  marking = bf_marking_new (fold, 0.5);
  g_assert_cmpfloat_with_epsilon (marking->width.marked_mm, 100.0, NEAR);
  g_assert_cmpfloat_with_epsilon (marking->height.exact_mm, 67.3458, 1e-4);
  g_assert_cmpfloat_with_epsilon (marking->height.marked_mm, 67.5, NEAR);
  g_assert_cmpfloat_with_epsilon (marking->diagonal_mm, hypot (100.0, 67.3458), 1e-4);
  /* Two edges, a bend and its bar along x, two edges along y. */
  g_assert_cmpuint (marking->strikes->len, ==, 6);
  bend = bf_marking_strike (marking, 1);
  g_assert_cmpint (bend->from, ==, BF_DATUM_BOTTOM);
  g_assert_cmpfloat_with_epsilon (bend->marked_mm, 28.5, NEAR);
  g_assert_cmpint (stretch (bend, 0)->kind, ==, BF_MARK_BEND);
  g_assert_cmpstr (stretch (bend, 0)->name, ==, "wall");
  bar = bf_marking_strike (marking, 2);
  g_assert_cmpfloat_with_epsilon (bar->marked_mm, 29.0, NEAR);
  g_assert_cmpint (stretch (bar, 0)->kind, ==, BF_MARK_BAR);
  g_assert_cmpstr (stretch (bar, 0)->name, ==, "wall");
  g_assert_cmpfloat_with_epsilon (marking->worst_mm, 28.6729 - 28.5, 1e-4);
  g_assert_cmpuint (marking->joins->len + marking->arcs->len + marking->holes->len, ==, 0);
}

/* A tray's long side edges are struck in one go; between them the strike is wiped. */
static void
test_wipes (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (BfMarking) marking = bf_marking_new (fold, 0.5);
  guint wiped = 0;

  for (guint i = 0; i < marking->strikes->len; i++)
    {
      const BfStrike *strike = bf_marking_strike (marking, i);

      for (guint k = 0; k < strike->wipes->len; k++)
        {
          const BfRun *wipe = &g_array_index (strike->wipes, BfRun, k);

          for (guint j = 0; j < strike->stretches->len; j++)
            g_assert_true (stretch (strike, j)->to.marked_mm <= wipe->from_mm + NEAR ||
                           stretch (strike, j)->from.marked_mm >= wipe->to_mm - NEAR);
          wiped++;
        }
    }
  g_assert_cmpuint (wiped, >=, 4);
  g_assert_cmpuint (marking->holes->len, ==, 4);
}

/* A slot in a bare rectangle, which has four strikes of its own: between drilled ends its sides are
 * not marked, between others they are, and so are the sides of a keyhole, which meet its round at a
 * corner. */
static void
test_slot (void)
{
  static const struct
  {
    BfOpeningShape shape;
    double diameter_mm, length_mm, width_mm;
    guint strikes, arcs, holes;
  } rows[] = {
    { BF_OPENING_SLOT, 0, 18, 6, 4, 0, 2 },
    { BF_OPENING_SLOT, 0, 60, 20, 6, 2, 0 },
    { BF_OPENING_KEYHOLE, 10, 12, 5, 6, 0, 2 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      BfOpening *opening = bf_opening_new ("base", rows[i].shape);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfMarking) marking = NULL;

      opening->at_mm = bf_vec2 (100.0, 60.0);
      opening->diameter_mm = rows[i].diameter_mm;
      opening->length_mm = rows[i].length_mm;
      opening->width_mm = rows[i].width_mm;
      g_ptr_array_add (part->openings, opening);
      fold = bf_fold (part);
      marking = bf_marking_new (fold, 0.5);
      g_assert_cmpuint (marking->strikes->len, ==, rows[i].strikes);
      g_assert_cmpuint (marking->arcs->len, ==, rows[i].arcs);
      g_assert_cmpuint (marking->holes->len, ==, rows[i].holes);
    }
}

/* ---- drawn again from the steps alone ----------------------------------------------------- */

static gboolean
is_near (BfMarked x, double exact, double within)
{
  return fabs (x.marked_mm - exact) <= within + NEAR;
}

static gboolean
strike_has (const BfStrike *strike, BfVec2 a, BfVec2 b, double within)
{
  gboolean along_x = strike->from == BF_DATUM_BOTTOM;
  double at[2] = { along_x ? a.y : a.x, along_x ? b.y : b.x };
  double from = along_x ? MIN (a.x, b.x) : MIN (a.y, b.y);
  double to = along_x ? MAX (a.x, b.x) : MAX (a.y, b.y);

  for (int i = 0; i < 2; i++)
    if (fabs (at[i] - strike->marked_mm) > within + NEAR)
      return FALSE;
  for (guint i = 0; i < strike->stretches->len; i++)
    if (is_near (stretch (strike, i)->from, from, within) &&
        is_near (stretch (strike, i)->to, to, within))
      return TRUE;
  return FALSE;
}

static gboolean
point_is_near (BfMarkedPoint p, BfVec2 exact, double within)
{
  return is_near (p.x, exact.x, within) && is_near (p.y, exact.y, within);
}

static gboolean
is_marked (const BfMarking *marking, BfVec2 a, BfVec2 b)
{
  double within = marking->worst_mm;

  for (guint i = 0; i < marking->strikes->len; i++)
    if (strike_has (bf_marking_strike (marking, i), a, b, within))
      return TRUE;
  for (guint i = 0; i < marking->joins->len; i++)
    {
      const BfMarkJoin *join = &g_array_index (marking->joins, BfMarkJoin, i);

      if (point_is_near (join->from, a, within) && point_is_near (join->to, b, within))
        return TRUE;
    }
  return FALSE;
}

static gboolean
is_round_mark (const BfMarking *marking, BfVec2 centre, double radius_mm)
{
  for (guint i = 0; i < marking->holes->len; i++)
    {
      const BfMarkHole *hole = &g_array_index (marking->holes, BfMarkHole, i);

      if (point_is_near (hole->centre, centre, marking->worst_mm) &&
          fabs (hole->diameter_mm - 2.0 * radius_mm) < 1e-4)
        return TRUE;
    }
  for (guint i = 0; i < marking->arcs->len; i++)
    {
      const BfMarkArc *arc = &g_array_index (marking->arcs, BfMarkArc, i);

      if (point_is_near (arc->centre, centre, marking->worst_mm) &&
          fabs (arc->radius_mm - radius_mm) < 0.01)
        return TRUE;
    }
  return FALSE;
}

/* Every edge, arc and bend line of the blank is among the marks, within the error stated, which is
 * no more than half a mark of the rule. */
static void
judge (const BfMarking *marking)
{
  const BfFold *fold = marking->fold;
  BfVec2 corner = fold->blank.box.min;

  g_assert_cmpfloat (marking->worst_mm, <=, marking->step_mm / 2.0 + NEAR);
  for (guint i = 0; i < fold->blank.rings->len; i++)
    for (guint k = 0; k < bf_ring_size (bf_blank_ring (&fold->blank, i)); k++)
      {
        const BfRing *ring = bf_blank_ring (&fold->blank, i);
        BfArc arc;

        if (bf_fold_ring_is_slot (fold, i))
          continue;
        if (bf_ring_arc (ring, k, &arc))
          g_assert_true (is_round_mark (marking, bf_vec2_sub (arc.centre, corner), arc.radius));
        else
          g_assert_true (is_marked (marking, bf_vec2_sub (bf_ring_vertex (ring, k)->p, corner),
                                    bf_vec2_sub (bf_ring_vertex (ring, k + 1)->p, corner)));
      }
  for (guint i = 0; i < fold->bends->len; i++)
    g_assert_true (is_marked (marking, bf_vec2_sub (bf_fold_bend (fold, i)->line[0], corner),
                              bf_vec2_sub (bf_fold_bend (fold, i)->line[1], corner)));
}

static void
test_drawn_again (void)
{
  static const double steps[] = { 0.5, BF_MM_PER_INCH / 16.0, THIRTY_SECOND_MM };

  for (guint seed = 0; seed < 150; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (BfMarking) marking = bf_marking_new (fold, steps[seed % G_N_ELEMENTS (steps)]);

      if (fold->blank.n_outer == 1)
        judge (marking);
    }
}

/* In 1/32 in no distance of the tray is off by more than 1/64 in. */
static void
test_inches (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (BfMarking) marking = bf_marking_new (fold, THIRTY_SECOND_MM);

  judge (marking);
  g_assert_cmpfloat (marking->worst_mm, <=, BF_MM_PER_INCH / 64.0);
  g_assert_cmpfloat (marking->worst_mm, >, 0.1);
}

/* A slot's ends are those of the face that the disc comes from. */
static void
test_slots (void)
{
  g_autoptr (BfPart) part = make_rectangle (300.0, 80.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (BfMarking) marking = NULL;

  add_flange (part, "wall", 0, 40.0, 90.0);
  part->bend.way = BF_BEND_WAY_SLOTS;
  part->bend.slot_mm = 50.0;
  part->bend.bridge_mm = 12.0;
  fold = bf_fold (part);
  marking = bf_marking_new (fold, 0.5);
  g_assert_cmpuint (marking->slots->len, ==, bf_fold_bend (fold, 0)->slots->len);
  for (guint i = 0; i < marking->slots->len; i++)
    {
      const BfMarkSlot *slot = &g_array_index (marking->slots, BfMarkSlot, i);

      g_assert_cmpstr (slot->flange, ==, "wall");
      g_assert_cmpfloat_with_epsilon (slot->to.x.exact_mm - slot->from.x.exact_mm,
                                      bf_bend_slot (bf_fold_bend (fold, 0), i)->near_mm, NEAR);
      g_assert_cmpfloat_with_epsilon (slot->far_mm,
                                      bf_bend_slot (bf_fold_bend (fold, 0), i)->far_mm, NEAR);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/marking/angle-by-hand", test_angle_by_hand);
  g_test_add_func ("/make/marking/wipes", test_wipes);
  g_test_add_func ("/make/marking/slot", test_slot);
  g_test_add_func ("/make/marking/drawn-again", test_drawn_again);
  g_test_add_func ("/make/marking/inches", test_inches);
  g_test_add_func ("/make/marking/slots", test_slots);
  return g_test_run ();
}
