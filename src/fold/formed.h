/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* The metal as it stands when every bend is turned by that fraction of its angle: solids, but
 * neither box nor volume. faces: the fold's (BfFace), whose outlines the slabs have. formed: (out).
 */
void
bf_formed_build (const BfLayout *layout, const GArray *faces, double fraction, BfFormed *formed);

/* The same with a fraction for each flap's bend, by its index. */
void bf_formed_build_each (const BfLayout *layout,
                           const GArray *faces,
                           const double *fractions,
                           BfFormed *formed);

/* The base as it lies; and one flange's flat, but for its outline, with its bend turned by a
 * fraction. parent: how what it hangs on stands; pose: (out) how the flange stands. */
BfSolid bf_formed_base_slab (const GArray *faces);
BfSolid bf_formed_flap_slab (
    const BfLayout *layout, guint flap, double fraction, const BfPose *parent, BfPose *pose);

/* Box and volume of the formed part. */
void bf_formed_measure (const BfLayout *layout, BfFormed *formed);
