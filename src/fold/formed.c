/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/formed.h"

#include "fold/folded-form.h"
#include "fold/outline.h"

/* A bend that is all but flat is drawn turned by this much, so that it has a radius. */
#define FLATTEST_RAD 1e-6

/* How a flap's bend stands at a fraction of its angle: the zone keeps its width, so that its
 * radius grows as it opens. */
static BfTurned
turned (const BfLayout *layout, const BfFlap *flap, double fraction)
{
  double angle = MAX (flap->angle_rad * fraction, FLATTEST_RAD);
  double neutral = flap->sums.k * flap->sums.skin_mm + layout->thickness_mm - flap->sums.skin_mm;

  if (fraction >= 1.0)
    return (BfTurned){ flap->angle_rad, flap->radius_mm };
  return (BfTurned){ angle, flap->sums.allowance_mm / angle - neutral };
}

/* x of a flange's frame runs against u, so that the frame is right-handed. */
static BfSolid
flap_slab (const BfFlap *flap, guint face, const BfPose *pose)
{
  return (BfSolid){ .kind = BF_SOLID_SLAB,
                    .face = face,
                    .frame = { pose->origin, bf_vec3_scale (pose->e, -1.0), pose->d, pose->m },
                    .flat_origin = bf_flap_to_blank (flap, 0.0, 0.0),
                    .flat_ex = bf_vec2_scale (flap->flat_e, -1.0),
                    .flat_ey = flap->flat_n };
}

static BfSolid
flap_sector (const BfFlap *flap, guint face, const BfPose *parent, BfTurned turn)
{
  double end = bf_flap_zone_u (flap, BF_SIDE_END), start = bf_flap_zone_u (flap, BF_SIDE_START);
  BfVec2 foot = bf_vec2_along (bf_vec2_along (flap->edge_start, flap->edge_e, end), flap->edge_n,
                               -flap->sums.setback_mm);
  BfVec3 e = bf_pose_vector (parent, flap->edge_e);
  BfVec3 n = bf_pose_vector (parent, flap->edge_n);
  BfSolid sector = {
    .kind = BF_SOLID_SECTOR,
    .face = face,
    .on = (guint)(flap->parent + 1),
    .frame = { bf_pose_point (parent, foot), bf_vec3_scale (e, -1.0), n, parent->m },
    .width_mm = MAX (end - start, 0.0),
    .radius_mm = turn.radius_mm,
    .skin_mm = flap->sums.skin_mm,
    .angle_rad = turn.angle_rad,
    .turn = flap->flange->turn,
  };

  bf_outline_zone (flap, sector.zone);
  return sector;
}

BfSolid
bf_formed_base_slab (const GArray *faces)
{
  return (
      BfSolid){ .kind = BF_SOLID_SLAB,
                .outline = g_array_index (faces, BfFace, 0).outline,
                .frame = { bf_base_pose.origin, bf_base_pose.e, bf_base_pose.d, bf_base_pose.m },
                .flat_ex = { 1.0, 0.0 },
                .flat_ey = { 0.0, 1.0 } };
}

BfSolid
bf_formed_flap_slab (
    const BfLayout *layout, guint flap, double fraction, const BfPose *parent, BfPose *pose)
{
  const BfFlap *bent = &layout->flaps[flap];

  bf_flap_pose (layout, bent, parent, turned (layout, bent, fraction), pose);
  return flap_slab (bent, flap + 1, pose);
}

void
bf_formed_build (const BfLayout *layout, const GArray *faces, double fraction, BfFormed *formed)
{
  g_autofree double *fractions = g_new (double, layout->n_flaps);

  for (guint i = 0; i < layout->n_flaps; i++)
    fractions[i] = fraction;
  bf_formed_build_each (layout, faces, fractions, formed);
}

void
bf_formed_build_each (const BfLayout *layout,
                      const GArray *faces,
                      const double *fractions,
                      BfFormed *formed)
{
  g_autofree BfPose *poses = g_new0 (BfPose, layout->n_flaps);
  BfSolid solid = bf_formed_base_slab (faces);

  *formed = (BfFormed){ .solids = g_array_new (FALSE, TRUE, sizeof (BfSolid)) };
  g_array_append_val (formed->solids, solid);
  for (guint k = 0; k < layout->n_flaps; k++)
    {
      guint i = layout->order[k];
      const BfFlap *flap = &layout->flaps[i];
      const BfPose *parent = flap->parent >= 0 ? &poses[flap->parent] : &bf_base_pose;
      BfTurned turn = turned (layout, flap, CLAMP (fractions[i], 0.0, 1.0));

      if (!flap->placed)
        continue;
      bf_flap_pose (layout, flap, parent, turn, &poses[i]);
      solid = flap_sector (flap, i + 1, parent, turn);
      g_array_append_val (formed->solids, solid);
      solid = flap_slab (flap, i + 1, &poses[i]);
      solid.outline = g_array_index (faces, BfFace, i + 1).outline;
      g_array_append_val (formed->solids, solid);
    }
  bf_folded_corners_form (layout, poses, fractions, formed->solids);
}

void
bf_formed_clear (BfFormed *formed)
{
  g_clear_pointer (&formed->solids, g_array_unref);
}

/* ---- measuring ---------------------------------------------------------------------------- */

