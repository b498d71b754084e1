/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-view.h"

struct _BfSurfaceView
{
  GObject parent_instance;
  double width_px, height_px;
  double text; /* how large words are, against the usual */
  BfBox blank;
  double radius_mm;
  double zoom; /* 1 = all fits */
  BfVec2 pan_px;
  double azimuth_rad, elevation_rad;
  double fraction;
  BfSelection selection;
};

G_DEFINE_FINAL_TYPE (BfSurfaceView, bf_surface_view, G_TYPE_OBJECT)

/* Room round the pictures for sizes and their entries, and between the two, where words are of the
 * usual size. */
#define MARGIN_X_PX 84.0
#define MARGIN_Y_PX 52.0
#define BETWEEN_PX 110.0

#define ZOOM_LEAST 0.1
#define ZOOM_MOST 40.0

/* From the front right and above: the inside of a tray and two of its walls are seen. */
#define START_AZIMUTH_DEG (-62.0)
#define START_ELEVATION_DEG 32.0

enum
{
  SIGNAL_CHANGED,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

static void
view_changed (BfSurfaceView *self)
{
  g_signal_emit (self, signals[SIGNAL_CHANGED], 0);
}

static void
bf_surface_view_class_init (BfSurfaceViewClass *klass)
{
  (void)klass;
  signals[SIGNAL_CHANGED] = g_signal_new ("changed", BF_TYPE_SURFACE_VIEW, G_SIGNAL_RUN_LAST, 0,
                                          NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
bf_surface_view_init (BfSurfaceView *self)
{
  self->width_px = 1.0;
  self->text = 1.0;
  self->height_px = 1.0;
  self->blank = (BfBox){ { 0.0, 0.0 }, { 1.0, 1.0 } };
  self->radius_mm = 1.0;
  self->zoom = 1.0;
  self->azimuth_rad = bf_deg_to_rad (START_AZIMUTH_DEG);
  self->elevation_rad = bf_deg_to_rad (START_ELEVATION_DEG);
  self->fraction = 1.0;
  self->selection = BF_SELECTION_NONE;
}

BfSurfaceView *
bf_surface_view_new (void)
{
  return g_object_new (BF_TYPE_SURFACE_VIEW, NULL);
}

void
bf_surface_view_set_size (BfSurfaceView *self, double width_px, double height_px)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self));

  if (fabs (width_px - self->width_px) < 0.5 && fabs (height_px - self->height_px) < 0.5)
    return;
  self->width_px = MAX (width_px, 1.0);
  self->height_px = MAX (height_px, 1.0);
  view_changed (self);
}

void
bf_surface_view_set_text (BfSurfaceView *self, double times)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self) && times > 0.0);

  times = CLAMP (times, 0.5, 4.0);
  if (fabs (times - self->text) < 0.01)
    return;
  self->text = times;
  view_changed (self);
}

double
bf_surface_view_get_text (BfSurfaceView *self)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (self), 1.0);
  return self->text;
}

void
bf_surface_view_set_content (BfSurfaceView *self, const BfBox *blank, double radius_mm)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self) && blank != NULL);

  self->blank = *blank;
  self->radius_mm = MAX (radius_mm, 0.1);
  view_changed (self);
}

static double
blank_width (const BfSurfaceView *self)
{
  return MAX (self->blank.max.x - self->blank.min.x, 0.1);
}

static double
blank_height (const BfSurfaceView *self)
{
  return MAX (self->blank.max.y - self->blank.min.y, 0.1);
}

static double
fitting_scale (const BfSurfaceView *self)
{
  double room_x = MAX (self->width_px - (2.0 * MARGIN_X_PX + BETWEEN_PX) * self->text, 40.0);
  double room_y = MAX (self->height_px - 2.0 * MARGIN_Y_PX * self->text, 40.0);
  double across = blank_width (self) + 2.0 * self->radius_mm;
  double high = MAX (blank_height (self), 2.0 * self->radius_mm);

  return MIN (room_x / across, room_y / high);
}

double
bf_surface_view_get_scale (BfSurfaceView *self)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (self), 1.0);
  return fitting_scale (self) * self->zoom;
}

/* The middle of everything, on the surface. */
static BfVec2
middle (const BfSurfaceView *self)
{
  return bf_vec2 (self->width_px / 2.0 + self->pan_px.x, self->height_px / 2.0 + self->pan_px.y);
}

