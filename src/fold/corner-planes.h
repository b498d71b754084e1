/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* The inside planes of two flanges that meet at a convex corner with the same turn, looked at as
 * if both were turned up (turned down is its mirror image). */

/* A flange's inside plane at a corner. q runs inward along its edge from the corner, w outward
 * from its tangent; point, in and out place them: x = point + q · in + w · out. */
typedef struct
{
  BfVec3 point;
  BfVec3 in, out;
  BfVec3 normal; /* to the inside */
} BfInsidePlane;

/* The plane of the meeting's flange on that side (end: the flange before the corner), in a frame
 * whose x and y are the blank's and whose z points to the inside. */
void bf_inside_plane (const BfLayout *layout,
                      const BfMeeting *meeting,
                      BfSideName name,
                      BfInsidePlane *plane);

/* Where the other plane cuts this one: q = at + lean · w. FALSE where they are parallel along q. */
gboolean bf_inside_planes_cut (const BfInsidePlane *plane,
                               const BfInsidePlane *other,
                               double *at_mm,
                               double *lean);

/* The angle between two inside planes, on the inside. */
double bf_inside_planes_angle (const BfInsidePlane *a, const BfInsidePlane *b);
