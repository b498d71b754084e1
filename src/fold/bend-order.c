/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bend-order.h"

#include "core/tolerance.h"
#include "fold/bend-groups.h"
#include "fold/formed.h"
#include "fold/layout.h"

/* A bend turned this far is a hem. */
#define HEM_RAD (G_PI - 1e-6)

/* Two bends face each other when the sine between them is less. */
#define FACING_SINE 0.05

/* Lengths that differ by less are alike. */
#define ALIKE_MM 0.01

/* What its place in the order goes by, but for what was opened last. */
typedef struct
{
  gboolean is_hem;
  guint depth;
  int parent; /* the face that it stands on */
  double length_mm;
  BfVec2 direction;
} Key;

typedef struct
{
  const BfFold *fold;
  BfReachTest *test;
  gboolean *made; /* by bend: not opened yet */
  guint *groups;  /* by bend: see fold/bend-groups.h */
  Key *keys;      /* by bend */
  GArray *left;   /* guint: the bends that are not opened yet */
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

static Key
key_of (const BfFold *fold, guint i)
{
  const BfBendResult *bend = bf_fold_bend (fold, i);

  return (Key){ bend->angle_rad >= HEM_RAD, depth_of (fold, bend->face),
                bf_fold_face (fold, bend->face)->parent,
                bf_vec2_distance (bend->line[0], bend->line[1]),
                bf_vec2_unit (bf_vec2_sub (bend->line[1], bend->line[0])) };
}

/* TRUE where the bend's wall stands across from the one that was opened last. */
static gboolean
faces_last (const Search *search, const Key *bend)
{
  const Key *last;

  if (search->opened < 0)
    return FALSE;
  last = &search->keys[search->opened];
  return bend->parent == last->parent &&
         fabs (bf_vec2_cross (bend->direction, last->direction)) < FACING_SINE &&
         bf_vec2_dot (bend->direction, last->direction) < 0.0;
}

/* Negative where a is to be opened before b. */
static int
compare_bends (gconstpointer x, gconstpointer y, gpointer data)
{
  const Search *search = data;
  guint i = *(const guint *)x, k = *(const guint *)y;
  const Key *a = &search->keys[i], *b = &search->keys[k];
  int hem = a->is_hem - b->is_hem;
  int depth = (int)a->depth - (int)b->depth;
  int facing = faces_last (search, b) - faces_last (search, a);
  double longer = a->length_mm - b->length_mm;

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

static BfBendStep
open_bend (Search *search, guint bend)
{
  search->opened = (int)bend;
  for (guint i = 0; i < search->left->len; i++)
    if (g_array_index (search->left, guint, i) == bend)
      {
        g_array_remove_index (search->left, i);
        break;
      }
  return (BfBendStep){ bend, search->groups[bend],
                       bf_reach_try (search->test, bend, search->made) };
}

/* Of a bend that rises in step with others. */
static gboolean
belongs_to (const Search *search, guint bend, guint other)
{
  return search->groups[bend] == search->groups[other];
}

static void
open_group (Search *search, guint bend, GArray *steps)
{
  gboolean found = TRUE;

  for (guint i = 0; i < search->left->len; i++)
    if (belongs_to (search, bend, g_array_index (search->left, guint, i)))
      search->made[g_array_index (search->left, guint, i)] = FALSE;
  while (found)
    {
      found = FALSE;
      g_array_sort_with_data (search->left, compare_bends, search);
      for (guint i = 0; i < search->left->len && !found; i++)
        {
          guint next = g_array_index (search->left, guint, i);
          BfBendStep step;

          found = belongs_to (search, bend, next);
          if (!found)
            continue;
          step = open_bend (search, next);
          g_array_append_val (steps, step);
        }
    }
}

/* Opens a bend, and all that rise in step with it; appends the steps (BfBendStep). */
static void
open_with_group (Search *search, guint bend, GArray *steps)
{
  BfBendStep step;

  if (search->groups[bend] > 0)
    {
      open_group (search, bend, steps);
      return;
    }
  search->made[bend] = FALSE;
  step = open_bend (search, bend);
  g_array_append_val (steps, step);
}

static void
close_again (Search *search, const GArray *steps, int opened)
{
  for (guint i = 0; i < steps->len; i++)
    {
      guint bend = g_array_index (steps, BfBendStep, i).bend;

      search->made[bend] = TRUE;
      g_array_append_val (search->left, bend);
    }
  search->opened = opened;
  g_array_sort_with_data (search->left, compare_bends, search);
}

static gboolean
are_free (const GArray *steps)
{
  for (guint i = 0; i < steps->len; i++)
    if (g_array_index (steps, BfBendStep, i).reach.fault != BF_REACH_FREE)
      return FALSE;
  return TRUE;
}

/* Opens a bend, and all that rise in step with it, where they could be the last to be made.
 * Returns: (transfer full) (nullable) (element-type BfBendStep), in the order in which they were
 * opened. */
static GArray *
open_if_free (Search *search, guint bend)
{
  GArray *steps = g_array_new (FALSE, FALSE, sizeof (BfBendStep));
  int opened = search->opened;

  open_with_group (search, bend, steps);
  if (are_free (steps))
    return steps;
  close_again (search, steps, opened);
  g_array_unref (steps);
  return NULL;
}

/* Of those that are left the one to be opened first. */
static guint
first_left (Search *search)
{
  const guint *first = &g_array_index (search->left, guint, 0);

  for (guint i = 1; i < search->left->len; i++)
    if (compare_bends (&g_array_index (search->left, guint, i), first, search) < 0)
      first = &g_array_index (search->left, guint, i);
  return *first;
}

/* Opens the first that could be the last to be made; where none could, the first. Mostly the first
 * can: only where it can't are the others put in order. Returns: as open_if_free(). */
static GArray *
open_one (Search *search)
{
  guint first = first_left (search);
  GArray *steps = open_if_free (search, first);

  for (guint i = 0; steps == NULL && i < search->left->len; i++)
    if (g_array_index (search->left, guint, i) != first)
      steps = open_if_free (search, g_array_index (search->left, guint, i));
  if (steps == NULL)
    {
      steps = g_array_new (FALSE, FALSE, sizeof (BfBendStep));
      open_with_group (search, first, steps);
    }
  return steps;
}

GArray *
bf_bend_order (const BfFold *fold)
{
  g_autoptr (BfReachTest) test = bf_reach_test_new (fold);
  g_autofree gboolean *made = g_new (gboolean, fold->bends->len + 1);
  g_autofree guint *groups = g_new (guint, fold->bends->len + 1);
  g_autofree Key *keys = g_new (Key, fold->bends->len + 1);
  g_autoptr (GArray) left = g_array_new (FALSE, FALSE, sizeof (guint));
  GArray *order = g_array_new (FALSE, FALSE, sizeof (BfBendStep));
  Search search = { fold, test, made, groups, keys, left, -1 };

  bf_bend_groups (fold, groups);
  for (guint i = 0; i < fold->bends->len; i++)
    {
      made[i] = TRUE;
      keys[i] = key_of (fold, i);
      g_array_append_val (left, i);
    }
  while (left->len > 0)
    {
      g_autoptr (GArray) steps = open_one (&search);

      for (guint i = 0; i < steps->len; i++)
        g_array_prepend_val (order, g_array_index (steps, BfBendStep, i));
    }
  return order;
}

/* How far up a step's bend stands when the first n_made are made. */
static double
fraction_after (const BfFold *fold, guint step, guint n_made)
{
  guint group = bf_fold_bend_step (fold, step)->in_step, n = 0, n_done = 0;

  for (guint i = 0; i < fold->order->len && group > 0; i++)
    if (bf_fold_bend_step (fold, i)->in_step == group)
      {
        n++;
        n_done += i < n_made ? 1 : 0;
      }
  return group > 0 ? (double)n_done / n : step < n_made ? 1.0 : 0.0;
}

void
bf_fold_formed_after (const BfFold *fold, guint n_made, BfFormed *formed)
{
  g_autofree double *fractions = g_new0 (double, fold->bends->len + 1);

  for (guint i = 0; i < fold->order->len; i++)
    fractions[bf_fold_bend_step (fold, i)->bend] = fraction_after (fold, i, n_made);
  bf_formed_build_each (fold->layout, fold->faces, fractions, formed);
}
