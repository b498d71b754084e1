/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Metal too thin between two edges of one outline, beside what only looks like it. The least width
 * is common practice: twice the thickness, and 3 mm. */

#include "core/part-file.h"
#include "fold/fold.h"
#include "look-up.h"
#include "make-part.h"

#define N_POINTS 12

typedef struct
{
  const char *name;
  double thickness_mm;
  BfVec2 outline[N_POINTS];
  guint n_points;
  double found, needed; /* NAN: nothing is said */
  BfVec2 place;         /* the neck's middle */
} Case;

/* Two wings of 40 by 40, a waist between them. */
#define WAIST(width)                                                                               \
  {                                                                                                \
    { 0, 0 }, { 40, 0 }, { 45, 20 }, { 50, 0 }, { 90, 0 }, { 90, 40 }, { 50, 40 },                 \
        { 45, 20 + (width) }, { 40, 40 },                                                          \
    {                                                                                              \
      0, 40                                                                                        \
    }                                                                                              \
  }

/* The same with 20 mm of waist between its notches. */
#define LONG_WAIST(width)                                                                          \
  {                                                                                                \
    { 0, 0 }, { 40, 0 }, { 40, 20 }, { 60, 20 }, { 60, 0 }, { 90, 0 }, { 90, 40 }, { 60, 40 },     \
        { 60, 20 + (width) }, { 40, 20 + (width) }, { 40, 40 },                                    \
    {                                                                                              \
      0, 40                                                                                        \
    }                                                                                              \
  }

/* A notch from below, its tip that far from the upper edge. */
#define NOTCH(left)                                                                                \
  {                                                                                                \
    { 0, 0 }, { 40, 0 }, { 50, 40 - (left) }, { 60, 0 }, { 100, 0 }, { 100, 40 }, { 0, 40 }        \
  }

/* A notch with a flat floor, beside a slanting edge: from (0, 40) to (100, 70). */
#define ASLANT(floor)                                                                              \
  {                                                                                                \
    { 0, 0 }, { 40, 0 }, { 40, floor }, { 60, floor }, { 60, 0 }, { 100, 0 }, { 100, 70 },         \
    {                                                                                              \
      0, 40                                                                                        \
    }                                                                                              \
  }

/* A tongue that stands out of the edge. */
#define TONGUE(width, length)                                                                      \
  {                                                                                                \
    { 0, 0 }, { 80, 0 }, { 80, 40 }, { 40 + (width), 40 }, { 40 + (width), 40 + (length) },        \
        { 40, 40 + (length) }, { 40, 40 },                                                         \
    {                                                                                              \
      0, 40                                                                                        \
    }                                                                                              \
  }

static const Case cases[] = {
  { "/necks/waist/out", 1.5, WAIST (3.0), 10, NAN, NAN, { 0, 0 } },
  { "/necks/waist/in", 1.5, WAIST (2.99), 10, 2.99, 3.0, { 45, 21.495 } },
  { "/necks/waist/thin-metal", 0.5, WAIST (2.99), 10, 2.99, 3.0, { 45, 21.495 } },
  { "/necks/waist/thick-out", 2.5, WAIST (5.0), 10, NAN, NAN, { 0, 0 } },
  { "/necks/waist/thick-in", 2.5, WAIST (4.99), 10, 4.99, 5.0, { 45, 22.495 } },
  { "/necks/waist/hair", 1.5, WAIST (0.1), 10, 0.1, 3.0, { 45, 20.05 } },
  { "/necks/long-waist/out", 1.5, LONG_WAIST (3.0), 12, NAN, NAN, { 0, 0 } },
  { "/necks/long-waist/in", 1.5, LONG_WAIST (2.9), 12, 2.9, 3.0, { 50, 21.45 } },
  { "/necks/notch/out", 1.5, NOTCH (3.0), 7, NAN, NAN, { 0, 0 } },
  { "/necks/notch/in", 1.5, NOTCH (2.99), 7, 2.99, 3.0, { 50, 38.505 } },
  /* The slant's line is 52 high over x = 40; square to it the floor's corner is nearer. */
  { "/necks/aslant/out", 1.5, ASLANT (48.86), 8, NAN, NAN, { 0, 0 } },
  { "/necks/aslant/in", 1.5, ASLANT (49.0), 8, 2.873478855, 3.0, { 39.5871559633, 50.376146789 } },
  { "/necks/tongue/out", 1.5, TONGUE (3.0, 20.0), 8, NAN, NAN, { 0, 0 } },
  { "/necks/tongue/in", 1.5, TONGUE (2.9, 20.0), 8, 2.9, 3.0, { 41.45, 40 } },
  /* A nib of less than 3 by 3. */
  { "/necks/tongue/nib", 1.5, TONGUE (2.9, 3.0), 8, NAN, NAN, { 0, 0 } },
  { "/necks/corner/sharp", 1.5, { { 0, 0 }, { 100, 0 }, { 100, 9 } }, 3, NAN, NAN, { 0, 0 } },
  { "/necks/corner/cut-off",
    1.5,
    { { 10, 0 }, { 100, 0 }, { 100, 9 }, { 10, 0.9 } },
    4,
    NAN,
    NAN,
    { 0, 0 } },
  { "/necks/step",
    1.5,
    { { 0, 0 }, { 80, 0 }, { 80, 38 }, { 40, 38 }, { 40, 40 }, { 0, 40 } },
    6,
    NAN,
    NAN,
    { 0, 0 } },
  { "/necks/slot-from-edge",
    1.5,
    { { 0, 0 }, { 40, 0 }, { 40, 30 }, { 41, 30 }, { 41, 0 }, { 80, 0 }, { 80, 40 }, { 0, 40 } },
    8,
    NAN,
    NAN,
    { 0, 0 } },
};

