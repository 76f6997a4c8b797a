package signoff

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// eachSigns reports whether every cell of a row, two or more, begins with a word for the paper and says something of it: "Rev B | drawn
// KL", "Issue 3 | checked MO | Sheet 1".
func eachSigns(r table.Row) bool {
	n, makers := 0, 0
	for _, c := range r.Cells {
		if c == "" {
			continue
		}
		word, rest, _ := name.CutWord(table.Fold(c))
		rest = strings.Trim(rest, " .:")
		maker := saysSignOff(word, "", "", true, true)
		if !maker && !slices.Contains([]string{"sheet", "page", "blatt", "seite", "feuille", "hoja", "foglio"}, word) || rest == "" {
			return false
		}
		n++
		if word != "date" && word != "data" && maker {
			makers++
		}
	}
	return n > 1 && makers > 0
}
