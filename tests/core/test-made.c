/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"
#include "core/part-file.h"

#define HEAD "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1},"
#define TAIL " \"base\": {\"outline\": [[0,0],[9,0],[9,9]]}}"

static BfPart *
read_with (const char *made)
{
  g_autofree char *text = g_strconcat (HEAD, " \"made\": ", made, ",", TAIL, NULL);
  g_autoptr (GError) error = NULL;
  BfPart *part = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  return part;
}

static void
test_ticks (void)
{
  g_autoptr (BfPart) bare = read_with ("{}");
  g_autoptr (BfPart) one = bf_edit_tick (bare, "aa", "mark:1", TRUE);
  g_autoptr (BfPart) two = bf_edit_tick (one, "aa", "cut:0", TRUE);
  g_autoptr (BfPart) again = bf_edit_tick (two, "aa", "cut:0", TRUE);
  g_autoptr (BfPart) back = bf_edit_tick (again, "aa", "mark:1", FALSE);

  g_assert_false (bf_made_has (bare->made, "aa", "mark:1"));
  g_assert_true (bf_made_has (one->made, "aa", "mark:1"));
  g_assert_cmpuint (again->made->steps->len, ==, 2);
  g_assert_cmpstr (g_ptr_array_index (again->made->steps, 0), ==, "cut:0");
  g_assert_false (bf_made_has (back->made, "aa", "mark:1"));
  g_assert_true (bf_made_has (back->made, "aa", "cut:0"));
}

/* A step done to one blank is not done to the next. */
static void
test_another_blank (void)
{
  g_autoptr (BfPart) part = read_with ("{\"blank\": \"aa\", \"steps\": [\"cut:0\", \"mark:1\"]}");
  g_autoptr (BfPart) next = bf_edit_tick (part, "bb", "metal:0", TRUE);

  g_assert_true (bf_made_has (part->made, "aa", "cut:0"));
  g_assert_false (bf_made_has (part->made, "bb", "cut:0"));
  g_assert_cmpuint (next->made->steps->len, ==, 1);
  g_assert_true (bf_made_has (next->made, "bb", "metal:0"));
}

static void
test_file (void)
{
  g_autoptr (BfPart) part =
      read_with ("{\"blank\": \"aa\", \"steps\": [\"mark:1\", \"cut:0\", \"mark:1\"], \"who\": 7}");
  g_autofree char *text = bf_part_to_text (part);
  g_autoptr (BfPart) again = bf_part_from_text (text, -1, NULL);
  g_autoptr (BfPart) none = bf_edit_tick (again, "aa", "mark:1", FALSE);
  g_autoptr (BfPart) bare = bf_edit_tick (none, "aa", "cut:0", FALSE);
  g_autofree char *bare_text = bf_part_to_text (bare);

  g_assert_cmpuint (again->made->steps->len, ==, 2);
  g_assert_true (bf_made_has (again->made, "aa", "mark:1"));
  g_assert_nonnull (strstr (text, "\"who\""));
  g_assert_null (strstr (bare_text, "\"steps\""));
}

/* What stands there that should not, and what is said of it. */
static const struct
{
  const char *made, *message;
} refused[] = {
  { "[]", "made: expected an object, found a list" },
  { "{\"blank\": 1}", "made.blank: expected a text, found 1" },
  { "{\"steps\": \"cut:0\"}", "made.steps: expected a list, found \"cut:0\"" },
  { "{\"steps\": [\"cut:0\", 1]}", "made.steps[1]: expected a text, found 1" },
  { "{\"steps\": [null]}", "made.steps[0]: expected a text, found null" },
};

static void
test_refused (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (refused); i++)
    {
      g_autofree char *text = g_strconcat (HEAD, " \"made\": ", refused[i].made, ",", TAIL, NULL);
      g_autoptr (GError) error = NULL;
      g_autoptr (BfPart) part = bf_part_from_text (text, -1, &error);

      g_assert_null (part);
      g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_MEMBER);
      g_assert_cmpstr (error->message, ==, refused[i].message);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/core/made/ticks", test_ticks);
  g_test_add_func ("/core/made/another-blank", test_another_blank);
  g_test_add_func ("/core/made/file", test_file);
  g_test_add_func ("/core/made/refused", test_refused);
  return g_test_run ();
}
