/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-scene.h"

#include "fold/allowance.h"

#include "formed-fixtures.h"

static const BfVec2 square[] = { { 0, 0 }, { 100, 0 }, { 100, 60 }, { 0, 60 } };

static BfVec3
next_point (const BfFormedScene *scene, const BfFormedSpan *ring, guint i)
{
  return bf_formed_vertex (scene, ring->first + (i + 1) % ring->size)->p;
}

/* Volume within the polygons, by the divergence theorem: a third of the sum of each polygon's area
 * times its distance from the origin. */
static double
volume_of (const BfFormedScene *scene)
{
  double volume = 0.0;

  for (guint i = 0; i < scene->polygons->len; i++)
    {
      const BfFormedPolygon *polygon = bf_formed_polygon (scene, i);

      for (guint r = 0; r < polygon->rings.size; r++)
        {
          const BfFormedSpan *ring = bf_formed_ring (scene, polygon->rings.first + r);
          BfVec3 base = bf_formed_vertex (scene, ring->first)->p;

          for (guint k = 1; k + 1 < ring->size; k++)
            volume += bf_vec3_dot (base, bf_vec3_cross (next_point (scene, ring, k - 1),
                                                        next_point (scene, ring, k))) /
                      6.0;
        }
    }
  return volume;
}

/* Asserts that the scene holds the fold's metal, less what strips cut off round bends: of a strip
 * of 22.5°, the widest there is, 1 - sin a / a = 2.6 %. */
static void
assert_volume (const BfFormedScene *scene, const BfFold *fold)
{
  double asked = bf_formed_fixture_volume (fold), bent = 0.0;

  for (guint i = 0; i < fold->formed.solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (&fold->formed, i);
      double t = fold->part->metal.thickness_mm;

      if (solid->kind == BF_SOLID_SECTOR)
        bent += t * solid->width_mm * solid->angle_rad * (solid->radius_mm + t / 2.0);
    }
  g_assert_cmpfloat (volume_of (scene), <=, asked * (1.0 + 1e-9));
  g_assert_cmpfloat (volume_of (scene), >=, asked * (1.0 - 1e-9) - 0.026 * bent);
}

/* Closed all round, nothing counted twice: the volume is that of the metal but for what chords cut
 * off. */
static void
test_volume (gconstpointer data)
{
  const BfFormedFixture *fixture = data;
  BfFold *fold = fixture->make ();
  g_autoptr (GArray) none = g_array_new (FALSE, FALSE, sizeof (BfFormedHole));
  g_autoptr (BfFormedScene) scene = bf_formed_scene_new (fold, &fold->formed, none);

  assert_volume (scene, fold);
  bf_formed_fixture_free (fold);
}

/* Every polygon is flat, turns the way its normal says, and every edge has its fellow. */
static void
test_sound (gconstpointer data)
{
  const BfFormedFixture *fixture = data;
  BfFold *fold = fixture->make ();
  g_autoptr (BfFormedScene) scene = bf_formed_scene_new (fold, &fold->formed, NULL);

  for (guint i = 0; i < scene->polygons->len; i++)
    {
      const BfFormedPolygon *polygon = bf_formed_polygon (scene, i);
      const BfFormedSpan *outer = bf_formed_ring (scene, polygon->rings.first);
      BfVec3 base = bf_formed_vertex (scene, outer->first)->p, area = { 0, 0, 0 };

      for (guint k = 0; k < outer->size; k++)
        {
          const BfFormedVertex *vertex = bf_formed_vertex (scene, outer->first + k);
          BfVec3 away = bf_vec3_sub (vertex->p, base);

          area = bf_vec3_add (
              area, bf_vec3_cross (away, bf_vec3_sub (next_point (scene, outer, k), base)));
          g_assert_cmpfloat_with_epsilon (bf_vec3_dot (away, polygon->normal), 0.0, 1e-7);
          if (fixture->sound)
            g_assert_cmpfloat_with_epsilon (bf_vec3_length (vertex->beyond), 1.0, 1e-9);
        }
      g_assert_cmpfloat_with_epsilon (bf_vec3_length (polygon->normal), 1.0, 1e-9);
      g_assert_cmpfloat (bf_vec3_dot (bf_vec3_unit (area), polygon->normal), >, 0.999999);
    }
  bf_formed_fixture_free (fold);
}

