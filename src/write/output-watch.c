/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/output-watch.h"

#include <gio/gio.h>
#include <glib/gi18n.h>

static GPrivate current;

void
bf_output_watch_set (BfOutputWatch *watch)
{
  g_private_set (&current, watch);
}

gboolean
bf_output_watch_step (guint done, guint n, GError **error)
{
  BfOutputWatch *watch = g_private_get (&current);

  if (watch == NULL)
    return TRUE;
  g_atomic_int_set (&watch->done, (gint)done);
  g_atomic_int_set (&watch->n, (gint)n);
  if (!g_atomic_int_get (&watch->stops))
    return TRUE;
  g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_CANCELLED, _ ("stopped; nothing was written"));
  return FALSE;
}

void
bf_output_watch_stop (BfOutputWatch *watch)
{
  g_return_if_fail (watch != NULL);

  g_atomic_int_set (&watch->stops, TRUE);
}

void
bf_output_watch_read (BfOutputWatch *watch, guint *done, guint *n)
{
  g_return_if_fail (watch != NULL && done != NULL && n != NULL);

  *n = (guint)g_atomic_int_get (&watch->n);
  *done = (guint)g_atomic_int_get (&watch->done);
}
