/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/chord-ends.h"

#include "core/tolerance.h"

/* A point this near to the arc may lie on the other side of its chord. */
#define NEAR_MM (2.0 * BF_CHORD_SAGITTA_MM)

/* Ends of chords nearer than this are one. */
#define APART_MM (4.0 * BF_TOLERANCE_SNAP_MM)

typedef struct
{
  BfArc arc;
  BfEdge edge;         /* the same */
  GArray *ends;        /* BfChordEnd, the most exact ones first */
  gboolean runs_along; /* another arc lies so near that both need their ends at the same places */
} Search;

static double
turned_to (const BfArc *arc, BfVec2 p)
{
  double angle = atan2 (p.y - arc->centre.y, p.x - arc->centre.x) - arc->from;
  double turns = (arc->sweep > 0.0 ? angle : -angle) / (2.0 * G_PI);

  return (turns - floor (turns)) * 2.0 * G_PI;
}

static BfVec2
point_at (const BfArc *arc, double turned)
{
  double a = arc->from + (arc->sweep > 0.0 ? turned : -turned);

  return bf_vec2 (arc->centre.x + arc->radius * cos (a), arc->centre.y + arc->radius * sin (a));
}

static guint
n_chords (const BfArc *arc, double turned)
{
  double step = 2.0 * acos (CLAMP (1.0 - BF_CHORD_SAGITTA_MM / arc->radius, 0.5, 1.0));

  return (guint)MAX (ceil (turned / step - BF_TOLERANCE_ZERO), 1.0);
}

/* ---- what the arc has to do with another edge ---------------------------------------------- */

/* An end at p, a point of the arc's circle, unless there is one. */
static void
add_end (Search *search, BfVec2 p)
{
  BfChordEnd end = { turned_to (&search->arc, p), p };

  if (end.turned_rad > fabs (search->arc.sweep))
    return;
  for (guint i = 0; i < search->ends->len; i++)
    if (bf_vec2_distance (g_array_index (search->ends, BfChordEnd, i).p, p) < APART_MM)
      return;
  g_array_append_val (search->ends, end);
}

/* A point near the arc, seen from its centre; on the arc it is an end itself. */
static void
add_near (Search *search, BfVec2 p)
{
  BfVec2 out = bf_vec2_sub (p, search->arc.centre);
  double away = bf_vec2_length (out), off = fabs (away - search->arc.radius);

  if (off <= BF_TOLERANCE_SNAP_MM)
    add_end (search, p);
  else if (off < NEAR_MM && away > 0.0)
    add_end (search, bf_vec2_along (search->arc.centre, out, search->arc.radius / away));
}

/* Where the line cuts the circle, and, where it only just does, between the two. */
static void
cross_line (Search *search, const BfEdge *line)
{
  const BfArc *arc = &search->arc;
  BfVec2 along = bf_vec2_sub (line->to, line->from);
  double length = bf_vec2_length (along), way, half2;
  BfVec2 foot;

  if (length < BF_TOLERANCE_ZERO)
    return;
  along = bf_vec2_scale (along, 1.0 / length);
  way = bf_vec2_dot (bf_vec2_sub (arc->centre, line->from), along);
  foot = bf_vec2_along (line->from, along, way);
  if (arc->radius - bf_vec2_distance (foot, arc->centre) <= BF_TOLERANCE_SNAP_MM)
    return;
  half2 = arc->radius * arc->radius - pow (bf_vec2_distance (foot, arc->centre), 2.0);
  for (int turn = -1; turn <= 1; turn += 2)
    {
      double at = way + turn * sqrt (half2);
      if (at > 0.0 && at < length)
        add_end (search, bf_vec2_along (line->from, along, at));
    }
  if (way > 0.0 && way < length)
    add_near (search, foot);
}

/* The ends of a whole arc's chords that lie near the other one. */
static void
add_own_chords (Search *search, const BfArc *of)
{
  guint n = n_chords (of, fabs (of->sweep));

  for (guint i = 1; i < n; i++)
    add_near (search, point_at (of, fabs (of->sweep) * i / n));
}

/* Where the circles cut each other, where they are nearest, and, where they run along each other,
 * the ends of both arcs' chords, so that neither's stray over the other's. */
