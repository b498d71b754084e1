/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What a file keeps: the same blank, vertex by vertex, comes out of a part that was saved and read
 * again, however it was drawn. On random parts of fixed seeds. */

#include "core/edit.h"
#include "core/part-file.h"
#include "fold/layout.h"
#include "look-up.h"
#include "make-any.h"
#include "make-part.h"
#include "random-part.h"

#define SAME_MM 1e-9

static void
assert_same_fold (const BfFold *a, const BfFold *b)
{
  g_assert_cmpuint (a->blank.rings->len, ==, b->blank.rings->len);
  for (guint i = 0; i < a->blank.rings->len; i++)
    {
      const BfRing *x = bf_blank_ring (&a->blank, i), *y = bf_blank_ring (&b->blank, i);

      g_assert_cmpuint (bf_ring_size (x), ==, bf_ring_size (y));
      for (guint k = 0; k < bf_ring_size (x); k++)
        {
          g_assert_cmpfloat (bf_vec2_distance (bf_ring_vertex (x, k)->p, bf_ring_vertex (y, k)->p),
                             <, SAME_MM);
          g_assert_cmpfloat_with_epsilon (bf_ring_vertex (x, k)->bulge,
                                          bf_ring_vertex (y, k)->bulge, SAME_MM);
        }
    }
  g_assert_cmpuint (a->checks->len, ==, b->checks->len);
  for (guint i = 0; i < a->checks->len; i++)
    g_assert_cmpstr (bf_fold_check (a, i)->message, ==, bf_fold_check (b, i)->message);
}

static void
check_kept (BfPart *part)
{
  g_autofree char *text = bf_part_to_text (part);
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) read = bf_part_from_text (text, -1, &error);
  g_autoptr (BfFold) before = bf_fold (part), after = NULL;

  g_assert_no_error (error);
  after = bf_fold (read);
  assert_same_fold (before, after);
}

/* As a person could have drawn it: the other way round, and in a mirror. */
static void
check_each_way (BfPart *part)
{
  g_autoptr (BfPart) mirrored = bf_part_mirror (part);

  check_kept (part);
  check_kept (mirrored);
}

/* Reliefs of every kind, given and not, at all corners. */
static void
ask_reliefs (GRand *rand, BfPart *part)
{
  g_ptr_array_set_size (part->corners, 0);
  for (guint i = 0; i < bf_part_n_points (part); i++)
    {
      BfCorner *corner = bf_corner_new ("base", i);

      corner->relief = (BfReliefShape)g_rand_int_range (rand, 0, BF_RELIEF_NONE + 1);
      corner->along_after = g_rand_boolean (rand);
      if (corner->relief != BF_RELIEF_UNSET && g_rand_boolean (rand))
        corner->relief_size_mm = g_rand_double_range (rand, 4.0, 9.0);
      g_ptr_array_add (part->corners, corner);
    }
}

static void
test_random (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (24);
  guint n = g_test_thorough () ? 2000 : 60;

  for (guint seed = 0; seed < n; seed++)
    {
      g_autoptr (BfPart) any = make_any (seed), deep = make_random_deep (seed);
      g_autoptr (BfPart) full = random_part (seed);

      g_test_message ("seed %u", seed);
      check_each_way (any);
      ask_reliefs (rand, deep);
      check_each_way (deep);
      check_each_way (full);
    }
}

/* ---- drawn clockwise ---------------------------------------------------------------------- */

/* A slot on every flange. */
static void
add_slots (BfPart *part)
{
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    {
      BfOpening *slot = bf_opening_new (bf_part_flange (part, i)->id, BF_OPENING_SLOT);

      slot->at_mm = bf_vec2 (14.0, 7.0);
      slot->length_mm = 5.0;
      slot->width_mm = 2.0;
      slot->angle_deg = 20.0;
      g_ptr_array_add (part->openings, slot);
    }
}

/* The same part as a person draws it who goes round the other way: in the mirror its words are so
 * already, and looking into the mirror again changes no word. Each opening is measured from the
 * start of its edge as it is drawn then, and edges are as long as they come out of the fold. */
