/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "random-part.h"

#include "core/names.h"

static double
step (GRand *rand, int least, int most)
{
  return g_rand_int_range (rand, least * 8, most * 8 + 1) / 8.0;
}

static double
maybe (GRand *rand, double value)
{
  return g_rand_boolean (rand) ? value : NAN;
}

static guint
choice (GRand *rand, const BfNames *names)
{
  return (guint)g_rand_int_range (rand, 0, (int)names->n_words);
}

/* A way or rule that is left out now and then comes out of choice() as its _UNSET, which is 0. */
static void
fill_bend (GRand *rand, BfBend *bend)
{
  bend->way = (BfBendWay)choice (rand, &bf_names_bend_way);
  bend->inside_radius_mm = maybe (rand, step (rand, 0, 4));
  bend->allowance.rule = (BfAllowanceRule)choice (rand, &bf_names_allowance_rule);
  bend->allowance.k = maybe (rand, step (rand, 1, 4) / 8.0);
  bend->allowance.k_error = maybe (rand, 0.03125);
  bend->allowance.group = (BfHandbookGroup)choice (rand, &bf_names_handbook_group);
  if (bend->allowance.rule == BF_ALLOWANCE_TRIAL_BEND)
    bend->allowance.trial_id = g_strdup ("strip-3");
  bend->slot_mm = maybe (rand, step (rand, 20, 60));
  bend->bridge_mm = maybe (rand, step (rand, 4, 20));
  bend->score_left_mm = maybe (rand, 0.625);
  bend->hand_limit_n = maybe (rand, step (rand, 80, 200));
  bend->hand_lever_mm = maybe (rand, step (rand, 50, 400));
  bend->corrected = g_rand_boolean (rand) ? g_intern_static_string ("2026-01-31") : NULL;
}

static void
fill_head (GRand *rand, BfPart *part)
{
  g_free (part->name);
  part->name = g_strdup_printf ("Bracket “%u”\n\tno. \\", g_rand_int (rand) % 100);
  part->quantity = 1 + g_rand_int (rand) % BF_QUANTITY_MAX;
  part->units = (BfUnits)choice (rand, &bf_names_units);
  part->measure = (BfMeasure)choice (rand, &bf_names_measure);
  part->metal.thickness_mm = step (rand, 1, 3);
  part->metal.grain_deg = maybe (rand, step (rand, 0, 179));
  part->cutting.by = (BfCuttingWay)choice (rand, &bf_names_cutting_way);
  part->cutting.disc_diameter_mm = maybe (rand, step (rand, 75, 230));
  part->cutting.kerf_mm = maybe (rand, step (rand, 0, 2));
  part->cutting.slack_mm = maybe (rand, step (rand, 0, 2));
  part->cutting.drills = (BfDrillSet)choice (rand, &bf_names_drill_set);
  if (part->cutting.drills == BF_DRILLS_LIST)
    part->cutting.drill_list_mm = g_array_new (FALSE, FALSE, sizeof (double));
  for (int i = 0; part->cutting.drill_list_mm != NULL && i < 4; i++)
    {
      double width = 3.25 + i;
      g_array_append_val (part->cutting.drill_list_mm, width);
    }
  part->joining = (BfJoining)choice (rand, &bf_names_joining);
  fill_bend (rand, &part->bend);
}

static void
fill_outline (GRand *rand, BfPart *part)
{
  double width = step (rand, 60, 300), height = step (rand, 60, 200);
  double cut = g_rand_boolean (rand) ? step (rand, 5, 20) : 0.0;
  BfVec2 corners[] = {
    { 0, 0 }, { width, 0 }, { width, height - cut }, { width - cut, height }, { 0, height }
  };

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    if (i != 3 || cut > 0.0)
      g_array_append_val (part->outline, corners[i]);
}

