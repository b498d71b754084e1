/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* How far the making has got: which steps of the work are ticked. What a step is called is the
 * caller's business (make/work-ticks.h); here they are words. */

typedef struct
{
  char *blank;      /* of which blank: ticks of another one count for nothing */
  GPtrArray *steps; /* char *, ascending, none twice */
} BfMade;

/* Nothing ticked yet. The text is copied. Returns: (transfer full). */
BfMade *bf_made_new (const char *blank) G_GNUC_WARN_UNUSED_RESULT;

/* A deep copy; NULL of NULL. */
BfMade *bf_made_copy (const BfMade *made) G_GNUC_WARN_UNUSED_RESULT;
void bf_made_free (BfMade *made);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfMade, bf_made_free)

/* FALSE where made is NULL, or is of another blank. */
gboolean bf_made_has (const BfMade *made, const char *blank, const char *step);

/* Ticks a step, or takes its tick away. */
void bf_made_set (BfMade *made, const char *step, gboolean done);
