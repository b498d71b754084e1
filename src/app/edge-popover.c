/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/edge-popover.h"

#include <glib/gi18n.h>

#include "app/bend-sketch.h"
#include "app/corner-box.h"
#include "app/edge-edits.h"
#include "app/key-shortcuts.h"
#include "app/side-box.h"
#include "app/size-edits.h"
#include "app/size-field.h"
#include "app/surface-edges.h"
#include "fold/second-make.h"

enum
{
  FIELD_EDGE,
  FIELD_LENGTH,
  FIELD_ANGLE,
  N_FIELDS
};

struct _BfEdgePopover
{
  GtkPopover parent_instance;
  BfDocument *document;
  BfSelection selection;
  char *flange;

  GtkLabel *title;
  GtkGrid *grid;
  GtkLabel *edge_label;
  GtkLabel *length_label;
  GtkLabel *angle_label;
  GtkLabel *angle_words;
  GtkLabel *expected;
  GtkBox *angle_box;
  GtkWidget *sketch;
  BfCornerBox *corner;
  GtkWidget *sides_button;
  BfSideBox *sides; /* seen once it is asked for them, or where they are not plain */
  GtkBox *buttons;
  GtkWidget *shapes; /* of openings; seen once it is asked for them */
  GtkWidget *fields[N_FIELDS];
};

G_DEFINE_FINAL_TYPE (BfEdgePopover, bf_edge_popover, GTK_TYPE_POPOVER)

enum
{
  SIGNAL_LEFT,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

static void
edge_set_cb (BfEdgePopover *self, double size_mm, gboolean stepped)
{
  BfSizeTarget target = { NULL, (guint)self->selection.edge };
  bf_size_edit_length (self->document, &target, size_mm, stepped);
}

static void
length_set_cb (BfEdgePopover *self, double size_mm, gboolean stepped)
{
  BfSizeTarget target = { self->flange, 0 };
  bf_size_edit_length (self->document, &target, size_mm, stepped);
}

static void
angle_set_cb (BfEdgePopover *self, double angle_deg, gboolean stepped)
{
  BfSizeTarget target = { self->flange, 0 };
  bf_size_edit_angle (self->document, &target, angle_deg, stepped);
}

static void
show_shapes_cb (BfEdgePopover *self)
{
  gtk_widget_set_visible (self->shapes, !gtk_widget_get_visible (self->shapes));
}

static void
show_sides_cb (BfEdgePopover *self)
{
  gtk_widget_set_visible (GTK_WIDGET (self->sides),
                          !gtk_widget_get_visible (GTK_WIDGET (self->sides)));
}

/* Tab stays in the popover while it is open, and goes round. */
static void
walk (BfEdgePopover *self, GtkDirectionType direction)
{
  GtkWidget *box = gtk_popover_get_child (GTK_POPOVER (self));

  if (gtk_widget_child_focus (box, direction))
    return;
  gtk_widget_set_focus_child (box, NULL);
  gtk_widget_child_focus (box, direction);
}

static gboolean
key_pressed_cb (GtkEventControllerKey *controller,
                guint key,
                guint code,
                GdkModifierType state,
                gpointer user_data)
{
  BfEdgePopover *self = user_data;
  (void)controller;
  (void)code;
  (void)state;

  if (key == GDK_KEY_Escape)
    {
      gtk_popover_popdown (GTK_POPOVER (self));
      g_signal_emit (self, signals[SIGNAL_LEFT], 0);
      return GDK_EVENT_STOP;
    }
  if (key == GDK_KEY_Down || key == GDK_KEY_Tab)
    walk (self, GTK_DIR_TAB_FORWARD);
  else if (key == GDK_KEY_Up || key == GDK_KEY_ISO_Left_Tab)
    walk (self, GTK_DIR_TAB_BACKWARD);
  else
    return GDK_EVENT_PROPAGATE;
  return GDK_EVENT_STOP;
}

static void
bf_edge_popover_dispose (GObject *object)
{
  BfEdgePopover *self = BF_EDGE_POPOVER (object);

  g_clear_object (&self->document);
  g_clear_pointer (&self->flange, g_free);
  gtk_widget_dispose_template (GTK_WIDGET (self), BF_TYPE_EDGE_POPOVER);
  G_OBJECT_CLASS (bf_edge_popover_parent_class)->dispose (object);
}

static void
bf_edge_popover_class_init (BfEdgePopoverClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_edge_popover_dispose;
  g_type_ensure (BF_TYPE_BEND_SKETCH);
  g_type_ensure (BF_TYPE_CORNER_BOX);
  g_type_ensure (BF_TYPE_SIDE_BOX);
  signals[SIGNAL_LEFT] = g_signal_new ("left", BF_TYPE_EDGE_POPOVER, G_SIGNAL_RUN_LAST, 0, NULL,
                                       NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/benchfold/Benchfold/edge-popover.ui");
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, title);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, grid);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, edge_label);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, length_label);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, angle_label);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, angle_words);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, expected);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, angle_box);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, sketch);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, corner);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, sides_button);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, sides);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, buttons);
  gtk_widget_class_bind_template_child (widget_class, BfEdgePopover, shapes);
  gtk_widget_class_bind_template_callback (widget_class, show_shapes_cb);
  gtk_widget_class_bind_template_callback (widget_class, show_sides_cb);
}

