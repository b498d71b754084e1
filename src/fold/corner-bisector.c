/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/corner-sides.h"

#include "core/tolerance.h"
#include "fold/corner.h"
#include "fold/side.h"

BfVec2
bf_corner_towards (const BfMeeting *meeting, BfSideName name)
{
  BfVec2 sum = bf_vec2_add (meeting->before_in, meeting->after_in);
  BfVec2 in = bf_meeting_in (meeting, name);
  BfVec2 bisector = bf_vec2_unit (sum), k;

  if (bf_vec2_length (sum) < BF_TOLERANCE_SIZE_MM)
    return in;
  k = bf_vec2 (-bisector.y, bisector.x);
  return bf_vec2_dot (k, in) < 0.0 ? bf_vec2_scale (k, -1.0) : k;
}

BfFlatLine
bf_corner_line (
    const BfLayout *layout, const BfMeeting *meeting, BfSideName name, BfVec2 through, double c_mm)
{
  return (BfFlatLine){ bf_meeting_vector (layout, meeting, bf_corner_towards (meeting, name)),
                       bf_meeting_point (layout, meeting, through), c_mm };
}

void
bf_corner_keep_from_upright_plane (
    BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name, BfVec2 through)
{
  const BfPose *pose = meeting->face < 0 ? &bf_base_pose : &layout->flaps[meeting->face].pose;
  BfVec3 k = bf_pose_vector (pose, bf_corner_towards (meeting, name));

  bf_side_keep_beyond_plane (layout, flap, name, k,
                             bf_vec3_dot (k, bf_pose_point (pose, through)) +
                                 meeting->gap_mm / 2.0);
}

/* Flanges at an inside corner share the flat along the corner's bisector, and stay on their sides
 * of the plane that stands on it. Their own ends stay square. */
static void
trim_inside_corner (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = bf_meeting_flap (layout, meeting, name);

  bf_side_keep_beyond_line (
      flap, name,
      bf_corner_line (layout, meeting, name, meeting->outer_vertex, meeting->gap_mm / 2.0));
  bf_corner_keep_from_upright_plane (layout, meeting, flap, name, meeting->outer_vertex);
  /* Setbacks that differ leave metal of the base before the flange as far as P. */
  if (meeting->has_crossing)
    bf_side_add_flat (&flap->sides[name],
                      bf_vec2_dot (bf_vec2_sub (meeting->tangent_crossing, meeting->vertex),
                                   bf_meeting_in (meeting, name)),
                      0.0);
}

/* Folded, one flange stands over the base's upper face and the other under its lower one: they can
 * meet only where a bend of little angle leaves metal of the flat between the two. Of that metal
 * the marking side comes nearest to the other flange, where it passes through the base's face,
 * R·tan θ outward of the tangent; the flat has it there only at the arc's length.
 *
 * A scored flange stands down in the base's thickness as far up as its inside mould line, whatever
 * its angle. There no metal of it lies further than twice that in the flat beyond where it lies
 * seen from above. */
static void
keep_from_level (const BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = bf_meeting_flap (layout, meeting, name);
  double r = flap->radius_mm, cosine = cos (flap->angle_rad);
  double mould_w = bf_side_mould_w (flap), beyond = -r * sin (flap->angle_rad) / cosine;
  BfVec2 through = meeting->tangent_crossing;

  if (mould_w > 0.0)
    beyond = 2.0 * mould_w;
  else if ((r + layout->thickness_mm) * cosine <= r)
    return;
  through = bf_vec2_along (through, flap->edge_n, flap->sums.allowance_mm + beyond);
  bf_side_keep_flat_beyond_line (
      flap, name, bf_corner_line (layout, meeting, name, through, meeting->gap_mm / 2.0));
}

/* One turned up and the other down: the flats share the metal along the bisector through the bend
 * lines' crossing, less half the gap each. The zones end square, at P or where they would reach
 * over that bisector: seen from above they then lie beyond P on either hand, so that they touch at
 * most, and the corner's relief takes even that. */
static void
trim_opposite (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = bf_meeting_flap (layout, meeting, name);
  BfVec2 through = meeting->has_crossing ? meeting->bend_crossing : meeting->outer_vertex;

  bf_side_keep_flat_beyond_line (
      flap, name, bf_corner_line (layout, meeting, name, through, meeting->gap_mm / 2.0));
  bf_side_keep_zone_beyond_line (flap, name, bf_corner_line (layout, meeting, name, through, 0.0));
  if (meeting->has_crossing)
    keep_from_level (layout, meeting, name);
}

void
bf_corner_trim_at_bisector (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfSide *side = &bf_meeting_flap (layout, meeting, name)->sides[name];
  double q = bf_meeting_outer_q (meeting, name);

  bf_side_add (side, q, 0.0);
  side->zone_limit_mm = MAX (side->zone_limit_mm, q);
  if (bf_corner_is_convex (meeting))
    trim_opposite (layout, meeting, name);
  else
    trim_inside_corner (layout, meeting, name);
}
