/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "fold/fold.h"
#include "paint/paper.h"

/* Every kind of page, drawn by functions of one shape. */

/* Draws one page in millimetres, y down. */
typedef void (*PageFunc) (gconstpointer pages, guint page, cairo_t *cr);

void draw_card (gconstpointer card, guint page, cairo_t *cr);         /* a BfCard */
void draw_gauges (gconstpointer gauges, guint page, cairo_t *cr);     /* a BfGauges */
void draw_marking (gconstpointer marking, guint page, cairo_t *cr);   /* a BfMarkingPages */
void draw_template (gconstpointer template, guint page, cairo_t *cr); /* a BfTemplate */

/* What has one page only: page is 0. */
typedef struct
{
  const BfFold *fold;
  const BfPaper *paper;
} PackPage;

void draw_model (gconstpointer model, guint page, cairo_t *cr); /* a BfModel */
void draw_strip (gconstpointer strip, guint page, cairo_t *cr); /* a BfStripPage */
void draw_pack (gconstpointer pack, guint page, cairo_t *cr);   /* a PackPage */
