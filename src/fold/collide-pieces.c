/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/collide-pieces.h"

#include "core/tolerance.h"
#include "fold/score.h"

/* How far the chords of a round cut may stray from it. */
#define TOOL_SAGITTA_MM 2e-3

/* A slice of a bend turns by no more than this, however small its radius. */
#define SLICE_MAX_RAD (G_PI / 6.0)

/* ---- what is cut out ---------------------------------------------------------------------- */

static void
add_tool (const BfRing *ring, GArray *tools)
{
  g_autoptr (BfRing) turned = bf_ring_copy (ring);
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_ring_make_counter_clockwise (turned);
  bf_ring_flatten (turned, TOOL_SAGITTA_MM, points);
  bf_convex_parts (points, tools);
}

GArray *
bf_collide_tools (const BfFold *fold)
{
  GArray *tools = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));

  for (guint i = 0; i < fold->reliefs->len; i++)
    add_tool (bf_fold_relief (fold, i)->ring, tools);
  for (guint i = 0; i < fold->openings->len; i++)
    add_tool (bf_fold_opening (fold, i)->ring, tools);
  return tools;
}

static BfConvexPart
rectangle (BfVec2 min, BfVec2 max)
{
  return (BfConvexPart){ { min, { max.x, min.y }, max, { min.x, max.y } }, 4 };
}

/* ---- flats -------------------------------------------------------------------------------- */

static gboolean
is_near_any (const BfConvexPart *tool, const GArray *parts)
{
  for (guint i = 0; i < parts->len; i++)
    if (bf_convex_parts_near (&g_array_index (parts, BfConvexPart, i), tool))
      return TRUE;
  return FALSE;
}

/* Takes the tools out of the parts, which fill no more than the box; TRUE where any took anything.
 */
static gboolean
cut_parts (GArray **parts, const BfConvexPart *box, const GArray *tools)
{
  gboolean cut = FALSE;

  for (guint k = 0; tools != NULL && k < tools->len; k++)
    {
      const BfConvexPart *tool = &g_array_index (tools, BfConvexPart, k);
      GArray *left;

      if (!bf_convex_parts_near (box, tool) || !is_near_any (tool, *parts))
        continue;
      left = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));
      for (guint i = 0; i < (*parts)->len; i++)
        {
          const BfConvexPart *part = &g_array_index (*parts, BfConvexPart, i);
          gboolean near = bf_convex_parts_near (part, tool);

          cut |= near;
          if (near)
            bf_convex_part_less (part, tool, left);
          else
            g_array_append_vals (left, part, 1);
        }
      g_array_unref (*parts);
      *parts = left;
    }
  return cut;
}

/* A slab being made into solids, layer by layer: where a groove is cut into one face, the metal
 * begins at its bottom. */
typedef struct
{
  const BfSolid *slab;
  double t_mm;
  GArray *grooves; /* BfGroove */
  GArray *pieces;  /* BfConvex */
} Layering;

/* From one depth below the marking side to another. */
typedef struct
{
  double from_mm, to_mm;
} Layer;

static void
add_layer (const Layering *layering, const BfConvexPart *part, Layer layer)
{
  BfFrame frame = layering->slab->frame;
  BfConvexPart local = *part;
  BfConvex piece;

  if (layer.to_mm - layer.from_mm < BF_TOLERANCE_SIZE_MM)
    return;
  frame.origin = bf_vec3_along (frame.origin, frame.ez, -layer.from_mm);
  for (guint k = 0; k < local.n; k++)
    local.corners[k] = bf_solid_local (layering->slab, local.corners[k]);
  bf_convex_from_slab (&frame, &local, layer.to_mm - layer.from_mm, &piece);
  g_array_append_val (layering->pieces, piece);
}

/* Takes the grooves from the given one on out of a layer of the part. */
static void
add_grooved (const Layering *layering, const BfConvexPart *part, Layer layer, guint first)
{
  g_autoptr (GArray) beside = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));
  g_autoptr (GArray) under = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));
  const BfGroove *groove = NULL;

  for (; first < layering->grooves->len && groove == NULL; first++)
    {
      groove = &g_array_index (layering->grooves, BfGroove, first);
      if (!bf_convex_parts_near (part, &groove->strip))
        groove = NULL;
    }
  if (groove == NULL)
    {
      add_layer (layering, part, layer);
      return;
    }
  bf_convex_part_less (part, &groove->strip, beside);
  bf_convex_part_within (part, &groove->strip, under);
  for (guint i = 0; i < beside->len; i++)
    add_grooved (layering, &g_array_index (beside, BfConvexPart, i), layer, first);
  if (groove->in_marking_side)
    layer.from_mm = MAX (layer.from_mm, groove->depth_mm);
  else
    layer.to_mm = MIN (layer.to_mm, layering->t_mm - groove->depth_mm);
  for (guint i = 0; i < under->len; i++)
    add_grooved (layering, &g_array_index (under, BfConvexPart, i), layer, first);
}

