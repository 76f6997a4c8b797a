package name

import (
	"strings"

	"contralay/model/wirelist/table"
)

// IsFreeLine reports whether a line says of a cavity that it has no wire, "F empty", "6 -": it is a line of the table above it.
func IsFreeLine(text string) bool {
	pin, rest, ok := strings.Cut(text, " ")
	for ok && Ordinal(strings.TrimRight(pin, ".,):")) > 0 {
		if f := table.Fold(rest); f == "-" || f != "plug" && f != "key" && stateWord(rest) != Used { // "A plug" is one
			return true
		}
		pin, rest, ok = strings.Cut(rest, " ")
	}
	return false
}
