/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "write/pattern.h"

/* White kept round the drawing, that no reader cuts a line off. */
#define BF_PATTERN_PDF_MARGIN_MM 5.0

/* The pattern as a PDF of one page, as large as it must be, at full size and with y up as drawn.
 * Returns: (transfer full), or NULL with BF_WRITE_ERROR_DRAWING. */
GBytes *bf_pattern_pdf (const BfPattern *pattern, GError **error) G_GNUC_WARN_UNUSED_RESULT;