static void
add_field (BfEdgePopover *self, int which, BfSizeFieldKind kind, GCallback set_cb)
{
  self->fields[which] = bf_size_field_new (kind, "");
  gtk_grid_attach (self->grid, self->fields[which], 1, which, 1, 1);
  g_signal_connect_swapped (self->fields[which], "size-set", set_cb, self);
}

static void
bf_edge_popover_init (BfEdgePopover *self)
{
  GtkEventController *keys = gtk_event_controller_key_new ();

  self->selection = BF_SELECTION_NONE;
  gtk_widget_init_template (GTK_WIDGET (self));
  add_field (self, FIELD_EDGE, BF_SIZE_FIELD_LENGTH, G_CALLBACK (edge_set_cb));
  add_field (self, FIELD_LENGTH, BF_SIZE_FIELD_LENGTH, G_CALLBACK (length_set_cb));
  add_field (self, FIELD_ANGLE, BF_SIZE_FIELD_ANGLE, G_CALLBACK (angle_set_cb));
  g_signal_connect (keys, "key-pressed", G_CALLBACK (key_pressed_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  bf_bind_keys (GTK_WIDGET (self));
}

GtkWidget *
bf_edge_popover_new (void)
{
  return g_object_new (BF_TYPE_EDGE_POPOVER, NULL);
}

static void
show_title (BfEdgePopover *self, const BfFold *fold)
{
  g_autoptr (GArray) edges = bf_surface_edges (fold);
  BfSelection as_edge = self->selection;

  if (as_edge.face > 0 && as_edge.edge == -1)
    as_edge.edge = BF_FLANGE_TIP;
  int at = bf_surface_edges_find (edges, as_edge);
  g_autofree char *name =
      at >= 0 ? bf_surface_edge_name (fold, bf_surface_edge (edges, (guint)at)) : g_strdup ("");
  gtk_label_set_label (self->title, name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

static void
show_row (BfEdgePopover *self, int which, GtkLabel *label, gboolean shown)
{
  gtk_widget_set_visible (self->fields[which], shown);
  gtk_widget_set_visible (GTK_WIDGET (label), shown);
}

static void
show_sizes (BfEdgePopover *self, const BfFold *fold, guint offers)
{
  const BfFlange *flange = bf_selection_flange (fold, self->selection);
  const BfPart *part = fold->part;
  BfSizeTarget edge = { NULL, (guint)MAX (self->selection.edge, 0) };
  BfSizeTarget target = { self->flange, 0 };

  gtk_widget_set_visible (GTK_WIDGET (self->grid),
                          flange != NULL || (offers & BF_OFFER_EDGE_LENGTH) != 0);
  show_row (self, FIELD_EDGE, self->edge_label, (offers & BF_OFFER_EDGE_LENGTH) != 0);
  show_row (self, FIELD_LENGTH, self->length_label, flange != NULL);
  show_row (self, FIELD_ANGLE, self->angle_label, flange != NULL);
  gtk_widget_set_visible (GTK_WIDGET (self->angle_box), flange != NULL);
  if ((offers & BF_OFFER_EDGE_LENGTH) != 0)
    {
      g_autofree char *name = bf_size_edit_name (part, &edge, BF_SIZE_FIELD_LENGTH);
      bf_size_field_set_name (BF_SIZE_FIELD (self->fields[FIELD_EDGE]), name);
      bf_size_field_show (BF_SIZE_FIELD (self->fields[FIELD_EDGE]),
                          bf_part_edge_length_mm (part, edge.edge), part->units, NULL);
    }
  if (flange == NULL)
    return;
  g_autofree char *length = bf_size_edit_name (part, &target, BF_SIZE_FIELD_LENGTH);
  g_autofree char *angle = bf_size_edit_name (part, &target, BF_SIZE_FIELD_ANGLE);
  g_autofree char *words = bf_angle_in_words (flange->angle_deg);
  bf_size_field_set_name (BF_SIZE_FIELD (self->fields[FIELD_LENGTH]), length);
  bf_size_field_set_name (BF_SIZE_FIELD (self->fields[FIELD_ANGLE]), angle);
  bf_size_field_show (BF_SIZE_FIELD (self->fields[FIELD_LENGTH]), flange->length_mm, part->units,
                      NULL);
  bf_size_field_show (BF_SIZE_FIELD (self->fields[FIELD_ANGLE]), flange->angle_deg, part->units,
                      NULL);
  gtk_label_set_label (self->angle_words, words);
  bf_bend_sketch_show (BF_BEND_SKETCH (self->sketch), flange->angle_deg, flange->turn);
}

/* How true a size will come out, as a line of its own and as what its field is described by. */
static void
add_expected (BfEdgePopover *self, const BfFold *fold, int which, GString *lines)
{
  g_autofree char *words = NULL;
  BfExpectedError error;
  BfMadeSize size;
  gboolean known = which == FIELD_LENGTH
                       ? self->flange != NULL && bf_made_flange (fold, self->flange, NAN, &size)
                       : bf_made_edge (fold, (guint)self->selection.edge, NAN, &size);

  if (!known || !gtk_widget_get_visible (self->fields[which]))
    return;
  bf_made_expected (fold, &size, &error);
  words = bf_expected_words (fold, &error, size.asked_mm);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->fields[which]),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, words, -1);
  if (lines->len > 0)
    g_string_append_c (lines, '\n');
  g_string_append (lines, words);
}

static void
show_expected (BfEdgePopover *self, const BfFold *fold)
{
  g_autoptr (GString) lines = g_string_new (NULL);

  add_expected (self, fold, FIELD_EDGE, lines);
  add_expected (self, fold, FIELD_LENGTH, lines);
  gtk_label_set_label (self->expected, lines->str);
  gtk_widget_set_visible (GTK_WIDGET (self->expected), lines->len > 0);
}

/* Of the flange both sides, behind a line of their own while they are plain; where a bare side is
 * selected, that one. */
static void
show_sides (BfEdgePopover *self, const BfFold *fold, gboolean anew)
{
  const BfFlange *flange = bf_selection_flange (fold, self->selection);
  gboolean is_bare = flange == NULL && self->selection.face > 0 && self->selection.edge >= 0;
  guint sides = BF_SIDE_OF_START | BF_SIDE_OF_END;

  if (is_bare)
    {
      flange =
          bf_part_find_flange (fold->part, bf_fold_face (fold, (guint)self->selection.face)->id);
      sides = self->selection.edge == BF_FLANGE_START ? BF_SIDE_OF_START : BF_SIDE_OF_END;
    }
  gtk_widget_set_visible (self->sides_button, flange != NULL && !is_bare);
  if (anew || flange == NULL)
    gtk_widget_set_visible (GTK_WIDGET (self->sides),
                            flange != NULL && (is_bare || bf_flange_has_own_sides (flange)));
  if (flange != NULL)
    bf_side_box_show (self->sides, self->document, flange->id, sides);
}

/* The buttons stand in the order of BfOffers, from turn up on. */
static void
show_buttons (BfEdgePopover *self, guint offers)
{
  guint offer = BF_OFFER_TURN_UP, any = 0;

  for (GtkWidget *w = gtk_widget_get_first_child (GTK_WIDGET (self->buttons)); w != NULL;
       w = gtk_widget_get_next_sibling (w))
    {
      gtk_widget_set_visible (w, (offers & offer) != 0);
      any |= offers & offer;
      offer <<= 1;
    }
  gtk_widget_set_visible (GTK_WIDGET (self->buttons), any != 0);
}

gboolean
bf_edge_popover_show (BfEdgePopover *self, BfDocument *document, BfSelection selection)
{
  g_return_val_if_fail (BF_IS_EDGE_POPOVER (self) && BF_IS_DOCUMENT (document), FALSE);

  const BfFold *fold = bf_document_get_fold (document);
  guint offers = bf_edge_offers (fold, selection);
  if (!bf_corner_box_show (self->corner, document, selection) && offers == 0)
    return FALSE;
  const BfFlange *flange = bf_selection_flange (fold, selection);
  g_set_object (&self->document, document);
  gboolean anew = !bf_selection_is_same (selection, self->selection) ||
                  !gtk_widget_get_visible (GTK_WIDGET (self));
  if (anew)
    gtk_widget_set_visible (self->shapes, FALSE);
  self->selection = selection;
  g_free (self->flange);
  self->flange = flange != NULL ? g_strdup (flange->id) : NULL;
  show_title (self, fold);
  show_sizes (self, fold, offers);
  show_expected (self, fold);
  show_sides (self, fold, anew);
  show_buttons (self, offers);
  return TRUE;
}

void
bf_edge_popover_take_focus (BfEdgePopover *self)
{
  g_return_if_fail (BF_IS_EDGE_POPOVER (self));

  if (self->flange != NULL)
    gtk_widget_grab_focus (self->fields[FIELD_LENGTH]);
  else if (gtk_widget_get_visible (self->fields[FIELD_EDGE]))
    gtk_widget_grab_focus (self->fields[FIELD_EDGE]);
  else
    gtk_widget_child_focus (GTK_WIDGET (self), GTK_DIR_TAB_FORWARD);
}
