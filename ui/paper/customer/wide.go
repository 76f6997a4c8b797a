package customer

import (
	"slices"

	"contralay/model/unit"
	"contralay/ui/paper/page"
)

// What a cell takes beside its text, and the room between grids side by side, mm.
const (
	edges  unit.Millimetre = 2.1
	gutter unit.Millimetre = 3
)

// needs is how wide a column of a grid is with each of its cells on one line, mm.
func needs(g page.Grid, k int) unit.Millimetre {
	most := page.Strong.Wide(g.Cols[k].Head)
	for _, l := range g.Lines {
		if k < len(l.Cells) {
			letter := page.Small
			letter.Bold = g.Cols[k].Bold || l.Cells[k].Bold
			most = max(most, letter.Wide(l.Cells[k].Text), l.Cells[k].Wide)
		}
	}
	return max(most+edges, g.Cols[k].Least)
}

// each is how wide each of some grids side by side is, mm.
func each(columns int) unit.Millimetre {
	return (page.Wide-gutter*unit.Millimetre(columns-1))/unit.Millimetre(columns) - 0.3
}

// side is how many of a grid stand side by side with each row on one line: 4 at most, 1 at least.
func side(g page.Grid) int {
	wide := unit.Millimetre(0)
	for k := range g.Cols {
		wide += needs(g, k)
	}
	for n := 4; n > 1; n-- {
		if each(n) >= wide {
			return n
		}
	}
	return 1
}

// breaks gives each column of a grid the width that it needs on one line, but some, whose words are broken
// instead. Where that would leave these less than least, nothing is given.
func breaks(g *page.Grid, least unit.Millimetre, broken ...int) {
	rest := each(max(1, g.Columns))
	for k := range g.Cols {
		if !slices.Contains(broken, k) {
			rest -= needs(*g, k)
		}
	}
	if rest < least {
		return
	}
	for k := range g.Cols {
		if !slices.Contains(broken, k) {
			g.Cols[k].Wide = needs(*g, k)
		}
	}
}
