/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/outline.h"

#include "core/tolerance.h"
#include "fold/free-corners.h"
#include "fold/parting.h"
#include "fold/side.h"
#include "fold/stretches.h"

/* What hangs on a flat, walked by itself: it goes in after a point of the flat's own ring. */
typedef struct
{
  BfVec2 after;
  BfRing *ring;
} Carried;

typedef struct
{
  const BfLayout *layout;
  gboolean whole; /* out and round every flap, slits opened */
  BfRing *ring;
  GArray *carried; /* Carried: flaps go there and not into the ring; NULL for none */
} Walk;

static void walk_flap (Walk *walk, const BfFlap *flap);

static void
emit (Walk *walk, BfVec2 p)
{
  bf_ring_add (walk->ring, p, 0.0);
}

static int
index_of (const Walk *walk, const BfFlap *flap)
{
  return flap == NULL ? -1 : (int)(flap - walk->layout->flaps);
}

static gboolean
has_step (const BfFlap *flap, BfSideName name)
{
  return flap->sides[name].bare_beside && !flap->sides[name].at_root;
}

/* A flange that stands flush with a corner whose bare edge leans away: the slit beside its bend
 * opens through that edge, short of the vertex. */
static gboolean
opens_through_neighbour (const Walk *walk, const BfFlap *flap, BfSideName name)
{
  return walk->whole && has_step (flap, name) && flap->sides[name].zone_mm < BF_OUTLINE_SLIT_MM;
}

static gboolean
end_is_opened (const Walk *walk, const BfStretch *stretch, BfSideName name)
{
  const BfFlap *flap = bf_stretch_outermost (stretch, name);
  return flap != NULL && opens_through_neighbour (walk, flap, name);
}

static void
emit_opened_corner (Walk *walk,
                    const BfStretch *neighbour,
                    const BfStretch *stretch,
                    BfSideName name)
{
  double u = name == BF_SIDE_START ? stretch->from_u - BF_OUTLINE_SLIT_MM
                                   : stretch->to_u + BF_OUTLINE_SLIT_MM;
  BfVec2 at = bf_stretch_point (stretch, u, 0.0);
  double rise = bf_vec2_dot (stretch->n, neighbour->n);

  /* Straight in from the drawn edge's line until the neighbour edge is met. */
  if (fabs (rise) > BF_TOLERANCE_SIZE_MM)
    at = bf_vec2_along (at, stretch->n,
                        -bf_vec2_dot (bf_vec2_sub (at, neighbour->origin), neighbour->n) / rise);
  emit (walk, at);
}

/* TRUE where the metal of a flap's side goes on into a folded corner: the blank's outline runs on
 * from its tip. */
static gboolean
goes_on (const Walk *walk, const BfFlap *flap, BfSideName name)
{
  int meeting = flap->sides[name].meeting;

  return walk->whole && meeting >= 0 && bf_layout_meeting (walk->layout, (guint)meeting)->folded;
}

/* The folded corner between two stretches of the base, or NULL. */
static const BfFoldedCorner *
folded_between (const Walk *walk, const BfStretch *before, const BfStretch *after)
{
  const BfFlap *flap = bf_stretch_outermost (before, BF_SIDE_END);
  int face = index_of (walk, flap) + 1;

  if (flap == NULL || bf_stretch_outermost (after, BF_SIDE_START) == NULL ||
      !goes_on (walk, flap, BF_SIDE_END))
    return NULL;
  for (guint i = 0; i < walk->layout->folded->len; i++)
    {
      const BfFoldedCorner *corner = &g_array_index (walk->layout->folded, BfFoldedCorner, i);
      int next = index_of (walk, bf_stretch_outermost (after, BF_SIDE_START)) + 1;

      if (MIN (face, next) == (int)MIN (corner->along, corner->end) &&
          MAX (face, next) == (int)MAX (corner->along, corner->end))
        return corner;
    }
  return NULL;
}

/* Where the metal of one stretch of a face (NULL: the base) meets that of the next: finished, if
 * that is asked. */
