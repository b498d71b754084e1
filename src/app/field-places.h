/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* Finds places on the bench top for fields beside their edges: whole on the surface, not on each
 * other, not on another strip of metal. It knows no widget. All in pixels, y down. */

/* One that wants a place. */
typedef struct
{
  BfVec2 edge[2];    /* what it belongs to */
  BfVec2 outward;    /* away from the metal, a unit vector */
  BfVec2 strip[4];   /* the flat strip that it says the size of, in order round */
  gboolean inside;   /* stands on the inner side of its edge: for the base, which has no strip */
  gboolean must;     /* has to be seen: it is being typed in */
  BfVec2 row, stack; /* its size with all side by side, and with all on top of each other */
} BfFieldAsk;

/* Between the fields of one that asks. */
#define BF_FIELD_GAP_PX 2

/* One more field of that size beside the others, or below them. */
void bf_field_ask_add (BfFieldAsk *ask, double width_px, double height_px);

typedef struct
{
  gboolean shown;
  gboolean stacked;
  BfVec2 at; /* upper left corner */
} BfFieldPlace;

/* Places those that ask, the first first. room: the surface; keep_off: boxes to stay away
 * from (BfBox): the formed part, holes. places: (out), as many. */
void bf_field_places (const BfFieldAsk *asks,
                      guint n_asks,
                      const BfBox *room,
                      const GArray *keep_off,
                      BfFieldPlace *places);
