/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-file.h"
#include "core/tolerance.h"

#define MOST 9

static BfPart *
make_part (const BfVec2 *points, guint n)
{
  BfPart *part = bf_part_new ();

  g_array_append_vals (part->outline, points, n);
  return part;
}

/* Outlines and what is wrong with them; NULL: nothing. */
static const struct
{
  guint n;
  BfVec2 points[MOST];
  const char *message;
} cases[] = {
  { 3, { { 0, 0 }, { 9, 0 }, { 0, 9 } }, NULL },
  { 4, { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 0, 9 } }, NULL },
  /* An inside corner; a comb; a long thin one. */
  { 6, { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 5, 9 }, { 5, 4 }, { 0, 4 } }, NULL },
  { 8, { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 6, 9 }, { 6, 1 }, { 3, 1 }, { 3, 9 }, { 0, 9 } }, NULL },
  { 4, { { 0, 0 }, { 90000, 0 }, { 90000, 0.001 }, { 0, 0.001 } }, NULL },
  /* A point in the middle of a straight edge is allowed. */
  { 5, { { 0, 0 }, { 4, 0 }, { 9, 0 }, { 9, 9 }, { 0, 9 } }, NULL },
  /* A bow tie; an edge across two others; a loop that runs round twice. */
  { 4, { { 0, 0 }, { 9, 9 }, { 9, 0 }, { 0, 9 } }, "base.outline: edges 0 and 2 cross or touch" },
  { 5,
    { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 4, -3 }, { 0, 9 } },
    "base.outline: edges 0 and 3 cross or touch" },
  { 6,
    { { 0, 0 }, { 9, 0 }, { 4, 8 }, { 0, 1 }, { 9, 1 }, { 4, 9 } },
    "base.outline: edges 2 and 5 cross or touch" },
  /* A point on an edge, from inside; two points that are one; two edges that share a stretch. */
  { 5,
    { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 4, 0 }, { 0, 9 } },
    "base.outline: edges 0 and 3 cross or touch" },
  { 7,
    { { 0, 0 }, { 4, 4 }, { 9, 0 }, { 9, 9 }, { 4, 4 }, { 0, 9 }, { -1, 5 } },
    "base.outline: edges 0 and 4 cross or touch" },
  { 8,
    { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 7, 9 }, { 7, 0 }, { 5, 0 }, { 5, 9 }, { 0, 9 } },
    "base.outline: edges 0 and 4 cross or touch" },
  /* The same point twice in a row, also over the end of the list. */
  { 4, { { 0, 0 }, { 9, 0 }, { 9, 0 }, { 0, 9 } }, "base.outline: points 1 and 2 are the same" },
  { 4, { { 0, 0 }, { 9, 0 }, { 0, 9 }, { 0, 0 } }, "base.outline: points 3 and 0 are the same" },
  /* A spike, and outlines of no area. */
  { 5,
    { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 9, 4 }, { 0, 4 } },
    "base.outline: edges 1 and 2 lie on each other" },
  { 3, { { 0, 0 }, { 9, 0 }, { 4, 0 } }, "base.outline: edges 0 and 1 lie on each other" },
  { 4,
    { { 0, 0 }, { 9, 9 }, { 4, 4 }, { 2, 2 } },
    "base.outline: edges 0 and 1 lie on each other" },
  { 2, { { 0, 0 }, { 9, 0 } }, "base.outline: expected at least 3 points, found 2" },
  { 0, { { 0, 0 } }, "base.outline: expected at least 3 points, found 0" },
  /* Two tips so near that the overlays could not tell them apart; and just far enough. */
  { 6,
    { { 0, 0 }, { 9, 0 }, { 5, 5 }, { 9, 9 }, { 0, 9 }, { 5 - 1e-8, 5 } },
    "base.outline: edges 1 and 4 cross or touch" },
  { 6, { { 0, 0 }, { 9, 0 }, { 5, 5 }, { 9, 9 }, { 0, 9 }, { 5 - 1e-6, 5 } }, NULL },
};

