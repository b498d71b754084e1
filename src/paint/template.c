/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/template-private.h"

#include <glib/gi18n.h>

#include "core/setup-sentence.h"
#include "core/today.h"
#include "fold/other-face.h"
#include "make/bend-notes.h"
#include "make/drill-list.h"
#include "paint/blank-view.h"
#include "paint/page-head.h"

/* Where a line of the blank is an arc, ink is looked for along chords that stray no further. */
#define SAGITTA_MM 0.01

/* How far, in the device's units (1/72 in on paper), an arc may stray that is drawn as curves:
 * cairo's own 0.1 could be seen. */
#define CURVE_TOLERANCE 0.005

#define BEND_ROWS 6

static void
add_line (GArray *ink, BfVec2 a, BfVec2 b)
{
  BfInkLine line = { a, b };

  if (isfinite (a.x) && isfinite (a.y) && isfinite (b.x) && isfinite (b.y))
    g_array_append_val (ink, line);
}

static void
add_ring (GArray *ink, const BfRing *ring)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_ring_flatten (ring, SAGITTA_MM, points);
  for (guint i = 0; i < points->len; i++)
    add_line (ink, g_array_index (points, BfVec2, i),
              g_array_index (points, BfVec2, (i + 1) % points->len));
}

/* Every line that bf_blank_view_draw() puts on paper, but for the arms of crosses. */
static GArray *
collect_ink (const BfFold *fold)
{
  GArray *ink = g_array_new (FALSE, FALSE, sizeof (BfInkLine));

  for (guint i = 0; i < fold->blank.rings->len; i++)
    add_ring (ink, bf_blank_ring (&fold->blank, i));
  for (guint i = 0; i < fold->bends->len; i++)
    add_line (ink, bf_fold_bend (fold, i)->line[0], bf_fold_bend (fold, i)->line[1]);
  for (guint i = 0; i < bf_fold_n_creases (fold); i++)
    add_line (ink, bf_fold_crease (fold, i)->line[0], bf_fold_crease (fold, i)->line[1]);
  for (guint i = 0; i < fold->reliefs->len; i++)
    if (bf_fold_relief (fold, i)->drill != NULL)
      add_ring (ink, bf_fold_relief (fold, i)->ring);
  if (ink->len == 0)
    add_line (ink, bf_vec2 (0.0, 0.0), bf_vec2 (0.0, 0.0));
  return ink;
}

/* The sentence in the units asked for, which need not be the part's own. */
static char *
sentence_in (const BfPart *part, BfUnits units)
{
  g_autoptr (BfPart) copy = bf_part_copy (part);

  copy->units = units;
  return bf_setup_sentence (copy);
}

/* The middles of what is drilled or round. */
static GArray *
collect_marks (const BfFold *fold)
{
  g_autoptr (GArray) centres = bf_centre_list (fold);
  GArray *marks = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  for (guint i = 0; i < centres->len; i++)
    g_array_append_val (marks, bf_drilled (centres, i)->at);
  return marks;
}

/* The paper as it comes out of the printer: a page that is printed smaller holds less. */
static void
init_format (const BfTemplate *template, BfPageFormat *format)
{
  *format = (BfPageFormat){ .width_mm = template->width_mm * template->printer.x,
                            .height_mm = template->height_mm * template->printer.y,
                            .margin_mm = BF_TEMPLATE_MARGIN_MM,
                            .foot_mm = BF_TEMPLATE_FOOT_MM,
                            .side_mm = BF_TEMPLATE_SIDE_MM,
                            .overlap_mm = BF_TEMPLATE_OVERLAP_MM };
  if (template->warning != NULL)
    format->foot_mm += BF_TEMPLATE_WARNING_MM;
  format->foot_mm += BF_TEMPLATE_WARNING_MM * template->notices->len;
}

/* The upright check bar has a column of its own. Where that would cost a page, it stands where the
 * drawing leaves room (template-bar.c). */
static void
plan_pages (BfTemplate *template)
{
  g_autoptr (GArray) ink = collect_ink (template->fold);
  g_autoptr (GArray) marks = collect_marks (template->fold);
  BfPageFormat narrow = template->format;
  g_autoptr (BfTemplatePlan) with_bar = bf_template_plan_new (ink, marks, &narrow);
  g_autoptr (BfTemplatePlan) without = NULL;

  narrow.side_mm = 0.0;
  if (with_bar->pages->len > 1)
    without = bf_template_plan_new (ink, marks, &narrow);
  if (without != NULL && without->pages->len < with_bar->pages->len)
    template->plan = g_steal_pointer (&without);
  else
    template->plan = g_steal_pointer (&with_bar);
  template->format = template->plan->format;
  for (guint i = 0; i < template->plan->pages->len; i++)
    g_ptr_array_add (template->labels,
                     bf_plan_page_label (bf_template_plan_page (template->plan, i)));
}

