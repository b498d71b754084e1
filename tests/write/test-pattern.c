/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/pattern.h"

#include <string.h>

#include "core/part-file.h"

/* Two flanges, one up and one down, a round hole, and a cut-out that is not round. */
static const char bracket[] =
    "{\"format\": \"benchfold-part\", \"version\": 1, \"name\": \"%s\","
    " \"metal\": {\"thickness\": 1.5}, \"cutting\": {\"by\": \"%s\"},"
    " \"base\": {\"outline\": [[0, 0], [120, 0], [120, 80], [0, 80]]},"
    " \"flanges\": [{\"id\": \"wall\", \"on\": \"base\", \"edge\": 0, \"length\": %s,"
    "                \"angle\": 90, \"turn\": \"up\"},"
    "               {\"id\": \"foot\", \"on\": \"base\", \"edge\": 2, \"length\": 30,"
    "                \"angle\": 60, \"turn\": \"down\"}],"
    " \"openings\": [{\"on\": \"base\", \"shape\": \"round\", \"at\": [30, 40], \"diameter\": 8},"
    "                {\"on\": \"base\", \"shape\": \"rectangle\", \"at\": [95, 40], \"length\": 20,"
    "                 \"width\": 10, \"angle\": 0}]}";

static BfPattern *
make_pattern (const char *name, const char *cut_by, const char *length)
{
  g_autofree char *text = g_strdup_printf (bracket, name, cut_by, length);
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_part_from_text (text, -1, &error);
  const BfPatternOptions options = { .drawn_in = BF_UNITS_MM, .date = "2024-05-31" };
  g_autoptr (BfFold) fold = NULL;

  g_assert_no_error (error);
  fold = bf_fold (part);
  return bf_pattern_new (fold, &options);
}

static guint
count (const BfPattern *pattern, BfPurpose purpose)
{
  guint n = 0;

  for (guint i = 0; i < pattern->items->len; i++)
    n += bf_pattern_item (pattern, i)->purpose == purpose ? 1 : 0;
  return n;
}

static gboolean
says (const BfPattern *pattern, const char *words)
{
  for (guint i = 0; i < pattern->items->len; i++)
    {
      const BfPatternItem *item = bf_pattern_item (pattern, i);

      if (item->purpose == BF_PURPOSE_NOTE && strstr (item->words, words) != NULL)
        return TRUE;
    }
  return FALSE;
}

static void
test_purposes (void)
{
  g_autoptr (BfPattern) by_hand = make_pattern ("Bracket", "disc", "30");
  g_autoptr (BfPattern) by_service = make_pattern ("Bracket", "service", "30");

  g_assert_cmpuint (count (by_hand, BF_PURPOSE_CUT_OUTSIDE), ==, 1);
  g_assert_cmpuint (count (by_hand, BF_PURPOSE_CUT_INSIDE), ==, 2);
  g_assert_cmpuint (count (by_hand, BF_PURPOSE_BEND_UP), ==, 1);
  g_assert_cmpuint (count (by_hand, BF_PURPOSE_BEND_DOWN), ==, 1);
  /* By hand the round hole is drilled; a service cuts it. */
  g_assert_cmpuint (count (by_hand, BF_PURPOSE_DRILL), ==, 1);
  g_assert_cmpuint (count (by_service, BF_PURPOSE_DRILL), ==, 0);
}

/* Each purpose stands together, holes before the outline, and the outline last. */
static void
test_order (void)
{
  g_autoptr (BfPattern) pattern = make_pattern ("Bracket", "disc", "30");
  gboolean done[BF_N_PURPOSES] = { FALSE };
  guint last = pattern->items->len - 1;

  for (guint i = 0; i <= last; i++)
    {
      BfPurpose purpose = bf_pattern_item (pattern, i)->purpose;

      g_assert_false (done[purpose]);
      if (i < last && bf_pattern_item (pattern, i + 1)->purpose != purpose)
        done[purpose] = TRUE;
    }
  g_assert_true (done[BF_PURPOSE_CUT_INSIDE]);
  g_assert_cmpint (bf_pattern_item (pattern, last)->purpose, ==, BF_PURPOSE_CUT_OUTSIDE);
}

static void
test_words (void)
{
  g_autoptr (BfPattern) pattern = make_pattern ("Bracket", "disc", "30");

  g_assert_cmpstr (pattern->origin, ==, "Drawn in mm at full size, marking side up, 2024-05-31.");
  g_assert_null (pattern->warning);
  g_assert_true (says (pattern, "Bracket"));
  g_assert_true (says (pattern, "fold up 90°"));
  g_assert_true (says (pattern, "fold down 60°"));
  g_assert_true (says (pattern, "2024-05-31"));
}

static void
test_no_name (void)
{
  g_autoptr (BfPattern) pattern = make_pattern ("", "disc", "30");

  g_assert_cmpstr (pattern->name, !=, "");
  g_assert_true (says (pattern, pattern->name));
}

/* A flange that is shorter than its bend is drawn, and the drawing says not to cut it. */
static void
test_warning (void)
{
  g_autoptr (BfPattern) pattern = make_pattern ("Bracket", "disc", "1");

  g_assert_nonnull (pattern->warning);
  g_assert_true (g_str_has_prefix (pattern->warning, "Do not cut yet:"));
  g_assert_true (says (pattern, "Do not cut"));
}

