/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "formed-fixtures.h"

/* The neutral line's place does not matter to a picture. */
#define K 0.42

static double
thickness (const BfFold *fold)
{
  return fold->part->metal.thickness_mm;
}

static void
add_face (BfFold *fold, int parent, BfRing *outline)
{
  BfFace face = { parent < 0 ? "base" : "flange", parent, parent < 0 ? -1 : (int)fold->bends->len,
                  outline };

  g_array_append_val (fold->faces, face);
}

BfFold *
bf_formed_fixture_new (const BfVec2 *base, guint n_points, double thickness_mm)
{
  BfFold *fold = g_new0 (BfFold, 1);
  BfSolid slab = { 0 };
  BfRing *outline = bf_ring_new ();

  fold->part = bf_part_new ();
  fold->part->metal.thickness_mm = thickness_mm;
  fold->faces = g_array_new (FALSE, TRUE, sizeof (BfFace));
  fold->bends = g_array_new (FALSE, TRUE, sizeof (BfBendResult));
  fold->openings = g_array_new (FALSE, TRUE, sizeof (BfOpeningResult));
  fold->formed.solids = g_array_new (FALSE, TRUE, sizeof (BfSolid));
  fold->blank.rings = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  for (guint i = 0; i < n_points; i++)
    bf_ring_add (outline, base[i], 0.0);
  add_face (fold, -1, outline);
  slab.outline = outline;

  slab.frame = (BfFrame){ { 0, 0, 0 }, { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };
  slab.flat_ex = bf_vec2 (1.0, 0.0);
  slab.flat_ey = bf_vec2 (0.0, 1.0);
  g_array_append_val (fold->formed.solids, slab);
  return fold;
}

static const BfSolid *
slab_of (const BfFold *fold, guint face)
{
  for (guint i = 0; i < fold->formed.solids->len; i++)
    if (bf_formed_solid (&fold->formed, i)->kind == BF_SOLID_SLAB &&
        bf_formed_solid (&fold->formed, i)->face == face)
      return bf_formed_solid (&fold->formed, i);
  g_assert_not_reached ();
}

static BfVec3
placed (const BfSolid *slab, BfVec2 p)
{
  BfVec2 away = bf_vec2_sub (p, slab->flat_origin);

  return bf_frame_point (&slab->frame, bf_vec2_dot (away, slab->flat_ex),
                         bf_vec2_dot (away, slab->flat_ey), 0.0);
}

static BfVec3
placed_direction (const BfSolid *slab, BfVec2 d)
{
  return bf_vec3_sub (placed (slab, d), placed (slab, bf_vec2 (0.0, 0.0)));
}

/* The frame at the end of a bend: the bend's own, turned by its angle about its axis. */
static BfFrame
turned_frame (const BfSolid *sector, double thickness_mm)
{
  BfFrame root = sector->frame, tip = sector->frame;
  double s = sin (sector->angle_rad), c = cos (sector->angle_rad);
  double up = sector->turn == BF_TURN_UP ? 1.0 : -1.0;
  double radius = sector->radius_mm + (up > 0.0 ? 0.0 : thickness_mm);

  tip.origin = bf_frame_point (&root, 0.0, radius * s, up * radius * (1.0 - c));
  tip.ey = bf_vec3_along (bf_vec3_scale (root.ey, c), root.ez, up * s);
  tip.ez = bf_vec3_along (bf_vec3_scale (root.ez, c), root.ey, -up * s);
  return tip;
}

static BfSolid
make_sector (const BfFold *fold, const BfFormedFlange *flange, BfVec2 from, BfVec2 along)
{
  const BfSolid *parent = slab_of (fold, flange->parent);
  BfSolid sector = { .kind = BF_SOLID_SECTOR, .face = fold->faces->len, .on = flange->parent };

  sector.frame.origin = placed (parent, from);
  sector.frame.ex = placed_direction (parent, along);
  sector.frame.ey = placed_direction (parent, bf_vec2 (along.y, -along.x));
  sector.frame.ez = parent->frame.ez;
  sector.radius_mm = flange->radius_mm;
  sector.skin_mm = thickness (fold);
  sector.angle_rad = bf_deg_to_rad (flange->angle_deg);
  sector.turn = flange->turn;
  return sector;
}

/* The root from its end to its start, then out, and along the tip, which is edge 2:
 * counter-clockwise seen from the marking side. */
static BfRing *
make_outline (const BfFormedFlange *flange, const BfSolid *slab, double width)
{
  BfVec2 in = slab->flat_ex;
  BfVec2 tip = bf_vec2_along (slab->flat_origin, slab->flat_ey, flange->length_mm);
  BfRing *outline = bf_ring_new ();

  bf_ring_add (outline, bf_vec2_along (slab->flat_origin, in, width), 0.0);
  bf_ring_add (outline, slab->flat_origin, 0.0);
  bf_ring_add (outline, bf_vec2_along (tip, in, flange->narrower_mm[0]), 0.0);
  bf_ring_add (outline, bf_vec2_along (tip, in, width - flange->narrower_mm[1]), 0.0);
  return outline;
}

guint
bf_formed_fixture_add (BfFold *fold, BfFormedFlange flange)
{
  const BfRing *on = bf_fold_face (fold, flange.parent)->outline;
  BfVec2 a = bf_ring_vertex (on, flange.edge)->p, b = bf_ring_vertex (on, flange.edge + 1)->p;
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (b, a));
  BfVec2 from = bf_vec2_along (a, along, flange.start_mm);
  BfSolid sector = make_sector (fold, &flange, from, along);
  BfSolid slab = { .kind = BF_SOLID_SLAB, .face = fold->faces->len };
  BfBendResult bend = { .face = fold->faces->len, .angle_rad = sector.angle_rad };

  bend.allowance_mm = sector.angle_rad * (flange.radius_mm + K * thickness (fold));
  sector.width_mm = bf_vec2_distance (a, b) - flange.start_mm - flange.end_mm;
  slab.frame = turned_frame (&sector, thickness (fold));
  slab.flat_ex = along;
  slab.flat_ey = bf_vec2 (along.y, -along.x);
  slab.flat_origin = bf_vec2_along (from, slab.flat_ey, bend.allowance_mm);
  slab.outline = make_outline (&flange, &slab, sector.width_mm);
  sector.zone[0] = bf_vec2_along (from, along, sector.width_mm);
  sector.zone[1] = from;
  sector.zone[2] = slab.flat_origin;
  sector.zone[3] = bf_vec2_along (slab.flat_origin, along, sector.width_mm);
  add_face (fold, (int)flange.parent, (BfRing *)slab.outline);
  g_array_append_val (fold->bends, bend);
  g_array_append_val (fold->formed.solids, sector);
  g_array_append_val (fold->formed.solids, slab);
  return fold->faces->len - 1;
}

