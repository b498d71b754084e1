/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-reliefs.h"

#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/drills.h"
#include "core/tolerance.h"
#include "fold/checks.h"

static void
check_relief_size (BfFold *fold, const BfRelief *relief, double slack_mm)
{
  /* A square is sawn to its lines; only a drill wanders. */
  double needed = relief->need_mm + (relief->shape == BF_RELIEF_SQUARE ? 0.0 : 2.0 * slack_mm);
  g_autofree char *found = bf_checks_length (fold, relief->diameter_mm);
  g_autofree char *wanted = bf_checks_length (fold, needed);
  BfCheck check = { .code = "relief-too-small",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .found = relief->diameter_mm,
                    .needed = needed,
                    .place = relief->at };

  if (relief->diameter_mm >= needed - BF_TOLERANCE_SIZE_MM)
    return;
  bf_checks_add (fold, check, relief->where,
                 /* Translators: two lengths with their units */
                 g_strdup_printf (_ ("The corner relief is %s wide; %s is needed to clear both "
                                     "bends. Make it larger."),
                                  found, wanted));
}

/* A size asked for that no drill owned has: it is drawn, but the drill in hand will not make it. */
static void
check_drill (BfFold *fold, const BfRelief *relief)
{
  double next_mm = bf_drill_next_up (fold->part, relief->diameter_mm, NULL);
  g_autofree char *found = bf_checks_length (fold, relief->diameter_mm);
  g_autofree char *next = bf_checks_length (fold, next_mm);
  BfCheck check = { .code = "no-such-drill",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .found = relief->diameter_mm,
                    .needed = next_mm,
                    .place = relief->at };
  char *message;

  if (relief->drill != NULL || relief->shape != BF_RELIEF_ROUND ||
      !bf_part_drills_reliefs (fold->part))
    return;
  message = isnan (next_mm)
                /* Translators: a length with its unit */
                ? g_strdup_printf (_ ("No drill of yours is as wide as this relief of %s: step it "
                                      "up with a hole cutter, or file it."),
                                   found)
                /* Translators: two lengths with their units */
                : g_strdup_printf (_ ("No drill of yours is %s; the next up is %s. Ask for that, "
                                      "or file the relief out."),
                                   found, next);
  bf_checks_add (fold, check, relief->where, message);
}

void
bf_checks_find_reliefs (BfFold *fold)
{
  double slack = bf_part_slack_mm (fold->part);

  for (guint i = 0; i < fold->reliefs->len; i++)
    if (bf_fold_relief (fold, i)->kind == BF_RELIEF_KIND_CORNER)
      {
        check_relief_size (fold, bf_fold_relief (fold, i), slack);
        check_drill (fold, bf_fold_relief (fold, i));
      }
  for (guint i = 0; i < fold->layout->meetings->len; i++)
    {
      const BfMeeting *meeting = bf_layout_meeting (fold->layout, i);
      BfCheck check = { .code = "relief-missing",
                        .severity = BF_SEVERITY_LOOK_AT,
                        .found = NAN,
                        .needed = NAN,
                        .place = bf_meeting_point (fold->layout, meeting, meeting->vertex) };
      g_autofree char *where = bf_meeting_where (fold->layout, meeting);

      if (meeting->folded || meeting->asked == NULL || meeting->asked->relief != BF_RELIEF_NONE)
        continue;
      bf_checks_add (fold, check, where,
                     g_strdup (_ ("This corner has no relief: the metal bulges or tears where the "
                                  "two bends meet.")));
    }
}