static void
cross_arc (Search *search, const BfEdge *other, const BfArc *other_arc)
{
  const BfArc *arc = &search->arc;
  BfVec2 across = bf_vec2_sub (other->centre, arc->centre), unit = bf_vec2_unit (across);
  double apart = bf_vec2_length (across), way, half2;
  double least = fabs (arc->radius - other->radius), most = arc->radius + other->radius;

  if (apart > least + BF_TOLERANCE_SNAP_MM && apart < most - BF_TOLERANCE_SNAP_MM)
    {
      way = (apart * apart + arc->radius * arc->radius - other->radius * other->radius) /
            (2.0 * apart);
      half2 = MAX (arc->radius * arc->radius - way * way, 0.0);
      for (int turn = -1; turn <= 1; turn += 2)
        add_end (search, bf_vec2_along (bf_vec2_along (arc->centre, unit, way),
                                        bf_vec2 (-unit.y, unit.x), turn * sqrt (half2)));
    }
  for (int turn = -1; turn <= 1; turn += 2)
    add_near (search, bf_vec2_along (other->centre, unit, turn * other->radius));
  if (fabs (apart - least) > NEAR_MM)
    return;
  add_own_chords (search, other_arc);
  search->runs_along = TRUE;
}

static void
look_at_ring (Search *search, const BfNearRing *near)
{
  g_autoptr (GArray) others = bf_edge_finder_within (near->finder, &search->edge.box, NEAR_MM);

  for (guint k = 0; k < others->len; k++)
    {
      guint i = g_array_index (others, guint, k);
      const BfEdge *other = &g_array_index (near->edges, BfEdge, i);
      BfArc arc;

      add_near (search, other->from);
      add_near (search, other->to);
      if (other->curved && bf_ring_arc (near->ring, i, &arc))
        cross_arc (search, other, &arc);
      else
        cross_line (search, other);
    }
}

/* ---- all ends ----------------------------------------------------------------------------- */

static int
compare_ends (gconstpointer a, gconstpointer b)
{
  double x = ((const BfChordEnd *)a)->turned_rad, y = ((const BfChordEnd *)b)->turned_rad;

  return (x > y) - (x < y);
}

/* Chords short enough between the ends that must be. */
static void
fill (const Search *search, GArray *ends)
{
  guint fewest = search->ends->len == 2 ? 2 : 1;

  for (guint i = 0; i + 1 < search->ends->len; i++)
    {
      const BfChordEnd *from = &g_array_index (search->ends, BfChordEnd, i), *to = from + 1;
      double turned = to->turned_rad - from->turned_rad;
      guint n = MAX (n_chords (&search->arc, turned), fewest);

      g_array_append_vals (ends, from, 1);
      for (guint k = 1; k < n; k++)
        {
          double at = from->turned_rad + turned * k / n;
          BfChordEnd end = { at, point_at (&search->arc, at) };
          g_array_append_val (ends, end);
        }
    }
  g_array_append_vals (ends, &g_array_index (search->ends, BfChordEnd, search->ends->len - 1), 1);
}

void
bf_chord_ends_find (const BfRing *ring, guint i, const GArray *beside, GArray *ends)
{
  g_autoptr (GArray) found = g_array_new (FALSE, FALSE, sizeof (BfChordEnd));
  Search search = { .edge = bf_edge_of (ring, i), .ends = found };
  gboolean is_arc = bf_ring_arc (ring, i, &search.arc);
  BfChordEnd first = { 0.0, search.edge.from };
  BfChordEnd last = { fabs (search.arc.sweep), search.edge.to };

  g_return_if_fail (is_arc);

  g_array_append_val (found, first);
  g_array_append_val (found, last);
  for (guint k = 0; beside != NULL && k < beside->len; k++)
    {
      const BfNearRing *near = &g_array_index (beside, BfNearRing, k);
      if (near->ring != ring && bf_box_gap (&near->box, &search.edge.box) <= NEAR_MM)
        look_at_ring (&search, near);
    }
  if (search.runs_along)
    add_own_chords (&search, &search.arc);
  g_array_sort (found, compare_ends);
  fill (&search, ends);
}