static BfFlange *
random_flange (GRand *rand, const char *id)
{
  BfFlange *flange = bf_flange_new (id);

  flange->length_mm = step (rand, 15, 60);
  flange->angle_deg = g_rand_int_range (rand, 0, 4) == 0 ? 180.0 : step (rand, 20, 150);
  flange->turn = (BfTurn)choice (rand, &bf_names_turn);
  flange->start_mm = g_rand_boolean (rand) ? step (rand, 0, 10) : 0.0;
  flange->end_mm = g_rand_boolean (rand) ? step (rand, 0, 10) : 0.0;
  flange->start_taper_deg = g_rand_boolean (rand) ? step (rand, -10, 20) : 0.0;
  flange->end_taper_deg = g_rand_boolean (rand) ? step (rand, -10, 20) : 0.0;
  flange->start_relief = (BfEndRelief)choice (rand, &bf_names_end_relief);
  flange->end_relief = (BfEndRelief)choice (rand, &bf_names_end_relief);
  if (g_rand_boolean (rand))
    fill_bend (rand, &flange->bend);
  return flange;
}

static void
add_flange (GRand *rand, BfPart *part, guint edge)
{
  g_autofree char *id = g_strdup_printf ("wall-%u", edge);
  g_autofree char *lip_id = g_strdup_printf ("lip-%u", edge);
  BfFlange *flange = random_flange (rand, id);
  BfFlange *lip;

  flange->edge_index = edge;
  g_ptr_array_add (part->flanges, flange);
  if (g_rand_boolean (rand))
    return;
  lip = random_flange (rand, lip_id);
  g_free (lip->on);
  lip->on = g_strdup (id);
  lip->edge = (BfEdgeKind)g_rand_int_range (rand, BF_EDGE_TIP, BF_EDGE_END + 1);
  g_ptr_array_add (part->flanges, lip);
}

static void
add_corner (GRand *rand, BfPart *part, const char *on, guint at)
{
  BfCorner *corner = bf_corner_new (on, at);

  corner->join = (BfJoin)choice (rand, &bf_names_join);
  corner->gap_mm = maybe (rand, step (rand, 0, 2));
  corner->relief = (BfReliefShape)choice (rand, &bf_names_relief_shape);
  corner->along_after = corner->relief == BF_RELIEF_SQUARE && g_rand_boolean (rand);
  if (corner->relief != BF_RELIEF_UNSET)
    corner->relief_size_mm = maybe (rand, step (rand, 4, 9));
  corner->finish = (BfFinish)choice (rand, &bf_names_finish);
  corner->finish_size_mm = maybe (rand, step (rand, 0, 6));
  g_ptr_array_add (part->corners, corner);
}

static void
add_opening (GRand *rand, BfPart *part, const char *on)
{
  static const BfVec2 triangle[] = { { 12.5, 4 }, { 20.25, 4 }, { 17, 11 } };
  BfOpeningShape shape = (BfOpeningShape)choice (rand, &bf_names_opening_shape);
  BfOpening *opening = bf_opening_new (on, shape);

  if (shape == BF_OPENING_OUTLINE)
    g_array_append_vals (opening->points, triangle, G_N_ELEMENTS (triangle));
  else
    opening->at_mm = bf_vec2 (step (rand, 5, 40), step (rand, 5, 30));
  if (shape == BF_OPENING_ROUND || shape == BF_OPENING_KEYHOLE)
    opening->diameter_mm = step (rand, 3, 12);
  if (shape != BF_OPENING_ROUND && shape != BF_OPENING_OUTLINE)
    {
      opening->length_mm = step (rand, 14, 30);
      opening->width_mm = step (rand, 2, 8);
      opening->angle_deg = step (rand, 0, 359);
    }
  opening->from_end = g_rand_int_range (rand, 0, 4) == 0 && !g_str_equal (on, "base");
  g_ptr_array_add (part->openings, opening);
}

