/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <math.h>

#include <glib.h>

#include "core/tolerance.h"

/* How numbers are compared. */

/* For sorting an array of double, ascending. */
static inline int
bf_compare_doubles (gconstpointer a, gconstpointer b)
{
  double first = *(const double *)a, second = *(const double *)b;

  return (first > second) - (first < second);
}

/* TRUE where both are one size, or both are not given (NAN). */
static inline gboolean
bf_is_same_size (double a_mm, double b_mm)
{
  if (isnan (a_mm) || isnan (b_mm))
    return isnan (a_mm) && isnan (b_mm);
  return fabs (a_mm - b_mm) < BF_TOLERANCE_SIZE_MM;
}
