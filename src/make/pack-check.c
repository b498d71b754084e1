/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/pack-check.h"

#include <string.h>

#include "core/tolerance.h"
#include "core/units.h"
#include "fold/ring-distance.h"

#define LEAST_BRIDGE_MM 3.0
#define BRIDGE_THICKNESSES 2.0
#define SAGITTA_MM 0.01
#define NAME_BYTES_MAX 80 /* of the part's name: some file systems take 255 in all */
#define INCH_DECIMALS 4
#define MM_DECIMALS 3

/* ---- holes and bridges -------------------------------------------------------------------- */

/* The least width of a convex hull of the points, across any of the ring's edges. */
static double
width_across (const GArray *points)
{
  double least = INFINITY;

  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 a = g_array_index (points, BfVec2, i);
      BfVec2 b = g_array_index (points, BfVec2, (i + 1) % points->len);
      BfVec2 along = bf_vec2_unit (bf_vec2_sub (b, a));
      double low = 0.0, high = 0.0;

      if (bf_vec2_distance (a, b) < BF_TOLERANCE_SIZE_MM)
        continue;
      for (guint k = 0; k < points->len; k++)
        {
          double off = bf_vec2_cross (along, bf_vec2_sub (g_array_index (points, BfVec2, k), a));

          low = MIN (low, off);
          high = MAX (high, off);
        }
      least = MIN (least, high - low);
    }
  return least;
}

static double
hole_width_mm (const BfRing *ring)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  double radius;

  if (bf_ring_is_circle (ring, NULL, &radius))
    return 2.0 * radius;
  bf_ring_flatten (ring, SAGITTA_MM, points);
  return width_across (points);
}

static double
least_bridge_mm (const BfBlank *blank)
{
  double least = INFINITY;

  for (guint i = 0; i < blank->rings->len; i++)
    {
      g_auto (BfNearRing) one = { .ring = NULL };

      bf_near_ring_init (&one, bf_blank_ring (blank, i));
      for (guint k = i + 1; k < blank->rings->len; k++)
        {
          g_auto (BfNearRing) other = { .ring = NULL };

          bf_near_ring_init (&other, bf_blank_ring (blank, k));
          least = MIN (least,
                       bf_near_ring_distance (&one, &other, MIN (least, BF_LENGTH_MAX_MM), NULL));
        }
    }
  return least;
}

void
bf_pack_check (const BfFold *fold, BfPackCheck *check)
{
  double t = fold->part->metal.thickness_mm;

  *check = (BfPackCheck){ .hole_mm = INFINITY,
                          .hole_needed_mm = t,
                          .bridge_mm = least_bridge_mm (&fold->blank),
                          .bridge_needed_mm = MAX (BRIDGE_THICKNESSES * t, LEAST_BRIDGE_MM) };
  for (guint i = fold->blank.n_outer; i < fold->blank.rings->len; i++)
    check->hole_mm = MIN (check->hole_mm, hole_width_mm (bf_blank_ring (&fold->blank, i)));
  /* The hull that a width is measured across hides how narrow a keyhole's neck is. */
  for (guint i = 0; i < fold->openings->len; i++)
    if (bf_fold_opening (fold, i)->asked->shape == BF_OPENING_KEYHOLE)
      check->hole_mm = MIN (check->hole_mm, bf_fold_opening (fold, i)->asked->width_mm);
}

/* ---- the name ----------------------------------------------------------------------------- */

/* What file systems take amiss becomes a hyphen; blanks and points at the ends go. */
static char *
safe_name (const char *name)
{
  GString *safe = g_string_new (NULL);

  for (const char *c = name; *c != '\0'; c = g_utf8_next_char (c))
    {
      gunichar letter = g_utf8_get_char (c);

      if (safe->len >= NAME_BYTES_MAX)
        break;
      if (letter < 0x20 || letter == 0x7f || strchr ("/\\:*?\"<>|", (int)*c) != NULL)
        g_string_append_c (safe, letter < 0x20 || letter == 0x7f ? ' ' : '-');
      else
        g_string_append_unichar (safe, letter);
    }
  g_strstrip (safe->str);
  g_string_truncate (safe, strlen (safe->str));
  while (safe->len > 0 && strchr (". ", safe->str[safe->len - 1]) != NULL)
    g_string_truncate (safe, safe->len - 1);
  while (safe->len > 0 && safe->str[0] == '.')
    g_string_erase (safe, 0, 1);
  return g_string_free (safe, FALSE);
}

/* "1.5", with a point in every locale and no zeros behind. */
static char *
plain_number (double value, int decimals)
{
  char text[G_ASCII_DTOSTR_BUF_SIZE], format[8];
  char *end;

  g_snprintf (format, sizeof format, "%%.%df", decimals);
  g_ascii_formatd (text, sizeof text, format, value);
  end = text + strlen (text) - 1;
  while (end > text && *end == '0')
    *end-- = '\0';
  if (*end == '.')
    *end = '\0';
  return g_strdup (text);
}

char *
bf_pack_name (const BfPart *part)
{
  gboolean inches = part->units == BF_UNITS_IN;
  g_autofree char *name = safe_name (part->name != NULL ? part->name : "");
  g_autofree char *metal =
      safe_name (part->metal.material != NULL ? part->metal.material : "metal");
  g_autofree char *thickness =
      plain_number (part->metal.thickness_mm / (inches ? BF_MM_PER_INCH : 1.0),
                    inches ? INCH_DECIMALS : MM_DECIMALS);

  g_strdelimit (metal, "-", ' ');
  return g_strdup_printf ("%s, %u off, %s %s %s", name[0] != '\0' ? name : "Part", part->quantity,
                          metal, thickness, inches ? "in" : "mm");
}
