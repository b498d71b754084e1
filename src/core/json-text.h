/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <json-glib/json-glib.h>

/* JSON as people read it. json-glib writes a double with 17 digits and every item of a list on a
 * line of its own; here a number has the fewest digits that read back the same, and a list or
 * object that is short enough stays on one line. */

/* Ends with a newline. The outermost object or list always takes several lines.
 * Returns: (transfer full). */
char *bf_json_to_text (JsonNode *root) G_GNUC_WARN_UNUSED_RESULT;

/* A number with '.' in any locale, and the fewest digits that read back as the same double.
 * value must be finite. Returns: (transfer full). */
char *bf_number_to_text (double value) G_GNUC_WARN_UNUSED_RESULT;

/* Puts a space where a control character stands, so that a message stays on one line. */
void bf_flatten_controls (char *text);
