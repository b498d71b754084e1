/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What slots leave, worked out anew from the slots as they are drawn: the push, the metal kept, the
 * bridges, and the two lengths of a disc's slot by its circle. Nothing here calls the planner. */

#include "look-up.h"
#include "make-part.h"

#define HAND_BRIDGE_MM 10.0

static const double thicknesses_mm[] = { 0.9, 1.2, 1.5, 2.0 };
static const double lengths_mm[] = { 90.0, 120.0, 175.0, 250.0, 400.0 };
static const double discs_mm[] = { 100.0, 115.0, 125.0, 180.0, 230.0, 0.0 }; /* 0: a table */

typedef struct
{
  double t_mm, length_mm, disc_mm;
} Case;

/* A strip as long as the bend, folded at one edge: no reliefs, so that the whole line is metal. */
static BfPart *
make_case (const Case *c)
{
  BfPart *part = make_rectangle (c->length_mm, 60.0);

  add_flange (part, "wall", 0, 55.0, 90.0);
  part->metal.thickness_mm = c->t_mm;
  part->bend.way = BF_BEND_WAY_SLOTS;
  part->bend.inside_radius_mm = NAN;
  part->bend.allowance.k = NAN;
  part->cutting.by = c->disc_mm > 0.0 ? BF_CUTTING_DISC : BF_CUTTING_TABLE;
  part->cutting.disc_diameter_mm = c->disc_mm > 0.0 ? c->disc_mm : NAN;
  return part;
}

static double
least_bridge_mm (const Case *c)
{
  return c->disc_mm > 0.0 ? HAND_BRIDGE_MM : MAX (2.0 * c->t_mm, 3.0);
}

/* Pythagoras in the disc: a chord a that lies h from the middle has (a/2)² + h² = (D/2)². The far
 * face's lies t nearer to the rim. */
static double
far_by_circle_mm (const Case *c, double near_mm)
{
  double r = c->disc_mm / 2.0, h = sqrt (r * r - near_mm * near_mm / 4.0) + c->t_mm;

  return 2.0 * sqrt (r * r - h * h);
}

/* Where a slot begins and ends along the bend, on the near face. */
static double
begins (const BfBendResult *bend, guint i)
{
  const BfBendSlot *slot = bf_bend_slot (bend, i);
  return bf_vec2_distance (slot->at, bend->line[0]) - slot->near_mm / 2.0;
}

static double
ends (const BfBendResult *bend, guint i)
{
  return begins (bend, i) + bf_bend_slot (bend, i)->near_mm;
}

static void
check_bridges (const Case *c, const BfBendResult *bend)
{
  double at = 0.0;

  for (guint i = 0; i < bend->slots->len; i++)
    {
      g_assert_cmpfloat (begins (bend, i) - at, >=, least_bridge_mm (c) - 1e-6);
      at = ends (bend, i);
    }
  g_assert_cmpfloat (c->length_mm - at, >=, least_bridge_mm (c) - 1e-6);
}

/* The drawn slot is as long as the mean of its two faces, and lies on the bend line. */
static void
check_slot (const Case *c, const BfBendResult *bend, const BfBendSlot *slot)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (bend->line[1], bend->line[0]));
  double off = bf_vec2_cross (along, bf_vec2_sub (slot->at, bend->line[0]));
  double far = c->disc_mm > 0.0 ? far_by_circle_mm (c, slot->near_mm) : slot->near_mm;

  g_assert_cmpfloat_with_epsilon (off, 0.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (slot->far_mm, far, 1e-6);
  g_assert_cmpfloat_with_epsilon (bf_ring_area (slot->ring) / slot->width_mm,
                                  (slot->near_mm + far) / 2.0, 1e-6);
  if (c->disc_mm > 0.0) /* a guard and a nut stop it at a third of its width */
    g_assert_cmpfloat (c->disc_mm / 2.0 -
                           sqrt (c->disc_mm * c->disc_mm - slot->near_mm * slot->near_mm) / 2.0,
                       <=, c->disc_mm / 3.0 + 1e-6);
}

