/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-order.h"
#include "paint/formed-tone.h"

/* How an edge is drawn: its share of the style's line width, and of the line's colour. */
typedef struct
{
  BfFormedLine line;
  double width, strength;
} Stroke;

static const Stroke strokes[] = {
  { BF_FORMED_LINE_SOFT, 0.5, 0.38 },
  { BF_FORMED_LINE_CRISP, 0.6, 0.85 },
  { BF_FORMED_LINE_CONTOUR, 1.0, 1.0 },
};

/* A run of the order that is all of one surface, and is filled in one go: so that no hairline of
 * what lies behind shows between its pieces. */
typedef struct
{
  const BfFormedStack *stack;
  const BfFormedStyle *style;
  cairo_t *cr;
  BfFormedSpan run;    /* of stack->order */
  const guint *places; /* by polygon: its place in order, from 1; 0 unseen or cut in several */
  gboolean *traced;    /* by point: the edge that leaves it has been traced */
} Brush;

/* Across a band no wider than this no gradient is seen, and one tone is painted far faster. */
#define FINEST_PX 2.0

/* Corners of two pieces this near are one. */
#define SAME_PLACE_MM 1e-4

static const BfFormedPiece *
run_piece (const Brush *brush, guint i)
{
  return bf_formed_piece (brush->stack,
                          g_array_index (brush->stack->order, guint, brush->run.first + i));
}

static void
trace_ring (const Brush *brush, const BfFormedSpan *ring)
{
  double scale = brush->style->scale;

  for (guint i = 0; i < ring->size; i++)
    {
      BfVec3 p = bf_formed_ring_point (brush->stack, ring, i)->p;

      if (i == 0)
        cairo_move_to (brush->cr, p.x * scale, -p.y * scale);
      else
        cairo_line_to (brush->cr, p.x * scale, -p.y * scale);
    }
  cairo_close_path (brush->cr);
}

/* A corner of a ring of a piece of the run. */
typedef struct
{
  const BfFormedPiece *piece;
  const BfFormedSpan *ring;
  guint k;
} Corner;

static const BfFormedPoint *
corner_point (const Brush *brush, Corner at)
{
  return bf_formed_ring_point (brush->stack, at.ring, at.k);
}

/* The piece of the run on the other side of the edge that leaves the corner; NULL where there is
 * none, or where one of the two is not whole. */
static const BfFormedPiece *
piece_beyond (const Brush *brush, Corner at)
{
  const BfFormedPoint *point = corner_point (brush, at);
  guint place = point->neighbour >= 0 ? brush->places[point->neighbour] : 0;

  if (point->line != BF_FORMED_LINE_NONE || brush->places[at.piece->polygon] == 0)
    return NULL;
  if (place <= brush->run.first || place > brush->run.first + brush->run.size)
    return NULL;
  return run_piece (brush, place - 1 - brush->run.first);
}

/* Goes over into the piece beyond: to the corner that is in the same place. */
static gboolean
cross (const Brush *brush, const BfFormedPiece *beyond, Corner *at)
{
  BfVec3 p = corner_point (brush, *at)->p;

  for (guint r = 0; r < beyond->rings.size; r++)
    {
      Corner mate = { beyond, bf_formed_piece_ring (brush->stack, beyond, r), 0 };

      for (mate.k = 0; mate.k < mate.ring->size; mate.k++)
        {
          Corner end = { beyond, mate.ring, mate.k + 1 };

          if (piece_beyond (brush, mate) != at->piece ||
              bf_vec3_length (bf_vec3_sub (corner_point (brush, end)->p, p)) > SAME_PLACE_MM)
            continue;
          *at = end;
          return TRUE;
        }
    }
  return FALSE;
}

/* The corner that follows round the run; pieces that meet there are crossed. */
static Corner
next_round (const Brush *brush, Corner at)
{
  const BfFormedPiece *beyond;

  at.k++;
  for (guint i = 0; i < brush->run.size && (beyond = piece_beyond (brush, at)) != NULL; i++)
    if (!cross (brush, beyond, &at))
      break;
  return at;
}

