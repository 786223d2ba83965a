/* SPDX-License-Identifier: ISC */
/*
 * Makes the ingredients and steps of every part, clause by clause: sentences
 * gather in a step until its time or its cue is told.
 */
#include "assemble/stepper.h"

static void
push_step(struct stepper *k)
{
	struct part *p = part_now(k);
	size_t n = p->steps;

	if (n == 0 || (n >= 8 && (n & (n - 1)) == 0))
		p->step = arena_grow(k->m->a, p->step, n, n ? n * 2 : 8, sizeof *p->step);
	p->step[n] = k->step;
	p->steps++;
	if (k->step.heats && k->step.duration.known)
		k->heated = n;
}

static void
close_step(struct stepper *k)
{
	if (k->open && k->text.n) {
		buf_put_char(&k->text, '.');
		k->step.text = buf_str(&k->text);
		k->step.use = arena_grow(k->m->a, k->use, k->uses, k->uses, sizeof *k->use);
		k->step.uses = k->uses;
		push_step(k);
	}
	k->open = k->full = false;
	k->sentences = 0;
	k->uses = 0;
}

static void
open_step(struct stepper *k, const struct node *at)
{
	k->step = (struct step){.recast = true, .place = place_of_node(k->m, at)};
	k->text = buf_in(k->m->a);
	k->open = true;
}

/* "Fold it in gently. Fold, don't stir": said already. */
static bool
says_nothing_new(const struct stepper *k, struct str s)
{
	struct str text = buf_str(&k->text);
	size_t last = text.n;

	while (last > 0 && !(last > 1 && text.p[last - 2] == '.'))
		last--;
	return str_ends(text, s) ||
	       (str_find_char(s, ' ') == s.n && str_starts(str_cut(text, last, text.n), s));
}

void
step_add(struct stepper *k, struct str s, const struct node *at)
{
	if (!s.n || (k->open && k->text.n && says_nothing_new(k, s)))
		return;
	if (k->open && (k->full || k->sentences >= SENTENCES_MAX))
		close_step(k);
	if (!k->open)
		open_step(k, at);
	if (k->text.n)
		buf_put_z(&k->text, ". ");
	buf_put(&k->text, s);
	k->sentences++;
}

static bool
is_main(const struct deed *d)
{
	return d->duration.present || d->heats || d->doneness.text.n || d->doneness.known;
}

static void
take_deed(struct stepper *k, const struct deed *d)
{
	struct step *s = &k->step;
	bool main = is_main(d);
	bool sets = d->temperature.unit && !d->heats && !d->duration.present &&
		    (str_is_z(d->kind, "preheat") || str_is_z(d->kind, "set-heat"));

	if (d->action.n && (!s->action.n || (main && !s->duration.present))) {
		s->action = d->action;
		s->passive = d->passive;
	}
	s->heats = s->heats || d->heats;
	s->preheats =
	    s->preheats || sets || str_is_z(d->kind, "preheat") ||
	    (!d->heats && d->temperature.present && heat_has_setting(d->appliance) &&
		!d->foods && !d->duration.present);
	heat_take(k, d);
	if (d->duration.present && s->duration.present && d->duration.known &&
	    s->duration.known) {
		s->duration.min_ms += d->duration.min_ms;
		s->duration.max_ms += d->duration.max_ms;
	} else if (d->duration.present) {
		s->duration = d->duration;
	}
	if (d->doneness.text.n && !s->doneness.text.n)
		s->doneness.text = d->doneness.text;
	if (d->doneness.known && !s->doneness.known) {
		struct str text = s->doneness.text;

		s->doneness = d->doneness;
		s->doneness.text = text;
	}
	if (s->doneness.place.span.end == 0)
		s->doneness.place = d->doneness.place;
	k->full = k->full || d->duration.present || sets ||
		  (s->preheats && !d->foods && !s->heats) ||
		  (d->heats && (d->doneness.text.n || d->doneness.known));
}

static bool
is_worth_writing(const struct deed *d)
{
	if (!d->anything && (d->light || !d->kind.n))
		return false;
	if (d->light && !d->foods && !d->equipment && !d->thing &&
	    !d->temperature.present && !d->duration.present && !d->doneness.text.n)
		return false;
	return true;
}

