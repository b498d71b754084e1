/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What reliefs, openings and slots leave of a piece of the blank. */

/* Every cut of the fold. Returns: (transfer container): BfRing, the fold's. */
GPtrArray *bf_formed_cuts (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;

/* TRUE where one of the cuts comes into the box of the piece. */
gboolean bf_formed_is_cut (const BfRing *piece, const GPtrArray *cuts);

/* What the cuts leave of a piece, scraps of a relief left out; the piece itself where they leave it
 * alone. Returns: (transfer full): GPtrArray of GPtrArray of BfRing, each an outline and its
 * holes. */
GPtrArray *bf_formed_cut (const BfRing *piece, const GPtrArray *cuts) G_GNUC_WARN_UNUSED_RESULT;
