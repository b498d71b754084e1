/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/second-make.h"

#include "fold/allowance.h"
#include "fold/bar-line.h"

/* K of metal lies between these; what would need another is no matter of K. */
#define LEAST_K 0.25
#define MOST_K 0.55

/* A radius that is off by less than this share of the thickness is as asked. */
#define RADIUS_SHARE 0.25

/* The bar on the wrong side is named where the bend moved by what that does, within so much of it,
 * and where that is more than a bend is off by itself. */
#define WRONG_SIDE_WITHIN 0.3

/* A cause that leaves a size off by more than so many times what is to be expected explains
 * nothing.
 */
#define LEFT_UNEXPLAINED 2.0

#define MAX_SIZES 64

/* How far off a radius may be made by hand, as a share of the thickness (common practice). */
#define RADIUS_SPREAD 0.5

/* However unusual a cause is in itself, it counts no more than this against what it explains. */
#define MOST_UNUSUAL 1.0

/* One cause that may stand for all that is off: K alone, one bend off its line, or every bend. */
#define CAUSE_K -2
#define CAUSE_EVERY_BEND -1

typedef struct
{
  int which;    /* CAUSE_K, CAUSE_EVERY_BEND, or the index of a bend */
  double by;    /* how much of it explains the sizes best */
  double error; /* how far off that may be either way */
  double score; /* the less, the likelier */
} Cause;

static const BfBendResult *
bend_at (const BfFold *fold, int bend)
{
  return bf_fold_bend (fold, (guint)bend);
}

/* How much a size grows where that bend's K is 1 more, and where its radius is 1 mm more: half of
 * what the deduction grows, 2 (R + t) τ − θ (R + K t). */
static double
grows_by_k (const BfFold *fold, int bend)
{
  return -bend_at (fold, bend)->angle_rad * bf_bend_skin_mm (fold, bend_at (fold, bend)) / 2.0;
}

static double
grows_by_radius (const BfFold *fold, int bend)
{
  double angle = bend_at (fold, bend)->angle_rad;

  return bf_setback_factor (angle) - angle / 2.0;
}

static double
bend_spread_mm (const BfFold *fold, int bend)
{
  return hypot (bf_error_of_source (fold, (guint)bend, BF_ERROR_MARKING),
                bf_error_of_source (fold, (guint)bend, BF_ERROR_BENDING));
}

/* How far off a size may be without a cause of its own. */
static double
size_spread_mm (const BfFold *fold, const BfMadeSize *size)
{
  double edge = hypot (bf_error_of_source (fold, 0, BF_ERROR_MARKING),
                       bf_error_of_source (fold, 0, BF_ERROR_CUTTING));
  double spread = hypot (BF_MADE_MEASURED_TO_MM, edge * sqrt (size->n_cut_edges));

  for (guint k = 0; k < 2; k++)
    if (size->bends[k] >= 0)
      spread = hypot (spread, bend_spread_mm (fold, size->bends[k]));
  return spread;
}

/* How much a size grows by one of that cause. */
static double
grows_by (const BfFold *fold, const BfMadeSize *size, int which)
{
  double grows = 0.0;

  for (guint k = 0; k < 2; k++)
    {
      int bend = size->bends[k];

      if (bend < 0)
        continue;
      if (which == CAUSE_K)
        grows += grows_by_k (fold, bend);
      else if (which == CAUSE_EVERY_BEND || which == bend)
        grows += size->grows[k];
    }
  return grows;
}

/* How much of a cause is nothing unusual. */
static double
usual (const BfFold *fold, int which, int like)
{
  double as_k;

  if (which != CAUSE_K)
    return bend_spread_mm (fold, which >= 0 ? which : like);
  as_k = RADIUS_SPREAD * fold->part->metal.thickness_mm * grows_by_radius (fold, like) /
         fabs (grows_by_k (fold, like));
  return hypot (bf_error_of_source (fold, (guint)like, BF_ERROR_ALLOWANCE), as_k);
}

