/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/tabs.h"

#include "core/defaults.h"
#include "core/tolerance.h"
#include "fold/corner-planes.h"
#include "fold/corner.h"
#include "fold/corner-sides.h"
#include "fold/end-relief.h"
#include "fold/end-wall.h"
#include "fold/score.h"
#include "fold/side.h"

/* Common practice: a hole stands at least twice its width from every edge, and holes no further
 * apart than this. */
#define EDGE_OF_HOLES 2.0
#define PITCH_MAX_MM 30.0

/* Common practice: the body of a rivet is about three times as thick as one of the metals. Holes
 * for rivets of 3.2, 4 and 4.8 mm (1/8, 5/32 and 3/16 in), which M3, M4 and 4.8 mm screws go
 * through too. */
static const struct
{
  double up_to_mm, hole_mm;
} holes[] = { { 1.2, 3.3 }, { 2.0, 4.1 }, { G_MAXDOUBLE, 4.9 } };

/* A bend of a tab must be one that hands can make, and no rivet can be set in a corner that is much
 * sharper than square (common practice). */
#define LEAST_BEND_RAD (G_PI / 9.0)
#define MOST_BEND_RAD (7.0 * G_PI / 12.0)

/* Least angle between the two walls' sides in the blank: the tab between them leans by what is left
 * to square, and is a sliver below this. */
#define LEAST_OPEN_RAD (G_PI / 6.0)

/* What must be left between the corner's relief and the tab's own (common practice: twice the
 * thickness, but no less than 3), and what the next drill up may take of it. */
#define LEAST_STRIP_MM 3.5

#define HEM_RAD (G_PI - 1e-6)

static BfEdgeKind
edge_of (BfSideName name)
{
  return name == BF_SIDE_START ? BF_EDGE_START : BF_EDGE_END;
}

const BfFlap *
bf_tab_of (const BfLayout *layout, const BfMeeting *meeting)
{
  BfSideName name = meeting->end_wall;
  const GPtrArray *on_side = bf_meeting_flap (layout, meeting, name)->on_side[name];
  const BfFlap *first = on_side == NULL ? NULL : g_ptr_array_index (on_side, 0);

  return meeting->join == BF_JOIN_TAB && first != NULL && first->flange->is_tab ? first : NULL;
}

static double
hole_mm (const BfPart *part)
{
  guint i = 0;

  while (part->metal.thickness_mm > holes[i].up_to_mm + BF_TOLERANCE_SIZE_MM)
    i++;
  return holes[i].hole_mm;
}

/* From the tab's end to its nearest hole: off an end that leans, which turns about the tangent, as
 * far as off any other edge. */
static double
end_to_hole_mm (double taper_deg, double edge_mm)
{
  double taper = bf_deg_to_rad (taper_deg);
  return edge_mm * (tan (taper) + 1.0 / cos (taper));
}

/* ---- where a tab can be ------------------------------------------------------------------- */

/* A wall that a tab can join: whole at this end, and with nothing else on that side. */
static gboolean
is_fit (const BfFlap *flap, BfSideName name)
{
  return flap->placed && flap->angle_rad < HEM_RAD && !flap->sides[name].own &&
         flap->on_side[name] == NULL;
}

/* How far up the covered wall both walls reach, before what their tips carry; where the straight
 * side ends, which follows the other only as far as that goes, by the part's measure and counted
 * outside; and how both sides lean. */
typedef struct
{
  double height_mm, end_mm, outer_end_mm, lean, its_lean;
} Reach;

/* w of the wall's tip as drawn where sizes count outside. */
static double
outer_tip_mm (const BfFlap *wall)
{
  return wall->tip_w_mm + wall->tip_shift_mm;
}

