/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "app/file-dialogs.h"
#include "app/first-made-window.h"
#include "app/keys-window.h"
#include "app/message.h"
#include "app/pens-window.h"
#include "app/print.h"
#include "app/sums-window.h"
#include "app/window-private.h"
#include "core/part-file.h"

/* What the window does at a key, a button or a menu. Names are those the keys are bound to. */

static void
undo_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  bf_document_undo (bf_window_get_document (BF_WINDOW (widget)));
}

static void
redo_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  bf_document_redo (bf_window_get_document (BF_WINDOW (widget)));
}

/* A window that has a part already keeps it; the file gets a window of its own. */
static void
open_chosen_cb (GFile *file, gpointer user_data)
{
  g_autoptr (BfWindow) self = user_data;
  if (file == NULL)
    return;
  if (bf_document_get_part (bf_window_get_document (self)) == NULL)
    {
      bf_window_open (self, file);
      return;
    }
  BfWindow *other = bf_window_new (gtk_window_get_application (GTK_WINDOW (self)));
  gtk_window_present (GTK_WINDOW (other));
  bf_window_open (other, file);
}

static void
open_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  bf_file_dialog_open (GTK_WINDOW (widget), open_chosen_cb, g_object_ref (widget));
}

static void
save_to (BfWindow *self, GFile *file)
{
  g_autoptr (GError) error = NULL;
  if (bf_document_save (bf_window_get_document (self), file, &error))
    return;
  bf_message_show (GTK_WINDOW (self), _ ("The part was not saved"), error->message);
}

static void
save_chosen_cb (GFile *file, gpointer user_data)
{
  g_autoptr (BfWindow) self = user_data;
  if (file != NULL)
    save_to (self, file);
}

static void
save_as_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  BfDocument *document = bf_window_get_document (BF_WINDOW (widget));
  g_autofree char *title = bf_document_dup_title (document);
  g_autofree char *file_name = g_strconcat (title, BF_PART_FILE_SUFFIX, NULL);
  g_strdelimit (file_name, G_DIR_SEPARATOR_S, '-');
  bf_file_dialog_save (GTK_WINDOW (widget), _ ("Save the part"), file_name, save_chosen_cb,
                       g_object_ref (widget));
}

static void
save_over_cb (int answer, gpointer user_data)
{
  g_autoptr (BfWindow) self = user_data;
  if (answer == 1)
    save_as_action (GTK_WIDGET (self), NULL, NULL);
  if (answer == 0)
    save_to (self, NULL);
}

static void
ask_before_saving_over (BfWindow *self)
{
  const char *const buttons[] = { _ ("Save _anyway"), _ ("Save _beside it…"), NULL };
  BfQuestion question = { _ ("Another program has changed this file"),
                          _ ("Saving here would take the other changes away."), buttons };
  bf_message_ask (GTK_WINDOW (self), &question, save_over_cb, g_object_ref (self));
}

static void
save_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  BfDocument *document = bf_window_get_document (BF_WINDOW (widget));

  if (bf_document_get_file (document) == NULL)
    save_as_action (widget, name, parameter);
  else if (!bf_document_file_is_foreign (document))
    save_to (BF_WINDOW (widget), NULL);
  else
    ask_before_saving_over (BF_WINDOW (widget));
}

static void
print_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  BfFold *fold = bf_document_get_fold (bf_window_get_document (BF_WINDOW (widget)));
  if (fold != NULL)
    bf_print_template (BF_WINDOW (widget), fold);
}

static void
fit_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  bf_surface_view_fit (bf_window_get_view (BF_WINDOW (widget)));
}

static void
page_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  bf_window_set_page (BF_WINDOW (widget), g_variant_get_string (parameter, NULL));
}

static void
menu_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  bf_window_open_menu (BF_WINDOW (widget));
}

static void
checks_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  bf_window_open_checks (BF_WINDOW (widget));
}

static void
first_made_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  bf_first_made_window_open (widget, bf_window_get_document (BF_WINDOW (widget)));
}

static void
sums_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  BfWindow *self = BF_WINDOW (widget);
  (void)name;

  bf_sums_window_open (widget, bf_window_get_document (self), bf_window_get_settings (self),
                       g_variant_get_string (parameter, NULL));
}

static void
pens_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  bf_pens_window_open (widget, bf_window_get_document (BF_WINDOW (widget)));
}

static void
keys_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  bf_keys_window_show (GTK_WINDOW (widget));
}

void
bf_window_class_install_actions (GtkWidgetClass *widget_class)
{
  gtk_widget_class_install_action (widget_class, "win.open", NULL, open_action);
  gtk_widget_class_install_action (widget_class, "win.save", NULL, save_action);
  gtk_widget_class_install_action (widget_class, "win.save-as", NULL, save_as_action);
  gtk_widget_class_install_action (widget_class, "win.undo", NULL, undo_action);
  gtk_widget_class_install_action (widget_class, "win.redo", NULL, redo_action);
  gtk_widget_class_install_action (widget_class, "win.print", NULL, print_action);
  gtk_widget_class_install_action (widget_class, "win.fit", NULL, fit_action);
  gtk_widget_class_install_action (widget_class, "win.page", "s", page_action);
  gtk_widget_class_install_action (widget_class, "win.menu", NULL, menu_action);
  gtk_widget_class_install_action (widget_class, "win.checks", NULL, checks_action);
  gtk_widget_class_install_action (widget_class, "win.first-made", NULL, first_made_action);
  gtk_widget_class_install_action (widget_class, "win.sums", "s", sums_action);
  gtk_widget_class_install_action (widget_class, "win.pens", NULL, pens_action);
  gtk_widget_class_install_action (widget_class, "win.keys", NULL, keys_action);
  gtk_widget_class_install_action (widget_class, "win.save-output", "s",
                                   bf_window_save_output_action);
}

void
bf_window_update_actions (BfWindow *self)
{
  GtkWidget *widget = GTK_WIDGET (self);
  BfDocument *document = bf_window_get_document (self);
  gboolean has_part = bf_document_get_part (document) != NULL;
  const char *undo = bf_document_get_undo_name (document);
  const char *redo = bf_document_get_redo_name (document);

  gtk_widget_action_set_enabled (widget, "win.undo", undo != NULL);
  gtk_widget_action_set_enabled (widget, "win.redo", redo != NULL);
  gtk_widget_action_set_enabled (widget, "win.save", has_part);
  gtk_widget_action_set_enabled (widget, "win.save-as", has_part);
  gtk_widget_action_set_enabled (widget, "win.print", has_part);
  gtk_widget_action_set_enabled (widget, "win.save-output", has_part);
  gtk_widget_action_set_enabled (widget, "win.fit", has_part);
  gtk_widget_action_set_enabled (widget, "win.first-made", has_part);
  gtk_widget_action_set_enabled (widget, "win.sums", has_part);
  gtk_widget_action_set_enabled (widget, "win.page", has_part);
  gtk_widget_action_set_enabled (widget, "win.checks", has_part);
  bf_window_name_steps (self, undo, redo);
}
