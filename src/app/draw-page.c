/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/draw-page.h"

#include <glib/gi18n.h>

#include "app/draw-picture.h"
#include "app/size-text.h"
#include "app/theme-colours.h"
#include "core/units.h"

struct _BfDrawPage
{
  GtkWidget parent_instance;
  BfOutlineDraft *draft;
  BfDrawLook look;
  BfVec2 pointer_px;
  GString *typed;
  char *words;
};

G_DEFINE_FINAL_TYPE (BfDrawPage, bf_draw_page, GTK_TYPE_WIDGET)

enum
{
  SIGNAL_CHANGED,
  SIGNAL_CLOSED,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

#define GRID_MM 5.0
#define GRID_IN (0.25 * BF_MM_PER_INCH)
#define DOTS 2 /* a dot every so many steps of the grid */

/* What finds room at first, and what is left free round it. */
#define ROOM_X_MM 420.0
#define ROOM_Y_MM 280.0
#define MARGIN_PX 40.0

#define REACH_PX 9.0

/* Brings all that is drawn, and the room to begin with, into sight. */
static void
fit (BfDrawPage *self)
{
  BfBox box = { { 0.0, 0.0 }, { ROOM_X_MM, ROOM_Y_MM } };
  double width = MAX (gtk_widget_get_width (GTK_WIDGET (self)), 100);
  double height = MAX (gtk_widget_get_height (GTK_WIDGET (self)), 100);

  for (guint i = 0; i < bf_outline_draft_n_points (self->draft); i++)
    bf_box_extend (&box, bf_outline_draft_point (self->draft, i));
  BfVec2 size = bf_vec2_sub (box.max, box.min);
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);
  self->look.size_px = bf_vec2 (width, height);
  self->look.scale = MIN ((width - 2.0 * MARGIN_PX) / size.x, (height - 2.0 * MARGIN_PX) / size.y);
  self->look.origin_px = bf_vec2 (width / 2.0 - middle.x * self->look.scale,
                                  height / 2.0 + middle.y * self->look.scale);
}

static void
say (BfDrawPage *self, const char *words)
{
  g_free (self->words);
  self->words = g_strdup (words);
  gtk_widget_queue_draw (GTK_WIDGET (self));
  g_signal_emit (self, signals[SIGNAL_CHANGED], 0);
}

/* How it stands: how many corners, and the last edge. */
static void
say_how_it_stands (BfDrawPage *self)
{
  guint n = bf_outline_draft_n_points (self->draft);

  if (n == 0)
    {
      say (self, _ ("Click for the first corner, or press Return."));
      return;
    }
  if (n == 1)
    {
      say (self, _ ("1 corner. Click for the next, or choose a direction with the arrow keys and "
                    "type a length."));
      return;
    }
  double last_mm = bf_vec2_distance (bf_outline_draft_point (self->draft, n - 1),
                                     bf_outline_draft_point (self->draft, n - 2));
  g_autofree char *length = bf_format_length (last_mm, self->look.units);
  /* Translators: %u is a number of corners, 2 or more; %s the length of the edge drawn last */
  g_autofree char *stands = g_strdup_printf (_ ("%u corners, the last edge %s."), n, length);
  g_autofree char *whole =
      n < 3 ? g_strdup (stands)
            /* Translators: %s is the sentence before it */
            : g_strdup_printf (_ ("%s Return, or a click on the first corner, closes it."), stands);
  say (self, whole);
}

static void
answer (BfDrawPage *self, BfDraftAnswer what)
{
  if (what == BF_DRAFT_ADDED)
    {
      fit (self);
      say_how_it_stands (self);
    }
  if (what == BF_DRAFT_CROSSES)
    say (self, _ ("That edge would cross or touch one that is drawn. Take another way round."));
  if (what == BF_DRAFT_NOTHING && bf_outline_draft_n_points (self->draft) < 3)
    say (self, _ ("Three corners at least make an outline."));
  if (what == BF_DRAFT_CLOSED)
    g_signal_emit (self, signals[SIGNAL_CLOSED], 0);
}

