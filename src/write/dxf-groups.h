/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/vec.h"

/* The grammar of DXF: pairs of lines, a group code and its value. ASCII only. */

typedef struct
{
  GString *text;
  double scale; /* drawing units in a millimetre */
} BfDxf;

void bf_dxf_init (BfDxf *dxf, double scale);

/* Returns: (transfer full). */
char *bf_dxf_finish (BfDxf *dxf) G_GNUC_WARN_UNUSED_RESULT;

void bf_dxf_string (BfDxf *dxf, int code, const char *value); /* ASCII, our own */
void bf_dxf_integer (BfDxf *dxf, int code, int value);
void bf_dxf_number (BfDxf *dxf, int code, double value);

/* A length in mm, written in drawing units. */
void bf_dxf_length (BfDxf *dxf, int code, double length_mm);

/* A point in mm, written in drawing units, as groups 10 + n, 20 + n and 30 + n; z is 0. */
void bf_dxf_point (BfDxf *dxf, int n, BfVec2 point);

/* A person's words in UTF-8: what is not ASCII becomes \U+XXXX, a degree sign %%d. */
void bf_dxf_words (BfDxf *dxf, int code, const char *words);

void bf_dxf_begin_section (BfDxf *dxf, const char *name);
void bf_dxf_end_section (BfDxf *dxf);
void bf_dxf_begin_table (BfDxf *dxf, const char *name, int n_entries);
void bf_dxf_end_table (BfDxf *dxf);

/* Begins an entity on a layer. */
void bf_dxf_entity (BfDxf *dxf, const char *type, const char *layer);
