/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Flanges that share the metal which both want: in the file, and through edits. */

#include <string.h>

#include "core/edit.h"
#include "core/part-file.h"

static BfPart *
read_part (const char *parted, GError **error)
{
  g_autofree char *text = g_strdup_printf (
      "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1},"
      " \"base\": {\"outline\": [[0,0],[50,0],[50,20],[0,20]]},"
      " \"flanges\": [{\"id\": \"a\", \"edge\": 1, \"length\": 10},"
      "   {\"id\": \"b\", \"edge\": 3, \"length\": 10},"
      "   {\"id\": \"c\", \"on\": \"b\", \"edge\": \"tip\", \"length\": 10}],"
      " \"parted\": %s}",
      parted);

  return bf_part_from_text (text, -1, error);
}

/* The pair is one, whichever way round it is named, and a file keeps it. */
static void
test_edit (void)
{
  g_autoptr (BfPart) bare = read_part ("[]", NULL);
  g_autoptr (BfPart) once = bf_edit_share_metal (bare, "c", "a");
  g_autoptr (BfPart) twice = bf_edit_share_metal (once, "a", "c");
  g_autofree char *text = bf_part_to_text (twice), *bare_text = bf_part_to_text (bare);
  g_autoptr (BfPart) read = bf_part_from_text (text, -1, NULL);

  g_assert_cmpuint (bare->parted->len, ==, 0);
  g_assert_cmpuint (twice->parted->len, ==, 1);
  g_assert_true (bf_part_has_parted (twice, "a", "c"));
  g_assert_true (bf_part_has_parted (read, "c", "a"));
  g_assert_false (bf_part_has_parted (read, "a", "b"));
  g_assert_null (strstr (bare_text, "parted"));
  g_assert_nonnull (strstr (text, "\"parted\""));
}

/* Named twice in a file it is one pair. */
static void
test_read_once (void)
{
  g_autoptr (BfPart) part = read_part ("[[\"a\", \"b\"], [\"b\", \"a\"], [\"a\", \"c\"]]", NULL);

  g_assert_cmpuint (part->parted->len, ==, 2);
}

/* What a flange shared goes with it, and with the flange that it hangs on. A mirror, and a base
 * without a point of it, change nothing. */
static void
test_goes_along (void)
{
  g_autoptr (BfPart) part = read_part ("[[\"a\", \"c\"]]", NULL);
  g_autoptr (BfPart) mirrored = bf_part_mirror (part);
  g_autoptr (BfPart) more = bf_edit_add_point (part, 0, bf_vec2 (25.0, -5.0));
  g_autoptr (BfPart) no_a = bf_edit_remove_flange (part, "a");
  g_autoptr (BfPart) no_b = bf_edit_remove_flange (part, "b");
  const BfVec2 triangle[] = { { 0.0, 0.0 }, { 50.0, 0.0 }, { 0.0, 20.0 } };
  g_autoptr (BfPart) other = bf_edit_outline (part, triangle, G_N_ELEMENTS (triangle));

  g_assert_true (bf_part_has_parted (mirrored, "a", "c"));
  g_assert_true (bf_part_has_parted (more, "a", "c"));
  g_assert_cmpuint (no_a->parted->len, ==, 0);
  g_assert_cmpuint (no_b->parted->len, ==, 0);
  g_assert_cmpuint (other->parted->len, ==, 0);
  g_assert_cmpuint (part->parted->len, ==, 1);
}

static void
test_refused (void)
{
  static const char *const rows[][2] = {
    { "true", "parted: expected a list, found true" },
    { "[\"a\", \"b\"]", "parted[0]: expected a list of two flanges' ids, found \"a\"" },
    { "[[\"a\"]]", "parted[0]: expected a list of two flanges' ids, found a list" },
    { "[[\"a\", 3]]", "parted[0][1]: expected a text, found 3" },
    { "[[\"a\", \"b\"], [\"a\", \"d\"]]", "parted[1][1]: expected a flange's id, found \"d\"" },
    { "[[\"base\", \"a\"]]", "parted[0][0]: expected a flange's id, found \"base\"" },
    { "[[\"a\", \"a\"]]", "parted[0]: expected two flanges, found \"a\" twice" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autoptr (BfPart) part = read_part (rows[i][0], &error);

      g_assert_null (part);
      g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_MEMBER);
      g_assert_cmpstr (error->message, ==, rows[i][1]);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/parted/edit", test_edit);
  g_test_add_func ("/parted/read-once", test_read_once);
  g_test_add_func ("/parted/goes-along", test_goes_along);
  g_test_add_func ("/parted/refused", test_refused);
  return g_test_run ();
}
