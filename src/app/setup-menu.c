/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/setup-menu.h"

#include <glib/gi18n.h>

#include "app/setup-drills.h"
#include "core/edit.h"
#include "core/gauges.h"
#include "core/length-entry.h"
#include "core/materials.h"
#include "core/names.h"
#include "core/own-metals.h"
#include "core/own-trials.h"
#include "core/units.h"

/* Metal as it is sold in mm, and by gauge: each metal's own, whose numbers are other thicknesses
 * (common practice). */
static const double thicknesses_mm[] = { 0.8, 1.0, 1.2, 1.5, 2.0, 3.0 };
static const int gauges[] = { 20, 18, 16, 14, 12, 11 };

/* Discs as they are sold (common practice). */
static const double discs_mm[] = { 115.0, 125.0, 150.0, 180.0, 230.0 };
static const double discs_in[] = { 4.5, 5.0, 6.0, 7.0, 9.0 };

static void
add_choice (GMenu *menu, const char *label, const char *action, GVariant *target)
{
  g_autoptr (GMenuItem) item = g_menu_item_new (label, NULL);
  g_menu_item_set_action_and_target_value (item, action, target);
  g_menu_append_item (menu, item);
}

/* The words that the sentence would have for a part; takes the part. */
static void
add_phrase (GMenu *menu, BfPart *part, BfSetupPhrase phrase, const char *action, GVariant *target)
{
  g_autofree char *words = bf_setup_phrase (part, phrase);
  add_choice (menu, words, action, target);
  bf_part_unref (part);
}

static GMenu *
materials_menu (void)
{
  GMenu *menu = g_menu_new ();
  guint n = 0;
  const BfMaterial *materials = bf_materials (&n);
  for (guint i = 0; i < n; i++)
    add_choice (menu, materials[i].name, "setup.material", g_variant_new_string (materials[i].id));
  return menu;
}

/* The person's own, and the way to another. */
static GMenu *
own_metals_menu (void)
{
  GMenu *menu = g_menu_new ();
  guint n = 0;
  const BfMaterial *const *own = bf_own_metals (&n);
  for (guint i = 0; i < n; i++)
    add_choice (menu, own[i]->name, "setup.material", g_variant_new_string (own[i]->id));
  if (n > 0)
    g_menu_append (menu, _ ("Your metals…"), "ask.own-metals");
  g_menu_append (menu, _ ("A metal of your own…"), "ask.metal");
  return menu;
}

/* Returns: FALSE where the metal has no such gauge. */
static gboolean
add_gauge (GMenu *menu, const char *material, int gauge)
{
  double mm = bf_gauge_mm (material, gauge);
  g_autofree char *length = bf_length_understood (mm, BF_UNITS_IN), *words = NULL;

  if (isnan (mm))
    return FALSE;
  /* Translators: a gauge number and the thickness that it stands for: "16 ga = 0.06 in" */
  words = g_strdup_printf (_ ("%d ga %s"), gauge, length);
  add_choice (menu, words, "setup.thickness", g_variant_new_double (mm));
  return TRUE;
}

/* In inches gauges with their thicknesses, where the metal has any. */
static GMenu *
thickness_menu (const BfPart *part)
{
  const char *material = part->metal.material != NULL ? part->metal.material : "mild-steel";
  GMenu *menu = g_menu_new ();
  gboolean in = part->units == BF_UNITS_IN;

  for (guint i = 0; i < G_N_ELEMENTS (thicknesses_mm); i++)
    {
      g_autofree char *words = bf_format_thin (thicknesses_mm[i], part->units);

      if (!in || !add_gauge (menu, material, gauges[i]))
        add_choice (menu, words, "setup.thickness", g_variant_new_double (thicknesses_mm[i]));
    }
  return menu;
}

/* Bends along the grain crack sooner: which way it runs is told where it is known. */
static GMenu *
grain_menu (void)
{
  GMenu *menu = g_menu_new ();

  add_choice (menu, _ ("not known"), "setup.grain", g_variant_new_string (""));
  add_choice (menu, _ ("along the blank’s width"), "setup.grain", g_variant_new_string ("0"));
  add_choice (menu, _ ("along the blank’s height"), "setup.grain", g_variant_new_string ("90"));
  return menu;
}

