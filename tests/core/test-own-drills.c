/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "core/drills.h"
#include "core/own-drills.h"
#include "core/part-file.h"
#include "own-files.h"

#define HEAD "{\"format\": \"benchfold-drills\", \"version\": 1, "

static guint
count (void)
{
  guint n;

  bf_own_drills_read_again ();
  (void)bf_own_drills (&n);
  return n;
}

static void
test_keep (void)
{
  g_autoptr (GArray) sizes = bf_drills_parse ("4..20 + 2; 3.3", BF_UNITS_MM, NULL);
  const BfDrillBox *boxes;
  guint n;

  g_assert_cmpuint (count (), ==, 0);
  g_assert_true (bf_own_drills_keep (NULL, "Red box", sizes, NULL));
  g_assert_true (bf_own_drills_keep (NULL, "Red box", sizes, NULL));
  bf_own_drills_read_again ();
  boxes = bf_own_drills (&n);
  g_assert_cmpuint (n, ==, 2);
  g_assert_cmpstr (boxes[0].name, ==, "Red box");
  g_assert_cmpstr (boxes[1].id, ==, "red-box-2");
  g_assert_true (bf_drills_equal (boxes[0].sizes_mm, sizes));
  g_assert_true (bf_own_drills_keep ("red-box", "Blue box", sizes, NULL));
  boxes = bf_own_drills (&n);
  g_assert_cmpuint (n, ==, 2);
  g_assert_cmpstr (boxes[0].id, ==, "red-box");
  g_assert_cmpstr (boxes[0].name, ==, "Blue box");
}

/* By hand, in any order; each broken one is named, and the good one stays. */
static void
test_by_hand (void)
{
  static const struct
  {
    const char *text, *says;
  } rows[] = {
    { HEAD "\"sizes\": []}", "sizes" },
    { HEAD "\"name\": \"x\"}", "sizes" },
    { HEAD "\"sizes\": [3, \"4\"]}", "sizes[1]" },
    { HEAD "\"sizes\": [3, 0]}", "sizes[1]" },
    { HEAD "\"sizes\": 3}", "sizes" },
    { HEAD "\"name\": 3, \"sizes\": [3]}", "name" },
    { "{\"format\": \"benchfold-metal\", \"version\": 1}", "format" },
    { "{}", "format" },
  };
  const BfDrillBox *boxes;
  guint n;

  put_own ("drills", "b.json", HEAD "\"sizes\": [6.5, 3, 4.2]}");
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_test_message ("row %u", i);
      put_own ("drills", "a.json", rows[i].text);
      g_assert_cmpuint (count (), ==, 1);
      g_assert_nonnull (strstr (bf_own_drill_faults ()[0], "a.json: "));
      g_assert_nonnull (strstr (bf_own_drill_faults ()[0], rows[i].says));
      g_assert_null (bf_own_drill_faults ()[1]);
    }
  boxes = bf_own_drills (&n);
  g_assert_cmpstr (boxes[0].name, ==, "b");
  g_assert_cmpfloat_with_epsilon (g_array_index (boxes[0].sizes_mm, double, 0), 3.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (g_array_index (boxes[0].sizes_mm, double, 2), 6.5, 1e-12);
}

/* What a newer program or a hand wrote into the file stays when the box is changed. */
static void
test_unknown_is_kept (void)
{
  g_autoptr (GArray) sizes = bf_drills_parse ("5; 6", BF_UNITS_MM, NULL);
  g_autofree char *text = NULL;

  put_own ("drills", "u.json", HEAD "\"name\": \"x\", \"sizes\": [3], \"shelf\": {\"row\": 2}}");
  g_assert_true (bf_own_drills_keep ("u", "Changed", sizes, NULL));
  text = get_own ("drills", "u.json");
  g_assert_nonnull (strstr (text, "\"shelf\": {\"row\": 2}"));
  g_assert_nonnull (strstr (text, "\"sizes\": [5, 6]"));
  g_assert_null (strstr (text, "\"x\""));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/own-drills/keep", test_keep);
  g_test_add_func ("/own-drills/by-hand", test_by_hand);
  g_test_add_func ("/own-drills/unknown-is-kept", test_unknown_is_kept);
  return g_test_run ();
}
