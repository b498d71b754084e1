/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>
#include <glib.h>

#include "core/own-pens.h"

/* Colours and pens. Every line says by its colour, and again by its dash for a black and white
 * printer, what it is for.
 *
 * The eight colours are those of Okabe and Ito, "Color Universal Design" (2002, revised 2008),
 * chosen so that people who see colours differently tell them apart. */

typedef enum
{
  BF_OKABE_ITO_BLACK,
  BF_OKABE_ITO_ORANGE,
  BF_OKABE_ITO_SKY_BLUE,
  BF_OKABE_ITO_BLUISH_GREEN,
  BF_OKABE_ITO_YELLOW,
  BF_OKABE_ITO_BLUE,
  BF_OKABE_ITO_VERMILLION,
  BF_OKABE_ITO_REDDISH_PURPLE,
  BF_N_OKABE_ITO,
} BfOkabeIto;

/* What a line on metal is for. The names are those of the groups and layers in pattern files. */
typedef enum
{
  BF_PURPOSE_CUT_OUTSIDE,
  BF_PURPOSE_CUT_INSIDE,
  BF_PURPOSE_BEND_UP,
  BF_PURPOSE_BEND_DOWN,
  BF_PURPOSE_SLOT,
  BF_PURPOSE_DRILL,
  BF_PURPOSE_NOTE,
  BF_PURPOSE_SCORE, /* the edges of a groove */
  BF_PURPOSE_BAR,   /* the front edge of a bar */
  BF_N_PURPOSES,
} BfPurpose;

/* The two widths of ISO 128's line group 0.35, wide to narrow 2:1. Whoever follows either edge of
 * a wide line is less than 0.2 mm off its middle. */
#define BF_WIDE_LINE_MM 0.35
#define BF_NARROW_LINE_MM 0.18

#define BF_PEN_MAX_DASHES 6

typedef struct
{
  const char *name; /* "cut-outside" */
  BfOkabeIto colour;
  double width_mm;
  double dash_mm[BF_PEN_MAX_DASHES]; /* on, off, on, off… */
  int n_dashes;                      /* 0 for a line without gaps */
} BfPen;

/* A colour as 0xRRGGBB. */
guint32 bf_okabe_ito (BfOkabeIto colour);

/* The pen for a purpose. Owned by the library. */
const BfPen *bf_pen (BfPurpose purpose);

/* Sets colour, width and dash on cr. unit: how many of cr's units one millimetre of paper takes.
 * dark: black turns to near white, for a dark surface. */
void bf_pen_apply (const BfPen *pen, cairo_t *cr, double unit, gboolean dark);

/* The same in the person's own colour and width; set NULL: as bf_pen() has it. */
void
bf_pens_apply (const BfPenSet *set, BfPurpose purpose, cairo_t *cr, double unit, gboolean dark);

/* Sets a colour of 0xRRGGBB on cr. */
void bf_set_source_rgb (cairo_t *cr, guint32 rgb);
