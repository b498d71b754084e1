/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-bends.h"

#include <glib/gi18n.h>

#include "core/tolerance.h"
#include "fold/bend-force.h"
#include "fold/bend-words.h"
#include "fold/checks.h"
#include "fold/slot-plan.h"

/* Bends that run nearer to the grain than this are looked at. */
#define GRAIN_LEAST_DEG 30.0

/* Boards are named in such steps. */
#define BOARD_STEP_MM 10.0

/* What is bent by hand alone, because slots or a score have weakened it. */
static gboolean
is_bent_by_hand (const BfBendResult *bend)
{
  return bend->way == BF_BEND_WAY_SLOTS || bend->way == BF_BEND_WAY_SCORE;
}

/* ---- the push ----------------------------------------------------------------------------- */

double
bf_bend_board_mm (const BfBendResult *bend)
{
  double lever = bend->lever_mm * bend->force_n / (BF_FORCE_AIM * bend->limit_n);

  return ceil (lever / BOARD_STEP_MM) * BOARD_STEP_MM;
}

static char *
force_message (const BfFold *fold, const BfBendResult *bend, gboolean must)
{
  g_autofree char *push = bf_push_weight (bend->force_n, fold->part->units);
  g_autofree char *most = bf_push_weight (bend->limit_n, fold->part->units);
  g_autofree char *at = bf_checks_length (fold, bend->lever_mm);
  g_autofree char *board = bf_checks_length (fold, bf_bend_board_mm (bend));

  if (must)
    return g_strdup_printf (
        /* Translators: the flange's name, a push, a length, the most that the person can push, and
         * a length */
        _ ("%s needs a push of %s at %s from the bend, and %s is all you have. Clamp on a board "
           "that reaches %s, take thinner metal, or use a brake."),
        bend->flange, push, at, most, board);
  return g_strdup_printf (
      /* Translators: the flange's name, a push, a length, the most that the person can push, and a
       * length */
      _ ("%s takes a hard push: %s at %s from the bend, of the %s you have. With a board that "
         "reaches %s it goes easily."),
      bend->flange, push, at, most, board);
}

static void
check_force (BfFold *fold, const BfBendResult *bend)
{
  gboolean must = is_bent_by_hand (bend) && bend->force_n > bend->limit_n;
  BfCheck check =
      bf_checks_at_bend (bend, "force-too-high", must ? BF_SEVERITY_MUST_FIX : BF_SEVERITY_LOOK_AT);

  if (isnan (bend->force_n) || bend->force_n <= BF_FORCE_LOOK_AT * bend->limit_n)
    return;
  check.found = bend->force_n;
  check.needed = must ? bend->limit_n : BF_FORCE_LOOK_AT * bend->limit_n;
  bf_checks_add (fold, check, bend->flange, force_message (fold, bend, must));
}

/* ---- the grain ---------------------------------------------------------------------------- */

/* Metal bent along the way it was rolled cracks sooner: DIN 6935 asks for the radius of the next
 * thicker metal there. How near the two may come is common practice. */
static void
check_grain (BfFold *fold, const BfBendResult *bend)
{
  BfVec2 run = bf_vec2_sub (bend->line[1], bend->line[0]);
  double off = bf_deg_to_rad (fold->part->metal.grain_deg) - atan2 (run.y, run.x);
  BfCheck check = bf_checks_at_bend (bend, "bend-along-grain", BF_SEVERITY_LOOK_AT);

  check.found = bf_rad_to_deg (fabs (remainder (off, G_PI)));
  check.needed = GRAIN_LEAST_DEG;
  if (isnan (off) || bf_vec2_length (run) < BF_TOLERANCE_SIZE_MM ||
      check.found > GRAIN_LEAST_DEG + BF_TOLERANCE_SIZE_MM)
    return;
  bf_checks_add (fold, check, bend->flange,
                 /* Translators: the flange's name, and two angles in whole degrees */
                 g_strdup_printf (_ ("%s is bent %.0f° off the grain: within %.0f° metal cracks "
                                     "sooner. Turn the blank on the stock, or bend it rounder."),
                                  bend->flange, check.found, check.needed));
}

/* ---- what is left ------------------------------------------------------------------------- */

