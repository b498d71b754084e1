/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-scene.h"

#include "core/tolerance.h"
#include "paint/formed-build.h"
#include "paint/formed-edges.h"

/* Less than this is nothing to look at. */
#define LEAST_AREA_MM2 1e-6

static BfFormedPolygon *
last_polygon (BfFormedScene *scene)
{
  return bf_formed_polygon (scene, scene->polygons->len - 1);
}

static BfFormedSpan *
last_ring (BfFormedScene *scene)
{
  return &g_array_index (scene->rings, BfFormedSpan, scene->rings->len - 1);
}

void
bf_formed_begin_polygon (BfFormedScene *scene, const BfFormedPolygon *like)
{
  BfFormedPolygon polygon = *like;

  polygon.rings = (BfFormedSpan){ scene->rings->len, 0 };
  g_array_append_val (scene->polygons, polygon);
}

void
bf_formed_begin_ring (BfFormedScene *scene)
{
  BfFormedSpan ring = { scene->vertices->len, 0 };

  g_array_append_val (scene->rings, ring);
  last_polygon (scene)->rings.size++;
}

static gboolean
same_point (BfVec3 a, BfVec3 b)
{
  return bf_vec3_length (bf_vec3_sub (a, b)) < 10.0 * BF_TOLERANCE_SNAP_MM;
}

void
bf_formed_add_point (BfFormedScene *scene, BfVec3 p, BfVec3 shade)
{
  BfFormedSpan *ring = last_ring (scene);
  BfFormedVertex vertex = { p, shade, { 0.0, 0.0, 0.0 }, -1, BF_FORMED_EDGE_CRISP };

  /* Of two points in one place the later one's edge is the one that is left. */
  if (ring->size > 0 && same_point (bf_formed_vertex (scene, scene->vertices->len - 1)->p, p))
    {
      bf_formed_vertex (scene, scene->vertices->len - 1)->shade = shade;
      return;
    }
  g_array_append_val (scene->vertices, vertex);
  ring->size++;
}

/* The area's vector: twice its length is the area, and it points out of the polygon. */
static BfVec3
ring_area (const BfFormedScene *scene, const BfFormedSpan *ring)
{
  BfVec3 sum = { 0.0, 0.0, 0.0 };
  BfVec3 base = bf_formed_vertex (scene, ring->first)->p;

  for (guint i = 1; i + 1 < ring->size; i++)
    {
      BfVec3 a = bf_vec3_sub (bf_formed_vertex (scene, ring->first + i)->p, base);
      BfVec3 b = bf_vec3_sub (bf_formed_vertex (scene, ring->first + i + 1)->p, base);

      sum = bf_vec3_add (sum, bf_vec3_cross (a, b));
    }
  return bf_vec3_scale (sum, 0.5);
}

void
bf_formed_end_ring (BfFormedScene *scene)
{
  BfFormedSpan *ring = last_ring (scene);

  if (ring->size > 1 && same_point (bf_formed_vertex (scene, ring->first)->p,
                                    bf_formed_vertex (scene, scene->vertices->len - 1)->p))
    g_array_set_size (scene->vertices, ring->first + --ring->size);
  if (ring->size > 2 && bf_vec3_length (ring_area (scene, ring)) > LEAST_AREA_MM2)
    return;

  g_array_set_size (scene->vertices, ring->first);
  g_array_set_size (scene->rings, scene->rings->len - 1);
  last_polygon (scene)->rings.size--;
}

/* One ring that nowhere turns the wrong way. */
static gboolean
is_convex (const BfFormedScene *scene, const BfFormedPolygon *polygon)
{
  const BfFormedSpan *ring = bf_formed_ring (scene, polygon->rings.first);

  if (polygon->rings.size != 1)
    return FALSE;
  for (guint i = 0; i < ring->size; i++)
    {
      BfVec3 a = bf_formed_vertex (scene, ring->first + i)->p;
      BfVec3 b = bf_formed_vertex (scene, ring->first + (i + 1) % ring->size)->p;
      BfVec3 c = bf_formed_vertex (scene, ring->first + (i + 2) % ring->size)->p;
      BfVec3 turn = bf_vec3_cross (bf_vec3_sub (b, a), bf_vec3_sub (c, b));

      if (bf_vec3_dot (turn, polygon->normal) < -LEAST_AREA_MM2)
        return FALSE;
    }
  return TRUE;
}

void
bf_formed_end_polygon (BfFormedScene *scene)
{
  BfFormedPolygon *polygon = last_polygon (scene);

  if (polygon->rings.size == 0)
    g_array_set_size (scene->polygons, scene->polygons->len - 1);
  else
    polygon->convex = is_convex (scene, polygon);
}

void
bf_formed_add_quad (BfFormedScene *scene, const BfFormedPolygon *like, const BfVec3 p[4])
{
  bf_formed_begin_polygon (scene, like);
  bf_formed_begin_ring (scene);
  for (guint i = 0; i < 4; i++)
    bf_formed_add_point (scene, p[i], like->normal);
  bf_formed_end_ring (scene);
  bf_formed_end_polygon (scene);
}

