/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part.h"

#define NEW_THICKNESS_MM 1.5
#define NEW_LENGTH_MM 20.0
#define SQUARE_DEG 90.0

static JsonObject *
source_ref (JsonObject *source)
{
  return source != NULL ? json_object_ref (source) : NULL;
}

static GArray *
array_copy (GArray *array)
{
  return array != NULL ? g_array_copy (array) : NULL;
}

/* Medium is what the handbooks put mild steel under, so it stands where no group is given. */
static void
bend_init (BfBend *bend)
{
  *bend = (BfBend){
    .way = BF_BEND_WAY_UNSET,
    .inside_radius_mm = NAN,
    .allowance = { .rule = BF_ALLOWANCE_UNSET,
                   .k = NAN,
                   .k_error = NAN,
                   .group = BF_HANDBOOK_MEDIUM },
    .slot_mm = NAN,
    .bridge_mm = NAN,
    .score_left_mm = NAN,
    .hand_limit_n = NAN,
    .hand_lever_mm = NAN,
  };
}

static BfBend
bend_copy (const BfBend *bend)
{
  BfBend copy = *bend;

  copy.allowance.trial_id = g_strdup (bend->allowance.trial_id);
  return copy;
}

BfPart *
bf_part_new (void)
{
  BfPart *part = g_new0 (BfPart, 1);

  g_atomic_ref_count_init (&part->ref_count);
  part->name = g_strdup ("");
  part->quantity = 1;
  part->metal = (BfMetal){ g_strdup ("mild-steel"), NEW_THICKNESS_MM, NAN };
  part->cutting = (BfCutting){ BF_CUTTING_DISC, NAN, NAN, NAN, BF_DRILLS_METRIC, NULL };
  bend_init (&part->bend);
  part->outline = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  part->pinned_edges = g_array_new (FALSE, FALSE, sizeof (guint));
  part->base_corners = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_corner_free);
  part->flanges = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_flange_free);
  part->corners = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_corner_free);
  part->openings = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_opening_free);
  part->parted = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_parted_free);
  part->notes = g_strdup ("");
  return part;
}

static gpointer
copy_corner (gconstpointer corner, gpointer unused)
{
  (void)unused;
  return bf_corner_copy (corner);
}

static gpointer
copy_flange (gconstpointer flange, gpointer unused)
{
  (void)unused;
  return bf_flange_copy (flange);
}

static gpointer
copy_opening (gconstpointer opening, gpointer unused)
{
  (void)unused;
  return bf_opening_copy (opening);
}

static gpointer
copy_parted (gconstpointer parted, gpointer unused)
{
  const BfParted *old = parted;

  (void)unused;
  return bf_parted_new (old->ids[0], old->ids[1]);
}

BfPart *
bf_part_copy (const BfPart *part)
{
  BfPart *copy;

  g_return_val_if_fail (part != NULL, NULL);

  copy = g_new (BfPart, 1);
  *copy = *part;
  g_atomic_ref_count_init (&copy->ref_count);
  copy->name = g_strdup (part->name);
  copy->metal.material = g_strdup (part->metal.material);
  copy->cutting.drill_list_mm = array_copy (part->cutting.drill_list_mm);
  copy->bend = bend_copy (&part->bend);
  copy->outline = g_array_copy (part->outline);
  copy->pinned_edges = g_array_copy (part->pinned_edges);
  copy->base_corners = g_ptr_array_copy (part->base_corners, copy_corner, NULL);
  copy->flanges = g_ptr_array_copy (part->flanges, copy_flange, NULL);
  copy->corners = g_ptr_array_copy (part->corners, copy_corner, NULL);
  copy->openings = g_ptr_array_copy (part->openings, copy_opening, NULL);
  copy->parted = g_ptr_array_copy (part->parted, copy_parted, NULL);
  copy->made = bf_made_copy (part->made);
  copy->notes = g_strdup (part->notes);
  copy->source = source_ref (part->source);
  return copy;
}

BfPart *
bf_part_ref (BfPart *part)
{
  g_return_val_if_fail (part != NULL, NULL);

  g_atomic_ref_count_inc (&part->ref_count);
  return part;
}

void
bf_part_unref (BfPart *part)
{
  if (part == NULL || !g_atomic_ref_count_dec (&part->ref_count))
    return;
  g_free (part->name);
  g_free (part->metal.material);
  g_clear_pointer (&part->cutting.drill_list_mm, g_array_unref);
  g_free (part->bend.allowance.trial_id);
  g_array_unref (part->outline);
  g_array_unref (part->pinned_edges);
  g_ptr_array_unref (part->base_corners);
  g_ptr_array_unref (part->flanges);
  g_ptr_array_unref (part->corners);
  g_ptr_array_unref (part->openings);
  g_ptr_array_unref (part->parted);
  bf_made_free (part->made);
  g_free (part->notes);
  g_clear_pointer (&part->source, json_object_unref);
  g_free (part);
}

BfFlange *
bf_flange_new (const char *id)
{
  BfFlange *flange = g_new0 (BfFlange, 1);

  flange->id = g_strdup (id);
  flange->on = g_strdup ("base");
  flange->length_mm = NEW_LENGTH_MM;
  flange->angle_deg = SQUARE_DEG;
  bend_init (&flange->bend);
  return flange;
}

