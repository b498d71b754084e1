/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/side.h"

#include "core/compare.h"
#include "core/tolerance.h"

/* Above this the inside mould line runs away to infinity and the tangent alone decides. */
#define MOULD_LINE_MAX_RAD (175.0 * G_PI / 180.0)

static void
add_trim (BfSide *side, BfTrim trim)
{
  g_return_if_fail (side->n_trims < BF_TRIMS_MAX);
  side->trims[side->n_trims++] = trim;
}

void
bf_side_add (BfSide *side, double at_mm, double lean)
{
  add_trim (side, (BfTrim){ at_mm, lean, TRUE });
}

void
bf_side_add_flat (BfSide *side, double at_mm, double lean)
{
  add_trim (side, (BfTrim){ at_mm, lean, FALSE });
}

double
bf_side_at (const BfSide *side, double w_mm)
{
  double q = side->n_trims > 0 ? -G_MAXDOUBLE : 0.0;

  for (guint i = 0; i < side->n_trims; i++)
    q = MAX (q, side->trims[i].at_mm + side->trims[i].lean * w_mm);
  return q;
}

/* Limits may cross three at a point, or be one line given twice: each w is kept once. */
static guint
drop_doubles (double *w, guint n)
{
  guint kept = 0;

  for (guint i = 0; i < n; i++)
    if (kept == 0 || w[i] - w[kept - 1] > BF_TOLERANCE_ZERO)
      w[kept++] = w[i];
  return kept;
}

/* Every w between 0 and to_mm at which two limits cross. */
static guint
crossings (const BfSide *side, double to_mm, double *w)
{
  guint n = 0;

  for (guint i = 0; i < side->n_trims; i++)
    for (guint j = i + 1; j < side->n_trims; j++)
      {
        double lean = side->trims[i].lean - side->trims[j].lean;
        double at = (side->trims[j].at_mm - side->trims[i].at_mm) / lean;

        if (fabs (lean) > BF_TOLERANCE_ZERO && at > BF_TOLERANCE_ZERO &&
            at < to_mm - BF_TOLERANCE_ZERO)
          w[n++] = at;
      }
  qsort (w, n, sizeof *w, bf_compare_doubles);
  return drop_doubles (w, n);
}

/* Limits cross below the side as well as on it: only a true corner is a point of the side. */
static gboolean
is_corner (const BfSide *side, double w_mm, double before_mm, double after_mm)
{
  double q = bf_side_at (side, w_mm);
  double before = bf_side_at (side, before_mm), after = bf_side_at (side, after_mm);
  double straight = before + (after - before) * (w_mm - before_mm) / (after_mm - before_mm);

  return fabs (straight - q) > BF_TOLERANCE_ZERO;
}

void
bf_side_trace (const BfSide *side, double to_mm, GArray *points)
{
  double w[BF_TRIMS_MAX * BF_TRIMS_MAX / 2 + 2];
  guint n = crossings (side, to_mm, w + 1);
  BfVec2 p = { bf_side_at (side, 0.0), 0.0 };

  w[0] = 0.0;
  w[n + 1] = to_mm;
  g_array_append_val (points, p);
  for (guint i = 1; i <= n; i++)
    if (is_corner (side, w[i], w[i - 1], w[i + 1]))
      {
        p = bf_vec2 (bf_side_at (side, w[i]), w[i]);
        g_array_append_val (points, p);
      }
  p = bf_vec2 (bf_side_at (side, to_mm), to_mm);
  g_array_append_val (points, p);
}

/* The least value of normal · x over a bend's arc of that radius, its centre at `centre` and its
 * angle a running from out = 0 along n: x = centre + r (sin a · n + cos a · m). */
static double
arc_least (double along_n, double along_m, double angle_rad)
{
  double least = MIN (along_m, along_n * sin (angle_rad) + along_m * cos (angle_rad));
  double turning = atan2 (-along_n, -along_m);

  if (turning > 0.0 && turning < angle_rad)
    least = MIN (least, -hypot (along_n, along_m));
  return least;
}

/* The least of normal · x over the flap's bend zone at q = 0, on both faces. */
static double
zone_least (const BfLayout *layout, const BfFlap *flap, BfVec3 end, BfVec3 normal)
{
  /* From the flap's pose back to its bend's centre: down along m (turned up), or up (down). */
  double sign = flap->flange->turn == BF_TURN_UP ? 1.0 : -1.0;
  double t = layout->thickness_mm, r = flap->radius_mm, ri = r + t - flap->sums.skin_mm;
  double to_centre = sign > 0.0 ? r : -(t + r);
  BfVec3 centre = bf_vec3_along (end, flap->pose.m, to_centre);
  double along_d = bf_vec3_dot (normal, flap->pose.d);
  double along_m = bf_vec3_dot (normal, flap->pose.m);
  double base = bf_vec3_dot (normal, centre);

  /* Walk the arc backward from the flap's tangent: it leaves along −d, centred towards m. */
  double inner = arc_least (-along_d * ri, -sign * along_m * ri, flap->angle_rad);
  double outer = arc_least (-along_d * (r + t), -sign * along_m * (r + t), flap->angle_rad);
  return base + MIN (inner, outer);
}

