/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-tone.h"

#include "paint/palette.h"

/* Toward the light: left of the eye, above and behind it. Of length 1. */
static const BfVec3 light = { -0.408, 0.590, 0.697 };

/* What a highlighted face takes of the tint. */
#define TINT_STRENGTH 0.55

/* How much of its shade a highlighted face loses, so that the tint stays clear and warm. */
#define TINT_LIFT 0.6

BfFormedStyle
bf_formed_style (gboolean dark)
{
  BfFormedStyle style = { 0 };

  style.metal = dark ? 0xD4CDC3 : 0xEAE4DB;
  style.line = dark ? 0x1F1C19 : 0x3B3631;
  style.tint = bf_okabe_ito (BF_OKABE_ITO_ORANGE);
  style.dark = dark ? 0.46 : 0.60;
  style.other_side = 0.86;
  style.rim = 0.95;
  style.line_width = 0.35;
  style.scale = 1.0;
  style.highlight = -1;
  return style;
}

static BfFormedColour
unpack (guint32 rgb)
{
  return (BfFormedColour){ (rgb >> 16 & 0xFF) / 255.0, (rgb >> 8 & 0xFF) / 255.0,
                           (rgb & 0xFF) / 255.0 };
}

static BfFormedColour
mixed (BfFormedColour a, BfFormedColour b, double share_of_b)
{
  double share_of_a = 1.0 - share_of_b;

  return (BfFormedColour){ a.red * share_of_a + b.red * share_of_b,
                           a.green * share_of_a + b.green * share_of_b,
                           a.blue * share_of_a + b.blue * share_of_b };
}

static double
side_brightness (const BfFormedStyle *style, BfFormedSide side)
{
  switch (side)
    {
    case BF_FORMED_OTHER_SIDE:
      return style->other_side;
    case BF_FORMED_RIM:
      return style->rim;
    case BF_FORMED_MARKING_SIDE:
    default:
      return 1.0;
    }
}

/* Light that wraps round: nothing that is seen is ever quite black, and faces that turn away from
 * the light still differ. */
BfFormedColour
bf_formed_tone (const BfFormedStyle *style, BfFormedSide side, BfVec3 normal, double tinted)
{
  BfFormedColour base = mixed (unpack (style->metal), unpack (style->tint), tinted * TINT_STRENGTH);
  double lit = 0.5 + 0.5 * bf_vec3_dot (normal, light);
  double bright = side_brightness (style, side) * (style->dark + (1.0 - style->dark) * lit);

  bright += (1.0 - bright) * tinted * TINT_LIFT;
  return (BfFormedColour){ base.red * bright, base.green * bright, base.blue * bright };
}

BfFormedColour
bf_formed_line_colour (const BfFormedStyle *style, double strength)
{
  BfFormedColour metal = bf_formed_tone (style, BF_FORMED_OTHER_SIDE, light, 0.0);

  return mixed (metal, unpack (style->line), strength);
}

static BfVec3
in_picture (const BfFrame *eye, BfVec3 v)
{
  return bf_vec3 (bf_vec3_dot (v, eye->ex), bf_vec3_dot (v, eye->ey), bf_vec3_dot (v, eye->ez));
}

/* A bend takes on the tint as it turns toward the face that is highlighted. */
static double
tint_at (const BfFormedPolygon *polygon, const BfFormedStyle *style, double way)
{
  if (style->highlight < 0 || polygon->face != (guint)style->highlight)
    return 0.0;
  return polygon->bent && polygon->band >= 0 ? way : 1.0;
}

static BfFormedColour
tone_at_stop (const BfFormedPolygon *polygon,
              const BfFormedStop *stop,
              const BfFormedStyle *style,
              const BfFrame *eye)
{
  return bf_formed_tone (style, polygon->side, in_picture (eye, stop->normal),
                         tint_at (polygon, style, stop->way));
}

static cairo_pattern_t *
solid (BfFormedColour colour)
{
  return cairo_pattern_create_rgb (colour.red, colour.green, colour.blue);
}

/* Whether the strip that begins at that stop faces the eye. Its normal halves those of its two
 * sides. */
