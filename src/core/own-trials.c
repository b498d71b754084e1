/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/own-trials.h"

#include <glib/gi18n.h>

#include "core/json-text.h"
#include "core/own-folder.h"
#include "core/part-file.h"
#include "core/part-write.h"

const BfOwnKind bf_own_trial_kind = { "trial-bends", "benchfold-trial-bend" };

static GArray *trials;    /* BfTrialRecord */
static GPtrArray *faults; /* ends with NULL */

static void
trial_clear (gpointer data)
{
  g_array_unref (((BfTrialRecord *)data)->strips);
  g_clear_pointer (&((BfTrialRecord *)data)->sizes, g_array_unref);
}

/* ---- reading ------------------------------------------------------------------------------ */

static double
required (BfReader *reader, const BfPlace *place, const char *name, const BfNumberRule *rule)
{
  if (!bf_reader_require (reader, place, name, _ (rule->what)))
    return NAN;
  return bf_read_number (reader, place, name, rule, NAN);
}

static void
read_strip (BfReader *reader, const BfPlace *place, GArray *strips)
{
  BfTrialStrip strip = { .length_mm = required (reader, place, "length", &bf_rule_length) };
  JsonArray *legs = bf_read_list (reader, place, "legs");
  const char *path = bf_reader_path (reader, place->path, "legs");

  if (legs == NULL || json_array_get_length (legs) != 2)
    bf_reader_expected (reader, path, _ ("two lengths in mm"),
                        json_object_get_member (place->object, "legs"));
  for (guint i = 0; i < 2 && reader->error == NULL; i++)
    strip.legs_mm[i] = bf_read_number_node (reader, json_array_get_element (legs, i),
                                            bf_reader_item_path (reader, path, i), &bf_rule_length);
  strip.angle_deg = bf_read_number (reader, place, "angle", &bf_rule_bend, 90.0);
  g_array_append_val (strips, strip);
}

static const char *
read_interned (BfReader *reader, const BfPlace *root, const char *name)
{
  g_autofree char *text = NULL;

  if (!bf_reader_require (reader, root, name, _ ("a text")))
    return "";
  text = bf_read_string (reader, root, name, "");
  return g_intern_string (text);
}

static GArray *
read_strips (BfReader *reader, const BfPlace *root)
{
  JsonArray *list = bf_read_list (reader, root, "strips");
  GArray *strips = g_array_new (FALSE, TRUE, sizeof (BfTrialStrip));
  BfPlace place;

  for (guint i = 0; list != NULL && i < json_array_get_length (list); i++)
    if (bf_read_item (reader, list, i, "strips", &place))
      read_strip (reader, &place, strips);
  return strips;
}

static void
read_size (BfReader *reader, const BfPlace *place, GArray *sizes)
{
  BfTrialSize size = { required (reader, place, "asked", &bf_rule_length),
                       required (reader, place, "measured", &bf_rule_length) };

  g_array_append_val (sizes, size);
}

/* What a finished part measured; NULL where the file has no such. */
static GArray *
read_made (BfReader *reader, const BfPlace *root, const char **part)
{
  g_autoptr (GArray) sizes = NULL;
  JsonArray *list;
  BfPlace made, place;

  if (!bf_read_object (reader, root, "made", &made))
    return NULL;
  *part = read_interned (reader, &made, "part");
  list = bf_read_list (reader, &made, "sizes");
  sizes = g_array_new (FALSE, TRUE, sizeof (BfTrialSize));
  for (guint i = 0; list != NULL && i < json_array_get_length (list); i++)
    if (bf_read_item (reader, list, i, "made.sizes", &place))
      read_size (reader, &place, sizes);
  return sizes->len > 0 ? g_steal_pointer (&sizes) : NULL;
}

static void
read_trial (BfReader *reader, const BfPlace *root, const char *id, gpointer unused)
{
  BfTrialRecord trial = { .id = id };
  g_autoptr (GArray) strips = read_strips (reader, root);
  g_autoptr (GArray) sizes = read_made (reader, root, &trial.part);

  (void)unused;
  if (strips->len == 0 && sizes == NULL)
    bf_reader_expected (reader, "strips", _ ("the strips that were measured"), NULL);
  trial.material = read_interned (reader, root, "material");
  trial.date = read_interned (reader, root, "date");
  trial.thickness_mm = required (reader, root, "thickness", &bf_rule_length);
  trial.radius_mm = required (reader, root, "inside_radius", &bf_rule_not_negative);
  trial.way = (BfBendWay)bf_read_word (reader, root, "way", &bf_names_bend_way, BF_BEND_WAY_BAR);
  trial.measured_to_mm = required (reader, root, "measured_to", &bf_rule_not_negative);
  trial.k = required (reader, root, "k", &bf_rule_k);
  trial.k_error = required (reader, root, "k_error", &bf_rule_k);
  if (reader->error != NULL)
    return;
  trial.strips = g_steal_pointer (&strips);
  trial.sizes = g_steal_pointer (&sizes);
  g_array_append_val (trials, trial);
}

void
bf_own_trials_read_again (void)
{
  g_clear_pointer (&trials, g_array_unref);
  g_clear_pointer (&faults, g_ptr_array_unref);
  trials = g_array_new (FALSE, FALSE, sizeof (BfTrialRecord));
  g_array_set_clear_func (trials, trial_clear);
  faults = g_ptr_array_new_with_free_func (g_free);
  bf_own_read (&bf_own_trial_kind, read_trial, NULL, faults);
  g_ptr_array_add (faults, NULL);
}

const BfTrialRecord *
bf_own_trials (guint *n_trials)
{
  g_return_val_if_fail (n_trials != NULL, NULL);

  if (trials == NULL)
    bf_own_trials_read_again ();
  *n_trials = trials->len;
  return (const BfTrialRecord *)(gconstpointer)trials->data;
}

