/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "slab-overlap.h"

/* A bend is cut into slices of this at most: on an outside radius of 12 mm the chords of its arc
 * stray 2 µm. */
#define SLICE_RAD (2.0 * G_PI / 180.0)

/* A convex solid: a triangle or a bend's slice, with thickness. Either has four directions of faces
 * and four of edges. */
typedef struct
{
  BfVec3 points[8];
  guint n_points;
  BfVec3 normals[4], edges[4];
  BfVec3 min, max;
  guint face, on;
  BfSolidKind kind;
} Convex;

static void
close_box (Convex *c)
{
  c->min = c->max = c->points[0];
  for (guint i = 1; i < c->n_points; i++)
    {
      BfVec3 p = c->points[i];

      c->min = bf_vec3 (MIN (c->min.x, p.x), MIN (c->min.y, p.y), MIN (c->min.z, p.z));
      c->max = bf_vec3 (MAX (c->max.x, p.x), MAX (c->max.y, p.y), MAX (c->max.z, p.z));
    }
}

/* ---- flats --------------------------------------------------------------------------------- */

static BfVec2
to_frame (const BfSolid *slab, BfVec2 p)
{
  BfVec2 d = bf_vec2_sub (p, slab->flat_origin);
  return bf_vec2 (bf_vec2_dot (d, slab->flat_ex), bf_vec2_dot (d, slab->flat_ey));
}

static void
add_triangle (const BfSolid *slab, double t, const BfVec2 corners[3], GArray *out)
{
  Convex c = { .n_points = 6, .face = slab->face, .kind = BF_SOLID_SLAB };
  const BfFrame *f = &slab->frame;

  for (guint i = 0; i < 3; i++)
    {
      BfVec2 e = bf_vec2_unit (bf_vec2_sub (corners[(i + 1) % 3], corners[i]));

      c.points[i] = bf_frame_point (f, corners[i].x, corners[i].y, 0.0);
      c.points[i + 3] = bf_frame_point (f, corners[i].x, corners[i].y, -t);
      c.edges[i] = bf_vec3_along (bf_vec3_scale (f->ex, e.x), f->ey, e.y);
      c.normals[i] = bf_vec3_along (bf_vec3_scale (f->ex, -e.y), f->ey, e.x);
    }
  c.edges[3] = c.normals[3] = f->ez;
  close_box (&c);
  g_array_append_val (out, c);
}

static double
turn_at (BfVec2 a, BfVec2 b, BfVec2 c)
{
  return bf_vec2_cross (bf_vec2_sub (b, a), bf_vec2_sub (c, b));
}

/* TRUE where corner i can be cut off: it turns left and holds no other corner. */
static gboolean
is_ear (const GArray *points, guint i)
{
  guint n = points->len;
  BfVec2 a = g_array_index (points, BfVec2, (i + n - 1) % n);
  BfVec2 b = g_array_index (points, BfVec2, i);
  BfVec2 c = g_array_index (points, BfVec2, (i + 1) % n);

  if (turn_at (a, b, c) <= 0.0)
    return FALSE;
  for (guint k = 2; k < n - 1; k++)
    {
      BfVec2 p = g_array_index (points, BfVec2, (i + k) % n);

      if (turn_at (a, b, p) > 0.0 && turn_at (b, c, p) > 0.0 && turn_at (c, a, p) > 0.0)
        return FALSE;
    }
  return TRUE;
}

/* Cuts ears off until a triangle is left. */
static void
add_slab (const BfSolid *slab, double t, const BfRing *outline, GArray *out)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  for (guint i = 0; i < bf_ring_size (outline); i++)
    {
      BfVec2 p = to_frame (slab, bf_ring_vertex (outline, i)->p);
      g_array_append_val (points, p);
    }
  while (points->len >= 3)
    {
      guint i = 0, n = points->len;
      BfVec2 corners[3];

      while (i + 1 < n && !is_ear (points, i))
        i++;
      for (guint k = 0; k < 3; k++)
        corners[k] = g_array_index (points, BfVec2, (i + n - 1 + k) % n);
      if (turn_at (corners[0], corners[1], corners[2]) > 1e-9)
        add_triangle (slab, t, corners, out);
      g_array_remove_index (points, i);
    }
}

/* ---- bends --------------------------------------------------------------------------------- */

/* The unit vector from the bend's axis outward at an angle from the parent's tangent. */
static BfVec3
outward (const BfSolid *s, double angle)
{
  double sign = s->turn == BF_TURN_UP ? -1.0 : 1.0;
  return bf_vec3_along (bf_vec3_scale (s->frame.ey, sin (angle)), s->frame.ez, sign * cos (angle));
}

