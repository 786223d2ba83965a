/* SPDX-License-Identifier: ISC */
/*
 * A JSON document under construction, in jansson.
 */
#include "write/node.h"

#include <jansson.h>

#include "write/escape.h"

static void
put(struct node o, const char *key, json_t *v)
{
	int failed = key ? json_object_set_new(o.v, key, v) : json_array_append_new(o.v, v);

	/* Only for want of memory; end as the arena does. */
	if (failed)
		arena_alloc(o.arena, SIZE_MAX, 2);
}

struct node
node_object(struct node o, const char *key)
{
	struct node child = {json_object(), o.arena};

	put(o, key, child.v);
	return child;
}

struct node
node_array(struct node o, const char *key)
{
	struct node child = {json_array(), o.arena};

	put(o, key, child.v);
	return child;
}

void
node_null(struct node o, const char *key)
{
	put(o, key, json_null());
}

void
node_bool(struct node o, const char *key, bool v)
{
	put(o, key, json_boolean(v));
}

void
node_int(struct node o, const char *key, int64_t v)
{
	put(o, key, json_integer(v));
}

void
node_str(struct node o, const char *key, struct str s)
{
	struct buf clean = buf_in(o.arena);

	escape_utf8(&clean, s);
	put(o, key, json_stringn(clean.n ? clean.v : "", clean.n));
}

void
node_str_or_null(struct node o, const char *key, struct str s)
{
	if (s.n)
		node_str(o, key, s);
	else
		node_null(o, key);
}

void
node_ratio(struct node o, const char *key, struct ratio v)
{
	put(o, key, v.den == 1 ? json_integer(v.num) : json_real(ratio_double(v)));
}

void
node_seconds(struct node o, const char *key, int64_t ms)
{
	if (ms < 0)
		node_null(o, key);
	else
		node_ratio(o, key, ratio_make(ms, 1000));
}

void
node_index(struct node o, const char *key, int index)
{
	if (index < 0)
		node_null(o, key);
	else
		node_int(o, key, index);
}

static int
append(const char *data, size_t n, void *out)
{
	buf_put(out, (struct str){data, n});
	return 0;
}

void
node_print(struct node root, struct buf *out)
{
	size_t flags = JSON_INDENT(2) | JSON_REAL_PRECISION(10);

	if (json_dump_callback(root.v, append, out, flags))
		arena_alloc(out->arena, SIZE_MAX, 2);
	buf_put_char(out, '\n');
	json_decref(root.v);
}

struct node
node_root(struct arena *a)
{
	return (struct node){json_object(), a};
}