void
bf_formed_fixture_drill (BfFold *fold, BfVec2 at, double diameter_mm)
{
  BfOpeningResult opening = { .ring = bf_ring_new () };

  bf_ring_add (opening.ring, bf_vec2 (at.x + diameter_mm / 2.0, at.y), 1.0);
  bf_ring_add (opening.ring, bf_vec2 (at.x - diameter_mm / 2.0, at.y), 1.0);
  g_array_append_val (fold->openings, opening);
}

void
bf_formed_fixture_free (BfFold *fold)
{
  for (guint i = 0; i < fold->faces->len; i++)
    bf_ring_free (bf_fold_face (fold, i)->outline);
  for (guint i = 0; i < fold->openings->len; i++)
    bf_ring_free (bf_fold_opening (fold, i)->ring);
  g_array_unref (fold->openings);
  g_array_unref (fold->faces);
  g_array_unref (fold->bends);
  g_array_unref (fold->formed.solids);
  g_ptr_array_unref (fold->blank.rings);
  bf_part_unref (fold->part);
  g_free (fold);
}

double
bf_formed_fixture_volume (const BfFold *fold)
{
  double t = thickness (fold), volume = 0.0;

  for (guint i = 0; i < fold->formed.solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (&fold->formed, i);

      if (solid->kind == BF_SOLID_SLAB)
        volume += t * bf_ring_area (solid->outline);
      else
        volume += t * solid->width_mm * solid->angle_rad * (solid->radius_mm + t / 2.0);
    }
  return volume;
}

static const BfVec2 oblong[] = { { 0, 0 }, { 120, 0 }, { 120, 80 }, { 0, 80 } };

static BfFold *
make_flat (void)
{
  return bf_formed_fixture_new (oblong, 4, 2.0);
}

/* Four walls whose corners stay open. */
static BfFold *
make_tray (void)
{
  BfFold *fold = bf_formed_fixture_new (oblong, 4, 1.5);

  for (guint edge = 0; edge < 4; edge++)
    bf_formed_fixture_add (fold, (BfFormedFlange){ 0, edge, 0, 0, 34, 90, 1.5, BF_TURN_UP, { 0 } });
  return fold;
}

/* An angle with holes through both legs. */
static BfFold *
make_angle (void)
{
  BfFold *fold = bf_formed_fixture_new (oblong, 4, 3.0);

  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 0, 0, 0, 60, 90, 3, BF_TURN_UP, { 20, 0 } });
  bf_formed_fixture_drill (fold, bf_vec2 (30, 40), 22.0);
  bf_formed_fixture_drill (fold, bf_vec2 (85, 30), 12.0);
  bf_formed_fixture_drill (fold, bf_vec2 (70, -30), 16.0);
  return fold;
}

