/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/corner.h"

#include "core/defaults.h"
#include "core/tolerance.h"
#include "fold/corner-sides.h"
#include "fold/end-relief.h"
#include "fold/end-wall.h"
#include "fold/folded-corner.h"
#include "fold/layout-sides.h"
#include "fold/plan-reach.h"
#include "fold/side.h"
#include "fold/tabs.h"

gboolean
bf_corner_is_convex (const BfMeeting *meeting)
{
  return meeting->interior_rad < G_PI - 1e-6;
}

/* A line along a flap's edge, moved outward by v: n · (x − vertex) = v. */
typedef struct
{
  BfVec2 n;
  double v;
} EdgeLine;

/* Crossing of two lines at a vertex. FALSE where they are parallel. */
static gboolean
cross_lines (BfVec2 vertex, EdgeLine a, EdgeLine b, BfVec2 *out)
{
  double det = bf_vec2_cross (a.n, b.n);

  if (fabs (det) < 1e-6)
    return FALSE;
  out->x = vertex.x + (a.v * b.n.y - b.v * a.n.y) / det;
  out->y = vertex.y + (a.n.x * b.v - b.n.x * a.v) / det;
  return TRUE;
}

static void
fill_crossings (const BfLayout *layout, BfMeeting *meeting)
{
  const BfFlap *a = bf_meeting_flap (layout, meeting, BF_SIDE_END);
  const BfFlap *b = bf_meeting_flap (layout, meeting, BF_SIDE_START);
  EdgeLine tangent_a = { a->edge_n, -a->sums.setback_mm };
  EdgeLine tangent_b = { b->edge_n, -b->sums.setback_mm };
  EdgeLine bend_a = { a->edge_n, bf_flap_bend_v (a) }, bend_b = { b->edge_n, bf_flap_bend_v (b) };

  meeting->has_crossing =
      cross_lines (meeting->vertex, tangent_a, tangent_b, &meeting->tangent_crossing) &&
      cross_lines (meeting->vertex, bend_a, bend_b, &meeting->bend_crossing);
}

/* TRUE where the flap stands so far along its edge from the corner that the other flange can be
 * made and folded whole beside it: wherever it reaches, it lies inside the other's tangent with
 * room for an end relief, and beyond what of the other leans in. */
static gboolean
stands_clear (const BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  const BfFlap *flap = bf_meeting_flap (layout, meeting, name);
  const BfFlap *other = bf_meeting_flap (layout, meeting, bf_other_side (name));
  BfVec2 in = bf_meeting_in (meeting, name);
  const BfSide *side = &flap->sides[name];
  BfPlanReach own = bf_plan_reach (flap), its = bf_plan_reach (other);
  double relief = bf_end_relief_reach_mm (layout->part, flap, name);
  double outer_v = flap->sums.outside_setback_mm - flap->sums.setback_mm;
  double tip_w = flap->tip_w_mm + flap->tip_shift_mm;
  const struct
  {
    double w, v, room;
  } points[] = {
    { 0.0, outer_v, MAX (-its.inward_mm, relief) },
    { tip_w, outer_v + own.outward_mm, MAX (-its.inward_mm, relief) },
    { tip_w, outer_v + own.inward_mm, MAX (-its.inward_mm, relief) },
    { 0.0, bf_end_relief_notch_v (layout, flap), relief }, /* at an acute corner the nearest */
  };

  for (guint i = 0; i < G_N_ELEMENTS (points); i++)
    {
      BfVec2 foot = bf_vec2_scale (in, bf_side_at (side, points[i].w));
      BfVec2 p = bf_vec2_along (foot, flap->edge_n, points[i].v);

      if (-bf_vec2_dot (p, other->edge_n) < other->sums.setback_mm + points[i].room)
        return FALSE;
    }
  return TRUE;
}

/* Where the two drawn lines would cross if the part were counted outside. What stands free of both
 * inside planes is measured from there, so that the part's measure does not change the metal. */
static void
fill_outer_vertex (const BfLayout *layout, BfMeeting *meeting)
{
  const BfFlap *a = bf_meeting_flap (layout, meeting, BF_SIDE_END);
  const BfFlap *b = bf_meeting_flap (layout, meeting, BF_SIDE_START);
  EdgeLine line_a = { a->edge_n, a->sums.outside_setback_mm - a->sums.setback_mm };
  EdgeLine line_b = { b->edge_n, b->sums.outside_setback_mm - b->sums.setback_mm };

  if (!cross_lines (meeting->vertex, line_a, line_b, &meeting->outer_vertex))
    meeting->outer_vertex = meeting->vertex;
}

BfVec2
bf_meeting_point (const BfLayout *layout, const BfMeeting *meeting, BfVec2 p)
{
  return meeting->face < 0 ? p : bf_flap_to_blank (&layout->flaps[meeting->face], p.x, p.y);
}

BfVec2
bf_meeting_vector (const BfLayout *layout, const BfMeeting *meeting, BfVec2 v)
{
  return meeting->face < 0 ? v : bf_flap_vector_to_blank (&layout->flaps[meeting->face], v);
}

const char *
bf_meeting_on (const BfLayout *layout, const BfMeeting *meeting)
{
  return meeting->face < 0 ? "base" : layout->flaps[meeting->face].flange->id;
}

char *
bf_meeting_where (const BfLayout *layout, const BfMeeting *meeting)
{
  return g_strdup_printf ("%s:%u", bf_meeting_on (layout, meeting), meeting->at);
}

