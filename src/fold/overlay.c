/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/overlay.h"

#define GEOS_USE_ONLY_R_API
#include <geos_c.h>

#include "core/tolerance.h"
#include "fold/arc-finder.h"

/* Rings smaller than this are crumbs of rounding (a snapped edge 1 m long has less beside it). */
#define CRUMB_MM2 1e-3

/* A corner that grows stays sharp until its point runs this many times as far out as its sides. */
#define MITRE_MAX 5.0

/* GEOS says with NULL that it can't handle an operand, and callers fall back: its own words, which
 * it would print, are for nobody. */
static void
on_message (const char *message, void *data)
{
  (void)message;
  (void)data;
}

static GEOSContextHandle_t
open_geos (void)
{
  GEOSContextHandle_t geos = GEOS_init_r ();

  GEOSContext_setErrorMessageHandler_r (geos, on_message, NULL);
  GEOSContext_setNoticeMessageHandler_r (geos, on_message, NULL);
  return geos;
}

static GEOSGeometry *
polygon_from_points (GEOSContextHandle_t geos, const GArray *points)
{
  guint n = points->len;
  GEOSCoordSequence *sequence = GEOSCoordSeq_create_r (geos, n + 1, 2);

  for (guint i = 0; i <= n; i++)
    {
      BfVec2 p = g_array_index (points, BfVec2, i % n);
      GEOSCoordSeq_setXY_r (geos, sequence, i, p.x, p.y);
    }
  return GEOSGeom_createPolygon_r (geos, GEOSGeom_createLinearRing_r (geos, sequence), NULL, 0);
}

static GEOSGeometry *
polygon_from_ring (GEOSContextHandle_t geos, BfArcFinder *finder, const BfRing *ring)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_arc_finder_flatten (finder, ring, points);
  return points->len < 3 ? NULL : polygon_from_points (geos, points);
}

/* The polygons of what mending gave: it leaves a line as well where a ring runs out and back on
 * itself, and overlays take no mixture. Takes it over. */
static GEOSGeometry *
polygons_of (GEOSContextHandle_t geos, GEOSGeometry *mended)
{
  int n = mended != NULL ? GEOSGetNumGeometries_r (geos, mended) : 0;
  g_autofree GEOSGeometry **parts = NULL;
  unsigned kept = 0;

  if (mended == NULL || GEOSGeomTypeId_r (geos, mended) != GEOS_GEOMETRYCOLLECTION)
    return mended;
  parts = g_new0 (GEOSGeometry *, (gsize)n + 1);
  for (int i = 0; i < n; i++)
    {
      const GEOSGeometry *part = GEOSGetGeometryN_r (geos, mended, i);

      if (GEOSGeom_getDimensions_r (geos, part) == 2)
        parts[kept++] = GEOSGeom_clone_r (geos, part);
    }
  GEOSGeom_destroy_r (geos, mended);
  return GEOSGeom_createCollection_r (geos, GEOS_GEOMETRYCOLLECTION, parts, kept);
}

/* The polygon, mended where it crosses itself. Takes it over. */
static GEOSGeometry *
made_valid (GEOSContextHandle_t geos, GEOSGeometry *polygon)
{
  GEOSGeometry *mended;

  if (polygon == NULL || GEOSisValid_r (geos, polygon) == 1)
    return polygon;
  mended = GEOSMakeValid_r (geos, polygon);
  GEOSGeom_destroy_r (geos, polygon);
  return polygons_of (geos, mended);
}

gboolean
bf_overlay_is_simple (const BfRing *ring, BfVec2 *where)
{
  GEOSContextHandle_t geos = open_geos ();
  g_autoptr (BfArcFinder) finder = bf_arc_finder_new ();
  GEOSGeometry *polygon = polygon_from_ring (geos, finder, ring), *place = NULL;
  gboolean simple = polygon != NULL && GEOSisValidDetail_r (geos, polygon, 0, NULL, &place) == 1;

  if (place != NULL && where != NULL)
    {
      GEOSGeomGetX_r (geos, place, &where->x);
      GEOSGeomGetY_r (geos, place, &where->y);
    }
  GEOSGeom_destroy_r (geos, place);
  GEOSGeom_destroy_r (geos, polygon);
  GEOS_finish_r (geos);
  return simple;
}