typedef struct
{
  const char *name;
  double start_mm, end_mm;
  guint n_rims;  /* flats' rims, the bend's ends not counted */
  guint n_walls; /* what closes the bend beside its flats */
} MouthCase;

/* A flange as wide as the base's edge, or less: three rims of the base and what is left of the
 * fourth, three rims of the flange. */
static const MouthCase mouth_cases[] = {
  { "whole", 0, 0, 6, 0 },
  { "inset", 20, 0, 7, 0 },
  { "inset twice", 20, 30, 8, 0 },
  { "past the end", 0, -5, 6, 1 },
  { "past both ends", -5, -5, 6, 2 },
};

static void
count_rims (const BfFormedScene *scene, guint *n_rims, guint *n_walls)
{
  *n_rims = *n_walls = 0;
  for (guint i = 0; i < scene->polygons->len; i++)
    {
      const BfFormedPolygon *polygon = bf_formed_polygon (scene, i);

      if (polygon->side != BF_FORMED_RIM)
        continue;
      if (polygon->bent)
        (*n_walls)++;
      else
        (*n_rims)++;
    }
  *n_walls -= 2; /* the bend's two ends */
}

static void
test_mouths (gconstpointer data)
{
  const MouthCase *mouth_case = data;
  BfFold *fold = bf_formed_fixture_new (square, 4, 2.0);
  g_autoptr (BfFormedScene) scene = NULL;
  guint n_rims, n_walls;

  bf_formed_fixture_add (
      fold, (BfFormedFlange){
                0, 1, mouth_case->start_mm, mouth_case->end_mm, 30, 90, 2, BF_TURN_UP, { 0 } });
  scene = bf_formed_scene_new (fold, &fold->formed, NULL);
  count_rims (scene, &n_rims, &n_walls);
  g_assert_cmpuint (n_rims, ==, mouth_case->n_rims);
  g_assert_cmpuint (n_walls, ==, mouth_case->n_walls);

  assert_volume (scene, fold);
  bf_formed_fixture_free (fold);
}

/* An angle of metal 2 mm thick: how many strips a side are near enough to its round, within 0.05 mm
 * of the outer one (2 acos (1 - 0.05 / 4) = 18.1° each where that is 4 mm), from 4 to 10. */
static const struct
{
  double radius_mm;
  guint n_strips;
} strip_cases[] = { { 0.5, 4 }, { 2, 5 }, { 7, 8 }, { 30, 10 } };

/* The long edges between strips are smooth, those where the flats begin are tangent, and their
 * short ends are crisp. */
static void
test_strips (gconstpointer data)
{
  guint asked = strip_cases[GPOINTER_TO_UINT (data)].n_strips;
  BfFold *fold = bf_formed_fixture_new (square, 4, 2.0);
  g_autoptr (BfFormedScene) scene = NULL;
  guint counts[3] = { 0, 0, 0 };
  guint n_strips = 0;

  bf_formed_fixture_add (
      fold,
      (BfFormedFlange){
          0, 1, 0, 0, 30, 90, strip_cases[GPOINTER_TO_UINT (data)].radius_mm, BF_TURN_UP, { 0 } });
  scene = bf_formed_scene_new (fold, &fold->formed, NULL);
  for (guint i = 0; i < scene->polygons->len; i++)
    {
      const BfFormedPolygon *polygon = bf_formed_polygon (scene, i);

      if (polygon->band < 0)
        continue;
      n_strips++;
      for (guint k = 0; k < 4; k++)
        counts[bf_formed_vertex (scene, bf_formed_ring (scene, polygon->rings.first)->first + k)
                   ->edge]++;
    }
  g_assert_cmpuint (n_strips, ==, 2 * asked);
  g_assert_cmpuint (counts[BF_FORMED_EDGE_SMOOTH], ==, 2 * 2 * (asked - 1));
  g_assert_cmpuint (counts[BF_FORMED_EDGE_TANGENT], ==, 2 * 2);
  g_assert_cmpuint (counts[BF_FORMED_EDGE_CRISP], ==, 2 * n_strips);
  bf_formed_fixture_free (fold);
}

