/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-private.h"

/* Pointer and touch on the bench top: they change the view, what is selected, or take hold of an
 * edge. */

/* Half the width of the room turns the part by a quarter. */
#define TURN_RAD_PER_PX 0.008

typedef enum
{
  DRAG_NONE,
  DRAG_WAITING, /* a click that trembles is still a click */
  DRAG_TURN,
  DRAG_PAN,
  DRAG_EDGE,
} DragKind;

typedef struct
{
  BfSurface *surface;
  DragKind drag;
  BfVec2 start_px;
  BfVec2 dragged_px; /* the part of the drag that was acted on */
  BfVec2 pointer_px;
  double pinch;
} Gestures;

/* The popover hangs on the bench, so that what is done in it comes by here as well: a press there
 * took the keyboard away, a tremble became a drag, and a click on its words chose what lies
 * beneath.
 */
static gboolean
is_on_bench (Gestures *g, gpointer controller)
{
  GdkEvent *event = gtk_event_controller_get_current_event (controller);
  GtkNative *native = gtk_widget_get_native (GTK_WIDGET (g->surface));

  return event == NULL || gdk_event_get_surface (event) == gtk_native_get_surface (native);
}

static void
drag_begin_cb (GtkGestureDrag *drag, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;

  if (!is_on_bench (g, drag))
    {
      gtk_gesture_set_state (GTK_GESTURE (drag), GTK_EVENT_SEQUENCE_DENIED);
      return;
    }
  gtk_widget_grab_focus (GTK_WIDGET (g->surface));
  g->start_px = bf_vec2 (x, y);
  g->dragged_px = bf_vec2 (0.0, 0.0);
  g->drag = DRAG_WAITING;
}

static DragKind
kind_of_drag (Gestures *g, guint button)
{
  BfSurfaceScene *scene = bf_surface_get_scene (g->surface);
  BfSelection at = bf_surface_scene_pick (scene, g->start_px);

  if (button != GDK_BUTTON_PRIMARY)
    return DRAG_PAN;
  if (at.edge != -1 && bf_surface_begin_drag (g->surface, at, g->start_px))
    return DRAG_EDGE;
  return bf_surface_scene_is_formed_side (scene, g->start_px) ? DRAG_TURN : DRAG_PAN;
}

static void
drag_update_cb (GtkGestureDrag *drag, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;
  BfSurfaceView *view = bf_surface_get_view (g->surface);
  BfVec2 by = bf_vec2_sub (bf_vec2 (x, y), g->dragged_px);
  GdkModifierType state =
      gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (drag));

  if (g->drag == DRAG_WAITING)
    {
      if (!gtk_drag_check_threshold (GTK_WIDGET (g->surface), 0, 0, (int)x, (int)y))
        return;
      bf_surface_popdown (g->surface);
      gtk_gesture_set_state (GTK_GESTURE (drag), GTK_EVENT_SEQUENCE_CLAIMED);
      g->drag = kind_of_drag (g, gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (drag)));
    }
  g->dragged_px = bf_vec2 (x, y);
  if (g->drag == DRAG_TURN)
    bf_surface_view_turn (view, -by.x * TURN_RAD_PER_PX, by.y * TURN_RAD_PER_PX);
  else if (g->drag == DRAG_PAN)
    bf_surface_view_pan (view, by);
  else if (g->drag == DRAG_EDGE)
    bf_surface_drag (g->surface, bf_vec2_add (g->start_px, g->dragged_px),
                     (state & GDK_SHIFT_MASK) != 0);
}

static void
end_drag (Gestures *g, gboolean back)
{
  if (g->drag == DRAG_EDGE)
    bf_surface_end_drag (g->surface, back);
  g->drag = DRAG_NONE;
}

static void
drag_end_cb (GtkGestureDrag *drag, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;
  (void)drag;
  (void)x;
  (void)y;
  end_drag (g, FALSE);
}

static void
drag_cancel_cb (GtkGesture *drag, GdkEventSequence *sequence, gpointer user_data)
{
  Gestures *g = user_data;
  (void)drag;
  (void)sequence;
  end_drag (g, TRUE);
}

