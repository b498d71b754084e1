/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-joins.h"

#include <glib/gi18n.h>

#include "fold/checks.h"
#include "fold/corner-planes.h"
#include "fold/corner-sides.h"
#include "fold/corner.h"
#include "fold/folded-corner.h"

/* Inside corners, and walls of which one is turned up and one down, have nothing to join. */
static gboolean
closes (const BfLayout *layout, const BfMeeting *meeting)
{
  return bf_corner_is_convex (meeting) && bf_meeting_turns_alike (layout, meeting);
}

static void
add (BfFold *fold, const BfMeeting *meeting, BfCheck check, char *message)
{
  g_autofree char *where = bf_meeting_where (fold->layout, meeting);

  check.severity = BF_SEVERITY_LOOK_AT;
  check.place = bf_meeting_point (fold->layout, meeting, meeting->vertex);
  bf_checks_add (fold, check, where, message);
}

/* ---- folded corners ------------------------------------------------------------------------ */

/* What a folded corner takes, and this one lacks. */
static char *
fold_message (const BfFold *fold, const BfFoldedVerdict *verdict)
{
  g_autofree char *found = bf_checks_length (fold, verdict->found_mm);
  g_autofree char *needed = bf_checks_length (fold, verdict->needed_mm);

  switch (verdict->trouble)
    {
    case BF_FOLDED_NOT_SQUARE:
      return g_strdup (_ ("This corner can't be folded and is left open: that takes a square "
                          "corner of the base, and two walls bent square."));
    case BF_FOLDED_NOT_WHOLE:
      return g_strdup (_ ("This corner can't be folded and is left open: that takes two walls "
                          "that run to it whole, with no inset or taper there, and nothing on "
                          "their tips and sides."));
    case BF_FOLDED_UNLIKE:
      return g_strdup_printf (
          /* Translators: two lengths with their units */
          _ ("This corner can't be folded and is left open: one wall is %s high and the other %s, "
             "and that takes two of one height."),
          found, needed);
    case BF_FOLDED_BRITTLE:
      return g_strdup (_ ("This corner can't be folded and is left open: that takes metal that "
                          "can be folded flat on itself without cracking, and no score."));
    case BF_FOLDED_LOW:
      return g_strdup_printf (
          /* Translators: two lengths with their units */
          _ ("This corner can't be folded and is left open: the folded metal needs walls %s high, "
             "and these are %s."),
          needed, found);
    case BF_FOLDED_SHORT:
      return g_strdup_printf (
          /* Translators: two lengths with their units */
          _ ("This corner can't be folded and is left open: the folded metal needs a wall %s long, "
             "and this one is %s."),
          needed, found);
    case BF_FOLDED_ROUND:
      return g_strdup (_ ("This corner can't be folded and is left open: its bends are so round "
                          "that the folds would run into each other."));
    case BF_FOLDED_FITS:
    default:
      g_return_val_if_reached (NULL);
    }
}

static void
check_folded (BfFold *fold, const BfMeeting *meeting)
{
  BfFoldedPlan plan;
  BfFoldedVerdict verdict = bf_folded_corner_plan (fold->layout, meeting, &plan);
  BfCheck check = { .code = "fold-not-made",
                    .found = verdict.found_mm,
                    .needed = verdict.needed_mm };

  if (!meeting->folded)
    add (fold, meeting, check, fold_message (fold, &verdict));
  else if (meeting->asked != NULL && (meeting->asked->relief == BF_RELIEF_ROUND ||
                                      meeting->asked->relief == BF_RELIEF_SQUARE))
    add (fold, meeting, (BfCheck){ .code = "corner-not-heeded", .found = NAN, .needed = NAN },
         g_strdup (_ ("This corner is folded and nothing of it is cut: the relief asked there is "
                      "kept in the file, and not heeded.")));
}

/* ---- covers -------------------------------------------------------------------------------- */

/* Where walls meet at more than this, one that covers the other's end leaves it standing open
 * inside (common practice: from there on an open corner welds better). */
#define COVER_MOST_RAD (105.0 * G_PI / 180.0)

#define HEM_RAD (G_PI - 1e-6)

/* A hem lies flat: no wall covers its end, nor it a wall's. */
static gboolean
is_hem (const BfFold *fold, const BfMeeting *meeting, BfSideName name)
{
  return bf_meeting_flap (fold->layout, meeting, name)->angle_rad > HEM_RAD;
}

/* The covered wall ends square to its face, a gap short of the other at its outer edge; its inner
 * edge stands t · |cos φ| further off. */
static void
check_cover (BfFold *fold, const BfMeeting *meeting)
{
  BfInsidePlane before, after;
  BfCheck check = { .code = "cover-left-open", .needed = meeting->gap_mm };
  g_autofree char *opening = NULL, *gap = NULL;
  double phi;

  bf_inside_plane (fold->layout, meeting, BF_SIDE_END, &before);
  bf_inside_plane (fold->layout, meeting, BF_SIDE_START, &after);
  phi = bf_inside_planes_angle (&before, &after);
  if (phi <= COVER_MOST_RAD + 1e-9 || is_hem (fold, meeting, BF_SIDE_END) ||
      is_hem (fold, meeting, BF_SIDE_START))
    return;
  check.found = meeting->gap_mm - fold->layout->thickness_mm * cos (phi);
  check.fix = (BfFix){ .kind = BF_FIX_JOIN_OPEN,
                       .id = bf_meeting_on (fold->layout, meeting),
                       .at = meeting->at };
  opening = bf_checks_length (fold, check.found);
  gap = bf_checks_length (fold, check.needed);
  add (fold, meeting, check,
       /* Translators: an angle in whole degrees, and two lengths with their units */
       g_strdup_printf (_ ("The walls meet at %.0f° here: where one covers the other's end an "
                           "opening of %s is left inside, and %s is asked. Leave this corner "
                           "open."),
                        bf_rad_to_deg (phi), opening, gap));
}

/* ---- all joins ----------------------------------------------------------------------------- */

static void
check_join (BfFold *fold, const BfMeeting *meeting)
{
  if (!closes (fold->layout, meeting))
    return;
  if (meeting->join == BF_JOIN_TAB && !meeting->tabbed)
    add (fold, meeting, (BfCheck){ .code = "tab-not-made", .found = NAN, .needed = NAN },
         g_strdup (_ ("There is no room for a joining tab at this corner: it is left "
                      "open. A tab needs walls that run to the corner whole, high enough "
                      "for a hole and what must be left round it.")));
  if (meeting->join == BF_JOIN_FOLDED)
    check_folded (fold, meeting);
  if (meeting->join == BF_JOIN_COVERS_BEFORE || meeting->join == BF_JOIN_COVERS_AFTER)
    check_cover (fold, meeting);
}

void
bf_checks_find_joins (BfFold *fold)
{
  for (guint i = 0; i < fold->layout->meetings->len; i++)
    check_join (fold, bf_layout_meeting (fold->layout, i));
}