/* How many strips of a roll cover the width. */
static guint
count_strips (const BfPageFormat *format, double width_mm)
{
  double window = format->width_mm - 2.0 * format->margin_mm - format->side_mm;
  double more = (width_mm - window) / (window - format->overlap_mm);

  return more > 0.0 ? 1 + (guint)ceil (more) : 1;
}

/* Makes a roll's pages as long as the blank takes, turned or not, whichever takes fewer strips and
 * then less paper; and one whole page as large as it takes. */
static void
stretch_format (BfTemplate *template)
{
  BfPageFormat *format = &template->format;
  BfVec2 size = bf_template_plan_size (
      template->fold->blank.rings->len > 0
          ? bf_vec2_sub (template->fold->blank.box.max, template->fold->blank.box.min)
          : bf_vec2 (0.0, 0.0));
  double round_y = 2.0 * format->margin_mm + format->foot_mm;
  double round_x = 2.0 * format->margin_mm + format->side_mm;
  guint upright = count_strips (format, size.x), turned = count_strips (format, size.y);
  gboolean turns = turned < upright || (turned == upright && size.x < size.y);
  double most = BF_PAPER_LONGEST_MM;

  if (template->paper_kind == BF_PAPER_ROLL)
    format->height_mm = MIN (most, (turns ? size.x : size.y) + round_y);
  else
    {
      format->width_mm = MIN (most, MAX (format->width_mm, size.x + round_x));
      format->height_mm = MIN (most, size.y + round_y);
    }
  template->width_mm = format->width_mm / template->printer.x;
  template->height_mm = format->height_mm / template->printer.y;
}

static void
plan_corners (BfTemplate *template)
{
  const BfPageFormat *format = &template->format;
  BfVec2 room = { format->width_mm - 2.0 * format->margin_mm - format->side_mm,
                  format->height_mm - 2.0 * format->margin_mm - format->foot_mm };

  template->corners = bf_corner_pieces_new (template->fold, room, bf_template_piece_caption ());
  for (guint i = 0; i < template->corners->n_pages; i++)
    g_ptr_array_add (template->labels, g_strdup_printf ("C%u", i + 1));
}

/* Slots and scores. More rows than these would leave no paper for the blank. */
static void
add_bend_rows (const BfTemplate *template, GPtrArray *rows)
{
  g_autoptr (GPtrArray) notes = bf_bend_notes (template->fold, template->units);

  for (guint i = 0; i < MIN (notes->len, BEND_ROWS); i++)
    g_ptr_array_add (rows, g_strdup (g_ptr_array_index (notes, i)));
}

/* How this is not a usual template, a row each. Returns: (transfer full): char *. */
static GPtrArray *
notice_rows (const BfTemplate *template, gboolean is_corners_only)
{
  GPtrArray *rows = g_ptr_array_new_with_free_func (g_free);

  if (is_corners_only)
    g_ptr_array_add (rows, g_strdup (_ ("Corners only: the tape finds each cross, from the blank's "
                                        "ends and from other crosses.")));
  if (template->is_mirrored)
    g_ptr_array_add (
        rows, g_strdup (_ ("For the other face, mirrored: up and down are told as seen on it.")));
  if (!bf_printer_scale_is_none (&template->printer))
    /* Translators: how long the printer makes what should be 100 %, across the page and down it. */
    g_ptr_array_add (
        rows,
        g_strdup_printf (_ ("Corrected for a printer that prints %.2f %% across, %.2f %% down."),
                         template->printer.x * 100.0, template->printer.y * 100.0));
  add_bend_rows (template, rows);
  return rows;
}

static void
take_options (BfTemplate *template, const BfTemplateOptions *options)
{
  const BfPaper *paper = options->paper != NULL ? options->paper : bf_paper_default ();
  gboolean is_right = options->printer.x <= 0.0 || options->printer.y <= 0.0;

  template->units = options->units;
  template->date = options->date != NULL ? g_strdup (options->date) : bf_today ();
  template->width_mm = paper->width_mm;
  template->height_mm = paper->height_mm;
  template->paper_kind = paper->kind;
  template->printer = is_right ? bf_printer_scale_none () : options->printer;
  template->is_mirrored = options->mirror;
  template->pens = options->pens;
}

BfTemplate *
bf_template_new (BfFold *fold, const BfTemplateOptions *options)
{
  BfTemplateOptions defaults = { .units = BF_UNITS_MM };
  BfTemplate *template;

  g_return_val_if_fail (fold != NULL, NULL);

  defaults.units = fold->part->units;
  template = g_new0 (BfTemplate, 1);
  take_options (template, options != NULL ? options : &defaults);
  template->asked = bf_fold_ref (fold);
  template->fold = template->is_mirrored ? bf_fold_other_face (fold) : bf_fold_ref (fold);
  template->sentence = sentence_in (fold->part, template->units);
  template->warning = bf_page_warning (fold);
  template->notices = notice_rows (template, options != NULL && options->corners_only);
  template->labels = g_ptr_array_new_with_free_func (g_free);
  init_format (template, &template->format);
  if (template->paper_kind != BF_PAPER_CUT && !(options != NULL && options->corners_only))
    stretch_format (template);
  if (options != NULL && options->corners_only)
    plan_corners (template);
  else
    plan_pages (template);
  return template;
}

