/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/units.h"
#include "fold/second-make.h"

/* The bend of what hangs on a flange's tip, or −1. */
static int
tip_bend (const BfFold *fold, const char *id)
{
  for (guint i = 0; i < bf_part_n_flanges (fold->part); i++)
    {
      const BfFlange *flange = bf_part_flange (fold->part, i);
      const BfFace *face = bf_fold_face_called (fold, flange->id);

      if (flange->edge == BF_EDGE_TIP && g_str_equal (flange->on, id) && face != NULL)
        return face->bend;
    }
  return -1;
}

gboolean
bf_made_flange (const BfFold *fold, const char *id, double measured_mm, BfMadeSize *size)
{
  const BfFace *found;
  int tip;

  g_return_val_if_fail (fold != NULL && id != NULL && size != NULL, FALSE);

  found = bf_fold_face_called (fold, id);
  if (found == NULL || found->bend < 0)
    return FALSE;
  tip = tip_bend (fold, id);
  *size = (BfMadeSize){ .asked_mm = bf_part_find_flange (fold->part, id)->length_mm,
                        .measured_mm = measured_mm,
                        .bends = { found->bend, tip },
                        .grows = { -1, 1 },
                        .n_cut_edges = tip < 0 ? 1U : 0U };
  return TRUE;
}

gboolean
bf_made_base (const BfFold *fold,
              const char *id,
              const char *across,
              const double asked_measured_mm[2],
              BfMadeSize *size)
{
  const BfFace *found, *other = NULL;

  g_return_val_if_fail (fold != NULL && id != NULL && size != NULL, FALSE);

  found = bf_fold_face_called (fold, id);
  if (across != NULL)
    other = bf_fold_face_called (fold, across);
  if (found == NULL || found->parent != 0 ||
      (across != NULL && (other == NULL || other->parent != 0)))
    return FALSE;
  *size = (BfMadeSize){ .asked_mm = asked_measured_mm[0],
                        .measured_mm = asked_measured_mm[1],
                        .bends = { found->bend, other != NULL ? other->bend : -1 },
                        .grows = { 1, 1 },
                        .n_cut_edges = other != NULL ? 0U : 1U };
  return TRUE;
}

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
      radius = bf_format_decimal (second->radius_mm, 2);
      /* Translators: a length in mm. */
      return g_strdup_printf (
          _ ("The bends came out with another inside radius. Make the next blank "
             "with %s mm."),
          radius);
    case BF_MADE_OFF_LINE:
    case BF_MADE_WRONG_SIDE:
      return off_line_words (fold, second);
    case BF_MADE_AS_ASKED:
    default:
      return g_strdup (
          _ ("Nothing is off by more than is to be expected. Make the next one alike."));
    }
}
