/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/dxf-groups.h"

#include <string.h>

typedef struct
{
  const char *about;
  const char *words;
  const char *text;
} Case;

static const Case cases[] = {
  { "plain", "Spoke tray", "Spoke tray" },
  { "degree", "fold up 90°", "fold up 90%%d" },
  { "letters", "Öse für Ł", "\\U+00D6se f\\U+00FCr \\U+0141" },
  { "past the codes", "a\xF0\x9F\x94\xA7z", "a?z" },
  { "per cent", "50% off", "50% off" },
  { "codes in a name", "a%%c %%%d", "a% %c % % %d" },
  { "per cent of a degree", "5%°", "5% %%d" },
  { "caret", "a^b", "a^ b" },
  { "line ends", "two\nlines\r\tand more", "two lines  and more" },
  { "backslash", "a\\b", "a\\b" },
  { "empty", "", "" },
};

static void
test_words (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      BfDxf dxf;
      g_autofree char *text = NULL;
      g_autofree char *wanted = g_strdup_printf ("  1\n%s\n", cases[i].text);

      g_test_message ("%s", cases[i].about);
      bf_dxf_init (&dxf, 1.0);
      bf_dxf_words (&dxf, 1, cases[i].words);
      text = bf_dxf_finish (&dxf);
      g_assert_cmpstr (text, ==, wanted);
    }
}

/* A value holds 255 bytes at most; a code is not cut in two. */
static void
test_long_words (void)
{
  BfDxf dxf;
  g_autofree char *text = NULL;
  g_autoptr (GString) words = g_string_new (NULL);

  for (int i = 0; i < 300; i++)
    g_string_append (words, "ß");
  bf_dxf_init (&dxf, 1.0);
  bf_dxf_words (&dxf, 1, words->str);
  text = bf_dxf_finish (&dxf);
  g_assert_cmpuint (strlen (text), <=, strlen ("  1\n") + 255 + 1);
  g_assert_cmpuint (strlen (text), >, 200);
  g_assert_true (g_str_has_suffix (text, "\\U+00DF\n"));
}

static void
test_numbers (void)
{
  BfDxf dxf;
  g_autofree char *text = NULL;

  bf_dxf_init (&dxf, 1.0 / 25.4);
  bf_dxf_point (&dxf, 1, bf_vec2 (25.4, -12.7));
  bf_dxf_length (&dxf, 40, 3.175);
  bf_dxf_number (&dxf, 42, 1.0); /* a bulge has no unit */
  bf_dxf_integer (&dxf, 70, 1);
  text = bf_dxf_finish (&dxf);
  g_assert_cmpstr (text, ==, " 11\n1.0\n 21\n-0.5\n 31\n0.0\n 40\n0.125\n 42\n1.0\n 70\n     1\n");
}

static void
test_structure (void)
{
  BfDxf dxf;
  g_autofree char *text = NULL;

  bf_dxf_init (&dxf, 1.0);
  bf_dxf_begin_section (&dxf, "TABLES");
  bf_dxf_begin_table (&dxf, "LAYER", 2);
  bf_dxf_end_table (&dxf);
  bf_dxf_end_section (&dxf);
  bf_dxf_entity (&dxf, "LINE", "note");
  text = bf_dxf_finish (&dxf);
  g_assert_cmpstr (text, ==,
                   "  0\nSECTION\n  2\nTABLES\n  0\nTABLE\n  2\nLAYER\n 70\n     2\n"
                   "  0\nENDTAB\n  0\nENDSEC\n  0\nLINE\n  8\nnote\n");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  g_test_add_func ("/write/dxf-groups/words", test_words);
  g_test_add_func ("/write/dxf-groups/long-words", test_long_words);
  g_test_add_func ("/write/dxf-groups/numbers", test_numbers);
  g_test_add_func ("/write/dxf-groups/structure", test_structure);
  return g_test_run ();
}
