/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"
#include "draw-page.h"

/* Where a page has ink: drawn on a surface without end, so that what runs off the paper is seen. */

/* The box of all that a page draws, in mm from its upper left corner; min over max where it draws
 * nothing. */
BfBox page_ink (PageFunc draw, gconstpointer pages, guint page);

/* Fails the test unless the page draws something, and all of it keeps that far off the paper's
 * edges. */
void assert_on_paper (const BfBox *ink, const BfPaper *paper, double margin_mm);
