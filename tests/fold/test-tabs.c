/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Corners joined by tabs. */

#include "core/edit.h"
#include "look-up.h"
#include "make-any.h"
#include "make-part.h"
#include "slab-overlap.h"

#define HAND_MM 1e-6
#define DEEPEST_MM 1e-3

/* The marking-side point in space of each round opening on a face. */
static GArray *
holes_on (const BfFold *fold, const char *face)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (BfVec3));

  for (guint i = 0; i < fold->openings->len; i++)
    {
      const BfOpeningResult *opening = bf_fold_opening (fold, i);
      BfVec2 centre;
      BfVec3 p;

      if (strcmp (bf_fold_face (fold, opening->face)->id, face) != 0)
        continue;
      g_assert_true (bf_ring_is_circle (opening->ring, &centre, NULL));
      p = bf_fold_place (fold, opening->face, centre);
      g_array_append_val (found, p);
    }
  return found;
}

static BfVec3
nearest (const GArray *points, BfVec3 p)
{
  BfVec3 best = g_array_index (points, BfVec3, 0);

  for (guint i = 1; i < points->len; i++)
    {
      BfVec3 q = g_array_index (points, BfVec3, i);

      if (bf_vec3_length (bf_vec3_sub (q, p)) < bf_vec3_length (bf_vec3_sub (best, p)))
        best = q;
    }
  return best;
}

static guint
n_tabs (const BfFold *fold)
{
  guint n = 0;

  for (guint i = 0; i < bf_part_n_flanges (fold->part); i++)
    n += bf_part_flange (fold->part, i)->is_tab ? 1 : 0;
  return n;
}

/* A riveted tray of 200 × 120 × 40: the two end walls, f1 and f3, carry all four tabs. The tab of
 * the right wall stands behind the front one: its
 * outer face on the front's inner face, y = 1.5, its own inner face at y = 3. Holes for 4 mm
 * rivets, 4.1, stand twice that from the tab's edge; the tab begins, without its bend of 1.5 + 1.5,
 * at x = 200 − 3, so that they are at x = 197 − 8.2. */
static void
test_by_hand (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GArray) tab = NULL, wall = NULL;

  part->joining = BF_JOINING_RIVETED;
  fold = bf_fold (part);
  g_assert_cmpuint (n_tabs (fold), ==, 4);
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
  g_assert_null (find_check (fold, "tab-not-made", NULL));
  g_assert_nonnull (find_bend (fold, "f1-end-tab"));
  g_assert_nonnull (find_bend (fold, "f3-start-tab"));
  g_assert_nonnull (find_bend (fold, "f3-end-tab"));
  g_assert_cmpfloat_with_epsilon (find_bend (fold, "f1-start-tab")->angle_rad, G_PI_2, 1e-12);
  tab = holes_on (fold, "f1-start-tab");
  wall = holes_on (fold, "f0");
  g_assert_cmpuint (tab->len, ==, 2);
  g_assert_cmpuint (wall->len, ==, 4); /* two at either end */
  for (guint i = 0; i < tab->len; i++)
    {
      BfVec3 p = g_array_index (tab, BfVec3, i), q = nearest (wall, p);

      g_assert_cmpfloat_with_epsilon (p.x, 200.0 - 3.0 - 8.2, HAND_MM);
      g_assert_cmpfloat_with_epsilon (p.y, 3.0, HAND_MM);
      assert_in_space (q, bf_vec3 (p.x, 1.5, p.z), HAND_MM);
    }
  g_assert_cmpuint (fold->part->flanges->len, ==, 8);
  g_assert_cmpuint (fold->asked->flanges->len, ==, 4);
}

/* A wall with a flange on its start side and one on its tip that meet, sizes inside. */
static BfFold *
fold_with_ear (const char *ear_id)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);

  part->measure = BF_MEASURE_INSIDE;
  part->joining = BF_JOINING_RIVETED;
  add_flange (part, "right", 1, 40.0, 90.0);
  add_ear (part, ear_id, "right", BF_EDGE_START, 25.0);
  add_lip (part, "lip", "right", 20.0, 90.0);
  return bf_fold (part);
}

/* What a person draws is what it is, whatever its name. */
static void
test_named_like_tab (void)
{
  g_autoptr (BfFold) fold = fold_with_ear ("right-start-tab"), same = fold_with_ear ("right-start");

  g_assert_cmpuint (n_tabs (fold), ==, 0);
  g_assert_cmpuint (fold->checks->len, ==, same->checks->len);
  g_assert_cmpuint (fold->reliefs->len, ==, same->reliefs->len);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, same->blank.area_mm2, 1e-9);
  g_assert_cmpfloat_with_epsilon (find_bend (fold, "right-start-tab")->setback_mm, 1.5, 1e-12);
}

/* A name that is taken is no reason to leave a tab out. */
static void
test_name_taken (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;

  part->joining = BF_JOINING_RIVETED;
  add_lip (part, "f1-start-tab", "f0", 12.0, 90.0);
  fold = bf_fold (part);
  g_assert_cmpuint (n_tabs (fold), ==, 4);
  g_assert_null (find_check (fold, "tab-not-made", NULL));
  g_assert_cmpuint (find_bend (fold, "f1-start-tab-2")->face, !=,
                    find_bend (fold, "f1-start-tab")->face);
  g_assert_cmpstr (bf_part_find_flange (fold->part, "f1-start-tab-2")->on, ==, "f1");
}

/* Parts of many sides, three flanges deep, one of whose walls leans so that its side follows the
 * other only part of the way below its lip. */
