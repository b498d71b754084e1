/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* Lengths as people write and read them. */

#define BF_MM_PER_INCH 25.4

/* A length for people: in mm with one decimal at most ("40", "4.7"), in inches as a fraction to
 * the nearest 1/64 where it is one to 0.001 in ("4 3/4"), else with three decimals ("0.187").
 * With the unit ("40 mm", "4 3/4 in"). In the locale's decimal sign. Returns: (transfer full). */
char *bf_format_length (double length_mm, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* A length without its unit, as fine as a caliper shows it: hundredths of a mm, thousandths of an
 * inch. Returns: (transfer full). */
char *bf_format_fine (double length_mm, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* A length without its unit, as bf_format_length() tells it. */
char *bf_format_number (double length_mm, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* What is of the order of the metal itself, a thickness, a skin, a radius, a kerf: as above, but in
 * mm with two decimals at most, since 1.52 (16 gauge) is not 1.5 and 1.25 is not 1.3. */
char *bf_format_thin (double length_mm, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *bf_format_thin_number (double length_mm, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* An angle for people: "90°", "72.5°". angle in degrees. Returns: (transfer full). */
char *bf_format_angle (double angle_deg) G_GNUC_WARN_UNUSED_RESULT;

/* A number for people with that many decimals at most (1 to 9), in the locale's decimal sign; "–"
 * where it is not finite. Returns: (transfer full). */
char *bf_format_decimal (double value, int decimals) G_GNUC_WARN_UNUSED_RESULT;
