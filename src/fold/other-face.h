/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* The part as seen on the other face of its metal: in a mirror, and what is turned up there is
 * turned down here. Paper that is glued there and followed so gives the same part.
 * Returns: (transfer full): its fold. */
BfFold *bf_fold_other_face (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;
