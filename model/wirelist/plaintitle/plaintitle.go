// Package plaintitle takes off what draws attention to a line that names a connector, or counts it: "=== J1 ===", "[J1]", "1) J1",
// `Connector "J1"`.
//
// A line that names none stays as it is.
package plaintitle

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// mostTitle is how long such a line is, in bytes (no source).
const mostTitle = 60

// Rows are the rows of a sheet, such lines made plain.
func Rows(t *table.Table) []table.Row {
	rows := t.Rows
	cloned := false
	for i, r := range t.Rows {
		n, text := r.Filled()
		if n != 1 || len(text) > mostTitle {
			continue
		}
		plain := plainOf(text)
		if plain == text && !isCounted(t.Rows, i-1) && !isCounted(t.Rows, i+1) {
			plain = behindCount(text)
		}
		if plain == text {
			plain = aboveDashes(t.Rows, i)
		}
		if plain == text || !name.SaysConnector(plain) {
			continue
		}
		if !cloned {
			rows, cloned = slices.Clone(rows), true
		}
		at := slices.Index(r.Cells, text)
		rows[i].Cells = slices.Clone(r.Cells)
		rows[i].Cells[at] = plain
	}
	return rows
}

// plainOf is a text without the signs on both sides of it, and without those round the name at its end.
func plainOf(text string) string {
	const signs = "=~_*#<>|+"
	bare := strings.TrimSpace(strings.Trim(text, signs))
	if bare != "" && strings.HasSuffix(text, text[:1]) && strings.ContainsAny(text[:1], signs) {
		text = bare
	}
	for _, pair := range []string{"[]", "<>", `""`, "''", "«»", "„“", "“”"} {
		open, end := string([]rune(pair)[0]), string([]rune(pair)[1])
		front, rest, ok := strings.Cut(text, open)
		if name, is := strings.CutSuffix(rest, end); ok && is && name != "" && !strings.Contains(name, end) {
			return strings.TrimSpace(front + name)
		}
	}
	return text
}

// isCounted reports whether a row is one that begins with a number and a bracket.
func isCounted(rows []table.Row, i int) bool {
	if i < 0 || i >= len(rows) {
		return false
	}
	_, text := rows[i].Filled()
	return behindCount(text) != text
}

// behindCount is a text without the number and the bracket that it begins with.
func behindCount(text string) string {
	bare := strings.TrimLeft(text, "0123456789")
	if rest, ok := strings.CutPrefix(bare, ") "); ok && bare != text {
		return strings.TrimSpace(rest)
	}
	return text
}

// aboveDashes is a line that names a connector, with a comma in place of its dash, where dashes part the cavities in the lines below it
// from what they are: the name is no cavity.
//
//	J1 - Main
//	1 - +12 V - red
//	2 - GND - black
func aboveDashes(rows []table.Row, i int) string {
	_, text := rows[i].Filled()
	of, rest, ok := strings.Cut(text, " - ")
	if !ok || !name.IsDesignator(of) || i+2 >= len(rows) || i > 0 && rows[i-1].Line+1 == rows[i].Line {
		return text
	}
	for _, r := range rows[i+1 : i+3] {
		n, line := r.Filled()
		pin, _, parted := strings.Cut(line, " - ")
		if n != 1 || !parted || name.IsDesignator(pin) && pin[:1] == of[:1] || !name.IsCavity(pin) || len(pin) > len(of) {
			return text
		}
	}
	return of + ", " + rest
}
