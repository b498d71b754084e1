/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The formed metal does not pass through itself, and where a person asks for what would, it is
 * said. */

#include "fold/collide.h"
#include "slab-overlap.h"
#include "look-up.h"
#include "make-any.h"
#include "make-part.h"

/* With -m thorough many more. */
#define N_PARTS 250
#define N_THOROUGH 2000

/* Deeper than this is a collision; metal may touch. */
#define DEEPEST_MM 1e-3

/* Ways of changing random parts. */
#define ALIKE 1u
#define JOINED 2u

static void
assert_apart (guint seed, const BfFold *fold)
{
  guint a = 0, b = 0;
  double worst = slab_worst_overlap (fold, &a, &b);

  if (worst > DEEPEST_MM)
    g_test_message ("seed %u: %s goes %g mm into %s", seed, bf_fold_face (fold, a)->id, worst,
                    bf_fold_face (fold, b)->id);
  g_assert_cmpfloat (worst, <=, DEEPEST_MM);
}

/* TRUE where nothing else is wrong. */
static gboolean
is_sound_else (const BfFold *fold)
{
  for (guint i = 0; i < fold->checks->len; i++)
    {
      const BfCheck *check = bf_fold_check (fold, i);

      if (check->severity == BF_SEVERITY_MUST_FIX && strcmp (check->code, "faces-collide") != 0)
        return FALSE;
    }
  return TRUE;
}

/* Every flange turned as the first one. */
static void
turn_alike (BfPart *part)
{
  for (guint i = 0; i < part->flanges->len; i++)
    ((BfFlange *)g_ptr_array_index (part->flanges, i))->turn = bf_part_flange (part, 0)->turn;
}

/* A join drawn by lot at every corner, and no reliefs, which would take away what goes wrong
 * there. */
static void
join_at_random (BfPart *part, guint seed)
{
  static const BfJoin joins[] = { BF_JOIN_OPEN, BF_JOIN_COVERS_BEFORE, BF_JOIN_COVERS_AFTER };
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed + 1);

  for (guint i = 0; i < bf_part_n_points (part); i++)
    {
      BfCorner *corner = bf_corner_new ("base", i);

      corner->join = joins[g_rand_int_range (rand, 0, 3)];
      corner->relief = BF_RELIEF_NONE;
      g_ptr_array_add (part->corners, corner);
    }
}

/* TRUE where a face that collides hangs on more than one bend: what reaches across a part is the
 * person's own doing, and no rule for corners can know of it. */
static gboolean
reaches_across (const BfFold *fold)
{
  for (guint i = 0; i < fold->checks->len; i++)
    {
      const BfCheck *check = bf_fold_check (fold, i);

      if (strcmp (check->code, "faces-collide") == 0 && strstr (check->message, "lip") != NULL)
        return TRUE;
    }
  return FALSE;
}

/* Where nothing else is wrong, corners never collide, whichever way their flanges turn; where
 * lips reach across a part it is said. */
static void
test_random (gconstpointer data)
{
  guint way = GPOINTER_TO_UINT (data);
  guint n_parts = g_test_thorough () ? N_THOROUGH : N_PARTS, n = 0;

  for (guint seed = 0; seed < n_parts; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = NULL;

      if (part->flanges->len > 0 && (way & ALIKE))
        turn_alike (part);
      if (way & JOINED)
        join_at_random (part, seed);
      fold = bf_fold (part);
      if (!is_sound_else (fold) || reaches_across (fold))
        continue;
      assert_apart (seed, fold);
      g_assert_null (find_check (fold, "faces-collide", NULL));
      n++;
    }
  g_assert_cmpuint (n, >, n_parts * 9 / 10);
}

/* Parts that went wrong before: opposite turns at obtuse corners with little angle, and walls that
 * cover the end of a neighbour whose angle is very unlike theirs. */
static void
test_mended (void)
{
  static const guint opposite[] = { 483, 538, 562, 734, 1385, 2022, 3105, 3885, 28765 };
  static const guint covered[] = { 2764, 6322, 6823, 8616, 8833, 13299, 15469 };

  for (guint i = 0; i < G_N_ELEMENTS (opposite) + G_N_ELEMENTS (covered); i++)
    {
      gboolean covers = i >= G_N_ELEMENTS (opposite);
      guint seed = covers ? covered[i - G_N_ELEMENTS (opposite)] : opposite[i];
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = NULL;

      join_at_random (part, seed);
      for (guint k = 0; k < part->corners->len && !covers; k++)
        ((BfCorner *)g_ptr_array_index (part->corners, k))->join = BF_JOIN_OPEN;
      fold = bf_fold (part);
      g_assert_true (is_sound_else (fold));
      assert_apart (seed, fold);
      g_assert_null (find_check (fold, "faces-collide", NULL));
    }
}

