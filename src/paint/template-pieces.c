/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/template-private.h"

#include <glib/gi18n.h>

#include "core/units.h"
#include "paint/palette.h"
#include "paint/ring-path.h"
#include "paint/text.h"

/* Corners only: pieces of the blank at full size, each with its name, where its cross lies on the
 * metal, and how far it is from the crosses of its neighbours. */

#define CAP BF_TEMPLATE_CAP_MM
#define LINE_PITCH 4.0
#define FIRST_LINE 4.6 /* baseline of the name below the piece */
#define MOST_LINES 3   /* below the name */
#define MOST_NEIGHBOURS 3
#define FRAME_RGB 0x8A8A8A
#define WORDS_OFF_FRAME_MM 0.5

typedef struct
{
  guint piece;
  double distance_mm;
} Neighbour;

BfVec2
bf_template_piece_caption (void)
{
  return bf_vec2 (59.0, FIRST_LINE + MOST_LINES * LINE_PITCH + 1.0);
}

static int
compare_neighbours (gconstpointer a, gconstpointer b)
{
  double x = ((const Neighbour *)a)->distance_mm, y = ((const Neighbour *)b)->distance_mm;

  return (x > y) - (x < y);
}

/* "to 2: 203.4, to 3: 181.2": from cross to cross. Empty where there is one piece.
 * Returns: (transfer full). */
static char *
neighbour_words (const BfTemplate *template, guint k)
{
  const GArray *pieces = template->corners->pieces;
  g_autoptr (GArray) others = g_array_new (FALSE, FALSE, sizeof (Neighbour));
  GString *words = g_string_new (NULL);
  BfVec2 from = bf_corner_piece (template->corners, k)->cross;

  for (guint i = 0; i < pieces->len; i++)
    {
      Neighbour other = { i,
                          bf_vec2_distance (from, bf_corner_piece (template->corners, i)->cross) };
      if (i != k)
        g_array_append_val (others, other);
    }
  g_array_sort (others, compare_neighbours);
  for (guint i = 0; i < MIN (others->len, MOST_NEIGHBOURS); i++)
    {
      const Neighbour *other = &g_array_index (others, Neighbour, i);
      g_autofree char *distance = bf_format_number (other->distance_mm, template->units);
      g_string_append (words, i > 0 ? ", " : "");
      /* Translators: the number of another piece of paper, and how far its cross is. */
      g_string_append_printf (words, _ ("to %u: %s"), other->piece + 1, distance);
    }
  return g_string_free (words, FALSE);
}

static char *
place_words (const BfTemplate *template, guint k)
{
  const BfCornerPiece *piece = bf_corner_piece (template->corners, k);
  BfVec2 away = bf_vec2_sub (piece->cross, template->fold->blank.box.min);
  g_autofree char *right = bf_format_number (away.x, template->units);
  g_autofree char *up = bf_format_number (away.y, template->units);

  /* Translators: where on the metal a piece's cross lies: its distances from the blank's left end
   * and from its lower end. Keep it short. */
  return g_strdup_printf (_ ("%s from left, %s from below"), right, up);
}

/* Returns: how many lines the words took. */
static int
draw_words (const char *words, double y, double width, int most_lines, cairo_t *cr)
{
  g_autoptr (BfText) text = bf_text_new (words, CAP, FALSE);

  bf_text_wrap (text, width, most_lines);
  bf_text_draw (text, cr, 0.0, y);
  return bf_text_n_lines (text);
}

/* cr's origin is the piece's lower left corner. */
static void
draw_caption (const BfTemplate *template, guint k, double width, cairo_t *cr)
{
  g_autofree char *where = place_words (template, k);
  g_autofree char *others = neighbour_words (template, k);
  /* Translators: a piece of paper that shows a part of the blank, and its number. */
  g_autofree char *name = g_strdup_printf (_ ("Piece %u"), k + 1);
  g_autoptr (BfText) bold = bf_text_new (name, CAP * 1.2, TRUE);
  int n_lines;

  bf_text_draw (bold, cr, 0.0, FIRST_LINE);
  n_lines = draw_words (where, FIRST_LINE + LINE_PITCH, width, MOST_LINES - 1, cr);
  draw_words (others, FIRST_LINE + (n_lines + 1) * LINE_PITCH, width, MOST_LINES - n_lines, cr);
}

