/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/printers.h"

#define SCALES "printer-scales"
#define LAST "printer"

/* A printer's name may hold anything but a line's end. */
static char *
key_of (const char *printer, const char *paper)
{
  return g_strconcat (printer, "\n", paper, NULL);
}

char *
bf_printers_last (GSettings *settings)
{
  return settings != NULL ? g_settings_get_string (settings, LAST) : g_strdup ("");
}

void
bf_printers_note_last (GSettings *settings, const char *printer)
{
  g_return_if_fail (printer != NULL);

  if (settings != NULL)
    g_settings_set_string (settings, LAST, printer);
}

BfPrinterScale
bf_printers_scale (GSettings *settings, const char *printer, const char *paper)
{
  BfPrinterScale scale = bf_printer_scale_none ();
  g_autoptr (GVariant) all = NULL;
  g_autofree char *key = NULL;
  double x, y;

  g_return_val_if_fail (printer != NULL && paper != NULL, scale);

  if (settings == NULL)
    return scale;
  all = g_settings_get_value (settings, SCALES);
  key = key_of (printer, paper);
  if (!g_variant_lookup (all, key, "(dd)", &x, &y))
    return scale;
  scale = (BfPrinterScale){ x, y };
  return bf_printer_scale_is_sane (&scale, NULL) ? scale : bf_printer_scale_none ();
}

void
bf_printers_note_scale (GSettings *settings,
                        const char *printer,
                        const char *paper,
                        BfPrinterScale scale)
{
  g_autoptr (GVariant) all = NULL;
  g_autofree char *key = NULL;
  GVariantBuilder builder;
  GVariantIter each;
  const char *name;
  double x, y;

  g_return_if_fail (printer != NULL && paper != NULL);

  if (settings == NULL)
    return;
  all = g_settings_get_value (settings, SCALES);
  key = key_of (printer, paper);
  g_variant_builder_init (&builder, G_VARIANT_TYPE ("a{s(dd)}"));
  g_variant_iter_init (&each, all);
  while (g_variant_iter_next (&each, "{&s(dd)}", &name, &x, &y))
    if (!g_str_equal (name, key))
      g_variant_builder_add (&builder, "{s(dd)}", name, x, y);
  if (!bf_printer_scale_is_none (&scale))
    g_variant_builder_add (&builder, "{s(dd)}", key, scale.x, scale.y);
  g_settings_set_value (settings, SCALES, g_variant_builder_end (&builder));
}
