/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* The papers that templates are printed on. */

typedef enum
{
  BF_PAPER_CUT,   /* of a size */
  BF_PAPER_ROLL,  /* endless: a page is as long as its drawing takes */
  BF_PAPER_WHOLE, /* no paper of one's own: one page as large as its drawing takes */
} BfPaperKind;

typedef struct
{
  const char *name;           /* "A4"; a proper name, not translated */
  double width_mm, height_mm; /* held upright: width is the shorter side; of a roll and of one whole
                               * page the height (and width) is that of A4, for other outputs */
  BfPaperKind kind;
} BfPaper;

/* The longest page, either way, that every reader of PDF takes: 200 in. */
#define BF_PAPER_LONGEST_MM 5080.0

/* The papers that printers take, the default first: neither rolls nor one whole page.
 * n_papers: (out). Owned by the library. */
const BfPaper *bf_papers (guint *n_papers);

/* The paper of that name in whatever case, or NULL: also "roll-914", a roll of any whole width from
 * 200 to 2000 mm. Owned by the library, for good. */
const BfPaper *bf_paper_find (const char *name);

/* A4, what holds where nobody chose. */
const BfPaper *bf_paper_default (void);

/* The paper that people use where the locale (LC_PAPER) comes from; the default in the C locale
 * and wherever the locale names a size that is not here. */
const BfPaper *bf_paper_of_locale (void);

/* "A4, A3, Letter, Legal, Tabloid, roll, whole", for messages. Returns: (transfer full). */
char *bf_paper_names (void) G_GNUC_WARN_UNUSED_RESULT;
