/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <json-glib/json-glib.h>
#include <string.h>

#include "core/materials.h"

/* The figures a second time: a slip of the keyboard in the table would show up here. Sources stand
 * in the table. */
static const BfMaterial expected[] = {
  { "mild-steel", "mild steel", 7850, 210, 340, 210, 0.5, NULL },
  { "galvanized-steel", "galvanized steel", 7850, 270, 380, 210, 1, NULL },
  { "stainless-304", "stainless steel 304", 7900, 285, 640, 200, 0.5, NULL },
  { "aluminium-3003-h14", "aluminium 3003-H14", 2730, 145, 152, 68.9, 1, NULL },
  { "aluminium-5052-h32", "aluminium 5052-H32", 2680, 193, 228, 70.3, 1, NULL },
  { "aluminium-6061-t6", "aluminium 6061-T6", 2700, 276, 310, 68.9, 1.5, NULL },
  { "copper-half-hard", "half-hard copper", 8900, 176, 263, 117, 0.5, NULL },
  { "brass-half-hard", "half-hard brass", 8530, 350, 430, 110, 0.5, NULL },
  { "zinc", "zinc", 7200, 100, 150, 80, 1, NULL },
};

static void
test_table (void)
{
  guint n;
  const BfMaterial *materials = bf_materials (&n);

  g_assert_cmpuint (n, ==, G_N_ELEMENTS (expected));
  for (guint i = 0; i < n; i++)
    {
      g_assert_cmpstr (materials[i].id, ==, expected[i].id);
      g_assert_cmpstr (materials[i].name, ==, expected[i].name);
      g_assert_cmpfloat_with_epsilon (materials[i].density_kg_m3, expected[i].density_kg_m3, 1e-9);
      g_assert_cmpfloat_with_epsilon (materials[i].yield_mpa, expected[i].yield_mpa, 1e-9);
      g_assert_cmpfloat_with_epsilon (materials[i].tensile_mpa, expected[i].tensile_mpa, 1e-9);
      g_assert_cmpfloat_with_epsilon (materials[i].elastic_gpa, expected[i].elastic_gpa, 1e-9);
      g_assert_cmpfloat_with_epsilon (materials[i].least_radius, expected[i].least_radius, 1e-9);
    }
}

static void
test_find (void)
{
  guint n;
  const BfMaterial *materials = bf_materials (&n);

  for (guint i = 0; i < n; i++)
    g_assert_true (bf_material_find (materials[i].id) == &materials[i]);
  g_assert_null (bf_material_find ("unobtainium"));
  g_assert_null (bf_material_find (""));
  g_assert_null (bf_material_find (NULL));
  g_assert_true (bf_materials (NULL) == materials);
}

/* No metal yields above its strength, and none is lighter than magnesium or heavier than lead. */
static void
test_sense (void)
{
  guint n;
  const BfMaterial *materials = bf_materials (&n);

  for (guint i = 0; i < n; i++)
    {
      g_assert_cmpfloat (materials[i].yield_mpa, <, materials[i].tensile_mpa);
      g_assert_cmpfloat (materials[i].density_kg_m3, >, 1700);
      g_assert_cmpfloat (materials[i].density_kg_m3, <, 11400);
      g_assert_cmpfloat (materials[i].elastic_gpa, >, 40);
      g_assert_cmpfloat (materials[i].elastic_gpa, <, 250);
    }
}

/* In the table that stands in data/, every figure says where it comes from. */
static void
test_sources (void)
{
  static const char *const figures[] = { "density", "yield", "tensile", "elastic", "least_radius" };
  g_autofree char *path =
      g_build_filename (g_getenv ("BENCHFOLD_DATA"), "materials", "materials.json", NULL);
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (GError) error = NULL;
  JsonArray *list;

  g_assert_true (json_parser_load_from_file (parser, path, &error));
  g_assert_no_error (error);
  list = json_object_get_array_member (json_node_get_object (json_parser_get_root (parser)),
                                       "materials");
  for (guint i = 0; i < json_array_get_length (list); i++)
    for (guint k = 0; k < G_N_ELEMENTS (figures); k++)
      {
        JsonObject *entry = json_array_get_object_element (list, i);
        JsonObject *figure = json_object_get_object_member (entry, figures[k]);

        g_assert_cmpfloat (json_object_get_double_member (figure, "value"), >, 0);
        g_assert_cmpuint (strlen (json_object_get_string_member (figure, "source")), >, 5);
      }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/materials/table", test_table);
  g_test_add_func ("/materials/find", test_find);
  g_test_add_func ("/materials/sense", test_sense);
  g_test_add_func ("/materials/sources", test_sources);
  return g_test_run ();
}
