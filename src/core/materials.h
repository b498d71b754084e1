/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* Metals by name, with what bending and weighing them needs. data/materials/materials.json is the
 * one table, compiled in as a resource of this library, with a source for each figure. */

typedef struct
{
  const char *id;   /* "mild-steel", as in the file */
  const char *name; /* for people, translated */
  double density_kg_m3;
  double yield_mpa; /* 0.2 % proof strength where it has no yield point */
  double tensile_mpa;
  double elastic_gpa;
  double least_radius; /* least inside radius as a multiple of thickness */
  const char *like;    /* an own metal's: the metal of the table whose gauges count; else NULL */
} BfMaterial;

/* The material of that id, of the table or the person's own (core/own-metals.h), or NULL where it
 * is not known. Owned by the library. */
const BfMaterial *bf_material_find (const char *id);

/* The same, of the table alone. */
const BfMaterial *bf_material_in_table (const char *id);

/* All materials of the table, mild steel first. n_materials: (out). */
const BfMaterial *bf_materials (guint *n_materials);
