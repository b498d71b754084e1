/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* Gauge numbers of metal. The same number is another thickness in another metal, so a gauge means
 * nothing without one, and is never shown without its thickness. */

/* Thickness in mm of a gauge number in that material (an id as in core/materials.h); NAN where the
 * metal has no such gauge or none at all. Rounded to 0.0001 in, as printed tables are.
 * Steel: Manufacturers' Standard Gauge, 3 to 38. Galvanized steel: the same weight of steel and
 * 2.5 oz/ft² of zinc, 8 to 32. Stainless steel: US Standard Gauge, 3 to 38. Aluminium, copper and
 * brass: Brown & Sharpe, 1 to 40. Zinc: zinc gauge, 1 to 28, where a higher number is thicker. */
double bf_gauge_mm (const char *material, int gauge);

/* What the material's gauge is called, so that its numbers are not taken for another's:
 * "Manufacturers' Standard Gauge". Static, translated; NULL where the metal has none. */
const char *bf_gauge_name (const char *material);

/* The gauge number that is nearest to a thickness. FALSE where the material has none. gauge: (out).
 */
gboolean bf_gauge_nearest (const char *material, double thickness_mm, int *gauge);

/* The numbers that the material's gauge runs through. FALSE where it has none. first, last: (out).
 */
gboolean bf_gauge_range (const char *material, int *first, int *last);
