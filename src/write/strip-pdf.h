/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/strip-page.h"

/* The strips of a trial bend as a PDF of one page. Returns: (transfer full), or NULL with
 * BF_WRITE_ERROR_DRAWING. */
GBytes *bf_strip_pdf (const BfStripPage *strips, GError **error) G_GNUC_WARN_UNUSED_RESULT;
