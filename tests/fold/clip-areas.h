/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

/* Areas of polygons put together and taken apart, by a polygon library that the program itself
 * does not use: a second opinion on its overlays. */

#ifdef __cplusplus
extern "C"
{
#endif

  /* Polygons that are added one by one; x, y, x, y, … in mm, counter-clockwise. */
  typedef struct _ClipPieces ClipPieces;

  ClipPieces *clip_pieces_new (void);
  void clip_pieces_free (ClipPieces *pieces);
  void clip_pieces_add (ClipPieces *pieces, const double *xy, unsigned n_points);

  /* What all of them cover, in mm². */
  double clip_union_area (const ClipPieces *pieces);

  /* The largest area that two of them have in common and no tool takes; a, b: (out) which they are,
   * if it is over 0. tools: NULL for none. */
  double
  clip_worst_overlap (const ClipPieces *pieces, const ClipPieces *tools, unsigned *a, unsigned *b);

  /* What is left of their union when the tools are taken away, against outlines that should show
   * just that (holes run clockwise). lost_mm2, gained_mm2: (out) what the outlines lack, and what
   * they have too much. */
  void clip_compare (const ClipPieces *pieces,
                     const ClipPieces *tools,
                     const ClipPieces *outlines,
                     double *lost_mm2,
                     double *gained_mm2);

#ifdef __cplusplus
}
#endif