/* A service's line of words hides no line of the drawing and stays in its box. */
static void
test_words_in_box (void)
{
  g_autoptr (BfPattern) pattern = make_pattern ("Bracket", "disc", "30");
  BfBox box = pattern->box;

  for (guint i = 0; i < pattern->items->len; i++)
    {
      const BfPatternItem *item = bf_pattern_item (pattern, i);

      if (item->kind != BF_PATTERN_WORDS)
        continue;
      g_assert_cmpfloat (MIN (item->at.x, item->to.x), >=, box.min.x);
      g_assert_cmpfloat (MAX (item->at.x, item->to.x), <=, box.max.x);
      g_assert_cmpfloat (MIN (item->at.y, item->to.y), >=, box.min.y);
      g_assert_cmpfloat (MAX (item->at.y, item->to.y) + item->cap_height_mm, <=, box.max.y);
    }
}

/* A hole larger than all of the metal leaves no blank, though the flange has a bend line: the
 * pattern has no contours, and a box all the same. */
static void
test_no_blank (void)
{
  static const char eaten[] =
      "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1.5},"
      " \"base\": {\"outline\": [[0, 0], [100, 0], [100, 60], [0, 60]]},"
      " \"flanges\": [{\"id\": \"wall\", \"on\": \"base\", \"edge\": 0, \"length\": 30}],"
      " \"openings\": [{\"on\": \"base\", \"shape\": \"round\", \"at\": [50, 30],"
      "                 \"diameter\": 500}]}";
  static const BfBendLines ways[] = { BF_BEND_LINES_IN, BF_BEND_LINES_OUT, BF_BEND_LINES_NOTCHES };

  for (guint i = 0; i < 2 * G_N_ELEMENTS (ways); i++)
    {
      const BfPatternOptions options = { .kerf = i % 2 == 1, .bend_lines = ways[i / 2] };
      g_autoptr (BfPart) part = bf_part_from_text (eaten, -1, NULL);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (BfPattern) pattern = bf_pattern_new (fold, &options);

      g_assert_cmpuint (fold->blank.rings->len, ==, 0);
      g_assert_nonnull (pattern->warning);
      g_assert_true (isfinite (pattern->box.min.x) && isfinite (pattern->box.min.y));
      g_assert_true (isfinite (pattern->box.max.x) && isfinite (pattern->box.max.y));
    }
}

/* A tray whose corners are folded double: three folds at each, and nothing cut but the outline. */
static const char folded[] =
    "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1},"
    " \"joining\": \"folded\", \"base\": {\"outline\": [[0, 0], [200, 0], [200, 120], [0, 120]]},"
    " \"flanges\": [{\"id\": \"a\", \"on\": \"base\", \"edge\": 0, \"length\": 30},"
    "               {\"id\": \"b\", \"on\": \"base\", \"edge\": 1, \"length\": 30},"
    "               {\"id\": \"c\", \"on\": \"base\", \"edge\": 2, \"length\": 30},"
    "               {\"id\": \"d\", \"on\": \"base\", \"edge\": 3, \"length\": 30}]}";

/* How many notches the outline has: each adds three points to a rectangle's four. */
static guint
count_notches (const BfPattern *pattern)
{
  for (guint i = 0; i < pattern->items->len; i++)
    {
      const BfPatternItem *item = bf_pattern_item (pattern, i);
      guint n = item->kind == BF_PATTERN_RING ? bf_ring_size (item->ring) : 0;

      for (guint k = 0; k < n; k++)
        g_assert_cmpfloat (bf_vec2_distance (bf_ring_vertex (item->ring, k)->p,
                                             bf_ring_vertex (item->ring, k + 1)->p),
                           >, 0.2);
      if (item->purpose == BF_PURPOSE_CUT_OUTSIDE)
        {
          g_assert_cmpuint (n % 3, ==, 1);
          return n / 3 - 1;
        }
    }
  g_assert_not_reached ();
}

/* Of each corner's three folds the bisector turns down. As notches, every line has a mark at both
 * ends: a notch where it runs out into an edge, and a tick where it ends within the metal, in the
 * outline's corner, or so near another notch that a point would be left between them. */
static void
test_folded (void)
{
  g_autoptr (BfPart) part = bf_part_from_text (folded, -1, NULL);
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfPatternOptions drawn = { .bend_lines = BF_BEND_LINES_IN };
  const BfPatternOptions notched = { .bend_lines = BF_BEND_LINES_NOTCHES };
  g_autoptr (BfPattern) lines = bf_pattern_new (fold, &drawn);
  g_autoptr (BfPattern) notches = bf_pattern_new (fold, &notched);
  guint n_lines = 4 + 3 * 4, n_notches = count_notches (notches);

  g_assert_cmpuint (fold->folded->len, ==, 4);
  g_assert_cmpuint (count (lines, BF_PURPOSE_BEND_UP), ==, 12);
  g_assert_cmpuint (count (lines, BF_PURPOSE_BEND_DOWN), ==, 4);
  g_assert_cmpuint (count_notches (lines), ==, 0);
  g_assert_cmpuint (count (notches, BF_PURPOSE_BEND_UP) + count (notches, BF_PURPOSE_BEND_DOWN), ==,
                    2 * n_lines - n_notches);
  g_assert_cmpuint (n_notches, >=, 8);
  g_assert_cmpuint (n_notches, <=, 16);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  g_test_add_func ("/write/pattern/purposes", test_purposes);
  g_test_add_func ("/write/pattern/order", test_order);
  g_test_add_func ("/write/pattern/words", test_words);
  g_test_add_func ("/write/pattern/no-name", test_no_name);
  g_test_add_func ("/write/pattern/warning", test_warning);
  g_test_add_func ("/write/pattern/words-in-box", test_words_in_box);
  g_test_add_func ("/write/pattern/no-blank", test_no_blank);
  g_test_add_func ("/write/pattern/folded", test_folded);
  return g_test_run ();
}
