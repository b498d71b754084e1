/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/size-edits.h"

#include <glib/gi18n.h>

#include "app/surface-edges.h"
#include "core/tolerance.h"
#include "core/units.h"

char *
bf_size_edit_name (const BfPart *part, const BfSizeTarget *target, BfSizeFieldKind kind)
{
  g_return_val_if_fail (part != NULL && target != NULL, NULL);

  if (target->flange != NULL && kind == BF_SIZE_FIELD_ANGLE)
    /* Translators: %s is a flange's name: "Angle of front" */
    return g_strdup_printf (_ ("Angle of %s"), target->flange);
  if (target->flange != NULL)
    /* Translators: %s is a flange's name: "Length of front" */
    return g_strdup_printf (_ ("Length of %s"), target->flange);
  if (bf_part_is_rectangle (part))
    return g_strdup (target->edge % 2 == 0 ? _ ("Width of the base") : _ ("Depth of the base"));
  /* Translators: %u is the number of an edge of the base, from 1 */
  return g_strdup_printf (_ ("Length of base edge %u"), target->edge + 1);
}

void
bf_size_edit_length (BfDocument *document,
                     const BfSizeTarget *target,
                     double length_mm,
                     gboolean stepped)
{
  g_return_if_fail (BF_IS_DOCUMENT (document) && target != NULL && length_mm > 0.0);

  const BfPart *part = bf_document_get_part (document);
  g_autofree char *name = bf_size_edit_name (part, target, BF_SIZE_FIELD_LENGTH);
  if (target->flange == NULL)
    {
      double now_mm = bf_part_edge_length_mm (part, target->edge);
      if (fabs (now_mm - length_mm) > BF_TOLERANCE_ZERO)
        bf_document_take (document, bf_edit_edge_length (part, target->edge, length_mm), name,
                          stepped);
      return;
    }
  const BfFlange *flange = bf_part_find_flange (part, target->flange);
  if (flange != NULL && fabs (flange->length_mm - length_mm) > BF_TOLERANCE_ZERO)
    bf_document_take (document, bf_edit_flange_length (part, target->flange, length_mm), name,
                      stepped);
}

void
bf_size_edit_angle (BfDocument *document,
                    const BfSizeTarget *target,
                    double angle_deg,
                    gboolean stepped)
{
  g_return_if_fail (BF_IS_DOCUMENT (document) && target != NULL && target->flange != NULL);

  const BfPart *part = bf_document_get_part (document);
  const BfFlange *flange = bf_part_find_flange (part, target->flange);
  g_autofree char *name = bf_size_edit_name (part, target, BF_SIZE_FIELD_ANGLE);
  if (flange != NULL && fabs (flange->angle_deg - angle_deg) > BF_TOLERANCE_ZERO)
    bf_document_take (document, bf_edit_flange_angle (part, target->flange, angle_deg), name,
                      stepped);
}

char *
bf_angle_in_words (double angle_deg)
{
  g_autofree char *opening = bf_format_angle (180.0 - angle_deg);

  if (fabs (angle_deg - 90.0) < 1e-9)
    return g_strdup (_ ("square"));
  if (angle_deg > 180.0 - 1e-9)
    return g_strdup (_ ("folded flat"));
  if (angle_deg > 90.0)
    /* Translators: %s is the angle between a flange and the metal it hangs on: "75°" */
    return g_strdup_printf (_ ("opening %s, leans in"), opening);
  /* Translators: %s is the angle between a flange and the metal it hangs on: "120°" */
  return g_strdup_printf (_ ("opening %s, leans out"), opening);
}
