/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/dxf.h"

#include "core/units.h"
#include "write/dxf-groups.h"

static void
write_vertex (BfDxf *dxf, const char *layer, const BfVertex *vertex)
{
  bf_dxf_entity (dxf, "VERTEX", layer);
  bf_dxf_point (dxf, 0, vertex->p);
  if (fabs (vertex->bulge) > 0.0)
    bf_dxf_number (dxf, 42, vertex->bulge);
}

static void
write_contour (BfDxf *dxf, const char *layer, const BfRing *ring)
{
  bf_dxf_entity (dxf, "POLYLINE", layer);
  bf_dxf_integer (dxf, 66, 1); /* vertices follow */
  bf_dxf_point (dxf, 0, bf_vec2 (0.0, 0.0));
  bf_dxf_integer (dxf, 70, 1); /* closed */
  for (guint i = 0; i < bf_ring_size (ring); i++)
    write_vertex (dxf, layer, bf_ring_vertex (ring, i));
  bf_dxf_entity (dxf, "SEQEND", layer);
}

static void
write_ring (BfDxf *dxf, const char *layer, const BfRing *ring)
{
  BfVec2 centre;
  double radius;

  if (!bf_ring_is_circle (ring, &centre, &radius))
    {
      write_contour (dxf, layer, ring);
      return;
    }
  bf_dxf_entity (dxf, "CIRCLE", layer);
  bf_dxf_point (dxf, 0, centre);
  bf_dxf_length (dxf, 40, radius);
}

static void
write_words (BfDxf *dxf, const char *layer, const BfPatternItem *item)
{
  BfVec2 along = bf_vec2_sub (item->to, item->at);

  bf_dxf_entity (dxf, "TEXT", layer);
  bf_dxf_point (dxf, 0, item->at);
  bf_dxf_length (dxf, 40, item->cap_height_mm);
  bf_dxf_words (dxf, 1, item->words);
  bf_dxf_number (dxf, 50, bf_rad_to_deg (atan2 (along.y, along.x)));
}

static void
write_item (BfDxf *dxf, const BfPatternItem *item)
{
  const char *layer = bf_pen (item->purpose)->name;

  switch (item->kind)
    {
    case BF_PATTERN_RING:
      write_ring (dxf, layer, item->ring);
      break;
    case BF_PATTERN_LINE:
      bf_dxf_entity (dxf, "LINE", layer);
      bf_dxf_point (dxf, 0, item->at);
      bf_dxf_point (dxf, 1, item->to);
      break;
    case BF_PATTERN_MARK:
      bf_dxf_entity (dxf, "POINT", layer);
      bf_dxf_point (dxf, 0, item->at);
      break;
    case BF_PATTERN_WORDS:
    default:
      write_words (dxf, layer, item);
      break;
    }
}

/* Comments come first, so that who opens the file as text sees at once what it is. */
static void
write_comments (BfDxf *dxf, const BfPattern *pattern)
{
  bf_dxf_words (dxf, 999, pattern->name);
  bf_dxf_words (dxf, 999, pattern->setup);
  bf_dxf_words (dxf, 999, pattern->origin);
  if (pattern->kerf != NULL)
    bf_dxf_words (dxf, 999, pattern->kerf);
  if (pattern->warning != NULL)
    bf_dxf_words (dxf, 999, pattern->warning);
}

static void
write_header (BfDxf *dxf, const BfBox *box)
{
  bf_dxf_begin_section (dxf, "HEADER");
  bf_dxf_string (dxf, 9, "$ACADVER");
  bf_dxf_string (dxf, 1, "AC1009");
  bf_dxf_string (dxf, 9, "$EXTMIN");
  bf_dxf_point (dxf, 0, box->min);
  bf_dxf_string (dxf, 9, "$EXTMAX");
  bf_dxf_point (dxf, 0, box->max);
  bf_dxf_string (dxf, 9, "$LTSCALE");
  bf_dxf_number (dxf, 40, 1.0);
  bf_dxf_end_section (dxf);
}

/* A line type's elements: a dash is a length, a gap a negative one. */
static void
write_line_type (BfDxf *dxf, const char *name, const char *about, const BfPen *pen)
{
  double total = 0.0;

  for (int i = 0; i < pen->n_dashes; i++)
    total += pen->dash_mm[i];
  bf_dxf_string (dxf, 0, "LTYPE");
  bf_dxf_string (dxf, 2, name);
  bf_dxf_integer (dxf, 70, 0);
  bf_dxf_string (dxf, 3, about);
  bf_dxf_integer (dxf, 72, 65); /* the only alignment that there is */
  bf_dxf_integer (dxf, 73, pen->n_dashes);
  bf_dxf_length (dxf, 40, total);
  for (int i = 0; i < pen->n_dashes; i++)
    bf_dxf_length (dxf, 49, i % 2 == 0 ? pen->dash_mm[i] : -pen->dash_mm[i]);
}