static void
aim (BfDrawPage *self, double x, double y, GdkModifierType state)
{
  bf_outline_draft_aim (self->draft, bf_draw_to_mm (&self->look, bf_vec2 (x, y)),
                        REACH_PX / self->look.scale, (state & GDK_SHIFT_MASK) != 0);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
pressed_cb (GtkGestureClick *click, int n_press, double x, double y, gpointer user_data)
{
  BfDrawPage *self = user_data;
  (void)n_press;

  gtk_widget_grab_focus (GTK_WIDGET (self));
  g_string_truncate (self->typed, 0);
  aim (self, x, y, gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (click)));
  answer (self, bf_outline_draft_put (self->draft));
}

/* A pointer that lies still is told of, too, when what is below it is laid out anew: a direction
 * chosen by keys then stays. */
static void
motion_cb (GtkEventControllerMotion *motion, double x, double y, gpointer user_data)
{
  BfDrawPage *self = user_data;

  if (bf_vec2_distance (self->pointer_px, bf_vec2 (x, y)) < 1.0)
    return;
  self->pointer_px = bf_vec2 (x, y);
  aim (self, x, y, gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (motion)));
}

/* A typed length becomes the next edge. */
static void
take_typed (BfDrawPage *self)
{
  BfSizeReading reading = { BF_SIZE_FIELD_LENGTH, self->look.units, NULL };
  g_autoptr (GError) error = NULL;
  double length_mm;

  if (!bf_size_read (self->typed->str, &reading, &length_mm, &error))
    {
      say (self, error->message);
      return;
    }
  if (!bf_outline_draft_set_length (self->draft, length_mm))
    {
      say (self, _ ("Choose a direction first: with the pointer, or with the arrow keys."));
      return;
    }
  g_string_truncate (self->typed, 0);
  answer (self, bf_outline_draft_put (self->draft));
}

static void
press_return (BfDrawPage *self)
{
  if (self->typed->len > 0)
    take_typed (self);
  else if (bf_outline_draft_n_points (self->draft) == 0)
    answer (self, bf_outline_draft_put (self->draft));
  else
    answer (self, bf_outline_draft_close (self->draft));
}

static void
press_backspace (BfDrawPage *self)
{
  if (self->typed->len > 0)
    {
      const char *end = self->typed->str + self->typed->len;
      const char *before = g_utf8_find_prev_char (self->typed->str, end);
      g_string_truncate (self->typed, (gsize)(before - self->typed->str));
      gtk_widget_queue_draw (GTK_WIDGET (self));
      return;
    }
  if (bf_outline_draft_take_back (self->draft))
    {
      fit (self);
      say_how_it_stands (self);
    }
}

static gboolean
press_arrow (BfDrawPage *self, guint key)
{
  static const struct
  {
    guint key, keypad;
    BfVec2 way;
  } ways[] = {
    { GDK_KEY_Left, GDK_KEY_KP_Left, { -1.0, 0.0 } },
    { GDK_KEY_Right, GDK_KEY_KP_Right, { 1.0, 0.0 } },
    { GDK_KEY_Up, GDK_KEY_KP_Up, { 0.0, 1.0 } },
    { GDK_KEY_Down, GDK_KEY_KP_Down, { 0.0, -1.0 } },
  };

  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    if (key == ways[i].key || key == ways[i].keypad)
      {
        bf_outline_draft_aim_along (self->draft, ways[i].way);
        gtk_widget_queue_draw (GTK_WIDGET (self));
        return TRUE;
      }
  return FALSE;
}

/* What lengths are written with: numbers, fractions, decimal signs, units. */
static gboolean
type (BfDrawPage *self, guint key)
{
  gunichar c = gdk_keyval_to_unicode (key);

  if (c == 0 || !g_unichar_isprint (c) || (c == ' ' && self->typed->len == 0))
    return FALSE;
  if (self->typed->len == 0 && !g_unichar_isdigit (c) && c != '.' && c != ',')
    return FALSE;
  g_string_append_unichar (self->typed, c);
  say (self, self->typed->str);
  return TRUE;
}

static gboolean
press (BfDrawPage *self, guint key)
{
  switch (key)
    {
    case GDK_KEY_Return:
    case GDK_KEY_KP_Enter:
      press_return (self);
      return TRUE;
    case GDK_KEY_BackSpace:
      press_backspace (self);
      return TRUE;
    case GDK_KEY_Escape:
      if (self->typed->len == 0)
        return FALSE;
      g_string_truncate (self->typed, 0);
      say_how_it_stands (self);
      return TRUE;
    default:
      return press_arrow (self, key) || type (self, key);
    }
}

