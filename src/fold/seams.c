/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/seams.h"

#include "core/tolerance.h"
#include "fold/parting.h"
#include "fold/side.h"

/* An edge in space. */
typedef struct
{
  BfVec3 from, to;
} Segment;

/* How much of a leg of the side is left where the flange gives metal up. */
static double
share_left (const BfLayout *layout, const BfFlap *flap, BfSideName name, const BfVec2 leg[2])
{
  BfVec2 from = bf_flap_to_blank (flap, bf_flap_u (flap, name, leg[0].x), leg[0].y);
  BfVec2 to = bf_flap_to_blank (flap, bf_flap_u (flap, name, leg[1].x), leg[1].y);

  return bf_partings_leave (layout, (int)(flap - layout->flaps), from, to);
}

/* The side's edge on the inside surface, from the flange's tangent to its first corner: where it
 * follows the neighbour. */
static Segment
inside_edge (const BfLayout *layout, const BfFlap *flap, BfSideName name)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  double depth = flap->flange->turn == BF_TURN_UP ? 0.0 : -layout->thickness_mm;
  BfVec2 leg[2];
  BfVec3 ends[2];

  bf_side_trace (&flap->sides[name], MAX (bf_flap_flat_mm (flap), 0.0), points);
  for (guint i = 0; i < 2; i++)
    leg[i] = g_array_index (points, BfVec2, MIN (i, points->len - 1));
  leg[1] =
      bf_vec2_along (leg[0], bf_vec2_sub (leg[1], leg[0]), share_left (layout, flap, name, leg));
  for (guint i = 0; i < 2; i++)
    {
      BfVec2 p = leg[i];
      BfVec3 at = bf_vec3_along (flap->pose.origin, flap->pose.e, bf_flap_u (flap, name, p.x));

      ends[i] = bf_vec3_along (bf_vec3_along (at, flap->pose.d, p.y), flap->pose.m, depth);
    }
  return (Segment){ ends[0], ends[1] };
}

static void
measure (const Segment *a, const Segment *b, BfSeam *seam)
{
  BfVec3 along = bf_vec3_sub (a->to, a->from), other = bf_vec3_sub (b->to, b->from);
  BfVec3 d = bf_vec3_unit (along), across = bf_vec3_sub (b->from, a->from);
  double b_from = bf_vec3_dot (across, d);
  double b_to = bf_vec3_dot (bf_vec3_sub (b->to, a->from), d);
  double skew = bf_vec3_length (bf_vec3_cross (d, bf_vec3_unit (other)));

  seam->length_mm = MAX (0.0, MIN (bf_vec3_length (along), b_to) - MAX (0.0, b_from));
  seam->gap_mm = NAN;
  if (skew < BF_TOLERANCE_SIZE_MM && seam->length_mm > 0.0)
    seam->gap_mm = bf_vec3_length (bf_vec3_along (across, d, -b_from));
}

/* Lips that stop short of each other have none; of walls it is told that they meet in a point. */
static void
add_seam (const BfLayout *layout, const BfFlap *before, const BfFlap *after, GArray *seams)
{
  Segment a = inside_edge (layout, before, BF_SIDE_END);
  Segment b = inside_edge (layout, after, BF_SIDE_START);
  BfSeam seam = { before->flange->id, after->flange->id, 0.0, NAN };

  measure (&a, &b, &seam);
  if (seam.length_mm > BF_TOLERANCE_SIZE_MM || before->flange->edge != BF_EDGE_TIP)
    g_array_append_val (seams, seam);
}

/* The flap that a tip carries nearest that end, or NULL. */
static const BfFlap *
on_tip_at (const BfFlap *flap, BfSideName name)
{
  if (flap->on_tip == NULL)
    return NULL;
  return g_ptr_array_index (flap->on_tip, name == BF_SIDE_START ? 0 : flap->on_tip->len - 1);
}

void
bf_seams_find (const BfLayout *layout, GArray *seams)
{
  for (guint i = 0; i < layout->meetings->len; i++)
    {
      const BfMeeting *meeting = bf_layout_meeting (layout, i);
      const BfFlap *before = &layout->flaps[meeting->before];
      const BfFlap *after = &layout->flaps[meeting->after];

      while (!meeting->folded && before != NULL && after != NULL && before->placed && after->placed)
        {
          add_seam (layout, before, after, seams);
          before = on_tip_at (before, BF_SIDE_END);
          after = on_tip_at (after, BF_SIDE_START);
        }
    }
}
