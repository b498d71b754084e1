/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* A part's set-up in one sentence, as it stands on every paper and on top of the window: "Mild
 * steel 1.5 mm, cut by me with a 125 mm disc, bent over a bar, corners welded, sizes outside." */

typedef enum
{
  BF_SETUP_METAL,   /* "Mild steel 1.5 mm" */
  BF_SETUP_CUTTING, /* "a 125 mm disc" */
  BF_SETUP_BENDING, /* "over a bar" */
  BF_SETUP_JOINING, /* "welded" */
  BF_SETUP_MEASURE, /* "outside" */
  BF_N_SETUP,
} BfSetupPhrase;

/* One phrase of the sentence, in the person's language and the part's units.
 * Returns: (transfer full). */
char *bf_setup_phrase (const BfPart *part, BfSetupPhrase phrase) G_GNUC_WARN_UNUSED_RESULT;

/* The sentence with a %s for each phrase, in the order of BfSetupPhrase (a translation may give
 * them another order by number, "%2$s"). It differs by who cuts. Static. */
const char *bf_setup_format (const BfPart *part);

/* The whole sentence. Returns: (transfer full). */
char *bf_setup_sentence (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
