/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-edges.h"

#include <string.h>

#include <glib/gi18n.h>

#include "app/surface-openings.h"
#include "core/tolerance.h"
#include "core/units.h"
#include "fold/corner-here.h"

/* So near its line, a stretch of an outline lies on it. */
#define ON_LINE_MM 1e-4

static gboolean
has_metal (const BfFace *face)
{
  return face->outline != NULL && bf_ring_size (face->outline) > 0;
}

static const BfBendResult *
bend_of (const BfFold *fold, guint face)
{
  return bf_fold_bend (fold, (guint)bf_fold_face (fold, face)->bend);
}

/* The bend of the first flange that is folded on that edge, or NULL. */
static const BfBendResult *
bend_on (const BfFold *fold, const BfEdge *edge)
{
  const BfFlange *flange = bf_part_flange_at (fold->part, edge);
  int face = flange != NULL ? bf_fold_find_face (fold, flange->id) : -1;

  if (face < 0 || bf_fold_face (fold, (guint)face)->bend < 0 ||
      !has_metal (bf_fold_face (fold, (guint)face)))
    return NULL;
  return bend_of (fold, (guint)face);
}

/* How far along a line, from `from`, the metal of a face lies on it. FALSE where none does. */
static gboolean
stretch_on_line (const BfFace *face, BfVec2 from, BfVec2 along, double reach[2])
{
  reach[0] = HUGE_VAL;
  reach[1] = -HUGE_VAL;
  for (guint i = 0; has_metal (face) && i < bf_ring_size (face->outline); i++)
    {
      BfVec2 by = bf_vec2_sub (bf_ring_vertex (face->outline, i)->p, from);
      double u = bf_vec2_dot (by, along);
      if (fabs (bf_vec2_cross (along, by)) > ON_LINE_MM)
        continue;
      reach[0] = MIN (reach[0], u);
      reach[1] = MAX (reach[1], u);
    }
  return reach[1] - reach[0] > BF_TOLERANCE_SIZE_MM;
}

static void
lay_edge (const BfFold *fold, BfSurfaceEdge *edge, const BfVec2 line[2], const BfBendResult *bend)
{
  const BfFace *face = bf_fold_face (fold, (guint)edge->selection.face);
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (line[1], line[0]));
  double reach[2];

  edge->outward = bf_vec2 (along.y, -along.x);
  for (guint k = 0; k < 2; k++)
    {
      edge->blank[k] = bend != NULL ? bend->line[k] : line[k];
      edge->formed[k] = bend != NULL ? bend->zone[k] : line[k];
    }
  if (bend != NULL || !stretch_on_line (face, line[0], along, reach))
    return;
  for (guint k = 0; k < 2; k++)
    edge->blank[k] = edge->formed[k] = bf_vec2_along (line[0], along, reach[k]);
}

/* The line on which a flange ends in the flat: square outward from its bend, as far as it goes. */
static gboolean
tip_line (const BfFold *fold, guint face, BfVec2 line[2])
{
  const BfBendResult *bend = bend_of (fold, face);
  const BfRing *outline = bf_fold_face (fold, face)->outline;
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (bend->zone[1], bend->zone[0]));
  BfVec2 outward = bf_vec2 (along.y, -along.x);
  double most = -HUGE_VAL;

  for (guint i = 0; i < bf_ring_size (outline); i++)
    most = MAX (most,
                bf_vec2_dot (bf_vec2_sub (bf_ring_vertex (outline, i)->p, bend->zone[3]), outward));
  for (guint k = 0; k < 2; k++)
    line[k] = bf_vec2_along (bend->zone[k == 0 ? 3 : 2], outward, most);
  return most > BF_TOLERANCE_SIZE_MM;
}

/* The line of a flange's side: of the straight stretches that run out from the bend (start) or back
 * to it (end) the longest, for what a corner trims may have more than one. */
