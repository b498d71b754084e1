/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-build.h"

#include "core/compare.h"

/* Chords of a cut's arcs in a bend stray no further than this. */
#define SAGITTA_MM 0.05

/* A point this near a strip's line lies on it. */
#define ON_LINE_MM 1e-5

/* The bend's zone in the blank: x runs along the bend as in its solid, y from root to tip. */
typedef struct
{
  const BfFormedBend *bend;
  BfVec2 origin, ex, ey;
  double width_mm, depth_mm;
} Zone;

static Zone
zone_of (const BfFormedBend *bend)
{
  const BfVec2 *corners = bend->sector->zone;
  BfVec2 along = bf_vec2_sub (corners[0], corners[1]), out = bf_vec2_sub (corners[2], corners[1]);

  return (Zone){ bend,
                 corners[1],
                 bf_vec2_unit (along),
                 bf_vec2_unit (out),
                 bf_vec2_length (along),
                 bf_vec2_length (out) };
}

static double
line_y (const Zone *zone, guint line)
{
  return zone->depth_mm * line / zone->bend->n_strips;
}

/* A strip, or the whole zone, in the blank. */
static BfRing *
band_ring (const Zone *zone, guint first, guint last)
{
  const double x[] = { 0.0, zone->width_mm, zone->width_mm, 0.0 };
  BfRing *ring = bf_ring_new ();

  for (guint i = 0; i < 4; i++)
    bf_ring_add (ring,
                 bf_vec2_along (bf_vec2_along (zone->origin, zone->ex, x[i]), zone->ey,
                                line_y (zone, i < 2 ? first : last)),
                 0.0);
  return ring;
}

/* A point of a strip: how far along the bend, and from the strip's first line (0) to its second. */
typedef struct
{
  double x, way;
} StripPoint;

static StripPoint
strip_point (const Zone *zone, guint strip, BfVec2 p)
{
  BfVec2 d = bf_vec2_sub (p, zone->origin);
  double y0 = line_y (zone, strip), y1 = line_y (zone, strip + 1);
  double y = bf_vec2_dot (d, zone->ey);
  StripPoint point = { bf_vec2_dot (d, zone->ex), (y - y0) / (y1 - y0) };

  if (fabs (y - y0) < ON_LINE_MM)
    point.way = 0.0;
  if (fabs (y - y1) < ON_LINE_MM)
    point.way = 1.0;
  return point;
}

static BfVec3
to_space (const Zone *zone, guint strip, StripPoint point, BfFormedSide side)
{
  BfVec3 a = bf_formed_bend_point (zone->bend, strip, side, point.x);
  BfVec3 b = bf_formed_bend_point (zone->bend, strip + 1, side, point.x);

  return bf_vec3_along (a, bf_vec3_sub (b, a), point.way);
}

/* The line of the bend that an edge of a strip lies on, or −1. */
static int
line_of (guint strip, StripPoint a, StripPoint b)
{
  if (a.way <= 0.0 && b.way <= 0.0)
    return (int)strip;
  return a.way >= 1.0 && b.way >= 1.0 ? (int)strip + 1 : -1;
}

static const BfFormedMouth *
mouth_at (const BfFormedBend *bend, int line)
{
  return line == 0 ? bend->root : line == (int)bend->n_strips ? bend->tip : NULL;
}

/* Where flats begin and end along an edge on a mouth: they have points there, and so has the edge.
 */
static void
add_flats (const Zone *zone, guint strip, StripPoint a, StripPoint b, GArray *points)
{
  const BfFormedMouth *mouth = mouth_at (zone->bend, line_of (strip, a, b));
  g_autoptr (GArray) x = g_array_new (FALSE, FALSE, sizeof (double));
  double low = fmin (a.x, b.x) + ON_LINE_MM, high = fmax (a.x, b.x) - ON_LINE_MM;

  for (guint i = 0; mouth != NULL && i < mouth->covered->len; i++)
    {
      const BfFormedReach *reach = &g_array_index (mouth->covered, BfFormedReach, i);

      if (reach->from > low && reach->from < high)
        g_array_append_val (x, reach->from);
      if (reach->to > low && reach->to < high)
        g_array_append_val (x, reach->to);
    }
  g_array_sort (x, bf_compare_doubles);
  for (guint i = 0; i < x->len; i++)
    {
      StripPoint p = { g_array_index (x, double, a.x < b.x ? i : x->len - 1 - i), a.way };

      g_array_append_val (points, p);
    }
}

/* A ring of what is left of a strip, point by point. */
static GArray *
strip_points (const Zone *zone, guint strip, const BfRing *ring)
{
  GArray *points = g_array_new (FALSE, FALSE, sizeof (StripPoint));
  g_autoptr (GArray) flat = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_ring_flatten (ring, SAGITTA_MM, flat);
  for (guint i = 0; i < flat->len; i++)
    {
      StripPoint a = strip_point (zone, strip, g_array_index (flat, BfVec2, i));
      StripPoint b = strip_point (zone, strip, g_array_index (flat, BfVec2, (i + 1) % flat->len));

      g_array_append_val (points, a);
      add_flats (zone, strip, a, b, points);
    }
  return points;
}

