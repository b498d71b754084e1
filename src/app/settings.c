/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/settings.h"

#include <langinfo.h>

#include "app/application.h"

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

const BfPaper *
bf_settings_paper (GSettings *settings)
{
  g_autofree char *name = settings != NULL ? g_settings_get_string (settings, "paper") : NULL;
  const BfPaper *paper = name != NULL && name[0] != '\0' ? bf_paper_find (name) : NULL;
  return paper != NULL ? paper : bf_paper_of_locale ();
}
