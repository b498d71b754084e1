/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* The set-up that a part begins with when it is made here: mild steel 1.5 mm, a 125 mm disc; or 16
 * gauge (0.0598 in), a 4 1/2 in disc, 0.055 in kerf and 1/32 in slack. Everything else is left to
 * the defaults. Its base is a square, so that it can be folded. Returns: (transfer full). */
BfPart *bf_first_part (BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