static gboolean
boxes_meet (const BfBox *a, const BfBox *b)
{
  return a->min.x <= b->max.x && b->min.x <= a->max.x && a->min.y <= b->max.y &&
         b->min.y <= a->max.y;
}

static int
compare_boxes (const void *a, const void *b)
{
  double x = ((const BfBox *)a)->min.x, y = ((const BfBox *)b)->min.x;
  return (x > y) - (x < y);
}

/* TRUE where no two rings can touch, each lying in a box of its own. */
static gboolean
all_apart (const GPtrArray *rings)
{
  g_autofree BfBox *boxes = g_new (BfBox, MAX (rings->len, 1));

  for (guint i = 0; i < rings->len; i++)
    {
      boxes[i] = bf_box_empty ();
      bf_ring_extend_box (g_ptr_array_index (rings, i), &boxes[i]);
    }
  qsort (boxes, rings->len, sizeof *boxes, compare_boxes);
  for (guint i = 0; i < rings->len; i++)
    for (guint j = i + 1; j < rings->len && boxes[j].min.x <= boxes[i].max.x; j++)
      if (boxes_meet (&boxes[i], &boxes[j]))
        return FALSE;
  return TRUE;
}

/* TRUE where no ring has a straight edge, which could lie along another. */
static gboolean
all_round (const GPtrArray *rings)
{
  for (guint i = 0; i < rings->len; i++)
    for (guint k = 0; k < bf_ring_size (g_ptr_array_index (rings, i)); k++)
      if (fabs (bf_ring_vertex (g_ptr_array_index (rings, i), k)->bulge) < BF_TOLERANCE_ZERO)
        return FALSE;
  return TRUE;
}

/* Simple rings that lie apart, as one geometry. */
static GEOSGeometry *
gathered (GEOSContextHandle_t geos, BfArcFinder *finder, const GPtrArray *rings)
{
  g_autofree GEOSGeometry **parts = g_new0 (GEOSGeometry *, MAX (rings->len, 1));

  for (guint i = 0; i < rings->len; i++)
    parts[i] = polygon_from_ring (geos, finder, g_ptr_array_index (rings, i));
  return GEOSGeom_createCollection_r (geos, GEOS_MULTIPOLYGON, parts, rings->len);
}

/* All rings as one geometry without overlaps. */
static GEOSGeometry *
united (GEOSContextHandle_t geos, BfArcFinder *finder, const GPtrArray *rings)
{
  g_autofree GEOSGeometry **parts = g_new0 (GEOSGeometry *, MAX (rings->len, 1));
  guint n = 0;
  GEOSGeometry *all, *result;

  for (guint i = 0; i < rings->len; i++)
    {
      parts[n] = made_valid (geos, polygon_from_ring (geos, finder, g_ptr_array_index (rings, i)));
      if (parts[n] != NULL)
        n++;
    }
  all = GEOSGeom_createCollection_r (geos, GEOS_GEOMETRYCOLLECTION, parts, n);
  result = GEOSUnaryUnionPrec_r (geos, all, BF_TOLERANCE_SNAP_MM);
  GEOSGeom_destroy_r (geos, all);
  return result;
}

static BfRing *
ring_from_geos (GEOSContextHandle_t geos, const BfArcFinder *finder, const GEOSGeometry *line)
{
  const GEOSCoordSequence *sequence = GEOSGeom_getCoordSeq_r (geos, line);
  unsigned n = 0;
  g_autofree BfVec2 *points = NULL;

  GEOSCoordSeq_getSize_r (geos, sequence, &n);
  points = g_new (BfVec2, n);
  for (unsigned i = 0; i < n; i++)
    GEOSCoordSeq_getXY_r (geos, sequence, i, &points[i].x, &points[i].y);
  return bf_arc_finder_restore (finder, points, n > 0 ? n - 1 : 0);
}

