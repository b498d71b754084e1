/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/fold.h"

#include "core/materials.h"
#include "core/part-file.h"
#include "fold/bend-order.h"
#include "fold/bends.h"
#include "fold/checks.h"
#include "fold/fold-shape.h"
#include "fold/formed.h"
#include "fold/layout.h"
#include "fold/openings.h"
#include "fold/outline.h"
#include "fold/overlay.h"
#include "fold/reliefs.h"
#include "fold/seams.h"
#include "fold/tabs.h"
#include "fold/wanted-twice.h"

/* How far from a relief's centre, in its diameters, the scraps that it makes may reach. */
#define SCRAP_REACH 1.5

/* ---- faces -------------------------------------------------------------------------------- */

static void
find_faces (BfFold *fold)
{
  const BfLayout *layout = fold->layout;
  BfFace base = { "base", -1, -1, bf_outline_face (layout, -1) };

  g_array_append_val (fold->faces, base);
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      const BfFlap *flap = &layout->flaps[i];
      gboolean on_base = flap->flange->edge == BF_EDGE_INDEX;
      BfFace face = { flap->flange->id, on_base ? 0 : flap->parent + 1, (int)i,
                      bf_outline_face (layout, (int)i) };

      g_array_append_val (fold->faces, face);
    }
}

/* ---- the blank ---------------------------------------------------------------------------- */

/* All the metal between the two walls. */
static void
add_folded_corner (const BfFoldedCorner *corner, GPtrArray *pieces)
{
  BfRing *ring = bf_ring_new ();
  BfVec2 out = bf_vec2_unit (bf_vec2_sub (corner->creases[0].line[1], corner->creases[0].line[0]));
  BfVec2 across = bf_vec2_sub (corner->tip, corner->foot);
  BfVec2 side = bf_vec2_scale (out, bf_vec2_dot (across, out));

  bf_ring_add (ring, corner->foot, 0.0);
  bf_ring_add (ring, bf_vec2_add (corner->foot, side), 0.0);
  bf_ring_add (ring, corner->tip, 0.0);
  bf_ring_add (ring, bf_vec2_sub (corner->tip, side), 0.0);
  bf_ring_make_counter_clockwise (ring);
  g_ptr_array_add (pieces, ring);
}

/* The blank where it wants metal twice: whatever its pieces cover, each mended by itself. */
static GPtrArray *
unite_pieces (const BfFold *fold)
{
  g_autoptr (GPtrArray) pieces = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);

  for (guint i = 0; i < fold->faces->len; i++)
    if (bf_ring_size (bf_fold_face (fold, i)->outline) >= 3)
      g_ptr_array_add (pieces, bf_ring_copy (bf_fold_face (fold, i)->outline));
  for (guint i = 0; i < fold->bends->len; i++)
    if (fold->layout->flaps[i].placed)
      g_ptr_array_add (pieces, bf_outline_zone_ring (bf_fold_bend (fold, i)));
  for (guint i = 0; i < fold->folded->len; i++)
    add_folded_corner (bf_fold_folded_corner (fold, i), pieces);
  return bf_overlay_unite (pieces);
}

/* The outline, walked round in one go where that gives a simple ring, else pieced together. */
static GPtrArray *
blank_outlines (BfFold *fold)
{
  g_autoptr (BfRing) walked = bf_outline_blank (fold->layout);
  GPtrArray *outlines;
  BfVec2 place = { 0.0, 0.0 };

  if (!bf_overlay_is_simple (walked, &place))
    {
      fold->layout->base_crosses = !bf_part_check_outline (fold->part, NULL);
      fold->layout->wanted_twice_at = place;
      bf_wanted_twice_find (fold);
      return unite_pieces (fold);
    }
  outlines = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  g_ptr_array_add (outlines, g_steal_pointer (&walked));
  return outlines;
}

static double
folded_area (const BfFoldedCorner *corner)
{
  double area = corner->rest_mm2 + bf_ring_area (corner->ears[0]) + bf_ring_area (corner->ears[1]);

  for (guint i = 0; i < G_N_ELEMENTS (corner->creases); i++)
    {
      const BfVec2 *zone = corner->creases[i].zone;

      area += bf_vec2_distance (zone[0], zone[1]) * bf_vec2_distance (zone[1], zone[2]);
    }
  return area;
}