/* The least squares of one unknown, each size weighed by how far off it may be by itself. */
static Cause
fit (const BfFold *fold, const BfMadeSize *sizes, guint n_sizes, int which, int like)
{
  double above = 0.0, below = 0.0;
  Cause cause = { which, 0.0, NAN, 0.0 };

  for (guint i = 0; i < n_sizes; i++)
    {
      double grows = grows_by (fold, &sizes[i], which);
      double weight = 1.0 / pow (size_spread_mm (fold, &sizes[i]), 2.0);

      above += weight * grows * (sizes[i].measured_mm - sizes[i].asked_mm);
      below += weight * grows * grows;
    }
  cause.by = below > 0.0 ? above / below : 0.0;
  cause.error = below > 0.0 ? 1.0 / sqrt (below) : NAN;
  cause.score = MIN (pow (cause.by / usual (fold, which, like), 2.0), MOST_UNUSUAL);
  for (guint i = 0; i < n_sizes; i++)
    cause.score += pow (
        (sizes[i].measured_mm - sizes[i].asked_mm - cause.by * grows_by (fold, &sizes[i], which)) /
            size_spread_mm (fold, &sizes[i]),
        2.0);
  return cause;
}

/* How far off a size is beyond what a radius other than asked explains. */
static double
off_mm (const BfFold *fold, const BfMadeSize *size, double radius_off_mm)
{
  double off = size->measured_mm - size->asked_mm;

  for (guint k = 0; k < 2; k++)
    if (size->bends[k] >= 0)
      off -= grows_by_radius (fold, size->bends[k]) * radius_off_mm;
  return off;
}

/* How far off it may be as made and as measured. */
static double
expected_mm (const BfFold *fold, const BfMadeSize *size)
{
  BfExpectedError error;

  bf_made_expected (fold, size, &error);
  return hypot (error.total_mm, BF_MADE_MEASURED_TO_MM);
}

static gboolean
is_expected (const BfFold *fold, const BfMadeSize *size)
{
  return fabs (size->measured_mm - size->asked_mm) <= expected_mm (fold, size);
}

static gboolean
sizes_are_usable (const BfMadeSize *sizes, guint n_sizes)
{
  gboolean over_a_bend = FALSE;

  for (guint i = 0; i < n_sizes; i++)
    {
      if (!isfinite (sizes[i].measured_mm) || !(sizes[i].measured_mm > 0.0) ||
          !isfinite (sizes[i].asked_mm))
        return FALSE;
      over_a_bend |= sizes[i].bends[0] >= 0 || sizes[i].bends[1] >= 0;
    }
  return over_a_bend && n_sizes <= MAX_SIZES;
}

static int
first_bend (const BfMadeSize *sizes)
{
  for (;; sizes++)
    for (guint k = 0; k < 2; k++)
      if (sizes->bends[k] >= 0)
        return sizes->bends[k];
}

/* What the bar on the wrong side of its line does: the bend comes out as far on the other side of
 * the line as it should be on this one. */
static gboolean
looks_like_wrong_side (const BfFold *fold, int bend, double moved_mm)
{
  BfBarLine bar;
  double shift;

  if (!bf_bend_bar_line (fold, bend_at (fold, bend), &bar))
    return FALSE;
  shift = 2.0 * fabs (bar.from_bend_line_mm);
  return shift > bend_spread_mm (fold, bend) &&
         fabs (fabs (moved_mm) - shift) <= WRONG_SIDE_WITHIN * shift;
}

static void
take_better (Cause *best, Cause other)
{
  if (other.score < best->score)
    *best = other;
}

/* Of all causes the one that leaves least unexplained, and is least unusual in itself. */
static Cause
likeliest (const BfFold *fold, const BfMadeSize *sizes, guint n_sizes)
{
  int like = first_bend (sizes);
  Cause best = fit (fold, sizes, n_sizes, CAUSE_K, like);

  for (guint i = 0; i < n_sizes; i++)
    for (guint k = 0; k < 2; k++)
      if (sizes[i].bends[k] >= 0)
        take_better (&best, fit (fold, sizes, n_sizes, sizes[i].bends[k], like));
  take_better (&best, fit (fold, sizes, n_sizes, CAUSE_EVERY_BEND, like));
  return best;
}

