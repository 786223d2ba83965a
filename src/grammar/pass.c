/* SPDX-License-Identifier: ISC */
/*
 * Compiles a pass: gives each distinct look of a node a tag byte, writes the
 * rules as one PCRE2 pattern over those bytes, and matches it.
 */
#include "grammar/pass.h"

#define PCRE2_CODE_UNIT_WIDTH 8
#include <pcre2.h>

#include "base/buf.h"

enum { TAGS_MAX = 256, FIELDS_MAX = 64, MATCH_LIMIT = 2000000 };

/* What the rules of a pass can see of a node. */
struct look {
	struct classset classes;
	const struct entry *word; /* only where a rule names the word */
};

struct looks {
	struct look v[TAGS_MAX];
	size_t n;
	struct classset mask; /* classes that some rule mentions */
	uint8_t *named;       /* by entry id: a rule names the word */
};

static void
mark_mentions(struct looks *k, const struct rulepass *from)
{
	for (size_t i = 0; i < from->rule.n; i++)
		for (size_t j = 0; j < from->rule.v[i]->op.n; j++) {
			const struct atom *atom = &from->rule.v[i]->op.v[j].atom;

			for (size_t w = 0; w < CLASS_WORDS; w++)
				k->mask.w[w] |=
				    atom->any.w[w] | atom->all.w[w] | atom->none.w[w];
			if (atom->word)
				k->named[atom->word->id] = 1;
		}
}

/* The tag of a look, made if new; TAGS_MAX when they run out. */
static size_t
tag_of(struct looks *k, struct classset classes, const struct entry *word)
{
	size_t i;

	for (size_t w = 0; w < CLASS_WORDS; w++)
		classes.w[w] &= k->mask.w[w];
	for (i = 0; i < k->n; i++)
		if (k->v[i].word == word &&
		    memcmp(&k->v[i].classes, &classes, sizeof classes) == 0)
			return i;
	if (k->n < TAGS_MAX)
		k->v[k->n++] = (struct look){classes, word};
	return i;
}

static bool
give_tags(struct pass *p, struct looks *k, const struct lexicon *x, struct err *e)
{
	size_t tag = 0;

	for (size_t i = 0; i < x->entry.n && tag < TAGS_MAX; i++) {
		const struct entry *en = x->entry.v[i];

		tag = tag_of(k, en->classes, k->named[en->id] ? en : NULL);
		p->tag_of_entry[i] = (uint8_t)tag;
	}
	for (unsigned c = 0; c < CLASSES_MAX && tag < TAGS_MAX; c++) {
		struct classset one = {{0}};

		classset_add(&one, c);
		tag = tag_of(k, one, NULL);
		p->tag_of_class[c] = (uint8_t)tag;
	}
	p->tags = k->n;
	if (tag < TAGS_MAX)
		return true;
	return err_set(e, "grammar",
	    "pass %.*s tells more than %d kinds of word apart; part it in two passes",
	    (int)p->name.n, p->name.p, TAGS_MAX);
}

static bool
overlaps(const struct classset *a, const struct classset *b)
{
	for (size_t i = 0; i < CLASS_WORDS; i++)
		if (a->w[i] & b->w[i])
			return true;
	return false;
}

static bool
contains(const struct classset *a, const struct classset *part)
{
	for (size_t i = 0; i < CLASS_WORDS; i++)
		if (part->w[i] & ~a->w[i])
			return false;
	return true;
}

static bool
atom_takes(const struct atom *a, const struct look *l)
{
	if (a->word)
		return l->word == a->word;
	return (a->everything || overlaps(&a->any, &l->classes)) &&
	       contains(&l->classes, &a->all) && !overlaps(&a->none, &l->classes);
}

static void
put_atom(struct buf *b, const struct looks *k, const struct atom *a)
{
	size_t taken = 0, before = b->n;

	buf_put_char(b, '[');
	for (size_t i = 0; i < k->n; i++)
		if (atom_takes(a, &k->v[i])) {
			buf_fmt(b, "\\x%02x", (unsigned)i);
			taken++;
		}
	buf_put_char(b, ']');
	if (taken == 0) {
		b->n = before;
		buf_put_z(b, "(*FAIL)");
	}
}

