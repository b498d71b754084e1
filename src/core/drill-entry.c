/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdlib.h>
#include <string.h>

#include <glib/gi18n.h>

#include "core/drills.h"
#include "core/compare.h"
#include "core/length-entry.h"
#include "core/tolerance.h"
#include "core/units.h"

G_DEFINE_QUARK (bf - drill - error - quark, bf_drill_error)

/* What one end of a run is counted in. */
typedef enum
{
  DRILL_LENGTH,
  DRILL_LETTER,
  DRILL_NUMBER,
} DrillKind;

typedef struct
{
  DrillKind kind;
  double value; /* mm, or a letter's place from 0, or a number */
} Drill;

static gboolean
read_number (const char *text, Drill *drill)
{
  char *end;
  long number = text[0] == '#' ? strtol (text + 1, &end, 10) : -1;

  if (number < 0 || *end != '\0' || isnan (bf_drill_number_in ((int)CLAMP (number, 0, 100))))
    return FALSE;
  *drill = (Drill){ DRILL_NUMBER, (double)number };
  return TRUE;
}

static gboolean
read_drill (const char *text, BfUnits units, Drill *drill, GError **error)
{
  BfLengthContext context = { units, NULL };
  char letter = g_ascii_toupper (text[0]);

  if (read_number (text, drill))
    return TRUE;
  if (text[0] != '\0' && text[1] == '\0' && !isnan (bf_drill_letter_in (letter)))
    {
      *drill = (Drill){ DRILL_LETTER, (double)(letter - 'A') };
      return TRUE;
    }
  drill->kind = DRILL_LENGTH;
  return bf_length_parse (text, &context, &drill->value, error);
}

static double
width_of (DrillKind kind, double value)
{
  switch (kind)
    {
    case DRILL_LETTER:
      return bf_drill_letter_in ((char)('A' + (int)lround (value))) * BF_MM_PER_INCH;
    case DRILL_NUMBER:
      return bf_drill_number_in ((int)lround (value)) * BF_MM_PER_INCH;
    case DRILL_LENGTH:
    default:
      return value;
    }
}

static gboolean
refuse (GError **error, BfDrillError code, const char *what)
{
  g_set_error_literal (error, BF_DRILL_ERROR, (int)code, what);
  return FALSE;
}

static gboolean
add_run (GArray *sizes, const Drill *first, const Drill *last, double step, GError **error)
{
  double span = last->value - first->value;
  guint n;

  if (first->kind != last->kind || !(step > 0.0) || span < 0.0)
    return refuse (error, BF_DRILL_ERROR_STEP,
                   _ ("A run of drills goes up by a step: “1..13 + 0.5”, “A..Z”, “#1..#60”."));
  if (span / step + sizes->len >= BF_DRILLS_MAX)
    return refuse (error, BF_DRILL_ERROR_MANY, _ ("That is more drills than a box can have."));
  n = (guint)floor (span / step + BF_TOLERANCE_SIZE_MM) + 1;
  for (guint i = 0; i < n; i++)
    {
      double width_mm = width_of (first->kind, first->value + i * step);
      if (!(width_mm > 0.0))
        return refuse (error, BF_DRILL_ERROR_STEP, _ ("A drill is wider than nothing."));
      g_array_append_val (sizes, width_mm);
    }
  return TRUE;
}

/* "1..13 + 0.5", "A..Z": text is cut up. */
static gboolean
read_run (char *text, char *dots, BfUnits units, GArray *sizes, GError **error)
{
  char *plus = strchr (dots, '+');
  Drill first, last, step = { DRILL_LENGTH, 1.0 };

  dots[0] = '\0';
  if (plus != NULL)
    *plus = '\0';
  if (!read_drill (g_strstrip (text), units, &first, error) ||
      !read_drill (g_strstrip (dots + 2), units, &last, error))
    return FALSE;
  if (plus == NULL && first.kind == DRILL_LENGTH)
    step.value = 0.0;
  if (plus != NULL && !read_drill (g_strstrip (plus + 1), units, &step, error))
    return FALSE;
  if (plus != NULL && (step.kind != DRILL_LENGTH || first.kind != DRILL_LENGTH))
    step.value = 0.0;
  return add_run (sizes, &first, &last, step.value, error);
}

static gboolean
read_item (char *text, BfUnits units, GArray *sizes, GError **error)
{
  char *dots = strstr (g_strstrip (text), "..");
  Drill drill;

  if (*text == '\0')
    return TRUE;
  if (dots != NULL)
    return read_run (text, dots, units, sizes, error);
  return read_drill (text, units, &drill, error) && add_run (sizes, &drill, &drill, 1.0, error);
}

static void
drop_doubles (GArray *sizes)
{
  g_array_sort (sizes, bf_compare_doubles);
  for (guint i = sizes->len; i-- > 1;)
    if (g_array_index (sizes, double, i) - g_array_index (sizes, double, i - 1) <
        BF_TOLERANCE_SIZE_MM)
      g_array_remove_index (sizes, i);
}

GArray *
bf_drills_parse (const char *text, BfUnits units, GError **error)
{
  g_auto (GStrv) items = NULL;
  g_autoptr (GArray) sizes = g_array_new (FALSE, FALSE, sizeof (double));

  g_return_val_if_fail (text != NULL, NULL);

  items = g_strsplit_set (text, ";\n", -1);
  for (guint i = 0; items[i] != NULL; i++)
    if (!read_item (items[i], units, sizes, error))
      return NULL;
  if (sizes->len == 0)
    {
      refuse (error, BF_DRILL_ERROR_NONE, _ ("Type at least one drill."));
      return NULL;
    }
  drop_doubles (sizes);
  return g_steal_pointer (&sizes);
}

char *
bf_drills_to_text (const GArray *sizes_mm, BfUnits units)
{
  GString *text = g_string_new (NULL);

  g_return_val_if_fail (sizes_mm != NULL, g_string_free (text, FALSE));

  for (guint i = 0; i < sizes_mm->len; i++)
    {
      g_autofree char *size = bf_format_decimal (g_array_index (sizes_mm, double, i), 6);

      g_string_append_printf (text, "%s%s%s", i > 0 ? "; " : "", size,
                              units == BF_UNITS_IN ? " mm" : "");
    }
  return g_string_free (text, FALSE);
}
