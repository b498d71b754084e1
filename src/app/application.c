/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/application.h"

#include <glib-unix.h>
#include <glib/gi18n.h>

#include "app/help.h"
#include "app/keys.h"
#include "app/window.h"

struct _BfApplication
{
  GtkApplication parent_instance;
};

G_DEFINE_FINAL_TYPE (BfApplication, bf_application, GTK_TYPE_APPLICATION)

static void
new_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  (void)action;
  (void)parameter;
  gtk_window_present (GTK_WINDOW (bf_window_new (GTK_APPLICATION (user_data))));
}

/* Every window is asked to close, so that each can keep its work first. */
static void
quit_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  (void)action;
  (void)parameter;
  g_autoptr (GList) windows = g_list_copy (gtk_application_get_windows (user_data));
  for (GList *l = windows; l != NULL; l = l->next)
    gtk_window_close (l->data);
}

static void
about_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  (void)action;
  (void)parameter;
  const char *authors[] = { "Benchfold contributors", NULL };
  gtk_show_about_dialog (gtk_application_get_active_window (user_data), "program-name", "Benchfold",
                         "version", BF_VERSION, "logo-icon-name", BF_APPLICATION_ID, "comments",
                         _ ("From the size of a thing to the marked-out metal"), "authors", authors,
                         "license-type", GTK_LICENSE_GPL_3_0, NULL);
}

static void
help_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  (void)action;
  (void)parameter;
  bf_help_show (gtk_application_get_active_window (user_data));
}

static const GActionEntry app_actions[] = {
  { .name = "new", .activate = new_action },
  { .name = "quit", .activate = quit_action },
  { .name = "help", .activate = help_action },
  { .name = "about", .activate = about_action },
};

static void
bind_keys (GtkApplication *app)
{
  guint n;
  const BfKey *keys = bf_keys (&n);

  for (guint i = 0; i < n; i++)
    if (keys[i].action != NULL)
      gtk_application_set_accels_for_action (app, keys[i].action,
                                             (const char *const *)keys[i].accels);
}

/* The session, the terminal or a person at one wants the program to end: nothing is lost by it. */
static gboolean
told_to_end_cb (gpointer user_data)
{
  GList *windows = gtk_application_get_windows (user_data);

  for (GList *l = windows; l != NULL; l = l->next)
    if (BF_IS_WINDOW (l->data))
      bf_window_keep (l->data);
  g_application_quit (user_data);
  return G_SOURCE_CONTINUE;
}

static void
listen_to_signals (GApplication *app)
{
  static const int numbers[] = { SIGTERM, SIGHUP, SIGINT };

  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    g_unix_signal_add (numbers[i], told_to_end_cb, app);
}

static void
load_style (void)
{
  g_autoptr (GtkCssProvider) provider = gtk_css_provider_new ();
  gtk_css_provider_load_from_resource (provider, BF_APPLICATION_PATH "/style.css");
  gtk_style_context_add_provider_for_display (gdk_display_get_default (),
                                              GTK_STYLE_PROVIDER (provider),
                                              GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
}

static void
bf_application_startup (GApplication *app)
{
  G_APPLICATION_CLASS (bf_application_parent_class)->startup (app);

  g_action_map_add_action_entries (G_ACTION_MAP (app), app_actions, G_N_ELEMENTS (app_actions),
                                   app);
  bind_keys (GTK_APPLICATION (app));
  gtk_window_set_default_icon_name (BF_APPLICATION_ID);
  load_style ();
  listen_to_signals (app);
}

static void
bf_application_activate (GApplication *app)
{
  GtkWindow *window = gtk_application_get_active_window (GTK_APPLICATION (app));
  if (window == NULL)
    window = GTK_WINDOW (bf_window_new (GTK_APPLICATION (app)));
  gtk_window_present (window);
}

static void
bf_application_open (GApplication *app, GFile **files, int n_files, const char *hint)
{
  (void)hint;
  for (int i = 0; i < n_files; i++)
    {
      BfWindow *window = bf_window_new (GTK_APPLICATION (app));
      bf_window_open (window, files[i]);
      gtk_window_present (GTK_WINDOW (window));
    }
}

static void
bf_application_class_init (BfApplicationClass *klass)
{
  GApplicationClass *application_class = G_APPLICATION_CLASS (klass);

  application_class->startup = bf_application_startup;
  application_class->activate = bf_application_activate;
  application_class->open = bf_application_open;
}

static void
bf_application_init (BfApplication *self)
{
  (void)self;
}

BfApplication *
bf_application_new (void)
{
  return g_object_new (BF_TYPE_APPLICATION, "application-id", BF_APPLICATION_ID, "flags",
                       G_APPLICATION_HANDLES_OPEN | G_APPLICATION_NON_UNIQUE, "resource-base-path",
                       BF_APPLICATION_PATH, NULL);
}
