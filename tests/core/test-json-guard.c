/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "core/json-guard.h"
#include "core/json-text.h"
#include "core/part-file.h"

static gboolean
guard (const char *text, GError **error)
{
  return bf_json_guard (text, strlen (text), BF_PART_FILE_MAX_BYTES, BF_PART_FILE_MAX_DEPTH, error);
}

static void
test_good (void)
{
  static const char *const cases[] = {
    "{}",
    " [ ] ",
    "null",
    "-0",
    "0.5e-10",
    "1E+5",
    "123456789012345678",
    "\"\"",
    "\"\\\"\\\\\\/\\b\\f\\n\\r\\t\\u00e4\\ud83d\\ude00\"",
    "\"Grüße 😀 // no comment # either\"",
    "{\"a\": {\"a\": 1}, \"b\": {\"a\": 2}, \"A\": 3}",
    "\r\n\t[1,2,\n[3]]\r\n",
    "[true,false,null]",
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_true (guard (cases[i], &error));
      g_assert_no_error (error);
    }
}

static const struct
{
  const char *text, *message;
} bad[] = {
  { "", "line 1, column 1: expected a value, found the end of the file" },
  { "  \n ", "line 2, column 2: expected a value, found the end of the file" },
  { "{", "line 1, column 2: expected a member's name in quotes, found the end of the file" },
  { "{\"a\" 1}", "line 1, column 6: expected “:”, found “1”" },
  { "{\"a\": }", "line 1, column 7: expected a value, found “}”" },
  { "{\"a\": 1", "line 1, column 8: expected “,” or “}”, found the end of the file" },
  { "{\"a\": 1,}", "line 1, column 9: expected a member's name in quotes, found “}”" },
  { "{a: 1}", "line 1, column 2: expected a member's name in quotes, found “a”" },
  { "{'a': 1}", "line 1, column 2: expected a member's name in quotes, found “'”" },
  { "[1,\n2,\n 3 4]", "line 3, column 4: expected “,” or “]”, found “4”" },
  { "[1,]", "line 1, column 4: expected a value, found “]”" },
  { "[,1]", "line 1, column 2: expected a value, found “,”" },
  { "[1}", "line 1, column 3: expected “,” or “]”, found “}”" },
  { "{} {}", "line 1, column 4: expected nothing more, found “{”" },
  { "[\"ü\", ü]", "line 1, column 7: expected a value, found “ü”" },
  /* The same member twice, written the same way or not. */
  { "{\"a\": 1,\n \"a\": 2}", "line 2, column 2: the member “a” stands there twice" },
  { "{\"a\": 1, \"\\u0061\": 2}", "line 1, column 10: the member “a” stands there twice" },
  { "[{\"b\": {\"c\": 1, \"c\": 1}}]", "line 1, column 17: the member “c” stands there twice" },
  { "{\"a\\n\": 1, \"a\\n\": 2}", "line 1, column 12: the member “a ” stands there twice" },
  /* Comments. */
  { "// hello\n{}", "line 1, column 1: a comment; JSON has none" },
  { "{} // hello", "line 1, column 4: a comment; JSON has none" },
  { "{/* x */}", "line 1, column 2: a comment; JSON has none" },
  { "[1, # one\n 2]", "line 1, column 5: a comment; JSON has none" },
  /* Numbers. */
  { "0x1F", "line 1, column 1: a number that is not decimal or begins with 0" },
  { "-0x1F", "line 1, column 1: a number that is not decimal or begins with 0" },
  { "017", "line 1, column 1: a number that is not decimal or begins with 0" },
  { "[NaN]", "line 1, column 2: expected a value, found “N”" },
  { "[nan]", "line 1, column 2: expected a value, found “n”" },
  { "Infinity", "line 1, column 1: expected a value, found “I”" },
  { "-Infinity", "line 1, column 2: expected a digit, found “I”" },
  { "1e400", "line 1, column 1: a number that is too large" },
  { "[-1e400]", "line 1, column 2: a number that is too large" },
  { "1234567890123456789", "line 1, column 1: an integer of more than 18 digits" },
  { "+1", "line 1, column 1: expected a value, found “+”" },
  { ".5", "line 1, column 1: expected a value, found “.”" },
  { "1.", "line 1, column 3: expected a digit, found the end of the file" },
  { "1.e5", "line 1, column 3: expected a digit, found “e”" },
  { "1e", "line 1, column 3: expected a digit, found the end of the file" },
  { "1e+-5", "line 1, column 4: expected a digit, found “-”" },
  { "--1", "line 1, column 2: expected a digit, found “-”" },
  { "1,5", "line 1, column 2: expected nothing more, found “,”" },
  { "-", "line 1, column 2: expected a digit, found the end of the file" },
  /* Words. */
  { "tru", "line 1, column 1: expected a value, found “t”" },
  { "True", "line 1, column 1: expected a value, found “T”" },
  { "nulll", "line 1, column 5: expected nothing more, found “l”" },
  { "undefined", "line 1, column 1: expected a value, found “u”" },
  /* Strings. */
  { "\"abc", "line 1, column 1: a string that is not closed" },
  { "[\"a\nb\"]", "line 1, column 2: a string that is not closed" },
  { "\"a\tb\"", "line 1, column 3: a control character in a string" },
  { "\"a\\x41\"",
    "line 1, column 4: expected one of \" \\ / b f n r t u after a backslash, found “x”" },
  { "\"\\u12g4\"", "line 1, column 6: expected four hex digits after \\u, found “g”" },
  { "\"\\u00", "line 1, column 6: expected four hex digits after \\u, found the end of the file" },
  { "\"x\\u0000\"", "line 1, column 3: a string with a NUL in it" },
  { "\"\\ud83d\"", "line 1, column 2: half a character (a lone surrogate)" },
  { "\"\\ude00\"", "line 1, column 2: half a character (a lone surrogate)" },
  { "\"\\ud83d\\u0041\"", "line 1, column 2: half a character (a lone surrogate)" },
  { "\"\\ud83dx\"", "line 1, column 2: half a character (a lone surrogate)" },
  /* Bytes that are no text: a lone continuation, a short sequence, a surrogate, Latin-1. */
  { "[\"a\x80\"]", "line 1, column 4: not UTF-8 text" },
  { "\"\xc3\"", "line 1, column 2: not UTF-8 text" },
  { "\"\xed\xa0\x80\"", "line 1, column 2: not UTF-8 text" },
  { "{}\n\xfc", "line 2, column 1: not UTF-8 text" },
};

