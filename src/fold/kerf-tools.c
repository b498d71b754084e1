/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/kerf-tools.h"

#include "core/tolerance.h"

/* How far strips reach across the ring: more than an overlay's chords stray from an arc. */
#define ACROSS_MM 0.05

/* A corner's tip may lie this many half kerfs from the corner; cos of half the turn, reversed. */
#define LONGEST_TIP 2.0

/* Two edges whose directions differ by no more than this run on into each other. */
#define SMOOTH_SIN 1e-6

typedef struct
{
  const BfRing *ring;
  double half_mm;
  GPtrArray *tools;
} Kerf;

static gboolean
is_arc (const BfRing *ring, guint i)
{
  BfArc arc;

  return bf_ring_arc (ring, i, &arc);
}

/* The way that edge i runs at its beginning or its end; unit. */
static BfVec2
direction (const BfRing *ring, guint i, gboolean at_end)
{
  BfVec2 from = bf_ring_vertex (ring, i)->p, to = bf_ring_vertex (ring, i + 1)->p, radius;
  BfArc arc;

  if (!bf_ring_arc (ring, i, &arc))
    return bf_vec2_unit (bf_vec2_sub (to, from));
  radius = bf_vec2_unit (bf_vec2_sub (at_end ? to : from, arc.centre));
  return arc.sweep > 0.0 ? bf_vec2 (-radius.y, radius.x) : bf_vec2 (radius.y, -radius.x);
}

static BfVec2
right_of (BfVec2 p, BfVec2 along, double distance_mm)
{
  return bf_vec2_along (p, bf_vec2 (along.y, -along.x), distance_mm);
}

static gboolean
is_smooth (const BfRing *ring, guint i)
{
  BfVec2 in = direction (ring, i + bf_ring_size (ring) - 1, TRUE);
  BfVec2 out = direction (ring, i, FALSE);

  return fabs (bf_vec2_cross (in, out)) < SMOOTH_SIN && bf_vec2_dot (in, out) > 0.0;
}

/* The bulge of edge i moved to its right; an arc that its centre lies nearer to ends there. */
static double
moved_bulge (const BfRing *ring, guint i, double distance_mm)
{
  BfArc arc;

  if (!bf_ring_arc (ring, i, &arc))
    return 0.0;
  return arc.sweep < 0.0 && arc.radius <= distance_mm ? 0.0 : bf_ring_vertex (ring, i)->bulge;
}

/* An end of edge i moved to its right; no further than to an arc's centre. */
static BfVec2
moved_end (const BfRing *ring, guint i, gboolean at_end, double distance_mm)
{
  BfVec2 p = bf_ring_vertex (ring, at_end ? i + 1 : i)->p;
  BfArc arc;

  if (bf_ring_arc (ring, i, &arc) && arc.sweep < 0.0 && arc.radius <= distance_mm)
    return arc.centre;
  return right_of (p, direction (ring, i, at_end), distance_mm);
}

/* The ground between edges first to last, which run on into each other, and the same edges moved.
 */
static void
add_strip (const Kerf *kerf, guint first, guint last)
{
  const BfRing *ring = kerf->ring;
  BfRing *strip = bf_ring_new ();

  for (guint i = first; i <= last; i++)
    bf_ring_add (strip, moved_end (ring, i, FALSE, kerf->half_mm),
                 moved_bulge (ring, i, kerf->half_mm));
  bf_ring_add (strip, moved_end (ring, last, TRUE, kerf->half_mm), 0.0);
  for (guint i = last + 1; i-- > first;)
    bf_ring_add (strip, moved_end (ring, i, TRUE, -ACROSS_MM), -bf_ring_vertex (ring, i)->bulge);
  bf_ring_add (strip, moved_end (ring, first, FALSE, -ACROSS_MM), 0.0);
  bf_ring_make_counter_clockwise (strip);
  g_ptr_array_add (kerf->tools, strip);
}

static void
add_disc (const Kerf *kerf, BfVec2 centre, double radius_mm)
{
  BfRing *disc = bf_ring_new ();

  bf_ring_add (disc, bf_vec2 (centre.x - radius_mm, centre.y), 1.0);
  bf_ring_add (disc, bf_vec2 (centre.x + radius_mm, centre.y), 1.0);
  g_ptr_array_add (kerf->tools, disc);
}

/* What lies between two straight edges carried on to where they meet. */
static void
add_tip (const Kerf *kerf, BfVec2 corner, BfVec2 in, BfVec2 out)
{
  BfVec2 from = right_of (corner, in, kerf->half_mm), to = right_of (corner, out, kerf->half_mm);
  double reach = bf_vec2_cross (bf_vec2_sub (to, from), out) / bf_vec2_cross (in, out);
  BfVec2 inside = bf_vec2_unit (bf_vec2_sub (out, in));
  BfRing *tip = bf_ring_new ();

  bf_ring_add (tip, bf_vec2_along (corner, inside, ACROSS_MM / 2.0), 0.0);
  bf_ring_add (tip, bf_vec2_along (from, in, -ACROSS_MM / 2.0), 0.0);
  bf_ring_add (tip, bf_vec2_along (from, in, reach), 0.0);
  bf_ring_add (tip, bf_vec2_along (to, out, ACROSS_MM / 2.0), 0.0);
  bf_ring_make_counter_clockwise (tip);
  g_ptr_array_add (kerf->tools, tip);
}

