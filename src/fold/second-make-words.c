/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/units.h"
#include "fold/second-make.h"

/* To a tenth or a 64th: what can be marked. */
static char *
length (const BfFold *fold, double length_mm)
{
  return bf_format_length (fabs (length_mm), fold->part->units);
}

static char *
off_line_words (const BfFold *fold, const BfSecondMake *second)
{
  const char *name = second->bend >= 0 ? bf_fold_bend (fold, (guint)second->bend)->flange
                                       /* Translators: in the place of a flange's name. */
                                       : _ ("every flange");
  g_autofree char *off = length (fold, second->off_mm);

  if (second->cause == BF_MADE_WRONG_SIDE)
    /* Translators: a flange's name, and a length with its unit. */
    return g_strdup_printf (
        _ ("The bend of %s is %s off, as when the bar lies on the wrong side of "
           "its line. The blank is right: look at the side that the ticks show, "
           "and cut the next one alike."),
        name, off);
  if (second->off_mm > 0.0)
    /* Translators: a flange's name, and twice the same length with its unit. */
    return g_strdup_printf (_ ("The bend of %s was made %s beyond its line, toward the tip. The "
                               "blank is right: set the bar %s further in next time."),
                            name, off, off);
  /* Translators: a flange's name, and twice the same length with its unit. */
  return g_strdup_printf (_ ("The bend of %s was made %s short of its line, away from the tip. The "
                             "blank is right: set the bar %s further out next time."),
                          name, off, off);
}

char *
bf_second_make_words (const BfFold *fold, const BfSecondMake *second)
{
  g_autofree char *k = NULL, *radius = NULL;

  g_return_val_if_fail (fold != NULL && second != NULL, NULL);

  switch (second->cause)
    {
    case BF_MADE_ALLOWANCE:
      k = bf_format_decimal (second->k, 3);
      /* Translators: a K-factor, "0.395". */
      return g_strdup_printf (_ ("The bends took another length than was thought. Make the next "
                                 "blank with K %s."),
                              k);
    case BF_MADE_RADIUS:
      radius = length (fold, second->radius_mm);
      /* Translators: a length with its unit. */
      return g_strdup_printf (
          _ ("The bends came out with another inside radius. Make the next blank "
             "for %s."),
          radius);
    case BF_MADE_OFF_LINE:
    case BF_MADE_WRONG_SIDE:
      return off_line_words (fold, second);
    case BF_MADE_NOT_TOLD:
      return g_strdup (_ ("No single cause explains what was measured. Measure again, and look for "
                          "a bend beside its line."));
    case BF_MADE_AS_ASKED:
    default:
      return g_strdup (
          _ ("Nothing is off by more than is to be expected. Make the next one alike."));
    }
}
