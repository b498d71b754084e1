/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/fix-find.h"

#include <stdlib.h>
#include <string.h>

#include "core/defaults.h"
#include "core/drills.h"
#include "core/materials.h"
#include "core/tolerance.h"
#include "fold/checks-bends.h"
#include "fold/fix-opening.h"
#include "fold/layout.h"
#include "fold/side.h"
#include "fold/tabs.h"

/* Halvings that find where two sides cross: 1e5 mm down to 1e-10. */
#define N_HALVINGS 50

/* A board that one person can handle (common practice). */
#define LONGEST_BOARD_MM 1000.0

/* The fix for a check; BF_FIX_NONE where there is none. */
typedef BfFix (*FixMaker) (const BfFold *fold, const BfCheck *check);

static const BfFix no_fix = { .kind = BF_FIX_NONE };

static const BfFlap *
flap_of (const BfLayout *layout, const char *id)
{
  int i = bf_layout_find_flap (layout, id);

  return i < 0 ? NULL : &layout->flaps[i];
}

/* ---- whether a fix holds ------------------------------------------------------------------ */

/* What is left of the flap's flat between its sides, at w. */
static double
width_at (const BfFlap *flap, double w_mm)
{
  return flap->edge_length_mm - bf_side_at (&flap->sides[BF_SIDE_START], w_mm) -
         bf_side_at (&flap->sides[BF_SIDE_END], w_mm);
}

/* Whether a flap can be made, as far as its own sizes tell. */
static gboolean
is_sound (const BfLayout *layout, const BfFlap *flap)
{
  double zone = bf_flap_zone_u (flap, BF_SIDE_END) - bf_flap_zone_u (flap, BF_SIDE_START);
  double flat = bf_flap_flat_mm (flap);

  return flap->placed && zone >= layout->thickness_mm && flat >= -BF_TOLERANCE_SIZE_MM &&
         width_at (flap, MAX (flat, 0.0)) >= 0.0;
}

static guint
count_sound (const BfLayout *layout)
{
  guint n = 0;

  for (guint i = 0; i < layout->n_flaps; i++)
    n += is_sound (layout, &layout->flaps[i]) ? 1 : 0;
  return n;
}

static double
sound_flat_mm (const BfFold *fold)
{
  return 2.0 * fold->layout->thickness_mm;
}

/* Unfolds the part as it would be: the flange must be sound then, with a flat that is long enough
 * or as long as before, and no other flange worse than before. */
static BfFix
keep_if_it_holds (const BfFold *fold, BfFix fix)
{
  g_autoptr (BfPart) asked = bf_fix_apply (fold->asked, &fix, NULL);
  g_autoptr (BfPart) part = NULL;
  const BfFlap *before = flap_of (fold->layout, fix.id), *after;
  BfLayout *layout;
  gboolean holds;

  if (asked == NULL)
    return no_fix;
  part = bf_tabs_add (asked);
  layout = bf_layout_new (part);
  bf_layout_unfold (layout);
  after = flap_of (layout, fix.id);
  holds = is_sound (layout, after) && count_sound (layout) >= count_sound (fold->layout) &&
          bf_flap_flat_mm (after) >=
              MIN (sound_flat_mm (fold), bf_flap_flat_mm (before)) - BF_TOLERANCE_SIZE_MM;
  bf_layout_free (layout);
  return holds ? fix : no_fix;
}

/* ---- flanges ------------------------------------------------------------------------------ */

static BfFix
fix_short (const BfFold *fold, const BfCheck *check)
{
  const BfFlap *flap = flap_of (fold->layout, check->where);
  double more = sound_flat_mm (fold) - bf_flap_flat_mm (flap);
  BfFix fix = { .kind = BF_FIX_FLANGE_LENGTH, .id = flap->flange->id };

  fix.value[0] = bf_fix_round_up_mm (flap->flange->length_mm + more, fold->part->units);
  return keep_if_it_holds (fold, fix);
}

static gboolean
shares_edge (const BfPart *part, const BfFlange *flange)
{
  guint n = 0;

  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    {
      const BfFlange *other = bf_part_flange (part, i);
      n += g_str_equal (other->on, flange->on) && other->edge == flange->edge &&
                   other->edge_index == flange->edge_index
               ? 1
               : 0;
    }
  return n > 1;
}

/* Insets that leave nothing were not meant: without them the corners alone decide. */
static BfFix
fix_off_edge (const BfFold *fold, const BfCheck *check)
{
  const BfFlange *flange = bf_part_find_flange (fold->part, check->where);
  BfFix fix = { .kind = BF_FIX_INSETS, .id = flange->id };

  if (MAX (flange->start_mm, flange->end_mm) <= 0.0 || shares_edge (fold->part, flange))
    return no_fix;
  return keep_if_it_holds (fold, fix);
}

/* How far out the sides are still as far apart as the metal is thick. */
static double
reach_mm (const BfLayout *layout, const BfFlap *flap)
{
  double near = 0.0, far = bf_flap_flat_mm (flap);

  for (int i = 0; i < N_HALVINGS; i++)
    {
      double middle = (near + far) / 2.0;
      if (width_at (flap, middle) >= layout->thickness_mm)
        near = middle;
      else
        far = middle;
    }
  return near;
}

