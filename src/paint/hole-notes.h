/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/drill-list.h"

/* Which holes have their size said beside them: each, but where many are of one size, one says it
 * for all of those, so that notes of a perforated part do not hide it. */

/* That many of one size are told apart from each other by nothing. */
#define BF_HOLE_CROWD 12

typedef enum
{
  BF_HOLE_UNTOLD, /* out of view, the other end of a slot, or one of a crowd */
  BF_HOLE_ITSELF,
  BF_HOLE_OTHERS, /* for all holes that have no note of their own */
  BF_HOLE_ALL,    /* for all holes there are */
} BfHoleNote;

/* What each of the centres (BfDrilled) is told by, as seen in view (NULL: all is seen). Returns:
 * (transfer full), as many as there are centres; free with g_free(). */
BfHoleNote *bf_hole_notes (const GArray *centres, const BfBox *view) G_GNUC_WARN_UNUSED_RESULT;
