/* SPDX-License-Identifier: ISC */
/*
 * Reads *.gram files: logical lines (a blank-indented line continues the one
 * before), then patterns into flat operation lists.
 *
 *     pass measure
 *     let volume = <NUMBER> unit:<UNIT>
 *     rule amount.plain -> AMOUNT kind=amount : value:<NUMBER> unit:<UNIT>
 *         + two cups => 2 cup
 *         - two to one odds
 */
#include "grammar/rules.h"

struct let {
	struct str name;
	VEC(struct op) op;
};

struct rule_reader {
	struct rulebook *b;
	const char *name;
	const char *beg; /* of the physical line, for columns */
	uint32_t line;
	struct rule *rule; /* the last one, for its examples */
	VEC(struct let) let;
	struct err *e;
};

static bool
fail(struct rule_reader *r, const char *at, const char *expected)
{
	struct err_place place = {r->line, (uint32_t)(at - r->beg) + 1};

	for (const char *p = r->beg; p < at; p++)
		if (*p == '\n') {
			place.line++;
			place.column = (uint32_t)(at - p);
		}
	return err_set_at(r->e, r->name, place, "expected %s", expected);
}

static bool
is_name_char(char c)
{
	return is_alpha(c) || is_digit(c) || c == '_' || c == '.';
}

static size_t
name_length(struct str s)
{
	size_t n = 0;

	while (n < s.n && is_name_char(s.p[n]))
		n++;
	return n;
}

static void
skip_blanks(struct str *s)
{
	while (s->n && is_blank(s->p[0]))
		*s = str_cut(*s, 1, s->n);
}

static struct str
take(struct str *s, size_t n)
{
	struct str head = str_cut(*s, 0, n);

	*s = str_cut(*s, n, s->n);
	return head;
}

static unsigned
field_number(struct rulebook *b, struct str name)
{
	for (size_t i = 0; i < b->field.n; i++)
		if (str_is(b->field.v[i], name))
			return (unsigned)i;
	vec_push(b->lexicon->arena, &b->field, arena_str(b->lexicon->arena, name));
	return (unsigned)b->field.n - 1;
}

/* A class name may have hyphens inside: FOOD.root-vegetable. */
static size_t
class_length(struct str s)
{
	size_t n = name_length(s);

	while (n && n + 1 < s.n && s.p[n] == '-' && is_lower(s.p[n + 1]))
		n += 1 + name_length(str_cut(s, n + 1, s.n));
	return n;
}

/* The inside of <A|B +C -D>. */
static bool
read_classes(struct rule_reader *r, struct str in, struct atom *atom)
{
	bool any = false;

	while (in.p) {
		size_t n = 0;
		char sign;
		unsigned id;

		while (in.n && (in.p[0] == ' ' || in.p[0] == '|'))
			take(&in, 1);
		if (in.n == 0)
			break;
		sign = in.p[0];
		if (sign == '-' || sign == '+')
			take(&in, 1);
		n = class_length(in);
		if (n == 0 || !is_upper(in.p[0]))
			return fail(r, in.p, "a class name in capitals");
		if (str_is_z(str_cut(in, 0, n), "ANY")) {
			atom->everything = true;
		} else {
			id = lexicon_class(r->b->lexicon, str_cut(in, 0, n));
			if (id == CLASSES_MAX)
				return fail(r, in.p, "no more than 512 classes in all");
			classset_add(sign == '-'   ? &atom->none
				     : sign == '+' ? &atom->all
						   : &atom->any,
			    id);
		}
		any = any || (sign != '-' && sign != '+');
		take(&in, n);
	}
	if (!any)
		atom->everything = true;
	return true;
}

static bool
read_class_atom(struct rule_reader *r, struct str *s, struct op *op)
{
	size_t end = str_find_char(*s, '>');

	if (end == s->n)
		return fail(r, s->p, "'>' to close '<'");
	op->kind = OP_ATOM;
	if (!read_classes(r, str_cut(*s, 1, end), &op->atom))
		return false;
	op->text = take(s, end + 1);
	return true;
}

