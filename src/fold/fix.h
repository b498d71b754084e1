/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* A fix: the one change that would make a check go away. Whoever finds the check works the value
 * out; applying it is an edit like any other. */

typedef enum
{
  BF_FIX_NONE,          /* nothing that one number cures */
  BF_FIX_FLANGE_LENGTH, /* id: the flange; value[0] its length */
  BF_FIX_INSETS,        /* id: the flange; value: its insets at start and end */
  BF_FIX_RADIUS,        /* id: the flange; value[0] its own inside radius */
  BF_FIX_RELIEF_SIZE,   /* id, at: the corner; value[0] the relief's diameter or side */
  BF_FIX_RELIEF_ROUND,  /* id, at: the corner; a round relief, its size worked out */
  BF_FIX_JOIN_OPEN,     /* id, at: the corner; left open */
  BF_FIX_FORGET_FINISH, /* id, at: the corner; how it is finished is asked no more */
  BF_FIX_FORGET_JOIN,   /* id, at: the corner; nor how it closes, with what gap and relief */
  BF_FIX_OPENING_AT,    /* at: the opening's index; value: its new place */
  BF_FIX_OPENING_SIZE,  /* at: the opening's index; value[0] its diameter (or width) */
  BF_FIX_PLAN_SLOTS,    /* id: the flange; its slots planned, not as given */
  BF_FIX_SCORE_LEFT,    /* id: the flange; value[0] what its score leaves */
  BF_FIX_LEVER,         /* id: the flange; value[0] how far from its bend it is pushed */
  BF_FIX_SHARE_METAL,   /* id: a flange; at: the index of the other, which wants its metal too */
} BfFixKind;

typedef struct
{
  BfFixKind kind;
  const char *id; /* "base" or a flange's id; static or a string of the fold's part */
  guint at;
  double value[2]; /* mm */
} BfFix;

typedef enum
{
  BF_FIX_ERROR_NOT_THERE, /* the part has no such flange, corner or opening */
  BF_FIX_ERROR_VALUE,     /* the value is no size that a part can have */
} BfFixError;

#define BF_FIX_ERROR (bf_fix_error_quark ())
GQuark bf_fix_error_quark (void);

/* The least length that is at least length_mm and reads as it is in those units: up to the next
 * 0.1 mm or 1/64 in; and the greatest that is at most length_mm, not below 0. A fix holds such
 * values, so that what its words say is what it does. */
double bf_fix_round_up_mm (double length_mm, BfUnits units);
double bf_fix_round_down_mm (double length_mm, BfUnits units);

/* What the fix does, as words for a button and for an undo step: "Make front 10.2 mm long".
 * Returns: (transfer full), or NULL for BF_FIX_NONE. */
char *bf_fix_words (const BfFix *fix, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* The part with the fix made. part: what was asked of the fold that the fix came with.
 * Returns: (transfer full), or NULL with an error of BF_FIX_ERROR. */
BfPart *
bf_fix_apply (const BfPart *part, const BfFix *fix, GError **error) G_GNUC_WARN_UNUSED_RESULT;