/* A tray of n sides with lips, whose corners are joined one way, for walls that lean every way. */
static void
test_joins (void)
{
  static const BfJoin joins[] = { BF_JOIN_OPEN, BF_JOIN_COVERS_BEFORE, BF_JOIN_COVERS_AFTER };

  for (guint n = 4; n <= 8; n += 2)
    for (double angle = 30.0; angle <= 120.0; angle += 15.0)
      for (guint k = 0; k < 2 * G_N_ELEMENTS (joins); k++)
        {
          g_autoptr (BfPart) part = make_ring (n, 150.0, 30.0, angle);
          g_autoptr (BfFold) fold = NULL;

          for (guint i = 0; i < n; i++)
            {
              BfCorner *corner = bf_corner_new ("base", i);
              g_autofree char *wall = g_strdup_printf ("f%u", i), *lip = NULL;

              corner->join = joins[k / 2];
              g_ptr_array_add (part->corners, corner);
              lip = g_strdup_printf ("l%u", i);
              if (k % 2 == 1 || i % 2 == 0) /* lips all round, or beside bare walls */
                add_lip (part, lip, wall, 12.0, 70.0);
            }
          fold = bf_fold (part);
          g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
          assert_apart (n * 1000 + (guint)angle, fold);
        }
}

/* ---- what is asked and cannot be ------------------------------------------------------------ */

static const BfCheck *
find_collision (const BfFold *fold)
{
  return find_check (fold, "faces-collide", NULL);
}

/* Longer and further bent than anybody would, without insets and without corner reliefs, of which
 * the independent check knows nothing. */
static BfPart *
make_wild (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  BfPart *part = make_random (seed);

  for (guint i = 0; i < part->flanges->len; i++)
    {
      BfFlange *flange = g_ptr_array_index (part->flanges, i);
      double most = flange->edge == BF_EDGE_TIP ? 175.0 : 150.0;

      flange->start_mm = flange->end_mm = 0.0;
      if (g_rand_int_range (rand, 0, 3) == 0)
        flange->angle_deg = g_rand_double_range (rand, 90.0, most);
      if (g_rand_int_range (rand, 0, 3) == 0)
        flange->length_mm = g_rand_double_range (rand, 30.0, 120.0);
    }
  for (guint i = 0; i < bf_part_n_points (part); i++)
    {
      BfCorner *corner = bf_corner_new ("base", i);

      corner->relief = BF_RELIEF_NONE;
      if (seed % 3 == 0)
        corner->join = BF_JOIN_UNTRIMMED;
      g_ptr_array_add (part->corners, corner);
    }
  return part;
}

