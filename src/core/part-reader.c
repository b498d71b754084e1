/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-reader.h"

#include <glib/gi18n.h>

#include "core/compare.h"
#include "core/json-text.h"
#include "core/part-file.h"
#include "core/tolerance.h"

#define LONGEST_FOUND 40

/* Over this a number that is no length is absurd too. */
#define NUMBER_MAX 1e5

const BfNumberRule bf_rule_length = { N_ ("a length in mm"), 0.0, BF_LENGTH_MAX_MM, TRUE };
const BfNumberRule bf_rule_not_negative = { N_ ("a length in mm"), 0.0, BF_LENGTH_MAX_MM, FALSE };
const BfNumberRule bf_rule_coordinate = { N_ ("a number of mm"), -BF_LENGTH_MAX_MM,
                                          BF_LENGTH_MAX_MM, FALSE };
const BfNumberRule bf_rule_bend = { N_ ("an angle in degrees"), 1.0, 180.0, FALSE };
const BfNumberRule bf_rule_taper = { N_ ("an angle in degrees"), -BF_TAPER_MAX_DEG,
                                     BF_TAPER_MAX_DEG, FALSE };
const BfNumberRule bf_rule_angle = { N_ ("an angle in degrees"), -NUMBER_MAX, NUMBER_MAX, FALSE };
const BfNumberRule bf_rule_k = { N_ ("a K-factor"), 0.0, 1.0, FALSE };
const BfNumberRule bf_rule_force = { N_ ("a force in N"), 0.0, NUMBER_MAX, TRUE };

void
bf_reader_init (BfReader *reader)
{
  reader->error = NULL;
  reader->paths = g_string_chunk_new (1024);
}

void
bf_reader_clear (BfReader *reader)
{
  g_clear_error (&reader->error);
  g_clear_pointer (&reader->paths, g_string_chunk_free);
}

const char *
bf_reader_path (BfReader *reader, const char *path, const char *name)
{
  g_autofree char *joined = g_strdup_printf ("%s.%s", path, name);

  return g_string_chunk_insert (reader->paths, *path != '\0' ? joined : name);
}

const char *
bf_reader_item_path (BfReader *reader, const char *path, guint i)
{
  g_autofree char *joined = g_strdup_printf ("%s[%u]", path, i);

  return g_string_chunk_insert (reader->paths, joined);
}

/* What stands in the file, short enough for one line. */
static char *
describe_string (const char *string)
{
  gboolean cut = g_utf8_strlen (string, -1) > LONGEST_FOUND;
  g_autofree char *head = g_utf8_substring (string, 0, cut ? LONGEST_FOUND : -1);

  bf_flatten_controls (head);
  return g_strdup_printf ("\"%s%s\"", head, cut ? "…" : "");
}

static char *
describe (JsonNode *node)
{
  if (json_node_is_null (node))
    return g_strdup ("null");
  if (JSON_NODE_HOLDS_OBJECT (node))
    return g_strdup (_ ("an object"));
  if (JSON_NODE_HOLDS_ARRAY (node))
    return g_strdup (_ ("a list"));
  if (json_node_get_value_type (node) == G_TYPE_STRING)
    return describe_string (json_node_get_string (node));
  if (json_node_get_value_type (node) == G_TYPE_BOOLEAN)
    return g_strdup (json_node_get_boolean (node) ? "true" : "false");
  return bf_number_to_text (json_node_get_double (node));
}

void
bf_reader_expected (BfReader *reader, const char *path, const char *expected, JsonNode *node)
{
  g_autofree char *found = NULL;

  if (reader->error != NULL)
    return;
  if (node == NULL)
    {
      /* Translators: the path of a member of the file, and what should stand there. */
      g_set_error (&reader->error, BF_PART_ERROR, BF_PART_ERROR_MEMBER,
                   _ ("%s: missing; expected %s"), path, expected);
      return;
    }
  found = describe (node);
  /* Translators: the path of a member of the file, what should stand there, and what does. */
  g_set_error (&reader->error, BF_PART_ERROR, BF_PART_ERROR_MEMBER, _ ("%s: expected %s, found %s"),
               path, expected, found);
}

/* The member, or NULL where it is left out or nothing more is to be read. */
static JsonNode *
member (BfReader *reader, const BfPlace *place, const char *name)
{
  return reader->error == NULL ? json_object_get_member (place->object, name) : NULL;
}

gboolean
bf_reader_require (BfReader *reader, const BfPlace *place, const char *name, const char *expected)
{
  if (!json_object_has_member (place->object, name))
    bf_reader_expected (reader, bf_reader_path (reader, place->path, name), expected, NULL);
  return reader->error == NULL;
}

