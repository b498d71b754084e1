/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-split.h"

#include "paint/formed-overlap.h"

/* How many pieces are tried as the next plane to cut by, and what a cut costs against a pile that
 * is one piece higher than the other. */
#define N_TRIALS 8
#define CUT_COST 8

typedef enum
{
  IN_PLANE,
  BEHIND,
  BEFORE,
  ACROSS,
} Place;

/* A pile that still has to be put in order, or one piece that has its place. */
typedef struct
{
  GArray *members; /* guint; NULL for a piece */
  guint piece;
} Task;

static Place
place_of (const BfFormedStack *stack, guint member, guint plane)
{
  double least, greatest;

  bf_formed_piece_range (stack, bf_formed_piece (stack, member), bf_formed_piece (stack, plane),
                         &least, &greatest);
  if (greatest <= BF_FORMED_PLANE_MM)
    return least >= -BF_FORMED_PLANE_MM ? IN_PLANE : BEHIND;
  return least >= -BF_FORMED_PLANE_MM ? BEFORE : ACROSS;
}

static guint
cost_of (const BfFormedStack *stack, const GArray *members, guint plane)
{
  guint counts[4] = { 0, 0, 0, 0 };

  for (guint i = 0; i < members->len; i++)
    counts[place_of (stack, g_array_index (members, guint, i), plane)]++;
  return CUT_COST * counts[ACROSS] + MAX (counts[BEHIND], counts[BEFORE]) -
         MIN (counts[BEHIND], counts[BEFORE]);
}

static guint
choose_plane (const BfFormedStack *stack, const GArray *members)
{
  guint step = MAX (members->len / N_TRIALS, 1);
  guint best = g_array_index (members, guint, 0);
  guint best_cost = G_MAXUINT;

  for (guint i = 0; i < members->len && best_cost > 0; i += step)
    {
      guint trial = g_array_index (members, guint, i);
      guint cost = cost_of (stack, members, trial);

      if (cost < best_cost)
        {
          best = trial;
          best_cost = cost;
        }
    }
  return best;
}

static double
distance (const BfFormedPiece *plane, BfVec3 p, double sign)
{
  double d = sign * (bf_vec3_dot (plane->normal, p) - plane->offset);

  return fabs (d) <= BF_FORMED_PLANE_MM ? 0.0 : d;
}

static void
add_point (GArray *kept, const BfFormedPoint *like, BfVec3 p, gboolean along_cut)
{
  BfFormedPoint point = { p, like->line, like->neighbour };

  if (along_cut)
    point.line = BF_FORMED_LINE_NONE;
  g_array_append_val (kept, point);
}

/* What is left of one edge on the kept side, the point that ends it excepted. */
static void
keep_edge (GArray *kept, const BfFormedPoint *from, BfVec3 to, double d_from, double d_to)
{
  BfVec3 cut = bf_vec3_along (from->p, bf_vec3_sub (to, from->p), d_from / (d_from - d_to));

  if (d_from >= 0.0)
    add_point (kept, from, from->p, d_from <= 0.0 && d_to < 0.0);
  if (d_from > 0.0 && d_to < 0.0)
    add_point (kept, from, cut, TRUE);
  if (d_from < 0.0 && d_to > 0.0)
    add_point (kept, from, cut, FALSE);
}

/* A ring that leaves the plane and comes back several times is kept in one, bridged along the
 * plane there and back: what it covers is right, and the bridges cover nothing. */
static void
keep_ring (const BfFormedStack *stack,
           const BfFormedSpan *ring,
           const BfFormedPiece *plane,
           double sign,
           GArray *kept)
{
  gboolean reaches = FALSE;

  g_array_set_size (kept, 0);
  for (guint i = 0; i < ring->size; i++)
    {
      const BfFormedPoint *from = bf_formed_ring_point (stack, ring, i);
      BfVec3 to = bf_formed_ring_point (stack, ring, i + 1)->p;
      double d_from = distance (plane, from->p, sign);

      reaches = reaches || d_from > 0.0;
      keep_edge (kept, from, to, d_from, distance (plane, to, sign));
    }
  if (!reaches)
    g_array_set_size (kept, 0);
}

