/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks.h"

#include <glib/gi18n.h>

#include "core/materials.h"
#include "core/tolerance.h"
#include "core/units.h"
#include "fold/checks-bends.h"
#include "fold/checks-collide.h"
#include "fold/checks-corners.h"
#include "fold/checks-joins.h"
#include "fold/checks-necks.h"
#include "fold/checks-openings.h"
#include "fold/checks-part.h"
#include "fold/checks-reach.h"
#include "fold/checks-reliefs.h"
#include "fold/checks-score.h"
#include "fold/checks-stock.h"
#include "fold/checks-wanted.h"
#include "fold/fix-find.h"
#include "fold/side.h"

/* A bend turned this far is a hem. */
#define HEM_RAD (G_PI - 1e-6)

void
bf_check_clear (BfCheck *check)
{
  g_clear_pointer (&check->where, g_free);
  g_clear_pointer (&check->message, g_free);
}

BfCheck
bf_checks_at_bend (const BfBendResult *bend, const char *code, BfSeverity severity)
{
  return (BfCheck){ .code = code,
                    .severity = severity,
                    .found = NAN,
                    .needed = NAN,
                    .place = bf_vec2_scale (bf_vec2_add (bend->line[0], bend->line[1]), 0.5) };
}

void
bf_checks_add (BfFold *fold, BfCheck check, const char *where, char *message)
{
  check.where = g_strdup (where);
  check.message = message;
  g_array_append_val (fold->checks, check);
}

char *
bf_checks_length (const BfFold *fold, double length_mm)
{
  return bf_format_length (length_mm, fold->part->units);
}

static BfVec2
bend_middle (const BfFold *fold, guint bend)
{
  const BfBendResult *result = bf_fold_bend (fold, bend);
  return bf_vec2_scale (bf_vec2_add (result->line[0], result->line[1]), 0.5);
}

/* ---- flanges ------------------------------------------------------------------------------ */

static void
check_on_edge (BfFold *fold, guint i)
{
  const BfFlap *flap = &fold->layout->flaps[i];
  double width = bf_flap_zone_u (flap, BF_SIDE_END) - bf_flap_zone_u (flap, BF_SIDE_START);
  BfCheck check = { .code = "flange-off-edge",
                    .severity = BF_SEVERITY_MUST_FIX,
                    .found = width,
                    .needed = fold->layout->thickness_mm,
                    .place = bend_middle (fold, i) };
  g_autofree char *found = bf_checks_length (fold, MAX (width, 0.0));
  g_autofree char *needed = bf_checks_length (fold, fold->layout->thickness_mm);

  if (flap->placed && width >= fold->layout->thickness_mm)
    return;
  if (flap->parent >= 0 && !fold->layout->flaps[flap->parent].placed)
    return; /* what it hangs on has the fault */
  if (!flap->placed)
    {
      check.found = NAN;
      check.place = bf_part_point (fold->part, 0);
    }
  bf_checks_add (fold, check, flap->flange->id,
                 /* Translators: the flange's name, and two lengths with their units */
                 g_strdup_printf (_ ("%s has %s of edge left to bend on, and %s is the least. Make "
                                     "its insets smaller, or the edge longer."),
                                  flap->flange->id, found, needed));
}

static void
add_too_short (BfFold *fold, guint i, double flat, double needed)
{
  const BfFlap *flap = &fold->layout->flaps[i];
  gboolean must = flat < -BF_TOLERANCE_SIZE_MM;
  g_autofree char *length = bf_checks_length (
      fold, bf_fix_round_up_mm (flap->flange->length_mm - flat + needed, fold->part->units));
  g_autofree char *found =
      bf_checks_length (fold, must ? flap->flange->length_mm - flat : MAX (flat, 0.0));
  g_autofree char *wanted = bf_checks_length (fold, needed);
  BfCheck check = { .code = "flange-too-short",
                    .severity = must ? BF_SEVERITY_MUST_FIX : BF_SEVERITY_LOOK_AT,
                    .found = flat,
                    .needed = must ? 0.0 : needed,
                    .place = bend_middle (fold, i) };
  char *message =
      must ? g_strdup_printf (
                 /* Translators: the flange's name, and two lengths with their units */
                 _ ("%s is too short: its bends alone use up %s. Make it at least %s."),
                 flap->flange->id, found, length)
           : g_strdup_printf (
                 /* Translators: the flange's name, and three lengths with their units */
                 _ ("%s has only %s of flat beyond its bend, and %s is a sound least. Make it %s."),
                 flap->flange->id, found, wanted, length);

  bf_checks_add (fold, check, flap->flange->id, message);
}

static void
check_length (BfFold *fold, guint i)
{
  const BfFlap *flap = &fold->layout->flaps[i];
  double flat = bf_flap_flat_mm (flap), needed = 2.0 * fold->layout->thickness_mm;

  if (flap->placed && flat < needed - BF_TOLERANCE_SIZE_MM)
    add_too_short (fold, i, flat, needed);
}

/* What the bends on a flap's sides take of its width. */
static double
carried_setbacks_mm (const BfFlap *flap)
{
  double sum = 0.0;

  for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
    {
      double most = 0.0;

      for (guint i = 0; flap->on_side[name] != NULL && i < flap->on_side[name]->len; i++)
        most = MAX (most,
                    ((const BfFlap *)g_ptr_array_index (flap->on_side[name], i))->sums.setback_mm);
      sum += most;
    }
  return sum;
}

