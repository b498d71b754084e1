/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* A change of the set-up becomes the document's part, as a step to be undone. part: (transfer
 * full); NULL changes nothing. Where the metal or the bend is another one, the trial bend that fits
 * is taken, or one that fits no more is dropped, in the same step. merge_key: as for
 * bf_document_apply(). */
void bf_setup_edit (BfDocument *document, BfPart *part, const char *name, const char *merge_key);

/* Shows in a label what the last change of the set-up did to the part; another edit clears it. The
 * label follows the document for as long as it lives. */
void bf_setup_tell_changes (GtkLabel *label, BfDocument *document);