static StripPoint
point_at (const GArray *points, guint i)
{
  return g_array_index (points, StripPoint, i % points->len);
}

/* The ring on one side; seen from the other side it runs the other way round. */
static void
add_ring (const Zone *zone, guint strip, const GArray *points, BfFormedSide side)
{
  BfFormedScene *scene = zone->bend->build->scene;
  gboolean marking = side == BF_FORMED_MARKING_SIDE;

  bf_formed_begin_ring (scene);
  for (guint k = 0; k < points->len; k++)
    {
      guint i = marking ? k : points->len - k, next = marking ? i + 1 : i + points->len - 1;
      StripPoint a = point_at (points, i), b = point_at (points, next);
      int line = line_of (strip, a, b);

      bf_formed_add_point (
          scene, to_space (zone, strip, a, side),
          bf_formed_bend_outward (zone->bend, line >= 0 ? line : strip + 0.5, side));
    }
  bf_formed_end_ring (scene);
}

/* The metal's thickness along an edge of a cut, or at the bend's ends; where the edge lies on a
 * mouth, what no flat closes. */
static void
add_rim (const Zone *zone, guint strip, StripPoint a, StripPoint b)
{
  const BfFormedBend *bend = zone->bend;
  int line = line_of (strip, a, b);
  const BfFormedMouth *mouth = mouth_at (bend, line);
  const BfVec3 p[4] = { to_space (zone, strip, a, BF_FORMED_OTHER_SIDE),
                        to_space (zone, strip, b, BF_FORMED_OTHER_SIDE),
                        to_space (zone, strip, b, BF_FORMED_MARKING_SIDE),
                        to_space (zone, strip, a, BF_FORMED_MARKING_SIDE) };
  BfFormedPolygon like = { BF_FORMED_RIM,     TRUE,    FALSE, bend->sector->face, -1,
                           { 0.0, 0.0, 0.0 }, { 0, 0 } };

  if (mouth != NULL)
    bf_formed_bend_close (bend, mouth, (BfFormedReach){ fmin (a.x, b.x), fmax (a.x, b.x) });
  if (line >= 0 || fabs (a.x - b.x) + fabs (a.way - b.way) < ON_LINE_MM)
    return;
  like.normal = bf_vec3_unit (
      bf_vec3_cross (bf_vec3_sub (p[2], p[3]),
                     bf_formed_bend_outward (bend, strip + 0.5, BF_FORMED_MARKING_SIDE)));
  bf_formed_add_quad (bend->build->scene, &like, p);
}

/* What is left of a strip in one piece. */
static void
build_rest (const Zone *zone, guint strip, const GPtrArray *rings, const int bands[2])
{
  BfFormedScene *scene = zone->bend->build->scene;
  g_autoptr (GPtrArray) all = g_ptr_array_new_with_free_func ((GDestroyNotify)g_array_unref);

  for (guint i = 0; i < rings->len; i++)
    g_ptr_array_add (all, strip_points (zone, strip, g_ptr_array_index (rings, i)));
  for (BfFormedSide side = BF_FORMED_MARKING_SIDE; side <= BF_FORMED_OTHER_SIDE; side++)
    {
      BfFormedPolygon like = { side,
                               TRUE,
                               FALSE,
                               zone->bend->sector->face,
                               bands[side == BF_FORMED_MARKING_SIDE ? 0 : 1],
                               bf_formed_bend_outward (zone->bend, strip + 0.5, side),
                               { 0, 0 } };

      bf_formed_begin_polygon (scene, &like);
      for (guint i = 0; i < all->len; i++)
        add_ring (zone, strip, g_ptr_array_index (all, i), side);
      bf_formed_end_polygon (scene);
    }
  for (guint i = 0; i < all->len; i++)
    {
      const GArray *points = g_ptr_array_index (all, i);

      for (guint k = 0; k < points->len; k++)
        add_rim (zone, strip, point_at (points, k), point_at (points, k + 1));
    }
}

gboolean
bf_formed_build_cut_bend (const BfFormedBend *bend, const int bands[2])
{
  BfFormedCutting *cutting = bend->build->cutting;
  Zone zone = zone_of (bend);
  g_autoptr (BfRing) whole = band_ring (&zone, 0, bend->n_strips);

  if (cutting == NULL || !bf_formed_is_cut (cutting, whole))
    return FALSE;
  for (guint strip = 0; strip < bend->n_strips; strip++)
    {
      g_autoptr (BfRing) ring = band_ring (&zone, strip, strip + 1);
      const GPtrArray *rests = bf_formed_cut (cutting, ring);

      for (guint i = 0; i < rests->len; i++)
        build_rest (&zone, strip, g_ptr_array_index (rests, i), bands);
    }
  return TRUE;
}
