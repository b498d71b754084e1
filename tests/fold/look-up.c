/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "look-up.h"

const BfCheck *
find_check (const BfFold *fold, const char *code, const char *where)
{
  for (guint i = 0; i < fold->checks->len; i++)
    {
      const BfCheck *check = bf_fold_check (fold, i);

      if (strcmp (check->code, code) == 0 && (where == NULL || strcmp (check->where, where) == 0))
        return check;
    }
  return NULL;
}

guint
count_to_heed (const BfFold *fold)
{
  return fold->checks->len - bf_fold_count_checks (fold, BF_SEVERITY_GOOD_TO_KNOW);
}

const BfBendResult *
find_bend (const BfFold *fold, const char *flange)
{
  for (guint i = 0; i < fold->bends->len; i++)
    if (strcmp (bf_fold_bend (fold, i)->flange, flange) == 0)
      return bf_fold_bend (fold, i);
  return NULL;
}

const BfFace *
find_face (const BfFold *fold, const char *id)
{
  for (guint i = 0; i < fold->faces->len; i++)
    if (strcmp (bf_fold_face (fold, i)->id, id) == 0)
      return bf_fold_face (fold, i);
  return NULL;
}

const BfRelief *
find_relief (const BfFold *fold, const char *where, guint nth)
{
  for (guint i = 0; i < fold->reliefs->len; i++)
    if (strcmp (bf_fold_relief (fold, i)->where, where) == 0 && nth-- == 0)
      return bf_fold_relief (fold, i);
  return NULL;
}

void
assert_at (BfVec2 found, BfVec2 wanted, double epsilon_mm)
{
  g_assert_cmpfloat_with_epsilon (found.x, wanted.x, epsilon_mm);
  g_assert_cmpfloat_with_epsilon (found.y, wanted.y, epsilon_mm);
}

void
assert_in_space (BfVec3 found, BfVec3 wanted, double epsilon_mm)
{
  g_assert_cmpfloat_with_epsilon (found.x, wanted.x, epsilon_mm);
  g_assert_cmpfloat_with_epsilon (found.y, wanted.y, epsilon_mm);
  g_assert_cmpfloat_with_epsilon (found.z, wanted.z, epsilon_mm);
}