/* Adds a ring turned as it should be, unless it is a crumb. */
static void
take_ring (GPtrArray *rings, BfRing *ring, gboolean outer)
{
  double area = bf_ring_area (ring);

  if (fabs (area) < CRUMB_MM2)
    {
      bf_ring_free (ring);
      return;
    }
  if (outer != (area > 0.0))
    bf_ring_reverse (ring);
  g_ptr_array_add (rings, ring);
}

static int
compare_areas (gconstpointer a, gconstpointer b)
{
  double x = fabs (bf_ring_area (*(BfRing *const *)a));
  double y = fabs (bf_ring_area (*(BfRing *const *)b));
  return (x < y) - (x > y);
}

static void
take_polygon (GEOSContextHandle_t geos,
              const BfArcFinder *finder,
              const GEOSGeometry *polygon,
              GPtrArray *outer,
              GPtrArray *holes)
{
  int n_holes = GEOSGetNumInteriorRings_r (geos, polygon);

  take_ring (outer, ring_from_geos (geos, finder, GEOSGetExteriorRing_r (geos, polygon)), TRUE);
  for (int i = 0; i < n_holes; i++)
    take_ring (holes, ring_from_geos (geos, finder, GEOSGetInteriorRingN_r (geos, polygon, i)),
               FALSE);
}

static GPtrArray *
rings_from_geos (GEOSContextHandle_t geos,
                 const BfArcFinder *finder,
                 const GEOSGeometry *geometry,
                 guint *n_outer)
{
  GPtrArray *outer = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  g_autoptr (GPtrArray) holes = g_ptr_array_new ();
  int n = geometry != NULL ? GEOSGetNumGeometries_r (geos, geometry) : 0;

  for (int i = 0; i < n; i++)
    {
      const GEOSGeometry *part = GEOSGetGeometryN_r (geos, geometry, i);

      if (GEOSGeomTypeId_r (geos, part) == GEOS_POLYGON && GEOSisEmpty_r (geos, part) == 0)
        take_polygon (geos, finder, part, outer, holes);
    }
  g_ptr_array_sort (outer, compare_areas);
  g_ptr_array_sort (holes, compare_areas);
  *n_outer = outer->len;
  g_ptr_array_extend (outer, holes, NULL, NULL);
  return outer;
}

GPtrArray *
bf_overlay_unite (const GPtrArray *pieces)
{
  GEOSContextHandle_t geos = open_geos ();
  g_autoptr (BfArcFinder) finder = bf_arc_finder_new ();
  GEOSGeometry *all;
  guint n_outer;
  GPtrArray *rings;

  bf_arc_finder_set_beside (finder, pieces, NULL);
  all = united (geos, finder, pieces);
  rings = rings_from_geos (geos, finder, all, &n_outer);
  GEOSGeom_destroy_r (geos, all);
  GEOS_finish_r (geos);
  return rings;
}

/* What is left of the metal, or NULL where GEOS can't handle the cuts as they are. Takes them over.
 * grid_mm: 0 leaves points where they are, which is faster, and does where no edges lie along each
 * other. */
static GEOSGeometry *
cut_away (GEOSContextHandle_t geos, const GEOSGeometry *metal, GEOSGeometry *cuts, double grid_mm)
{
  GEOSGeometry *left = NULL;

  if (metal != NULL && cuts != NULL && grid_mm <= 0.0)
    left = GEOSDifference_r (geos, metal, cuts);
  else if (metal != NULL && cuts != NULL)
    left = GEOSDifferencePrec_r (geos, metal, cuts, grid_mm);
  GEOSGeom_destroy_r (geos, cuts);
  return left;
}

/* The outlines as one geometry: outer rings less the rings that run clockwise. */
static GEOSGeometry *
outlines_less_holes (GEOSContextHandle_t geos, BfArcFinder *finder, const GPtrArray *outlines)
{
  g_autoptr (GPtrArray) outer = g_ptr_array_new (), holes = g_ptr_array_new ();
  GEOSGeometry *solid, *voids, *left;

  for (guint i = 0; i < outlines->len; i++)
    {
      BfRing *ring = g_ptr_array_index (outlines, i);
      g_ptr_array_add (bf_ring_area (ring) < 0.0 ? holes : outer, ring);
    }
  if (outer->len == 1 && holes->len == 0)
    return polygon_from_ring (geos, finder, g_ptr_array_index (outer, 0));
  solid = united (geos, finder, outer);
  voids = united (geos, finder, holes);
  left = cut_away (geos, solid, voids, BF_TOLERANCE_SNAP_MM);
  GEOSGeom_destroy_r (geos, solid);
  return left;
}

