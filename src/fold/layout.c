/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/layout.h"

#include "core/defaults.h"
#include "core/tolerance.h"
#include "fold/corner.h"
#include "fold/outline.h"
#include "fold/side.h"

/* Room for a cut between a flange and the bare edge beside it (common practice: a hand-held disc
 * or snips can part metal there at all). */
#define BARE_EDGE_ROOM_MM 0.5

/* ---- building ---------------------------------------------------------------------------- */

static int
compare_flaps (const void *a, const void *b)
{
  return strcmp (((const BfFlap *)a)->flange->id, ((const BfFlap *)b)->flange->id);
}

int
bf_layout_find_flap (const BfLayout *layout, const char *id)
{
  const BfFlange key_flange = { .id = (char *)id };
  const BfFlap key = { .flange = &key_flange };
  const BfFlap *found =
      bsearch (&key, layout->flaps, layout->n_flaps, sizeof *layout->flaps, compare_flaps);

  return found == NULL ? -1 : (int)(found - layout->flaps);
}

static void
init_flap (const BfLayout *layout, BfFlap *flap, const BfFlange *flange)
{
  const BfPart *part = layout->part;

  flap->flange = flange;
  flap->parent = -1;
  flap->bend = bf_part_resolve_bend (part, flange);
  flap->angle_rad = bf_deg_to_rad (flange->angle_deg);
  flap->radius_mm = flap->bend.inside_radius_mm;
  bf_bend_sums (&flap->bend, flap->angle_rad, layout->thickness_mm, part->measure, &flap->sums);
  flap->tip_w_mm = flange->length_mm - flap->sums.setback_mm;
  for (int i = 0; i < 2; i++)
    {
      flap->sides[i].zone_limit_mm = -G_MAXDOUBLE;
      flap->sides[i].meeting = -1;
    }
}

static guint
depth_of (const BfLayout *layout, const BfFlap *flap)
{
  guint depth = 0;

  while (flap->parent >= 0 && depth <= layout->n_flaps)
    {
      flap = &layout->flaps[flap->parent];
      depth++;
    }
  return depth;
}

static int
compare_order (gconstpointer a, gconstpointer b, gpointer data)
{
  const BfLayout *layout = data;
  guint x = *(const guint *)a, y = *(const guint *)b;
  guint depth_x = layout->flaps[x].depth, depth_y = layout->flaps[y].depth;

  return depth_x != depth_y ? (int)depth_x - (int)depth_y : (int)x - (int)y;
}

static int
compare_starts (gconstpointer a, gconstpointer b)
{
  const BfFlap *x = *(BfFlap *const *)a, *y = *(BfFlap *const *)b;
  double dx = x->flange->start_mm, dy = y->flange->start_mm;

  return dx > dy ? 1 : dx < dy ? -1 : strcmp (x->flange->id, y->flange->id);
}

static void
link_to_tip (BfFlap *parent, BfFlap *flap)
{
  if (parent->on_tip == NULL)
    parent->on_tip = g_ptr_array_new ();
  g_ptr_array_add (parent->on_tip, flap);
  g_ptr_array_sort (parent->on_tip, compare_starts);
  parent->tip_setback_mm = MAX (parent->tip_setback_mm, flap->sums.setback_mm);
  parent->tip_shift_mm =
      MAX (parent->tip_shift_mm, flap->sums.outside_setback_mm - flap->sums.setback_mm);
}

static void
link_parents (BfLayout *layout)
{
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      BfFlap *flap = &layout->flaps[i];

      layout->order[i] = i;
      if (flap->flange->edge != BF_EDGE_INDEX)
        flap->parent = bf_layout_find_flap (layout, flap->flange->on);
      if (flap->parent >= 0 && flap->flange->edge == BF_EDGE_TIP)
        link_to_tip (&layout->flaps[flap->parent], flap);
    }
  for (guint i = 0; i < layout->n_flaps; i++)
    layout->flaps[i].depth = depth_of (layout, &layout->flaps[i]);
  g_qsort_with_data (layout->order, (int)layout->n_flaps, sizeof *layout->order, compare_order,
                     layout);
}

