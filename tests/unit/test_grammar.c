/* SPDX-License-Identifier: ISC */
/*
 * The grammar engine on small grammars of its own: words and their forms,
 * derived classes, and how rules match.
 */
#include "../support/expect.h"
#include "../support/hold.h"
#include "../support/small.h"
#include "scan/chart.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

/* ---- words and their forms ---------------------------------------------- */

struct form_row {
	const char *lex, *word, *want; /* "" where the word must be unknown */
};

/* "lemma form CLASS CLASS", readings parted by "; ". */
static struct str
describe(struct arena *a, const struct lexicon *x, const struct entry *e)
{
	static const char *const name[] = {"base", "plural", "s", "ing", "past"};
	struct buf b = buf_in(a);

	for (size_t i = 0; e && i < e->reading.n; i++) {
		const struct reading *r = &e->reading.v[i];

		buf_fmt(&b, "%s%.*s %s", i ? "; " : "", (int)r->lexeme->lemma.n,
		    r->lexeme->lemma.p, name[r->form]);
		for (unsigned k = 0; k < x->class_name.n; k++)
			if (classset_has(&r->classes, k))
				buf_fmt(&b, " %.*s", (int)x->class_name.v[k].n,
				    x->class_name.v[k].p);
	}
	return buf_str(&b);
}

static void
check_forms(const struct form_row *row, size_t rows)
{
	for (size_t i = 0; i < rows; i++) {
		struct arena a;
		struct lexicon x;
		struct err e = {0};
		struct str got;

		arena_init(&a);
		lexicon_init(&x, &a);
		if (!lexicon_read(&x, str_of(row[i].lex), "x.lex", &e))
			fail_msg("%s: %s", row[i].lex, e.text);
		got = describe(&a, &x, lexicon_find(&x, str_of(row[i].word)));
		if (!str_is_z(got, row[i].want))
			fail_msg("%s in %s: %.*s, not %s", row[i].word, row[i].lex,
			    (int)got.n, got.n ? got.p : "", row[i].want);
		arena_release(&a);
	}
}

static void
nouns_have_plurals(void **state)
{
	static const struct form_row rows[] = {
	    {"@ F noun\nonion", "onion", "onion base F"},
	    {"@ F noun\nonion", "onions", "onion plural F"},
	    {"@ F noun\nradish", "radishes", "radish plural F"},
	    {"@ F noun\npeach", "peaches", "peach plural F"},
	    {"@ F noun\nbox", "boxes", "box plural F"},
	    {"@ F noun\nglass", "glasses", "glass plural F"},
	    {"@ F noun\nberry", "berries", "berry plural F"},
	    {"@ F noun\nturkey", "turkeys", "turkey plural F"},
	    {"@ F noun\ncherry tomato", "cherry tomatoes", "cherry tomato plural F"},
	    {"@ F noun\nsweet potato", "sweet potatoes", "sweet potato plural F"},
	    {"@ F noun\nmango", "mangoes", "mango plural F"},
	    {"@ F noun\navocado", "avocados", "avocado plural F"},
	    {"@ F noun\nbay leaf : plural=leaves", "bay leaves", "bay leaf plural F"},
	    {"@ F noun\nbay leaf : plural=leaves", "bay leafs", ""},
	    {"@ F noun mass\nrice", "rice", "rice base F"},
	    {"@ F noun mass\nrice", "rices", ""},
	    {"@ F\nonion", "onions", ""},
	    {"@ F noun\nspring onion = scallion", "scallions", "spring onion plural F"},
	    {"@ F noun\nspring-onion", "spring onions", "spring-onion plural F"},
	};

	(void)state;
	check_forms(rows, COUNT(rows));
}

