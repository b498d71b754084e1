/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/collide.h"

#include "core/tolerance.h"
#include "fold/collide-pieces.h"

/* The first look at a bend, and the one that decides. */
#define COARSE_SAGITTA_MM 5e-3
#define FINE_SAGITTA_MM 1e-4

/* A solid, its corners (its bend's arc inside of them), and its pieces once they were needed. */
typedef struct
{
  const BfSolid *solid;
  GArray *corners; /* BfVec3 */
  BfVec3 min, max;
  GArray *coarse, *fine; /* BfConvex, or NULL */
  gboolean is_cut;       /* known with fine */
} Body;

typedef struct
{
  const BfFold *fold;
  GArray *bodies;     /* Body */
  GArray *tools;      /* BfConvexPart, or NULL as long as none was needed */
  GArray *collisions; /* BfCollision */
} Search;

static void
clear_body (gpointer data)
{
  Body *body = data;

  g_clear_pointer (&body->corners, g_array_unref);
  g_clear_pointer (&body->coarse, g_array_unref);
  g_clear_pointer (&body->fine, g_array_unref);
}

/* ---- bodies ------------------------------------------------------------------------------- */

static void
add_slab_corners (const BfFold *fold, Body *body)
{
  const BfSolid *slab = body->solid;
  const BfRing *outline = slab->outline;
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  double t = fold->part->metal.thickness_mm;

  if (bf_ring_size (outline) < 3)
    return;
  bf_ring_flatten (outline, COARSE_SAGITTA_MM, points);
  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 p = bf_solid_local (slab, g_array_index (points, BfVec2, i));
      BfVec3 both[] = { bf_frame_point (&slab->frame, p.x, p.y, 0.0),
                        bf_frame_point (&slab->frame, p.x, p.y, -t) };

      g_array_append_vals (body->corners, both, 2);
    }
}

static void
add_sector_corners (const BfFold *fold, Body *body)
{
  g_autoptr (GArray) slices = g_array_new (FALSE, FALSE, sizeof (BfConvex));

  if (body->solid->width_mm < BF_TOLERANCE_SIZE_MM)
    return;
  bf_collide_sector_pieces (fold, body->solid, NULL, (BfArcSlices){ BF_ARC_AROUND, 1.0 }, slices);
  for (guint i = 0; i < slices->len; i++)
    {
      const BfConvex *slice = &g_array_index (slices, BfConvex, i);
      g_array_append_vals (body->corners, slice->points, slice->n_points);
    }
}

static void
add_body (Search *search, const BfSolid *solid)
{
  Body body = { .solid = solid, .corners = g_array_new (FALSE, FALSE, sizeof (BfVec3)) };

  if (solid->kind == BF_SOLID_SLAB)
    add_slab_corners (search->fold, &body);
  else
    add_sector_corners (search->fold, &body);
  body.min = bf_vec3 (G_MAXDOUBLE, G_MAXDOUBLE, G_MAXDOUBLE);
  body.max = bf_vec3_scale (body.min, -1.0);
  for (guint i = 0; i < body.corners->len; i++)
    {
      BfVec3 p = g_array_index (body.corners, BfVec3, i);

      body.min = bf_vec3 (MIN (body.min.x, p.x), MIN (body.min.y, p.y), MIN (body.min.z, p.z));
      body.max = bf_vec3 (MAX (body.max.x, p.x), MAX (body.max.y, p.y), MAX (body.max.z, p.z));
    }
  g_array_append_val (search->bodies, body);
}

static int
compare_bodies (gconstpointer a, gconstpointer b)
{
  double x = ((const Body *)a)->min.x, y = ((const Body *)b)->min.x;
  return (x > y) - (x < y);
}

/* ---- pairs -------------------------------------------------------------------------------- */

/* One face or one bend, or a bend and a face that it joins. */
static gboolean
belong_together (const BfSolid *a, const BfSolid *b)
{
  const BfSolid *bend = a->kind == BF_SOLID_SECTOR ? a : b, *flat = bend == a ? b : a;

  if (a->kind == b->kind)
    return a->face == b->face;
  return flat->face == bend->face || flat->face == bend->on;
}

