package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// ShortMarks is how many cells of a column are as terminals are marked: a few bytes without a small letter, "2", "IGN", "-", "B+". It is 0
// where none of them is a number or a letter as cavities have: "RING" and "FORK" alone are what is crimped on.
func ShortMarks(rows []table.Row, i int) (n int) {
	const longest = 4 // bytes (no source)
	cavity := false
	for _, r := range rows {
		if i >= len(r.Cells) || r.Cells[i] == "" || len(r.Cells[i]) > longest || hasSmall(r.Cells[i]) {
			continue
		}
		n++
		cavity = cavity || name.IsCavity(r.Cells[i])
	}
	if !cavity {
		return 0
	}
	return n
}

// hasSmall reports whether a text has a small letter, or a blank.
func hasSmall(text string) bool {
	for k := range len(text) {
		if c := text[k]; c >= 'a' && c <= 'z' || c == ' ' {
			return true
		}
	}
	return false
}