/* "flip it and another five minutes": more of the step under way. */
static bool
goes_on(const struct stepper *k, const struct deed *d)
{
	return k->open && k->step.duration.known && k->step.heats && !d->foods &&
	       k->sentences < SENTENCES_MAX &&
	       ((d->more && d->duration.known) ||
		   (str_is_z(d->kind, "flip") && !d->duration.present));
}

static struct writing
writing_of(const struct stepper *k, const struct clause *q, const struct deed *d)
{
	return (struct writing){.m = k->m,
	    .clause = q,
	    .deed = d,
	    .loose = k->loose,
	    .part = part_now(k),
	    .hot = k->now.hot};
}

/* "meanwhile boil the pasta", "while that simmers, boil the pasta": with what the
 * step before it has begun. */
static bool
is_meanwhile(const struct stepper *k, const struct clause *q)
{
	const struct level *top = chart_top(&k->m->c);

	if (!k->open && part_now(k)->steps == 0)
		return false;
	for (uint32_t i = q->beg; i < q->verb && i < q->end; i++)
		if (top->node.v[i].made == RAW &&
		    node_has(&k->m->c, &top->node.v[i], "BESIDE"))
			return true;
	return false;
}

/* Begins a step, for no other can stand beside the one before it. */
static struct str
meanwhile(struct stepper *k, struct str s)
{
	struct buf b = buf_in(k->m->a);

	if (!s.n)
		return s;
	close_step(k);
	buf_put_z(&b, "Meanwhile, ");
	buf_put_char(&b, to_lower(s.p[0]));
	buf_put(&b, str_cut(s, 1, s.n));
	return buf_str(&b);
}

static void
write_clause(struct stepper *k, const struct clause *q, const struct deed *d)
{
	uint32_t verb = q->verb < q->end ? q->verb : q->beg;
	const struct node *at = &chart_top(&k->m->c)->node.v[verb];
	struct writing w = writing_of(k, q, d);
	bool beside = is_meanwhile(k, q);
	size_t waiting;
	struct deed own = *d;
	struct str s;

	pending_offer(k, q, d, &w);
	s = sentence_write(&w);
	if (beside)
		s = meanwhile(k, s);
	pending_settle(k, d, &w);
	if (goes_on(k, d))
		k->full = false;
	else if (s.n)
		heat_prolong(k, &own);
	step_add(k, s, at);
	waiting = k->pendings;
	gather_things(k, q, d);
	k->pendings = waiting;
	if (s.n || own.duration.present)
		take_deed(k, &own);
	else if (d->temperature.present)
		heat_turn(k, d);
	k->step.beside = k->step.beside || (beside && s.n);
	if (own.heats && own.duration.known)
		k->told_apart = false;
}

static void
have_clause(struct stepper *k, const struct clause *q, const struct deed *d)
{
	bool timed = d->duration.present || d->temperature.present;

	if (d->keeping)
		return;
	if (d->foods == 0)
		gather_things(k, q, d);
	if (d->foods && !(timed && d->action.n) && !(d->equipment && !k->loose)) {
		gather_things(k, q, d);
		heat_turn(k, d);
	} else if (d->foods || timed || d->doneness.known)
		write_clause(k, q, d);
}

/* "don't stir it", "do not open the lid for five minutes"; what one need not
 * or cannot do is no instruction. */
static void
not_clause(struct stepper *k, const struct clause *q, struct deed *d)
{
	const struct node *verb = &chart_top(&k->m->c)->node.v[q->verb];
	struct str first = node_token(&k->m->c, verb)->norm;

	if (!d->action.n || d->light || !d->kind.n || q->action != d->lexeme ||
	    !(str_is_z(first, "do") || str_is_z(first, "don't") ||
		str_is_z(first, "never"))) {
		gather_things(k, q, d);
		return;
	}
	if (d->duration.present) {
		d->action = STR("rest");
		d->passive = true;
		d->heats = false;
	}
	write_clause(k, q, d);
}