BfLayout *
bf_layout_new (BfPart *part)
{
  BfLayout *layout = g_new0 (BfLayout, 1);
  guint n_points = bf_part_n_points (part);

  layout->part = part;
  layout->thickness_mm = part->metal.thickness_mm;
  layout->n_flaps = bf_part_n_flanges (part);
  /* One more than is used: sorting and searching take no NULL, and a part may have no flange. */
  layout->flaps = g_new0 (BfFlap, layout->n_flaps + 1);
  layout->order = g_new0 (guint, layout->n_flaps + 1);
  layout->meetings = g_array_new (FALSE, TRUE, sizeof (BfMeeting));
  layout->base_edges = g_new0 (GPtrArray *, n_points + 1);
  for (guint i = 0; i < n_points; i++)
    layout->base_edges[i] = g_ptr_array_new ();
  for (guint i = 0; i < layout->n_flaps; i++)
    init_flap (layout, &layout->flaps[i], bf_part_flange (part, i));
  qsort (layout->flaps, layout->n_flaps, sizeof *layout->flaps, compare_flaps);
  link_parents (layout);
  return layout;
}

void
bf_layout_free (BfLayout *layout)
{
  if (layout == NULL)
    return;
  for (guint i = 0; layout->base_edges[i] != NULL; i++)
    g_ptr_array_unref (layout->base_edges[i]);
  g_free (layout->base_edges);
  g_array_unref (layout->meetings);
  for (guint i = 0; i < layout->n_flaps; i++)
    g_clear_pointer (&layout->flaps[i].on_tip, g_ptr_array_unref);
  g_free (layout->order);
  g_free (layout->flaps);
  g_free (layout);
}

/* ---- placing ----------------------------------------------------------------------------- */

BfVec2
bf_flap_to_blank (const BfFlap *flap, double u_mm, double w_mm)
{
  double v = w_mm - flap->sums.setback_mm + flap->sums.allowance_mm;
  return bf_vec2_along (bf_vec2_along (flap->flat_origin, flap->flat_e, u_mm), flap->flat_n, v);
}

const BfPose bf_base_pose = {
  { 0.0, 0.0, 0.0 }, { 1.0, 0.0, 0.0 }, { 0.0, 1.0, 0.0 }, { 0.0, 0.0, 1.0 }
};

void
bf_flap_pose (
    const BfLayout *layout, const BfFlap *flap, const BfPose *parent, BfTurned turned, BfPose *pose)
{
  const BfPose *on = parent != NULL ? parent : &bf_base_pose;
  BfVec2 foot = bf_vec2_along (flap->edge_start, flap->edge_n, -flap->sums.setback_mm);
  BfVec3 tangent = bf_pose_point (on, foot);
  BfVec3 n = bf_pose_vector (on, flap->edge_n);
  double sign = flap->flange->turn == BF_TURN_UP ? 1.0 : -1.0;
  double r = sign > 0.0 ? turned.radius_mm : turned.radius_mm + layout->thickness_mm;
  double sine = sin (turned.angle_rad), cosine = cos (turned.angle_rad);

  pose->e = bf_pose_vector (on, flap->edge_e);
  pose->d = bf_vec3_along (bf_vec3_scale (n, cosine), on->m, sign * sine);
  pose->m = bf_vec3_along (bf_vec3_scale (n, -sign * sine), on->m, cosine);
  pose->origin =
      bf_vec3_along (bf_vec3_along (tangent, n, r * sine), on->m, sign * r * (1.0 - cosine));
}

static gboolean
find_base_edge (const BfLayout *layout, BfFlap *flap)
{
  guint i = flap->flange->edge_index;
  BfVec2 from, to;

  if (i >= bf_part_n_points (layout->part))
    return FALSE;
  from = bf_part_point (layout->part, i);
  to = bf_part_point (layout->part, i + 1);
  flap->edge_length_mm = bf_vec2_distance (from, to);
  flap->edge_start = from;
  flap->edge_e = bf_vec2_unit (bf_vec2_sub (to, from));
  flap->edge_n = bf_vec2 (flap->edge_e.y, -flap->edge_e.x);
  return flap->edge_length_mm > BF_TOLERANCE_SIZE_MM;
}

/* On sloping sides a child takes the narrower of its parent's width at the tip and at the child's
 * tangent, so that its bend has metal on both sides. */
