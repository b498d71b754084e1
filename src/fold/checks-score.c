/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-score.h"

#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/units.h"
#include "fold/checks.h"
#include "fold/score.h"

/* What a grinder guided by hand holds of a depth, either way (common practice). */
#define HAND_DEPTH_MM 0.2

static void
add_too_far (BfFold *fold, const BfBendResult *bend, const BfFlange *flange)
{
  BfCheck check = bf_checks_at_bend (bend, "score-too-far", BF_SEVERITY_MUST_FIX);

  check.found = flange->angle_deg;
  check.needed = bf_rad_to_deg (BF_SCORE_MAX_RAD);
  bf_checks_add (
      fold, check, flange->id,
      /* Translators: the flange's name, and two angles in degrees */
      g_strdup_printf (_ ("%s is turned %g°, and a scored bend closes at %g° at most: it "
                          "is folded as a bend over a bar. Turn it less, or bend it in "
                          "another way."),
                       flange->id, check.found, check.needed));
}

static void
add_too_shallow (BfFold *fold, const BfBendResult *bend, const BfFlange *flange, double left_mm)
{
  double t = fold->layout->thickness_mm;
  g_autofree char *found = bf_format_thin (left_mm, fold->part->units);
  g_autofree char *metal = bf_format_thin (t, fold->part->units);
  BfCheck check = bf_checks_at_bend (bend, "score-too-shallow", BF_SEVERITY_MUST_FIX);

  check.found = left_mm;
  check.needed = bf_default_score_left_mm (t);
  bf_checks_add (fold, check, flange->id,
                 /* Translators: the flange's name, and two lengths with their units */
                 g_strdup_printf (_ ("The score of %s is to leave %s of metal that is %s thick: "
                                     "there is nothing to cut, and it is folded as a bend over a "
                                     "bar."),
                                  flange->id, found, metal));
}

/* The push goes with the square of the skin, so that what a hand misses by counts twice. */
static void
check_cut_by_hand (BfFold *fold, const BfBendResult *bend)
{
  double left = bend->score_left_mm, more = (left + HAND_DEPTH_MM) / left;
  g_autofree char *skin = bf_format_thin (left, fold->part->units);
  g_autofree char *missed = bf_checks_length (fold, HAND_DEPTH_MM);
  BfCheck check = bf_checks_at_bend (bend, "score-by-hand", BF_SEVERITY_LOOK_AT);

  if (!bf_part_drills_reliefs (fold->part))
    return;
  check.found = left;
  bf_checks_add (
      fold, check, bend->flange,
      left <= HAND_DEPTH_MM
          /* Translators: the flange's name, and two lengths with their units */
          ? g_strdup_printf (_ ("The score of %s leaves %s. Have it milled or routed: a grinder "
                                "held by hand is off by ±%s and cuts right through."),
                             bend->flange, skin, missed)
          /* Translators: the flange's name, two lengths with their units, and a number */
          : g_strdup_printf (_ ("The score of %s leaves %s. Have it milled or routed: a grinder "
                                "held by hand is off by ±%s, and with so much more left the push "
                                "is %.1f times as hard."),
                             bend->flange, skin, missed, more * more));
}

static void
check_flange (BfFold *fold, guint i)
{
  const BfFlange *flange = fold->layout->flaps[i].flange;
  const BfBendResult *bend = bf_fold_bend (fold, i);
  double left;

  switch (bf_score_fault (fold->part, flange, &left))
    {
    case BF_SCORE_TOO_FAR:
      add_too_far (fold, bend, flange);
      break;
    case BF_SCORE_TOO_SHALLOW:
      add_too_shallow (fold, bend, flange, left);
      break;
    case BF_SCORE_SOUND:
    default:
      if (bend->way == BF_BEND_WAY_SCORE)
        check_cut_by_hand (fold, bend);
      break;
    }
}

void
bf_checks_find_scores (BfFold *fold)
{
  for (guint i = 0; i < fold->bends->len; i++)
    check_flange (fold, i);
}
