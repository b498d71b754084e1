/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* A part that uses much of what a part can hold, the same for the same seed: a convex base, some
 * flanges with lips and hems on it, corners and openings; about half of all that can be left out
 * is. Sizes are drawn from steps of 1/8 mm, so that sums of a few of them are exact.
 * Returns: (transfer full). */
BfPart *random_part (guint32 seed) G_GNUC_WARN_UNUSED_RESULT;

/* Fails the test unless the two parts hold the same, numbers to tolerance. */
void assert_same_part (const BfPart *a, const BfPart *b, double tolerance);
