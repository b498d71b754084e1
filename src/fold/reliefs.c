/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/reliefs.h"

#include "core/defaults.h"
#include "core/drills.h"
#include "core/tolerance.h"
#include "fold/end-relief.h"
#include "fold/outline.h"
#include "fold/side.h"
#include "fold/smallest-circle.h"

/* A corner relief centred on the bend lines' crossing may be this much wider than the smallest
 * that does, before it is moved to where the smallest stands. */
#define OFF_CENTRE_MAX 1.5

/* A relief that a machine cuts is drawn in whole steps of this. */
#define CUT_STEP_MM 0.1

#define MUST_GO_MAX 7

void
bf_relief_clear (BfRelief *relief)
{
  g_clear_pointer (&relief->where, g_free);
  g_clear_pointer (&relief->drill, g_free);
  g_clear_pointer (&relief->ring, bf_ring_free);
}

static BfRing *
circle_ring (BfVec2 centre, double diameter_mm)
{
  BfRing *ring = bf_ring_new ();

  bf_ring_add (ring, bf_vec2 (centre.x + diameter_mm / 2.0, centre.y), 1.0);
  bf_ring_add (ring, bf_vec2 (centre.x - diameter_mm / 2.0, centre.y), 1.0);
  return ring;
}

/* ---- corners ------------------------------------------------------------------------------ */

/* The points that a corner relief must reach: the tangents' crossing, both zones' end corners and
 * both flanges' root corners. */
static guint
must_go (const BfLayout *layout, const BfMeeting *meeting, BfVec2 *points)
{
  guint n = 0;

  if (meeting->has_crossing)
    points[n++] = bf_meeting_point (layout, meeting, meeting->tangent_crossing);
  for (int i = 0; i < 2; i++)
    {
      BfSideName name = i == 0 ? BF_SIDE_END : BF_SIDE_START;
      const BfFlap *flap = &layout->flaps[i == 0 ? meeting->before : meeting->after];
      double root = bf_flap_u (flap, name, bf_side_at (&flap->sides[name], 0.0));
      BfVec2 zone[4];

      bf_outline_zone (flap, zone);
      points[n++] = zone[name == BF_SIDE_START ? 0 : 1];
      points[n++] = zone[name == BF_SIDE_START ? 3 : 2];
      points[n++] = bf_flap_to_blank (flap, root, 0.0);
    }
  return n;
}

/* Where the two bend lines cross in the blank; the vertex where they do not. */
static BfVec2
bends_cross_at (const BfLayout *layout, const BfMeeting *meeting)
{
  return bf_meeting_point (layout, meeting,
                           meeting->has_crossing ? meeting->bend_crossing : meeting->vertex);
}

static void
place_round (const BfLayout *layout,
             const BfMeeting *meeting,
             const BfVec2 *points,
             guint n,
             BfRelief *relief)
{
  BfVec2 centre, crossing = bends_cross_at (layout, meeting);
  double smallest = bf_smallest_circle (points, n, &centre), radius = 0.0;

  for (guint i = 0; i < n; i++)
    radius = MAX (radius, bf_vec2_distance (points[i], crossing));
  if (!meeting->has_crossing || radius > OFF_CENTRE_MAX * smallest)
    radius = smallest;
  else
    centre = crossing;
  relief->at = centre;
  relief->need_mm = 2.0 * radius;
}

double
bf_relief_usual_mm (const BfPart *part, BfReliefShape shape, double need_mm)
{
  double wanted = need_mm + 2.0 * bf_part_slack_mm (part);
  double drill_mm = NAN;

  if (shape == BF_RELIEF_SQUARE)
    return need_mm + bf_part_kerf_mm (part);
  if (bf_part_drills_reliefs (part))
    drill_mm = bf_drill_next_up (part, wanted, NULL);
  return isnan (drill_mm) ? ceil (wanted / CUT_STEP_MM - 1e-9) * CUT_STEP_MM : drill_mm;
}

/* A size that was asked for is drawn as it is, and only a drill of just that size is named. */
static void
size_round (const BfPart *part, const BfCorner *asked, BfRelief *relief)
{
  g_autofree char *name = NULL;
  double drill_mm = NAN;

  relief->diameter_mm = asked != NULL && !isnan (asked->relief_size_mm)
                            ? asked->relief_size_mm
                            : bf_relief_usual_mm (part, BF_RELIEF_ROUND, relief->need_mm);
  relief->ring = circle_ring (relief->at, relief->diameter_mm);
  if (bf_part_drills_reliefs (part))
    drill_mm = bf_drill_next_up (part, relief->diameter_mm, &name);
  if (!(fabs (drill_mm - relief->diameter_mm) <= BF_TOLERANCE_SIZE_MM))
    return;
  relief->drill_mm = drill_mm;
  relief->drill = g_steal_pointer (&name);
}

static BfRing *
square_ring (BfVec2 centre, BfVec2 x, double side_mm)
{
  BfRing *ring = bf_ring_new ();
  BfVec2 y = { -x.y, x.x };
  static const double corners[4][2] = {
    { -0.5, -0.5 }, { 0.5, -0.5 }, { 0.5, 0.5 }, { -0.5, 0.5 }
  };

  for (int i = 0; i < 4; i++)
    bf_ring_add (ring,
                 bf_vec2_along (bf_vec2_along (centre, x, corners[i][0] * side_mm), y,
                                corners[i][1] * side_mm),
                 0.0);
  return ring;
}

