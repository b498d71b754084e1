/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gio/gio.h>

/* All of an ordinary file. One that is longer than max_bytes comes cut off after one byte more,
 * so that the reader can say that it is too much. Pipes, devices and folders are refused: they
 * could give bytes without end, or none. error: BF_PART_ERROR_READ. Returns: (transfer full). */
GBytes *bf_read_file (GFile *file, gsize max_bytes, GError **error) G_GNUC_WARN_UNUSED_RESULT;