static void
test_bad (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autoptr (GError) error = NULL;

      g_test_message ("case %u", i);
      g_assert_false (guard (bad[i].text, &error));
      g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_SYNTAX);
      g_assert_cmpstr (error->message, ==, bad[i].message);
      g_assert_true (g_utf8_validate (error->message, -1, NULL));
    }
}

/* A NUL ends a C string, but not the text that was given with its length. */
static void
test_nul (void)
{
  static const char text[] = "{}\0{}";
  g_autoptr (GError) error = NULL;

  g_assert_false (bf_json_guard (text, sizeof text - 1, 100, 64, &error));
  g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_SYNTAX);
  g_assert_cmpstr (error->message, ==, "line 1, column 3: not UTF-8 text");
}

static char *
nest (guint levels, const char *open, const char *close)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < levels; i++)
    g_string_append (text, open);
  g_string_append_c (text, '1');
  for (guint i = 0; i < levels; i++)
    g_string_append (text, close);
  return g_string_free (text, FALSE);
}

static void
test_depth (void)
{
  const struct
  {
    guint levels;
    const char *open, *close;
    gboolean good;
  } cases[] = {
    { 64, "[", "]", TRUE },        { 65, "[", "]", FALSE },        { 64, "{\"a\":", "}", TRUE },
    { 65, "{\"a\":", "}", FALSE }, { 32, "[{\"a\":", "}]", TRUE }, { 33, "[{\"a\":", "}]", FALSE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *text = nest (cases[i].levels, cases[i].open, cases[i].close);
      g_autoptr (GError) error = NULL;

      g_assert_cmpint (guard (text, &error), ==, cases[i].good);
      if (!cases[i].good)
        g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_TOO_LARGE);
    }
}

/* Levels are counted where they are open, not how many there are in all. */
static void
test_depth_beside (void)
{
  GString *text = g_string_new ("[");

  for (int i = 0; i < 1000; i++)
    g_string_append (text, "[[]],");
  g_string_append (text, "0]");
  g_assert_true (guard (text->str, NULL));
  g_string_free (text, TRUE);
}

static void
test_size (void)
{
  g_autofree char *deep = g_malloc (10 * 1024 * 1024);
  g_autoptr (GError) error = NULL;
  g_autoptr (GError) nested = NULL;

  memset (deep, '[', 10 * 1024 * 1024);
  g_assert_false (bf_json_guard (deep, 10 * 1024 * 1024, BF_PART_FILE_MAX_BYTES, 64, &error));
  g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_TOO_LARGE);
  g_assert_cmpstr (error->message, ==,
                   "the file is too large: 10485760 bytes, at most 8388608 can be read");
  g_assert_false (
      bf_json_guard (deep, BF_PART_FILE_MAX_BYTES, BF_PART_FILE_MAX_BYTES, 64, &nested));
  g_assert_error (nested, BF_PART_ERROR, BF_PART_ERROR_TOO_LARGE);
  g_assert_cmpstr (nested->message, ==, "line 1, column 65: lists and objects nested too deeply");
}

