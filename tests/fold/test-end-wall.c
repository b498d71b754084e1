/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Which of two walls is the end wall, seen by which one gets the joining tab. */

#include <string.h>

#include "fold/fold.h"
#include "make-any.h"
#include "make-part.h"

#define N_PARTS 120

/* The walls that carry tabs, once a tab, each with a blank behind it, by id.
 * Returns: (transfer full). */
static char *
tabs_of (BfPart *part)
{
  g_autoptr (BfFold) fold = bf_fold (part);
  GString *walls = g_string_new (NULL);

  for (guint i = 1; i < fold->faces->len; i++)
    {
      const BfFlange *flange = bf_part_find_flange (fold->part, bf_fold_face (fold, i)->id);

      if (flange->is_tab)
        g_string_append_printf (walls, "%s ", flange->on);
    }
  return g_string_free (walls, FALSE);
}

/* How many of them stand on that wall. */
static guint
count_on (const char *tabs, const char *wall)
{
  g_auto (GStrv) walls = g_strsplit (tabs, " ", -1);
  guint n = 0;

  for (guint i = 0; walls[i] != NULL; i++)
    n += g_str_equal (walls[i], wall) ? 1 : 0;
  return n;
}

/* ---- by hand ------------------------------------------------------------------------------ */

/* The walls on the short edges carry all tabs, whichever way the tray lies and however sizes count,
 * even where a thickness makes the difference. */
static void
test_short_edges (void)
{
  static const struct
  {
    double width_mm, depth_mm;
    const char *ends[2];
  } rows[] = {
    { 200.0, 120.0, { "f1", "f3" } },
    { 120.0, 200.0, { "f0", "f2" } },
    { 150.1, 150.0, { "f1", "f3" } },
    { 150.0, 150.1, { "f0", "f2" } },
  };

  for (guint i = 0; i < 2 * G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (rows[i / 2].width_mm, rows[i / 2].depth_mm, 40.0, 90.0);
      g_autofree char *tabs = NULL;

      part->joining = BF_JOINING_RIVETED;
      part->measure = i % 2 == 0 ? BF_MEASURE_OUTSIDE : BF_MEASURE_INSIDE;
      tabs = tabs_of (part);
      for (guint k = 0; k < 2; k++)
        g_assert_cmpuint (count_on (tabs, rows[i / 2].ends[k]), ==, 2);
      g_assert_cmpuint (strlen (tabs), ==, strlen ("f0 f0 f2 f2 "));
    }
}

/* Of equal edges the lower wall; of equal walls the one whose id comes first. */
static void
test_square (void)
{
  static const struct
  {
    double heights_mm[4];
    guint n_on[4]; /* tabs on f0 … f3 */
  } rows[] = {
    { { 40, 40, 40, 40 }, { 2, 1, 1, 0 } }, /* f0, then f1 against f2, f2 against f3 */
    { { 40, 30, 40, 30 }, { 0, 2, 0, 2 } },
    { { 30, 40, 30, 40 }, { 2, 0, 2, 0 } },
    { { 40, 40, 40, 30 }, { 1, 1, 0, 2 } }, /* f3 on both sides; f0 against f1, f1 against f2 */
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (150.0, 150.0, 40.0, 90.0);
      g_autofree char *tabs = NULL;

      part->joining = BF_JOINING_SCREWED;
      for (guint k = 0; k < 4; k++)
        ((BfFlange *)g_ptr_array_index (part->flanges, k))->length_mm = rows[i].heights_mm[k];
      tabs = tabs_of (part);
      g_test_message ("row %u: %s", i, tabs);
      for (guint k = 0; k < 4; k++)
        {
          g_autofree char *wall = g_strdup_printf ("f%u", k);

          g_assert_cmpuint (count_on (tabs, wall), ==, rows[i].n_on[k]);
        }
    }
}

/* ---- of all kinds of parts ---------------------------------------------------------------- */

static BfPart *
make_tabbed (guint seed)
{
  BfPart *part = make_any (seed);

  part->joining = BF_JOINING_RIVETED;
  g_ptr_array_set_size (part->corners, 0);
  return part;
}

/* The order of flanges in the file does not matter. */
static void
test_any_order (void)
{
  guint tabbed = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_tabbed (seed), turned = bf_part_copy (part);
      g_autofree char *tabs = tabs_of (part), *again = NULL;
      guint n = turned->flanges->len;

      for (guint i = 0; i < n / 2; i++)
        {
          gpointer first = turned->flanges->pdata[i];

          turned->flanges->pdata[i] = turned->flanges->pdata[n - 1 - i];
          turned->flanges->pdata[n - 1 - i] = first;
        }
      again = tabs_of (turned);
      g_assert_cmpstr (tabs, ==, again);
      tabbed += tabs[0] != '\0' ? 1 : 0;
    }
  g_test_message ("%u of %u have tabs", tabbed, N_PARTS);
  g_assert_cmpuint (tabbed, >, N_PARTS / 8);
}

/* The mirror image has its tabs on the same walls: what was a start tab is an end tab there. */
static void
test_mirror (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_tabbed (seed), image = bf_part_mirror (part);
      g_autofree char *tabs = tabs_of (part), *mirrored = tabs_of (image);

      g_test_message ("seed %u: %s, in the mirror %s", seed, tabs, mirrored);
      g_assert_cmpuint (strlen (tabs), ==, strlen (mirrored));
      for (guint i = 0; i < bf_part_n_flanges (part); i++)
        g_assert_cmpuint (count_on (tabs, bf_part_flange (part, i)->id), ==,
                          count_on (mirrored, bf_part_flange (part, i)->id));
    }
}

/* Counting sizes another way changes the numbers, not which wall is which: a base drawn larger by
 * two thicknesses either way is the same metal. */
static void
test_measure (void)
{
  for (double more = -1.0; more <= 1.0; more += 0.125)
    {
      double t = 1.5, width = 150.0 + more;
      g_autoptr (BfPart) outside = make_tray (width, 150.0, 40.0, 90.0);
      g_autoptr (BfPart) inside = make_tray (width - 2.0 * t, 150.0 - 2.0 * t, 40.0 - t, 90.0);
      g_autofree char *a = NULL, *b = NULL;

      outside->joining = inside->joining = BF_JOINING_RIVETED;
      inside->measure = BF_MEASURE_INSIDE;
      a = tabs_of (outside);
      b = tabs_of (inside);
      g_assert_cmpstr (a, ==, b);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/end-wall/short-edges", test_short_edges);
  g_test_add_func ("/end-wall/square", test_square);
  g_test_add_func ("/end-wall/any-order", test_any_order);
  g_test_add_func ("/end-wall/mirror", test_mirror);
  g_test_add_func ("/end-wall/measure", test_measure);
  return g_test_run ();
}
