/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-build.h"

/* Rounded rims: chords of 12° at most, and no band that turns by more than half a turn, because
 * the strips of a band that are seen must be neighbours. */
#define CHORD_RAD (G_PI / 15.0)
#define BAND_RAD (G_PI + 1e-9)

/* How far an outline's point may be off a mouth's line or ends and still belong to it. */
#define ON_MOUTH_MM 1e-4

/* A point of a slab's outline on the marking side, and what the line that leaves it is. */
typedef struct
{
  BfVec3 p;
  gboolean joined;             /* goes on in a bend: no rim */
  int band;                    /* its rim's band, or −1 */
  BfVec3 shade_from, shade_to; /* the rim's true normals at the line's two ends */
} Side;

typedef struct
{
  BfFormedBuild *build;
  const BfSolid *slab;
  GArray *sides;     /* Side, of all rings */
  GArray *ring_ends; /* guint: where each ring ends in sides */
} Outline;

static BfVec3
to_space (const BfSolid *slab, BfVec2 p)
{
  BfVec2 local = bf_solid_local (slab, p);

  return bf_frame_point (&slab->frame, local.x, local.y, 0.0);
}

/* A direction of the blank, in space. */
static BfVec3
direction (const BfSolid *slab, BfVec2 d)
{
  BfVec3 x = bf_vec3_scale (slab->frame.ex, bf_vec2_dot (d, slab->flat_ex));

  return bf_vec3_along (x, slab->frame.ey, bf_vec2_dot (d, slab->flat_ey));
}

static void
add_straight (Outline *outline, const BfVec3 edge[2], double from, gboolean joined)
{
  BfVec3 along = bf_vec3_unit (bf_vec3_sub (edge[1], edge[0]));
  BfVec3 outward = bf_vec3_cross (along, outline->slab->frame.ez);
  Side side = { bf_vec3_along (edge[0], along, from), joined, -1, outward, outward };

  g_array_append_val (outline->sides, side);
}

/* A straight line of the outline, cut where bends begin and end along it. */
static void
add_line (Outline *outline, const BfVec3 edge[2])
{
  g_autoptr (GArray) reaches = g_array_new (FALSE, FALSE, sizeof (BfFormedReach));
  double length = bf_vec3_length (bf_vec3_sub (edge[1], edge[0]));
  double reached = 0.0;

  bf_formed_mouths_meet_edge (outline->build, outline->slab->face, edge, reaches);
  for (guint i = 0; i < reaches->len; i++)
    {
      const BfFormedReach *reach = &g_array_index (reaches, BfFormedReach, i);

      if (reach->from > reached)
        add_straight (outline, edge, reached, FALSE);
      if (reach->to > reached)
        add_straight (outline, edge, fmax (reach->from, reached), TRUE);
      reached = fmax (reached, reach->to);
    }
  if (reached < length)
    add_straight (outline, edge, reached, FALSE);
}

static BfVec2
arc_outward (const BfArc *arc, double angle)
{
  double out = arc->sweep > 0.0 ? 1.0 : -1.0;

  return bf_vec2 (out * cos (angle), out * sin (angle));
}

static BfVec2
arc_point (const BfArc *arc, double angle)
{
  return bf_vec2_along (arc->centre, bf_vec2 (cos (angle), sin (angle)), arc->radius);
}

/* One band's worth of an arc; the last point is left to what follows. */
static void
add_arc_band (Outline *outline, const BfArc *arc)
{
  const BfSolid *slab = outline->slab;
  BfFormedScene *scene = outline->build->scene;
  guint n = (guint)fmax (ceil (fabs (arc->sweep) / CHORD_RAD - 1e-9), 1.0);
  int band = bf_formed_begin_band (scene, slab->frame.ez);

  for (guint i = 0; i <= n; i++)
    {
      double at = arc->from + arc->sweep * i / n, next = arc->from + arc->sweep * (i + 1) / n;
      Side side = { to_space (slab, arc_point (arc, at)), FALSE, band,
                    direction (slab, arc_outward (arc, at)),
                    direction (slab, arc_outward (arc, next)) };

      bf_formed_add_stop (scene, side.p, side.shade_from, (double)i / n);
      if (i < n)
        g_array_append_val (outline->sides, side);
    }
}

static void
add_arc (Outline *outline, const BfArc *arc)
{
  guint n = (guint)fmax (ceil (fabs (arc->sweep) / BAND_RAD), 1.0);

  for (guint i = 0; i < n; i++)
    {
      BfArc part = *arc;

      part.from = arc->from + arc->sweep * i / n;
      part.sweep = arc->sweep / n;
      add_arc_band (outline, &part);
    }
}

static void
add_ring (Outline *outline, const BfRing *ring)
{
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      const BfVec3 edge[2] = { to_space (outline->slab, bf_ring_vertex (ring, i)->p),
                               to_space (outline->slab, bf_ring_vertex (ring, i + 1)->p) };
      BfArc arc;

      if (bf_ring_arc (ring, i, &arc))
        add_arc (outline, &arc);
      else
        add_line (outline, edge);
    }
  g_array_append_val (outline->ring_ends, outline->sides->len);
}

/* Beside a score the metal ends slanting, as it does where a bend closes on a mitre: within the
 * groove the side that it is cut into is drawn back to the groove's wall. */