static void
fill_metal (GMenu *menu, const BfPart *part)
{
  g_autoptr (GMenu) grain = grain_menu ();
  g_autoptr (GMenu) typed = g_menu_new ();
  g_autoptr (GMenu) materials = materials_menu ();
  g_autoptr (GMenu) own = own_metals_menu ();
  g_autoptr (GMenu) thickness = thickness_menu (part);
  g_autoptr (GMenuItem) item = g_menu_item_new (NULL, NULL);

  g_menu_item_set_attribute (item, "custom", "s", BF_SETUP_MENU_THICKNESS);
  g_menu_append_item (typed, item);
  g_menu_append_section (menu, NULL, G_MENU_MODEL (typed));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (thickness));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (materials));
  g_menu_prepend_submenu (own, _ ("Grain"), G_MENU_MODEL (grain));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (own));
}

static void
fill_cutting (GMenu *menu, const BfPart *part)
{
  static const BfCuttingWay others[] = { BF_CUTTING_SNIPS, BF_CUTTING_TABLE, BF_CUTTING_SERVICE };
  g_autoptr (GMenu) discs = g_menu_new ();
  g_autoptr (GMenu) other = g_menu_new ();
  g_autoptr (GMenu) details = g_menu_new ();
  g_autoptr (GMenu) drills = bf_setup_drills_menu ();
  gboolean in = part->units == BF_UNITS_IN;

  for (guint i = 0; i < G_N_ELEMENTS (discs_mm); i++)
    {
      double mm = in ? discs_in[i] * BF_MM_PER_INCH : discs_mm[i];
      add_phrase (discs, bf_edit_cutting (part, BF_CUTTING_DISC, mm), BF_SETUP_CUTTING,
                  "setup.cutting", g_variant_new ("(sd)", "disc", mm));
    }
  for (guint i = 0; i < G_N_ELEMENTS (others); i++)
    add_phrase (other, bf_edit_cutting (part, others[i], NAN), BF_SETUP_CUTTING, "setup.cutting",
                g_variant_new ("(sd)", bf_cutting_way_name (others[i]), 0.0));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (discs));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (other));
  g_menu_append_submenu (details, _ ("Drills that you have"), G_MENU_MODEL (drills));
  g_menu_append (details, _ ("Kerf, slack…"), "ask.cutting");
  g_menu_append_section (menu, NULL, G_MENU_MODEL (details));
}

static void
fill_bending (GMenu *menu, const BfPart *part)
{
  g_autoptr (GMenu) details = g_menu_new ();
  guint n_trials;

  for (BfBendWay way = BF_BEND_WAY_BRAKE; way <= BF_BEND_WAY_SCORE; way++)
    add_phrase (menu, bf_edit_bend_way (part, way), BF_SETUP_BENDING, "setup.bending",
                g_variant_new_string (bf_bend_way_name (way)));
  g_menu_append (details, _ ("Details: radius, K, push…"), "ask.bending");
  g_menu_append (details, _ ("What came out of the first one…"), "win.first-made");
  (void)bf_own_trials (&n_trials);
  if (n_trials > 0)
    g_menu_append (details, _ ("Your trial bends…"), "ask.own-trials");
  g_menu_append (details, _ ("Trial bend…"), "ask.trial");
  g_menu_append_section (menu, NULL, G_MENU_MODEL (details));
}

static void
fill_joining (GMenu *menu, const BfPart *part)
{
  for (BfJoining joining = BF_JOINING_WELDED; joining <= BF_JOINING_NONE; joining++)
    add_phrase (menu, bf_edit_joining (part, joining), BF_SETUP_JOINING, "setup.joining",
                g_variant_new_string (bf_joining_name (joining)));
}

static void
fill_measure (GMenu *menu)
{
  g_autoptr (GMenu) measure = g_menu_new ();
  g_autoptr (GMenu) units = g_menu_new ();

  add_choice (measure, _ ("outside"), "setup.measure", g_variant_new_string ("outside"));
  add_choice (measure, _ ("inside"), "setup.measure", g_variant_new_string ("inside"));
  add_choice (units, _ ("in millimetres"), "setup.units", g_variant_new_string ("mm"));
  add_choice (units, _ ("in inches"), "setup.units", g_variant_new_string ("in"));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (measure));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (units));
}

GMenuModel *
bf_setup_menu_new (const BfPart *part, BfSetupPhrase phrase)
{
  g_return_val_if_fail (part != NULL, NULL);

  GMenu *menu = g_menu_new ();
  switch (phrase)
    {
    case BF_SETUP_METAL:
      fill_metal (menu, part);
      break;
    case BF_SETUP_CUTTING:
      fill_cutting (menu, part);
      break;
    case BF_SETUP_BENDING:
      fill_bending (menu, part);
      break;
    case BF_SETUP_JOINING:
      fill_joining (menu, part);
      break;
    case BF_SETUP_MEASURE:
      fill_measure (menu);
      break;
    case BF_N_SETUP:
    default:
      break;
    }
  return G_MENU_MODEL (menu);
}
