/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/units.h"
#include "fold/bend-order.h"
#include "fold/bend-words.h"
#include "make/work-private.h"

/* Angles nearer to each other are one, in degrees. */
#define ALIKE_DEG 0.05
#define SQUARE_DEG 90.0
#define HEM_DEG 180.0

/* How much more than the sum says it may take over a bar (common practice: 1 to 3° for mild steel).
 */
#define PAST_SPREAD_DEG 2.0

static char *
what_words (const BfBendResult *bend)
{
  double deg = bf_rad_to_deg (bend->angle_rad);
  gboolean up = bend->turn == BF_TURN_UP;
  g_autofree char *angle = bf_format_angle (deg);

  if (fabs (deg - HEM_DEG) < ALIKE_DEG)
    /* Translators: the flange's name */
    return g_strdup_printf (up ? _ ("%s: fold it over upward, flat on the metal.")
                               : _ ("%s: fold it over downward, flat on the metal."),
                            bend->flange);
  if (fabs (deg - SQUARE_DEG) < ALIKE_DEG)
    /* Translators: the flange's name */
    return g_strdup_printf (up ? _ ("%s: bend it up, square.") : _ ("%s: bend it down, square."),
                            bend->flange);
  if (deg < SQUARE_DEG)
    /* Translators: the flange's name, and the angle turned */
    return g_strdup_printf (up ? _ ("%s: bend it up by %s, so that it leans out.")
                               : _ ("%s: bend it down by %s, so that it leans out."),
                            bend->flange, angle);
  /* Translators: the flange's name, and the angle turned */
  return g_strdup_printf (up ? _ ("%s: bend it up by %s, past square, so that it leans in.")
                             : _ ("%s: bend it down by %s, past square, so that it leans in."),
                          bend->flange, angle);
}

static char *
hold_words (const BfFold *fold, const BfBendStep *step)
{
  const BfBendResult *bend = bf_fold_bend (fold, step->bend);
  int parent = bf_fold_face (fold, bend->face)->parent;
  const char *other = parent > 0 ? bf_fold_face (fold, (guint)parent)->id : _ ("the base");

  if (bend->way == BF_BEND_WAY_SLOTS)
    return g_strdup (_ ("Push it over by hand, along the slots."));
  if (bend->way == BF_BEND_WAY_SCORE)
    return g_strdup (_ ("Fold it along the groove, by hand."));
  if (step->reach.held == BF_HELD_FLANGE)
    /* Translators: the flange's name */
    return g_strdup_printf (bend->way == BF_BEND_WAY_BRAKE
                                ? _ ("Clamp %s itself in the brake; the rest swings.")
                                : _ ("Clamp %s itself under the bar; the rest swings."),
                            bend->flange);
  /* Translators: the name of a flange, or "the base" */
  return g_strdup_printf (bend->way == BF_BEND_WAY_BRAKE ? _ ("Clamp %s in the brake.")
                                                         : _ ("Clamp %s under the bar."),
                          other);
}

/* Hands do not bend to tenths of a degree, and bars give: a range of whole ones. */
static char *
past_words (const BfBendResult *bend)
{
  double least = MAX (ceil (bf_rad_to_deg (bend->overbend_rad)), 1.0);

  /* Translators: two angles, "1 to 3°" */
  return g_strdup_printf (_ ("%.0f to %.0f°"), least, least + PAST_SPREAD_DEG);
}

