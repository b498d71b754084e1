/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface.h"

#include <glib/gi18n.h>

#include "app/button-names.h"
#include "app/edge-handle.h"
#include "app/edge-popover.h"
#include "app/place-mark.h"
#include "app/surface-drag.h"
#include "app/surface-fields.h"
#include "app/surface-handles.h"
#include "app/surface-lights.h"
#include "app/surface-private.h"
#include "app/theme-colours.h"

struct _BfSurface
{
  GtkWidget parent_instance;
  BfDocument *document;
  BfSurfaceView *view;
  BfSurfaceScene *scene;
  BfSurfaceFields *fields;
  BfSurfaceHandles *handles;
  BfPlaceMark *mark;
  GtkWidget *popover; /* NULL until it is first wanted */
  BfPicture popover_picture;
  BfSelection pointed;
  BfSurfaceDrag *drag; /* NULL while nothing is dragged */
  guint tick;
};

G_DEFINE_FINAL_TYPE (BfSurface, bf_surface, GTK_TYPE_WIDGET)

static gboolean
shows_focus (BfSurface *self)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));
  return GTK_IS_WINDOW (root) && gtk_window_get_focus_visible (GTK_WINDOW (root));
}

/* Round a picture for lines, lights, and the words beside the blank. */
#define PICTURE_MARGIN_PX 16.0
#define WORDS_MARGIN_PX 110.0
#define MARKS_MARGIN_PX 40.0

/* Each picture is a node of its own and no larger than it has to be: what a frame costs goes by how
 * much of the window it paints anew. */
static void
snapshot_picture (BfSurface *self,
                  const BfSurfaceLights *lights,
                  BfPicture picture,
                  GtkSnapshot *snapshot)
{
  double text = bf_surface_view_get_text (self->view);
  double beside = picture == BF_PICTURE_BLANK ? WORDS_MARGIN_PX * text : PICTURE_MARGIN_PX;
  BfBox box = bf_surface_scene_box (self->scene, picture);
  double left = MAX (floor (box.min.x - beside), 0.0);
  double above = picture == BF_PICTURE_BLANK ? MARKS_MARGIN_PX * text : PICTURE_MARGIN_PX;
  double top = MAX (floor (box.min.y - above), 0.0);
  double right = MIN (ceil (box.max.x + beside), gtk_widget_get_width (GTK_WIDGET (self)));
  double bottom = MIN (ceil (box.max.y + above), gtk_widget_get_height (GTK_WIDGET (self)));

  if (right <= left || bottom <= top)
    return;
  cairo_t *cr = gtk_snapshot_append_cairo (
      snapshot,
      &GRAPHENE_RECT_INIT ((float)left, (float)top, (float)(right - left), (float)(bottom - top)));
  if (picture == BF_PICTURE_BLANK)
    bf_surface_scene_paint_blank (self->scene, cr, lights->dark);
  else
    bf_surface_scene_paint_formed (self->scene, cr, lights->dark);
  bf_surface_lights_paint (self->scene, lights, picture, cr);
  if (picture == BF_PICTURE_BLANK)
    bf_place_mark_paint (self->mark, cr);
  cairo_destroy (cr);
}

static void
bf_surface_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  BfSurface *self = BF_SURFACE (widget);

  if (self->scene == NULL)
    return;
  BfSurfaceLights lights = { bf_surface_view_get_selection (self->view), self->pointed,
                             shows_focus (self) ? bf_surface_get_focused_edge (self)
                                                : BF_SELECTION_NONE,
                             bf_theme_is_dark (widget) };
  snapshot_picture (self, &lights, BF_PICTURE_BLANK, snapshot);
  snapshot_picture (self, &lights, BF_PICTURE_FORMED, snapshot);
  bf_surface_fields_snapshot (self->fields, snapshot);
}

