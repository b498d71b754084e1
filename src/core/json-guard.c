/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/json-guard.h"

#include <math.h>
#include <string.h>

#include <glib/gi18n.h>

#include "core/json-text.h"
#include "core/part-file.h"

/* More digits than this may not fit the 64 bits that a parser keeps an integer in. */
#define MOST_DIGITS 18

/* What is left to look at. Once error is set nothing more is read. */
typedef struct
{
  const char *start, *at, *end;
  guint depth, max_depth;
  GError *error;
} Scan;

static gboolean scan_value (Scan *scan);

static void
find_place (const Scan *scan, const char *where, guint *line, guint *column)
{
  const char *line_start = scan->start;

  *line = 1;
  for (const char *p = scan->start; p < where; p++)
    if (*p == '\n')
      {
        *line += 1;
        line_start = p + 1;
      }
  *column = (guint)g_utf8_strlen (line_start, where - line_start) + 1;
}

static gboolean
fail_as (Scan *scan, BfPartError code, const char *where, const char *what)
{
  guint line, column;
  g_autofree char *words = g_strdup (what);

  bf_flatten_controls (words);
  find_place (scan, where, &line, &column);
  /* Translators: a place in a file, and what is wrong there. */
  g_set_error (&scan->error, BF_PART_ERROR, (int)code, _ ("line %u, column %u: %s"), line, column,
               words);
  return FALSE;
}

static gboolean
fail (Scan *scan, const char *where, const char *what)
{
  return fail_as (scan, BF_PART_ERROR_SYNTAX, where, what);
}

static gboolean
fail_expected (Scan *scan, const char *expected)
{
  g_autofree char *found = NULL;
  g_autofree char *what = NULL;

  if (scan->at == scan->end)
    found = g_strdup (_ ("the end of the file"));
  else
    found = g_strdup_printf ("“%.*s”", (int)(g_utf8_next_char (scan->at) - scan->at), scan->at);
  /* Translators: the first is what should stand there, the second what does. */
  what = g_strdup_printf (_ ("expected %s, found %s"), expected, found);
  return fail (scan, scan->at, what);
}

static char
peek (const Scan *scan)
{
  return scan->at < scan->end ? *scan->at : '\0';
}

static gboolean
take (Scan *scan, char c)
{
  if (peek (scan) != c || scan->at == scan->end)
    return FALSE;
  scan->at++;
  return TRUE;
}

static gboolean
skip_space (Scan *scan)
{
  while (scan->at < scan->end && strchr (" \t\r\n", *scan->at) != NULL)
    scan->at++;
  if (peek (scan) == '/' || peek (scan) == '#')
    return fail (scan, scan->at, _ ("a comment; JSON has none"));
  return TRUE;
}

static gboolean
scan_hex4 (Scan *scan, gunichar *value)
{
  *value = 0;
  for (int i = 0; i < 4; i++, scan->at++)
    {
      if (!g_ascii_isxdigit (peek (scan)))
        return fail_expected (scan, _ ("four hex digits after \\u"));
      *value = *value * 16 + (gunichar)g_ascii_xdigit_value (*scan->at);
    }
  return TRUE;
}

/* \uXXXX, or two of them that make up one character. */
static gboolean
scan_code (Scan *scan, GString *out)
{
  const char *where = scan->at - 2;
  gunichar high, low;

  if (!scan_hex4 (scan, &high))
    return FALSE;
  if (high == 0)
    return fail (scan, where, _ ("a string with a NUL in it"));
  if (high >= 0xd800 && high < 0xdc00 && take (scan, '\\') && take (scan, 'u'))
    {
      if (!scan_hex4 (scan, &low))
        return FALSE;
      if (low < 0xdc00 || low > 0xdfff)
        return fail (scan, where, _ ("half a character (a lone surrogate)"));
      high = 0x10000 + ((high - 0xd800) << 10) + (low - 0xdc00);
    }
  if (high >= 0xd800 && high < 0xe000)
    return fail (scan, where, _ ("half a character (a lone surrogate)"));
  g_string_append_unichar (out, high);
  return TRUE;
}

static gboolean
scan_escape (Scan *scan, GString *out)
{
  static const char letters[] = "\"\\/bfnrt", meanings[] = "\"\\/\b\f\n\r\t";
  const char *letter = scan->at < scan->end ? strchr (letters, *scan->at) : NULL;

  if (take (scan, 'u'))
    return scan_code (scan, out);
  if (letter == NULL || *letter == '\0')
    return fail_expected (scan, _ ("one of \" \\ / b f n r t u after a backslash"));
  g_string_append_c (out, meanings[letter - letters]);
  scan->at++;
  return TRUE;
}

/* The text of a string, its escapes taken back. Returns: (transfer full), NULL with an error. */
static char *
scan_string (Scan *scan)
{
  const char *where = scan->at;
  g_autoptr (GString) out = g_string_new (NULL);

  scan->at++;
  while (!take (scan, '"'))
    {
      if (scan->at == scan->end || *scan->at == '\n')
        fail (scan, where, _ ("a string that is not closed"));
      else if ((guchar)*scan->at < 0x20)
        fail (scan, scan->at, _ ("a control character in a string"));
      else if (take (scan, '\\'))
        scan_escape (scan, out);
      else
        g_string_append_c (out, *scan->at++);
      if (scan->error != NULL)
        return NULL;
    }
  return g_string_free (g_steal_pointer (&out), FALSE);
}

static guint
skip_digits (Scan *scan)
{
  guint n = 0;

  for (; g_ascii_isdigit (peek (scan)); scan->at++)
    n++;
  return n;
}