static BfPart *
drawn_clockwise (const BfFold *fold)
{
  BfPart *part = bf_part_mirror (fold->asked);

  for (guint i = 0; i < bf_part_n_points (part); i++)
    g_array_index (part->outline, BfVec2, i).x *= -1.0;
  for (guint i = 0; i < part->openings->len; i++)
    {
      BfOpening *opening = g_ptr_array_index (part->openings, i);
      const BfOpening *asked = g_ptr_array_index (fold->asked->openings, i);
      int flap = bf_layout_find_flap (fold->layout, opening->on);

      opening->from_end = FALSE;
      opening->at_mm.x = fold->layout->flaps[flap].edge_length_mm - asked->at_mm.x;
      opening->angle_deg = -opening->angle_deg;
    }
  return part;
}

static void
test_clockwise (void)
{
  guint n = g_test_thorough () ? 2000 : 60;

  for (guint seed = 0; seed < n; seed++)
    {
      g_autoptr (BfPart) part = seed % 2 == 0 ? make_any (seed) : make_random_deep (seed);
      g_autoptr (BfPart) clockwise = NULL, settled = NULL;
      g_autoptr (BfFold) fold = NULL, other = NULL, again = NULL;

      g_test_message ("seed %u", seed);
      add_slots (part);
      fold = bf_fold (part);
      clockwise = drawn_clockwise (fold);
      other = bf_fold (clockwise);
      settled = bf_fold_settled (clockwise);
      again = bf_fold (settled);
      g_assert_cmpuint (fold->openings->len, ==, other->openings->len);
      for (guint i = 0; i < fold->openings->len; i++)
        {
          BfBox a = bf_box_empty (), b = bf_box_empty (), c = bf_box_empty ();

          bf_ring_extend_box (bf_fold_opening (fold, i)->ring, &a);
          bf_ring_extend_box (bf_fold_opening (other, i)->ring, &b);
          bf_ring_extend_box (bf_fold_opening (again, i)->ring, &c);
          g_assert_cmpfloat (bf_vec2_distance (a.min, b.min), <, 1e-6);
          g_assert_cmpfloat (bf_vec2_distance (a.max, b.max), <, 1e-6);
          g_assert_cmpfloat (bf_vec2_distance (a.max, c.max), <, 1e-6);
        }
      check_kept (clockwise);
    }
}

/* A square relief drawn along the edge before its corner, of an outline drawn clockwise: turned
 * round it lies where it lay, saved and read too. The corner's two edges make 60°, so that it does
 * lie otherwise along the other one. */
static void
test_square_turned (void)
{
  static const char text[] =
      "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1.5},"
      " \"base\": {\"outline\": [[0,0],[100,173.2050807],[200,0]]},"
      " \"flanges\": [{\"id\": \"a\", \"edge\": 0, \"length\": 30},"
      "   {\"id\": \"b\", \"edge\": 2, \"length\": 30}],"
      " \"corners\": [{\"at\": 0, \"relief\": {\"shape\": \"square\", \"size\": 9%s}}]}";
  g_autofree char *plain = g_strdup_printf (text, ""), *along = NULL, *saved = NULL;
  g_autoptr (BfPart) part = bf_part_from_text (plain, -1, NULL), other = NULL;
  g_autoptr (BfFold) fold = bf_fold (part), turned = NULL;
  BfVec2 side, edge = { 1.0, 0.0 }; /* the edge that ends at the corner runs along x */

  along = g_strdup_printf (text, ", \"along\": \"after\"");
  other = bf_part_from_text (along, -1, NULL);
  turned = bf_fold (other);
  saved = bf_part_to_text (part);
  g_assert_nonnull (strstr (saved, "\"along\": \"after\""));
  side = bf_vec2_sub (bf_ring_vertex (bf_fold_relief (fold, 0)->ring, 1)->p,
                      bf_ring_vertex (bf_fold_relief (fold, 0)->ring, 0)->p);
  g_assert_cmpfloat_with_epsilon (fabs (bf_vec2_dot (side, edge)), 9.0, SAME_MM);
  side = bf_vec2_sub (bf_ring_vertex (bf_fold_relief (turned, 0)->ring, 1)->p,
                      bf_ring_vertex (bf_fold_relief (turned, 0)->ring, 0)->p);
  g_assert_cmpfloat_with_epsilon (fabs (bf_vec2_dot (side, edge)), 4.5, 1e-6);
  check_kept (part);
  check_kept (other);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/kept/square-turned", test_square_turned);
  g_test_add_func ("/kept/clockwise", test_clockwise);
  g_test_add_func ("/kept/random", test_random);
  return g_test_run ();
}