static void
extend (BfFormed *formed, BfVec3 p)
{
  formed->min =
      bf_vec3 (MIN (formed->min.x, p.x), MIN (formed->min.y, p.y), MIN (formed->min.z, p.z));
  formed->max =
      bf_vec3 (MAX (formed->max.x, p.x), MAX (formed->max.y, p.y), MAX (formed->max.z, p.z));
}

/* A point of the blank, on both faces. */
static void
extend_by_point (const BfLayout *layout, const BfSolid *slab, BfVec2 point, BfFormed *formed)
{
  BfVec2 p = bf_solid_local (slab, point);

  extend (formed, bf_frame_point (&slab->frame, p.x, p.y, 0.0));
  extend (formed, bf_frame_point (&slab->frame, p.x, p.y, -layout->thickness_mm));
}

/* Where an arc of the outline runs along each of space's axes. */
static void
extend_by_arc (const BfLayout *layout, const BfSolid *slab, const BfArc *arc, BfFormed *formed)
{
  const BfFrame *f = &slab->frame;
  const BfVec2 axes[] = { { f->ex.x, f->ey.x }, { f->ex.y, f->ey.y }, { f->ex.z, f->ey.z } };

  for (guint i = 0; i < 2 * G_N_ELEMENTS (axes); i++)
    {
      BfVec2 along = bf_vec2_along (bf_vec2_scale (slab->flat_ex, axes[i / 2].x), slab->flat_ey,
                                    axes[i / 2].y);
      double at = atan2 (along.y, along.x) + (i % 2 == 0 ? 0.0 : G_PI);
      double turned = remainder (at - (arc->from + arc->sweep / 2.0), 2.0 * G_PI);

      if (fabs (turned) < fabs (arc->sweep) / 2.0)
        extend_by_point (layout, slab,
                         bf_vec2_along (arc->centre, bf_vec2 (cos (at), sin (at)), arc->radius),
                         formed);
    }
}

static void
extend_by_slab (const BfLayout *layout, const BfSolid *slab, BfFormed *formed)
{
  const BfRing *outline = slab->outline;
  BfArc arc;

  for (guint i = 0; i < bf_ring_size (outline); i++)
    {
      extend_by_point (layout, slab, bf_ring_vertex (outline, i)->p, formed);
      if (bf_ring_arc (outline, i, &arc))
        extend_by_arc (layout, slab, &arc, formed);
    }
}

static BfVec3
sector_point (const BfLayout *layout, const BfSolid *sector, double radius, double angle)
{
  double t = layout->thickness_mm;
  double y = radius * sin (angle), z = radius * cos (angle);

  if (sector->turn == BF_TURN_UP)
    return bf_frame_point (&sector->frame, 0.0, y, sector->radius_mm - z);
  return bf_frame_point (&sector->frame, 0.0, y, z - t - sector->radius_mm);
}

/* The ends of the arc, and where it runs along each of space's axes. */
static void
extend_by_sector (const BfLayout *layout, const BfSolid *sector, BfFormed *formed)
{
  double sign = sector->turn == BF_TURN_UP ? -1.0 : 1.0;
  BfVec3 across = bf_vec3_scale (sector->frame.ex, sector->width_mm);
  const double ey[] = { sector->frame.ey.x, sector->frame.ey.y, sector->frame.ey.z };
  const double ez[] = { sector->frame.ez.x, sector->frame.ez.y, sector->frame.ez.z };

  for (int face = 0; face < 2; face++)
    {
      double radius =
          sector->radius_mm + layout->thickness_mm - (face == 0 ? sector->skin_mm : 0.0);

      for (int i = 0; i < 8; i++)
        {
          double angle =
              i == 0   ? 0.0
              : i == 1 ? sector->angle_rad
                       : atan2 (ey[i / 2 - 1], sign * ez[i / 2 - 1]) + (i % 2 == 0 ? 0.0 : G_PI);
          BfVec3 p;

          if (angle < 0.0 || angle > sector->angle_rad)
            continue;
          p = sector_point (layout, sector, radius, angle);
          extend (formed, p);
          extend (formed, bf_vec3_add (p, across));
        }
    }
}

static double
sector_volume (const BfLayout *layout, const BfSolid *sector)
{
  double skin = sector->skin_mm, outer = sector->radius_mm + layout->thickness_mm;
  return sector->angle_rad * (outer - skin / 2.0) * skin * sector->width_mm;
}

void
bf_formed_measure (const BfLayout *layout, BfFormed *formed)
{
  formed->min = bf_vec3 (G_MAXDOUBLE, G_MAXDOUBLE, G_MAXDOUBLE);
  formed->max = bf_vec3_scale (formed->min, -1.0);
  formed->volume_mm3 = 0.0;
  for (guint i = 0; i < formed->solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (formed, i);

      if (solid->kind == BF_SOLID_SECTOR)
        {
          extend_by_sector (layout, solid, formed);
          formed->volume_mm3 += sector_volume (layout, solid);
        }
      else
        {
          extend_by_slab (layout, solid, formed);
          formed->volume_mm3 += bf_ring_area (solid->outline) * layout->thickness_mm;
        }
    }
  for (guint i = 0; i < layout->folded->len; i++)
    formed->volume_mm3 +=
        g_array_index (layout->folded, BfFoldedCorner, i).rest_mm2 * layout->thickness_mm;
}