/* No line is drawn where a bend's end runs into the rim of a flat in the same plane. */
static void
test_rim_beside_bend (void)
{
  BfFold *fold = bf_formed_fixture_new (square, 4, 2.0);
  g_autoptr (BfFormedScene) scene = NULL;
  guint n_smooth = 0;

  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 1, 0, 0, 30, 90, 2, BF_TURN_UP, { 0 } });
  scene = bf_formed_scene_new (fold, &fold->formed, NULL);
  for (guint i = 0; i < scene->polygons->len; i++)
    {
      const BfFormedPolygon *polygon = bf_formed_polygon (scene, i);
      const BfFormedSpan *ring = bf_formed_ring (scene, polygon->rings.first);

      for (guint k = 0; polygon->band < 0 && k < ring->size; k++)
        n_smooth += bf_formed_vertex (scene, ring->first + k)->edge == BF_FORMED_EDGE_SMOOTH;
    }
  g_assert_cmpuint (n_smooth, ==, 2 * 4);
  bf_formed_fixture_free (fold);
}

/* An opening goes through the face that it lies in; its rim is two bands, and the volume
 * is that much less. */
static void
test_hole (void)
{
  BfFold *fold = bf_formed_fixture_new (square, 4, 2.0);
  g_autoptr (BfFormedScene) scene = NULL;
  double hole = 2.0 * G_PI * 100.0, asked = bf_formed_fixture_volume (fold) - hole;

  bf_formed_fixture_drill (fold, bf_vec2 (50, 30), 20.0);
  scene = bf_formed_scene_new (fold, &fold->formed, NULL);
  g_assert_cmpuint (scene->bands->len, ==, 2);
  g_assert_cmpuint (bf_formed_polygon (scene, 0)->rings.size, ==, 2);
  g_assert_false (bf_formed_polygon (scene, 0)->convex);
  g_assert_cmpfloat_with_epsilon (volume_of (scene), asked, 0.01 * hole);
  bf_formed_fixture_free (fold);
}

/* A bracket of 100 × 60, its wall of 40 on the right, with a round opening. */
static BfFold *
bracket_with_hole (BfVec2 at, double diameter_mm)
{
  g_autoptr (BfPart) part = bf_part_new ();
  BfFlange *wall = bf_flange_new ("wall");
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);

  g_array_append_vals (part->outline, square, 4);
  part->metal.thickness_mm = 2.0;
  part->bend.inside_radius_mm = 3.0;
  part->bend.allowance.rule = BF_ALLOWANCE_K_FACTOR;
  part->bend.allowance.k = 0.5;
  wall->edge_index = 1;
  wall->length_mm = 40.0;
  g_ptr_array_add (part->flanges, wall);
  hole->at_mm = at;
  hole->diameter_mm = diameter_mm;
  g_ptr_array_add (part->openings, hole);
  return bf_fold (part);
}

static guint
n_lone_edges (const BfFormedScene *scene)
{
  guint n = 0;

  for (guint i = 0; i < scene->vertices->len; i++)
    n += bf_vec3_length (bf_formed_vertex (scene, i)->beyond) < 0.5 ? 1 : 0;
  return n;
}

/* Wherever an opening lies, in a flat, across a bend's end or within the bend, it goes through, and
 * what is left is closed all round. At K = 0.5 a bend's metal is what it was in the flat. */