gboolean
bf_collide_slab_pieces (const BfFold *fold,
                        const BfSolid *slab,
                        const GArray *tools,
                        GArray *pieces)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  g_autoptr (GArray) grooves = g_array_new (FALSE, FALSE, sizeof (BfGroove));
  const Layering layering = { slab, fold->part->metal.thickness_mm, grooves, pieces };
  GArray *parts = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));
  const BfRing *outline = slab->outline;
  BfBox box = bf_box_empty ();
  BfConvexPart whole;
  gboolean cut;

  bf_ring_extend_box (outline, &box);
  whole = rectangle (box.min, box.max);
  bf_ring_flatten (outline, TOOL_SAGITTA_MM, points);
  bf_convex_parts (points, parts);
  cut = cut_parts (&parts, &whole, tools);
  bf_score_grooves (fold->layout, slab->face, grooves);
  for (guint i = 0; i < parts->len; i++)
    add_grooved (&layering, &g_array_index (parts, BfConvexPart, i), (Layer){ 0.0, layering.t_mm },
                 0);
  g_array_unref (parts);
  return cut;
}

/* ---- bends -------------------------------------------------------------------------------- */

/* A bend being sliced. */
typedef struct
{
  const BfSolid *sector;
  BfVec3 axis; /* the point of the bend's axis at x = 0 */
  double t_mm;
  BfArcBound bound;
  GArray *tools;  /* BfConvexPart in x along the bend and the angle turned */
  GArray *pieces; /* BfConvex */
} Slicer;

/* From one angle to another, and from x to x. */
typedef struct
{
  double from_rad, to_rad, from_mm, to_mm;
} Slice;

/* The unit vector from the axis outward at an angle from the parent's tangent. */
static BfVec3
outward (const BfSolid *sector, double angle_rad)
{
  double sign = sector->turn == BF_TURN_UP ? -1.0 : 1.0;
  return bf_vec3_along (bf_vec3_scale (sector->frame.ey, sin (angle_rad)), sector->frame.ez,
                        sign * cos (angle_rad));
}

static void
add_ray (const Slicer *slicer, const Slice *slice, BfVec3 ray, double radius_mm, BfConvex *out)
{
  BfVec3 p = bf_vec3_along (slicer->axis, ray, radius_mm);

  out->points[out->n_points++] = bf_vec3_along (p, slicer->sector->frame.ex, slice->from_mm);
  out->points[out->n_points++] = bf_vec3_along (p, slicer->sector->frame.ex, slice->to_mm);
}

/* Around: the inside's chord, and the outside's two tangents. Within: the inside's tangent, and the
 * outside's chord. */
static void
add_slice (const Slicer *slicer, const Slice *slice)
{
  const BfSolid *s = slicer->sector;
  double half = (slice->to_rad - slice->from_rad) / 2.0, outer = s->radius_mm + slicer->t_mm;
  gboolean around = slicer->bound == BF_ARC_AROUND;
  double inside = outer - s->skin_mm, inner = around ? inside : inside / cos (half);
  BfVec3 x = s->frame.ex, rays[] = { outward (s, slice->from_rad), outward (s, slice->to_rad) };
  BfVec3 middle = outward (s, slice->from_rad + half);
  BfConvex c = { .n_normals = around ? 6 : 4, .n_edges = around ? 6 : 4 };

  c.normals[0] = c.edges[0] = x;
  c.normals[1] = middle;
  c.edges[1] = bf_vec3_cross (x, middle);
  for (guint i = 0; i < 2; i++)
    {
      BfVec3 tangent = bf_vec3_cross (x, rays[i]);

      c.normals[2 + i] = c.edges[4 + i] = tangent;
      c.edges[2 + i] = c.normals[4 + i] = rays[i];
      add_ray (slicer, slice, rays[i], inner, &c);
      add_ray (slicer, slice, rays[i], outer, &c);
    }
  if (around)
    add_ray (slicer, slice, middle, outer / cos (half), &c);
  bf_convex_close (&c);
  if (inner < outer)
    g_array_append_val (slicer->pieces, c);
}