/* The check says what the independent one finds, part for part. */
static void
test_agree (void)
{
  guint n_parts = g_test_thorough () ? 20000 : 400, n = 0, n_collide = 0;

  for (guint seed = 0; seed < n_parts; seed++)
    {
      g_autoptr (BfPart) part = make_wild (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      guint a = 0, b = 0;
      gboolean found = find_collision (fold) != NULL;
      double worst = slab_worst_overlap (fold, &a, &b);

      /* The two cut into pieces in their own ways, which differ in depth a little. */
      if (!is_sound_else (fold) || fabs (worst - BF_COLLISION_LEAST_MM) < 0.5e-2)
        continue;
      n++;
      n_collide += found ? 1 : 0;
      if ((worst > BF_COLLISION_LEAST_MM) != found)
        g_error ("seed %u: %s and %s", seed, bf_fold_face (fold, a)->id,
                 bf_fold_face (fold, b)->id);
    }
  g_test_message ("%u parts, of which %u collide", n, n_collide);
  g_assert_cmpuint (n, >, n_parts * 6 / 10);
  g_assert_cmpuint (n_collide, >, n / 10);
  g_assert_cmpuint (n_collide, <, n * 9 / 10);
}

/* Parts in which lips meet across the base. The one change that is offered parts them. */
static void
test_known (void)
{
  static const guint seeds[] = { 7747, 33917, 30550, 18480, 27174, 39928 };

  for (guint i = 0; i < G_N_ELEMENTS (seeds); i++)
    {
      g_autoptr (BfPart) part = make_random (seeds[i]), cured = NULL;
      g_autoptr (BfFold) fold = NULL, after = NULL;
      const BfCheck *check;

      turn_alike (part);
      fold = bf_fold (part);
      check = find_collision (fold);
      g_assert_nonnull (check);
      g_assert_cmpint (check->severity, ==, BF_SEVERITY_MUST_FIX);
      g_assert_cmpint (check->fix.kind, !=, BF_FIX_NONE);
      cured = bf_fix_apply (fold->part, &check->fix, NULL);
      after = bf_fold (cured);
      g_assert_null (find_collision (after));
    }
}

static guint
count_collisions (const BfFold *fold)
{
  guint n = 0;

  for (guint i = 0; i < fold->checks->len; i++)
    n += g_str_equal (bf_fold_check (fold, i)->code, "faces-collide") ? 1 : 0;
  return n;
}

/* Applies what a check offers, and sees fewer faces collide. */
static void
assert_cures (const BfFold *fold, const BfCheck *check)
{
  g_autoptr (BfPart) cured = bf_fix_apply (fold->asked, &check->fix, NULL);
  g_autoptr (BfFold) after = NULL;

  g_assert_nonnull (cured);
  after = bf_fold (cured);
  g_assert_cmpuint (count_collisions (after), <, count_collisions (fold));
}

/* Whatever is offered cures: lengths, corners left open, insets. And for most there is something.
 */
static void
test_cures (void)
{
  guint n = 0, by_kind[BF_FIX_LEVER + 1] = { 0 };

  for (guint seed = 0; seed < 300; seed++)
    {
      g_autoptr (BfPart) part = seed % 2 == 0 ? make_any (seed / 2) : make_random_deep (seed / 2);
      g_autoptr (BfFold) fold = bf_fold (part);

      for (guint i = 0; i < fold->checks->len; i++)
        {
          const BfCheck *check = bf_fold_check (fold, i);

          if (!g_str_equal (check->code, "faces-collide"))
            continue;
          g_test_message ("seed %u: %s", seed, check->message);
          n++;
          by_kind[check->fix.kind]++;
          if (check->fix.kind != BF_FIX_NONE)
            assert_cures (fold, check);
        }
    }
  g_assert_cmpuint (n, >, 20);
  g_assert_cmpuint (by_kind[BF_FIX_FLANGE_LENGTH], >, 5);
  g_assert_cmpuint (by_kind[BF_FIX_INSETS], >, 0);
  g_assert_cmpuint (by_kind[BF_FIX_JOIN_OPEN], >, 0);
  g_assert_cmpuint (by_kind[BF_FIX_NONE], <, n / 3);
}

/* Base 30 deep, walls of 40 at front and back. The front one's lip is 29 long over all; the back
 * wall's inside stands 28.5 from the front's outside. */
static BfPart *
make_shelf (double lip_mm)
{
  BfPart *part = make_rectangle (200.0, 30.0);

  add_flange (part, "front", 0, 40.0, 90.0);
  add_flange (part, "back", 2, 40.0, 90.0);
  add_lip (part, "lip", "front", lip_mm, 90.0);
  return part;
}

static void
test_numbers (void)
{
  g_autoptr (BfPart) part = make_shelf (29.0), just = make_shelf (28.5);
  g_autoptr (BfFold) fold = bf_fold (part), touching = bf_fold (just);
  const BfCheck *check = find_collision (fold);

  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 1);
  g_assert_cmpfloat_with_epsilon (check->found, 0.5, 1e-6);
  g_assert_cmpfloat_with_epsilon (check->needed, 0.0, 1e-6);
  g_assert_cmpstr (check->where, ==, "lip");
  g_assert_cmpstr (check->message, ==, "lip runs 0.5 mm into back. Shorten it to 28.5 mm.");
  g_assert_cmpfloat_with_epsilon (check->fix.value[0], 28.5, 1e-9);
  g_assert_null (find_collision (touching));
}

/* A tray 40 deep with a lip on each wall that leans back in at 30° to its wall: 12 long it hangs
 * free, 60 long it reaches 52 down. */
