/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "write/command-line.h"

/* The demo: one part from the examples and what can be made of it, in a folder. */

/* Where the demo's part is written. Returns: (transfer full). */
char *bf_demo_part_path (const char *dir) G_GNUC_WARN_UNUSED_RESULT;

/* Makes the folder where it is not there, writes part and outputs, and says on stdout where they
 * are. FALSE with error set, and no file written, where something failed. */
gboolean bf_demo_write (const BfCommand *command, GError **error);
