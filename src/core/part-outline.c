/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/part-file.h"
#include "core/segment.h"
#include "core/tolerance.h"

/* Nearer than this two edges touch: the overlays would take the two places for one. */
#define TOUCH_MM (2.0 * BF_TOLERANCE_SNAP_MM)

typedef struct
{
  guint index;
  double least_x, most_x;
} Edge;

/* Two edges meet where each has an end on either side of the other, or where an end of one lies
 * on the other; between those two no case is left that rounding could decide wrongly. */
static gboolean
edges_meet (const BfVec2 a[2], const BfVec2 b[2])
{
  return bf_segments_cross (a[0], a[1], b[0], b[1]) ||
         bf_segment_distance (a[0], b[0], b[1]) < TOUCH_MM ||
         bf_segment_distance (a[1], b[0], b[1]) < TOUCH_MM ||
         bf_segment_distance (b[0], a[0], a[1]) < TOUCH_MM ||
         bf_segment_distance (b[1], a[0], a[1]) < TOUCH_MM;
}

static gboolean fail (GError **error, const char *format, ...) G_GNUC_PRINTF (2, 3);

static gboolean
fail (GError **error, const char *format, ...)
{
  va_list args;

  va_start (args, format);
  g_propagate_error (error,
                     g_error_new_valist (BF_PART_ERROR, BF_PART_ERROR_OUTLINE, format, args));
  va_end (args);
  return FALSE;
}

static gboolean
check_points (const BfPart *part, GError **error)
{
  guint n = bf_part_n_points (part);

  for (guint i = 0; i < n; i++)
    if (bf_vec2_distance (bf_part_point (part, i), bf_part_point (part, i + 1)) < TOUCH_MM)
      /* Translators: %u count the outline's points from 0. */
      return fail (error, _ ("base.outline: points %u and %u are the same"), i, (i + 1) % n);
  return TRUE;
}

/* Edges i and i + 1 share a point, but they may not run back over each other. */
static gboolean
check_neighbours (const BfPart *part, GError **error)
{
  guint n = bf_part_n_points (part);

  for (guint i = 0; i < n; i++)
    {
      BfVec2 a = bf_part_point (part, i), b = bf_part_point (part, i + 1);
      BfVec2 c = bf_part_point (part, i + 2);

      if (bf_segment_distance (c, a, b) < TOUCH_MM || bf_segment_distance (a, b, c) < TOUCH_MM)
        /* Translators: %u count the outline's edges from 0. */
        return fail (error, _ ("base.outline: edges %u and %u lie on each other"), i, (i + 1) % n);
    }
  return TRUE;
}

static int
compare_edges (gconstpointer first, gconstpointer second)
{
  const Edge *a = first, *b = second;

  if (a->least_x < b->least_x)
    return -1;
  return a->least_x > b->least_x;
}

static Edge *
sort_edges (const BfPart *part)
{
  guint n = bf_part_n_points (part);
  Edge *edges = g_new (Edge, n);

  for (guint i = 0; i < n; i++)
    {
      double x = bf_part_point (part, i).x, next_x = bf_part_point (part, i + 1).x;
      edges[i] = (Edge){ i, MIN (x, next_x), MAX (x, next_x) };
    }
  qsort (edges, n, sizeof (Edge), compare_edges);
  return edges;
}

static gboolean
check_pair (const BfPart *part, guint i, guint k, GError **error)
{
  guint n = bf_part_n_points (part);
  BfVec2 a[2] = { bf_part_point (part, i), bf_part_point (part, i + 1) };
  BfVec2 b[2] = { bf_part_point (part, k), bf_part_point (part, k + 1) };

  if ((i + 1) % n == k || (k + 1) % n == i || !edges_meet (a, b))
    return TRUE;
  /* Translators: %u count the outline's edges from 0. */
  return fail (error, _ ("base.outline: edges %u and %u cross or touch"), MIN (i, k), MAX (i, k));
}

gboolean
bf_part_check_outline (const BfPart *part, GError **error)
{
  g_autofree Edge *edges = NULL;
  guint n;

  g_return_val_if_fail (part != NULL, FALSE);

  n = bf_part_n_points (part);
  if (n < 3)
    /* Translators: how many points there are. */
    return fail (error, _ ("base.outline: expected at least 3 points, found %u"), n);
  if (!check_points (part, error) || !check_neighbours (part, error))
    return FALSE;
  edges = sort_edges (part);
  for (guint i = 0; i < n; i++)
    for (guint k = i + 1; k < n && edges[k].least_x <= edges[i].most_x + TOUCH_MM; k++)
      if (!check_pair (part, edges[i].index, edges[k].index, error))
        return FALSE;
  return TRUE;
}
