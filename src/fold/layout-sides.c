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

void
bf_sides_settle (const BfLayout *layout, BfFlap *flap)
{
  for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
    {
      settle_free_end (layout, flap, name);
      bf_side_settle (flap, name);
    }
}