/* The space between the pictures grows with them, so that zooming leaves a point in its place. */
static double
half_across (BfSurfaceView *self)
{
  double scale = bf_surface_view_get_scale (self);
  double across = blank_width (self) + 2.0 * self->radius_mm;
  return (across * scale + BETWEEN_PX * self->text * self->zoom) / 2.0;
}

static BfVec2
blank_centre_px (BfSurfaceView *self)
{
  BfVec2 at = middle (self);
  double half_blank = blank_width (self) * bf_surface_view_get_scale (self) / 2.0;
  return bf_vec2 (at.x - half_across (self) + half_blank, at.y);
}

static BfVec2
blank_centre_mm (const BfSurfaceView *self)
{
  return bf_vec2_scale (bf_vec2_add (self->blank.min, self->blank.max), 0.5);
}

BfVec2
bf_surface_view_from_blank (BfSurfaceView *self, BfVec2 blank_mm)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (self), blank_mm);

  double scale = bf_surface_view_get_scale (self);
  BfVec2 by = bf_vec2_sub (blank_mm, blank_centre_mm (self));
  BfVec2 centre = blank_centre_px (self);
  return bf_vec2 (centre.x + by.x * scale, centre.y - by.y * scale);
}

BfVec2
bf_surface_view_to_blank (BfSurfaceView *self, BfVec2 px)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (self), px);

  double scale = bf_surface_view_get_scale (self);
  BfVec2 by = bf_vec2_sub (px, blank_centre_px (self));
  BfVec2 centre = blank_centre_mm (self);
  return bf_vec2 (centre.x + by.x / scale, centre.y - by.y / scale);
}

BfVec2
bf_surface_view_get_formed_centre (BfSurfaceView *self)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (self), bf_vec2 (0.0, 0.0));

  BfVec2 at = middle (self);
  double radius_px = self->radius_mm * bf_surface_view_get_scale (self);
  return bf_vec2 (at.x + half_across (self) - radius_px, at.y);
}

void
bf_surface_view_fit (BfSurfaceView *self)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self));

  self->zoom = 1.0;
  self->pan_px = bf_vec2 (0.0, 0.0);
  view_changed (self);
}

void
bf_surface_view_zoom_at (BfSurfaceView *self, double factor, BfVec2 px)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self) && factor > 0.0);

  double zoom = CLAMP (self->zoom * factor, ZOOM_LEAST, ZOOM_MOST);
  BfVec2 from_middle = bf_vec2_sub (px, middle (self));
  double grown = zoom / self->zoom;
  self->pan_px = bf_vec2_along (self->pan_px, from_middle, 1.0 - grown);
  self->zoom = zoom;
  view_changed (self);
}

void
bf_surface_view_pan (BfSurfaceView *self, BfVec2 by_px)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self));

  self->pan_px = bf_vec2_add (self->pan_px, by_px);
  view_changed (self);
}

void
bf_surface_view_turn (BfSurfaceView *self, double azimuth_rad, double elevation_rad)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self));

  bf_surface_view_set_direction (self, self->azimuth_rad + azimuth_rad,
                                 self->elevation_rad + elevation_rad);
}

double
bf_surface_view_get_azimuth (BfSurfaceView *self)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (self), 0.0);
  return self->azimuth_rad;
}

double
bf_surface_view_get_elevation (BfSurfaceView *self)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (self), 0.0);
  return self->elevation_rad;
}

void
bf_surface_view_set_direction (BfSurfaceView *self, double azimuth_rad, double elevation_rad)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self));

  self->azimuth_rad = remainder (azimuth_rad, 2.0 * G_PI);
  self->elevation_rad = CLAMP (elevation_rad, -G_PI_2, G_PI_2);
  view_changed (self);
}

double
bf_surface_view_get_fraction (BfSurfaceView *self)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (self), 1.0);
  return self->fraction;
}

void
bf_surface_view_set_fraction (BfSurfaceView *self, double fraction)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self));

  self->fraction = CLAMP (fraction, 0.0, 1.0);
  view_changed (self);
}

BfSelection
bf_surface_view_get_selection (BfSurfaceView *self)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (self), BF_SELECTION_NONE);
  return self->selection;
}

void
bf_surface_view_select (BfSurfaceView *self, BfSelection selection)
{
  g_return_if_fail (BF_IS_SURFACE_VIEW (self));

  if (bf_selection_is_same (selection, self->selection))
    return;
  self->selection = selection;
  view_changed (self);
}
