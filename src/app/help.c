/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/help.h"

#include <glib/gi18n.h>

#include "app/message.h"
#include "write/data-dir.h"

#define VIEWER_ADDRESS "help:benchfold"

static void
tell_where (GtkWindow *parent, const char *path)
{
  g_autofree char *shown = g_filename_display_name (path);
  /* Translators: %s is a file's path */
  g_autofree char *detail = g_strdup_printf (_ ("The help begins in %s"), shown);

  bf_message_show (parent, _ ("No program was found that shows help"), detail);
}

static void
browsed_cb (GObject *source, GAsyncResult *result, gpointer user_data)
{
  g_autoptr (GtkWindow) parent = user_data;
  g_autofree char *path = bf_help_path ();
  (void)source;

  if (!g_app_info_launch_default_for_uri_finish (result, NULL))
    tell_where (parent, path);
}

static void
browse (GtkWindow *parent)
{
  g_autofree char *path = bf_help_path ();
  g_autofree char *uri = g_filename_to_uri (path, NULL, NULL);

  g_app_info_launch_default_for_uri_async (uri, NULL, NULL, browsed_cb, g_object_ref (parent));
}

/* A viewer may be named that is not there: what is asked first is whether the pages can be found
 * by it at all, which those of a build folder cannot. */
void
bf_help_show (GtkWindow *parent)
{
  g_return_if_fail (GTK_IS_WINDOW (parent));

  g_autoptr (GAppInfo) viewer = g_app_info_get_default_for_uri_scheme ("help");
  if (bf_runs_from_build () || viewer == NULL ||
      !g_app_info_launch_default_for_uri (VIEWER_ADDRESS, NULL, NULL))
    browse (parent);
}
