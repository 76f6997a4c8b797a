package shape

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// Settle gives every column its use, once the rows show what stands in them and the sides are
// known. What no wire takes is kept as text.
func (h Headings) Settle(b *Block) {
	h.sizesAsWires(b)
	h.cablesAsWires(b)
	b.settleRuns()
	b.settleFar()
	ends := b.Has(name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldRun)
	for i := range b.Cols {
		c := &b.Cols[i]
		switch {
		case c.Running && !b.runs(i):
			c.Field, c.Spared = name.FieldKeep, true
		case ends && !b.IsPinTable() && !b.Has(name.FieldVia) && (c.Field == name.FieldConnector || c.Field == name.FieldPin):
			c.Field, c.Spared = name.FieldKeep, true
		case c.Field == name.FieldUnit && (i == 0 || b.Cols[i-1].Measured != i):
			c.Field, c.Spared = name.FieldKeep, true
		}
	}
	for _, f := range []name.Field{name.FieldFrom, name.FieldTo, name.FieldConnector} {
		b.partConnectors(f)
	}
}

// cablesAsWires takes a column headed "cable" for the numbers of the wires, or for their names where another
// has those: no two rows have one text, and none tells of a kind of cable.
func (h Headings) cablesAsWires(b *Block) {
	as := name.FieldWire
	if b.Has(as) {
		as = name.FieldSignal
	}
	if b.Has(as) {
		return
	}
	for i := range b.Cols {
		c := &b.Cols[i]
		if f := strings.Join(name.Words(table.Fold(c.Head)), " "); c.Field != name.FieldCable || !words.NumbersCables(f) ||
			h.Given(c.Head, i) {
			continue
		}
		seen := map[string]bool{}
		for _, r := range b.Rows {
			if i >= len(r.Cells) || IsText(r) || value.IsNothing(r.Cells[i]) && saysOne(r) {
				continue
			}
			cell := table.Fold(r.Cells[i])
			if g, ok := value.ParseGauge(cell, value.BareAWG, b.Mark); value.IsNothing(cell) || seen[cell] ||
				cable.Words(cell).IsCable() || ok && g.IsCable() || cable.YesOrNo(cell) != "" || len(cable.Partners(cell)) > 0 {
				return
			}
			seen[cell] = true
		}
		if len(seen) > 1 {
			c.Field = as
			return
		}
	}
}

// saysOne reports whether one cell of a row says something and the others hold dashes: a place that is free.
func saysOne(r table.Row) bool {
	n := 0
	for _, c := range r.Cells {
		if !value.IsNothing(c) {
			n++
		}
	}
	return n == 1
}

// IsPinTable reports whether the rows are cavities: both ends of a wire are not named.
func (b *Block) IsPinTable() bool {
	return b.Has(name.FieldPin) && !b.Has(name.FieldFrom, name.FieldFromPin, name.FieldRun)
}

// runs reports whether a column counts its rows, whole numbers that rise: nothing is lost
// without it.
func (b *Block) runs(i int) bool {
	last := -1
	for _, r := range b.Rows {
		if i >= len(r.Cells) || r.Cells[i] == "" || IsText(r) {
			continue
		}
		n, err := strconv.Atoi(strings.TrimRight(r.Cells[i], ".)"))
		if err != nil || n <= last {
			return false
		}
		last = n
	}
	return true
}

// partConnectors looks at two columns that name one connector, a device and its plug:
// where the first has several of the second, only both together name one.
func (b *Block) partConnectors(f name.Field) {
	var of []int
	for i, c := range b.Cols {
		if c.Field == f {
			of = append(of, i)
		}
	}
	if len(of) < 2 {
		return
	}
	second := map[string]string{}
	for _, r := range b.Rows {
		if of[1] >= len(r.Cells) || r.Cells[of[0]] == "" || r.Cells[of[1]] == "" {
			continue
		}
		first, plug := table.Fold(r.Cells[of[0]]), table.Fold(r.Cells[of[1]])
		if known, ok := second[first]; ok && known != plug {
			b.Cols[of[0]].several = true
			return
		}
		second[first] = plug
	}
}

// isUnitWord reports whether a cell is a unit that measures lengths, sizes of wire or currents.
func isUnitWord(cell string) bool {
	switch w := strings.TrimSuffix(strings.Map(value.PlainSign, table.Fold(cell)), "."); w {
	case "mm2", "mm^2", "qmm", "awg", "ga", "a", "ma", "amp", "amps", "-":
		return true
	default:
		return value.LengthWord(w) != ""
	}
}

// TakeUnits takes in a row below the headings that holds nothing but their units, "mm²", "mm"; false where it holds
// anything else.
func (h Headings) TakeUnits(cols []Column, r table.Row) bool {
	n := 0
	for i, cell := range r.Cells {
		switch w := strings.Trim(table.Fold(cell), " ()[]."); {
		case w == "" || w == "-":
		case i >= len(cols) || !isUnitWord(w) || cols[i].Field == name.FieldPin:
			return false
		default:
			n++
		}
	}
	if n == 0 {
		return false
	}
	for i, cell := range r.Cells {
		if cell != "" && i < len(cols) {
			unitOf(append([]string{""}, name.Words(table.Fold(strings.Map(value.PlainSign, cell)))...), &cols[i])
		}
	}
	return true
}

// Kind is what the columns of a block make it.
func (b *Block) Kind() string {
	switch {
	case b.Has(name.FieldDevicePin):
		return "cavities of several devices in a row"
	case b.Has(name.FieldVia):
		return "cavities of a bulkhead between two ends"
	case b.IsPinTable() && b.Has(name.FieldConnector):
		return "cavities of several connectors"
	case b.IsPinTable():
		return "cavities of one connector"
	case b.Has(name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun):
		return "both ends in a row"
	}
	return "wires by their ids"
}
