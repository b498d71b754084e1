/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/formed-scene.h"

/* Finds for every edge of the scene the polygon on its other side, and fills in what the edge is
 * (smooth, tangent, crisp) and `beyond`. An edge that no other polygon shares is crisp. */
void bf_formed_scene_mark_edges (BfFormedScene *scene);
