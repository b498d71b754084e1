/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <locale.h>

#include "paint/paper.h"

/* ISO 216: A4 210 × 297, A3 297 × 420. ANSI/ASME Y14.1: A 8.5 × 11 in, B 11 × 17 in. Legal
 * 8.5 × 14 in: common practice. An inch is 25.4 mm. */
static const struct
{
  const char *asked, *name;
  double width_mm, height_mm;
} sizes[] = {
  { "A4", "A4", 210.0, 297.0 },           { "a4", "A4", 210.0, 297.0 },
  { "A3", "A3", 297.0, 420.0 },           { "letter", "Letter", 215.9, 279.4 },
  { "LETTER", "Letter", 215.9, 279.4 },   { "Legal", "Legal", 215.9, 355.6 },
  { "tabloid", "Tabloid", 279.4, 431.8 },
};

static void
test_sizes (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (sizes); i++)
    {
      const BfPaper *paper = bf_paper_find (sizes[i].asked);
      g_assert_nonnull (paper);
      g_assert_cmpstr (paper->name, ==, sizes[i].name);
      g_assert_cmpfloat_with_epsilon (paper->width_mm, sizes[i].width_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (paper->height_mm, sizes[i].height_mm, 1e-9);
    }
}

static void
test_unknown (void)
{
  static const char *const names[] = { "", "A", "A44", " A4", "Napkin" };

  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    g_assert_null (bf_paper_find (names[i]));
}

static void
test_default (void)
{
  g_assert_cmpstr (bf_paper_default ()->name, ==, "A4");
  setlocale (LC_ALL, "C");
  g_assert_cmpstr (bf_paper_of_locale ()->name, ==, "A4");
}

static void
test_names (void)
{
  g_autofree char *names = bf_paper_names ();
  g_auto (GStrv) split = g_strsplit (names, ", ", 0);
  guint n_papers;

  bf_papers (&n_papers);
  g_assert_cmpuint (g_strv_length (split), ==, n_papers + 2); /* and roll, whole */
  for (guint i = 0; split[i] != NULL; i++)
    g_assert_cmpstr (bf_paper_find (split[i])->name, ==, split[i]);
  for (guint i = 0; i < n_papers; i++)
    g_assert_true (bf_paper_find (split[i]) == &bf_papers (NULL)[i]);
}

static void
test_rolls (void)
{
  static const char *const wrong[] = { "roll-",     "roll-199", "roll-2001",   "roll-610.5",
                                       "roll--300", "roll610",  "roll-0610mm", "rolls" };
  const BfPaper *roll = bf_paper_find ("Roll-914");

  g_assert_nonnull (roll);
  g_assert_cmpstr (roll->name, ==, "roll-914");
  g_assert_cmpint (roll->kind, ==, BF_PAPER_ROLL);
  g_assert_cmpfloat_with_epsilon (roll->width_mm, 914.0, 1e-12);
  g_assert_true (bf_paper_find ("roll-914") == roll);
  g_assert_cmpfloat_with_epsilon (bf_paper_find ("roll")->width_mm, 610.0, 1e-12);
  g_assert_cmpint (bf_paper_find ("whole")->kind, ==, BF_PAPER_WHOLE);
  for (guint i = 0; i < G_N_ELEMENTS (wrong); i++)
    g_assert_null (bf_paper_find (wrong[i]));
}

static void
test_held_upright (void)
{
  guint n_papers;
  const BfPaper *papers = bf_papers (&n_papers);

  for (guint i = 0; i < n_papers; i++)
    g_assert_cmpfloat (papers[i].width_mm, <, papers[i].height_mm);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paper/sizes", test_sizes);
  g_test_add_func ("/paper/unknown", test_unknown);
  g_test_add_func ("/paper/default", test_default);
  g_test_add_func ("/paper/names", test_names);
  g_test_add_func ("/paper/rolls", test_rolls);
  g_test_add_func ("/paper/held-upright", test_held_upright);
  return g_test_run ();
}
