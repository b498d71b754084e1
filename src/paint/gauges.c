/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/gauges.h"

#include <glib/gi18n.h>

#include "core/units.h"
#include "paint/page-head.h"
#include "paint/palette.h"
#include "paint/text.h"

/* Angles nearer to each other share a gauge: less than a hand can bend to (common practice). */
#define ALIKE_RAD (0.05 * G_PI / 180.0)

#define LEG_MM 44.0
#define TIP_PLAY_MM 1.0
#define TIP_SHARE_MAX 0.5 /* of a leg */
#define COLUMNS 2
#define CELL_MM 76.0
#define WORDS_MM 20.0
#define GUTTER_MM 6.0
#define ANGLE_CAP_MM 3.6
#define NAME_LINES 3 /* of bends that share a gauge: more would run into the gauge below */

/* ---- which -------------------------------------------------------------------------------- */

static void
clear_gauge (gpointer data)
{
  g_free (((BfGauge *)data)->names);
}

static gboolean
needs_gauge (const BfBendResult *bend)
{
  return fabs (bend->angle_rad - G_PI / 2.0) > ALIKE_RAD && bend->angle_rad < G_PI - ALIKE_RAD;
}

/* The inside faces leave the radius at R·tan(θ/2) from where they would meet. */
static double
tip_of (const BfBendResult *bend)
{
  double tip = bend->inside_radius_mm * tan (bend->angle_rad / 2.0) + TIP_PLAY_MM;

  return MIN (tip, TIP_SHARE_MAX * LEG_MM);
}

static void
add_bend (GArray *gauges, const BfBendResult *bend)
{
  BfGauge gauge = { bend->angle_rad, tip_of (bend), NULL };

  for (guint i = 0; i < gauges->len; i++)
    {
      BfGauge *known = &g_array_index (gauges, BfGauge, i);
      char *names = known->names;

      if (fabs (known->turned_rad - bend->angle_rad) > ALIKE_RAD)
        continue;
      known->names = g_strconcat (names, ", ", bend->flange, NULL);
      known->tip_mm = MAX (known->tip_mm, gauge.tip_mm);
      g_free (names);
      return;
    }
  gauge.names = g_strdup (bend->flange);
  g_array_append_val (gauges, gauge);
}

static int
compare_gauges (gconstpointer a, gconstpointer b)
{
  double x = ((const BfGauge *)a)->turned_rad, y = ((const BfGauge *)b)->turned_rad;

  return (x > y) - (x < y);
}

BfGauges *
bf_gauges_new (BfFold *fold, const BfPaper *paper)
{
  BfGauges *gauges;

  g_return_val_if_fail (fold != NULL && paper != NULL, NULL);
  gauges = g_new0 (BfGauges, 1);
  gauges->fold = bf_fold_ref (fold);
  gauges->paper = paper;
  gauges->gauges = g_array_new (FALSE, FALSE, sizeof (BfGauge));
  g_array_set_clear_func (gauges->gauges, clear_gauge);
  for (guint i = 0; i < fold->bends->len; i++)
    if (needs_gauge (bf_fold_bend (fold, i)))
      add_bend (gauges->gauges, bf_fold_bend (fold, i));
  g_array_sort (gauges->gauges, compare_gauges);
  return gauges;
}

void
bf_gauges_free (BfGauges *gauges)
{
  if (gauges == NULL)
    return;
  g_array_unref (gauges->gauges);
  bf_fold_unref (gauges->fold);
  g_free (gauges);
}

/* ---- pages -------------------------------------------------------------------------------- */

static BfPageHead
head_of (const BfGauges *gauges, guint page)
{
  return (BfPageHead){ .fold = gauges->fold,
                       .paper = gauges->paper,
                       .title = _ ("Angle gauges"),
                       .page = page,
                       .n_pages = bf_gauges_n_pages (gauges),
                       .note =
                           _ ("Cut from stiff card. The wedge fits into the bend; let the metal "
                              "spring back before you try it.") };
}

static guint
per_page (const BfGauges *gauges)
{
  BfPageHead head = { .fold = gauges->fold, .paper = gauges->paper, .title = "" };
  double room = gauges->paper->height_mm - BF_PAGE_MARGIN_MM - bf_page_head_end_mm (&head) -
                2.0 * BF_PAGE_CAP_MM;

  return MAX (COLUMNS * (guint)(room / CELL_MM), 1);
}

