/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/own-folder.h"

#include <errno.h>
#include <string.h>
#include <glib/gi18n.h>
#include <glib/gstdio.h>

#include "core/json-guard.h"
#include "core/json-text.h"
#include "core/part-file.h"
#include "core/read-file.h"

#define SUFFIX ".json"
#define VERSION 1
#define MAX_BYTES (256 * 1024)
#define MAX_DEPTH 16
#define MAX_FILES 1000
#define FOLDER_MODE 0700
#define LONGEST_ID 60

static char *
folder_path (const BfOwnKind *kind)
{
  return g_build_filename (g_get_user_data_dir (), "benchfold", kind->folder, NULL);
}

static char *
thing_path (const BfOwnKind *kind, const char *id)
{
  g_autofree char *folder = folder_path (kind);
  g_autofree char *name = g_strconcat (id, SUFFIX, NULL);

  return g_build_filename (folder, name, NULL);
}

/* ---- reading ------------------------------------------------------------------------------ */

static void
check_head (BfReader *reader, const BfPlace *root, const char *format)
{
  static const BfNumberRule rule = { N_ ("a version number"), 1.0, G_MAXINT, FALSE };
  g_autofree char *found = bf_read_string (reader, root, "format", "");
  double version;

  if (reader->error == NULL && !g_str_equal (found, format))
    g_set_error (&reader->error, BF_PART_ERROR, BF_PART_ERROR_FORMAT,
                 /* Translators: %s is a word of the file format. */
                 _ ("format: expected \"%s\""), format);
  if (!bf_reader_require (reader, root, "version", _ ("a version number")))
    return;
  version = bf_read_number (reader, root, "version", &rule, NAN);
  if (reader->error == NULL && version > VERSION)
    g_set_error (&reader->error, BF_PART_ERROR, BF_PART_ERROR_FORMAT,
                 /* Translators: version numbers of a file format. */
                 _ ("version: made by a newer program (version %.0f); this one reads up to %d"),
                 version, VERSION);
}

/* The file's outermost object, in a parser that owns it. NULL with error set. */
static JsonParser *
parse (const char *path, GError **error)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GBytes) bytes = bf_read_file (file, MAX_BYTES, error);
  g_autoptr (JsonParser) parser = json_parser_new ();
  const char *text;
  gsize size;

  if (bytes == NULL)
    return NULL;
  text = g_bytes_get_data (bytes, &size);
  if (!bf_json_guard (text != NULL ? text : "", size, MAX_BYTES, MAX_DEPTH, error) ||
      !json_parser_load_from_data (parser, text, (gssize)size, error))
    return NULL;
  if (JSON_NODE_HOLDS_OBJECT (json_parser_get_root (parser)))
    return g_steal_pointer (&parser);
  g_set_error_literal (error, BF_PART_ERROR, BF_PART_ERROR_FORMAT, _ ("expected an object"));
  return NULL;
}

typedef struct
{
  const BfOwnKind *kind;
  BfOwnFunc func;
  gpointer data;
  GPtrArray *faults;
} Reading;

static void
read_thing (const char *id, const Reading *reading)
{
  g_autofree char *path = thing_path (reading->kind, id);
  g_auto (BfReader) reader;
  g_autoptr (JsonParser) parser = NULL;
  BfPlace root = { NULL, "" };

  bf_reader_init (&reader);
  parser = parse (path, &reader.error);
  if (parser != NULL)
    {
      root.object = json_node_get_object (json_parser_get_root (parser));
      check_head (&reader, &root, reading->kind->format);
      if (reader.error == NULL)
        reading->func (&reader, &root, g_intern_string (id), reading->data);
    }
  if (reader.error != NULL)
    g_ptr_array_add (reading->faults, g_strdup_printf ("%s: %s", path, reader.error->message));
}

void
bf_own_read_one (
    const BfOwnKind *kind, const char *id, BfOwnFunc func, gpointer data, GPtrArray *faults)
{
  Reading reading = { kind, func, data, faults };
  g_autofree char *path = NULL;

  g_return_if_fail (kind != NULL && id != NULL && func != NULL && faults != NULL);

  path = thing_path (kind, id);
  if (g_file_test (path, G_FILE_TEST_EXISTS))
    read_thing (id, &reading);
}

static int
compare_ids (gconstpointer a, gconstpointer b)
{
  return strcmp (*(const char *const *)a, *(const char *const *)b);
}

/* Hidden files are none of ours: an editor's or a half-written one. */
static GPtrArray *
list_ids (const BfOwnKind *kind)
{
  g_autofree char *folder = folder_path (kind);
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  GPtrArray *ids = g_ptr_array_new_with_free_func (g_free);
  const char *name;

  while (dir != NULL && ids->len < MAX_FILES && (name = g_dir_read_name (dir)) != NULL)
    if (name[0] != '.' && g_str_has_suffix (name, SUFFIX) && g_utf8_validate (name, -1, NULL))
      g_ptr_array_add (ids, g_strndup (name, strlen (name) - strlen (SUFFIX)));
  g_ptr_array_sort (ids, compare_ids);
  return ids;
}

void
bf_own_read (const BfOwnKind *kind, BfOwnFunc func, gpointer data, GPtrArray *faults)
{
  Reading reading = { kind, func, data, faults };
  g_autoptr (GPtrArray) ids = NULL;

  g_return_if_fail (kind != NULL && func != NULL && faults != NULL);

  ids = list_ids (kind);
  for (guint i = 0; i < ids->len; i++)
    read_thing (g_ptr_array_index (ids, i), &reading);
}

