package toldcells

import (
	"slices"
	"strings"

	"contralay/model/wirelist/huecodes"
	"contralay/model/wirelist/squareword"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Good counts the wires that are told beyond doubt: with their cavity and a colour, or with two ends and a colour, or free. A list of goods
// tells none.
func (t Told) Good() (good, coloured, free int) {
	if t.Counts > 1 && 2*t.Counts >= len(t.Wires) {
		return 0, 0, 0
	}
	for _, w := range t.Wires {
		if w.Colour != "" {
			coloured++
		} else if w.Free {
			free++
		}
		if (w.Pin != "" || w.From != "" && w.To != "") && (w.Colour != "" || w.Free) {
			good++
		}
	}
	return good, coloured, free
}

// HasCavities reports whether at least half of the wires that say both ends have a cavity at one of them: people and towns have none.
func (t Told) HasCavities() bool {
	n, of := 0, 0
	for _, w := range t.Wires {
		if w.From != "" && w.To != "" {
			n++
			if EndsInCavity(w.From) || EndsInCavity(w.To) {
				of++
			}
		}
	}
	return 2*of >= n
}

// EndsInCavity reports whether the last word of an end has a number in it, or is a pole or one letter.
func EndsInCavity(end string) bool {
	last := end[strings.LastIndexAny(end, " :")+1:]
	return last != "" && last != end && isCavity(last) || strings.ContainsAny(last, "0123456789")
}

// Named counts those with a name or a far end.
func (t Told) Named() (n int) {
	for _, w := range t.Wires {
		if w.Signal != "" || w.To != "" {
			n++
		}
	}
	return n
}

// Spread puts the cells of the wires in the place of their rows, below a row of headings that begins each run of them. with are rows that
// belong to one of them each, by their place: they are taken in with it, and lines has the lines of both.
func (t Told) Spread(tab *table.Table, with map[int]int) (rows []table.Row, lines map[int][]int) {
	lines = map[int][]int{}
	for i, of := range with {
		lines[tab.Rows[of].Line] = append(lines[tab.Rows[of].Line], tab.Rows[i].Line)
	}
	of := map[int][]Wire{}
	for _, w := range t.Wires {
		of[w.Row] = append(of[w.Row], w)
	}
	cols := t.columns()
	headed := false
	for i, r := range tab.Rows {
		wires := of[i]
		if _, taken := with[i]; taken && wires == nil {
			continue
		}
		if wires == nil {
			if text := Text(r.Cells); text != "" {
				r.Cells = []string{text}
			}
			rows, headed = append(rows, r), false
			continue
		}
		r.Prose, r.Point, r.Gap, r.Drawn = false, false, nil, nil
		if !headed {
			head := r
			head.Cells, head.First, head.Ruled = nil, true, tab.Marked
			for _, c := range cols {
				head.Cells = append(head.Cells, c.head)
			}
			rows, headed = append(rows, head), true
		}
		r.First = false
		for _, w := range wires {
			r.Cells = nil
			for _, c := range cols {
				r.Cells = append(r.Cells, c.of(w))
			}
			rows = append(rows, r)
		}
	}
	return rows, lines
}

// column is one of the table: its heading, and what stands in it.
type column struct {
	head string
	of   func(Wire) string
}

// columns are those in which something stands.
func (t Told) columns() (out []column) {
	hue, size := "Colour", "Size"
	if t.Lang != "" {
		hue = huecodes.Heading(t.Lang)
	}
	if t.Unit != "" {
		size = t.Unit
	}
	for _, w := range t.Wires {
		if size == "Size" && w.Size != "" && strings.Trim(w.Size, "0123456789.,") == "" && strings.ContainsAny(w.Size, ".,") {
			size = "mm2"
		}
	}
	for _, c := range []column{
		{"Wire", func(w Wire) string { return w.ID }},
		{"Connector", func(w Wire) string { return w.Of }},
		{"Pin", func(w Wire) string { return w.Pin }},
		{"From", func(w Wire) string { return w.From }},
		{hue, func(w Wire) string { return w.Colour }},
		{size, func(w Wire) string { return w.Size }},
		{"Signal", func(w Wire) string { return w.Signal }},
		{"To", func(w Wire) string { return w.To }},
		{"Note", func(w Wire) string { return w.Note }},
	} {
		if slices.ContainsFunc(t.Wires, func(w Wire) bool { return c.of(w) != "" }) {
			out = append(out, c)
		}
	}
	return out
}

// Unit is the unit that a text says once for sizes without one, "mm2" or "AWG"; "" where none does.
func Unit(rows []table.Row) string {
	for _, r := range rows {
		text := squareword.Plain(Text(r.Cells))
		for w := range strings.FieldsSeq(text) {
			switch table.Fold(strings.Trim(w, ".,;:()[]")) {
			case "mm2", "mm²", "qmm", "mmq", "sqmm":
				return "mm2"
			case "awg", "ga", "gauge":
				return "AWG"
			}
		}
	}
	return ""
}

// Text is the text that a line had before commas parted it; a number alone before another is the front of one with decimals.
func Text(cells []string) string {
	var b strings.Builder
	for i, c := range cells {
		if c = strings.TrimSpace(c); i > 0 && c == "" {
			continue
		}
		if i > 0 {
			before := strings.TrimSpace(cells[i-1])
			b.WriteByte(',')
			if !isDecimal(before, c) {
				b.WriteByte(' ')
			}
		}
		b.WriteString(c)
	}
	return b.String()
}

// isDecimal reports whether two texts are the two sides of the comma of a section that wire is made in, "red 2" and "5 to K1".
func isDecimal(front, behind string) bool {
	front = front[strings.LastIndexAny(front, " \t/|–—~")+1:]
	digits := behind[:len(behind)-len(strings.TrimLeft(behind, "0123456789"))]
	return front != "" && len(front) < 3 && strings.Trim(front, "0123456789") == "" && digits != "" && value.IsSection(front+"."+digits)
}
