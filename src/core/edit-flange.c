/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "core/edit.h"

#include "core/defaults.h"

static gboolean
is_on_edge (const BfFlange *flange, const BfEdge *edge)
{
  if (!g_str_equal (flange->on, edge->on) || flange->edge != edge->kind)
    return FALSE;
  return edge->kind != BF_EDGE_INDEX || flange->edge_index == edge->index;
}

const BfFlange *
bf_part_flange_at (const BfPart *part, const BfEdge *edge)
{
  g_return_val_if_fail (part != NULL && edge != NULL, NULL);

  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    if (is_on_edge (bf_part_flange (part, i), edge))
      return bf_part_flange (part, i);
  return NULL;
}

/* A wall of a four-sided base is called by where it stands, seen with edge 0 in front. */
static const char *
plain_name (const BfPart *part, const BfEdge *edge)
{
  static const char *const sides[] = { "front", "right", "back", "left" };

  if (edge->kind == BF_EDGE_INDEX)
    return bf_part_n_points (part) == 4 ? sides[edge->index % 4] : "wall";
  return "lip";
}

static char *
free_id (const BfPart *part, const char *wanted)
{
  if (bf_part_find_flange (part, wanted) == NULL)
    return g_strdup (wanted);
  for (guint n = 2;; n++)
    {
      g_autofree char *id = g_strdup_printf ("%s %u", wanted, n);
      if (bf_part_find_flange (part, id) == NULL)
        return g_steal_pointer (&id);
    }
}

static BfFlange *
find (BfPart *part, const char *id)
{
  for (guint i = 0; i < part->flanges->len; i++)
    {
      BfFlange *flange = g_ptr_array_index (part->flanges, i);
      if (g_str_equal (flange->id, id))
        return flange;
    }
  return NULL;
}

