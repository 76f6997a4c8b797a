package wirelist

import (
	"slices"
	"strconv"
	"strings"
)

// settle gives every column its use, once the rows show what stands in them. What no wire
// takes is kept as text.
func (h headings) settle(b *block) {
	h.sizesAsWires(b)
	h.cablesAsWires(b)
	b.settleRuns()
	ends := b.has(FieldFrom, FieldTo, FieldFromPin, FieldRun)
	for i := range b.cols {
		c := &b.cols[i]
		switch {
		case c.running && !b.runs(i):
			c.field, c.spared = FieldKeep, true
		case ends && !b.isPinTable() && (c.field == FieldConnector || c.field == FieldPin):
			c.field, c.spared = FieldKeep, true
		case c.field == FieldUnit && (i == 0 || b.cols[i-1].measured != i):
			c.field, c.spared = FieldKeep, true
		}
	}
	for _, f := range []Field{FieldFrom, FieldTo, FieldConnector} {
		b.partConnectors(f)
	}
}

// cablesAsWires takes a column headed "cable" for the numbers of the wires, where none other
// has them: no two rows have one text, and none tells of a kind of cable.
func (h headings) cablesAsWires(b *block) {
	if b.has(FieldWire) {
		return
	}
	for i := range b.cols {
		c := &b.cols[i]
		if f := strings.Join(words(fold(c.head)), " "); c.field != FieldCable || f != "cable" && f != "kabel" || h.given(c.head, i) {
			continue
		}
		seen := map[string]bool{}
		for _, r := range b.rows {
			if i >= len(r.Cells) || isText(r) {
				continue
			}
			cell := fold(r.Cells[i])
			if g, ok := ParseGauge(cell, BareAWG, b.mark); isNothing(cell) || seen[cell] || isCable(loose(cell)) || ok && isCable(g) || yesOrNo(cell) != "" || len(partners(cell)) > 0 {
				return
			}
			seen[cell] = true
		}
		if len(seen) > 1 {
			c.field = FieldWire
			return
		}
	}
}

// isPinTable: its rows are cavities; both ends of a wire are not named.
func (b *block) isPinTable() bool {
	return b.has(FieldPin) && !b.has(FieldFrom, FieldFromPin, FieldRun)
}

// runs: a column counts its rows, whole numbers that rise: nothing is lost without it.
func (b *block) runs(i int) bool {
	last := -1
	for _, r := range b.rows {
		if i >= len(r.Cells) || r.Cells[i] == "" || isText(r) {
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
func (b *block) partConnectors(f Field) {
	var of []int
	for i, c := range b.cols {
		if c.field == f {
			of = append(of, i)
		}
	}
	if len(of) < 2 {
		return
	}
	second := map[string]string{}
	for _, r := range b.rows {
		if of[1] >= len(r.Cells) || r.Cells[of[0]] == "" || r.Cells[of[1]] == "" {
			continue
		}
		first, plug := fold(r.Cells[of[0]]), fold(r.Cells[of[1]])
		if known, ok := second[first]; ok && known != plug {
			b.cols[of[0]].several = true
			return
		}
		second[first] = plug
	}
}

// once lists the fields that have one value in a row.
func once() []Field {
	return []Field{FieldWire, FieldPin, FieldFromPin, FieldToPin, FieldGauge, FieldSpec, FieldColour, FieldStripe, FieldLength, FieldCurrent, FieldFuse}
}

// beside is what a row holds in columns that no value is read from: the second of two of
// a kind, where it says something else than the first, and those that were spared.
func (b *block) beside(cells []string) (all []string) {
	first := map[Field]string{}
	for i, c := range b.cols {
		if i >= len(cells) || cells[i] == "" {
			continue
		}
		if c.field == FieldUnit && !isUnitWord(cells[i]) {
			all = append(all, joinNonEmpty(": ", c.head, cells[i]))
		}
		if !slices.Contains(once(), c.field) {
			continue
		}
		if v, ok := first[c.field]; !ok {
			first[c.field] = cells[i]
		} else if fold(v) != fold(cells[i]) && !isNothing(cells[i]) {
			all = append(all, joinNonEmpty(": ", c.head, cells[i]))
		}
	}
	return all
}

// isUnitWord: it measures lengths, sizes of wire or currents.
func isUnitWord(cell string) bool {
	switch w := strings.TrimSuffix(strings.Map(plainSign, fold(cell)), "."); w {
	case "mm2", "mm^2", "qmm", "awg", "ga", "a", "ma", "amp", "amps", "-":
		return true
	default:
		return lengthWord(w) != ""
	}
}

// twice says which columns are read only where the one before them is empty.
func (b *block) twice(im *importer, at Place) {
	for _, f := range once() {
		var heads []string
		for _, c := range b.cols {
			if c.field == f {
				heads = append(heads, c.head)
			}
		}
		if len(heads) < 2 {
			continue
		}
		for _, r := range b.rows {
			if len(b.beside(r.Cells)) > 0 {
				at.Column = heads[0]
				im.say(Note, "two columns of one kind", at, strings.Join(heads, " | "), "the first that is filled counts, the other is kept in the notes")
				break
			}
		}
	}
}

// withoutZeros reads the whole numbers of a column as they are where a program wrote them all
// with a decimal, "22.0": cavities, ids, and gauges where one of them can be no cross section.
func (b *block) withoutZeros() {
	for i, c := range b.cols {
		if !slices.Contains([]Field{FieldWire, FieldPin, FieldFromPin, FieldToPin, FieldGauge}, c.field) {
			continue
		}
		n, gauge := 0, c.said && c.bare == BareAWG
		for _, r := range b.rows {
			if i >= len(r.Cells) || strings.Trim(r.Cells[i], "0123456789.") != "" || r.Cells[i] == "" {
				continue
			}
			whole, ok := strings.CutSuffix(r.Cells[i], ".0")
			if strings.Contains(whole, ".") {
				n = 0
				break
			}
			gauge = gauge || isOnlyAWG(whole)
			if ok {
				n++
			}
		}
		if n == 0 || n < 2 && c.field != FieldGauge || c.field == FieldGauge && !gauge {
			continue
		}
		b.rows = slices.Clone(b.rows)
		for k := range b.rows {
			r := &b.rows[k]
			if i < len(r.Cells) && strings.Trim(r.Cells[i], "0123456789.") == "" {
				r.Cells = slices.Clone(r.Cells)
				r.Cells[i] = strings.TrimSuffix(r.Cells[i], ".0")
			}
		}
	}
}

// isOnlyAWG: a whole number that is a gauge and no cross section in mm² that is made.
func isOnlyAWG(cell string) bool {
	return cell == "8" || len(cell) == 2 && cell >= "12" && cell <= "40" && cell != "16" && cell != "25" && cell != "35"
}