/* The operations being read and, per open parenthesis, whether it is a field
 * without parentheses of its own (name:<X>), which closes after one item. */
struct pattern {
	VEC(struct op) op;
	int depth;
	bool item_field; /* the next item closes a field */
};

static void
push(struct rule_reader *r, struct pattern *p, struct op op)
{
	vec_push(r->b->lexicon->arena, &p->op, op);
}

/* "word"; several words are one entry of the lexicon where it has them, else a
 * word each. */
static bool
read_words(struct rule_reader *r, struct str *s, struct pattern *p)
{
	struct lexicon *x = r->b->lexicon;
	size_t end = str_find_char(str_cut(*s, 1, s->n), '"');
	struct str key = lexicon_key(x->arena, str_cut(*s, 1, end + 1));
	bool whole = lexicon_find(x, key) || str_find_char(key, ' ') == key.n;

	if (end + 1 >= s->n || key.n == 0)
		return fail(r, s->p, "a word and '\"' to close it");
	take(s, end + 2);
	if (!whole)
		push(r, p, (struct op){.kind = OP_OPEN});
	while (key.p) {
		struct op op = {.kind = OP_ATOM};

		op.atom.word = lexicon_entry(x, whole ? key : str_next(&key, ' '));
		push(r, p, op);
		if (whole)
			break;
	}
	if (!whole)
		push(r, p, (struct op){.kind = OP_CLOSE});
	return true;
}

static size_t
repeat_length(struct str s)
{
	size_t n = 1;

	if (s.p[0] == '{') {
		n = str_find_char(s, '}');
		n = n < s.n ? n + 1 : 0;
	}
	if (n && n < s.n && (s.p[n] == '?' || s.p[n] == '+'))
		n++;
	return n;
}

static bool
read_look(struct rule_reader *r, struct str *s, struct op *op)
{
	bool negative = s->p[0] == '!', behind = s->n > 1 && s->p[1] == '<';

	op->kind = behind ? (negative ? OP_NOT_BEHIND : OP_BEHIND)
			  : (negative ? OP_NOT_AHEAD : OP_AHEAD);
	take(s, behind ? 2 : 1);
	if (s->n == 0 || s->p[0] != '(')
		return fail(r, s->p, "'(' after '&' or '!'");
	take(s, 1);
	return true;
}

static const struct let *
find_let(const struct rule_reader *r, struct str name)
{
	for (size_t i = r->let.n; i-- > 0;)
		if (str_is(r->let.v[i].name, name))
			return &r->let.v[i];
	return NULL;
}

static void
push_let(struct rule_reader *r, struct pattern *p, const struct let *let)
{
	push(r, p, (struct op){.kind = OP_OPEN});
	for (size_t i = 0; i < let->op.n; i++)
		push(r, p, let->op.v[i]);
	push(r, p, (struct op){.kind = OP_CLOSE});
}

static bool
read_name(struct rule_reader *r, struct str *s, struct pattern *p)
{
	size_t n = name_length(*s);
	struct str name = str_cut(*s, 0, n);
	const struct let *let;

	if (n < s->n && s->p[n] == ':') {
		push(
		    r, p, (struct op){.kind = OP_FIELD, .field = field_number(r->b, name)});
		take(s, n + 1);
		if (s->n && s->p[0] == '(') {
			take(s, 1);
			p->depth++;
		} else {
			p->item_field = true;
		}
		return true;
	}
	let = find_let(r, name);
	if (!let)
		return fail(r, s->p, "the name of a let above");
	take(s, n);
	push_let(r, p, let);
	return true;
}

static bool
read_atom(struct rule_reader *r, struct str *s, struct pattern *p)
{
	struct op op = {0};

	if (s->p[0] == '"')
		return read_words(r, s, p);
	if (!read_class_atom(r, s, &op))
		return false;
	push(r, p, op);
	return true;
}