/* Traces what lies round the run from a corner on, unless that has been done. */
static void
trace_round (const Brush *brush, Corner at)
{
  double scale = brush->style->scale;

  if (piece_beyond (brush, at) != NULL)
    return;
  cairo_new_sub_path (brush->cr);
  for (;; at = next_round (brush, at))
    {
      gboolean *traced = &brush->traced[at.ring->first + at.k % at.ring->size];
      BfVec3 p = corner_point (brush, at)->p;

      if (*traced)
        break;
      *traced = TRUE;
      cairo_line_to (brush->cr, p.x * scale, -p.y * scale);
    }
  if (cairo_has_current_point (brush->cr))
    cairo_close_path (brush->cr);
}

/* Lines between the run's pieces are left out: the strips of a long bend are all edge, and nothing
 * of them is seen. */
static void
fill_run (const Brush *brush)
{
  for (guint i = 0; i < brush->run.size; i++)
    for (guint r = 0; r < run_piece (brush, i)->rings.size; r++)
      {
        Corner at = { run_piece (brush, i),
                      bf_formed_piece_ring (brush->stack, run_piece (brush, i), r), 0 };

        for (at.k = 0; at.k < at.ring->size; at.k++)
          trace_round (brush, at);
      }
  cairo_fill (brush->cr);
}

/* An edge of two polygons that are both seen is drawn with the one that is painted later. */
static gboolean
is_drawn (const Brush *brush, const BfFormedPoint *point, BfFormedLine line)
{
  if (point->line != line)
    return FALSE;
  if (line == BF_FORMED_LINE_NONE || point->neighbour < 0)
    return TRUE;
  return brush->places[point->neighbour] <= brush->run.first + brush->run.size;
}

/* The first edge to draw after one that is not; the ring's size where there is no such place. */
static guint
find_start (const Brush *brush, const BfFormedSpan *ring, BfFormedLine line)
{
  for (guint i = 0; i < ring->size; i++)
    if (is_drawn (brush, bf_formed_ring_point (brush->stack, ring, i), line) &&
        !is_drawn (brush, bf_formed_ring_point (brush->stack, ring, i + ring->size - 1), line))
      return i;
  return ring->size;
}

/* The edges of that kind of a ring, joined where they follow one another. */
static void
trace_edges (const Brush *brush, const BfFormedSpan *ring, BfFormedLine line)
{
  guint start = find_start (brush, ring, line);
  gboolean pen_down = FALSE;

  if (start == ring->size)
    {
      if (is_drawn (brush, bf_formed_ring_point (brush->stack, ring, 0), line))
        trace_ring (brush, ring);
      return;
    }
  for (guint i = start; i < start + ring->size; i++)
    {
      const BfFormedPoint *from = bf_formed_ring_point (brush->stack, ring, i);
      BfVec3 to = bf_formed_ring_point (brush->stack, ring, i + 1)->p;
      double scale = brush->style->scale;

      gboolean drawn = is_drawn (brush, from, line);

      if (drawn && !pen_down)
        cairo_move_to (brush->cr, from->p.x * scale, -from->p.y * scale);
      pen_down = drawn;
      if (drawn)
        cairo_line_to (brush->cr, to.x * scale, -to.y * scale);
    }
}

static void
trace_run_edges (const Brush *brush, BfFormedLine line)
{
  for (guint i = 0; i < brush->run.size; i++)
    for (guint r = 0; r < run_piece (brush, i)->rings.size; r++)
      trace_edges (brush, bf_formed_piece_ring (brush->stack, run_piece (brush, i), r), line);
}

static void
stroke_run (const Brush *brush, const Stroke *stroke)
{
  BfFormedColour colour = bf_formed_line_colour (brush->style, stroke->strength);

  trace_run_edges (brush, stroke->line);
  if (!cairo_has_current_point (brush->cr))
    return;
  cairo_set_source_rgb (brush->cr, colour.red, colour.green, colour.blue);
  cairo_set_line_width (brush->cr, brush->style->line_width * stroke->width);
  cairo_stroke (brush->cr);
}

/* A number of pixels, in cr's units. */
static double
pixels (const Brush *brush, double n)
{
  double x = n, y = 0.0;

  cairo_device_to_user_distance (brush->cr, &x, &y);
  return hypot (x, y);
}

/* As wide as a line, or a pixel and a half where no lines are drawn: at that width what is left of
 * a hairline is less than can be seen. */
static double
seam_width (const Brush *brush)
{
  return brush->style->line_width > 0.0 ? brush->style->line_width : pixels (brush, 1.5);
}

