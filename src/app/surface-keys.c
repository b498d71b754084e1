/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/edge-edits.h"
#include "app/opening-edits.h"
#include "app/surface-private.h"
#include "core/tolerance.h"

/* Keys on the bench top. With the keyboard on the bench itself they turn and shift what is seen;
 * on an edge they walk and work. Keys typed in a field are the field's own. */

#define KEY_TURN_RAD (G_PI / 36.0)
#define KEY_ZOOM 1.15
#define KEY_PAN_PX 32.0
#define NUDGE_MM 1.0

typedef struct
{
  guint key;
  int x, y; /* to the right, up */
} Arrow;

static const Arrow arrows[] = {
  { GDK_KEY_Left, -1, 0 }, { GDK_KEY_Right, 1, 0 },    { GDK_KEY_Up, 0, 1 },
  { GDK_KEY_Down, 0, -1 }, { GDK_KEY_KP_Left, -1, 0 }, { GDK_KEY_KP_Right, 1, 0 },
  { GDK_KEY_KP_Up, 0, 1 }, { GDK_KEY_KP_Down, 0, -1 },
};

static const Arrow *
arrow_of (guint key)
{
  for (guint i = 0; i < G_N_ELEMENTS (arrows); i++)
    if (arrows[i].key == key)
      return &arrows[i];
  return NULL;
}

static gboolean
press_on_bench (BfSurface *self, guint key, GdkModifierType state)
{
  BfSurfaceView *view = bf_surface_get_view (self);
  const Arrow *arrow = arrow_of (key);

  if (arrow != NULL && (state & GDK_SHIFT_MASK) != 0)
    bf_surface_view_pan (view, bf_vec2 (-arrow->x * KEY_PAN_PX, arrow->y * KEY_PAN_PX));
  else if (arrow != NULL)
    bf_surface_view_turn (view, -arrow->x * KEY_TURN_RAD, arrow->y * KEY_TURN_RAD);
  else
    return FALSE;
  return TRUE;
}

static gboolean
zoom (BfSurface *self, guint key)
{
  BfSurfaceView *view = bf_surface_get_view (self);
  BfVec2 centre = bf_vec2 (gtk_widget_get_width (GTK_WIDGET (self)) / 2.0,
                           gtk_widget_get_height (GTK_WIDGET (self)) / 2.0);

  if (key == GDK_KEY_plus || key == GDK_KEY_KP_Add)
    bf_surface_view_zoom_at (view, KEY_ZOOM, centre);
  else if (key == GDK_KEY_minus || key == GDK_KEY_KP_Subtract)
    bf_surface_view_zoom_at (view, 1.0 / KEY_ZOOM, centre);
  else
    return FALSE;
  return TRUE;
}

/* Round the part: to the next edge or the one before, whatever it hangs on. */
static void
walk_round (BfSurface *self, BfSelection from, int by)
{
  const GArray *edges = bf_surface_scene_get_edges (bf_surface_get_scene (self));
  int at = bf_surface_edges_find (edges, from);
  int n = (int)edges->len;

  if (at >= 0)
    bf_surface_choose (self, bf_surface_edge (edges, (guint)((at + by + n) % n))->selection);
}

/* Outward: to the tip of what hangs on the edge. Inward: to the edge that the flange hangs on. */
static void
walk_across (BfSurface *self, BfSelection from, gboolean outward)
{
  const BfFold *fold = bf_surface_scene_get_fold (bf_surface_get_scene (self));
  BfSelection to = BF_SELECTION_NONE;
  BfEdge edge;

  if (!bf_selection_to_edge (fold, from, &edge))
    return;
  const BfFlange *flange =
      outward ? bf_part_flange_at (fold->part, &edge) : bf_part_find_flange (fold->part, edge.on);
  if (flange == NULL)
    return;
  if (outward)
    to = (BfSelection){ bf_fold_find_face (fold, flange->id), BF_FLANGE_TIP };
  else
    to = bf_selection_under (fold, flange);
  if (to.face >= 0)
    bf_surface_choose (self, to);
}

