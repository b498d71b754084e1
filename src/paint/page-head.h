/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "fold/fold.h"
#include "paint/paper.h"

/* What stands on top of a page, so that a paper found in a drawer can
 * be used: the part's name, what the page is and of what date, the set-up and the units, and what
 * must be fixed before it is cut. Shared by the pages that are read, not measured. */

#define BF_PAGE_MARGIN_MM 12.0
#define BF_PAGE_CAP_MM 2.4

typedef struct
{
  const BfFold *fold;
  const BfPaper *paper;
  const char *title; /* "Make card" */
  guint page, n_pages;
  const char *note;  /* one more sentence after the set-up, or NULL */
  gboolean cautions; /* the page has some: who decides is said */
} BfPageHead;

/* Draws it in millimetres from the page's upper left corner. Returns where the rest may begin. */
double bf_page_head_draw (const BfPageHead *head, cairo_t *cr);

/* The same place, nothing drawn. */
double bf_page_head_end_mm (const BfPageHead *head);

/* Words in lines no wider than width_mm, their first baseline at that point; returns how high they
 * are. cr: NULL to measure only. */
double bf_page_words (cairo_t *cr, const char *words, BfVec2 at, double width_mm, gboolean bold);

/* What must be fixed before anything is cut, in a sentence; NULL where nothing must. Returns:
 * (transfer full). */
char *bf_page_warning (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;

/* A rule across, in a thin grey line. */
void bf_page_rule (cairo_t *cr, BfVec2 from, double width_mm);