guint
bf_gauges_n_pages (const BfGauges *gauges)
{
  guint per = per_page (gauges);

  return MAX ((gauges->gauges->len + per - 1) / per, 1);
}

void
bf_gauge_outline (const BfGauge *gauge, BfVec2 corners[4])
{
  BfVec2 leg = bf_vec2 (cos (G_PI - gauge->turned_rad), sin (G_PI - gauge->turned_rad));

  corners[0] = bf_vec2 (gauge->tip_mm, 0.0);
  corners[1] = bf_vec2 (LEG_MM, 0.0);
  corners[2] = bf_vec2_scale (leg, LEG_MM);
  corners[3] = bf_vec2_scale (leg, gauge->tip_mm);
}

static void
draw_words (const BfGauge *gauge, double width_mm, cairo_t *cr)
{
  double turned = bf_rad_to_deg (gauge->turned_rad);
  g_autofree char *opening = bf_format_angle (180.0 - turned), *angle = bf_format_angle (turned);
  /* Translators: the angle between the two sides of a bend */
  g_autofree char *big = g_strdup_printf (_ ("opening %s"), opening);
  /* Translators: the angle that is bent through, and the names of flanges */
  g_autofree char *small = g_strdup_printf (turned < 90.0 ? _ ("turned by %s, leans out: %s")
                                                          : _ ("turned by %s, leans in: %s"),
                                            angle, gauge->names);
  g_autoptr (BfText) text = bf_text_new (big, ANGLE_CAP_MM, TRUE);
  g_autoptr (BfText) names = bf_text_new (small, BF_PAGE_CAP_MM, FALSE);

  bf_text_draw (text, cr, 0.0, ANGLE_CAP_MM + 3.0);
  bf_text_wrap (names, width_mm, NAME_LINES);
  bf_text_draw (names, cr, 0.0, ANGLE_CAP_MM + 8.5);
}

static void
draw_gauge (const BfGauge *gauge, double width_mm, cairo_t *cr)
{
  BfVec2 corners[4];
  double left = G_MAXDOUBLE, right = -G_MAXDOUBLE, shift;

  bf_gauge_outline (gauge, corners);
  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    {
      left = MIN (left, corners[i].x);
      right = MAX (right, corners[i].x);
    }
  shift = (width_mm - left - right) / 2.0;
  cairo_new_path (cr);
  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    cairo_line_to (cr, corners[i].x + shift, CELL_MM - WORDS_MM - GUTTER_MM - corners[i].y);
  cairo_close_path (cr);
  bf_pen_apply (bf_pen (BF_PURPOSE_CUT_OUTSIDE), cr, 1.0, FALSE);
  cairo_stroke (cr);
  cairo_translate (cr, 0.0, CELL_MM - WORDS_MM - GUTTER_MM);
  draw_words (gauge, width_mm, cr);
}

void
bf_gauges_draw (const BfGauges *gauges, guint i, cairo_t *cr)
{
  BfPageHead head = head_of (gauges, i);
  double top = bf_page_head_draw (&head, cr);
  double column =
      (gauges->paper->width_mm - 2.0 * BF_PAGE_MARGIN_MM - (COLUMNS - 1) * GUTTER_MM) / COLUMNS;
  guint per = per_page (gauges);

  if (gauges->gauges->len == 0)
    bf_page_words (cr, _ ("Every bend of this part is square or a hem: a square is all you need."),
                   bf_vec2 (BF_PAGE_MARGIN_MM, top + 4.0),
                   gauges->paper->width_mm - 2.0 * BF_PAGE_MARGIN_MM, TRUE);
  for (guint k = 0; k < per && i * per + k < gauges->gauges->len; k++)
    {
      cairo_save (cr);
      cairo_translate (cr, BF_PAGE_MARGIN_MM + k % COLUMNS * (column + GUTTER_MM),
                       top + k / COLUMNS * CELL_MM);
      draw_gauge (&g_array_index (gauges->gauges, BfGauge, i * per + k), column, cr);
      cairo_restore (cr);
    }
}
