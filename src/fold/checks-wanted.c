/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-wanted.h"

#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/units.h"
#include "fold/checks.h"
#include "fold/fold-shape.h"
#include "fold/outline.h"
#include "fold/overlay.h"
#include "fold/parting-cuts.h"
#include "fold/wanted-twice.h"

/* Looking for a cure folds the part again, while somebody may be dragging: so many times in all. */
#define REFOLDS_MAX 24

static const BfFix no_fix = { .kind = BF_FIX_NONE };

typedef struct
{
  BfFold *fold;
  guint refolds; /* how many may still be made */
} Search;

/* ---- whether a cure holds ----------------------------------------------------------------- */

static gboolean
is_wanted (const GArray *wanted, const BfWanted *pair)
{
  for (guint i = 0; i < wanted->len; i++)
    {
      const BfWanted *other = &g_array_index (wanted, BfWanted, i);

      if (other->flaps[0] == pair->flaps[0] && other->flaps[1] == pair->flaps[1])
        return TRUE;
    }
  return FALSE;
}

/* The part with the fix made, as far as it is needed here. NULL where it can't be. */
static BfFold *
try_fix (Search *search, const BfFix *fix)
{
  g_autoptr (BfPart) part = bf_fix_apply (search->fold->asked, fix, NULL);

  if (part == NULL || search->refolds == 0)
    return NULL;
  search->refolds--;
  return bf_fold_shape (part);
}

/* TRUE where that pair wants nothing of the other's any more. */
static gboolean
is_parted (const Search *search, const BfFold *tried, const BfWanted *pair)
{
  return tried->layout->n_flaps == search->fold->layout->n_flaps &&
         !bf_wanted_twice_by (tried, pair->flaps);
}

/* TRUE where no pair wants the same metal that did not before. */
static gboolean
adds_none (const Search *search, BfFold *tried)
{
  g_autoptr (BfRing) walked = bf_outline_blank (tried->layout);
  const GArray *before = search->fold->layout->wanted, *after = tried->layout->wanted;

  if (bf_overlay_is_simple (walked, NULL))
    return TRUE;
  bf_wanted_twice_find (tried);
  for (guint i = 0; i < after->len; i++)
    if (!is_wanted (before, &g_array_index (after, BfWanted, i)))
      return FALSE;
  return after->len > 0 || !tried->layout->wanted_twice;
}

/* TRUE where an opening does not lie whole in its face. */
static gboolean
runs_off (const BfFold *fold, guint opening)
{
  const BfOpeningResult *result = bf_fold_opening (fold, opening);
  g_autoptr (GPtrArray) hole = g_ptr_array_new (), face = g_ptr_array_new (), off = NULL;

  g_ptr_array_add (hole, result->ring);
  g_ptr_array_add (face, bf_fold_face (fold, result->face)->outline);
  off = bf_overlay_less (hole, face, NULL);
  return off->len > 0;
}

static gboolean
keeps_openings (const Search *search, const BfFold *tried)
{
  for (guint i = 0; i < tried->openings->len; i++)
    if (runs_off (tried, i) && !runs_off (search->fold, i))
      return FALSE;
  return TRUE;
}

/* ---- the cures ---------------------------------------------------------------------------- */

/* Half of the metal for each: where that is cut clean. */
static BfFix
share (Search *search, const BfWanted *pair)
{
  const BfFold *fold = search->fold;
  BfFix fix = { .kind = BF_FIX_SHARE_METAL };
  const char *other;
  g_autoptr (BfFold) tried = NULL;

  if (pair->flaps[0] < 0)
    return no_fix;
  fix.id = fold->layout->flaps[pair->flaps[0]].flange->id;
  other = fold->layout->flaps[pair->flaps[1]].flange->id;
  while (fix.at < bf_part_n_flanges (fold->asked) &&
         !g_str_equal (bf_part_flange (fold->asked, fix.at)->id, other))
    fix.at++;
  if (bf_part_has_parted (fold->asked, fix.id, other))
    return no_fix;
  tried = try_fix (search, &fix);
  return tried != NULL && is_parted (search, tried, pair) && keeps_openings (search, tried)
             ? fix
             : no_fix;
}

