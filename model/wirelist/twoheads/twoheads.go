package twoheads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/parthead"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Rows are the rows of a sheet, two rows of headings that belong together joined in the place of the second.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	rows := t.Rows
	if h.HeadLine() > 0 || h.Numbered() {
		return rows // a person has said which row the headings are
	}
	for i := 0; i+2 < len(rows); i++ {
		if !areTwo(h, rows[i], rows[i+1], rows[i+2]) {
			continue
		}
		one := rows[i+1]
		one.Cells = joined(h, rows[i].Cells, rows[i+1].Cells)
		one.Ruled, one.First = rows[i].Ruled, rows[i].First
		rows = slices.Concat(rows[:i], []table.Row{one}, rows[i+2:])
	}
	return rows
}

// areTwo reports whether two rows are such, and the third is one of the table below them.
func areTwo(h shape.Headings, above, below, next table.Row) bool {
	if n, _ := above.Filled(); n < 2 || len(below.Cells) < 3 || above.Level > 0 || above.Prose || below.Prose || below.Line > above.Line+2 {
		return false
	}
	if n, _ := below.Filled(); n < 2 || !areWords(above) || !areWords(below) {
		return false
	}
	if n, _ := next.Filled(); n < 2 || next.Line > below.Line+1 || areHeads(h, next) {
		return false
	}
	return areHeads(h, below) && isParted(above.Cells, below.Cells) && !h.HasSides(above) && !saysBothEnds(h, below) && !h.IsGroup(above) &&
		!slices.ContainsFunc(sidehead.Parts(above, below, h.Words), func(p sidehead.Part) bool { return p.What == sidehead.Place }) &&
		!areTables(above.Cells, below.Cells) && !namesPlug(above.Cells)
}

// saysBothEnds reports whether a row says from and to by itself: what stands above it is of the paper.
func saysBothEnds(h shape.Headings, r table.Row) bool {
	cols, _ := h.Columns([]table.Row{r}, 0)
	b := shape.Block{Cols: cols}
	return b.Has(name.FieldFrom) && b.Has(name.FieldTo)
}

// areTables reports whether every heading of the first row stands over the same headings: they name tables that stand side by side.
func areTables(above, below []string) bool {
	var parts [][]string
	for k, c := range below {
		if cell(above, k) != "" && (k == 0 || cell(above, k) != above[k-1]) {
			parts = append(parts, nil)
		}
		if c != "" && len(parts) > 0 {
			last := &parts[len(parts)-1]
			*last = append(*last, table.Fold(c))
		}
	}
	return len(parts) > 1 && !slices.ContainsFunc(parts, func(p []string) bool { return len(p) < 2 || !slices.Equal(p, parts[0]) })
}

// namesPlug reports whether a row begins with a word for a connector, or for a cable, and one that names it: a title in several cells.
func namesPlug(cells []string) bool {
	return len(cells) > 1 && (plugword.Is(table.Fold(cells[0])) || cableheads.IsWord(cells[0])) && name.IsDesignator(cells[1])
}

// isParted reports whether the second row alone does not say what its columns are, and each of its headings stands below one of the first:
// some heading comes again in it, or one of the first row stands alone in its column.
func isParted(above, below []string) bool {
	needed, under := false, ""
	for k, low := range below {
		up := cell(above, k)
		if up != "" {
			under = up
		}
		switch {
		case low == "":
			needed, under = needed || up != "", ""
		case under == "":
			return false
		default:
			needed = needed || !once(below, low)
		}
	}
	return needed && len(above) <= len(below)+1
}

// areWords reports whether a row could be headings, and none of them is a colour.
func areWords(r table.Row) bool {
	return parthead.AreWords(r) && !slices.ContainsFunc(r.Cells, func(c string) bool {
		_, colour := value.ParseColour(c, "")
		return colour
	})
}

// areHeads reports whether half of the cells of a row or more, and two, are headings that are known.
func areHeads(h shape.Headings, r table.Row) bool {
	n, known := 0, 0
	for _, c := range r.Cells {
		if c == "" {
			continue
		}
		n++
		if m, ok := h.Words[strings.Join(name.Words(table.Fold(c)), " ")]; ok && !m.Weak {
			known++
		}
	}
	return known > 1 && 2*known >= n
}

// joined is the headings of both rows: one that stands alone in its column as it is, the others behind the one above them. A value of the
// wire that comes once says enough alone where the heading above stands over another column, too.
func joined(h shape.Headings, above, below []string) []string {
	all, under := make([]string, max(len(above), len(below))), ""
	for k := range all {
		up, low := cell(above, k), cell(below, k)
		switch {
		case low == "":
			all[k], under = up, ""
			continue
		case up != "" && up != under && saysWhat(h, below, low) && (k+1 >= len(below) || cell(above, k+1) != "" || below[k+1] == ""):
			under = up
			all[k] = low + " (" + up + ")"
		case up != "" && up != under:
			under = up
			all[k] = up + " " + low
		case isValue(h, low) && once(below, low):
			all[k] = low
		default:
			all[k] = under + " " + low
		}
	}
	return all
}

// saysWhat reports whether a heading is the one word of its row for what the wires carry, "Func", "Signal". Below a part that has no other
// column it says so of all parts, and the names of their pins are no more than names.
//
//	Board          Chip    Debug
//	Name    Pin    Name    Func
//	IO4     J5-3   QBUS4   BEAT
func saysWhat(h shape.Headings, below []string, low string) bool {
	is := func(c string) bool {
		f := table.Fold(c)
		return h.Words[strings.Join(name.Words(f), " ")].Field == name.FieldSignal && !strings.Contains(f, "nam") &&
			!strings.Contains(f, "nom")
	}
	n := 0
	for _, c := range below {
		if c != "" && is(c) {
			n++
		}
	}
	return n == 1 && is(low)
}

func cell(cells []string, k int) string {
	if k >= len(cells) {
		return ""
	}
	return cells[k]
}

// isValue reports whether a heading is known for something of the wire itself.
func isValue(h shape.Headings, head string) bool {
	switch h.Words[strings.Join(name.Words(table.Fold(head)), " ")].Field {
	case name.FieldColour, name.FieldGauge, name.FieldLength, name.FieldSpec, name.FieldCurrent, name.FieldSignal:
		return true
	}
	return false
}

// once reports whether a text stands in one cell alone.
func once(cells []string, text string) bool {
	n := 0
	for _, c := range cells {
		if strings.EqualFold(c, text) {
			n++
		}
	}
	return n == 1
}