BfPart *
random_part (guint32 seed)
{
  GRand *rand = g_rand_new_with_seed (seed);
  BfPart *part = bf_part_new ();
  guint n;

  fill_head (rand, part);
  fill_outline (rand, part);
  n = bf_part_n_points (part);
  for (guint i = 0; i < n; i++)
    if (g_rand_int_range (rand, 0, 3) > 0)
      add_flange (rand, part, i);
  for (guint i = 0; i < n; i++)
    if (g_rand_boolean (rand))
      add_corner (rand, part, "base", i);
  if (bf_part_n_flanges (part) > 0)
    {
      add_corner (rand, part, bf_part_flange (part, 0)->id, g_rand_boolean (rand) ? 1 : 0);
      add_opening (rand, part, bf_part_flange (part, 0)->id);
    }
  if (bf_part_n_flanges (part) > 1)
    g_ptr_array_add (part->parted,
                     bf_parted_new (bf_part_flange (part, 1)->id, bf_part_flange (part, 0)->id));
  g_ptr_array_add (part->base_corners, bf_corner_new ("base", n - 1));
  add_opening (rand, part, "base");
  g_rand_free (rand);
  return part;
}

static void
assert_number (double a, double b, double tolerance)
{
  if (isnan (a) || isnan (b))
    g_assert_true (isnan (a) && isnan (b));
  else
    g_assert_cmpfloat_with_epsilon (a, b, tolerance);
}

static void
assert_same_bend (const BfBend *a, const BfBend *b, double tolerance)
{
  g_assert_cmpint (a->way, ==, b->way);
  assert_number (a->inside_radius_mm, b->inside_radius_mm, tolerance);
  g_assert_cmpint (a->allowance.rule, ==, b->allowance.rule);
  assert_number (a->allowance.k, b->allowance.k, tolerance);
  assert_number (a->allowance.k_error, b->allowance.k_error, tolerance);
  g_assert_cmpstr (a->allowance.trial_id, ==, b->allowance.trial_id);
  assert_number (a->slot_mm, b->slot_mm, tolerance);
  assert_number (a->bridge_mm, b->bridge_mm, tolerance);
  assert_number (a->score_left_mm, b->score_left_mm, tolerance);
  assert_number (a->hand_limit_n, b->hand_limit_n, tolerance);
  assert_number (a->hand_lever_mm, b->hand_lever_mm, tolerance);
  g_assert_cmpstr (a->corrected, ==, b->corrected);
}

static void
assert_same_flange (const BfFlange *a, const BfFlange *b, double tolerance)
{
  g_assert_cmpstr (a->id, ==, b->id);
  g_assert_cmpstr (a->on, ==, b->on);
  g_assert_cmpint (a->edge, ==, b->edge);
  if (a->edge == BF_EDGE_INDEX)
    g_assert_cmpuint (a->edge_index, ==, b->edge_index);
  assert_number (a->length_mm, b->length_mm, tolerance);
  assert_number (a->angle_deg, b->angle_deg, tolerance);
  g_assert_cmpint (a->turn, ==, b->turn);
  assert_number (a->start_mm, b->start_mm, tolerance);
  assert_number (a->end_mm, b->end_mm, tolerance);
  assert_number (a->start_taper_deg, b->start_taper_deg, tolerance);
  assert_number (a->end_taper_deg, b->end_taper_deg, tolerance);
  g_assert_cmpint (a->start_relief, ==, b->start_relief);
  g_assert_cmpint (a->end_relief, ==, b->end_relief);
  assert_same_bend (&a->bend, &b->bend, tolerance);
}

static void
assert_same_corner (const BfCorner *a, const BfCorner *b, double tolerance)
{
  g_assert_cmpstr (a->on, ==, b->on);
  g_assert_cmpuint (a->at, ==, b->at);
  g_assert_cmpint (a->join, ==, b->join);
  assert_number (a->gap_mm, b->gap_mm, tolerance);
  g_assert_cmpint (a->relief, ==, b->relief);
  assert_number (a->relief_size_mm, b->relief_size_mm, tolerance);
  if (a->relief == BF_RELIEF_SQUARE)
    g_assert_cmpint (a->along_after, ==, b->along_after);
  g_assert_cmpint (a->finish, ==, b->finish);
  assert_number (a->finish_size_mm, b->finish_size_mm, tolerance);
}