static void
put_op(struct buf *b, const struct looks *k, struct compiled_rule *r, const struct op *op,
    struct arena *a)
{
	static const char *const opening[] = {
	    [OP_OPEN] = "(?:",
	    [OP_CLOSE] = ")",
	    [OP_OR] = "|",
	    [OP_FIELD] = "(",
	    [OP_KEEP] = "\\K",
	    [OP_AHEAD] = "(?=",
	    [OP_NOT_AHEAD] = "(?!",
	    [OP_BEHIND] = "(?<=",
	    [OP_NOT_BEHIND] = "(?<!",
	};

	if (op->kind == OP_ATOM)
		put_atom(b, k, &op->atom);
	else if (op->kind == OP_REPEAT)
		buf_put(b, op->text);
	else
		buf_put_z(b, opening[op->kind]);
	if (op->kind == OP_FIELD)
		vec_push(a, &r->group, (struct group){op->field});
}

/* True where a match of the rule is to be judged by more than its words. */
static bool
is_judged(const struct rule *r)
{
	static const char *const keys[] = {"check", "least", "carry"};

	for (size_t i = 0; i < r->attributes; i++)
		for (size_t k = 0; k < sizeof keys / sizeof *keys; k++)
			if (str_is_z(r->attribute[i].key, keys[k]))
				return true;
	return false;
}

static struct str
write_pattern(
    struct pass *p, const struct rulepass *from, const struct looks *k, struct arena *a)
{
	struct buf b = buf_in(a);
	uint32_t group = 1;

	buf_put_z(&b, "(?:");
	for (size_t i = 0; i < from->rule.n; i++) {
		const struct rule *rule = from->rule.v[i];
		struct compiled_rule r = {.rule = rule, .first_group = group};

		buf_put_z(&b, i ? "|(?:" : "(?:");
		for (size_t j = 0; j < rule->op.n; j++)
			put_op(&b, k, &r, &rule->op.v[j], a);
		buf_put_char(&b, ')');
		if (is_judged(rule))
			buf_fmt(&b, "(?C'%zu')", i);
		buf_fmt(&b, "(*MARK:%zu)", i);
		group += (uint32_t)r.group.n;
		vec_push(a, &p->rule, r);
	}
	buf_put_char(&b, ')');
	return buf_str(&b);
}

static bool
compile(struct pass *p, struct str pattern, struct err *e)
{
	PCRE2_UCHAR message[160];
	PCRE2_SIZE at;
	int code;

	p->code = pcre2_compile((PCRE2_SPTR)pattern.p, pattern.n,
	    PCRE2_DOTALL | PCRE2_NEVER_UTF, &code, &at, NULL);
	if (!p->code) {
		pcre2_get_error_message(code, message, sizeof message);
		return err_set(e, "grammar", "pass %.*s does not compile: %s near \"%.*s\"",
		    (int)p->name.n, p->name.p, (const char *)message,
		    (int)(pattern.n - at < 40 ? pattern.n - at : 40), pattern.p + at);
	}
	pcre2_jit_compile(p->code, PCRE2_JIT_COMPLETE);
	return true;
}

bool
pass_compile(struct pass *p, const struct rulepass *from, struct lexicon *x, struct err *e)
{
	struct arena scratch;
	struct looks *k;
	bool ok;

	arena_init(&scratch);
	k = arena_new(&scratch, struct looks);
	k->named = arena_array(&scratch, x->entry.n, uint8_t);
	*p = (struct pass){.name = from->name, .from = from->from};
	p->tag_of_entry = arena_array(x->arena, x->entry.n, uint8_t);
	mark_mentions(k, from);
	ok = give_tags(p, k, x, e) && compile(p, write_pattern(p, from, k, x->arena), e);
	arena_release(&scratch);
	return ok;
}

void
pass_release(struct pass *p)
{
	pcre2_code_free(p->code);
	p->code = NULL;
}

/* ---- matching ----------------------------------------------------------- */

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