void
bf_template_free (BfTemplate *template)
{
  bf_fold_unref (template->asked);
  bf_fold_unref (template->fold);
  g_clear_pointer (&template->plan, bf_template_plan_free);
  g_clear_pointer (&template->corners, bf_corner_pieces_free);
  g_ptr_array_unref (template->labels);
  g_free (template->date);
  g_free (template->sentence);
  g_free (template->warning);
  g_ptr_array_unref (template->notices);
  g_free (template);
}

guint
bf_template_n_pages (const BfTemplate *template)
{
  return template->labels->len;
}

const BfFold *
bf_template_fold (const BfTemplate *template)
{
  return template->asked;
}

static BfVec2
page_origin (const BfTemplate *template, guint i)
{
  BfVec2 origin =
      bf_template_plan_corner (template->plan, bf_template_plan_page (template->plan, i));

  origin = bf_template_plan_unturn (template->plan, origin);
  return template->is_mirrored ? bf_vec2 (-origin.x, origin.y) : origin;
}

BfTemplatePage
bf_template_page (const BfTemplate *template, guint i)
{
  const BfTemplatePlan *plan = template->plan;

  g_return_val_if_fail (i < template->labels->len, (BfTemplatePage){ 0 });

  return (BfTemplatePage){ .label = g_ptr_array_index (template->labels, i),
                           .turn_deg = plan != NULL ? plan->turn_deg : 0,
                           .is_mirrored = template->is_mirrored,
                           .origin = plan != NULL ? page_origin (template, i) : bf_vec2 (NAN, NAN),
                           .width_mm = template->width_mm,
                           .height_mm = template->height_mm };
}

/* What is seen of the blank between the page's joins, in the blank's own coordinates. */
static BfBox
words_view (const BfTemplate *template, guint i)
{
  BfBox box = bf_template_words_box (template, i), view = bf_box_empty ();

  bf_box_extend (&view, bf_template_plan_unturn (template->plan, box.min));
  bf_box_extend (&view, bf_template_plan_unturn (template->plan, box.max));
  return view;
}

static void
draw_blank (const BfTemplate *template, guint i, cairo_t *cr)
{
  const BfTemplatePlan *plan = template->plan;
  BfBox view = words_view (template, i);
  BfBlankStyle style;

  bf_blank_style_init (&style, template->fold);
  style.units = template->units;
  style.pens = template->pens;
  style.cap_height_mm = BF_TEMPLATE_CAP_MM;
  style.turn_rad = bf_deg_to_rad (plan->turn_deg);
  style.view = &view;
  bf_blank_view_draw (template->fold, &style, cr);
  bf_template_draw_place (template, i, &style, cr);
}

/* Puts cr's origin where the blank's point (0, 0) lies on the page, and turns it. */
static void
place_blank (const BfTemplatePlan *plan, const BfPlanPage *page, cairo_t *cr)
{
  BfVec2 corner = bf_template_plan_corner (plan, page);

  cairo_translate (cr, -corner.x, plan->format.height_mm + corner.y);
  cairo_rotate (cr, -bf_deg_to_rad (plan->turn_deg));
}

static void
draw_drawing (const BfTemplate *template, guint i, BfVec2 size, cairo_t *cr)
{
  double margin = template->format.margin_mm;

  cairo_save (cr);
  if (template->corners != NULL)
    {
      cairo_translate (cr, margin, margin);
      bf_template_draw_pieces (template, i, cr);
    }
  else
    {
      cairo_rectangle (cr, margin, margin, size.x, size.y);
      cairo_clip (cr);
      place_blank (template->plan, bf_template_plan_page (template->plan, i), cr);
      bf_template_draw_joins (template, i, cr);
      draw_blank (template, i, cr);
    }
  cairo_restore (cr);
}

void
bf_template_draw_page (const BfTemplate *template, guint i, cairo_t *cr)
{
  const BfPageFormat *format = &template->format;
  double margin = format->margin_mm, width = format->width_mm - 2.0 * margin;
  double foot_top = format->height_mm - margin - format->foot_mm;

  g_return_if_fail (i < template->labels->len && cr != NULL);

  cairo_save (cr);
  cairo_set_tolerance (cr, CURVE_TOLERANCE);
  cairo_scale (cr, 1.0 / template->printer.x, 1.0 / template->printer.y);
  draw_drawing (template, i, bf_vec2 (width - format->side_mm, foot_top - margin), cr);
  cairo_save (cr);
  cairo_translate (cr, margin, foot_top);
  bf_template_draw_foot (template, i, cr, width);
  cairo_restore (cr);
  bf_template_draw_bar (template, i, cr);
  cairo_restore (cr);
}
