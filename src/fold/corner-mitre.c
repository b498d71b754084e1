/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/corner.h"

#include "fold/corner-planes.h"
#include "fold/corner-sides.h"
#include "fold/side.h"

/* Keeps a flap of that side beyond a plane given as if its wall were turned up. */
static void
keep_from_plane (
    BfLayout *layout, const BfMeeting *meeting, BfSideName name, BfFlap *flap, BfCornerPlane plane)
{
  BfCornerPlane turned = bf_corner_turn_plane (layout, meeting, name, plane);

  bf_side_keep_beyond_plane (layout, flap, name, turned.normal, bf_corner_plane_c (&turned));
}

/* The plane that holds the line where the two inside planes meet and halves their angle. */
static void
keep_from_mitre (BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name)
{
  BfInsidePlane own, other;
  double at, lean;

  bf_inside_plane (layout, meeting, name, &own);
  bf_inside_plane (layout, meeting, bf_other_side (name), &other);
  if (bf_inside_planes_cut (&own, &other, &at, &lean))
    keep_from_plane (layout, meeting, name, flap,
                     (BfCornerPlane){ bf_vec3_unit (bf_vec3_sub (other.normal, own.normal)),
                                      bf_vec3_along (own.point, own.in, at),
                                      meeting->gap_mm / 2.0 });
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

  if (!curls_in (layout, flap, bf_meeting_flap (layout, meeting, name)))
    return;
  bf_inside_plane (layout, meeting, name, &own);
  bf_inside_plane (layout, meeting, bf_other_side (name), &other);
  bf_side_add (&flap->sides[name], 0.0, 0.0);
  keep_from_plane (
      layout, meeting, name, flap,
      (BfCornerPlane){ other.normal, other.point,
                       meeting->gap_mm * cos (bf_inside_planes_angle (&own, &other) / 2.0) });
}

static void
mitre_inside (BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name)
{
  bf_corner_keep_from_upright_plane (layout, meeting, flap, name, meeting->outer_vertex);
  bf_side_keep_beyond_line (
      flap, name,
      bf_corner_line (layout, meeting, name, meeting->outer_vertex, meeting->gap_mm / 2.0));
}

void
bf_corner_mitre (BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name)
{
  gboolean both = bf_meeting_flap (layout, meeting, bf_other_side (name))->on_tip != NULL;

  if (!bf_corner_is_convex (meeting))
    mitre_inside (layout, meeting, flap, name);
  else if (bf_meeting_turns_alike (layout, meeting) && both)
    {
      keep_from_mitre (layout, meeting, flap, name);
      if (bf_meeting_covers (meeting)) /* the wall that covers runs past the mitre */
        keep_from_wall (layout, meeting, flap, name);
    }
  else if (bf_meeting_turns_alike (layout, meeting))
    keep_from_wall (layout, meeting, flap, name);
  else if (both) /* one up, one down: nothing to close */
    {
      bf_corner_keep_from_upright_plane (layout, meeting, flap, name, meeting->outer_vertex);
      bf_side_add (&flap->sides[name], 0.0, 0.0);
    }
}
