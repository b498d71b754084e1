/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/template.h"
#include "write/output-file.h"

/* The template as a PDF, at full size. */

/* Every page of the template as one PDF, each page as large as its paper. Returns: (transfer
 * full), or NULL with BF_WRITE_ERROR_DRAWING. */
GBytes *bf_template_pdf (const BfTemplate *template, GError **error) G_GNUC_WARN_UNUSED_RESULT;