static double
kept_mm (const Case *c, const BfBendResult *bend)
{
  double kept = c->length_mm;

  for (guint i = 0; i < bend->slots->len; i++)
    {
      double near = bf_bend_slot (bend, i)->near_mm;
      kept -= (near + (c->disc_mm > 0.0 ? far_by_circle_mm (c, near) : near)) / 2.0;
    }
  return kept;
}

/* What could be left at the least with so many slots. */
static double
least_kept_mm (const Case *c, guint n)
{
  double depth = c->disc_mm / 3.0, near = (c->length_mm - (n + 1) * least_bridge_mm (c)) / n;
  double longest = c->disc_mm > 0.0 ? 2.0 * sqrt (depth * (c->disc_mm - depth)) : 100.0;

  near = MIN (near, longest);
  return c->length_mm - n * (near + (c->disc_mm > 0.0 ? far_by_circle_mm (c, near) : near)) / 2.0;
}

/* Mild steel: σ = (210 + 340)/2 = 275 MPa. Palms push 55 − 15 = 40 mm from the line; half of 200 N
 * is aimed at. */
static void
check_case (const Case *c)
{
  g_autoptr (BfPart) part = make_case (c);
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfBendResult *bend = find_bend (fold, "wall");
  guint n = bend->slots->len;
  double kept = kept_mm (c, bend), force = 275.0 * kept * c->t_mm * c->t_mm / 4.0 / 40.0;
  double may_keep = 100.0 * 40.0 * 4.0 / (275.0 * c->t_mm * c->t_mm);
  const BfCheck *check = find_check (fold, "force-too-high", "wall");

  g_test_message ("t %g, %g long, disc %g: %u slots, %g kept, %g N", c->t_mm, c->length_mm,
                  c->disc_mm, n, kept, force);
  check_bridges (c, bend);
  for (guint i = 0; i < n; i++)
    check_slot (c, bend, bf_bend_slot (bend, i));
  g_assert_cmpfloat_with_epsilon (bend->kept * c->length_mm, kept, 1e-6);
  g_assert_cmpfloat_with_epsilon (bend->force_n, force, 1e-6);
  g_assert_cmpfloat_with_epsilon (
      fold->blank.area_before_cuts_mm2 - fold->blank.area_mm2,
      (c->length_mm - kept) * (n > 0 ? bf_bend_slot (bend, 0)->width_mm : 1.0), 1e-4);
  /* No slot too many: one less would leave too much. */
  if (n > 0 && kept <= may_keep + 1e-6)
    g_assert_true (n == 1 ? c->length_mm > may_keep : least_kept_mm (c, n - 1) > may_keep - 0.5);
  g_assert_true ((check != NULL) == (force > 120.0));
  g_assert_null (find_check (fold, "bridge-too-small", NULL));
  g_assert_null (find_check (fold, "slot-not-cuttable", NULL));
}

static void
test_all (void)
{
  for (guint t = 0; t < G_N_ELEMENTS (thicknesses_mm); t++)
    for (guint l = 0; l < G_N_ELEMENTS (lengths_mm); l++)
      for (guint d = 0; d < G_N_ELEMENTS (discs_mm); d++)
        {
          const Case c = { thicknesses_mm[t], lengths_mm[l], discs_mm[d] };
          check_case (&c);
        }
}

/* A slot is as wide as its cut: the kerf of 1.3 for a disc and 1.5 for a table by default, 1 mm for
 * a service that asks for none. */
