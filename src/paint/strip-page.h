/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "fold/fold.h"
#include "paint/paper.h"

/* A page with strips for a trial bend, at full size: to be glued to the part's metal, cut out, bent
 * as the part will be bent, and measured; with room to write down what was measured. */

typedef struct _BfStripPage BfStripPage;

/* Strips for that part's metal, thickness, way of bending and radius, of round sizes in `units`.
 * date: as it shall stand on the page; NULL: today. The paper is kept by pointer. Returns:
 * (transfer full). */
BfStripPage *bf_strip_page_new (const BfPart *part,
                                const BfPaper *paper,
                                BfUnits units,
                                const char *date) G_GNUC_WARN_UNUSED_RESULT;
void bf_strip_page_free (BfStripPage *page);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfStripPage, bf_strip_page_free)

const BfPaper *bf_strip_page_paper (const BfStripPage *page);

/* The fold of one strip. Owned by the page. */
const BfFold *bf_strip_page_fold (const BfStripPage *page);

/* The blank's point (0, 0) of strip i, in mm from the page's upper left corner, y down. */
BfVec2 bf_strip_page_origin (const BfStripPage *page, guint i);

/* Draws it. cr's units are millimetres, y down from the paper's upper left corner. */
void bf_strip_page_draw (const BfStripPage *page, cairo_t *cr);
