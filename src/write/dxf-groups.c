/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/dxf-groups.h"

#include <string.h>

#include "write/numbers.h"

#define LONGEST_VALUE 250 /* bytes; the release allows 255 */

void
bf_dxf_init (BfDxf *dxf, double scale)
{
  g_return_if_fail (dxf != NULL);
  g_return_if_fail (scale > 0.0);

  *dxf = (BfDxf){ .text = g_string_new (NULL), .scale = scale };
}

char *
bf_dxf_finish (BfDxf *dxf)
{
  g_return_val_if_fail (dxf != NULL, NULL);

  return g_string_free (g_steal_pointer (&dxf->text), FALSE);
}

static void
append_code (BfDxf *dxf, int code)
{
  g_string_append_printf (dxf->text, "%3d\n", code);
}

void
bf_dxf_string (BfDxf *dxf, int code, const char *value)
{
  append_code (dxf, code);
  g_string_append_printf (dxf->text, "%s\n", value);
}

void
bf_dxf_integer (BfDxf *dxf, int code, int value)
{
  append_code (dxf, code);
  g_string_append_printf (dxf->text, "%6d\n", value);
}

/* A whole number keeps ".0": that tells a reader that the group is a real one. */
void
bf_dxf_number (BfDxf *dxf, int code, double value)
{
  gsize start;

  append_code (dxf, code);
  start = dxf->text->len;
  bf_append_decimal (dxf->text, value);
  if (strchr (dxf->text->str + start, '.') == NULL)
    g_string_append (dxf->text, ".0");
  g_string_append_c (dxf->text, '\n');
}

void
bf_dxf_length (BfDxf *dxf, int code, double length_mm)
{
  bf_dxf_number (dxf, code, length_mm * dxf->scale);
}

void
bf_dxf_point (BfDxf *dxf, int n, BfVec2 point)
{
  bf_dxf_length (dxf, 10 + n, point.x);
  bf_dxf_length (dxf, 20 + n, point.y);
  bf_dxf_number (dxf, 30 + n, 0.0);
}

/* Two "%" and a "^" begin codes of the format: the one is pulled apart, the other written as its
 * own code. What lies past the first 65536 characters has no code. */
static void
append_character (GString *text, gunichar c)
{
  gboolean follows = text->len > 0 && text->str[text->len - 1] == '%';

  if (follows && (c == '%' || c == 0xB0))
    g_string_append_c (text, ' ');
  if (c == 0xB0)
    g_string_append (text, "%%d");
  else if (c == '^')
    g_string_append (text, "^ ");
  else if (c < 0x20 || c == 0x7F)
    g_string_append_c (text, ' ');
  else if (c < 0x7F)
    g_string_append_c (text, (char)c);
  else if (c <= 0xFFFF)
    g_string_append_printf (text, "\\U+%04X", c);
  else
    g_string_append_c (text, '?');
}

void
bf_dxf_words (BfDxf *dxf, int code, const char *words)
{
  gsize start;

  append_code (dxf, code);
  start = dxf->text->len;
  for (const char *c = words; *c != '\0' && dxf->text->len - start < LONGEST_VALUE - 7;
       c = g_utf8_next_char (c))
    append_character (dxf->text, g_utf8_get_char (c));
  g_string_append_c (dxf->text, '\n');
}

void
bf_dxf_begin_section (BfDxf *dxf, const char *name)
{
  bf_dxf_string (dxf, 0, "SECTION");
  bf_dxf_string (dxf, 2, name);
}

void
bf_dxf_end_section (BfDxf *dxf)
{
  bf_dxf_string (dxf, 0, "ENDSEC");
}

void
bf_dxf_begin_table (BfDxf *dxf, const char *name, int n_entries)
{
  bf_dxf_string (dxf, 0, "TABLE");
  bf_dxf_string (dxf, 2, name);
  bf_dxf_integer (dxf, 70, n_entries);
}

void
bf_dxf_end_table (BfDxf *dxf)
{
  bf_dxf_string (dxf, 0, "ENDTAB");
}

void
bf_dxf_entity (BfDxf *dxf, const char *type, const char *layer)
{
  bf_dxf_string (dxf, 0, type);
  bf_dxf_string (dxf, 8, layer);
}
