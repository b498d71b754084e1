/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "write/outputs.h"

/* Outputs for the bench and for whoever cuts: the make card, the card model, angle gauges, and the
 * pack for a cutting service. Each is worked out in memory and added to the batch; FALSE with error
 * set where the drawing library gave up. */

gboolean
bf_outputs_add_card (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error);
gboolean
bf_outputs_add_model (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error);
gboolean
bf_outputs_add_gauges (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error);

/* The pattern as DXF and SVG, a page with the sizes, and a note as text, all named like "Spoke
 * tray, 1 off, mild steel 1.5 mm.dxf" in the folder dir. The folder itself is for
 * bf_output_make_folder(). */
gboolean
bf_outputs_add_pack (BfOutputs *outputs, BfOutputBatch *batch, const char *dir, GError **error);
