/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/layout-sides.h"

#include "core/defaults.h"
#include "core/tolerance.h"
#include "fold/outline.h"
#include "fold/side.h"

/* Room for a cut between a flange and the bare edge beside it (common practice: a hand-held disc
 * or snips can part metal there at all). */
#define BARE_EDGE_ROOM_MM 0.5

/* Less metal than this beside a bend could not be drawn apart from the slits that open it. */
#define LEAST_BESIDE_MM (3.0 * BF_OUTLINE_SLIT_MM)

/* A side's own inset and taper; the taper turns about the flange's tangent. Where the inside mould
 * line lies out in the flat, as at a score, the bend is as wide as the flat that stands on it. */
static void
add_own_line (BfFlap *flap, BfSideName name)
{
  const BfFlange *flange = flap->flange;
  double inset = name == BF_SIDE_START ? flange->start_mm : flange->end_mm;
  double taper = name == BF_SIDE_START ? flange->start_taper_deg : flange->end_taper_deg;

  flap->sides[name].own = inset > BF_TOLERANCE_ZERO || fabs (taper) > BF_TOLERANCE_ZERO;
  if (flap->sides[name].own && bf_side_mould_w (flap) > 0.0)
    bf_side_add_flat (&flap->sides[name], inset, tan (bf_deg_to_rad (taper)));
  else if (flap->sides[name].own)
    bf_side_add (&flap->sides[name], inset, tan (bf_deg_to_rad (taper)));
}

void
bf_sides_add_own (BfFlap *flap)
{
  add_own_line (flap, BF_SIDE_START);
  add_own_line (flap, BF_SIDE_END);
}

static double
inset_mm (const BfFlap *flap, BfSideName name)
{
  return name == BF_SIDE_START ? flap->flange->start_mm : flap->flange->end_mm;
}

void
bf_side_begin_own (BfFlap *flap, BfSideName name, double q_mm)
{
  BfSide *side = &flap->sides[name];

  if (side->own && inset_mm (flap, name) <= BF_TOLERANCE_ZERO)
    side->trims[0].at_mm = q_mm;
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
  bf_side_keep_beyond_line (flap, name, (BfFlatLine){ outward, vertex, room });
  /* Inside the drawn line the end relief parts the zone from the base, not this cut. */
  limit = MAX (limit, room / (inward * bf_vec2_dot (outward, flap->edge_e)));
  side->zone_limit_mm = MAX (limit, bf_side_at (side, 0.0));
  /* Where the bare edge leans away, what the flange could gain is metal that the base has beside
   * it, as far as its drawn edge: it ends square. */
  bf_side_add_flat (side, side->zone_limit_mm, 0.0);
}

/* Where the bare edge leans over the bend the flat goes on as far as an edge drawn outside would,
 * whatever the part's measure. */
static void
go_on_to_outer_line (BfFlap *flap, BfSideName name, double per_mm)
{
  double q = (flap->sums.setback_mm - flap->sums.outside_setback_mm) * per_mm;

  if (q > -BF_TOLERANCE_SIZE_MM)
    return;
  bf_side_begin_own (flap, name, q);
  if (!flap->sides[name].own)
    bf_side_add_flat (&flap->sides[name], q, 0.0);
}

/* A flange beside a bare line that leaves its edge's end along `beside` (in the parent's own
 * coordinates). Where that line leans over the bend (an acute corner) the zone ends where its
 * tangent meets the line; where it leans away the drawn metal stays beside the bend, as it does
 * beside an inset. FALSE where the line runs on or outward. */
static gboolean
settle_bare_end (BfFlap *flap, BfSideName name, BfVec2 beside)
{
  double inward = name == BF_SIDE_START ? 1.0 : -1.0;
  double depth = -bf_vec2_dot (beside, flap->edge_n);
  double along = inward * bf_vec2_dot (beside, flap->edge_e);
  BfSide *side = &flap->sides[name];
  double at_tangent;

  if (depth <= BF_TOLERANCE_SIZE_MM * bf_vec2_length (beside))
    {
      side->bare_beside = TRUE;
      return FALSE;
    }
  at_tangent = flap->sums.setback_mm * along / depth;
  if (at_tangent > -BF_TOLERANCE_SIZE_MM)
    side->zone_limit_mm = MAX (side->zone_limit_mm, at_tangent);
  side->bare_beside = inset_mm (flap, name) > at_tangent + 2.0 * BF_OUTLINE_SLIT_MM;
  return TRUE;
}

static void
settle_bare_base_end (const BfLayout *layout, BfFlap *flap, BfSideName name)
{
  guint n = bf_part_n_points (layout->part), edge = flap->flange->edge_index;
  guint at = name == BF_SIDE_START ? edge : (edge + 1) % n;
  BfVec2 vertex = bf_part_point (layout->part, at);
  BfVec2 away = bf_part_point (layout->part, name == BF_SIDE_START ? (at + n - 1) % n : at + 1);
  BfVec2 beside = bf_vec2_sub (away, vertex);
  double outward = bf_vec2_dot (beside, flap->edge_n);
  double along = (name == BF_SIDE_START ? 1.0 : -1.0) * bf_vec2_dot (beside, flap->edge_e);

  if (outward < 0.0 && along > 0.0)
    go_on_to_outer_line (flap, name, along / -outward);
  if (!settle_bare_end (flap, name, beside) &&
      outward > BF_TOLERANCE_SIZE_MM * bf_vec2_length (beside))
    keep_off_bare_edge (layout, flap, name, vertex, beside);
}

