/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/compare.h"
#include "core/defaults.h"
#include "core/edit.h"
#include "fold/allowance.h"
#include "fold/second-make.h"

/* The bend of what hangs on a flange's tip, or −1. */
static int
tip_bend (const BfFold *fold, const char *id)
{
  for (guint i = 0; i < bf_part_n_flanges (fold->part); i++)
    {
      const BfFlange *flange = bf_part_flange (fold->part, i);
      const BfFace *face = bf_fold_face_called (fold, flange->id);

      if (flange->edge == BF_EDGE_TIP && g_str_equal (flange->on, id) && face != NULL)
        return face->bend;
    }
  return -1;
}

gboolean
bf_made_flange (const BfFold *fold, const char *id, double measured_mm, BfMadeSize *size)
{
  const BfFace *found;
  int tip;

  g_return_val_if_fail (fold != NULL && id != NULL && size != NULL, FALSE);

  found = bf_fold_face_called (fold, id);
  if (found == NULL || found->bend < 0)
    return FALSE;
  tip = tip_bend (fold, id);
  *size = (BfMadeSize){ .asked_mm = bf_part_find_flange (fold->part, id)->length_mm,
                        .measured_mm = measured_mm,
                        .bends = { found->bend, tip },
                        .grows = { -1, 1 },
                        .n_cut_edges = tip < 0 ? 1U : 0U };
  return TRUE;
}

gboolean
bf_made_edge (const BfFold *fold, guint edge, double measured_mm, BfMadeSize *size)
{
  guint n;

  g_return_val_if_fail (fold != NULL && size != NULL, FALSE);

  n = bf_part_n_points (fold->part);
  if (edge >= n)
    return FALSE;
  *size = (BfMadeSize){ .asked_mm = bf_part_edge_length_mm (fold->part, edge),
                        .measured_mm = measured_mm,
                        .bends = { -1, -1 },
                        .grows = { 1, 1 },
                        .n_cut_edges = 2 };
  for (guint k = 0; k < 2; k++)
    {
      BfEdge next = { "base", BF_EDGE_INDEX, (edge + (k == 0 ? n - 1 : 1)) % n };
      const BfFlange *flange = bf_part_flange_at (fold->part, &next);
      const BfFace *face = flange != NULL ? bf_fold_face_called (fold, flange->id) : NULL;

      if (face == NULL || face->bend < 0)
        continue;
      size->bends[k] = face->bend;
      size->n_cut_edges--;
    }
  return TRUE;
}

void
bf_made_expected (const BfFold *fold, const BfMadeSize *size, BfExpectedError *error)
{
  guint bends[2], n = 0;

  g_return_if_fail (fold != NULL && size != NULL && error != NULL);

  for (guint k = 0; k < G_N_ELEMENTS (bends); k++)
    if (size->bends[k] >= 0)
      bends[n++] = (guint)size->bends[k];
  bf_expected_error (fold, bends, n, size->n_cut_edges, error);
}

/* By as much as the bend that the figures are of: the part's own bend may be another one. */
static BfPart *
with_k (const BfFold *fold, const BfSecondMake *second)
{
  BfBend bend = bf_part_resolve_bend (fold->asked, NULL);
  double was =
      bf_allowance_k (&bend.allowance, bend.inside_radius_mm, fold->asked->metal.thickness_mm);
  BfAllowance allowance = { .rule = BF_ALLOWANCE_K_FACTOR, .k_error = MIN (second->k_error, 1.0) };

  allowance.k = CLAMP (was + second->k - bf_fold_bend (fold, second->like)->k, 0.0, 1.0);
  return bf_edit_allowance (fold->asked, &allowance);
}

static BfPart *
with_radius (const BfFold *fold, const BfSecondMake *second)
{
  double was = bf_part_resolve_bend (fold->asked, NULL).inside_radius_mm;
  double off = second->radius_mm - bf_fold_bend (fold, second->like)->inside_radius_mm;

  return bf_edit_bend_radius (fold->asked, MAX (was + off, 0.0));
}

BfPart *
bf_second_make_part (const BfFold *fold, const BfSecondMake *second, const char *day)
{
  BfPart *part;

  g_return_val_if_fail (fold != NULL && second != NULL && day != NULL, NULL);

  if (second->cause != BF_MADE_ALLOWANCE && second->cause != BF_MADE_RADIUS)
    return NULL;
  part = second->cause == BF_MADE_ALLOWANCE ? with_k (fold, second) : with_radius (fold, second);
  part->bend.corrected = g_intern_string (day);
  return part;
}

/* ---- kept as a trial bend ------------------------------------------------------------------ */

/* TRUE where the figures are of a bend such as the part's own: K of another is not told by them. */
static gboolean
is_of_the_part (const BfFold *fold, const BfBendResult *bend)
{
  BfBend own = bf_part_resolve_bend (fold->asked, NULL);
  double k = bf_allowance_k (&own.allowance, own.inside_radius_mm, fold->asked->metal.thickness_mm);

  return bend->way == own.way && own.way != BF_BEND_WAY_SCORE &&
         bf_is_same_size (bend->inside_radius_mm, own.inside_radius_mm) &&
         bf_is_same_size (bend->k, k);
}

static GArray *
sizes_of_trial (const GArray *sizes)
{
  GArray *kept = g_array_new (FALSE, FALSE, sizeof (BfTrialSize));

  for (guint i = 0; i < sizes->len; i++)
    {
      const BfMadeSize *made = &g_array_index (sizes, BfMadeSize, i);
      BfTrialSize size = { made->asked_mm, made->measured_mm };

      g_array_append_val (kept, size);
    }
  return kept;
}

gboolean
bf_second_make_trial (const BfFold *fold,
                      const BfSecondMake *second,
                      const GArray *sizes,
                      const char *day,
                      BfTrialRecord *trial)
{
  const BfPart *part;

  g_return_val_if_fail (fold != NULL && second != NULL && sizes != NULL, FALSE);
  g_return_val_if_fail (day != NULL && trial != NULL, FALSE);

  part = fold->asked;
  if (second->cause != BF_MADE_ALLOWANCE ||
      !is_of_the_part (fold, bf_fold_bend (fold, second->like)))
    return FALSE;
  *trial = (BfTrialRecord){
    .material =
        g_intern_string (part->metal.material != NULL ? part->metal.material : "mild-steel"),
    .date = g_intern_string (day),
    .thickness_mm = part->metal.thickness_mm,
    .radius_mm = second->radius_mm,
    .way = bf_fold_bend (fold, second->like)->way,
    .measured_to_mm = BF_MADE_MEASURED_TO_MM,
    .strips = g_array_new (FALSE, FALSE, sizeof (BfTrialStrip)),
    .part = g_intern_string (part->name != NULL ? part->name : ""),
    .sizes = sizes_of_trial (sizes),
    .k = second->k,
    .k_error = MIN (second->k_error, 1.0),
  };
  return TRUE;
}

BfPart *
bf_second_make_part_tried (const BfFold *fold, const BfTrialRecord *kept)
{
  BfPart *part;

  g_return_val_if_fail (fold != NULL && kept != NULL, NULL);

  part = bf_edit_trial_bend (fold->asked, kept);
  part->bend.corrected = kept->date;
  return part;
}
