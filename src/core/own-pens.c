/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/own-pens.h"

#include <string.h>

#include <glib/gi18n.h>

#include "core/own-folder.h"
#include "core/part-file.h"
#include "core/part-write.h"

#define ID "pens"

static const BfOwnKind kind = { ".", "benchfold-pens" };

/* Thinner is not seen; wider can't be followed to 0.2 mm along either edge. */
static const BfNumberRule width_rule = { N_ ("a width from 0.05 to 1 mm"), 0.05, 1.0, FALSE };

static const char *const names[BF_N_PENS] = {
  [BF_PEN_CUT] = "cut",     [BF_PEN_BEND_UP] = "bend-up", [BF_PEN_BEND_DOWN] = "bend-down",
  [BF_PEN_SLOT] = "slot",   [BF_PEN_SCORE] = "score",     [BF_PEN_BAR_LINE] = "bar-line",
  [BF_PEN_DRILL] = "drill",
};

static const BfPenSet defaults = { {
    [BF_PEN_CUT] = { 0x000000, 0.35 },
    [BF_PEN_BEND_UP] = { 0x009E73, 0.35 },
    [BF_PEN_BEND_DOWN] = { 0xCC79A7, 0.35 },
    [BF_PEN_SLOT] = { 0x000000, 0.35 },
    [BF_PEN_SCORE] = { 0x000000, 0.18 },
    [BF_PEN_BAR_LINE] = { 0x000000, 0.18 },
    [BF_PEN_DRILL] = { 0x000000, 0.18 },
} };

static struct
{
  gboolean is_read;
  BfPenSet pens;
  char *fault;
} own;

const char *
bf_pen_kind_name (BfPenKind pen)
{
  g_return_val_if_fail (pen < BF_N_PENS, NULL);

  return names[pen];
}

const BfPenSet *
bf_pens_default (void)
{
  return &defaults;
}

/* "#009E73". FALSE where it is not six hex digits after a "#". */
static gboolean
parse_colour (const char *text, guint32 *rgb)
{
  guint64 value;

  if (text[0] != '#' || strlen (text) != 7 ||
      !g_ascii_string_to_unsigned (text + 1, 16, 0, 0xFFFFFF, &value, NULL))
    return FALSE;
  *rgb = (guint32)value;
  return TRUE;
}

static void
read_pen (BfReader *reader, const BfPlace *place, BfOwnPen *pen)
{
  g_autofree char *colour = bf_read_string (reader, place, "colour", NULL);

  pen->width_mm = bf_read_number (reader, place, "width", &width_rule, pen->width_mm);
  if (colour != NULL && !parse_colour (colour, &pen->rgb))
    bf_reader_expected (reader, bf_reader_path (reader, place->path, "colour"),
                        _ ("a colour as \"#009E73\""),
                        json_object_get_member (place->object, "colour"));
}

static void
read_pens (BfReader *reader, const BfPlace *root, const char *id, gpointer data)
{
  BfPenSet *pens = data;

  (void)id;
  for (guint i = 0; i < BF_N_PENS; i++)
    {
      BfPlace place;
      if (bf_read_object (reader, root, names[i], &place))
        read_pen (reader, &place, &pens->pens[i]);
    }
}

static void
read_own (void)
{
  g_autoptr (GPtrArray) faults = g_ptr_array_new_with_free_func (g_free);

  own.is_read = TRUE;
  own.pens = defaults;
  bf_own_read_one (&kind, ID, read_pens, &own.pens, faults);
  if (faults->len == 0)
    return;
  own.pens = defaults;
  own.fault = g_strdup (g_ptr_array_index (faults, 0));
}

const BfPenSet *
bf_own_pens (void)
{
  if (!own.is_read)
    read_own ();
  return &own.pens;
}

char *
bf_pens_in_words (const BfPenSet *pens)
{
  GString *words = g_string_new (NULL);

  g_return_val_if_fail (pens != NULL, g_string_free (words, FALSE));

  for (guint i = 0; i < BF_N_PENS; i++)
    g_string_append_printf (words, "%s%s #%06X %g", i > 0 ? ", " : "", names[i],
                            pens->pens[i].rgb & 0xFFFFFF, pens->pens[i].width_mm);
  return g_string_free (words, FALSE);
}

const char *
bf_own_pens_fault (void)
{
  (void)bf_own_pens ();
  return own.fault;
}

void
bf_own_pens_read_again (void)
{
  own.is_read = FALSE;
  g_clear_pointer (&own.fault, g_free);
}

/* source: the pen as it was read, or NULL. */
static JsonObject *
write_pen (const BfOwnPen *pen, JsonObject *source)
{
  static const char *const known[] = { "colour", "width", NULL };
  JsonObject *object = json_object_new ();
  g_autofree char *colour = g_strdup_printf ("#%06X", pen->rgb & 0xFFFFFF);

  json_object_set_string_member (object, "colour", colour);
  json_object_set_double_member (object, "width", pen->width_mm);
  bf_keep_unknown (object, source, known);
  return object;
}

gboolean
bf_own_pens_keep (const BfPenSet *pens, GError **error)
{
  g_autoptr (JsonObject) object = json_object_new (), source = NULL;
  const char *known[BF_N_PENS + 3] = { "format", "version", NULL };

  g_return_val_if_fail (pens != NULL, FALSE);

  source = bf_own_source (&kind, ID);
  for (guint i = 0; i < BF_N_PENS; i++)
    {
      known[i + 2] = names[i];
      json_object_set_object_member (
          object, names[i], write_pen (&pens->pens[i], bf_source_object (source, names[i])));
    }
  bf_keep_unknown (object, source, known);
  if (!bf_own_write (&kind, ID, object, error))
    return FALSE;
  bf_own_pens_read_again ();
  return TRUE;
}