/* Sides that lean together, or bends on both, must not cross before the tip. */
static void
check_tip (BfFold *fold, guint i)
{
  const BfFlap *flap = &fold->layout->flaps[i];
  double w = MAX (bf_flap_flat_mm (flap), 0.0);
  double width = flap->edge_length_mm - bf_side_at (&flap->sides[BF_SIDE_START], w) -
                 bf_side_at (&flap->sides[BF_SIDE_END], w) - carried_setbacks_mm (flap);
  BfCheck check = { .code = "flange-too-narrow",
                    .severity = BF_SEVERITY_MUST_FIX,
                    .found = width,
                    .needed = 0.0,
                    .place = bend_middle (fold, i) };
  g_autofree char *over = bf_checks_length (fold, -width);

  if (!flap->placed || width >= 0.0)
    return;
  bf_checks_add (fold, check, flap->flange->id,
                 /* Translators: the flange's name, and a length with its unit */
                 g_strdup_printf (_ ("The sides of %s cross before its tip, by %s. Make it shorter "
                                     "or its sides steeper."),
                                  flap->flange->id, over));
}

/* A closed hem is meant to be flattened: metals that bend to once their thickness take it (common
 * practice: ducts and pans of soft steel, galvanised and zinc are hemmed all day long), harder ones
 * crack. */
static void
check_hem (BfFold *fold, guint i, BfCheck check)
{
  const BfFlap *flap = &fold->layout->flaps[i];
  g_autofree char *wanted = bf_checks_length (fold, check.needed);

  if (check.needed <= fold->layout->thickness_mm + BF_TOLERANCE_SIZE_MM)
    return;
  bf_checks_add (fold, check, flap->flange->id,
                 /* Translators: the flange's name, and a length with its unit */
                 g_strdup_printf (_ ("%s is folded back tighter than this metal takes: it cracks. "
                                     "Leave the hem open, with an inside radius of %s."),
                                  flap->flange->id, wanted));
}

static void
check_radius (BfFold *fold, guint i)
{
  const BfFlap *flap = &fold->layout->flaps[i];
  const BfMaterial *material = bf_material_find (fold->part->metal.material);
  double needed = material == NULL ? 0.0 : material->least_radius * fold->layout->thickness_mm;
  g_autofree char *found = bf_checks_length (fold, flap->radius_mm);
  g_autofree char *wanted = bf_checks_length (fold, needed);
  BfCheck check = { .code = "radius-too-tight",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .found = flap->radius_mm,
                    .needed = needed,
                    .place = bend_middle (fold, i) };

  if (flap->radius_mm >= needed - BF_TOLERANCE_SIZE_MM || flap->bend.way == BF_BEND_WAY_SCORE)
    return;
  if (flap->angle_rad >= HEM_RAD)
    {
      check_hem (fold, i, check);
      return;
    }
  bf_checks_add (fold, check, flap->flange->id,
                 /* Translators: the flange's name, and two lengths with their units */
                 g_strdup_printf (_ ("%s bends to an inside radius of %s; this metal may crack "
                                     "below %s."),
                                  flap->flange->id, found, wanted));
}

/* ---- the blank ---------------------------------------------------------------------------- */

static gboolean
outline_crosses (BfFold *fold)
{
  BfCheck check = { .code = "outline-crosses-itself",
                    .severity = BF_SEVERITY_MUST_FIX,
                    .found = NAN,
                    .needed = NAN,
                    .place = bf_part_point (fold->part, 0) };

  if (!fold->layout->base_crosses)
    return FALSE;
  check.place = fold->layout->wanted_twice_at;
  bf_checks_add (
      fold, check, "base",
      g_strdup (_ ("The base's outline crosses or touches itself. Move its points apart.")));
  return TRUE;
}

static void
check_blank (BfFold *fold)
{
  BfCheck pieces = { .code = "blank-in-pieces",
                     .severity = BF_SEVERITY_MUST_FIX,
                     .found = fold->blank.n_outer,
                     .needed = 1.0 };

  if (outline_crosses (fold))
    return;
  bf_checks_find_wanted (fold);
  if (fold->blank.n_outer != 1)
    {
      pieces.place = fold->blank.n_outer > 1
                         ? bf_ring_vertex (bf_blank_ring (&fold->blank, 1), 0)->p
                         : bf_part_point (fold->part, 0);
      bf_checks_add (fold, pieces, "base",
                     /* Translators: the number of pieces that the blank falls into */
                     fold->blank.n_outer > 1
                         ? g_strdup_printf (_ ("The cuts part the blank into %u pieces. Make "
                                               "reliefs or openings smaller."),
                                            fold->blank.n_outer)
                         : g_strdup (_ ("The openings leave nothing of the blank. Make them "
                                        "smaller.")));
    }
}

static int
compare_severity (gconstpointer a, gconstpointer b, gpointer data)
{
  (void)data;
  return (int)((const BfCheck *)a)->severity - (int)((const BfCheck *)b)->severity;
}

/* Must fix first; in one severity they keep the order in which they were found. */
static void
sort_checks (BfFold *fold)
{
  g_qsort_with_data (fold->checks->data, (int)fold->checks->len, sizeof (BfCheck), compare_severity,
                     NULL);
}

void
bf_checks_find (BfFold *fold)
{
  for (guint i = 0; i < fold->layout->n_flaps; i++)
    {
      check_on_edge (fold, i);
      check_length (fold, i);
      check_tip (fold, i);
      check_radius (fold, i);
    }
  check_blank (fold);
  bf_checks_find_corners (fold);
  bf_checks_find_reliefs (fold);
  bf_checks_find_collisions (fold);
  bf_checks_find_reach (fold);
  bf_checks_find_bends (fold);
  bf_checks_find_scores (fold);
  bf_checks_find_openings (fold);
  bf_checks_find_part (fold);
  bf_checks_find_stock (fold);
  bf_checks_find_joins (fold);
  bf_fixes_find (fold);
  bf_checks_find_necks (fold); /* which nothing that is known here would cure */
  sort_checks (fold);
}