const BfTrialRecord *
bf_own_trial_find (const char *id)
{
  guint n;
  const BfTrialRecord *all = bf_own_trials (&n);

  for (guint i = 0; id != NULL && i < n; i++)
    if (g_str_equal (all[i].id, id))
      return &all[i];
  return NULL;
}

const char *const *
bf_own_trial_faults (void)
{
  if (faults == NULL)
    bf_own_trials_read_again ();
  return (const char *const *)(gconstpointer)faults->pdata;
}

/* ---- writing ------------------------------------------------------------------------------ */

/* The item as it was read, by its place in the list; NULL where the list is another one by now: an
 * item that came or went leaves nobody to say which is which. */
static JsonObject *
item_source (JsonObject *source, const char *name, guint n_items, guint i)
{
  JsonNode *node = source != NULL ? json_object_get_member (source, name) : NULL;
  JsonArray *list =
      node != NULL && JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;

  if (list == NULL || json_array_get_length (list) != n_items)
    return NULL;
  node = json_array_get_element (list, i);
  return JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
}

static JsonNode *
write_strip (const BfTrialStrip *strip, JsonObject *source)
{
  static const char *const known[] = { "length", "legs", "angle", NULL };
  g_autoptr (JsonObject) object = json_object_new ();
  JsonArray *legs = json_array_new ();
  JsonNode *node = json_node_new (JSON_NODE_OBJECT);

  json_array_add_double_element (legs, strip->legs_mm[0]);
  json_array_add_double_element (legs, strip->legs_mm[1]);
  bf_write_number (object, "length", strip->length_mm);
  json_object_set_array_member (object, "legs", legs);
  bf_write_number (object, "angle", strip->angle_deg);
  bf_keep_unknown (object, source, known);
  json_node_set_object (node, object);
  return node;
}

static void
write_strips (JsonObject *object, const GArray *strips, JsonObject *source)
{
  JsonArray *list = json_array_new ();

  for (guint i = 0; i < strips->len; i++)
    json_array_add_element (list, write_strip (&g_array_index (strips, BfTrialStrip, i),
                                               item_source (source, "strips", strips->len, i)));
  json_object_set_array_member (object, "strips", list);
}

static JsonObject *
write_size (const BfTrialSize *size, JsonObject *source)
{
  static const char *const known[] = { "asked", "measured", NULL };
  JsonObject *object = json_object_new ();

  bf_write_number (object, "asked", size->asked_mm);
  bf_write_number (object, "measured", size->measured_mm);
  bf_keep_unknown (object, source, known);
  return object;
}

static void
write_made (JsonObject *object, const BfTrialRecord *trial, JsonObject *source)
{
  static const char *const known[] = { "part", "sizes", NULL };
  JsonObject *made = json_object_new ();
  JsonArray *list = json_array_new ();

  for (guint i = 0; i < trial->sizes->len; i++)
    json_array_add_object_element (
        list, write_size (&g_array_index (trial->sizes, BfTrialSize, i),
                          item_source (source, "sizes", trial->sizes->len, i)));
  bf_write_word (made, "part", trial->part);
  json_object_set_array_member (made, "sizes", list);
  bf_keep_unknown (made, source, known);
  json_object_set_object_member (object, "made", made);
}

static JsonObject *
object_of (const BfTrialRecord *trial, JsonObject *source)
{
  static const char *const known[] = { "format",      "version", "material", "thickness",
                                       "way",         "date",    "strips",   "inside_radius",
                                       "measured_to", "made",    "k",        "k_error",
                                       NULL };
  JsonObject *object = json_object_new ();

  bf_write_word (object, "material", trial->material);
  bf_write_number (object, "thickness", trial->thickness_mm);
  bf_write_word (object, "way", bf_bend_way_name (trial->way));
  bf_write_number (object, "inside_radius", trial->radius_mm);
  bf_write_word (object, "date", trial->date);
  bf_write_number (object, "measured_to", trial->measured_to_mm);
  if (trial->strips->len > 0)
    write_strips (object, trial->strips, source);
  if (trial->sizes != NULL)
    write_made (object, trial, bf_source_object (source, "made"));
  bf_write_number (object, "k", trial->k);
  bf_write_number (object, "k_error", trial->k_error);
  bf_keep_unknown (object, source, known);
  return object;
}

/* "mild-steel 1.5 bar r1.5", which becomes an id. */
static char *
name_of (const BfTrialRecord *trial)
{
  g_autofree char *thickness = bf_number_to_text (trial->thickness_mm);
  g_autofree char *radius = bf_number_to_text (trial->radius_mm);

  return g_strdup_printf ("%s %s %s r%s", trial->material, thickness, bf_bend_way_name (trial->way),
                          radius);
}

const BfTrialRecord *
bf_own_trial_keep (const BfTrialRecord *trial, GError **error)
{
  g_autofree char *name = NULL, *id = NULL;
  g_autoptr (JsonObject) object = NULL, source = NULL;

  g_return_val_if_fail (trial != NULL && trial->strips != NULL, NULL);
  g_return_val_if_fail (trial->strips->len > 0 || trial->sizes != NULL, NULL);
  g_return_val_if_fail (trial->way != BF_BEND_WAY_UNSET, NULL);

  name = name_of (trial);
  id = trial->id != NULL ? g_strdup (trial->id) : bf_own_new_id (&bf_own_trial_kind, name, NULL);
  source = bf_own_source (&bf_own_trial_kind, id);
  object = object_of (trial, source);
  if (!bf_own_write (&bf_own_trial_kind, id, object, error))
    return NULL;
  bf_own_trials_read_again ();
  return bf_own_trial_find (id);
}
