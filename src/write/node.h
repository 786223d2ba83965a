/* SPDX-License-Identifier: ISC */
/*
 * A JSON document under construction, for the formats that are JSON. The
 * only place that knows the JSON library. Nothing here fails: without memory
 * the process ends as it does for the arena.
 */
#ifndef TAMIS_NODE_H
#define TAMIS_NODE_H

#include "base/buf.h"
#include "base/ratio.h"

/* An object or an array that is being filled; keys keep their order. With an
 * array, key is NULL and each call appends. */
struct node {
	void *v;
	struct arena *arena; /* scratch */
};

/* A new object; node_print() ends it. */
struct node node_root(struct arena *a);
struct node node_object(struct node o, const char *key);
struct node node_array(struct node o, const char *key);
void node_null(struct node o, const char *key);
void node_bool(struct node o, const char *key, bool v);
void node_int(struct node o, const char *key, int64_t v);
/* Bytes that are no UTF-8 become U+FFFD. */
void node_str(struct node o, const char *key, struct str s);
void node_str_or_null(struct node o, const char *key, struct str s);
/* An integer where it is whole, else a real of 10 digits. */
void node_ratio(struct node o, const char *key, struct ratio v);
/* Milliseconds as seconds; null below zero. */
void node_seconds(struct node o, const char *key, int64_t ms);
/* null below zero. */
void node_index(struct node o, const char *key, int index);
/* The document with a line feed at its end; frees what node_root() made. */
void node_print(struct node root, struct buf *out);

#endif