static gboolean
find_reach (const BfLayout *layout, const BfMeeting *meeting, Reach *reach)
{
  BfInsidePlane own, its;
  double at, its_at, tops[2];
  BfSideName name = meeting->end_wall;
  const BfFlap *covered = bf_meeting_flap (layout, meeting, name);
  const BfFlap *covering = bf_meeting_flap (layout, meeting, bf_other_side (name));

  bf_inside_plane (layout, meeting, name, &own);
  bf_inside_plane (layout, meeting, bf_other_side (name), &its);
  if (!bf_inside_planes_cut (&own, &its, &at, &reach->lean) ||
      !bf_inside_planes_cut (&its, &own, &its_at, &reach->its_lean))
    return FALSE;
  for (guint i = 0; i < 2; i++)
    {
      double w = i == 0 ? bf_flap_flat_mm (covering) : outer_tip_mm (covering);
      BfVec3 top = bf_vec3_along (its.point, its.in, its_at + reach->its_lean * w);

      top = bf_vec3_along (top, its.out, w);
      tops[i] = bf_vec3_dot (bf_vec3_sub (top, own.point), own.out);
    }
  reach->height_mm = MIN (bf_flap_flat_mm (covered), tops[0]);
  reach->end_mm = reach->lean < 0.0 ? MIN (covered->tip_w_mm, tops[1]) : covered->tip_w_mm;
  reach->outer_end_mm =
      reach->lean < 0.0 ? MIN (outer_tip_mm (covered), tops[1]) : outer_tip_mm (covered);
  return TRUE;
}

/* TRUE where the straight side ends between the metal's end, short of what the tip carries, and the
 * tip as drawn outside: there the metal does not show where the side's flange ends. Inside it
 * would, but the same metal is to have the same tab. */
static gboolean
turns_under_lip (const BfFlap *wall, const Reach *reach)
{
  return reach->outer_end_mm > bf_flap_flat_mm (wall) - BF_TOLERANCE_SIZE_MM &&
         reach->outer_end_mm < outer_tip_mm (wall) - BF_TOLERANCE_SIZE_MM;
}

static double
tab_bend_rad (const BfLayout *layout, const BfMeeting *meeting)
{
  BfInsidePlane own, its;

  bf_inside_plane (layout, meeting, BF_SIDE_START, &own);
  bf_inside_plane (layout, meeting, BF_SIDE_END, &its);
  return G_PI - bf_inside_planes_angle (&own, &its);
}

static gboolean
can_have_tab (const BfLayout *layout, const BfMeeting *meeting)
{
  double bend;

  if (meeting->join != BF_JOIN_TAB || meeting->face >= 0 || !bf_corner_is_convex (meeting) ||
      !bf_meeting_turns_alike (layout, meeting) ||
      !is_fit (bf_meeting_flap (layout, meeting, BF_SIDE_END), BF_SIDE_END) ||
      !is_fit (bf_meeting_flap (layout, meeting, BF_SIDE_START), BF_SIDE_START))
    return FALSE;
  bend = tab_bend_rad (layout, meeting);
  return bend >= LEAST_BEND_RAD && bend <= MOST_BEND_RAD;
}

/* A wall's side at the corner, as a line of the blank that runs outward from its tangent. */
typedef struct
{
  BfVec2 from, along;
} SideLine;

static SideLine
side_line (const BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  const BfFlap *flap = bf_meeting_flap (layout, meeting, name);
  double at = bf_side_at (&flap->sides[name], 0.0), lean = 0.0, from = 0.0;
  BfInsidePlane own, its;
  BfVec2 foot, tip;

  bf_inside_plane (layout, meeting, name, &own);
  bf_inside_plane (layout, meeting, bf_other_side (name), &its);
  bf_inside_planes_cut (&own, &its, &from, &lean);
  foot = bf_flap_to_blank (flap, bf_flap_u (flap, name, at), 0.0);
  tip = bf_flap_to_blank (flap, bf_flap_u (flap, name, at + lean), 1.0);
  return (SideLine){ foot, bf_vec2_unit (bf_vec2_sub (tip, foot)) };
}

/* How the tab's end at the bend keeps off the covering wall in the blank: the two sides open like
 * scissors there. It starts where there is room for a cut, and leans as the covering wall does. */
typedef struct
{
  double inset_mm, taper_rad;
} RootEnd;

static gboolean
find_root_end (const BfLayout *layout, const BfMeeting *meeting, double least_mm, RootEnd *end)
{
  SideLine own = side_line (layout, meeting, meeting->end_wall);
  SideLine its = side_line (layout, meeting, bf_other_side (meeting->end_wall));
  double way = meeting->end_wall == BF_SIDE_START ? 1.0 : -1.0; /* as seen in a mirror */
  double sine = way * bf_vec2_cross (its.along, own.along),
         cosine = bf_vec2_dot (its.along, own.along);
  double open_rad = atan2 (sine, cosine), room = least_mm, apart;

  if (sine < 0.0 && cosine < 0.0) /* wider than straight */
    open_rad += 2.0 * G_PI;
  end->inset_mm = least_mm;
  end->taper_rad = MAX (0.0, G_PI_2 - open_rad);
  if (open_rad < LEAST_OPEN_RAD)
    return FALSE;
  if (open_rad < G_PI_2)
    {
      apart = way * bf_vec2_cross (its.along, bf_vec2_sub (own.from, its.from));
      end->inset_mm = MAX (least_mm, (room - apart) / sine);
    }
  return TRUE;
}