static gboolean
boxes_overlap (const Body *a, const Body *b)
{
  double x = MIN (a->max.x - b->min.x, b->max.x - a->min.x);
  double y = MIN (a->max.y - b->min.y, b->max.y - a->min.y);
  double z = MIN (a->max.z - b->min.z, b->max.z - a->min.z);

  return MIN (x, MIN (y, z)) > BF_COLLISION_LEAST_MM;
}

/* TRUE where the axis parts the two bodies whole. */
static gboolean
parts (BfVec3 axis, const Body *a, const Body *b)
{
  double low[2] = { G_MAXDOUBLE, G_MAXDOUBLE }, high[2] = { -G_MAXDOUBLE, -G_MAXDOUBLE };
  const GArray *corners[] = { a->corners, b->corners };

  for (guint k = 0; k < 2; k++)
    for (guint i = 0; i < corners[k]->len; i++)
      {
        double x = bf_vec3_dot (axis, g_array_index (corners[k], BfVec3, i));
        low[k] = MIN (low[k], x);
        high[k] = MAX (high[k], x);
      }
  return MIN (high[0] - low[1], high[1] - low[0]) <= BF_COLLISION_LEAST_MM;
}

/* Most neighbours are parted by a plane that either lies in. */
static gboolean
are_plainly_apart (const Body *a, const Body *b)
{
  const BfFrame *f = &a->solid->frame, *g = &b->solid->frame;

  return parts (f->ez, a, b) || parts (g->ez, a, b) || parts (f->ey, a, b) || parts (g->ey, a, b) ||
         parts (f->ex, a, b) || parts (g->ex, a, b);
}

static const GArray *
coarse_pieces (Search *search, Body *body)
{
  if (body->coarse != NULL)
    return body->coarse;
  body->coarse = g_array_new (FALSE, FALSE, sizeof (BfConvex));
  if (body->solid->kind == BF_SOLID_SLAB)
    bf_collide_slab_pieces (search->fold, body->solid, NULL, body->coarse);
  else
    bf_collide_sector_pieces (search->fold, body->solid, NULL,
                              (BfArcSlices){ BF_ARC_AROUND, COARSE_SAGITTA_MM }, body->coarse);
  return body->coarse;
}

/* What is there for certain: within the arcs, and without what is cut away. */
static const GArray *
fine_pieces (Search *search, Body *body)
{
  if (body->fine != NULL)
    return body->fine;
  if (search->tools == NULL)
    search->tools = bf_collide_tools (search->fold);
  body->fine = g_array_new (FALSE, FALSE, sizeof (BfConvex));
  if (body->solid->kind == BF_SOLID_SLAB)
    body->is_cut = bf_collide_slab_pieces (search->fold, body->solid, search->tools, body->fine);
  else
    body->is_cut =
        bf_collide_sector_pieces (search->fold, body->solid, search->tools,
                                  (BfArcSlices){ BF_ARC_WITHIN, FINE_SAGITTA_MM }, body->fine);
  return body->fine;
}

/* How deep the deepest pair of pieces goes, and where; BF_COLLISION_LEAST_MM for none. */
static double
deepest (const GArray *a, const GArray *b, BfVec3 *at)
{
  double worst = BF_COLLISION_LEAST_MM;

  for (guint i = 0; i < a->len; i++)
    for (guint j = 0; j < b->len; j++)
      {
        const BfConvex *x = &g_array_index (a, BfConvex, i), *y = &g_array_index (b, BfConvex, j);
        double depth = bf_convex_depth (x, y, worst);

        if (depth <= worst)
          continue;
        worst = depth;
        *at = bf_vec3 ((MAX (x->min.x, y->min.x) + MIN (x->max.x, y->max.x)) / 2.0,
                       (MAX (x->min.y, y->min.y) + MIN (x->max.y, y->max.y)) / 2.0,
                       (MAX (x->min.z, y->min.z) + MIN (x->max.z, y->max.z)) / 2.0);
      }
  return worst;
}