/* q of the parent's side at which the flap's tangent meets the parent's root line. */
static double
root_q (const BfFlap *parent, const BfFlap *flap)
{
  double u = flap->edge_start.x +
             (flap->edge_start.y * flap->edge_n.y - flap->sums.setback_mm) / flap->edge_n.x;
  return flap->flange->edge == BF_EDGE_START ? u : parent->edge_length_mm - u;
}

/* Where metal goes on beside the parent's bend, what hangs on the parent's side there begins clear
 * of that metal's drawn edge: so far from the parent's root, along the flap's edge. */
static double
root_room_mm (const BfLayout *layout, const BfFlap *parent, const BfFlap *flap)
{
  double room = MAX (bf_part_resolve_gap_mm (layout->part, NULL), BARE_EDGE_ROOM_MM);

  return (room + parent->sums.setback_mm - parent->sums.allowance_mm) / fabs (flap->edge_e.y);
}

/* A scored parent stands down in the metal of what it hangs on, as far up as its inside mould line:
 * what hangs on its side, where its edge begins at at_w, begins above that. What turns the other
 * way leaves that metal's edge sideways, and begins above its upper corner: at the bend's tangent,
 * or on the drawn line where the metal goes on beside the parent (drawn). */
static double
score_room_mm (const BfFlap *parent, const BfFlap *flap, double at_w, gboolean drawn)
{
  double above = bf_side_mould_w (parent);
  double to_drawn = drawn ? parent->sums.setback_mm * cos (parent->angle_rad) : 0.0;

  if (above > 0.0 && flap->flange->turn != parent->flange->turn)
    above = MAX (above, MAX (to_drawn, 0.0) - parent->radius_mm * sin (parent->angle_rad));
  return above > 0.0 ? (above - at_w) / fabs (flap->edge_e.y) : 0.0;
}

/* A flange on a side that begins at its parent's root has the parent's own bend beside it, or
 * metal of the parent where it has to begin above where the bare line alone would have it. */
static void
settle_root (const BfLayout *layout, BfFlap *flap, BfSideName name, double bare_mm)
{
  const BfFlap *parent = &layout->flaps[flap->parent];
  BfSideName on = flap->flange->edge == BF_EDGE_START ? BF_SIDE_START : BF_SIDE_END;
  BfSide *side = &flap->sides[name];
  double end = name == BF_SIDE_START ? 0.0 : flap->edge_length_mm;
  double at_w = flap->edge_start.y + flap->edge_e.y * end;
  double room = score_room_mm (parent, flap, at_w, parent->sides[on].bare_beside);
  gboolean at_root = at_w <= BF_TOLERANCE_SIZE_MM;

  if (at_root && parent->sides[on].bare_beside)
    room = MAX (room, root_room_mm (layout, parent, flap));
  if (room > BF_TOLERANCE_SIZE_MM)
    bf_side_add (side, room, 0.0);
  bf_side_settle (flap, name);
  if (side->zone_mm > bare_mm + BF_TOLERANCE_SIZE_MM)
    {
      side->zone_limit_mm = MAX (side->zone_mm, bare_mm + LEAST_BESIDE_MM);
      side->bare_beside = TRUE;
      if (side->zone_limit_mm > inset_mm (flap, name) + BF_TOLERANCE_SIZE_MM)
        bf_side_add_flat (side, side->zone_limit_mm, 0.0);
      return;
    }
  side->at_root = at_root && parent->sides[on].zone_mm < root_q (parent, flap) - BF_OUTLINE_SLIT_MM;
  side->bare_beside = side->at_root;
}

static gboolean
is_outermost (const BfLayout *layout, const BfFlap *flap, BfSideName name)
{
  const GPtrArray *edge = flap->parent < 0
                              ? layout->base_edges[flap->flange->edge_index]
                              : bf_flap_carried (&layout->flaps[flap->parent], flap->flange->edge);
  return g_ptr_array_index (edge, name == BF_SIDE_START ? 0 : edge->len - 1) == flap;
}

/* An outermost end that meets no other flange, on whatever the flap hangs on. */
static void
settle_outer_end (const BfLayout *layout, BfFlap *flap, BfSideName name)
{
  BfSide *side = &flap->sides[name];
  double limit_mm = MAX (side->zone_limit_mm, 0.0), bare_mm;

  if (flap->parent < 0)
    {
      settle_bare_base_end (layout, flap, name);
      return;
    }
  side->zone_limit_mm = 0.0;
  if (flap->flange->edge == BF_EDGE_TIP)
    side->bare_beside = inset_mm (flap, name) > 2.0 * BF_OUTLINE_SLIT_MM;
  else
    settle_bare_end (flap, name, flap->beside[name]);
  bare_mm = side->zone_limit_mm;
  side->zone_limit_mm = MAX (limit_mm, bare_mm);
  if (bf_flap_end_is_root (flap, name))
    settle_root (layout, flap, name, bare_mm);
}

void
bf_sides_settle (const BfLayout *layout, BfFlap *flap)
{
  for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
    {
      BfSide *side = &flap->sides[name];

      if (side->meeting < 0 && is_outermost (layout, flap, name))
        settle_outer_end (layout, flap, name);
      else if (side->meeting < 0)
        side->bare_beside = TRUE;
      bf_side_settle (flap, name);
    }
}
