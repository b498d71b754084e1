/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/reading-window.h"

#include <glib/gi18n.h>

#include "app/step-pane.h"

typedef struct
{
  GtkWindow *window;
  BfStepPane *pane;
  BfWorkGuide *guide;
} Reading;

static void
update (Reading *reading)
{
  const BfWork *work = bf_work_guide_get_work (reading->guide);

  if (work != NULL)
    bf_step_pane_show (reading->pane, work, bf_work_guide_get_step (reading->guide));
}

static gboolean
is_modifier (guint key)
{
  return (key >= GDK_KEY_Shift_L && key <= GDK_KEY_Hyper_R) || key == GDK_KEY_ISO_Level3_Shift;
}

static gboolean
key_cb (Reading *reading, guint key, guint code, GdkModifierType state)
{
  (void)code;

  if (is_modifier (key) || (state & (GDK_CONTROL_MASK | GDK_ALT_MASK)) != 0)
    return GDK_EVENT_PROPAGATE;
  switch (key)
    {
    case GDK_KEY_Escape:
    case GDK_KEY_F11:
      gtk_window_destroy (reading->window);
      break;
    case GDK_KEY_BackSpace:
    case GDK_KEY_Left:
    case GDK_KEY_Up:
    case GDK_KEY_Page_Up:
      bf_work_guide_go_back (reading->guide);
      break;
    default:
      bf_work_guide_go_on (reading->guide);
      break;
    }
  return GDK_EVENT_STOP;
}

static void
reading_free (Reading *reading)
{
  g_object_unref (reading->guide);
  g_free (reading);
}

static void
hear (Reading *reading)
{
  GtkEventController *keys = gtk_event_controller_key_new ();

  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (key_cb), reading);
  gtk_widget_add_controller (GTK_WIDGET (reading->window), keys);
  g_signal_connect_swapped (reading->pane, "done", G_CALLBACK (bf_work_guide_go_on),
                            reading->guide);
  g_signal_connect_swapped (reading->pane, "back", G_CALLBACK (bf_work_guide_go_back),
                            reading->guide);
}

static void
unhook_cb (Reading *reading)
{
  g_signal_handlers_disconnect_by_data (reading->guide, reading);
}

static GtkWidget *
hint_new (void)
{
  GtkWidget *hint = gtk_label_new (_ ("Any key: done, next. Backspace: back. Escape: close."));

  gtk_label_set_xalign (GTK_LABEL (hint), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (hint), TRUE);
  gtk_widget_add_css_class (hint, "quiet");
  gtk_widget_add_css_class (hint, "reading-hint");
  return hint;
}

GtkWindow *
bf_reading_window_show (GtkWindow *parent, BfWorkGuide *guide)
{
  Reading *reading;
  GtkWidget *room;

  g_return_val_if_fail (BF_IS_WORK_GUIDE (guide), NULL);

  reading = g_new0 (Reading, 1);
  reading->guide = g_object_ref (guide);
  reading->window = GTK_WINDOW (g_object_new (
      GTK_TYPE_WINDOW, "title", _ ("The work, step by step"), "transient-for", parent, NULL));
  reading->pane = g_object_new (BF_TYPE_STEP_PANE, "hexpand", TRUE, "vexpand", TRUE, NULL);
  bf_step_pane_set_for_reading (reading->pane);
  room = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_box_append (GTK_BOX (room), GTK_WIDGET (reading->pane));
  gtk_box_append (GTK_BOX (room), hint_new ());
  gtk_widget_add_css_class (room, "reading");
  gtk_widget_add_css_class (room, "bench");
  gtk_window_set_child (reading->window, room);
  hear (reading);
  g_signal_connect_swapped (guide, "changed", G_CALLBACK (update), reading);
  g_signal_connect_swapped (reading->window, "destroy", G_CALLBACK (unhook_cb), reading);
  g_object_set_data_full (G_OBJECT (reading->window), "reading", reading,
                          (GDestroyNotify)reading_free);
  update (reading);
  gtk_window_fullscreen (reading->window);
  gtk_window_present (reading->window);
  return reading->window;
}