/* The edge's end at the flap's tangent, and how much normal · x grows with q. A plane along the
 * bend can't be reached by moving the side. */
static gboolean
plane_grows (const BfFlap *flap, BfSideName name, BfVec3 normal, double *per_q, BfVec3 *end)
{
  double inward = name == BF_SIDE_START ? 1.0 : -1.0;

  *per_q = inward * bf_vec3_dot (normal, flap->pose.e);
  *end = bf_vec3_along (flap->pose.origin, flap->pose.e, bf_flap_u (flap, name, 0.0));
  return *per_q >= BF_TOLERANCE_SIZE_MM;
}

void
bf_side_keep_zone_beyond_plane (
    const BfLayout *layout, BfFlap *flap, BfSideName name, BfVec3 normal, double c_mm)
{
  BfSide *side = &flap->sides[name];
  double per_q;
  BfVec3 end;

  if (plane_grows (flap, name, normal, &per_q, &end))
    side->zone_limit_mm =
        MAX (side->zone_limit_mm, (c_mm - zone_least (layout, flap, end, normal)) / per_q);
}

void
bf_side_keep_flat_beyond_plane (
    const BfLayout *layout, BfFlap *flap, BfSideName name, BfVec3 normal, double c_mm)
{
  double along_m = bf_vec3_dot (normal, flap->pose.m);
  double other_face = MIN (0.0, -along_m * layout->thickness_mm), per_q;
  BfVec3 end;

  if (plane_grows (flap, name, normal, &per_q, &end))
    bf_side_add_flat (&flap->sides[name], (c_mm - bf_vec3_dot (normal, end) - other_face) / per_q,
                      -bf_vec3_dot (normal, flap->pose.d) / per_q);
}

void
bf_side_keep_beyond_plane (
    const BfLayout *layout, BfFlap *flap, BfSideName name, BfVec3 normal, double c_mm)
{
  bf_side_keep_flat_beyond_plane (layout, flap, name, normal, c_mm);
  bf_side_keep_zone_beyond_plane (layout, flap, name, normal, c_mm);
}

/* q at which the line k · (x − through) = c crosses the flap's tangent, and by how much that
 * changes outward. FALSE where the line runs along the bend. */
static gboolean
cross_line (const BfFlap *flap, BfSideName name, const BfFlatLine *line, BfTrim *trim)
{
  double inward = name == BF_SIDE_START ? 1.0 : -1.0;
  double per_q = inward * bf_vec2_dot (line->k, flap->flat_e);
  BfVec2 end = bf_flap_to_blank (flap, bf_flap_u (flap, name, 0.0), 0.0);

  if (per_q < BF_TOLERANCE_SIZE_MM)
    return FALSE;
  trim->at_mm = (line->c_mm - bf_vec2_dot (line->k, bf_vec2_sub (end, line->through))) / per_q;
  trim->lean = -bf_vec2_dot (line->k, flap->flat_n) / per_q;
  trim->to_mould_line = FALSE;
  return TRUE;
}

void
bf_side_keep_flat_beyond_line (BfFlap *flap, BfSideName name, BfFlatLine line)
{
  BfTrim trim;

  if (cross_line (flap, name, &line, &trim))
    add_trim (&flap->sides[name], trim);
}

void
bf_side_keep_zone_beyond_line (BfFlap *flap, BfSideName name, BfFlatLine line)
{
  BfSide *side = &flap->sides[name];
  BfTrim trim;
  double at_parent;

  if (!cross_line (flap, name, &line, &trim))
    return;
  at_parent = trim.at_mm - trim.lean * flap->sums.allowance_mm;
  side->zone_limit_mm = MAX (side->zone_limit_mm, MAX (trim.at_mm, at_parent));
}

void
bf_side_keep_beyond_line (BfFlap *flap, BfSideName name, BfFlatLine line)
{
  bf_side_keep_flat_beyond_line (flap, name, line);
  bf_side_keep_zone_beyond_line (flap, name, line);
}

double
bf_side_mould_w (const BfFlap *flap)
{
  return flap->angle_rad < MOULD_LINE_MAX_RAD ? -flap->radius_mm * tan (flap->angle_rad / 2.0)
                                              : 0.0;
}

void
bf_side_settle (BfFlap *flap, BfSideName name)
{
  BfSide *side = &flap->sides[name];
  double q = MAX (side->zone_limit_mm, bf_side_at (side, 0.0));
  double mould_w = bf_side_mould_w (flap);

  for (guint i = 0; i < side->n_trims; i++)
    if (side->trims[i].to_mould_line)
      q = MAX (q, side->trims[i].at_mm + side->trims[i].lean * mould_w);
  side->zone_mm = q;
}
