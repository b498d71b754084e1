/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gstdio.h>
#include <string.h>
#include <unistd.h>

#include "core/gauges.h"
#include "core/own-metals.h"
#include "core/part-file.h"
#include "core/setup-sentence.h"
#include "own-files.h"

#define HEAD "{\"format\": \"benchfold-metal\", \"version\": 1, "
#define FIGURES                                                                                    \
  "\"density\": 7850, \"yield\": 300, \"tensile\": 450, \"elastic\": 210, \"least_radius\": 1"
#define SHED HEAD "\"name\": \"shed steel\", \"like\": \"mild-steel\", " FIGURES "}"

static guint
count (void)
{
  guint n;

  bf_own_metals_read_again ();
  (void)bf_own_metals (&n);
  return n;
}

static guint
count_faults (void)
{
  return g_strv_length ((char **)(gpointer)bf_own_metal_faults ());
}

static void
test_none (void)
{
  g_assert_cmpuint (count (), ==, 0);
  g_assert_cmpuint (count_faults (), ==, 0);
  g_assert_null (bf_material_find ("shed-steel"));
}

static void
test_read (void)
{
  const BfMaterial *metal;

  put_own ("metals", "shed-steel.json", SHED);
  put_own ("metals", ".shed-steel.json", "half");
  put_own ("metals", "notes.txt", "not a metal");
  g_assert_cmpuint (count (), ==, 1);
  g_assert_cmpuint (count_faults (), ==, 0);
  metal = bf_material_find ("shed-steel");
  g_assert_nonnull (metal);
  g_assert_cmpstr (metal->id, ==, "shed-steel");
  g_assert_cmpstr (metal->name, ==, "shed steel");
  g_assert_cmpfloat_with_epsilon (metal->yield_mpa, 300.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (metal->least_radius, 1.0, 1e-9);
  g_assert_null (bf_material_in_table ("shed-steel"));
}

/* Each of these is named in a message, none takes the good one along, and the table stays. */
static void
test_broken (void)
{
  static const struct
  {
    const char *name, *text, *says;
  } rows[] = {
    { "empty.json", "", "" },
    { "cut.json", HEAD "\"name\": ", "" },
    { "list.json", "[]", "object" },
    { "part.json", "{\"format\": \"benchfold-part\", \"version\": 1}", "format" },
    { "newer.json", "{\"format\": \"benchfold-metal\", \"version\": 2}", "version" },
    { "twice.json", HEAD "\"name\": \"a\", \"name\": \"b\", " FIGURES "}", "name" },
    { "no-density.json", HEAD "\"yield\": 300}", "density" },
    { "text.json", HEAD "\"density\": \"heavy\"}", "density" },
    { "feather.json",
      HEAD "\"density\": 7.85, \"yield\": 3, \"tensile\": 4, \"elastic\": 210, "
           "\"least_radius\": 1}",
      "density" },
    { "negative.json",
      HEAD "\"density\": 7850, \"yield\": -3, \"tensile\": 4, \"elastic\": 210, "
           "\"least_radius\": 1}",
      "yield" },
    { "nameless.json", HEAD "\"name\": \"\", " FIGURES "}", "name" },
    { "deep.json", "[[[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]]]", "" },
    { "zinc.json", HEAD FIGURES "}", "zinc" },
  };

  put_own ("metals", "shed-steel.json", SHED);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *path = own_path ("metals", rows[i].name);

      g_test_message ("%s", rows[i].name);
      put_own ("metals", rows[i].name, rows[i].text);
      g_assert_cmpuint (count (), ==, 1);
      g_assert_cmpuint (count_faults (), ==, 1);
      g_assert_true (g_str_has_prefix (bf_own_metal_faults ()[0], path));
      g_assert_nonnull (strstr (bf_own_metal_faults ()[0] + strlen (path), rows[i].says));
      g_assert_cmpfloat_with_epsilon (bf_material_find ("zinc")->density_kg_m3, 7200.0, 1e-9);
      g_assert_cmpint (g_unlink (path), ==, 0);
    }
}

/* A folder, and a link to nowhere, under the name of a metal. */
static void
test_not_files (void)
{
  g_autofree char *folder = own_path ("metals", "folder.json");
  g_autofree char *link = own_path ("metals", "link.json");

  g_assert_cmpint (g_mkdir (folder, 0700), ==, 0);
  g_assert_cmpint (symlink ("/nowhere/at-all", link), ==, 0);
  g_assert_cmpuint (count (), ==, 0);
  g_assert_cmpuint (count_faults (), ==, 2);
}

static BfMaterial
a_metal (const char *name)
{
  BfMaterial metal = *bf_material_find ("mild-steel");

  metal.name = name;
  metal.like = "mild-steel";
  metal.yield_mpa = 321.5;
  return metal;
}

static void
test_keep (void)
{
  BfMaterial metal = a_metal ("Träger “grün”");
  const BfMaterial *kept = bf_own_metal_keep (NULL, &metal, NULL), *second, *changed;

  g_assert_cmpstr (kept->id, ==, "träger-grün");
  g_assert_cmpstr (kept->name, ==, "Träger “grün”");
  second = bf_own_metal_keep (NULL, &metal, NULL);
  g_assert_cmpstr (second->id, ==, "träger-grün-2");

  /* What was handed out stays as it was. */
  metal.yield_mpa = 400.0;
  changed = bf_own_metal_keep ("träger-grün", &metal, NULL);
  g_assert_cmpfloat_with_epsilon (changed->yield_mpa, 400.0, 1e-9);
  g_assert_cmpuint (count (), ==, 2);
  g_assert_cmpfloat_with_epsilon (kept->yield_mpa, 321.5, 1e-9);
}

