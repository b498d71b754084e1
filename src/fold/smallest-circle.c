/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/smallest-circle.h"

#include "core/tolerance.h"

typedef struct
{
  BfVec2 centre;
  double radius;
} Circle;

static double
farthest (const BfVec2 *points, guint n, BfVec2 from)
{
  double d = 0.0;

  for (guint i = 0; i < n; i++)
    d = MAX (d, bf_vec2_distance (points[i], from));
  return d;
}

/* Keeps the circle about that centre where it beats the best so far. */
static void
try_centre (const BfVec2 *points, guint n, BfVec2 centre, Circle *best)
{
  double radius = farthest (points, n, centre);

  if (radius < best->radius)
    *best = (Circle){ centre, radius };
}

/* The point equally far from three points. FALSE where they lie on a line. */
static gboolean
circumcentre (BfVec2 a, BfVec2 b, BfVec2 c, BfVec2 *centre)
{
  BfVec2 ab = bf_vec2_sub (b, a), ac = bf_vec2_sub (c, a);
  double cross = 2.0 * bf_vec2_cross (ab, ac);
  double bb = bf_vec2_dot (ab, ab), cc = bf_vec2_dot (ac, ac);

  if (fabs (cross) < BF_TOLERANCE_ZERO)
    return FALSE;
  centre->x = a.x + (ac.y * bb - ab.y * cc) / cross;
  centre->y = a.y + (ab.x * cc - ac.x * bb) / cross;
  return TRUE;
}

double
bf_smallest_circle (const BfVec2 *points, guint n, BfVec2 *centre)
{
  Circle best = { bf_vec2 (0.0, 0.0), G_MAXDOUBLE };
  BfVec2 about;

  if (n == 0)
    return 0.0;
  try_centre (points, n, points[0], &best);
  for (guint i = 0; i < n; i++)
    for (guint j = i + 1; j < n; j++)
      {
        about = bf_vec2_scale (bf_vec2_add (points[i], points[j]), 0.5);
        try_centre (points, n, about, &best);
        for (guint k = j + 1; k < n; k++)
          if (circumcentre (points[i], points[j], points[k], &about))
            try_centre (points, n, about, &best);
      }
  *centre = best.centre;
  return best.radius;
}
