# SPDX-License-Identifier: ISC
# tamis: GNU make. A new source, test or grammar file needs no edit here.
# Yours to set: CC, CFLAGS, LDFLAGS, WERROR=-Werror, B (build folder), PREFIX,
# DESTDIR. Everything that is made goes under $(B).

B ?= build
PREFIX ?= /usr/local
CFLAGS ?= -O2 -g
PKG_CONFIG ?= pkg-config
VERSION := 0.1.0

LIBRARIES := libpcre2-8 libutf8proc jansson sqlite3 zlib
OURS := -std=c11 -D_POSIX_C_SOURCE=200809L -Isrc -Wall -Wextra -Wmissing-prototypes \
	-fvisibility=hidden -pthread $(WERROR)
LIB_CFLAGS := $(shell $(PKG_CONFIG) --cflags $(LIBRARIES) 2>/dev/null)
LIB_LIBS := $(shell $(PKG_CONFIG) --libs $(LIBRARIES) 2>/dev/null)
COMPILE = $(CC) $(OURS) $(LIB_CFLAGS) $(CPPFLAGS) $(CFLAGS)
# Objects first, then the archive, then the libraries.
LINK = $(CC) -pthread $(CFLAGS) $(LDFLAGS) -o $@ $(filter %.o,$^) $(B)/libtamis.a $(LIB_LIBS) -lm