static void
verbs_have_four_forms(void **state)
{
	static const struct form_row rows[] = {
	    {"@ A verb\nbake", "bake", "bake base A"},
	    {"@ A verb\nbake", "bakes", "bake s A_S"},
	    {"@ A verb\nbake", "baking", "bake ing A_ING"},
	    {"@ A verb\nbake", "baked", "bake past A_ED"},
	    {"@ A verb\nchop", "chopping", "chop ing A_ING"},
	    {"@ A verb\nchop", "chopped", "chop past A_ED"},
	    {"@ A verb\nstir", "stirring", "stir ing A_ING"},
	    {"@ A verb\npeel", "peeled", "peel past A_ED"},
	    {"@ A verb\nseason", "seasoning", "season ing A_ING"},
	    {"@ A verb\nmix", "mixes", "mix s A_S"},
	    {"@ A verb\nmix", "mixed", "mix past A_ED"},
	    {"@ A verb\nmash", "mashes", "mash s A_S"},
	    {"@ A verb\nfry", "fries", "fry s A_S"},
	    {"@ A verb\nfry", "frying", "fry ing A_ING"},
	    {"@ A verb\nfry", "fried", "fry past A_ED"},
	    {"@ A verb\ngo", "goes", "go s A_S"},
	    {"@ A verb\nsee", "seeing", "see ing A_ING"},
	    {"@ A verb\nfreeze : past=froze part=frozen", "froze", "freeze past A_ED"},
	    {"@ A verb\nfreeze : past=froze part=frozen", "frozen", "freeze past A_ED"},
	    {"@ A verb\nfreeze : past=froze part=frozen", "freezed", ""},
	    {"@ A verb\ntie : ing=tying", "tying", "tie ing A_ING"},
	    {"@ A verb\nhave : s=has", "has", "have s A_S"},
	    {"@ A B verb\nsalt", "salted", "salt past A_ED B_ED"},
	};

	(void)state;
	check_forms(rows, COUNT(rows));
}

/* The last part of a phrase's first word is what is inflected. */
static void
verbs_of_several_words_inflect(void **state)
{
	static const struct form_row rows[] = {
	    {"@ A verb\ndeep-fry", "deep fry", "deep-fry base A"},
	    {"@ A verb\ndeep-fry", "deep fried", "deep-fry past A_ED"},
	    {"@ A verb\ndeep-fry", "deep frying", "deep-fry ing A_ING"},
	    {"@ A verb\ndeep-fry", "deeps fry", ""},
	    {"@ A verb\nchop up", "chopped up", "chop up past A_ED"},
	    {"@ A verb\nbring to the boil : past=brought", "brought to the boil",
		"bring to the boil past A_ED"},
	    {"@ A verb\nstir-fry in batches", "stir fries in batches",
		"stir-fry in batches s A_S"},
	};

	(void)state;
	check_forms(rows, COUNT(rows));
}

static void
lines_are_read_as_written(void **state)
{
	static const struct form_row rows[] = {
	    {"# a comment\n@ F\n\nleek  # another\n", "leek", "leek base F"},
	    {"@ S\n#\n", "#", "# base S"},
	    {"@ S\n@\n", "@", "@ base S"},
	    {"@ F\nleek\n@ G\nkale\n", "kale", "kale base G"},
	    {"@ F\nleek : G\n", "leek", "leek base F G"},
	    {"@ F\nleek\n@ G\nleek\n", "leek", "leek base F; leek base G"},
	    {"@ F\npur\u00E9e\n", "puree", "pur\u00E9e base F"},
	    {"@ F\nself-raising flour\n", "self raising flour",
		"self-raising flour base F"},
	    {"@ F\nshepherd's pie\n", "shepherd 's pie", "shepherd's pie base F"},
	    {"@ W\ndon't\n", "do n't", "don't base W"},
	    {"@ F\nleek = a, b c\n", "b c", "leek base F"},
	    {"@ F\r\nleek\r\n", "leek", "leek base F"},
	};

	(void)state;
	check_forms(rows, COUNT(rows));
}

static void
attributes_go_over_defaults(void **state)
{
	struct lexicon x;
	struct err e = {0};
	const struct lexeme *l;

	(void)state;
	struct arena a;
	arena_init(&a);
	lexicon_init(&x, &a);
	assert_true(lexicon_read(
	    &x, STR("@ F noun group=herb kind=leaf\nbay : kind=tree free\n"), "x.lex", &e));
	l = lexicon_find(&x, STR("bay"))->reading.v[0].lexeme;
	assert_true(str_is_z(lexeme_get(l, "group"), "herb"));
	assert_true(str_is_z(lexeme_get(l, "kind"), "tree"));
	assert_true(lexeme_has(l, "free"));
	assert_false(lexeme_has(l, "mass"));
	assert_true(lexeme_get(l, "mass").p == NULL);
	arena_release(&a);
}

