/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <json-glib/json-glib.h>

#include "core/part.h"

/* The pieces that bf_part_to_text() is made of. For src/core only.
 *
 * Each object is written anew, known members first and in their usual order; then come the
 * members of the object that was read, as far as the format does not know them. */

/* One list of the part as nodes, with what every item needs to fold alike when it is read back.
 * Returns: (transfer full). */
JsonNode *bf_write_flanges (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
JsonNode *bf_write_corners (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
JsonNode *bf_write_openings (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
JsonNode *bf_write_parted (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
JsonNode *bf_write_base_corners (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;

/* What is ticked, an empty object where nothing is. Returns: (transfer full). */
JsonObject *bf_write_made (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;

/* The members of a bend that are given. source: the bend as read, or NULL.
 * Returns: (transfer full), an empty object where nothing is given. */
JsonObject *bf_write_bend (const BfBend *bend, JsonObject *source) G_GNUC_WARN_UNUSED_RESULT;

/* A list of points. Returns: (transfer full). */
JsonNode *bf_write_points (GArray *points) G_GNUC_WARN_UNUSED_RESULT;
JsonNode *bf_write_point (BfVec2 p) G_GNUC_WARN_UNUSED_RESULT;

/* Adds a member; NAN and NULL add nothing. */
void bf_write_number (JsonObject *object, const char *name, double value);
void bf_write_word (JsonObject *object, const char *name, const char *word);

/* Adds an object unless it is empty. object: (transfer full). */
void bf_write_object (JsonObject *parent, const char *name, JsonObject *object);

/* The object of that name in what was read, or NULL. source may be NULL. */
JsonObject *bf_source_object (JsonObject *source, const char *name);

/* Adds the members of source that are not known. known ends with NULL; source may be NULL. */
void bf_keep_unknown (JsonObject *object, JsonObject *source, const char *const *known);
