/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/own-metals.h"

#include <glib/gi18n.h>

#include "core/own-folder.h"
#include "core/part-file.h"
#include "core/part-write.h"

const BfOwnKind bf_own_metal_kind = { "metals", "benchfold-metal" };

/* Wide enough for any solid, narrow enough that a slip of three digits is caught: lithium 534,
 * osmium 22590 kg/m³; diamond 1220 GPa. */
static const BfNumberRule rule_density = { N_ ("a density in kg/m³"), 100.0, 30000.0, FALSE };
static const BfNumberRule rule_strength = { N_ ("a strength in MPa"), 1.0, 10000.0, FALSE };
static const BfNumberRule rule_elastic = { N_ ("a modulus in GPa"), 0.1, 2000.0, FALSE };
static const BfNumberRule rule_least_radius = { N_ ("a multiple of the thickness"), 0.0, 100.0,
                                                FALSE };

/* Read but for the first time under the lock. What is replaced stays in `all`: a fold may still
 * point at it. */
static GMutex lock;
static GPtrArray *all, *now, *faults;

static const char *
intern_and_free (char *text)
{
  const char *interned = g_intern_string (text);

  g_free (text);
  return interned;
}

static double
required (BfReader *reader, const BfPlace *root, const char *name, const BfNumberRule *rule)
{
  if (!bf_reader_require (reader, root, name, _ (rule->what)))
    return NAN;
  return bf_read_number (reader, root, name, rule, NAN);
}

static void
check_name (BfReader *reader, const BfMaterial *metal)
{
  if (reader->error == NULL && metal->name[0] == '\0')
    bf_reader_expected (reader, "name", _ ("a name"), NULL);
}

static void
read_metal (BfReader *reader, const BfPlace *root, const char *id, gpointer unused)
{
  BfMaterial metal = { .id = id };
  char *like = bf_read_string (reader, root, "like", NULL);

  (void)unused;
  metal.like = like != NULL ? intern_and_free (like) : NULL;
  metal.name = intern_and_free (bf_read_string (reader, root, "name", id));
  check_name (reader, &metal);
  metal.density_kg_m3 = required (reader, root, "density", &rule_density);
  metal.yield_mpa = required (reader, root, "yield", &rule_strength);
  metal.tensile_mpa = required (reader, root, "tensile", &rule_strength);
  metal.elastic_gpa = required (reader, root, "elastic", &rule_elastic);
  metal.least_radius = required (reader, root, "least_radius", &rule_least_radius);
  if (reader->error == NULL && bf_material_in_table (id) != NULL)
    g_set_error (&reader->error, BF_PART_ERROR, BF_PART_ERROR_MEMBER,
                 /* Translators: a word of the file format, "mild-steel". */
                 _ ("the metal “%s” is in the table already; give the file another name"), id);
  if (reader->error == NULL)
    g_ptr_array_add (now, g_memdup2 (&metal, sizeof metal));
}

static void
read_all (void)
{
  if (all == NULL)
    {
      all = g_ptr_array_new_with_free_func (g_free);
      now = g_ptr_array_new ();
    }
  for (guint i = 0; i < now->len; i++)
    g_ptr_array_add (all, g_ptr_array_index (now, i));
  g_ptr_array_set_size (now, 0);
  g_clear_pointer (&faults, g_ptr_array_unref);
  faults = g_ptr_array_new_with_free_func (g_free);
  bf_own_read (&bf_own_metal_kind, read_metal, NULL, faults);
  g_ptr_array_add (faults, NULL);
}

static void
read_once (void)
{
  g_mutex_lock (&lock);
  if (now == NULL)
    read_all ();
  g_mutex_unlock (&lock);
}

const BfMaterial *const *
bf_own_metals (guint *n_metals)
{
  g_return_val_if_fail (n_metals != NULL, NULL);

  read_once ();
  *n_metals = now->len;
  return (const BfMaterial *const *)(gconstpointer)now->pdata;
}

const char *const *
bf_own_metal_faults (void)
{
  read_once ();
  return (const char *const *)(gconstpointer)faults->pdata;
}

void
bf_own_metals_read_again (void)
{
  g_mutex_lock (&lock);
  read_all ();
  g_mutex_unlock (&lock);
}

static JsonObject *
object_of (const BfMaterial *metal, JsonObject *source)
{
  static const char *const known[] = { "format", "version", "name",    "like",         "density",
                                       "yield",  "tensile", "elastic", "least_radius", NULL };
  JsonObject *object = json_object_new ();

  bf_write_word (object, "name", metal->name);
  bf_write_word (object, "like", metal->like);
  bf_write_number (object, "density", metal->density_kg_m3);
  bf_write_number (object, "yield", metal->yield_mpa);
  bf_write_number (object, "tensile", metal->tensile_mpa);
  bf_write_number (object, "elastic", metal->elastic_gpa);
  bf_write_number (object, "least_radius", metal->least_radius);
  bf_keep_unknown (object, source, known);
  return object;
}

/* Ids that a new metal must not get, however its file might be called. */
static const char **
table_ids (void)
{
  guint n;
  const BfMaterial *table = bf_materials (&n);
  const char **ids = g_new0 (const char *, n + 1);

  for (guint i = 0; i < n; i++)
    ids[i] = table[i].id;
  return ids;
}

const BfMaterial *
bf_own_metal_keep (const char *id, const BfMaterial *metal, GError **error)
{
  g_autofree const char **taken = NULL;
  g_autofree char *new_id = NULL;
  g_autoptr (JsonObject) object = NULL, source = NULL;

  g_return_val_if_fail (metal != NULL && metal->name != NULL && metal->name[0] != '\0', NULL);

  taken = table_ids ();
  new_id = id != NULL ? g_strdup (id) : bf_own_new_id (&bf_own_metal_kind, metal->name, taken);
  source = bf_own_source (&bf_own_metal_kind, new_id);
  object = object_of (metal, source);
  if (!bf_own_write (&bf_own_metal_kind, new_id, object, error))
    return NULL;
  bf_own_metals_read_again ();
  return bf_material_find (new_id);
}