static gboolean
check_number (Scan *scan, const char *where, gboolean whole, guint digits)
{
  g_autofree char *text = g_strndup (where, (gsize)(scan->at - where));

  if (whole && digits > MOST_DIGITS)
    return fail (scan, where, _ ("an integer of more than 18 digits"));
  if (!isfinite (g_ascii_strtod (text, NULL)))
    return fail (scan, where, _ ("a number that is too large"));
  return TRUE;
}

static gboolean
scan_number (Scan *scan)
{
  const char *where = scan->at;
  gboolean whole = TRUE;
  guint digits;

  take (scan, '-');
  if (peek (scan) == '0' && scan->at + 1 < scan->end && g_ascii_isalnum (scan->at[1]) &&
      g_ascii_tolower (scan->at[1]) != 'e')
    return fail (scan, where, _ ("a number that is not decimal or begins with 0"));
  digits = skip_digits (scan);
  if (digits == 0)
    return fail_expected (scan, _ ("a digit"));
  if (take (scan, '.'))
    {
      whole = FALSE;
      if (skip_digits (scan) == 0)
        return fail_expected (scan, _ ("a digit"));
    }
  if (take (scan, 'e') || take (scan, 'E'))
    {
      whole = FALSE;
      if (!take (scan, '+'))
        take (scan, '-');
      if (skip_digits (scan) == 0)
        return fail_expected (scan, _ ("a digit"));
    }
  return check_number (scan, where, whole, digits);
}

static gboolean
scan_literal (Scan *scan)
{
  static const char *const literals[] = { "true", "false", "null" };
  gsize left = (gsize)(scan->end - scan->at);

  for (guint i = 0; i < G_N_ELEMENTS (literals); i++)
    {
      gsize length = strlen (literals[i]);

      if (left >= length && strncmp (scan->at, literals[i], length) == 0)
        {
          scan->at += length;
          return TRUE;
        }
    }
  return fail_expected (scan, _ ("a value"));
}

static gboolean
scan_member (Scan *scan, GHashTable *seen)
{
  const char *where;
  g_autofree char *key = NULL;

  if (!skip_space (scan))
    return FALSE;
  where = scan->at;
  if (peek (scan) != '"')
    return fail_expected (scan, _ ("a member's name in quotes"));
  key = scan_string (scan);
  if (key == NULL)
    return FALSE;
  if (!g_hash_table_add (seen, g_strdup (key)))
    {
      /* Translators: a member of a file's object, by name. */
      g_autofree char *what = g_strdup_printf (_ ("the member “%s” stands there twice"), key);
      return fail (scan, where, what);
    }
  if (!skip_space (scan))
    return FALSE;
  if (!take (scan, ':'))
    return fail_expected (scan, "“:”");
  return scan_value (scan);
}

/* TRUE while there is another item; closes the list at its bracket. */
static gboolean
scan_comma (Scan *scan, char close, gboolean *more)
{
  if (!skip_space (scan))
    return FALSE;
  *more = !take (scan, close);
  if (*more && !take (scan, ','))
    return fail_expected (scan, close == ']' ? _ ("“,” or “]”") : _ ("“,” or “}”"));
  return TRUE;
}

static gboolean
scan_items (Scan *scan, char close)
{
  g_autoptr (GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  gboolean more = TRUE;

  scan->at++;
  if (!skip_space (scan))
    return FALSE;
  if (take (scan, close))
    return TRUE;
  while (more)
    if (!(close == '}' ? scan_member (scan, seen) : scan_value (scan)) ||
        !scan_comma (scan, close, &more))
      return FALSE;
  return TRUE;
}

static gboolean
scan_nested (Scan *scan, char close)
{
  gboolean good;

  if (scan->depth >= scan->max_depth)
    return fail_as (scan, BF_PART_ERROR_TOO_LARGE, scan->at,
                    _ ("lists and objects nested too deeply"));
  scan->depth++;
  good = scan_items (scan, close);
  scan->depth--;
  return good;
}

static gboolean
scan_value (Scan *scan)
{
  if (!skip_space (scan))
    return FALSE;
  if (peek (scan) == '{')
    return scan_nested (scan, '}');
  if (peek (scan) == '[')
    return scan_nested (scan, ']');
  if (peek (scan) == '"')
    {
      g_autofree char *string = scan_string (scan);
      return string != NULL;
    }
  if (peek (scan) == '-' || g_ascii_isdigit (peek (scan)))
    return scan_number (scan);
  return scan_literal (scan);
}

static gboolean
scan_text (Scan *scan)
{
  const char *bad;

  if (!g_utf8_validate_len (scan->at, (gsize)(scan->end - scan->at), &bad))
    {
      /* The message must hold no byte of what is not text. */
      return fail (scan, bad, _ ("not UTF-8 text"));
    }
  if (!scan_value (scan) || !skip_space (scan))
    return FALSE;
  if (scan->at != scan->end)
    return fail_expected (scan, _ ("nothing more"));
  return TRUE;
}

gboolean
bf_json_guard (const char *text, gsize length, gsize max_bytes, guint max_depth, GError **error)
{
  Scan scan = { text, text, text + length, 0, max_depth, NULL };

  g_return_val_if_fail (text != NULL, FALSE);

  if (length > max_bytes)
    {
      g_autofree char *found = g_strdup_printf ("%" G_GSIZE_FORMAT, length);
      g_autofree char *most = g_strdup_printf ("%" G_GSIZE_FORMAT, max_bytes);

      g_set_error (error, BF_PART_ERROR, BF_PART_ERROR_TOO_LARGE,
                   /* Translators: sizes in bytes. */
                   _ ("the file is too large: %s bytes, at most %s can be read"), found, most);
      return FALSE;
    }
  if (scan_text (&scan))
    return TRUE;
  g_propagate_error (error, scan.error);
  return FALSE;
}
