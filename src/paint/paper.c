/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/paper.h"

#include <langinfo.h>
#include <math.h>
#include <stdint.h>

#define MM_PER_INCH 25.4
#define LOCALE_SLACK_MM 1.0 /* locales give whole millimetres */

/* A4, A3: ISO 216. Letter and Tabloid: ANSI/ASME Y14.1, sizes A and B. Legal: US custom,
 * 8 1/2 by 14 in (common practice). */
static const BfPaper papers[] = {
  { "A4", 210.0, 297.0 },
  { "A3", 297.0, 420.0 },
  { "Letter", 8.5 * MM_PER_INCH, 11.0 * MM_PER_INCH },
  { "Legal", 8.5 * MM_PER_INCH, 14.0 * MM_PER_INCH },
  { "Tabloid", 11.0 * MM_PER_INCH, 17.0 * MM_PER_INCH },
};

const BfPaper *
bf_papers (guint *n_papers)
{
  if (n_papers != NULL)
    *n_papers = G_N_ELEMENTS (papers);
  return papers;
}

const BfPaper *
bf_paper_find (const char *name)
{
  g_return_val_if_fail (name != NULL, NULL);

  for (guint i = 0; i < G_N_ELEMENTS (papers); i++)
    if (g_ascii_strcasecmp (papers[i].name, name) == 0)
      return &papers[i];
  return NULL;
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

  for (guint i = 0; i < G_N_ELEMENTS (papers); i++)
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