/* ---- writing ------------------------------------------------------------------------------ */

/* Letters and digits of any script, small, with a dash for each run of anything else. */
static char *
id_from_name (const char *name)
{
  g_autofree char *small = g_utf8_strdown (name, -1);
  GString *id = g_string_new (NULL);

  for (const char *p = small; *p != '\0' && id->len < LONGEST_ID; p = g_utf8_next_char (p))
    if (g_unichar_isalnum (g_utf8_get_char (p)))
      g_string_append_unichar (id, g_utf8_get_char (p));
    else if (id->len > 0 && id->str[id->len - 1] != '-')
      g_string_append_c (id, '-');
  while (id->len > 0 && id->str[id->len - 1] == '-')
    g_string_truncate (id, id->len - 1);
  if (id->len == 0)
    g_string_append (id, "own");
  return g_string_free (id, FALSE);
}

static gboolean
is_taken (const BfOwnKind *kind, const char *id, const char *const *taken)
{
  g_autofree char *path = thing_path (kind, id);

  return (taken != NULL && g_strv_contains (taken, id)) || g_file_test (path, G_FILE_TEST_EXISTS) ||
         g_file_test (path, G_FILE_TEST_IS_SYMLINK);
}

char *
bf_own_new_id (const BfOwnKind *kind, const char *name, const char *const *taken)
{
  g_autofree char *stem = NULL;
  char *id;

  g_return_val_if_fail (kind != NULL && name != NULL && g_utf8_validate (name, -1, NULL), NULL);

  stem = id_from_name (name);
  id = g_strdup (stem);
  for (guint i = 2; is_taken (kind, id, taken); i++)
    {
      g_free (id);
      id = g_strdup_printf ("%s-%u", stem, i);
    }
  return id;
}

JsonObject *
bf_own_source (const BfOwnKind *kind, const char *id)
{
  g_autofree char *path = NULL;
  g_autoptr (JsonParser) parser = NULL;

  g_return_val_if_fail (kind != NULL && id != NULL, NULL);

  path = thing_path (kind, id);
  parser = parse (path, NULL);
  return parser != NULL ? json_node_dup_object (json_parser_get_root (parser)) : NULL;
}

static gboolean
fail (GError **error, const char *path, const char *reason)
{
  g_set_error (error, BF_PART_ERROR, BF_PART_ERROR_WRITE, "%s: %s", path, reason);
  return FALSE;
}

/* The thing's own members after the two that every file begins with. */
static char *
text_of (const BfOwnKind *kind, JsonObject *object)
{
  g_autoptr (JsonObject) whole = json_object_new ();
  g_autoptr (JsonNode) root = json_node_new (JSON_NODE_OBJECT);
  JsonObjectIter iter;
  const char *name;
  JsonNode *node;

  json_object_set_string_member (whole, "format", kind->format);
  json_object_set_int_member (whole, "version", VERSION);
  json_object_iter_init_ordered (&iter, object);
  while (json_object_iter_next_ordered (&iter, &name, &node))
    json_object_set_member (whole, name, json_node_copy (node));
  json_node_set_object (root, whole);
  return bf_json_to_text (root);
}

static gboolean
write_text (const BfOwnKind *kind, const char *id, const char *text, gsize size, GError **error)
{
  g_autofree char *folder = folder_path (kind), *path = thing_path (kind, id);
  g_autoptr (GError) cause = NULL;

  if (g_mkdir_with_parents (folder, FOLDER_MODE) != 0)
    return fail (error, folder, g_strerror (errno));
  if (!g_file_set_contents_full (path, text, (gssize)size,
                                 G_FILE_SET_CONTENTS_CONSISTENT | G_FILE_SET_CONTENTS_DURABLE, 0666,
                                 &cause))
    return fail (error, path, cause->message);
  return TRUE;
}

static gboolean
is_file_name (const char *id)
{
  return id[0] != '.' && strchr (id, G_DIR_SEPARATOR) == NULL;
}

gboolean
bf_own_write (const BfOwnKind *kind, const char *id, JsonObject *object, GError **error)
{
  g_autofree char *text = NULL;

  g_return_val_if_fail (kind != NULL && id != NULL && object != NULL, FALSE);
  g_return_val_if_fail (is_file_name (id), FALSE);

  text = text_of (kind, object);
  return write_text (kind, id, text, strlen (text), error);
}

gboolean
bf_own_remove (const BfOwnKind *kind, const char *id, GBytes **removed, GError **error)
{
  g_autofree char *path = NULL, *text = NULL;
  gsize size = 0;

  g_return_val_if_fail (kind != NULL && id != NULL && is_file_name (id), FALSE);

  path = thing_path (kind, id);
  if (removed != NULL)
    *removed = NULL;
  if (removed != NULL && g_file_get_contents (path, &text, &size, NULL))
    *removed = g_bytes_new_take (g_steal_pointer (&text), size);
  if (g_unlink (path) == 0 || errno == ENOENT)
    return TRUE;
  if (removed != NULL)
    g_clear_pointer (removed, g_bytes_unref);
  return fail (error, path, g_strerror (errno));
}

gboolean
bf_own_put_back (const BfOwnKind *kind, const char *id, GBytes *removed, GError **error)
{
  gsize size;
  const char *text;

  g_return_val_if_fail (kind != NULL && id != NULL && removed != NULL, FALSE);
  g_return_val_if_fail (is_file_name (id), FALSE);

  text = g_bytes_get_data (removed, &size);
  return is_taken (kind, id, NULL) || write_text (kind, id, text, size, error);
}
