/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "ring-valid.h"

#define GEOS_USE_ONLY_R_API
#include <geos_c.h>

#define SAGITTA_MM 1e-5

static GEOSGeometry *
line_of (GEOSContextHandle_t geos, const BfRing *ring)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  GEOSCoordSequence *sequence;

  bf_ring_flatten (ring, SAGITTA_MM, points);
  sequence = GEOSCoordSeq_create_r (geos, points->len + 1, 2);
  for (guint i = 0; i <= points->len; i++)
    {
      BfVec2 p = g_array_index (points, BfVec2, i % points->len);
      GEOSCoordSeq_setXY_r (geos, sequence, i, p.x, p.y);
    }
  return GEOSGeom_createLinearRing_r (geos, sequence);
}

/* An outer ring with those of the holes that begin inside it. */
static GEOSGeometry *
polygon_of (GEOSContextHandle_t geos, const GPtrArray *rings, guint n_outer, guint which)
{
  const BfRing *outer = g_ptr_array_index (rings, which);
  g_autofree GEOSGeometry **holes = g_new (GEOSGeometry *, rings->len);
  unsigned n = 0;

  for (guint i = n_outer; i < rings->len; i++)
    if (n_outer == 1 || bf_ring_contains (outer, bf_ring_vertex (rings->pdata[i], 0)->p))
      holes[n++] = line_of (geos, rings->pdata[i]);
  return GEOSGeom_createPolygon_r (geos, line_of (geos, outer), holes, n);
}

static char *
fault_of (GEOSContextHandle_t geos, const GEOSGeometry *polygons)
{
  char *reason = NULL, *fault = NULL;
  GEOSGeometry *place = NULL;
  double x = NAN, y = NAN;

  if (GEOSisValidDetail_r (geos, polygons, 0, &reason, &place) != 1)
    {
      if (place != NULL)
        {
          GEOSGeomGetX_r (geos, place, &x);
          GEOSGeomGetY_r (geos, place, &y);
        }
      fault = g_strdup_printf ("%s at %.7f, %.7f", reason, x, y);
    }
  GEOSFree_r (geos, reason);
  GEOSGeom_destroy_r (geos, place);
  return fault;
}

char *
why_not_valid (const GPtrArray *rings, guint n_outer)
{
  GEOSContextHandle_t geos = GEOS_init_r ();
  g_autofree GEOSGeometry **polygons = g_new (GEOSGeometry *, MAX (n_outer, 1));
  GEOSGeometry *all;
  char *fault;

  for (guint i = 0; i < n_outer; i++)
    polygons[i] = polygon_of (geos, rings, n_outer, i);
  all = GEOSGeom_createCollection_r (geos, GEOS_MULTIPOLYGON, polygons, n_outer);
  fault = fault_of (geos, all);
  GEOSGeom_destroy_r (geos, all);
  GEOS_finish_r (geos);
  return fault;
}