static gboolean
find_tip_edge (const BfLayout *layout, BfFlap *flap)
{
  const BfFlap *parent = &layout->flaps[flap->parent];
  double tip = parent->tip_w_mm, tangent = tip - flap->sums.setback_mm;
  double outer_tip = tangent + flap->sums.outside_setback_mm; /* whatever the part's measure */
  const BfSide *start = &parent->sides[BF_SIDE_START], *end = &parent->sides[BF_SIDE_END];
  double from = MAX (bf_side_at (start, outer_tip), bf_side_at (start, tangent));
  double to = parent->edge_length_mm - MAX (bf_side_at (end, outer_tip), bf_side_at (end, tangent));

  flap->edge_length_mm = to - from;
  flap->edge_start = bf_vec2 (from, tip);
  flap->edge_e = bf_vec2 (1.0, 0.0);
  flap->edge_n = bf_vec2 (0.0, 1.0);
  return parent->placed && flap->edge_length_mm > BF_TOLERANCE_SIZE_MM;
}

static void
place_in_flat (const BfLayout *layout, BfFlap *flap)
{
  const BfFlap *parent = flap->parent >= 0 ? &layout->flaps[flap->parent] : NULL;

  if (parent == NULL)
    {
      flap->flat_origin = flap->edge_start;
      flap->flat_e = flap->edge_e;
      flap->flat_n = flap->edge_n;
      return;
    }
  flap->flat_origin = bf_flap_to_blank (parent, flap->edge_start.x, flap->edge_start.y);
  flap->flat_e = parent->flat_e;
  flap->flat_n = parent->flat_n;
}

void
bf_layout_place (BfLayout *layout, BfFlap *flap)
{
  const BfFlap *parent = flap->parent >= 0 ? &layout->flaps[flap->parent] : NULL;

  if (flap->flange->edge == BF_EDGE_INDEX)
    flap->placed = find_base_edge (layout, flap);
  else if (flap->flange->edge == BF_EDGE_TIP && parent != NULL)
    flap->placed = find_tip_edge (layout, flap);
  if (!flap->placed)
    return;

  place_in_flat (layout, flap);
  bf_flap_pose (layout, flap, parent != NULL ? &parent->pose : NULL,
                (BfTurned){ flap->angle_rad, flap->radius_mm }, &flap->pose);
}

/* ---- sides ------------------------------------------------------------------------------- */

/* A side's own inset and taper; the taper turns about the flange's tangent. */
static void
add_own_line (BfFlap *flap, BfSideName name)
{
  const BfFlange *flange = flap->flange;
  double inset = name == BF_SIDE_START ? flange->start_mm : flange->end_mm;
  double taper = name == BF_SIDE_START ? flange->start_taper_deg : flange->end_taper_deg;

  flap->sides[name].own = inset > BF_TOLERANCE_ZERO || fabs (taper) > BF_TOLERANCE_ZERO;
  if (flap->sides[name].own)
    bf_side_add (&flap->sides[name], inset, tan (bf_deg_to_rad (taper)));
}

static void
add_own_lines (BfFlap *flap)
{
  add_own_line (flap, BF_SIDE_START);
  add_own_line (flap, BF_SIDE_END);
}

static double
inset_mm (const BfFlap *flap, BfSideName name)
{
  return name == BF_SIDE_START ? flap->flange->start_mm : flap->flange->end_mm;
}

/* At an inside corner whose other edge is bare, the base's metal lies beside the flange in the flat
 * too: the cut between them needs room for the tool. */
static void
keep_off_bare_edge (
    const BfLayout *layout, BfFlap *flap, BfSideName name, BfVec2 vertex, BfVec2 beside)
{
  BfVec2 along = bf_vec2_unit (beside);
  BfVec2 outward = name == BF_SIDE_END ? bf_vec2 (along.y, -along.x) : bf_vec2 (-along.y, along.x);
  double room = MAX (bf_part_resolve_gap_mm (layout->part, NULL), BARE_EDGE_ROOM_MM);
  BfSide *side = &flap->sides[name];
  double limit = side->zone_limit_mm, inward = name == BF_SIDE_START ? 1.0 : -1.0;

  if (!side->own)
    bf_side_add (side, 0.0, 0.0);
  bf_side_keep_beyond_line (flap, name, outward, vertex, room);
  /* Inside the drawn line the end relief parts the zone from the base, not this cut. */
  limit = MAX (limit, room / (inward * bf_vec2_dot (outward, flap->edge_e)));
  side->zone_limit_mm = MAX (limit, bf_side_at (side, 0.0));
}

/* A flange whose neighbour edge is bare. Where that edge leans over the bend (an acute corner) the
 * zone ends where its tangent meets the edge; where it leans away the drawn base stays beside the
 * bend, as it does beside an inset. */
