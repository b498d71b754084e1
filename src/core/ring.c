/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/ring.h"

#include "core/tolerance.h"

/* Below this bulge the closed form of a segment's area cancels; its series is good to 1e-16. */
#define SERIES_BULGE 0.003

/* No arc is cut into more chords than this, however small a sagitta is asked for. */
#define MOST_CHORDS 100000.0

BfRing *
bf_ring_new (void)
{
  BfRing *ring = g_new0 (BfRing, 1);

  ring->vertices = g_array_new (FALSE, FALSE, sizeof (BfVertex));
  return ring;
}

BfRing *
bf_ring_copy (const BfRing *ring)
{
  BfRing *copy;

  g_return_val_if_fail (ring != NULL, NULL);

  copy = g_new0 (BfRing, 1);
  copy->vertices = g_array_copy (ring->vertices);
  return copy;
}

void
bf_ring_free (BfRing *ring)
{
  if (ring == NULL)
    return;
  g_array_unref (ring->vertices);
  g_free (ring);
}

void
bf_ring_add (BfRing *ring, BfVec2 p, double bulge)
{
  BfVertex vertex = { p, bulge };

  g_return_if_fail (ring != NULL);

  g_array_append_val (ring->vertices, vertex);
}

gboolean
bf_ring_arc (const BfRing *ring, guint i, BfArc *arc)
{
  const BfVertex *a = bf_ring_vertex (ring, i);
  const BfVertex *b = bf_ring_vertex (ring, i + 1);
  BfVec2 chord = bf_vec2_sub (b->p, a->p);
  BfVec2 middle = bf_vec2_along (a->p, chord, 0.5);
  BfVec2 left = bf_vec2 (-chord.y, chord.x);
  double bulge = a->bulge;

  if (fabs (bulge) < BF_TOLERANCE_ZERO || bf_vec2_length (chord) < BF_TOLERANCE_ZERO)
    return FALSE;

  arc->centre = bf_vec2_along (middle, left, (1.0 - bulge * bulge) / (4.0 * bulge));
  arc->radius = bf_vec2_length (chord) * (1.0 + bulge * bulge) / (4.0 * fabs (bulge));
  arc->from = atan2 (a->p.y - arc->centre.y, a->p.x - arc->centre.x);
  arc->sweep = 4.0 * atan (bulge);
  return TRUE;
}

static BfVec2
arc_point (const BfArc *arc, double angle)
{
  return bf_vec2 (arc->centre.x + arc->radius * cos (angle),
                  arc->centre.y + arc->radius * sin (angle));
}

gboolean
bf_arcs_share_circle (const BfArc *a, const BfArc *b)
{
  return bf_vec2_distance (a->centre, b->centre) < BF_TOLERANCE_SIZE_MM &&
         fabs (a->radius - b->radius) < BF_TOLERANCE_SIZE_MM;
}

gboolean
bf_ring_is_circle (const BfRing *ring, BfVec2 *centre, double *radius)
{
  BfArc first, arc;
  double turned = 0.0;

  g_return_val_if_fail (ring != NULL, FALSE);

  if (bf_ring_size (ring) < 2 || !bf_ring_arc (ring, 0, &first))
    return FALSE;
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      if (!bf_ring_arc (ring, i, &arc) || !bf_arcs_share_circle (&arc, &first))
        return FALSE;
      turned += arc.sweep;
    }
  if (fabs (fabs (turned) - 2.0 * G_PI) > BF_TOLERANCE_SIZE_MM)
    return FALSE;

  if (centre != NULL)
    *centre = first.centre;
  if (radius != NULL)
    *radius = first.radius;
  return TRUE;
}

/* The segment between an arc and its chord, as a share of the chord's square; signed. */
static double
segment_share (double bulge)
{
  double b2 = bulge * bulge;

  if (fabs (bulge) < SERIES_BULGE)
    return bulge * (1.0 / 3.0 + b2 * (1.0 / 15.0 - b2 / 105.0));
  return ((1.0 + b2) * (1.0 + b2) * atan (bulge) - bulge * (1.0 - b2)) / (8.0 * b2);
}

