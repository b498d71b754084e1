/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/materials.h"

/* The person's own metals: copies of a metal of the table with other figures, or new ones. Each is
 * a file in $XDG_DATA_HOME/benchfold/metals, its id the file's name; a part names it by that id.
 * bf_material_find() finds them too. */

/* Own metals by id; n_metals: (out). Read from the disk when first asked for. Owned by the library,
 * as each metal is: one that was once handed out stays as it is for as long as the program runs. */
const BfMaterial *const *bf_own_metals (guint *n_metals);

/* What is wrong with files of own metals, a line each, as they were last read; ends with NULL.
 * Owned by the library; valid until the next time that they are read. */
const char *const *bf_own_metal_faults (void);

/* Reads them again, after a file was changed by another hand. */
void bf_own_metals_read_again (void);

/* Keeps a metal: id NULL makes a new one, with an id after its name; else the own metal of that id
 * is replaced. metal: its id is not looked at; like may be NULL. Figures must be positive.
 * Returns: the metal as bf_material_find() now has it, or NULL with error (BF_PART_ERROR_WRITE). */
const BfMaterial *bf_own_metal_keep (const char *id, const BfMaterial *metal, GError **error);
