/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/face-below.h"

#include "core/defaults.h"
#include "core/tolerance.h"
#include "fold/convex.h"
#include "fold/outline.h"
#include "fold/side.h"

/* How far the chords of a rounded corner may stray from it. */
#define FACE_SAGITTA_MM 0.1

/* The bend in two slices, and the flat. At a score the flat begins thicker than the bend ends. */
#define N_BEND_CUTS 3
#define N_CUTS 5

/* The face that a flap's parent leaves, and its surface on the side on which that parent stands. */
typedef struct
{
  const BfLayout *layout;
  int face;
  const BfPose *pose;
  BfVec3 normal; /* out of that surface */
  double level;  /* normal · x on it */
  BfSideName name;
} Ground;

/* Both faces of a flap where its profile is cut across. */
typedef struct
{
  BfVec3 inner, outer;
} Cut;

static double
height_mm (const Ground *ground, BfVec3 p)
{
  return bf_vec3_dot (ground->normal, p) - ground->level;
}

/* The flap on a side that the given one is, or whose tip carries it, tip by tip. */
static const BfFlap *
on_side (const BfLayout *layout, const BfFlap *flap)
{
  while (flap->parent >= 0 && flap->flange->edge == BF_EDGE_TIP)
    flap = &layout->flaps[flap->parent];
  return flap->parent >= 0 ? flap : NULL;
}

static Ground
ground_of (const BfLayout *layout, const BfFlap *ear)
{
  const BfFlap *wall = &layout->flaps[ear->parent];
  gboolean up = wall->flange->turn == BF_TURN_UP;
  Ground ground = { .layout = layout,
                    .face = wall->parent,
                    .pose = wall->parent < 0 ? &bf_base_pose : &layout->flaps[wall->parent].pose };

  ground.normal = up ? ground.pose->m : bf_vec3_scale (ground.pose->m, -1.0);
  ground.level =
      bf_vec3_dot (ground.normal, ground.pose->origin) + (up ? 0.0 : layout->thickness_mm);
  ground.name = ear->flange->edge == BF_EDGE_START ? BF_SIDE_START : BF_SIDE_END;
  return ground;
}

/* How high the ear's edge begins, on its parent's inside face. */
static double
edge_height_mm (const Ground *ground, const BfFlap *ear)
{
  const BfFlap *wall = &ground->layout->flaps[ear->parent];
  double u = ground->name == BF_SIDE_START ? 0.0 : ear->edge_length_mm;
  BfVec3 p = bf_pose_point (&wall->pose, bf_vec2_along (ear->edge_start, ear->edge_e, u));

  if (wall->flange->turn == BF_TURN_DOWN)
    p = bf_vec3_along (p, wall->pose.m, -ground->layout->thickness_mm);
  return height_mm (ground, p);
}

/* ---- whether it stands over the face ------------------------------------------------------- */

/* The profile at q = 0: from where the bend begins over its middle to the tangent and the tip. */
static void
cut_profile (const BfLayout *layout, const BfFlap *flap, BfSideName name, Cut cuts[N_CUTS])
{
  double sign = flap->flange->turn == BF_TURN_UP ? 1.0 : -1.0, t = layout->thickness_mm;
  double outer = flap->radius_mm + t, inner = outer - flap->sums.skin_mm;
  BfVec3 end = bf_vec3_along (flap->pose.origin, flap->pose.e, bf_flap_u (flap, name, 0.0));
  BfVec3 centre = bf_vec3_along (end, flap->pose.m, sign > 0.0 ? flap->radius_mm : -outer);
  BfVec3 tip = bf_vec3_along (end, flap->pose.d, MAX (flap->tip_w_mm, 0.0));

  for (guint i = 0; i < N_BEND_CUTS; i++)
    {
      double back = flap->angle_rad * (1.0 - i / (N_BEND_CUTS - 1.0));
      BfVec3 ray = bf_vec3_add (bf_vec3_scale (flap->pose.d, -sin (back)),
                                bf_vec3_scale (flap->pose.m, -sign * cos (back)));

      cuts[i] = (Cut){ bf_vec3_along (centre, ray, inner), bf_vec3_along (centre, ray, outer) };
    }
  cuts[N_CUTS - 2] = (Cut){ end, bf_vec3_along (end, flap->pose.m, -t) };
  cuts[N_CUTS - 1] = (Cut){ tip, bf_vec3_along (tip, flap->pose.m, -t) };
}

