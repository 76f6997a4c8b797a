package bothends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/words"
)

// SidesOfWall takes the cavities of a bulkhead for those that each wire passes where a device and its cavity stand in two columns for
// either side, whatever the sides are called: a wire has two ends, so the third connector is on its way.
//
//	BH3 pin | Circuit | Wheelhouse | Pin | Hold | Pin        Plate | Way | Fore | Pin | Aft | Pin
//	1       | Bilge   | PANEL      | 4   | PUMP | 1          BH3   | 1   | HELM | 4   | ENG | 9
//
// title is the text that names the table. A heading of a device, "Sensor", is no side unless a word says that wires go through.
func SidesOfWall(cols []shape.Column, prof []column.Profile, rows []table.Row, title string) {
	l, wall, whole := look{cols, prof, rows}, -1, false
	var sides []int // the columns of devices
	for i := range prof {
		switch c := &cols[i]; c.Field {
		case name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin:
			return
		}
		switch {
		case l.isWholeWall(i):
			if wall >= 0 {
				return
			}
			wall, whole = i, true
		case prof[i].Filled == 0 || !l.areCavities(i):
		case i > 0 && l.areThings(i-1) && !saysThrough(cols[i].Head):
			sides = append(sides, i-1)
		case wall >= 0:
			return
		default:
			wall = i
		}
	}
	if len(sides) == 0 && wall >= 0 {
		l.wholeSides(wall, title)
		return
	}
	plates := wall < 0 && len(sides) == 3 && l.arePlates(sides[0]) && column.PairsOnce(rows, sides[0], sides[0]+1)
	if plates {
		wall, sides = sides[0]+1, sides[1:]
	}
	if wall < 0 || len(sides) != 2 || !whole && !prof[wall].All(prof[wall].Cavities) || !plates && !prof[wall].Unique() ||
		!l.fillBoth(sides) {
		return
	}
	of, heads := shape.DeviceOf(cols[wall].Head), []string{cols[sides[0]].Head, cols[sides[1]].Head}
	switch named := of != cols[wall].Head && of != "" && name.IsDesignator(of); {
	case plates, saysThrough(cols[wall].Head), saysThrough(title):
	case slices.ContainsFunc(heads, headsThing):
		return
	case named || endsInDesignator(title):
	case !areSides(cols, sides):
		return
	}
	for k, f := range [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}} {
		for i, c := range []*shape.Column{&cols[sides[k]], &cols[sides[k]+1]} {
			c.Field, c.Of, c.Running = f[i], "", false
			c.Know()
		}
	}
	l.take(wall)
	if cols[wall].InCell = whole; plates {
		cols[wall-1].Field, cols[wall].Of = name.FieldConnector, ""
		cols[wall-1].Know()
	}
}

// endsInDesignator reports whether the last word of a title is one, "Bay plate P9".
func endsInDesignator(title string) bool {
	w := strings.Fields(name.WithoutBrackets(title))
	return len(w) > 0 && name.IsDesignator(w[len(w)-1])
}

// areSides reports whether the headings of two columns are the two sides of a wall or a box: "Cabin" and "Engine bay", "Field side" and
// "Panel side".
func areSides(cols []shape.Column, of []int) bool {
	heads := make([]string, len(cols))
	for i, c := range cols {
		heads[i] = c.Head
	}
	side := sidehead.OfWall(heads)
	return side[of[0]] >= 0 && side[of[1]] == 1-side[of[0]]
}

// wholeSides takes the two columns that nobody knows for the sides of a bulkhead where each of their cells is a device and a cavity, and
// the heading of its own cavities or the title says that wires go through.
//
//	BH3 pin | Circuit | Tractor unit | Trailer
//	1       | Tail    | ECU 4        | LAMP 1
func (l look) wholeSides(wall int, title string) {
	var of []int
	for i := range l.prof {
		if c, p := &l.cols[i], &l.prof[i]; p.Filled > 1 && !c.Given && (c.Field == name.FieldKeep || c.Field == name.FieldConnector) &&
			p.Colours+p.Sized == 0 && l.areWhole(i) {
			of = append(of, i)
		}
	}
	p := &l.prof[wall]
	if len(of) != 2 || !p.All(p.Cavities) || !p.Unique() || !saysThrough(l.cols[wall].Head) && !saysThrough(title) {
		return
	}
	for k, f := range []name.Field{name.FieldFrom, name.FieldTo} {
		l.cols[of[k]].Field, l.cols[of[k]].Of = f, ""
		l.cols[of[k]].Know()
	}
	l.take(wall)
}

