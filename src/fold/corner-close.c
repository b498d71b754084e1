/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/corner-sides.h"

#include "fold/corner-planes.h"
#include "fold/side.h"
#include "fold/tabs.h"

#define HEM_RAD (G_PI - 1e-6)

static gboolean
is_hem (const BfFlap *flap)
{
  return flap->angle_rad > HEM_RAD;
}

/* A side with a tab ends on the tab's drawn line: where its outer faces meet; of an acute bend it
 * is the outermost tangent, which lies nearer. The tab's outer face lies against the covering wall,
 * unless a gap is asked. */
static double
tab_back_mm (const BfLayout *layout, const BfMeeting *meeting, double phi_rad)
{
  gboolean asked = meeting->asked != NULL && !isnan (meeting->asked->gap_mm);
  double gap = asked ? meeting->gap_mm : 0.0, t = layout->thickness_mm;
  double radius = bf_tab_of (layout, meeting)->radius_mm + t;
  double acute = MAX (0.0, tan ((G_PI - phi_rad) / 2.0) - 1.0) * radius;

  return acute + (gap - t * cos (phi_rad)) / sin (phi_rad);
}

/* How far the side stands back from the line where the two inside planes meet, in the surface and
 * square to that line; negative where it runs past it. */
static double
stand_back_mm (const BfLayout *layout, const BfMeeting *meeting, BfSideName name, double phi_rad)
{
  double c = MAX (0.0, -cos (phi_rad)), thickness_mm = layout->thickness_mm;

  if (!bf_meeting_covers (meeting))
    return meeting->gap_mm / (2.0 * sin (phi_rad / 2.0));
  if (name == bf_meeting_covering_side (meeting))
    return -thickness_mm * (1.0 - c) / sin (phi_rad);
  if (meeting->tabbed)
    return tab_back_mm (layout, meeting, phi_rad);
  return (meeting->gap_mm + thickness_mm * c) / sin (phi_rad);
}

BfCornerPlane
bf_corner_turn_plane (const BfLayout *layout,
                      const BfMeeting *meeting,
                      BfSideName name,
                      BfCornerPlane plane)
{
  if (bf_meeting_flap (layout, meeting, name)->flange->turn == BF_TURN_DOWN)
    {
      plane.normal.z = -plane.normal.z;
      plane.through.z = -layout->thickness_mm - plane.through.z;
    }
  if (meeting->face >= 0)
    {
      const BfPose *pose = &layout->flaps[meeting->face].pose;

      plane.normal = bf_vec3_along (bf_pose_vector (pose, bf_vec2 (plane.normal.x, plane.normal.y)),
                                    pose->m, plane.normal.z);
      plane.through =
          bf_vec3_along (bf_pose_point (pose, bf_vec2 (plane.through.x, plane.through.y)), pose->m,
                         plane.through.z);
    }
  return plane;
}

double
bf_corner_plane_c (const BfCornerPlane *plane)
{
  return bf_vec3_dot (plane->normal, plane->through) + plane->off_mm;
}

/* Where one wall covers the other's end it stands, down to its tangent, before the bend of the
 * other too: that bend, whose outer face swells towards an obtuse corner, keeps behind its inside
 * face. */
static void
keep_bend_covered (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfInsidePlane its;
  BfCornerPlane plane;

  bf_inside_plane (layout, meeting, bf_other_side (name), &its);
  plane =
      bf_corner_turn_plane (layout, meeting, name, (BfCornerPlane){ its.normal, its.point, 0.0 });
  bf_side_keep_zone_beyond_plane (layout, bf_meeting_flap (layout, meeting, name), name,
                                  plane.normal, bf_corner_plane_c (&plane));
}

/* Trims one flange where the other's inside plane meets its own. Going outward a side that widens
 * follows that line only as far as the neighbour's tip reaches along it. */
static void
trim_at_inside_line (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = bf_meeting_flap (layout, meeting, name);
  const BfFlap *other = bf_meeting_flap (layout, meeting, bf_other_side (name));
  BfInsidePlane own, its;
  double at, lean, its_at, its_lean;

  bf_inside_plane (layout, meeting, name, &own);
  bf_inside_plane (layout, meeting, bf_other_side (name), &its);
  if (!bf_inside_planes_cut (&own, &its, &at, &lean))
    return;

  /* What runs past the line to cover the other's end does so beyond the bends alone. */
  flap->sides[name].zone_limit_mm =
      MAX (flap->sides[name].zone_limit_mm, MAX (at, at + lean * bf_side_mould_w (flap)));
  if (bf_meeting_covers (meeting) && name != bf_meeting_covering_side (meeting))
    keep_bend_covered (layout, meeting, name);
  at += stand_back_mm (layout, meeting, name, bf_inside_planes_angle (&own, &its)) *
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

/* In the flat, a hem and its neighbour share the metal along the corner's bisector: the leaf, which
 * lies inward once it is folded, needs no more at an obtuse corner. */
static void
share_flat (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  if (meeting->has_crossing)
    bf_side_keep_flat_beyond_line (
        bf_meeting_flap (layout, meeting, name), name,
        bf_corner_line (layout, meeting, name, meeting->bend_crossing, meeting->gap_mm / 2.0));
}

/* A hem beside a wall that is none: its leaf stays behind the wall's inside plane on both faces,
 * with the gap, and its bend before the wall's bend; a wall that leans in stands over that too. The
 * wall runs on past the hem's end, so that there is nothing to cover: all joins are one. */
static void
trim_hem (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = bf_meeting_flap (layout, meeting, name);
  const BfFlap *wall = bf_meeting_flap (layout, meeting, bf_other_side (name));
  BfVec2 root = bf_vec2_along (meeting->vertex, wall->edge_n, -wall->sums.setback_mm);
  BfInsidePlane its;
  BfCornerPlane plane, upright = { bf_vec3 (-wall->edge_n.x, -wall->edge_n.y, 0.0),
                                   bf_vec3 (root.x, root.y, 0.0), 0.0 };

  bf_inside_plane (layout, meeting, bf_other_side (name), &its);
  plane = bf_corner_turn_plane (layout, meeting, name,
                                (BfCornerPlane){ its.normal, its.point, meeting->gap_mm });
  bf_side_keep_flat_beyond_plane (layout, flap, name, plane.normal, bf_corner_plane_c (&plane));
  if (its.normal.z < 0.0)
    bf_side_keep_zone_beyond_plane (layout, flap, name, plane.normal, bf_corner_plane_c (&plane));
  upright = bf_corner_turn_plane (layout, meeting, name, upright);
  bf_side_keep_zone_beyond_plane (layout, flap, name, upright.normal, bf_corner_plane_c (&upright));
}

void
bf_corner_close (BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  BfFlap *flap = bf_meeting_flap (layout, meeting, name);
  const BfFlap *other = bf_meeting_flap (layout, meeting, bf_other_side (name));

  if (meeting->join != BF_JOIN_UNTRIMMED && (is_hem (flap) || is_hem (other)))
    share_flat (layout, meeting, name);
  if (is_hem (flap) && is_hem (other) && meeting->has_crossing)
    bf_corner_keep_from_upright_plane (layout, meeting, flap, name, meeting->tangent_crossing);
  else if (is_hem (flap) && meeting->join != BF_JOIN_UNTRIMMED)
    trim_hem (layout, meeting, name);
  else if (!is_hem (other) && meeting->join != BF_JOIN_UNTRIMMED)
    trim_at_inside_line (layout, meeting, name);
  else if (!flap->sides[name].own)
    bf_side_add (&flap->sides[name], bf_meeting_outer_q (meeting, name), 0.0);
}
