/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Formed parts put together by hand, so that the picture is tested apart from the folding. Faces
 * end at the tangents of their bends; nothing is trimmed but by `ends`. */

typedef struct
{
  const char *name;
  BfFold *(*make) (void);
  gboolean sound; /* no metal passes through other metal, and no flat ends within a bend's width */
} BfFormedFixture;

extern const BfFormedFixture bf_formed_fixtures[];
extern const guint bf_n_formed_fixtures;

/* What hangs on an edge of a face: from start_mm past its start to end_mm before its end. */
typedef struct
{
  guint parent, edge;
  double start_mm, end_mm;
  double length_mm, angle_deg, radius_mm;
  BfTurn turn;
  double narrower_mm[2]; /* how far its two tip corners are drawn in */
} BfFormedFlange;

/* A base of straight edges, t mm thick; then flanges, each given the next index. */
BfFold *bf_formed_fixture_new (const BfVec2 *base, guint n_points, double thickness_mm);
guint bf_formed_fixture_add (BfFold *fold, BfFormedFlange flange);

/* Adds a round hole through a face, in the coordinates of the blank. */
void bf_formed_fixture_drill (BfFold *fold, BfVec2 at, double diameter_mm);
void bf_formed_fixture_free (BfFold *fold);

/* The volume of the slabs and sectors as they are asked for, holes not counted. */
double bf_formed_fixture_volume (const BfFold *fold);
