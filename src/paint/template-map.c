/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/template-private.h"

#include "paint/palette.h"
#include "paint/ring-path.h"
#include "paint/text.h"

#define OUTLINE_MM 0.25
#define OUTLINE_RGB 0x7A7A7A
#define CELL_LINE_RGB 0xB4B4B4
#define THIS_PAGE_RGB 0xD4E7F4 /* sky blue, thinned so that the outline and the label show */
#define ROOM_ROUND_LABEL_MM 0.6

/* From the turned drawing to the map. */
typedef struct
{
  BfBox box;
  double scale;
} MapScale;

static MapScale
fit_map (const BfTemplatePlan *plan, BfVec2 size)
{
  MapScale map = { bf_box_empty (), 0.0 };

  for (guint i = 0; i < plan->pages->len; i++)
    {
      bf_box_extend (&map.box, bf_template_plan_page (plan, i)->cell.min);
      bf_box_extend (&map.box, bf_template_plan_page (plan, i)->cell.max);
    }
  map.scale =
      MIN (size.x / (map.box.max.x - map.box.min.x), size.y / (map.box.max.y - map.box.min.y));
  return map;
}

static void
cell_path (const MapScale *map, const BfBox *cell, cairo_t *cr)
{
  cairo_rectangle (
      cr, (cell->min.x - map->box.min.x) * map->scale, (map->box.max.y - cell->max.y) * map->scale,
      (cell->max.x - cell->min.x) * map->scale, (cell->max.y - cell->min.y) * map->scale);
}

static void
draw_cells (const BfTemplatePlan *plan, const MapScale *map, guint this_page, cairo_t *cr)
{
  cell_path (map, &bf_template_plan_page (plan, this_page)->cell, cr);
  bf_set_source_rgb (cr, THIS_PAGE_RGB);
  cairo_fill (cr);
  for (guint i = 0; i < plan->pages->len; i++)
    cell_path (map, &bf_template_plan_page (plan, i)->cell, cr);
  cairo_set_line_width (cr, BF_NARROW_LINE_MM);
  bf_set_source_rgb (cr, CELL_LINE_RGB);
  cairo_stroke (cr);
}

static void
draw_outline (const BfTemplate *template, const MapScale *map, cairo_t *cr)
{
  const BfBlank *blank = &template->fold->blank;

  cairo_save (cr);
  cairo_scale (cr, map->scale, -map->scale);
  cairo_translate (cr, -map->box.min.x, -map->box.max.y);
  cairo_rotate (cr, bf_deg_to_rad (template->plan->turn_deg));
  for (guint i = 0; i < blank->n_outer; i++)
    bf_ring_path (bf_blank_ring (blank, i), cr);
  cairo_restore (cr);
  cairo_set_line_width (cr, OUTLINE_MM);
  bf_set_source_rgb (cr, OUTLINE_RGB);
  cairo_stroke (cr);
}

/* Names the cells that have room for it; the page's own name stands beside the map anyway. */
static void
draw_labels (const BfTemplate *template, const MapScale *map, cairo_t *cr)
{
  const double cap = BF_TEMPLATE_CAP_MM;

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  for (guint i = 0; i < template->labels->len; i++)
    {
      const BfBox *cell = &bf_template_plan_page (template->plan, i)->cell;
      BfVec2 size = bf_vec2_scale (bf_vec2_sub (cell->max, cell->min), map->scale);
      BfVec2 at = { (cell->min.x - map->box.min.x) * map->scale + size.x / 2.0,
                    (map->box.max.y - cell->max.y) * map->scale + (size.y + cap) / 2.0 };
      g_autoptr (BfText) text = bf_text_new (g_ptr_array_index (template->labels, i), cap, FALSE);
      double width = bf_text_width (text);
      if (width + ROOM_ROUND_LABEL_MM <= size.x && cap + ROOM_ROUND_LABEL_MM <= size.y)
        bf_text_draw (text, cr, at.x - width / 2.0, at.y);
    }
}

void
bf_template_draw_map (const BfTemplate *template, guint i, cairo_t *cr, BfVec2 size)
{
  MapScale map = fit_map (template->plan, size);

  cairo_save (cr);
  cairo_new_path (cr);
  /* Against the right edge, where the page's own right margin is. */
  cairo_translate (cr, size.x - (map.box.max.x - map.box.min.x) * map.scale, 0.0);
  draw_cells (template->plan, &map, i, cr);
  draw_outline (template, &map, cr);
  draw_labels (template, &map, cr);
  cairo_restore (cr);
}
