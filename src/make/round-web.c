/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/round-web.h"

#include <math.h>

/* A difference below this is rounding. */
#define LEAST_MM 1e-6

/* A size that moves a mark by less than this share of its own move is of no use to it. */
#define LEAST_RATE 1e-3

#define N_PASSES 4

BfRoundWeb *
bf_round_web_new (guint n_marks, guint n_sizes, double step_mm)
{
  BfRoundWeb *web = g_new0 (BfRoundWeb, 1);

  web->n_marks = n_marks;
  web->n_sizes = n_sizes;
  web->step_mm = step_mm;
  web->marks_mm = g_new0 (double, n_marks + 1);
  web->rates = g_new0 (double, n_marks *n_sizes + 1);
  web->stretches = g_new0 (double, n_sizes *n_sizes + 1);
  web->fixed = g_new0 (gboolean, n_sizes + 1);
  web->moved_mm = g_new0 (double, n_sizes + 1);
  web->off_mm = g_new0 (double, n_sizes + 1);
  return web;
}

void
bf_round_web_free (BfRoundWeb *web)
{
  g_free (web->marks_mm);
  g_free (web->rates);
  g_free (web->stretches);
  g_free (web->fixed);
  g_free (web->moved_mm);
  g_free (web->off_mm);
  g_free (web);
}

double
bf_round_lacks_mm (double exact_mm, double step_mm)
{
  return round (exact_mm / step_mm) * step_mm - exact_mm;
}

static double
rate (const BfRoundWeb *web, guint mark, guint size)
{
  return web->rates[mark * web->n_sizes + size];
}

static double
stretch (const BfRoundWeb *web, guint other, guint size)
{
  return web->stretches[other * web->n_sizes + size];
}

static double
lacks (const BfRoundWeb *web, guint mark)
{
  return bf_round_lacks_mm (web->marks_mm[mark], web->step_mm);
}

double
bf_round_web_off_mm (const BfRoundWeb *web)
{
  double sum = 0.0;

  for (guint i = 0; i < web->n_marks; i++)
    sum += fabs (lacks (web, i));
  return sum;
}

/* Whether the size may go that much further, whatever it stretches. */
static gboolean
may_move (const BfRoundWeb *web, guint size, double by_mm)
{
  if (web->fixed[size])
    return FALSE;
  for (guint i = 0; i < web->n_sizes; i++)
    if (fabs (web->off_mm[i] + stretch (web, i, size) * by_mm) > web->step_mm + LEAST_MM)
      return FALSE;
  return TRUE;
}

static void
move (BfRoundWeb *web, guint size, double by_mm)
{
  web->moved_mm[size] += by_mm;
  for (guint i = 0; i < web->n_sizes; i++)
    web->off_mm[i] += stretch (web, i, size) * by_mm;
  for (guint i = 0; i < web->n_marks; i++)
    web->marks_mm[i] += rate (web, i, size) * by_mm;
}

/* ---- one after the other ------------------------------------------------------------------ */

static guint
n_sizes_of (const BfRoundWeb *web, guint mark)
{
  guint n = 0;

  for (guint i = 0; i < web->n_sizes; i++)
    n += fabs (rate (web, mark, i)) >= LEAST_RATE ? 1 : 0;
  return n;
}

static gboolean
moves_settled (const BfRoundWeb *web, const gboolean *settled, guint size)
{
  for (guint i = 0; i < web->n_marks; i++)
    if (settled[i] && fabs (rate (web, i, size)) >= LEAST_RATE)
      return TRUE;
  return FALSE;
}

static void
settle_mark (BfRoundWeb *web, gboolean *settled, guint mark)
{
  double by = lacks (web, mark);

  settled[mark] = fabs (by) < LEAST_MM;
  for (guint i = 0; i < web->n_sizes && !settled[mark]; i++)
    if (fabs (rate (web, mark, i)) >= LEAST_RATE && !moves_settled (web, settled, i) &&
        may_move (web, i, by / rate (web, mark, i)))
      {
        move (web, i, by / rate (web, mark, i));
        settled[mark] = TRUE;
      }
}

/* ---- all together ------------------------------------------------------------------------- */

static double
off_if_moved_mm (const BfRoundWeb *web, guint size, double by_mm)
{
  double sum = 0.0;

  for (guint i = 0; i < web->n_marks; i++)
    sum += fabs (bf_round_lacks_mm (web->marks_mm[i] + rate (web, i, size) * by_mm, web->step_mm));
  return sum;
}

/* The least sum of all is where some mark is whole. */
static void
polish_size (BfRoundWeb *web, guint size)
{
  double least = bf_round_web_off_mm (web), best = 0.0;

  for (guint i = 0; i < web->n_marks; i++)
    {
      double by, off;

      if (fabs (rate (web, i, size)) < LEAST_RATE)
        continue;
      by = lacks (web, i) / rate (web, i, size);
      if (!may_move (web, size, by))
        continue;
      off = off_if_moved_mm (web, size, by);
      if (off >= least - LEAST_MM)
        continue;
      least = off;
      best = by;
    }
  if (fabs (best) > 0.0)
    move (web, size, best);
}

void
bf_round_web_settle (BfRoundWeb *web)
{
  g_autofree gboolean *settled = g_new0 (gboolean, web->n_marks + 1);

  for (guint n = 0; n <= web->n_sizes; n++)
    for (guint i = 0; i < web->n_marks; i++)
      if (n_sizes_of (web, i) == n)
        settle_mark (web, settled, i);
  for (guint pass = 0; pass < N_PASSES; pass++)
    for (guint i = 0; i < web->n_sizes; i++)
      polish_size (web, i);
}
