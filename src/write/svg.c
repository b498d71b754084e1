/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/svg.h"

#include "write/numbers.h"

/* Of a sans-serif font's size, at most: words come out no wider than was planned. */
#define CAP_SHARE 0.74
#define MARK_ARM_MM 2.0

static void
append_attribute (GString *svg, const char *name, double value)
{
  g_string_append_printf (svg, " %s=\"", name);
  bf_append_decimal (svg, value);
  g_string_append_c (svg, '"');
}

/* Characters that XML can't hold are left out; a part's name may have been read with them. */
static void
append_escaped (GString *svg, const char *words)
{
  for (const char *c = words; *c != '\0'; c = g_utf8_next_char (c))
    {
      gunichar character = g_utf8_get_char (c);

      if (character == '<')
        g_string_append (svg, "&lt;");
      else if (character == '>')
        g_string_append (svg, "&gt;");
      else if (character == '&')
        g_string_append (svg, "&amp;");
      else if (character >= 0x20 && character != 0x7F && character < 0xFFFE)
        g_string_append_unichar (svg, character);
      else if (character < 0x20)
        g_string_append_c (svg, ' ');
      else if (character > 0xFFFF)
        g_string_append_unichar (svg, character);
    }
}

static void
append_element (GString *svg, const char *indent, const char *element, const char *words)
{
  g_string_append_printf (svg, "%s<%s>", indent, element);
  append_escaped (svg, words);
  g_string_append_printf (svg, "</%s>\n", element);
}

static void
append_point (GString *svg, const char *command, BfVec2 p)
{
  g_string_append (svg, command);
  bf_append_decimal (svg, p.x);
  g_string_append_c (svg, ' ');
  bf_append_decimal (svg, -p.y);
}

/* y down turns the sense of an arc: what runs counter-clockwise on the blank is drawn against
 * SVG's positive angle. */
static void
append_arc (GString *svg, const BfArc *arc, BfVec2 to)
{
  g_string_append (svg, " A");
  bf_append_decimal (svg, arc->radius);
  g_string_append_c (svg, ' ');
  bf_append_decimal (svg, arc->radius);
  g_string_append_printf (svg, " 0 %d %d", fabs (arc->sweep) > G_PI, arc->sweep < 0.0);
  append_point (svg, " ", to);
}

static void
write_path (GString *svg, const BfRing *ring)
{
  BfArc arc;

  g_string_append (svg, "    <path d=\"");
  append_point (svg, "M", bf_ring_vertex (ring, 0)->p);
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      BfVec2 to = bf_ring_vertex (ring, i + 1)->p;
      gboolean closes = i + 1 == bf_ring_size (ring);

      if (bf_ring_arc (ring, i, &arc))
        append_arc (svg, &arc, to);
      else if (!closes)
        append_point (svg, " L", to);
    }
  g_string_append (svg, " Z\"/>\n");
}

static void
write_ring (GString *svg, const BfRing *ring)
{
  BfVec2 centre;
  double radius;

  if (!bf_ring_is_circle (ring, &centre, &radius))
    {
      write_path (svg, ring);
      return;
    }
  g_string_append (svg, "    <circle");
  append_attribute (svg, "cx", centre.x);
  append_attribute (svg, "cy", -centre.y);
  append_attribute (svg, "r", radius);
  g_string_append (svg, "/>\n");
}

static void
write_line (GString *svg, const BfPatternItem *item)
{
  g_string_append (svg, "    <line");
  append_attribute (svg, "x1", item->at.x);
  append_attribute (svg, "y1", -item->at.y);
  append_attribute (svg, "x2", item->to.x);
  append_attribute (svg, "y2", -item->to.y);
  g_string_append (svg, "><title>");
  append_escaped (svg, item->words);
  g_string_append (svg, "</title></line>\n");
}

static void
write_mark (GString *svg, BfVec2 at)
{
  g_string_append (svg, "    <path d=\"");
  append_point (svg, "M", bf_vec2 (at.x - MARK_ARM_MM, at.y));
  append_point (svg, " L", bf_vec2 (at.x + MARK_ARM_MM, at.y));
  append_point (svg, " M", bf_vec2 (at.x, at.y - MARK_ARM_MM));
  append_point (svg, " L", bf_vec2 (at.x, at.y + MARK_ARM_MM));
  g_string_append (svg, "\"/>\n");
}