static gboolean
key_pressed_cb (GtkEventControllerKey *controller,
                guint key,
                guint code,
                GdkModifierType state,
                gpointer user_data)
{
  (void)controller;
  (void)code;

  if ((state & (GDK_CONTROL_MASK | GDK_ALT_MASK)) != 0 || !press (user_data, key))
    return GDK_EVENT_PROPAGATE;
  return GDK_EVENT_STOP;
}

static void
bf_draw_page_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  BfDrawPage *self = BF_DRAW_PAGE (widget);
  float width = (float)gtk_widget_get_width (widget);
  float height = (float)gtk_widget_get_height (widget);

  if (self->draft == NULL)
    return;
  self->look.typed = self->typed->str;
  self->look.dark = bf_theme_is_dark (widget);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  bf_draw_picture_paint (self->draft, &self->look, cr);
  cairo_destroy (cr);
}

static void
bf_draw_page_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  BfDrawPage *self = BF_DRAW_PAGE (widget);
  (void)width;
  (void)height;
  (void)baseline;

  if (self->draft != NULL)
    fit (self);
}

static void
bf_draw_page_finalize (GObject *object)
{
  BfDrawPage *self = BF_DRAW_PAGE (object);

  g_clear_pointer (&self->draft, bf_outline_draft_free);
  g_string_free (self->typed, TRUE);
  g_free (self->words);
  G_OBJECT_CLASS (bf_draw_page_parent_class)->finalize (object);
}

static void
bf_draw_page_class_init (BfDrawPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = bf_draw_page_finalize;
  widget_class->snapshot = bf_draw_page_snapshot;
  widget_class->size_allocate = bf_draw_page_size_allocate;
  gtk_widget_class_set_css_name (widget_class, "drawpage");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  signals[SIGNAL_CHANGED] = g_signal_new ("changed", BF_TYPE_DRAW_PAGE, G_SIGNAL_RUN_LAST, 0, NULL,
                                          NULL, NULL, G_TYPE_NONE, 0);
  signals[SIGNAL_CLOSED] = g_signal_new ("closed", BF_TYPE_DRAW_PAGE, G_SIGNAL_RUN_LAST, 0, NULL,
                                         NULL, NULL, G_TYPE_NONE, 0);
}

static void
bf_draw_page_init (BfDrawPage *self)
{
  GtkGesture *click = gtk_gesture_click_new ();
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkEventController *keys = gtk_event_controller_key_new ();

  self->typed = g_string_new (NULL);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), "crosshair");
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("The outline that is being drawn"), -1);
  g_signal_connect (click, "pressed", G_CALLBACK (pressed_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  g_signal_connect (motion, "motion", G_CALLBACK (motion_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  g_signal_connect (keys, "key-pressed", G_CALLBACK (key_pressed_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
}

void
bf_draw_page_begin (BfDrawPage *self, BfUnits units)
{
  g_return_if_fail (BF_IS_DRAW_PAGE (self));

  double grid_mm = units == BF_UNITS_IN ? GRID_IN : GRID_MM;
  g_clear_pointer (&self->draft, bf_outline_draft_free);
  self->draft = bf_outline_draft_new (grid_mm);
  self->look.units = units;
  self->look.grid_mm = DOTS * grid_mm;
  g_string_truncate (self->typed, 0);
  fit (self);
  say_how_it_stands (self);
  gtk_widget_grab_focus (GTK_WIDGET (self));
}

const char *
bf_draw_page_get_words (BfDrawPage *self)
{
  g_return_val_if_fail (BF_IS_DRAW_PAGE (self), NULL);
  return self->words;
}

gboolean
bf_draw_page_can_close (BfDrawPage *self)
{
  g_return_val_if_fail (BF_IS_DRAW_PAGE (self), FALSE);
  return self->draft != NULL && bf_outline_draft_close (self->draft) == BF_DRAFT_CLOSED;
}

BfPart *
bf_draw_page_make (BfDrawPage *self, const BfPart *setup)
{
  g_return_val_if_fail (BF_IS_DRAW_PAGE (self) && self->draft != NULL, NULL);
  return bf_outline_draft_make (self->draft, setup, _ ("Own outline"));
}
