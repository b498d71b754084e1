/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/work.h"
#include "paint/paper.h"

/* Marking-out on paper: a picture and a sentence a step, six to a page; then the cuts, where hands
 * make them, in their order. */

typedef struct _BfMarkingPages BfMarkingPages;

/* work and paper are kept by pointer: let them live as long. Returns: (transfer full). */
BfMarkingPages *bf_marking_pages_new (const BfWork *work,
                                      const BfPaper *paper) G_GNUC_WARN_UNUSED_RESULT;
void bf_marking_pages_free (BfMarkingPages *pages);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfMarkingPages, bf_marking_pages_free)

guint bf_marking_pages_n (const BfMarkingPages *pages);
const BfPaper *bf_marking_pages_paper (const BfMarkingPages *pages);
const BfPart *bf_marking_pages_part (const BfMarkingPages *pages);

/* Draws page i in millimetres from its upper left corner. */
void bf_marking_pages_draw (const BfMarkingPages *pages, guint i, cairo_t *cr);