static void
click_released_cb (GtkGestureClick *click, int n_press, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;
  BfSurfaceScene *scene = bf_surface_get_scene (g->surface);
  BfVec2 px = bf_vec2 (x, y);
  BfSelection at = bf_surface_scene_pick (scene, px);
  (void)n_press;

  if (!is_on_bench (g, click))
    return;
  bf_surface_choose (g->surface, at);
  /* The floor itself has nothing to offer: its edges have. What an opening has stands beside it. */
  if ((at.face > 0 || at.edge != -1) && !bf_selection_is_opening (at))
    bf_surface_popup (
        g->surface,
        bf_surface_scene_is_formed_side (scene, px) ? BF_PICTURE_FORMED : BF_PICTURE_BLANK, FALSE);
}

static void
motion_cb (GtkEventControllerMotion *motion, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;
  gboolean here = is_on_bench (g, motion);
  if (here)
    g->pointer_px = bf_vec2 (x, y);
  if (g->drag == DRAG_NONE && here)
    bf_surface_point_at (g->surface,
                         bf_surface_scene_pick (bf_surface_get_scene (g->surface), g->pointer_px));
}

static void
leave_cb (GtkEventControllerMotion *motion, gpointer user_data)
{
  Gestures *g = user_data;
  (void)motion;
  bf_surface_point_at (g->surface, BF_SELECTION_NONE);
}

static gboolean
scroll_cb (GtkEventControllerScroll *scroll, double dx, double dy, gpointer user_data)
{
  Gestures *g = user_data;
  (void)dx;
  if (!is_on_bench (g, scroll))
    return GDK_EVENT_PROPAGATE;
  bf_surface_view_zoom_at (bf_surface_get_view (g->surface), exp (-dy * 0.12), g->pointer_px);
  return GDK_EVENT_STOP;
}

static void
pinch_begin_cb (GtkGesture *gesture, GdkEventSequence *sequence, gpointer user_data)
{
  Gestures *g = user_data;
  (void)gesture;
  (void)sequence;
  g->pinch = 1.0;
}

static void
pinch_cb (GtkGestureZoom *zoom, double scale, gpointer user_data)
{
  Gestures *g = user_data;
  double x = g->pointer_px.x;
  double y = g->pointer_px.y;
  gtk_gesture_get_bounding_box_center (GTK_GESTURE (zoom), &x, &y);
  if (scale > 0.0)
    bf_surface_view_zoom_at (bf_surface_get_view (g->surface), scale / g->pinch, bf_vec2 (x, y));
  g->pinch = MAX (scale, 0.01);
}

static void
add_drag (Gestures *g)
{
  GtkGesture *drag = gtk_gesture_drag_new ();
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (drag), 0);
  g_signal_connect (drag, "drag-begin", G_CALLBACK (drag_begin_cb), g);
  g_signal_connect (drag, "drag-update", G_CALLBACK (drag_update_cb), g);
  g_signal_connect (drag, "drag-end", G_CALLBACK (drag_end_cb), g);
  g_signal_connect (drag, "cancel", G_CALLBACK (drag_cancel_cb), g);
  gtk_widget_add_controller (GTK_WIDGET (g->surface), GTK_EVENT_CONTROLLER (drag));
}

static void
add_click (Gestures *g)
{
  GtkGesture *click = gtk_gesture_click_new ();
  g_signal_connect (click, "released", G_CALLBACK (click_released_cb), g);
  gtk_widget_add_controller (GTK_WIDGET (g->surface), GTK_EVENT_CONTROLLER (click));
}

static void
add_motion (Gestures *g)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();
  g_signal_connect (motion, "motion", G_CALLBACK (motion_cb), g);
  g_signal_connect (motion, "leave", G_CALLBACK (leave_cb), g);
  gtk_widget_add_controller (GTK_WIDGET (g->surface), motion);
}

static void
add_zoom (Gestures *g)
{
  GtkEventController *scroll =
      gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_VERTICAL);
  g_signal_connect (scroll, "scroll", G_CALLBACK (scroll_cb), g);
  gtk_widget_add_controller (GTK_WIDGET (g->surface), scroll);

  GtkGesture *pinch = gtk_gesture_zoom_new ();
  g_signal_connect (pinch, "begin", G_CALLBACK (pinch_begin_cb), g);
  g_signal_connect (pinch, "scale-changed", G_CALLBACK (pinch_cb), g);
  gtk_widget_add_controller (GTK_WIDGET (g->surface), GTK_EVENT_CONTROLLER (pinch));
}

void
bf_surface_add_gestures (BfSurface *self)
{
  Gestures *g = g_new0 (Gestures, 1);

  g->surface = self;
  g_object_set_data_full (G_OBJECT (self), "gestures", g, g_free);
  add_drag (g);
  add_click (g);
  add_motion (g);
  add_zoom (g);
}