/* A point goes by a millimetre; many in a row are one step. */
static void
nudge (BfSurface *self, guint point, const Arrow *arrow)
{
  BfDocument *document = bf_surface_get_document (self);
  const BfPart *part = bf_document_get_part (document);
  BfVec2 to =
      bf_vec2_add (bf_part_point (part, point), bf_vec2 (arrow->x * NUDGE_MM, arrow->y * NUDGE_MM));

  bf_edge_move_point (document, point, to, TRUE);
}

static gboolean
walk (BfSurface *self, BfSelection from, const Arrow *arrow, GdkModifierType state)
{
  if ((state & GDK_CONTROL_MASK) != 0 && bf_selection_is_point (from))
    nudge (self, bf_selection_corner_at (from), arrow);
  else if ((state & GDK_CONTROL_MASK) != 0)
    return FALSE;
  else if (arrow->x != 0)
    walk_round (self, from, arrow->x);
  else
    walk_across (self, from, arrow->y > 0);
  return TRUE;
}

/* At an opening arrows move it, and Return goes to its sizes. */
static gboolean
press_on_opening (BfSurface *self, BfSelection opening, guint key, GdkModifierType state)
{
  const Arrow *arrow = arrow_of (key);

  if (arrow != NULL && (state & GDK_CONTROL_MASK) == 0)
    bf_opening_nudge (bf_surface_get_document (self), opening, bf_vec2 (arrow->x, arrow->y),
                      (state & GDK_SHIFT_MASK) != 0 ? 10.0 : 1.0);
  else if (key == GDK_KEY_Return || key == GDK_KEY_KP_Enter || key == GDK_KEY_space)
    gtk_widget_child_focus (GTK_WIDGET (self), GTK_DIR_TAB_FORWARD);
  else
    return FALSE;
  return TRUE;
}

static gboolean
press_on_edge (BfSurface *self, BfSelection edge, guint key, GdkModifierType state)
{
  const Arrow *arrow = arrow_of (key);

  if (bf_selection_is_opening (edge) && press_on_opening (self, edge, key, state))
    return TRUE;
  if (arrow != NULL)
    return walk (self, edge, arrow, state);
  switch (key)
    {
    case GDK_KEY_F10:
      if ((state & GDK_SHIFT_MASK) == 0)
        return FALSE;
      bf_surface_popup (self, BF_PICTURE_BLANK, TRUE);
      return TRUE;
    case GDK_KEY_Menu:
    case GDK_KEY_Return:
    case GDK_KEY_KP_Enter:
    case GDK_KEY_space:
      bf_surface_popup (self, BF_PICTURE_BLANK, TRUE);
      return TRUE;
    case GDK_KEY_Delete:
    case GDK_KEY_KP_Delete:
      gtk_widget_activate_action (GTK_WIDGET (self), "here.remove", NULL);
      return TRUE;
    default:
      return FALSE;
    }
}

/* Escape takes back the drag, then the popover, then the selection. */
static void
escape (BfSurface *self)
{
  if (bf_surface_is_dragging (self))
    {
      bf_surface_end_drag (self, TRUE);
      return;
    }
  if (bf_surface_popdown (self))
    return;
  bf_surface_choose (self, BF_SELECTION_NONE);
}

static gboolean
key_pressed_cb (GtkEventControllerKey *controller,
                guint key,
                guint code,
                GdkModifierType state,
                gpointer user_data)
{
  BfSurface *self = user_data;
  BfSelection edge = bf_surface_get_focused_edge (self);
  gboolean on_bench = gtk_widget_is_focus (GTK_WIDGET (self));
  (void)controller;
  (void)code;

  if (key == GDK_KEY_Escape)
    {
      escape (self);
      return GDK_EVENT_STOP;
    }
  if (edge.face >= 0 && press_on_edge (self, edge, key, state))
    return GDK_EVENT_STOP;
  if (on_bench && press_on_bench (self, key, state))
    return GDK_EVENT_STOP;
  if ((on_bench || edge.face >= 0) && zoom (self, key))
    return GDK_EVENT_STOP;
  return GDK_EVENT_PROPAGATE;
}

void
bf_surface_add_keys (BfSurface *self)
{
  GtkEventController *keys = gtk_event_controller_key_new ();

  g_signal_connect (keys, "key-pressed", G_CALLBACK (key_pressed_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
}
