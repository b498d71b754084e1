/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/thing.h"

#include "core/defaults.h"
#include "core/units.h"

/* A shelf's front edge is turned down, so that it does not sag. */
#define SHELF_LIP_MM 15.0

/* How often the metal's thickness lies between a size counted outside and the same inside. Along
 * a bend there is no difference. */
static const guint n_thicknesses[BF_N_THINGS][BF_N_THING_SIZES] = {
  [BF_THING_TRAY] = { 2, 2, 1 },    [BF_THING_BRACKET] = { 0, 1, 1 },
  [BF_THING_CHANNEL] = { 0, 2, 1 }, [BF_THING_SHELF] = { 0, 1, 1 },
  [BF_THING_BOX] = { 2, 2, 2 },
};

static const double first_sizes[BF_N_THINGS][BF_N_THING_SIZES] = {
  [BF_THING_TRAY] = { 200, 120, 40 },   [BF_THING_BRACKET] = { 60, 80, 60 },
  [BF_THING_CHANNEL] = { 240, 40, 30 }, [BF_THING_SHELF] = { 300, 140, 60 },
  [BF_THING_BOX] = { 160, 100, 60 },
};

/* A size in mm that reads round: to a quarter of an inch, where those are the units. */
static double
round_size (double size_mm, BfUnits units)
{
  double quarter_mm = BF_MM_PER_INCH / 4.0;
  return units == BF_UNITS_IN ? round (size_mm / quarter_mm) * quarter_mm : size_mm;
}

void
bf_thing_sizes_init (BfThingSizes *sizes, BfThing thing, BfUnits units)
{
  g_return_if_fail (sizes != NULL && thing < BF_N_THINGS);

  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    {
      sizes->size_mm[i] = round_size (first_sizes[thing][i], units);
      sizes->kind[i] = BF_SIZE_OUTSIDE;
    }
}

/* What a size counted that way lacks to the same counted outside. */
static double
to_outside (BfThing thing, BfThingSize which, BfSizeKind kind, double thickness_mm)
{
  double metal_mm = n_thicknesses[thing][which] * thickness_mm;
  switch (kind)
    {
    case BF_SIZE_INSIDE:
      return metal_mm;
    case BF_SIZE_MUST_HOLD:
      return metal_mm + BF_HOLD_PLAY_MM;
    case BF_SIZE_OUTSIDE:
    default:
      return 0.0;
    }
}

double
bf_thing_outside_mm (BfThing thing,
                     const BfThingSizes *sizes,
                     BfThingSize which,
                     double thickness_mm)
{
  g_return_val_if_fail (thing < BF_N_THINGS && sizes != NULL && which < BF_N_THING_SIZES, NAN);
  return sizes->size_mm[which] + to_outside (thing, which, sizes->kind[which], thickness_mm);
}

gboolean
bf_thing_has_inside (BfThing thing, BfThingSize which)
{
  g_return_val_if_fail (thing < BF_N_THINGS && which < BF_N_THING_SIZES, FALSE);
  return n_thicknesses[thing][which] > 0;
}

void
bf_thing_set_kind (
    BfThing thing, BfThingSizes *sizes, BfThingSize which, BfSizeKind kind, double thickness_mm)
{
  double outside_mm = bf_thing_outside_mm (thing, sizes, which, thickness_mm);
  sizes->kind[which] = kind;
  sizes->size_mm[which] = outside_mm - to_outside (thing, which, kind, thickness_mm);
}

static BfFlange *
add_flange (BfPart *part, const char *id, guint edge, double length_mm)
{
  BfFlange *flange = bf_flange_new (id);
  flange->edge = BF_EDGE_INDEX;
  flange->edge_index = edge;
  flange->length_mm = length_mm;
  g_ptr_array_add (part->flanges, flange);
  return flange;
}

static void
add_walls (BfPart *part, double height_mm)
{
  add_flange (part, "front", 0, height_mm);
  add_flange (part, "right", 1, height_mm);
  add_flange (part, "back", 2, height_mm);
  add_flange (part, "left", 3, height_mm);
}

/* Three walls stop short of the lid, and the lid short of the front wall, so that all corners are
 * alike. */
static void
add_box (BfPart *part, double width_mm, double height_mm)
{
  double short_by = part->metal.thickness_mm + bf_part_resolve_gap_mm (part, NULL);

  add_walls (part, height_mm - short_by);
  BfFlange *back = g_ptr_array_index (part->flanges, 2);
  back->length_mm = height_mm;
  BfFlange *lid = add_flange (part, "lid", 0, width_mm - short_by);
  lid->edge = BF_EDGE_TIP;
  g_free (lid->on);
  lid->on = g_strdup ("back");
}

static void
add_flanges (BfPart *part, BfThing thing, double width_mm, double height_mm)
{
  switch (thing)
    {
    case BF_THING_TRAY:
      add_walls (part, height_mm);
      break;
    case BF_THING_BRACKET:
      add_flange (part, "upright", 2, height_mm);
      break;
    case BF_THING_CHANNEL:
      add_flange (part, "front", 0, height_mm);
      add_flange (part, "back", 2, height_mm);
      break;
    case BF_THING_SHELF:
      add_flange (part, "back", 2, height_mm);
      add_flange (part, "lip", 0, round_size (SHELF_LIP_MM, part->units))->turn = BF_TURN_DOWN;
      break;
    case BF_THING_BOX:
      add_box (part, width_mm, height_mm);
      break;
    case BF_N_THINGS:
    default:
      g_return_if_reached ();
    }
}

static void
draw_base (BfPart *part, double length_mm, double width_mm)
{
  BfVec2 points[] = {
    { 0.0, 0.0 }, { length_mm, 0.0 }, { length_mm, width_mm }, { 0.0, width_mm }
  };
  g_array_set_size (part->outline, 0);
  g_array_append_vals (part->outline, points, G_N_ELEMENTS (points));
}

BfPart *
bf_thing_make (BfThing thing, const BfThingSizes *sizes, const BfPart *setup, const char *name)
{
  g_return_val_if_fail (thing < BF_N_THINGS && sizes != NULL && setup != NULL, NULL);

  double t = setup->metal.thickness_mm;
  double outside_mm[BF_N_THING_SIZES];
  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    {
      outside_mm[i] = bf_thing_outside_mm (thing, sizes, i, t);
      if (!(outside_mm[i] > (n_thicknesses[thing][i] + 1) * t))
        return NULL;
    }

  BfPart *part = bf_part_copy (setup);
  g_free (part->name);
  part->name = g_strdup (name);
  part->measure = BF_MEASURE_OUTSIDE;
  g_ptr_array_set_size (part->flanges, 0);
  g_ptr_array_set_size (part->corners, 0);
  g_ptr_array_set_size (part->openings, 0);
  draw_base (part, outside_mm[BF_THING_LENGTH], outside_mm[BF_THING_WIDTH]);
  add_flanges (part, thing, outside_mm[BF_THING_WIDTH], outside_mm[BF_THING_HEIGHT]);
  return part;
}
