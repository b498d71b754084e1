/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-overlap.h"

/* How far past their ends two lines may be and still be said to cross, as a share of them. */
#define CROSSING_SLACK 1e-7

typedef struct
{
  const BfFormedStack *stack;
  const BfFormedPiece *a, *b;
} Pair;

void
bf_formed_piece_range (const BfFormedStack *stack,
                       const BfFormedPiece *piece,
                       const BfFormedPiece *plane,
                       double *least,
                       double *greatest)
{
  double low = INFINITY, high = -INFINITY;

  for (guint i = 0; i < piece->points.size; i++)
    {
      BfVec3 p = bf_formed_point (stack, piece->points.first + i)->p;
      double distance = bf_vec3_dot (plane->normal, p) - plane->offset;

      low = MIN (low, distance);
      high = MAX (high, distance);
    }
  *least = low;
  *greatest = high;
}

static gboolean
boxes_meet (const BfFormedPiece *a, const BfFormedPiece *b)
{
  return a->min.x < b->max.x && b->min.x < a->max.x && a->min.y < b->max.y && b->min.y < a->max.y;
}

/* What the planes alone say: all of a piece on the far side of a plane cannot hide what lies in
 * that plane, and all of it on the near side cannot be hidden by it. Both bits set: neither can
 * hide the other. None: the planes do not tell. */
static guint
ask_planes (const Pair *pair)
{
  double a_least, a_greatest, b_least, b_greatest;
  guint may_come_first = 0;

  bf_formed_piece_range (pair->stack, pair->a, pair->b, &a_least, &a_greatest);
  bf_formed_piece_range (pair->stack, pair->b, pair->a, &b_least, &b_greatest);
  if (a_greatest <= BF_FORMED_PLANE_MM || b_least >= -BF_FORMED_PLANE_MM)
    may_come_first |= BF_FORMED_A_FIRST;
  if (b_greatest <= BF_FORMED_PLANE_MM || a_least >= -BF_FORMED_PLANE_MM)
    may_come_first |= BF_FORMED_B_FIRST;
  return may_come_first;
}

/* Whether every point of `other` lies outside the line through an edge; a convex piece runs
 * counter-clockwise, so that its outside is to the right. */
static gboolean
is_outside_edge (const Pair *pair, BfVec3 from, BfVec3 to, const BfFormedPiece *other)
{
  double length = hypot (to.x - from.x, to.y - from.y);
  double slack = length * BF_FORMED_PLANE_MM / 10.0;

  if (length < BF_FORMED_PLANE_MM)
    return FALSE;
  for (guint i = 0; i < other->points.size; i++)
    {
      BfVec3 p = bf_formed_point (pair->stack, other->points.first + i)->p;

      if ((to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x) > slack)
        return FALSE;
    }
  return TRUE;
}

static gboolean
edges_part_from (const Pair *pair, const BfFormedPiece *convex, const BfFormedPiece *other)
{
  const BfFormedSpan *ring = bf_formed_piece_ring (pair->stack, convex, 0);

  if (!convex->convex)
    return FALSE;
  for (guint i = 0; i < ring->size; i++)
    if (is_outside_edge (pair, bf_formed_ring_point (pair->stack, ring, i)->p,
                         bf_formed_ring_point (pair->stack, ring, i + 1)->p, other))
      return TRUE;
  return FALSE;
}

/* What the two say at a place where both are seen: 0 where they touch. The distance is measured
 * square to the plane that is seen more from its edge, where depth says little. */
static guint
ask_at (const Pair *pair, double x, double y)
{
  double nearer = bf_formed_piece_depth (pair->b, x, y) - bf_formed_piece_depth (pair->a, x, y);
  double apart = nearer * MIN (pair->a->normal.z, pair->b->normal.z);

  if (fabs (apart) <= BF_FORMED_PLANE_MM)
    return BF_FORMED_FREE;
  return apart > 0.0 ? BF_FORMED_A_FIRST : BF_FORMED_B_FIRST;
}

