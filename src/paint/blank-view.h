/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "core/own-pens.h"
#include "fold/fold.h"

/* The blank as a picture: what is cut, bent and drilled, in the pens of paint/palette.h, and the
 * words that go with it. The template, the window and small pictures all draw it here. */

typedef enum
{
  BF_BLANK_METAL = 1 << 0, /* the metal filled, for a screen */
  BF_BLANK_CUTS = 1 << 1,
  BF_BLANK_BENDS = 1 << 2,
  BF_BLANK_DRILLS = 1 << 3,      /* drilled circles and the crosses at their centres */
  BF_BLANK_BEND_NOTES = 1 << 4,  /* "fold up 90°" along the bend */
  BF_BLANK_DRILL_NOTES = 1 << 5, /* "drill 6.5 mm" beside the cross */
  BF_BLANK_NAMES = 1 << 6,       /* "front, 40" on the strip, the part's name on the base */
  BF_BLANK_BARS = 1 << 7,        /* where the bar's front edge sits */
} BfBlankLayers;

#define BF_BLANK_LINES (BF_BLANK_CUTS | BF_BLANK_BENDS | BF_BLANK_DRILLS | BF_BLANK_BARS)
#define BF_BLANK_WORDS (BF_BLANK_BEND_NOTES | BF_BLANK_DRILL_NOTES | BF_BLANK_NAMES)

typedef struct
{
  guint layers; /* BfBlankLayers */

  /* How many millimetres of the blank one millimetre of paper shows: 1 at full size, 5 at 1:5.
   * Pens, dashes, words and the distances they keep are multiplied by it. */
  double unit;
  double cap_height_mm; /* of the words, on paper */

  double turn_rad;   /* how far the caller has turned the blank, counter-clockwise as it is seen:
                      * words are laid so that they still read from below or from the right */
  const BfBox *view; /* words are placed so that they are seen whole in it; NULL: all is seen */

  const GArray *keep_off; /* BfBox of the blank that words keep off, for things that the caller
                           * puts there itself; NULL for none */

  int highlight_face;   /* index of a face to light up, or −1 */
  gboolean dark;        /* for a dark surface */
  const BfPenSet *pens; /* the person's own, for paper; NULL: those of paint/palette.h */
  BfUnits units;        /* for the numbers in words */
} BfBlankStyle;

/* All lines and words at full size, 2.6 mm capitals, nothing highlighted, the part's units. */
void bf_blank_style_init (BfBlankStyle *style, const BfFold *fold);

/* Draws the blank. cr's units are millimetres of the blank with y down, and its origin is where
 * the blank's point (0, 0) shall be: the blank's (x, y) is drawn at (x, −y). */
void bf_blank_view_draw (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr);