/* Goes over in the run's own tone what would else show as a hairline: where it runs into another
 * surface without a line, and, if the surface could not be painted in one go, its inner edges.
 * Bridges of a piece that is not convex lie in the open and are left alone. */
static void
close_seams (const Brush *brush, gboolean whole)
{
  gboolean lined = brush->style->line_width > 0.0;

  for (BfFormedLine line = BF_FORMED_LINE_SEAM; line <= BF_FORMED_LINE_CRISP; line++)
    if (line == BF_FORMED_LINE_SEAM || !lined)
      trace_run_edges (brush, line);
  for (guint i = 0; !whole && i < brush->run.size; i++)
    if (run_piece (brush, i)->convex)
      trace_edges (brush, bf_formed_piece_ring (brush->stack, run_piece (brush, i), 0),
                   BF_FORMED_LINE_NONE);
  if (!cairo_has_current_point (brush->cr))
    return;
  cairo_set_line_width (brush->cr, seam_width (brush));
  cairo_set_line_cap (brush->cr, CAIRO_LINE_CAP_BUTT);
  cairo_stroke (brush->cr);
  cairo_set_line_cap (brush->cr, CAIRO_LINE_CAP_ROUND);
}

static void
paint_run (const Brush *brush, const BfFrame *eye, gboolean whole)
{
  guint first = g_array_index (brush->stack->order, guint, brush->run.first);
  cairo_pattern_t *pattern =
      bf_formed_surface_pattern (brush->stack, first, brush->style, eye, pixels (brush, FINEST_PX));

  cairo_set_source (brush->cr, pattern);
  fill_run (brush);
  close_seams (brush, whole);
  cairo_pattern_destroy (pattern);
  for (guint i = 0; brush->style->line_width > 0.0 && i < G_N_ELEMENTS (strokes); i++)
    stroke_run (brush, &strokes[i]);
}

static guint
surface_at (const BfFormedStack *stack, guint i)
{
  return bf_formed_piece_surface (stack, g_array_index (stack->order, guint, i));
}

static guint
run_length (const BfFormedStack *stack, guint first)
{
  guint end = first + 1;

  while (end < stack->order->len && surface_at (stack, end) == surface_at (stack, first))
    end++;
  return end - first;
}

static guint *
find_places (const BfFormedStack *stack)
{
  guint n = stack->scene->polygons->len;
  g_autofree guint8 *times = g_new0 (guint8, n + 1);
  guint *places = g_new0 (guint, n + 1);

  for (guint i = 0; i < stack->order->len; i++)
    {
      guint polygon = bf_formed_piece (stack, g_array_index (stack->order, guint, i))->polygon;

      places[polygon] = times[polygon] == 0 ? i + 1 : 0;
      times[polygon] = 1;
    }
  return places;
}

/* By surface: how many pieces it is painted in. */
static guint *
count_pieces (const BfFormedStack *stack)
{
  guint *counts = g_new0 (guint, bf_formed_n_surfaces (stack) + 1);

  for (guint i = 0; i < stack->order->len; i++)
    counts[surface_at (stack, i)]++;
  return counts;
}

void
bf_formed_view_paint (const BfFormedView *view, cairo_t *cr, const BfFormedStyle *style)
{
  g_autofree guint *counts = NULL;
  g_autofree guint *places = NULL;
  g_autofree gboolean *traced = NULL;
  BfFrame eye;
  Brush brush;

  g_return_if_fail (view != NULL && cr != NULL && style != NULL);

  eye = bf_formed_view_eye (view);
  places = find_places (bf_formed_view_stack (view));
  traced = g_new0 (gboolean, bf_formed_view_stack (view)->points->len + 1);
  brush = (Brush){ bf_formed_view_stack (view), style, cr, { 0, 0 }, places, traced };
  counts = count_pieces (brush.stack);
  cairo_save (cr);
  cairo_new_path (cr);
  cairo_set_dash (cr, NULL, 0, 0.0);
  cairo_set_fill_rule (cr, CAIRO_FILL_RULE_WINDING);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_ROUND);
  for (guint i = 0; i < brush.stack->order->len; i += brush.run.size)
    {
      brush.run = (BfFormedSpan){ i, run_length (brush.stack, i) };
      paint_run (&brush, &eye, counts[surface_at (brush.stack, i)] == brush.run.size);
    }
  cairo_restore (cr);
}