static guint
ask_where_lines_cross (const Pair *pair, const BfVec3 p[2], const BfVec3 q[2])
{
  double ux = p[1].x - p[0].x, uy = p[1].y - p[0].y;
  double vx = q[1].x - q[0].x, vy = q[1].y - q[0].y;
  double wx = q[0].x - p[0].x, wy = q[0].y - p[0].y;
  double cross = ux * vy - uy * vx;
  double s, t;

  if (fabs (cross) <= 1e-12 * (fabs (ux) + fabs (uy)) * (fabs (vx) + fabs (vy)))
    return BF_FORMED_FREE;
  s = (wx * vy - wy * vx) / cross;
  t = (wx * uy - wy * ux) / cross;
  if (s < -CROSSING_SLACK || s > 1.0 + CROSSING_SLACK)
    return BF_FORMED_FREE;
  if (t < -CROSSING_SLACK || t > 1.0 + CROSSING_SLACK)
    return BF_FORMED_FREE;
  return ask_at (pair, p[0].x + s * ux, p[0].y + s * uy);
}

static gboolean
line_meets_box (BfVec3 p, BfVec3 q, const BfFormedPiece *piece)
{
  return MIN (p.x, q.x) <= piece->max.x && MAX (p.x, q.x) >= piece->min.x &&
         MIN (p.y, q.y) <= piece->max.y && MAX (p.y, q.y) >= piece->min.y;
}

/* All edges of b against one of a's. */
static guint
ask_along_line (const Pair *pair, const BfVec3 p[2])
{
  guint said = 0;

  for (guint r = 0; r < pair->b->rings.size; r++)
    {
      const BfFormedSpan *ring = bf_formed_piece_ring (pair->stack, pair->b, r);

      for (guint i = 0; i < ring->size && said != BF_FORMED_CROSSED; i++)
        {
          const BfVec3 q[2] = { bf_formed_ring_point (pair->stack, ring, i)->p,
                                bf_formed_ring_point (pair->stack, ring, i + 1)->p };

          said |= ask_where_lines_cross (pair, p, q);
        }
    }
  return said;
}

static guint
ask_edges (const Pair *pair)
{
  guint said = 0;

  for (guint r = 0; r < pair->a->rings.size; r++)
    {
      const BfFormedSpan *ring = bf_formed_piece_ring (pair->stack, pair->a, r);

      for (guint i = 0; i < ring->size && said != BF_FORMED_CROSSED; i++)
        {
          const BfVec3 p[2] = { bf_formed_ring_point (pair->stack, ring, i)->p,
                                bf_formed_ring_point (pair->stack, ring, i + 1)->p };

          if (line_meets_box (p[0], p[1], pair->b))
            said |= ask_along_line (pair, p);
        }
    }
  return said;
}

static guint
ask_points (const Pair *pair, const BfFormedPiece *of, const BfFormedPiece *within)
{
  guint said = 0;

  for (guint i = 0; i < of->points.size && said != BF_FORMED_CROSSED; i++)
    {
      BfVec3 p = bf_formed_point (pair->stack, of->points.first + i)->p;

      if (bf_formed_piece_contains (pair->stack, within, p.x, p.y))
        said |= ask_at (pair, p.x, p.y);
    }
  return said;
}

/* The part of the picture that both cover is bounded by corners of the one within the other and
 * by crossings of edges. The difference in depth is linear, so that those places tell all. */
static guint
ask_overlap (const Pair *pair)
{
  guint said = ask_points (pair, pair->a, pair->b);

  said |= ask_points (pair, pair->b, pair->a);
  return said == BF_FORMED_CROSSED ? said : said | ask_edges (pair);
}

BfFormedPrecedence
bf_formed_compare (const BfFormedStack *stack, guint a, guint b)
{
  const Pair pair = { stack, bf_formed_piece (stack, a), bf_formed_piece (stack, b) };
  guint may_come_first;

  if (!boxes_meet (pair.a, pair.b))
    return BF_FORMED_FREE;
  may_come_first = ask_planes (&pair);
  if (may_come_first == (BF_FORMED_A_FIRST | BF_FORMED_B_FIRST))
    return BF_FORMED_FREE;
  if (edges_part_from (&pair, pair.a, pair.b) || edges_part_from (&pair, pair.b, pair.a))
    return BF_FORMED_FREE;
  if (may_come_first != 0 && pair.a->convex && pair.b->convex)
    return (BfFormedPrecedence)may_come_first;
  return (BfFormedPrecedence)ask_overlap (&pair);
}
