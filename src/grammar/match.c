/* SPDX-License-Identifier: ISC */
/*
 * Matches a compiled pass on tags, and follows one rule to where it got stuck.
 */
#include "grammar/pass.h"

#define PCRE2_CODE_UNIT_WIDTH 8
#include <pcre2.h>

enum { FIELDS_MAX = 64, MATCH_LIMIT = 2000000 };

struct matcher {
	struct arena arena; /* holds this struct's own memory */
	pcre2_match_data *data;
	pcre2_match_context *context;
	pcre2_jit_stack *stack;
};

struct matcher *
matcher_new(void)
{
	struct arena a;
	struct matcher *m;

	arena_init(&a);
	m = arena_new(&a, struct matcher);
	m->data = pcre2_match_data_create(1000, NULL);
	m->context = pcre2_match_context_create(NULL);
	m->stack = pcre2_jit_stack_create(64 * 1024, 4 * 1024 * 1024, NULL);
	pcre2_set_match_limit(m->context, MATCH_LIMIT);
	pcre2_jit_stack_assign(m->context, NULL, m->stack);
	m->arena = a;
	return m;
}

void
matcher_free(struct matcher *m)
{
	struct arena a;

	if (!m)
		return;
	pcre2_match_data_free(m->data);
	pcre2_match_context_free(m->context);
	pcre2_jit_stack_free(m->stack);
	a = m->arena;
	arena_release(&a);
}

static void
take_fields(const struct compiled_rule *r, const PCRE2_SIZE *o, size_t pairs,
    struct rule_match *out)
{
	for (size_t i = 0; i < r->group.n; i++) {
		size_t g = r->first_group + i;

		if (g < pairs && o[2 * g] != PCRE2_UNSET)
			out->field[out->fields++] = (struct field_span){r->group.v[i].field,
			    {(uint32_t)o[2 * g], (uint32_t)o[2 * g + 1]}};
	}
}

/* What the callouts of one call of pcre2_match need. */
struct judging {
	const struct pass *pass;
	const struct judge *judge;
};

/* PCRE2 calls it where a judged rule has matched: 0 takes the match, 1 tries on. */
static int
judge_match(pcre2_callout_block *b, void *data)
{
	const struct judging *j = data;
	const struct compiled_rule *r;
	struct field_span field[FIELDS_MAX];
	struct rule_match m;
	uint64_t index = 0;

	str_to_u64((struct str){(const char *)b->callout_string, b->callout_string_length},
	    &index);
	r = &j->pass->rule.v[index];
	m = (struct rule_match){
	    r->rule, {(uint32_t)b->start_match, (uint32_t)b->current_position}, field, 0};
	if (r->group.n > FIELDS_MAX || b->start_match >= b->current_position)
		return 0;
	take_fields(r, b->offset_vector, b->capture_top, &m);
	return !j->judge->accepts(j->judge->state, &m);
}

bool
pass_match(const struct pass *p, struct matcher *m, struct subject s, struct arena *a,
    struct rule_match *out)
{
	struct judging j = {p, &s.judge};
	const PCRE2_SIZE *o;
	const struct compiled_rule *r;
	uint64_t index = 0;
	int rc;

	pcre2_set_callout(m->context, s.judge.accepts ? judge_match : NULL, &j);
	rc = pcre2_match(p->code, s.tag, s.n, s.from, PCRE2_NOTEMPTY, m->data, m->context);
	if (rc <= 0)
		return false;
	o = pcre2_get_ovector_pointer(m->data);
	str_to_u64(str_of((const char *)pcre2_get_mark(m->data)), &index);
	r = &p->rule.v[index];
	*out = (struct rule_match){r->rule, {(uint32_t)o[0], (uint32_t)o[1]}, NULL, 0};
	if (r->group.n)
		out->field = arena_array(a, r->group.n, struct field_span);
	take_fields(r, o, (size_t)rc, out);
	return true;
}

/* What the callouts of pass_follow() need. */
struct following {
	struct judging judging;
	struct reach *reach;
	struct arena *arena;
};

static void
unwant(struct reach *r, uint32_t op)
{
	size_t n = 0;

	for (size_t i = 0; i < r->wanted.n; i++)
		if (r->wanted.v[i] != op)
			r->wanted.v[n++] = r->wanted.v[i];
	r->wanted.n = n;
}

/* ">4" before the item that begins with operation 4, "<4" behind a look that
 * held; without a sign, the judge is asked. */
static int
follow(pcre2_callout_block *b, void *data)
{
	const struct following *f = data;
	struct reach *r = f->reach;
	struct str mark = {(const char *)b->callout_string, b->callout_string_length};
	uint64_t op = 0;
	int refused;

	if (is_digit(mark.p[0])) {
		refused = judge_match(b, (void *)&f->judging);
		if (refused) {
			r->refused = true;
			r->span.end = (uint32_t)b->current_position;
		}
		return refused;
	}
	str_to_u64(str_cut(mark, 1, mark.n), &op);
	if (b->current_position > r->span.end) {
		r->span.end = (uint32_t)b->current_position;
		r->wanted.n = 0;
	}
	if (b->current_position < r->span.end)
		return 0;
	unwant(r, (uint32_t)op);
	if (mark.p[0] == '>')
		vec_push(f->arena, &r->wanted, (uint32_t)op);
	return 0;
}

void
pass_follow(const struct pass *p, struct matcher *m, struct subject s, struct arena *a,
    struct reach *out)
{
	struct following f = {{p, &s.judge}, out, a};
	const PCRE2_SIZE *o;

	*out = (struct reach){.span = {(uint32_t)s.from, (uint32_t)s.from}};
	pcre2_set_callout(m->context, follow, &f);
	if (pcre2_match(p->code, s.tag, s.n, s.from, PCRE2_NOTEMPTY | PCRE2_ANCHORED,
		m->data, m->context) <= 0)
		return;
	o = pcre2_get_ovector_pointer(m->data);
	out->fits = true;
	out->span = (struct span){(uint32_t)o[0], (uint32_t)o[1]};
}
