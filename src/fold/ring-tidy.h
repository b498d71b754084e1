/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* Drops the vertices that lie within one line, or within one arc, of their neighbours, so that what
 * is one edge is told as one. The ring's shape stays as it is. */
void bf_ring_tidy (BfRing *ring);