/* The popover stands beside the middle of what is selected. */
static void
place_popover (BfSurface *self)
{
  const GArray *edges = bf_surface_scene_get_edges (self->scene);
  BfSelection now = bf_surface_view_get_selection (self->view);
  BfVec2 px[2];

  if (now.face > 0 && now.edge == -1)
    now.edge = BF_FLANGE_TIP;
  int at = bf_surface_edges_find (edges, now);
  if (at < 0 || !bf_surface_scene_edge_px (self->scene, bf_surface_edge (edges, (guint)at),
                                           self->popover_picture, px))
    return;
  GdkRectangle place = { (int)((px[0].x + px[1].x) / 2.0) - 4, (int)((px[0].y + px[1].y) / 2.0) - 4,
                         8, 8 };
  gtk_popover_set_pointing_to (GTK_POPOVER (self->popover), &place);
}

static void
bf_surface_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  (void)baseline;
  BfSurface *self = BF_SURFACE (widget);

  if (self->view == NULL)
    return;
  bf_surface_view_set_text (self->view, bf_theme_text_size (widget));
  bf_surface_view_set_size (self->view, width, height);
  bf_surface_handles_allocate (self->handles);
  bf_surface_fields_allocate (self->fields);
  if (self->popover != NULL)
    gtk_popover_present (GTK_POPOVER (self->popover));
}

static void
bf_surface_measure (GtkWidget *widget,
                    GtkOrientation orientation,
                    int for_size,
                    int *minimum,
                    int *natural,
                    int *minimum_baseline,
                    int *natural_baseline)
{
  (void)widget;
  (void)for_size;
  *minimum = orientation == GTK_ORIENTATION_HORIZONTAL ? 360 : 240;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 900 : 560;
  *minimum_baseline = -1;
  *natural_baseline = -1;
}

/* Tab walks: the bench, then each edge and the sizes beside it. */
static GPtrArray *
list_stops (BfSurface *self)
{
  const GArray *edges = bf_surface_scene_get_edges (self->scene);
  GPtrArray *stops = g_ptr_array_new ();

  g_ptr_array_add (stops, self);
  for (guint i = 0; edges != NULL && i < edges->len; i++)
    {
      BfSelection selection = bf_surface_edge (edges, i)->selection;
      bf_surface_handles_add_stop (self->handles, selection, stops);
      bf_surface_fields_add_stops (self->fields, selection, stops);
    }
  return stops;
}

static int
find_focus (GPtrArray *stops, GtkWidget *focus, int otherwise)
{
  for (guint i = stops->len; focus != NULL && i-- > 0;)
    {
      GtkWidget *stop = g_ptr_array_index (stops, i);
      if (focus == stop || (i > 0 && gtk_widget_is_ancestor (focus, stop)))
        return (int)i;
    }
  return otherwise;
}

static gboolean
bf_surface_focus (GtkWidget *widget, GtkDirectionType direction)
{
  BfSurface *self = BF_SURFACE (widget);
  g_autoptr (GPtrArray) stops = list_stops (self);
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (widget));
  int step = direction == GTK_DIR_TAB_BACKWARD ? -1 : 1;
  int n = (int)stops->len;

  if (direction != GTK_DIR_TAB_FORWARD && direction != GTK_DIR_TAB_BACKWARD)
    return FALSE;
  int at = find_focus (stops, focus, step > 0 ? -1 : n);
  for (int i = at + step; i >= 0 && i < n; i += step)
    {
      GtkWidget *stop = g_ptr_array_index (stops, i);
      if (stop == widget ? gtk_widget_grab_focus (stop) : gtk_widget_child_focus (stop, direction))
        return TRUE;
    }
  return FALSE;
}

/* What has the keyboard is selected. */
static void
bf_surface_set_focus_child (GtkWidget *widget, GtkWidget *child)
{
  BfSurface *self = BF_SURFACE (widget);

  GTK_WIDGET_CLASS (bf_surface_parent_class)->set_focus_child (widget, child);
  if (child == NULL || self->scene == NULL || child == self->popover)
    return;
  bf_surface_popdown (self);
  bf_surface_view_select (self->view, BF_IS_EDGE_HANDLE (child)
                                          ? bf_edge_handle_get_selection (BF_EDGE_HANDLE (child))
                                          : bf_surface_fields_selection (self->fields, child));
}

