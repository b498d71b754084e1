/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* Numbers with a decimal comma from here on, as a German system has them; the locale is built if
 * the system has none. FALSE, and the test is marked as skipped, where that cannot be done. */
gboolean comma_locale_begin (void);
void comma_locale_end (void);
