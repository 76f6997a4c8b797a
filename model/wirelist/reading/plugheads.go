package reading

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// isPlugName reports whether a heading is the name or the kind of a connector, a word of letters and digits, or how many ways it has:
// no language has a word for a cavity that is written so. Texts above the table may be of anything else.
//
//	Please do not swap the pairs again
//
//	DB15 | What      | Wire | Goes to
//	1    | AZ motor  | red  | TB1-1
func isPlugName(head string) bool {
	words := strings.Fields(head)
	if len(words) == 0 || len(words) > 2 {
		return false
	}
	digits, letters := strings.ContainsAny(words[0], "0123456789"), strings.ContainsFunc(words[0], isCapital)
	if digits && letters {
		return len(words) == 1 || name.IsDesignator(words[0])
	}
	w := name.Words(table.Fold(head)) // "15-way", "9 pole"
	return len(w) == 2 && strings.Trim(w[0], "0123456789") == "" && name.CountWord(w[1]) == "cavities"
}

func isCapital(r rune) bool { return r >= 'A' && r <= 'Z' }