static gboolean
holds_number (JsonNode *node)
{
  GType type;

  if (!JSON_NODE_HOLDS_VALUE (node))
    return FALSE;
  type = json_node_get_value_type (node);
  return type == G_TYPE_INT64 || type == G_TYPE_DOUBLE;
}

static char *
describe_range (const BfNumberRule *rule)
{
  g_autofree char *least = bf_number_to_text (rule->least);
  g_autofree char *most = bf_number_to_text (rule->most);

  if (rule->above)
    /* Translators: "a length in mm above 0 and at most 100000". */
    return g_strdup_printf (_ ("%s above %s and at most %s"), _ (rule->what), least, most);
  /* Translators: "an angle in degrees from 1 to 180". */
  return g_strdup_printf (_ ("%s from %s to %s"), _ (rule->what), least, most);
}

double
bf_read_number_node (BfReader *reader, JsonNode *node, const char *path, const BfNumberRule *rule)
{
  g_autofree char *range = NULL;
  double value;

  if (!holds_number (node))
    {
      bf_reader_expected (reader, path, _ (rule->what), node);
      return NAN;
    }
  value = json_node_get_double (node);
  if (value > rule->least && value <= rule->most)
    return value;
  if (!rule->above && value >= rule->least && value <= rule->most)
    return value;
  range = describe_range (rule);
  bf_reader_expected (reader, path, range, node);
  return NAN;
}

double
bf_read_number (BfReader *reader,
                const BfPlace *place,
                const char *name,
                const BfNumberRule *rule,
                double otherwise)
{
  JsonNode *node = member (reader, place, name);

  if (node == NULL)
    return otherwise;
  return bf_read_number_node (reader, node, bf_reader_path (reader, place->path, name), rule);
}

double
bf_read_whole (BfReader *reader,
               const BfPlace *place,
               const char *name,
               const BfNumberRule *rule,
               double otherwise)
{
  double value = bf_read_number (reader, place, name, rule, otherwise);

  if (value - floor (value) > 0.0)
    bf_reader_expected (reader, bf_reader_path (reader, place->path, name), _ ("a whole number"),
                        json_object_get_member (place->object, name));
  return value;
}

gboolean
bf_read_flag (BfReader *reader, const BfPlace *place, const char *name)
{
  JsonNode *node = member (reader, place, name);

  if (node == NULL)
    return FALSE;
  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_BOOLEAN)
    return json_node_get_boolean (node);
  bf_reader_expected (reader, bf_reader_path (reader, place->path, name), _ ("true or false"),
                      node);
  return FALSE;
}

static guint
read_index_node (BfReader *reader, JsonNode *node, const char *path)
{
  double value = node != NULL && holds_number (node) ? json_node_get_double (node) : -1.0;

  if (value >= 0.0 && value <= G_MAXINT && value - floor (value) <= 0.0)
    return (guint)value;
  if (reader->error == NULL)
    bf_reader_expected (reader, path, _ ("a whole number, 0 or more"), node);
  return 0;
}

guint
bf_read_index (BfReader *reader, const BfPlace *place, const char *name)
{
  return read_index_node (reader, member (reader, place, name),
                          bf_reader_path (reader, place->path, name));
}

int
bf_read_word (
    BfReader *reader, const BfPlace *place, const char *name, const BfNames *names, int otherwise)
{
  JsonNode *node = member (reader, place, name);
  g_autofree char *list = NULL;
  g_autofree char *expected = NULL;
  int value = -1;

  if (node == NULL)
    return otherwise;
  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_STRING)
    value = bf_names_find (names, json_node_get_string (node));
  if (value >= 0)
    return value;
  list = bf_names_list (names);
  /* Translators: the words that may stand at a place of a file, "mm, in". */
  expected = g_strdup_printf (_ ("one of %s"), list);
  bf_reader_expected (reader, bf_reader_path (reader, place->path, name), expected, node);
  return otherwise;
}

char *
bf_read_string (BfReader *reader, const BfPlace *place, const char *name, const char *otherwise)
{
  JsonNode *node = member (reader, place, name);

  if (node == NULL)
    return g_strdup (otherwise);
  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_STRING)
    return g_strdup (json_node_get_string (node));
  bf_reader_expected (reader, bf_reader_path (reader, place->path, name), _ ("a text"), node);
  return g_strdup (otherwise);
}

gboolean
bf_read_object (BfReader *reader, const BfPlace *place, const char *name, BfPlace *child)
{
  JsonNode *node = member (reader, place, name);

  if (node == NULL)
    return FALSE;
  if (!JSON_NODE_HOLDS_OBJECT (node))
    {
      bf_reader_expected (reader, bf_reader_path (reader, place->path, name), _ ("an object"),
                          node);
      return FALSE;
    }
  *child = (BfPlace){ json_node_get_object (node), bf_reader_path (reader, place->path, name) };
  return TRUE;
}

