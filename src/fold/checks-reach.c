/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-reach.h"

#include <glib/gi18n.h>

#include "fold/bend-order.h"
#include "fold/checks.h"

static char *
hold_words (const BfFold *fold, const BfBendStep *step)
{
  g_autofree char *found = bf_checks_length (fold, step->reach.clear_mm);
  g_autofree char *needed = bf_checks_length (fold, BF_BAR_HOLD_MM);

  /* Translators: the flange's name, and two lengths with their units */
  return g_strdup_printf (_ ("%s leaves the bar only %s of flat to hold, on the better side of its "
                             "bend; %s is the least. Make it longer, or bend it by slots."),
                          bf_fold_bend (fold, step->bend)->flange, found, needed);
}

static char *
bar_words (const BfFold *fold, const BfBendStep *step)
{
  const char *blocker = bf_fold_face (fold, step->reach.blocker)->id;
  g_autofree char *found = bf_checks_length (fold, step->reach.clear_mm);
  g_autofree char *needed = bf_checks_length (fold, BF_BAR_WIDTH_MM);

  /* Translators: the flange's name, the name of another flange, and two lengths with their units */
  return g_strdup_printf (_ ("%s cannot be clamped in any order of bending: %s is in the way and "
                             "leaves room for a bar %s wide; %s is the least. Bend it by slots, or "
                             "join it on afterwards."),
                          bf_fold_bend (fold, step->bend)->flange, blocker, found, needed);
}

static char *
swing_words (const BfFold *fold, const BfBendStep *step)
{
  const char *blocker = bf_fold_face (fold, step->reach.blocker)->id;

  /* Translators: the flange's name, and the name of another flange */
  return g_strdup_printf (_ ("%s meets %s while it is bent, in any order of bending. Make one of "
                             "them shorter, or join it on afterwards."),
                          bf_fold_bend (fold, step->bend)->flange, blocker);
}

static void
describe (BfFold *fold, const BfBendStep *step)
{
  const BfBendResult *bend = bf_fold_bend (fold, step->bend);
  BfCheck check = { .code = "cannot-reach",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .found = step->reach.clear_mm,
                    .needed = NAN,
                    .place = bf_vec2_scale (bf_vec2_add (bend->line[0], bend->line[1]), 0.5) };

  if (step->reach.fault == BF_REACH_HOLD)
    check.needed = BF_BAR_HOLD_MM;
  if (step->reach.fault == BF_REACH_BAR)
    check.needed = BF_BAR_WIDTH_MM;
  bf_checks_add (fold, check, bend->flange,
                 step->reach.fault == BF_REACH_HOLD  ? hold_words (fold, step)
                 : step->reach.fault == BF_REACH_BAR ? bar_words (fold, step)
                                                     : swing_words (fold, step));
}

void
bf_checks_find_reach (BfFold *fold)
{
  if (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) > 0)
    return;
  for (guint i = 0; i < fold->order->len; i++)
    if (bf_fold_bend_step (fold, i)->reach.fault != BF_REACH_FREE)
      describe (fold, bf_fold_bend_step (fold, i));
}
