/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-view.h"

#include "paint/formed-order.h"

struct BfFormedView
{
  BfFormedScene *scene;
  BfFormedStack *stack;
  BfFrame eye;
  BfBox box;
};

BfVec2
bf_formed_view_project (const BfFormedView *view, BfVec3 p)
{
  g_return_val_if_fail (view != NULL, bf_vec2 (0.0, 0.0));

  return bf_vec2 (bf_vec3_dot (p, view->eye.ex), -bf_vec3_dot (p, view->eye.ey));
}

/* Of all that is there, seen or not, so that the box turns smoothly with the eye. */
static BfBox
work_out_box (const BfFormedView *view)
{
  BfBox box = bf_box_empty ();

  for (guint i = 0; i < view->scene->vertices->len; i++)
    bf_box_extend (&box, bf_formed_view_project (view, bf_formed_vertex (view->scene, i)->p));
  return view->scene->vertices->len > 0 ? box : (BfBox){ { 0.0, 0.0 }, { 0.0, 0.0 } };
}

void
bf_formed_view_look (BfFormedView *view, BfFormedLook look)
{
  g_return_if_fail (view != NULL);

  g_clear_pointer (&view->stack, bf_formed_stack_free);
  view->eye = bf_formed_eye (look.azimuth_rad, look.elevation_rad);
  view->stack = bf_formed_stack_new (view->scene, &view->eye);
  bf_formed_stack_put_in_order (view->stack);
  view->box = work_out_box (view);
}

BfFormedView *
bf_formed_view_new (BfFormedScene *scene, BfFormedLook look)
{
  BfFormedView *view;

  g_return_val_if_fail (scene != NULL, NULL);

  view = g_new0 (BfFormedView, 1);
  view->scene = scene;
  bf_formed_view_look (view, look);
  return view;
}

BfFormedView *
bf_formed_view_prepare_after (BfFormedView *before,
                              const BfFold *fold,
                              const BfFormed *formed,
                              BfFormedLook look)
{
  g_autoptr (BfFormedView) old = before;

  g_return_val_if_fail (fold != NULL && formed != NULL, NULL);

  return bf_formed_view_new (
      bf_formed_scene_new_after (old != NULL ? old->scene : NULL, fold, formed), look);
}

BfFormedView *
bf_formed_view_prepare (const BfFold *fold, const BfFormed *formed, BfFormedLook look)
{
  return bf_formed_view_prepare_after (NULL, fold, formed, look);
}

void
bf_formed_view_free (BfFormedView *view)
{
  if (view == NULL)
    return;
  bf_formed_stack_free (view->stack);
  bf_formed_scene_free (view->scene);
  g_free (view);
}

BfBox
bf_formed_view_box (const BfFormedView *view)
{
  g_return_val_if_fail (view != NULL, bf_box_empty ());

  return view->box;
}

const BfFormedStack *
bf_formed_view_stack (const BfFormedView *view)
{
  g_return_val_if_fail (view != NULL, NULL);

  return view->stack;
}

BfFrame
bf_formed_view_eye (const BfFormedView *view)
{
  return view->eye;
}

int
bf_formed_view_pick (const BfFormedView *view, BfVec2 at)
{
  const BfFormedStack *stack;

  g_return_val_if_fail (view != NULL, -1);

  stack = view->stack;
  for (guint i = stack->order->len; i > 0; i--)
    {
      const BfFormedPiece *piece =
          bf_formed_piece (stack, g_array_index (stack->order, guint, i - 1));

      if (bf_formed_piece_contains (stack, piece, at.x, -at.y))
        return (int)bf_formed_polygon (stack->scene, piece->polygon)->face;
    }
  return -1;
}
