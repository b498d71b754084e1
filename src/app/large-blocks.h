/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

/* A picture of the window is some megabytes. While the window opens, such blocks come from the
 * system and go back to it at once: what it takes to open is no more than what is in use. Then they
 * are kept for the next frame, because fetching them anew takes longer than folding and drawing.
 * Before the first window. */
void bf_large_blocks_set_up (void);