/* What a newer program or a hand wrote into the file stays; what is known and was taken out goes.
 */
static void
test_unknown_is_kept (void)
{
  BfMaterial metal = a_metal ("Barn steel");
  g_autofree char *text = NULL, *anew = NULL;

  put_own ("metals", "barn.json",
           "{\"format\": \"benchfold-metal\", \"version\": 1, \"name\": \"x\", \"density\": 7850, "
           "\"yield\": 210, \"tensile\": 340, \"elastic\": 210, \"least_radius\": 0.5, "
           "\"like\": \"zinc\", \"heat\": [7, \"A\"]}");
  metal.like = NULL;
  g_assert_nonnull (bf_own_metal_keep ("barn", &metal, NULL));
  text = get_own ("metals", "barn.json");
  g_assert_nonnull (strstr (text, "\"heat\": [7, \"A\"]"));
  g_assert_nonnull (strstr (text, "\"yield\": 321.5"));
  g_assert_null (strstr (text, "zinc"));

  /* A file that can't be read keeps nobody from writing it anew. */
  put_own ("metals", "barn.json", "{");
  g_assert_nonnull (bf_own_metal_keep ("barn", &metal, NULL));
  anew = get_own ("metals", "barn.json");
  g_assert_null (strstr (anew, "heat"));
}

/* Names that are none, and those of the table, get an id of their own all the same. */
static void
test_ids (void)
{
  static const struct
  {
    const char *name, *id;
  } rows[] = {
    { "Shed steel", "shed-steel" },
    { "  ../../etc/passwd ", "etc-passwd" },
    { "…", "own" },
    { ".hidden", "hidden" },
    { "Zinc", "zinc-2" },
    { "Mild steel", "mild-steel-2" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      BfMaterial metal = a_metal (rows[i].name);

      g_assert_cmpstr (bf_own_metal_keep (NULL, &metal, NULL)->id, ==, rows[i].id);
    }
  g_assert_cmpuint (count_faults (), ==, 0);
}

/* A folder that can't be made: the message names it, and nothing is there afterwards. */
static void
test_not_written (void)
{
  g_autofree char *path = g_build_filename (g_get_user_data_dir (), "benchfold", NULL);
  g_autofree char *dir = g_path_get_dirname (path);
  g_autoptr (GError) error = NULL;
  BfMaterial metal = a_metal ("Shed steel");

  g_assert_cmpint (g_mkdir_with_parents (dir, 0700), ==, 0);
  g_assert_true (g_file_set_contents (path, "in the way", -1, NULL));
  g_assert_null (bf_own_metal_keep (NULL, &metal, &error));
  g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_WRITE);
  g_assert_nonnull (strstr (error->message, path));
  g_assert_cmpuint (count (), ==, 0);
}

/* The gauges are those of the metal that it is like, whatever its own id says; 16 gauge is
 * 0.0598 in steel (Manufacturers' Standard Gauge) and 0.0508 in aluminium (Brown & Sharpe). */
static void
test_gauges (void)
{
  put_own ("metals", "brass-coloured-steel.json", SHED);
  put_own ("metals", "steel-5.json", HEAD "\"like\": \"aluminium-5052-h32\", " FIGURES "}");
  put_own ("metals", "mild-steel-of-none.json", HEAD FIGURES "}");
  g_assert_cmpuint (count (), ==, 3);
  g_assert_cmpfloat_with_epsilon (bf_gauge_mm ("brass-coloured-steel", 16), 0.0598 * 25.4, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_gauge_mm ("steel-5", 16), 0.0508 * 25.4, 1e-9);
  g_assert_true (isnan (bf_gauge_mm ("mild-steel-of-none", 16)));
}

static void
test_in_a_part (void)
{
  g_autoptr (BfPart) part = bf_part_new ();
  g_autofree char *sentence = NULL;

  put_own ("metals", "shed-steel.json", SHED);
  g_assert_cmpuint (count (), ==, 1);
  g_free (part->metal.material);
  part->metal.material = g_strdup ("shed-steel");
  part->metal.thickness_mm = 1.5;
  sentence = bf_setup_phrase (part, BF_SETUP_METAL);
  g_assert_cmpstr (sentence, ==, "Shed steel 1.5 mm");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/own-metals/none", test_none);
  g_test_add_func ("/own-metals/read", test_read);
  g_test_add_func ("/own-metals/broken", test_broken);
  g_test_add_func ("/own-metals/not-files", test_not_files);
  g_test_add_func ("/own-metals/keep", test_keep);
  g_test_add_func ("/own-metals/unknown-is-kept", test_unknown_is_kept);
  g_test_add_func ("/own-metals/ids", test_ids);
  g_test_add_func ("/own-metals/not-written", test_not_written);
  g_test_add_func ("/own-metals/gauges", test_gauges);
  g_test_add_func ("/own-metals/in-a-part", test_in_a_part);
  return g_test_run ();
}
