/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/edge-edits.h"

#include <glib/gi18n.h>

#include "app/opening-edits.h"
#include "app/surface-edges.h"
#include "core/part-file.h"

static gboolean
tip_is_bare (const BfPart *part, const BfFlange *flange)
{
  BfEdge tip = { flange->id, BF_EDGE_TIP, 0 };
  return flange->angle_deg < 180.0 && bf_part_flange_at (part, &tip) == NULL;
}

static guint
flange_offers (const BfPart *part, const BfFlange *flange)
{
  guint offers = BF_OFFER_LENGTH | BF_OFFER_ANGLE | BF_OFFER_HOLE | BF_OFFER_REMOVE;

  offers |= flange->turn == BF_TURN_UP ? BF_OFFER_TURN_DOWN : BF_OFFER_TURN_UP;
  if (tip_is_bare (part, flange))
    offers |= BF_OFFER_LIP | BF_OFFER_HEM;
  if (flange->edge == BF_EDGE_INDEX)
    offers |= BF_OFFER_COPY;
  return offers;
}

guint
bf_edge_offers (const BfFold *fold, BfSelection selection)
{
  BfEdge edge;

  if (fold == NULL)
    return 0;
  if (bf_selection_is_opening (selection))
    return BF_OFFER_REMOVE;
  if (bf_selection_is_point (selection))
    return bf_part_n_points (fold->part) > 3 ? BF_OFFER_REMOVE : 0;
  if (!bf_selection_to_edge (fold, selection, &edge))
    return 0;
  const BfFlange *flange = bf_selection_flange (fold, selection);
  if (flange != NULL && flange->is_tab)
    return 0; /* the corner's, not the person's */
  guint offers = flange != NULL
                     ? flange_offers (fold->part, flange)
                     : BF_OFFER_TURN_UP | BF_OFFER_TURN_DOWN | BF_OFFER_HEM | BF_OFFER_HOLE;
  if (edge.kind == BF_EDGE_INDEX)
    offers |= BF_OFFER_EDGE_LENGTH | BF_OFFER_POINT;
  return offers;
}

/* part: (transfer full). What comes out the same, such as a copy to walls that are like it already,
 * is no step. */
static void
apply (BfDocument *document, BfPart *part, const char *name)
{
  g_autoptr (BfPart) taken = part;
  g_autofree char *before = NULL, *after = NULL;

  if (part == NULL)
    return;
  before = bf_part_to_text (bf_document_get_part (document));
  after = bf_part_to_text (part);
  if (!g_str_equal (before, after))
    bf_document_apply (document, part, name, NULL);
}

static BfSelection
select_flange (BfDocument *document, const char *id, BfSelection otherwise)
{
  int face = bf_fold_find_face (bf_document_get_fold (document), id);
  return face > 0 ? (BfSelection){ face, BF_FLANGE_TIP } : otherwise;
}

static BfSelection
turn (BfDocument *document, BfSelection selection, BfTurn turn)
{
  const BfFold *fold = bf_document_get_fold (document);
  const BfPart *part = bf_document_get_part (document);
  const BfFlange *flange = bf_selection_flange (fold, selection);
  const char *name = turn == BF_TURN_UP ? _ ("Turn up") : _ ("Turn down");
  BfEdge edge;

  if (flange != NULL)
    apply (document, bf_edit_flange_turn (part, flange->id, turn), name);
  else if (bf_selection_to_edge (fold, selection, &edge))
    apply (document, bf_edit_add_flange (part, &edge, turn, NULL), name);
  return selection;
}

static BfSelection
add_hem (BfDocument *document, BfSelection selection)
{
  const BfFold *fold = bf_document_get_fold (document);
  const BfFlange *flange = bf_selection_flange (fold, selection);
  BfEdge tip = { flange != NULL ? flange->id : NULL, BF_EDGE_TIP, 0 };
  BfEdge edge = tip;
  g_autofree char *id = NULL;

  if (flange == NULL && !bf_selection_to_edge (fold, selection, &edge))
    return selection;
  apply (document, bf_edit_add_hem (bf_document_get_part (document), &edge, BF_TURN_UP, &id),
         _ ("Hem"));
  return flange != NULL ? select_flange (document, id, selection) : selection;
}

