/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-fields.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/field-places.h"
#include "app/opening-fields.h"
#include "app/size-edits.h"
#include "app/size-field.h"

#define ROOM_MARGIN_PX 4.0

/* Length and angle fields, and before them what they belong to. */
enum
{
  PART_NAME,
  PART_LENGTH,
  PART_ANGLE,
  N_PARTS
};

typedef struct
{
  BfSurfaceFields *fields;
  char *flange;     /* its id; NULL for an edge of the base */
  guint edge;       /* for an edge of the base */
  gboolean is_kept; /* while what is there now is gone through */
  GtkWidget *parts[N_PARTS];
  BfFieldPlace place;
} Item;

struct _BfSurfaceFields
{
  GtkWidget *parent;
  BfDocument *document;
  BfSurfaceScene *scene;
  GPtrArray *items; /* Item */
  BfOpeningFields *opening;
};

static void
item_free (gpointer data)
{
  Item *item = data;

  for (guint i = 0; i < N_PARTS; i++)
    g_clear_pointer (&item->parts[i], gtk_widget_unparent);
  g_free (item->flange);
  g_free (item);
}

static void
length_set_cb (Item *item, double size, gboolean stepped)
{
  BfSizeTarget target = { item->flange, item->edge };
  bf_size_edit_length (item->fields->document, &target, size, stepped);
}

static void
angle_set_cb (Item *item, double size, gboolean stepped)
{
  BfSizeTarget target = { item->flange, item->edge };
  bf_size_edit_angle (item->fields->document, &target, size, stepped);
}

static GtkWidget *
add_field (Item *item, BfSizeFieldKind kind, GCallback set_cb)
{
  GtkWidget *field = bf_size_field_new (kind, "");

  gtk_editable_set_width_chars (GTK_EDITABLE (field), 4);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (field), 5);
  g_signal_connect_swapped (field, "size-set", set_cb, item);
  gtk_widget_set_parent (field, item->fields->parent);
  return field;
}

static Item *
item_new (BfSurfaceFields *fields, const char *flange, guint edge)
{
  Item *item = g_new0 (Item, 1);

  item->fields = fields;
  item->flange = g_strdup (flange);
  item->edge = edge;
  item->parts[PART_LENGTH] = add_field (item, BF_SIZE_FIELD_LENGTH, G_CALLBACK (length_set_cb));
  if (flange != NULL)
    {
      item->parts[PART_ANGLE] = add_field (item, BF_SIZE_FIELD_ANGLE, G_CALLBACK (angle_set_cb));
      item->parts[PART_NAME] = gtk_label_new (flange);
      gtk_widget_add_css_class (item->parts[PART_NAME], "flange-name");
      gtk_widget_set_can_target (item->parts[PART_NAME], FALSE);
      gtk_widget_set_parent (item->parts[PART_NAME], fields->parent);
    }
  g_ptr_array_add (fields->items, item);
  return item;
}

BfSurfaceFields *
bf_surface_fields_new (GtkWidget *parent, BfDocument *document, BfSurfaceScene *scene)
{
  BfSurfaceFields *fields = g_new0 (BfSurfaceFields, 1);

  fields->parent = parent;
  fields->document = document;
  fields->scene = scene;
  fields->items = g_ptr_array_new_with_free_func (item_free);
  fields->opening = bf_opening_fields_new (parent, document, scene);
  return fields;
}

void
bf_surface_fields_free (BfSurfaceFields *fields)
{
  g_ptr_array_unref (fields->items);
  bf_opening_fields_free (fields->opening);
  g_free (fields);
}

static gboolean
has_focus (const Item *item)
{
  for (guint i = PART_LENGTH; i < N_PARTS; i++)
    if (item->parts[i] != NULL &&
        gtk_widget_get_state_flags (item->parts[i]) & GTK_STATE_FLAG_FOCUS_WITHIN)
      return TRUE;
  return FALSE;
}