GPtrArray *
bf_overlay_cut (const GPtrArray *outlines, const GPtrArray *tools, guint *n_outer)
{
  GEOSContextHandle_t geos = open_geos ();
  g_autoptr (BfArcFinder) finder = bf_arc_finder_new ();
  GEOSGeometry *metal, *left = NULL;
  gboolean apart = all_apart (tools);
  GPtrArray *rings;

  bf_arc_finder_set_beside (finder, outlines, tools);
  metal = outlines_less_holes (geos, finder, outlines);
  if (apart)
    bf_arc_finder_set_beside (finder, outlines, NULL);
  /* Tools that lie apart need no union, which costs more than the cut; one that crosses itself, as
   * a drawn cut-out may, is mended by it. */
  if (apart)
    left = cut_away (geos, metal, gathered (geos, finder, tools),
                     all_round (tools) ? 0.0 : BF_TOLERANCE_SNAP_MM);
  if (left == NULL)
    left = cut_away (geos, metal, united (geos, finder, tools), BF_TOLERANCE_SNAP_MM);
  rings = rings_from_geos (geos, finder, left, n_outer);

  GEOSGeom_destroy_r (geos, metal);
  GEOSGeom_destroy_r (geos, left);
  GEOS_finish_r (geos);
  return rings;
}

typedef GEOSGeometry *(*Overlay) (GEOSContextHandle_t geos,
                                  const GEOSGeometry *a,
                                  const GEOSGeometry *b);

static GPtrArray *
overlaid (Overlay overlay, const GPtrArray *a, const GPtrArray *b, guint *n_outer)
{
  GEOSContextHandle_t geos = open_geos ();
  g_autoptr (BfArcFinder) finder = bf_arc_finder_new ();
  GEOSGeometry *first, *second, *result = NULL;
  GPtrArray *rings;
  guint n = 0;

  bf_arc_finder_set_beside (finder, a, b);
  first = made_valid (geos, outlines_less_holes (geos, finder, a));
  second = made_valid (geos, outlines_less_holes (geos, finder, b));
  if (first != NULL && second != NULL)
    result = overlay (geos, first, second);
  rings = rings_from_geos (geos, finder, result, &n);
  if (n_outer != NULL)
    *n_outer = n;
  GEOSGeom_destroy_r (geos, first);
  GEOSGeom_destroy_r (geos, second);
  GEOSGeom_destroy_r (geos, result);
  GEOS_finish_r (geos);
  return rings;
}

GPtrArray *
bf_overlay_common (const GPtrArray *a, const GPtrArray *b, guint *n_outer)
{
  return overlaid (GEOSIntersection_r, a, b, n_outer);
}

GPtrArray *
bf_overlay_less (const GPtrArray *a, const GPtrArray *b, guint *n_outer)
{
  return overlaid (GEOSDifference_r, a, b, n_outer);
}

GPtrArray *
bf_overlay_grown (const GPtrArray *area, double by_mm, guint *n_outer)
{
  GEOSContextHandle_t geos = open_geos ();
  g_autoptr (BfArcFinder) finder = bf_arc_finder_new ();
  GEOSGeometry *old, *grown = NULL;
  GPtrArray *rings;
  guint n = 0;

  bf_arc_finder_set_beside (finder, area, NULL);
  old = made_valid (geos, outlines_less_holes (geos, finder, area));
  if (old != NULL)
    grown = GEOSBufferWithStyle_r (geos, old, by_mm, 1, GEOSBUF_CAP_FLAT, GEOSBUF_JOIN_MITRE,
                                   MITRE_MAX);
  rings = rings_from_geos (geos, finder, grown, &n);
  if (n_outer != NULL)
    *n_outer = n;
  GEOSGeom_destroy_r (geos, old);
  GEOSGeom_destroy_r (geos, grown);
  GEOS_finish_r (geos);
  return rings;
}
