/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/line-layout.h"

struct _BfLineLayout
{
  GtkLayoutManager parent_instance;
};

G_DEFINE_FINAL_TYPE (BfLineLayout, bf_line_layout, GTK_TYPE_LAYOUT_MANAGER)

typedef struct
{
  int x, y;        /* where the next word begins */
  int line_height; /* of the line so far */
  int width;       /* room there is */
} Pen;

static GtkWidget *
first_shown (GtkWidget *widget)
{
  while (widget != NULL && !gtk_widget_should_layout (widget))
    widget = gtk_widget_get_next_sibling (widget);
  return widget;
}

static GtkWidget *
next_shown (GtkWidget *widget)
{
  return first_shown (gtk_widget_get_next_sibling (widget));
}

/* The size of a word: a word wider than the room gets the room and grows in height. */
static void
measure_word (GtkWidget *word, int room, int *width, int *height)
{
  int natural = 0;
  gtk_widget_measure (word, GTK_ORIENTATION_HORIZONTAL, -1, NULL, &natural, NULL, NULL);
  *width = MIN (natural, MAX (room, 1));
  gtk_widget_measure (word, GTK_ORIENTATION_VERTICAL, *width, NULL, height, NULL, NULL);
}

/* Moves the pen to where a word of that size stands, on a new line where it has to. */
static void
place_word (Pen *pen, int width, int height)
{
  if (pen->x > 0 && pen->x + width > pen->width)
    {
      pen->x = 0;
      pen->y += pen->line_height;
      pen->line_height = 0;
    }
  pen->line_height = MAX (pen->line_height, height);
}

static int
height_for_width (GtkWidget *widget, int room)
{
  Pen pen = { .width = room };
  for (GtkWidget *w = first_shown (gtk_widget_get_first_child (widget)); w != NULL;
       w = next_shown (w))
    {
      int width, height;
      measure_word (w, room, &width, &height);
      place_word (&pen, width, height);
      pen.x += width;
    }
  return pen.y + pen.line_height;
}

/* As wide as the widest word at least, as all on one line if it may. */
static void
measure_width (GtkWidget *widget, int *minimum, int *natural)
{
  *minimum = 0;
  *natural = 0;
  for (GtkWidget *w = first_shown (gtk_widget_get_first_child (widget)); w != NULL;
       w = next_shown (w))
    {
      int least = 0;
      int wanted = 0;
      gtk_widget_measure (w, GTK_ORIENTATION_HORIZONTAL, -1, &least, &wanted, NULL, NULL);
      *minimum = MAX (*minimum, least);
      *natural += wanted;
    }
}

static GtkSizeRequestMode
bf_line_layout_get_request_mode (GtkLayoutManager *manager, GtkWidget *widget)
{
  (void)manager;
  (void)widget;
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
bf_line_layout_measure (GtkLayoutManager *manager,
                        GtkWidget *widget,
                        GtkOrientation orientation,
                        int for_size,
                        int *minimum,
                        int *natural,
                        int *minimum_baseline,
                        int *natural_baseline)
{
  int least, wanted;
  (void)manager;

  measure_width (widget, &least, &wanted);
  if (orientation == GTK_ORIENTATION_VERTICAL)
    {
      wanted = height_for_width (widget, for_size >= 0 ? for_size : wanted);
      least = wanted;
    }
  *minimum = least;
  *natural = wanted;
  *minimum_baseline = -1;
  *natural_baseline = -1;
}

/* The words from first up to end share a line; they stand in the middle of its height. */
static void
allocate_line (GtkWidget *widget, GtkWidget *first, GtkWidget *end, const Pen *line)
{
  gboolean from_right = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  int x = 0;
  for (GtkWidget *w = first; w != end; w = next_shown (w))
    {
      int width, height;
      measure_word (w, line->width, &width, &height);
      GtkAllocation at = { from_right ? line->width - x - width : x,
                           line->y + (line->line_height - height) / 2, width, height };
      gtk_widget_size_allocate (w, &at, -1);
      x += width;
    }
}

static void
bf_line_layout_allocate (
    GtkLayoutManager *manager, GtkWidget *widget, int room, int high, int baseline)
{
  (void)manager;
  (void)high;
  (void)baseline;
  Pen pen = { .width = room };
  GtkWidget *first = first_shown (gtk_widget_get_first_child (widget));

  for (GtkWidget *w = first; w != NULL; w = next_shown (w))
    {
      int width, height;
      Pen before = pen;
      measure_word (w, room, &width, &height);
      place_word (&pen, width, height);
      if (pen.y != before.y)
        {
          allocate_line (widget, first, w, &before);
          first = w;
        }
      pen.x += width;
    }
  allocate_line (widget, first, NULL, &pen);
}

static void
bf_line_layout_class_init (BfLineLayoutClass *klass)
{
  GtkLayoutManagerClass *layout_class = GTK_LAYOUT_MANAGER_CLASS (klass);

  layout_class->get_request_mode = bf_line_layout_get_request_mode;
  layout_class->measure = bf_line_layout_measure;
  layout_class->allocate = bf_line_layout_allocate;
}

static void
bf_line_layout_init (BfLineLayout *self)
{
  (void)self;
}