static double
area_before_cuts (const BfFold *fold)
{
  double area = 0.0;

  for (guint i = 0; i < fold->faces->len; i++)
    area += bf_ring_area (bf_fold_face (fold, i)->outline);
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);

      if (fold->layout->flaps[i].placed)
        area += bend->allowance_mm * bf_vec2_distance (bend->line[0], bend->line[1]);
    }
  for (guint i = 0; i < fold->folded->len; i++)
    area += folded_area (bf_fold_folded_corner (fold, i));
  return area;
}

/* What the grooves of scores take of the metal; where a slot or an opening crosses one there is
 * nothing to take. */
static double
grooves_mm3 (const BfFold *fold)
{
  double volume = 0.0;

  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);
      double depth = fold->part->metal.thickness_mm - bf_bend_skin_mm (fold, bend);

      if (!isnan (bend->groove_mm))
        volume +=
            bend->groove_mm * depth * bend->kept * bf_vec2_distance (bend->line[0], bend->line[1]);
    }
  return volume;
}

static void
measure_blank (BfFold *fold)
{
  BfBlank *blank = &fold->blank;
  const BfMaterial *material = bf_material_find (fold->part->metal.material);

  blank->box = bf_box_empty ();
  for (guint i = 0; i < blank->rings->len; i++)
    {
      const BfRing *ring = bf_blank_ring (blank, i);

      blank->area_mm2 += bf_ring_area (ring);
      blank->cut_length_mm += bf_ring_length (ring);
      bf_ring_extend_box (ring, &blank->box);
    }
  blank->area_before_cuts_mm2 = area_before_cuts (fold);
  blank->mass_kg = material == NULL
                       ? NAN
                       : (blank->area_mm2 * fold->layout->thickness_mm - grooves_mm3 (fold)) *
                             material->density_kg_m3 * 1e-9;
}

/* TRUE where a loose piece is no more than a splinter that a relief parts from the metal beside it:
 * smaller than a square as wide as the metal is thick. */
static gboolean
is_relief_scrap (const BfFold *fold, const BfRing *piece)
{
  if (bf_ring_area (piece) >= fold->layout->thickness_mm * fold->layout->thickness_mm)
    return FALSE;
  for (guint i = 0; i < fold->reliefs->len; i++)
    {
      const BfRelief *relief = bf_fold_relief (fold, i);
      double reach = SCRAP_REACH * relief->diameter_mm;
      gboolean near = TRUE;

      for (guint k = 0; k < bf_ring_size (piece) && near; k++)
        near = bf_vec2_distance (bf_ring_vertex (piece, k)->p, relief->at) < reach;
      if (near)
        return TRUE;
    }
  return FALSE;
}

/* What a relief parts from the metal beside it falls away and is no piece of the blank. */
static void
drop_scraps (BfFold *fold)
{
  BfBlank *blank = &fold->blank;

  for (guint i = blank->n_outer; i-- > 1;)
    if (is_relief_scrap (fold, bf_blank_ring (blank, i)))
      {
        g_ptr_array_remove_index (blank->rings, i);
        blank->n_outer--;
      }
}

static void
make_blank (BfFold *fold)
{
  g_autoptr (GPtrArray) outlines = blank_outlines (fold);
  g_autoptr (GPtrArray) tools = g_ptr_array_new ();

  for (guint i = 0; i < fold->reliefs->len; i++)
    g_ptr_array_add (tools, bf_fold_relief (fold, i)->ring);
  for (guint i = 0; i < fold->openings->len; i++)
    g_ptr_array_add (tools, bf_fold_opening (fold, i)->ring);
  for (guint i = 0; i < fold->bends->len; i++)
    for (guint k = 0; k < bf_fold_bend (fold, i)->slots->len; k++)
      g_ptr_array_add (tools, bf_bend_slot (bf_fold_bend (fold, i), k)->ring);
  fold->blank.rings = bf_overlay_cut (outlines, tools, &fold->blank.n_outer);
  drop_scraps (fold);
  measure_blank (fold);
}

/* ---- the fold ----------------------------------------------------------------------------- */

static void
clear_face (gpointer data)
{
  g_clear_pointer (&((BfFace *)data)->outline, bf_ring_free);
}

static void
clear_opening (gpointer data)
{
  g_clear_pointer (&((BfOpeningResult *)data)->ring, bf_ring_free);
}

static GArray *
owning_array (guint element_size, GDestroyNotify clear)
{
  GArray *array = g_array_new (FALSE, TRUE, element_size);

  if (clear != NULL)
    g_array_set_clear_func (array, clear);
  return array;
}

