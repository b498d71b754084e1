/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/document.h"
#include "app/surface-view.h"

/* What can be done at a selected edge, flange, point or opening, each as one named step of a
 * document. */

typedef enum
{
  BF_OFFER_EDGE_LENGTH = 1 << 0, /* of an edge of the base */
  BF_OFFER_LENGTH = 1 << 1,      /* of the flange */
  BF_OFFER_ANGLE = 1 << 2,
  BF_OFFER_TURN_UP = 1 << 3, /* a new flange, or the one there turned over */
  BF_OFFER_TURN_DOWN = 1 << 4,
  BF_OFFER_HEM = 1 << 5,
  BF_OFFER_LIP = 1 << 6,
  BF_OFFER_COPY = 1 << 7, /* all round */
  BF_OFFER_HOLE =
      1 << 8, /* or a cut-out of another shape, see opening-edits.h; done, a round one */
  BF_OFFER_POINT = 1 << 9, /* a new point in the middle */
  BF_OFFER_REMOVE = 1 << 10,
} BfOffers;

guint bf_edge_offers (const BfFold *fold, BfSelection selection);

/* Does one of BF_OFFER_TURN_UP to BF_OFFER_REMOVE, if it is offered. Returns what to select then.
 */
BfSelection bf_edge_do (BfDocument *document, BfSelection selection, BfOffers what);

/* Moves a point of the base, unless its outline would cross itself. stepped: such moves in a row
 * make one step. */
void bf_edge_move_point (BfDocument *document, guint point, BfVec2 to, gboolean stepped);