/* Once a part: the bend that has lost most. */
static void
check_strength (BfFold *fold)
{
  const BfBendResult *weakest = NULL;
  BfCheck check;

  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);

      if (bf_bend_lost_words (fold, bend) != NULL &&
          (weakest == NULL || bf_bend_metal_left (fold, bend) < bf_bend_metal_left (fold, weakest)))
        weakest = bend;
    }
  if (weakest == NULL)
    return;
  check = bf_checks_at_bend (weakest, "joint-weakened", BF_SEVERITY_GOOD_TO_KNOW);
  check.found = bf_bend_metal_left (fold, weakest);
  bf_checks_add (fold, check, weakest->flange,
                 /* Translators: a flange's name, and "a quarter of the metal left" */
                 g_strdup_printf (_ ("The bend of %s has %s. It holds its shape; hang no load on "
                                     "it before the bend is welded up or backed."),
                                  weakest->flange, bf_bend_lost_words (fold, weakest)));
}

/* ---- the slots ---------------------------------------------------------------------------- */

static void
check_bridges (BfFold *fold, const BfBendResult *bend, const BfSlotTool *tool)
{
  BfCheck check = bf_checks_at_bend (bend, "bridge-too-small", BF_SEVERITY_MUST_FIX);
  g_autofree char *found = NULL, *needed = NULL;

  check.found = bf_bend_bridge_mm (bend);
  check.needed = tool->least_bridge_mm;
  if (check.found >= check.needed - BF_TOLERANCE_SIZE_MM)
    return;
  found = bf_checks_length (fold, check.found);
  needed = bf_checks_length (fold, check.needed);
  bf_checks_add (fold, check, bend->flange,
                 /* Translators: the flange's name, and two lengths with their units */
                 g_strdup_printf (_ ("The bridges between the slots of %s are %s long on the face "
                                     "you cut from; below %s they tear. Make them longer."),
                                  bend->flange, found, needed));
}

static void
add_not_cuttable (BfFold *fold, const BfBendResult *bend, double found_mm, double needed_mm)
{
  BfCheck check = bf_checks_at_bend (bend, "slot-not-cuttable", BF_SEVERITY_LOOK_AT);
  g_autofree char *found = bf_checks_length (fold, found_mm);
  g_autofree char *needed = bf_checks_length (fold, needed_mm);

  check.found = found_mm;
  check.needed = needed_mm;
  bf_checks_add (
      fold, check, bend->flange,
      found_mm < needed_mm
          /* Translators: the flange's name, and two lengths with their units */
          ? g_strdup_printf (_ ("The slots of %s are %s long, and the shortest that your disc can "
                                "cut through is %s."),
                             bend->flange, found, needed)
          /* Translators: the flange's name, and two lengths with their units */
          : g_strdup_printf (_ ("The slots of %s are %s long; one plunge of your disc cuts %s at "
                                "most."),
                             bend->flange, found, needed));
}

static void
check_cuttable (BfFold *fold, const BfBendResult *bend, const BfSlotTool *tool)
{
  double near = bend->slots->len > 0 ? bf_bend_slot (bend, 0)->near_mm : NAN;

  if (!tool->cuts)
    bf_checks_add (fold, bf_checks_at_bend (bend, "slot-not-cuttable", BF_SEVERITY_LOOK_AT),
                   bend->flange,
                   g_strdup (_ ("Snips cannot cut slots. Choose a disc or a service for cutting, "
                                "or another way to bend.")));
  else if (near < tool->shortest_mm - BF_TOLERANCE_SIZE_MM)
    add_not_cuttable (fold, bend, near, tool->shortest_mm);
  else if (!isnan (tool->disc_mm) && near > tool->longest_mm + BF_TOLERANCE_SIZE_MM)
    add_not_cuttable (fold, bend, near, tool->longest_mm);
}

void
bf_checks_find_bends (BfFold *fold)
{
  BfSlotTool tool = bf_slot_tool (fold->part);

  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);

      check_force (fold, bend);
      check_grain (fold, bend);
      if (bend->way != BF_BEND_WAY_SLOTS)
        continue;
      check_bridges (fold, bend, &tool);
      check_cuttable (fold, bend, &tool);
    }
  check_strength (fold);
}