/* "let's make the cornbread": turns to a dish, does nothing yet. */
static bool
makes_named(const struct maker *m, const struct clause *q, const struct deed *d)
{
	const struct level *top = chart_top(&m->c);

	for (uint32_t i = q->beg; d->light && d->foods == 1 && i < q->end; i++)
		if (node_is(&m->c, &top->node.v[i], "ING"))
			return gather_is_name(m, &top->node.v[i]);
	return false;
}

/* "I do three quarters of a cup of sugar", "you take two eggs": no more than a list
 * of what goes in. */
static bool
only_brings(const struct maker *m, const struct clause *q, const struct deed *d)
{
	const struct level *top = chart_top(&m->c);

	if (q->kind != CLAUSE_DO || !d->light || !d->foods || d->equipment || d->pronoun ||
	    d->thing || d->duration.present || d->temperature.present || d->doneness.text.n)
		return false;
	for (uint32_t i = q->beg; i < q->end; i++)
		if (top->node.v[i].made == RAW &&
		    node_has(&m->c, &top->node.v[i], "PLACEPREP"))
			return false;
	return true;
}

static struct str
reading_words(const struct stepper *k, const struct deed *d)
{
	struct buf b = buf_in(k->m->a);

	slot_put_temperature(k->m->slots, &b,
	    &(struct amount){
		true, true, d->doneness.min, d->doneness.max, d->doneness.unit},
	    true);
	return buf_str(&b);
}

/* A thermometer's reading told apart belongs to the cooking before it. */
static void
attach_reading(struct stepper *k, const struct deed *d)
{
	struct part *p = part_now(k);
	struct step *s = k->open && k->step.heats ? &k->step : NULL;

	for (size_t i = p->steps; !s && i-- > 0;)
		if (p->step[i].heats)
			s = &p->step[i];
	if (!s || s->doneness.known)
		return;
	struct str text = s->doneness.text;

	s->doneness = d->doneness;
	s->doneness.text = text;
	if (s != &k->step)
		s->text =
		    arena_fmt(k->m->a, "%.*s It should read %.*s inside.", (int)s->text.n,
			s->text.p, (int)reading_words(k, d).n, reading_words(k, d).p);
	else if (k->text.n)
		buf_fmt(&k->text, ". It should read %.*s inside",
		    (int)reading_words(k, d).n, reading_words(k, d).p);
}

/* "It should flake", said after the cooking: the sign of its end. */
static void
attach_sign(struct stepper *k, const struct clause *q, const struct deed *d)
{
	const struct level *top = chart_top(&k->m->c);
	struct writing w = writing_of(k, q, d);
	struct str sign;

	if (q->kind != CLAUSE_BE || q->verb == q->end || !k->open || !k->step.heats ||
	    d->doneness.known || d->temperature.present ||
	    !node_attribute(&k->m->c, &top->node.v[q->verb], "should").n)
		return;
	sign = sign_write(&w);
	if (sign.n && k->text.n)
		buf_fmt(&k->text, ". %.*s", (int)sign.n, sign.p);
}

static void
take_clause(struct stepper *k, const struct clause *q)
{
	struct deed d;

	story_follow(k, q);

	deed_read(k->m, q, &d);
	if (q->kind != CLAUSE_NOT && q->kind != CLAUSE_CHAT)
		deed_imply(k->m, q, &k->now, &d);
	roles_of_clause(k->m, q, &d);
	if (q->kind != CLAUSE_CHAT)
		heat_follow(k, &d);
	k->now.told = d.duration.present ? NULL : deed_told(k->m, q);
	k->now.set = d.temperature.heat.n && !d.duration.present;
	if (d.doneness.known && !d.heats)
		attach_reading(k, &d);
	attach_sign(k, q, &d);
	k->bringing = false;
	if ((d.foods && q->kind != CLAUSE_CHAT && !d.light) || d.temperature.present ||
	    (d.heats && !d.more))
		k->told_apart = true;
	switch (q->kind) {
	case CLAUSE_DO:
	case CLAUSE_GO:
		/* "so that's going. In a bowl two cups of flour": named at least */
		k->bringing =
		    (only_brings(k->m, q, &d) || story_is_state(k->m, q, &d)) && !k->past;
		if (!k->bringing && is_worth_writing(&d) && !d.keeping && !k->past &&
		    !story_is_told(k->m, q, &d) && !makes_named(k->m, q, &d))
			write_clause(k, q, &d);
		else
			gather_things(k, q, &d);
		break;
	case CLAUSE_NOT:
		not_clause(k, q, &d);
		break;
	case CLAUSE_CHAT:
		gather_things(k, q, &d);
		/* "I've had the oven at four hundred for a while" */
		if (!q->other && d.named && d.temperature.role == ROLE_APPLIANCE)
			heat_turn(k, &d);
		break;
	case CLAUSE_HAVE:
	case CLAUSE_BE:
	case CLAUSE_BARE:
		if (story_is_summary(k->m, q))
			break;
		have_clause(k, q, &d);
		break;
	}
	if (story_is_past(k->m, chart_top(&k->m->c)->node.v[q->beg].beg,
		chart_top(&k->m->c)->node.v[q->end - 1].end))
		k->past = true;
}

