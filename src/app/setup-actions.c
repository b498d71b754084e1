/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/setup-actions.h"

#include <glib/gi18n.h>

#include "app/setup-drills.h"
#include "app/setup-edit.h"
#include "core/defaults.h"
#include "core/edit.h"
#include "core/names.h"

typedef struct
{
  BfDocument *document;
  GSimpleActionGroup *group; /* not owned: it owns this */
} Setup;

static void
apply (Setup *setup, BfPart *part, const char *name)
{
  bf_setup_edit (setup->document, part, name, NULL);
}

static void
material_chosen (Setup *setup, GVariant *value)
{
  apply (
      setup,
      bf_edit_material (bf_document_get_part (setup->document), g_variant_get_string (value, NULL)),
      _ ("Metal"));
}

static void
thickness_chosen (Setup *setup, GVariant *value)
{
  if (g_variant_get_double (value) > 0.0)
    apply (setup,
           bf_edit_thickness (bf_document_get_part (setup->document), g_variant_get_double (value)),
           _ ("Thickness"));
}

static void
grain_chosen (Setup *setup, GVariant *value)
{
  const char *word = g_variant_get_string (value, NULL);

  apply (setup,
         bf_edit_grain (bf_document_get_part (setup->document),
                        g_str_equal (word, "") ? NAN : g_ascii_strtod (word, NULL)),
         _ ("Grain"));
}

static void
cutting_chosen (Setup *setup, GVariant *value)
{
  const char *word;
  double diameter_mm;

  g_variant_get (value, "(&sd)", &word, &diameter_mm);
  int by = bf_names_find (&bf_names_cutting_way, word);
  if (by >= 0)
    apply (setup,
           bf_edit_cutting (bf_document_get_part (setup->document), (BfCuttingWay)by,
                            diameter_mm > 0.0 ? diameter_mm : NAN),
           _ ("Cutting"));
}

static void
drills_chosen (Setup *setup, GVariant *value)
{
  apply (setup,
         bf_setup_drills_edit (bf_document_get_part (setup->document),
                               g_variant_get_string (value, NULL)),
         _ ("Drills"));
}

static void
bending_chosen (Setup *setup, GVariant *value)
{
  int way = bf_names_find (&bf_names_bend_way, g_variant_get_string (value, NULL));
  if (way > BF_BEND_WAY_UNSET)
    apply (setup, bf_edit_bend_way (bf_document_get_part (setup->document), (BfBendWay)way),
           _ ("Bending"));
}

static void
joining_chosen (Setup *setup, GVariant *value)
{
  int joining = bf_names_find (&bf_names_joining, g_variant_get_string (value, NULL));
  if (joining >= 0)
    apply (setup, bf_edit_joining (bf_document_get_part (setup->document), (BfJoining)joining),
           _ ("Corners"));
}

static void
measure_chosen (Setup *setup, GVariant *value)
{
  int measure = bf_names_find (&bf_names_measure, g_variant_get_string (value, NULL));
  if (measure >= 0)
    apply (setup, bf_edit_measure (bf_document_get_part (setup->document), (BfMeasure)measure),
           _ ("Sizes"));
}

static void
units_chosen (Setup *setup, GVariant *value)
{
  int units = bf_names_find (&bf_names_units, g_variant_get_string (value, NULL));
  if (units >= 0)
    apply (setup, bf_edit_units (bf_document_get_part (setup->document), (BfUnits)units),
           _ ("Units"));
}

/* What a menu sets: its action, the kind of its value, what it is before there is a part. */
static const struct
{
  const char *name, *type, *state;
  void (*chosen) (Setup *setup, GVariant *value);
} choices[] = {
  { "material", "s", "''", material_chosen }, { "thickness", "d", "0.0", thickness_chosen },
  { "grain", "s", "''", grain_chosen },       { "cutting", "(sd)", "('', 0.0)", cutting_chosen },
  { "drills", "s", "''", drills_chosen },     { "bending", "s", "''", bending_chosen },
  { "joining", "s", "''", joining_chosen },   { "measure", "s", "''", measure_chosen },
  { "units", "s", "''", units_chosen },
};

/* What holds already is no change: it would be an undo that does nothing. */
static void
change_cb (GSimpleAction *action, GVariant *value, gpointer user_data)
{
  g_autoptr (GVariant) state = g_action_get_state (G_ACTION (action));

  if (g_variant_equal (state, value))
    return;
  for (guint i = 0; i < G_N_ELEMENTS (choices); i++)
    if (g_str_equal (choices[i].name, g_action_get_name (G_ACTION (action))))
      choices[i].chosen (user_data, value);
}

static void
add_actions (Setup *setup)
{
  for (guint i = 0; i < G_N_ELEMENTS (choices); i++)
    {
      GActionEntry entry = { .name = choices[i].name,
                             .parameter_type = choices[i].type,
                             .state = choices[i].state,
                             .change_state = change_cb };

      g_action_map_add_action_entries (G_ACTION_MAP (setup->group), &entry, 1, setup);
    }
}

static void
show (Setup *setup, const char *name, GVariant *state)
{
  GAction *action = g_action_map_lookup_action (G_ACTION_MAP (setup->group), name);
  g_simple_action_set_state (G_SIMPLE_ACTION (action), state);
}

/* The choice of the menu: "" for what is not known; another angle of a file is none of them. */
static GVariant *
grain_state (const BfPart *part)
{
  char text[G_ASCII_DTOSTR_BUF_SIZE] = "";

  if (!isnan (part->metal.grain_deg))
    g_ascii_formatd (text, sizeof text, "%g", part->metal.grain_deg);
  return g_variant_new_string (text);
}

static GVariant *
cutting_state (const BfPart *part)
{
  gboolean disc = part->cutting.by == BF_CUTTING_DISC;
  return g_variant_new ("(sd)", bf_cutting_way_name (part->cutting.by),
                        disc ? bf_part_disc_diameter_mm (part) : 0.0);
}

static void
changed_cb (Setup *setup)
{
  const BfPart *part = bf_document_get_part (setup->document);
  if (part == NULL)
    return;

  const char *material = part->metal.material != NULL ? part->metal.material : "mild-steel";
  BfBendWay way = bf_part_resolve_bend (part, NULL).way;
  show (setup, "material", g_variant_new_string (material));
  show (setup, "thickness", g_variant_new_double (part->metal.thickness_mm));
  show (setup, "grain", grain_state (part));
  show (setup, "cutting", cutting_state (part));
  show (setup, "drills", g_variant_new_take_string (bf_setup_drills_word (part)));
  show (setup, "bending", g_variant_new_string (bf_bend_way_name (way)));
  show (setup, "joining", g_variant_new_string (bf_joining_name (part->joining)));
  show (setup, "measure", g_variant_new_string (bf_measure_name (part->measure)));
  show (setup, "units", g_variant_new_string (bf_units_name (part->units)));
}

static void
setup_free (gpointer data)
{
  Setup *setup = data;
  g_signal_handlers_disconnect_by_data (setup->document, setup);
  g_object_unref (setup->document);
  g_free (setup);
}

GSimpleActionGroup *
bf_setup_actions_new (BfDocument *document)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (document), NULL);

  GSimpleActionGroup *group = g_simple_action_group_new ();
  Setup *setup = g_new0 (Setup, 1);

  setup->document = g_object_ref (document);
  setup->group = group;
  add_actions (setup);
  g_signal_connect_swapped (document, "changed", G_CALLBACK (changed_cb), setup);
  g_object_set_data_full (G_OBJECT (group), "setup", setup, setup_free);
  changed_cb (setup);
  return group;
}
