/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/expected-error.h"
#include "fold/fold.h"

/* What a change of the set-up did to the part, in words. */

/* "relief drill 6.5 mm → 7 mm, K 0.42 → 0.44, blank 274.7 × 194.7 mm → 275.1 × 195.1 mm": as far as
 * they differ. Returns: (transfer full), or NULL where none does. */
char *bf_setup_changes (const BfFold *before, const BfFold *after) G_GNUC_WARN_UNUSED_RESULT;

/* "Expect ± 1 mm, mostly from the cutting.": of a wall's length, or of the width where there is
 * no bend. Returns: (transfer full). */
char *bf_setup_expect_words (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;
