/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* The person's own boxes of drills, step drills among them: a file each in
 * $XDG_DATA_HOME/benchfold/drills. A part stores the sizes and not the box, so that it is made
 * alike wherever it is opened. */

typedef struct
{
  const char *id;   /* the file's name without its end */
  const char *name; /* as the person calls it */
  GArray *sizes_mm; /* double, ascending */
} BfDrillBox;

/* Own boxes by id; n_boxes: (out). Read from the disk when first asked for. Owned by the library;
 * valid until they are read again or one is kept or removed. */
const BfDrillBox *bf_own_drills (guint *n_boxes);

/* The box of that id, or NULL. Owned and valid as above. */
const BfDrillBox *bf_own_drills_find (const char *id);

/* What is wrong with files of boxes, a line each; ends with NULL. Owned and valid as above. */
const char *const *bf_own_drill_faults (void);
void bf_own_drills_read_again (void);

/* Keeps a box: id NULL makes a new one, else the box of that id is replaced. sizes_mm:
 * (element-type double), ascending. error: BF_PART_ERROR_WRITE. */
gboolean
bf_own_drills_keep (const char *id, const char *name, const GArray *sizes_mm, GError **error);
