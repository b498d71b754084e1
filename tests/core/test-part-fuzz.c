/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "core/defaults.h"
#include "core/part-file.h"
#include "random-part.h"

#define N_MUTATIONS 3000

/* Pieces that a mutation puts in: what JSON is made of, and what people and programs get wrong. */
static const char *const pieces[] = {
  "{",           "}",
  "[",           "]",
  ",",           ":",
  "\"",          "\\",
  "0",           "-",
  "1e400",       "1e5",
  "-1",          "null",
  "true",        "\"abc\"",
  "9",           "NaN",
  "//",          "/*",
  "\n",          "\xff",
  "\xc3\xa4",    "\\u0000",
  "\\ud800",     "0x10",
  "\"base\"",    "\"tip\"",
  "{}",          "[]",
  "[0,0]",       "1e-320",
  "99999999999", "\"outline\": [],",
};

static void
mutate_once (GRand *rand, GString *text)
{
  gssize at = g_rand_int_range (rand, 0, (int)text->len);
  gssize some = g_rand_int_range (rand, 1, 12), n = MIN (some, (gssize)text->len - at);
  const char *piece = pieces[g_rand_int_range (rand, 0, G_N_ELEMENTS (pieces))];

  switch (g_rand_int_range (rand, 0, 6))
    {
    case 0: /* a byte becomes another */
      text->str[at] = (char)g_rand_int_range (rand, 1, 256);
      break;
    case 1: /* some go */
      g_string_erase (text, at, n);
      break;
    case 2: /* a piece comes */
      g_string_insert (text, at, piece);
      break;
    case 3: /* a piece comes for others */
      g_string_erase (text, at, n);
      g_string_insert (text, at, piece);
      break;
    case 4: /* the end is cut off */
      g_string_truncate (text, (gsize)at + 1);
      break;
    default: /* a stretch stands there twice */
      {
        g_autofree char *stretch = g_strndup (text->str + at, (gsize)n);
        g_string_insert (text, at, stretch);
      }
    }
}

/* Mutations of single values, at a colon, get past the guard and reach the reader. */
static void
mutate_value (GRand *rand, GString *text)
{
  const char *colon = strchr (text->str + g_rand_int_range (rand, 0, (int)text->len), ':');
  gssize at;
  gsize n;

  if (colon == NULL)
    return;
  at = colon - text->str + 1;
  n = strcspn (text->str + at, ",]}");
  g_string_erase (text, at, (gssize)n);
  g_string_insert (text, at, pieces[g_rand_int_range (rand, 0, G_N_ELEMENTS (pieces))]);
}

/* A part that was read is whole: it can be looked through, written, and read again. */
static void
assert_usable (const BfPart *part)
{
  g_autofree char *text = bf_part_to_text (part);
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) again = bf_part_from_text (text, -1, &error);
  g_autoptr (BfPart) mirrored = bf_part_mirror (part);

  g_assert_no_error (error);
  g_assert_cmpuint (bf_part_n_flanges (again), ==, bf_part_n_flanges (part));
  g_assert_cmpuint (bf_part_n_points (mirrored), ==, bf_part_n_points (part));
  g_assert_cmpuint (bf_part_n_points (part), >=, 3);
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    {
      const BfFlange *flange = bf_part_flange (part, i);
      BfBend bend = bf_part_resolve_bend (part, flange);

      g_assert_false (isnan (bend.inside_radius_mm));
      if (flange->edge == BF_EDGE_INDEX)
        g_assert_cmpuint (flange->edge_index, <, bf_part_n_points (part));
      else
        g_assert_nonnull (bf_part_find_flange (part, flange->on));
    }
  bf_part_check_outline (part, NULL);
}

/* Returns TRUE where the text was taken. */
static gboolean
try_text (const GString *text)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_part_from_text (text->str, (gssize)text->len, &error);

  if (part != NULL)
    {
      g_assert_no_error (error);
      assert_usable (part);
      return TRUE;
    }
  g_assert_nonnull (error);
  g_assert_true (error->domain == BF_PART_ERROR);
  g_assert_cmpuint (strlen (error->message), >, 10);
  g_assert_true (g_utf8_validate (error->message, -1, NULL));
  g_assert_null (strpbrk (error->message, "\n\r\t"));
  return FALSE;
}

typedef void (*Mutate) (GRand *rand, GString *text);

/* How many of the mutations were taken. */
static guint
try_mutations (guint32 seed, Mutate mutate, int most)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  guint n_taken = 0;

  for (int i = 0; i < N_MUTATIONS; i++)
    {
      g_autoptr (BfPart) part = random_part (g_rand_int (rand) % 500);
      g_autofree char *valid = bf_part_to_text (part);
      g_autoptr (GString) text = g_string_new (valid);
      int n = g_rand_int_range (rand, 1, most + 1);

      while (n-- > 0 && text->len > 0)
        mutate (rand, text);
      if (try_text (text))
        n_taken++;
    }
  return n_taken;
}

static void
test_bytes (void)
{
  guint n_taken = try_mutations (4711, mutate_once, 3);

  /* Some of each, else the test tries nothing. */
  g_assert_cmpuint (n_taken, >, N_MUTATIONS / 100);
  g_assert_cmpuint (n_taken, <, N_MUTATIONS / 2);
}

static void
test_values (void)
{
  guint n_taken = try_mutations (815, mutate_value, 2);

  g_assert_cmpuint (n_taken, >, N_MUTATIONS / 50);
  g_assert_cmpuint (n_taken, <, N_MUTATIONS / 2);
}

/* Each beginning of a file is refused, and none crashes. */
static void
test_cut_short (void)
{
  g_autoptr (BfPart) part = random_part (8);
  g_autofree char *valid = bf_part_to_text (part);

  for (gsize n = 0; n + 2 < strlen (valid); n++)
    {
      g_autofree char *cut = g_strndup (valid, n);
      g_autoptr (GError) error = NULL;

      g_assert_null (bf_part_from_text (cut, -1, &error));
      g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_SYNTAX);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/part-fuzz/bytes", test_bytes);
  g_test_add_func ("/part-fuzz/values", test_values);
  g_test_add_func ("/part-fuzz/cut-short", test_cut_short);
  return g_test_run ();
}