static void
bf_surface_dispose (GObject *object)
{
  BfSurface *self = BF_SURFACE (object);

  if (self->drag != NULL)
    bf_surface_end_drag (self, FALSE);
  g_clear_pointer (&self->popover, gtk_widget_unparent);
  g_clear_pointer (&self->mark, bf_place_mark_free);
  g_clear_pointer (&self->fields, bf_surface_fields_free);
  g_clear_pointer (&self->handles, bf_surface_handles_free);
  g_clear_pointer (&self->scene, bf_surface_scene_free);
  g_clear_object (&self->view);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (bf_surface_parent_class)->dispose (object);
}

static void
bf_surface_class_init (BfSurfaceClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_surface_dispose;
  widget_class->snapshot = bf_surface_snapshot;
  widget_class->size_allocate = bf_surface_size_allocate;
  widget_class->measure = bf_surface_measure;
  widget_class->focus = bf_surface_focus;
  widget_class->set_focus_child = bf_surface_set_focus_child;
  gtk_widget_class_set_css_name (widget_class, "benchtop");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  bf_surface_class_install_actions (widget_class);
}

static void
bf_surface_init (BfSurface *self)
{
  self->pointed = BF_SELECTION_NONE;
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Blank and formed part"), -1);
  bf_surface_add_gestures (self);
  bf_surface_add_keys (self);
}

static gboolean
is_popped_up (BfSurface *self)
{
  return self->popover != NULL && gtk_widget_get_visible (self->popover);
}

static void
view_changed_cb (BfSurface *self)
{
  gtk_widget_queue_allocate (GTK_WIDGET (self));
  gtk_widget_queue_draw (GTK_WIDGET (self));
  if (is_popped_up (self))
    place_popover (self);
}

static void
document_changed_cb (BfSurface *self)
{
  BfFold *before = bf_surface_scene_get_fold (self->scene);
  BfFold *fold = bf_document_get_fold (self->document);
  BfSelection selected = bf_surface_view_get_selection (self->view);
  g_autofree char *id = NULL;

  if (before != NULL && selected.face >= 0)
    id = g_strdup (bf_fold_face (before, (guint)selected.face)->id);
  self->pointed = BF_SELECTION_NONE;
  bf_surface_scene_set_fold (self->scene, fold);
  bf_surface_view_select (self->view, bf_selection_in (fold, id, selected));
  bf_surface_handles_update (self->handles);
  bf_surface_fields_update (self->fields);
  if (is_popped_up (self) && !bf_edge_popover_show (BF_EDGE_POPOVER (self->popover), self->document,
                                                    bf_surface_view_get_selection (self->view)))
    bf_surface_popdown (self);
  view_changed_cb (self);
}

