/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/edge-distance.h"

#include "core/tolerance.h"

/* The nearest two points so far, one on either edge. */
typedef struct
{
  double square;
  BfVec2 on[2];
} Pair;

/* ---- one edge ----------------------------------------------------------------------------- */

/* TRUE where a point of the arc's circle is on the arc: to the chord's right for an arc that turns
 * counter-clockwise. */
static gboolean
on_arc (const BfEdge *arc, BfVec2 p)
{
  double side = bf_vec2_cross (bf_vec2_sub (arc->to, arc->from), bf_vec2_sub (p, arc->from));

  return arc->bulge > 0.0 ? side <= 0.0 : side >= 0.0;
}

BfEdge
bf_edge_of (const BfRing *ring, guint i)
{
  static const BfVec2 ways[] = { { 1, 0 }, { 0, 1 }, { -1, 0 }, { 0, -1 } };
  BfEdge edge = { .from = bf_ring_vertex (ring, i)->p,
                  .to = bf_ring_vertex (ring, i + 1)->p,
                  .bulge = bf_ring_vertex (ring, i)->bulge,
                  .box = bf_box_empty () };
  BfArc arc;

  bf_box_extend (&edge.box, edge.from);
  bf_box_extend (&edge.box, edge.to);
  edge.curved = bf_ring_arc (ring, i, &arc);
  if (!edge.curved)
    return edge;
  edge.centre = arc.centre;
  edge.radius = arc.radius;
  for (guint k = 0; k < G_N_ELEMENTS (ways); k++)
    {
      BfVec2 p = bf_vec2_along (arc.centre, ways[k], arc.radius);
      if (on_arc (&edge, p))
        bf_box_extend (&edge.box, p);
    }
  return edge;
}

static double
square_between (BfVec2 a, BfVec2 b)
{
  BfVec2 way = bf_vec2_sub (b, a);

  return bf_vec2_dot (way, way);
}

static BfVec2
nearest_of_line (const BfEdge *line, BfVec2 p)
{
  BfVec2 along = bf_vec2_sub (line->to, line->from);
  double square = bf_vec2_dot (along, along);
  double way = square > 0.0 ? bf_vec2_dot (bf_vec2_sub (p, line->from), along) / square : 0.0;

  return bf_vec2_along (line->from, along, CLAMP (way, 0.0, 1.0));
}

BfVec2
bf_edge_nearest (const BfEdge *edge, BfVec2 p)
{
  double away;

  if (!edge->curved)
    return nearest_of_line (edge, p);
  away = sqrt (square_between (edge->centre, p));
  if (away > BF_TOLERANCE_ZERO)
    {
      BfVec2 q = bf_vec2_along (edge->centre, bf_vec2_sub (p, edge->centre), edge->radius / away);
      if (on_arc (edge, q))
        return q;
    }
  return square_between (edge->from, p) <= square_between (edge->to, p) ? edge->from : edge->to;
}

/* ---- two edges ---------------------------------------------------------------------------- */

static void
keep (Pair *pair, BfVec2 on_a, BfVec2 on_b)
{
  double square = square_between (on_a, on_b);

  if (square < pair->square)
    *pair = (Pair){ square, { on_a, on_b } };
}

static void
keep_ends (Pair *pair, const BfEdge *a, const BfEdge *b)
{
  keep (pair, a->from, bf_edge_nearest (b, a->from));
  keep (pair, a->to, bf_edge_nearest (b, a->to));
  keep (pair, bf_edge_nearest (a, b->from), b->from);
  keep (pair, bf_edge_nearest (a, b->to), b->to);
}

static double
side_of (const BfEdge *line, BfVec2 p)
{
  return bf_vec2_cross (bf_vec2_sub (line->to, line->from), bf_vec2_sub (p, line->from));
}

static void
lines (Pair *pair, const BfEdge *a, const BfEdge *b)
{
  double from = side_of (b, a->from), to = side_of (b, a->to);
  BfVec2 crossing;

  if (from * to >= 0.0 || side_of (a, b->from) * side_of (a, b->to) >= 0.0)
    return;
  crossing = bf_vec2_along (a->from, bf_vec2_sub (a->to, a->from), from / (from - to));
  keep (pair, crossing, crossing);
}

/* Besides the ends: the line's foot below the arc's centre, and where it cuts the circle. */
static void
line_and_arc (Pair *pair, const BfEdge *line, const BfEdge *arc)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (line->to, line->from));
  double way = bf_vec2_dot (bf_vec2_sub (arc->centre, line->from), along);
  BfVec2 foot = bf_vec2_along (line->from, along, way);
  double half2 = arc->radius * arc->radius - square_between (foot, arc->centre);
  BfVec2 near = nearest_of_line (line, arc->centre);

  keep (pair, near, bf_edge_nearest (arc, near));
  for (int turn = -1; half2 > 0.0 && turn <= 1; turn += 2)
    {
      BfVec2 p = bf_vec2_along (foot, along, turn * sqrt (half2));
      near = nearest_of_line (line, p);
      keep (pair, near, bf_edge_nearest (arc, near));
    }
}

/* Besides the ends: the points of a on the line through both centres, and where the circles cut
 * each other. */
static void
arcs (Pair *pair, const BfEdge *a, const BfEdge *b)
{
  BfVec2 across = bf_vec2_sub (b->centre, a->centre), unit = bf_vec2_unit (across);
  double apart = bf_vec2_length (across);
  BfVec2 left = { -unit.y, unit.x };
  double way, half2;

  if (apart < BF_TOLERANCE_ZERO)
    return;
  way = (apart * apart + a->radius * a->radius - b->radius * b->radius) / (2.0 * apart);
  half2 = a->radius * a->radius - way * way;
  for (int turn = -1; turn <= 1; turn += 2)
    {
      BfVec2 p = bf_vec2_along (a->centre, unit, turn * a->radius);
      if (on_arc (a, p))
        keep (pair, p, bf_edge_nearest (b, p));
      p = bf_vec2_along (bf_vec2_along (a->centre, unit, way), left,
                         turn * sqrt (MAX (half2, 0.0)));
      if (half2 > 0.0 && on_arc (a, p))
        keep (pair, p, bf_edge_nearest (b, p));
    }
}

double
bf_edge_distance (const BfEdge *a, const BfEdge *b, BfVec2 *place)
{
  gboolean swap = a->curved && !b->curved;
  const BfEdge *first = swap ? b : a, *second = swap ? a : b;
  Pair pair = { INFINITY, { { 0, 0 }, { 0, 0 } } };

  keep_ends (&pair, first, second);
  if (first->curved)
    arcs (&pair, first, second);
  else if (second->curved)
    line_and_arc (&pair, first, second);
  else
    lines (&pair, first, second);
  *place = pair.on[swap ? 1 : 0];
  return sqrt (pair.square);
}

double
bf_box_gap (const BfBox *a, const BfBox *b)
{
  double x = MAX (a->min.x - b->max.x, b->min.x - a->max.x);
  double y = MAX (a->min.y - b->max.y, b->min.y - a->max.y);

  return MAX (MAX (x, y), 0.0);
}
