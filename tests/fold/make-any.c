/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make-any.h"

#include "make-part.h"

/* A part of 5 to 12 sides, walls on most, lips on the walls, some with lips of their own, every
 * join there is, and every way to turn. */
static BfPart *
make_deep (guint seed)
{
  static const BfJoin joins[] = { BF_JOIN_OPEN,      BF_JOIN_COVERS_BEFORE, BF_JOIN_COVERS_AFTER,
                                  BF_JOIN_UNTRIMMED, BF_JOIN_TAB,           BF_JOIN_FOLDED };
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  guint n = (guint)g_rand_int_range (rand, 5, 13);
  BfPart *part = make_ring (n, g_rand_double_range (rand, 150.0, 300.0), 40.0, 90.0);

  part->metal.thickness_mm = g_rand_double_range (rand, 0.8, 2.0);
  part->bend.inside_radius_mm = part->metal.thickness_mm * g_rand_double_range (rand, 0.0, 2.0);
  part->measure = g_rand_boolean (rand) ? BF_MEASURE_INSIDE : BF_MEASURE_OUTSIDE;
  for (guint i = n; i-- > 0;)
    {
      BfFlange *wall = g_ptr_array_index (part->flanges, i);
      BfCorner *corner = bf_corner_new ("base", i);
      g_autofree char *lip = g_strdup_printf ("lip-%u", i), *deep = g_strdup_printf ("deep-%u", i);

      corner->join = joins[g_rand_int_range (rand, 0, G_N_ELEMENTS (joins))];
      g_ptr_array_add (part->corners, corner);
      wall->angle_deg = g_rand_double_range (rand, 30.0, 120.0);
      wall->turn = g_rand_int_range (rand, 0, 4) == 0 ? BF_TURN_DOWN : BF_TURN_UP;
      if (g_rand_int_range (rand, 0, 3) > 0)
        add_lip (part, lip, wall->id, 25.0, g_rand_double_range (rand, 30.0, 110.0))->turn =
            wall->turn;
      if (bf_part_find_flange (part, lip) != NULL && g_rand_boolean (rand))
        add_lip (part, deep, lip, 12.0, g_rand_double_range (rand, 30.0, 90.0))->turn =
            g_rand_boolean (rand) ? BF_TURN_DOWN : BF_TURN_UP;
      if (g_rand_int_range (rand, 0, 8) == 0 && bf_part_find_flange (part, lip) == NULL)
        g_ptr_array_remove_index (part->flanges, i);
    }
  return part;
}

/* A rectangle or an L, its walls square and most of one height; corners folded double, or joined in
 * any other way. */
static BfPart *
make_box (guint seed)
{
  static const BfJoin joins[] = { BF_JOIN_FOLDED, BF_JOIN_FOLDED,        BF_JOIN_FOLDED,
                                  BF_JOIN_TAB,    BF_JOIN_COVERS_BEFORE, BF_JOIN_OPEN };
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  double w = g_rand_double_range (rand, 120.0, 300.0), d = g_rand_double_range (rand, 120.0, 300.0);
  double height = g_rand_double_range (rand, 15.0, 60.0);
  const BfVec2 ell[] = {
    { 0, 0 }, { 2 * w, 0 }, { 2 * w, d }, { w, d }, { w, 2 * d }, { 0, 2 * d }
  };
  BfPart *part = g_rand_boolean (rand) ? make_rectangle (w, d) : make_part (ell, 6);
  BfTurn turn = g_rand_boolean (rand) ? BF_TURN_UP : BF_TURN_DOWN;

  part->metal.thickness_mm = g_rand_double_range (rand, 0.5, 1.5);
  part->bend.inside_radius_mm = part->metal.thickness_mm * g_rand_double_range (rand, 0.0, 3.0);
  part->bend.allowance.k = g_rand_double_range (rand, 0.3, 0.5);
  part->measure = g_rand_boolean (rand) ? BF_MEASURE_INSIDE : BF_MEASURE_OUTSIDE;
  for (guint i = 0; i < bf_part_n_points (part); i++)
    {
      g_autofree char *id = g_strdup_printf ("wall-%u", i);
      gboolean lower = g_rand_int_range (rand, 0, 6) == 0;
      BfCorner *corner = bf_corner_new ("base", i);

      add_flange (part, id, i, lower ? 0.75 * height : height, 90.0)->turn = turn;
      corner->join = joins[g_rand_int_range (rand, 0, G_N_ELEMENTS (joins))];
      g_ptr_array_add (part->corners, corner);
    }
  return part;
}

BfPart *
make_any (guint seed)
{
  return seed % 6 == 5 ? make_deep (seed) : seed % 6 == 2 ? make_box (seed) : make_random (seed);
}
