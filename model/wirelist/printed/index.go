package printed

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// index empties the column in which a script numbers the rows: it is the first, nothing or a script's word heads it, and it counts from 0
// row by row, to the end of the table. Nobody counts the cavities of a plug below no heading and beside a column of cavities.
//
//	  | Plug | Pin
//	0 | Dash | 1
//	1 | Dash | 2
func (p *plain) index() {
	for i := 0; i < len(p.t.Rows); i++ {
		col, n := p.counted(i)
		if n < leastIndex {
			continue
		}
		var rows []int
		for k := i + 1; k <= i+n; k++ {
			p.set(k, col, "")
			rows = append(rows, p.t.Rows[k].Line)
		}
		if p.t.Rows[i].Cells[col] != "" {
			p.set(i, col, "")
		}
		p.signs = true
		p.say("numbers of rows before the first column", "0 to "+strconv.Itoa(n-1), "left out", rows)
		i += n
	}
	p.unnamed()
}

// leastIndex is how many rows count from 0 where that is no chance (no source).
const leastIndex = 3

// counted is the first column that has a cell, and how many rows below row i count from 0 in it, which nothing heads; 0 where they do
// not, or where what they count could be the cavities.
func (p *plain) counted(i int) (col, n int) {
	head := p.t.Rows[i]
	if i+1 == len(p.t.Rows) || len(head.Cells) < 3 || p.t.Marked && !head.Ruled {
		return 0, 0
	}
	first := p.t.Rows[i+1]
	col = slices.IndexFunc(first.Cells, func(c string) bool { return c != "" })
	if col < 0 || first.Cells[col] != "0" || first.Line > head.Line+2 || col >= len(head.Cells)-1 ||
		head.Cells[col] != "" && !isIndexHead(head.Cells[col]) || !p.headsPins(head.Cells[col+1:]) || p.kept(head.Cells[col]) ||
		p.kept("#"+strconv.Itoa(col+1)) {
		return 0, 0
	}
	for _, r := range p.t.Rows[i+1:] {
		if r.Line != first.Line+n || p.t.Marked && (r.Prose || r.First) {
			break
		}
		if col >= len(r.Cells) || r.Cells[col] != strconv.Itoa(n) {
			return 0, 0
		}
		n++
	}
	return col, n
}

// headsPins reports whether one of some headings is of cavities or of ends.
func (p *plain) headsPins(heads []string) bool {
	for _, c := range heads {
		switch f := p.known[table.Fold(base(c))].Field; f {
		case name.FieldPin, name.FieldFromPin, name.FieldToPin, name.FieldFrom, name.FieldTo, name.FieldConnector, name.FieldRun:
			return true
		}
	}
	return false
}

// isIndexHead reports whether a heading is one that scripts give the numbers of the rows.
func isIndexHead(head string) bool {
	switch strings.ToLower(head) {
	case "unnamed: 0", "index", "idx", "row", "row index":
		return true
	}
	return false
}

// unnamed empties the headings that a script makes for columns without one: "Unnamed: 5".
func (p *plain) unnamed() {
	for i, r := range p.t.Rows {
		for k, c := range r.Cells {
			after, ok := strings.CutPrefix(c, "Unnamed: ")
			if ok && len(r.Cells) > 2 && strings.Trim(strings.TrimSuffix(after, "_level_0"), "0123456789") == "" {
				p.set(i, k, "")
				p.signs = true
				p.say("heading that a script made", c, "taken for none", []int{r.Line})
			}
		}
	}
}
