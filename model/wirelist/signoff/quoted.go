package signoff

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// Quoted are the rows of an older letter that one in answer to it quotes, a sign before each line: what it says counts no more. Where
// most rows begin so, the letter is passed on whole, and none is.
//
//	W1    ECU-14    BLK-1
//	W2    ECU-15    BLK-2
//
//	> W1    ECU-12    BLK-1
//	> W2    ECU-13    BLK-2
func Quoted(rows []table.Row) (quoted []table.Row) {
	const least = 2 // lines (no source)
	if !slices.ContainsFunc(rows, isQuoted) {
		return nil
	}
	for _, r := range rows {
		if isQuoted(r) {
			quoted = append(quoted, r)
		}
	}
	if len(quoted) < least || 2*len(quoted) > len(rows) {
		return nil
	}
	return quoted
}

func isQuoted(r table.Row) bool {
	return len(r.Cells) > 0 && strings.HasPrefix(r.Cells[0], "> ")
}

// WithoutQuoted is a table without these rows.
func WithoutQuoted(t table.Table) table.Table {
	if Quoted(t.Rows) != nil {
		t.Rows = slices.DeleteFunc(slices.Clone(t.Rows), isQuoted)
	}
	return t
}