double
bf_ring_area (const BfRing *ring)
{
  double area = 0.0;
  BfVec2 base;

  g_return_val_if_fail (ring != NULL, 0.0);

  if (bf_ring_size (ring) < 2)
    return 0.0;
  base = bf_ring_vertex (ring, 0)->p;
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      const BfVertex *a = bf_ring_vertex (ring, i);
      const BfVertex *b = bf_ring_vertex (ring, i + 1);
      BfVec2 chord = bf_vec2_sub (b->p, a->p);

      area += bf_vec2_cross (bf_vec2_sub (a->p, base), bf_vec2_sub (b->p, base)) / 2.0;
      area += segment_share (a->bulge) * bf_vec2_dot (chord, chord);
    }
  return area;
}

double
bf_ring_length (const BfRing *ring)
{
  double length = 0.0;

  g_return_val_if_fail (ring != NULL, 0.0);

  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      const BfVertex *a = bf_ring_vertex (ring, i);
      double chord = bf_vec2_distance (a->p, bf_ring_vertex (ring, i + 1)->p);
      double bulge = fabs (a->bulge);

      if (bulge >= BF_TOLERANCE_ZERO)
        chord *= (1.0 + bulge * bulge) * atan (bulge) / bulge;
      length += chord;
    }
  return length;
}

/* TRUE where the arc passes that angle, given as any turn of it. */
static gboolean
arc_passes (const BfArc *arc, double angle)
{
  double ahead = arc->sweep > 0.0 ? angle - arc->from : arc->from - angle;

  ahead = fmod (ahead, 2.0 * G_PI);
  if (ahead < 0.0)
    ahead += 2.0 * G_PI;
  return ahead <= fabs (arc->sweep);
}

void
bf_ring_extend_box (const BfRing *ring, BfBox *box)
{
  static const BfVec2 ways[] = { { 1, 0 }, { 0, 1 }, { -1, 0 }, { 0, -1 } };
  BfArc arc;

  g_return_if_fail (ring != NULL && box != NULL);

  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      bf_box_extend (box, bf_ring_vertex (ring, i)->p);
      if (!bf_ring_arc (ring, i, &arc))
        continue;
      for (guint k = 0; k < G_N_ELEMENTS (ways); k++)
        if (arc_passes (&arc, k * G_PI_2))
          bf_box_extend (box, bf_vec2_along (arc.centre, ways[k], arc.radius));
    }
}

/* A chord over an angle d strays radius·(1 − cos (d/2)) = 2·radius·sin² (d/4) from its arc. */
static guint
n_chords (const BfArc *arc, double sagitta_mm)
{
  double root = sqrt (MIN (sagitta_mm / (2.0 * arc->radius), 1.0));
  double step = MIN (4.0 * asin (root), G_PI_2);

  return (guint)CLAMP (ceil (fabs (arc->sweep) / step - 1e-9), 1.0, MOST_CHORDS);
}

void
bf_ring_flatten (const BfRing *ring, double sagitta_mm, GArray *points)
{
  BfArc arc;

  g_return_if_fail (ring != NULL && points != NULL);
  g_return_if_fail (sagitta_mm > 0.0);

  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      guint n;

      g_array_append_val (points, bf_ring_vertex (ring, i)->p);
      if (!bf_ring_arc (ring, i, &arc))
        continue;
      n = n_chords (&arc, sagitta_mm);
      for (guint k = 1; k < n; k++)
        {
          BfVec2 p = arc_point (&arc, arc.from + arc.sweep * k / n);
          g_array_append_val (points, p);
        }
    }
}

static gboolean
on_line (BfVec2 a, BfVec2 b, BfVec2 p)
{
  BfVec2 chord = bf_vec2_sub (b, a);
  double length2 = bf_vec2_dot (chord, chord);
  double along = length2 > 0.0 ? bf_vec2_dot (bf_vec2_sub (p, a), chord) / length2 : 0.0;

  return bf_vec2_distance (p, bf_vec2_along (a, chord, CLAMP (along, 0.0, 1.0))) <=
         BF_TOLERANCE_ZERO;
}

static gboolean
on_arc (const BfArc *arc, BfVec2 p)
{
  BfVec2 out = bf_vec2_sub (p, arc->centre);

  return fabs (bf_vec2_length (out) - arc->radius) <= BF_TOLERANCE_ZERO &&
         arc_passes (arc, atan2 (out.y, out.x));
}

/* +1 or −1 where a piece from a to b crosses the ray from p toward +x upward or downward; `right`
 * tells that the crossing lies on p's right. The upper end does not count, so that two pieces
 * that share a point are crossed once. */