static void
test_hole_through_bend (void)
{
  static const struct
  {
    BfVec2 at;
    double diameter_mm;
  } holes[] = { { { 40, 30 }, 20.0 },  { { 95, 30 }, 16.0 }, { { 97, 20 }, 30.0 },
                { { 98.3, 30 }, 4.0 }, { { 98, 60 }, 14.0 }, { { 98, 2 }, 10.0 } };

  for (guint i = 0; i < G_N_ELEMENTS (holes); i++)
    {
      g_autoptr (BfFold) fold = bracket_with_hole (holes[i].at, holes[i].diameter_mm);
      g_autoptr (BfFormedScene) scene = bf_formed_scene_new (fold, &fold->formed, NULL);
      double cut = 2.0 * (fold->blank.area_before_cuts_mm2 - fold->blank.area_mm2);

      g_test_message ("hole %u", i);
      g_assert_cmpfloat (cut, >, 20.0);
      g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3 - volume_of (scene), cut,
                                      0.05 * cut + 1e-3 * fold->formed.volume_mm3);
      g_assert_cmpuint (n_lone_edges (scene), ==, 0);
    }
}

static void
assert_same_points (const BfFormedScene *a, const BfFormedScene *b)
{
  g_assert_cmpuint (a->vertices->len, ==, b->vertices->len);
  for (guint i = 0; i < a->vertices->len; i++)
    {
      BfVec3 p = bf_formed_vertex (a, i)->p, q = bf_formed_vertex (b, i)->p;

      g_assert_cmpfloat (bf_vec3_length (bf_vec3_sub (p, q)), <=, 0.0);
    }
}

/* What is known from an earlier scene makes no difference but in time: of the same part nothing is
 * cut anew; where a hole has moved or grown, it is cut where it is. */
static void
test_after (void)
{
  static const double diameters_mm[] = { 16.0, 16.0, 17.0 };
  static const BfVec2 at[] = { { 95, 30 }, { 95, 31 }, { 95, 31 } };
  g_autoptr (BfFormedScene) before = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (at); i++)
    {
      g_autoptr (BfFold) fold = bracket_with_hole (at[i], diameters_mm[i]);
      g_autoptr (BfFormedScene) alone = bf_formed_scene_new (fold, &fold->formed, NULL);
      g_autoptr (BfFormedScene) after = bf_formed_scene_new_after (before, fold, &fold->formed);
      g_autoptr (BfFormedScene) again = bf_formed_scene_new_after (after, fold, &fold->formed);
      GHashTableIter iter;
      gpointer key, rests;

      assert_same_points (after, alone);
      assert_same_points (again, alone);
      g_hash_table_iter_init (&iter, again->rests);
      while (g_hash_table_iter_next (&iter, &key, &rests))
        g_assert_true (g_hash_table_lookup (after->rests, key) == rests);
      g_clear_pointer (&before, bf_formed_scene_free);
      before = g_steal_pointer (&after);
    }
}

/* Points that repeat one another leave no stray vertex. */
static void
test_repeated_point (void)
{
  static const BfVec2 base[] = {
    { 0, 0 }, { 100, 0 }, { 100, 0 }, { 100, 60 }, { 0, 60 }, { 0, 0 }
  };
  BfFold *fold = bf_formed_fixture_new (base, G_N_ELEMENTS (base), 2.0);
  g_autoptr (BfFormedScene) scene = bf_formed_scene_new (fold, &fold->formed, NULL);

  g_assert_cmpuint (scene->polygons->len, ==, 6);
  g_assert_cmpuint (scene->vertices->len, ==, 24);
  bf_formed_fixture_free (fold);
}

/* What a bend of no angle at all may come as. */
static void
lay_flat (BfFold *fold, double zone_mm)
{
  BfSolid *sector = &g_array_index (fold->formed.solids, BfSolid, 1);

  sector->radius_mm = INFINITY;
  sector->zone[3] = bf_vec2_along (sector->zone[0], bf_vec2 (1.0, 0.0), zone_mm);
  g_array_index (fold->formed.solids, BfSolid, 2).frame.origin =
      bf_vec3 (100.0 + zone_mm, 0.0, 0.0);
}

