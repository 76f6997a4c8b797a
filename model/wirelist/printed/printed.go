package printed

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// Told is one thing that was done to the rows of a table.
type Told struct {
	Rule, What, Did string
	Rows            []int
}

// Plain is a table as it was before a script printed it, and what was done to it. known are the headings that are known; kept says of a
// heading that a person has spoken of it as it is.
func Plain(known map[string]name.Meaning, kept func(heading string) bool, t table.Table) (table.Table, []Told) {
	p := plain{known: known, kept: kept, t: t, changed: map[int]bool{}}
	p.types()
	p.index()
	p.headings()
	p.nothings()
	p.wholes()
	return p.t, p.told
}

// plain is a table while it is made plain.
type plain struct {
	known   map[string]name.Meaning
	kept    func(heading string) bool
	t       table.Table
	changed map[int]bool // the rows whose cells are a copy
	own     bool         // the rows are a copy
	signs   bool         // something of it is as a script alone prints it
	told    []Told
}

// set changes a cell, and leaves the table that was given as it is.
func (p *plain) set(i, col int, cell string) {
	if !p.own {
		p.t.Rows, p.own = slices.Clone(p.t.Rows), true
	}
	if !p.changed[i] {
		p.t.Rows[i].Cells, p.changed[i] = slices.Clone(p.t.Rows[i].Cells), true
	}
	p.t.Rows[i].Cells[col] = cell
}

func (p *plain) say(rule, what, did string, rows []int) {
	p.told = append(p.told, Told{Rule: rule, What: what, Did: did, Rows: rows})
}

// withoutEmpty takes out the rows of which nothing is left.
func (p *plain) withoutEmpty() {
	if p.own {
		p.t.Rows = slices.DeleteFunc(p.t.Rows, func(r table.Row) bool { n, _ := r.Filled(); return n == 0 })
		p.changed = map[int]bool{} // rows have moved
	}
}
