/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/thickness-box.h"
#include "core/edit.h"
#include "core/first-part.h"

/* Which gauges stand beside a thickness. Manufacturers' Standard Gauge for steel: 16 is 0.0598 in,
 * 3 the thickest; Brown & Sharpe for aluminium: 16 is 0.0508 in, 14 0.0641 in. */

typedef struct
{
  const char *name, *material;
  double thickness_mm;
  BfUnits units;
  const char *gauges; /* NULL for none */
} Case;

static const Case cases[] = {
  { "steel", "mild-steel", 1.5, BF_UNITS_MM,
    "15 ga = 1.709 mm\n16 ga = 1.519 mm\n17 ga = 1.367 mm\nManufacturers’ Standard Gauge for "
    "steel" },
  { "inches", "mild-steel", 1.5, BF_UNITS_IN,
    "15 ga = 0.067 in\n16 ga = 0.06 in\n17 ga = 0.054 in\nManufacturers’ Standard Gauge for "
    "steel" },
  { "aluminium", "aluminium-5052-h32", 1.5, BF_UNITS_MM,
    "14 ga = 1.628 mm\n15 ga = 1.45 mm\n16 ga = 1.29 mm\nBrown & Sharpe gauge" },
  { "thickest", "mild-steel", 50.0, BF_UNITS_MM,
    "3 ga = 6.073 mm\n4 ga = 5.695 mm\nManufacturers’ Standard Gauge for steel" },
  { "other", "unobtainium", 1.5, BF_UNITS_MM, NULL },
};

static void
test_gauges (gconstpointer data)
{
  const Case *c = data;
  g_autoptr (BfPart) first = bf_first_part (c->units);
  g_autoptr (BfPart) metal = bf_edit_material (first, c->material);
  g_autoptr (BfPart) part = bf_edit_thickness (metal, c->thickness_mm);
  g_autofree char *gauges = bf_thickness_gauges (part);

  g_assert_cmpstr (gauges, ==, c->gauges);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *path = g_strconcat ("/thickness/gauges/", cases[i].name, NULL);
      g_test_add_data_func (path, &cases[i], test_gauges);
    }
  return g_test_run ();
}