/* A bend that is nearly or quite flat keeps its zone's width. */
static void
test_opened_flat (void)
{
  static const double angles_deg[] = { 0.0, 1e-5, 1e-3, 1.0 };

  for (guint i = 0; i < G_N_ELEMENTS (angles_deg); i++)
    {
      BfFold *fold = bf_formed_fixture_new (square, 4, 2.0);
      g_autoptr (BfFormedScene) scene = NULL;
      double zone = 5.0, angle = bf_deg_to_rad (angles_deg[i]);
      double width = 60.0, asked;

      bf_formed_fixture_add (fold, (BfFormedFlange){ 0,
                                                     1,
                                                     0,
                                                     0,
                                                     30,
                                                     angles_deg[i],
                                                     angle > 0.0 ? zone / angle - 1.0 : 1.0,
                                                     BF_TURN_UP,
                                                     { 0 } });
      if (angle <= 0.0)
        lay_flat (fold, zone);
      scene = bf_formed_scene_new (fold, &fold->formed, NULL);
      asked = 2.0 * width * (100.0 + zone + 30.0);
      g_assert_cmpfloat_with_epsilon (volume_of (scene), asked, 0.2);
      bf_formed_fixture_free (fold);
    }
}

/* A wall that leans in on a score: nothing of what it stands on shows through its outer side. */
static void
test_score (void)
{
  for (double angle_deg = 60.0; angle_deg <= 135.0; angle_deg += 15.0)
    {
      g_autoptr (BfPart) part = bf_part_new ();
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfFormedScene) scene = NULL;
      BfFlange *wall = bf_flange_new ("wall");
      double a = bf_deg_to_rad (angle_deg);
      BfVec3 axis = bf_vec3 (0.0, 0.0, -2.4), out = bf_vec3 (0.0, -sin (a), -cos (a));

      g_array_append_vals (part->outline, square, G_N_ELEMENTS (square));
      part->metal.thickness_mm = 3.0;
      part->bend.way = BF_BEND_WAY_SCORE;
      part->bend.score_left_mm = 0.6;
      wall->angle_deg = angle_deg;
      g_ptr_array_add (part->flanges, wall);
      fold = bf_fold (part);
      axis.y = bf_setback_factor (a) * 0.6;
      scene = bf_formed_scene_new (fold, &fold->formed, NULL);
      for (guint i = 0; i < scene->vertices->len; i++)
        g_assert_cmpfloat (bf_vec3_dot (bf_vec3_sub (bf_formed_vertex (scene, i)->p, axis), out), <,
                           0.6 + 1e-6);
    }
}

static void
add_cases (void)
{
  for (guint i = 0; i < bf_n_formed_fixtures; i++)
    {
      const BfFormedFixture *fixture = &bf_formed_fixtures[i];
      g_autofree char *volume = g_strdup_printf ("/paint/formed-scene/volume/%s", fixture->name);
      g_autofree char *sound = g_strdup_printf ("/paint/formed-scene/sound/%s", fixture->name);

      g_test_add_data_func (volume, fixture, test_volume);
      g_test_add_data_func (sound, fixture, test_sound);
    }
  for (guint i = 0; i < G_N_ELEMENTS (mouth_cases); i++)
    {
      g_autofree char *path =
          g_strdup_printf ("/paint/formed-scene/mouths/%s", mouth_cases[i].name);

      g_test_add_data_func (path, &mouth_cases[i], test_mouths);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  add_cases ();
  for (guint i = 0; i < G_N_ELEMENTS (strip_cases); i++)
    {
      g_autofree char *path =
          g_strdup_printf ("/paint/formed-scene/strips-of-%g", strip_cases[i].radius_mm);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), test_strips);
    }
  g_test_add_func ("/paint/formed-scene/rim-beside-bend", test_rim_beside_bend);
  g_test_add_func ("/paint/formed-scene/hole", test_hole);
  g_test_add_func ("/paint/formed-scene/hole-through-bend", test_hole_through_bend);
  g_test_add_func ("/paint/formed-scene/after", test_after);
  g_test_add_func ("/paint/formed-scene/repeated-point", test_repeated_point);
  g_test_add_func ("/paint/formed-scene/opened-flat", test_opened_flat);
  g_test_add_func ("/paint/formed-scene/score", test_score);
  return g_test_run ();
}
