/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/step-picture.h"

#include "app/theme-colours.h"
#include "paint/work-picture.h"

#define PX_PER_PAPER_MM (96.0 / 25.4)
#define EDGE_PX 12.0

/* Larger words would leave no room to draw in. */
#define MOST_TIMES 2.2

struct _BfStepPicture
{
  GtkWidget parent_instance;
  const BfWork *work; /* or NULL */
  guint step;
};

G_DEFINE_FINAL_TYPE (BfStepPicture, bf_step_picture, GTK_TYPE_WIDGET)

static void
bf_step_picture_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  BfStepPicture *self = BF_STEP_PICTURE (widget);
  double width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  double unit = PX_PER_PAPER_MM * MIN (bf_theme_text_size (widget), MOST_TIMES);
  cairo_t *cr =
      gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, (float)width, (float)height));

  cairo_set_source_rgb (cr, 1.0, 1.0, 1.0);
  cairo_paint (cr);
  if (self->work != NULL)
    {
      cairo_translate (cr, EDGE_PX, EDGE_PX);
      cairo_scale (cr, unit, unit);
      bf_work_picture_draw (
          self->work, self->step,
          bf_vec2 ((width - 2.0 * EDGE_PX) / unit, (height - 2.0 * EDGE_PX) / unit), cr);
    }
  cairo_destroy (cr);
}

static void
bf_step_picture_class_init (BfStepPictureClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->snapshot = bf_step_picture_snapshot;
  gtk_widget_class_set_css_name (widget_class, "steppicture");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
bf_step_picture_init (BfStepPicture *self)
{
  gtk_widget_add_css_class (GTK_WIDGET (self), "paper");
}

void
bf_step_picture_show (BfStepPicture *self, const BfWork *work, guint step)
{
  g_return_if_fail (BF_IS_STEP_PICTURE (self));
  g_return_if_fail (work == NULL || step < work->steps->len);

  self->work = work;
  self->step = step;
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  work != NULL ? bf_work_step (work, step)->words : "", -1);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
