/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/size-page.h"

#include <glib/gi18n.h>

#include "app/pencil.h"
#include "app/theme-colours.h"
#include "app/thing-picture.h"
#include "app/thing-size-box.h"

struct _BfSizePage
{
  GtkWidget parent_instance;
  BfDocument *setup;
  BfThing thing;
  BfThingSizes sizes;
  BfPart *part;         /* what comes out; NULL where the sizes leave nothing inside */
  BfFormedView *formed; /* of the last part that came out */
  double scale;
  BfVec2 origin_px; /* of the picture */
  GtkWidget *boxes[BF_N_THING_SIZES];
};

G_DEFINE_FINAL_TYPE (BfSizePage, bf_size_page, GTK_TYPE_WIDGET)

enum
{
  SIGNAL_CHANGED,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

/* Room round the picture for the fields. */
#define ROOM_X_PX 210.0
#define ROOM_Y_PX 120.0
#define OFF_PX 26.0

/* Where Tab stops: a field and a row of sketches for each size. */
#define N_STOPS (2 * BF_N_THING_SIZES)

static double
thickness_mm (BfSizePage *self)
{
  return bf_document_get_part (self->setup)->metal.thickness_mm;
}

static BfVec3
picture_size (BfSizePage *self)
{
  double t = thickness_mm (self);
  return bf_vec3 (bf_thing_outside_mm (self->thing, &self->sizes, BF_THING_LENGTH, t),
                  bf_thing_outside_mm (self->thing, &self->sizes, BF_THING_WIDTH, t),
                  bf_thing_outside_mm (self->thing, &self->sizes, BF_THING_HEIGHT, t));
}

/* The two ends of a size on the metal's outside, and which way its line stands off: away from the
 * metal, and toward the eye's side of it. */
static void
size_ends (BfSizePage *self, BfThingSize which, BfVec3 ends[2], BfVec3 *out)
{
  BfVec3 size = picture_size (self);
  double floor_mm = -thickness_mm (self);
  gboolean at_back = self->thing == BF_THING_BRACKET || self->thing == BF_THING_SHELF;

  ends[0] = bf_vec3 (0.0, 0.0, floor_mm);
  ends[1] = bf_vec3 (size.x, 0.0, floor_mm);
  *out = bf_vec3 (0.0, -1.0, 0.0);
  if (which == BF_THING_WIDTH)
    {
      ends[0] = ends[1];
      ends[1] = bf_vec3 (size.x, size.y, floor_mm);
      *out = bf_vec3 (1.0, 0.0, 0.0);
    }
  if (which == BF_THING_HEIGHT)
    {
      ends[0] = bf_vec3 (0.0, at_back ? size.y : 0.0, floor_mm);
      ends[1] = bf_vec3_add (ends[0], bf_vec3 (0.0, 0.0, size.z));
      *out = bf_vec3 (-1.0, 0.0, 0.0);
    }
}

static BfVec2
to_px (BfSizePage *self, BfVec3 p)
{
  return bf_vec2_along (self->origin_px, bf_formed_view_project (self->formed, p), self->scale);
}

static BfPencilSize
pencil_size (BfSizePage *self, BfThingSize which)
{
  BfVec3 ends[2], out;
  size_ends (self, which, ends, &out);
  BfVec2 from = to_px (self, ends[0]);
  BfVec2 away = bf_vec2_sub (to_px (self, bf_vec3_add (ends[0], out)), from);
  return (BfPencilSize){ from, to_px (self, ends[1]), bf_vec2_unit (away), OFF_PX };
}

static void
show_sizes (BfSizePage *self)
{
  BfUnits units = bf_document_get_part (self->setup)->units;
  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    bf_thing_size_box_show (BF_THING_SIZE_BOX (self->boxes[i]), self->sizes.size_mm[i],
                            self->sizes.kind[i], units);
}

/* Makes the part anew. Sizes that leave nothing inside keep the picture of the last that did. */
static void
update (BfSizePage *self)
{
  g_clear_pointer (&self->part, bf_part_unref);
  self->part = bf_thing_make (self->thing, &self->sizes, bf_document_get_part (self->setup),
                              bf_thing_name (self->thing));
  show_sizes (self);
  if (self->part != NULL)
    {
      g_autoptr (BfFold) fold = bf_fold (self->part);
      g_clear_pointer (&self->formed, bf_formed_view_free);
      self->formed = bf_formed_view_prepare (fold, &fold->formed, bf_pencil_look);
    }
  gtk_widget_queue_allocate (GTK_WIDGET (self));
  gtk_widget_queue_draw (GTK_WIDGET (self));
  g_signal_emit (self, signals[SIGNAL_CHANGED], 0);
}

static guint
number_of (BfSizePage *self, GtkWidget *box)
{
  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    if (self->boxes[i] == box)
      return i;
  g_return_val_if_reached (0);
}

static void
size_set_cb (BfSizePage *self, double size_mm, GtkWidget *box)
{
  self->sizes.size_mm[number_of (self, box)] = size_mm;
  update (self);
}

static void
kind_set_cb (BfSizePage *self, int kind, GtkWidget *box)
{
  bf_thing_set_kind (self->thing, &self->sizes, (BfThingSize)number_of (self, box),
                     (BfSizeKind)kind, thickness_mm (self));
  update (self);
}

static void
fit_picture (BfSizePage *self, int width, int height)
{
  BfBox box = bf_formed_view_box (self->formed);
  BfVec2 size = bf_vec2_sub (box.max, box.min);
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);
  double room_x = MAX (width - 2.0 * ROOM_X_PX, 80.0);
  double room_y = MAX (height - 2.0 * ROOM_Y_PX, 80.0);