/* One item of a pattern, from the front of *s. */
static bool
read_item(struct rule_reader *r, struct str *s, struct pattern *p)
{
	static const char structure[] = "()|^";
	static const enum op_kind mark[] = {OP_OPEN, OP_CLOSE, OP_OR, OP_KEEP};
	char c = s->p[0];
	const char *at;
	struct op op = {0};
	size_t n;

	if (c == '<' || c == '"')
		return read_atom(r, s, p);
	if (is_alpha(c))
		return read_name(r, s, p);
	if (c == '&' || c == '!') {
		p->depth++;
		if (!read_look(r, s, &op))
			return false;
		push(r, p, op);
		return true;
	}
	if (c == '?' || c == '*' || c == '+' || c == '{') {
		n = repeat_length(*s);
		if (n == 0)
			return fail(r, s->p, "'}' to close '{'");
		push(r, p, (struct op){.kind = OP_REPEAT, .text = take(s, n)});
		return true;
	}
	at = c ? strchr(structure, c) : NULL;
	if (!at)
		return fail(
		    r, s->p, "a class, a word, a name, or one of ( ) | ^ ? * + { & !");
	p->depth += c == '(' ? 1 : c == ')' ? -1 : 0;
	if (p->depth < 0)
		return fail(r, s->p, "no ')' without '('");
	push(r, p, (struct op){.kind = mark[at - structure]});
	take(s, 1);
	return true;
}

static bool
read_pattern(struct rule_reader *r, struct str s, struct pattern *p)
{
	const char *beg = s.p;

	for (skip_blanks(&s); s.n; skip_blanks(&s)) {
		bool closes = p->item_field;

		if (closes && !(s.p[0] == '<' || s.p[0] == '"' || is_alpha(s.p[0])))
			return fail(
			    r, s.p, "a class, a word, a let or '(' after the field's ':'");
		p->item_field = false;
		if (!read_item(r, &s, p))
			return false;
		if (closes)
			push(r, p, (struct op){.kind = OP_CLOSE});
	}
	if (p->depth)
		return fail(r, s.p ? s.p : beg, "')' to close '('");
	if (p->op.n == 0)
		return fail(r, s.p ? s.p : beg, "a pattern");
	return true;
}

static bool
read_let(struct rule_reader *r, struct str s)
{
	struct pattern p = {0};
	struct let let = {0};
	size_t n = name_length(s);

	let.name = take(&s, n);
	skip_blanks(&s);
	if (n == 0 || s.n == 0 || s.p[0] != '=')
		return fail(r, s.p, "a name and '='");
	take(&s, 1);
	if (!read_pattern(r, s, &p))
		return false;
	let.op.v = p.op.v;
	let.op.n = p.op.n;
	vec_push(r->b->lexicon->arena, &r->let, let);
	return true;
}

/* "-> CLASS key=value ... :" */
static bool
read_output(struct rule_reader *r, struct rule *rule, struct str *s)
{
	struct arena *a = r->b->lexicon->arena;
	VEC(struct attribute) attribute = {0};
	size_t n;

	skip_blanks(s);
	n = name_length(*s);
	rule->skips = s->n && s->p[0] == '-';
	if (!rule->skips && (n == 0 || !is_upper(s->p[0])))
		return fail(r, s->p, "a class in capitals, or '-', after '->'");
	if (!rule->skips)
		rule->output = lexicon_class(r->b->lexicon, str_cut(*s, 0, n));
	if (rule->output == CLASSES_MAX)
		return fail(r, s->p, "no more than 512 classes in all");
	take(s, rule->skips ? 1 : n);
	for (skip_blanks(s); s->n && s->p[0] != ':'; skip_blanks(s)) {
		struct str key = take(s, name_length(*s)), value;

		if (key.n == 0 || s->n == 0 || s->p[0] != '=')
			return fail(r, s->p, "key=value or ':'");
		take(s, 1);
		for (n = 0; n < s->n && !is_blank(s->p[n]) && s->p[n] != ':'; n++)
			;
		value = take(s, n);
		vec_push(a, &attribute, (struct attribute){key, value});
	}
	if (s->n == 0)
		return fail(r, s->p, "':' before the pattern");
	take(s, 1);
	rule->attribute = attribute.v;
	rule->attributes = attribute.n;
	return true;
}

