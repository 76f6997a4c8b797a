package reading

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/words"
)

// bothSides reads the ways of a bulkhead with what is on both sides of it: each wire goes through. A side is one column
// of ends, or one of devices and one of their cavities.
//
//	Pump bench - bulkhead BH2
//	BH2 way | Signal  | Inside (terminal) | Outside plug | Outside pin
//	A       | Inlet + | TB4:1             | P11          | 1
//	B       | Inlet - | TB4:2             | P11          | 2
func bothSides(l *look) []shape.Column {
	if len(l.Src.Head) != 1 || l.Has(l.Cols, name.FieldRun, name.FieldVia) {
		return nil
	}
	cols, pin := slices.Clone(l.Cols), -1
	var sides [2][]int
	onSide := sidehead.OfWall(l.Src.Head[0].Cells)
	for i := range cols {
		c, p := &cols[i], &l.Prof[i]
		if c.Given || p.Filled == 0 {
			continue
		}
		if i < len(onSide) && onSide[i] >= 0 && (isOfEnd(c.Field) || c.Field == name.FieldSignal && !c.Known()) {
			s := onSide[i]
			sides[s] = append(sides[s], i)
			continue
		}
		if l.EndsInPin(c.Head) || c.Field == name.FieldPin || words.SaysPassage(c.Head) { // "Bulkhead" alone heads its ways
			if pin >= 0 || !p.Unique() || !p.Most(p.Cavities) {
				return nil
			}
			pin = i
		}
	}
	if pin < 0 {
		return nil
	}
	wall := false
	if wall, cols[pin].Landed = l.tellsWall(cols[pin].Head); !wall {
		return nil
	}
	for s, of := range sides {
		end, cavity := name.FieldFrom, name.FieldFromPin
		if s == 1 {
			end, cavity = name.FieldTo, name.FieldToPin
		}
		switch {
		case len(of) == 1 && (l.wholeEnds(of[0]) || column.PolesAndEnds(l.Src.Rows, of[0]) || l.holdsThings(of[0])):
			cols[of[0]].Field, cols[of[0]].Of = end, ""
		case len(of) == 2 && of[1] == of[0]+1 && l.EndsInPin(cols[of[1]].Head) && !l.EndsInPin(cols[of[0]].Head):
			cols[of[0]].Field, cols[of[1]].Field = end, cavity
			cols[of[0]].Of, cols[of[1]].Of = "", ""
			cols[of[1]].Know()
		default:
			return nil
		}
		cols[of[0]].Know()
	}
	for i, c := range cols {
		if !slices.Contains(slices.Concat(sides[0], sides[1]), i) && l.Prof[i].Filled > 0 && (c.Field == name.FieldFrom ||
			c.Field == name.FieldTo || c.Field == name.FieldFromPin || c.Field == name.FieldToPin) && i != pin {
			return nil // a third end
		}
	}
	cols[pin].Field, cols[pin].Of = name.FieldVia, ""
	if device := column.PassageOf(cols[pin].Head); name.IsDesignator(device) || words.SaysPassage(device) && l.Titled() == "" {
		cols[pin].Of = device
	}
	return cols
}

// isOfEnd reports whether a column can be of an end.
func isOfEnd(f name.Field) bool {
	switch f {
	case name.FieldKeep, name.FieldConnector, name.FieldPin, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin:
		return true
	}
	return false
}

// tellsWall reports whether the heading of the ways, or a text above the table, says that wires go through there: as they do at the
// terminals of a strip, where they are landed.
//
//	Terminal strip X1
//	Terminal | Wire | Internal | External
func (l *look) tellsWall(head string) (tells, landed bool) {
	for _, r := range slices.Concat(l.Src.Path, l.Src.Titles) {
		_, text := r.Filled()
		wall, strip := words.TellsWall(text)
		tells, landed = tells || wall, landed || strip
	}
	return tells || landed || words.SaysPassage(head), landed && !tells && !words.SaysPassage(head)
}
