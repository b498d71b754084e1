/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-stack.h"

BfFrame
bf_formed_eye (double azimuth_rad, double elevation_rad)
{
  double ca = cos (azimuth_rad), sa = sin (azimuth_rad);
  double ce = cos (elevation_rad), se = sin (elevation_rad);

  return (BfFrame){
    { 0.0, 0.0, 0.0 }, { -sa, ca, 0.0 }, { -se * ca, -se * sa, ce }, { ce * ca, ce * sa, se }
  };
}

static BfVec3
turned (const BfFrame *eye, BfVec3 p)
{
  return bf_vec3 (bf_vec3_dot (p, eye->ex), bf_vec3_dot (p, eye->ey), bf_vec3_dot (p, eye->ez));
}

/* Where what lies beyond an edge faces away, the metal ends there for the eye, however smooth. */
static BfFormedLine
line_of (const BfFormedScene *scene, const BfFormedVertex *vertex, int band, const BfFrame *eye)
{
  if (bf_vec3_dot (vertex->beyond, eye->ez) <= BF_FORMED_EDGE_ON)
    return BF_FORMED_LINE_CONTOUR;
  switch (vertex->edge)
    {
    case BF_FORMED_EDGE_SMOOTH:
      if (band >= 0 && bf_formed_polygon (scene, (guint)vertex->neighbour)->band == band)
        return BF_FORMED_LINE_NONE;
      return BF_FORMED_LINE_SEAM;
    case BF_FORMED_EDGE_TANGENT:
      return BF_FORMED_LINE_SOFT;
    case BF_FORMED_EDGE_CRISP:
      return BF_FORMED_LINE_CRISP;
    default:
      g_return_val_if_reached (BF_FORMED_LINE_NONE);
    }
}

static BfFormedPiece *
last_piece (BfFormedStack *stack)
{
  return &g_array_index (stack->pieces, BfFormedPiece, stack->pieces->len - 1);
}

void
bf_formed_stack_begin (BfFormedStack *stack, const BfFormedPiece *like)
{
  BfFormedPiece piece = *like;

  piece.rings = (BfFormedSpan){ stack->rings->len, 0 };
  piece.points = (BfFormedSpan){ stack->points->len, 0 };
  g_array_append_val (stack->pieces, piece);
}

void
bf_formed_stack_add_ring (BfFormedStack *stack, const BfFormedPoint *points, guint n_points)
{
  BfFormedSpan ring = { stack->points->len, n_points };

  if (n_points < 3)
    return;
  g_array_append_vals (stack->points, points, n_points);
  g_array_append_val (stack->rings, ring);
  last_piece (stack)->rings.size++;
  last_piece (stack)->points.size += n_points;
}

int
bf_formed_stack_end (BfFormedStack *stack)
{
  BfFormedPiece *piece = last_piece (stack);

  if (piece->rings.size == 0)
    {
      g_array_set_size (stack->pieces, stack->pieces->len - 1);
      return -1;
    }
  piece->min = piece->max = bf_formed_point (stack, piece->points.first)->p;
  for (guint i = 1; i < piece->points.size; i++)
    {
      BfVec3 p = bf_formed_point (stack, piece->points.first + i)->p;

      piece->min =
          bf_vec3 (MIN (piece->min.x, p.x), MIN (piece->min.y, p.y), MIN (piece->min.z, p.z));
      piece->max =
          bf_vec3 (MAX (piece->max.x, p.x), MAX (piece->max.y, p.y), MAX (piece->max.z, p.z));
    }
  return (int)stack->pieces->len - 1;
}

static void
add_ring_seen (BfFormedStack *stack, const BfFormedSpan *ring, const BfFrame *eye, GArray *scratch)
{
  int band = bf_formed_polygon (stack->scene, last_piece (stack)->polygon)->band;

  g_array_set_size (scratch, 0);
  for (guint i = 0; i < ring->size; i++)
    {
      const BfFormedVertex *vertex = bf_formed_vertex (stack->scene, ring->first + i);
      BfFormedPoint point = { turned (eye, vertex->p), line_of (stack->scene, vertex, band, eye),
                              vertex->neighbour };

      g_array_append_val (scratch, point);
    }
  bf_formed_stack_add_ring (stack, (const BfFormedPoint *)(gpointer)scratch->data, scratch->len);
}

static void
add_polygon_seen (BfFormedStack *stack, guint index, const BfFrame *eye, GArray *scratch)
{
  const BfFormedPolygon *polygon = bf_formed_polygon (stack->scene, index);
  const BfFormedSpan *outer = bf_formed_ring (stack->scene, polygon->rings.first);
  BfVec3 on_plane = bf_formed_vertex (stack->scene, outer->first)->p;
  BfFormedPiece like = { 0 };

  like.polygon = index;
  like.convex = polygon->convex;
  like.normal = turned (eye, polygon->normal);
  like.offset = bf_vec3_dot (polygon->normal, on_plane);
  if (like.normal.z <= BF_FORMED_EDGE_ON)
    return;
  bf_formed_stack_begin (stack, &like);
  for (guint i = 0; i < polygon->rings.size; i++)
    add_ring_seen (stack, bf_formed_ring (stack->scene, polygon->rings.first + i), eye, scratch);
  bf_formed_stack_end (stack);
}

BfFormedStack *
bf_formed_stack_new (const BfFormedScene *scene, const BfFrame *eye)
{
  g_autoptr (GArray) scratch = g_array_new (FALSE, FALSE, sizeof (BfFormedPoint));
  BfFormedStack *stack;

  g_return_val_if_fail (scene != NULL && eye != NULL, NULL);

  stack = g_new0 (BfFormedStack, 1);
  stack->scene = scene;
  stack->pieces = g_array_new (FALSE, FALSE, sizeof (BfFormedPiece));
  stack->rings = g_array_new (FALSE, FALSE, sizeof (BfFormedSpan));
  stack->points = g_array_new (FALSE, FALSE, sizeof (BfFormedPoint));
  stack->order = g_array_new (FALSE, FALSE, sizeof (guint));
  for (guint i = 0; i < scene->polygons->len; i++)
    add_polygon_seen (stack, i, eye, scratch);
  return stack;
}

void
bf_formed_stack_free (BfFormedStack *stack)
{
  if (stack == NULL)
    return;
  g_array_unref (stack->pieces);
  g_array_unref (stack->rings);
  g_array_unref (stack->points);
  g_array_unref (stack->order);
  g_free (stack);
}

/* Whether a ray to the right from (x, y) crosses the ring an odd number of times. */
static gboolean
ring_is_round (const BfFormedStack *stack, const BfFormedSpan *ring, double x, double y)
{
  gboolean inside = FALSE;

  for (guint i = 0; i < ring->size; i++)
    {
      BfVec3 a = bf_formed_ring_point (stack, ring, i)->p;
      BfVec3 b = bf_formed_ring_point (stack, ring, i + 1)->p;

      if ((a.y > y) != (b.y > y) && x < a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y))
        inside = !inside;
    }
  return inside;
}

gboolean
bf_formed_piece_contains (const BfFormedStack *stack,
                          const BfFormedPiece *piece,
                          double x,
                          double y)
{
  gboolean inside = FALSE;

  if (x < piece->min.x || x > piece->max.x || y < piece->min.y || y > piece->max.y)
    return FALSE;
  for (guint i = 0; i < piece->rings.size; i++)
    inside ^= ring_is_round (stack, bf_formed_piece_ring (stack, piece, i), x, y);
  return inside;
}