/* Flanges that meet at a corner which was asked to be more than open. */
static BfFix
open_corner (Search *search, const BfWanted *pair)
{
  const BfLayout *layout = search->fold->layout;

  for (guint i = 0; i < layout->meetings->len; i++)
    {
      const BfMeeting *meeting = bf_layout_meeting (layout, i);
      BfFix fix = { .kind = BF_FIX_JOIN_OPEN,
                    .id = bf_meeting_on (layout, meeting),
                    .at = meeting->at };
      g_autoptr (BfFold) tried = NULL;

      if (meeting->join == BF_JOIN_OPEN ||
          MIN (meeting->before, meeting->after) != pair->flaps[0] ||
          MAX (meeting->before, meeting->after) != pair->flaps[1])
        continue;
      tried = try_fix (search, &fix);
      return tried != NULL && is_parted (search, tried, pair) && adds_none (search, tried) ? fix
                                                                                           : no_fix;
    }
  return no_fix;
}

static gboolean
carries_any (const BfFlap *flap)
{
  return flap->on_tip != NULL || flap->on_side[BF_SIDE_START] != NULL ||
         flap->on_side[BF_SIDE_END] != NULL;
}

/* One of the two shortened to stand a gap off the other, with a sound flat left. Only one that
 * carries nothing: what it carries would come to stand elsewhere. */
static BfFix
shorten (Search *search, const BfWanted *pair, guint k)
{
  const BfLayout *layout = search->fold->layout;
  const BfFlap *flap = pair->flaps[k] < 0 ? NULL : &layout->flaps[pair->flaps[k]];
  BfFix fix = { .kind = BF_FIX_FLANGE_LENGTH };
  double less = pair->over_mm[k] + bf_part_resolve_gap_mm (layout->part, NULL);
  g_autoptr (BfFold) tried = NULL;

  if (flap == NULL || flap->flange->is_tab || carries_any (flap) ||
      bf_flap_flat_mm (flap) - less < 2.0 * layout->thickness_mm)
    return no_fix;
  fix.id = flap->flange->id;
  fix.value[0] = bf_fix_round_down_mm (flap->flange->length_mm - less, search->fold->part->units);
  tried = try_fix (search, &fix);
  return tried != NULL && is_parted (search, tried, pair) && adds_none (search, tried) ? fix
                                                                                       : no_fix;
}

/* Shares the metal; else opens the corner; else shortens the one that loses less, or the other. */
static BfFix
find_cure (Search *search, const BfWanted *pair)
{
  guint first = pair->over_mm[1] < pair->over_mm[0] ? 1 : 0;
  BfFix fix = share (search, pair);

  if (fix.kind == BF_FIX_NONE)
    fix = open_corner (search, pair);
  if (fix.kind == BF_FIX_NONE)
    fix = shorten (search, pair, first);
  if (fix.kind == BF_FIX_NONE)
    fix = shorten (search, pair, 1 - first);
  return fix;
}

/* ---- the check ---------------------------------------------------------------------------- */

static char *
cured_message (const BfFold *fold, const char *want, const BfFix *fix)
{
  g_autofree char *length = bf_format_length (fix->value[0], fold->part->units);

  switch ((int)fix->kind)
    {
    case BF_FIX_SHARE_METAL:
      /* Translators: a sentence such as "lip and wall want the same metal, 3 mm deep." */
      return g_strdup_printf (_ ("%s Give each half of it."), want);
    case BF_FIX_JOIN_OPEN:
      return g_strdup_printf (_ ("%s Leave the corner between them open."), want);
    case BF_FIX_FLANGE_LENGTH:
      return g_strdup_printf (_ ("%s Shorten %s to %s."), want, fix->id, length);
    default:
      /* Translators: a sentence such as "lip and wall want the same metal, 3 mm deep." */
      return g_strdup_printf (_ ("%s Shorten or inset them there."), want);
    }
}

static const char *
name_of (const BfLayout *layout, int flap)
{
  return flap < 0 ? _ ("the base") : layout->flaps[flap].flange->id;
}