static bool
is_listed(const struct stepper *k, const struct clause *q)
{
	const struct maker *m = k->m;

	return k->listed[q - m->clause.v] || m->s->cue[q->cue].kind == CUE_LIST ||
	       m->s->cue[q->cue].kind == CUE_ONSCREEN;
}

static void
move_to(struct stepper *k, const struct clause *q)
{
	if (k->dish == q->dish && k->part == q->part)
		return;
	if (k->dish >= 0) {
		pending_flush(k);
		close_step(k);
	}
	if (k->dish != q->dish && k->dish >= 0)
		heat_turn_to_dish(k, q->dish);
	k->dish = q->dish;
	k->part = q->part;
	k->heated = SIZE_MAX;
}

/* Less than one full stop in forty words: machine captions. */
static bool
is_loose(const struct maker *m)
{
	size_t stops = 0;

	for (size_t i = 0; i < m->c.tokens.token.n; i++)
		stops += str_is_z(m->c.tokens.token.v[i].norm, ".");
	return stops * 40 < m->c.tokens.token.n;
}

/* The food was named last within the clause. */
static bool
is_in_clause(const struct maker *m, const struct clause *q, const struct ingredient *in)
{
	const struct level *top = chart_top(&m->c);
	const struct node words = {
	    top->node.v[q->beg].beg, top->node.v[q->end - 1].end, RAW};
	struct span text = place_of_node(m, &words).span;

	return in->uses > 0 && in->use[in->uses - 1].span.beg >= text.beg;
}

static void
list_clause(struct stepper *k, const struct clause *q)
{
	struct part *p = part_now(k);
	size_t before = p->ingredients;
	struct deed d;

	deed_read(k->m, q, &d);
	d.listing = true;
	gather_things(k, q, &d);
	k->pendings = 0;
	k->uses = 0;
	for (size_t i = 0; i < p->ingredients; i++) {
		/* a heading over the list may have named it before */
		if (i < before && !is_in_clause(k->m, q, &p->ingredient[i]))
			continue;
		p->ingredient[i].listed = true;
		p->ingredient[i].used = p->ingredient[i].used && i < before;
	}
}

void
steps_make(struct maker *m)
{
	struct stepper k = {.m = m,
	    .dish = -1,
	    .part = -1,
	    .loose = is_loose(m),
	    .listed = lists_spoken(m),
	    .heated = SIZE_MAX};

	story_find(m);
	for (size_t i = 0; i < m->clause.n; i++) {
		const struct clause *q = &m->clause.v[i];

		if (q->dish < 0) {
			heat_set_before(&k, q);
			continue;
		}
		move_to(&k, q);
		if (is_listed(&k, q)) {
			list_clause(&k, q);
			continue;
		}
		if (k.open && k.cue != q->cue && m->s->cue[q->cue].paragraph &&
		    k.sentences) {
			pending_flush(&k);
			close_step(&k);
		}
		k.cue = q->cue;
		take_clause(&k, q);
	}
	if (k.dish >= 0) {
		pending_flush(&k);
		close_step(&k);
	}
}