static BfSelection
add_lip (BfDocument *document, BfSelection selection)
{
  const BfFlange *flange = bf_selection_flange (bf_document_get_fold (document), selection);
  BfEdge tip = { flange->id, BF_EDGE_TIP, 0 };
  g_autofree char *id = NULL;

  apply (document, bf_edit_add_flange (bf_document_get_part (document), &tip, flange->turn, &id),
         _ ("Lip"));
  return select_flange (document, id, selection);
}

static BfSelection
add_point (BfDocument *document, BfSelection selection)
{
  const BfPart *part = bf_document_get_part (document);
  guint edge = (guint)selection.edge;
  BfVec2 sum = bf_vec2_add (bf_part_point (part, edge), bf_part_point (part, edge + 1));

  apply (document, bf_edit_add_point (part, edge, bf_vec2_scale (sum, 0.5)), _ ("New point"));
  return bf_selection_point (edge + 1);
}

static BfSelection
remove_it (BfDocument *document, BfSelection selection)
{
  const BfPart *part = bf_document_get_part (document);
  const BfFold *fold = bf_document_get_fold (document);
  const BfFlange *flange = bf_selection_flange (fold, selection);

  if (bf_selection_is_opening (selection))
    return bf_opening_remove (document, selection);
  if (bf_selection_is_point (selection))
    {
      apply (document, bf_edit_remove_point (part, bf_selection_corner_at (selection)),
             _ ("Remove a point"));
      return BF_SELECTION_NONE;
    }
  if (flange == NULL)
    return selection;
  /* Translators: %s is a flange's name */
  g_autofree char *name = g_strdup_printf (_ ("Remove %s"), flange->id);
  /* What it stood on is there still. */
  BfSelection under = bf_selection_under (fold, flange);
  gboolean stays = bf_selection_is_same (under, selection);
  g_autofree char *on = g_strdup (flange->on);
  apply (document, bf_edit_remove_flange (part, flange->id), name);
  return stays ? bf_selection_in (bf_document_get_fold (document), on, under) : BF_SELECTION_NONE;
}

static BfSelection
do_it (BfDocument *document, BfSelection selection, BfOffers what)
{
  const BfFold *fold = bf_document_get_fold (document);

  switch ((guint)what)
    {
    case BF_OFFER_TURN_UP:
      return turn (document, selection, BF_TURN_UP);
    case BF_OFFER_TURN_DOWN:
      return turn (document, selection, BF_TURN_DOWN);
    case BF_OFFER_HEM:
      return add_hem (document, selection);
    case BF_OFFER_LIP:
      return add_lip (document, selection);
    case BF_OFFER_COPY:
      apply (document,
             bf_edit_copy_all_round (bf_document_get_part (document),
                                     bf_selection_flange (fold, selection)->id),
             _ ("Copy all round"));
      return selection;
    case BF_OFFER_HOLE:
      return bf_opening_add (document, selection, BF_OPENING_ROUND);
    case BF_OFFER_POINT:
      return add_point (document, selection);
    case BF_OFFER_REMOVE:
      return remove_it (document, selection);
    default:
      return selection;
    }
}

BfSelection
bf_edge_do (BfDocument *document, BfSelection selection, BfOffers what)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (document), selection);

  const BfFold *fold = bf_document_get_fold (document);
  if ((bf_edge_offers (fold, selection) & what) == 0)
    return selection;
  g_autofree char *id = g_strdup (bf_fold_face (fold, (guint)selection.face)->id);
  BfSelection then = do_it (document, selection, what);
  /* What is selected still may count otherwise among the faces now. */
  return bf_selection_is_same (then, selection)
             ? bf_selection_in (bf_document_get_fold (document), id, then)
             : then;
}

void
bf_edge_move_point (BfDocument *document, guint point, BfVec2 to, gboolean stepped)
{
  g_return_if_fail (BF_IS_DOCUMENT (document));

  g_autoptr (BfPart) part = bf_edit_move_point (bf_document_get_part (document), point, to);
  if (bf_part_check_outline (part, NULL))
    bf_document_apply (document, part, _ ("Move a point"), stepped ? "move-point" : NULL);
}
