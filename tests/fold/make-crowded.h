/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* A random part in whose blank flanges mostly want the same metal, the same everywhere for one
 * seed: walls, or long lips on walls, that face each other across a bay; and ears on walls that
 * meet at a corner of the base, square or not. */
BfPart *make_crowded (guint seed);