static gboolean
strip_is_seen (const BfFormedScene *scene,
               const BfFormedBand *band,
               guint strip,
               const BfFrame *eye)
{
  BfVec3 normal = bf_vec3_add (bf_formed_stop (scene, band->stops.first + strip)->normal,
                               bf_formed_stop (scene, band->stops.first + strip + 1)->normal);

  return bf_vec3_dot (bf_vec3_unit (normal), eye->ez) > BF_FORMED_EDGE_ON;
}

/* The stops round the strips that are seen; those are neighbours, as no band turns by more than
 * half a turn. An empty span where none is. */
static BfFormedSpan
stops_seen (const BfFormedScene *scene, const BfFormedBand *band, const BfFrame *eye)
{
  BfFormedSpan seen = { 0, 0 };

  for (guint strip = 0; strip + 1 < band->stops.size; strip++)
    if (strip_is_seen (scene, band, strip, eye))
      {
        if (seen.size == 0)
          seen = (BfFormedSpan){ band->stops.first + strip, 1 };
        seen.size = band->stops.first + strip + 2 - seen.first;
      }
  return seen;
}

/* How far along a direction of the picture (y down) a stop is, in cr's units. */
static double
way_across (const BfFormedStop *stop, const BfFrame *eye, BfVec2 across, double scale)
{
  BfVec3 p = in_picture (eye, stop->at);

  return (p.x * across.x - p.y * across.y) * scale;
}

static void
add_colour_stop (cairo_pattern_t *pattern, double offset, BfFormedColour colour)
{
  cairo_pattern_add_color_stop_rgb (pattern, offset, colour.red, colour.green, colour.blue);
}

/* The tone of the whole of what is seen of a band, in one. */
static BfFormedColour
mean_tone (const BfFormedPolygon *polygon,
           const BfFormedStop *stops,
           guint n_stops,
           const BfFormedStyle *style,
           const BfFrame *eye)
{
  BfFormedColour mean = tone_at_stop (polygon, &stops[0], style, eye);

  for (guint i = 1; i < n_stops; i++)
    mean = mixed (mean, tone_at_stop (polygon, &stops[i], style, eye), 1.0 / (i + 1));
  return mean;
}

/* A gradient square to the band's axis as the picture shows it. */
static cairo_pattern_t *
gradient (const BfFormedScene *scene,
          const BfFormedPolygon *polygon,
          const BfFormedStyle *style,
          const BfFrame *eye,
          double finest)
{
  const BfFormedBand *band = bf_formed_band (scene, (guint)polygon->band);
  BfFormedSpan seen = stops_seen (scene, band, eye);
  BfVec3 axis = in_picture (eye, band->axis);
  BfVec2 across = bf_vec2_unit (bf_vec2 (axis.y, axis.x));
  const BfFormedStop *stops = bf_formed_stop (scene, seen.first);
  double from, to;
  cairo_pattern_t *pattern;

  if (seen.size < 2)
    return solid (bf_formed_tone (style, polygon->side, in_picture (eye, polygon->normal), 0.0));
  from = way_across (&stops[0], eye, across, style->scale);
  to = way_across (&stops[seen.size - 1], eye, across, style->scale);
  if (fabs (to - from) < fmax (finest, 1e-6))
    return solid (mean_tone (polygon, stops, seen.size, style, eye));

  pattern =
      cairo_pattern_create_linear (across.x * from, across.y * from, across.x * to, across.y * to);
  for (guint i = 0; i < seen.size; i++)
    {
      double at = way_across (&stops[i], eye, across, style->scale);

      add_colour_stop (pattern, (at - from) / (to - from),
                       tone_at_stop (polygon, &stops[i], style, eye));
    }
  return pattern;
}

cairo_pattern_t *
bf_formed_surface_pattern (const BfFormedStack *stack,
                           guint piece,
                           const BfFormedStyle *style,
                           const BfFrame *eye,
                           double finest)
{
  const BfFormedPolygon *polygon =
      bf_formed_polygon (stack->scene, bf_formed_piece (stack, piece)->polygon);

  if (polygon->band >= 0)
    return gradient (stack->scene, polygon, style, eye, finest);
  return solid (bf_formed_tone (style, polygon->side, in_picture (eye, polygon->normal),
                                tint_at (polygon, style, 1.0)));
}
