/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-build.h"

/* Strips lie so near the true round, but none turns by more than a quarter of a square bend, or
 * needs to turn by less than a tenth. */
#define STRIP_SAGITTA_MM 0.05
#define STRIP_MOST_RAD (G_PI / 8.0)
#define STRIP_LEAST_RAD (G_PI / 20.0)

/* A bend that turns by less is drawn as the flat that it nearly is. */
#define FLAT_RAD 1e-6

/* How far a sector turns as it is drawn: 0 where it is so nearly flat that it is drawn flat. */
static double
drawn_angle (const BfSolid *sector)
{
  return sector->angle_rad > FLAT_RAD && isfinite (sector->radius_mm) ? sector->angle_rad : 0.0;
}

/* How wide the zone of a bend that is drawn flat is. */
static double
flat_zone_mm (const BfSolid *sector)
{
  return bf_vec2_distance (sector->zone[0], sector->zone[3]);
}

BfVec3
bf_formed_sector_normal (const BfSolid *sector, double way)
{
  double turned = way * drawn_angle (sector);
  BfVec3 out = bf_vec3_scale (sector->frame.ez, cos (turned));

  return bf_vec3_along (out, sector->frame.ey,
                        sector->turn == BF_TURN_UP ? -sin (turned) : sin (turned));
}

/* How deep below the marking side that side of the bend lies: the inside of a scored one at the
 * score's bottom. */
static double
side_depth (const BfFormedBuild *build, const BfSolid *sector, BfFormedSide side)
{
  gboolean marking = side == BF_FORMED_MARKING_SIDE;

  if (marking != (sector->turn == BF_TURN_UP))
    return marking ? 0.0 : build->thickness_mm;
  return marking ? build->thickness_mm - sector->skin_mm : sector->skin_mm;
}

/* 1 − cos a is written 2 sin² (a/2), which keeps its digits as a bend opens flat. */
static BfVec3
turned_point (const BfFormedBuild *build, const BfSolid *sector, double way, double depth, double x)
{
  gboolean up = sector->turn == BF_TURN_UP;
  double radius = sector->radius_mm + (up ? depth : build->thickness_mm - depth);
  double turned = way * drawn_angle (sector);
  double half = sin (turned / 2.0), rise = 2.0 * radius * half * half;

  if (drawn_angle (sector) <= 0.0)
    return bf_frame_point (&sector->frame, x, way * flat_zone_mm (sector), -depth);
  return bf_frame_point (&sector->frame, x, radius * sin (turned), (up ? rise : -rise) - depth);
}

BfVec3
bf_formed_sector_point (
    const BfFormedBuild *build, const BfSolid *sector, double way, BfFormedSide side, double x)
{
  return turned_point (build, sector, way, side_depth (build, sector, side), x);
}

BfVec3
bf_formed_sector_mouth (const BfFormedBuild *build, const BfSolid *sector, gboolean at_tip)
{
  return turned_point (build, sector, at_tip ? 1.0 : 0.0, 0.0, 0.0);
}

static double
way_at (const BfFormedBend *bend, guint line)
{
  return (double)line / bend->n_strips;
}

BfVec3
bf_formed_bend_point (const BfFormedBend *bend, guint line, BfFormedSide side, double x)
{
  return bf_formed_sector_point (bend->build, bend->sector, way_at (bend, line), side, x);
}

/* Out of that side, at a line (or, for line + 0.5, in the middle of a strip). */
BfVec3
bf_formed_bend_outward (const BfFormedBend *bend, double line, BfFormedSide side)
{
  BfVec3 normal = bf_formed_sector_normal (bend->sector, line / bend->n_strips);

  return side == BF_FORMED_MARKING_SIDE ? normal : bf_vec3_scale (normal, -1.0);
}

/* Adds the line's start and the places along it where flats begin and end, which only its two end
 * lines have. backward: from x = width to 0. */