static void
emit_corner (Walk *walk, const BfFlap *face, const BfStretch *before, const BfStretch *after)
{
  const BfFoldedCorner *folded = folded_between (walk, before, after);
  const BfFreeCorner *finish =
      bf_free_corner_at (walk->layout, index_of (walk, face), after->corner);
  BfVec2 corner;

  if (folded != NULL)
    emit (walk, folded->tip);
  else if (end_is_opened (walk, before, BF_SIDE_END))
    emit_opened_corner (walk, after, before, BF_SIDE_END);
  else if (end_is_opened (walk, after, BF_SIDE_START))
    emit_opened_corner (walk, before, after, BF_SIDE_START);
  else if (finish != NULL)
    {
      bf_ring_add (walk->ring, finish->from, finish->bulge);
      emit (walk, finish->to);
    }
  else if (bf_stretch_corner (before, after, &corner))
    emit (walk, corner);
  else
    {
      BfVec2 vertex = bf_stretch_point (after, after->from_u, 0.0);

      emit (walk, bf_vec2_along (vertex, before->n, -bf_stretch_offset (before, BF_SIDE_END)));
      emit (walk, bf_vec2_along (vertex, after->n, -bf_stretch_offset (after, BF_SIDE_START)));
    }
}

/* TRUE where the zone's end at that side is a corner of the outline. A bend that takes no metal (an
 * allowance of 0) has a zone without height: going out to its ends would be going there and back.
 */
static gboolean
zone_shows (const Walk *walk, const BfFlap *flap, BfSideName name)
{
  return !goes_on (walk, flap, name) &&
         (!walk->whole || flap->sums.allowance_mm > BF_TOLERANCE_ZERO);
}

/* The step from the drawn edge in to the flap's tangent, or back out. */
static void
emit_step (Walk *walk, const BfStretch *stretch, const BfFlap *flap, BfSideName name)
{
  double slit = walk->whole ? BF_OUTLINE_SLIT_MM : 0.0;
  double u = bf_stretch_zone_u (flap, name) + (name == BF_SIDE_START ? -slit : slit);
  BfVec2 drawn = bf_stretch_point (stretch, u, 0.0);
  BfVec2 tangent = bf_stretch_point (stretch, u, -flap->sums.setback_mm);
  gboolean opened = opens_through_neighbour (walk, flap, name);

  if (name == BF_SIDE_START && !opened)
    emit (walk, drawn);
  emit (walk, tangent);
  if (name == BF_SIDE_END && !opened)
    emit (walk, drawn);
}

static void
walk_carried (Walk *walk, const BfFlap *flap)
{
  Walk around = { walk->layout, TRUE, walk->ring, NULL };
  Carried carried = { .ring = bf_ring_new () };

  if (walk->carried == NULL)
    {
      walk_flap (&around, flap);
      bf_ring_free (carried.ring);
      return;
    }
  around.ring = carried.ring;
  carried.after = bf_ring_vertex (walk->ring, bf_ring_size (walk->ring) - 1)->p;
  walk_flap (&around, flap);
  g_array_append_val (walk->carried, carried);
}

static void
walk_stretch (Walk *walk, const BfStretch *stretch)
{
  guint n = bf_stretch_n_flaps (stretch);

  for (guint i = 0; i < n; i++)
    {
      const BfFlap *flap = g_ptr_array_index (stretch->flaps, i);
      double start = bf_stretch_zone_u (flap, BF_SIDE_START);
      double end = bf_stretch_zone_u (flap, BF_SIDE_END), tangent = -flap->sums.setback_mm;

      if (has_step (flap, BF_SIDE_START))
        emit_step (walk, stretch, flap, BF_SIDE_START);
      if (zone_shows (walk, flap, BF_SIDE_START))
        emit (walk, bf_stretch_point (stretch, start, tangent));
      if (walk->whole)
        walk_carried (walk, flap);
      if (zone_shows (walk, flap, BF_SIDE_END))
        emit (walk, bf_stretch_point (stretch, end, tangent));
      if (has_step (flap, BF_SIDE_END))
        emit_step (walk, stretch, flap, BF_SIDE_END);
    }
}

/* ---- flaps -------------------------------------------------------------------------------- */

