/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* An outline that is being drawn, corner by corner, and where its next corner would come: at the
 * pointer, drawn to right angles, to the height of other corners, to the grid and to the first
 * corner. It knows no widget. Lengths in mm, y up. */

typedef struct _BfOutlineDraft BfOutlineDraft;

/* What the next corner was drawn to. */
typedef enum
{
  BF_SNAP_FIRST = 1 << 0,  /* the first corner: the outline would be closed */
  BF_SNAP_SQUARE = 1 << 1, /* square to the last edge, or straight on */
  BF_SNAP_X = 1 << 2,      /* straight above or below another corner */
  BF_SNAP_Y = 1 << 3,      /* level with another corner */
} BfSnaps;

typedef enum
{
  BF_DRAFT_ADDED,
  BF_DRAFT_CLOSED,
  BF_DRAFT_CROSSES, /* refused: it would cross or run over what is drawn */
  BF_DRAFT_NOTHING, /* refused: no edge at all */
} BfDraftAnswer;

BfOutlineDraft *bf_outline_draft_new (double grid_mm) G_GNUC_WARN_UNUSED_RESULT;
void bf_outline_draft_free (BfOutlineDraft *draft);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfOutlineDraft, bf_outline_draft_free)

guint bf_outline_draft_n_points (const BfOutlineDraft *draft);
BfVec2 bf_outline_draft_point (const BfOutlineDraft *draft, guint i);

/* Aims at a place; reach_mm: from so far the next corner is drawn to something. freely: to nothing
 * but the first corner. */
void bf_outline_draft_aim (BfOutlineDraft *draft, BfVec2 at, double reach_mm, gboolean freely);

/* Aims from the last corner along x or y, by keys: each key the same way makes it a step longer. */
void bf_outline_draft_aim_along (BfOutlineDraft *draft, BfVec2 direction);

/* Where the next corner would come, and what it was drawn to (BfSnaps). FALSE before anything was
 * aimed at. */
gboolean bf_outline_draft_next (const BfOutlineDraft *draft, BfVec2 *next, guint *snaps);

/* The corners that the next one is straight above or level with. */
BfVec2 bf_outline_draft_aligned_x (const BfOutlineDraft *draft);
BfVec2 bf_outline_draft_aligned_y (const BfOutlineDraft *draft);

/* Makes the next edge that long, in the direction aimed at. FALSE where there is none. */
gboolean bf_outline_draft_set_length (BfOutlineDraft *draft, double length_mm);

/* Puts the next corner where it is aimed at; the very first where nothing was aimed at comes to
 * (0, 0). */
BfDraftAnswer bf_outline_draft_put (BfOutlineDraft *draft);

/* Whether, and that, the last corner is joined to the first. */
BfDraftAnswer bf_outline_draft_close (const BfOutlineDraft *draft);

/* Takes the last corner away. FALSE where there is none. */
gboolean bf_outline_draft_take_back (BfOutlineDraft *draft);

/* A part with that outline and nothing on it, with the set-up of setup. Only once it can be closed.
 * Returns: (transfer full). */
BfPart *bf_outline_draft_make (const BfOutlineDraft *draft,
                               const BfPart *setup,
                               const char *name) G_GNUC_WARN_UNUSED_RESULT;
