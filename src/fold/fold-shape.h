/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* A fold without its blank and its checks, which take most of the time: for trying what a change
 * would do. Returns: (transfer full). */
BfFold *bf_fold_shape (BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