static void
size_tab (const BfLayout *layout, BfFlange *tab, double *inset_mm)
{
  BfBend bend = bf_bend_as_folded (layout->part, tab);
  BfBendSums sums;
  double half;

  bf_bend_sums (&bend, bf_deg_to_rad (tab->angle_deg), layout->thickness_mm, BF_MEASURE_OUTSIDE,
                &sums);
  tab->length_mm = sums.setback_mm + 2.0 * EDGE_OF_HOLES * hole_mm (layout->part);
  half = sums.allowance_mm / 2.0;
  *inset_mm = MAX (half, sums.outside_setback_mm - half) + 2.0 * layout->thickness_mm +
              bf_part_slack_mm (layout->part);
}

static void
set_ends (BfFlange *tab, const RootEnd *root, const RootEnd *tip)
{
  gboolean from_root = tab->edge == BF_EDGE_START; /* an end side runs from tip to root */
  const RootEnd *start = from_root ? root : tip, *end = from_root ? tip : root;

  tab->start_mm = start->inset_mm;
  tab->start_taper_deg = bf_rad_to_deg (start->taper_rad);
  tab->end_mm = end->inset_mm;
  tab->end_taper_deg = bf_rad_to_deg (end->taper_rad);
}

/* "right-start-tab", or, where the person has a flange of that name, "right-start-tab-2": the same
 * tab's name on either face of the metal. Returns: (transfer full). */
static char *
tab_id (const BfPart *part, const char *wall, BfSideName end)
{
  const char *side = (end == BF_SIDE_START) != part->other_face ? "start" : "end";
  char *id = g_strdup_printf ("%s-%s-tab", wall, side);

  for (guint i = 2; bf_part_find_flange (part, id) != NULL; i++)
    {
      g_free (id);
      id = g_strdup_printf ("%s-%s-tab-%u", wall, side, i);
    }
  return id;
}

static BfFlange *
new_tab (const BfLayout *layout, const BfMeeting *meeting)
{
  const BfFlap *wall = bf_meeting_flap (layout, meeting, meeting->end_wall);
  g_autofree char *id = tab_id (layout->part, wall->flange->id, meeting->end_wall);
  BfFlange *tab = bf_flange_new (id);

  tab->is_tab = TRUE;
  g_free (tab->on);
  tab->on = g_strdup (wall->flange->id);
  tab->edge = edge_of (meeting->end_wall);
  tab->turn = wall->flange->turn;
  tab->angle_deg = bf_rad_to_deg (tab_bend_rad (layout, meeting));
  return tab;
}

/* The tab of a corner, or NULL where there is no room for one. At the root it stops short of the
 * bends by what two reliefs take and a strip between them; at the tips it runs flush, or stops
 * short of what they carry. Where the walls lean, square to its bend it would run down into the
 * covering wall's bend, or up past its tip: there its end leans along with them. */
static BfFlange *
make_tab (const BfLayout *layout, const BfMeeting *meeting)
{
  BfSideName name = meeting->end_wall;
  const BfFlap *wall = bf_meeting_flap (layout, meeting, name);
  const BfFlap *covering = bf_meeting_flap (layout, meeting, bf_other_side (name));
  double edge = EDGE_OF_HOLES * hole_mm (layout->part), inset, end_inset, slope, tilt;
  double strip = MAX (2.0 * layout->thickness_mm, LEAST_STRIP_MM);
  g_autoptr (BfFlange) tab = new_tab (layout, meeting);
  Reach reach;
  RootEnd root, tip;

  size_tab (layout, tab, &inset);
  if (!find_reach (layout, meeting, &reach) || reach.outer_end_mm < outer_tip_mm (wall) / 2.0 ||
      turns_under_lip (wall, &reach) || !find_root_end (layout, meeting, inset + strip, &root))
    return NULL;
  end_inset = wall->on_tip != NULL || covering->on_tip != NULL ? inset : 0.0;
  slope = sqrt (1.0 + reach.lean * reach.lean);
  tilt = atan (reach.its_lean);
  root.taper_rad = MAX (root.taper_rad, tilt);
  tip.inset_mm = MAX (reach.end_mm - reach.height_mm, 0.0) * slope + end_inset;
  tip.taper_rad = MAX (0.0, -tilt);
  set_ends (tab, &root, &tip);
  if (reach.height_mm * slope - root.inset_mm - end_inset <
      end_to_hole_mm (bf_rad_to_deg (root.taper_rad), edge) +
          end_to_hole_mm (bf_rad_to_deg (tip.taper_rad), edge))
    return NULL;
  return g_steal_pointer (&tab);
}

