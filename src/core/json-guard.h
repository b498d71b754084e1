/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* Looks a text over before a parser sees it. TRUE only for UTF-8 that is JSON to the letter
 * (RFC 8259) and can be kept without loss: at most max_bytes long and max_depth levels deep, no
 * member twice in an object, no number that is infinite or an integer of over 18 digits, no NUL
 * and no half surrogate in a string. Comments, hex numbers, NaN and a comma too many are not JSON.
 *
 * error: BF_PART_ERROR_TOO_LARGE or BF_PART_ERROR_SYNTAX; the message begins with line and column,
 * both counted from 1, the column in characters. */
gboolean
bf_json_guard (const char *text, gsize length, gsize max_bytes, guint max_depth, GError **error);
