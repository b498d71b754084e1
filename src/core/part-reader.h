/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <json-glib/json-glib.h>

#include "core/names.h"

/* Takes members out of a file's objects and says what is wrong by the member's path. For the
 * readers of part files and of the person's own files, in src/core only.
 *
 * The first fault sticks: from then on every function gives back what it was told to give for a
 * member left out, so that a caller reads on and asks once, at the end. */

typedef struct
{
  GError *error;
  GStringChunk *paths; /* owns the paths of all places */
} BfReader;

/* An object of the file and the path to it: "", "metal", "flanges[2].bend". */
typedef struct
{
  JsonObject *object;
  const char *path;
} BfPlace;

/* A kind of number: how it is called when another thing stands there, and its range. */
typedef struct
{
  const char *what; /* marked for translation */
  double least, most;
  gboolean above; /* least itself is not allowed */
} BfNumberRule;

extern const BfNumberRule bf_rule_length, bf_rule_not_negative, bf_rule_coordinate, bf_rule_bend,
    bf_rule_taper, bf_rule_angle, bf_rule_k, bf_rule_force;

void bf_reader_init (BfReader *reader);
void bf_reader_clear (BfReader *reader);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (BfReader, bf_reader_clear)

/* "path.name", or "path[i]" of a list's item. Owned by the reader. */
const char *bf_reader_path (BfReader *reader, const char *path, const char *name);
const char *bf_reader_item_path (BfReader *reader, const char *path, guint i);

/* Sets "path: expected …, found …" unless an error is set already. node: NULL means missing. */
void bf_reader_expected (BfReader *reader, const char *path, const char *expected, JsonNode *node);

/* FALSE, with an error, where the member is missing. */
gboolean
bf_reader_require (BfReader *reader, const BfPlace *place, const char *name, const char *expected);

/* The member's value, or `otherwise` where it is left out. */
double bf_read_number (BfReader *reader,
                       const BfPlace *place,
                       const char *name,
                       const BfNumberRule *rule,
                       double otherwise);
/* The same, whole. */
double bf_read_whole (BfReader *reader,
                      const BfPlace *place,
                      const char *name,
                      const BfNumberRule *rule,
                      double otherwise);
gboolean bf_read_flag (BfReader *reader, const BfPlace *place, const char *name);
guint bf_read_index (BfReader *reader, const BfPlace *place, const char *name);
int bf_read_word (
    BfReader *reader, const BfPlace *place, const char *name, const BfNames *names, int otherwise);
/* Returns: (transfer full), NULL only where otherwise is. */
char *bf_read_string (BfReader *reader,
                      const BfPlace *place,
                      const char *name,
                      const char *otherwise) G_GNUC_WARN_UNUSED_RESULT;

/* A member that is an object. FALSE, child untouched, where it is left out or wrong. */
gboolean bf_read_object (BfReader *reader, const BfPlace *place, const char *name, BfPlace *child);

/* A member that is a list of at most BF_PART_FILE_MAX_ITEMS. Borrowed; NULL where it is left out or
 * wrong. */
JsonArray *bf_read_list (BfReader *reader, const BfPlace *place, const char *name);

/* Item i of the list at that path, which must be an object. */
gboolean
bf_read_item (BfReader *reader, JsonArray *list, guint i, const char *path, BfPlace *child);

/* A number or a point [x, y] that stands at a path of its own. */
double
bf_read_number_node (BfReader *reader, JsonNode *node, const char *path, const BfNumberRule *rule);
BfVec2 bf_read_point_node (BfReader *reader, JsonNode *node, const char *path);

/* A member that is a list of lengths in mm, put in ascending order; empty where it is left out.
 * Returns: (transfer full) (element-type double). */
GArray *bf_read_lengths (BfReader *reader,
                         const BfPlace *place,
                         const char *name) G_GNUC_WARN_UNUSED_RESULT;

/* A member that is a list of indices, each appended to a list of guint once. */
void bf_read_indices (BfReader *reader, const BfPlace *place, const char *name, GArray *indices);

/* A member that is a list of points, at least three, appended to points. Nothing is appended
 * where the member is left out. */
void bf_read_points (BfReader *reader, const BfPlace *place, const char *name, GArray *points);
