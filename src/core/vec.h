/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <math.h>

#include <glib.h>

/* Points and vectors of the plane and of space. Lengths are millimetres and angles radians
 * unless a name says otherwise. All are plain values: pass and return by value. */

typedef struct
{
  double x, y;
} BfVec2;

typedef struct
{
  double x, y, z;
} BfVec3;

/* A right-handed orthonormal frame in space: ex, ey, ez are unit vectors. A face's frame has its
 * origin on the marking-side surface, ex along u, ey along v, ez out of the marking side. */
typedef struct
{
  BfVec3 origin, ex, ey, ez;
} BfFrame;

static inline double
bf_deg_to_rad (double angle_deg)
{
  return angle_deg * (G_PI / 180.0);
}

static inline double
bf_rad_to_deg (double angle_rad)
{
  return angle_rad * (180.0 / G_PI);
}

static inline BfVec2
bf_vec2 (double x, double y)
{
  return (BfVec2){ x, y };
}

static inline BfVec2
bf_vec2_add (BfVec2 a, BfVec2 b)
{
  return bf_vec2 (a.x + b.x, a.y + b.y);
}

static inline BfVec2
bf_vec2_sub (BfVec2 a, BfVec2 b)
{
  return bf_vec2 (a.x - b.x, a.y - b.y);
}

static inline BfVec2
bf_vec2_scale (BfVec2 a, double s)
{
  return bf_vec2 (a.x * s, a.y * s);
}

/* a + s·b */
static inline BfVec2
bf_vec2_along (BfVec2 a, BfVec2 b, double s)
{
  return bf_vec2 (a.x + b.x * s, a.y + b.y * s);
}

static inline double
bf_vec2_dot (BfVec2 a, BfVec2 b)
{
  return a.x * b.x + a.y * b.y;
}

/* z of the cross product: positive where b lies counter-clockwise of a. */
static inline double
bf_vec2_cross (BfVec2 a, BfVec2 b)
{
  return a.x * b.y - a.y * b.x;
}

static inline double
bf_vec2_length (BfVec2 a)
{
  return hypot (a.x, a.y);
}

static inline double
bf_vec2_distance (BfVec2 a, BfVec2 b)
{
  return hypot (a.x - b.x, a.y - b.y);
}

/* a made one long; a zero vector stays zero. */
static inline BfVec2
bf_vec2_unit (BfVec2 a)
{
  double length = bf_vec2_length (a);
  return length > 0.0 ? bf_vec2_scale (a, 1.0 / length) : a;
}

static inline BfVec3
bf_vec3 (double x, double y, double z)
{
  return (BfVec3){ x, y, z };
}

static inline BfVec3
bf_vec3_add (BfVec3 a, BfVec3 b)
{
  return bf_vec3 (a.x + b.x, a.y + b.y, a.z + b.z);
}

static inline BfVec3
bf_vec3_sub (BfVec3 a, BfVec3 b)
{
  return bf_vec3 (a.x - b.x, a.y - b.y, a.z - b.z);
}

static inline BfVec3
bf_vec3_scale (BfVec3 a, double s)
{
  return bf_vec3 (a.x * s, a.y * s, a.z * s);
}

/* a + s·b */
static inline BfVec3
bf_vec3_along (BfVec3 a, BfVec3 b, double s)
{
  return bf_vec3 (a.x + b.x * s, a.y + b.y * s, a.z + b.z * s);
}

static inline double
bf_vec3_dot (BfVec3 a, BfVec3 b)
{
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

static inline BfVec3
bf_vec3_cross (BfVec3 a, BfVec3 b)
{
  return bf_vec3 (a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);
}

static inline double
bf_vec3_length (BfVec3 a)
{
  return sqrt (bf_vec3_dot (a, a));
}

/* a made one long; a zero vector stays zero. */
static inline BfVec3
bf_vec3_unit (BfVec3 a)
{
  double length = bf_vec3_length (a);
  return length > 0.0 ? bf_vec3_scale (a, 1.0 / length) : a;
}

/* The point whose coordinates in the frame are (x, y, z). */
static inline BfVec3
bf_frame_point (const BfFrame *frame, double x, double y, double z)
{
  BfVec3 p = bf_vec3_along (frame->origin, frame->ex, x);
  return bf_vec3_along (bf_vec3_along (p, frame->ey, y), frame->ez, z);
}
