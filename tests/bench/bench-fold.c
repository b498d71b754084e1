/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* How long a whole fold takes, against GEOS merely uniting the same pieces. Both are timed in turn
 * in one process, by the processor's clock, so that the ratio holds on a busy machine too; medians
 * are printed. */

#include <time.h>

#define GEOS_USE_ONLY_R_API
#include <geos_c.h>

#include "fold/fold.h"
#include "make-part.h"

#define N_ROUNDS 15

typedef struct
{
  double fold_us, unite_us;
} Timing;

static GEOSGeometry *
polygon (GEOSContextHandle_t geos, const BfVec2 *points, guint n)
{
  GEOSCoordSequence *sequence = GEOSCoordSeq_create_r (geos, n + 1, 2);

  for (guint i = 0; i <= n; i++)
    GEOSCoordSeq_setXY_r (geos, sequence, i, points[i % n].x, points[i % n].y);
  return GEOSGeom_createPolygon_r (geos, GEOSGeom_createLinearRing_r (geos, sequence), NULL, 0);
}

static GEOSGeometry *
face_polygon (GEOSContextHandle_t geos, const BfRing *ring)
{
  g_autofree BfVec2 *points = g_new (BfVec2, bf_ring_size (ring));

  for (guint i = 0; i < bf_ring_size (ring); i++)
    points[i] = bf_ring_vertex (ring, i)->p;
  return polygon (geos, points, bf_ring_size (ring));
}

/* Faces and bend zones, as the blank is made of. */
static GEOSGeometry *
pieces (GEOSContextHandle_t geos, const BfFold *fold)
{
  guint n = fold->faces->len + fold->bends->len, k = 0;
  g_autofree GEOSGeometry **all = g_new (GEOSGeometry *, n);

  for (guint i = 0; i < fold->faces->len; i++)
    all[k++] = face_polygon (geos, bf_fold_face (fold, i)->outline);
  for (guint i = 0; i < fold->bends->len; i++)
    all[k++] = polygon (geos, bf_fold_bend (fold, i)->zone, 4);
  return GEOSGeom_createCollection_r (geos, GEOS_GEOMETRYCOLLECTION, all, n);
}

static int
compare (const void *a, const void *b)
{
  double x = *(const double *)a, y = *(const double *)b;
  return (x > y) - (x < y);
}

static double
median (double *values, guint n)
{
  qsort (values, n, sizeof *values, compare);
  return values[n / 2];
}

static double
now_us (void)
{
  struct timespec now;

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &now);
  return (double)now.tv_sec * 1e6 + (double)now.tv_nsec * 1e-3;
}

static Timing
time_part (GEOSContextHandle_t geos, BfPart *part)
{
  g_autoptr (BfFold) first = bf_fold (part);
  GEOSGeometry *collection = pieces (geos, first);
  double fold_us[N_ROUNDS], unite_us[N_ROUNDS];

  for (guint i = 0; i < N_ROUNDS; i++)
    {
      double start = now_us (), middle;
      BfFold *fold = bf_fold (part);

      middle = now_us ();
      GEOSGeom_destroy_r (geos, GEOSUnaryUnion_r (geos, collection));
      unite_us[i] = now_us () - middle;
      fold_us[i] = middle - start;
      bf_fold_unref (fold);
    }
  GEOSGeom_destroy_r (geos, collection);
  return (Timing){ median (fold_us, N_ROUNDS), median (unite_us, N_ROUNDS) };
}

/* A base of n sides with a wall on each and a lip on each wall: 2 n + 1 faces. */
static BfPart *
make_sized (guint n_sides)
{
  BfPart *part = make_ring (n_sides, 12.0 * n_sides, 30.0, 70.0);

  for (guint i = 0; i < n_sides; i++)
    {
      g_autofree char *on = g_strdup_printf ("f%u", i), *id = g_strdup_printf ("lip%u", i);
      add_lip (part, id, on, 14.0, 60.0);
    }
  return part;
}

int
main (void)
{
  static const guint faces[] = { 10, 50, 200, 800 };
  GEOSContextHandle_t geos = GEOS_init_r ();
  double before_us = 0.0, before_n = 0.0;

  g_print ("faces   fold µs   unite µs   ratio   growth (exponent since the row above)\n");
  for (guint i = 0; i < G_N_ELEMENTS (faces); i++)
    {
      guint n_sides = MAX (faces[i] / 2, 4);
      g_autoptr (BfPart) part = make_sized (n_sides);
      Timing t = time_part (geos, part);
      double n = 2.0 * n_sides + 1.0;

      g_print ("%5.0f %9.0f %10.0f %7.2f", n, t.fold_us, t.unite_us, t.fold_us / t.unite_us);
      if (i > 0)
        g_print ("   %.2f", log (t.fold_us / before_us) / log (n / before_n));
      g_print ("\n");
      before_us = t.fold_us;
      before_n = n;
    }
  GEOS_finish_r (geos);
  return 0;
}
