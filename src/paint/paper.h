/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* The papers that templates are printed on. */

typedef struct
{
  const char *name;           /* "A4"; a proper name, not translated */
  double width_mm, height_mm; /* held upright: width is the shorter side */
} BfPaper;

/* All papers, the default first. n_papers: (out). Owned by the library. */
const BfPaper *bf_papers (guint *n_papers);

/* The paper of that name in whatever case, or NULL. Owned by the library. */
const BfPaper *bf_paper_find (const char *name);

/* A4, what holds where nobody chose. */
const BfPaper *bf_paper_default (void);

/* The paper that people use where the locale (LC_PAPER) comes from; the default in the C locale
 * and wherever the locale names a size that is not here. */
const BfPaper *bf_paper_of_locale (void);

/* "A4, A3, Letter, Legal, Tabloid", for messages. Returns: (transfer full). */
char *bf_paper_names (void) G_GNUC_WARN_UNUSED_RESULT;