static bool
read_rule(struct rule_reader *r, struct str s)
{
	struct rulebook *b = r->b;
	struct rule *rule = arena_new(b->lexicon->arena, struct rule);
	struct pattern p = {0};

	rule->file = r->name;
	rule->line = r->line;
	rule->name = take(&s, name_length(s));
	skip_blanks(&s);
	if (rule->name.n == 0 || !str_starts(s, STR("->")))
		return fail(r, s.p, "a rule's name and '->'");
	take(&s, 2);
	if (b->pass.n == 0)
		return fail(r, s.p, "'pass NAME' before the first rule");
	if (!read_output(r, rule, &s) || !read_pattern(r, s, &p))
		return false;
	rule->op.v = p.op.v;
	rule->op.n = p.op.n;
	vec_push(b->lexicon->arena, &b->pass.v[b->pass.n - 1].rule, rule);
	r->rule = rule;
	return true;
}

static bool
read_example(struct rule_reader *r, struct str s)
{
	size_t arrow = str_find(s, STR("=>"));
	struct example x = {s.p[0] == '+', str_trim(str_cut(s, 1, arrow)), {0}, r->line};

	if (!r->rule)
		return fail(r, s.p, "an example below a rule");
	if (arrow < s.n)
		x.value = str_trim(str_cut(s, arrow + 2, s.n));
	vec_push(r->b->lexicon->arena, &r->rule->example, x);
	return true;
}

static bool
read_statement(struct rule_reader *r, struct str s)
{
	struct rulepass pass = {0};
	size_t from;

	r->beg = s.p;
	s = str_trim(s);
	if (s.n == 0)
		return true;
	if (s.p[0] == '+' || s.p[0] == '-')
		return read_example(r, s);
	if (str_starts(s, STR("let ")))
		return read_let(r, str_trim(str_cut(s, 4, s.n)));
	if (str_starts(s, STR("rule ")))
		return read_rule(r, str_trim(str_cut(s, 5, s.n)));
	if (!str_starts(s, STR("pass ")))
		return fail(
		    r, s.p, "pass, let, rule, or an example that begins with + or -");
	pass.name = str_trim(str_cut(s, 5, s.n));
	from = str_find(pass.name, STR(" from "));
	if (from < pass.name.n)
		pass.from = str_trim(str_cut(pass.name, from + 6, pass.name.n));
	pass.name = str_cut(pass.name, 0, from);
	vec_push(r->b->lexicon->arena, &r->b->pass, pass);
	return true;
}

/* True where the line goes on with the statement before it. */
static bool
continues(struct str line)
{
	struct str t = str_trim(line);

	return line.n && is_blank(line.p[0]) && t.n && t.p[0] != '+' && t.p[0] != '-' &&
	       t.p[0] != '#';
}

bool
rules_read(struct rulebook *b, struct str data, const char *name, struct err *e)
{
	struct rule_reader r = {.b = b, .name = name, .e = e};
	struct str rest = data;
	uint32_t line = 0;

	while (rest.p) {
		struct str statement = str_next(&rest, '\n'), peek = rest;

		r.line = ++line;
		while (peek.p && continues(str_next(&peek, '\n'))) {
			statement.n =
			    (size_t)((peek.p ? peek.p - 1 : data.p + data.n) - statement.p);
			rest = peek;
			line++;
		}
		if (str_starts(str_trim(statement), STR("#")))
			continue;
		if (!read_statement(&r, statement))
			return false;
	}
	return true;
}
