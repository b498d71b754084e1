/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "core/edit.h"
#include "core/part-file.h"

static BfPart *
read_part (const char *pinned, GError **error)
{
  g_autofree char *text = g_strdup_printf (
      "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1},"
      " \"base\": {\"outline\": [[0,0],[50,0],[50,20],[0,20]], \"pinned\": %s},"
      " \"flanges\": [{\"id\": \"f\", \"edge\": 1, \"length\": 10}],"
      " \"openings\": [{\"shape\": \"round\", \"at\": [9, 9], \"diameter\": 3}]}",
      pinned);

  return bf_part_from_text (text, -1, error);
}

/* Each kind by itself, there and back, and as the file keeps it. */
static void
test_each (void)
{
  static const struct
  {
    BfPinKind kind;
    guint at;
  } rows[] = { { BF_PIN_FLANGE, 0 }, { BF_PIN_EDGE, 2 }, { BF_PIN_OPENING, 0 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) bare = read_part ("[]", NULL);
      g_autoptr (BfPart) pinned = bf_edit_pin (bare, rows[i].kind, rows[i].at, TRUE);
      g_autoptr (BfPart) free_again = bf_edit_pin (pinned, rows[i].kind, rows[i].at, FALSE);
      g_autofree char *text = bf_part_to_text (pinned), *bare_text = bf_part_to_text (free_again);
      g_autoptr (BfPart) read = bf_part_from_text (text, -1, NULL);

      for (guint k = 0; k < G_N_ELEMENTS (rows); k++)
        {
          g_assert_false (bf_part_is_pinned (bare, rows[k].kind, rows[k].at));
          g_assert_true (bf_part_is_pinned (pinned, rows[k].kind, rows[k].at) == (i == k));
          g_assert_true (bf_part_is_pinned (read, rows[k].kind, rows[k].at) == (i == k));
          g_assert_false (bf_part_is_pinned (free_again, rows[k].kind, rows[k].at));
        }
      g_assert_null (strstr (bare_text, "pinned"));
    }
}

/* An edge keeps its pin wherever it goes: in a mirror, and when points come and go before it. One
 * that is split is another size. */
static void
test_edges_go_along (void)
{
  g_autoptr (BfPart) part = read_part ("[1, 1]", NULL);
  g_autoptr (BfPart) mirrored = bf_part_mirror (part);
  g_autoptr (BfPart) more = bf_edit_add_point (part, 0, bf_vec2 (25.0, -5.0));
  g_autoptr (BfPart) less = bf_edit_remove_point (more, 1);
  g_autoptr (BfPart) split = bf_edit_add_point (part, 1, bf_vec2 (55.0, 10.0));

  g_assert_cmpuint (part->pinned_edges->len, ==, 1);
  g_assert_true (bf_part_is_pinned (mirrored, BF_PIN_EDGE, 2));
  g_assert_cmpfloat_with_epsilon (bf_part_edge_length_mm (mirrored, 2), 20.0, 1e-9);
  g_assert_true (bf_part_is_pinned (more, BF_PIN_EDGE, 2));
  g_assert_true (bf_part_is_pinned (less, BF_PIN_EDGE, 1));
  g_assert_cmpuint (split->pinned_edges->len, ==, 0);
}

static void
test_refused (void)
{
  static const char *const rows[][2] = {
    { "[4]", "base.pinned: the base has 4 edges (0 to 3), found 4" },
    { "[0, 1.5]", "base.pinned[1]: expected a whole number, 0 or more, found 1.5" },
    { "true", "base.pinned: expected a list, found true" },
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
  g_test_add_func ("/edit-pins/each", test_each);
  g_test_add_func ("/edit-pins/edges-go-along", test_edges_go_along);
  g_test_add_func ("/edit-pins/refused", test_refused);
  return g_test_run ();
}
