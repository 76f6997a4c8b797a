package titled

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
)

// inThree makes one text of a row of a word for a connector, its name, and in one or two cells what it is or how many ways it has; "" for
// any other row.
//
//	Connector:   | X1 | Gearbox controller
//	Plug: X1     | 6 way
//	Stecker      | X1 | Getriebe | 6-polig
func inThree(h shape.Headings, r table.Row) string {
	const most = 4 // cells of the word, the name, what it is in, its ways (no source)
	if n, first := r.Filled(); n == 0 || n > most || !isConnectorFront(h, first) {
		return "" // most rows
	}
	var filled []string
	for _, c := range r.Cells {
		if c != "" {
			filled = append(filled, c)
		}
	}
	if len(filled) == 1 && strings.Contains(filled[0], " | ") {
		filled = strings.Split(filled[0], " | ")
	}
	if len(filled) < 2 || len(filled) > most {
		return ""
	}
	word, called, behind := saidAtFront(h, filled)
	if called == "" || len(behind) == 0 || len(strings.Fields(called)) > mostName {
		return ""
	}
	for _, c := range behind {
		if m := h.Words[table.Fold(strings.TrimRight(c, ":. "))]; m.Field != "" && m.Field != name.FieldConnector {
			return "" // a heading
		}
		if isNumber(c) || strings.HasSuffix(c, ":") {
			return ""
		}
	}
	if !name.IsDesignator(called) { // "Plug A" is no name without its word
		called = word + " " + called
	}
	return called + " (" + strings.Join(behind, ", ") + ")"
}

// saidAtFront parts the word for a connector and its name off the front of some cells: the word in a cell of its own before a designator,
// or both in one cell; called is "" where they do not begin so.
func saidAtFront(h shape.Headings, cells []string) (word, called string, behind []string) {
	word = strings.TrimRight(cells[0], ":.# ")
	if isConnectorWord(h, word) {
		if len(cells) > 1 && (name.IsDesignator(cells[1]) || strings.HasSuffix(cells[0], ":") && !isNumber(cells[1])) {
			return word, cells[1], cells[2:]
		}
		return "", "", nil
	}
	at := strings.IndexAny(cells[0], ": ")
	if at < 1 || !isConnectorWord(h, cells[0][:at]) {
		return "", "", nil
	}
	called = strings.Trim(cells[0][at:], ": ")
	if cells[0][at] != ':' && !name.IsDesignator(called) {
		return "", "", nil
	}
	return cells[0][:at], called, cells[1:]
}

// isConnectorWord reports whether a word heads a column of connectors in some language.
func isConnectorWord(h shape.Headings, word string) bool {
	f := table.Fold(word)
	return f != "" && (saysConnector(f) || titleline.IsPlug(f) || h.Words[f].Field == name.FieldConnector)
}

func isNumber(cell string) bool { return strings.Trim(cell, "0123456789.,") == "" }