BfFlange *
bf_flange_copy (const BfFlange *flange)
{
  BfFlange *copy;

  g_return_val_if_fail (flange != NULL, NULL);

  copy = g_new (BfFlange, 1);
  *copy = *flange;
  copy->id = g_strdup (flange->id);
  copy->on = g_strdup (flange->on);
  copy->bend = bend_copy (&flange->bend);
  copy->source = source_ref (flange->source);
  return copy;
}

void
bf_flange_free (BfFlange *flange)
{
  if (flange == NULL)
    return;
  g_free (flange->id);
  g_free (flange->on);
  g_free (flange->bend.allowance.trial_id);
  g_clear_pointer (&flange->source, json_object_unref);
  g_free (flange);
}

BfCorner *
bf_corner_new (const char *on, guint at)
{
  BfCorner *corner = g_new0 (BfCorner, 1);

  corner->on = g_strdup (on);
  corner->at = at;
  corner->gap_mm = NAN;
  corner->relief_size_mm = NAN;
  corner->finish_size_mm = NAN;
  return corner;
}

BfCorner *
bf_corner_copy (const BfCorner *corner)
{
  BfCorner *copy;

  g_return_val_if_fail (corner != NULL, NULL);

  copy = g_new (BfCorner, 1);
  *copy = *corner;
  copy->on = g_strdup (corner->on);
  copy->source = source_ref (corner->source);
  return copy;
}

void
bf_corner_free (BfCorner *corner)
{
  if (corner == NULL)
    return;
  g_free (corner->on);
  g_clear_pointer (&corner->source, json_object_unref);
  g_free (corner);
}

/* A shape with an angle starts at 0; the other sizes are for the caller to fill in. */
BfOpening *
bf_opening_new (const char *on, BfOpeningShape shape)
{
  BfOpening *opening = g_new0 (BfOpening, 1);
  gboolean turned = shape != BF_OPENING_ROUND && shape != BF_OPENING_OUTLINE;

  opening->on = g_strdup (on);
  opening->shape = shape;
  opening->diameter_mm = NAN;
  opening->length_mm = NAN;
  opening->width_mm = NAN;
  opening->angle_deg = turned ? 0.0 : NAN;
  if (shape == BF_OPENING_OUTLINE)
    opening->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  return opening;
}

BfOpening *
bf_opening_copy (const BfOpening *opening)
{
  BfOpening *copy;

  g_return_val_if_fail (opening != NULL, NULL);

  copy = g_new (BfOpening, 1);
  *copy = *opening;
  copy->on = g_strdup (opening->on);
  copy->points = array_copy (opening->points);
  copy->source = source_ref (opening->source);
  return copy;
}

void
bf_opening_free (BfOpening *opening)
{
  if (opening == NULL)
    return;
  g_free (opening->on);
  g_clear_pointer (&opening->points, g_array_unref);
  g_clear_pointer (&opening->source, json_object_unref);
  g_free (opening);
}

BfParted *
bf_parted_new (const char *a, const char *b)
{
  BfParted *parted = g_new0 (BfParted, 1);

  parted->ids[0] = g_strdup (a);
  parted->ids[1] = g_strdup (b);
  return parted;
}

void
bf_parted_free (BfParted *parted)
{
  if (parted == NULL)
    return;
  g_free (parted->ids[0]);
  g_free (parted->ids[1]);
  g_free (parted);
}

gboolean
bf_part_has_parted (const BfPart *part, const char *a, const char *b)
{
  g_return_val_if_fail (part != NULL && a != NULL && b != NULL, FALSE);

  for (guint i = 0; i < part->parted->len; i++)
    {
      const BfParted *parted = g_ptr_array_index (part->parted, i);

      if ((g_str_equal (parted->ids[0], a) && g_str_equal (parted->ids[1], b)) ||
          (g_str_equal (parted->ids[0], b) && g_str_equal (parted->ids[1], a)))
        return TRUE;
    }
  return FALSE;
}

const BfFlange *
bf_part_find_flange (const BfPart *part, const char *id)
{
  g_return_val_if_fail (part != NULL && id != NULL, NULL);

  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    if (g_str_equal (bf_part_flange (part, i)->id, id))
      return bf_part_flange (part, i);
  return NULL;
}

const BfCorner *
bf_part_find_corner (const BfPart *part, const char *on, guint at)
{
  g_return_val_if_fail (part != NULL && on != NULL, NULL);

  for (guint i = 0; i < part->corners->len; i++)
    {
      const BfCorner *corner = g_ptr_array_index (part->corners, i);
      if (corner->at == at && g_str_equal (corner->on, on))
        return corner;
    }
  return NULL;
}

const BfCorner *
bf_part_find_finish (const BfPart *part, const char *on, guint at)
{
  const BfCorner *asked = bf_part_find_corner (part, on, at);

  if (asked != NULL && asked->finish != BF_FINISH_UNSET)
    return asked;
  for (guint i = 0; g_str_equal (on, "base") && i < part->base_corners->len; i++)
    {
      const BfCorner *corner = g_ptr_array_index (part->base_corners, i);

      if (corner->at == at)
        return corner;
    }
  return NULL;
}
