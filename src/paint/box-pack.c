/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/box-pack.h"

#include "core/tolerance.h"

/* Every rectangle goes where it leaves the least over; what is left beside and below it is free for
 * others. Free ground is cut up in two ways, and rectangles are taken in two orders: the best of
 * the four stays. */

typedef struct
{
  BfVec2 place, size;
  guint page;
} Free;

typedef struct
{
  GArray *boxes;
  GArray *free; /* Free */
  BfVec2 room;
  guint n_pages;
  gboolean wide_below; /* what is left below a box is as wide as the ground, else only the box */
} Packing;

static gboolean
fits (BfVec2 size, BfVec2 ground)
{
  return size.x <= ground.x + BF_TOLERANCE_SIZE_MM && size.y <= ground.y + BF_TOLERANCE_SIZE_MM;
}

/* The free ground that fits a box most closely, on the first page that has any; or −1. */
static int
find_ground (const Packing *packing, BfVec2 size)
{
  double least = HUGE_VAL;
  guint page = G_MAXUINT;
  int best = -1;

  for (guint i = 0; i < packing->free->len; i++)
    {
      const Free *ground = &g_array_index (packing->free, Free, i);
      double left = MIN (ground->size.x - size.x, ground->size.y - size.y);
      if (!fits (size, ground->size) || ground->page > page ||
          (ground->page == page && left >= least))
        continue;
      least = left;
      page = ground->page;
      best = (int)i;
    }
  return best;
}

static void
add_free (Packing *packing, BfVec2 place, BfVec2 size, guint page)
{
  Free ground = { place, size, page };

  if (size.x > BF_TOLERANCE_SIZE_MM && size.y > BF_TOLERANCE_SIZE_MM)
    g_array_append_val (packing->free, ground);
}

static void
put_box (Packing *packing, BfPackedBox *box)
{
  int found = find_ground (packing, box->size);
  Free ground;
  double beside, below;

  if (found < 0)
    {
      add_free (packing, bf_vec2 (0.0, 0.0), packing->room, packing->n_pages++);
      found = (int)packing->free->len - 1;
    }
  ground = g_array_index (packing->free, Free, (guint)found);
  g_array_remove_index_fast (packing->free, (guint)found);
  box->place = ground.place;
  box->page = ground.page;
  beside = ground.size.x - box->size.x;
  below = ground.size.y - box->size.y;
  add_free (packing, bf_vec2 (ground.place.x + box->size.x, ground.place.y),
            bf_vec2 (beside, packing->wide_below ? box->size.y : ground.size.y), ground.page);
  add_free (packing, bf_vec2 (ground.place.x, ground.place.y + box->size.y),
            bf_vec2 (packing->wide_below ? ground.size.x : box->size.x, below), ground.page);
}

static int
compare_heights (gconstpointer a, gconstpointer b)
{
  const BfPackedBox *x = *(BfPackedBox *const *)a, *y = *(BfPackedBox *const *)b;

  return (x->size.y < y->size.y) - (x->size.y > y->size.y);
}

static int
compare_widths (gconstpointer a, gconstpointer b)
{
  const BfPackedBox *x = *(BfPackedBox *const *)a, *y = *(BfPackedBox *const *)b;

  return (x->size.x < y->size.x) - (x->size.x > y->size.x);
}

/* way: 0 to 3. */
static guint
pack_one_way (GArray *boxes, BfVec2 room, guint way)
{
  g_autoptr (GPtrArray) order = g_ptr_array_new ();
  g_autoptr (GArray) free_ground = g_array_new (FALSE, FALSE, sizeof (Free));
  Packing packing = { boxes, free_ground, room, 0, way % 2 == 0 };

  for (guint i = 0; i < boxes->len; i++)
    g_ptr_array_add (order, &g_array_index (boxes, BfPackedBox, i));
  g_ptr_array_sort (order, way < 2 ? compare_heights : compare_widths);
  for (guint i = 0; i < order->len; i++)
    put_box (&packing, g_ptr_array_index (order, i));
  return packing.n_pages;
}

guint
bf_box_pack (GArray *boxes, BfVec2 room)
{
  guint best = 0, fewest;

  g_return_val_if_fail (boxes != NULL, 0);

  fewest = pack_one_way (boxes, room, 0);
  for (guint way = 1; way < 4; way++)
    {
      guint n = pack_one_way (boxes, room, way);
      if (n >= fewest)
        continue;
      fewest = n;
      best = way;
    }
  return pack_one_way (boxes, room, best);
}
