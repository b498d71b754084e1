/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/json-text.h"
#include "core/part-file.h"
#include "core/part-read.h"

/* Ids to indices of flanges, counted from 1. */
static guint
find_id (GHashTable *ids, const char *id)
{
  return GPOINTER_TO_UINT (g_hash_table_lookup (ids, id));
}

static gboolean fail (GError **error, const char *format, ...) G_GNUC_PRINTF (2, 3);

static gboolean
fail (GError **error, const char *format, ...)
{
  va_list args;
  g_autofree char *message = NULL;

  va_start (args, format);
  message = g_strdup_vprintf (format, args);
  va_end (args);
  bf_flatten_controls (message);
  g_set_error_literal (error, BF_PART_ERROR, BF_PART_ERROR_MEMBER, message);
  return FALSE;
}

static gboolean
collect_ids (const BfPart *part, GHashTable *ids, GError **error)
{
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    {
      const char *id = bf_part_flange (part, i)->id;

      if (*id == '\0')
        /* Translators: %u counts flanges from 0. */
        return fail (error, _ ("flanges[%u].id: expected a name, found an empty text"), i);
      if (g_str_equal (id, "base"))
        /* Translators: %u counts flanges from 0; "base" is a word of the file format. */
        return fail (error, _ ("flanges[%u].id: \"base\" is the base's own name"), i);
      if (!g_hash_table_insert (ids, (gpointer)id, GUINT_TO_POINTER (i + 1)))
        /* Translators: %u counts flanges from 0, %s is a flange's name. */
        return fail (error, _ ("flanges[%u].id: another flange is named \"%s\" too"), i, id);
    }
  return TRUE;
}

static gboolean
check_on (GHashTable *ids, const char *list, guint i, const char *on, GError **error)
{
  if (g_str_equal (on, "base") || find_id (ids, on) != 0)
    return TRUE;
  /* Translators: the name of a list in the file, a place in it, and a name not found. */
  return fail (error, _ ("%s[%u].on: expected \"base\" or a flange's id, found \"%s\""), list, i,
               on);
}

static gboolean
check_edge (const BfPart *part, guint i, GError **error)
{
  const BfFlange *flange = bf_part_flange (part, i);
  gboolean on_base = g_str_equal (flange->on, "base");
  guint n = bf_part_n_points (part);

  if (on_base && flange->edge != BF_EDGE_INDEX)
    /* Translators: which flange, counted from 0; the last edge of the base. */
    return fail (error,
                 _ ("flanges[%u].edge: expected the number of an edge of the base (0 to %u)"), i,
                 n - 1);
  if (on_base && flange->edge_index >= n)
    /* Translators: which flange, counted from 0; how many edges; the last one; the one found. */
    return fail (error, _ ("flanges[%u].edge: the base has %u edges (0 to %u), found %u"), i, n,
                 n - 1, flange->edge_index);
  if (!on_base && flange->edge == BF_EDGE_INDEX)
    /* Translators: which flange, counted from 0; the number found. Tip, start and end are words of
     * the file format. */
    return fail (error, _ ("flanges[%u].edge: expected tip, start or end on a flange, found %u"), i,
                 flange->edge_index);
  return TRUE;
}

/* Walks from a flange to the base. A flange met on an earlier walk leads there; one met twice on
 * this walk does not. */
static gboolean
check_way_to_base (const BfPart *part, GHashTable *ids, guint *walks, guint first, GError **error)
{
  guint at = first + 1;

  while (at != 0 && walks[at - 1] == 0)
    {
      walks[at - 1] = first + 1;
      at = find_id (ids, bf_part_flange (part, at - 1)->on);
    }
  if (at != 0 && walks[at - 1] == first + 1)
    /* Translators: which flange, counted from 0; its name; the flange it hangs on. */
    return fail (error, _ ("flanges[%u].on: \"%s\" hangs on itself, by way of \"%s\""), at - 1,
                 bf_part_flange (part, at - 1)->id, bf_part_flange (part, at - 1)->on);
  return TRUE;
}