BfFold *
bf_fold_shape (BfPart *part)
{
  BfFold *fold;

  g_return_val_if_fail (bf_part_n_points (part) >= 3, NULL);
  fold = g_new0 (BfFold, 1);
  g_atomic_ref_count_init (&fold->ref_count);
  fold->asked = bf_part_copy (part);
  bf_part_make_counter_clockwise (fold->asked);
  fold->part = bf_tabs_add (fold->asked);
  fold->faces = owning_array (sizeof (BfFace), clear_face);
  fold->bends = owning_array (sizeof (BfBendResult), (GDestroyNotify)bf_bend_result_clear);
  fold->reliefs = owning_array (sizeof (BfRelief), (GDestroyNotify)bf_relief_clear);
  fold->openings = owning_array (sizeof (BfOpeningResult), clear_opening);
  fold->seams = owning_array (sizeof (BfSeam), NULL);
  fold->checks = owning_array (sizeof (BfCheck), (GDestroyNotify)bf_check_clear);

  fold->layout = bf_layout_new (fold->part);
  bf_layout_unfold (fold->layout);
  fold->folded = g_array_ref (fold->layout->folded);
  find_faces (fold);
  bf_bends_find (fold);
  bf_reliefs_find (fold->layout, fold->reliefs);
  bf_openings_settle (fold->layout, fold->asked);
  bf_openings_settle (fold->layout, fold->part);
  bf_openings_find (fold->layout, fold->openings);
  bf_formed_build (fold->layout, fold->faces, 1.0, &fold->formed);
  bf_formed_measure (fold->layout, &fold->formed);
  return fold;
}

BfFold *
bf_fold (BfPart *part)
{
  BfFold *fold = bf_fold_shape (part);

  g_return_val_if_fail (fold != NULL, NULL);
  bf_bends_slot (fold);
  make_blank (fold);
  bf_seams_find (fold->layout, fold->seams);
  fold->order = bf_bend_order (fold);
  bf_checks_find (fold);
  return fold;
}

BfPart *
bf_fold_settled (BfPart *part)
{
  g_return_val_if_fail (part != NULL, NULL);

  for (guint i = 0; i < part->openings->len; i++)
    if (((const BfOpening *)g_ptr_array_index (part->openings, i))->from_end)
      {
        g_autoptr (BfFold) fold = bf_fold_shape (part);
        return bf_part_ref (fold->asked);
      }
  return bf_part_ref (part);
}

BfFold *
bf_fold_ref (BfFold *fold)
{
  g_atomic_ref_count_inc (&fold->ref_count);
  return fold;
}

void
bf_fold_unref (BfFold *fold)
{
  if (!g_atomic_ref_count_dec (&fold->ref_count))
    return;
  bf_formed_clear (&fold->formed);
  g_clear_pointer (&fold->blank.rings, g_ptr_array_unref);
  g_array_unref (fold->checks);
  g_array_unref (fold->seams);
  g_array_unref (fold->folded);
  g_clear_pointer (&fold->order, g_array_unref);
  g_array_unref (fold->openings);
  g_array_unref (fold->reliefs);
  g_array_unref (fold->bends);
  g_array_unref (fold->faces);
  bf_layout_free (fold->layout);
  bf_part_unref (fold->part);
  bf_part_unref (fold->asked);
  g_free (fold);
}

int
bf_fold_find_face (const BfFold *fold, const char *id)
{
  g_return_val_if_fail (fold != NULL && id != NULL, -1);

  for (guint i = 0; i < fold->faces->len; i++)
    if (g_strcmp0 (bf_fold_face (fold, i)->id, id) == 0)
      return (int)i;
  return -1;
}

guint
bf_fold_count_checks (const BfFold *fold, BfSeverity severity)
{
  guint n = 0;

  for (guint i = 0; i < fold->checks->len; i++)
    n += bf_fold_check (fold, i)->severity == severity ? 1 : 0;
  return n;
}

void
bf_fold_formed_at (const BfFold *fold, double fraction, BfFormed *formed)
{
  bf_formed_build (fold->layout, fold->faces, fraction, formed);
}

BfVec3
bf_fold_place (const BfFold *fold, guint face, BfVec2 p)
{
  const BfFlap *flap;
  BfVec2 d;

  if (face == 0)
    return bf_vec3 (p.x, p.y, 0.0);
  flap = &fold->layout->flaps[face - 1];
  d = bf_vec2_sub (p, bf_flap_to_blank (flap, 0.0, 0.0));
  return bf_vec3_along (
      bf_vec3_along (flap->pose.origin, flap->pose.e, bf_vec2_dot (d, flap->flat_e)), flap->pose.d,
      bf_vec2_dot (d, flap->flat_n));
}
