/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/own-pens.h"
#include "own-files.h"

#include <string.h>

#define HEAD "{\"format\": \"benchfold-pens\", \"version\": 1"

/* Okabe and Ito's bluish green and reddish purple; widths of ISO 128's line group 0.35. */
static void
test_defaults (void)
{
  const BfPenSet *pens = bf_own_pens ();

  g_assert_null (bf_own_pens_fault ());
  g_assert_cmphex (pens->pens[BF_PEN_CUT].rgb, ==, 0x000000);
  g_assert_cmphex (pens->pens[BF_PEN_BEND_UP].rgb, ==, 0x009E73);
  g_assert_cmphex (pens->pens[BF_PEN_BEND_DOWN].rgb, ==, 0xCC79A7);
  g_assert_cmpfloat_with_epsilon (pens->pens[BF_PEN_CUT].width_mm, 0.35, 1e-12);
  g_assert_cmpfloat_with_epsilon (pens->pens[BF_PEN_DRILL].width_mm, 0.18, 1e-12);
  for (guint i = 0; i < BF_N_PENS; i++)
    g_assert_cmpstr (bf_pen_kind_name ((BfPenKind)i), !=, NULL);
}

static void
test_read (void)
{
  const BfPenSet *pens;

  put_own (".", "pens.json",
           HEAD
           ", \"cut\": {\"colour\": \"#8a2be2\", \"width\": 0.5}, \"drill\": {\"width\": 0.25},"
           " \"crayon\": {\"colour\": 7}}");
  bf_own_pens_read_again ();
  pens = bf_own_pens ();
  g_assert_null (bf_own_pens_fault ());
  g_assert_cmphex (pens->pens[BF_PEN_CUT].rgb, ==, 0x8A2BE2);
  g_assert_cmpfloat_with_epsilon (pens->pens[BF_PEN_CUT].width_mm, 0.5, 1e-12);
  g_assert_cmphex (pens->pens[BF_PEN_DRILL].rgb, ==, 0x000000);
  g_assert_cmpfloat_with_epsilon (pens->pens[BF_PEN_DRILL].width_mm, 0.25, 1e-12);
  g_assert_cmphex (pens->pens[BF_PEN_BEND_UP].rgb, ==, 0x009E73);
}

/* Named by its path, and all pens are the defaults. */
static const struct
{
  const char *text, *fault;
} broken[] = {
  { "", "pens.json: " },
  { "[]", "pens.json: " },
  { "{\"format\": \"benchfold-metal\", \"version\": 1}", "pens.json: format" },
  { "{\"format\": \"benchfold-pens\", \"version\": 2}", "pens.json: version" },
  { HEAD ", \"cut\": 3}", "pens.json: cut: " },
  { HEAD ", \"cut\": {\"width\": 0.6}, \"slot\": {\"width\": 5}}", "pens.json: slot.width: " },
  { HEAD ", \"cut\": {\"width\": 0}}", "pens.json: cut.width: " },
  { HEAD ", \"cut\": {\"width\": \"thin\"}}", "pens.json: cut.width: " },
  { HEAD ", \"cut\": {\"colour\": \"red\"}}", "pens.json: cut.colour: " },
  { HEAD ", \"cut\": {\"colour\": \"#12345\"}}", "pens.json: cut.colour: " },
  { HEAD ", \"cut\": {\"colour\": \"#+12345\"}}", "pens.json: cut.colour: " },
  { HEAD ", \"bend-up\": {\"colour\": 9}}", "pens.json: bend-up.colour: " },
};

static void
test_broken (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (broken); i++)
    {
      g_test_message ("%s", broken[i].text);
      put_own (".", "pens.json", broken[i].text);
      bf_own_pens_read_again ();
      g_assert_nonnull (bf_own_pens_fault ());
      g_assert_nonnull (strstr (bf_own_pens_fault (), broken[i].fault));
      for (guint k = 0; k < BF_N_PENS; k++)
        {
          g_assert_cmphex (bf_own_pens ()->pens[k].rgb, ==, bf_pens_default ()->pens[k].rgb);
          g_assert_cmpfloat_with_epsilon (bf_own_pens ()->pens[k].width_mm,
                                          bf_pens_default ()->pens[k].width_mm, 1e-12);
        }
    }
}

static void
test_keep (void)
{
  BfPenSet pens = *bf_pens_default ();
  g_autoptr (GError) error = NULL;

  pens.pens[BF_PEN_SCORE] = (BfOwnPen){ 0x123456, 0.7 };
  g_assert_true (bf_own_pens_keep (&pens, &error));
  g_assert_no_error (error);
  g_assert_null (bf_own_pens_fault ());
  g_assert_cmphex (bf_own_pens ()->pens[BF_PEN_SCORE].rgb, ==, 0x123456);
  g_assert_cmpfloat_with_epsilon (bf_own_pens ()->pens[BF_PEN_SCORE].width_mm, 0.7, 1e-12);
}

/* What a newer program or a hand wrote into the file, at its top or in a pen, stays. */
static void
test_unknown_is_kept (void)
{
  BfPenSet pens = *bf_pens_default ();
  g_autofree char *text = NULL;

  put_own (".", "pens.json", HEAD ", \"holder\": 7, \"cut\": {\"width\": 0.5, \"tip\": \"felt\"}}");
  pens.pens[BF_PEN_CUT].width_mm = 0.7;
  g_assert_true (bf_own_pens_keep (&pens, NULL));
  text = get_own (".", "pens.json");
  g_assert_nonnull (strstr (text, "\"holder\": 7"));
  g_assert_nonnull (
      strstr (text, "\"cut\": {\"colour\": \"#000000\", \"width\": 0.7, \"tip\": \"felt\"}"));
}

static void
test_in_words (void)
{
  g_autofree char *usual = bf_pens_in_words (bf_pens_default ());

  g_assert_true (g_str_has_prefix (usual, "cut #000000 0.35, bend-up #009E73 0.35, "));
  for (guint i = 0; i < 2 * BF_N_PENS; i++)
    {
      BfPenSet pens = *bf_pens_default ();
      g_autofree char *words = NULL;

      if (i < BF_N_PENS)
        pens.pens[i].rgb ^= 0x100;
      else
        pens.pens[i - BF_N_PENS].width_mm += 0.01;
      words = bf_pens_in_words (&pens);
      g_assert_cmpstr (words, !=, usual);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/own-pens/defaults", test_defaults);
  g_test_add_func ("/own-pens/read", test_read);
  g_test_add_func ("/own-pens/broken", test_broken);
  g_test_add_func ("/own-pens/keep", test_keep);
  g_test_add_func ("/own-pens/unknown-is-kept", test_unknown_is_kept);
  g_test_add_func ("/own-pens/in-words", test_in_words);
  return g_test_run ();
}
