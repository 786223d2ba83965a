# SPDX-License-Identifier: ISC
# What the grammar's files say and nobody reads: flags, keys and classes of words,
# attributes and fields of rules, tables, columns, kinds of row. A name counts as read
# where src/ has it in quotes or a rule speaks of it, and a class where an entry is not
# joined before it. LISTED is for words that need only be known. What a rule makes may
# be there to hide its words, so it is not asked for.
#   awk -f tests/unused.awk src/*.[ch] src/*/*.[ch] grammars/*/*.gram \
#       grammars/*/*.lex grammars/tables/*.tsv
# Portable awk.

function say(what, name) {
	if (what SUBSEP name in said)
		return
	said[what, name] = 1
	printf "%s:%d: %s %s is read by nobody\n", FILENAME, FNR, what, name
	unused++
}

FNR == 1 {
	kind = FILENAME
	sub(/.*\./, "", kind)
	header = 0
	rules = 0
}

# ---- who reads: C, then rules ---------------------------------------------

kind == "c" || kind == "h" || kind == "def" {
	n = split($0, part, "\"")
	for (i = 2; i < n; i += 2)
		quoted[part[i]] = 1
	next
}

function read_classes(s) {
	while (match(s, /<[^<>"]*>/)) {
		inside = substr(s, RSTART + 1, RLENGTH - 2)
		s = substr(s, RSTART + RLENGTH)
		n = split(inside, part, /[ |+-]+/)
		# A mark may have hyphens in it, which part the class here.
		m = split(inside, whole, /[ |+]+|-[A-Z]/)
		for (i = 1; i <= n; i++) {
			sub(/\..*/, "", part[i])
			class[part[i]] = 1
		}
		for (i = 1; i <= m; i++)
			if (index(whole[i], "."))
				mark[substr(whole[i], index(whole[i], ".") + 1)] = 1
	}
}

kind == "gram" && /^[ \t]+[-+#]/ { next }
kind == "gram" && /^#/ { next }

# What rules and words have is looked at when all of them are read.
kind == "gram" {
	line = $0
	if (line ~ /^rule /) {
		split(line, word, " ")
		for (i = 5; word[i] ~ /^[a-z]+=/; i++)
			attribute[substr(word[i], 1, index(word[i], "=") - 1)] = \
			    FILENAME ":" FNR
	}
	read_classes(line)
	gsub(/"[^"]*"/, " ", line)
	while (match(line, /[a-z][a-z0-9]*:[<(a-z]/) || match(line, /[a-z][a-z0-9]*: *$/)) {
		name = substr(line, RSTART, RLENGTH)
		sub(/:.*/, "", name)
		if (!(name in field))
			field[name] = FILENAME ":" FNR
		line = substr(line, RSTART + RLENGTH)
	}
	next
}

# ---- what there is: words, then tables ------------------------------------

BEGIN {
	split("noun verb mass plural s ing past part unless", own, " ")
	for (i in own)
		inflection[own[i]] = 1
	class["LISTED"] = 1
	split("source status note printed figure", people, " ")
	for (i in people)
		told[people[i]] = 1
}

function check_word(w, key, value) {
	if (w ~ /^[A-Z_]+$/) {
		if (!(w in listed))
			listed[w] = FILENAME ":" FNR
		return
	}
	key = value = w
	sub(/=.*/, "", key)
	sub(/^[^=]*=?/, "", value)
	if (!(key in inflection) && !(key in quoted) && !(key in mark) && !(value in mark))
		say(value == "" ? "flag" : "key", key)
}

kind == "lex" && match($0, /unless=[A-Z_|]+/) {
	n = split(substr($0, RSTART + 7, RLENGTH - 7), part, "|")
	for (i = 1; i <= n; i++)
		class[part[i]] = 1
}

kind == "lex" && !/^#/ && NF {
	line = $0
	sub(/  +#.*/, "", line)
	if (line ~ /^@/)
		sub(/^@/, "", line)
	else if (index(line, " : "))
		line = substr(line, index(line, " : ") + 3)
	else
		next
	n = split(line, word, " ")
	for (i = 1; i <= n; i++)
		check_word(word[i])
}

kind == "tsv" && !/^#/ {
	n = split($0, cell, "\t")
	if (!header) {
		header = n
		split($0, column, "\t")
		name = FILENAME
		gsub(/.*\/|\.tsv$/, "", name)
		if (!(name in quoted))
			say("table", name)
		for (i = 1; i <= n; i++)
			if (!(column[i] in quoted) && !(column[i] in told))
				say("column", column[i])
		next
	}
	for (i = 1; i <= n; i++)
		if ((column[i] == "kind" || column[i] == "use") && cell[i] != "" &&
		    !(cell[i] in quoted))
			say(column[i], cell[i])
}

END {
	for (name in listed)
		if (!(name in class) && !(name in quoted))
			unused += report(listed[name], "class", name)
	for (name in attribute)
		if (!(name in quoted))
			unused += report(attribute[name], "attribute", name)
	for (name in field)
		if (!(name in quoted))
			unused += report(field[name], "field", name)
	exit unused > 0
}

function report(place, what, name) {
	printf "%s: %s %s is read by nobody\n", place, what, name
	return 1
}
