/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/setup-sentence.h"

/* The set-up sentence in pieces, so that each phrase can be a menu in its place. */

typedef struct
{
  char *words; /* plain words between phrases; NULL for a phrase */
  BfSetupPhrase phrase;
} BfSetupSegment;

/* Takes a format of bf_setup_format() apart: "%s" is the next phrase, "%2$s" the second. What is
 * neither stands as it is. Returns: (transfer full) (element-type BfSetupSegment). */
GArray *bf_setup_segments (const char *format) G_GNUC_WARN_UNUSED_RESULT;