int
bf_formed_begin_band (BfFormedScene *scene, BfVec3 axis)
{
  BfFormedBand band = { axis, { scene->stops->len, 0 } };

  g_array_append_val (scene->bands, band);
  return (int)scene->bands->len - 1;
}

void
bf_formed_add_stop (BfFormedScene *scene, BfVec3 at, BfVec3 normal, double way)
{
  BfFormedStop stop = { at, normal, way };

  g_array_append_val (scene->stops, stop);
  g_array_index (scene->bands, BfFormedBand, scene->bands->len - 1).stops.size++;
}

static BfFormedScene *
new_scene (void)
{
  BfFormedScene *scene = g_new0 (BfFormedScene, 1);

  scene->polygons = g_array_new (FALSE, FALSE, sizeof (BfFormedPolygon));
  scene->rings = g_array_new (FALSE, FALSE, sizeof (BfFormedSpan));
  scene->vertices = g_array_new (FALSE, FALSE, sizeof (BfFormedVertex));
  scene->bands = g_array_new (FALSE, FALSE, sizeof (BfFormedBand));
  scene->stops = g_array_new (FALSE, FALSE, sizeof (BfFormedStop));
  return scene;
}

/* A sector whose frame is right-handed: where u runs along an outline that is counter-clockwise
 * and v outward, x is counted from the other end instead. */
static BfSolid
right_handed (const BfSolid *solid)
{
  BfSolid turned = *solid;
  BfVec3 up = bf_vec3_cross (solid->frame.ex, solid->frame.ey);

  if (solid->kind != BF_SOLID_SECTOR || bf_vec3_dot (up, solid->frame.ez) > 0.0)
    return turned;
  turned.frame.origin = bf_frame_point (&solid->frame, solid->width_mm, 0.0, 0.0);
  turned.frame.ex = bf_vec3_scale (solid->frame.ex, -1.0);
  return turned;
}

static GArray *
all_right_handed (const BfFormed *formed)
{
  GArray *solids = g_array_sized_new (FALSE, FALSE, sizeof (BfSolid), formed->solids->len);

  for (guint i = 0; i < formed->solids->len; i++)
    {
      BfSolid solid = right_handed (bf_formed_solid (formed, i));

      g_array_append_val (solids, solid);
    }
  return solids;
}

/* Slabs come first: a sector has to know where flats have met it. */
static void
build_solids (BfFormedBuild *build, const BfFormed *formed)
{
  for (guint i = 0; i < formed->solids->len; i++)
    if (bf_formed_solid (formed, i)->kind == BF_SOLID_SLAB)
      bf_formed_build_slab (build, bf_formed_solid (formed, i));
  for (guint i = 0; i < formed->solids->len; i++)
    if (bf_formed_solid (formed, i)->kind == BF_SOLID_SECTOR)
      bf_formed_build_sector (build, bf_formed_solid (formed, i), i);
}

/* cutting, holes: one of them, or neither. */
static BfFormedScene *
build_scene (const BfFold *fold,
             const BfFormed *formed,
             BfFormedCutting *cutting,
             const GArray *holes)
{
  g_autoptr (GArray) mouths = g_array_new (FALSE, TRUE, sizeof (BfFormedMouth));
  g_autoptr (GArray) solids = all_right_handed (formed);
  BfFormedBuild build = { 0 };
  BfFormed pieces = { 0 };

  g_array_set_clear_func (mouths, bf_formed_mouth_clear);
  build.scene = new_scene ();
  build.fold = fold;
  build.holes = holes;
  build.cutting = cutting;
  build.mouths = mouths;
  build.thickness_mm = fold->part->metal.thickness_mm;

  pieces.solids = solids;
  bf_formed_build_mouths (&build, &pieces);
  build_solids (&build, &pieces);
  bf_formed_scene_mark_edges (build.scene);
  return build.scene;
}

BfFormedScene *
bf_formed_scene_new_after (const BfFormedScene *before, const BfFold *fold, const BfFormed *formed)
{
  g_auto (BfFormedCutting) cutting = { 0 };
  BfFormedScene *scene;

  g_return_val_if_fail (fold != NULL && formed != NULL, NULL);

  bf_formed_cutting_init (&cutting, fold, before != NULL ? before->rests : NULL);
  scene = build_scene (fold, formed, &cutting, NULL);
  scene->rests = g_steal_pointer (&cutting.rests);
  return scene;
}

BfFormedScene *
bf_formed_scene_new (const BfFold *fold, const BfFormed *formed, const GArray *holes)
{
  g_return_val_if_fail (fold != NULL && formed != NULL, NULL);

  return holes != NULL ? build_scene (fold, formed, NULL, holes)
                       : bf_formed_scene_new_after (NULL, fold, formed);
}

void
bf_formed_scene_free (BfFormedScene *scene)
{
  if (scene == NULL)
    return;
  g_array_unref (scene->polygons);
  g_array_unref (scene->rings);
  g_array_unref (scene->vertices);
  g_array_unref (scene->bands);
  g_array_unref (scene->stops);
  g_clear_pointer (&scene->rests, g_hash_table_unref);
  g_free (scene);
}