static void
test_width (void)
{
  static const struct
  {
    BfCuttingWay by;
    double kerf_mm, width_mm;
  } rows[] = { { BF_CUTTING_DISC, NAN, 1.3 },
               { BF_CUTTING_DISC, 2.5, 2.5 },
               { BF_CUTTING_TABLE, NAN, 1.5 },
               { BF_CUTTING_SERVICE, NAN, 1.0 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const Case c = { 1.5, 250.0, 125.0 };
      g_autoptr (BfPart) part = make_case (&c);
      g_autoptr (BfFold) fold = NULL;

      part->cutting.by = rows[i].by;
      part->cutting.kerf_mm = rows[i].kerf_mm;
      fold = bf_fold (part);
      g_assert_cmpfloat_with_epsilon (bf_bend_slot (find_bend (fold, "wall"), 0)->width_mm,
                                      rows[i].width_mm, 1e-9);
    }
}

/* The least distance of a slot's near-face length from a point. */
static double
slot_distance (const BfBendSlot *slot, BfVec2 p)
{
  BfVec2 along = bf_vec2 (cos (slot->angle_rad), sin (slot->angle_rad));
  BfVec2 to = bf_vec2_sub (p, slot->at);
  double u = fabs (bf_vec2_dot (to, along)), v = bf_vec2_cross (along, to);

  return hypot (MAX (u - slot->near_mm / 2.0, 0.0), v);
}

/* A tray with round corner reliefs and a hole across one bend: a bridge is left to each of them. */
static void
test_clear_of_reliefs_and_holes (void)
{
  g_autoptr (BfPart) part = make_tray (300.0, 180.0, 60.0, 90.0);
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);
  g_autoptr (BfFold) fold = NULL;
  guint n = 0;

  part->bend.way = BF_BEND_WAY_SLOTS;
  part->bend.inside_radius_mm = NAN;
  hole->at_mm = bf_vec2 (140.0, 2.0);
  hole->diameter_mm = 12.0;
  g_ptr_array_add (part->openings, hole);
  fold = bf_fold (part);
  g_assert_cmpuint (fold->reliefs->len, ==, 4);
  for (guint b = 0; b < fold->bends->len; b++)
    for (guint i = 0; i < bf_fold_bend (fold, b)->slots->len; i++, n++)
      {
        const BfBendSlot *slot = bf_bend_slot (bf_fold_bend (fold, b), i);

        for (guint k = 0; k < fold->reliefs->len; k++)
          g_assert_cmpfloat (slot_distance (slot, bf_fold_relief (fold, k)->at) -
                                 bf_fold_relief (fold, k)->diameter_mm / 2.0,
                             >=, HAND_BRIDGE_MM - 0.1);
        g_assert_cmpfloat (slot_distance (slot, hole->at_mm) - 6.0, >=, HAND_BRIDGE_MM - 0.1);
      }
  g_assert_cmpuint (n, >=, 8);
}

/* 15 N on 40 mm is out of reach for every plan. What the check says would do, does: a board that
 * long brings the push down to half of the 15. */
static void
test_limit_out_of_reach (void)
{
  for (guint d = 0; d < G_N_ELEMENTS (discs_mm); d++)
    {
      const Case c = { 1.5, 250.0, discs_mm[d] };
      g_autoptr (BfPart) part = make_case (&c);
      g_autoptr (BfFold) fold = NULL, with_board = NULL;
      g_autofree char *board = NULL;
      const BfCheck *check;
      double lever;

      part->bend.hand_limit_n = 15.0;
      part->bend.hand_lever_mm = 40.0;
      fold = bf_fold (part);
      check = find_check (fold, "force-too-high", "wall");
      g_assert_nonnull (check);
      g_assert_cmpint (check->severity, ==, BF_SEVERITY_MUST_FIX);
      g_assert_cmpfloat_with_epsilon (check->found, find_bend (fold, "wall")->force_n, 1e-9);
      g_assert_cmpfloat_with_epsilon (check->needed, 15.0, 1e-9);
      lever = ceil (40.0 * check->found / 7.5 / 10.0) * 10.0;
      board = g_strdup_printf ("%g mm", lever);
      g_test_message ("%s", check->message);
      g_assert_nonnull (strstr (check->message, board));
      g_assert_nonnull (strstr (check->message, "brake"));
      part->bend.hand_lever_mm = lever;
      with_board = bf_fold (part);
      g_assert_null (find_check (with_board, "force-too-high", NULL));
      g_assert_cmpfloat (find_bend (with_board, "wall")->force_n, <=, 7.5 + 0.5);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/fold/slots-drawn/all", test_all);
  g_test_add_func ("/fold/slots-drawn/width", test_width);
  g_test_add_func ("/fold/slots-drawn/clear-of-reliefs-and-holes", test_clear_of_reliefs_and_holes);
  g_test_add_func ("/fold/slots-drawn/limit-out-of-reach", test_limit_out_of_reach);
  return g_test_run ();
}