static void
add_slice (const BfSolid *s, double t, double from, double to, GArray *out)
{
  const BfFrame *f = &s->frame;
  double axis_z = s->turn == BF_TURN_UP ? s->radius_mm : -t - s->radius_mm;
  BfVec3 axis = bf_frame_point (f, 0.0, 0.0, axis_z);
  BfVec3 rays[] = { outward (s, from), outward (s, to) }, middle = outward (s, (from + to) / 2.0);
  BfVec3 along = bf_vec3_cross (f->ex, middle);
  Convex c = { .n_points = 8,
               .face = s->face,
               .on = s->on,
               .kind = BF_SOLID_SECTOR,
               .normals = { f->ex, middle, bf_vec3_cross (f->ex, rays[0]),
                            bf_vec3_cross (f->ex, rays[1]) },
               .edges = { f->ex, along, rays[0], rays[1] } };

  for (guint i = 0; i < 8; i++)
    {
      double r = s->radius_mm + (i & 1 ? t : 0.0), x = i & 2 ? s->width_mm : 0.0;
      c.points[i] = bf_vec3_along (bf_vec3_along (axis, rays[i >> 2], r), f->ex, x);
    }
  close_box (&c);
  g_array_append_val (out, c);
}

static void
add_sector (const BfSolid *s, double t, GArray *out)
{
  guint n = (guint)ceil (s->angle_rad / SLICE_RAD);

  for (guint i = 0; i < n; i++)
    add_slice (s, t, s->angle_rad * i / n, s->angle_rad * (i + 1) / n, out);
}

/* ---- pairs --------------------------------------------------------------------------------- */

/* How far two solids reach into each other along an axis; negative where it parts them. */
static double
reach_into (const Convex *a, const Convex *b, BfVec3 axis)
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

/* By the separating axis theorem: face normals of both, and every edge across every edge. */
static double
depth (const Convex *a, const Convex *b, double stop_below)
{
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < 4 && least > stop_below; i++)
    least = MIN (least, MIN (reach_into (a, b, a->normals[i]), reach_into (a, b, b->normals[i])));
  for (guint i = 0; i < 16 && least > stop_below; i++)
    {
      BfVec3 axis = bf_vec3_cross (a->edges[i / 4], b->edges[i % 4]);

      if (bf_vec3_length (axis) > 1e-6)
        least = MIN (least, reach_into (a, b, bf_vec3_unit (axis)));
    }
  return least;
}

static double
box_depth (const Convex *a, const Convex *b)
{
  double x = MIN (a->max.x - b->min.x, b->max.x - a->min.x);
  double y = MIN (a->max.y - b->min.y, b->max.y - a->min.y);
  double z = MIN (a->max.z - b->min.z, b->max.z - a->min.z);
  return MIN (x, MIN (y, z));
}

/* One face or one bend, or a bend and a face that it joins. */
static gboolean
belong_together (const Convex *a, const Convex *b)
{
  const Convex *bend = a->kind == BF_SOLID_SECTOR ? a : b, *flat = bend == a ? b : a;

  if (a->kind == b->kind)
    return a->face == b->face;
  return flat->face == bend->face || flat->face == bend->on;
}

static GArray *
solids_of (const BfFold *fold)
{
  GArray *solids = g_array_new (FALSE, FALSE, sizeof (Convex));
  double t = fold->part->metal.thickness_mm;

  for (guint i = 0; i < fold->formed.solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (&fold->formed, i);

      if (solid->kind == BF_SOLID_SECTOR)
        add_sector (solid, t, solids);
      else
        add_slab (solid, t, solid->outline, solids);
    }
  return solids;
}

double
slab_worst_overlap (const BfFold *fold, guint *a, guint *b)
{
  g_autoptr (GArray) solids = solids_of (fold);
  double worst = -G_MAXDOUBLE;

  for (guint i = 0; i < solids->len; i++)
    for (guint j = i + 1; j < solids->len; j++)
      {
        const Convex *x = &g_array_index (solids, Convex, i), *y = x + (j - i);
        double d = box_depth (x, y);

        if (d <= worst || belong_together (x, y))
          continue;
        d = MIN (d, depth (x, y, worst));
        if (d <= worst)
          continue;
        worst = d;
        *a = x->face;
        *b = y->face;
      }
  return worst;
}
