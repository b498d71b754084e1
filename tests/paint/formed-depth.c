/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "formed-depth.h"

#define SIZE BF_DEPTH_SIZE
#define BORDER 4.0

typedef struct
{
  const BfFormedScene *scene;
  const BfFormedPolygon *polygon;
  const BfVec3 *seen; /* by vertex: where it is in the picture */
  BfVec3 normal;      /* the polygon's, as the picture shows it */
  BfDepth *depth;
  GArray *crossings; /* double: where edges cross the row, in mm */
} Scan;

static BfVec3
in_picture (BfVec3 p, const BfFrame *eye)
{
  return bf_vec3 (bf_vec3_dot (p, eye->ex), bf_vec3_dot (p, eye->ey), bf_vec3_dot (p, eye->ez));
}

static BfVec3 *
see_all (const BfFormedScene *scene, const BfFrame *eye)
{
  BfVec3 *seen = g_new (BfVec3, scene->vertices->len + 1);

  for (guint i = 0; i < scene->vertices->len; i++)
    seen[i] = in_picture (bf_formed_vertex (scene, i)->p, eye);
  return seen;
}

static void
fit (BfDepth *depth, const BfVec3 *seen, guint n)
{
  BfBox box = bf_box_empty ();

  for (guint i = 0; i < n; i++)
    bf_box_extend (&box, bf_vec2 (seen[i].x, seen[i].y));
  depth->scale = (SIZE - 2.0 * BORDER) / fmax (box.max.x - box.min.x, box.max.y - box.min.y);
  depth->x0 = box.min.x - BORDER / depth->scale;
  depth->y0 = box.max.y + BORDER / depth->scale;
}

BfVec2
bf_depth_middle (const BfDepth *depth, guint column, guint row)
{
  return bf_vec2 (depth->x0 + (column + 0.5) / depth->scale,
                  depth->y0 - (row + 0.5) / depth->scale);
}

static int
compare_doubles (gconstpointer a, gconstpointer b)
{
  double da = *(const double *)a, db = *(const double *)b;

  return da < db ? -1 : da > db;
}

static void
find_crossings (Scan *scan, double y)
{
  BfFormedSpan rings = scan->polygon->rings;

  g_array_set_size (scan->crossings, 0);
  for (guint r = rings.first; r < rings.first + rings.size; r++)
    {
      const BfFormedSpan *ring = bf_formed_ring (scan->scene, r);

      for (guint i = 0; i < ring->size; i++)
        {
          BfVec3 a = scan->seen[ring->first + i];
          BfVec3 b = scan->seen[ring->first + (i + 1) % ring->size];
          double x = a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y);

          if ((a.y > y) != (b.y > y))
            g_array_append_val (scan->crossings, x);
        }
    }
  g_array_sort (scan->crossings, compare_doubles);
}

static void
put (Scan *scan, guint column, guint row)
{
  BfDepth *depth = scan->depth;
  BfVec2 at = bf_depth_middle (depth, column, row);
  guint pixel = row * SIZE + column;
  BfVec3 on_plane = scan->seen[bf_formed_ring (scan->scene, scan->polygon->rings.first)->first];
  BfVec3 n = scan->normal;
  double z = on_plane.z - (n.x * (at.x - on_plane.x) + n.y * (at.y - on_plane.y)) / n.z;

  /* Where two faces lie on each other, the one that faces the eye is seen. */
  if (z + (n.z > 0.0 ? 1e-6 : 0.0) <= depth->nearest[pixel])
    return;
  depth->nearest[pixel] = z;
  depth->faces[pixel] = (int)scan->polygon->face;
}

static void
scan_row (Scan *scan, guint row)
{
  const BfDepth *depth = scan->depth;

  find_crossings (scan, bf_depth_middle (depth, 0, row).y);
  for (guint i = 0; i + 1 < scan->crossings->len; i += 2)
    {
      double from = (g_array_index (scan->crossings, double, i) - depth->x0) * depth->scale;
      double to = (g_array_index (scan->crossings, double, i + 1) - depth->x0) * depth->scale;

      for (guint column = (guint)fmax (ceil (from - 0.5), 0.0); column + 0.5 < to; column++)
        put (scan, column, row);
    }
}

static void
scan_polygon (Scan *scan)
{
  const BfFormedSpan *outer = bf_formed_ring (scan->scene, scan->polygon->rings.first);
  double low = INFINITY, high = -INFINITY;

  for (guint i = outer->first; i < outer->first + outer->size; i++)
    {
      low = fmin (low, scan->seen[i].y);
      high = fmax (high, scan->seen[i].y);
    }
  for (guint row = 0; row < SIZE; row++)
    {
      double y = bf_depth_middle (scan->depth, 0, row).y;

      if (y >= low && y <= high)
        scan_row (scan, row);
    }
}

BfDepth *
bf_depth_render (const BfFormedScene *scene, const BfFrame *eye)
{
  g_autoptr (GArray) crossings = g_array_new (FALSE, FALSE, sizeof (double));
  g_autofree BfVec3 *seen = see_all (scene, eye);
  BfDepth *depth = g_new0 (BfDepth, 1);

  depth->faces = g_new (int, SIZE *SIZE);
  depth->nearest = g_new (double, SIZE *SIZE);
  fit (depth, seen, scene->vertices->len);
  for (guint i = 0; i < SIZE * SIZE; i++)
    {
      depth->faces[i] = -1;
      depth->nearest[i] = -INFINITY;
    }
  for (guint i = 0; i < scene->polygons->len; i++)
    {
      const BfFormedPolygon *polygon = bf_formed_polygon (scene, i);
      Scan scan = { scene, polygon, seen, in_picture (polygon->normal, eye), depth, crossings };

      if (fabs (scan.normal.z) >= 1e-5)
        scan_polygon (&scan);
    }
  return depth;
}

void
bf_depth_free (BfDepth *depth)
{
  g_free (depth->faces);
  g_free (depth->nearest);
  g_free (depth);
}

gboolean
bf_depth_is_edge (const BfDepth *depth, guint column, guint row)
{
  const int *face = depth->faces + row * SIZE + column;

  if (column == 0 || row == 0 || column == SIZE - 1 || row == SIZE - 1)
    return TRUE;
  return face[-1] != face[0] || face[1] != face[0] || face[-SIZE] != face[0] ||
         face[SIZE] != face[0];
}
