/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* "Before you cut": what a person should know of a fold before metal is cut. Appends BfCheck to
 * fold->checks and puts them in order: must fix, look at, good to know. Everything else of the fold
 * is there already. */
void bf_checks_find (BfFold *fold);

void bf_check_clear (BfCheck *check);

/* A check of that bend, at the middle of its line, with no numbers yet. */
BfCheck bf_checks_at_bend (const BfBendResult *bend, const char *code, BfSeverity severity);

/* Adds a check; message is taken over, where is copied. found, needed: NAN for no number. */
void bf_checks_add (BfFold *fold, BfCheck check, const char *where, char *message);

/* A length with its unit, as the part's units have it. Returns: (transfer full). */
char *bf_checks_length (const BfFold *fold, double length_mm) G_GNUC_WARN_UNUSED_RESULT;
