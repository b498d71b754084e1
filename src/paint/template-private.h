/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/template-plan.h"
#include "paint/template.h"

/* What the files that draw a template share; of no use outside them. */

struct _BfTemplate
{
  BfFold *fold;
  BfUnits units;
  char *date;
  char *sentence; /* the set-up */
  char *warning;  /* NULL where nothing must be fixed */
  BfTemplatePlan *plan;
  GPtrArray *labels; /* of the pages */
};

#define BF_TEMPLATE_MARGIN_MM 10.0
#define BF_TEMPLATE_OVERLAP_MM 10.0
#define BF_TEMPLATE_FOOT_MM 32.0
#define BF_TEMPLATE_WARNING_MM 5.5 /* taller by this where there is a warning */
#define BF_TEMPLATE_CAP_MM 2.5     /* the smallest capitals on paper */

/* Where page i joins its neighbours: marks and words. cr as for bf_blank_view_draw(). */
void bf_template_draw_joins (const BfTemplate *template, guint i, cairo_t *cr);

/* The words, bars and map at the foot of page i. cr's units are millimetres, y down from the
 * foot's upper left corner; width_mm is what the printer can reach. */
void bf_template_draw_foot (const BfTemplate *template, guint i, cairo_t *cr, double width_mm);

/* The map of all pages with page i marked, fitted into that width and height. cr's units are
 * millimetres, y down from the map's upper left corner. */
void bf_template_draw_map (const BfTemplate *template, guint i, cairo_t *cr, BfVec2 size);
