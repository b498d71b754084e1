/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface.h"

/* Pointer, touch and keys on the bench top. Each only changes the view; the view tells who draws.
 */

/* Half the width of the room turns the part by a quarter. */
#define TURN_RAD_PER_PX 0.008
#define KEY_TURN_RAD (G_PI / 36.0)
#define KEY_ZOOM 1.15
#define KEY_PAN_PX 32.0

typedef enum
{
  DRAG_NONE,
  DRAG_TURN,
  DRAG_PAN,
} DragKind;

typedef struct
{
  BfSurface *surface;
  DragKind drag;
  BfVec2 dragged_px; /* the part of the drag that was acted on */
  BfVec2 pointer_px;
  double pinch;
} Gestures;

static void
drag_begin_cb (GtkGestureDrag *drag, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;
  BfSurfaceScene *scene = bf_surface_get_scene (g->surface);
  guint button = gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (drag));

  gtk_widget_grab_focus (GTK_WIDGET (g->surface));
  g->dragged_px = bf_vec2 (0.0, 0.0);
  gboolean on_formed = bf_surface_scene_is_formed_side (scene, bf_vec2 (x, y));
  g->drag = button == GDK_BUTTON_PRIMARY && on_formed ? DRAG_TURN : DRAG_PAN;
}

static void
drag_update_cb (GtkGestureDrag *drag, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;
  BfSurfaceView *view = bf_surface_get_view (g->surface);
  BfVec2 by = bf_vec2_sub (bf_vec2 (x, y), g->dragged_px);

  /* A click that trembles is still a click. */
  if (gtk_gesture_get_last_event (GTK_GESTURE (drag), NULL) != NULL &&
      gtk_drag_check_threshold (GTK_WIDGET (g->surface), 0, 0, (int)x, (int)y))
    gtk_gesture_set_state (GTK_GESTURE (drag), GTK_EVENT_SEQUENCE_CLAIMED);
  g->dragged_px = bf_vec2 (x, y);
  if (g->drag == DRAG_TURN)
    bf_surface_view_turn (view, -by.x * TURN_RAD_PER_PX, by.y * TURN_RAD_PER_PX);
  else
    bf_surface_view_pan (view, by);
}

static void
drag_end_cb (GtkGestureDrag *drag, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;
  (void)drag;
  (void)x;
  (void)y;
  g->drag = DRAG_NONE;
}

static void
click_released_cb (GtkGestureClick *click, int n_press, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;
  (void)click;
  (void)n_press;
  BfSelection at = bf_surface_scene_pick (bf_surface_get_scene (g->surface), bf_vec2 (x, y));
  bf_surface_view_select (bf_surface_get_view (g->surface), at);
}

static void
motion_cb (GtkEventControllerMotion *motion, double x, double y, gpointer user_data)
{
  Gestures *g = user_data;
  (void)motion;
  g->pointer_px = bf_vec2 (x, y);
}

static gboolean
scroll_cb (GtkEventControllerScroll *scroll, double dx, double dy, gpointer user_data)
{
  Gestures *g = user_data;
  (void)scroll;
  (void)dx;
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

typedef struct
{
  guint key;
  double azimuth, elevation; /* in steps of KEY_TURN_RAD */
} TurnKey;

static const TurnKey turn_keys[] = {
  { GDK_KEY_Left, 1.0, 0.0 },
  { GDK_KEY_Right, -1.0, 0.0 },
  { GDK_KEY_Up, 0.0, 1.0 },
  { GDK_KEY_Down, 0.0, -1.0 },
};

static gboolean
press_arrow (BfSurfaceView *view, guint key, gboolean pans)
{
  for (guint i = 0; i < G_N_ELEMENTS (turn_keys); i++)
    {
      const TurnKey *turn = &turn_keys[i];
      if (turn->key != key)
        continue;
      if (pans)
        bf_surface_view_pan (view,
                             bf_vec2 (turn->azimuth * KEY_PAN_PX, turn->elevation * KEY_PAN_PX));
      else
        bf_surface_view_turn (view, turn->azimuth * KEY_TURN_RAD, turn->elevation * KEY_TURN_RAD);
      return TRUE;
    }
  return FALSE;
}

static gboolean
key_pressed_cb (GtkEventControllerKey *controller,
                guint key,
                guint code,
                GdkModifierType state,
                gpointer user_data)
{
  Gestures *g = user_data;
  BfSurfaceView *view = bf_surface_get_view (g->surface);
  BfVec2 centre = bf_vec2 (gtk_widget_get_width (GTK_WIDGET (g->surface)) / 2.0,
                           gtk_widget_get_height (GTK_WIDGET (g->surface)) / 2.0);
  (void)controller;
  (void)code;

  if (press_arrow (view, key, (state & GDK_SHIFT_MASK) != 0))
    return GDK_EVENT_STOP;
  if (key == GDK_KEY_plus || key == GDK_KEY_KP_Add)
    bf_surface_view_zoom_at (view, KEY_ZOOM, centre);
  else if (key == GDK_KEY_minus || key == GDK_KEY_KP_Subtract)
    bf_surface_view_zoom_at (view, 1.0 / KEY_ZOOM, centre);
  else if (key == GDK_KEY_Escape)
    bf_surface_view_select (view, BF_SELECTION_NONE);
  else
    return GDK_EVENT_PROPAGATE;
  return GDK_EVENT_STOP;
}

static void
add_drag (Gestures *g)
{
  GtkGesture *drag = gtk_gesture_drag_new ();
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (drag), 0);
  g_signal_connect (drag, "drag-begin", G_CALLBACK (drag_begin_cb), g);
  g_signal_connect (drag, "drag-update", G_CALLBACK (drag_update_cb), g);
  g_signal_connect (drag, "drag-end", G_CALLBACK (drag_end_cb), g);
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
add_zoom (Gestures *g)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();
  g_signal_connect (motion, "motion", G_CALLBACK (motion_cb), g);
  gtk_widget_add_controller (GTK_WIDGET (g->surface), motion);

  GtkEventController *scroll =
      gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_VERTICAL);
  g_signal_connect (scroll, "scroll", G_CALLBACK (scroll_cb), g);
  gtk_widget_add_controller (GTK_WIDGET (g->surface), scroll);

  GtkGesture *pinch = gtk_gesture_zoom_new ();
  g_signal_connect (pinch, "begin", G_CALLBACK (pinch_begin_cb), g);
  g_signal_connect (pinch, "scale-changed", G_CALLBACK (pinch_cb), g);
  gtk_widget_add_controller (GTK_WIDGET (g->surface), GTK_EVENT_CONTROLLER (pinch));
}

static void
add_keys (Gestures *g)
{
  GtkEventController *keys = gtk_event_controller_key_new ();
  g_signal_connect (keys, "key-pressed", G_CALLBACK (key_pressed_cb), g);
  gtk_widget_add_controller (GTK_WIDGET (g->surface), keys);
}

void
bf_surface_add_gestures (BfSurface *self)
{
  Gestures *g = g_new0 (Gestures, 1);

  g->surface = self;
  g_object_set_data_full (G_OBJECT (self), "gestures", g, g_free);
  add_drag (g);
  add_click (g);
  add_zoom (g);
  add_keys (g);
}
