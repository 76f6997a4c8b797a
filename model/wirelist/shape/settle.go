package shape

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// settle gives every column its use, once the rows show what stands in them. What no wire
// takes is kept as text.
func (h Headings) settle(b *Block) {
	h.sizesAsWires(b)
	h.cablesAsWires(b)
	b.settleRuns()
	ends := b.Has(name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldRun)
	for i := range b.Cols {
		c := &b.Cols[i]
		switch {
		case c.Running && !b.runs(i):
			c.Field, c.Spared = name.FieldKeep, true
		case ends && !b.IsPinTable() && (c.Field == name.FieldConnector || c.Field == name.FieldPin):
			c.Field, c.Spared = name.FieldKeep, true
		case c.Field == name.FieldUnit && (i == 0 || b.Cols[i-1].Measured != i):
			c.Field, c.Spared = name.FieldKeep, true
		}
	}
	for _, f := range []name.Field{name.FieldFrom, name.FieldTo, name.FieldConnector} {
		b.partConnectors(f)
	}
}

// cablesAsWires takes a column headed "cable" for the numbers of the wires, where none other
// has them: no two rows have one text, and none tells of a kind of cable.
func (h Headings) cablesAsWires(b *Block) {
	if b.Has(name.FieldWire) {
		return
	}
	for i := range b.Cols {
		c := &b.Cols[i]
		if f := strings.Join(name.Words(value.Fold(c.Head)), " "); c.Field != name.FieldCable || f != "cable" && f != "kabel" ||
			h.given(c.Head, i) {
			continue
		}
		seen := map[string]bool{}
		for _, r := range b.Rows {
			if i >= len(r.Cells) || IsText(r) {
				continue
			}
			cell := value.Fold(r.Cells[i])
			if g, ok := value.ParseGauge(cell, value.BareAWG, b.Mark); value.IsNothing(cell) || seen[cell] ||
				value.IsCable(name.Loose(cell)) || ok && value.IsCable(g) || name.YesOrNo(cell) != "" || len(name.Partners(cell)) > 0 {
				return
			}
			seen[cell] = true
		}
		if len(seen) > 1 {
			c.Field = name.FieldWire
			return
		}
	}
}

// IsPinTable: its rows are cavities; both ends of a wire are not named.
func (b *Block) IsPinTable() bool {
	return b.Has(name.FieldPin) && !b.Has(name.FieldFrom, name.FieldFromPin, name.FieldRun)
}

// runs: a column counts its rows, whole numbers that rise: nothing is lost without it.
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
		first, plug := value.Fold(r.Cells[of[0]]), value.Fold(r.Cells[of[1]])
		if known, ok := second[first]; ok && known != plug {
			b.Cols[of[0]].several = true
			return
		}
		second[first] = plug
	}
}

// Once lists the fields that have one value in a row.
func Once() []name.Field {
	return []name.Field{name.FieldWire, name.FieldPin, name.FieldFromPin, name.FieldToPin, name.FieldGauge, name.FieldSpec,
		name.FieldColour, name.FieldStripe, name.FieldLength, name.FieldCurrent, name.FieldFuse}
}

// Beside is what a row holds in columns that no value is read from: the second of two of
// a kind, where it says something else than the first, and those that were spared.
func (b *Block) Beside(cells []string) (all []string) {
	first := map[name.Field]string{}
	for i, c := range b.Cols {
		if i >= len(cells) || cells[i] == "" {
			continue
		}
		if c.Field == name.FieldUnit && !isUnitWord(cells[i]) {
			all = append(all, value.JoinNonEmpty(": ", c.Head, cells[i]))
		}
		if !slices.Contains(Once(), c.Field) {
			continue
		}
		if v, ok := first[c.Field]; !ok {
			first[c.Field] = cells[i]
		} else if value.Fold(v) != value.Fold(cells[i]) && !value.IsNothing(cells[i]) {
			all = append(all, value.JoinNonEmpty(": ", c.Head, cells[i]))
		}
	}
	return all
}

// isUnitWord: it measures lengths, sizes of wire or currents.
func isUnitWord(cell string) bool {
	switch w := strings.TrimSuffix(strings.Map(value.PlainSign, value.Fold(cell)), "."); w {
	case "mm2", "mm^2", "qmm", "awg", "ga", "a", "ma", "amp", "amps", "-":
		return true
	default:
		return value.LengthWord(w) != ""
	}
}

// WithoutZeros reads the whole numbers of a column as they are where a program wrote them all
// with a decimal, "22.0": cavities, ids, and gauges where one of them can be no cross section.
func (b *Block) WithoutZeros() {
	for i, c := range b.Cols {
		if !slices.Contains([]name.Field{name.FieldWire, name.FieldPin, name.FieldFromPin, name.FieldToPin, name.FieldGauge}, c.Field) {
			continue
		}
		n, gauge := 0, c.Said && c.Bare == value.BareAWG
		for _, r := range b.Rows {
			if i >= len(r.Cells) || strings.Trim(r.Cells[i], "0123456789.") != "" || r.Cells[i] == "" {
				continue
			}
			whole, ok := strings.CutSuffix(r.Cells[i], ".0")
			if strings.Contains(whole, ".") {
				n = 0
				break
			}
			gauge = gauge || IsOnlyAWG(whole)
			if ok {
				n++
			}
		}
		if n == 0 || n < 2 && c.Field != name.FieldGauge || c.Field == name.FieldGauge && !gauge {
			continue
		}
		b.Rows = slices.Clone(b.Rows)
		for k := range b.Rows {
			r := &b.Rows[k]
			if i < len(r.Cells) && strings.Trim(r.Cells[i], "0123456789.") == "" {
				r.Cells = slices.Clone(r.Cells)
				r.Cells[i] = strings.TrimSuffix(r.Cells[i], ".0")
			}
		}
	}
}

// IsOnlyAWG: a whole number that is a gauge and no cross section in mm² that is made.
func IsOnlyAWG(cell string) bool {
	return cell == "8" || len(cell) == 2 && cell >= "12" && cell <= "40" && cell != "16" && cell != "25" && cell != "35"
}