/* ---- how rules match ---------------------------------------------------- */

static const char words[] = "@ FOOD noun group=herb\nbasil\nsage\n"
			    "@ FOOD noun mass group=fat\nbutter\noil : free\n"
			    "@ FOOD noun group=fish\nsmoked cod\n"
			    "@ ACTION verb kind=heat\nfry\nbutter\n"
			    "@ ONES\ntwo\nthree\n@ UNIT noun\ncup\n@ OF\nof\n";

/* The nodes of the last pass: "[two cups]AMT of butter". */
static struct str
describe_nodes(struct arena *a, const struct chart *c)
{
	const struct level *l = &c->level[c->levels - 1];
	struct buf b = buf_in(a);

	for (size_t i = 0; i < l->node.n; i++) {
		const struct node *n = &l->node.v[i];
		struct span s = node_text(c, n);
		struct str text = str_cut(c->script->text, s.beg, s.end);
		struct str made = {"", 0};

		if (n->made != RAW)
			made = c->g->lexicon.class_name.v[c->made.v[n->made].rule->output];
		buf_fmt(&b, n->made == RAW ? "%s%.*s%.*s" : "%s[%.*s]%.*s", i ? " " : "",
		    (int)text.n, text.p, (int)made.n, made.p);
	}
	return buf_str(&b);
}

struct match_row {
	const char *gram, *text, *want;
};

static const struct match_row matches[] = {
    {"rule r -> X : <UNIT>", "two cups", "two [cups]X"},
    {"rule r -> X : <ONES> <UNIT>", "two cups of sage", "[two cups]X of sage"},
    {"rule r -> X : <ONES|UNIT>", "two cups", "[two]X [cups]X"},
    {"rule r -> X : <FOOD +ACTION>", "oil butter", "oil [butter]X"},
    {"rule r -> X : <FOOD -ACTION>", "oil butter", "[oil]X butter"},
    {"rule r -> X : <-FOOD>", "fry oil", "[fry]X oil"},
    {"rule r -> X : <ANY>", "fry it", "[fry]X [it]X"},
    {"rule r -> X : <UNLISTED>", "fry it", "fry [it]X"},
    {"rule r -> X : <DIGITS>", "2 cups", "[2]X cups"},
    {"rule r -> X : <FOOD.herb>", "sage butter", "[sage]X butter"},
    {"rule r -> X : <FOOD.free>", "butter oil", "butter [oil]X"},
    {"rule r -> X : <FOOD.fish>", "smoked cod", "[smoked cod]X"},
    {"rule r -> X : <ACTION_ED.heat>", "fried fry", "[fried]X fry"},
    {"rule r -> X : <FOOD.none>", "sage", "sage"},
    {"rule r -> X : <NOSUCH>", "sage", "sage"},
    {"rule r -> X : \"two\" \"cups\"", "two cups three cups", "[two cups]X three cups"},
    {"rule r -> X : \"two cups\"", "two cups", "[two cups]X"},
    {"rule r -> X : \"smoked cod\" \"it\"", "smoked cod it", "[smoked cod it]X"},
    {"rule r -> X : \"Two\"", "TWO", "[TWO]X"},
    {"rule r -> X : (<ONES> | <UNIT>)+", "two cups three", "[two cups three]X"},
    {"rule r -> X : <ONES>{2} <UNIT>?", "two three cup", "[two three cup]X"},
    {"rule r -> X : <ONES>{2,}", "two cup three", "two cup three"},
    {"rule r -> X : <ANY>+? <UNIT>", "a two cup b cup", "[a two cup]X [b cup]X"},
    {"rule r -> X : <ONES>?", "sage", "sage"},
    {"let n = <ONES>\nrule r -> X : n <UNIT>", "two cups", "[two cups]X"},
    {"let n = <ONES> | <UNIT>\nrule r -> X : n <FOOD>", "two sage", "[two sage]X"},
    {"let n = <ONES>\nlet n = <UNIT>\nrule r -> X : n", "two cups", "two [cups]X"},
    {"rule r -> X : <UNIT> &(<OF>)", "cup of cup", "[cup]X of cup"},
    {"rule r -> X : <UNIT> !(<OF>)", "cup of cup", "cup of [cup]X"},
    {"rule r -> X : &<(<OF>) <UNIT>", "cup of cup", "cup of [cup]X"},
    {"rule r -> X : !<(<OF>) <UNIT>", "cup of cup", "[cup]X of cup"},
    {"rule r -> X : <OF> ^ <UNIT>", "cup of cup", "cup of [cup]X"},
    {"rule g -> - : <ONES> <FOOD>\nrule r -> X : <ONES>", "two sage two cups",
	"two sage [two]X cups"},
    {"rule a -> A : <ONES>\nrule b -> B : <ONES> <UNIT>", "two cups", "[two]A cups"},
    {"rule a -> A : <UNIT>\nrule b -> B : <ONES> <UNIT>", "two cups", "[two cups]B"},
    {"rule r -> X : <ONES>\n\t<UNIT>\n  # a comment\n    <OF>?", "two cups of",
	"[two cups]X of"},
    {"rule r -> X : <ONES>\n\t<UNIT>\n\t<OF>?", "two cups of", "[two cups of]X"},
    {"rule r -> A : <ONES>\npass q\nrule s -> B : <A> <UNIT>", "two cups", "[two cups]B"},
    {"rule r -> A : <ONES>\npass q from p\nrule s -> B : <A> <UNIT>", "two cups",
	"[two cups]B"},
    {"rule r -> A : <ONES>\npass q\nrule s -> B : <A> <UNIT>\n"
     "pass t from p\nrule u -> C : <A>",
	"two cups", "[two]C cups"},
    {"rule r -> A : <ONES>\npass q from p\nrule s -> B : <A> <UNIT>\n"
     "pass t\nrule u -> C : <A>",
	"two cups", "[two]C cups"},
};