/* Words need no more than a hundredth of a millimetre. */
static double
round_off (double value)
{
  return round (value * 100.0) / 100.0;
}

static void
write_words (GString *svg, const BfPatternItem *item)
{
  BfVec2 along = bf_vec2_sub (item->to, item->at);
  double turn = round_off (-bf_rad_to_deg (atan2 (along.y, along.x)));

  g_string_append (svg, "    <text transform=\"translate(");
  append_point (svg, "", bf_vec2 (round_off (item->at.x), round_off (item->at.y)));
  if (fabs (turn) > 0.0)
    {
      g_string_append (svg, ") rotate(");
      bf_append_decimal (svg, turn);
    }
  g_string_append (svg, ")\"");
  append_attribute (svg, "font-size", round_off (item->cap_height_mm / CAP_SHARE));
  g_string_append_c (svg, '>');
  append_escaped (svg, item->words);
  g_string_append (svg, "</text>\n");
}

static void
write_item (GString *svg, const BfPatternItem *item)
{
  switch (item->kind)
    {
    case BF_PATTERN_RING:
      write_ring (svg, item->ring);
      break;
    case BF_PATTERN_LINE:
      write_line (svg, item);
      break;
    case BF_PATTERN_MARK:
      write_mark (svg, item->at);
      break;
    case BF_PATTERN_WORDS:
    default:
      write_words (svg, item);
      break;
    }
}

static void
begin_group (GString *svg, BfPurpose purpose)
{
  const BfPen *pen = bf_pen (purpose);
  guint32 colour = bf_okabe_ito (pen->colour);

  g_string_append_printf (svg, "  <g id=\"%s\"", pen->name);
  if (purpose == BF_PURPOSE_NOTE)
    {
      g_string_append_printf (svg, " fill=\"#%06X\" font-family=\"sans-serif\">\n", colour);
      return;
    }
  g_string_append_printf (svg, " fill=\"none\" stroke=\"#%06X\"", colour);
  append_attribute (svg, "stroke-width", pen->width_mm);
  if (pen->n_dashes > 0)
    g_string_append (svg, " stroke-dasharray=\"");
  for (int i = 0; i < pen->n_dashes; i++)
    {
      if (i > 0)
        g_string_append_c (svg, ' ');
      bf_append_decimal (svg, pen->dash_mm[i]);
    }
  g_string_append (svg, pen->n_dashes > 0 ? "\">\n" : ">\n");
}

/* The pattern's items of one purpose stand together. */
static void
write_groups (GString *svg, const BfPattern *pattern)
{
  for (guint i = 0; i < pattern->items->len; i++)
    {
      const BfPatternItem *item = bf_pattern_item (pattern, i);
      gboolean begins = i == 0 || bf_pattern_item (pattern, i - 1)->purpose != item->purpose;
      gboolean ends = i + 1 == pattern->items->len ||
                      bf_pattern_item (pattern, i + 1)->purpose != item->purpose;

      if (begins)
        begin_group (svg, item->purpose);
      write_item (svg, item);
      if (ends)
        g_string_append (svg, "  </g>\n");
    }
}

static void
write_size (GString *svg, const BfBox *box)
{
  double width = box->max.x - box->min.x, height = box->max.y - box->min.y;

  g_string_append (svg, "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"");
  bf_append_decimal (svg, width);
  g_string_append (svg, "mm\" height=\"");
  bf_append_decimal (svg, height);
  g_string_append (svg, "mm\" viewBox=\"");
  append_point (svg, "", bf_vec2 (box->min.x, box->max.y));
  g_string_append_c (svg, ' ');
  bf_append_decimal (svg, width);
  g_string_append_c (svg, ' ');
  bf_append_decimal (svg, height);
  g_string_append (svg, "\">\n");
}

char *
bf_svg_text (const BfPattern *pattern)
{
  GString *svg = g_string_new ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
  g_autofree char *about = NULL;

  g_return_val_if_fail (pattern != NULL, g_string_free (svg, FALSE));

  about = g_strjoin (" ", pattern->setup, pattern->origin,
                     pattern->kerf != NULL ? pattern->kerf : pattern->warning,
                     pattern->kerf != NULL ? pattern->warning : NULL, NULL);
  write_size (svg, &pattern->box);
  append_element (svg, "  ", "title", pattern->name);
  append_element (svg, "  ", "desc", about);
  write_groups (svg, pattern);
  g_string_append (svg, "</svg>\n");
  return g_string_free (svg, FALSE);
}