/* The stretch of x over which a tool reaches into the slice's angles; FALSE where it does not. */
static gboolean
reach_of_tool (const BfConvexPart *tool, const Slice *slice, double *from_mm, double *to_mm)
{
  *from_mm = G_MAXDOUBLE;
  *to_mm = -G_MAXDOUBLE;
  for (guint i = 0; i < tool->n; i++)
    {
      BfVec2 p = tool->corners[i], d = bf_vec2_sub (tool->corners[(i + 1) % tool->n], p);
      double low = MAX (MIN (p.y, p.y + d.y), slice->from_rad);
      double high = MIN (MAX (p.y, p.y + d.y), slice->to_rad);
      double per = fabs (d.y) > BF_TOLERANCE_ZERO ? d.x / d.y : 0.0;

      if (low > high)
        continue;
      *from_mm = MIN (*from_mm, p.x + MIN ((low - p.y) * per, (high - p.y) * per));
      *to_mm = MAX (*to_mm, p.x + MAX ((low - p.y) * per, (high - p.y) * per));
    }
  return *from_mm < *to_mm;
}

/* Adds what the tools from the given one on leave of the slice; TRUE where any took anything. */
static gboolean
add_cut_slice (const Slicer *slicer, Slice slice, guint first_tool)
{
  double from, to;

  if (slice.to_mm - slice.from_mm < BF_TOLERANCE_SIZE_MM)
    return FALSE;
  for (guint k = first_tool; k < slicer->tools->len; k++)
    {
      Slice before = slice, after = slice;

      if (!reach_of_tool (&g_array_index (slicer->tools, BfConvexPart, k), &slice, &from, &to) ||
          from >= slice.to_mm || to <= slice.from_mm)
        continue;
      before.to_mm = MIN (from, slice.to_mm);
      after.from_mm = MAX (to, slice.from_mm);
      add_cut_slice (slicer, before, k + 1);
      add_cut_slice (slicer, after, k + 1);
      return TRUE;
    }
  add_slice (slicer, &slice);
  return FALSE;
}

/* The tools that reach into the zone, in x along the bend and the angle turned. */
static GArray *
tools_on_zone (const BfSolid *sector, const GArray *tools)
{
  const BfVec2 *zone = sector->zone;
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (zone[0], zone[1]));
  BfVec2 across = bf_vec2_sub (zone[2], zone[1]);
  double per_mm = sector->angle_rad / MAX (bf_vec2_dot (across, across), BF_TOLERANCE_ZERO);
  GArray *out = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));
  BfConvexPart whole = rectangle (bf_vec2 (0, 0), bf_vec2 (sector->width_mm, sector->angle_rad));

  for (guint i = 0; tools != NULL && i < tools->len; i++)
    {
      BfConvexPart tool = g_array_index (tools, BfConvexPart, i);

      for (guint k = 0; k < tool.n; k++)
        {
          BfVec2 p = bf_vec2_sub (tool.corners[k], zone[1]);
          tool.corners[k] = bf_vec2 (bf_vec2_dot (p, along), bf_vec2_dot (p, across) * per_mm);
        }
      if (bf_convex_parts_near (&whole, &tool))
        g_array_append_val (out, tool);
    }
  return out;
}

gboolean
bf_collide_sector_pieces (
    const BfFold *fold, const BfSolid *sector, const GArray *tools, BfArcSlices how, GArray *pieces)
{
  double t = fold->part->metal.thickness_mm;
  double step = 2.0 * acos (1.0 - MIN (how.sagitta_mm / (sector->radius_mm + t), 1.0));
  guint n = (guint)ceil (sector->angle_rad / MIN (step, SLICE_MAX_RAD));
  double axis_z = sector->turn == BF_TURN_UP ? sector->radius_mm : -t - sector->radius_mm;
  Slicer slicer = { .sector = sector,
                    .axis = bf_frame_point (&sector->frame, 0.0, 0.0, axis_z),
                    .t_mm = t,
                    .bound = how.bound,
                    .tools = tools_on_zone (sector, tools),
                    .pieces = pieces };
  gboolean cut = FALSE;

  for (guint i = 0; i < n; i++)
    {
      Slice slice = { sector->angle_rad * i / n, sector->angle_rad * (i + 1) / n, 0.0,
                      sector->width_mm };
      cut |= add_cut_slice (&slicer, slice, 0);
    }
  g_array_unref (slicer.tools);
  return cut;
}
