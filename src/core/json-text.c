/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/json-text.h"

#include <math.h>
#include <string.h>

#define LINE_WIDTH 96
#define INDENT 2

static void append_node (GString *out, JsonNode *node, guint indent);

static gboolean
reads_back (const char *text, double value)
{
  double read = g_ascii_strtod (text, NULL);

  return memcmp (&read, &value, sizeof read) == 0;
}

char *
bf_number_to_text (double value)
{
  char text[G_ASCII_DTOSTR_BUF_SIZE];

  g_return_val_if_fail (isfinite (value), g_strdup ("0"));

  value += 0.0; /* −0 is 0 to a person */
  if (fabs (value) < 1e15 && fabs (value - round (value)) <= 0.0)
    return g_strdup (g_ascii_formatd (text, sizeof text, "%.0f", value));
  g_ascii_formatd (text, sizeof text, "%.15g", value);
  if (!reads_back (text, value))
    g_ascii_formatd (text, sizeof text, "%.16g", value);
  if (!reads_back (text, value))
    g_ascii_formatd (text, sizeof text, "%.17g", value);
  return g_strdup (text);
}

static void
append_string (GString *out, const char *string)
{
  static const char letters[] = "\"\\\b\f\n\r\t", escapes[] = "\"\\bfnrt";

  g_string_append_c (out, '"');
  for (const char *p = string; *p != '\0'; p++)
    {
      const char *letter = strchr (letters, *p);

      if (letter != NULL)
        g_string_append_printf (out, "\\%c", escapes[letter - letters]);
      else if ((guchar)*p < 0x20)
        g_string_append_printf (out, "\\u%04x", (guint)(guchar)*p);
      else
        g_string_append_c (out, *p);
    }
  g_string_append_c (out, '"');
}

static void
append_value (GString *out, JsonNode *node)
{
  GType type = json_node_get_value_type (node);
  g_autofree char *number = NULL;

  if (json_node_is_null (node))
    g_string_append (out, "null");
  else if (type == G_TYPE_STRING)
    append_string (out, json_node_get_string (node));
  else if (type == G_TYPE_BOOLEAN)
    g_string_append (out, json_node_get_boolean (node) ? "true" : "false");
  else if (type == G_TYPE_INT64)
    g_string_append_printf (out, "%" G_GINT64_FORMAT, json_node_get_int (node));
  else
    {
      number = bf_number_to_text (json_node_get_double (node));
      g_string_append (out, number);
    }
}

/* Between two items: `, ` on one line, else a new line (indent > 0). */
static void
append_break (GString *out, gboolean first, guint indent)
{
  if (!first)
    g_string_append_c (out, ',');
  if (indent > 0)
    g_string_append_printf (out, "\n%*s", (int)indent, "");
  else if (!first)
    g_string_append_c (out, ' ');
}

static void
append_object (GString *out, JsonObject *object, guint indent)
{
  JsonObjectIter iter;
  const char *name;
  JsonNode *node;
  gboolean first = TRUE;

  json_object_iter_init_ordered (&iter, object);
  while (json_object_iter_next_ordered (&iter, &name, &node))
    {
      append_break (out, first, indent);
      append_string (out, name);
      g_string_append (out, ": ");
      append_node (out, node, indent);
      first = FALSE;
    }
}

static void
append_array (GString *out, JsonArray *array, guint indent)
{
  for (guint i = 0; i < json_array_get_length (array); i++)
    {
      append_break (out, i == 0, indent);
      append_node (out, json_array_get_element (array, i), indent);
    }
}

/* indent is that of the items; 0 for all on one line. */
static void
append_items (GString *out, JsonNode *node, guint indent)
{
  gboolean object = JSON_NODE_HOLDS_OBJECT (node);

  g_string_append_c (out, object ? '{' : '[');
  if (object)
    append_object (out, json_node_get_object (node), indent);
  else
    append_array (out, json_node_get_array (node), indent);
  if (indent > 0)
    g_string_append_printf (out, "\n%*s", (int)(indent - INDENT), "");
  g_string_append_c (out, object ? '}' : ']');
}

static gboolean
line_is_full (const GString *out)
{
  gsize length = 0;

  while (length < out->len && out->str[out->len - 1 - length] != '\n')
    if (++length > LINE_WIDTH)
      return TRUE;
  return FALSE;
}

/* A node inside a list of that indent: on the line where it fits, else on lines of its own. */
static void
append_node (GString *out, JsonNode *node, guint indent)
{
  gsize before = out->len;

  if (!JSON_NODE_HOLDS_OBJECT (node) && !JSON_NODE_HOLDS_ARRAY (node))
    {
      append_value (out, node);
      return;
    }
  append_items (out, node, 0);
  if (indent == 0 || !line_is_full (out))
    return;
  g_string_truncate (out, before);
  append_items (out, node, indent + INDENT);
}

char *
bf_json_to_text (JsonNode *root)
{
  GString *out = g_string_new (NULL);

  g_return_val_if_fail (root != NULL, NULL);

  if (JSON_NODE_HOLDS_OBJECT (root) || JSON_NODE_HOLDS_ARRAY (root))
    append_items (out, root, INDENT);
  else
    append_value (out, root);
  g_string_append_c (out, '\n');
  return g_string_free (out, FALSE);
}

void
bf_flatten_controls (char *text)
{
  g_return_if_fail (text != NULL);

  for (char *p = text; *p != '\0'; p++)
    if (g_ascii_iscntrl (*p))
      *p = ' ';
}
