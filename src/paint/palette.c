/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/palette.h"

#define NEAR_WHITE 0xECE9E4

/* Values as in the authors' own table (0 to 255): black 0,0,0; orange 230,159,0; and so on. */
static const guint32 colours[BF_N_OKABE_ITO] = {
  [BF_OKABE_ITO_BLACK] = 0x000000,      [BF_OKABE_ITO_ORANGE] = 0xE69F00,
  [BF_OKABE_ITO_SKY_BLUE] = 0x56B4E9,   [BF_OKABE_ITO_BLUISH_GREEN] = 0x009E73,
  [BF_OKABE_ITO_YELLOW] = 0xF0E442,     [BF_OKABE_ITO_BLUE] = 0x0072B2,
  [BF_OKABE_ITO_VERMILLION] = 0xD55E00, [BF_OKABE_ITO_REDDISH_PURPLE] = 0xCC79A7,
};

/* Dashes are our own, long enough that one bend shows several of them. Slots and openings are cut
 * like the outside: their purpose is in their place. */
static const BfPen pens[BF_N_PURPOSES] = {
  [BF_PURPOSE_CUT_OUTSIDE] = { "cut-outside", BF_OKABE_ITO_BLACK, BF_WIDE_LINE_MM, { 0.0 }, 0 },
  [BF_PURPOSE_CUT_INSIDE] = { "cut-inside", BF_OKABE_ITO_BLACK, BF_WIDE_LINE_MM, { 0.0 }, 0 },
  [BF_PURPOSE_BEND_UP] = { "bend-up", BF_OKABE_ITO_BLUISH_GREEN, BF_WIDE_LINE_MM, { 9.0, 2.5 }, 2 },
  [BF_PURPOSE_BEND_DOWN] = { "bend-down",
                             BF_OKABE_ITO_REDDISH_PURPLE,
                             BF_WIDE_LINE_MM,
                             { 6.0, 1.6, 0.7, 1.6, 0.7, 1.6 },
                             6 },
  [BF_PURPOSE_SLOT] = { "slot", BF_OKABE_ITO_BLACK, BF_WIDE_LINE_MM, { 0.0 }, 0 },
  [BF_PURPOSE_DRILL] = { "drill", BF_OKABE_ITO_BLACK, BF_NARROW_LINE_MM, { 0.0 }, 0 },
  [BF_PURPOSE_NOTE] = { "note", BF_OKABE_ITO_BLACK, BF_NARROW_LINE_MM, { 0.0 }, 0 },
  [BF_PURPOSE_SCORE] = { "score", BF_OKABE_ITO_BLACK, BF_NARROW_LINE_MM, { 0.5, 0.8 }, 2 },
  [BF_PURPOSE_BAR] = { "bar", BF_OKABE_ITO_BLACK, BF_NARROW_LINE_MM, { 2.0, 1.2 }, 2 },
};

guint32
bf_okabe_ito (BfOkabeIto colour)
{
  g_return_val_if_fail (colour < BF_N_OKABE_ITO, 0);

  return colours[colour];
}

const BfPen *
bf_pen (BfPurpose purpose)
{
  g_return_val_if_fail (purpose < BF_N_PURPOSES, NULL);

  return &pens[purpose];
}

void
bf_set_source_rgb (cairo_t *cr, guint32 rgb)
{
  cairo_set_source_rgb (cr, (rgb >> 16 & 0xFF) / 255.0, (rgb >> 8 & 0xFF) / 255.0,
                        (rgb & 0xFF) / 255.0);
}

void
bf_pen_apply (const BfPen *pen, cairo_t *cr, double unit, gboolean dark)
{
  double dash[BF_PEN_MAX_DASHES] = { 0.0 };
  gboolean turns_light = dark && pen->colour == BF_OKABE_ITO_BLACK;

  for (int i = 0; i < pen->n_dashes; i++)
    dash[i] = pen->dash_mm[i] * unit;
  cairo_set_dash (cr, dash, pen->n_dashes, 0.0);
  cairo_set_line_width (cr, pen->width_mm * unit);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_BUTT);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_MITER);
  bf_set_source_rgb (cr, turns_light ? NEAR_WHITE : colours[pen->colour]);
}

/* Words are in no pen of the person's. */
static const BfOwnPen *
own_pen (const BfPenSet *set, BfPurpose purpose)
{
  switch (purpose)
    {
    case BF_PURPOSE_CUT_OUTSIDE:
    case BF_PURPOSE_CUT_INSIDE:
      return &set->pens[BF_PEN_CUT];
    case BF_PURPOSE_BEND_UP:
      return &set->pens[BF_PEN_BEND_UP];
    case BF_PURPOSE_BEND_DOWN:
      return &set->pens[BF_PEN_BEND_DOWN];
    case BF_PURPOSE_SLOT:
      return &set->pens[BF_PEN_SLOT];
    case BF_PURPOSE_DRILL:
      return &set->pens[BF_PEN_DRILL];
    case BF_PURPOSE_SCORE:
      return &set->pens[BF_PEN_SCORE];
    case BF_PURPOSE_BAR:
      return &set->pens[BF_PEN_BAR_LINE];
    case BF_PURPOSE_NOTE:
    case BF_N_PURPOSES:
    default:
      return NULL;
    }
}

void
bf_pens_apply (const BfPenSet *set, BfPurpose purpose, cairo_t *cr, double unit, gboolean dark)
{
  const BfOwnPen *own = set != NULL ? own_pen (set, purpose) : NULL;

  bf_pen_apply (bf_pen (purpose), cr, unit, dark);
  if (own == NULL)
    return;
  cairo_set_line_width (cr, own->width_mm * unit);
  bf_set_source_rgb (cr, own->rgb);
}
