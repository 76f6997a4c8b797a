package midarrow

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/strokes"
	"contralay/model/wirelist/table"
)

// sides is what stands on both sides of the arrows of a table.
type sides struct {
	head table.Row
	rows []table.Row
	cols []shape.Column
}

// side is where the ends on one side stand.
type side struct {
	part      string
	pin, name int // columns; the same where both stand in a cell, name −1 where there are no names
}

func (s side) has(k int) bool { return k == s.pin || k == s.name }

// end is a pin and its name.
type end struct{ pin, name string }

// side finds the columns of the ends from the column next to the arrows outwards, to the edge of the table.
func (s sides) side(next, edge int) (of side, ok bool) {
	out := next + sign(edge-next)
	if next == edge || !isOfEnd(s.cols[next]) {
		return of, false
	}
	second := out != edge && isOfEnd(s.cols[out])
	switch {
	case second && s.are(next, isName) && s.are(out, isNumber):
		of = side{pin: out, name: next}
	case s.are(next, isPin):
		if of = (side{pin: next, name: -1}); second && s.are(out, isName) {
			of.name = out
		}
	case second && s.are(next, isName) && s.are(out, isPin):
		of = side{pin: out, name: next}
	case s.are(next, func(c string) bool { _, ok := parted(c); return ok }):
		of = side{pin: next, name: next}
	default:
		return of, false
	}
	of.part, ok = s.part(of)
	return of, ok
}

func sign(n int) int {
	if n < 0 {
		return -1
	}
	return 1
}

// are reports whether the cells of a column that hold something are all so.
func (s sides) are(k int, is func(string) bool) bool {
	n := 0
	for _, r := range s.rows {
		c := cellAt(r.Cells, k)
		if isNothing(c) {
			continue
		}
		if !is(c) {
			return false
		}
		n++
	}
	return n > 0
}

// text is the first cell of a column that holds something.
func (s sides) text(k int) string {
	for _, r := range s.rows {
		if c := cellAt(r.Cells, k); c != "" {
			return c
		}
	}
	return ""
}

// part is what the headings of a side call it: each of them says the same of it, or the front of it, or nothing.
func (s sides) part(of side) (part string, ok bool) {
	for _, k := range []int{of.name, of.pin} {
		if k < 0 {
			continue
		}
		said := withoutColumnWords(cellAt(s.head.Cells, k))
		switch {
		case strings.HasPrefix(table.Fold(part), table.Fold(said)):
		case strings.HasPrefix(table.Fold(said), table.Fold(part)):
			part = said
		default:
			return "", false
		}
	}
	return part, part != "" && !isPin(part)
}

// withoutColumnWords takes the words for columns off both ends of a heading, and what is no word.
func withoutColumnWords(head string) string {
	w := strings.Fields(head)
	isOff := func(word string) bool {
		return strings.Trim(word, ".,:;#-/()") == "" || strokes.IsColumnWords(word) || name.IsPinWord(table.Fold(word))
	}
	for len(w) > 0 && isOff(w[len(w)-1]) {
		w = w[:len(w)-1]
	}
	for len(w) > 1 && isOff(w[0]) {
		w = w[1:]
	}
	return strings.Join(w, " ")
}

// end is the end that a row has on this side.
func (s side) end(cells []string) (e end) {
	pin := cellAt(cells, s.pin)
	switch {
	case isNothing(pin):
	case s.pin == s.name:
		e, _ = parted(pin)
		return e
	default:
		e.pin = pin
	}
	if s.name >= 0 {
		if e.name = cellAt(cells, s.name); isNothing(e.name) {
			e.name = ""
		}
	}
	return e
}

// parted parts a cell with a pin and its name, "UP 5", "5 UP", "UP (5)", "UP pin 5".
func parted(cell string) (e end, ok bool) {
	w := strings.Fields(strings.NewReplacer("(", " ", ")", " ", "[", " ", "]", " ", ",", " ").Replace(cell))
	for k, one := range w {
		if k > 0 && k+1 < len(w) && name.IsPinWord(table.Fold(one)) && isPin(w[k+1]) {
			w = append(w[:k:k], w[k+1:]...)
			break
		}
	}
	if len(w) > 1 && name.IsPinWord(table.Fold(w[0])) {
		w = w[1:]
	}
	const most = 4 // words (no source)
	switch {
	case len(w) == 0 || len(w) > most:
		return e, false
	case len(w) == 1 && isNumber(w[0]):
		return end{pin: w[0]}, true
	case len(w) == 1:
		return e, false
	case isNumber(w[len(w)-1]) && !isNumber(w[0]):
		return end{w[len(w)-1], strings.Join(w[:len(w)-1], " ")}, true
	case isNumber(w[0]) && !isNumber(w[len(w)-1]):
		return end{w[0], strings.Join(w[1:], " ")}, true
	}
	return e, false
}

// isPin reports whether a text is the name of a cavity: a number, or a letter before or behind one.
func isPin(text string) bool {
	return len(text) <= 4 && text != "" && (isNumber(text) || isNumber(text[1:]) || isNumber(text[:len(text)-1]))
}

// isNumber reports whether a text is a number of three figures at the most.
func isNumber(text string) bool {
	return text != "" && len(text) <= 3 && strings.Trim(text, "0123456789") == ""
}

// isName reports whether a text can be the name of a pin, and is no number.
func isName(text string) bool {
	const longest = 24 // bytes (no source)
	return len(text) <= longest && strings.IndexFunc(text, func(r rune) bool { return r > '9' }) >= 0
}

// isNothing reports whether a cell holds nothing, or the stroke for it.
func isNothing(cell string) bool {
	switch table.Fold(cell) {
	case "nc", "n/c", "n.c.", "none", "unused", "not used", "not connected", "open", "frei", "leer", "libre", "libero", "vide", "vrij":
		return true
	}
	return strings.Trim(cell, "-–—./ ") == ""
}

func cellAt(cells []string, k int) string {
	if k < 0 || k >= len(cells) {
		return ""
	}
	return strings.TrimSpace(cells[k])
}
