/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/window-private.h"

#include <glib/gi18n.h>

#include "app/button-names.h"
#include "app/recent-list.h"
#include "app/settings.h"
#include "core/own-pens.h"

G_DEFINE_FINAL_TYPE (BfWindow, bf_window, GTK_TYPE_APPLICATION_WINDOW)

/* A title goes to the system at once, new or not, and this is asked for by every frame of a drag.
 */
static void
set_title (GtkWindow *window, const char *title)
{
  if (g_strcmp0 (gtk_window_get_title (window), title) != 0)
    gtk_window_set_title (window, title);
}

static void
update_title (BfWindow *self)
{
  if (bf_document_get_part (self->document) == NULL)
    {
      set_title (GTK_WINDOW (self), "Benchfold");
      return;
    }
  g_autofree char *title = bf_document_dup_title (self->document);
  g_autofree char *whole = bf_document_is_changed (self->document)
                               /* Translators: a window's title; %s is a part's name */
                               ? g_strdup_printf (_ ("%s (not saved)"), title)
                               : g_strdup (title);
  set_title (GTK_WINDOW (self), whole);
}

/* Pages are made when they are first needed: the empty window is there the sooner. */
static GtkWidget *
page_new (GType type, GtkBox *room)
{
  GtkWidget *page = g_object_new (type, "hexpand", TRUE, "vexpand", TRUE, NULL);
  gtk_box_append (room, page);
  return page;
}

static void
make_shape_page (BfWindow *self)
{
  if (self->shape_page != NULL)
    return;
  self->shape_page = BF_SHAPE_PAGE (page_new (BF_TYPE_SHAPE_PAGE, self->shape_room));
  bf_shape_page_set_document (self->shape_page, self->document, self->view);
  bf_name_buttons (GTK_WIDGET (self->shape_page));
}

static void
make_make_page (BfWindow *self)
{
  if (self->make_page != NULL)
    return;
  self->make_page = BF_MAKE_PAGE (page_new (BF_TYPE_MAKE_PAGE, self->make_room));
  bf_make_page_set_document (self->make_page, self->document, self->settings);
  bf_name_buttons (GTK_WIDGET (self->make_page));
}

static void
document_changed_cb (BfWindow *self)
{
  gboolean has_part = bf_document_get_part (self->document) != NULL;

  if (has_part)
    make_shape_page (self);

  gtk_stack_set_visible_child_name (self->outer_stack, has_part ? "part" : "empty");
  gtk_stack_set_visible_child_name (self->title_stack, has_part ? "pages" : "name");
  update_title (self);
  bf_window_update_actions (self);
}

static void
page_changed_cb (BfWindow *self)
{
  if (g_strcmp0 (bf_window_get_page (self), "make") == 0)
    make_make_page (self);
  if (self->document != NULL)
    bf_window_update_actions (self);
}

static void
made_cb (BfWindow *self, BfPart *part)
{
  bf_settings_note_setup (self->settings, part);
  bf_document_set_part (self->document, part, NULL);
  bf_surface_view_fit (self->view);
  bf_shape_page_take_focus (self->shape_page);
}

static void
opened_cb (BfWindow *self, GFile *file)
{
  bf_window_open (self, file);
}