static void
make_square (const BfLayout *layout,
             const BfMeeting *meeting,
             const BfVec2 *points,
             guint n,
             BfRelief *relief)
{
  gboolean turned = meeting->asked != NULL && meeting->asked->along_after;
  BfVec2 x = layout->flaps[turned ? meeting->after : meeting->before].flat_e, y = { -x.y, x.x };
  double half = 0.0;

  relief->at = bends_cross_at (layout, meeting);
  for (guint i = 0; i < n; i++)
    {
      BfVec2 d = bf_vec2_sub (points[i], relief->at);
      half = MAX (half, MAX (fabs (bf_vec2_dot (d, x)), fabs (bf_vec2_dot (d, y))));
    }
  relief->need_mm = 2.0 * half;
  relief->diameter_mm = bf_relief_usual_mm (layout->part, BF_RELIEF_SQUARE, relief->need_mm);
  if (meeting->asked != NULL && !isnan (meeting->asked->relief_size_mm))
    relief->diameter_mm = meeting->asked->relief_size_mm;
  relief->ring = square_ring (relief->at, x, relief->diameter_mm);
}

static void
add_corner (const BfLayout *layout, const BfMeeting *meeting, GArray *reliefs)
{
  BfReliefShape shape = meeting->asked != NULL ? meeting->asked->relief : BF_RELIEF_UNSET;
  BfRelief relief = { .kind = BF_RELIEF_KIND_CORNER, .drill_mm = NAN };
  BfVec2 points[MUST_GO_MAX];
  guint n;

  if (shape == BF_RELIEF_NONE || meeting->folded)
    return;
  n = must_go (layout, meeting, points);
  relief.where = bf_meeting_where (layout, meeting);
  relief.shape = shape == BF_RELIEF_SQUARE ? BF_RELIEF_SQUARE : BF_RELIEF_ROUND;
  if (relief.shape == BF_RELIEF_SQUARE)
    make_square (layout, meeting, points, n, &relief);
  else
    {
      place_round (layout, meeting, points, n, &relief);
      size_round (layout->part, meeting->asked, &relief);
    }
  g_array_append_val (reliefs, relief);
}

/* ---- ends within an edge ------------------------------------------------------------------ */

/* A notch beside the zone. Where the blank's outline is open already (the slit) the tool stops
 * short of the zone's end, so that no two edges lie on each other. */
static BfRing *
notch_ring (const BfLayout *layout, const BfFlap *flap, BfSideName name, double width_mm)
{
  double away = name == BF_SIDE_START ? -1.0 : 1.0;
  double end = bf_flap_zone_u (flap, name), slit = end + away * BF_OUTLINE_SLIT_MM / 2.0;
  double outer = end + away * width_mm;
  double tangent = -flap->sums.setback_mm, bottom = bf_end_relief_notch_v (layout, flap);
  double top = MAX (0.0, flap->sums.allowance_mm - flap->sums.setback_mm) + BF_OUTLINE_SLIT_MM;
  BfRing *ring = bf_ring_new ();
  const double corners[6][2] = { { outer, bottom }, { end, bottom }, { end, tangent },
                                 { slit, tangent }, { slit, top },   { outer, top } };

  for (int i = 0; i < 6; i++)
    bf_ring_add (ring, bf_flap_at_v (flap, corners[i][0], corners[i][1]), 0.0);
  bf_ring_make_counter_clockwise (ring);
  return ring;
}

static void
add_end (const BfLayout *layout, const BfFlap *flap, BfSideName name, GArray *reliefs)
{
  BfRelief relief = { .kind = BF_RELIEF_KIND_END };
  BfEndReliefSize size;
  double end = bf_flap_zone_u (flap, name);

  bf_end_relief_size (layout, flap, name, &size);
  relief.where = g_strdup (flap->flange->id);
  relief.need_mm = size.need_mm;
  relief.diameter_mm = size.size_mm;
  relief.drill_mm = size.drill_mm;
  relief.drill = g_steal_pointer (&size.drill);
  if (size.kind == BF_END_RELIEF_NOTCH)
    {
      double middle = end + (name == BF_SIDE_START ? -0.5 : 0.5) * size.size_mm;

      relief.shape = BF_RELIEF_SQUARE;
      relief.at = bf_flap_at_v (flap, middle, bf_end_relief_notch_v (layout, flap) / 2.0);
      relief.ring = notch_ring (layout, flap, name, size.size_mm);
    }
  else
    {
      relief.shape = BF_RELIEF_ROUND;
      relief.at = bf_flap_at_v (flap, end, bf_flap_bend_v (flap));
      relief.ring = circle_ring (relief.at, size.size_mm);
    }
  g_array_append_val (reliefs, relief);
}

void
bf_reliefs_find (const BfLayout *layout, GArray *reliefs)
{
  for (guint i = 0; i < layout->meetings->len; i++)
    add_corner (layout, bf_layout_meeting (layout, i), reliefs);
  for (guint i = 0; i < layout->n_flaps; i++)
    for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
      if (layout->flaps[i].placed && layout->flaps[i].sides[name].bare_beside)
        add_end (layout, &layout->flaps[i], name, reliefs);
}