/* The point of the blank at which the solid comes nearest to a point of space. */
static BfVec2
blank_point (const BfSolid *solid, BfVec3 at)
{
  BfVec3 d = bf_vec3_sub (at, solid->frame.origin);
  double x = bf_vec3_dot (d, solid->frame.ex), y = bf_vec3_dot (d, solid->frame.ey);
  BfVec2 start, end;

  if (solid->kind == BF_SOLID_SLAB)
    return bf_vec2_along (bf_vec2_along (solid->flat_origin, solid->flat_ex, x), solid->flat_ey, y);
  start = bf_vec2_scale (bf_vec2_add (solid->zone[0], solid->zone[3]), 0.5);
  end = bf_vec2_scale (bf_vec2_add (solid->zone[1], solid->zone[2]), 0.5);
  return bf_vec2_along (end, bf_vec2_sub (start, end), CLAMP (x / solid->width_mm, 0.0, 1.0));
}

static void
report (Search *search, const Body *a, const Body *b, double depth_mm, BfVec3 at)
{
  const BfSolid *place = a->solid->face < b->solid->face ? b->solid : a->solid;
  BfCollision found = { MIN (a->solid->face, b->solid->face), MAX (a->solid->face, b->solid->face),
                        depth_mm, blank_point (place, at) };

  for (guint i = 0; i < search->collisions->len; i++)
    {
      BfCollision *known = &g_array_index (search->collisions, BfCollision, i);

      if (known->a != found.a || known->b != found.b)
        continue;
      if (known->depth_mm < depth_mm)
        *known = found;
      return;
    }
  g_array_append_val (search->collisions, found);
}

/* Thin slices go less deep than what they are slices of: where nothing is cut away the coarse
 * pieces give the depth, once the fine ones have proved it. */
static void
look_at_pair (Search *search, Body *a, Body *b)
{
  double coarse, fine;
  BfVec3 at;

  if (belong_together (a->solid, b->solid) || are_plainly_apart (a, b))
    return;
  coarse = deepest (coarse_pieces (search, a), coarse_pieces (search, b), &at);
  if (coarse <= BF_COLLISION_LEAST_MM)
    return;
  fine = deepest (fine_pieces (search, a), fine_pieces (search, b), &at);
  if (fine > BF_COLLISION_LEAST_MM)
    report (search, a, b, a->is_cut || b->is_cut ? fine : coarse, at);
}

/* Sorted by where they begin along x, each body is held against those that it reaches. */
static void
sweep (Search *search)
{
  for (guint i = 0; i < search->bodies->len; i++)
    {
      Body *a = &g_array_index (search->bodies, Body, i);

      for (guint j = i + 1; j < search->bodies->len; j++)
        {
          Body *b = &g_array_index (search->bodies, Body, j);

          if (b->min.x > a->max.x - BF_COLLISION_LEAST_MM)
            break;
          if (boxes_overlap (a, b))
            look_at_pair (search, a, b);
        }
    }
}

static int
compare_collisions (gconstpointer a, gconstpointer b)
{
  const BfCollision *x = a, *y = b;

  return x->a != y->a ? (int)x->a - (int)y->a : (int)x->b - (int)y->b;
}

void
bf_collisions_find (const BfFold *fold, GArray *collisions)
{
  Search search = { .fold = fold,
                    .bodies = g_array_new (FALSE, FALSE, sizeof (Body)),
                    .collisions = collisions };

  g_array_set_clear_func (search.bodies, clear_body);
  for (guint i = 0; i < fold->formed.solids->len; i++)
    add_body (&search, bf_formed_solid (&fold->formed, i));
  g_array_sort (search.bodies, compare_bodies);
  sweep (&search);
  g_array_sort (collisions, compare_collisions);
  g_array_unref (search.bodies);
  g_clear_pointer (&search.tools, g_array_unref);
}
