/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* What GNU units makes of each expression, all in that unit, by one run of the program. The test
 * fails where the program is missing (.ci/setup installs it) or knows one of them not.
 * Returns: (transfer full), as many values as expressions. */
double *gnu_units (char **expressions, const char *unit) G_GNUC_WARN_UNUSED_RESULT;
