/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* A random part of any kind, the same everywhere for one seed: mostly make_random(); every sixth is
 * one of 5 to 12 sides, three flanges deep, with every join there is; another sixth a box or an L
 * of square walls whose corners are mostly folded double. */
BfPart *make_any (guint seed);