void
bf_surface_set_document (BfSurface *self, BfDocument *document, BfSurfaceView *view)
{
  g_return_if_fail (BF_IS_SURFACE (self) && self->document == NULL);

  self->document = g_object_ref (document);
  self->view = g_object_ref (view);
  self->scene = bf_surface_scene_new (view);
  self->mark = bf_place_mark_new (GTK_WIDGET (self), view);
  self->handles = bf_surface_handles_new (GTK_WIDGET (self), self->scene);
  self->fields = bf_surface_fields_new (GTK_WIDGET (self), document, self->scene);
  g_signal_connect_object (view, "changed", G_CALLBACK (view_changed_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "changed", G_CALLBACK (document_changed_cb), self,
                           G_CONNECT_SWAPPED);
  document_changed_cb (self);
}

BfSurfaceScene *
bf_surface_get_scene (BfSurface *self)
{
  g_return_val_if_fail (BF_IS_SURFACE (self), NULL);
  return self->scene;
}

BfSurfaceView *
bf_surface_get_view (BfSurface *self)
{
  g_return_val_if_fail (BF_IS_SURFACE (self), NULL);
  return self->view;
}

void
bf_surface_show_place (BfSurface *self, BfVec2 blank_mm)
{
  g_return_if_fail (BF_IS_SURFACE (self) && self->mark != NULL);
  bf_place_mark_show (self->mark, blank_mm);
}

BfDocument *
bf_surface_get_document (BfSurface *self)
{
  return self->document;
}

void
bf_surface_choose (BfSurface *self, BfSelection selection)
{
  GtkWidget *handle = bf_surface_handles_find (self->handles, selection);

  gtk_widget_grab_focus (handle != NULL ? handle : GTK_WIDGET (self));
  bf_surface_view_select (self->view, selection);
}

void
bf_surface_point_at (BfSurface *self, BfSelection selection)
{
  gboolean on_edge = selection.face >= 0 && selection.edge != -1;
  BfSelection pointed = on_edge ? selection : BF_SELECTION_NONE;

  if (bf_selection_is_same (pointed, self->pointed))
    return;
  self->pointed = pointed;
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), on_edge ? "pointer" : NULL);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
popover_left_cb (BfSurface *self)
{
  bf_surface_choose (self, bf_surface_view_get_selection (self->view));
}

void
bf_surface_popup (BfSurface *self, BfPicture picture, gboolean take_focus)
{
  BfSelection now = bf_surface_view_get_selection (self->view);

  self->popover_picture = picture;
  if (self->popover == NULL)
    {
      self->popover = bf_edge_popover_new ();
      gtk_widget_set_parent (self->popover, GTK_WIDGET (self));
      bf_name_buttons (self->popover);
      g_signal_connect_swapped (self->popover, "left", G_CALLBACK (popover_left_cb), self);
    }
  if (!bf_edge_popover_show (BF_EDGE_POPOVER (self->popover), self->document, now))
    return;
  place_popover (self);
  gtk_popover_popup (GTK_POPOVER (self->popover));
  if (take_focus)
    bf_edge_popover_take_focus (BF_EDGE_POPOVER (self->popover));
}

gboolean
bf_surface_popdown (BfSurface *self)
{
  gboolean was_open = is_popped_up (self);

  if (self->popover != NULL)
    gtk_popover_popdown (GTK_POPOVER (self->popover));
  return was_open;
}

BfSelection
bf_surface_get_focused_edge (BfSurface *self)
{
  return bf_surface_handles_get_focused (self->handles);
}

static gboolean
tick_cb (GtkWidget *widget, GdkFrameClock *clock, gpointer user_data)
{
  BfSurface *self = BF_SURFACE (widget);
  (void)clock;
  (void)user_data;

  if (self->drag != NULL)
    bf_surface_drag_follow (self->drag);
  return G_SOURCE_CONTINUE;
}

gboolean
bf_surface_begin_drag (BfSurface *self, BfSelection selection, BfVec2 px)
{
  self->drag = bf_surface_drag_begin (self->document, self->scene, selection, px);
  if (self->drag == NULL)
    return FALSE;
  bf_surface_choose (self, selection);
  self->tick = gtk_widget_add_tick_callback (GTK_WIDGET (self), tick_cb, NULL, NULL);
  return TRUE;
}

void
bf_surface_drag (BfSurface *self, BfVec2 px, gboolean finely)
{
  if (self->drag != NULL)
    bf_surface_drag_to (self->drag, px, finely);
}

void
bf_surface_end_drag (BfSurface *self, gboolean back)
{
  BfSurfaceDrag *drag = g_steal_pointer (&self->drag);

  if (drag == NULL)
    return;
  gtk_widget_remove_tick_callback (GTK_WIDGET (self), self->tick);
  bf_surface_drag_end (drag, back);
}

gboolean
bf_surface_is_dragging (BfSurface *self)
{
  return self->drag != NULL;
}
