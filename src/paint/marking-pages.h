/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/marking-steps.h"
#include "paint/paper.h"

/* Marking-out on paper: a picture and a sentence a step, six to a page. */

typedef struct _BfMarkingPages BfMarkingPages;

/* marking is kept by pointer: let it live as long. units: of the lengths in it. Returns: (transfer
 * full). */
BfMarkingPages *bf_marking_pages_new (const BfMarking *marking,
                                      const BfPaper *paper,
                                      BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
void bf_marking_pages_free (BfMarkingPages *pages);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfMarkingPages, bf_marking_pages_free)

guint bf_marking_pages_n (const BfMarkingPages *pages);
const BfPaper *bf_marking_pages_paper (const BfMarkingPages *pages);
const BfMarking *bf_marking_pages_marking (const BfMarkingPages *pages);

/* Draws page i in millimetres from its upper left corner. */
void bf_marking_pages_draw (const BfMarkingPages *pages, guint i, cairo_t *cr);