static guint
count_strips (const BfFold *fold)
{
  guint n = 0;

  for (guint i = 0; i < fold->checks->len; i++)
    n += strcmp (bf_fold_check (fold, i)->code, "strip-too-thin") == 0 ? 1 : 0;
  return n;
}

static void
assert_strip (const BfFold *fold, double found, double needed)
{
  const BfCheck *check = find_check (fold, "strip-too-thin", NULL);

  for (guint i = 0; i < fold->checks->len; i++)
    g_test_message ("%s, %s", bf_fold_check (fold, i)->where, bf_fold_check (fold, i)->message);
  g_assert_cmpuint (count_strips (fold), ==, isnan (found) ? 0u : 1u);
  if (isnan (found))
    return;
  g_assert_cmpfloat_with_epsilon (check->found, found, 1e-8);
  g_assert_cmpfloat_with_epsilon (check->needed, needed, 1e-12);
  g_assert_cmpint (check->severity, ==, BF_SEVERITY_LOOK_AT);
}

/* Turned over, and drawn from another point on, it is as thin. */
static void
test_case (gconstpointer data)
{
  const Case *c = data;

  for (guint first = 0; first < c->n_points; first++)
    {
      BfVec2 turned[N_POINTS];
      g_autoptr (BfPart) part = NULL;
      g_autoptr (BfPart) mirrored = NULL;
      g_autoptr (BfFold) fold = NULL, other = NULL;

      for (guint i = 0; i < c->n_points; i++)
        turned[i] = c->outline[(first + i) % c->n_points];
      part = make_part (turned, c->n_points);
      part->metal.thickness_mm = c->thickness_mm;
      mirrored = bf_part_mirror (part);
      fold = bf_fold (part);
      other = bf_fold (mirrored);
      assert_strip (fold, c->found, c->needed);
      assert_strip (other, c->found, c->needed);
      if (isnan (c->found))
        continue;
      g_assert_cmpstr (find_check (fold, "strip-too-thin", NULL)->where, ==, "base");
      g_assert_cmpfloat_with_epsilon (find_check (fold, "strip-too-thin", NULL)->place.y,
                                      c->place.y, 1e-6);
    }
}

/* What lies between is no metal: a hole, whose own distance from the edges is spoken of. */
static void
test_hole_between (void)
{
  const BfVec2 outline[] = { { 0, 0 },   { 40, 0 },  { 45, 20 }, { 50, 0 },  { 90, 0 },
                             { 90, 40 }, { 50, 40 }, { 45, 29 }, { 40, 40 }, { 0, 40 } };
  g_autoptr (BfPart) part = make_part (outline, G_N_ELEMENTS (outline));
  g_autoptr (BfFold) fold = NULL;
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);

  part->metal.thickness_mm = 6.0; /* 12 asked of 9 */
  hole->at_mm = bf_vec2 (45.0, 24.5);
  hole->diameter_mm = 3.0;
  g_ptr_array_add (part->openings, hole);
  fold = bf_fold (part);
  g_assert_cmpuint (count_strips (fold), ==, 0);
  g_assert_nonnull (find_check (fold, "opening-near-edge", "base"));
}

/* A lip inset by a notch of 1.5 and a strip of the wall, 3.75 long, beside it. */
static void
test_beside_notch (void)
{
  static const double widths_mm[] = { 2.99, 3.01 };

  for (guint i = 0; i < G_N_ELEMENTS (widths_mm); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;

      part->cutting.by = BF_CUTTING_TABLE;
      add_flange (part, "front", 0, 60.0, 90.0);
      add_lip (part, "lip", "front", 20.0, 90.0)->start_mm = 1.5 + widths_mm[i];
      fold = bf_fold (part);
      assert_strip (fold, i == 0 ? 2.99 : NAN, 3.0);
      if (i == 0)
        g_assert_cmpstr (find_check (fold, "strip-too-thin", NULL)->where, ==, "front");
    }
}

/* A flange that narrow hangs on between its two notches: what lies between reliefs is told once. */
static void
test_between_notches (void)
{
  static const double widths_mm[] = { 2.99, 3.01 };

  for (guint i = 0; i < G_N_ELEMENTS (widths_mm); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;
      BfFlange *narrow = add_flange (part, "front", 0, 60.0, 90.0);

      part->cutting.by = BF_CUTTING_TABLE;
      narrow->start_mm = 50.0;
      narrow->end_mm = 150.0 - widths_mm[i];
      fold = bf_fold (part);
      assert_strip (fold, i == 0 ? 2.99 : NAN, 3.0);
    }
}

/* The program's own parts are sound. */
static void
test_examples (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("BENCHFOLD_DATA"), "examples", NULL);
  g_autoptr (GDir) folder = g_dir_open (path, 0, NULL);
  const char *name;
  guint n = 0;

  while ((name = g_dir_read_name (folder)) != NULL)
    if (g_str_has_suffix (name, ".benchfold"))
      {
        g_autofree char *full = g_build_filename (path, name, NULL);
        g_autoptr (GFile) file = g_file_new_for_path (full);
        g_autoptr (BfPart) part = bf_part_load (file, NULL);
        g_autoptr (BfFold) fold = bf_fold (part);

        assert_strip (fold, NAN, NAN);
        n++;
      }
  g_assert_cmpuint (n, >=, 7);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    g_test_add_data_func (cases[i].name, &cases[i], test_case);
  g_test_add_func ("/necks/hole-between", test_hole_between);
  g_test_add_func ("/necks/beside-notch", test_beside_notch);
  g_test_add_func ("/necks/examples", test_examples);
  g_test_add_func ("/necks/between-notches", test_between_notches);
  return g_test_run ();
}