// areWhole reports whether each cell of a column is a device and, behind it, a cavity: "ECU 4", "J3-7".
func (l look) areWhole(i int) bool {
	return !slices.ContainsFunc(l.rows[:min(len(l.rows), column.MostLooked)], func(r table.Row) bool {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			return false
		}
		device, pin, ok := name.SplitEnd(r.Cells[i])
		if at := strings.LastIndexByte(r.Cells[i], ' '); !ok && at > 0 {
			device, pin = r.Cells[i][:at], r.Cells[i][at+1:]
		}
		return device == "" || !name.IsCavity(pin) || strings.Trim(device, "0123456789. ") == ""
	})
}

// take takes a column for the cavities that wires pass, of the bulkhead that its heading names by a designator.
func (l look) take(wall int) {
	c := &l.cols[wall]
	of := shape.DeviceOf(c.Head)
	if c.Field, c.Running, c.Of = name.FieldVia, false, ""; name.IsDesignator(of) && of != c.Head {
		c.Of = of
	}
	c.Know()
}

// arePlates reports whether a column is of bulkheads, by its heading or by every cell.
func (l look) arePlates(i int) bool {
	return saysThrough(l.cols[i].Head) || !slices.ContainsFunc(l.rows[:min(len(l.rows), column.MostLooked)], func(r table.Row) bool {
		return i < len(r.Cells) && r.Cells[i] != "" && !shape.IsText(r) && !saysThrough(r.Cells[i])
	})
}

// isWholeWall reports whether a column is headed by a bulkhead and each of its cells names one and its cavity, "BH1-4".
func (l look) isWholeWall(i int) bool {
	c, p := &l.cols[i], &l.prof[i]
	switch c.Field {
	case name.FieldKeep, name.FieldConnector, name.FieldWire, name.FieldNumber, name.FieldPin:
		return !c.Given && p.Filled > 1 && p.Distinct == p.Filled && saysThrough(c.Head) && l.areWhole(i)
	}
	return false
}

// areCavities reports whether a column is headed by a word for cavities, alone or behind others, and holds some.
func (l look) areCavities(i int) bool {
	c, p := &l.cols[i], &l.prof[i]
	w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
	if c.Given || len(w) == 0 || !p.Most(max(p.Cavities, column.ShortNames(l.rows, i))) {
		return false
	}
	return c.Field == name.FieldPin || c.Field == name.FieldKeep && pinword.Is(w[len(w)-1])
}

// areThings reports whether a column that nobody knows, or one of connectors, holds names.
func (l look) areThings(i int) bool {
	c, p := &l.cols[i], &l.prof[i]
	w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
	return !c.Given && len(w) > 0 && (c.Field == name.FieldKeep || c.Field == name.FieldConnector ||
		c.Field == name.FieldSignal && !c.Known()) &&
		p.Filled > 0 && 4*p.Prose <= p.Filled && p.Colours+p.Sized+p.Lengths+p.Currents == 0 && !p.Most(p.Numbers) &&
		!name.IsMeasure(w) && !pinword.Is(w[len(w)-1])
}

// fillBoth reports whether most rows that say one side say the other.
func (l look) fillBoth(sides []int) bool {
	both, one := 0, 0
	for _, r := range l.rows[:min(len(l.rows), column.MostLooked)] {
		has := func(i int) bool { return i < len(r.Cells) && r.Cells[i] != "" }
		switch a, b := has(sides[0]), has(sides[1]); {
		case shape.IsText(r):
		case a && b && has(sides[0]+1) && has(sides[1]+1):
			both++
		case a || b:
			one++
		}
	}
	return both > 1 && both > one
}

// saysThrough reports whether a text has a word for what wires go through, or the letters that number bulkheads: "BH3".
func saysThrough(text string) bool {
	return slices.ContainsFunc(name.Words(name.WithoutBrackets(table.Fold(text))), func(w string) bool {
		return words.IsPassage(w) || titleline.IsWall(w) || isBH(w)
	})
}

// isBH reports whether a folded word is BH and a number or nothing.
func isBH(w string) bool {
	const most = 4 // letters and digits (no source)
	if len(w) < 2 || len(w) > most || w[:2] != "bh" {
		return false
	}
	for _, c := range w[2:] {
		if c < '0' || c > '9' {
			return false
		}
	}
	return true
}

// headsThing reports whether a heading is of devices or connectors, and of no place.
func headsThing(head string) bool {
	if words.SideOfWall(head) >= 0 {
		return false
	}
	return slices.ContainsFunc(name.Words(table.Fold(head)), func(w string) bool {
		switch w {
		case "other", "also", "and", "first", "second", "third", "next", "a", "b", "1", "2", "mate", "mating":
			return true
		}
		return name.IsDeviceWord(w) || name.IsUnit(w) || name.IsConnectorWord(w)
	})
}
