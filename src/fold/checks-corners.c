/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-corners.h"

#include <glib/gi18n.h>

#include "core/tolerance.h"
#include "fold/checks.h"
#include "fold/free-corners.h"

/* ---- finishes ----------------------------------------------------------------------------- */

static void
add_too_large (BfFold *fold, const BfFreeCorner *corner, const char *where)
{
  g_autofree char *asked = bf_checks_length (fold, corner->asked_mm);
  g_autofree char *fits = bf_checks_length (fold, corner->drawn_mm);
  BfCheck check = { .code = "corner-too-large",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .found = corner->asked_mm,
                    .needed = corner->drawn_mm,
                    .place = corner->vertex };
  char *message =
      corner->finish == BF_FINISH_ROUND
          /* Translators: two lengths with their units */
          ? g_strdup_printf (_ ("This corner is to be rounded by %s, and its edges have room for "
                                "%s: that is drawn."),
                             asked, fits)
          /* Translators: two lengths with their units */
          : g_strdup_printf (_ ("This corner is to be cut off by %s, and its edges have room for "
                                "%s: that is drawn."),
                             asked, fits);

  bf_checks_add (fold, check, where, message);
}

static void
add_not_heeded (BfFold *fold, BfFix fix, BfVec2 place, const char *message)
{
  g_autofree char *where = g_strdup_printf ("%s:%u", fix.id, fix.at);
  BfCheck check = { .code = "corner-not-heeded",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .found = NAN,
                    .needed = NAN,
                    .place = place,
                    .fix = fix };

  bf_checks_add (fold, check, where, g_strdup (message));
}

static void
check_finish (BfFold *fold, const BfFreeCorner *corner)
{
  const char *on = corner->flap < 0 ? "base" : fold->layout->flaps[corner->flap].flange->id;
  g_autofree char *where = g_strdup_printf ("%s:%u", on, corner->at);

  if (corner->bent)
    add_not_heeded (fold, (BfFix){ .kind = BF_FIX_FORGET_FINISH, .id = on, .at = corner->at },
                    corner->vertex,
                    _ ("A flange bends at this corner: there is nothing to round or cut off, and "
                       "it stays as the bend makes it."));
  else if (corner->drawn_mm < corner->asked_mm - BF_TOLERANCE_SIZE_MM)
    add_too_large (fold, corner, where);
}

/* ---- joins -------------------------------------------------------------------------------- */

/* Where what is asked of a corner is to be seen: a flange's corner lies at an end of its tip. */
static BfVec2
corner_place (const BfFold *fold, const BfCorner *corner)
{
  int i = bf_layout_find_flap (fold->layout, corner->on);
  const BfFlap *flap;
  double u;

  if (i < 0)
    return bf_part_point (fold->part, corner->at);
  flap = &fold->layout->flaps[i];
  u = bf_flap_zone_u (flap, corner->at == 0 ? BF_SIDE_START : BF_SIDE_END);
  return flap->placed ? bf_flap_to_blank (flap, u, flap->tip_w_mm) : bf_part_point (fold->part, 0);
}

static gboolean
is_met (const BfFold *fold, const BfCorner *corner)
{
  for (guint i = 0; i < fold->layout->meetings->len; i++)
    if (bf_layout_meeting (fold->layout, i)->asked == corner)
      return TRUE;
  return FALSE;
}

static void
check_join (BfFold *fold, const BfCorner *corner)
{
  BfFix forget = { .kind = BF_FIX_FORGET_JOIN, .id = corner->on, .at = corner->at };
  gboolean asks =
      corner->join != BF_JOIN_UNSET || corner->relief != BF_RELIEF_UNSET || !isnan (corner->gap_mm);

  if (asks && !is_met (fold, corner))
    add_not_heeded (fold, forget, corner_place (fold, corner),
                    _ ("No two flanges meet at this corner: the join, gap or relief asked there is "
                       "kept in the file, and not heeded."));
}

void
bf_checks_find_corners (BfFold *fold)
{
  for (guint i = 0; i < fold->layout->free_corners->len; i++)
    check_finish (fold, &g_array_index (fold->layout->free_corners, BfFreeCorner, i));
  for (guint i = 0; i < fold->part->corners->len; i++)
    check_join (fold, g_ptr_array_index (fold->part->corners, i));
}
