/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/work.h"
#include "paint/paper.h"

/* The make card: what a person takes to the bench. Pictures and sizes, the work step by step with a
 * box to tick, each caution at its step, room for what was measured and for name and class. */

typedef struct _BfCard BfCard;

/* work and paper are kept by pointer: let them live as long. Returns: (transfer full). */
BfCard *bf_card_new (const BfWork *work, const BfPaper *paper) G_GNUC_WARN_UNUSED_RESULT;

/* The same of the cuts alone, each in a line: what follows marking out. n_before: how many pages of
 * one document with it come before its own, which are numbered on from there. */
BfCard *bf_card_new_cuts (const BfWork *work,
                          const BfPaper *paper,
                          guint n_before) G_GNUC_WARN_UNUSED_RESULT;
void bf_card_free (BfCard *card);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfCard, bf_card_free)

guint bf_card_n_pages (const BfCard *card);

/* Draws page i in millimetres from its upper left corner. */
void bf_card_draw (const BfCard *card, guint i, cairo_t *cr);
