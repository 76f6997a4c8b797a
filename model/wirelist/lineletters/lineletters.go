// Package lineletters writes out the letters of colours that the lines of a text end in, so that those who read the lines know them.
//
//	Dip switch to headlamp left     U/R          Dip switch to headlamp left     blue/red
//	Dip switch to headlamp right    U/W    ->    Dip switch to headlamp right    blue/white
//	Battery to starter              N            Battery to starter              brown
//
// A letter that nobody takes for a colour would be the last word of an end, and a stroke between two would part two cavities.
package lineletters

import (
	"slices"
	"strings"

	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/table"
)

const leastLines = 4 // that end in letters (no source)

// Rows are the rows of a text with the letters written out, by the key that its lists give or, where they give none, as on old British
// vehicles; lines are the rows that were changed, nil where its lines do not end so.
func Rows(rows []table.Row, key huekey.ColourKey) (out, lines []table.Row) {
	of := key
	if of == nil {
		of = huekey.LetterKey()
	}
	var pieces []string
	var at []int
	n := 0 // lines with a last piece
	for i, r := range rows {
		if len(r.Cells) != 1 || r.Level > 0 || r.Struck {
			continue
		}
		last := lastPiece(r)
		if last == "" {
			continue
		}
		if n++; isLetters(last, of) {
			pieces, at = append(pieces, last), append(at, i)
		}
	}
	if len(at) < leastLines || 4*len(at) < 3*n || key == nil && !huekey.AreLetters(pieces) {
		return rows, nil
	}
	out = slices.Clone(rows)
	for k, i := range at {
		out[i] = written(rows[i], pieces[k], of.InEnglish(pieces[k]))
		lines = append(lines, rows[i])
	}
	return out, lines
}

// lastPiece is what stands at the end of a line behind a wide gap, behind its arrow in a column, or behind a comma; "" where nothing does.
func lastPiece(r table.Row) string {
	switch {
	case r.Gap != nil:
		return r.Gap[1]
	case len(r.Drawn) > 2:
		return r.Drawn[len(r.Drawn)-1]
	}
	for _, mark := range []string{", ", "; "} {
		if i := strings.LastIndex(r.Cells[0], mark); i > 0 {
			return r.Cells[0][i+len(mark):]
		}
	}
	return ""
}

// isLetters reports whether a piece is letters of colours alone.
func isLetters(piece string, key huekey.ColourKey) bool {
	const longest = 5 // "LG/LG" (no source)
	return len(piece) <= longest && piece == strings.ToUpper(piece) && key.Written(piece)
}

// written is a line that ends in a word in the place of letters.
func written(r table.Row, letters, words string) table.Row {
	end := func(s string) string {
		if front, ok := strings.CutSuffix(strings.TrimRight(s, " \t"), letters); ok {
			return front + words
		}
		return s
	}
	r.Cells, r.Raw = []string{end(r.Cells[0])}, end(r.Raw)
	if r.Gap != nil {
		r.Gap = &[2]string{r.Gap[0], end(r.Gap[1])}
	}
	if n := len(r.Drawn); n > 0 {
		r.Drawn = slices.Clone(r.Drawn)
		r.Drawn[n-1] = end(r.Drawn[n-1])
	}
	return r
}