static void
show_item (Item *item, const BfPart *part)
{
  BfSizeTarget target = { item->flange, item->edge };
  BfSizeField *length = BF_SIZE_FIELD (item->parts[PART_LENGTH]);
  g_autofree char *name = bf_size_edit_name (part, &target, BF_SIZE_FIELD_LENGTH);

  bf_size_field_set_name (length, name);
  if (item->flange == NULL)
    {
      bf_size_field_show (length, bf_part_edge_length_mm (part, item->edge), part->units, NULL);
      return;
    }
  const BfFlange *flange = bf_part_find_flange (part, item->flange);
  BfSizeField *angle = BF_SIZE_FIELD (item->parts[PART_ANGLE]);
  g_autofree char *angle_name = bf_size_edit_name (part, &target, BF_SIZE_FIELD_ANGLE);
  bf_size_field_set_name (angle, angle_name);
  bf_size_field_show (length, flange->length_mm, part->units, NULL);
  bf_size_field_show (angle, flange->angle_deg, part->units, NULL);
}

static void
keep_item (BfSurfaceFields *fields, const char *flange, guint edge, const BfPart *part)
{
  Item *item = NULL;

  for (guint i = 0; item == NULL && i < fields->items->len; i++)
    {
      Item *other = g_ptr_array_index (fields->items, i);
      if (g_strcmp0 (other->flange, flange) == 0 && (flange != NULL || other->edge == edge))
        item = other;
    }
  if (item == NULL)
    item = item_new (fields, flange, edge);
  item->is_kept = TRUE;
  show_item (item, part);
}

/* A field that goes with the keyboard in it leaves that to the bench top. */
static void
drop_items (BfSurfaceFields *fields)
{
  for (guint i = fields->items->len; i-- > 0;)
    {
      Item *item = g_ptr_array_index (fields->items, i);
      if (item->is_kept)
        continue;
      if (has_focus (item))
        gtk_widget_grab_focus (fields->parent);
      g_ptr_array_remove_index (fields->items, i);
    }
}

/* The other two sides of a rectangle are as long. */
static void
keep_base (BfSurfaceFields *fields, const BfPart *part)
{
  guint n = bf_part_is_rectangle (part) ? 2 : bf_part_n_points (part);

  for (guint i = 0; i < n; i++)
    keep_item (fields, NULL, i, part);
}

void
bf_surface_fields_update (BfSurfaceFields *fields)
{
  BfFold *fold = bf_surface_scene_get_fold (fields->scene);
  const GArray *edges = bf_surface_scene_get_edges (fields->scene);

  for (guint i = 0; i < fields->items->len; i++)
    ((Item *)g_ptr_array_index (fields->items, i))->is_kept = FALSE;
  if (fold != NULL)
    keep_base (fields, fold->part);
  for (guint i = 0; edges != NULL && i < edges->len; i++)
    {
      BfSelection tip = bf_surface_edge (edges, i)->selection;
      if (tip.face > 0 && tip.edge == BF_FLANGE_TIP)
        keep_item (fields, bf_fold_face (fold, (guint)tip.face)->id, 0, fold->part);
    }
  drop_items (fields);
  bf_opening_fields_update (fields->opening);
}

static BfSelection
selection_of (const Item *item, const BfFold *fold)
{
  if (item->flange == NULL)
    return (BfSelection){ 0, (int)item->edge };
  return (BfSelection){ bf_fold_find_face (fold, item->flange), BF_FLANGE_TIP };
}

static void
measure_item (const Item *item, BfFieldAsk *ask)
{
  for (guint i = 0; i < N_PARTS; i++)
    {
      int width, height;
      if (item->parts[i] == NULL)
        continue;
      bf_widget_natural_size (item->parts[i], &width, &height);
      bf_field_ask_add (ask, width, height);
    }
}

