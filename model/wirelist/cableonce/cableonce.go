// Package cableonce finds the cables that a list names in the line of their first core alone, and writes them into the lines of the
// others.
package cableonce

import (
	"slices"
	"strconv"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// Named writes the cable into the rows below the one that names it, where its cores go on: each cable begins with core 1 and its rows
// count on, or, where the column beside it is headed as of cores, each begins with one core and has none twice. Rows below a text that
// says so are in no cable. ok is false where nothing is written.
//
//	Multi | Core | Signal
//	M1    | 1    | live
//	      | 2    | neutral
//	M2    | 1    | live
//	single wires, no cable:
//	      | red  | lamp
func Named(rows []table.Row, cable int, ofCores bool) (out []table.Row, ok bool) {
	out = slices.Clone(rows)
	c := cores{counts: true, kinds: true}
	for k, r := range rows {
		if shape.IsText(r) || cable+1 >= len(r.Cells) {
			if _, text := r.Filled(); words.SaysNoCable(table.Fold(text)) {
				c.of, c.loose = "", true
			}
			continue
		}
		if c.loose && value.IsNothing(r.Cells[cable]) {
			continue
		}
		if of := c.next(r.Cells[cable], table.Fold(r.Cells[cable+1])); of != "" {
			out[k].Cells = slices.Clone(r.Cells)
			out[k].Cells[cable] = of
		}
		if !c.counts && !c.kinds {
			return rows, false
		}
	}
	if c.filled == 0 || !c.counts && (c.named < 2 || !ofCores) {
		return rows, false
	}
	return out, true
}

// cores is the way down the rows of a table.
type cores struct {
	of            string          // the cable in hand
	seen          map[string]bool // its cores
	loose         bool            // what follows is in no cable
	first         string          // the core that the first cable begins with
	last          int             // the number of the core above
	named, filled int             // rows that name their cable, and those that do not
	counts, kinds bool            // the cores are numbered on; they are of other kinds, none twice in a cable
}

// next takes in the cable and the core of a row, and gives the cable of a row that names none.
func (c *cores) next(cable, core string) (of string) {
	n, err := strconv.Atoi(core)
	c.counts = c.counts && err == nil
	switch {
	case value.IsDitto(cable):
	case cable != "":
		c.of, c.seen, c.loose = cable, map[string]bool{}, false
		if c.named++; c.named == 1 {
			c.first = core
		}
		c.counts, c.kinds = c.counts && n == 1, c.kinds && core == c.first
	default:
		c.counts, c.kinds = c.counts && c.of != "" && n == c.last+1, c.kinds && c.of != "" && core != "" && !c.seen[core]
		of = c.of
		c.filled++
	}
	if c.seen == nil {
		c.seen = map[string]bool{}
	}
	c.last, c.seen[core] = n, true
	return of
}