/* Where the paper may be cut; drawn beyond the piece, so that it hides nothing of it. */
static void
draw_frame (BfVec2 size, cairo_t *cr)
{
  static const double dash[] = { 1.6, 1.2 };

  cairo_set_line_width (cr, BF_NARROW_LINE_MM);
  bf_set_source_rgb (cr, FRAME_RGB);
  cairo_set_dash (cr, dash, G_N_ELEMENTS (dash), 0.0);
  cairo_rectangle (cr, 0.0, 0.0, size.x, size.y);
  cairo_stroke (cr);
  cairo_set_dash (cr, NULL, 0, 0.0);
}

/* The room that words of the blank have: the piece, but for its cross. */
static void
draw_lines (const BfTemplate *template, const BfCornerPiece *piece, cairo_t *cr)
{
  g_autoptr (GArray) keep_off = g_array_new (FALSE, FALSE, sizeof (BfBox));
  BfVec2 arm = { BF_TEMPLATE_CROSS_ARM_MM, BF_TEMPLATE_CROSS_ARM_MM };
  BfVec2 off = { WORDS_OFF_FRAME_MM, WORDS_OFF_FRAME_MM };
  BfBox cross = { bf_vec2_sub (piece->cross, arm), bf_vec2_add (piece->cross, arm) };
  BfBox view = { bf_vec2_add (piece->box.min, off), bf_vec2_sub (piece->box.max, off) };
  BfBlankStyle style;

  g_array_append_val (keep_off, cross);
  bf_blank_style_init (&style, template->fold);
  style.units = template->units;
  style.pens = template->pens;
  style.cap_height_mm = CAP;
  style.view = &view;
  style.keep_off = keep_off;
  bf_blank_view_draw (template->fold, &style, cr);
  bf_pen_apply (bf_pen (BF_PURPOSE_NOTE), cr, 1.0, FALSE);
  bf_template_draw_cross (cr, piece->cross);
}

static void
draw_piece (const BfTemplate *template, guint k, cairo_t *cr)
{
  const BfCornerPiece *piece = bf_corner_piece (template->corners, k);
  BfVec2 size = bf_vec2_sub (piece->box.max, piece->box.min);

  cairo_save (cr);
  cairo_translate (cr, piece->place.x, piece->place.y);
  draw_frame (size, cr);
  cairo_save (cr);
  cairo_rectangle (cr, 0.0, 0.0, size.x, size.y);
  cairo_clip (cr);
  cairo_translate (cr, -piece->box.min.x, piece->box.max.y);
  draw_lines (template, piece, cr);
  cairo_restore (cr);
  cairo_translate (cr, 0.0, size.y);
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  draw_caption (template, k, MAX (size.x, bf_template_piece_caption ().x), cr);
  cairo_restore (cr);
}

void
bf_template_draw_pieces (const BfTemplate *template, guint i, cairo_t *cr)
{
  for (guint k = 0; k < template->corners->pieces->len; k++)
    if (bf_corner_piece (template->corners, k)->page == i)
      draw_piece (template, k, cr);
}

guint
bf_template_n_pieces (const BfTemplate *template)
{
  g_return_val_if_fail (template != NULL, 0);

  return template->corners != NULL ? template->corners->pieces->len : 0;
}

/* What is left of the page's point for a point of the drawing at the piece's upper left corner. */
BfTemplatePiece
bf_template_piece (const BfTemplate *template, guint k)
{
  BfTemplatePiece result = { 0 };
  const BfPageFormat *format;
  const BfCornerPiece *piece;
  double top_mm;

  g_return_val_if_fail (k < bf_template_n_pieces (template), result);

  format = &template->format;
  piece = bf_corner_piece (template->corners, k);
  top_mm = format->height_mm - format->margin_mm - piece->place.y;
  result = (BfTemplatePiece){ piece->page, piece->box, piece->cross, { 0.0, 0.0 } };
  result.origin =
      bf_vec2 (piece->box.min.x - format->margin_mm - piece->place.x, piece->box.max.y - top_mm);
  if (template->is_mirrored)
    {
      result.box.min.x = -piece->box.max.x;
      result.box.max.x = -piece->box.min.x;
      result.cross.x = -piece->cross.x;
      result.origin.x = -result.origin.x;
    }
  return result;
}