static gboolean
ask_for (BfSurfaceFields *fields, const Item *item, BfFieldAsk *ask)
{
  const BfFold *fold = bf_surface_scene_get_fold (fields->scene);
  BfSurfaceView *view = bf_surface_scene_get_view (fields->scene);
  const GArray *edges = bf_surface_scene_get_edges (fields->scene);
  int at = bf_surface_edges_find (edges, selection_of (item, fold));

  *ask = (BfFieldAsk){ .inside = item->flange == NULL, .must = has_focus (item) };
  if (at < 0)
    return FALSE;
  const BfSurfaceEdge *edge = bf_surface_edge (edges, (guint)at);
  bf_surface_scene_edge_px (fields->scene, edge, BF_PICTURE_BLANK, ask->edge);
  ask->outward = bf_vec2 (edge->outward.x, -edge->outward.y);
  measure_item (item, ask);
  if (item->flange == NULL)
    return TRUE;
  const BfFace *face = bf_fold_face (fold, (guint)edge->selection.face);
  const BfBendResult *bend = bf_fold_bend (fold, (guint)face->bend);
  BfVec2 strip[4] = { bend->line[0], bend->line[1], edge->blank[1], edge->blank[0] };
  for (guint k = 0; k < 4; k++)
    ask->strip[k] = bf_surface_view_from_blank (view, strip[k]);
  return TRUE;
}

static void
allocate_item (Item *item)
{
  int row_height = 0;
  double x = item->place.at.x;
  double y = item->place.at.y;

  for (guint i = 0; i < N_PARTS; i++)
    {
      int width, height;
      if (item->parts[i] == NULL)
        continue;
      bf_widget_natural_size (item->parts[i], &width, &height);
      row_height = MAX (row_height, height);
    }
  for (guint i = 0; i < N_PARTS; i++)
    {
      int width, height;
      if (item->parts[i] == NULL)
        continue;
      gtk_widget_set_child_visible (item->parts[i], item->place.shown);
      bf_widget_natural_size (item->parts[i], &width, &height);
      int down = item->place.stacked ? 0 : (row_height - height) / 2;
      GtkAllocation room = { (int)x, (int)y + down, width, height };
      gtk_widget_size_allocate (item->parts[i], &room, -1);
      if (item->place.stacked)
        y += height;
      else
        x += width + BF_FIELD_GAP_PX;
    }
}

/* In what order they get places: the one that is typed in, those of the selected edge, the rest. */
static int
rank_of (BfSurfaceFields *fields, const Item *item)
{
  BfFold *fold = bf_surface_scene_get_fold (fields->scene);
  BfSelection now = bf_surface_view_get_selection (bf_surface_scene_get_view (fields->scene));
  BfSelection own = selection_of (item, fold);

  if (has_focus (item))
    return 0;
  if (bf_selection_is_same (own, now) || (own.face > 0 && own.face == now.face))
    return 1;
  return item->flange == NULL ? 2 : 3;
}

/* The formed part and every hole. Returns: (transfer full). */
static GArray *
boxes_to_keep_off (BfSurfaceFields *fields)
{
  BfSurfaceView *view = bf_surface_scene_get_view (fields->scene);
  const BfFold *fold = bf_surface_scene_get_fold (fields->scene);
  GArray *boxes = g_array_new (FALSE, FALSE, sizeof (BfBox));
  BfBox formed = bf_surface_scene_box (fields->scene, BF_PICTURE_FORMED);

  if (formed.min.x <= formed.max.x)
    g_array_append_val (boxes, formed);
  for (guint i = 0; fold != NULL && i < fold->openings->len; i++)
    {
      BfBox hole = bf_box_empty ();
      bf_ring_extend_box (bf_fold_opening (fold, i)->ring, &hole);
      BfVec2 a = bf_surface_view_from_blank (view, hole.min);
      BfVec2 b = bf_surface_view_from_blank (view, hole.max);
      BfBox px = { { a.x, b.y }, { b.x, a.y } };
      g_array_append_val (boxes, px);
    }
  return boxes;
}

