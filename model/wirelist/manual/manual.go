// Package manual finds the titles of the sections of a manual that name a connector, "5.1 Connector X1".
package manual

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// A manual numbers its sections. The title of one that names a connector stands by itself above a drawing and the table of its pins, and
// ends the table above. Its number is no pin.
//
//	4.2 Connector X3   (seen from the wires)
//
//	Pin | Function
//	1   | Supply

// Rows are the rows of a sheet, each such title written as a heading without its number. Where no two sections name a connector, or one
// whose number has parts, the numbers may count something else: then the rows stay as they are.
func Rows(t *table.Table) []table.Row {
	if t.Marked {
		return t.Rows
	}
	var at []int
	var texts []string
	parts := false
	for i := range t.Rows {
		number, text := section(t.Rows[i])
		if text == "" || !alone(t.Rows, i) {
			continue
		}
		at, texts, parts = append(at, i), append(texts, text), parts || strings.Contains(strings.Trim(number, ".)"), ".")
	}
	if len(at) == 0 || len(at) < 2 && !parts {
		return t.Rows
	}
	rows := slices.Clone(t.Rows)
	for k, i := range at {
		rows[i].Cells, rows[i].Level = []string{texts[k]}, level
	}
	return rows
}

// level is that of the headings that such titles become: the title of the manual stands above them.
const level = 2

// section parts the title of a section that names a connector in its number and the rest, "5.1" and "Connector X1 (from the rear)". Both
// are "" for any other row.
func section(r table.Row) (number, text string) {
	const longest = 60 // bytes (no source)
	if r.Level > 0 || len(r.Cells) == 0 || r.Cells[0] == "" || r.Cells[0][0] < '0' || r.Cells[0][0] > '9' || len(r.Cells[0]) > longest {
		return "", "" // most rows
	}
	number, text, ok := strings.Cut(r.Cells[0], " ")
	rest := r.Cells[1:]
	if !ok && len(rest) > 0 { // "5.1" and "Connector X1" in columns
		text, rest = rest[0], rest[1:]
	}
	if !isNumber(number) || !namesPlug(text) {
		return "", ""
	}
	for _, c := range rest {
		if c == "" {
			continue
		}
		if !strings.HasPrefix(c, "(") || !strings.HasSuffix(c, ")") {
			return "", ""
		}
		text += " " + c
	}
	return number, strings.TrimSpace(text)
}

// isNumber reports whether a word is the number of a section: "5.1", "5.1.2", "4.", "4)", "4".
func isNumber(w string) bool {
	const longest = 8 // bytes
	return len(w) <= longest && strings.Trim(w, "0123456789.)") == "" && !strings.Contains(w, "..")
}

// namesPlug reports whether a title names a connector by a word for one and what it is called, "Connector X1", "Main plug P3".
func namesPlug(text string) bool {
	const most = 6 // words (no source)
	w := strings.Fields(name.WithoutBrackets(text))
	if len(w) < 2 || len(w) > most || strings.ContainsAny(text, ".;!?") {
		return false
	}
	return slices.ContainsFunc(w, func(w string) bool { return name.IsConnectorWord(strings.Trim(table.Fold(w), ":,")) })
}

// alone reports whether an empty line stands before a row and behind it.
func alone(rows []table.Row, i int) bool {
	return (i == 0 || rows[i].Line > rows[i-1].Line+1) && (i+1 == len(rows) || rows[i+1].Line > rows[i].Line+1)
}
