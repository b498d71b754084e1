/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/paper.h"

#include <langinfo.h>
#include <math.h>
#include <stdint.h>
#include <string.h>

#define MM_PER_INCH 25.4
#define A4_WIDTH_MM 210.0
#define A4_HEIGHT_MM 297.0
#define ROLL_PREFIX "roll-"
#define LEAST_ROLL_MM 200
#define MOST_ROLL_MM 2000
#define LOCALE_SLACK_MM 1.0 /* locales give whole millimetres */

/* A4, A3: ISO 216. Letter and Tabloid: ANSI/ASME Y14.1, sizes A and B. Legal: US custom,
 * 8 1/2 by 14 in (common practice). */
static const BfPaper papers[] = {
  { "A4", A4_WIDTH_MM, A4_HEIGHT_MM, BF_PAPER_CUT },
  { "A3", A4_HEIGHT_MM, 420.0, BF_PAPER_CUT },
  { "Letter", 8.5 * MM_PER_INCH, 11.0 * MM_PER_INCH, BF_PAPER_CUT },
  { "Legal", 8.5 * MM_PER_INCH, 14.0 * MM_PER_INCH, BF_PAPER_CUT },
  { "Tabloid", 11.0 * MM_PER_INCH, 17.0 * MM_PER_INCH, BF_PAPER_CUT },
  { "roll", 610.0, A4_HEIGHT_MM, BF_PAPER_ROLL }, /* 24 in: common practice */
  { "whole", A4_WIDTH_MM, A4_HEIGHT_MM, BF_PAPER_WHOLE },
};

#define N_CUT 5

/* Rolls of other widths, by their width in mm; made when first asked for and kept. */
static GHashTable *rolls;
G_LOCK_DEFINE_STATIC (rolls);

static const BfPaper *
roll_of_width (guint width_mm)
{
  BfPaper *roll;

  G_LOCK (rolls);
  if (rolls == NULL)
    rolls = g_hash_table_new (NULL, NULL);
  roll = g_hash_table_lookup (rolls, GUINT_TO_POINTER (width_mm));
  if (roll == NULL)
    {
      roll = g_new (BfPaper, 1);
      *roll =
          (BfPaper){ g_strdup_printf ("roll-%u", width_mm), width_mm, A4_HEIGHT_MM, BF_PAPER_ROLL };
      g_hash_table_insert (rolls, GUINT_TO_POINTER (width_mm), roll);
    }
  G_UNLOCK (rolls);
  return roll;
}

/* "roll-914". */
static const BfPaper *
find_roll (const char *name)
{
  guint64 width_mm;

  if (g_ascii_strncasecmp (name, ROLL_PREFIX, strlen (ROLL_PREFIX)) != 0 ||
      !g_ascii_string_to_unsigned (name + strlen (ROLL_PREFIX), 10, LEAST_ROLL_MM, MOST_ROLL_MM,
                                   &width_mm, NULL))
    return NULL;
  return roll_of_width ((guint)width_mm);
}

const BfPaper *
bf_papers (guint *n_papers)
{
  if (n_papers != NULL)
    *n_papers = N_CUT;
  return papers;
}

const BfPaper *
bf_paper_find (const char *name)
{
  g_return_val_if_fail (name != NULL, NULL);

  for (guint i = 0; i < G_N_ELEMENTS (papers); i++)
    if (g_ascii_strcasecmp (papers[i].name, name) == 0)
      return &papers[i];
  return find_roll (name);
}

const BfPaper *
bf_paper_default (void)
{
  return &papers[0];
}

#ifdef _NL_PAPER_WIDTH
/* glibc hands the number itself over in the pointer's place. */
static double
locale_mm (nl_item item)
{
  return (double)(int)(intptr_t)nl_langinfo (item);
}

const BfPaper *
bf_paper_of_locale (void)
{
  double width_mm = locale_mm (_NL_PAPER_WIDTH), height_mm = locale_mm (_NL_PAPER_HEIGHT);

  for (guint i = 0; i < N_CUT; i++)
    if (fabs (papers[i].width_mm - width_mm) < LOCALE_SLACK_MM &&
        fabs (papers[i].height_mm - height_mm) < LOCALE_SLACK_MM)
      return &papers[i];
  return bf_paper_default ();
}
#else
const BfPaper *
bf_paper_of_locale (void)
{
  return bf_paper_default ();
}
#endif

char *
bf_paper_names (void)
{
  GString *names = g_string_new (NULL);

  for (guint i = 0; i < G_N_ELEMENTS (papers); i++)
    g_string_append_printf (names, "%s%s", i > 0 ? ", " : "", papers[i].name);
  return g_string_free (names, FALSE);
}
