/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* The pens that the person's printer or plotter has, for paper templates:
 * $XDG_DATA_HOME/benchfold/pens.json. Colour and width only: dashes tell lines apart in black and
 * white, and stay. */

typedef enum
{
  BF_PEN_CUT,
  BF_PEN_BEND_UP,
  BF_PEN_BEND_DOWN,
  BF_PEN_SLOT,
  BF_PEN_SCORE,
  BF_PEN_BAR_LINE,
  BF_PEN_DRILL,
  BF_N_PENS,
} BfPenKind;

typedef struct
{
  guint32 rgb; /* 0xRRGGBB */
  double width_mm;
} BfOwnPen;

typedef struct
{
  BfOwnPen pens[BF_N_PENS];
} BfPenSet;

/* "cut", "bend-up": a kind's name in the file. */
const char *bf_pen_kind_name (BfPenKind kind);

/* The pens where nobody chose: cut, slot, score, bar line and drill black, bends as in
 * paint/palette.h. */
const BfPenSet *bf_pens_default (void);

/* The person's pens: the file's, and the defaults for kinds it leaves out; all defaults where there
 * is no file or it is broken. Read from the disk when first asked for. Owned by the library. */
const BfPenSet *bf_own_pens (void);

/* A set in words that differ where two sets do: "cut #000000 0.35, …". Returns: (transfer full). */
char *bf_pens_in_words (const BfPenSet *pens) G_GNUC_WARN_UNUSED_RESULT;

/* What is wrong with the file, "PATH: member: what is wrong"; NULL where nothing is. */
const char *bf_own_pens_fault (void);
void bf_own_pens_read_again (void);

/* Keeps a set. error: BF_PART_ERROR_WRITE. */
gboolean bf_own_pens_keep (const BfPenSet *pens, GError **error);
