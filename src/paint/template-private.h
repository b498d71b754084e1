/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/blank-view.h"
#include "paint/corner-pieces.h"
#include "paint/template-plan.h"
#include "paint/template.h"

/* What the files that draw a template share; of no use outside them. */

struct _BfTemplate
{
  BfFold *asked; /* as the caller has it */
  BfFold *fold;  /* as it is drawn: that one, or as the metal's other face shows it */
  gboolean is_mirrored;
  const BfPenSet *pens; /* or NULL */
  BfPrinterScale printer;
  BfPaperKind paper_kind;
  double width_mm, height_mm; /* the page; the plan knows it as it comes out of the printer */
  BfUnits units;
  char *date;
  char *sentence;     /* the set-up */
  char *warning;      /* NULL where nothing must be fixed */
  GPtrArray *notices; /* char *: how this is not a usual template, a row each */
  BfPageFormat format;
  BfTemplatePlan *plan;    /* NULL where corners is not */
  BfCornerPieces *corners; /* NULL for the whole blank */
  GPtrArray *labels;       /* of the pages */
};

#define BF_TEMPLATE_MARGIN_MM 10.0
#define BF_TEMPLATE_OVERLAP_MM 10.0
#define BF_TEMPLATE_FOOT_MM 32.0
#define BF_TEMPLATE_WARNING_MM 5.5 /* taller by this for a warning, and again for each notice */
#define BF_TEMPLATE_SIDE_MM 4.0    /* for the upright check bar */
#define BF_TEMPLATE_SIDE_LENGTH_MM 122.0 /* and how long it is, words and all */
#define BF_TEMPLATE_CAP_MM 2.5           /* the smallest capitals on paper */

/* Where page i joins its neighbours: marks and words. cr as for bf_blank_view_draw(). */
void bf_template_draw_joins (const BfTemplate *template, guint i, cairo_t *cr);

/* On a page that no neighbours lead to from the first: a cross, and how far it is from the blank's
 * left and lower ends as the pages lie, so that a tape can find the page's place. Nothing on other
 * pages. style: as the blank was drawn there. cr as for bf_blank_view_draw(). */
void bf_template_draw_place (const BfTemplate *template,
                             guint i,
                             const BfBlankStyle *style,
                             cairo_t *cr);

/* The pieces of page i. cr's units are millimetres, y down from the upper left corner of what the
 * printer can reach. */
void bf_template_draw_pieces (const BfTemplate *template, guint i, cairo_t *cr);

/* The least width and the height of the words under a piece. */
BfVec2 bf_template_piece_caption (void);

/* A registration cross: in a diamond, not to be taken for a drill's, which is in a circle. */
#define BF_TEMPLATE_CROSS_ARM_MM 3.5 /* within half the overlap */
void bf_template_draw_cross (cairo_t *cr, BfVec2 at);

/* The words, bars and map at the foot of page i. cr's units are millimetres, y down from the
 * foot's upper left corner; width_mm is what the printer can reach. */
void bf_template_draw_foot (const BfTemplate *template, guint i, cairo_t *cr, double width_mm);

/* The upright check bar at the right of the page, above the foot. cr's units are millimetres, y
 * down; its origin is where the foot's upper right corner is. */
void bf_template_draw_side (cairo_t *cr);

/* The place of that bar on page i of a plan without a column for it: on paper that is the page's
 * own and free of the blank's lines. bar: (out), on the turned drawing. FALSE where there is none.
 */
gboolean bf_template_find_bar (const BfFold *fold, const BfTemplatePlan *plan, guint i, BfBox *bar);

/* What of page i words may stand on: its own paper, off joins and off the bar, on the turned
 * drawing. */
BfBox bf_template_words_box (const BfTemplate *template, guint i);

/* The upright check bar of page i, if it has a place. cr's units are millimetres, y down from the
 * paper's upper left corner. */
void bf_template_draw_bar (const BfTemplate *template, guint i, cairo_t *cr);

/* The map of all pages with page i marked, fitted into that width and height. cr's units are
 * millimetres, y down from the map's upper left corner. */
void bf_template_draw_map (const BfTemplate *template, guint i, cairo_t *cr, BfVec2 size);
