/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* What a part is called on papers and in files. */

/* Its name, or words for a part that has none. The part's string, or a static one, translated. */
const char *bf_part_shown_name (const BfPart *part);

/* The same with how many are made, where that is more than one: "Spoke tray, 2 off". Returns:
 * (transfer full). */
char *bf_part_title (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
