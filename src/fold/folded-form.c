/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/folded-form.h"

#include "fold/corner-sides.h"
#include "fold/folded-corner.h"

/* A fold that is all but flat is drawn turned by this much, so that it has a radius. */
#define FLATTEST_RAD 1e-6

#define LEAN_POWER 8.0

/* Flat metal: how its points of the blank lie in space. */
typedef struct
{
  BfVec2 flat_origin, flat_x, flat_y;
  BfFrame frame;
} Plate;

static Plate
flap_plate (const BfFlap *flap, const BfPose *pose)
{
  return (Plate){ bf_flap_to_blank (flap, 0.0, 0.0),
                  flap->flat_e,
                  flap->flat_n,
                  { pose->origin, pose->e, pose->d, pose->m } };
}

static BfVec3
plate_vector (const Plate *plate, BfVec2 v)
{
  return bf_vec3_along (bf_vec3_scale (plate->frame.ex, bf_vec2_dot (v, plate->flat_x)),
                        plate->frame.ey, bf_vec2_dot (v, plate->flat_y));
}

static BfVec3
plate_point (const Plate *plate, BfVec2 p)
{
  return bf_vec3_add (plate->frame.origin,
                      plate_vector (plate, bf_vec2_sub (p, plate->flat_origin)));
}

/* ---- folds --------------------------------------------------------------------------------- */

/* How far a fold is turned, and at what inside radius. */
static BfTurned
turned (const BfLayout *layout, const BfFoldedBend *bend, double angle_rad, gboolean done)
{
  double angle = MAX (angle_rad, FLATTEST_RAD);

  if (done)
    return (BfTurned){ angle_rad, bend->radius_mm };
  return (BfTurned){ angle, bend->allowance_mm / angle - bend->k * layout->thickness_mm };
}

static BfSolid
make_sector (const BfLayout *layout, const Plate *from, const BfCrease *crease, BfTurned turn)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (crease->zone[0], crease->zone[1]));
  BfVec2 out = bf_vec2_unit (bf_vec2_sub (crease->zone[3], crease->zone[0]));
  BfSolid sector = {
    .kind = BF_SOLID_SECTOR,
    .frame = { plate_point (from, crease->zone[1]), plate_vector (from, along),
               plate_vector (from, out), from->frame.ez },
    .width_mm = bf_vec2_distance (crease->zone[0], crease->zone[1]),
    .radius_mm = turn.radius_mm,
    .skin_mm = layout->thickness_mm,
    .angle_rad = turn.angle_rad,
    .turn = crease->turn,
  };

  memcpy (sector.zone, crease->zone, sizeof sector.zone);
  return sector;
}

/* The flat metal beyond a fold. */
static Plate
beyond (const BfLayout *layout, const BfSolid *sector)
{
  double sign = sector->turn == BF_TURN_UP ? 1.0 : -1.0;
  double r =
      sector->turn == BF_TURN_UP ? sector->radius_mm : sector->radius_mm + layout->thickness_mm;
  double sine = sin (sector->angle_rad), cosine = cos (sector->angle_rad);
  const BfFrame *f = &sector->frame;
  Plate plate = { sector->zone[2], bf_vec2_unit (bf_vec2_sub (sector->zone[0], sector->zone[1])),
                  bf_vec2_unit (bf_vec2_sub (sector->zone[3], sector->zone[0])), *f };

  plate.frame.origin =
      bf_vec3_along (bf_vec3_along (f->origin, f->ey, r * sine), f->ez, sign * r * (1.0 - cosine));
  plate.frame.ey = bf_vec3_along (bf_vec3_scale (f->ey, cosine), f->ez, sign * sine);
  plate.frame.ez = bf_vec3_along (bf_vec3_scale (f->ey, -sign * sine), f->ez, cosine);
  return plate;
}

static BfSolid
make_slab (const Plate *plate, const BfRing *outline, guint face)
{
  return (BfSolid){ .kind = BF_SOLID_SLAB,
                    .face = face,
                    .outline = outline,
                    .frame = plate->frame,
                    .flat_origin = plate->flat_origin,
                    .flat_ex = plate->flat_x,
                    .flat_ey = plate->flat_y };
}

/* ---- on the way ---------------------------------------------------------------------------- */

/* A wall's end at the corner: up along it, out beyond it, and the way to the inside. */
typedef struct
{
  BfVec3 up, out, inside;
} WallEnd;

static WallEnd
wall_end (const BfFlap *flap, const Plate *plate, BfVec2 out)
{
  double sign = flap->flange->turn == BF_TURN_UP ? 1.0 : -1.0;

  return (WallEnd){ plate->frame.ey, plate_vector (plate, out),
                    bf_vec3_scale (plate->frame.ez, sign) };
}

static BfVec3
square_to (BfVec3 v, BfVec3 axis)
{
  return bf_vec3_along (v, axis, -bf_vec3_dot (v, axis));
}

