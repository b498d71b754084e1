/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/settings.h"

#include <langinfo.h>
#include <math.h>

#include "app/application.h"
#include "core/defaults.h"
#include "core/edit.h"
#include "core/first-part.h"
#include "core/materials.h"
#include "core/names.h"
#include "core/tolerance.h"

/* As the key has it. */
#define GUIDE_OFFSET_MAX_MM 1000.0

GSettings *
bf_settings_new (void)
{
  GSettingsSchemaSource *installed = g_settings_schema_source_get_default ();
  g_autoptr (GSettingsSchemaSource) built = NULL;
  g_autoptr (GSettingsSchema) schema = NULL;

  if (installed != NULL)
    schema = g_settings_schema_source_lookup (installed, BF_APPLICATION_ID, TRUE);
  if (schema == NULL)
    built =
        g_settings_schema_source_new_from_directory (BF_BUILT_SCHEMA_DIR, installed, FALSE, NULL);
  if (built != NULL)
    schema = g_settings_schema_source_lookup (built, BF_APPLICATION_ID, FALSE);
  return schema != NULL ? g_settings_new_full (schema, NULL, NULL) : NULL;
}

/* glibc: 1 is metric, 2 is American. */
static BfUnits
units_of_locale (void)
{
  const char *measurement = nl_langinfo (_NL_MEASUREMENT_MEASUREMENT);
  return measurement != NULL && measurement[0] == 2 ? BF_UNITS_IN : BF_UNITS_MM;
}

BfUnits
bf_settings_units (GSettings *settings)
{
  g_autofree char *word = settings != NULL ? g_settings_get_string (settings, "units") : NULL;

  if (g_strcmp0 (word, "mm") == 0)
    return BF_UNITS_MM;
  if (g_strcmp0 (word, "in") == 0)
    return BF_UNITS_IN;
  return units_of_locale ();
}

/* What was chosen, as the key has it; words are NULL or empty where nothing was. */
typedef struct
{
  const char *units, *material, *cutting, *bending, *joining;
  double thickness_mm, disc_mm;
} Setup;

static void
take (BfPart **part, BfPart *changed)
{
  bf_part_unref (*part);
  *part = changed;
}

/* A word that is not known leaves what it stands for as it is: it may be a newer program's. */
static BfPart *
apply_setup (const Setup *setup)
{
  int cutting = bf_names_find (&bf_names_cutting_way, setup->cutting);
  int bending = bf_names_find (&bf_names_bend_way, setup->bending);
  int joining = bf_names_find (&bf_names_joining, setup->joining);
  int units = bf_names_find (&bf_names_units, setup->units);
  BfPart *part = bf_first_part (units >= 0 ? (BfUnits)units : BF_UNITS_MM);

  if (bf_material_find (setup->material) != NULL)
    take (&part, bf_edit_material (part, setup->material));
  if (setup->thickness_mm > 0.0 && setup->thickness_mm <= BF_LENGTH_MAX_MM)
    take (&part, bf_edit_thickness (part, setup->thickness_mm));
  gboolean same_disc =
      cutting == BF_CUTTING_DISC &&
      fabs (setup->disc_mm - part->cutting.disc_diameter_mm) < BF_TOLERANCE_SIZE_MM;
  if (cutting >= 0 && !same_disc)
    take (&part, bf_edit_cutting (part, (BfCuttingWay)cutting,
                                  setup->disc_mm > 0.0 ? setup->disc_mm : NAN));
  if (bending > BF_BEND_WAY_UNSET && bending != BF_BEND_WAY_BAR)
    take (&part, bf_edit_bend_way (part, (BfBendWay)bending));
  if (joining >= 0)
    take (&part, bf_edit_joining (part, (BfJoining)joining));
  return part;
}

BfPart *
bf_settings_first_part (GSettings *settings)
{
  g_autoptr (GVariant) value = settings != NULL ? g_settings_get_value (settings, "set-up") : NULL;
  g_autofree char *chosen = settings != NULL ? g_settings_get_string (settings, "units") : NULL;
  Setup setup = { .units = "" };

  if (value != NULL)
    g_variant_get (value, "(&s&sd&sd&s&s)", &setup.units, &setup.material, &setup.thickness_mm,
                   &setup.cutting, &setup.disc_mm, &setup.bending, &setup.joining);
  if (setup.units[0] == '\0')
    return bf_first_part (bf_settings_units (settings));
  if (g_strcmp0 (chosen, "locale") != 0)
    setup.units = bf_units_name (bf_settings_units (settings));
  return apply_setup (&setup);
}

