/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-necks.h"

#include <glib/gi18n.h>

#include "core/tolerance.h"
#include "fold/checks.h"
#include "fold/ring-distance.h"

/* A strip of metal narrower than this bends and burns away, however thin it is. */
#define LEAST_STRIP_MM 3.0

/* Two edges this nearly square to the neck, or in line with each other, are so. */
#define IN_LINE_SIN 1e-6

/* Where the metal between two edges is narrowest: from a point of one to a point of the other. */
typedef struct
{
  BfEdge across;
  guint edge[2]; /* that the points lie on; of two that meet in a point, the one before it */
  double width_mm;
} Neck;

typedef struct
{
  BfFold *fold;
  const BfRing *ring; /* the blank's outer one */
  BfNearRing near;
  double needed_mm;
  GArray *necks; /* Neck */
} Search;

double
bf_checks_least_strip_mm (const BfFold *fold)
{
  return MAX (2.0 * fold->part->metal.thickness_mm, LEAST_STRIP_MM);
}

static const BfEdge *
edge_at (const Search *search, guint i)
{
  return &g_array_index (search->near.edges, BfEdge, i % search->near.edges->len);
}

/* The way that an edge runs at one of its ends; unit. */
static BfVec2
direction (const BfEdge *edge, gboolean at_end)
{
  BfVec2 out = bf_vec2_unit (bf_vec2_sub (at_end ? edge->to : edge->from, edge->centre));

  if (!edge->curved)
    return bf_vec2_unit (bf_vec2_sub (edge->to, edge->from));
  return edge->bulge > 0.0 ? bf_vec2 (-out.y, out.x) : bf_vec2 (out.y, -out.x);
}

static gboolean
is_one (BfVec2 a, BfVec2 b)
{
  return bf_vec2_distance (a, b) < BF_TOLERANCE_SIZE_MM;
}

/* TRUE where, seen from `other`, the ring comes no nearer on either side of its point p, which lies
 * on that edge. */
static gboolean
is_nearest (const Search *search, guint edge, BfVec2 p, BfVec2 other)
{
  BfVec2 away = bf_vec2_unit (bf_vec2_sub (p, other));
  guint n = search->near.edges->len, before = edge, after = edge;

  if (is_one (p, edge_at (search, edge)->from))
    before = (edge + n - 1) % n;
  else if (is_one (p, edge_at (search, edge)->to))
    after = (edge + 1) % n;
  if (before == after)
    return TRUE; /* within the edge: that is how the point was found */
  return bf_vec2_dot (direction (edge_at (search, before), TRUE), away) <= IN_LINE_SIN &&
         bf_vec2_dot (direction (edge_at (search, after), FALSE), away) >= -IN_LINE_SIN;
}

/* TRUE where metal lies all the way between the two points. */
static gboolean
is_metal (const Search *search, const BfEdge *across)
{
  const BfBlank *blank = &search->fold->blank;
  BfVec2 way = bf_vec2_sub (across->to, across->from), at;
  BfEdge inner = { .from = bf_vec2_along (across->from, way, 0.01),
                   .to = bf_vec2_along (across->from, way, 0.99),
                   .box = across->box };
  BfVec2 middle = bf_vec2_along (across->from, way, 0.5);
  g_autoptr (GArray) crossed = bf_edge_finder_within (search->near.finder, &inner.box, 0.0);

  for (guint i = 0; i < crossed->len; i++)
    if (bf_edge_distance (&inner, edge_at (search, g_array_index (crossed, guint, i)), &at) <
        BF_TOLERANCE_SIZE_MM)
      return FALSE;
  for (guint i = blank->n_outer; i < blank->rings->len; i++)
    if (bf_ring_contains (bf_blank_ring (blank, i), middle))
      return FALSE;
  return bf_ring_contains (search->ring, middle);
}

/* What the neck parts from the rest on one side: the ring from its first point on to its second.
 * Arcs that begin or end at the neck count as their chords. */
static double
parted_mm2 (const Search *search, const Neck *neck)
{
  g_autoptr (BfRing) piece = bf_ring_new ();
  guint n = bf_ring_size (search->ring);

  bf_ring_add (piece, neck->across.from, 0.0);
  for (guint i = (neck->edge[0] + 1) % n; i != neck->edge[1]; i = (i + 1) % n)
    bf_ring_add (piece, bf_ring_vertex (search->ring, i)->p,
                 bf_ring_vertex (search->ring, i)->bulge);
  bf_ring_add (piece, bf_ring_vertex (search->ring, neck->edge[1])->p, 0.0);
  bf_ring_add (piece, neck->across.to, 0.0);
  return bf_ring_area (piece);
}

/* TRUE where both run along the same two edges: one strip, seen from its two ends, or from both of
 * its sides. */
static gboolean
is_same_strip (const Search *search, const Neck *a, const Neck *b)
{
  guint n = search->near.edges->len;

  for (guint turn = 0; turn < 2; turn++)
    {
      guint first = (b->edge[turn] + n - a->edge[0]) % n;
      guint second = (b->edge[1 - turn] + n - a->edge[1]) % n;

      if ((first <= 1 || first == n - 1) && (second <= 1 || second == n - 1))
        return TRUE;
    }
  return FALSE;
}

