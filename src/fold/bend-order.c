/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bend-order.h"

#include "core/tolerance.h"
#include "fold/formed.h"
#include "fold/layout.h"

/* A bend turned this far is a hem. */
#define HEM_RAD (G_PI - 1e-6)

/* Two bends face each other when the sine between them is less. */
#define FACING_SINE 0.05

/* Lengths that differ by less are alike. */
#define ALIKE_MM 0.01

typedef struct
{
  const BfFold *fold;
  BfReachTest *test;
  gboolean *made; /* by bend: not opened yet */
  int opened;     /* the bend that was opened last, or −1 */
} Search;

static guint
depth_of (const BfFold *fold, guint face)
{
  guint depth = 0;

  for (int i = (int)face; i > 0; i = bf_fold_face (fold, (guint)i)->parent)
    depth++;
  return depth;
}

static BfVec2
direction_of (const BfBendResult *bend)
{
  return bf_vec2_unit (bf_vec2_sub (bend->line[1], bend->line[0]));
}

/* TRUE where the bend's wall stands across from the one that was opened last. */
static gboolean
faces_last (const Search *search, const BfBendResult *bend)
{
  const BfBendResult *last;
  BfVec2 a, b;

  if (search->opened < 0)
    return FALSE;
  last = bf_fold_bend (search->fold, (guint)search->opened);
  a = direction_of (bend);
  b = direction_of (last);
  return bf_fold_face (search->fold, bend->face)->parent ==
             bf_fold_face (search->fold, last->face)->parent &&
         fabs (bf_vec2_cross (a, b)) < FACING_SINE && bf_vec2_dot (a, b) < 0.0;
}

/* Negative where a is to be opened before b. */
static int
compare_bends (gconstpointer x, gconstpointer y, gpointer data)
{
  const Search *search = data;
  guint i = *(const guint *)x, k = *(const guint *)y;
  const BfBendResult *a = bf_fold_bend (search->fold, i), *b = bf_fold_bend (search->fold, k);
  int hem = (a->angle_rad >= HEM_RAD) - (b->angle_rad >= HEM_RAD);
  int depth = (int)depth_of (search->fold, a->face) - (int)depth_of (search->fold, b->face);
  int facing = faces_last (search, b) - faces_last (search, a);
  double longer =
      bf_vec2_distance (a->line[0], a->line[1]) - bf_vec2_distance (b->line[0], b->line[1]);

  if (hem != 0)
    return hem;
  if (depth != 0)
    return depth;
  if (facing != 0)
    return facing;
  if (fabs (longer) > ALIKE_MM)
    return longer > 0.0 ? 1 : -1;
  return (int)k - (int)i;
}

/* Opens the first that could be the last to be made; where none could, the first. */
static BfBendStep
open_one (Search *search, const GArray *left)
{
  BfBendStep step, stuck = { 0 };

  for (guint i = 0; i < left->len; i++)
    {
      step.bend = g_array_index (left, guint, i);
      search->made[step.bend] = FALSE;
      step.reach = bf_reach_try (search->test, step.bend, search->made);
      if (step.reach.fault == BF_REACH_FREE)
        return step;
      search->made[step.bend] = TRUE;
      if (i == 0)
        stuck = step;
    }
  search->made[stuck.bend] = FALSE;
  return stuck;
}

static void
drop (GArray *left, guint bend)
{
  for (guint i = 0; i < left->len; i++)
    if (g_array_index (left, guint, i) == bend)
      {
        g_array_remove_index (left, i);
        return;
      }
}

GArray *
bf_bend_order (const BfFold *fold)
{
  g_autoptr (BfReachTest) test = bf_reach_test_new (fold);
  g_autofree gboolean *made = g_new (gboolean, fold->bends->len + 1);
  g_autoptr (GArray) left = g_array_new (FALSE, FALSE, sizeof (guint));
  GArray *order = g_array_new (FALSE, FALSE, sizeof (BfBendStep));
  Search search = { fold, test, made, -1 };

  for (guint i = 0; i < fold->bends->len; i++)
    {
      made[i] = TRUE;
      g_array_append_val (left, i);
    }
  while (left->len > 0)
    {
      BfBendStep step;

      g_array_sort_with_data (left, compare_bends, &search);
      step = open_one (&search, left);
      drop (left, step.bend);
      search.opened = (int)step.bend;
      g_array_prepend_val (order, step);
    }
  return order;
}

void
bf_fold_formed_after (const BfFold *fold, guint n_made, BfFormed *formed)
{
  g_autofree double *fractions = g_new0 (double, fold->bends->len + 1);

  for (guint i = 0; i < MIN (n_made, fold->order->len); i++)
    fractions[bf_fold_bend_step (fold, i)->bend] = 1.0;
  bf_formed_build_each (fold->layout, fold->faces, fractions, formed);
}