static void
add_line (const BfFormedBend *bend, guint line, BfFormedSide side, gboolean backward)
{
  const BfFormedMouth *mouth = line == 0 ? bend->root : line == bend->n_strips ? bend->tip : NULL;
  guint n_covered = mouth != NULL ? mouth->covered->len : 0;
  BfFormedScene *scene = bend->build->scene;
  BfVec3 shade = bf_formed_bend_outward (bend, line, side);
  double width = bend->sector->width_mm;

  bf_formed_add_point (scene, bf_formed_bend_point (bend, line, side, backward ? width : 0.0),
                       shade);
  for (guint i = 0; i < n_covered; i++)
    {
      const BfFormedReach *reach =
          &g_array_index (mouth->covered, BfFormedReach, backward ? n_covered - 1 - i : i);
      double first = backward ? reach->to : reach->from;
      double second = backward ? reach->from : reach->to;

      bf_formed_add_point (scene, bf_formed_bend_point (bend, line, side, first), shade);
      bf_formed_add_point (scene, bf_formed_bend_point (bend, line, side, second), shade);
    }
}

static void
add_strip (const BfFormedBend *bend, guint strip, BfFormedSide side, int band)
{
  gboolean marking = side == BF_FORMED_MARKING_SIDE;
  BfFormedScene *scene = bend->build->scene;
  BfVec3 across = bf_formed_bend_outward (bend, strip + 0.5, side);
  BfFormedPolygon like = { side, TRUE, FALSE, bend->sector->face, band, across, { 0, 0 } };
  double width = bend->sector->width_mm;

  bf_formed_begin_polygon (scene, &like);
  bf_formed_begin_ring (scene);
  add_line (bend, strip, side, !marking);
  bf_formed_add_point (scene, bf_formed_bend_point (bend, strip, side, marking ? width : 0.0),
                       across);
  add_line (bend, strip + 1, side, marking);
  bf_formed_add_point (scene, bf_formed_bend_point (bend, strip + 1, side, marking ? 0.0 : width),
                       across);
  bf_formed_end_ring (scene);
  bf_formed_end_polygon (scene);
}

static int
build_band (const BfFormedBend *bend, BfFormedSide side)
{
  BfFormedScene *scene = bend->build->scene;
  int band = bf_formed_begin_band (scene, bend->sector->frame.ex);

  for (guint line = 0; line <= bend->n_strips; line++)
    bf_formed_add_stop (scene, bf_formed_bend_point (bend, line, side, 0.0),
                        bf_formed_bend_outward (bend, line, side), way_at (bend, line));
  return band;
}

/* The bend's cross-section, at x = 0 (facing back along the bend) or at its width. */
static void
build_end (const BfFormedBend *bend, gboolean at_start)
{
  BfFormedScene *scene = bend->build->scene;
  BfVec3 ex = bend->sector->frame.ex;
  double x = at_start ? 0.0 : bend->sector->width_mm;
  BfFormedPolygon like = {
    BF_FORMED_RIM, TRUE, FALSE, bend->sector->face, -1, at_start ? bf_vec3_scale (ex, -1.0) : ex,
    { 0, 0 }
  };
  BfFormedSide out = at_start ? BF_FORMED_MARKING_SIDE : BF_FORMED_OTHER_SIDE;
  BfFormedSide back = at_start ? BF_FORMED_OTHER_SIDE : BF_FORMED_MARKING_SIDE;

  bf_formed_begin_polygon (scene, &like);
  bf_formed_begin_ring (scene);
  for (guint line = 0; line <= bend->n_strips; line++)
    bf_formed_add_point (scene, bf_formed_bend_point (bend, line, out, x), like.normal);
  for (guint line = bend->n_strips + 1; line > 0; line--)
    bf_formed_add_point (scene, bf_formed_bend_point (bend, line - 1, back, x), like.normal);
  bf_formed_end_ring (scene);
  bf_formed_end_polygon (scene);
}