static void
assert_same_points (GArray *a, GArray *b, double tolerance)
{
  g_assert_cmpint (a != NULL, ==, b != NULL);
  if (a == NULL)
    return;
  g_assert_cmpuint (a->len, ==, b->len);
  for (guint i = 0; i < a->len; i++)
    {
      assert_number (g_array_index (a, BfVec2, i).x, g_array_index (b, BfVec2, i).x, tolerance);
      assert_number (g_array_index (a, BfVec2, i).y, g_array_index (b, BfVec2, i).y, tolerance);
    }
}

static void
assert_same_opening (const BfOpening *a, const BfOpening *b, double tolerance)
{
  g_assert_cmpstr (a->on, ==, b->on);
  g_assert_cmpint (a->shape, ==, b->shape);
  g_assert_cmpint (a->from_end, ==, b->from_end);
  assert_number (a->at_mm.x, b->at_mm.x, tolerance);
  assert_number (a->at_mm.y, b->at_mm.y, tolerance);
  assert_number (a->diameter_mm, b->diameter_mm, tolerance);
  assert_number (a->length_mm, b->length_mm, tolerance);
  assert_number (a->width_mm, b->width_mm, tolerance);
  assert_number (a->angle_deg, b->angle_deg, tolerance);
  assert_same_points (a->points, b->points, tolerance);
}

static void
assert_same_head (const BfPart *a, const BfPart *b, double tolerance)
{
  g_assert_cmpstr (a->name, ==, b->name);
  g_assert_cmpuint (a->quantity, ==, b->quantity);
  g_assert_cmpint (a->units, ==, b->units);
  g_assert_cmpint (a->measure, ==, b->measure);
  g_assert_cmpstr (a->metal.material, ==, b->metal.material);
  assert_number (a->metal.thickness_mm, b->metal.thickness_mm, tolerance);
  assert_number (a->metal.grain_deg, b->metal.grain_deg, tolerance);
  g_assert_cmpint (a->cutting.by, ==, b->cutting.by);
  assert_number (a->cutting.disc_diameter_mm, b->cutting.disc_diameter_mm, tolerance);
  assert_number (a->cutting.kerf_mm, b->cutting.kerf_mm, tolerance);
  assert_number (a->cutting.slack_mm, b->cutting.slack_mm, tolerance);
  g_assert_cmpint (a->cutting.drills, ==, b->cutting.drills);
  g_assert_cmpint (a->joining, ==, b->joining);
  g_assert_cmpstr (a->notes, ==, b->notes);
}

void
assert_same_part (const BfPart *a, const BfPart *b, double tolerance)
{
  assert_same_head (a, b, tolerance);
  assert_same_bend (&a->bend, &b->bend, tolerance);
  assert_same_points (a->outline, b->outline, tolerance);
  g_assert_cmpuint (a->base_corners->len, ==, b->base_corners->len);
  for (guint i = 0; i < a->base_corners->len; i++)
    assert_same_corner (g_ptr_array_index (a->base_corners, i),
                        g_ptr_array_index (b->base_corners, i), tolerance);
  g_assert_cmpuint (bf_part_n_flanges (a), ==, bf_part_n_flanges (b));
  for (guint i = 0; i < bf_part_n_flanges (a); i++)
    assert_same_flange (bf_part_flange (a, i), bf_part_flange (b, i), tolerance);
  g_assert_cmpuint (a->corners->len, ==, b->corners->len);
  for (guint i = 0; i < a->corners->len; i++)
    assert_same_corner (g_ptr_array_index (a->corners, i), g_ptr_array_index (b->corners, i),
                        tolerance);
  g_assert_cmpuint (a->openings->len, ==, b->openings->len);
  for (guint i = 0; i < a->openings->len; i++)
    assert_same_opening (g_ptr_array_index (a->openings, i), g_ptr_array_index (b->openings, i),
                         tolerance);
  g_assert_cmpuint (a->parted->len, ==, b->parted->len);
  for (guint i = 0; i < a->parted->len; i++)
    {
      const BfParted *parted = g_ptr_array_index (a->parted, i);

      g_assert_true (bf_part_has_parted (b, parted->ids[0], parted->ids[1]));
    }
}
