/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The other face of the metal: the same blank in a mirror, with every cut where it was. */

#include "core/tolerance.h"
#include "fold/other-face.h"
#include "look-up.h"
#include "make-any.h"
#include "make-part.h"

#define N_PARTS 300

static BfOpening *
add_opening (BfPart *part, const char *on, BfOpeningShape shape, double x, double y)
{
  BfOpening *opening = bf_opening_new (on, shape);
  const BfVec2 points[] = { { x, y }, { x + 9.0, y - 1.0 }, { x + 3.0, y + 2.0 } };

  opening->at_mm = bf_vec2 (x, y);
  opening->diameter_mm = 4.0;
  opening->length_mm = 14.0;
  opening->width_mm = 3.0;
  opening->angle_deg = 20.0;
  if (shape == BF_OPENING_OUTLINE)
    {
      opening->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
      g_array_append_vals (opening->points, points, G_N_ELEMENTS (points));
    }
  g_ptr_array_add (part->openings, opening);
  return opening;
}

/* TRUE where some vertex of the ring lies there in a mirror. */
static gboolean
has_mirrored (const BfRing *ring, BfVec2 p)
{
  for (guint i = 0; i < bf_ring_size (ring); i++)
    if (bf_vec2_distance (bf_ring_vertex (ring, i)->p, bf_vec2 (-p.x, p.y)) < BF_TOLERANCE_SIZE_MM)
      return TRUE;
  return FALSE;
}

/* Every ring's own box, area and corners, but for rounds, whose vertices lie anywhere on them. */
static void
assert_mirrored (const BfRing *a, const BfRing *b)
{
  BfBox x = bf_box_empty (), y = bf_box_empty ();

  bf_ring_extend_box (a, &x);
  bf_ring_extend_box (b, &y);
  g_assert_cmpfloat_with_epsilon (bf_ring_area (a), bf_ring_area (b), 1e-6);
  g_assert_cmpfloat_with_epsilon (x.min.x, -y.max.x, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (x.max.x, -y.min.x, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (x.min.y, y.min.y, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (x.max.y, y.max.y, BF_TOLERANCE_SIZE_MM);
  for (guint i = 0; i < bf_ring_size (a) && !bf_ring_is_circle (a, NULL, NULL); i++)
    g_assert_true (has_mirrored (b, bf_ring_vertex (a, i)->p));
}

/* Those that were asked for; holes of tabs come after them, in another order. */
static void
assert_openings_mirrored (const BfFold *fold, const BfFold *other)
{
  g_assert_cmpuint (fold->openings->len, ==, other->openings->len);
  for (guint i = 0; i < fold->openings->len; i++)
    {
      guint at;

      g_ptr_array_find (fold->part->openings, bf_fold_opening (fold, i)->asked, &at);
      if (at < fold->asked->openings->len)
        assert_mirrored (bf_fold_opening (fold, i)->ring, bf_fold_opening (other, i)->ring);
    }
}

static const BfOpeningShape shapes[] = { BF_OPENING_ROUND, BF_OPENING_SLOT, BF_OPENING_RECTANGLE,
                                         BF_OPENING_KEYHOLE, BF_OPENING_OUTLINE };

/* A tray whose lips are mitred to another width at each end, so that nothing tells how long their
 * edges are but what is cut there. */
static void
test_on_lips (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 100.0);
  g_autoptr (BfFold) fold = NULL, other = NULL;

  for (guint i = 0; i < 4; i++)
    {
      g_autofree char *wall = g_strdup_printf ("f%u", i), *lip = g_strdup_printf ("lip-%u", i);

      add_lip (part, lip, wall, 20.0 + 3.0 * i, 90.0);
      for (guint k = 0; i == 0 && k < G_N_ELEMENTS (shapes); k++)
        add_opening (part, lip, shapes[k], 30.0 + 30.0 * k, 12.0);
    }
  ((BfFlange *)g_ptr_array_index (part->flanges, 2))->angle_deg = 80.0;
  add_ear (part, "ear", "f2", BF_EDGE_START, 15.0);
  add_opening (part, "f1", BF_OPENING_KEYHOLE, 30.0, 20.0);
  add_opening (part, "base", BF_OPENING_OUTLINE, 60.0, 60.0);
  fold = bf_fold (part);
  other = bf_fold_other_face (fold);
  assert_openings_mirrored (fold, other);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, other->blank.area_mm2, 1e-4);
}

/* Square reliefs lie along the same edges; what is turned up there is turned down. */
static void
test_square_reliefs (void)
{
  for (guint n = 3; n <= 8; n++)
    {
      g_autoptr (BfPart) part = make_ring (n, 100.0, 30.0, 80.0);
      g_autoptr (BfFold) fold = NULL, other = NULL;

      for (guint i = 0; i < n; i++)
        {
          BfCorner *corner = bf_corner_new ("base", i);

          corner->relief = BF_RELIEF_SQUARE;
          g_ptr_array_add (part->corners, corner);
          ((BfFlange *)g_ptr_array_index (part->flanges, i))->angle_deg += 3.0 * i;
        }
      fold = bf_fold (part);
      other = bf_fold_other_face (fold);
      g_assert_cmpuint (fold->reliefs->len, ==, n);
      for (guint i = 0; i < n; i++)
        {
          g_autofree char *where = g_strdup_printf ("base:%u", (n - i) % n);

          assert_mirrored (bf_fold_relief (fold, i)->ring, find_relief (other, where, 0)->ring);
        }
      g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, other->blank.area_mm2, 1e-4);
      g_assert_cmpint (bf_fold_bend (other, 0)->turn, ==, BF_TURN_DOWN);
    }
}

static void
test_random (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
      g_autoptr (BfPart) part = seed % 3 == 0 ? make_random_deep (seed) : make_any (seed);
      g_autoptr (BfFold) fold = NULL, other = NULL;

      for (guint i = 0; i < bf_part_n_flanges (part); i++)
        add_opening (part, bf_part_flange (part, i)->id, shapes[(seed + i) % G_N_ELEMENTS (shapes)],
                     g_rand_double_range (rand, 5.0, 40.0), g_rand_double_range (rand, 3.0, 12.0));
      fold = bf_fold (part);
      other = bf_fold_other_face (fold);
      g_test_message ("seed %u", seed);
      assert_openings_mirrored (fold, other);
    }
}

/* A tab is called alike on either face, so that the glued paper and the steps speak of the same
 * one: at all four corners of a tray. */
static void
test_tabs_names (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL, other = NULL;
  guint n_tabs = 0;

  for (guint i = 0; i < 4; i++)
    {
      BfCorner *corner = bf_corner_new ("base", i);

      corner->join = BF_JOIN_TAB;
      g_ptr_array_add (part->corners, corner);
    }
  fold = bf_fold (part);
  other = bf_fold_other_face (fold);
  for (guint i = 0; i < bf_part_n_flanges (fold->part); i++)
    {
      const BfFlange *tab = bf_part_flange (fold->part, i);

      if (!tab->is_tab)
        continue;
      n_tabs++;
      assert_mirrored (find_face (fold, tab->id)->outline, find_face (other, tab->id)->outline);
    }
  g_assert_cmpuint (n_tabs, ==, 4);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/other-face/on-lips", test_on_lips);
  g_test_add_func ("/other-face/square-reliefs", test_square_reliefs);
  g_test_add_func ("/other-face/random", test_random);
  g_test_add_func ("/other-face/tab-names", test_tabs_names);
  return g_test_run ();
}
