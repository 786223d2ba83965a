# SPDX-License-Identifier: ISC
# From what `tamis explain` lists to the table of findings of README.md.
#   tamis explain | awk -f tests/catalogue.awk

BEGIN {
	print "| code | severity | raised for |"
	print "| --- | --- | --- |"
}

{
	code = $1
	severity = $2
	sub(/^[^ ]+ +[^ ]+ +/, "")
	printf "| `%s` | %s | %s |\n", code, severity, $0
}
