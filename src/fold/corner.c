/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/corner.h"

#include "core/defaults.h"
#include "core/tolerance.h"
#include "fold/corner-planes.h"
#include "fold/end-relief.h"
#include "fold/plan-reach.h"
#include "fold/side.h"

#define HEM_RAD (G_PI - 1e-6)

/* A plane of space, and how far off it something has to stay. */
typedef struct
{
  BfVec3 normal, through;
  double off_mm;
} Plane;

static gboolean
is_hem (const BfFlap *flap)
{
  return flap->angle_rad > HEM_RAD;
}

static BfFlap *
flap_of (const BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  return &layout->flaps[name == BF_SIDE_END ? meeting->before : meeting->after];
}

static BfSideName
other_side (BfSideName name)
{
  return name == BF_SIDE_END ? BF_SIDE_START : BF_SIDE_END;
}

gboolean
bf_corner_is_convex (const BfMeeting *meeting)
{
  return meeting->interior_rad < G_PI - 1e-6;
}

static gboolean
same_turn (const BfLayout *layout, const BfMeeting *meeting)
{
  return flap_of (layout, meeting, BF_SIDE_END)->flange->turn ==
         flap_of (layout, meeting, BF_SIDE_START)->flange->turn;
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
  const BfFlap *a = flap_of (layout, meeting, BF_SIDE_END);
  const BfFlap *b = flap_of (layout, meeting, BF_SIDE_START);
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
  const BfFlap *flap = flap_of (layout, meeting, name);
  const BfFlap *other = flap_of (layout, meeting, other_side (name));
  BfVec2 in = name == BF_SIDE_END ? meeting->before_in : meeting->after_in;
  const BfSide *side = &flap->sides[name];
  BfPlanReach own = bf_plan_reach (flap), its = bf_plan_reach (other);
  double relief = bf_end_relief_reach_mm (layout->part, flap, name);
  const struct
  {
    double w, v, room;
  } points[] = {
    { 0.0, 0.0, MAX (-its.inward_mm, relief) },
    { flap->tip_w_mm, own.outward_mm, MAX (-its.inward_mm, relief) },
    { flap->tip_w_mm, own.inward_mm, MAX (-its.inward_mm, relief) },
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
  const BfFlap *a = flap_of (layout, meeting, BF_SIDE_END);
  const BfFlap *b = flap_of (layout, meeting, BF_SIDE_START);
  EdgeLine line_a = { a->edge_n, a->sums.outside_setback_mm - a->sums.setback_mm };
  EdgeLine line_b = { b->edge_n, b->sums.outside_setback_mm - b->sums.setback_mm };

  if (!cross_lines (meeting->vertex, line_a, line_b, &meeting->outer_vertex))
    meeting->outer_vertex = meeting->vertex;
}

/* q of the outer vertex: where a side ends that nothing trims. */
static double
outer_q (const BfMeeting *meeting, BfSideName name)
{
  BfVec2 in = name == BF_SIDE_END ? meeting->before_in : meeting->after_in;
  return bf_vec2_dot (bf_vec2_sub (meeting->outer_vertex, meeting->vertex), in);
}

static void
fill_meeting (const BfLayout *layout, BfMeeting *meeting)
{
  BfFlap *a = flap_of (layout, meeting, BF_SIDE_END);
  BfFlap *b = flap_of (layout, meeting, BF_SIDE_START);
  double exterior =
      atan2 (bf_vec2_cross (a->edge_e, b->edge_e), bf_vec2_dot (a->edge_e, b->edge_e));

  meeting->asked = bf_part_find_corner (layout->part, "base", meeting->at);
  meeting->join = bf_part_resolve_join (layout->part, meeting->asked);
  meeting->gap_mm = bf_part_resolve_gap_mm (layout->part, meeting->asked);
  meeting->interior_rad = G_PI - exterior;
  meeting->vertex = bf_part_point (layout->part, meeting->at);
  meeting->before_in = bf_vec2_scale (a->edge_e, -1.0);
  meeting->after_in = b->edge_e;
  fill_crossings (layout, meeting);
  fill_outer_vertex (layout, meeting);
}

void
bf_corners_find (BfLayout *layout)
{
  guint n = bf_part_n_points (layout->part);

  for (guint i = 0; i < n; i++)
    {
      GPtrArray *before = layout->base_edges[(i + n - 1) % n], *after = layout->base_edges[i];
      BfMeeting meeting = { .at = i };

      if (before->len == 0 || after->len == 0)
        continue;
      meeting.before = (int)((BfFlap *)g_ptr_array_index (before, before->len - 1) - layout->flaps);
      meeting.after = (int)((BfFlap *)g_ptr_array_index (after, 0) - layout->flaps);
      fill_meeting (layout, &meeting);
      if (stands_clear (layout, &meeting, BF_SIDE_END) ||
          stands_clear (layout, &meeting, BF_SIDE_START))
        continue;
      flap_of (layout, &meeting, BF_SIDE_END)->sides[BF_SIDE_END].meeting =
          (int)layout->meetings->len;
      flap_of (layout, &meeting, BF_SIDE_START)->sides[BF_SIDE_START].meeting =
          (int)layout->meetings->len;
      g_array_append_val (layout->meetings, meeting);
    }
}

/* TRUE where one of the two covers the other's end. */
static gboolean
is_covering (const BfMeeting *meeting)
{
  return meeting->join == BF_JOIN_COVERS_BEFORE || meeting->join == BF_JOIN_COVERS_AFTER;
}

/* How far the side stands back from the line where the two inside planes meet, in the surface and
 * square to that line; negative where it runs past it. */
static double
stand_back_mm (const BfMeeting *meeting, BfSideName name, double phi_rad, double thickness_mm)
{
  double c = MAX (0.0, -cos (phi_rad));
  BfSideName covering = meeting->join == BF_JOIN_COVERS_BEFORE ? BF_SIDE_END : BF_SIDE_START;

  if (!is_covering (meeting))
    return meeting->gap_mm / (2.0 * sin (phi_rad / 2.0));
  if (name == covering)
    return -thickness_mm * (1.0 - c) / sin (phi_rad);
  return (meeting->gap_mm + thickness_mm * c) / sin (phi_rad);
}

/* Trims one flange where the other's inside plane meets its own. Going outward a side that widens
 * follows that line only as far as the neighbour's tip reaches along it. */
static void
trim_at_inside_line (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = flap_of (layout, meeting, name);
  const BfFlap *other = flap_of (layout, meeting, other_side (name));
  BfInsidePlane own, its;
  double at, lean, its_at, its_lean;

  bf_inside_plane (layout, meeting, name, &own);
  bf_inside_plane (layout, meeting, other_side (name), &its);
  if (!bf_inside_planes_cut (&own, &its, &at, &lean))
    return;

  /* What runs past the line to cover the other's end does so beyond the bends alone. */
  flap->sides[name].zone_limit_mm =
      MAX (flap->sides[name].zone_limit_mm, MAX (at, at + lean * bf_side_mould_w (flap)));
  at += stand_back_mm (meeting, name, bf_inside_planes_angle (&own, &its), layout->thickness_mm) *
        sqrt (1.0 + lean * lean);
  bf_side_add (&flap->sides[name], at, lean);

  if (lean < 0.0 && bf_inside_planes_cut (&its, &own, &its_at, &its_lean))
    {
      double tip = other->tip_w_mm + other->tip_shift_mm;
      BfVec3 reach = bf_vec3_along (its.point, its.in, its_at + its_lean * tip);
      double w;

      reach = bf_vec3_along (reach, its.out, tip);
      w = bf_vec3_dot (bf_vec3_sub (reach, own.point), own.out);
      bf_side_add (&flap->sides[name], at + lean * w, 0.0);
    }
}

/* The unit direction of the corner's bisector, and the unit normal of it that points to the flange
 * of that side. */
static BfVec2
towards (const BfMeeting *meeting, BfSideName name)
{
  BfVec2 sum = bf_vec2_add (meeting->before_in, meeting->after_in);
  BfVec2 in = name == BF_SIDE_END ? meeting->before_in : meeting->after_in;
  BfVec2 bisector = bf_vec2_unit (sum), k;

  if (bf_vec2_length (sum) < BF_TOLERANCE_SIZE_MM)
    return in;
  k = bf_vec2 (-bisector.y, bisector.x);
  return bf_vec2_dot (k, in) < 0.0 ? bf_vec2_scale (k, -1.0) : k;
}

static void
keep_from_upright_plane (
    BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name, BfVec2 through)
{
  BfVec2 k = towards (meeting, name);

  bf_side_keep_beyond_plane (layout, flap, name, bf_vec3 (k.x, k.y, 0.0),
                             bf_vec2_dot (k, through) + meeting->gap_mm / 2.0);
}

static void
keep_from_tangent_crossing (BfFlap *flap, const BfMeeting *meeting, BfSideName name)
{
  BfVec2 in = name == BF_SIDE_END ? meeting->before_in : meeting->after_in;
  double q = bf_vec2_dot (bf_vec2_sub (meeting->tangent_crossing, meeting->vertex), in);

  if (meeting->has_crossing)
    flap->sides[name].zone_limit_mm = MAX (flap->sides[name].zone_limit_mm, q);
}

/* Flanges at an inside corner share the flat along the corner's bisector, and stay on their sides
 * of the plane that stands on it. Their own ends stay square. */
static void
trim_inside_corner (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = flap_of (layout, meeting, name);

  bf_side_keep_beyond_line (
      flap, name,
      (BfFlatLine){ towards (meeting, name), meeting->outer_vertex, meeting->gap_mm / 2.0 });
  keep_from_upright_plane (layout, meeting, flap, name, meeting->outer_vertex);
}

/* Folded, one flange stands over the base's upper face and the other under its lower one: they can
 * meet only where a bend of little angle leaves metal of the flat between the two. Of that metal
 * the marking side comes nearest to the other flange, where it passes through the base's face,
 * R·tan θ outward of the tangent; the flat has it there only at the arc's length. */
static void
keep_from_level (const BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = flap_of (layout, meeting, name);
  double r = flap->radius_mm, cosine = cos (flap->angle_rad);
  BfVec2 through = meeting->tangent_crossing;

  if ((r + layout->thickness_mm) * cosine <= r)
    return;
  through = bf_vec2_along (through, flap->edge_n,
                           flap->sums.allowance_mm - r * sin (flap->angle_rad) / cosine);
  bf_side_keep_flat_beyond_line (
      flap, name, (BfFlatLine){ towards (meeting, name), through, meeting->gap_mm / 2.0 });
}

/* One turned up and the other down: the flats share the metal along the bisector through the bend
 * lines' crossing, less half the gap each. The zones end square, at P or where they would reach
 * over that bisector: seen from above they then lie beyond P on either hand, so that they touch at
 * most, and the corner's relief takes even that. */
static void
trim_opposite (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = flap_of (layout, meeting, name);
  BfVec2 k = towards (meeting, name);
  BfVec2 through = meeting->has_crossing ? meeting->bend_crossing : meeting->outer_vertex;

  bf_side_keep_flat_beyond_line (flap, name, (BfFlatLine){ k, through, meeting->gap_mm / 2.0 });
  bf_side_keep_zone_beyond_line (flap, name, (BfFlatLine){ k, through, 0.0 });
  if (meeting->has_crossing)
    keep_from_level (layout, meeting, name);
}

/* Where nothing is to close along a line in space: inside corners, and opposite turns. */
static void
trim_at_bisector (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfSide *side = &flap_of (layout, meeting, name)->sides[name];
  double q = outer_q (meeting, name);

  bf_side_add (side, q, 0.0);
  side->zone_limit_mm = MAX (side->zone_limit_mm, q);
  if (bf_corner_is_convex (meeting))
    trim_opposite (layout, meeting, name);
  else
    trim_inside_corner (layout, meeting, name);
}

static void
trim_convex (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = flap_of (layout, meeting, name);
  const BfFlap *other = flap_of (layout, meeting, other_side (name));

  if (is_hem (flap) && is_hem (other) && meeting->has_crossing)
    keep_from_upright_plane (layout, meeting, flap, name, meeting->tangent_crossing);
  else if (!is_hem (other) && meeting->join != BF_JOIN_UNTRIMMED)
    trim_at_inside_line (layout, meeting, name);
  else if (!flap->sides[name].own)
    bf_side_add (&flap->sides[name], outer_q (meeting, name), 0.0);
}

void
bf_corner_trim (BfLayout *layout, const BfMeeting *meeting)
{
  gboolean by_planes = bf_corner_is_convex (meeting) && same_turn (layout, meeting);

  for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
    {
      if (by_planes)
        trim_convex (layout, meeting, name);
      else
        trim_at_bisector (layout, meeting, name);
      keep_from_tangent_crossing (flap_of (layout, meeting, name), meeting, name);
    }
}

/* Keeps a flap of that side beyond a plane given as if its wall were turned up. */
static void
keep_from_plane (
    BfLayout *layout, const BfMeeting *meeting, BfSideName name, BfFlap *flap, Plane plane)
{
  if (flap_of (layout, meeting, name)->flange->turn == BF_TURN_DOWN)
    {
      plane.normal.z = -plane.normal.z;
      plane.through.z = -layout->thickness_mm - plane.through.z;
    }
  bf_side_keep_beyond_plane (layout, flap, name, plane.normal,
                             bf_vec3_dot (plane.normal, plane.through) + plane.off_mm);
}

/* The plane that holds the line where the two inside planes meet and halves their angle. */
static void
keep_from_mitre (BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name)
{
  BfInsidePlane own, other;
  double at, lean;

  bf_inside_plane (layout, meeting, name, &own);
  bf_inside_plane (layout, meeting, other_side (name), &other);
  if (bf_inside_planes_cut (&own, &other, &at, &lean))
    keep_from_plane (layout, meeting, name, flap,
                     (Plane){ bf_vec3_unit (bf_vec3_sub (other.normal, own.normal)),
                              bf_vec3_along (own.point, own.in, at), meeting->gap_mm / 2.0 });
}

/* TRUE where every bend from the wall's to the flap's turns the same way: it stands over the base's
 * side of the wall. */
static gboolean
curls_in (const BfLayout *layout, const BfFlap *flap, const BfFlap *wall)
{
  for (; flap != wall; flap = &layout->flaps[flap->parent])
    if (flap->flange->turn != wall->flange->turn)
      return FALSE;
  return TRUE;
}

/* A lip beside a wall that carries none: it stays as far off the wall's inside face as the side of
 * the wall that it stands on, and is no wider than that. */
static void
keep_from_wall (BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name)
{
  BfInsidePlane own, other;

  if (!curls_in (layout, flap, flap_of (layout, meeting, name)))
    return;
  bf_inside_plane (layout, meeting, name, &own);
  bf_inside_plane (layout, meeting, other_side (name), &other);
  bf_side_add (&flap->sides[name], 0.0, 0.0);
  keep_from_plane (layout, meeting, name, flap,
                   (Plane){ other.normal, other.point,
                            meeting->gap_mm * cos (bf_inside_planes_angle (&own, &other) / 2.0) });
}

static void
mitre_inside (BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name)
{
  keep_from_upright_plane (layout, meeting, flap, name, meeting->outer_vertex);
  bf_side_keep_beyond_line (
      flap, name,
      (BfFlatLine){ towards (meeting, name), meeting->outer_vertex, meeting->gap_mm / 2.0 });
}

void
bf_corner_mitre (BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name)
{
  gboolean both = flap_of (layout, meeting, other_side (name))->on_tip != NULL;

  if (!bf_corner_is_convex (meeting))
    mitre_inside (layout, meeting, flap, name);
  else if (same_turn (layout, meeting) && both)
    {
      keep_from_mitre (layout, meeting, flap, name);
      if (is_covering (meeting)) /* the wall that covers runs past the mitre */
        keep_from_wall (layout, meeting, flap, name);
    }
  else if (same_turn (layout, meeting))
    keep_from_wall (layout, meeting, flap, name);
  else if (both) /* one up, one down: nothing to close */
    {
      keep_from_upright_plane (layout, meeting, flap, name, meeting->outer_vertex);
      bf_side_add (&flap->sides[name], 0.0, 0.0);
    }
}
