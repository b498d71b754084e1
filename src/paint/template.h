/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "core/own-pens.h"
#include "fold/fold.h"
#include "paint/paper.h"
#include "paint/printer-scale.h"

/* The full-size paper template of a blank, on as many pages as it takes. Nothing here knows PDF
 * or printers: whoever has a cairo context of the page's size draws a page on it. */

typedef struct
{
  const BfPaper *paper;   /* NULL: the default */
  BfUnits units;          /* for numbers in words */
  const char *date;       /* as it shall stand on the pages; NULL: today, as 2026-01-31 */
  gboolean mirror;        /* for the metal's other face: what is up there is told as down */
  gboolean corners_only;  /* pieces of the blank, on as few pages as can be, and distances between
                           * them, instead of the whole of it */
  const BfPenSet *pens;   /* the person's own, for good; NULL: the defaults */
  BfPrinterScale printer; /* both 0 stand for a printer that is right */
} BfTemplateOptions;

typedef struct
{
  const char *label;    /* "A1": column letter, row number from the top; the template's string */
  guint turn_deg;       /* 0 or 90: how far the blank is turned counter-clockwise on the page, which
                         * is always held upright */
  gboolean is_mirrored; /* seen from the other face: on it the blank's x runs the other way */
  BfVec2 origin;        /* the blank's point that lies at the page's lower left corner */
  double width_mm, height_mm;
} BfTemplatePage;

typedef struct _BfTemplate BfTemplate;

/* Lays a fold's blank out on pages. The fold is kept by reference; options are copied, and NULL
 * stands for the default paper, the part's units and today. Returns: (transfer full). */
BfTemplate *bf_template_new (BfFold *fold,
                             const BfTemplateOptions *options) G_GNUC_WARN_UNUSED_RESULT;
void bf_template_free (BfTemplate *template);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfTemplate, bf_template_free)

/* At least 1: a blank without any line gets one page, with the words alone. */
guint bf_template_n_pages (const BfTemplate *template);

BfTemplatePage bf_template_page (const BfTemplate *template, guint i);

/* A piece of the blank on a page of corners only. */
typedef struct
{
  guint page;
  BfBox box;     /* what it shows, of the blank */
  BfVec2 cross;  /* the point of the blank that its distances are told of */
  BfVec2 origin; /* the blank's point that would lie at the page's lower left corner */
} BfTemplatePiece;

/* 0 where the whole blank is laid out. */
guint bf_template_n_pieces (const BfTemplate *template);

/* Piece k, whose number on paper is k + 1. */
BfTemplatePiece bf_template_piece (const BfTemplate *template, guint k);

const BfFold *bf_template_fold (const BfTemplate *template);

/* Draws page i, words and all. cr's units are millimetres, y down from the paper's upper left
 * corner. */
void bf_template_draw_page (const BfTemplate *template, guint i, cairo_t *cr);
