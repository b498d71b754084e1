/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"
#include "fold/side.h"

/* What the rules of a corner have in common. Private to the files named corner-…: a meeting's two
 * flanges are told apart by the side that they meet with (end: the flange before the corner). */

static inline BfFlap *
bf_meeting_flap (const BfLayout *layout, const BfMeeting *meeting, BfSideName name)
{
  return &layout->flaps[name == BF_SIDE_END ? meeting->before : meeting->after];
}

static inline BfSideName
bf_other_side (BfSideName name)
{
  return name == BF_SIDE_END ? BF_SIDE_START : BF_SIDE_END;
}

/* From the corner inward along the side's edge. */
static inline BfVec2
bf_meeting_in (const BfMeeting *meeting, BfSideName name)
{
  return name == BF_SIDE_END ? meeting->before_in : meeting->after_in;
}

/* Both up or both down. */
static inline gboolean
bf_meeting_turns_alike (const BfLayout *layout, const BfMeeting *meeting)
{
  return layout->flaps[meeting->before].flange->turn == layout->flaps[meeting->after].flange->turn;
}

/* TRUE where one of the two covers the other's end, and which. */
static inline gboolean
bf_meeting_covers (const BfMeeting *meeting)
{
  return meeting->tabbed || meeting->join == BF_JOIN_COVERS_BEFORE ||
         meeting->join == BF_JOIN_COVERS_AFTER;
}

static inline BfSideName
bf_meeting_covering_side (const BfMeeting *meeting)
{
  if (meeting->tabbed)
    return bf_other_side (meeting->end_wall);
  return meeting->join == BF_JOIN_COVERS_AFTER ? BF_SIDE_START : BF_SIDE_END;
}

/* q of the outer vertex: where a side ends that nothing trims. */
static inline double
bf_meeting_outer_q (const BfMeeting *meeting, BfSideName name)
{
  return bf_vec2_dot (bf_vec2_sub (meeting->outer_vertex, meeting->vertex),
                      bf_meeting_in (meeting, name));
}

/* A plane of space, and how far off it something has to stay. */
typedef struct
{
  BfVec3 normal, through;
  double off_mm;
} BfCornerPlane;

/* The plane as it lies in space for the side's wall, given in the meeting's face as if that lay
 * flat and the wall were turned up; and c of its normal · x = c. */
BfCornerPlane bf_corner_turn_plane (const BfLayout *layout,
                                    const BfMeeting *meeting,
                                    BfSideName name,
                                    BfCornerPlane plane);
double bf_corner_plane_c (const BfCornerPlane *plane);

/* Keeps a flap of that side beyond the upright plane along the corner's bisector, half the gap off
 * it. */
void bf_corner_keep_from_upright_plane (
    BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name, BfVec2 through);

/* A line of the meeting's face through a point of it, along the corner's bisector, with the side of
 * it that is kept to the side's flange; as it lies in the blank. */
BfFlatLine bf_corner_line (
    const BfLayout *layout, const BfMeeting *meeting, BfSideName name, BfVec2 through, double c_mm);

/* The unit normal of the corner's bisector that points to the flange of that side. */
BfVec2 bf_corner_towards (const BfMeeting *meeting, BfSideName name);

/* The three ways in which a flange of a meeting is trimmed: where nothing is to close along a line
 * in space (inside corners, and opposite turns); where the two close; and the lips on their tips,
 * for which see corner.h. */
void bf_corner_trim_at_bisector (BfLayout *layout, const BfMeeting *meeting, BfSideName name);
void bf_corner_close (BfLayout *layout, const BfMeeting *meeting, BfSideName name);
