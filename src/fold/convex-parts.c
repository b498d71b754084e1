/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/convex.h"

#include "core/tolerance.h"

/* A part below this is rounding. */
#define LEAST_AREA_MM2 1e-9

static BfVec2
corner (const GArray *polygon, guint i)
{
  return g_array_index (polygon, BfVec2, i % polygon->len);
}

static double
side_of (BfVec2 from, BfVec2 to, BfVec2 p)
{
  return bf_vec2_cross (bf_vec2_sub (to, from), bf_vec2_sub (p, from));
}

/* The sine of the turn at a corner: positive to the left. */
static double
turn_at (const GArray *polygon, guint i)
{
  BfVec2 p = corner (polygon, i), before = corner (polygon, i + polygon->len - 1);
  BfVec2 in = bf_vec2_unit (bf_vec2_sub (p, before));
  BfVec2 out = bf_vec2_unit (bf_vec2_sub (corner (polygon, i + 1), p));

  return bf_vec2_cross (in, out);
}

/* ---- convex polygons ---------------------------------------------------------------------- */

/* Hands a convex polygon out, in as many parts as its corners need. */
static void
emit (const GArray *polygon, GArray *parts)
{
  for (guint from = 1; from + 1 < polygon->len; from += BF_CONVEX_CORNERS_MAX - 2)
    {
      BfConvexPart part = { .corners = { corner (polygon, 0) }, .n = 1 };

      for (guint i = from; i < polygon->len && part.n < BF_CONVEX_CORNERS_MAX; i++)
        part.corners[part.n++] = corner (polygon, i);
      if (bf_polygon_area (part.corners, part.n) > LEAST_AREA_MM2)
        g_array_append_val (parts, part);
    }
}

/* What of a convex polygon lies at the left of a line (inside), or at its right. */
static GArray *
clip (const GArray *polygon, BfVec2 from, BfVec2 to, double inside)
{
  GArray *kept = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  for (guint i = 0; i < polygon->len; i++)
    {
      BfVec2 p = corner (polygon, i), next = corner (polygon, i + 1);
      double at = inside * side_of (from, to, p), at_next = inside * side_of (from, to, next);

      if (at >= 0.0)
        g_array_append_val (kept, p);
      if ((at > 0.0 && at_next < 0.0) || (at < 0.0 && at_next > 0.0))
        {
          p = bf_vec2_along (p, bf_vec2_sub (next, p), at / (at - at_next));
          g_array_append_val (kept, p);
        }
    }
  return kept;
}

static double
area (const GArray *polygon)
{
  return bf_polygon_area ((const BfVec2 *)(const void *)polygon->data, polygon->len);
}

/* The edge of the tool beyond which most of the polygon lies. */
static guint
widest_edge (const GArray *polygon, const BfConvexPart *tool)
{
  double most = -1.0;
  guint widest = 0;

  for (guint i = 0; i < tool->n; i++)
    {
      g_autoptr (GArray) beyond =
          clip (polygon, tool->corners[i], tool->corners[(i + 1) % tool->n], -1.0);
      double found = beyond->len < 3 ? 0.0 : area (beyond);

      if (found <= most)
        continue;
      most = found;
      widest = i;
    }
  return widest;
}

/* The first part taken is the largest there is, so that one tool does not cut all into slivers. */
void
bf_convex_part_less (const BfConvexPart *part, const BfConvexPart *tool, GArray *left)
{
  g_autoptr (GArray) rest = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  guint first;

  g_array_append_vals (rest, part->corners, part->n);
  first = widest_edge (rest, tool);
  for (guint i = first; i < first + tool->n && rest->len >= 3; i++)
    {
      BfVec2 from = tool->corners[i % tool->n], to = tool->corners[(i + 1) % tool->n];
      g_autoptr (GArray) beyond = clip (rest, from, to, -1.0);
      GArray *within = clip (rest, from, to, 1.0);

      emit (beyond, left);
      g_array_unref (rest);
      rest = within;
    }
}

void
bf_convex_part_within (const BfConvexPart *part, const BfConvexPart *tool, GArray *within)
{
  g_autoptr (GArray) rest = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  g_array_append_vals (rest, part->corners, part->n);
  for (guint i = 0; i < tool->n && rest->len >= 3; i++)
    {
      GArray *kept = clip (rest, tool->corners[i], tool->corners[(i + 1) % tool->n], 1.0);

      g_array_unref (rest);
      rest = kept;
    }
  if (rest->len >= 3)
    emit (rest, within);
}