/* Where the line along the bend through p meets the face so far below its surface, in the blank. */
static BfVec2
foot_of (const Ground *ground, const BfFlap *flap, BfVec3 p, double below_mm)
{
  double per_mm = bf_vec3_dot (ground->normal, flap->pose.e);
  double above = height_mm (ground, p) + below_mm;
  BfVec3 d = bf_vec3_sub (bf_vec3_along (p, flap->pose.e, -above / per_mm), ground->pose->origin);
  BfVec2 foot = { bf_vec3_dot (d, ground->pose->e), bf_vec3_dot (d, ground->pose->d) };

  return ground->face < 0 ? foot
                          : bf_flap_to_blank (&ground->layout->flaps[ground->face], foot.x, foot.y);
}

/* What a slice of the flap, drawn on along its bend, covers so far below the face's surface. */
static BfConvexPart
footprint (const Ground *ground, const BfFlap *flap, const Cut cuts[2], double below_mm)
{
  BfVec3 p[] = { cuts[0].inner, cuts[1].inner, cuts[1].outer, cuts[0].outer };
  BfConvexPart part = { .n = 4 };

  for (guint i = 0; i < 4; i++)
    part.corners[i] = foot_of (ground, flap, p[i], below_mm);
  if (bf_polygon_area (part.corners, 4) < 0.0)
    for (guint i = 0; i < 4; i++)
      part.corners[i] = foot_of (ground, flap, p[3 - i], below_mm);
  return part;
}

static GArray *
parts_of_face (const Ground *ground)
{
  g_autoptr (BfRing) ring = bf_outline_face (ground->layout, ground->face);
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  GArray *parts = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));

  bf_ring_make_counter_clockwise (ring);
  bf_ring_flatten (ring, FACE_SAGITTA_MM, points);
  bf_convex_parts (points, parts);
  return parts;
}

static gboolean
stands_over_face (const Ground *ground, const BfFlap *flap)
{
  g_autoptr (GArray) parts = parts_of_face (ground);
  g_autoptr (GArray) over = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));
  Cut cuts[N_CUTS];

  cut_profile (ground->layout, flap, ground->name, cuts);
  for (guint i = 0; i < 2 * (N_CUTS - 1); i++)
    {
      BfConvexPart tool =
          footprint (ground, flap, &cuts[i / 2], i % 2 == 0 ? 0.0 : ground->layout->thickness_mm);

      for (guint k = 0; k < parts->len; k++)
        bf_convex_part_within (&g_array_index (parts, BfConvexPart, k), &tool, over);
    }
  return over->len > 0;
}

/* ---- keeping off it ------------------------------------------------------------------------ */

void
bf_side_keep_off_face_below (BfLayout *layout, BfFlap *flap)
{
  const BfFlap *ear = on_side (layout, flap);
  Ground ground;
  double along, gap_mm = bf_part_resolve_gap_mm (layout->part, NULL), c;
  BfSide *side;

  if (ear == NULL || ear->flange->turn != layout->flaps[ear->parent].flange->turn)
    return;
  ground = ground_of (layout, ear);
  along = bf_vec3_dot (ground.normal, flap->pose.e) * (ground.name == BF_SIDE_START ? 1.0 : -1.0);
  if (along < BF_TOLERANCE_SIZE_MM || !stands_over_face (&ground, flap))
    return;
  side = &flap->sides[ground.name];
  if (side->n_trims == 0)
    bf_side_add (side, 0.0, 0.0);
  c = ground.level + CLAMP (edge_height_mm (&ground, ear), 0.0, gap_mm);
  bf_side_keep_beyond_plane (layout, flap, ground.name, ground.normal, c);
}
