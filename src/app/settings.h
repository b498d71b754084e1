/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gio/gio.h>

#include "core/part.h"
#include "paint/paper.h"

/* What a person has chosen for good, and what their locale says where they have not. */

/* The program's settings; those of the build folder where the program was not installed. NULL where
 * there are none at all: then the locale alone counts. Returns: (transfer full). */
GSettings *bf_settings_new (void) G_GNUC_WARN_UNUSED_RESULT;

/* Units of a new part. settings may be NULL. */
BfUnits bf_settings_units (GSettings *settings);

/* The paper of templates. settings may be NULL. Owned by the library. */
const BfPaper *bf_settings_paper (GSettings *settings);
