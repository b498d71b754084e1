/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* The path of a file among the program's own data ("examples/spoke-tray.benchfold"): below
 * $BENCHFOLD_DATA where that is set; in the source tree where the program runs from the folder it
 * was built in; else where it was installed. The file may not be there.
 * Returns: (transfer full). */
char *bf_data_path (const char *name) G_GNUC_WARN_UNUSED_RESULT;

/* The first page of the help, as HTML, in the first of the person's languages that it is there in,
 * else in English: of the build folder where the program runs from it, else where it was installed.
 * The file may not be there. Returns: (transfer full). */
char *bf_help_path (void) G_GNUC_WARN_UNUSED_RESULT;

/* TRUE where the program runs from the folder it was built in. */
gboolean bf_runs_from_build (void);
