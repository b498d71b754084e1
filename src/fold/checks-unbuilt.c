/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-unbuilt.h"

#include <glib/gi18n.h>

#include "fold/checks.h"
#include "fold/corner-sides.h"
#include "fold/corner.h"

static void
add (BfFold *fold, BfSeverity severity, const char *where, BfVec2 place, const char *message)
{
  BfCheck check = {
    .code = "not-folded-yet", .severity = severity, .found = NAN, .needed = NAN, .place = place
  };

  bf_checks_add (fold, check, where, g_strdup (message));
}

/* Inside corners, and walls of which one is turned up and one down, have nothing to join. */
static gboolean
closes (const BfLayout *layout, const BfMeeting *meeting)
{
  return bf_corner_is_convex (meeting) && bf_meeting_turns_alike (layout, meeting);
}

static void
check_join (BfFold *fold, const BfMeeting *meeting)
{
  g_autofree char *where = bf_meeting_where (fold->layout, meeting);
  BfVec2 place = bf_meeting_point (fold->layout, meeting, meeting->vertex);

  if (meeting->join == BF_JOIN_TAB && !meeting->tabbed && closes (fold->layout, meeting))
    bf_checks_add (fold,
                   (BfCheck){ .code = "tab-not-made",
                              .severity = BF_SEVERITY_LOOK_AT,
                              .found = NAN,
                              .needed = NAN,
                              .place = place },
                   where,
                   g_strdup (_ ("There is no room for a joining tab at this corner: it is left "
                                "open. A tab needs walls that run to the corner whole, high enough "
                                "for a hole and what must be left round it.")));
  if (meeting->join == BF_JOIN_FOLDED)
    add (fold, BF_SEVERITY_LOOK_AT, where, place,
         _ ("This version does not draw folded corners: the corner is left open."));
}

void
bf_checks_find_unbuilt (BfFold *fold)
{
  for (guint i = 0; i < fold->layout->meetings->len; i++)
    check_join (fold, bf_layout_meeting (fold->layout, i));
}