static gboolean
add_flanges (BfPart *with, const BfLayout *layout)
{
  guint n = with->flanges->len;

  for (guint i = 0; i < layout->meetings->len; i++)
    {
      const BfMeeting *meeting = bf_layout_meeting (layout, i);
      BfFlange *tab = can_have_tab (layout, meeting) ? make_tab (layout, meeting) : NULL;

      if (tab != NULL)
        g_ptr_array_add (with->flanges, tab);
    }
  return with->flanges->len > n;
}

/* ---- holes -------------------------------------------------------------------------------- */

static void
add_hole (BfPart *with, const BfFlap *flap, BfVec2 at)
{
  BfOpening *opening = bf_opening_new (flap->flange->id, BF_OPENING_ROUND);

  opening->at_mm = bf_vec2 (at.x, at.y + flap->sums.setback_mm);
  opening->diameter_mm = hole_mm (with);
  g_ptr_array_add (with->openings, opening);
}

/* The point of the wall's own coordinates that lies behind a point of the tab's. */
static BfVec2
behind (const BfFlap *wall, const BfFlap *tab, BfVec2 p)
{
  BfVec3 d = bf_vec3_sub (bf_pose_point (&tab->pose, p), wall->pose.origin);

  return bf_vec2 (bf_vec3_dot (d, wall->pose.e), bf_vec3_dot (d, wall->pose.d));
}

static void
add_holes (BfPart *with, const BfFlap *wall, const BfFlap *tab)
{
  double edge = EDGE_OF_HOLES * hole_mm (with);
  double from = tab->flange->start_mm + end_to_hole_mm (tab->flange->start_taper_deg, edge);
  double to =
      tab->edge_length_mm - tab->flange->end_mm - end_to_hole_mm (tab->flange->end_taper_deg, edge);
  guint n = to - from < edge ? 1 : (guint)ceil ((to - from) / PITCH_MAX_MM) + 1;

  if (!tab->placed)
    return;
  for (guint i = 0; i < n; i++)
    {
      double u = n == 1 ? (from + to) / 2.0 : from + (to - from) * i / (n - 1);

      add_hole (with, tab, bf_vec2 (u, edge));
      add_hole (with, wall, behind (wall, tab, bf_vec2 (u, edge)));
    }
}

static gboolean
asks_for_tabs (const BfPart *part)
{
  if (bf_part_resolve_join (part, NULL) == BF_JOIN_TAB)
    return TRUE;
  for (guint i = 0; i < part->corners->len; i++)
    if (((const BfCorner *)g_ptr_array_index (part->corners, i))->join == BF_JOIN_TAB)
      return TRUE;
  return FALSE;
}

BfPart *
bf_tabs_add (BfPart *part)
{
  g_autoptr (BfPart) with = NULL;
  BfLayout *layout;
  gboolean any;

  if (!asks_for_tabs (part))
    return bf_part_ref (part);
  with = bf_part_copy (part);
  layout = bf_layout_new (part);
  bf_layout_unfold (layout);
  any = add_flanges (with, layout);
  bf_layout_free (layout);
  if (!any)
    return bf_part_ref (part);

  layout = bf_layout_new (with);
  bf_layout_unfold (layout);
  for (guint i = 0; i < layout->meetings->len; i++)
    {
      const BfMeeting *meeting = bf_layout_meeting (layout, i);
      const BfFlap *tab = bf_tab_of (layout, meeting);

      if (tab != NULL)
        add_holes (with, bf_meeting_flap (layout, meeting, bf_other_side (meeting->end_wall)), tab);
    }
  bf_layout_free (layout);
  return g_steal_pointer (&with);
}
