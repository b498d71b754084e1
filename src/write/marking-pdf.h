/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/marking-pages.h"

/* Marking-out as a PDF. Returns: (transfer full), or NULL with BF_WRITE_ERROR_DRAWING. */
GBytes *bf_marking_pdf (const BfMarkingPages *pages, GError **error) G_GNUC_WARN_UNUSED_RESULT;
