/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make-part.h"

BfPart *
make_part (const BfVec2 *outline, guint n_points)
{
  BfPart *part = bf_part_new ();

  g_array_append_vals (part->outline, outline, n_points);
  part->metal.thickness_mm = 1.5;
  part->bend.way = BF_BEND_WAY_BAR;
  part->bend.inside_radius_mm = 1.5;
  part->bend.allowance.rule = BF_ALLOWANCE_K_FACTOR;
  part->bend.allowance.k = 0.42;
  return part;
}

BfPart *
make_rectangle (double width_mm, double depth_mm)
{
  const BfVec2 outline[] = {
    { 0.0, 0.0 }, { width_mm, 0.0 }, { width_mm, depth_mm }, { 0.0, depth_mm }
  };

  return make_part (outline, G_N_ELEMENTS (outline));
}

BfFlange *
add_flange (BfPart *part, const char *id, guint edge, double length_mm, double angle_deg)
{
  BfFlange *flange = bf_flange_new (id);

  flange->edge = BF_EDGE_INDEX;
  flange->edge_index = edge;
  flange->length_mm = length_mm;
  flange->angle_deg = angle_deg;
  g_ptr_array_add (part->flanges, flange);
  return flange;
}

BfFlange *
add_lip (BfPart *part, const char *id, const char *on, double length_mm, double angle_deg)
{
  BfFlange *flange = add_flange (part, id, 0, length_mm, angle_deg);

  flange->edge = BF_EDGE_TIP;
  g_free (flange->on);
  flange->on = g_strdup (on);
  return flange;
}

BfFlange *
add_ear (BfPart *part, const char *id, const char *on, BfEdgeKind edge, double length_mm)
{
  BfFlange *flange = add_lip (part, id, on, length_mm, 90.0);

  flange->edge = edge;
  return flange;
}

static void
add_walls (BfPart *part, double wall_mm, double angle_deg)
{
  for (guint i = 0; i < bf_part_n_points (part); i++)
    {
      g_autofree char *id = g_strdup_printf ("f%u", i);
      add_flange (part, id, i, wall_mm, angle_deg);
    }
}

BfPart *
make_tray (double width_mm, double depth_mm, double wall_mm, double angle_deg)
{
  BfPart *part = make_rectangle (width_mm, depth_mm);

  add_walls (part, wall_mm, angle_deg);
  return part;
}

BfPart *
make_bay (void)
{
  const BfVec2 outline[] = { { 0, 0 },    { 300, 0 },  { 300, 100 }, { 200, 100 },
                             { 200, 40 }, { 100, 40 }, { 100, 100 }, { 0, 100 } };
  BfPart *part = make_part (outline, G_N_ELEMENTS (outline));

  add_flange (part, "left", 5, 60.0, 90.0);
  add_flange (part, "right", 3, 60.0, 90.0);
  return part;
}

BfPart *
make_ring (guint n_sides, double circumradius_mm, double wall_mm, double angle_deg)
{
  g_autofree BfVec2 *outline = g_new (BfVec2, n_sides);
  BfPart *part;

  for (guint i = 0; i < n_sides; i++)
    {
      double a = 2.0 * G_PI * i / n_sides;
      outline[i] = bf_vec2 (circumradius_mm * cos (a), circumradius_mm * sin (a));
    }
  part = make_part (outline, n_sides);
  add_walls (part, wall_mm, angle_deg);
  return part;
}

/* ---- random parts -------------------------------------------------------------------------- */

static double
between (GRand *rand, double from, double to)
{
  return g_rand_double_range (rand, from, to);
}

static BfPart *
random_base (GRand *rand)
{
  guint n = (guint)g_rand_int_range (rand, 3, 9);
  g_autofree BfVec2 *outline = g_new (BfVec2, n);
  double rx = between (rand, 80.0, 200.0), ry = between (rand, 80.0, 200.0);
  double w = between (rand, 120.0, 300.0), d = between (rand, 120.0, 300.0);

  if (g_rand_int_range (rand, 0, 4) == 0)
    {
      const BfVec2 ell[] = { { 0.0, 0.0 },         { w, 0.0 },           { w, d / 2.0 },
                             { w / 2.0, d / 2.0 }, { w / 2.0, d * 1.1 }, { 0.0, d * 1.1 } };
      return make_part (ell, G_N_ELEMENTS (ell));
    }
  for (guint i = 0; i < n; i++)
    {
      double a = 2.0 * G_PI * (i + between (rand, -0.2, 0.2)) / n;
      outline[i] = bf_vec2 (rx * cos (a), ry * sin (a));
    }
  return make_part (outline, n);
}

