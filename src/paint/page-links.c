/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/page-links.h"

#include "core/tolerance.h"

/* Whether two stretches are the same place, and how much two of them share. */
static gboolean
meet (double a, double b)
{
  return fabs (a - b) < BF_TOLERANCE_SIZE_MM;
}

static double
shared_mm (double from, double to, double other_from, double other_to)
{
  return MIN (to, other_to) - MAX (from, other_from);
}

/* On which side of a page's own paper the other's lies; BF_N_SIDES for none. */
static BfPageSide
side_of (const BfBox *a, const BfBox *b)
{
  gboolean beside = shared_mm (a->min.y, a->max.y, b->min.y, b->max.y) > BF_LEAST_MEETING_MM / 2.0;
  gboolean over = shared_mm (a->min.x, a->max.x, b->min.x, b->max.x) > BF_LEAST_MEETING_MM / 2.0;

  if (beside && meet (b->max.x, a->min.x))
    return BF_SIDE_LEFT;
  if (beside && meet (b->min.x, a->max.x))
    return BF_SIDE_RIGHT;
  if (over && meet (b->min.y, a->max.y))
    return BF_SIDE_ABOVE;
  if (over && meet (b->max.y, a->min.y))
    return BF_SIDE_BELOW;
  return BF_N_SIDES;
}

/* Pages are linked to at most two on each side, the upper one or the one further left first. */
static void
link_pages (BfTemplatePlan *plan)
{
  static const BfPageSide seconds[] = { [BF_SIDE_LEFT] = BF_SIDE_LEFT_LOWER,
                                        [BF_SIDE_RIGHT] = BF_SIDE_RIGHT_LOWER,
                                        [BF_SIDE_ABOVE] = BF_SIDE_ABOVE_RIGHT,
                                        [BF_SIDE_BELOW] = BF_SIDE_BELOW_RIGHT };

  for (guint i = 0; i < plan->pages->len; i++)
    {
      BfPlanPage *page = &g_array_index (plan->pages, BfPlanPage, i);

      for (guint side = 0; side < BF_N_SIDES; side++)
        page->neighbour[side] = -1;
      for (guint k = 0; k < plan->pages->len; k++)
        {
          BfPageSide side = side_of (&page->cell, &bf_template_plan_page (plan, k)->cell);

          if (side != BF_N_SIDES)
            page->neighbour[page->neighbour[side] < 0 ? side : seconds[side]] = (int)k;
        }
    }
}

/* Walks from the first page over neighbours; pages not reached are apart. */
static void
find_apart (BfTemplatePlan *plan)
{
  g_autoptr (GArray) open = g_array_new (FALSE, FALSE, sizeof (int));
  int first = 0;

  for (guint i = 0; i < plan->pages->len; i++)
    g_array_index (plan->pages, BfPlanPage, i).is_apart = TRUE;
  g_array_append_val (open, first);
  while (open->len > 0)
    {
      int i = g_array_index (open, int, open->len - 1);
      BfPlanPage *page = &g_array_index (plan->pages, BfPlanPage, i);
      g_array_set_size (open, open->len - 1);
      if (!page->is_apart)
        continue;
      page->is_apart = FALSE;
      for (int side = 0; side < BF_N_SIDES; side++)
        if (page->neighbour[side] >= 0)
          g_array_append_val (open, page->neighbour[side]);
    }
}

void
bf_plan_link_pages (BfTemplatePlan *plan)
{
  link_pages (plan);
  find_apart (plan);
}