static void
rules_match(void **state)
{
	for (size_t i = 0; i < COUNT(matches); i++) {
		const struct match_row *row = &matches[i];
		struct arena *a = *state;
		struct str gram = arena_fmt(a, "pass p\n%s\n", row->gram), got;
		struct small files = {words, gram.p, NULL};
		struct err e = {0};
		struct grammar *g = small_open(a, &files, &e);
		struct script s = {.text = str_of(row->text)};
		struct cue q = {.kind = CUE_SPEECH, .text = {0, (uint32_t)s.text.n}};
		struct chart c;

		if (!g)
			fail_msg("%s: %s", row->gram, e.text);
		s.cue = &q;
		s.cues = 1;
		chart_make(&c, g, &s, a);
		got = describe_nodes(a, &c);
		if (!str_is_z(got, row->want))
			fail_msg("%s on \"%s\": %.*s, not %s", row->gram, row->text,
			    (int)got.n, got.p, row->want);
		tamis_grammar_close(g);
	}
}

static void
fields_are_found(void **state)
{
	struct small files = {words,
	    "pass p\nrule r -> X k=v : (n:<ONES> | n:(<OF> <ONES>)) unit:<UNIT>\n", NULL};
	struct err e = {0};
	struct grammar *g = small_open(*state, &files, &e);
	struct script s = {.text = STR("cup of two cups")};
	struct cue q = {.kind = CUE_SPEECH, .text = {0, (uint32_t)s.text.n}};
	struct field_nodes f;
	struct chart c;
	const struct node *n;

	assert_non_null(g);
	s.cue = &q;
	s.cues = 1;
	chart_make(&c, g, &s, *state);
	n = &c.level[1].node.v[1];
	assert_true(node_is(&c, n, "X"));
	assert_true(str_is_z(node_attribute(&c, n, "k"), "v"));
	assert_true(node_field(&c, n, "n", &f));
	assert_int_equal(f.n, 2);
	assert_true(node_field(&c, n, "unit", &f));
	assert_int_equal(f.n, 1);
	assert_false(node_field(&c, n, "size", &f));
	tamis_grammar_close(g);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(nouns_have_plurals),
	    cmocka_unit_test(verbs_have_four_forms),
	    cmocka_unit_test(verbs_of_several_words_inflect),
	    cmocka_unit_test(lines_are_read_as_written),
	    cmocka_unit_test(attributes_go_over_defaults),
	    cmocka_unit_test(rules_match),
	    cmocka_unit_test(fields_are_found),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
