/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make-crowded.h"

#include "make-part.h"

static double
between (GRand *rand, double from, double to)
{
  return g_rand_double_range (rand, from, to);
}

static void
random_ends (GRand *rand, BfFlange *flange, double most_deg)
{
  if (g_rand_int_range (rand, 0, 3) == 0)
    flange->start_mm = between (rand, 2.0, 15.0);
  if (g_rand_int_range (rand, 0, 3) == 0)
    flange->end_mm = between (rand, 2.0, 15.0);
  if (g_rand_int_range (rand, 0, 3) == 0)
    flange->start_taper_deg = between (rand, 0.0, most_deg);
  if (g_rand_int_range (rand, 0, 3) == 0)
    flange->end_taper_deg = between (rand, 0.0, most_deg);
}

/* Two walls across a bay that narrows or widens, and now and then lips on them. */
static BfPart *
any_bay (GRand *rand)
{
  double w = between (rand, 60.0, 140.0), deep = between (rand, 60.0, 120.0);
  double lean = between (rand, -25.0, 25.0), other = between (rand, -25.0, 25.0);
  gboolean lips = g_rand_int_range (rand, 0, 3) == 0;
  const BfVec2 outline[] = {
    { 0, 0 },        { w + 200, 0 }, { w + 200, deep + 50 },     { w + 100 + lean, deep + 50 },
    { w + 100, 50 }, { 100, 50 },    { 100 + other, deep + 50 }, { 0, deep + 50 }
  };
  BfPart *part = make_part (outline, G_N_ELEMENTS (outline));
  double most = lips ? 0.45 : 0.8;

  random_ends (rand, add_flange (part, "right", 3, w * between (rand, 0.3, most), 90.0), 25.0);
  random_ends (rand, add_flange (part, "left", 5, w * between (rand, 0.3, most), 90.0), 25.0);
  if (lips)
    {
      add_lip (part, "right lip", "right", w * between (rand, 0.1, 0.3),
               between (rand, 20.0, 100.0));
      add_lip (part, "left lip", "left", w * between (rand, 0.1, 0.3), between (rand, 20.0, 100.0));
    }
  return part;
}

/* Walls all round, and ears on both sides of most of them. */
static BfPart *
make_eared (GRand *rand)
{
  guint n = (guint)g_rand_int_range (rand, 4, 8);
  BfPart *part = make_ring (n, between (rand, 120.0, 200.0), between (rand, 25.0, 60.0), 90.0);

  for (guint i = 0; i < n; i++)
    for (guint k = 0; k < 2; k++)
      {
        g_autofree char *id = g_strdup_printf ("ear-%u-%u", i, k), *on = g_strdup_printf ("f%u", i);
        BfFlange *ear;

        if (g_rand_int_range (rand, 0, 4) == 0)
          continue;
        ear = add_ear (part, id, on, k == 0 ? BF_EDGE_START : BF_EDGE_END,
                       between (rand, 12.0, 35.0));
        ear->angle_deg = between (rand, 15.0, 40.0);
        ear->turn = g_rand_boolean (rand) ? BF_TURN_UP : BF_TURN_DOWN;
        random_ends (rand, ear, 20.0);
      }
  return part;
}

BfPart *
make_crowded (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed + 4242);
  BfPart *part = g_rand_boolean (rand) ? any_bay (rand) : make_eared (rand);

  part->metal.thickness_mm = between (rand, 0.8, 2.5);
  part->bend.inside_radius_mm = part->metal.thickness_mm * between (rand, 0.2, 2.0);
  part->cutting.by = (BfCuttingWay)g_rand_int_range (rand, 0, 4);
  part->measure = g_rand_boolean (rand) ? BF_MEASURE_INSIDE : BF_MEASURE_OUTSIDE;
  return part;
}