static const char *
line_type_name (BfPurpose purpose)
{
  if (purpose == BF_PURPOSE_BEND_UP)
    return "BEND_UP";
  if (purpose == BF_PURPOSE_SCORE)
    return "SCORE";
  return purpose == BF_PURPOSE_BEND_DOWN ? "BEND_DOWN" : "CONTINUOUS";
}

static void
write_line_types (BfDxf *dxf)
{
  bf_dxf_begin_table (dxf, "LTYPE", 4);
  write_line_type (dxf, line_type_name (BF_PURPOSE_CUT_OUTSIDE), "Solid",
                   bf_pen (BF_PURPOSE_CUT_OUTSIDE));
  write_line_type (dxf, line_type_name (BF_PURPOSE_BEND_UP), "Long dashes",
                   bf_pen (BF_PURPOSE_BEND_UP));
  write_line_type (dxf, line_type_name (BF_PURPOSE_BEND_DOWN), "Dash, dot, dot",
                   bf_pen (BF_PURPOSE_BEND_DOWN));
  write_line_type (dxf, line_type_name (BF_PURPOSE_SCORE), "Dots", bf_pen (BF_PURPOSE_SCORE));
  bf_dxf_end_table (dxf);
}

static void
write_layer (BfDxf *dxf, const char *name, const char *line_type)
{
  bf_dxf_string (dxf, 0, "LAYER");
  bf_dxf_string (dxf, 2, name);
  bf_dxf_integer (dxf, 70, 0);
  bf_dxf_integer (dxf, 62, 7);
  bf_dxf_string (dxf, 6, line_type);
}

static gboolean
has_scores (const BfPattern *pattern)
{
  for (guint i = 0; i < pattern->items->len; i++)
    if (bf_pattern_item (pattern, i)->purpose == BF_PURPOSE_SCORE)
      return TRUE;
  return FALSE;
}

/* A layer for scores only where there are any. */
static void
write_layers (BfDxf *dxf, const BfPattern *pattern)
{
  gboolean scores = has_scores (pattern);

  bf_dxf_begin_table (dxf, "LAYER", BF_PURPOSE_NOTE + (scores ? 3 : 2));
  write_layer (dxf, "0", "CONTINUOUS");
  for (BfPurpose purpose = 0; purpose <= BF_PURPOSE_NOTE; purpose++)
    write_layer (dxf, bf_pen (purpose)->name, line_type_name (purpose));
  if (scores)
    write_layer (dxf, bf_pen (BF_PURPOSE_SCORE)->name, line_type_name (BF_PURPOSE_SCORE));
  bf_dxf_end_table (dxf);
}

/* The one text style that a reader may count on. */
static void
write_text_style (BfDxf *dxf)
{
  bf_dxf_begin_table (dxf, "STYLE", 1);
  bf_dxf_string (dxf, 0, "STYLE");
  bf_dxf_string (dxf, 2, "STANDARD");
  bf_dxf_integer (dxf, 70, 0);
  bf_dxf_number (dxf, 40, 0.0); /* height as each text asks */
  bf_dxf_number (dxf, 41, 1.0);
  bf_dxf_number (dxf, 50, 0.0);
  bf_dxf_integer (dxf, 71, 0);
  bf_dxf_number (dxf, 42, 1.0);
  bf_dxf_string (dxf, 3, "txt");
  bf_dxf_string (dxf, 4, "");
  bf_dxf_end_table (dxf);
}

static void
write_tables (BfDxf *dxf, const BfPattern *pattern)
{
  bf_dxf_begin_section (dxf, "TABLES");
  write_line_types (dxf);
  write_layers (dxf, pattern);
  write_text_style (dxf);
  bf_dxf_end_section (dxf);
}

char *
bf_dxf_text (const BfPattern *pattern, BfUnits units)
{
  BfDxf dxf;

  g_return_val_if_fail (pattern != NULL, NULL);

  bf_dxf_init (&dxf, units == BF_UNITS_IN ? 1.0 / BF_MM_PER_INCH : 1.0);
  write_comments (&dxf, pattern);
  write_header (&dxf, &pattern->box);
  write_tables (&dxf, pattern);
  bf_dxf_begin_section (&dxf, "BLOCKS");
  bf_dxf_end_section (&dxf);
  bf_dxf_begin_section (&dxf, "ENTITIES");
  for (guint i = 0; i < pattern->items->len; i++)
    write_item (&dxf, bf_pattern_item (pattern, i));
  bf_dxf_end_section (&dxf);
  bf_dxf_string (&dxf, 0, "EOF");
  return bf_dxf_finish (&dxf);
}