BfPart *
bf_edit_add_flange (const BfPart *part, const BfEdge *edge, BfTurn turn, char **id)
{
  g_return_val_if_fail (part != NULL && edge != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  g_autofree char *name = free_id (part, plain_name (part, edge));
  BfFlange *flange = bf_flange_new (name);

  g_free (flange->on);
  flange->on = g_strdup (edge->on);
  flange->edge = edge->kind;
  flange->edge_index = edge->index;
  flange->turn = turn;
  g_ptr_array_add (copy->flanges, flange);
  if (id != NULL)
    *id = g_steal_pointer (&name);
  return copy;
}

double
bf_hem_depth_mm (const BfPart *part)
{
  g_return_val_if_fail (part != NULL, NAN);
  return MAX (6.0 * part->metal.thickness_mm, 8.0);
}

BfPart *
bf_edit_add_hem (const BfPart *part, const BfEdge *edge, BfTurn turn, char **id)
{
  g_return_val_if_fail (part != NULL && edge != NULL, NULL);

  g_autofree char *name = NULL;
  BfPart *copy = bf_edit_add_flange (part, edge, turn, &name);
  BfFlange *flange = find (copy, name);

  flange->angle_deg = 180.0;
  flange->length_mm = bf_hem_depth_mm (part);
  flange->bend.inside_radius_mm = 0.0;
  if (part->bend.allowance.rule == BF_ALLOWANCE_TRIAL_BEND)
    {
      /* No trial of a bend with a radius tells of one without. */
      flange->bend.allowance.rule = BF_ALLOWANCE_K_FACTOR;
      flange->bend.allowance.k = bf_default_k (part->bend.way, flange->angle_deg);
    }
  if (id != NULL)
    *id = g_steal_pointer (&name);
  return copy;
}

static gboolean
contains (GPtrArray *ids, const char *id)
{
  return g_ptr_array_find_with_equal_func (ids, id, g_str_equal, NULL);
}

/* The flange's id and those of all that hangs on it, however far out. Owned by the part. */
static GPtrArray *
family (const BfPart *part, const char *id)
{
  GPtrArray *ids = g_ptr_array_new ();
  g_ptr_array_add (ids, (gpointer)id);
  for (guint done = 0; done < ids->len; done++)
    for (guint i = 0; i < bf_part_n_flanges (part); i++)
      {
        const BfFlange *flange = bf_part_flange (part, i);
        if (g_str_equal (flange->on, g_ptr_array_index (ids, done)) && !contains (ids, flange->id))
          g_ptr_array_add (ids, flange->id);
      }
  return ids;
}

BfPart *
bf_edit_remove_flange (const BfPart *part, const char *id)
{
  g_return_val_if_fail (part != NULL && id != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  g_autoptr (GPtrArray) gone = family (part, id);

  for (guint i = copy->flanges->len; i-- > 0;)
    if (contains (gone, ((BfFlange *)g_ptr_array_index (copy->flanges, i))->id))
      g_ptr_array_remove_index (copy->flanges, i);
  for (guint i = copy->corners->len; i-- > 0;)
    if (contains (gone, ((BfCorner *)g_ptr_array_index (copy->corners, i))->on))
      g_ptr_array_remove_index (copy->corners, i);
  for (guint i = copy->openings->len; i-- > 0;)
    if (contains (gone, ((BfOpening *)g_ptr_array_index (copy->openings, i))->on))
      g_ptr_array_remove_index (copy->openings, i);
  for (guint i = copy->parted->len; i-- > 0;)
    {
      const BfParted *parted = g_ptr_array_index (copy->parted, i);

      if (contains (gone, parted->ids[0]) || contains (gone, parted->ids[1]))
        g_ptr_array_remove_index (copy->parted, i);
    }
  return copy;
}

BfPart *
bf_edit_share_metal (const BfPart *part, const char *a, const char *b)
{
  g_return_val_if_fail (part != NULL && a != NULL && b != NULL && !g_str_equal (a, b), NULL);

  BfPart *copy = bf_part_copy (part);

  if (!bf_part_has_parted (part, a, b))
    g_ptr_array_add (copy->parted, bf_parted_new (a, b));
  return copy;
}

BfPart *
bf_edit_flange_length (const BfPart *part, const char *id, double length_mm)
{
  g_return_val_if_fail (part != NULL && length_mm > 0.0, NULL);

  BfPart *copy = bf_part_copy (part);
  BfFlange *flange = find (copy, id);
  if (flange != NULL)
    flange->length_mm = length_mm;
  return copy;
}

BfPart *
bf_edit_flange_angle (const BfPart *part, const char *id, double angle_deg)
{
  g_return_val_if_fail (part != NULL && angle_deg >= 1.0 && angle_deg <= 180.0, NULL);

  BfPart *copy = bf_part_copy (part);
  BfFlange *flange = find (copy, id);
  if (flange != NULL)
    flange->angle_deg = angle_deg;
  return copy;
}

BfPart *
bf_edit_flange_turn (const BfPart *part, const char *id, BfTurn turn)
{
  g_return_val_if_fail (part != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  BfFlange *flange = find (copy, id);
  if (flange != NULL)
    flange->turn = turn;
  return copy;
}

BfPart *
bf_edit_flange_insets (const BfPart *part, const char *id, double start_mm, double end_mm)
{
  g_return_val_if_fail (part != NULL && isfinite (start_mm) && isfinite (end_mm), NULL);

  BfPart *copy = bf_part_copy (part);
  BfFlange *flange = find (copy, id);
  if (flange != NULL)
    {
      flange->start_mm = start_mm;
      flange->end_mm = end_mm;
    }
  return copy;
}

BfPart *
bf_edit_flange_tapers (const BfPart *part, const char *id, double start_deg, double end_deg)
{
  g_return_val_if_fail (part != NULL, NULL);
  g_return_val_if_fail (fabs (start_deg) <= BF_TAPER_MAX_DEG, NULL);
  g_return_val_if_fail (fabs (end_deg) <= BF_TAPER_MAX_DEG, NULL);

  BfPart *copy = bf_part_copy (part);
  BfFlange *flange = find (copy, id);
  if (flange != NULL)
    {
      flange->start_taper_deg = start_deg;
      flange->end_taper_deg = end_deg;
    }
  return copy;
}

BfPart *
bf_edit_flange_end_reliefs (const BfPart *part, const char *id, BfEndRelief start, BfEndRelief end)
{
  g_return_val_if_fail (part != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  BfFlange *flange = find (copy, id);
  if (flange != NULL)
    {
      flange->start_relief = start;
      flange->end_relief = end;
    }
  return copy;
}

BfPart *
bf_edit_flange_radius (const BfPart *part, const char *id, double inside_radius_mm)
{
  g_return_val_if_fail (part != NULL && (isnan (inside_radius_mm) || inside_radius_mm >= 0.0),
                        NULL);

  BfPart *copy = bf_part_copy (part);
  BfFlange *flange = find (copy, id);
  if (flange != NULL)
    flange->bend.inside_radius_mm = inside_radius_mm;
  return copy;
}

/* What makes one flange like another, but for its name and its place. */
static void
become_like (BfFlange *flange, const BfFlange *model)
{
  g_autoptr (BfFlange) copy = bf_flange_copy (model);

  flange->length_mm = copy->length_mm;
  flange->angle_deg = copy->angle_deg;
  flange->turn = copy->turn;
  g_free (flange->bend.allowance.trial_id);
  flange->bend = copy->bend;
  copy->bend.allowance.trial_id = NULL;
}

BfPart *
bf_edit_copy_all_round (const BfPart *part, const char *id)
{
  g_return_val_if_fail (part != NULL && id != NULL, NULL);

  g_autoptr (BfPart) copy = bf_part_copy (part);
  const BfFlange *model = bf_part_find_flange (part, id);
  gboolean added = FALSE;

  g_return_val_if_fail (model != NULL && model->edge == BF_EDGE_INDEX, NULL);
  for (guint i = 0; i < bf_part_n_points (part); i++)
    {
      BfEdge edge = { "base", BF_EDGE_INDEX, i };
      g_autofree char *new_id = NULL;
      if (bf_part_flange_at (part, &edge) != NULL)
        continue;
      BfPart *next = bf_edit_add_flange (copy, &edge, model->turn, &new_id);
      bf_part_unref (copy);
      copy = next;
      become_like (find (copy, new_id), model);
      added = TRUE;
    }
  for (guint i = 0; !added && i < copy->flanges->len; i++)
    {
      BfFlange *flange = g_ptr_array_index (copy->flanges, i);
      if (flange->edge == BF_EDGE_INDEX)
        become_like (flange, model);
    }
  return g_steal_pointer (&copy);
}
