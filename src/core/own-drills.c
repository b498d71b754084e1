/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/own-drills.h"

#include <glib/gi18n.h>

#include "core/drills.h"
#include "core/own-folder.h"
#include "core/part-file.h"
#include "core/part-write.h"

const BfOwnKind bf_own_drill_kind = { "drills", "benchfold-drills" };

static GArray *boxes;     /* BfDrillBox */
static GPtrArray *faults; /* ends with NULL */

static void
box_clear (gpointer data)
{
  g_array_unref (((BfDrillBox *)data)->sizes_mm);
}

/* A list that does not go up is one that a hand has mixed up: it is put in order. */
static GArray *
read_sizes (BfReader *reader, const BfPlace *root)
{
  GArray *sizes = bf_read_lengths (reader, root, "sizes");

  if (sizes->len == 0)
    bf_reader_expected (reader, "sizes", _ ("a list of drills in mm"), NULL);
  return sizes;
}

static void
read_box (BfReader *reader, const BfPlace *root, const char *id, gpointer unused)
{
  g_autofree char *name = bf_read_string (reader, root, "name", id);
  g_autoptr (GArray) sizes = read_sizes (reader, root);
  BfDrillBox box = { id, g_intern_string (name), NULL };

  (void)unused;
  if (reader->error != NULL)
    return;
  box.sizes_mm = g_steal_pointer (&sizes);
  g_array_append_val (boxes, box);
}

void
bf_own_drills_read_again (void)
{
  g_clear_pointer (&boxes, g_array_unref);
  g_clear_pointer (&faults, g_ptr_array_unref);
  boxes = g_array_new (FALSE, FALSE, sizeof (BfDrillBox));
  g_array_set_clear_func (boxes, box_clear);
  faults = g_ptr_array_new_with_free_func (g_free);
  bf_own_read (&bf_own_drill_kind, read_box, NULL, faults);
  g_ptr_array_add (faults, NULL);
}

const BfDrillBox *
bf_own_drills (guint *n_boxes)
{
  g_return_val_if_fail (n_boxes != NULL, NULL);

  if (boxes == NULL)
    bf_own_drills_read_again ();
  *n_boxes = boxes->len;
  return (const BfDrillBox *)(gconstpointer)boxes->data;
}

const BfDrillBox *
bf_own_drills_find (const char *id)
{
  guint n;
  const BfDrillBox *all = bf_own_drills (&n);

  g_return_val_if_fail (id != NULL, NULL);

  for (guint i = 0; i < n; i++)
    if (g_str_equal (all[i].id, id))
      return &all[i];
  return NULL;
}

const char *const *
bf_own_drill_faults (void)
{
  if (faults == NULL)
    bf_own_drills_read_again ();
  return (const char *const *)(gconstpointer)faults->pdata;
}

gboolean
bf_own_drills_keep (const char *id, const char *name, const GArray *sizes_mm, GError **error)
{
  static const char *const known[] = { "format", "version", "name", "sizes", NULL };
  g_autoptr (JsonObject) object = json_object_new (), source = NULL;
  g_autofree char *new_id = NULL;
  JsonArray *list = json_array_new ();

  g_return_val_if_fail (name != NULL && sizes_mm != NULL && sizes_mm->len > 0, FALSE);

  new_id = id != NULL ? g_strdup (id) : bf_own_new_id (&bf_own_drill_kind, name, NULL);
  for (guint i = 0; i < sizes_mm->len; i++)
    json_array_add_double_element (list, g_array_index (sizes_mm, double, i));
  bf_write_word (object, "name", name);
  json_object_set_array_member (object, "sizes", list);
  source = bf_own_source (&bf_own_drill_kind, new_id);
  bf_keep_unknown (object, source, known);
  if (!bf_own_write (&bf_own_drill_kind, new_id, object, error))
    return FALSE;
  bf_own_drills_read_again ();
  return TRUE;
}
