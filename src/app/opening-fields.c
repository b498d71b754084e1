/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/opening-fields.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/opening-edits.h"
#include "app/size-field.h"
#include "app/surface-openings.h"

/* In the order that they stand in and that Tab walks them; the sizes count as BfOpeningSize does.
 */
enum
{
  FIELD_ALONG = BF_N_OPENING_SIZES,
  FIELD_OUT,
  N_FIELDS,
  BUTTON_ADD = N_FIELDS, /* of a point: one more after it */
  BUTTON_REMOVE,
  N_WIDGETS
};

#define POINT_ROOM_PX 8.0

/* Which of them stand together. */
enum
{
  GROUP_SIZES,
  GROUP_ALONG,
  GROUP_OUT
};

struct _BfOpeningFields
{
  GtkWidget *parent;
  BfDocument *document;
  BfSurfaceScene *scene;
  BfSelection now; /* what they show */
  gulong view_changed;
  GtkWidget *widgets[N_WIDGETS]; /* NULL until they are first wanted */
};

static guint
group_of (guint which)
{
  return which == FIELD_ALONG ? GROUP_ALONG : which == FIELD_OUT ? GROUP_OUT : GROUP_SIZES;
}

static const BfOpening *
shown (BfOpeningFields *fields)
{
  const BfOpeningResult *result =
      bf_surface_opening_result (bf_surface_scene_get_fold (fields->scene), fields->now);
  return result != NULL ? result->asked : NULL;
}

static gboolean
is_wanted (BfOpeningFields *fields, guint which)
{
  const BfOpening *opening = shown (fields);

  if (opening == NULL || fields->widgets[which] == NULL)
    return FALSE;
  if (which == BUTTON_ADD)
    return bf_selection_point_of_opening (fields->now) >= 0;
  return which >= BF_N_OPENING_SIZES || isfinite (bf_opening_size (opening, (BfOpeningSize)which));
}

static void
size_set_cb (GtkWidget *field, double size, gboolean stepped, gpointer user_data)
{
  BfOpeningFields *fields = user_data;
  BfVec2 datum = { 0.0, 0.0 };

  for (guint i = 0; i < BF_N_OPENING_SIZES; i++)
    if (field == fields->widgets[i])
      {
        bf_opening_give (fields->document, fields->now, (BfOpeningSize)i, size, stepped);
        return;
      }
  const BfOpening *opening = shown (fields);
  if (opening == NULL)
    return;
  BfVec2 place = bf_surface_opening_place (opening, fields->now);
  datum = bf_surface_opening_datum (bf_surface_scene_get_fold (fields->scene), fields->now);
  if (field == fields->widgets[FIELD_ALONG])
    place.x = datum.x + size;
  else
    place.y = datum.y + size;
  bf_opening_place (fields->document, fields->now, place, stepped);
}

static void
select_then (BfOpeningFields *fields, BfSelection then)
{
  bf_surface_view_select (bf_surface_scene_get_view (fields->scene), then);
}

static void
added_cb (BfOpeningFields *fields)
{
  select_then (fields, bf_opening_add_point (fields->document, fields->now));
}

static void
removed_cb (BfOpeningFields *fields)
{
  gtk_widget_grab_focus (fields->parent);
  select_then (fields, bf_opening_remove (fields->document, fields->now));
}

static void
make_button (BfOpeningFields *fields, guint which, const char *icon, GCallback clicked_cb)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);

  gtk_widget_add_css_class (button, "flat");
  gtk_widget_add_css_class (button, "size");
  gtk_widget_set_parent (button, fields->parent);
  g_signal_connect_swapped (button, "clicked", clicked_cb, fields);
  fields->widgets[which] = button;
}