JsonArray *
bf_read_list (BfReader *reader, const BfPlace *place, const char *name)
{
  JsonNode *node = member (reader, place, name);

  if (node == NULL)
    return NULL;
  if (!JSON_NODE_HOLDS_ARRAY (node))
    {
      bf_reader_expected (reader, bf_reader_path (reader, place->path, name), _ ("a list"), node);
      return NULL;
    }
  if (json_array_get_length (json_node_get_array (node)) > BF_PART_FILE_MAX_ITEMS)
    {
      /* Translators: the path of a list in a file, and how long it may be and is. */
      g_set_error (&reader->error, BF_PART_ERROR, BF_PART_ERROR_TOO_LARGE,
                   _ ("%s: expected at most %d items, found %u"),
                   bf_reader_path (reader, place->path, name), BF_PART_FILE_MAX_ITEMS,
                   json_array_get_length (json_node_get_array (node)));
      return NULL;
    }
  return json_node_get_array (node);
}

gboolean
bf_read_item (BfReader *reader, JsonArray *list, guint i, const char *path, BfPlace *child)
{
  JsonNode *node = json_array_get_element (list, i);

  if (reader->error != NULL)
    return FALSE;
  *child = (BfPlace){ NULL, bf_reader_item_path (reader, path, i) };
  if (JSON_NODE_HOLDS_OBJECT (node))
    child->object = json_node_get_object (node);
  else
    bf_reader_expected (reader, child->path, _ ("an object"), node);
  return child->object != NULL;
}

BfVec2
bf_read_point_node (BfReader *reader, JsonNode *node, const char *path)
{
  JsonArray *pair = JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  BfVec2 p = { NAN, NAN };

  if (pair == NULL || json_array_get_length (pair) != 2)
    {
      bf_reader_expected (reader, path, _ ("a point [x, y] in mm"), node);
      return p;
    }
  p.x = bf_read_number_node (reader, json_array_get_element (pair, 0),
                             bf_reader_item_path (reader, path, 0), &bf_rule_coordinate);
  p.y = bf_read_number_node (reader, json_array_get_element (pair, 1),
                             bf_reader_item_path (reader, path, 1), &bf_rule_coordinate);
  return p;
}

void
bf_read_points (BfReader *reader, const BfPlace *place, const char *name, GArray *points)
{
  JsonArray *list = bf_read_list (reader, place, name);
  const char *path = bf_reader_path (reader, place->path, name);

  if (list == NULL)
    return;
  if (json_array_get_length (list) < 3)
    /* Translators: the path of a list in a file, and how many points it has. */
    g_set_error (&reader->error, BF_PART_ERROR, BF_PART_ERROR_MEMBER,
                 _ ("%s: expected at least 3 points, found %u"), path,
                 json_array_get_length (list));
  for (guint i = 0; i < json_array_get_length (list) && reader->error == NULL; i++)
    {
      BfVec2 p = bf_read_point_node (reader, json_array_get_element (list, i),
                                     bf_reader_item_path (reader, path, i));
      g_array_append_val (points, p);
    }
}

GArray *
bf_read_lengths (BfReader *reader, const BfPlace *place, const char *name)
{
  JsonArray *list = bf_read_list (reader, place, name);
  const char *path = bf_reader_path (reader, place->path, name);
  GArray *lengths = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0; list != NULL && i < json_array_get_length (list); i++)
    {
      double length_mm =
          bf_read_number_node (reader, json_array_get_element (list, i),
                               bf_reader_item_path (reader, path, i), &bf_rule_length);

      g_array_append_val (lengths, length_mm);
    }
  g_array_sort (lengths, bf_compare_doubles);
  return lengths;
}

static gboolean
has_index (const GArray *indices, guint index)
{
  for (guint i = 0; i < indices->len; i++)
    if (g_array_index (indices, guint, i) == index)
      return TRUE;
  return FALSE;
}

void
bf_read_indices (BfReader *reader, const BfPlace *place, const char *name, GArray *indices)
{
  JsonArray *list = bf_read_list (reader, place, name);
  const char *path = bf_reader_path (reader, place->path, name);

  for (guint i = 0; list != NULL && i < json_array_get_length (list); i++)
    {
      guint index = read_index_node (reader, json_array_get_element (list, i),
                                     bf_reader_item_path (reader, path, i));

      if (!has_index (indices, index))
        g_array_append_val (indices, index);
    }
}
