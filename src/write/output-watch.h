/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* A long output seen from another thread: how far it has come, and that it shall stop. */

typedef struct
{
  gint done, n, stops; /* atomic: parts done, of how many (0: not known yet), whether to stop */
} BfOutputWatch;

/* Outputs of this thread are watched from now on; NULL: no more. The caller keeps the watch. */
void bf_output_watch_set (BfOutputWatch *watch);

/* To be called by what writes, before each part of its work. FALSE with G_IO_ERROR_CANCELLED where
 * it shall stop. Without a watch: TRUE, and nothing done. */
gboolean bf_output_watch_step (guint done, guint n, GError **error);

/* To be called from another thread. */
void bf_output_watch_stop (BfOutputWatch *watch);
void bf_output_watch_read (BfOutputWatch *watch, guint *done, guint *n);