static BfVec3
side_point (const Outline *outline, const Side *side, BfFormedSide of)
{
  const GArray *mouths = outline->build->mouths;
  double depth = of == BF_FORMED_MARKING_SIDE ? 0.0 : outline->build->thickness_mm;
  BfVec3 p = side->p;

  for (guint i = 0; i < mouths->len; i++)
    {
      const BfFormedMouth *mouth = &g_array_index (mouths, BfFormedMouth, i);
      BfVec3 away = bf_vec3_sub (p, mouth->from);
      double x = bf_vec3_dot (away, mouth->along), v = bf_vec3_dot (away, mouth->outward);

      if (mouth->scored && mouth->face == outline->slab->face && mouth->bevelled == of &&
          x > -ON_MOUTH_MM && x < mouth->width_mm + ON_MOUTH_MM && v < ON_MOUTH_MM &&
          v > -mouth->bevel_mm)
        p = bf_vec3_along (p, mouth->outward, -mouth->bevel_mm - v);
    }
  return bf_vec3_along (p, outline->slab->frame.ez, -depth);
}

static const Side *
outline_side (const Outline *outline, guint i)
{
  return &g_array_index (outline->sides, Side, i);
}

/* The slab's marking side, or its other side, which runs the other way round and lies deeper. */
static void
build_flat (const Outline *outline, BfFormedSide of)
{
  BfFormedScene *scene = outline->build->scene;
  BfVec3 up = outline->slab->frame.ez;
  gboolean marking = of == BF_FORMED_MARKING_SIDE;
  BfFormedPolygon like = {
    of, FALSE, FALSE, outline->slab->face, -1, marking ? up : bf_vec3_scale (up, -1.0), { 0, 0 }
  };
  guint first = 0;

  bf_formed_begin_polygon (scene, &like);
  for (guint ring = 0; ring < outline->ring_ends->len; ring++)
    {
      guint end = g_array_index (outline->ring_ends, guint, ring);

      bf_formed_begin_ring (scene);
      for (guint i = first; i < end; i++)
        {
          const Side *side = outline_side (outline, marking ? i : end - 1 - (i - first));

          bf_formed_add_point (scene, side_point (outline, side, of), like.normal);
        }
      bf_formed_end_ring (scene);
      first = end;
    }
  bf_formed_end_polygon (scene);
}

/* The rim under one line of the outline. */
static void
build_rim (const Outline *outline, const Side *side, const Side *next)
{
  BfFormedScene *scene = outline->build->scene;
  BfVec3 up = outline->slab->frame.ez;
  BfVec3 outward = bf_vec3_unit (bf_vec3_cross (bf_vec3_sub (next->p, side->p), up));
  const BfVec3 p[4] = { side_point (outline, side, BF_FORMED_OTHER_SIDE),
                        side_point (outline, next, BF_FORMED_OTHER_SIDE),
                        side_point (outline, next, BF_FORMED_MARKING_SIDE),
                        side_point (outline, side, BF_FORMED_MARKING_SIDE) };
  BfVec3 square = bf_vec3_cross (bf_vec3_sub (p[2], p[0]), bf_vec3_sub (p[3], p[1]));
  BfFormedPolygon like = { BF_FORMED_RIM, FALSE,   FALSE,   outline->slab->face,
                           side->band,    outward, { 0, 0 } };

  if (bf_vec3_length (square) > 0.0)
    like.normal = bf_vec3_unit (square);
  bf_formed_begin_polygon (scene, &like);
  bf_formed_begin_ring (scene);
  bf_formed_add_point (scene, p[0], like.normal);
  bf_formed_add_point (scene, p[1], side->shade_to);
  bf_formed_add_point (scene, p[2], like.normal);
  bf_formed_add_point (scene, p[3], side->shade_from);
  bf_formed_end_ring (scene);
  bf_formed_end_polygon (scene);
}

static void
build_rims (const Outline *outline)
{
  guint first = 0;

  for (guint ring = 0; ring < outline->ring_ends->len; ring++)
    {
      guint end = g_array_index (outline->ring_ends, guint, ring);

      for (guint i = first; i < end; i++)
        if (!outline_side (outline, i)->joined)
          build_rim (outline, outline_side (outline, i),
                     outline_side (outline, i + 1 < end ? i + 1 : first));
      first = end;
    }
}

/* The flat inside that outline, less the holes. */
static void
build_piece (BfFormedBuild *build, const BfSolid *slab, const GPtrArray *rings)
{
  g_autoptr (GArray) sides = g_array_new (FALSE, FALSE, sizeof (Side));
  g_autoptr (GArray) ring_ends = g_array_new (FALSE, FALSE, sizeof (guint));
  Outline outline = { build, slab, sides, ring_ends };

  for (guint i = 0; i < rings->len; i++)
    add_ring (&outline, g_ptr_array_index (rings, i));
  if (sides->len == 0)
    return;
  build_flat (&outline, BF_FORMED_MARKING_SIDE);
  build_flat (&outline, BF_FORMED_OTHER_SIDE);
  build_rims (&outline);
}

void
bf_formed_build_slab (BfFormedBuild *build, const BfSolid *slab)
{
  const BfRing *whole = slab->outline;
  g_autoptr (GPtrArray) rings = g_ptr_array_new ();

  if (build->cutting != NULL && bf_ring_size (whole) >= 3)
    {
      const GPtrArray *rests = bf_formed_cut (build->cutting, whole);

      for (guint i = 0; i < rests->len; i++)
        build_piece (build, slab, g_ptr_array_index (rests, i));
      return;
    }
  g_ptr_array_add (rings, (BfRing *)whole);
  for (guint i = 0; build->holes != NULL && i < build->holes->len; i++)
    {
      const BfFormedHole *hole = &g_array_index (build->holes, BfFormedHole, i);

      if (hole->face == slab->face && whole == bf_fold_face (build->fold, slab->face)->outline)
        g_ptr_array_add (rings, (BfRing *)hole->ring);
    }
  build_piece (build, slab, rings);
}