static gboolean
side_line (const BfFold *fold, guint face, gboolean outward, BfVec2 line[2])
{
  const BfBendResult *bend = bend_of (fold, face);
  const BfRing *outline = bf_fold_face (fold, face)->outline;
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (bend->zone[1], bend->zone[0]));
  BfVec2 out = bf_vec2 (along.y, -along.x);
  double most = BF_TOLERANCE_SIZE_MM;

  for (guint i = 0; i < bf_ring_size (outline); i++)
    {
      const BfVertex *from = bf_ring_vertex (outline, i);
      BfVec2 to = bf_ring_vertex (outline, i + 1)->p;
      double reach = bf_vec2_dot (bf_vec2_sub (to, from->p), out) * (outward ? 1.0 : -1.0);
      if (reach <= most || fabs (from->bulge) > 0.0)
        continue;
      most = reach;
      line[0] = from->p;
      line[1] = to;
    }
  return most > BF_TOLERANCE_SIZE_MM;
}

static void add_flanges_on (GArray *edges, const BfFold *fold, const BfEdge *on, guint depth);

static BfEdgeKind
kind_of_side (int side)
{
  return side == BF_FLANGE_START ? BF_EDGE_START
         : side == BF_FLANGE_END ? BF_EDGE_END
                                 : BF_EDGE_TIP;
}

/* A side or the tip of a flange, and what hangs there. */
static void
add_edge_of_flange (GArray *edges, const BfFold *fold, BfSelection selection, guint depth)
{
  guint face = (guint)selection.face;
  const BfFlange *flange = bf_part_find_flange (fold->part, bf_fold_face (fold, face)->id);
  BfSurfaceEdge edge = { .selection = selection, .length_mm = flange->length_mm };
  BfEdge on = { flange->id, kind_of_side (selection.edge), 0 };
  gboolean is_tip = selection.edge == BF_FLANGE_TIP;
  BfVec2 line[2];

  if (is_tip ? tip_line (fold, face, line)
             : side_line (fold, face, selection.edge == BF_FLANGE_START, line))
    {
      lay_edge (fold, &edge, line, bend_on (fold, &on));
      if (!is_tip)
        edge.length_mm = bf_vec2_distance (edge.formed[0], edge.formed[1]);
      g_array_append_val (edges, edge);
    }
  if (is_tip)
    bf_surface_openings_add (edges, fold, face);
  add_flanges_on (edges, fold, &on, depth + 1);
}

static void
add_corner (GArray *edges, const BfFold *fold, guint face, guint at)
{
  BfCornerHere here;

  if (!bf_corner_here (fold, bf_fold_face (fold, face)->id, at, &here))
    return;
  BfSurfaceEdge corner = { .selection = bf_selection_corner ((int)face, at),
                           .blank = { here.place, here.place },
                           .formed = { here.place, here.place } };
  g_array_append_val (edges, corner);
}

static void
add_flange (GArray *edges, const BfFold *fold, guint face, guint depth)
{
  const BfFlange *flange = bf_part_find_flange (fold->part, bf_fold_face (fold, face)->id);

  for (int side = BF_FLANGE_START; side <= BF_FLANGE_END; side++)
    {
      if (side == BF_FLANGE_END)
        add_corner (edges, fold, face, 1);
      if (side == BF_FLANGE_TIP || flange->angle_deg < 180.0)
        add_edge_of_flange (edges, fold, (BfSelection){ (int)face, side }, depth);
      if (side == BF_FLANGE_START)
        add_corner (edges, fold, face, 0);
    }
}

/* A flange can't hang on itself; depth is for a part that says so all the same. */
static void
add_flanges_on (GArray *edges, const BfFold *fold, const BfEdge *on, guint depth)
{
  for (guint i = 1; depth <= fold->faces->len && i < fold->faces->len; i++)
    {
      const BfFace *face = bf_fold_face (fold, i);
      const BfFlange *flange = bf_part_find_flange (fold->part, face->id);
      if (flange == NULL || flange->is_tab || !has_metal (face) || face->bend < 0)
        continue;
      if (g_str_equal (flange->on, on->on) && flange->edge == on->kind &&
          (on->kind != BF_EDGE_INDEX || flange->edge_index == on->index))
        add_flange (edges, fold, i, depth);
    }
}

