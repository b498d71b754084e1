/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/show-file.h"

static void
open_folder (GFile *file)
{
  g_autoptr (GFile) folder = g_file_get_parent (file);
  g_autofree char *uri = folder != NULL ? g_file_get_uri (folder) : NULL;

  if (uri != NULL)
    g_app_info_launch_default_for_uri_async (uri, NULL, NULL, NULL, NULL);
}

static void
shown_cb (GObject *bus, GAsyncResult *result, gpointer user_data)
{
  g_autoptr (GFile) file = user_data;
  g_autoptr (GVariant) answer =
      g_dbus_connection_call_finish (G_DBUS_CONNECTION (bus), result, NULL);

  if (answer == NULL)
    open_folder (file);
}

/* File managers answer to one name on the bus, an interface of freedesktop.org. */
static void
bus_cb (GObject *source, GAsyncResult *result, gpointer user_data)
{
  g_autoptr (GFile) file = user_data;
  g_autoptr (GDBusConnection) bus = g_bus_get_finish (result, NULL);
  g_autofree char *uri = g_file_get_uri (file);
  const char *uris[] = { uri, NULL };
  (void)source;

  if (bus == NULL)
    open_folder (file);
  else
    g_dbus_connection_call (bus, "org.freedesktop.FileManager1", "/org/freedesktop/FileManager1",
                            "org.freedesktop.FileManager1", "ShowItems",
                            g_variant_new ("(^ass)", uris, ""), NULL, G_DBUS_CALL_FLAGS_NONE, -1,
                            NULL, shown_cb, g_object_ref (file));
}

void
bf_show_in_folder (GFile *file)
{
  g_return_if_fail (G_IS_FILE (file));
  g_bus_get (G_BUS_TYPE_SESSION, NULL, bus_cb, g_object_ref (file));
}
