/* SPDX-License-Identifier: ISC */
/*
 * Compiles a pass: gives each distinct look of a node a tag byte and writes the
 * rules as one PCRE2 pattern over those bytes.
 */
#include "grammar/pass.h"

#include <assert.h>

#define PCRE2_CODE_UNIT_WIDTH 8
#include <pcre2.h>

#include "base/buf.h"

enum { TAGS_MAX = 256 };

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

/* What a pattern is written from and into. */
struct writing {
	struct buf b;
	const struct looks *looks;
	bool followed; /* callouts tell pass_follow() how far it gets */
};

static void
put_op(struct writing *w, struct compiled_rule *r, const struct op *op)
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
		put_atom(&w->b, w->looks, &op->atom);
	else if (op->kind == OP_REPEAT)
		buf_put(&w->b, op->text);
	else
		buf_put_z(&w->b, opening[op->kind]);
	if (op->kind == OP_FIELD)
		vec_push(w->b.arena, &r->group, (struct group){op->field});
}

/* A callout before each node or look, ">4", and one behind each look that held,
 * "<4", where 4 is the number of the operation. */
static void
put_ops(struct writing *w, struct compiled_rule *r)
{
	const struct rule *rule = r->rule;

	for (size_t i = 0; i < rule->op.n; i++) {
		size_t end = rule_item_end(rule, i), first = i;
		bool told = w->followed && (rule->op.v[i].kind == OP_ATOM || end > i);

		if (told)
			buf_fmt(&w->b, "(?C'>%zu')", first);
		for (put_op(w, r, &rule->op.v[i]); i < end; put_op(w, r, &rule->op.v[i]))
			i++;
		if (told && end > first)
			buf_fmt(&w->b, "(?C'<%zu')", first);
	}
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
write_pattern(struct pass *p, const struct rulepass *from, struct writing *w)
{
	struct buf *b = &w->b;
	uint32_t group = 1;

	buf_put_z(b, w->followed ? "(*NO_START_OPT)(?:" : "(?:");
	for (size_t i = 0; i < from->rule.n; i++) {
		const struct rule *rule = from->rule.v[i];
		struct compiled_rule r = {.rule = rule, .first_group = group};

		buf_put_z(b, i ? "|(?:" : "(?:");
		put_ops(w, &r);
		buf_put_char(b, ')');
		if (is_judged(rule))
			buf_fmt(b, "(?C'%zu')", i);
		buf_fmt(b, "(*MARK:%zu)", i);
		group += (uint32_t)r.group.n;
		vec_push(b->arena, &p->rule, r);
	}
	buf_put_char(b, ')');
	return buf_str(b);
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
	return true;
}

static bool
compile_rules(struct pass *p, const struct rulepass *from, const struct lexicon *x,
    struct writing *w, struct err *e)
{
	struct arena scratch;
	struct looks *k;
	bool ok;

	arena_init(&scratch);
	w->looks = k = arena_new(&scratch, struct looks);
	k->named = arena_array(&scratch, x->entry.n, uint8_t);
	*p = (struct pass){.name = from->name, .from = from->from};
	p->tag_of_entry = arena_array(w->b.arena, x->entry.n, uint8_t);
	mark_mentions(k, from);
	ok = give_tags(p, k, x, e) && compile(p, write_pattern(p, from, w), e);
	arena_release(&scratch);
	return ok;
}

bool
pass_compile(struct pass *p, const struct rulepass *from, struct lexicon *x, struct err *e)
{
	struct writing w = {.b = buf_in(x->arena)};

	if (!compile_rules(p, from, x, &w, e))
		return false;
	pcre2_jit_compile(p->code, PCRE2_JIT_COMPLETE);
	return true;
}

void
pass_compile_rule(struct pass *p, struct rule *r, const struct lexicon *x, struct arena *a)
{
	struct writing w = {.b = buf_in(a), .followed = true};
	struct rulepass alone = {.name = r->name, .rule = {&r, 1, 1}};
	struct err e = {0};
	bool ok = compile_rules(p, &alone, x, &w, &e);

	assert(ok);
	(void)ok;
}

void
pass_release(struct pass *p)
{
	pcre2_code_free(p->code);
	p->code = NULL;
}
