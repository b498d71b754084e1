/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* Things to start from: a few sizes that make a whole part. */

typedef enum
{
  BF_THING_TRAY,
  BF_THING_BRACKET,
  BF_THING_CHANNEL,
  BF_THING_SHELF,
  BF_THING_BOX,
  BF_N_THINGS,
} BfThing;

/* The sizes that every thing has; what each means shows on the thing's picture. */
typedef enum
{
  BF_THING_LENGTH,
  BF_THING_WIDTH,
  BF_THING_HEIGHT,
  BF_N_THING_SIZES,
} BfThingSize;

/* What a size counts to. */
typedef enum
{
  BF_SIZE_OUTSIDE,
  BF_SIZE_INSIDE,
  BF_SIZE_MUST_HOLD, /* what has to go in: the inside is BF_HOLD_PLAY_MM more */
} BfSizeKind;

/* So much wider than what it has to hold, that it goes in by hand (common practice). */
#define BF_HOLD_PLAY_MM 1.0

typedef struct
{
  double size_mm[BF_N_THING_SIZES]; /* as typed, by kind */
  BfSizeKind kind[BF_N_THING_SIZES];
} BfThingSizes;

/* Sizes to begin with, all outside, round ones in those units. */
void bf_thing_sizes_init (BfThingSizes *sizes, BfThing thing, BfUnits units);

/* The size counted outside, in mm, where the metal is that thick. */
double bf_thing_outside_mm (BfThing thing,
                            const BfThingSizes *sizes,
                            BfThingSize which,
                            double thickness_mm);

/* Whether a size is another one when it is counted inside: not along a bend. */
gboolean bf_thing_has_inside (BfThing thing, BfThingSize which);

/* Counts a size another way: the number changes, the metal does not. */
void bf_thing_set_kind (
    BfThing thing, BfThingSizes *sizes, BfThingSize which, BfSizeKind kind, double thickness_mm);

/* The part of those sizes, with the set-up (metal, cutting, bending, joining, units) of setup. Its
 * sizes count outside. name: what to call it, for people. Returns: (transfer full), or NULL where
 * the sizes leave nothing inside. */
BfPart *bf_thing_make (BfThing thing,
                       const BfThingSizes *sizes,
                       const BfPart *setup,
                       const char *name) G_GNUC_WARN_UNUSED_RESULT;