static void
add_numbers (const BfWork *work, BfWorkStep *step, const BfBendResult *bend)
{
  double deg = bf_rad_to_deg (bend->angle_rad);
  const char *lost = bf_bend_lost_words (work->fold, bend);

  if (lost != NULL)
    bf_work_add_number (step, _ ("joint"), g_strdup (lost));
  if (fabs (deg - SQUARE_DEG) > ALIKE_DEG && fabs (deg - HEM_DEG) > ALIKE_DEG)
    bf_work_add_number (step, _ ("opening"), bf_format_angle (HEM_DEG - deg));
  if (!isnan (bend->overbend_rad) && fabs (deg - HEM_DEG) > ALIKE_DEG)
    bf_work_add_number (step, _ ("go past by"), past_words (bend));
  bf_work_add_number (step, _ ("inside radius"),
                      bf_format_thin (bend->inside_radius_mm, work->fold->part->units));
  if (!isnan (bend->force_n))
    bf_work_add_number (step, _ ("push"), bf_push_words (bend, work->fold->part->units));
}

static const char *
caution_of (const BfBendResult *bend)
{
  if (bend->way == BF_BEND_WAY_SLOTS || bend->way == BF_BEND_WAY_SCORE)
    return _ ("Bend this line once: bent back, it breaks.");
  if (bf_rad_to_deg (bend->angle_rad) > HEM_DEG - ALIKE_DEG)
    return _ ("Take the bar out at about 135°, and hammer it down over scrap: fingers off.");
  return _ ("Fingers off the closing side.");
}

/* The names of what rises in step with a step's bend: "back, left and right". */
static char *
others_in_step (const BfFold *fold, const BfBendStep *step)
{
  GString *names = g_string_new (NULL);
  guint n = 0, n_named = 0;

  for (guint i = 0; i < fold->order->len; i++)
    n += bf_fold_bend_step (fold, i)->in_step == step->in_step ? 1 : 0;
  for (guint i = 0; i < fold->order->len; i++)
    {
      const BfBendStep *other = bf_fold_bend_step (fold, i);

      if (other->in_step != step->in_step || other->bend == step->bend)
        continue;
      n_named++;
      if (n_named > 1)
        /* Translators: between names in a list, and before the last of them */
        g_string_append (names, n_named + 1 == n ? _ (" and ") : _ (", "));
      g_string_append (names, bf_fold_bend (fold, other->bend)->flange);
    }
  return g_string_free (names, FALSE);
}

/* What shares a folded corner rises in step: told in full where the first of them has its turn. */
static char *
in_step_words (const BfFold *fold, guint at)
{
  const BfBendStep *step = bf_fold_bend_step (fold, at);
  gboolean first = at == 0 || bf_fold_bend_step (fold, at - 1)->in_step != step->in_step;
  g_autofree char *others = step->in_step > 0 ? others_in_step (fold, step) : NULL;

  if (others == NULL)
    return NULL;
  if (first)
    /* Translators: the names of flanges, "back, left and right" */
    return g_strdup_printf (_ ("It rises in step with %s: each a third of the way, then round "
                               "again, and press the folds between them inward as they come up."),
                            others);
  /* Translators: the names of flanges, "back, left and right" */
  return g_strdup_printf (_ ("In step with %s."), others);
}

void
bf_work_add_bend (BfWork *work)
{
  if (work->fold->folded->len > 0)
    bf_work_add (work, BF_STAGE_BEND,
                 g_strdup (_ ("Crease the corners first: strike their folds with a blunt edge over "
                              "wood, so that they know which way to go.")))
        ->shows = BF_SHOWS_BLANK;
  for (guint i = 0; i < work->fold->order->len; i++)
    {
      const BfBendStep *turn = bf_fold_bend_step (work->fold, i);
      const BfBendResult *bend = bf_fold_bend (work->fold, turn->bend);
      g_autofree char *what = what_words (bend);
      g_autofree char *hold = hold_words (work->fold, turn);
      g_autofree char *in_step = in_step_words (work->fold, i);
      BfWorkStep *step =
          bf_work_add (work, BF_STAGE_BEND, g_strjoin (" ", what, hold, in_step, NULL));

      add_numbers (work, step, bend);
      step->caution = caution_of (bend);
      step->shows = BF_SHOWS_BEND;
      step->more = BF_MORE_SUMS;
      step->at = (int)i;
    }
}