/* Closes the bend from `from` to `to` along one of its two ends. */
static void
build_wall (const BfFormedBend *bend, const BfFormedMouth *mouth, BfFormedReach reach)
{
  gboolean at_tip = mouth == bend->tip;
  guint line = at_tip ? bend->n_strips : 0;
  BfVec3 normal = bf_vec3_cross (bend->sector->frame.ex,
                                 bf_formed_sector_normal (bend->sector, way_at (bend, line)));
  double first = at_tip ? reach.to : reach.from, second = at_tip ? reach.from : reach.to;
  const BfVec3 p[4] = { bf_formed_bend_point (bend, line, BF_FORMED_OTHER_SIDE, first),
                        bf_formed_bend_point (bend, line, BF_FORMED_OTHER_SIDE, second),
                        bf_formed_bend_point (bend, line, BF_FORMED_MARKING_SIDE, second),
                        bf_formed_bend_point (bend, line, BF_FORMED_MARKING_SIDE, first) };
  BfFormedPolygon like = { BF_FORMED_RIM,
                           TRUE,
                           FALSE,
                           bend->sector->face,
                           -1,
                           at_tip ? bf_vec3_scale (normal, -1.0) : normal,
                           { 0, 0 } };

  bf_formed_add_quad (bend->build->scene, &like, p);
}

void
bf_formed_bend_close (const BfFormedBend *bend, const BfFormedMouth *mouth, BfFormedReach reach)
{
  double reached = reach.from;

  for (guint i = 0; i < mouth->covered->len; i++)
    {
      const BfFormedReach *covered = &g_array_index (mouth->covered, BfFormedReach, i);

      if (covered->from > reached)
        build_wall (bend, mouth, (BfFormedReach){ reached, fmin (covered->from, reach.to) });
      reached = fmax (reached, covered->to);
      if (reached >= reach.to)
        return;
    }
  build_wall (bend, mouth, (BfFormedReach){ reached, reach.to });
}

static const BfFormedMouth *
find_mouth (const BfFormedBuild *build, guint solid, gboolean tip)
{
  for (guint i = 0; i + 1 < build->mouths->len; i += 2)
    if (g_array_index (build->mouths, BfFormedMouth, i).sector == solid)
      return &g_array_index (build->mouths, BfFormedMouth, tip ? i + 1 : i);
  g_return_val_if_reached (NULL);
}

static guint
count_strips (const BfFormedBuild *build, const BfSolid *sector)
{
  double outer = fmax (sector->radius_mm + build->thickness_mm, STRIP_SAGITTA_MM);
  double strip = 2.0 * acos (1.0 - STRIP_SAGITTA_MM / outer);

  strip = CLAMP (strip, STRIP_LEAST_RAD, STRIP_MOST_RAD);
  return (guint)fmax (ceil (drawn_angle (sector) / strip - 1e-9), 1.0);
}

void
bf_formed_build_sector (BfFormedBuild *build, const BfSolid *sector, guint solid)
{
  BfFormedBend bend = { build, sector, find_mouth (build, solid, FALSE),
                        find_mouth (build, solid, TRUE), count_strips (build, sector) };

  int bands[2];

  if (sector->width_mm <= 0.0)
    return;
  bands[0] = build_band (&bend, BF_FORMED_MARKING_SIDE);
  bands[1] = build_band (&bend, BF_FORMED_OTHER_SIDE);
  if (bf_formed_build_cut_bend (&bend, bands))
    return;
  for (guint strip = 0; strip < bend.n_strips; strip++)
    {
      add_strip (&bend, strip, BF_FORMED_MARKING_SIDE, bands[0]);
      add_strip (&bend, strip, BF_FORMED_OTHER_SIDE, bands[1]);
    }
  build_end (&bend, TRUE);
  build_end (&bend, FALSE);
  bf_formed_bend_close (&bend, bend.root, (BfFormedReach){ 0.0, sector->width_mm });
  bf_formed_bend_close (&bend, bend.tip, (BfFormedReach){ 0.0, sector->width_mm });
}