sources := $(sort $(wildcard src/*.c src/*/*.c))
headers := $(sort $(wildcard src/*.h src/*/*.h))
tests := $(sort $(wildcard tests/*/*.[ch]))
grammars := $(sort $(wildcard $(foreach e,lex gram tsv,grammars/*.$e grammars/*/*.$e)))
assets := $(sort $(wildcard src/*/*.css src/*/*.js))
# Every place a grammar folder or file can be added in.
grammar_folders := $(sort $(wildcard grammars grammars/*/))

object = $(patsubst %.c,$(B)/obj/%.o,$1)
lib_objects := $(call object,$(filter-out src/cli/%,$(sources))) $(B)/obj/embedded.o $(B)/obj/assets.o
cli_objects := $(call object,$(filter src/cli/%,$(sources)))
support_objects := $(call object,$(wildcard tests/support/*.c))
unit_tests := $(patsubst tests/unit/%.c,$(B)/test/%,$(wildcard tests/unit/test_*.c))

.PHONY: all setup demo test check-tests score score-record lint asan valgrind bench bench-archive \
	test-faults test-engine cover format readme readme-picture test-browser test-conformance bless \
	install clean help libraries FORCE
.DELETE_ON_ERROR:
.SECONDARY:

all: $(B)/tamis ## build libtamis.a and the program (the default)

# ---- building ---------------------------------------------------------------

# $(call keep,TEXT) writes TEXT to $@ unless it holds just that already.
keep = @mkdir -p $(@D); printf '%s\n' '$1' | cmp -s - $@ || printf '%s\n' '$1' > $@

$(B)/flags: FORCE
	$(call keep,$(COMPILE) $(LDFLAGS))
$(B)/lib.list: FORCE
	$(call keep,$(lib_objects))
$(B)/grammar.list: FORCE
	$(call keep,$(grammars))
$(B)/asset.list: FORCE
	$(call keep,$(assets))

libraries:
	@$(PKG_CONFIG) --exists --print-errors $(LIBRARIES) || \
		{ echo "tamis: run 'make setup' for the missing libraries" >&2; exit 1; }

$(B)/obj/%.o: %.c $(B)/flags | libraries
	@mkdir -p $(@D)
	$(COMPILE) -MMD -MP -c -o $@ $<

$(B)/embedded.c: tests/embed.sh $(B)/grammar.list $(grammars)
	sh tests/embed.sh tamis_embedded grammar/embedded.h grammars/ $(grammars) > $@
$(B)/assets.c: tests/embed.sh $(B)/asset.list $(assets)
	sh tests/embed.sh tamis_assets page/assets.h src/page/ $(assets) > $@
$(B)/obj/embedded.o $(B)/obj/assets.o: $(B)/obj/%.o: $(B)/%.c $(B)/flags $(grammars) $(assets)
	@mkdir -p $(@D)
	$(COMPILE) -MMD -MP -c -o $@ $<

$(B)/libtamis.a: $(lib_objects) $(B)/lib.list
	rm -f $@
	$(AR) rcs $@ $(lib_objects)

$(B)/tamis: $(cli_objects) $(B)/libtamis.a
	$(LINK)

$(B)/test/%: $(B)/obj/tests/unit/%.o $(support_objects) $(B)/libtamis.a
	@mkdir -p $(@D)
	$(LINK) $$($(PKG_CONFIG) --libs cmocka)

$(B)/made: $(call object,$(wildcard tests/made/*.c)) $(B)/libtamis.a
	$(LINK)
$(B)/score: $(call object,$(wildcard tests/score/*.c))
$(B)/bench: $(call object,$(wildcard tests/bench/*.c))
$(B)/size: $(call object,$(wildcard tests/size/*.c))
$(B)/faults: $(call object,$(wildcard tests/faults/*.c))
$(B)/score $(B)/bench $(B)/size $(B)/faults: $(support_objects) $(B)/libtamis.a
	$(LINK) $$($(PKG_CONFIG) --libs cmocka) -lm

-include $(wildcard $(B)/obj/*.d $(B)/obj/*/*.d $(B)/obj/*/*/*.d)

versioned := $(B)/obj/src/cli/main.o $(B)/obj/src/write/sarif.o
$(versioned): private CPPFLAGS += -DTAMIS_VERSION='"$(VERSION)"'
$(versioned): Makefile

# ---- running ----------------------------------------------------------------

setup: ## install what is missing to build and test (apt-get)
	@sh tests/setup.sh test

demo: ## set up, build, and write the recipes of the example episode
	@sh tests/setup.sh demo
	@$(MAKE) --no-print-directory all
	@sh tests/demo.sh $(B)

test: ## set up, build, and run every test
	@sh tests/setup.sh test
	@$(MAKE) --no-print-directory check-tests

test-browser: all ## the pages in a real browser (Chromium)
	@sh tests/setup.sh web
	@MODULES=$$(sh tests/npm.sh $(B) browser) && B=$(B) MODULES=$$MODULES \
		node --test tests/browser/

test-conformance: all ## what is written, read by other hands' readers (npm)
	@sh tests/setup.sh web
	@MODULES=$$(sh tests/npm.sh $(B) conformance) && B=$(B) MODULES=$$MODULES \
		node --test tests/conformance/

readme-picture: all ## take the picture of the proof that README.md shows
	@sh tests/setup.sh web
	@MODULES=$$(sh tests/npm.sh $(B) browser) && B=$(B) MODULES=$$MODULES \
		node tests/browser/picture.cjs examples/galley/episode.txt \
		examples/galley/proof.png

check-tests: all $(unit_tests)
	@B=$(B) sh tests/run.sh $(unit_tests)

score: $(B)/score ## compare what is found in corpus/ with the gold beside it
	$(B)/score --floor tests/score.floor corpus

score-record: $(B)/score ## raise the figures in tests/score.floor to today's
	$(B)/score --record tests/score.floor corpus

lint: all ## sizes, layers, formatting, mutable globals
	@sh tests/lint.sh $(B) $(sources) $(headers) $(tests)

sanitize := -O1 -g -fsanitize=address,undefined -fno-sanitize-recover=all
asan: ## every test and the score, under address and undefined sanitizers
	@$(MAKE) --no-print-directory B=$(B)-asan CFLAGS='$(sanitize)' check-tests score

valgrind: all $(unit_tests) ## every unit test and the corpus, under valgrind
	@B=$(B) sh tests/valgrind.sh $(unit_tests)

bench: $(B)/bench ## bytes a second through the whole pipeline
	$(B)/bench corpus

bench-archive: all $(B)/made $(B)/size ## keep 50,000 made-up episodes and search them
	@rm -rf $(B)/size.[0-9]*
	$(B)/size $(B)
	@rm -rf $(B)/size.[0-9]*

test-faults: all $(B)/made $(B)/faults ## kills, a full disk, a crowd: the archive must hold
	@rm -rf $(B)/faults.[0-9]*
	$(B)/faults $(B)
	@rm -rf $(B)/faults.[0-9]*

test-engine: all $(B)/made ## the archive's export in PostgreSQL: the same hits
	@sh tests/engine/run $(B)

cover: ## lines that the tests reach, by file
	@$(MAKE) --no-print-directory B=$(B)-cover CFLAGS='-O0 -g --coverage' check-tests
	@sh tests/cover.sh $(B)-cover

format: ## clang-format every source in place
	clang-format -i $(sources) $(headers) $(tests)

readme: all ## renew the output that README.md shows
	@sh tests/readme.sh $(B) renew

bless: all $(B)/test/test_cases ## show what changed in the golden files; ask; take it
	-@B=$(B) $(B)/test/test_cases >/dev/null 2>&1
	@sh tests/bless.sh $(B)/cases

install: all ## into $(DESTDIR)$(PREFIX)
	install -d $(addprefix $(DESTDIR)$(PREFIX)/,bin lib/pkgconfig include/tamis/base)
	install -m 755 $(B)/tamis $(DESTDIR)$(PREFIX)/bin/tamis
	install -m 644 $(B)/libtamis.a $(DESTDIR)$(PREFIX)/lib/libtamis.a
	install -m 644 src/tamis.h $(DESTDIR)$(PREFIX)/include/tamis/tamis.h
	install -m 644 src/base/*.h $(DESTDIR)$(PREFIX)/include/tamis/base
	printf '%s\n' 'prefix=$(PREFIX)' 'Name: tamis' 'Version: $(VERSION)' \
		'Description: from a talking cook'\''s script to written recipes' \
		'Requires.private: $(LIBRARIES)' 'Cflags: -I$${prefix}/include/tamis' \
		'Libs: -L$${prefix}/lib -ltamis -pthread' \
		> $(DESTDIR)$(PREFIX)/lib/pkgconfig/tamis.pc

clean: ## remove everything that was built
	rm -rf $(B) $(B)-asan $(B)-cover $(B)-clang

help: ## this list
	@awk -F ':.*## ' '/^[a-z-]+:.*## /{printf "  make %-13s %s\n", $$1, $$2}' Makefile
