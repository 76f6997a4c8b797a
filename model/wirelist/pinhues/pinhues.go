package pinhues

import (
	"slices"
	"strings"

	"contralay/model/wirelist/corecells"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// leastBare is how many cells with a colour behind a blank or a sign are no chance (no source). One in brackets says what it is.
const leastBare = 3

// Spread gives the colours of a column of cavities a column of their own behind the last, where the table has none for colours and every
// cell of the cavities is a cavity, with its colour or without.
//
//	Pin     | Signal
//	1 (red) | VCC
//	2       | TX
//	3 (blk) | GND
func Spread(h shape.Headings, head table.Row, rows []table.Row) (newHead table.Row, out []table.Row) {
	if h.Numbered() || h.Recipe != nil {
		return head, rows
	}
	cols, lang := h.Columns([]table.Row{head}, 0)
	if slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldColour }) {
		return head, rows
	}
	for i, c := range cols {
		if pin, _, _ := cut(c.Head, lang); pin != "" {
			return head, rows // it is no heading
		}
		isPin := c.Field == name.FieldPin || c.Field == name.FieldFromPin || c.Field == name.FieldNumber
		if isPin && haveColours(rows, i, lang) {
			return part(head, rows, i, lang)
		}
	}
	return head, rows
}

// haveColours reports whether the cells of a column are cavities with the colours of their wires, and all of them cavities.
func haveColours(rows []table.Row, i int, lang string) bool {
	bracketed, bare, letters := 0, 0, false
	for _, r := range rows {
		if i >= len(r.Cells) || shape.IsText(r) || value.IsNothing(r.Cells[i]) || name.IsCavity(r.Cells[i]) {
			continue
		}
		pin, says, in := cut(r.Cells[i], lang)
		switch {
		case pin != "" && name.StateOf(says) != name.Used:
		case in:
			bracketed++
			letters = letters || len(says) == 1
		case pin != "":
			bare++
		case !name.IsCavities(r.Cells[i]):
			return false
		}
	}
	if letters && bracketed < leastBare {
		return false // "2 (B)" may be anything
	}
	return bracketed > 0 && bare == 0 || bracketed == 0 && bare >= leastBare
}

// part makes the new column.
func part(head table.Row, rows []table.Row, at int, lang string) (newHead table.Row, out []table.Row) {
	fill := corecells.Filler(head, rows)
	newHead, out = head, slices.Clone(rows)
	newHead.Cells = append(fill(head.Cells), "Colour")
	for k, r := range rows {
		if at >= len(r.Cells) || shape.IsText(r) {
			continue
		}
		if pin, says, _ := cut(r.Cells[at], lang); pin != "" {
			cells := append(fill(r.Cells), withoutWire(says))
			cells[at], out[k].Cells = pin, cells
		}
	}
	return newHead, out
}

// cut parts a cell in its cavity and what it says of the wire, in brackets or not: a colour, or that there is none. pin is "" where it
// says not both.
func cut(cell, lang string) (pin, says string, brackets bool) {
	if front, back, ok := strings.Cut(strings.TrimRight(cell, ")]"), "("); ok && len(cell) > len(front)+len(back)+1 {
		return cutBrackets(strings.TrimSpace(front), strings.TrimSpace(back), lang)
	} else if front, back, ok := strings.Cut(strings.TrimRight(cell, "])"), "["); ok && len(cell) > len(front)+len(back)+1 {
		return cutBrackets(strings.TrimSpace(front), strings.TrimSpace(back), lang)
	}
	end := strings.IndexAny(cell, " :=-–/,")
	if end < 1 || end == len(cell)-1 {
		return "", "", false
	}
	rest := strings.TrimLeft(cell[end:], " :=-–/,")
	if pin = cell[:end]; !isCavity(pin) || len(rest) < len("red") || !isColour(rest, lang) {
		return "", "", false
	}
	return pin, rest, false
}

// cutBrackets is cut of a cell of a text and another in brackets behind it; the cavity is the one or the other.
func cutBrackets(front, in, lang string) (pin, says string, brackets bool) {
	switch {
	case isCavity(front) && (isColour(in, lang) || name.StateOf(in) != name.Used):
		return front, in, true
	case isCavity(in) && isColour(front, lang):
		return in, front, true
	}
	return "", "", false
}

// isCavity reports whether a text is a cavity, with a word for it or without, and no short form of a colour.
func isCavity(text string) bool {
	if first, rest, ok := strings.Cut(text, " "); ok && name.IsPinWord(table.Fold(first)) {
		text = rest
	}
	return name.IsCavity(text)
}

// isColour reports whether a text is a colour of a wire, "red", "BK", "white/red wire", in a language.
func isColour(text, lang string) bool {
	text = withoutWire(text)
	_, ok := value.ParseColour(text, lang)
	return ok && !value.HasDigit(text)
}

// withoutWire is a text without the word for a wire behind it.
func withoutWire(text string) string {
	if at := strings.LastIndexByte(text, ' '); at > 0 && words.IsWireWord(table.Fold(text[at+1:])) {
		return text[:at]
	}
	return text
}
