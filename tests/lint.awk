# SPDX-License-Identifier: ISC
# The limits on how a C file reads: sizes, calls that are not used here, and
# where allocation and exit may stand. Each breach is printed as
# file:line: message and makes the run fail. Portable awk.

BEGIN {
	MAX_FILE = 500
	MAX_FUNCTION = 60
	MAX_PARAMETERS = 6
	MAX_DEPTH = 4
	MAX_LINE = 100

	# call: the files that may make it, as a pattern; "" for none.
	split("atoi atol atoll atof strtok strtok_r sprintf vsprintf strcpy strcat " \
	    "gets setlocale localtime gmtime abort rand srand system", names, " ")
	for (i in names)
		calls[names[i]] = ""
	split("malloc calloc realloc free strdup strndup aligned_alloc", names, " ")
	for (i in names)
		calls[names[i]] = "^src/base/"
	calls["free"] = "^src/base/|^tests/" # what libraries hand to a test
	calls["_Exit"] = "^src/base/arena"
	calls["exit"] = calls["_exit"] = calls["quick_exit"] = "^src/cli/main|^tests/"
}

function breach(message) {
	printf "%s:%d: %s\n", FILENAME, FNR, message
	breaches++
}

# Display columns: tabs to 8, and one for each UTF-8 character.
function columns(s,    i, c, n) {
	gsub(/[\200-\277]/, "", s)
	if (s !~ /\t/)
		return length(s)
	for (i = 1; i <= length(s); i++) {
		c = substr(s, i, 1)
		n = c == "\t" ? n + 8 - n % 8 : n + 1
	}
	return n
}

# The line without comments, and with strings and characters emptied.
function code_of(s,    at) {
	if (in_comment) {
		at = index(s, "*/")
		if (!at)
			return ""
		s = substr(s, at + 2)
		in_comment = 0
	}
	gsub(/"([^"\\]|\\.)*"/, "\"\"", s)
	gsub(/'([^'\\]|\\.)*'/, "0", s)
	gsub(/\/\*([^*]|\*+[^*\/])*\*+\//, " ", s)
	at = index(s, "/*")
	if (at) {
		s = substr(s, 1, at - 1)
		in_comment = 1
	}
	return s
}

function count(s, c) {
	return gsub(c, "", s)
}

# Commas between the outermost brackets of the last bracket group, plus one.
function parameters(s,    i, c, depth, n, any) {
	sub(/^.*__attribute__\(\(([^()]|\([^()]*\))*\)\)/, "", s)
	for (i = 1; i <= length(s); i++) {
		c = substr(s, i, 1)
		if (c == "(" && ++depth == 1)
			n = any = 0
		else if (c == ")")
			depth--
		else if (c == "," && depth == 1)
			n++
		else if (depth && c != " " && c != "\t")
			any = 1
	}
	return any ? n + 1 : 0
}

function check_calls(s,    name, at) {
	while (match(s, /[A-Za-z_][A-Za-z_0-9]*[ \t]*\(/)) {
		name = substr(s, RSTART, RLENGTH - 1)
		at = RSTART
		sub(/[ \t]+$/, "", name)
		if (name in calls && (calls[name] == "" || FILENAME !~ calls[name]) &&
		    substr(s, at - 1, 1) !~ /[.>]/)
			breach(name "() is not called here")
		s = substr(s, RSTART + RLENGTH)
	}
}

function end_file() {
	if (lines > MAX_FILE)
		printf "%s:%d: %d lines; at most %d\n", file, lines, lines, MAX_FILE
	breaches += lines > MAX_FILE
}

FNR == 1 {
	end_file()
	in_comment = in_function = depth = 0
	signature = ""
	file = FILENAME
	if ($0 !~ /SPDX-License-Identifier: ISC/)
		breach("the first line has no SPDX-License-Identifier: ISC")
}

{
	lines = FNR
	if (columns($0) > MAX_LINE)
		breach(columns($0) " columns; at most " MAX_LINE)
	if ($0 ~ /[ \t]$/)
		breach("blanks at the end of the line")
	if ($0 ~ /TODO|FIXME|XXX|^#[ \t]*if 0/)
		breach("unfinished or dead code")
	code = code_of($0)
	check_calls(code)
	if (code ~ /(^|[^A-Za-z_0-9])goto[ \t]/ && code !~ /goto out;/)
		breach("the one label is out")
	if (code ~ /(^|[^A-Za-z_0-9])typedef[ \t]+(struct|union|enum)/)
		breach("no typedef of a struct, union or enum")
}

# A function's body starts with a brace of its own at the margin.
/^\{/ {
	in_function = FNR
	depth = 0
	if (parameters(signature) > MAX_PARAMETERS)
		breach(parameters(signature) " parameters; at most " MAX_PARAMETERS)
}

in_function && code !~ /^#/ {
	depth += count(code, "{") - count(code, "}")
	if (depth > MAX_DEPTH && depth > deepest)
		breach("brace depth " depth "; at most " MAX_DEPTH)
	deepest = depth
}

/^\}/ {
	if (in_function && FNR - in_function + 1 > MAX_FUNCTION)
		breach("a function of " FNR - in_function + 1 " lines; at most " MAX_FUNCTION)
	in_function = deepest = 0
}

{
	if (code ~ /^[ \t]*$/ || code ~ /^[#}]/ || code ~ /;[ \t]*$/)
		signature = ""
	else if (!in_function)
		signature = signature " " code
}

END {
	end_file()
	exit breaches > 0
}
