/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/convex.h"

#include "core/tolerance.h"

/* Edges whose directions differ by less make no axis of their own. */
#define PARALLEL_SINE 1e-7

void
bf_convex_close (BfConvex *convex)
{
  convex->min = convex->max = convex->points[0];
  for (guint i = 1; i < convex->n_points; i++)
    {
      BfVec3 p = convex->points[i];

      convex->min =
          bf_vec3 (MIN (convex->min.x, p.x), MIN (convex->min.y, p.y), MIN (convex->min.z, p.z));
      convex->max =
          bf_vec3 (MAX (convex->max.x, p.x), MAX (convex->max.y, p.y), MAX (convex->max.z, p.z));
    }
}

void
bf_convex_from_slab (const BfFrame *frame, const BfConvexPart *part, double depth_mm, BfConvex *out)
{
  guint n = part->n, k = 0;

  *out = (BfConvex){ .n_points = 2 * n };
  for (guint i = 0; i < n; i++)
    {
      BfVec2 p = part->corners[i], e = bf_vec2_sub (part->corners[(i + 1) % n], p);

      out->points[i] = bf_frame_point (frame, p.x, p.y, 0.0);
      out->points[n + i] = bf_frame_point (frame, p.x, p.y, -depth_mm);
      if (bf_vec2_length (e) < BF_TOLERANCE_SNAP_MM)
        continue; /* a corner given twice has no direction */
      e = bf_vec2_unit (e);
      out->edges[k] = bf_vec3_along (bf_vec3_scale (frame->ex, e.x), frame->ey, e.y);
      out->normals[k++] = bf_vec3_along (bf_vec3_scale (frame->ex, e.y), frame->ey, -e.x);
    }
  out->edges[k] = out->normals[k] = frame->ez;
  out->n_edges = out->n_normals = k + 1;
  bf_convex_close (out);
}

/* How far two solids reach into each other along a unit axis; negative where it parts them. */
static double
reach_along (const BfConvex *a, const BfConvex *b, BfVec3 axis)
{
  double a_min = G_MAXDOUBLE, a_max = -G_MAXDOUBLE, b_min = G_MAXDOUBLE, b_max = -G_MAXDOUBLE;

  for (guint i = 0; i < a->n_points; i++)
    {
      double x = bf_vec3_dot (axis, a->points[i]);
      a_min = MIN (a_min, x);
      a_max = MAX (a_max, x);
    }
  for (guint i = 0; i < b->n_points; i++)
    {
      double x = bf_vec3_dot (axis, b->points[i]);
      b_min = MIN (b_min, x);
      b_max = MAX (b_max, x);
    }
  return MIN (a_max - b_min, b_max - a_min);
}

static double
box_reach (const BfConvex *a, const BfConvex *b)
{
  double x = MIN (a->max.x - b->min.x, b->max.x - a->min.x);
  double y = MIN (a->max.y - b->min.y, b->max.y - a->min.y);
  double z = MIN (a->max.z - b->min.z, b->max.z - a->min.z);

  return MIN (x, MIN (y, z));
}

static double
faces_reach (const BfConvex *of, const BfConvex *other, double enough_mm)
{
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < of->n_normals && least > enough_mm; i++)
    least = MIN (least, reach_along (of, other, of->normals[i]));
  return least;
}

static double
edges_reach (const BfConvex *a, const BfConvex *b, double enough_mm)
{
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < a->n_edges; i++)
    for (guint j = 0; j < b->n_edges && least > enough_mm; j++)
      {
        BfVec3 axis = bf_vec3_cross (a->edges[i], b->edges[j]);

        if (bf_vec3_length (axis) > PARALLEL_SINE)
          least = MIN (least, reach_along (a, b, bf_vec3_unit (axis)));
      }
  return least;
}

double
bf_convex_depth (const BfConvex *a, const BfConvex *b, double enough_mm)
{
  double least = box_reach (a, b);

  if (least > enough_mm)
    least = MIN (least, faces_reach (a, b, enough_mm));
  if (least > enough_mm)
    least = MIN (least, faces_reach (b, a, enough_mm));
  if (least > enough_mm)
    least = MIN (least, edges_reach (a, b, enough_mm));
  return least;
}