static void
name_allowance (const BfFold *fold, const Cause *cause, BfSecondMake *second)
{
  double k = second->k + cause->by, radius_off;
  int bend = (int)second->like;

  if (k >= LEAST_K && k <= MOST_K)
    {
      second->cause = BF_MADE_ALLOWANCE;
      second->k = k;
      second->k_error = cause->error;
      return;
    }
  radius_off = cause->by * grows_by_k (fold, bend) / grows_by_radius (fold, bend);
  second->cause = BF_MADE_RADIUS;
  second->radius_mm = MAX (second->radius_mm + radius_off, 0.0);
}

static void
find_cause (const BfFold *fold, const BfMadeSize *sizes, guint n_sizes, BfSecondMake *second)
{
  Cause cause = likeliest (fold, sizes, n_sizes);

  if (cause.which == CAUSE_K)
    {
      name_allowance (fold, &cause, second);
      return;
    }
  second->bend = cause.which >= 0 ? cause.which : -1;
  second->off_mm = cause.by;
  second->cause = looks_like_wrong_side (fold, MAX (cause.which, 0), cause.by) ? BF_MADE_WRONG_SIDE
                                                                               : BF_MADE_OFF_LINE;
}

/* What would still be off with the named cause cured. */
static double
left_over (const BfFold *fold, const BfMadeSize *size, const BfSecondMake *second)
{
  const BfBendResult *bend = bf_fold_bend (fold, second->like);
  gboolean off_line = second->cause == BF_MADE_OFF_LINE || second->cause == BF_MADE_WRONG_SIDE;
  double left = off_mm (fold, size, second->radius_mm - bend->inside_radius_mm);

  left -= grows_by (fold, size, CAUSE_K) * (second->k - bend->k);
  if (off_line)
    left -=
        grows_by (fold, size, second->bend >= 0 ? second->bend : CAUSE_EVERY_BEND) * second->off_mm;
  return fabs (left);
}

/* What stays with the cause cured; a cause that cures nothing is none. */
static void
see_what_stays (const BfFold *fold, const BfMadeSize *sizes, guint n_sizes, BfSecondMake *second)
{
  gboolean told = TRUE;

  for (guint i = 0; i < n_sizes; i++)
    {
      double left = left_over (fold, &sizes[i], second);

      second->left_mm = MAX (second->left_mm, left);
      told &= left <= LEFT_UNEXPLAINED * expected_mm (fold, &sizes[i]);
    }
  if (!told)
    second->cause = BF_MADE_NOT_TOLD;
}

gboolean
bf_second_make (const BfFold *fold,
                const BfMadeSize *sizes,
                guint n_sizes,
                double radius_mm,
                BfSecondMake *second)
{
  const BfBendResult *bend;
  gboolean expected = TRUE;
  guint like;
  double radius_off;

  g_return_val_if_fail (fold != NULL && second != NULL, FALSE);

  if (n_sizes > 0 ? !sizes_are_usable (sizes, n_sizes) : isnan (radius_mm) || fold->bends->len == 0)
    return FALSE;
  like = n_sizes > 0 ? (guint)first_bend (sizes) : 0;
  bend = bf_fold_bend (fold, like);
  *second = (BfSecondMake){ .cause = BF_MADE_AS_ASKED,
                            .bend = -1,
                            .like = like,
                            .k = bend->k,
                            .k_error = NAN,
                            .radius_mm = bend->inside_radius_mm };
  radius_off = isnan (radius_mm) ? 0.0 : radius_mm - bend->inside_radius_mm;
  for (guint i = 0; i < n_sizes; i++)
    expected &= is_expected (fold, &sizes[i]);
  if (fabs (radius_off) > RADIUS_SHARE * fold->part->metal.thickness_mm)
    {
      second->cause = BF_MADE_RADIUS;
      second->radius_mm = radius_mm;
    }
  else if (!expected)
    find_cause (fold, sizes, n_sizes, second);
  see_what_stays (fold, sizes, n_sizes, second);
  return TRUE;
}