static gboolean
check_flanges (const BfPart *part, GHashTable *ids, GError **error)
{
  g_autofree guint *walks = g_new0 (guint, bf_part_n_flanges (part) + 1);

  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    if (!check_on (ids, "flanges", i, bf_part_flange (part, i)->on, error) ||
        !check_edge (part, i, error))
      return FALSE;
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    if (!check_way_to_base (part, ids, walks, i, error))
      return FALSE;
  return TRUE;
}

static gboolean
check_pinned (const BfPart *part, GError **error)
{
  guint n = bf_part_n_points (part);

  for (guint i = 0; i < part->pinned_edges->len; i++)
    if (g_array_index (part->pinned_edges, guint, i) >= n)
      /* Translators: how many edges; the last one; the one found. */
      return fail (error, _ ("base.pinned: the base has %u edges (0 to %u), found %u"), n, n - 1,
                   g_array_index (part->pinned_edges, guint, i));
  return TRUE;
}

/* The corner is there, and stands in its list once. list: the name of the list in the file. */
static gboolean
check_corner (
    const BfCorner *corner, guint n_corners, GHashTable *seen, const char *place, GError **error)
{
  g_autofree char *key = g_strdup_printf ("%u %s", corner->at, corner->on);

  if (corner->at >= n_corners)
    /* Translators: a place in the file; how many corners there are; the last one's number; the
     * number found. */
    return fail (error, _ ("%s.at: there are %u corners (0 to %u), found %u"), place, n_corners,
                 n_corners - 1, corner->at);
  if (!g_hash_table_add (seen, g_steal_pointer (&key)))
    /* Translators: a place in the file. */
    return fail (error, _ ("%s.at: this corner stands there twice"), place);
  return TRUE;
}

static gboolean
check_corners (
    const BfPart *part, GHashTable *ids, GPtrArray *corners, const char *list, GError **error)
{
  g_autoptr (GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint i = 0; i < corners->len; i++)
    {
      const BfCorner *corner = g_ptr_array_index (corners, i);
      guint n_corners = g_str_equal (corner->on, "base") ? bf_part_n_points (part) : 2;
      g_autofree char *place = g_strdup_printf ("%s[%u]", list, i);

      if (!check_on (ids, list, i, corner->on, error) ||
          !check_corner (corner, n_corners, seen, place, error))
        return FALSE;
    }
  return TRUE;
}

/* Two flanges that are there. */
static gboolean
check_parted (const BfPart *part, GHashTable *ids, guint i, GError **error)
{
  const BfParted *parted = g_ptr_array_index (part->parted, i);

  for (guint k = 0; k < 2; k++)
    if (find_id (ids, parted->ids[k]) == 0)
      /* Translators: a place in a list of the file, counted from 0, and a name not found. */
      return fail (error, _ ("parted[%u][%u]: expected a flange's id, found \"%s\""), i, k,
                   parted->ids[k]);
  if (g_str_equal (parted->ids[0], parted->ids[1]))
    /* Translators: a place in a list of the file, counted from 0, and a flange's name. */
    return fail (error, _ ("parted[%u]: expected two flanges, found \"%s\" twice"), i,
                 parted->ids[0]);
  return TRUE;
}

gboolean
bf_part_check_references (const BfPart *part, GError **error)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);

  if (!collect_ids (part, ids, error) || !check_flanges (part, ids, error) ||
      !check_pinned (part, error) ||
      !check_corners (part, ids, part->base_corners, "base.corners", error) ||
      !check_corners (part, ids, part->corners, "corners", error))
    return FALSE;
  for (guint i = 0; i < part->openings->len; i++)
    {
      const BfOpening *opening = g_ptr_array_index (part->openings, i);

      if (!check_on (ids, "openings", i, opening->on, error))
        return FALSE;
    }
  for (guint i = 0; i < part->parted->len; i++)
    if (!check_parted (part, ids, i, error))
      return FALSE;
  return TRUE;
}
