/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/corner-planes.h"

#include "core/tolerance.h"

void
bf_inside_plane (const BfLayout *layout,
                 const BfMeeting *meeting,
                 BfSideName name,
                 BfInsidePlane *plane)
{
  const BfFlap *flap = &layout->flaps[name == BF_SIDE_END ? meeting->before : meeting->after];
  BfVec2 in = name == BF_SIDE_END ? meeting->before_in : meeting->after_in;
  BfVec2 n = flap->edge_n;
  double sine = sin (flap->angle_rad), cosine = cos (flap->angle_rad);
  double v = -flap->sums.setback_mm + flap->radius_mm * sine;
  BfVec2 foot = bf_vec2_along (meeting->vertex, n, v);

  plane->point = bf_vec3 (foot.x, foot.y, flap->radius_mm * (1.0 - cosine));
  plane->in = bf_vec3 (in.x, in.y, 0.0);
  plane->out = bf_vec3 (n.x * cosine, n.y * cosine, sine);
  plane->normal = bf_vec3 (-n.x * sine, -n.y * sine, cosine);
}

gboolean
bf_inside_planes_cut (const BfInsidePlane *plane,
                      const BfInsidePlane *other,
                      double *at_mm,
                      double *lean)
{
  double per_q = bf_vec3_dot (other->normal, plane->in);

  if (fabs (per_q) < BF_TOLERANCE_ZERO)
    return FALSE;
  *at_mm = -bf_vec3_dot (other->normal, bf_vec3_sub (plane->point, other->point)) / per_q;
  *lean = -bf_vec3_dot (other->normal, plane->out) / per_q;
  return TRUE;
}

double
bf_inside_planes_angle (const BfInsidePlane *a, const BfInsidePlane *b)
{
  return G_PI - acos (CLAMP (bf_vec3_dot (a->normal, b->normal), -1.0, 1.0));
}
