/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* Files of the person's own, for tests that run with G_TEST_OPTION_ISOLATE_DIRS. */

/* Path of a file in that folder of own things, which is made. Returns: (transfer full). */
char *own_path (const char *folder, const char *name);

/* What stands in it now. Returns: (transfer full). */
char *get_own (const char *folder, const char *name) G_GNUC_WARN_UNUSED_RESULT;

/* Puts a text there. */
void put_own (const char *folder, const char *name, const char *text);