static void
random_metal (GRand *rand, BfPart *part)
{
  static const double thickness[] = { 0.9, 1.2, 1.5, 2.0, 3.0 };
  static const double radius[] = { 0.0, 0.5, 1.0, 3.0 };

  part->metal.thickness_mm = thickness[g_rand_int_range (rand, 0, 5)];
  part->bend.inside_radius_mm = part->metal.thickness_mm * radius[g_rand_int_range (rand, 0, 4)];
  part->bend.allowance.k = between (rand, 0.3, 0.5);
  part->measure = g_rand_boolean (rand) ? BF_MEASURE_INSIDE : BF_MEASURE_OUTSIDE;
  part->cutting.by = (BfCuttingWay)g_rand_int_range (rand, 0, 4);
}

static void
random_ends (GRand *rand, BfFlange *flange)
{
  if (g_rand_int_range (rand, 0, 4) == 0)
    flange->start_mm = between (rand, 0.5, 15.0);
  if (g_rand_int_range (rand, 0, 4) == 0)
    flange->end_mm = between (rand, 0.5, 15.0);
  if (g_rand_int_range (rand, 0, 6) == 0)
    flange->start_taper_deg = between (rand, 0.0, 30.0);
  if (g_rand_int_range (rand, 0, 6) == 0)
    flange->end_taper_deg = between (rand, 0.0, 30.0);
}

BfPart *
make_random (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  BfPart *part = random_base (rand);
  guint n = bf_part_n_points (part);
  gboolean up_only = g_rand_int_range (rand, 0, 3) > 0;

  random_metal (rand, part);
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *id = g_strdup_printf ("wall-%u", i);
      g_autofree char *lip = g_strdup_printf ("lip-%u", i);
      BfFlange *flange;

      if (g_rand_int_range (rand, 0, 4) == 0)
        continue;
      flange = add_flange (part, id, i, between (rand, 20.0, 60.0), between (rand, 20.0, 125.0));
      flange->turn = up_only || g_rand_boolean (rand) ? BF_TURN_UP : BF_TURN_DOWN;
      random_ends (rand, flange);
      if (g_rand_int_range (rand, 0, 3) == 0)
        add_lip (part, lip, id, between (rand, 14.0, 20.0), between (rand, 20.0, 90.0))->turn =
            flange->turn;
    }
  return part;
}

/* A flange on a side, not always on the whole of it, and sometimes one on that. */
static void
random_ear (GRand *rand, BfPart *part, const char *on, BfEdgeKind edge, guint depth)
{
  g_autofree char *id = g_strdup_printf ("%s-%u", on, (guint)edge);
  BfFlange *ear = add_ear (part, id, on, edge, between (rand, 12.0, 25.0));
  BfEdgeKind away = edge == BF_EDGE_START ? BF_EDGE_END : BF_EDGE_START; /* from the base */

  ear->angle_deg = between (rand, 20.0, 110.0);
  ear->turn = g_rand_boolean (rand) ? BF_TURN_UP : BF_TURN_DOWN;
  if (g_rand_int_range (rand, 0, 3) == 0)
    ear->start_mm = between (rand, 0.5, 6.0);
  if (g_rand_int_range (rand, 0, 3) == 0)
    ear->end_mm = between (rand, 0.5, 6.0);
  if (g_rand_int_range (rand, 0, 4) == 0)
    ear->end_taper_deg = between (rand, 0.0, 20.0);
  if (depth < 3 && g_rand_int_range (rand, 0, 2) == 0)
    random_ear (rand, part, id, g_rand_boolean (rand) ? BF_EDGE_TIP : away, depth + 1);
}

static gboolean
has_wall (const BfPart *part, guint edge)
{
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    if (bf_part_flange (part, i)->edge == BF_EDGE_INDEX &&
        bf_part_flange (part, i)->edge_index == edge)
      return TRUE;
  return FALSE;
}

/* Where a neighbour's wall stands there is no room for one. */
BfPart *
make_random_deep (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed + 7919);
  BfPart *part = make_random (seed);
  guint n = bf_part_n_points (part), n_flanges = bf_part_n_flanges (part);

  for (guint i = 0; i < n_flanges; i++)
    {
      const BfFlange *wall = bf_part_flange (part, i);

      if (wall->edge != BF_EDGE_INDEX)
        continue;
      if (!has_wall (part, (wall->edge_index + n - 1) % n))
        random_ear (rand, part, wall->id, BF_EDGE_START, 1);
      if (!has_wall (part, (wall->edge_index + 1) % n))
        random_ear (rand, part, wall->id, BF_EDGE_END, 1);
    }
  return part;
}