/* Where the bisector points: as far from both ends as in the flat, inward and leaning to the long
 * wall. */
static BfVec3
bisector (const WallEnd *a, const WallEnd *b, double lean_rad)
{
  BfVec3 sum = bf_vec3_add (a->up, b->up), middle = bf_vec3_unit (sum);
  BfVec3 aside = bf_vec3_unit (square_to (bf_vec3_sub (b->out, a->out), middle));
  BfVec3 in = square_to (square_to (bf_vec3_add (a->inside, b->inside), middle), aside);
  double p = MIN (G_SQRT2 / bf_vec3_length (sum), 1.0), q = sqrt (1.0 - p * p);
  BfVec3 way =
      bf_vec3_along (bf_vec3_scale (bf_vec3_unit (in), cos (lean_rad)), aside, sin (lean_rad));

  return bf_vec3_along (bf_vec3_scale (middle, p), way, q);
}

/* How far a triangle that reaches to the bisector is turned about the wall's end. */
static double
turned_to (const WallEnd *end, BfVec3 bisector)
{
  double angle = atan2 (bf_vec3_dot (bisector, end->inside), bf_vec3_dot (bisector, end->out));

  return angle < -G_PI_2 ? angle + 2.0 * G_PI : MAX (angle, 0.0);
}

static void
find_angles (const WallEnd *a, const WallEnd *b, double fraction, double angles[3])
{
  BfVec3 d = bisector (a, b, G_PI_4 * pow (fraction, LEAN_POWER));
  BfVec3 normal_a = bf_vec3_unit (bf_vec3_cross (d, a->up));
  BfVec3 normal_b = bf_vec3_unit (bf_vec3_cross (b->up, d));

  angles[0] = turned_to (a, d);
  angles[1] = acos (CLAMP (bf_vec3_dot (normal_a, normal_b), -1.0, 1.0));
  angles[2] = turned_to (b, d);
}

/* ---- the corner ---------------------------------------------------------------------------- */

/* Where everything of a corner hangs. */
typedef struct
{
  const BfLayout *layout;
  const BfFoldedCorner *corner;
  BfFoldedPlan plan;
  Plate along, end;
  double fraction, angles[3];
} Form;

static void
prepare (Form *form, const BfMeeting *meeting, const BfPose *poses, const double *fractions)
{
  guint a = form->corner->along - 1, b = form->corner->end - 1;
  const BfFlap *flaps = form->layout->flaps;
  WallEnd end_a, end_b;

  bf_folded_corner_plan (form->layout, meeting, &form->plan);
  form->along = flap_plate (&flaps[a], &poses[a]);
  form->end = flap_plate (&flaps[b], &poses[b]);
  form->fraction = CLAMP (MIN (fractions[a], fractions[b]), 0.0, 1.0);
  end_a = wall_end (&flaps[a], &form->along, flaps[b].flat_n);
  end_b = wall_end (&flaps[b], &form->end, flaps[a].flat_n);
  find_angles (&end_a, &end_b, form->fraction, form->angles);
  for (guint i = 0; form->fraction >= 1.0 && i < 3; i++)
    form->angles[i] = form->corner->creases[i].angle_rad;
}

static Plate
add_fold (const Form *form, const Plate *from, guint crease, GArray *solids)
{
  const BfFoldedBend *bend = crease == 2 ? &form->plan.round : &form->plan.hem;
  BfTurned turn = turned (form->layout, bend, form->angles[crease], form->fraction >= 1.0);
  BfSolid sector = make_sector (form->layout, from, &form->corner->creases[crease], turn);

  sector.face = crease == 0 ? form->corner->along : form->corner->end;
  sector.on = crease == 2 ? form->corner->end : form->corner->along;
  g_array_append_val (solids, sector);
  return beyond (form->layout, &sector);
}

static void
add_corner (const Form *form, GArray *solids)
{
  Plate along = add_fold (form, &form->along, 0, solids);
  Plate end = add_fold (form, &form->end, 2, solids);
  BfSolid slabs[] = { make_slab (&along, form->corner->ears[0], form->corner->along),
                      make_slab (&end, form->corner->ears[1], form->corner->end) };

  add_fold (form, &along, 1, solids);
  g_array_append_vals (solids, slabs, 2);
}

void
bf_folded_corners_form (const BfLayout *layout,
                        const BfPose *poses,
                        const double *fractions,
                        GArray *solids)
{
  guint n = 0;

  for (guint i = 0; i < layout->meetings->len; i++)
    {
      const BfMeeting *meeting = bf_layout_meeting (layout, i);
      Form form = { .layout = layout };

      if (!meeting->folded)
        continue;
      form.corner = &g_array_index (layout->folded, BfFoldedCorner, n++);
      prepare (&form, meeting, poses, fractions);
      add_corner (&form, solids);
    }
}