static void
test_lips (void)
{
  static const struct
  {
    double length_mm, angle_deg;
    gboolean collides;
  } rows[] = { { 12.0, 90.0, FALSE },
               { 12.0, 150.0, FALSE },
               { 40.0, 150.0, FALSE },
               { 60.0, 150.0, TRUE },
               { 45.0, 178.0, TRUE } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (300.0, 240.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      guint a, b;

      for (guint k = 0; k < 4; k++)
        {
          g_autofree char *id = g_strdup_printf ("lip%u", k), *on = g_strdup_printf ("f%u", k);
          add_lip (part, id, on, rows[i].length_mm, rows[i].angle_deg);
        }
      fold = bf_fold (part);
      g_assert_true (is_sound_else (fold));
      g_assert_true ((find_collision (fold) != NULL) == rows[i].collides);
      g_assert_true ((slab_worst_overlap (fold, &a, &b) > DEEPEST_MM) == rows[i].collides);
    }
}

/* Walls of 10 that would stand in each other, but for a relief that takes all of it. */
static void
test_cut_away (void)
{
  for (guint i = 0; i < 2; i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      BfCorner *corner = bf_corner_new ("base", 1);
      g_autoptr (BfFold) fold = NULL;
      guint a, b;

      add_flange (part, "front", 0, 10.0, 90.0);
      add_flange (part, "side", 1, 10.0, 90.0);
      corner->join = BF_JOIN_UNTRIMMED;
      corner->relief = BF_RELIEF_ROUND;
      corner->relief_size_mm = i == 0 ? 30.0 : 8.0;
      g_ptr_array_add (part->corners, corner);
      fold = bf_fold (part);
      g_assert_cmpfloat_with_epsilon (slab_worst_overlap (fold, &a, &b), 1.5, 1e-9);
      g_assert_true ((find_collision (fold) == NULL) == (i == 0));
    }
}

/* ---- the check itself ----------------------------------------------------------------------- */

/* Two square walls of a tray, untrimmed, stand in each other by the metal's thickness: each inside
 * face lies 1.5 in from the other's end. */
static void
test_untrimmed (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfCorner *corner = bf_corner_new ("base", 1);
  g_autoptr (BfFold) fold = NULL;
  guint a = 0, b = 0;

  add_flange (part, "front", 0, 40.0, 90.0);
  add_flange (part, "side", 1, 40.0, 90.0);
  corner->join = BF_JOIN_UNTRIMMED;
  g_ptr_array_add (part->corners, corner);
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (slab_worst_overlap (fold, &a, &b), 1.5, 1e-9);
  g_assert_cmpuint (a + b, ==, 3);
  g_assert_cmpstr (find_check (fold, "faces-collide", "side")->message, ==,
                   "side runs 1.5 mm into front. Leave the corner between them open.");
}

/* Walls that lean far in over a narrow base go through each other. */
static void
test_across (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 30.0);
  g_autoptr (BfFold) fold = NULL;
  guint a = 0, b = 0;

  add_flange (part, "front", 0, 40.0, 130.0);
  add_flange (part, "back", 2, 40.0, 130.0);
  fold = bf_fold (part);
  g_assert_cmpfloat (slab_worst_overlap (fold, &a, &b), >, 1.0);
  g_assert_cmpuint (a + b, ==, 3);
}

/* A closed hem lies on the base: it touches, and goes no deeper. */
static void
test_hem (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  guint a = 0, b = 0;

  add_flange (part, "hem", 0, 12.0, 180.0);
  part->bend.inside_radius_mm = 0.0;
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (slab_worst_overlap (fold, &a, &b), 0.0, 1e-9);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/collide/untrimmed", test_untrimmed);
  g_test_add_func ("/collide/across", test_across);
  g_test_add_func ("/collide/hem", test_hem);
  g_test_add_func ("/collide/joins", test_joins);
  g_test_add_func ("/collide/known", test_known);
  g_test_add_func ("/collide/cures", test_cures);
  g_test_add_func ("/collide/numbers", test_numbers);
  g_test_add_func ("/collide/lips", test_lips);
  g_test_add_func ("/collide/cut-away", test_cut_away);
  g_test_add_func ("/collide/agree", test_agree);
  g_test_add_func ("/collide/mended", test_mended);
  g_test_add_data_func ("/collide/random/mixed", GUINT_TO_POINTER (0), test_random);
  g_test_add_data_func ("/collide/random/alike", GUINT_TO_POINTER (ALIKE), test_random);
  g_test_add_data_func ("/collide/random/joined", GUINT_TO_POINTER (JOINED), test_random);
  g_test_add_data_func ("/collide/random/alike-joined", GUINT_TO_POINTER (ALIKE | JOINED),
                        test_random);
  return g_test_run ();
}