static void
keep (Search *search, const Neck *neck)
{
  double parted = parted_mm2 (search, neck), missed = search->needed_mm * search->needed_mm;

  if (MIN (parted, bf_ring_area (search->ring) - parted) < missed)
    return;
  for (guint i = 0; i < search->necks->len; i++)
    {
      Neck *other = &g_array_index (search->necks, Neck, i);

      if (!is_same_strip (search, neck, other))
        continue;
      if (neck->width_mm < other->width_mm)
        *other = *neck;
      return;
    }
  g_array_append_vals (search->necks, neck, 1);
}

static gboolean
is_of_relief (const BfFold *fold, BfVec2 p)
{
  for (guint i = 0; i < fold->reliefs->len; i++)
    {
      g_auto (BfNearRing) near = { NULL };

      bf_near_ring_init (&near, bf_fold_relief (fold, i)->ring);
      if (bf_near_ring_distance_to (&near, p) < BF_TOLERANCE_SIZE_MM)
        return TRUE;
    }
  return FALSE;
}

/* What lies between two reliefs is looked at with openings. */
static gboolean
is_between_reliefs (const Search *search, const BfEdge *across)
{
  return is_of_relief (search->fold, across->from) && is_of_relief (search->fold, across->to);
}

/* p lies on edge i; k is any other. */
static void
try_across (Search *search, guint i, BfVec2 p, guint k)
{
  BfVec2 q = bf_edge_nearest (edge_at (search, k), p);
  guint n = search->near.edges->len;
  Neck neck = { { .from = p, .to = q, .box = bf_box_empty () }, { i, k }, bf_vec2_distance (p, q) };

  if (neck.width_mm < BF_CHECKS_NO_DIFFERENCE_MM ||
      neck.width_mm > search->needed_mm - BF_CHECKS_NO_DIFFERENCE_MM ||
      !is_nearest (search, i, p, q) || !is_nearest (search, k, q, p))
    return;
  if (is_one (q, edge_at (search, k)->from))
    neck.edge[1] = (k + n - 1) % n;
  if (is_one (p, edge_at (search, i)->from))
    neck.edge[0] = (i + n - 1) % n;
  bf_box_extend (&neck.across.box, p);
  bf_box_extend (&neck.across.box, q);
  if (is_metal (search, &neck.across) && !is_between_reliefs (search, &neck.across))
    keep (search, &neck);
}

/* A neck has, on one side at least, a corner that points into the metal, or an arc that bulges into
 * it. */
static void
look_from (Search *search, guint i)
{
  guint n = search->near.edges->len;
  const BfEdge *edge = edge_at (search, i);
  BfVec2 in = direction (edge_at (search, i + n - 1), TRUE), out = direction (edge, FALSE), p;
  gboolean turns_in = bf_vec2_cross (in, out) < -IN_LINE_SIN;
  gboolean bulges_in = edge->curved && edge->bulge <= 0.0;
  g_autoptr (GArray) others = NULL;

  if (!turns_in && !bulges_in)
    return;
  others = bf_edge_finder_within (search->near.finder, &edge->box, search->needed_mm);
  for (guint o = 0; o < others->len; o++)
    {
      guint k = g_array_index (others, guint, o);
      const BfEdge *other = edge_at (search, k);

      if (k == i)
        continue;
      if (turns_in)
        try_across (search, i, edge->from, k);
      if (!bulges_in)
        continue;
      bf_edge_distance (edge, other, &p);
      if (!is_one (p, edge->from) && !is_one (p, edge->to))
        try_across (search, i, p, k);
    }
}

static const char *
where_of (const BfFold *fold, BfVec2 p)
{
  for (guint i = 1; i < fold->faces->len; i++)
    if (bf_ring_contains (bf_fold_face (fold, i)->outline, p))
      return bf_fold_face (fold, i)->id;
  return "base";
}

static void
add_neck (const Search *search, const Neck *neck)
{
  BfFold *fold = search->fold;
  g_autofree char *found = bf_checks_length (fold, neck->width_mm);
  g_autofree char *wanted = bf_checks_length (fold, search->needed_mm);
  BfCheck check = { .code = "strip-too-thin",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .found = neck->width_mm,
                    .needed = search->needed_mm };

  check.place = bf_vec2_scale (bf_vec2_add (neck->across.from, neck->across.to), 0.5);
  bf_checks_add (fold, check, where_of (fold, check.place),
                 /* Translators: two lengths with their units */
                 g_strdup_printf (_ ("Between two edges only %s of metal is left, and %s is a "
                                     "sound least. Make it wider there."),
                                  found, wanted));
}

void
bf_checks_find_necks (BfFold *fold)
{
  Search search = { .fold = fold, .needed_mm = bf_checks_least_strip_mm (fold) };

  if (fold->layout->wanted_twice || fold->blank.n_outer != 1)
    return;
  search.ring = bf_blank_ring (&fold->blank, 0);
  search.necks = g_array_new (FALSE, FALSE, sizeof (Neck));
  bf_near_ring_init (&search.near, search.ring);
  for (guint i = 0; i < search.near.edges->len; i++)
    look_from (&search, i);
  for (guint i = 0; i < search.necks->len; i++)
    add_neck (&search, &g_array_index (search.necks, Neck, i));
  g_array_unref (search.necks);
  bf_near_ring_clear (&search.near);
}
