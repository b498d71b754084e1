/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include <string.h>

#include "core/own-drills.h"
#include "core/own-metals.h"
#include "core/own-things.h"
#include "core/own-trials.h"
#include "core/part-file.h"
#include "own-files.h"

/* A file of each kind as a hand wrote it, with a member that no version knows yet. */
static const struct
{
  const char *folder, *text;
} files[] = {
  [BF_OWN_METAL] = { "metals",
                     "{ \"format\": \"benchfold-metal\", \"version\": 1, \"name\": \"Shed steel\","
                     " \"from\": \"the shed\", \"density\": 7850, \"yield\": 210, \"tensile\": 340,"
                     " \"elastic\": 210, \"least_radius\": 0.5 }" },
  [BF_OWN_DRILLS] = { "drills", "{ \"format\": \"benchfold-drills\", \"version\": 1,"
                                " \"from\": \"the shed\", \"sizes\": [ 4, 3 ] }" },
  [BF_OWN_TRIAL] = { "trial-bends",
                     "{ \"format\": \"benchfold-trial-bend\", \"version\": 1, \"material\": "
                     "\"zinc\","
                     " \"thickness\": 1.5, \"way\": \"bar\", \"inside_radius\": 1.5,"
                     " \"date\": \"2026-01-31\", \"measured_to\": 0.1, \"from\": \"the shed\","
                     " \"strips\": [ { \"length\": 100, \"legs\": [ 51, 51.5 ], \"angle\": 90 } ],"
                     " \"k\": 0.4, \"k_error\": 0.02 }" },
};

static guint
count (BfOwnThing what)
{
  guint n = 0;

  if (what == BF_OWN_METAL)
    (void)bf_own_metals (&n);
  else if (what == BF_OWN_DRILLS)
    (void)bf_own_drills (&n);
  else
    (void)bf_own_trials (&n);
  return n;
}

/* What was taken away comes back to the byte, and never over another one of that id. */
static void
test_put_back (void)
{
  for (BfOwnThing what = 0; what < BF_N_OWN_THINGS; what++)
    {
      g_autofree char *path = own_path (files[what].folder, "shed.json"), *text = NULL;
      g_autoptr (GBytes) removed = NULL;
      GBytes *none = NULL;

      put_own (files[what].folder, "shed.json", files[what].text);
      g_assert_cmpuint (count (what), ==, 1);
      g_assert_true (bf_own_thing_remove (what, "shed", &removed, NULL));
      g_assert_cmpuint (count (what), ==, 0);
      g_assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
      g_assert_true (bf_own_thing_remove (what, "shed", &none, NULL));
      g_assert_null (none);

      g_assert_true (bf_own_thing_put_back (what, "shed", removed, NULL));
      g_assert_cmpuint (count (what), ==, 1);
      g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
      g_assert_cmpstr (text, ==, files[what].text);

      put_own (files[what].folder, "shed.json", "{}");
      g_assert_true (bf_own_thing_put_back (what, "shed", removed, NULL));
      g_clear_pointer (&text, g_free);
      g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
      g_assert_cmpstr (text, ==, "{}");
    }
}

/* A file where the folder should be: nothing can be put there, and the error names the place. */
static void
test_no_folder (void)
{
  g_autofree char *path = own_path (".", "metals");
  g_autoptr (GBytes) removed = g_bytes_new_static ("{}", 2);
  g_autoptr (GError) error = NULL;

  g_assert_true (g_file_set_contents (path, "", 0, NULL));
  g_assert_false (bf_own_thing_put_back (BF_OWN_METAL, "shed", removed, &error));
  g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_WRITE);
  g_assert_nonnull (strstr (error->message, "/benchfold/metals: "));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/own-things/put-back", test_put_back);
  g_test_add_func ("/own-things/no-folder", test_no_folder);
  return g_test_run ();
}
