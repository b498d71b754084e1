/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/template-plan.h"

/* One way to lay a drawing on rows of pages; of use to template-plan.c alone. */

/* Room round the drawing for half a line's width and the printer's own error. */
#define BF_GRID_PAD_MM 0.5

/* More rows than these are never shifted against each other. */
#define BF_GRID_SHIFTED_ROWS 16

typedef struct
{
  const GArray *ink;   /* BfInkLine, turned */
  const GArray *marks; /* BfVec2, turned */
  const BfPageFormat *format;
  BfVec2 window;                          /* a window's size */
  BfVec2 start;                           /* lower left corner of the grid, on the turned drawing */
  guint n[2];                             /* columns, rows */
  double shifts_mm[BF_GRID_SHIFTED_ROWS]; /* how far each row lies to the right of the start */
  guint ends[BF_GRID_SHIFTED_ROWS][2];    /* the first and the last column of each row */
} BfPageGrid;

/* Lays out the grid of its ink and format. shares: how much of the slack of the last page goes to
 * the left of the drawing and below it. No row is shifted. */
void bf_page_grid_init (BfPageGrid *grid, const double shares[2]);

/* Puts the pages of a row where the first one's window begins at that place: as many as that length
 * takes. begin_mm: not left of the grid's start. */
void bf_page_grid_place_row (BfPageGrid *grid, guint row, double begin_mm, double length_mm);

/* Takes away columns at either end that no row has. For a grid of rows that were placed. */
void bf_page_grid_trim (BfPageGrid *grid);

/* How far a row lies to the right of the grid's start, and its first (which 0) or last (1) column.
 */
double bf_page_grid_row_shift_mm (const BfPageGrid *grid, guint row);
guint bf_page_grid_row_end (const BfPageGrid *grid, guint row, guint which);

/* From one page's window to the next. */
double bf_page_grid_step_mm (const BfPageGrid *grid);

/* What the page of that place shows, and the same up to the middle of its overlaps. */
BfBox bf_page_grid_window (const BfPageGrid *grid, guint column, guint row);
BfBox bf_page_grid_cell (const BfPageGrid *grid, guint column, guint row);

/* Which cells hold ink, row by row. n_marked: (out). Returns: (transfer full). */
guint8 *bf_page_grid_ink (const BfPageGrid *grid, guint *n_marked) G_GNUC_WARN_UNUSED_RESULT;

/* The row whose own paper holds that height of the drawing; the nearest where none does. */
guint bf_page_grid_row_at (const BfPageGrid *grid, double y);

/* From where to where a row's own paper reaches, without end to left and right, and where it is
 * the first or the last, above or below. */
BfBox bf_page_grid_band (const BfPageGrid *grid, guint row);

/* Says of a row's columns which a line runs through. columns: (inout) as many as the grid has. */
void bf_page_grid_mark (const BfPageGrid *grid, guint row, const BfInkLine *line, guint8 *columns);