/* Adds what of the member lies on one side of the plane. Returns its index, or −1. */
static int
keep_side (BfFormedStack *stack, guint member, guint plane, double sign)
{
  g_autoptr (GArray) kept = g_array_new (FALSE, FALSE, sizeof (BfFormedPoint));
  const BfFormedPiece piece = *bf_formed_piece (stack, member);
  const BfFormedPiece cutter = *bf_formed_piece (stack, plane);

  bf_formed_stack_begin (stack, &piece);
  for (guint i = 0; i < piece.rings.size; i++)
    {
      const BfFormedSpan ring = *bf_formed_piece_ring (stack, &piece, i);

      keep_ring (stack, &ring, &cutter, sign, kept);
      bf_formed_stack_add_ring (stack, (const BfFormedPoint *)(gpointer)kept->data, kept->len);
    }
  return bf_formed_stack_end (stack);
}

static void
cut (BfFormedStack *stack, guint member, guint plane, GArray *piles[4])
{
  int behind = keep_side (stack, member, plane, -1.0);
  int before = keep_side (stack, member, plane, 1.0);

  if (behind >= 0)
    g_array_append_val (piles[BEHIND], behind);
  if (before >= 0)
    g_array_append_val (piles[BEFORE], before);
}

static void
share_out (BfFormedStack *stack, const GArray *members, guint plane, GArray *piles[4])
{
  for (guint i = 0; i < members->len; i++)
    {
      guint member = g_array_index (members, guint, i);
      Place place = member == plane ? IN_PLANE : place_of (stack, member, plane);

      if (place == ACROSS)
        cut (stack, member, plane, piles);
      else
        g_array_append_val (piles[place], member);
    }
}

static void
push_pile (GArray *tasks, GArray *members)
{
  Task task = { members, 0 };

  g_array_append_val (tasks, task);
}

/* The last task pushed is done first: what lies behind, then what lies in the plane. */
static void
divide (BfFormedStack *stack, const GArray *members, GArray *tasks)
{
  GArray *piles[4];
  guint plane = choose_plane (stack, members);

  for (guint i = 0; i < 4; i++)
    piles[i] = g_array_new (FALSE, FALSE, sizeof (guint));
  share_out (stack, members, plane, piles);

  push_pile (tasks, piles[BEFORE]);
  for (guint i = 0; i < piles[IN_PLANE]->len; i++)
    {
      Task task = { NULL, g_array_index (piles[IN_PLANE], guint, i) };

      g_array_append_val (tasks, task);
    }
  push_pile (tasks, piles[BEHIND]);
  g_array_unref (piles[IN_PLANE]);
  g_array_unref (piles[ACROSS]);
}

static void
do_task (BfFormedStack *stack, Task task, GArray *tasks)
{
  if (task.members == NULL)
    g_array_append_val (stack->order, task.piece);
  else if (task.members->len == 1)
    g_array_append_val (stack->order, g_array_index (task.members, guint, 0));
  else if (task.members->len > 1)
    divide (stack, task.members, tasks);
  g_clear_pointer (&task.members, g_array_unref);
}

void
bf_formed_split_in_order (BfFormedStack *stack, GArray *members)
{
  g_autoptr (GArray) tasks = g_array_new (FALSE, FALSE, sizeof (Task));

  g_return_if_fail (stack != NULL && members != NULL);

  push_pile (tasks, g_array_ref (members));
  while (tasks->len > 0)
    {
      Task task = g_array_index (tasks, Task, tasks->len - 1);

      g_array_set_size (tasks, tasks->len - 1);
      do_task (stack, task, tasks);
    }
}
