/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* Lengths as people type them: "120", "4 3/4", "4-3/4 in", "1' 2 3/8\"", "38.1 mm", "200/3",
 * "16 ga". */

typedef enum
{
  BF_LENGTH_ERROR_EMPTY,     /* nothing was typed */
  BF_LENGTH_ERROR_NUMBER,    /* no number where one should stand, or a fraction that is none */
  BF_LENGTH_ERROR_UNIT,      /* a unit that is not known, or does not belong there */
  BF_LENGTH_ERROR_AMBIGUOUS, /* "1,500", which may be 1.5 or 1500 */
  BF_LENGTH_ERROR_GAUGE,     /* a gauge where none is meant, or one that the metal has not */
  BF_LENGTH_ERROR_RANGE,     /* over BF_LENGTH_MAX_MM */
} BfLengthError;

#define BF_LENGTH_ERROR (bf_length_error_quark ())
GQuark bf_length_error_quark (void);

typedef struct
{
  BfUnits units;        /* what a bare number means */
  const char *material; /* for a thickness: the metal whose gauge "16 ga" means; NULL elsewhere */
} BfLengthContext;

/* Reads a typed length. Units: mm, cm, m, in (inch, inches, "), ft (feet, '), ga (gauge), in small
 * or capital letters; feet may be followed by inches. A number may be a decimal, a quotient
 * ("200/3") or a whole number and a fraction ("4 3/4", "4-3/4"); a minus may stand before it all.
 * The locale's decimal sign counts; so does the other of comma and point, unless three digits
 * follow it. There are no signs between thousands.
 * Of a thickness a bare fraction below 1 in 64ths ("1/16") is inches, whatever the units.
 * length_mm: (out), set only where TRUE is returned. error: a sentence for the person. */
gboolean bf_length_parse (const char *text,
                          const BfLengthContext *context,
                          double *length_mm,
                          GError **error);

/* TRUE where a typed length is a gauge ("16 ga"), so that it is told by which. */
gboolean bf_length_is_gauge (const char *text);

/* What was understood, "= 66.667 mm": three decimals at most, in the locale's decimal sign.
 * Returns: (transfer full). */
char *bf_length_understood (double length_mm, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
