/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/corner-here.h"

#include "core/defaults.h"
#include "fold/corner.h"
#include "fold/corner-sides.h"
#include "fold/free-corners.h"
#include "fold/reliefs.h"

#define JOIN(join) (1U << (join))
#define JOINS_OF_LIPS                                                                              \
  (JOIN (BF_JOIN_UNSET) | JOIN (BF_JOIN_OPEN) | JOIN (BF_JOIN_COVERS_BEFORE) |                     \
   JOIN (BF_JOIN_COVERS_AFTER) | JOIN (BF_JOIN_UNTRIMMED))

static const BfMeeting *
find_meeting (const BfLayout *layout, int face, guint at)
{
  for (guint i = 0; i < layout->meetings->len; i++)
    {
      const BfMeeting *meeting = bf_layout_meeting (layout, i);
      if (meeting->face == face && meeting->at == at)
        return meeting;
    }
  return NULL;
}

/* A tab and a folded corner are made between walls of the base alone. */
static guint
joins_of (const BfLayout *layout, const BfMeeting *meeting)
{
  if (!bf_corner_is_convex (meeting) || !bf_meeting_turns_alike (layout, meeting))
    return 0;
  return meeting->face < 0 ? JOINS_OF_LIPS | JOIN (BF_JOIN_TAB) | JOIN (BF_JOIN_FOLDED)
                           : JOINS_OF_LIPS;
}

static const BfRelief *
find_relief (const BfFold *fold, const BfMeeting *meeting)
{
  g_autofree char *where = bf_meeting_where (fold->layout, meeting);

  for (guint i = 0; i < fold->reliefs->len; i++)
    {
      const BfRelief *relief = bf_fold_relief (fold, i);
      if (relief->kind == BF_RELIEF_KIND_CORNER && g_str_equal (relief->where, where))
        return relief;
    }
  return NULL;
}

static void
tell_meeting (const BfFold *fold, const BfMeeting *meeting, BfCornerHere *here)
{
  const BfRelief *relief = find_relief (fold, meeting);

  here->before = bf_meeting_flap (fold->layout, meeting, BF_SIDE_END)->flange->id;
  here->after = bf_meeting_flap (fold->layout, meeting, BF_SIDE_START)->flange->id;
  here->joins = joins_of (fold->layout, meeting);
  here->has_relief = !meeting->folded;
  if (here->has_relief) /* a tab lies against the wall that it is joined to */
    here->usual_gap_mm = meeting->tabbed ? 0.0 : bf_default_gap_mm (fold->part->cutting.by);
  if (relief == NULL)
    return;
  here->shape = relief->shape;
  here->need_mm = relief->need_mm;
  here->wander_mm = relief->shape == BF_RELIEF_SQUARE ? 0.0 : 2.0 * bf_part_slack_mm (fold->part);
  here->usual_size_mm = bf_relief_usual_mm (fold->part, relief->shape, relief->need_mm);
}

gboolean
bf_corner_here (const BfFold *fold, const char *on, guint at, BfCornerHere *here)
{
  g_return_val_if_fail (fold != NULL && on != NULL && here != NULL, FALSE);

  int face = bf_layout_find_flap (fold->layout, on);
  const BfMeeting *meeting;

  *here = (BfCornerHere){
    .shape = BF_RELIEF_NONE, .usual_gap_mm = NAN, .need_mm = NAN, .usual_size_mm = NAN
  };
  if (face < 0 && !g_str_equal (on, "base"))
    return FALSE;
  if (face >= 0 && (!fold->layout->flaps[face].placed || fold->layout->flaps[face].flange->is_tab))
    return FALSE;
  meeting = find_meeting (fold->layout, face, at);
  here->is_free = bf_free_corner_has_room (fold->layout, face, at, &here->place);
  if (meeting != NULL)
    tell_meeting (fold, meeting, here);
  return meeting != NULL || here->is_free;
}