static void
make_start_page (BfWindow *self)
{
  g_autoptr (BfPart) setup = NULL;

  if (self->start_page != NULL)
    return;
  setup = bf_settings_first_part (self->settings);
  self->start_page = BF_START_PAGE (page_new (BF_TYPE_START_PAGE, self->start_room));
  g_signal_connect_object (self->start_page, "made", G_CALLBACK (made_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->start_page, "opened", G_CALLBACK (opened_cb), self,
                           G_CONNECT_SWAPPED);
  bf_start_page_set_setup (self->start_page, setup);
  bf_name_buttons (GTK_WIDGET (self->start_page));
}

/* Before the window is seen it is known whether there is a part to begin with. */
static void
bf_window_map (GtkWidget *widget)
{
  BfWindow *self = BF_WINDOW (widget);

  if (bf_document_get_part (self->document) == NULL)
    make_start_page (self);
  GTK_WIDGET_CLASS (bf_window_parent_class)->map (widget);
}

/* Work is gone on with here where nothing would be lost by it, else in a window of its own. */
static gboolean
has_room_for (BfWindow *self, BfKeptWork *work)
{
  GFile *file = bf_document_get_file (self->document);
  GFile *other = bf_kept_work_get_file (work);

  if (bf_document_get_part (self->document) == NULL)
    return TRUE;
  return !bf_document_is_changed (self->document) && file != NULL && other != NULL &&
         g_file_equal (file, other);
}

static void
taken_cb (BfWindow *self, BfKeptWork *work)
{
  g_autoptr (GError) error = NULL;
  BfWindow *target = self;

  if (!has_room_for (self, work))
    target = bf_window_new (gtk_window_get_application (GTK_WINDOW (self)));
  if (!bf_keeper_take_up (target->keeper, work, &error))
    {
      /* Translators: %s is what is wrong with the file */
      g_autofree char *words = g_strdup_printf (_ ("The work was not opened. %s"), error->message);
      bf_window_notify (target, words);
    }
  bf_surface_view_fit (target->view);
  gtk_window_present (GTK_WINDOW (target));
}

static void
keeping_failed_cb (BfWindow *self, const char *reason)
{
  g_autofree char *words = g_strdup_printf (
      /* Translators: %s is the system's reason, such as "No space left on device" */
      _ ("Work can’t be kept while it is not saved, so save it soon. %s"), reason);
  bf_window_notify (self, words);
}

/* No question stands here: what is not saved is kept, and offered by the next run. */
static gboolean
bf_window_close_request (GtkWindow *window)
{
  BfWindow *self = BF_WINDOW (window);

  bf_keeper_flush (self->keeper);
  bf_settings_note_window (self->settings, window);
  return GTK_WINDOW_CLASS (bf_window_parent_class)->close_request (window);
}

static void
bf_window_dispose (GObject *object)
{
  BfWindow *self = BF_WINDOW (object);

  g_clear_object (&self->keeper);
  g_clear_object (&self->notice_file);
  g_clear_object (&self->document);
  g_clear_object (&self->view);
  g_clear_object (&self->settings);
  G_OBJECT_CLASS (bf_window_parent_class)->dispose (object);
}

/* A menu of many lines is made when it is opened. */
static void
open_menu_cb (GtkMenuButton *button, gpointer user_data)
{
  BfWindow *self = user_data;

  if (gtk_menu_button_get_popover (button) == NULL)
    gtk_menu_button_set_menu_model (button, self->main_menu);
}

static void
bind_template (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, BfWindow, title_stack);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, outer_stack);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, page_stack);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, start_room);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, shape_room);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, make_room);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, undo_button);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, redo_button);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, menu_button);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, main_menu);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, notice_revealer);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, notice_label);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, notice_button);
  gtk_widget_class_bind_template_child (widget_class, BfWindow, kept_bar);
  gtk_widget_class_bind_template_callback (widget_class, page_changed_cb);
  gtk_widget_class_bind_template_callback_full (widget_class, "notice_close_cb",
                                                G_CALLBACK (bf_window_close_notice));
  gtk_widget_class_bind_template_callback_full (widget_class, "notice_answer_cb",
                                                G_CALLBACK (bf_window_show_noticed_file));
  gtk_widget_class_bind_template_callback (widget_class, taken_cb);
}

static void
bf_window_class_init (BfWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_window_dispose;
  GTK_WINDOW_CLASS (klass)->close_request = bf_window_close_request;
  widget_class->map = bf_window_map;
  g_type_ensure (BF_TYPE_KEPT_BAR);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/benchfold/Benchfold/window.ui");
  bind_template (widget_class);
  bf_window_class_install_actions (widget_class);
}

