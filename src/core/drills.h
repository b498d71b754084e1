/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* The drills a person owns, as far as a part tells. */

/* The smallest drill owned that is at least that wide (to 1e-6 mm).
 * name: (out) (transfer full) (optional): "6.5 mm", "1/4 in", "no. 7 (5.105 mm)".
 * Returns its diameter in mm, or NAN (name NULL) where no drill is that wide. */
double bf_drill_next_up (const BfPart *part, double diameter_mm, char **name);

/* That name as people read it: in their language and with their decimal sign, where the name itself
 * stays as files have it. Returns: (transfer full). */
char *bf_drill_words (const char *name) G_GNUC_WARN_UNUSED_RESULT;

/* Diameter of a number drill, 1 to 80, in inches (ASME B94.11M); NAN outside. */
double bf_drill_number_in (int number);

/* Diameter of a letter drill, 'A' to 'Z', in inches (ASME B94.11M); NAN for any other letter. */
double bf_drill_letter_in (char letter);

/* Reads drills as they are typed, with a semicolon between them: "3; 4.2; 6.5", a run with its step
 * "1..13 + 0.5", numbers and letters "#1..#60; A..Z; F". A length is read as bf_length_parse()
 * reads it, a bare number in `units`. Returns: (transfer full) (element-type double): mm,
 * ascending, each once; NULL with error (BF_DRILL_ERROR, or that of a length). */
GArray *bf_drills_parse (const char *text, BfUnits units, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* The same the other way: "3; 4.2; 6.5", or for those who type inches "3 mm; 4.2 mm", to a
 * millionth of a mm. sizes_mm: (element-type double). Returns: (transfer full). */
char *bf_drills_to_text (const GArray *sizes_mm, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

typedef enum
{
  BF_DRILL_ERROR_NONE, /* nothing was typed */
  BF_DRILL_ERROR_STEP, /* a run without a step, or that leads nowhere */
  BF_DRILL_ERROR_MANY, /* over BF_DRILLS_MAX */
} BfDrillError;

#define BF_DRILL_ERROR (bf_drill_error_quark ())
GQuark bf_drill_error_quark (void);

/* No box has more drills. */
#define BF_DRILLS_MAX 500

/* TRUE where two lists have the same drills. */
gboolean bf_drills_equal (const GArray *a, const GArray *b);
