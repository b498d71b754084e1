/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/setup-changes.h"

#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/drills.h"
#include "core/units.h"
#include "fold/allowance.h"
#include "fold/bend-words.h"
#include "fold/metal-moved.h"

/* "what was → is", unless both read alike. was and is: (transfer full), NULL for none. */
static void
add_change (GString *words, const char *what, char *was, char *is)
{
  if (was != NULL && is != NULL && !g_str_equal (was, is))
    {
      if (words->len > 0)
        g_string_append (words, ", ");
      /* Translators: what has changed, what it was, what it is: "blank 274.7 mm → 275.1 mm". */
      g_string_append_printf (words, _ ("%s %s → %s"), what, was, is);
    }
  g_free (was);
  g_free (is);
}

/* The drill of the first corner, as one that stands for all. */
static char *
relief_drill (const BfFold *fold)
{
  for (guint i = 0; i < fold->reliefs->len; i++)
    if (bf_fold_relief (fold, i)->drill != NULL)
      return bf_drill_words (bf_fold_relief (fold, i)->drill);
  return fold->reliefs->len > 0 ? g_strdup (_ ("none")) : NULL;
}

/* ---- what a tool or a way of bending brings with it ---- */

static char *
thin (const BfFold *fold, double length_mm)
{
  return bf_format_thin (length_mm, fold->part->units);
}

static char *
corner_gap (const BfFold *fold)
{
  return fold->seams->len > 0 ? thin (fold, bf_part_resolve_gap_mm (fold->part, NULL)) : NULL;
}

static char *
slots (const BfFold *fold)
{
  guint n = 0;

  for (guint i = 0; i < fold->bends->len; i++)
    n += bf_fold_bend (fold, i)->slots->len;
  return g_strdup_printf ("%u", n);
}

/* What corners are joined by, beyond what was drawn. */
static char *
tabs (const BfFold *fold)
{
  return g_strdup_printf ("%u", bf_part_n_flanges (fold->part) - bf_part_n_flanges (fold->asked));
}

static char *
folded_corners (const BfFold *fold)
{
  return g_strdup_printf ("%u", fold->folded->len);
}

static char *
push (const BfFold *fold)
{
  const BfBendResult *hardest = bf_hardest_bend (fold);

  return hardest != NULL ? bf_push_words (hardest, fold->part->units) : NULL;
}

static void
add_tool_changes (GString *words, const BfFold *before, const BfFold *after)
{
  add_change (words, _ ("relief drill"), relief_drill (before), relief_drill (after));
  add_change (words, _ ("kerf"), thin (before, bf_part_kerf_mm (before->part)),
              thin (after, bf_part_kerf_mm (after->part)));
  add_change (words, _ ("slack"), thin (before, bf_part_slack_mm (before->part)),
              thin (after, bf_part_slack_mm (after->part)));
  add_change (words, _ ("corner gap"), corner_gap (before), corner_gap (after));
}

static char *
blank_size (const BfFold *fold)
{
  const BfBox *box = &fold->blank.box;
  g_autofree char *width = bf_format_number (box->max.x - box->min.x, fold->part->units);
  g_autofree char *height = bf_format_length (box->max.y - box->min.y, fold->part->units);

  return g_strdup_printf ("%s × %s", width, height);
}

static double
part_k (const BfFold *fold)
{
  BfBend bend = bf_part_resolve_bend (fold->part, NULL);

  return bf_allowance_k (&bend.allowance, bend.inside_radius_mm, fold->part->metal.thickness_mm);
}

/* One of a trial bend says so, since it came by itself. */
static char *
k (const BfFold *fold)
{
  BfBend bend = bf_part_resolve_bend (fold->part, NULL);
  g_autofree char *number = bf_format_decimal (part_k (fold), 3);

  if (bend.allowance.rule != BF_ALLOWANCE_TRIAL_BEND)
    return g_steal_pointer (&number);
  /* Translators: a K-factor */
  return g_strdup_printf (_ ("%s by a trial bend"), number);
}

static char *
radius (const BfFold *fold)
{
  BfBend bend = bf_part_resolve_bend (fold->part, NULL);

  return bf_format_thin (bend.inside_radius_mm, fold->part->units);
}

/* Below this nobody can tell that metal has moved. */
#define MOVED_LEAST_MM 0.005

/* What counting sizes the other way could not leave where it was. */
static void
add_moved_metal (GString *words, const BfFold *before, const BfFold *after)
{
  guint face = 0;
  double moved_mm = bf_fold_metal_moved_mm (before, after, &face);
  g_autofree char *moved = bf_format_length (moved_mm, after->part->units);

  if (moved_mm < MOVED_LEAST_MM)
    return;
  if (words->len > 0)
    g_string_append (words, ", ");
  /* Translators: a length with its unit, and the name of a flange or "the base" */
  g_string_append_printf (words, _ ("up to %s of metal moves at %s: no size can say it otherwise"),
                          moved, face == 0 ? _ ("the base") : bf_fold_face (after, face)->id);
}

char *
bf_setup_changes (const BfFold *before, const BfFold *after)
{
  GString *words = g_string_new (NULL);
  gboolean empty;

  g_return_val_if_fail (before != NULL && after != NULL, NULL);

  if (before->part->units == after->part->units)
    add_tool_changes (words, before, after);
  add_change (words, _ ("inside radius"), radius (before), radius (after));
  add_change (words, "K", k (before), k (after));
  add_change (words, _ ("slots"), slots (before), slots (after));
  add_change (words, _ ("tabs"), tabs (before), tabs (after));
  add_change (words, _ ("folded corners"), folded_corners (before), folded_corners (after));
  if (before->part->units == after->part->units)
    add_change (words, _ ("push"), push (before), push (after));
  add_change (words, _ ("blank"), blank_size (before), blank_size (after));
  if (before->part->measure != after->part->measure)
    add_moved_metal (words, before, after);
  empty = words->len == 0;
  return g_string_free (words, empty);
}

char *
bf_setup_expect_words (const BfFold *fold)
{
  BfExpectedError error;
  guint bend = 0, n = 0;
  g_autofree char *off = NULL;

  g_return_val_if_fail (fold != NULL, NULL);

  n = fold->bends->len > 0 ? 1 : 0;
  bf_expected_error (fold, &bend, n, n > 0 ? 1 : 2, &error);
  off = bf_format_length (error.total_mm, fold->part->units);
  /* Translators: a length with its unit, and what most of it comes from: "the marking". */
  return g_strdup_printf (_ ("Expect ± %s, mostly from %s."), off,
                          bf_error_source_name (error.biggest));
}
