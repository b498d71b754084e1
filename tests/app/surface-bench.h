/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/document.h"
#include "app/surface-scene.h"

/* What a window shows of a document on a bench of 1200 by 700 pixels, without the window. */
typedef struct
{
  BfDocument *document;
  BfSurfaceView *view;
  BfSurfaceScene *scene;
} Bench;

/* document: (transfer full). */
static inline void
bench_init (Bench *bench, BfDocument *document)
{
  bench->document = document;
  bench->view = bf_surface_view_new ();
  bf_surface_view_set_size (bench->view, 1200.0, 700.0);
  bench->scene = bf_surface_scene_new (bench->view);
  bf_surface_scene_set_fold (bench->scene, bf_document_get_fold (document));
}

static inline void
bench_clear (Bench *bench)
{
  bf_surface_scene_free (bench->scene);
  g_object_unref (bench->view);
  g_object_unref (bench->document);
}
