/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part-reader.h"

/* The pieces that bf_part_from_text() is made of. For src/core/part-*.c only. */

/* Reads the lists of flanges, corners and openings, and a base's own corners, into the part.
 * Whether they point at anything is not asked yet. */
void bf_read_flanges (BfReader *reader, const BfPlace *root, BfPart *part);
void bf_read_corners (BfReader *reader, const BfPlace *root, BfPart *part);
void bf_read_openings (BfReader *reader, const BfPlace *root, BfPart *part);
void bf_read_base_corners (BfReader *reader, const BfPlace *base, BfPart *part);

/* What is ticked of the work; leaves the part as it is where nothing is told. */
void bf_read_parted (BfReader *reader, const BfPlace *root, BfPart *part);
void bf_read_made (BfReader *reader, const BfPlace *root, BfPart *part);

/* The members of a bend into one that holds nothing yet. */
void bf_read_bend (BfReader *reader, const BfPlace *parent, BfBend *bend);

/* FALSE, with BF_PART_ERROR_MEMBER, where an id is used twice or reserved, where something hangs
 * on a flange, edge or corner that is not there, or where flanges hang on each other in a ring. */
gboolean bf_part_check_references (const BfPart *part, GError **error);