GArray *
bf_surface_edges (const BfFold *fold)
{
  g_return_val_if_fail (fold != NULL, NULL);

  GArray *edges = g_array_new (FALSE, FALSE, sizeof (BfSurfaceEdge));
  guint n = bf_part_n_points (fold->part);
  for (guint i = 0; i < n; i++)
    {
      BfEdge on = { "base", BF_EDGE_INDEX, i };
      BfVec2 line[2] = { bf_part_point (fold->part, i), bf_part_point (fold->part, i + 1) };
      BfSurfaceEdge edge = { .selection = { 0, (int)i },
                             .length_mm = bf_part_edge_length_mm (fold->part, i) };
      BfSurfaceEdge point = { .selection = bf_selection_point ((i + 1) % n),
                              .blank = { line[1], line[1] },
                              .formed = { line[1], line[1] } };
      lay_edge (fold, &edge, line, bend_on (fold, &on));
      g_array_append_val (edges, edge);
      add_flanges_on (edges, fold, &on, 0);
      g_array_append_val (edges, point);
    }
  bf_surface_openings_add (edges, fold, 0);
  return edges;
}

int
bf_surface_edges_find (const GArray *edges, BfSelection selection)
{
  for (guint i = 0; edges != NULL && i < edges->len; i++)
    if (bf_selection_is_same (bf_surface_edge (edges, i)->selection, selection))
      return (int)i;
  return -1;
}

/* "front" is the front wall; what is called wall or lip already is left so. */
static char *
wall_name (const char *id)
{
  if (g_str_has_prefix (id, "wall") || strstr (id, "lip") != NULL || strstr (id, "hem") != NULL)
    return g_strdup (id);
  /* Translators: %s is a flange's name: "front wall" */
  return g_strdup_printf (_ ("%s wall"), id);
}

static char *
base_edge_name (const BfFold *fold, const BfSurfaceEdge *edge)
{
  guint number = (guint)edge->selection.edge + 1;
  BfEdge on = { "base", BF_EDGE_INDEX, number - 1 };
  const BfFlange *flange = bf_part_flange_at (fold->part, &on);
  g_autofree char *length = bf_format_length (edge->length_mm, fold->part->units);

  if (flange == NULL)
    /* Translators: an edge's number, and its length with the unit */
    return g_strdup_printf (_ ("Base edge %u, %s"), number, length);
  g_autofree char *wall = wall_name (flange->id);
  /* Translators: an edge's number, its length with the unit, and what stands on it */
  return g_strdup_printf (_ ("Base edge %u, %s, %s"), number, length, wall);
}

static char *
side_name (const BfFold *fold, const BfSurfaceEdge *edge)
{
  const char *id = bf_fold_face (fold, (guint)edge->selection.face)->id;
  const BfFlange *on = bf_selection_flange (fold, edge->selection);
  g_autofree char *length = bf_format_length (edge->length_mm, fold->part->units);
  g_autofree char *name = NULL;

  if (edge->selection.edge == BF_FLANGE_START)
    /* Translators: the side of a flange where its edge begins; its name and its length */
    name = g_strdup_printf (_ ("Start side of %s, %s"), id, length);
  else
    /* Translators: the side of a flange where its edge ends; its name and its length */
    name = g_strdup_printf (_ ("End side of %s, %s"), id, length);
  if (on == NULL)
    return g_steal_pointer (&name);
  g_autofree char *wall = wall_name (on->id);
  return g_strdup_printf ("%s, %s", name, wall);
}

static char *
corner_name (const BfFold *fold, BfSelection corner)
{
  guint at = bf_selection_corner_at (corner);

  if (corner.face == 0)
    /* Translators: the number of a corner of the base */
    return g_strdup_printf (_ ("Base point %u"), at + 1);
  /* Translators: where a flange's start side or end side meets its tip; %s is its name */
  return g_strdup_printf (at == 0 ? _ ("Start corner of %s") : _ ("End corner of %s"),
                          bf_fold_face (fold, (guint)corner.face)->id);
}

