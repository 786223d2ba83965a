# SPDX-License-Identifier: ISC
# Who may include whom. `make lint` runs this over every file under src/; a
# breach is printed as file:line: message and makes the run fail.
# Portable awk.

BEGIN {
	# folder: the folders whose headers it may name, besides its own and
	# tamis.h. "src" is src/*.[ch] itself.
	may["src"] = "base read grammar scan clause assemble remark check answer house"
	may["base"] = ""
	may["read"] = "base"
	may["grammar"] = "base"
	may["scan"] = "base grammar"
	may["clause"] = "base grammar scan"
	may["outline"] = "base grammar scan clause"
	may["assemble"] = "base grammar scan clause"
	may["remark"] = "base grammar scan clause assemble"
	may["check"] = "base grammar"
	may["answer"] = "base grammar scan clause check"
	may["house"] = "base grammar"
	may["write"] = "base grammar house"
	may["publish"] = "base grammar house write"
	may["page"] = "base grammar house write publish archive"
	may["folder"] = "base"
	may["archive"] = "base"
	may["desk"] = "base archive"
	may["term"] = "base"
	may["cli"] = "base archive desk page term folder"

	# header of a library: the folders that may name it.
	only["pcre2.h"] = "grammar"
	only["utf8proc.h"] = "base scan"
	only["jansson.h"] = "write archive"
	only["sqlite3.h"] = "archive"
	only["zlib.h"] = "archive"
	only["pthread.h"] = "base cli desk"
	only["getopt.h"] = "cli"
	only["ctype.h"] = only["wctype.h"] = only["wchar.h"] = only["locale.h"] = "none"
}

function breach(message) {
	printf "%s:%d: %s\n", FILENAME, FNR, message
	breaches++
}

function has(list, word) {
	return index(" " list " ", " " word " ") > 0
}

FNR == 1 {
	n = split(FILENAME, path, "/")
	folder = path[n - 1]
	if (!(folder in may))
		breach("no row for the folder " folder " in layers.awk")
}

/^#[ \t]*include[ \t]*</ {
	split($0, part, /[<>]/)
	if (part[2] in only && !has(only[part[2]], folder))
		breach(folder "/ may not include <" part[2] "> (may: " only[part[2]] ")")
}

/^#[ \t]*include[ \t]*"/ {
	split($0, part, "\"")
	if (part[2] == "tamis.h" || part[2] == "findings.def")
		next
	slash = index(part[2], "/")
	to = substr(part[2], 1, slash - 1)
	if (!slash)
		breach("name the folder: \"" folder "/" part[2] "\"")
	else if (to != folder && !has(may[folder], to))
		breach(folder "/ may not include \"" part[2] "\" (may: " may[folder] ")")
}

END {
	exit breaches > 0
}
