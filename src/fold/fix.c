/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/fix.h"

#include <glib/gi18n.h>

#include "core/edit.h"
#include "core/tolerance.h"
#include "core/units.h"

G_DEFINE_QUARK (bf - fix - error - quark, bf_fix_error)

/* What a length shows of itself: a tenth of a millimetre, or the finest mark of a rule. */
#define STEP_MM 0.1
#define STEP_IN (BF_MM_PER_INCH / 64.0)

/* Keeps a whole number of steps from being rounded to the next. */
#define STEP_TOLERANCE 1e-6

static double
step_mm (BfUnits units)
{
  return units == BF_UNITS_IN ? STEP_IN : STEP_MM;
}

double
bf_fix_round_up_mm (double length_mm, BfUnits units)
{
  double step = step_mm (units);

  return ceil (length_mm / step - STEP_TOLERANCE) * step;
}

double
bf_fix_round_down_mm (double length_mm, BfUnits units)
{
  double step = step_mm (units);

  return MAX (floor (length_mm / step + STEP_TOLERANCE), 0.0) * step;
}

/* ---- in words ----------------------------------------------------------------------------- */

static char *
insets_words (const BfFix *fix, BfUnits units)
{
  g_autofree char *start = bf_format_length (fix->value[0], units);
  g_autofree char *end = bf_format_length (fix->value[1], units);

  if (MAX (fix->value[0], fix->value[1]) <= BF_TOLERANCE_SIZE_MM)
    /* Translators: a button; %s is a flange's name */
    return g_strdup_printf (_ ("Run %s along its whole edge"), fix->id);
  /* Translators: a button; a flange's name, and its insets at start and end with their units */
  return g_strdup_printf (_ ("Inset %s by %s and %s"), fix->id, start, end);
}

char *
bf_fix_words (const BfFix *fix, BfUnits units)
{
  g_autofree char *value = NULL;

  g_return_val_if_fail (fix != NULL, NULL);
  value = bf_format_length (fix->value[0], units);
  switch (fix->kind)
    {
    case BF_FIX_FLANGE_LENGTH:
      /* Translators: a button; a flange's name, and a length with its unit */
      return g_strdup_printf (_ ("Make %s %s long"), fix->id, value);
    case BF_FIX_INSETS:
      return insets_words (fix, units);
    case BF_FIX_RADIUS:
      /* Translators: a button; a flange's name, and an inside radius with its unit */
      return g_strdup_printf (_ ("Make the radius of %s %s"), fix->id, value);
    case BF_FIX_RELIEF_SIZE:
      /* Translators: a button; a corner relief's diameter with its unit */
      return g_strdup_printf (_ ("Make the relief %s wide"), value);
    case BF_FIX_RELIEF_ROUND:
      return g_strdup (_ ("Add a round relief"));
    case BF_FIX_JOIN_OPEN:
      return g_strdup (_ ("Leave the corner open"));
    case BF_FIX_FORGET_FINISH:
    case BF_FIX_FORGET_JOIN:
      return g_strdup (_ ("Ask it no more"));
    case BF_FIX_OPENING_AT:
      return g_strdup (_ ("Move the opening"));
    case BF_FIX_OPENING_SIZE:
      /* Translators: a button; an opening's diameter or width with its unit */
      return g_strdup_printf (_ ("Make the opening %s wide"), value);
    case BF_FIX_PLAN_SLOTS:
      /* Translators: a button; a flange's name */
      return g_strdup_printf (_ ("Plan the slots of %s"), fix->id);
    case BF_FIX_SCORE_LEFT:
      /* Translators: a button; a length with its unit, and a flange's name */
      return g_strdup_printf (_ ("Leave %s at the score of %s"), value, fix->id);
    case BF_FIX_LEVER:
      /* Translators: a button; a flange's name, and a length with its unit */
      return g_strdup_printf (_ ("Bend %s with a board of %s"), fix->id, value);
    case BF_FIX_SHARE_METAL:
      return g_strdup (_ ("Give each half of the metal"));
    case BF_FIX_NONE:
    default:
      return NULL;
    }
}

/* ---- applying ----------------------------------------------------------------------------- */

static gboolean
is_of_flange (BfFixKind kind)
{
  return kind == BF_FIX_FLANGE_LENGTH || kind == BF_FIX_INSETS || kind == BF_FIX_RADIUS ||
         kind == BF_FIX_PLAN_SLOTS || kind == BF_FIX_SCORE_LEFT || kind == BF_FIX_LEVER ||
         kind == BF_FIX_SHARE_METAL;
}

static gboolean
is_of_opening (BfFixKind kind)
{
  return kind == BF_FIX_OPENING_AT || kind == BF_FIX_OPENING_SIZE;
}