static void
describe (Search *search, const BfWanted *pair)
{
  BfFold *fold = search->fold;
  double depth = fmin (pair->over_mm[0], pair->over_mm[1]);
  BfCheck check = { .code = "blank-overlaps-itself",
                    .severity = BF_SEVERITY_MUST_FIX,
                    .found = depth,
                    .needed = 0.0,
                    .place = pair->at,
                    .fix = find_cure (search, pair) };
  g_autofree char *deep = bf_format_length (bf_fix_round_up_mm (depth, fold->part->units),
                                            fold->part->units); /* never "0 mm" */
  g_autofree char *want = g_strdup_printf (
      /* Translators: the names of two flanges, and a length with its unit */
      _ ("%s and %s want the same metal, %s deep."), name_of (fold->layout, pair->flaps[0]),
      name_of (fold->layout, pair->flaps[1]), deep);

  bf_checks_add (fold, check, fold->layout->flaps[MAX (pair->flaps[0], pair->flaps[1])].flange->id,
                 cured_message (fold, want, &check.fix));
}

/* ---- what is shared ----------------------------------------------------------------------- */

/* How long the flange is where it gives up the most; NAN where it gives up nothing. place: (out) */
static double
left_mm (const BfLayout *layout, int flap, const GPtrArray *cuts, BfVec2 *place)
{
  const BfFlap *bent = &layout->flaps[flap];
  BfVec2 root = bf_flap_to_blank (bent, 0.0, 0.0);
  g_autoptr (GPtrArray) flat = bf_area_of_ring (bf_outline_flat (layout, flap));
  g_autoptr (GPtrArray) given = bf_overlay_common (flat, cuts, NULL);
  double least = NAN;

  for (guint i = 0; i < given->len; i++)
    for (guint v = 0; v < bf_ring_size (g_ptr_array_index (given, i)); v++)
      {
        BfVec2 p = bf_ring_vertex (g_ptr_array_index (given, i), v)->p;
        double w = bf_vec2_dot (bf_vec2_sub (p, root), bent->flat_n);

        if (isnan (least) || w < least)
          {
            least = w;
            *place = p;
          }
      }
  return bent->flange->length_mm - (bent->tip_w_mm - least);
}

static void
tell_shared (BfFold *fold, const BfParting *parting, guint k)
{
  const BfLayout *layout = fold->layout;
  const BfFlange *flange = layout->flaps[parting->flaps[k]].flange;
  BfCheck check = { .code = "metal-shared",
                    .severity = BF_SEVERITY_GOOD_TO_KNOW,
                    .needed = flange->length_mm };
  g_autofree char *left = NULL, *asked = bf_checks_length (fold, flange->length_mm);

  check.found = left_mm (layout, parting->flaps[k], parting->cuts[k], &check.place);
  if (isnan (check.found))
    return;
  left = bf_checks_length (fold, check.found);
  bf_checks_add (fold, check, flange->id,
                 /* Translators: the names of two flanges, and two lengths with their units. */
                 g_strdup_printf (_ ("%s shares metal with %s, and is only %s long there, not %s."),
                                  flange->id, name_of (layout, parting->flaps[1 - k]), left,
                                  asked));
}

void
bf_checks_find_wanted (BfFold *fold)
{
  Search search = { fold, REFOLDS_MAX };
  const GArray *wanted = fold->layout->wanted;
  BfCheck check = { .code = "blank-overlaps-itself",
                    .severity = BF_SEVERITY_MUST_FIX,
                    .found = NAN,
                    .needed = NAN,
                    .place = fold->layout->wanted_twice_at };

  for (guint i = 0; i < wanted->len; i++)
    describe (&search, &g_array_index (wanted, BfWanted, i));
  for (guint i = 0; i < 2 * fold->layout->partings->len; i++)
    {
      const BfParting *parting = &g_array_index (fold->layout->partings, BfParting, i / 2);

      if (parting->made)
        tell_shared (fold, parting, i % 2);
    }
  if (wanted->len == 0 && fold->layout->wanted_twice)
    bf_checks_add (fold, check, "base",
                   g_strdup (_ ("Two pieces of the blank want the same metal. Shorten or inset "
                                "the flanges there.")));
}