static const BfStretch *
side_stretch (const GArray *stretches, BfSideName name)
{
  return &g_array_index (stretches, BfStretch, name == BF_SIDE_START ? 0 : stretches->len - 1);
}

/* Where the flap's bend zone ends at its tangent. A flap on its side that begins there stands on
 * the zone's own metal: a slit parts the two, and the relief that is cut there takes it all. */
static void
emit_foot (Walk *walk, const BfFlap *flap, const GArray *stretches, BfSideName name)
{
  const BfStretch *side = side_stretch (stretches, name);
  const BfFlap *on_side = bf_stretch_outermost (side, name);
  BfVec2 zone[4], foot, inner, slit = bf_vec2_scale (flap->flat_n, -BF_OUTLINE_SLIT_MM);

  if (goes_on (walk, flap, name))
    return;
  bf_outline_zone (flap, zone);
  foot = zone[name == BF_SIDE_START ? 3 : 2];
  if (on_side == NULL || !on_side->sides[name].at_root)
    {
      if (zone_shows (walk, flap, name))
        emit (walk, foot);
      return;
    }
  inner = bf_stretch_point (side, bf_stretch_zone_u (on_side, name), -on_side->sums.setback_mm);
  foot = bf_vec2_add (foot, slit);
  inner = bf_vec2_add (inner, slit);
  emit (walk, name == BF_SIDE_START ? foot : inner);
  emit (walk, name == BF_SIDE_START ? inner : foot);
}

/* The flat's outline from its root line round to its root line. */
static void
walk_flat (Walk *walk, const BfFlap *flap, const GArray *stretches)
{
  BfStretch root = bf_stretch_root (flap);
  const BfStretch *before = &root, *last = side_stretch (stretches, BF_SIDE_END);

  for (guint i = 0; i < stretches->len; i++)
    {
      const BfStretch *stretch = &g_array_index (stretches, BfStretch, i);

      if (i > 0 || !goes_on (walk, flap, BF_SIDE_START))
        emit_corner (walk, flap, before, stretch);
      walk_stretch (walk, stretch);
      before = stretch;
    }
  if (goes_on (walk, flap, BF_SIDE_END))
    return;
  root.from_u =
      bf_vec2_dot (bf_vec2_sub (bf_stretch_point (last, last->to_u, 0.0), root.origin), root.e);
  emit_corner (walk, flap, last, &root);
}

static void
clear_carried (gpointer data)
{
  g_clear_pointer (&((Carried *)data)->ring, bf_ring_free);
}

/* The vertex with which the ring of a flat leaves the line of its own bend. */
static guint
first_off_root (const BfFlap *flap, const BfRing *ring)
{
  double middle = (bf_flap_zone_u (flap, BF_SIDE_START) + bf_flap_zone_u (flap, BF_SIDE_END)) / 2.0;
  BfVec2 root = bf_flap_to_blank (flap, middle, 0.0);
  double nearest = G_MAXDOUBLE;
  guint n = bf_ring_size (ring), first = 0;

  for (guint i = 0; i < n; i++)
    {
      BfVec2 a = bf_ring_vertex (ring, i)->p, b = bf_ring_vertex (ring, (i + 1) % n)->p;
      double off =
          bf_vec2_distance (a, root) + bf_vec2_distance (root, b) - bf_vec2_distance (a, b);

      if (off < nearest)
        {
          nearest = off;
          first = (i + 1) % n;
        }
    }
  return first;
}

static void
append_ring (BfRing *ring, const BfRing *more)
{
  for (guint i = 0; i < bf_ring_size (more); i++)
    bf_ring_add (ring, bf_ring_vertex (more, i)->p, bf_ring_vertex (more, i)->bulge);
}

/* The same of a flat that gives up metal: its own ring is cut, and then what it carries put back
 * where it hangs. */