static void
check (const BfVec2 *points, guint n, gboolean good)
{
  g_autoptr (BfPart) part = make_part (points, n);
  g_autoptr (GError) error = NULL;

  g_assert_cmpint (bf_part_check_outline (part, &error), ==, good);
  if (!good)
    g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_OUTLINE);
}

static void
test_messages (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfPart) part = make_part (cases[i].points, cases[i].n);
      g_autoptr (GError) error = NULL;
      gboolean good = bf_part_check_outline (part, &error);

      g_test_message ("case %u", i);
      g_assert_cmpint (good, ==, cases[i].message == NULL);
      g_assert_cmpstr (error != NULL ? error->message : NULL, ==, cases[i].message);
    }
}

/* What an outline is does not change when it is moved, turned, mirrored or begun elsewhere. */
static void
test_moved (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    for (guint k = 0; k < cases[i].n; k++)
      {
        double a = 0.7 + 0.61 * k, mirror = k % 2 == 0 ? 1 : -1;
        BfVec2 points[MOST];

        /* The long and thin one stays where no digit is lost. */
        if (cases[i].points[1].x > 1000)
          continue;
        for (guint j = 0; j < cases[i].n; j++)
          {
            BfVec2 p = cases[i].points[(j + k) % cases[i].n];
            points[j] = bf_vec2 (mirror * (p.x * cos (a) - p.y * sin (a)) + 300 * k,
                                 p.x * sin (a) + p.y * cos (a) - 17);
          }
        check (points, cases[i].n, cases[i].message == NULL);
      }
}

/* A star drawn from spokes in order never crosses itself. With the tips of two spokes swapped that
 * do not follow each other, and all spokes alike long, its edges cross as chords of a circle do. */
static void
test_stars (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (99);

  for (int round = 0; round < 200; round++)
    {
      guint n = (guint)g_rand_int_range (rand, 5, 60);
      guint swap = (guint)g_rand_int_range (rand, 0, (int)n - 3);
      double spread = round % 2 == 0 ? 490 : 0;
      g_autofree BfVec2 *points = g_new (BfVec2, n);

      for (guint i = 0; i < n; i++)
        {
          double a = 2 * G_PI * i / n;
          double radius = 10 + spread * g_rand_double (rand);

          points[i] = bf_vec2 (radius * cos (a), radius * sin (a));
        }
      check (points, n, TRUE);
      if (spread > 0)
        continue;
      BfVec2 kept = points[swap];
      points[swap] = points[swap + 2];
      points[swap + 2] = kept;
      check (points, n, FALSE);
    }
}

/* As many points as a file may hold take no longer than a person waits. */
static void
test_many (void)
{
  guint n = BF_PART_FILE_MAX_ITEMS;
  g_autofree BfVec2 *points = g_new (BfVec2, n);

  for (guint i = 0; i < n; i++)
    {
      double radius = i % 2 == 0 ? 40000 : 39000, a = 2 * G_PI * i / n;
      points[i] = bf_vec2 (radius * cos (a), radius * sin (a));
    }
  check (points, n, TRUE);
  points[n / 2] = bf_vec2 (41000, 0);
  check (points, n, FALSE);
}

/* A file whose base crosses itself is read all the same: the window shows what is wrong. */
static void
test_read_all_the_same (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_part_from_text (
      "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1},"
      " \"base\": {\"outline\": [[0,0],[9,9],[9,0],[0,9]]}}",
      -1, &error);

  g_assert_no_error (error);
  g_assert_false (bf_part_check_outline (part, &error));
  g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_OUTLINE);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/part-outline/messages", test_messages);
  g_test_add_func ("/part-outline/moved", test_moved);
  g_test_add_func ("/part-outline/stars", test_stars);
  g_test_add_func ("/part-outline/many", test_many);
  g_test_add_func ("/part-outline/read-all-the-same", test_read_all_the_same);
  return g_test_run ();
}