/* Corners that point to the left need nothing: the strips on either side overlap there. */
static void
add_corner (const Kerf *kerf, guint i)
{
  const BfRing *ring = kerf->ring;
  guint before = i + bf_ring_size (ring) - 1;
  BfVec2 in = direction (ring, before, TRUE), out = direction (ring, i, FALSE);
  double half_turn_cos = sqrt (MAX (0.0, (1.0 + bf_vec2_dot (in, out)) / 2.0));
  gboolean is_straight = !is_arc (ring, before) && !is_arc (ring, i);

  if (bf_vec2_cross (in, out) <= 0.0 && half_turn_cos > BF_TOLERANCE_SIZE_MM)
    return;
  if (is_straight && half_turn_cos * LONGEST_TIP >= 1.0 - BF_TOLERANCE_ZERO)
    add_tip (kerf, bf_ring_vertex (ring, i)->p, in, out);
  else
    add_disc (kerf, bf_ring_vertex (ring, i)->p, kerf->half_mm);
}

static guint
count_corners (const BfRing *ring)
{
  guint n = 0;

  for (guint i = 0; i < bf_ring_size (ring); i++)
    n += is_smooth (ring, i) ? 0 : 1;
  return n;
}

/* A cover over the seam of two strips that meet at p within a straight edge. */
static void
add_cover (const Kerf *kerf, BfVec2 p, BfVec2 along)
{
  BfVec2 from = bf_vec2_along (p, along, -ACROSS_MM), to = bf_vec2_along (p, along, ACROSS_MM);
  BfRing *cover = bf_ring_new ();

  bf_ring_add (cover, right_of (from, along, kerf->half_mm), 0.0);
  bf_ring_add (cover, right_of (to, along, kerf->half_mm), 0.0);
  bf_ring_add (cover, right_of (to, along, -ACROSS_MM), 0.0);
  bf_ring_add (cover, right_of (from, along, -ACROSS_MM), 0.0);
  bf_ring_make_counter_clockwise (cover);
  g_ptr_array_add (kerf->tools, cover);
}

/* The longest straight edge, or −1. */
static int
longest_line (const BfRing *ring)
{
  double longest = 4.0 * ACROSS_MM;
  int found = -1;

  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      double length =
          bf_vec2_distance (bf_ring_vertex (ring, i)->p, bf_ring_vertex (ring, i + 1)->p);
      if (is_arc (ring, i) || length <= longest)
        continue;
      longest = length;
      found = (int)i;
    }
  return found;
}

/* Splits edge i, a straight one, into three, so that no strip bites its own tail. */
static void
split_line (const Kerf *kerf, BfRing *ring, guint i)
{
  BfVec2 from = bf_ring_vertex (ring, i)->p;
  BfVec2 step = bf_vec2_sub (bf_ring_vertex (ring, i + 1)->p, from);

  for (guint k = 1; k <= 2; k++)
    {
      BfVertex vertex = { bf_vec2_along (from, step, k / 3.0), 0.0 };
      g_array_insert_val (ring->vertices, i + k, vertex);
      add_cover (kerf, vertex.p, bf_vec2_unit (step));
    }
}

/* parts: for each vertex whether a strip ends there. */
static void
add_strips (const Kerf *kerf, const gboolean *parts)
{
  guint n = bf_ring_size (kerf->ring), first = 0, from;

  while (first + 1 < n && !parts[first])
    first++;
  from = first;
  for (guint i = first + 1; i <= first + n; i++)
    if (parts[i % n] || i == first + n)
      {
        add_strip (kerf, from, i - 1);
        from = i;
      }
}

void
bf_kerf_add_tools (const BfRing *ring, double half_mm, GPtrArray *tools)
{
  g_autoptr (BfRing) copy = bf_ring_copy (ring);
  Kerf kerf = { copy, half_mm, tools };
  g_autofree gboolean *parts = NULL;
  double radius_mm;
  BfVec2 centre;
  int line = count_corners (ring) < 2 ? longest_line (ring) : -1;

  if (bf_ring_is_circle (ring, &centre, &radius_mm) && bf_ring_area (ring) > 0.0)
    {
      add_disc (&kerf, centre, radius_mm + half_mm);
      return;
    }
  if (line >= 0)
    split_line (&kerf, copy, (guint)line);
  parts = g_new0 (gboolean, bf_ring_size (copy));
  for (guint i = 0; i < bf_ring_size (copy); i++)
    {
      gboolean is_split = line >= 0 && (i == (guint)line + 1 || i == (guint)line + 2);
      parts[i] = is_split || !is_smooth (copy, i);
      if (!is_split && parts[i])
        add_corner (&kerf, i);
    }
  add_strips (&kerf, parts);
}