static int
crossing (BfVec2 a, BfVec2 b, BfVec2 p, gboolean right)
{
  if (!right)
    return 0;
  if (a.y <= p.y && p.y < b.y)
    return 1;
  if (b.y <= p.y && p.y < a.y)
    return -1;
  return 0;
}

static int
line_crossing (BfVec2 a, BfVec2 b, BfVec2 p)
{
  double side = bf_vec2_cross (bf_vec2_sub (b, a), bf_vec2_sub (p, a));

  return crossing (a, b, p, b.y > a.y ? side > 0.0 : side < 0.0);
}

/* An arc is cut where it is highest and lowest; each piece then crosses a ray once at most. */
static int
arc_crossing (const BfArc *arc, BfVec2 a, BfVec2 b, BfVec2 p)
{
  double way = arc->sweep > 0.0 ? 1.0 : -1.0;
  double done = 0.0, total = fabs (arc->sweep), radius = arc->radius, off = p.y - arc->centre.y;
  double half = sqrt (MAX (radius * radius - off * off, 0.0));
  int count = 0;

  while (done < total)
    {
      double at = arc->from + way * done;
      double turns = at / G_PI - 0.5;
      double next = (way > 0.0 ? floor (turns + 1e-12) + 1.0 : ceil (turns - 1e-12) - 1.0);
      double step = fabs ((next + 0.5) * G_PI - at);
      gboolean last = done + step >= total;
      double mid = at + way * (last ? total - done : step) / 2.0;
      double top = fmod (fabs (next), 2.0) < 0.5 ? radius : -radius;
      BfVec2 to = last ? b : bf_vec2 (arc->centre.x, arc->centre.y + top);

      count += crossing (a, to, p, arc->centre.x + (cos (mid) > 0.0 ? half : -half) > p.x);
      a = to;
      done += step;
    }
  return count;
}

gboolean
bf_ring_contains (const BfRing *ring, BfVec2 p)
{
  int winding = 0;
  BfArc arc;

  g_return_val_if_fail (ring != NULL, FALSE);

  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      BfVec2 a = bf_ring_vertex (ring, i)->p;
      BfVec2 b = bf_ring_vertex (ring, i + 1)->p;
      gboolean curved = bf_ring_arc (ring, i, &arc);

      if (on_line (a, curved ? a : b, p) || (curved && on_arc (&arc, p)))
        return TRUE;
      winding += curved ? arc_crossing (&arc, a, b, p) : line_crossing (a, b, p);
    }
  return winding != 0;
}

/* The first vertex stays the first. */
void
bf_ring_reverse (BfRing *ring)
{
  g_autoptr (GArray) reversed = NULL;

  g_return_if_fail (ring != NULL);

  reversed = g_array_new (FALSE, FALSE, sizeof (BfVertex));
  for (guint n = bf_ring_size (ring), i = 0; i < n; i++)
    {
      BfVertex vertex = { bf_ring_vertex (ring, n - i)->p,
                          0.0 - bf_ring_vertex (ring, n - i - 1)->bulge };
      g_array_append_val (reversed, vertex);
    }
  g_array_unref (ring->vertices);
  ring->vertices = g_steal_pointer (&reversed);
}

void
bf_ring_make_counter_clockwise (BfRing *ring)
{
  if (bf_ring_area (ring) < 0.0)
    bf_ring_reverse (ring);
}

BfBox
bf_box_empty (void)
{
  return (BfBox){ { INFINITY, INFINITY }, { -INFINITY, -INFINITY } };
}

void
bf_box_extend (BfBox *box, BfVec2 p)
{
  g_return_if_fail (box != NULL);

  box->min = bf_vec2 (MIN (box->min.x, p.x), MIN (box->min.y, p.y));
  box->max = bf_vec2 (MAX (box->max.x, p.x), MAX (box->max.y, p.y));
}

double
bf_polygon_area (const BfVec2 *points, guint n_points)
{
  double area = 0.0;

  for (guint i = 1; i + 1 < n_points; i++)
    area +=
        bf_vec2_cross (bf_vec2_sub (points[i], points[0]), bf_vec2_sub (points[i + 1], points[0])) /
        2.0;
  return area;
}

BfVec2
bf_box_middle (const BfBox *box)
{
  return bf_vec2_scale (bf_vec2_add (box->min, box->max), 0.5);
}

gboolean
bf_box_contains (const BfBox *box, BfVec2 p)
{
  return p.x >= box->min.x && p.x <= box->max.x && p.y >= box->min.y && p.y <= box->max.y;
}
