package bothends

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// FarPlaces takes the column right behind the devices that wires go to for the cavities there, where the near end has its own and nobody
// knows the heading: each row that has a device has one, no device has one twice, and the devices come again. A heading that is no word
// for a place is said to be taken by its cells.
//
//	Strip | Terminal | Equipment | Point | Use
//	X4    | 1        | Pump      | U1    | run
//	      | 2        | Pump      | N     | neutral
//	      | 3        | Float     | 1     | level
func FarPlaces(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	pin, to := -1, -1
	for i := range prof {
		if prof[i].Filled == 0 {
			continue
		}
		switch cols[i].Field {
		case name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin:
			return
		case name.FieldPin, name.FieldFromPin:
			pin = i
		case name.FieldTo:
			if to >= 0 {
				return
			}
			to = i
		}
	}
	at := to + 1
	if pin < 0 || to < pin || at >= len(prof) || cols[to].Given || prof[to].Distinct == prof[to].Filled || prof[to].Ends > 0 {
		return
	}
	c, p, l := &cols[at], &prof[at], look{cols, prof, rows}
	w := wordsOf(c.Head)
	if c.Given || c.Known() && !c.Spared || c.Field != name.FieldKeep && c.Field != name.FieldNumber || len(w) == 0 || len(w) > 2 ||
		p.Filled < 3 || !p.All(max(p.Cavities, column.ShortNames(rows, at))) || p.Distinct == 1 ||
		p.Colours+p.Sized+p.Lengths+p.Currents > 0 ||
		name.IsMeasure(w) || name.IsRemark(w) || name.IsOtherHead(c.Head) || isClass(c.Head) || !l.goTogether(to, at) ||
		!column.PairsOnce(rows, to, at) {
		return
	}
	if c.Field = name.FieldToPin; slices.Contains(points, w[len(w)-1]) || slices.Contains(places, w[len(w)-1]) {
		c.Know()
	} else {
		c.Guessed = true
	}
}

// points are words for a place on a device that headings have, and that mean much else. Common words, from memory, no source.
var points = []string{"point", "points", "punkt", "punto", "punti", "puntos", "ponto", "pontos", "punt", "bod", "piste", "landing", "end"}

// goTogether reports whether two columns hold something in the same rows.
func (l look) goTogether(a, b int) bool {
	return !slices.ContainsFunc(l.rows[:min(len(l.rows), column.MostLooked)], func(r table.Row) bool {
		has := func(i int) bool { return i < len(r.Cells) && r.Cells[i] != "" }
		return !shape.IsText(r) && has(a) != has(b)
	})
}