char *
bf_surface_edge_name (const BfFold *fold, const BfSurfaceEdge *edge)
{
  g_return_val_if_fail (fold != NULL && edge != NULL, NULL);

  if (bf_selection_is_corner (edge->selection))
    return corner_name (fold, edge->selection);
  if (bf_selection_is_opening (edge->selection))
    return bf_surface_opening_name (fold, edge->selection);
  if (edge->selection.face == 0)
    return base_edge_name (fold, edge);
  if (edge->selection.edge != BF_FLANGE_TIP)
    return side_name (fold, edge);
  g_autofree char *length = bf_format_length (edge->length_mm, fold->part->units);
  /* Translators: a flange's name, and its length with the unit */
  return g_strdup_printf (_ ("Tip of %s, %s"), bf_fold_face (fold, (guint)edge->selection.face)->id,
                          length);
}

gboolean
bf_selection_to_edge (const BfFold *fold, BfSelection selection, BfEdge *edge)
{
  g_return_val_if_fail (fold != NULL && edge != NULL, FALSE);

  if (selection.face < 0 || (guint)selection.face >= fold->faces->len ||
      bf_selection_is_opening (selection) || bf_selection_is_corner (selection))
    return FALSE;
  if (selection.face > 0)
    *edge = (BfEdge){ bf_fold_face (fold, (guint)selection.face)->id, kind_of_side (selection.edge),
                      0 };
  else
    *edge = (BfEdge){ "base", BF_EDGE_INDEX, (guint)MAX (selection.edge, 0) };
  return selection.face > 0 ||
         (selection.edge >= 0 && (guint)selection.edge < bf_part_n_points (fold->part));
}

const BfFlange *
bf_selection_flange (const BfFold *fold, BfSelection selection)
{
  BfEdge edge;

  if (!bf_selection_to_edge (fold, selection, &edge))
    return NULL;
  if (edge.kind == BF_EDGE_TIP)
    return bf_part_find_flange (fold->part, edge.on);
  return bf_part_flange_at (fold->part, &edge);
}

BfSelection
bf_selection_under (const BfFold *fold, const BfFlange *flange)
{
  g_return_val_if_fail (fold != NULL && flange != NULL, BF_SELECTION_NONE);

  int face = bf_fold_find_face (fold, flange->on);
  if (face < 0)
    return BF_SELECTION_NONE;
  switch (flange->edge)
    {
    case BF_EDGE_INDEX:
      return (BfSelection){ face, (int)flange->edge_index };
    case BF_EDGE_START:
      return (BfSelection){ face, BF_FLANGE_START };
    case BF_EDGE_END:
      return (BfSelection){ face, BF_FLANGE_END };
    case BF_EDGE_TIP:
    default:
      return (BfSelection){ face, BF_FLANGE_TIP };
    }
}

BfSelection
bf_selection_in (const BfFold *fold, const char *id, BfSelection before)
{
  int face = fold != NULL && id != NULL ? bf_fold_find_face (fold, id) : -1;
  BfSelection after = { face, before.edge };
  BfCornerHere here;

  if (face < 0)
    return BF_SELECTION_NONE;
  if (bf_selection_is_opening (after))
    return bf_surface_opening_result (fold, after) != NULL ? after : BF_SELECTION_NONE;
  if (face == 0 && before.edge >= (int)bf_part_n_points (fold->part))
    return BF_SELECTION_NONE;
  if (bf_selection_is_point (after) &&
      bf_selection_corner_at (after) >= bf_part_n_points (fold->part))
    return BF_SELECTION_NONE;
  if (face > 0 && bf_selection_is_corner (after))
    return bf_corner_here (fold, id, bf_selection_corner_at (after), &here) ? after
                                                                            : BF_SELECTION_NONE;
  return after;
}

gboolean
bf_part_is_rectangle (const BfPart *part)
{
  g_return_val_if_fail (part != NULL, FALSE);

  if (bf_part_n_points (part) != 4)
    return FALSE;
  for (guint i = 0; i < 4; i++)
    {
      BfVec2 a = bf_vec2_sub (bf_part_point (part, i + 1), bf_part_point (part, i));
      BfVec2 b = bf_vec2_sub (bf_part_point (part, i + 2), bf_part_point (part, i + 1));
      double lengths = bf_vec2_length (a) * bf_vec2_length (b);
      if (fabs (bf_vec2_dot (a, b)) > BF_TOLERANCE_SIZE_MM * MAX (lengths, 1.0))
        return FALSE;
    }
  return TRUE;
}
