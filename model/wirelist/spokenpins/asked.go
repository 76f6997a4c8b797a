package spokenpins

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

// Asked makes rows of answers below the questions for a cavity each. lines are those of both, by the line of the answer.
//
//	> pin A?
//	start signal, 16ga yellow, from the deck box
//	> pin B?
//	not used
func Asked(h shape.Headings, t *table.Table) (rows []table.Row, lines map[int][]int) {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < least || len(t.Rows) > mostLines {
		return t.Rows, nil
	}
	var all []toldcells.Line
	asked := map[int]int{}
	for i := 0; i < len(t.Rows); i++ {
		pin, rest := question(text(t.Rows[i]))
		if pin == "" {
			continue
		}
		at := i
		if rest == "" && i+1 < len(t.Rows) && t.Rows[i+1].Line <= t.Rows[i].Line+2 {
			rest = strings.TrimSpace(strings.TrimPrefix(text(t.Rows[i+1]), "A: "))
			at = i + 1
		}
		if next, _ := question(rest); next != "" || rest == "" {
			continue // nobody answers
		}
		if at > i {
			asked[i] = at
		}
		all = append(all, toldcells.Line{Row: at, Cells: append([]string{pin}, strings.Split(strings.TrimRight(rest, "."), ", ")...)})
		i = at
	}
	if len(all) < least {
		return t.Rows, nil
	}
	told := toldcells.Tell(all, toldcells.Unit(t.Rows), true)
	good, coloured, _ := told.Good()
	if 4*good < 3*len(told.Wires) || coloured < 2 || 2*coloured < good {
		return t.Rows, nil
	}
	told.Below(t.Rows)
	return told.Spread(t, asked)
}

// question is the cavity that a line asks for, and what stands behind the question in the same line.
func question(text string) (pin, rest string) {
	text = strings.TrimSpace(strings.TrimPrefix(strings.TrimLeft(text, "> "), "Q: "))
	asks, rest, ok := strings.Cut(text, "?")
	w := strings.Fields(asks)
	if !ok || len(w) == 0 || len(w) > 4 {
		return "", ""
	}
	if pin = w[len(w)-1]; !name.IsCavity(pin) || len(w) > 1 && !name.IsPinWord(table.Fold(w[len(w)-2])) {
		return "", ""
	}
	return pin, strings.TrimSpace(rest)
}

// text is the text of a line, of which the sign of who speaks may have become a cell, "Q" and "pin 1?".
func text(r table.Row) string {
	if len(r.Cells) > 1 && (r.Cells[0] == "Q" || r.Cells[0] == "A" || r.Cells[0] == "F") {
		return toldcells.Text(r.Cells[1:])
	}
	return toldcells.Text(r.Cells)
}
