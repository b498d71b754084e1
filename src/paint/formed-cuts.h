/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What reliefs, openings and slots leave of a piece of the blank. */

/* Cutting costs more than all else that a picture takes to prepare, and while something is dragged
 * most pieces stay as they were: what was left of a piece is known the next time. */
typedef struct
{
  GArray *cuts;      /* every one of the fold */
  GHashTable *known; /* what was left the last time, or NULL */
  GHashTable *rests; /* what is left now */
} BfFormedCutting;

/* known: rests of an earlier cutting, of any fold, or NULL. The fold and known have to outlive the
 * cutting; rests may be kept. */
void bf_formed_cutting_init (BfFormedCutting *cutting, const BfFold *fold, GHashTable *known);
void bf_formed_cutting_clear (BfFormedCutting *cutting);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (BfFormedCutting, bf_formed_cutting_clear)

/* TRUE where one of the cuts comes into the box of the piece. */
gboolean bf_formed_is_cut (const BfFormedCutting *cutting, const BfRing *piece);

/* What the cuts leave of a piece, scraps of a relief left out; the piece itself where they leave it
 * alone. Returns: GPtrArray of GPtrArray of BfRing, each an outline and its holes; the cutting's.
 */
const GPtrArray *bf_formed_cut (BfFormedCutting *cutting, const BfRing *piece);