/* A channel, one side of which is turned back on itself. */
static BfFold *
make_channel (void)
{
  BfFold *fold = bf_formed_fixture_new (oblong, 4, 2.0);
  guint side =
      bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 0, 0, 0, 40, 90, 4, BF_TURN_UP, { 0 } });

  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 2, 0, 0, 40, 90, 4, BF_TURN_UP, { 0 } });
  bf_formed_fixture_add (fold,
                         (BfFormedFlange){ side, 2, 0, 0, 18, 170, 1.5, BF_TURN_DOWN, { 0 } });
  return fold;
}

/* A closed hem: leaf on leaf. */
static BfFold *
make_hem (void)
{
  BfFold *fold = bf_formed_fixture_new (oblong, 4, 2.0);

  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 1, 0, 0, 30, 180, 0, BF_TURN_UP, { 0 } });
  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 3, 10, 20, 30, 180, 0, BF_TURN_DOWN, { 0 } });
  return fold;
}

/* Four walls, and a lid on one of them that lies over the others. */
static BfFold *
make_box (void)
{
  BfFold *fold = bf_formed_fixture_new (oblong, 4, 1.5);
  guint back = 0;

  for (guint edge = 0; edge < 4; edge++)
    back = bf_formed_fixture_add (
        fold, (BfFormedFlange){ 0, edge, 1, 1, edge == 3 ? 52 : 50, 90, 2, BF_TURN_UP, { 0 } });
  bf_formed_fixture_add (fold, (BfFormedFlange){ back, 2, 0, 0, 121, 90, 1, BF_TURN_UP, { 0 } });
  return fold;
}

/* An inside corner, flanges up and down, some of them narrower than their edges. */
static BfFold *
make_shelf (void)
{
  static const BfVec2 base[] = { { 0, 0 },   { 150, 0 },  { 150, 60 },
                                 { 70, 60 }, { 70, 110 }, { 0, 110 } };
  BfFold *fold = bf_formed_fixture_new (base, 6, 2.0);

  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 0, 15, 30, 25, 75, 2, BF_TURN_UP, { 4, 8 } });
  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 1, 0, 5, 30, 110, 3, BF_TURN_DOWN, { 0 } });
  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 2, 2, 8, 28, 90, 2, BF_TURN_UP, { 0 } });
  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 3, 8, 2, 28, 60, 2, BF_TURN_DOWN, { 0 } });
  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 5, 5, 60, 40, 90, 2, BF_TURN_UP, { 0 } });
  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 5, 60, 5, 40, 135, 2, BF_TURN_UP, { 0 } });
  bf_formed_fixture_drill (fold, bf_vec2 (35, 85), 30.0);
  return fold;
}

/* Six walls that lean out, each with a lip. */
static BfFold *
make_caddy (void)
{
  BfVec2 base[6];
  BfFold *fold;

  for (guint i = 0; i < 6; i++)
    base[i] = bf_vec2 (50.0 * cos (i * G_PI / 3.0), 50.0 * sin (i * G_PI / 3.0));
  fold = bf_formed_fixture_new (base, 6, 1.0);
  for (guint i = 0; i < 6; i++)
    {
      guint wall = bf_formed_fixture_add (
          fold, (BfFormedFlange){ 0, i, 1, 1, 45, 70, 1, BF_TURN_UP, { 2, 2 } });

      bf_formed_fixture_add (fold,
                             (BfFormedFlange){ wall, 2, 0, 0, 9, 110, 1, BF_TURN_UP, { 9, 9 } });
    }
  return fold;
}

/* What must not be made, yet has to be shown: walls that pass through each other. */
static BfFold *
make_collision (void)
{
  BfFold *fold = bf_formed_fixture_new (oblong, 4, 2.0);

  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 0, 0, 0, 90, 140, 2, BF_TURN_UP, { 0 } });
  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 2, 0, 0, 90, 120, 2, BF_TURN_UP, { 0 } });
  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 1, 0, 0, 90, 125, 2, BF_TURN_UP, { 0 } });
  return fold;
}

const BfFormedFixture bf_formed_fixtures[] = {
  { "flat", make_flat, TRUE },
  { "tray", make_tray, TRUE },
  { "angle", make_angle, TRUE },
  { "channel", make_channel, TRUE },
  { "hem", make_hem, TRUE },
  { "box", make_box, TRUE },
  { "shelf", make_shelf, TRUE },
  { "caddy", make_caddy, TRUE },
  { "collision", make_collision, FALSE },
};
const guint bf_n_formed_fixtures = G_N_ELEMENTS (bf_formed_fixtures);
