/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/convex.h"

/* The faces of a fold as they stand with each bend turned somewhere, kept up to date as bends turn:
 * only what hangs on a bend is stood anew. Faces count whole, bends themselves do not. */

typedef struct BfStanding BfStanding;

/* All bends lie flat. The fold, whose layout, faces and bends it needs, is kept by pointer: let it
 * live as long. Returns: (transfer full). */
BfStanding *bf_standing_new (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;
void bf_standing_free (BfStanding *standing);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfStanding, bf_standing_free)

/* Turns a bend to that fraction of its angle, from 0 to 1, and all that hangs on it. */
void bf_standing_turn (BfStanding *standing, guint bend, double fraction);

/* The face as it stands. */
const BfSolid *bf_standing_slab (const BfStanding *standing, guint face);

/* The face's convex parts in the blank (BfConvexPart). */
const GArray *bf_standing_parts (const BfStanding *standing, guint face);

/* TRUE where a face goes deeper than give_mm into one of the solids (BfConvex). */
gboolean bf_standing_face_hits (const BfStanding *standing,
                                guint face,
                                const GArray *solids,
                                double give_mm);

/* The same of two faces. */
gboolean bf_standing_faces_hit (const BfStanding *standing, guint a, guint b, double give_mm);

/* The faces, in order, that hang on a bend, and those that stand so near that what hangs on it may
 * come within further_mm of them, however far it and all that it carries are turned. Returns:
 * (transfer full) (element-type guint). */
GArray *bf_standing_near (const BfStanding *standing,
                          guint bend,
                          double further_mm) G_GNUC_WARN_UNUSED_RESULT;

/* TRUE where the face hangs on that bend, itself or by others. */
gboolean bf_standing_hangs_on (const BfStanding *standing, guint face, guint bend);
