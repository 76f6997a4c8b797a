package printed

import (
	"slices"
	"strings"
)

// The words that scripts print where a cell of the sheet holds nothing, as they write them: capitals count.
var (
	// of which none is the name of anything in a harness
	surely = []string{"nan", "NaN", "<NA>", "NaT", "#N/A", "(null)", "<null>", "<nil>"}
	// which could be one: a net "NULL", a shield "None"
	likely = []string{"NULL", "null", "None", "NA", "nil"}
)

// nothings empties the cells that hold such a word. One that could be a name has to stand in two columns, below no heading, or in a table
// that a script printed for sure: somebody writes "None" below "Shield" by hand.
//
//	From | Pin | Signal | Fuse
//	J1   | 1   | LAMP   | 5A
//	NULL | 2   | HORN   | NULL
func (p *plain) nothings() {
	words := surely
	for _, w := range likely {
		columns := map[int]bool{}
		for _, r := range p.t.Rows {
			for k, c := range r.Cells {
				if c == w && len(r.Cells) > 1 {
					columns[k] = true
				}
				p.signs = p.signs || len(r.Cells) > 1 && slices.Contains(surely, c)
			}
		}
		least := 2 // columns (no source)
		if w == "None" || w == "NA" {
			least = 4 // people write these themselves
		}
		if len(columns) >= least || len(columns) > 0 && p.signs {
			words = append(slices.Clone(words), w)
		}
	}
	found := map[string]bool{}
	var rows []int
	for i := range p.t.Rows {
		if len(p.t.Rows[i].Cells) < 2 {
			continue
		}
		some := false
		for k, c := range p.t.Rows[i].Cells {
			if slices.Contains(words, c) {
				p.set(i, k, "")
				found[c], some = true, true
			}
		}
		if some {
			rows = append(rows, p.t.Rows[i].Line)
		}
	}
	if len(rows) == 0 {
		return
	}
	p.signs = true
	var what []string
	for _, w := range words {
		if found[w] {
			what = append(what, w)
		}
	}
	p.say("words of a print for a cell that holds nothing", strings.Join(what, ", "), "taken for empty cells", rows)
	p.withoutEmpty()
}
