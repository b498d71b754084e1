/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/materials.h"

#include <glib/gi18n.h>
#include <json-glib/json-glib.h>

#include "core-resources.h"
#include "core/own-metals.h"

#define MATERIALS_PATH "/org/benchfold/Benchfold/core/materials.json"

/* Names stand here and not in the table, so that the translators' tools find them. */
static const struct
{
  const char *id, *name;
} names[] = {
  { "mild-steel", N_ ("mild steel") },
  { "galvanized-steel", N_ ("galvanized steel") },
  { "stainless-304", N_ ("stainless steel 304") },
  { "aluminium-3003-h14", N_ ("aluminium 3003-H14") },
  { "aluminium-5052-h32", N_ ("aluminium 5052-H32") },
  { "aluminium-6061-t6", N_ ("aluminium 6061-T6") },
  { "copper-half-hard", N_ ("half-hard copper") },
  { "brass-half-hard", N_ ("half-hard brass") },
  { "zinc", N_ ("zinc") },
};

static const char *
name_of (const char *id)
{
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    if (g_str_equal (names[i].id, id))
      return _ (names[i].name);
  return id;
}

static double
figure (JsonObject *entry, const char *member)
{
  JsonObject *object = json_object_get_object_member (entry, member);

  g_assert (object != NULL);
  return json_object_get_double_member (object, "value");
}

static void
add_material (JsonArray *list, guint i, JsonNode *node, gpointer materials)
{
  JsonObject *entry = json_node_get_object (node);
  const char *id = g_intern_string (json_object_get_string_member (entry, "id"));
  BfMaterial material = {
    .id = id,
    .name = name_of (id),
    .density_kg_m3 = figure (entry, "density"),
    .yield_mpa = figure (entry, "yield"),
    .tensile_mpa = figure (entry, "tensile"),
    .elastic_gpa = figure (entry, "elastic"),
    .least_radius = figure (entry, "least_radius"),
  };

  (void)list;
  (void)i;
  g_array_append_val ((GArray *)materials, material);
}

/* The table is compiled in: a fault in it is a programmer's. The resource is asked for by its
 * function, because a linker drops a static library's constructor that nobody calls. */
static gpointer
read_materials (gpointer unused)
{
  GArray *materials = g_array_new (FALSE, TRUE, sizeof (BfMaterial));
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = g_resource_lookup_data (bf_core_get_resource (), MATERIALS_PATH,
                                                     G_RESOURCE_LOOKUP_FLAGS_NONE, &error);
  gsize size;
  const char *text;
  JsonObject *root;

  (void)unused;
  g_assert_no_error (error);
  text = g_bytes_get_data (bytes, &size);
  if (!json_parser_load_from_data (parser, text, (gssize)size, &error))
    g_error ("%s: %s", MATERIALS_PATH, error->message);
  root = json_node_get_object (json_parser_get_root (parser));
  json_array_foreach_element (json_object_get_array_member (root, "materials"), add_material,
                              materials);
  g_assert (materials->len > 0);
  return materials;
}

const BfMaterial *
bf_materials (guint *n_materials)
{
  static GOnce once = G_ONCE_INIT;
  GArray *materials = g_once (&once, read_materials, NULL);

  if (n_materials != NULL)
    *n_materials = materials->len;
  return (const BfMaterial *)(gconstpointer)materials->data;
}

const BfMaterial *
bf_material_in_table (const char *id)
{
  guint n_materials;
  const BfMaterial *materials = bf_materials (&n_materials);

  for (guint i = 0; id != NULL && i < n_materials; i++)
    if (g_str_equal (materials[i].id, id))
      return &materials[i];
  return NULL;
}

/* The disk is looked at only for a metal that the table does not have. */
const BfMaterial *
bf_material_find (const char *id)
{
  const BfMaterial *found = bf_material_in_table (id);
  const BfMaterial *const *own;
  guint n_own;

  if (found != NULL || id == NULL)
    return found;
  own = bf_own_metals (&n_own);
  for (guint i = 0; i < n_own; i++)
    if (g_str_equal (own[i]->id, id))
      return own[i];
  return NULL;
}