/* Everything but whose corner it is, and which flaps meet there. */
static void
fill_meeting (const BfLayout *layout, BfMeeting *meeting)
{
  BfFlap *a = bf_meeting_flap (layout, meeting, BF_SIDE_END);
  BfFlap *b = bf_meeting_flap (layout, meeting, BF_SIDE_START);
  double exterior =
      atan2 (bf_vec2_cross (a->edge_e, b->edge_e), bf_vec2_dot (a->edge_e, b->edge_e));
  BfFoldedPlan plan;

  if (meeting->face >= 0) /* u and w run the other way round */
    exterior = -exterior;
  meeting->asked = bf_part_find_corner (layout->part, bf_meeting_on (layout, meeting), meeting->at);
  meeting->join = bf_part_resolve_join (layout->part, meeting->asked);
  meeting->gap_mm = bf_part_resolve_gap_mm (layout->part, meeting->asked);
  meeting->end_wall = bf_end_wall (layout, meeting);
  meeting->tabbed = bf_tab_of (layout, meeting) != NULL;
  meeting->interior_rad = G_PI - exterior;
  meeting->vertex = b->edge_start;
  meeting->before_in = bf_vec2_scale (a->edge_e, -1.0);
  meeting->after_in = b->edge_e;
  meeting->folded = meeting->join == BF_JOIN_FOLDED && bf_corner_is_convex (meeting) &&
                    bf_meeting_turns_alike (layout, meeting) &&
                    bf_folded_corner_plan (layout, meeting, &plan).trouble == BF_FOLDED_FITS;
  fill_crossings (layout, meeting);
  fill_outer_vertex (layout, meeting);
}

/* The flap that stands last before the corner, or first after it, or NULL. */
static const BfFlap *
nearest (const GPtrArray *edge, BfSideName name)
{
  const BfFlap *flap;

  if (edge == NULL || edge->len == 0)
    return NULL;
  flap = g_ptr_array_index (edge, name == BF_SIDE_END ? edge->len - 1 : 0);
  return flap->placed ? flap : NULL;
}

/* Takes down the corner if flanges of both its edges meet there. A tab keeps off it. */
static void
find_meeting (BfLayout *layout, BfMeeting meeting, const GPtrArray *before, const GPtrArray *after)
{
  const BfFlap *a = nearest (before, BF_SIDE_END), *b = nearest (after, BF_SIDE_START);
  BfVec2 end;

  if (a == NULL || b == NULL || a->flange->is_tab || b->flange->is_tab)
    return;
  end = bf_vec2_along (a->edge_start, a->edge_e, a->edge_length_mm);
  if (bf_vec2_distance (end, b->edge_start) > BF_TOLERANCE_SIZE_MM)
    return; /* a flange on a bent side need not reach the corner */
  meeting.before = (int)(a - layout->flaps);
  meeting.after = (int)(b - layout->flaps);
  fill_meeting (layout, &meeting);
  if (stands_clear (layout, &meeting, BF_SIDE_END) ||
      stands_clear (layout, &meeting, BF_SIDE_START))
    return;
  bf_meeting_flap (layout, &meeting, BF_SIDE_END)->sides[BF_SIDE_END].meeting =
      (int)layout->meetings->len;
  bf_meeting_flap (layout, &meeting, BF_SIDE_START)->sides[BF_SIDE_START].meeting =
      (int)layout->meetings->len;
  g_array_append_val (layout->meetings, meeting);
}

void
bf_corners_find (BfLayout *layout)
{
  guint n = bf_part_n_points (layout->part);

  for (guint i = 0; i < n; i++)
    find_meeting (layout, (BfMeeting){ .face = -1, .at = i }, layout->base_edges[(i + n - 1) % n],
                  layout->base_edges[i]);
}

void
bf_corners_find_on (BfLayout *layout, const BfFlap *flap)
{
  int face = (int)(flap - layout->flaps);

  find_meeting (layout, (BfMeeting){ .face = face, .at = 0 }, flap->on_side[BF_SIDE_START],
                flap->on_tip);
  find_meeting (layout, (BfMeeting){ .face = face, .at = 1 }, flap->on_tip,
                flap->on_side[BF_SIDE_END]);
}

static void
keep_from_tangent_crossing (BfFlap *flap, const BfMeeting *meeting, BfSideName name)
{
  BfVec2 in = bf_meeting_in (meeting, name);
  double q = bf_vec2_dot (bf_vec2_sub (meeting->tangent_crossing, meeting->vertex), in);

  if (meeting->has_crossing)
    flap->sides[name].zone_limit_mm = MAX (flap->sides[name].zone_limit_mm, q);
}

void
bf_corner_trim (BfLayout *layout, const BfMeeting *meeting)
{
  gboolean by_planes = bf_corner_is_convex (meeting) && bf_meeting_turns_alike (layout, meeting);

  if (meeting->folded)
    bf_folded_corner_trim (layout, meeting);
  for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
    {
      if (meeting->face < 0)
        bf_side_begin_own (bf_meeting_flap (layout, meeting, name), name,
                           bf_meeting_outer_q (meeting, name));
      if (by_planes && !meeting->folded)
        bf_corner_close (layout, meeting, name);
      else if (!by_planes)
        bf_corner_trim_at_bisector (layout, meeting, name);
      keep_from_tangent_crossing (bf_meeting_flap (layout, meeting, name), meeting, name);
    }
}