static void
bf_window_init (BfWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_menu_button_set_create_popup_func (self->menu_button, open_menu_cb, self, NULL);

  self->document = bf_document_new ();
  self->keeper = bf_keeper_new (self->document);
  self->view = bf_surface_view_new ();
  self->settings = bf_settings_new ();
  bf_settings_size_window (self->settings, GTK_WINDOW (self));
  g_signal_connect_object (self->document, "changed", G_CALLBACK (document_changed_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->keeper, "failed", G_CALLBACK (keeping_failed_cb), self,
                           G_CONNECT_SWAPPED);
  document_changed_cb (self);
  bf_name_buttons (GTK_WIDGET (self));
  bf_kept_bar_look (self->kept_bar);
}

BfWindow *
bf_window_new (GtkApplication *app)
{
  return g_object_new (BF_TYPE_WINDOW, "application", app, NULL);
}

BfDocument *
bf_window_get_document (BfWindow *self)
{
  g_return_val_if_fail (BF_IS_WINDOW (self), NULL);
  return self->document;
}

BfSurfaceView *
bf_window_get_view (BfWindow *self)
{
  g_return_val_if_fail (BF_IS_WINDOW (self), NULL);
  return self->view;
}

void
bf_window_open (BfWindow *self, GFile *file)
{
  g_return_if_fail (BF_IS_WINDOW (self) && G_IS_FILE (file));

  g_autoptr (GError) error = NULL;
  if (bf_document_load (self->document, file, &error))
    {
      bf_window_close_notice (self);
      bf_recent_note (file);
      bf_surface_view_fit (self->view);
      return;
    }
  g_autofree char *name = g_file_get_parse_name (file);
  /* Translators: a file's name, and what is wrong with it */
  g_autofree char *sentence = g_strdup_printf (_ ("%s was not opened. %s"), name, error->message);
  bf_window_notify (self, sentence);
}

const BfPaper *
bf_window_get_paper (BfWindow *self)
{
  g_return_val_if_fail (BF_IS_WINDOW (self), NULL);
  return bf_settings_paper (self->settings);
}

GSettings *
bf_window_get_settings (BfWindow *self)
{
  g_return_val_if_fail (BF_IS_WINDOW (self), NULL);
  return self->settings;
}

const BfOutputHow *
bf_window_get_how (BfWindow *self)
{
  g_return_val_if_fail (BF_IS_WINDOW (self), NULL);
  /* Read with the first output: a window that opens waits for no file but the part's. */
  self->how.template.pens = bf_own_pens ();
  return &self->how;
}

void
bf_window_set_how (BfWindow *self, const BfOutputHow *how)
{
  g_return_if_fail (BF_IS_WINDOW (self) && how != NULL);
  self->how = *how;
}

void
bf_window_keep (BfWindow *self)
{
  g_return_if_fail (BF_IS_WINDOW (self));
  bf_keeper_flush (self->keeper);
}

/* Setting a tip asks the system where the pointer is, and waits for what it says. */
static void
set_tip (GtkWidget *widget, const char *tip)
{
  if (g_strcmp0 (gtk_widget_get_tooltip_text (widget), tip) != 0)
    gtk_widget_set_tooltip_text (widget, tip);
}

void
bf_window_name_steps (BfWindow *self, const char *undo, const char *redo)
{
  /* Translators: %s is what was done, such as "Length of front" */
  g_autofree char *undo_text =
      undo != NULL ? g_strdup_printf (_ ("Undo: %s"), undo) : g_strdup (_ ("Undo"));
  /* Translators: %s is what was undone, such as "Length of front" */
  g_autofree char *redo_text =
      redo != NULL ? g_strdup_printf (_ ("Redo: %s"), redo) : g_strdup (_ ("Redo"));

  set_tip (self->undo_button, undo_text);
  set_tip (self->redo_button, redo_text);
}

const char *
bf_window_get_page (BfWindow *self)
{
  return gtk_stack_get_visible_child_name (self->page_stack);
}

static void
take_keyboard_to_page (BfWindow *self)
{
  GtkWidget *page = gtk_stack_get_visible_child (self->page_stack);
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (self));

  if (focus == NULL || !gtk_widget_is_ancestor (focus, page))
    gtk_widget_child_focus (page, GTK_DIR_TAB_FORWARD);
}

void
bf_window_set_page (BfWindow *self, const char *page)
{
  if (!g_str_equal (page, "shape") && !g_str_equal (page, "make"))
    return;
  gtk_stack_set_visible_child_name (self->page_stack, page);
  take_keyboard_to_page (self);
}

void
bf_window_open_menu (BfWindow *self)
{
  gtk_menu_button_popup (self->menu_button);
}

void
bf_window_open_checks (BfWindow *self)
{
  bf_window_set_page (self, "shape");
  bf_shape_page_open_checks (self->shape_page);
}