gboolean
bf_convex_parts_near (const BfConvexPart *a, const BfConvexPart *b)
{
  BfBox x = bf_box_empty (), y = bf_box_empty ();

  for (guint i = 0; i < a->n; i++)
    bf_box_extend (&x, a->corners[i]);
  for (guint i = 0; i < b->n; i++)
    bf_box_extend (&y, b->corners[i]);
  return x.min.x < y.max.x && y.min.x < x.max.x && x.min.y < y.max.y && y.min.y < x.max.y;
}

/* ---- any simple polygon ------------------------------------------------------------------- */

/* TRUE where p lies within the angle of the polygon at corner i. */
static gboolean
in_angle (const GArray *polygon, guint i, BfVec2 p)
{
  BfVec2 at = corner (polygon, i), before = corner (polygon, i + polygon->len - 1);
  BfVec2 after = corner (polygon, i + 1);
  gboolean left_of_in = side_of (before, at, p) > 0.0, left_of_out = side_of (at, after, p) > 0.0;

  return side_of (before, at, after) > 0.0 ? left_of_in && left_of_out : left_of_in || left_of_out;
}

static gboolean
crosses (BfVec2 a, BfVec2 b, BfVec2 c, BfVec2 d)
{
  return side_of (a, b, c) * side_of (a, b, d) <= 0.0 &&
         side_of (c, d, a) * side_of (c, d, b) <= 0.0;
}

/* TRUE where the line between corners i and k runs inside the polygon and touches no other edge. */
static gboolean
is_diagonal (const GArray *polygon, guint i, guint k)
{
  guint n = polygon->len;
  BfVec2 a = corner (polygon, i), b = corner (polygon, k);

  if (!in_angle (polygon, i, b) || !in_angle (polygon, k, a))
    return FALSE;
  for (guint e = 0; e < n; e++)
    {
      gboolean shares = e == i || e == k || (e + 1) % n == i || (e + 1) % n == k;

      if (!shares && crosses (a, b, corner (polygon, e), corner (polygon, e + 1)))
        return FALSE;
    }
  return TRUE;
}

/* TRUE where a cut from reflex corner i to p leaves it reflex on neither side. */
static gboolean
cures (const GArray *polygon, guint i, BfVec2 p)
{
  BfVec2 at = corner (polygon, i), before = corner (polygon, i + polygon->len - 1);

  return side_of (before, at, p) >= 0.0 && side_of (at, corner (polygon, i + 1), p) >= 0.0;
}

/* The shortest diagonal from corner i, one that leaves no reflex corner there if there is any; or
 * -1. */
static int
best_diagonal (const GArray *polygon, guint i)
{
  double best = G_MAXDOUBLE;
  int found = -1;
  gboolean found_cures = FALSE;

  for (guint step = 2; step + 1 < polygon->len; step++)
    {
      guint k = (i + step) % polygon->len;
      BfVec2 p = corner (polygon, k);
      double length = bf_vec2_distance (corner (polygon, i), p);
      gboolean better = cures (polygon, i, p);

      if (better < found_cures || (better == found_cures && length >= best) ||
          !is_diagonal (polygon, i, k))
        continue;
      best = length;
      found = (int)k;
      found_cures = better;
    }
  return found;
}

static GArray *
stretch (const GArray *polygon, guint from, guint to)
{
  GArray *out = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  for (guint i = from; i % polygon->len != to; i++)
    {
      BfVec2 p = corner (polygon, i);
      g_array_append_val (out, p);
    }
  g_array_append_val (out, g_array_index (polygon, BfVec2, to));
  return out;
}

void
bf_convex_parts (const GArray *polygon, GArray *parts)
{
  gboolean convex = TRUE;

  for (guint i = 0; i < polygon->len; i++)
    {
      g_autoptr (GArray) one = NULL, other = NULL;
      int k;

      if (turn_at (polygon, i) >= -BF_TOLERANCE_ZERO)
        continue;
      convex = FALSE;
      k = best_diagonal (polygon, i);
      if (k < 0)
        continue;
      one = stretch (polygon, i, (guint)k);
      other = stretch (polygon, (guint)k, i);
      bf_convex_parts (one, parts);
      bf_convex_parts (other, parts);
      return;
    }
  if (convex && polygon->len >= 3)
    emit (polygon, parts);
}
