/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/gauges.h"

#include <math.h>

#include <glib/gi18n.h>

#include "core/materials.h"
#include "core/units.h"

/* Weight of iron in oz/ft² by gauge number from 1 on: 15 U.S.C. § 206. Both steel gauges are these
 * weights, taken at another density. */
static const double weight_oz_ft2[] = {
  180, 170, 160, 150, 140, 130, 120,  110, 100, 90, /* 1 */
  80,  70,  60,  50,  45,  40,  36,   32,  28,  24, /* 11 */
  22,  20,  18,  16,  14,  12,  11,   10,  9,   8,  /* 21 */
  7,   6.5, 6,   5.5, 5,   4.5, 4.25, 4,            /* 31 */
};

/* Zinc gauge from 1 on, in inches. */
static const double zinc_in[] = {
  0.002, 0.004, 0.006, 0.008, 0.010, 0.012, 0.014, 0.016, 0.018, 0.020, /* 1 */
  0.024, 0.028, 0.032, 0.036, 0.040, 0.045, 0.050, 0.055, 0.060, 0.070, /* 11 */
  0.080, 0.090, 0.100, 0.125, 0.250, 0.375, 0.500, 1.000,               /* 21 */
};

/* Ounces on a square foot an inch thick: steel of 41.82 lb (Manufacturers' Standard) and
 * wrought iron of 480 lb/ft³ (US Standard). */
#define STEEL_OZ_FT2_IN (41.82 * 16.0)
#define IRON_OZ_FT2_IN (40.0 * 16.0)
#define ZINC_COAT_OZ_FT2 2.5

static double
steel_in (int gauge)
{
  return weight_oz_ft2[gauge - 1] / STEEL_OZ_FT2_IN;
}

static double
galvanized_in (int gauge)
{
  return (weight_oz_ft2[gauge - 1] + ZINC_COAT_OZ_FT2) / STEEL_OZ_FT2_IN;
}

static double
stainless_in (int gauge)
{
  return weight_oz_ft2[gauge - 1] / IRON_OZ_FT2_IN;
}

/* Brown & Sharpe: 0.005 in at 36, and 39 even steps of ratio up to 0.46 in. */
static double
brown_sharpe_in (int gauge)
{
  return 0.005 * pow (92.0, (36 - gauge) / 39.0);
}

static double
zinc_gauge_in (int gauge)
{
  return zinc_in[gauge - 1];
}

typedef struct
{
  const char *material; /* how its id begins */
  int first, last;
  double (*thickness_in) (int gauge);
  const char *name;
} Gauge;

static const Gauge gauges[] = {
  { "mild-steel", 3, 38, steel_in, N_ ("Manufacturers’ Standard Gauge for steel") },
  { "galvanized-steel", 8, 32, galvanized_in, N_ ("galvanized steel gauge, coating included") },
  { "stainless-", 3, 38, stainless_in, N_ ("US Standard Gauge, as for stainless steel") },
  { "aluminium-", 1, 40, brown_sharpe_in, N_ ("Brown & Sharpe gauge") },
  { "copper-", 1, 40, brown_sharpe_in, N_ ("Brown & Sharpe gauge") },
  { "brass-", 1, 40, brown_sharpe_in, N_ ("Brown & Sharpe gauge") },
  { "zinc", 1, (int)G_N_ELEMENTS (zinc_in), zinc_gauge_in,
    N_ ("zinc gauge, where a higher number is thicker") },
};

/* An own metal has the gauges of the metal that it is like, whatever its id begins with. */
static const Gauge *
find_gauge (const char *id)
{
  const BfMaterial *own = bf_material_in_table (id) == NULL ? bf_material_find (id) : NULL;
  const char *material = own != NULL ? own->like : id;

  for (guint i = 0; material != NULL && i < G_N_ELEMENTS (gauges); i++)
    if (g_str_has_prefix (material, gauges[i].material))
      return &gauges[i];
  return NULL;
}

double
bf_gauge_mm (const char *material, int gauge)
{
  const Gauge *found = find_gauge (material);

  if (found == NULL || gauge < found->first || gauge > found->last)
    return NAN;
  return round (found->thickness_in (gauge) * 1e4) / 1e4 * BF_MM_PER_INCH;
}

const char *
bf_gauge_name (const char *material)
{
  const Gauge *found = find_gauge (material);

  return found != NULL ? _ (found->name) : NULL;
}

gboolean
bf_gauge_range (const char *material, int *first, int *last)
{
  const Gauge *found = find_gauge (material);

  if (found == NULL)
    return FALSE;
  *first = found->first;
  *last = found->last;
  return TRUE;
}

gboolean
bf_gauge_nearest (const char *material, double thickness_mm, int *gauge)
{
  int first, last, nearest;

  g_return_val_if_fail (gauge != NULL, FALSE);

  if (!bf_gauge_range (material, &first, &last))
    return FALSE;
  nearest = first;
  for (int i = first; i <= last; i++)
    if (fabs (bf_gauge_mm (material, i) - thickness_mm) <
        fabs (bf_gauge_mm (material, nearest) - thickness_mm))
      nearest = i;
  *gauge = nearest;
  return TRUE;
}