  self->scale = MIN (room_x / MAX (size.x, 1.0), room_y / MAX (size.y, 1.0));
  self->origin_px =
      bf_vec2 (width / 2.0 - middle.x * self->scale, height / 2.0 - middle.y * self->scale);
}

/* A field stands beyond the middle of its size's line. */
static void
place_box (BfSizePage *self, BfThingSize which, int width, int height)
{
  BfPencilSize size = pencil_size (self, which);
  BfVec2 middle = bf_pencil_size_middle (&size);
  GtkRequisition wanted;

  gtk_widget_get_preferred_size (self->boxes[which], NULL, &wanted);
  double reach =
      10.0 + fabs (size.out.x) * wanted.width / 2.0 + fabs (size.out.y) * wanted.height / 2.0;
  BfVec2 at = bf_vec2_along (middle, size.out, reach);
  GtkAllocation room = { (int)(at.x - wanted.width / 2.0), (int)(at.y - wanted.height / 2.0),
                         wanted.width, wanted.height };
  room.x = CLAMP (room.x, 0, MAX (width - wanted.width, 0));
  room.y = CLAMP (room.y, 0, MAX (height - wanted.height, 0));
  gtk_widget_size_allocate (self->boxes[which], &room, -1);
}

static void
bf_size_page_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  BfSizePage *self = BF_SIZE_PAGE (widget);
  (void)baseline;

  if (self->formed == NULL)
    return;
  fit_picture (self, width, height);
  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    place_box (self, (BfThingSize)i, width, height);
}

static void
bf_size_page_measure (GtkWidget *widget,
                      GtkOrientation orientation,
                      int for_size,
                      int *minimum,
                      int *natural,
                      int *minimum_baseline,
                      int *natural_baseline)
{
  BfSizePage *self = BF_SIZE_PAGE (widget);
  (void)for_size;

  for (guint i = 0; i < BF_N_THING_SIZES && self->boxes[i] != NULL; i++)
    gtk_widget_measure (self->boxes[i], orientation, -1, NULL, NULL, NULL, NULL);
  *minimum = orientation == GTK_ORIENTATION_HORIZONTAL ? 620 : 380;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 900 : 500;
  *minimum_baseline = -1;
  *natural_baseline = -1;
}

static void
bf_size_page_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  BfSizePage *self = BF_SIZE_PAGE (widget);
  float width = (float)gtk_widget_get_width (widget);
  float height = (float)gtk_widget_get_height (widget);

  if (self->formed == NULL)
    return;
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  BfFormedStyle style = bf_pencil_style (bf_theme_is_dark (widget));
  GdkRGBA ink = bf_theme_words_colour (widget);
  style.scale = self->scale;
  cairo_save (cr);
  cairo_translate (cr, self->origin_px.x, self->origin_px.y);
  bf_formed_view_paint (self->formed, cr, &style);
  cairo_restore (cr);
  gdk_cairo_set_source_rgba (cr, &ink);
  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    {
      BfPencilSize size = pencil_size (self, (BfThingSize)i);
      bf_pencil_draw_size (cr, &size);
    }
  cairo_destroy (cr);
  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    gtk_widget_snapshot_child (widget, self->boxes[i], snapshot);
}

/* Tab walks from size to size first, then along the sketches: most people type three numbers. */
static GtkWidget *
focus_stop (BfSizePage *self, int i)
{
  BfThingSizeBox *box = BF_THING_SIZE_BOX (self->boxes[i % BF_N_THING_SIZES]);
  return i < BF_N_THING_SIZES ? GTK_WIDGET (bf_thing_size_box_get_field (box))
                              : bf_thing_size_box_get_kinds (box);
}

/* The stop that has the focus; the one before the first, or after the last, where none has. */
static int
focused_stop (BfSizePage *self, int before)
{
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (GTK_WIDGET (self)));
  for (int i = 0; focus != NULL && i < N_STOPS; i++)
    if (focus == focus_stop (self, i) || gtk_widget_is_ancestor (focus, focus_stop (self, i)))
      return i;
  return before;
}

