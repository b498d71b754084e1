/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* The day as papers and files tell it, whatever the locale: "2026-01-31". Returns: (transfer full).
 */
char *bf_today (void) G_GNUC_WARN_UNUSED_RESULT;
