/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"
#include "paint/palette.h"

/* What a pattern file holds, whatever its format: lines, outlines, marks and words, each with its
 * purpose, in the blank's own coordinates (mm, y up). A writer turns the items into its format in
 * the order in which they stand: what must be cut last stands last. */

typedef enum
{
  BF_PATTERN_RING,  /* a closed contour */
  BF_PATTERN_LINE,  /* from at to to */
  BF_PATTERN_MARK,  /* a point to be found with a punch or a drill */
  BF_PATTERN_WORDS, /* one line of words; its baseline begins at at and runs toward to */
} BfPatternKind;

typedef enum
{
  BF_BEND_LINES_IN,
  BF_BEND_LINES_OUT,
  BF_BEND_LINES_NOTCHES, /* small cuts in the outline at the lines' ends */
} BfBendLines;

typedef struct
{
  BfUnits drawn_in; /* the unit that the file's coordinates are in, for the words */
  const char *date; /* "2024-05-31"; NULL for today */
  gboolean kerf;    /* cut edges moved by half the part's kerf to the side of the waste */
  BfBendLines bend_lines;
} BfPatternOptions;

typedef struct
{
  BfPurpose purpose;
  BfPatternKind kind;
  BfRing *ring; /* a ring's */
  BfVec2 at, to;
  double cap_height_mm; /* of words */
  char *words;          /* the words; of a line what it is for, of others NULL */
} BfPatternItem;

typedef struct
{
  BfFold *fold;
  BfBox box;        /* of all contours; a point where nothing could be drawn, so always finite */
  GPtrArray *items; /* BfPatternItem */
  char *name;       /* of the part, never empty */
  char *setup;      /* the set-up sentence */
  char *origin;     /* "Drawn in mm at full size, marking side up, 2024-05-31." */
  char *kerf;       /* how far edges were moved, and what is too small for it; NULL: not asked */
  char *warning;    /* what must be fixed before cutting; NULL where nothing must */
} BfPattern;

/* The pattern of a blank, with numbers in the part's units. options: NULL for mm, today, no kerf
 * and bend lines in. The fold is kept by reference. Returns: (transfer full). */
BfPattern *bf_pattern_new (BfFold *fold, const BfPatternOptions *options) G_GNUC_WARN_UNUSED_RESULT;
void bf_pattern_free (BfPattern *pattern);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfPattern, bf_pattern_free)

static inline const BfPatternItem *
bf_pattern_item (const BfPattern *pattern, guint i)
{
  return g_ptr_array_index (pattern->items, i);
}
