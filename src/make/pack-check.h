/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What a cutting machine may trip over: its least hole and its least bridge. */

typedef struct
{
  double hole_mm;          /* the narrowest way across an opening; INFINITY where there is none */
  double hole_needed_mm;   /* the thickness (common practice for laser, plasma and water) */
  double bridge_mm;        /* the least metal between two cuts; INFINITY where there is one only */
  double bridge_needed_mm; /* max (2 t, 3 mm), as for slots (common practice) */
  gboolean kerf_taken;     /* FALSE from bf_pack_check(): who writes the pattern knows */
} BfPackCheck;

/* check: (out). */
void bf_pack_check (const BfFold *fold, BfPackCheck *check);

/* The name, without a suffix, of the files that go to a service: "Spoke tray, 2 off, mild steel
 * 1.5 mm". What a file system may not take is left out or replaced; never translated.
 * Returns: (transfer full). */
char *bf_pack_name (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