/* Whatever the guard lets through, json-glib must take. */
static void
test_parser_agrees (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (20240611);
  static const char *const bits[] = { "{",        "}", "[",      "]",    ",",    ":", "\"a\"",
                                      "\"b\\n\"", "1", "-2.5e3", "true", "null", " " };
  guint n_good = 0;

  for (int i = 0; i < 60000; i++)
    {
      g_autoptr (GString) text = g_string_new (NULL);
      g_autoptr (JsonParser) parser = json_parser_new ();
      int n = g_rand_int_range (rand, 1, 9);

      while (n-- > 0)
        g_string_append (text, bits[g_rand_int_range (rand, 0, G_N_ELEMENTS (bits))]);
      if (!guard (text->str, NULL))
        continue;
      n_good++;
      g_assert_true (json_parser_load_from_data (parser, text->str, -1, NULL));
    }
  g_assert_cmpuint (n_good, >, 500); /* else the test has tried nothing */
}

static void
test_numbers_to_text (void)
{
  const struct
  {
    double value;
    const char *text;
  } cases[] = {
    { 0, "0" },
    { -0.0, "0" },
    { 200, "200" },
    { -40, "-40" },
    { 0.1, "0.1" },
    { 1.0 / 3, "0.3333333333333333" },
    { 100, "100" },
    { 1e5, "100000" },
    { 66.666666666666671, "66.66666666666667" },
    { 0.42, "0.42" },
    { 43.30127, "43.30127" },
    { 1e-7, "1e-07" },
    { 6.35, "6.35" },
    { 1e22, "1e+22" },
    { 5e-324, "4.94065645841247e-324" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *text = bf_number_to_text (cases[i].value);

      g_assert_cmpstr (text, ==, cases[i].text);
    }
}

static void
test_numbers_read_back (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (7);

  for (int i = 0; i < 20000; i++)
    {
      double value = (g_rand_double (rand) - 0.5) * pow (10, g_rand_int_range (rand, -9, 10));
      g_autofree char *text = bf_number_to_text (value);
      double read = g_ascii_strtod (text, NULL);

      g_assert_true (memcmp (&read, &value, sizeof read) == 0);
    }
}

/* Our text of what json-glib has read is read as the same again. */
static void
test_text_reads_back (void)
{
  static const char text[] =
      "{\"a\": [1, 2.5, -3e-7, true, null, \"q\\\"\\\\\\n\\u0001ü\"], \"empty\": {}, "
      "\"none\": [], \"long\": [\"0123456789012345678901234567890\", "
      "\"0123456789012345678901234567890\", \"0123456789012345678901234567890\", "
      "{\"deep\": [[1], [2]]}], \"big\": 123456789012345678}";
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (JsonParser) second = json_parser_new ();
  g_autofree char *written = NULL;

  g_assert_true (json_parser_load_from_data (parser, text, -1, NULL));
  written = bf_json_to_text (json_parser_get_root (parser));
  g_assert_true (guard (written, NULL));
  g_assert_true (json_parser_load_from_data (second, written, -1, NULL));
  g_assert_true (json_node_equal (json_parser_get_root (parser), json_parser_get_root (second)));
  g_assert_true (g_str_has_prefix (written, "{\n  \"a\": [1, 2.5, -3e-07, true, null, "));
  g_assert_nonnull (
      strstr (written, "\n  \"empty\": {},\n  \"none\": [],\n  \"long\": [\n    \"0"));
  g_assert_true (g_str_has_suffix (written, "\n  \"big\": 123456789012345678\n}\n"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/json-guard/good", test_good);
  g_test_add_func ("/json-guard/bad", test_bad);
  g_test_add_func ("/json-guard/nul", test_nul);
  g_test_add_func ("/json-guard/depth", test_depth);
  g_test_add_func ("/json-guard/depth-beside", test_depth_beside);
  g_test_add_func ("/json-guard/size", test_size);
  g_test_add_func ("/json-guard/parser-agrees", test_parser_agrees);
  g_test_add_func ("/json-text/numbers", test_numbers_to_text);
  g_test_add_func ("/json-text/numbers-read-back", test_numbers_read_back);
  g_test_add_func ("/json-text/text-reads-back", test_text_reads_back);
  return g_test_run ();
}
