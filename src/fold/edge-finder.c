/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/edge-finder.h"

/* Where an edge's box begins, from the left. */
typedef struct
{
  double left_mm;
  guint edge;
} Begin;

struct BfEdgeFinder
{
  const GArray *edges;
  GArray *begins; /* Begin, from the left */
  double widest_mm;
};

static int
compare_begins (gconstpointer a, gconstpointer b)
{
  double x = ((const Begin *)a)->left_mm, y = ((const Begin *)b)->left_mm;

  return (x > y) - (x < y);
}

static int
compare_places (gconstpointer a, gconstpointer b)
{
  guint x = *(const guint *)a, y = *(const guint *)b;

  return (x > y) - (x < y);
}

static const BfBox *
box_at (const BfEdgeFinder *finder, guint edge)
{
  return &g_array_index (finder->edges, BfEdge, edge).box;
}

BfEdgeFinder *
bf_edge_finder_new (const GArray *edges)
{
  BfEdgeFinder *finder = g_new0 (BfEdgeFinder, 1);

  finder->edges = edges;
  finder->begins = g_array_sized_new (FALSE, FALSE, sizeof (Begin), edges->len);
  for (guint i = 0; i < edges->len; i++)
    {
      const BfBox *box = box_at (finder, i);
      Begin begin = { box->min.x, i };

      g_array_append_val (finder->begins, begin);
      finder->widest_mm = MAX (finder->widest_mm, box->max.x - box->min.x);
    }
  g_array_sort (finder->begins, compare_begins);
  return finder;
}

void
bf_edge_finder_free (BfEdgeFinder *finder)
{
  g_array_unref (finder->begins);
  g_free (finder);
}

/* The first that begins no further left than that. */
static guint
first_from (const BfEdgeFinder *finder, double left_mm)
{
  guint low = 0, high = finder->begins->len;

  while (low < high)
    {
      guint middle = low + (high - low) / 2;

      if (g_array_index (finder->begins, Begin, middle).left_mm < left_mm)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

GArray *
bf_edge_finder_within (const BfEdgeFinder *finder, const BfBox *box, double within_mm)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (guint));
  double right_mm = box->max.x + within_mm;

  for (guint i = first_from (finder, box->min.x - within_mm - finder->widest_mm);
       i < finder->begins->len && g_array_index (finder->begins, Begin, i).left_mm <= right_mm; i++)
    {
      guint edge = g_array_index (finder->begins, Begin, i).edge;

      if (bf_box_gap (box, box_at (finder, edge)) <= within_mm)
        g_array_append_val (found, edge);
    }
  g_array_sort (found, compare_places);
  return found;
}