/* Tells the scene where they are: its words keep off them. */
static void
cover (BfSurfaceFields *fields, const BfFieldAsk *asks, const BfFieldPlace *places, guint n)
{
  g_autoptr (GArray) covered = g_array_new (FALSE, FALSE, sizeof (BfBox));

  for (guint i = 0; i < n; i++)
    {
      BfVec2 size = places[i].stacked ? asks[i].stack : asks[i].row;
      BfBox box = { places[i].at, bf_vec2_add (places[i].at, size) };
      BfBox line = bf_box_empty ();
      if (places[i].shown)
        g_array_append_val (covered, box);
      if (!asks[i].must || !asks[i].inside)
        continue;
      bf_box_extend (&line, asks[i].edge[0]);
      bf_box_extend (&line, asks[i].edge[1]);
      g_array_append_val (covered, line);
    }
  bf_surface_scene_set_covered (fields->scene, covered);
}

void
bf_surface_fields_allocate (BfSurfaceFields *fields)
{
  guint n = fields->items->len;
  g_autofree BfFieldAsk *asks = g_new0 (BfFieldAsk, n + BF_OPENING_ASKS);
  g_autofree BfFieldPlace *places = g_new0 (BfFieldPlace, n + BF_OPENING_ASKS);
  g_autofree guint *order = g_new0 (guint, n + BF_OPENING_ASKS);
  guint n_first = bf_opening_fields_ask (fields->opening, asks);
  guint n_asks = n_first;

  for (guint i = 0; i < n; i++)
    ((Item *)g_ptr_array_index (fields->items, i))->place.shown = FALSE;
  for (int rank = 0; rank <= 3; rank++)
    for (guint i = 0; i < n; i++)
      if (rank_of (fields, g_ptr_array_index (fields->items, i)) == rank &&
          ask_for (fields, g_ptr_array_index (fields->items, i), &asks[n_asks]))
        order[n_asks++] = i;

  BfBox room = { { ROOM_MARGIN_PX, ROOM_MARGIN_PX },
                 { gtk_widget_get_width (fields->parent) - ROOM_MARGIN_PX,
                   gtk_widget_get_height (fields->parent) - ROOM_MARGIN_PX } };
  g_autoptr (GArray) keep_off = boxes_to_keep_off (fields);
  bf_field_places (asks, n_asks, &room, keep_off, places);
  cover (fields, asks, places, n_asks);
  bf_opening_fields_allocate (fields->opening, places);
  for (guint k = n_first; k < n_asks; k++)
    ((Item *)g_ptr_array_index (fields->items, order[k]))->place = places[k];
  for (guint i = 0; i < n; i++)
    allocate_item (g_ptr_array_index (fields->items, i));
}

void
bf_surface_fields_snapshot (BfSurfaceFields *fields, GtkSnapshot *snapshot)
{
  for (guint i = 0; i < fields->items->len; i++)
    {
      Item *item = g_ptr_array_index (fields->items, i);
      for (guint k = 0; k < N_PARTS; k++)
        if (item->parts[k] != NULL)
          gtk_widget_snapshot_child (fields->parent, item->parts[k], snapshot);
    }
  bf_opening_fields_snapshot (fields->opening, snapshot);
}

void
bf_surface_fields_add_stops (BfSurfaceFields *fields, BfSelection selection, GPtrArray *stops)
{
  BfFold *fold = bf_surface_scene_get_fold (fields->scene);

  bf_opening_fields_add_stops (fields->opening, selection, stops);
  for (guint i = 0; i < fields->items->len; i++)
    {
      Item *item = g_ptr_array_index (fields->items, i);
      if (!item->place.shown || !bf_selection_is_same (selection_of (item, fold), selection))
        continue;
      for (guint k = PART_LENGTH; k < N_PARTS; k++)
        if (item->parts[k] != NULL)
          g_ptr_array_add (stops, item->parts[k]);
    }
}

BfSelection
bf_surface_fields_selection (BfSurfaceFields *fields, GtkWidget *field)
{
  for (guint i = 0; i < fields->items->len; i++)
    {
      Item *item = g_ptr_array_index (fields->items, i);
      if (field == item->parts[PART_LENGTH] || field == item->parts[PART_ANGLE])
        return selection_of (item, bf_surface_scene_get_fold (fields->scene));
    }
  return bf_opening_fields_selection (fields->opening, field);
}
