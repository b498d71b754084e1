/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* What is typed for a size. */

typedef enum
{
  BF_SIZE_FIELD_LENGTH,
  BF_SIZE_FIELD_THICKNESS, /* a length that may be a gauge of the material */
  BF_SIZE_FIELD_ANGLE,
  BF_SIZE_FIELD_TURN,  /* an angle that something lies at: any, to a whole turn either way */
  BF_SIZE_FIELD_PLACE, /* a distance, which may be none or backwards */
  BF_SIZE_FIELD_INSET, /* a distance, which may be none */
  BF_SIZE_FIELD_GAP,   /* the same, fine: stepped by tenths and shown to hundredths of a mm */
  BF_SIZE_FIELD_FINE,  /* a length as fine */
  BF_SIZE_FIELD_TAPER, /* an angle that a side leans by, either way */
} BfSizeFieldKind;

typedef enum
{
  BF_SIZE_ERROR_ANGLE,   /* no angle, or one that no bend can have */
  BF_SIZE_ERROR_NOTHING, /* a length of nothing or less, or a distance of less */
} BfSizeError;

#define BF_SIZE_ERROR (bf_size_error_quark ())
GQuark bf_size_error_quark (void);

/* How the words are to be read. */
typedef struct
{
  BfSizeFieldKind kind;
  BfUnits units;        /* of a bare number */
  const char *material; /* for a thickness; may be NULL */
} BfSizeReading;

/* Reads a length in mm that is more than 0 (core/length-entry.h), an angle from 1 to 180 degrees,
 * or what the other kinds allow. FALSE, with error set to a sentence that says what is wrong, and
 * size as it was, where the words are none. */
gboolean
bf_size_read (const char *words, const BfSizeReading *reading, double *size, GError **error);

gboolean bf_size_is_angle (BfSizeFieldKind kind);
gboolean bf_size_is_fine (BfSizeFieldKind kind);

/* The nearest that the kind allows; NAN for no length at all. */
double bf_size_within (double size, BfSizeFieldKind kind);

/* The size as it is shown in a field, in the locale's decimal sign, without a unit but for the
 * degree sign. Returns: (transfer full). */
char *bf_size_words (double size, const BfSizeReading *reading) G_GNUC_WARN_UNUSED_RESULT;

/* What those words were taken for ("= 66.667 mm"); NULL where they read so anyway.
 * Returns: (transfer full). */
char *bf_size_understood (const char *words,
                          double size,
                          const BfSizeReading *reading) G_GNUC_WARN_UNUSED_RESULT;