static void
test_measure (void)
{
  static const guint seeds[] = { 155, 2615, 3929, 4001, 9941, 11705 };

  for (guint i = 0; i < G_N_ELEMENTS (seeds); i++)
    {
      g_autoptr (BfPart) part = make_any (seeds[i]), other = NULL;
      g_autoptr (BfFold) fold = NULL, again = NULL;

      other = bf_edit_measure (part, part->measure == BF_MEASURE_INSIDE ? BF_MEASURE_OUTSIDE
                                                                        : BF_MEASURE_INSIDE);
      fold = bf_fold (part);
      again = bf_fold (other);
      g_test_message ("seed %u: %u tabs, %u", seeds[i], n_tabs (fold), n_tabs (again));
      g_assert_cmpuint (n_tabs (fold), ==, n_tabs (again));
      g_assert_cmpfloat_with_epsilon (fold->blank.area_before_cuts_mm2,
                                      again->blank.area_before_cuts_mm2, 1e-6);
    }
}

/* All round bases of three to eight sides, walls that lean every way, up and down, sizes inside and
 * outside, with lips and without: where there is a tab nothing collides, no metal is wanted twice,
 * and each hole of a tab stands a thickness before its hole in the wall. */
static void
check_ring (guint n_sides, double angle_deg, guint k, guint *made)
{
  g_autoptr (BfPart) part = make_ring (n_sides, 150.0, 45.0, angle_deg);
  g_autoptr (BfFold) fold = NULL;
  guint a, b;

  part->joining = BF_JOINING_RIVETED;
  part->measure = k & 1 ? BF_MEASURE_INSIDE : BF_MEASURE_OUTSIDE;
  for (guint i = 0; i < n_sides; i++)
    {
      g_autofree char *wall = g_strdup_printf ("f%u", i), *lip = g_strdup_printf ("l%u", i);

      ((BfFlange *)g_ptr_array_index (part->flanges, i))->turn = k & 2 ? BF_TURN_DOWN : BF_TURN_UP;
      if (k & 4)
        add_lip (part, lip, wall, 12.0, 90.0)->turn = k & 2 ? BF_TURN_DOWN : BF_TURN_UP;
    }
  fold = bf_fold (part);
  g_test_message ("%u sides at %g, %u", n_sides, angle_deg, k);
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
  g_assert_cmpfloat (slab_worst_overlap (fold, &a, &b), <=, DEEPEST_MM);
  g_assert_true (n_tabs (fold) == n_sides || find_check (fold, "tab-not-made", NULL) != NULL);
  *made += n_tabs (fold) == n_sides ? 1 : 0;
  for (guint i = 0; i < n_sides && n_tabs (fold) == n_sides; i++)
    {
      /* Walls that are all alike: the id decides, and the end wall is the one that comes first. */
      g_autofree char *id =
          i == 0 ? g_strdup ("f0-start-tab") : g_strdup_printf ("f%u-end-tab", i - 1);
      g_autofree char *wall_id = g_strdup_printf ("f%u", i == 0 ? n_sides - 1 : i);
      g_autoptr (GArray) tab = holes_on (fold, id), wall = holes_on (fold, wall_id);

      g_assert_cmpuint (tab->len, >, 0);
      for (guint j = 0; j < tab->len; j++)
        {
          BfVec3 p = g_array_index (tab, BfVec3, j);

          g_assert_cmpfloat_with_epsilon (bf_vec3_length (bf_vec3_sub (p, nearest (wall, p))), 1.5,
                                          HAND_MM);
        }
    }
}

static void
test_rings (void)
{
  guint n = 0, made = 0;

  for (guint n_sides = 3; n_sides <= 8; n_sides++)
    for (double angle = 45.0; angle <= 120.0; angle += g_test_thorough () ? 5.0 : 25.0)
      for (guint k = 0; k < 8; k++, n++)
        check_ring (n_sides, angle, k, &made);
  g_test_message ("%u of %u have their tabs", made, n);
  g_assert_cmpuint (made, >, n / 2);
}

/* Too low for a hole; whole at neither end; nothing to close. */
static void
test_no_room (void)
{
  g_autoptr (BfPart) low = make_tray (200.0, 120.0, 12.0, 90.0);
  g_autoptr (BfPart) inset = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) mixed = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) low_fold = NULL, inset_fold = NULL, mixed_fold = NULL;

  low->joining = inset->joining = mixed->joining = BF_JOINING_SCREWED;
  ((BfFlange *)g_ptr_array_index (inset->flanges, 1))->start_mm = 1.0;
  for (guint i = 0; i < 4; i += 2)
    ((BfFlange *)g_ptr_array_index (mixed->flanges, i))->turn = BF_TURN_DOWN;
  low_fold = bf_fold (low);
  inset_fold = bf_fold (inset);
  mixed_fold = bf_fold (mixed);
  g_assert_cmpuint (n_tabs (low_fold), ==, 0);
  g_assert_cmpint (find_check (low_fold, "tab-not-made", "base:2")->severity, ==,
                   BF_SEVERITY_LOOK_AT);
  g_assert_cmpuint (n_tabs (inset_fold), ==, 3);
  g_assert_nonnull (find_check (inset_fold, "tab-not-made", "base:1"));
  g_assert_null (find_check (inset_fold, "tab-not-made", "base:2"));
  g_assert_cmpuint (n_tabs (mixed_fold), ==, 0);
  g_assert_null (find_check (mixed_fold, "tab-not-made", NULL));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/tabs/by-hand", test_by_hand);
  g_test_add_func ("/tabs/named-like-tab", test_named_like_tab);
  g_test_add_func ("/tabs/name-taken", test_name_taken);
  g_test_add_func ("/tabs/measure", test_measure);
  g_test_add_func ("/tabs/rings", test_rings);
  g_test_add_func ("/tabs/no-room", test_no_room);
  return g_test_run ();
}
