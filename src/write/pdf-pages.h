/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "core/part.h"
#include "write/output-file.h"

/* Pages as a PDF at full size. */

/* One page: draw gets a cairo_t in millimetres from the page's upper left corner. */
typedef struct
{
  double width_mm, height_mm;
  const char *label; /* "A1", shown as the page's number; NULL for a plain number */
} BfPdfPage;

typedef struct
{
  const BfPart *part; /* whose name and set-up the file says */
  guint n_pages;
  BfPdfPage (*page) (guint i, gconstpointer data);
  void (*draw) (guint i, cairo_t *cr, gconstpointer data);
  gconstpointer data;
} BfPdfPages;

/* All pages as one PDF. Returns: (transfer full), or NULL with BF_WRITE_ERROR_DRAWING, or
 * as bf_output_watch_step() has it. */
GBytes *bf_pdf_pages (const BfPdfPages *pages, GError **error) G_GNUC_WARN_UNUSED_RESULT;
