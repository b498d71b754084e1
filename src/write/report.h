/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"
#include "paint/template.h"

/* Arcs in the report's rings are cut into chords that stray no further than this from them. */
#define BF_REPORT_SAGITTA_MM 0.01

/* What folding a part gives, as JSON for people's scripts, in the units of the part file: mm, mm²,
 * mm³, degrees, and kg, N, N·m. What was not worked out is null. Whole circles and arcs of the
 * blank stand in "arcs" counter-clockwise from `from` to `to`, `to` the larger number. "lot" is
 * there for parts of which more than one is made. template: gives "pages", or NULL for null.
 * Returns: (transfer full). */
char *bf_report_text (const BfFold *fold, const BfTemplate *template) G_GNUC_WARN_UNUSED_RESULT;