static void
settle_bare_base_end (const BfLayout *layout, BfFlap *flap, BfSideName name)
{
  guint n = bf_part_n_points (layout->part), edge = flap->flange->edge_index;
  guint at = name == BF_SIDE_START ? edge : (edge + 1) % n;
  BfVec2 vertex = bf_part_point (layout->part, at);
  BfVec2 away = bf_part_point (layout->part, name == BF_SIDE_START ? (at + n - 1) % n : at + 1);
  BfVec2 beside = bf_vec2_sub (away, vertex);
  double inward = name == BF_SIDE_START ? 1.0 : -1.0;
  double depth = -bf_vec2_dot (beside, flap->edge_n);
  double along = inward * bf_vec2_dot (beside, flap->edge_e);
  BfSide *side = &flap->sides[name];
  double at_tangent;

  if (depth <= BF_TOLERANCE_SIZE_MM * bf_vec2_length (beside))
    {
      side->bare_beside = TRUE; /* an inside or a straight corner: the base runs on */
      if (depth < -BF_TOLERANCE_SIZE_MM * bf_vec2_length (beside))
        keep_off_bare_edge (layout, flap, name, vertex, beside);
      return;
    }
  at_tangent = flap->sums.setback_mm * along / depth;
  if (at_tangent > -BF_TOLERANCE_SIZE_MM)
    side->zone_limit_mm = MAX (side->zone_limit_mm, at_tangent);
  side->bare_beside = inset_mm (flap, name) > at_tangent + 2.0 * BF_OUTLINE_SLIT_MM;
}

static gboolean
is_outermost (const BfLayout *layout, const BfFlap *flap, BfSideName name)
{
  const GPtrArray *edge = layout->base_edges[flap->flange->edge_index];
  return g_ptr_array_index (edge, name == BF_SIDE_START ? 0 : edge->len - 1) == flap;
}

/* What holds at an end that meets no other flange. */
static void
settle_free_end (const BfLayout *layout, BfFlap *flap, BfSideName name)
{
  BfSide *side = &flap->sides[name];

  if (flap->parent >= 0)
    {
      side->bare_beside = inset_mm (flap, name) > 2.0 * BF_OUTLINE_SLIT_MM;
      side->zone_limit_mm = MAX (side->zone_limit_mm, 0.0);
    }
  else if (side->meeting < 0 && is_outermost (layout, flap, name))
    settle_bare_base_end (layout, flap, name);
  else if (side->meeting < 0)
    side->bare_beside = TRUE;
}

static void
settle (const BfLayout *layout, BfFlap *flap)
{
  for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
    {
      settle_free_end (layout, flap, name);
      bf_side_settle (flap, name);
    }
}

/* The root flange below a flap of a chain of tips, or −1 where the chain passes a side. */
static int
root_of (const BfLayout *layout, const BfFlap *flap)
{
  while (flap->parent >= 0)
    {
      if (flap->flange->edge != BF_EDGE_TIP)
        return -1;
      flap = &layout->flaps[flap->parent];
    }
  return (int)(flap - layout->flaps);
}

/* A flange on a tip meets the neighbour of the flange it stands on, and what hangs on that. */
static void
mitre_lip (BfLayout *layout, BfFlap *flap)
{
  int root = root_of (layout, flap);

  if (root < 0)
    return;
  for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
    {
      int i = layout->flaps[root].sides[name].meeting;

      if (i >= 0)
        bf_corner_mitre (layout, bf_layout_meeting (layout, (guint)i), flap, name);
    }
}

static void
unfold_base_level (BfLayout *layout)
{
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      BfFlap *flap = &layout->flaps[i];

      if (flap->flange->edge != BF_EDGE_INDEX)
        continue;
      bf_layout_place (layout, flap);
      add_own_lines (flap);
      if (flap->placed)
        g_ptr_array_add (layout->base_edges[flap->flange->edge_index], flap);
    }
  for (guint i = 0; i < bf_part_n_points (layout->part); i++)
    g_ptr_array_sort (layout->base_edges[i], compare_starts);

  bf_corners_find (layout);
  for (guint i = 0; i < layout->meetings->len; i++)
    bf_corner_trim (layout, bf_layout_meeting (layout, i));
}

void
bf_layout_unfold (BfLayout *layout)
{
  unfold_base_level (layout);
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      BfFlap *flap = &layout->flaps[layout->order[i]];

      if (flap->flange->edge != BF_EDGE_INDEX)
        {
          bf_layout_place (layout, flap);
          add_own_lines (flap);
          if (flap->placed)
            mitre_lip (layout, flap);
        }
      if (flap->placed)
        settle (layout, flap);
    }
}
