/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Appends a BfBendResult a flap to fold->bends, with no slots yet; the flaps are placed and their
 * sides settled. */
void bf_bends_find (BfFold *fold);

/* Lays slots along the bends that are slotted, clear of the fold's reliefs and openings, and works
 * out what making each bend takes. */
void bf_bends_slot (BfFold *fold);

void bf_bend_result_clear (BfBendResult *bend);