void
bf_settings_note_setup (GSettings *settings, const BfPart *part)
{
  g_return_if_fail (part != NULL);

  const char *material = part->metal.material != NULL ? part->metal.material : "";
  gboolean disc = part->cutting.by == BF_CUTTING_DISC;
  if (settings == NULL)
    return;
  g_settings_set (settings, "set-up", "(ssdsdss)", bf_units_name (part->units), material,
                  part->metal.thickness_mm, bf_cutting_way_name (part->cutting.by),
                  disc ? bf_part_disc_diameter_mm (part) : 0.0,
                  bf_bend_way_name (bf_part_resolve_bend (part, NULL).way),
                  bf_joining_name (part->joining));
}

static const char *
marks_key (BfUnits units)
{
  return units == BF_UNITS_IN ? "marks-in" : "marks-mm";
}

const BfRuleMarks *
bf_settings_marks (GSettings *settings, BfUnits units)
{
  g_autofree char *name =
      settings != NULL ? g_settings_get_string (settings, marks_key (units)) : NULL;
  const BfRuleMarks *marks = bf_rule_marks_find (name);

  if (marks != NULL && marks->units == units)
    return marks;
  return bf_rule_marks_find (units == BF_UNITS_IN ? "1/16" : "0.5");
}

void
bf_settings_note_marks (GSettings *settings, const BfRuleMarks *marks)
{
  g_return_if_fail (marks != NULL);

  if (settings != NULL)
    g_settings_set_string (settings, marks_key (marks->units), marks->name);
}

double
bf_settings_guide_offset_mm (GSettings *settings)
{
  return settings != NULL ? g_settings_get_double (settings, "guide-offset") : 0.0;
}

void
bf_settings_set_guide_offset_mm (GSettings *settings, double offset_mm)
{
  if (settings != NULL)
    g_settings_set_double (settings, "guide-offset", CLAMP (offset_mm, 0.0, GUIDE_OFFSET_MAX_MM));
}

const BfPaper *
bf_settings_paper (GSettings *settings)
{
  g_autofree char *name = settings != NULL ? g_settings_get_string (settings, "paper") : NULL;
  const BfPaper *paper = name != NULL && name[0] != '\0' ? bf_paper_find (name) : NULL;
  return paper != NULL ? paper : bf_paper_of_locale ();
}

BfBrakePlate
bf_settings_brake (GSettings *settings)
{
  BfBrakePlate plate = { 0.0, 0.0 };

  if (settings != NULL)
    g_settings_get (settings, "brake-plate", "(dd)", &plate.width_mm, &plate.thickness_mm);
  return plate;
}

void
bf_settings_note_brake (GSettings *settings, const BfBrakePlate *plate)
{
  g_return_if_fail (plate != NULL);

  if (settings != NULL)
    g_settings_set (settings, "brake-plate", "(dd)", plate->width_mm, plate->thickness_mm);
}

void
bf_settings_size_window (GSettings *settings, GtkWindow *window)
{
  int width, height;

  if (settings == NULL)
    return;
  g_settings_get (settings, "window-size", "(ii)", &width, &height);
  if (width > 0 && height > 0)
    gtk_window_set_default_size (window, width, height);
  if (g_settings_get_boolean (settings, "window-maximized"))
    gtk_window_maximize (window);
}

/* The default size follows the person's hand, and stands still while the window is maximized. */
void
bf_settings_note_window (GSettings *settings, GtkWindow *window)
{
  int width, height;

  if (settings == NULL)
    return;
  gtk_window_get_default_size (window, &width, &height);
  if (width > 0 && height > 0)
    g_settings_set (settings, "window-size", "(ii)", width, height);
  g_settings_set_boolean (settings, "window-maximized", gtk_window_is_maximized (window));
}
