/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* Numbers in drawings: always with '.', whatever the locale, and never "-0". */

/* Appends value with up to 9 decimals and never an exponent, which not every reader of drawings
 * knows ("274.692", "40"). */
void bf_append_decimal (GString *text, double value);