static gboolean
bf_size_page_focus (GtkWidget *widget, GtkDirectionType direction)
{
  BfSizePage *self = BF_SIZE_PAGE (widget);
  gboolean forward = direction == GTK_DIR_TAB_FORWARD;

  if (self->formed == NULL || (!forward && direction != GTK_DIR_TAB_BACKWARD))
    return GTK_WIDGET_CLASS (bf_size_page_parent_class)->focus (widget, direction);
  for (int i = focused_stop (self, forward ? -1 : N_STOPS); i < N_STOPS; i += forward ? 1 : -1)
    {
      if (i == -1 && !forward)
        return FALSE;
      if (i >= 0 && gtk_widget_child_focus (focus_stop (self, i), direction))
        return TRUE;
    }
  return FALSE;
}

static void
bf_size_page_dispose (GObject *object)
{
  BfSizePage *self = BF_SIZE_PAGE (object);

  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    g_clear_pointer (&self->boxes[i], gtk_widget_unparent);
  g_clear_pointer (&self->part, bf_part_unref);
  g_clear_pointer (&self->formed, bf_formed_view_free);
  g_clear_object (&self->setup);
  G_OBJECT_CLASS (bf_size_page_parent_class)->dispose (object);
}

static void
bf_size_page_class_init (BfSizePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_size_page_dispose;
  widget_class->size_allocate = bf_size_page_size_allocate;
  widget_class->measure = bf_size_page_measure;
  widget_class->snapshot = bf_size_page_snapshot;
  widget_class->focus = bf_size_page_focus;
  gtk_widget_class_set_css_name (widget_class, "sizepage");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  signals[SIGNAL_CHANGED] = g_signal_new ("changed", BF_TYPE_SIZE_PAGE, G_SIGNAL_RUN_LAST, 0, NULL,
                                          NULL, NULL, G_TYPE_NONE, 0);
}

static void
bf_size_page_init (BfSizePage *self)
{
  (void)self;
}

/* When they are first needed: the window is there the sooner. */
static void
make_boxes (BfSizePage *self)
{
  for (guint i = 0; i < BF_N_THING_SIZES && self->boxes[i] == NULL; i++)
    {
      self->boxes[i] = bf_thing_size_box_new ();
      gtk_widget_set_parent (self->boxes[i], GTK_WIDGET (self));
      g_signal_connect_object (self->boxes[i], "size-set", G_CALLBACK (size_set_cb), self,
                               G_CONNECT_SWAPPED);
      g_signal_connect_object (self->boxes[i], "kind-set", G_CALLBACK (kind_set_cb), self,
                               G_CONNECT_SWAPPED);
    }
}

static void
setup_changed_cb (BfSizePage *self)
{
  if (self->formed != NULL)
    update (self);
}

void
bf_size_page_set_setup (BfSizePage *self, BfDocument *setup)
{
  g_return_if_fail (BF_IS_SIZE_PAGE (self) && self->setup == NULL);

  self->setup = g_object_ref (setup);
  g_signal_connect_object (setup, "changed", G_CALLBACK (setup_changed_cb), self,
                           G_CONNECT_SWAPPED);
}

/* Sizes by thing: a bracket's legs are not called length and width. */
static const char *
size_name (BfThing thing, BfThingSize which)
{
  if (which == BF_THING_LENGTH)
    return thing == BF_THING_BRACKET ? _ ("along the bend") : _ ("length");
  if (which == BF_THING_WIDTH)
    return thing == BF_THING_BRACKET ? _ ("foot")
           : thing == BF_THING_SHELF ? _ ("depth")
                                     : _ ("width");
  return thing == BF_THING_BRACKET ? _ ("upright")
         : thing == BF_THING_SHELF ? _ ("back")
                                   : _ ("height");
}

void
bf_size_page_begin (BfSizePage *self, BfThing thing)
{
  g_return_if_fail (BF_IS_SIZE_PAGE (self) && thing < BF_N_THINGS);

  self->thing = thing;
  make_boxes (self);
  bf_thing_sizes_init (&self->sizes, thing, bf_document_get_part (self->setup)->units);
  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    bf_thing_size_box_set_name (BF_THING_SIZE_BOX (self->boxes[i]),
                                size_name (thing, (BfThingSize)i),
                                bf_thing_has_inside (thing, (BfThingSize)i));
  update (self);
  gtk_widget_grab_focus (
      GTK_WIDGET (bf_thing_size_box_get_field (BF_THING_SIZE_BOX (self->boxes[0]))));
}

BfPart *
bf_size_page_get_part (BfSizePage *self)
{
  g_return_val_if_fail (BF_IS_SIZE_PAGE (self), NULL);
  return self->part;
}