static void
name_button (BfOpeningFields *fields, guint which, const char *name)
{
  gtk_widget_set_tooltip_text (fields->widgets[which], name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (fields->widgets[which]),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

static void
make_widgets (BfOpeningFields *fields)
{
  for (guint i = 0; i < N_FIELDS; i++)
    {
      BfSizeFieldKind kind = i == BF_OPENING_ANGLE     ? BF_SIZE_FIELD_TURN
                             : i >= BF_N_OPENING_SIZES ? BF_SIZE_FIELD_PLACE
                                                       : BF_SIZE_FIELD_LENGTH;
      const char *name = i < BF_N_OPENING_SIZES ? bf_opening_size_name ((BfOpeningSize)i) : "";
      GtkWidget *field = bf_size_field_new (kind, name);
      gtk_editable_set_width_chars (GTK_EDITABLE (field), 4);
      gtk_editable_set_max_width_chars (GTK_EDITABLE (field), 5);
      g_signal_connect (field, "size-set", G_CALLBACK (size_set_cb), fields);
      gtk_widget_set_parent (field, fields->parent);
      fields->widgets[i] = field;
    }
  make_button (fields, BUTTON_ADD, "list-add-symbolic", G_CALLBACK (added_cb));
  make_button (fields, BUTTON_REMOVE, "edit-delete-symbolic", G_CALLBACK (removed_cb));
}

static void
show_sizes (BfOpeningFields *fields, const BfOpening *opening)
{
  const BfFold *fold = bf_surface_scene_get_fold (fields->scene);
  BfUnits units = fold->part->units;
  BfVec2 by = bf_vec2_sub (bf_surface_opening_place (opening, fields->now),
                           bf_surface_opening_datum (fold, fields->now));
  gboolean on_base = fields->now.face == 0;

  for (guint i = 0; i < BF_N_OPENING_SIZES; i++)
    if (is_wanted (fields, i))
      bf_size_field_show (BF_SIZE_FIELD (fields->widgets[i]),
                          bf_opening_size (opening, (BfOpeningSize)i), units, NULL);
  name_button (fields, BUTTON_ADD, _ ("New point after this one"));
  name_button (fields, BUTTON_REMOVE,
               bf_selection_point_of_opening (fields->now) < 0 ? _ ("Remove the hole")
                                                               : _ ("Remove the point"));
  bf_size_field_set_name (BF_SIZE_FIELD (fields->widgets[FIELD_ALONG]),
                          on_base ? _ ("From the left") : _ ("Along the bend"));
  bf_size_field_set_name (BF_SIZE_FIELD (fields->widgets[FIELD_OUT]),
                          on_base ? _ ("From the front") : _ ("Out from the bend"));
  bf_size_field_show (BF_SIZE_FIELD (fields->widgets[FIELD_ALONG]), by.x, units, NULL);
  bf_size_field_show (BF_SIZE_FIELD (fields->widgets[FIELD_OUT]), by.y, units, NULL);
}

/* What is still being typed belongs to the opening that it was typed for. */
static void
take_over (BfOpeningFields *fields)
{
  for (guint i = 0; i < N_FIELDS; i++)
    if (fields->widgets[i] != NULL && gtk_widget_get_child_visible (fields->widgets[i]))
      bf_size_field_commit (BF_SIZE_FIELD (fields->widgets[i]));
}

static gboolean
has_focus (const BfOpeningFields *fields, guint which)
{
  return fields->widgets[which] != NULL &&
         (gtk_widget_get_state_flags (fields->widgets[which]) & GTK_STATE_FLAG_FOCUS_WITHIN) != 0;
}

void
bf_opening_fields_update (BfOpeningFields *fields)
{
  BfSelection selected = bf_surface_view_get_selection (bf_surface_scene_get_view (fields->scene));
  const BfFold *fold = bf_surface_scene_get_fold (fields->scene);

  if (!bf_selection_is_same (selected, fields->now))
    take_over (fields);
  fields->now = bf_surface_opening_result (fold, selected) != NULL ? selected : BF_SELECTION_NONE;
  if (fields->now.face >= 0 && fields->widgets[0] == NULL)
    make_widgets (fields);
  for (guint i = 0; i < N_WIDGETS; i++)
    {
      if (has_focus (fields, i) && !is_wanted (fields, i))
        gtk_widget_grab_focus (fields->parent);
      if (fields->widgets[i] != NULL)
        gtk_widget_set_child_visible (fields->widgets[i], is_wanted (fields, i));
    }
  if (fields->now.face >= 0)
    show_sizes (fields, shown (fields));
}

static void
view_changed_cb (BfOpeningFields *fields)
{
  BfSelection selected = bf_surface_view_get_selection (bf_surface_scene_get_view (fields->scene));

  if (!bf_selection_is_same (selected, fields->now) &&
      (bf_selection_is_opening (selected) || fields->now.face >= 0))
    bf_opening_fields_update (fields);
}

BfOpeningFields *
bf_opening_fields_new (GtkWidget *parent, BfDocument *document, BfSurfaceScene *scene)
{
  BfOpeningFields *fields = g_new0 (BfOpeningFields, 1);

  fields->parent = parent;
  fields->document = document;
  fields->scene = scene;
  fields->now = BF_SELECTION_NONE;
  fields->view_changed = g_signal_connect_swapped (bf_surface_scene_get_view (scene), "changed",
                                                   G_CALLBACK (view_changed_cb), fields);
  return fields;
}

void
bf_opening_fields_free (BfOpeningFields *fields)
{
  g_signal_handler_disconnect (bf_surface_scene_get_view (fields->scene), fields->view_changed);
  for (guint i = 0; i < N_WIDGETS; i++)
    g_clear_pointer (&fields->widgets[i], gtk_widget_unparent);
  g_free (fields);
}

static void
measure (BfOpeningFields *fields, guint group, BfFieldAsk *ask)
{
  for (guint i = 0; i < N_WIDGETS; i++)
    {
      int width, height;
      if (group_of (i) != group || !is_wanted (fields, i))
        continue;
      bf_widget_natural_size (fields->widgets[i], &width, &height);
      bf_field_ask_add (ask, width, height);
    }
}

/* The opening as it is seen, or the selected point with some room round it. */
static BfBox
box_px (BfOpeningFields *fields)
{
  g_autoptr (GArray) px = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  const GArray *edges = bf_surface_scene_get_edges (fields->scene);
  int at = bf_surface_edges_find (edges, fields->now);
  BfBox box = bf_box_empty ();

  if (at >= 0 && bf_selection_point_of_opening (fields->now) >= 0)
    {
      BfVec2 point = bf_surface_view_from_blank (bf_surface_scene_get_view (fields->scene),
                                                 bf_surface_edge (edges, (guint)at)->blank[0]);
      return (BfBox){ { point.x - POINT_ROOM_PX, point.y - POINT_ROOM_PX },
                      { point.x + POINT_ROOM_PX, point.y + POINT_ROOM_PX } };
    }
  bf_surface_opening_px (fields->scene, fields->now, BF_PICTURE_BLANK, px);
  for (guint i = 0; i < px->len; i++)
    bf_box_extend (&box, g_array_index (px, BfVec2, i));
  return box;
}

/* Above it. */
static void
ask_for_sizes (BfOpeningFields *fields, BfFieldAsk *ask)
{
  BfBox box = box_px (fields);

  *ask = (BfFieldAsk){ .edge = { box.min, { box.max.x, box.min.y } },
                       .outward = { 0.0, 1.0 },
                       .inside = TRUE,
                       .must = TRUE };
  measure (fields, GROUP_SIZES, ask);
}

/* On the line that a distance is measured along: below a lying one, right of an upright one. */
static void
ask_for_distance (BfOpeningFields *fields, guint axis, BfFieldAsk *ask)
{
  BfSurfaceView *view = bf_surface_scene_get_view (fields->scene);
  BfVec2 lines[2][2];

  bf_surface_opening_lines (bf_surface_scene_get_fold (fields->scene), fields->now, lines);
  *ask = (BfFieldAsk){ .inside = TRUE, .must = TRUE };
  for (guint k = 0; k < 2; k++)
    ask->edge[k] = bf_surface_view_from_blank (view, lines[axis][k]);
  BfVec2 by = bf_vec2_sub (ask->edge[1], ask->edge[0]);
  gboolean lying = fabs (by.x) > fabs (by.y);
  ask->outward = lying ? bf_vec2 (0.0, -1.0) : bf_vec2 (-1.0, 0.0);
  measure (fields, axis == 0 ? GROUP_ALONG : GROUP_OUT, ask);
}

guint
bf_opening_fields_ask (BfOpeningFields *fields, BfFieldAsk *asks)
{
  if (shown (fields) == NULL || fields->widgets[0] == NULL)
    return 0;
  ask_for_sizes (fields, &asks[GROUP_SIZES]);
  ask_for_distance (fields, 0, &asks[GROUP_ALONG]);
  ask_for_distance (fields, 1, &asks[GROUP_OUT]);
  return BF_OPENING_ASKS;
}

void
bf_opening_fields_allocate (BfOpeningFields *fields, const BfFieldPlace *places)
{
  BfVec2 at[BF_OPENING_ASKS] = { places[0].at, places[1].at, places[2].at };

  for (guint i = 0; i < N_WIDGETS; i++)
    {
      guint group = group_of (i);
      int width, height;
      if (!is_wanted (fields, i))
        continue;
      bf_widget_natural_size (fields->widgets[i], &width, &height);
      GtkAllocation room = { (int)at[group].x, (int)at[group].y, width, height };
      gtk_widget_size_allocate (fields->widgets[i], &room, -1);
      if (places[group].stacked)
        at[group].y += height;
      else
        at[group].x += width + BF_FIELD_GAP_PX;
    }
}

void
bf_opening_fields_snapshot (BfOpeningFields *fields, GtkSnapshot *snapshot)
{
  for (guint i = 0; i < N_WIDGETS; i++)
    if (is_wanted (fields, i))
      gtk_widget_snapshot_child (fields->parent, fields->widgets[i], snapshot);
}

void
bf_opening_fields_add_stops (BfOpeningFields *fields, BfSelection selection, GPtrArray *stops)
{
  for (guint i = 0; i < N_WIDGETS && bf_selection_is_same (selection, fields->now); i++)
    if (is_wanted (fields, i))
      g_ptr_array_add (stops, fields->widgets[i]);
}

BfSelection
bf_opening_fields_selection (BfOpeningFields *fields, GtkWidget *widget)
{
  for (guint i = 0; i < N_WIDGETS; i++)
    if (widget == fields->widgets[i])
      return fields->now;
  return BF_SELECTION_NONE;
}
