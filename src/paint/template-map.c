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

/* What the map shows of a page, or of a piece of corners only. */
typedef struct
{
  BfBox box; /* on the turned drawing */
  guint page;
  char *name;
} Cell;

static void
clear_cell (gpointer cell)
{
  g_free (((Cell *)cell)->name);
}

static GArray *
collect_cells (const BfTemplate *template)
{
  guint n = template->plan != NULL ? template->plan->pages->len : template->corners->pieces->len;
  GArray *cells = g_array_new (FALSE, FALSE, sizeof (Cell));

  g_array_set_clear_func (cells, clear_cell);
  for (guint i = 0; i < n; i++)
    {
      Cell cell;
      if (template->plan != NULL)
        cell = (Cell){ bf_template_plan_page (template->plan, i)->cell, i,
                       g_strdup (g_ptr_array_index (template->labels, i)) };
      else
        cell =
            (Cell){ bf_corner_piece (template->corners, i)->box,
                    bf_corner_piece (template->corners, i)->page, g_strdup_printf ("%u", i + 1) };
      g_array_append_val (cells, cell);
    }
  return cells;
}

static MapScale
fit_map (const GArray *cells, const BfBox *blank, BfVec2 size)
{
  MapScale map = { blank != NULL ? *blank : bf_box_empty (), 0.0 };

  for (guint i = 0; i < cells->len; i++)
    {
      bf_box_extend (&map.box, g_array_index (cells, Cell, i).box.min);
      bf_box_extend (&map.box, g_array_index (cells, Cell, i).box.max);
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
draw_cells (const GArray *cells, const MapScale *map, guint this_page, cairo_t *cr)
{
  for (guint i = 0; i < cells->len; i++)
    if (g_array_index (cells, Cell, i).page == this_page)
      cell_path (map, &g_array_index (cells, Cell, i).box, cr);
  bf_set_source_rgb (cr, THIS_PAGE_RGB);
  cairo_fill (cr);
  for (guint i = 0; i < cells->len; i++)
    cell_path (map, &g_array_index (cells, Cell, i).box, cr);
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
  if (template->plan != NULL)
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
draw_labels (const GArray *cells, const MapScale *map, cairo_t *cr)
{
  const double cap = BF_TEMPLATE_CAP_MM;

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  for (guint i = 0; i < cells->len; i++)
    {
      const Cell *cell = &g_array_index (cells, Cell, i);
      BfVec2 size = bf_vec2_scale (bf_vec2_sub (cell->box.max, cell->box.min), map->scale);
      BfVec2 at = { (cell->box.min.x - map->box.min.x) * map->scale + size.x / 2.0,
                    (map->box.max.y - cell->box.max.y) * map->scale + (size.y + cap) / 2.0 };
      g_autoptr (BfText) text = bf_text_new (cell->name, cap, FALSE);
      double width = bf_text_width (text);
      if (width + ROOM_ROUND_LABEL_MM <= size.x && cap + ROOM_ROUND_LABEL_MM <= size.y)
        bf_text_draw (text, cr, at.x - width / 2.0, at.y);
    }
}

void
bf_template_draw_map (const BfTemplate *template, guint i, cairo_t *cr, BfVec2 size)
{
  g_autoptr (GArray) cells = collect_cells (template);
  const BfBox *blank = template->plan == NULL ? &template->fold->blank.box : NULL;
  MapScale map = fit_map (cells, blank, size);

  cairo_save (cr);
  cairo_new_path (cr);
  /* Against the right edge, where the page's own right margin is. */
  cairo_translate (cr, size.x - (map.box.max.x - map.box.min.x) * map.scale, 0.0);
  draw_cells (cells, &map, i, cr);
  draw_outline (template, &map, cr);
  draw_labels (cells, &map, cr);
  cairo_restore (cr);
}
