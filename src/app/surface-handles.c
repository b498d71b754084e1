/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-handles.h"

#include "app/edge-handle.h"
#include "app/surface-openings.h"

#define LEAST_PX 12

struct _BfSurfaceHandles
{
  GtkWidget *parent;
  BfSurfaceScene *scene;
  GPtrArray *widgets; /* as many as there are edges, in their order */
};

static void
drop_widget (gpointer widget)
{
  gtk_widget_unparent (widget);
}

BfSurfaceHandles *
bf_surface_handles_new (GtkWidget *parent, BfSurfaceScene *scene)
{
  BfSurfaceHandles *handles = g_new0 (BfSurfaceHandles, 1);

  handles->parent = parent;
  handles->scene = scene;
  handles->widgets = g_ptr_array_new_with_free_func (drop_widget);
  return handles;
}

void
bf_surface_handles_free (BfSurfaceHandles *handles)
{
  g_ptr_array_unref (handles->widgets);
  g_free (handles);
}

static GtkWidget *
focused_handle (BfSurfaceHandles *handles)
{
  for (guint i = 0; i < handles->widgets->len; i++)
    if (gtk_widget_is_focus (g_ptr_array_index (handles->widgets, i)))
      return g_ptr_array_index (handles->widgets, i);
  return NULL;
}

/* The edges are counted anew: the keyboard stays with what is selected, not with a number. */
static void
keep_focus (BfSurfaceHandles *handles)
{
  BfSelection now = bf_surface_view_get_selection (bf_surface_scene_get_view (handles->scene));
  GtkWidget *handle = bf_surface_handles_find (handles, now);

  gtk_widget_grab_focus (handle != NULL ? handle : handles->parent);
}

void
bf_surface_handles_update (BfSurfaceHandles *handles)
{
  BfFold *fold = bf_surface_scene_get_fold (handles->scene);
  const GArray *edges = bf_surface_scene_get_edges (handles->scene);
  guint n = edges != NULL ? edges->len : 0;
  gboolean had_focus = focused_handle (handles) != NULL;
  gboolean same_number = n == handles->widgets->len;

  if (had_focus && !same_number)
    gtk_widget_grab_focus (handles->parent);
  while (handles->widgets->len < n)
    {
      GtkWidget *handle = bf_edge_handle_new ();
      gtk_widget_set_parent (handle, handles->parent);
      g_ptr_array_add (handles->widgets, handle);
    }
  g_ptr_array_set_size (handles->widgets, (int)n);
  for (guint i = 0; i < n; i++)
    {
      const BfSurfaceEdge *edge = bf_surface_edge (edges, i);
      g_autofree char *name = bf_surface_edge_name (fold, edge);
      bf_edge_handle_show (g_ptr_array_index (handles->widgets, i), edge->selection, name);
    }
  if (had_focus && !same_number)
    keep_focus (handles);
}

void
bf_surface_handles_allocate (BfSurfaceHandles *handles)
{
  const GArray *edges = bf_surface_scene_get_edges (handles->scene);

  for (guint i = 0; edges != NULL && i < edges->len && i < handles->widgets->len; i++)
    {
      BfVec2 px[2];
      bf_surface_scene_edge_px (handles->scene, bf_surface_edge (edges, i), BF_PICTURE_BLANK, px);
      int width = (int)MAX (fabs (px[1].x - px[0].x), LEAST_PX);
      int height = (int)MAX (fabs (px[1].y - px[0].y), LEAST_PX);
      GtkAllocation room = { (int)((px[0].x + px[1].x - width) / 2.0),
                             (int)((px[0].y + px[1].y - height) / 2.0), width, height };
      gtk_widget_size_allocate (g_ptr_array_index (handles->widgets, i), &room, -1);
    }
}

GtkWidget *
bf_surface_handles_find (BfSurfaceHandles *handles, BfSelection selection)
{
  int at = bf_surface_edges_find (bf_surface_scene_get_edges (handles->scene), selection);

  return at >= 0 && (guint)at < handles->widgets->len ? g_ptr_array_index (handles->widgets, at)
                                                      : NULL;
}

void
bf_surface_handles_add_stop (BfSurfaceHandles *handles, BfSelection selection, GPtrArray *stops)
{
  GtkWidget *handle = bf_surface_handles_find (handles, selection);
  gboolean is_point =
      bf_selection_is_opening (selection) && bf_selection_point_of_opening (selection) >= 0;

  if (handle == NULL || (is_point && !bf_surface_offers_points (handles->scene, selection)) ||
      (bf_selection_is_corner (selection) && !gtk_widget_is_focus (handle)))
    return;
  g_ptr_array_add (stops, handle);
}

BfSelection
bf_surface_handles_get_focused (BfSurfaceHandles *handles)
{
  GtkWidget *handle = focused_handle (handles);
  return handle != NULL ? bf_edge_handle_get_selection (BF_EDGE_HANDLE (handle))
                        : BF_SELECTION_NONE;
}