/* Whether the part has what the fix would change. */
static gboolean
target_is_there (const BfPart *part, const BfFix *fix)
{
  if (fix->kind == BF_FIX_NONE)
    return FALSE;
  if (is_of_opening (fix->kind))
    return fix->at < part->openings->len;
  if (fix->id == NULL)
    return FALSE;
  if (fix->kind == BF_FIX_SHARE_METAL &&
      (fix->at >= bf_part_n_flanges (part) ||
       g_str_equal (bf_part_flange (part, fix->at)->id, fix->id)))
    return FALSE;
  if (is_of_flange (fix->kind) || !g_str_equal (fix->id, "base"))
    return bf_part_find_flange (part, fix->id) != NULL;
  return fix->at < bf_part_n_points (part);
}

static gboolean
is_between (double value, double least)
{
  return isfinite (value) && value >= least && value <= BF_LENGTH_MAX_MM;
}

static gboolean
value_is_sound (const BfFix *fix)
{
  switch (fix->kind)
    {
    case BF_FIX_FLANGE_LENGTH:
    case BF_FIX_RELIEF_SIZE:
    case BF_FIX_OPENING_SIZE:
    case BF_FIX_SCORE_LEFT:
    case BF_FIX_LEVER:
      return is_between (fix->value[0], BF_TOLERANCE_SIZE_MM);
    case BF_FIX_RADIUS:
      return is_between (fix->value[0], 0.0);
    case BF_FIX_INSETS:
    case BF_FIX_OPENING_AT:
      return is_between (fix->value[0], -BF_LENGTH_MAX_MM) &&
             is_between (fix->value[1], -BF_LENGTH_MAX_MM);
    case BF_FIX_RELIEF_ROUND:
    case BF_FIX_JOIN_OPEN:
    case BF_FIX_FORGET_FINISH:
    case BF_FIX_FORGET_JOIN:
    case BF_FIX_PLAN_SLOTS:
    case BF_FIX_SHARE_METAL:
      return TRUE;
    case BF_FIX_NONE:
    default:
      return FALSE;
    }
}

/* A relief keeps its shape when it is given a size. */
static BfPart *
size_relief (const BfPart *part, const BfFix *fix)
{
  const BfCorner *corner = bf_part_find_corner (part, fix->id, fix->at);
  BfReliefShape shape = corner != NULL ? corner->relief : BF_RELIEF_ROUND;

  return bf_edit_corner_relief (part, fix->id, fix->at, shape, fix->value[0]);
}

static BfPart *
apply (const BfPart *part, const BfFix *fix)
{
  switch (fix->kind)
    {
    case BF_FIX_FLANGE_LENGTH:
      return bf_edit_flange_length (part, fix->id, fix->value[0]);
    case BF_FIX_INSETS:
      return bf_edit_flange_insets (part, fix->id, fix->value[0], fix->value[1]);
    case BF_FIX_RADIUS:
      return bf_edit_flange_radius (part, fix->id, fix->value[0]);
    case BF_FIX_RELIEF_SIZE:
      return size_relief (part, fix);
    case BF_FIX_RELIEF_ROUND:
      return bf_edit_corner_relief (part, fix->id, fix->at, BF_RELIEF_ROUND, NAN);
    case BF_FIX_JOIN_OPEN:
      return bf_edit_corner_join (part, fix->id, fix->at, BF_JOIN_OPEN);
    case BF_FIX_FORGET_FINISH:
      return bf_edit_corner_forget_finish (part, fix->id, fix->at);
    case BF_FIX_FORGET_JOIN:
      return bf_edit_corner_forget_join (part, fix->id, fix->at);
    case BF_FIX_OPENING_AT:
      return bf_edit_place_opening (part, fix->at, bf_vec2 (fix->value[0], fix->value[1]));
    case BF_FIX_OPENING_SIZE:
      return bf_edit_opening_size (part, fix->at, fix->value[0]);
    case BF_FIX_PLAN_SLOTS:
      return bf_edit_flange_plan_slots (part, fix->id);
    case BF_FIX_SCORE_LEFT:
      return bf_edit_flange_score_left (part, fix->id, fix->value[0]);
    case BF_FIX_LEVER:
      return bf_edit_flange_lever (part, fix->id, fix->value[0]);
    case BF_FIX_SHARE_METAL:
      return bf_edit_share_metal (part, fix->id, bf_part_flange (part, fix->at)->id);
    case BF_FIX_NONE:
    default:
      g_return_val_if_reached (NULL);
    }
}

BfPart *
bf_fix_apply (const BfPart *part, const BfFix *fix, GError **error)
{
  g_return_val_if_fail (part != NULL && fix != NULL, NULL);

  if (!target_is_there (part, fix))
    {
      g_set_error_literal (error, BF_FIX_ERROR, BF_FIX_ERROR_NOT_THERE,
                           _ ("What this would change is no longer there."));
      return NULL;
    }
  if (!value_is_sound (fix))
    {
      g_set_error_literal (error, BF_FIX_ERROR, BF_FIX_ERROR_VALUE,
                           _ ("This would give a size that no part can have."));
      return NULL;
    }
  return apply (part, fix);
}