static void
walk_cut_flat (Walk *walk, const BfFlap *flap, const GArray *stretches)
{
  g_autoptr (GArray) carried = g_array_new (FALSE, FALSE, sizeof (Carried));
  g_autoptr (BfRing) ring = NULL;
  Walk own = { walk->layout, TRUE, bf_ring_new (), carried };
  guint first, n, next = 0;

  g_array_set_clear_func (carried, clear_carried);
  walk_flat (&own, flap, stretches);
  ring = bf_partings_cut (walk->layout, index_of (walk, flap), own.ring);
  first = first_off_root (flap, ring);
  n = bf_ring_size (ring);
  for (guint i = 0; i < n; i++)
    {
      const BfVertex *v = bf_ring_vertex (ring, (first + i) % n);
      const Carried *hung = &g_array_index (carried, Carried, next);

      bf_ring_add (walk->ring, v->p, v->bulge);
      if (next < carried->len && bf_vec2_distance (v->p, hung->after) < BF_TOLERANCE_ZERO)
        {
          append_ring (walk->ring, hung->ring);
          next++;
        }
    }
}

static void
walk_flap (Walk *walk, const BfFlap *flap)
{
  g_autoptr (GArray) stretches = bf_stretches_new (walk->layout, index_of (walk, flap));

  emit_foot (walk, flap, stretches, BF_SIDE_START);
  if (bf_partings_cut_flap (walk->layout, index_of (walk, flap)))
    walk_cut_flat (walk, flap, stretches);
  else
    walk_flat (walk, flap, stretches);
  emit_foot (walk, flap, stretches, BF_SIDE_END);
}

/* ---- the base ------------------------------------------------------------------------------ */

static void
walk_base (Walk *walk)
{
  g_autoptr (GArray) stretches = bf_stretches_new (walk->layout, -1);
  guint n = stretches->len;

  for (guint i = 0; i < n; i++)
    {
      const BfStretch *before = &g_array_index (stretches, BfStretch, (i + n - 1) % n);
      const BfStretch *after = &g_array_index (stretches, BfStretch, i);

      emit_corner (walk, NULL, before, after);
      walk_stretch (walk, after);
    }
}

/* ---- rings --------------------------------------------------------------------------------- */

BfRing *
bf_outline_flat (const BfLayout *layout, int flap)
{
  g_autoptr (BfRing) ring = bf_ring_new ();
  Walk walk = { layout, FALSE, ring, NULL };

  if (layout->flaps[flap].placed)
    {
      g_autoptr (GArray) stretches = bf_stretches_new (layout, flap);
      walk_flat (&walk, &layout->flaps[flap], stretches);
    }
  bf_outline_tidy (ring);
  return g_steal_pointer (&ring);
}

BfRing *
bf_outline_face (const BfLayout *layout, int flap)
{
  g_autoptr (BfRing) ring = NULL;
  Walk walk = { layout, FALSE, NULL, NULL };

  if (flap >= 0)
    return bf_partings_cut (layout, flap, bf_outline_flat (layout, flap));
  ring = bf_ring_new ();
  walk.ring = ring;
  walk_base (&walk);
  bf_outline_tidy (ring);
  return g_steal_pointer (&ring);
}

BfRing *
bf_outline_blank (const BfLayout *layout)
{
  g_autoptr (BfRing) ring = bf_ring_new ();
  Walk walk = { layout, TRUE, ring, NULL };

  walk_base (&walk);
  bf_outline_tidy (ring);
  return g_steal_pointer (&ring);
}

void
bf_outline_zone (const BfFlap *flap, BfVec2 zone[4])
{
  double start = bf_flap_zone_u (flap, BF_SIDE_START), end = bf_flap_zone_u (flap, BF_SIDE_END);
  double parent_w = -flap->sums.allowance_mm;

  zone[0] = bf_flap_to_blank (flap, start, parent_w);
  zone[1] = bf_flap_to_blank (flap, end, parent_w);
  zone[2] = bf_flap_to_blank (flap, end, 0.0);
  zone[3] = bf_flap_to_blank (flap, start, 0.0);
}

BfRing *
bf_outline_zone_ring (const BfBendResult *bend)
{
  BfRing *ring = bf_ring_new ();

  for (int i = 0; i < 4; i++)
    bf_ring_add (ring, bend->zone[i], 0.0);
  bf_ring_make_counter_clockwise (ring);
  return ring;
}
