/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "clip-areas.h"

#include <cmath>
#include <algorithm>

#include <clipper.hpp>

using namespace ClipperLib;

/* Places are whole numbers of this many to the millimetre: 0.01 µm. */
static const double per_mm = 1e8;

struct _ClipPieces
{
  Paths paths;
};

extern "C" ClipPieces *
clip_pieces_new (void)
{
  return new ClipPieces;
}

extern "C" void
clip_pieces_free (ClipPieces *pieces)
{
  delete pieces;
}

extern "C" void
clip_pieces_add (ClipPieces *pieces, const double *xy, unsigned n_points)
{
  Path path;

  for (unsigned i = 0; i < n_points; i++)
    path.push_back (
        IntPoint (std::llround (xy[2 * i] * per_mm), std::llround (xy[2 * i + 1] * per_mm)));
  pieces->paths.push_back (path);
}

static double
area_of (const Paths &paths)
{
  double area = 0.0;

  for (const Path &path : paths)
    area += Area (path);
  return area / (per_mm * per_mm);
}

static Paths
united (const Paths &paths)
{
  Clipper clipper;
  Paths result;

  clipper.AddPaths (paths, ptSubject, true);
  clipper.Execute (ctUnion, result, pftNonZero, pftNonZero);
  return result;
}

extern "C" double
clip_union_area (const ClipPieces *pieces)
{
  return area_of (united (pieces->paths));
}

struct Box
{
  cInt x0, y0, x1, y1;
};

static Box
box_of (const Path &path)
{
  Box box = { path[0].X, path[0].Y, path[0].X, path[0].Y };

  for (const IntPoint &p : path)
    box = { std::min (box.x0, p.X), std::min (box.y0, p.Y), std::max (box.x1, p.X),
            std::max (box.y1, p.Y) };
  return box;
}

static Paths
difference (const Paths &from, const Paths &what)
{
  Clipper clipper;
  Paths result;

  clipper.AddPaths (from, ptSubject, true);
  clipper.AddPaths (what, ptClip, true);
  clipper.Execute (ctDifference, result, pftNonZero, pftNonZero);
  return result;
}

static double
common_area (const Path &a, const Path &b, const ClipPieces *tools)
{
  Box x = box_of (a), y = box_of (b);
  Clipper clipper;
  Paths result;

  if (x.x1 < y.x0 || y.x1 < x.x0 || x.y1 < y.y0 || y.y1 < x.y0)
    return 0.0;
  clipper.AddPath (a, ptSubject, true);
  clipper.AddPath (b, ptClip, true);
  clipper.Execute (ctIntersection, result, pftNonZero, pftNonZero);
  return area_of (tools != nullptr && !result.empty () ? difference (result, tools->paths) : result);
}

extern "C" double
clip_worst_overlap (const ClipPieces *pieces, const ClipPieces *tools, unsigned *a, unsigned *b)
{
  double worst = 0.0;

  for (unsigned i = 0; i < pieces->paths.size (); i++)
    for (unsigned j = i + 1; j < pieces->paths.size (); j++)
      {
        double area = common_area (pieces->paths[i], pieces->paths[j], tools);

        if (area > worst)
          {
            worst = area;
            *a = i;
            *b = j;
          }
      }
  return worst;
}

extern "C" void
clip_compare (const ClipPieces *pieces,
              const ClipPieces *tools,
              const ClipPieces *outlines,
              double *lost_mm2,
              double *gained_mm2)
{
  Paths left = difference (united (pieces->paths), tools->paths);

  *lost_mm2 = area_of (difference (left, outlines->paths));
  *gained_mm2 = area_of (difference (outlines->paths, left));
}
