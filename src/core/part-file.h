/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gio/gio.h>

#include "core/part.h"

/* Reading and writing the part file (JSON, UTF-8, suffix .benchfold). data/part.schema.json
 * describes the format; every file that is written validates against it. */

#define BF_PART_FILE_SUFFIX ".benchfold"
#define BF_PART_FILE_MAX_BYTES (8 * 1024 * 1024)
#define BF_PART_FILE_MAX_DEPTH 64

/* The longest list that is read: points of an outline, flanges, corners, openings, drills. */
#define BF_PART_FILE_MAX_ITEMS 5000

typedef enum
{
  BF_PART_ERROR_READ,      /* the file could not be read at all */
  BF_PART_ERROR_TOO_LARGE, /* over BF_PART_FILE_MAX_BYTES or BF_PART_FILE_MAX_DEPTH */
  BF_PART_ERROR_SYNTAX,    /* not JSON; the message names line and column */
  BF_PART_ERROR_FORMAT,    /* not a part file, or of a newer version */
  BF_PART_ERROR_MEMBER,    /* a member is missing, of a wrong type or out of range */
  BF_PART_ERROR_OUTLINE,   /* the base's outline crosses itself or has no area */
  BF_PART_ERROR_WRITE,     /* the file could not be written; the earlier one is as it was */
} BfPartError;

#define BF_PART_ERROR (bf_part_error_quark ())
GQuark bf_part_error_quark (void);

/* A part from the text of a file. length −1: text ends with a NUL. Every error message reads
 * "member.path: what is wrong". A base that crosses itself is read; see bf_part_check_outline.
 * Returns: (transfer full), or NULL with error set. */
BfPart *
bf_part_from_text (const char *text, gssize length, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* The part as the text of a file, every default written out, unknown members kept.
 * Returns: (transfer full). */
char *bf_part_to_text (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;

/* A part from a file. Returns: (transfer full), or NULL with error set. */
BfPart *bf_part_load (GFile *file, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* Writes the part; the file is either the new one, whole, or what it was before. */
gboolean bf_part_save (const BfPart *part, GFile *file, GError **error);

/* FALSE, with BF_PART_ERROR_OUTLINE, where the base's outline crosses or touches itself or has no
 * area. The command line refuses such a part; the window shows it as a check. */
gboolean bf_part_check_outline (const BfPart *part, GError **error);
