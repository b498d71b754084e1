/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* A picture of the whole window is some megabytes. keep FALSE: such blocks come from the system and
 * go back to it at once. keep TRUE: they are kept for the next frame; while something is dragged,
 * fetching them anew would cost more than folding and drawing together. */
void bf_large_blocks_keep (gboolean keep);