static BfFix
fix_narrow (const BfFold *fold, const BfCheck *check)
{
  const BfFlap *flap = flap_of (fold->layout, check->where);
  double less = bf_flap_flat_mm (flap) - reach_mm (fold->layout, flap);
  double length = flap->flange->length_mm - less;
  BfFix fix = { .kind = BF_FIX_FLANGE_LENGTH, .id = flap->flange->id };

  fix.value[0] = bf_fix_round_down_mm (length, fold->part->units);
  return keep_if_it_holds (fold, fix);
}

static BfFix
fix_tight (const BfFold *fold, const BfCheck *check)
{
  BfFix fix = { .kind = BF_FIX_RADIUS,
                .id = bf_part_find_flange (fold->part, check->where)->id,
                .value = { bf_fix_round_up_mm (check->needed, fold->part->units) } };

  return keep_if_it_holds (fold, fix);
}

/* ---- reliefs ------------------------------------------------------------------------------ */

/* The corner that "base:2" or "front:1" names. */
static BfFix
corner_fix (const BfFold *fold, BfFixKind kind, const BfCheck *check)
{
  const char *colon = strrchr (check->where, ':');
  g_autofree char *on = NULL;
  const BfFlange *flange;

  if (colon == NULL)
    return no_fix;
  on = g_strndup (check->where, (gsize)(colon - check->where));
  flange = bf_part_find_flange (fold->asked, on);
  if (flange == NULL && strcmp (on, "base") != 0)
    return no_fix;
  return (BfFix){ .kind = kind,
                  .id = flange == NULL ? "base" : flange->id,
                  .at = (guint)strtoul (colon + 1, NULL, 10) };
}

static BfFix
fix_small_relief (const BfFold *fold, const BfCheck *check)
{
  BfFix fix = corner_fix (fold, BF_FIX_RELIEF_SIZE, check);
  const BfCorner *corner;
  gboolean round;
  double drill = NAN;

  if (fix.kind == BF_FIX_NONE)
    return fix;
  corner = bf_part_find_corner (fold->asked, fix.id, fix.at);
  round = corner == NULL || corner->relief != BF_RELIEF_SQUARE;
  if (round && bf_part_drills_reliefs (fold->part))
    drill = bf_drill_next_up (fold->part, check->needed, NULL);
  fix.value[0] = isnan (drill) ? bf_fix_round_up_mm (check->needed, fold->part->units) : drill;
  return fix;
}

static BfFix
fix_no_relief (const BfFold *fold, const BfCheck *check)
{
  return corner_fix (fold, BF_FIX_RELIEF_ROUND, check);
}

/* ---- bends -------------------------------------------------------------------------------- */

/* What a person asked for can be changed; what was added to it, a tab, cannot. */
static BfFix
bend_fix (const BfFold *fold, BfFixKind kind, const BfCheck *check, double value)
{
  const BfFlange *flange = bf_part_find_flange (fold->asked, check->where);

  if (flange == NULL || isnan (value))
    return no_fix;
  return (BfFix){ .kind = kind,
                  .id = bf_part_find_flange (fold->part, check->where)->id,
                  .value = { value } };
}

/* Slots as the person gave them, that would not do. With snips no plan can. */
static BfFix
fix_slots (const BfFold *fold, const BfCheck *check)
{
  const BfBend *bend = &flap_of (fold->layout, check->where)->bend;

  if (isnan (check->found) || (isnan (bend->slot_mm) && isnan (bend->bridge_mm)))
    return no_fix;
  return bend_fix (fold, BF_FIX_PLAN_SLOTS, check, 0.0);
}

/* The board that the message speaks of, where one can be held. */
static BfFix
fix_push (const BfFold *fold, const BfCheck *check)
{
  guint i = (guint)bf_layout_find_flap (fold->layout, check->where);
  double lever = bf_bend_board_mm (bf_fold_bend (fold, i));

  return bend_fix (fold, BF_FIX_LEVER, check, lever > LONGEST_BOARD_MM ? NAN : lever);
}

static BfFix
fix_shallow (const BfFold *fold, const BfCheck *check)
{
  return bend_fix (fold, BF_FIX_SCORE_LEFT, check, check->needed);
}

/* ---- every check -------------------------------------------------------------------------- */

static const struct
{
  const char *code;
  FixMaker make;
} makers[] = {
  { "flange-off-edge", fix_off_edge },      { "flange-too-short", fix_short },
  { "flange-too-narrow", fix_narrow },      { "radius-too-tight", fix_tight },
  { "relief-too-small", fix_small_relief }, { "relief-missing", fix_no_relief },
  { "bridge-too-small", fix_slots },        { "slot-not-cuttable", fix_slots },
  { "force-too-high", fix_push },           { "score-too-shallow", fix_shallow },
};

static void
find_fix (const BfFold *fold, BfCheck *check)
{
  for (guint i = 0; i < G_N_ELEMENTS (makers); i++)
    if (strcmp (makers[i].code, check->code) == 0)
      check->fix = makers[i].make (fold, check);
}

void
bf_fixes_find (BfFold *fold)
{
  for (guint i = 0; i < fold->checks->len; i++)
    {
      BfCheck *check = &g_array_index (fold->checks, BfCheck, i);
      if (check->fix.kind == BF_FIX_NONE)
        find_fix (fold, check);
    }
}

BfFix
bf_fix_find (const BfFold *fold, const BfCheck *check)
{
  g_return_val_if_fail (fold != NULL && check != NULL, no_fix);

  if (check->fix.kind == BF_FIX_NONE && g_str_has_prefix (check->code, "opening-"))
    return bf_fix_opening (fold, check);
  return check->fix;
}
