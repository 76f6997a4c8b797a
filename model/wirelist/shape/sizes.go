package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/rising"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// madeSizes are the AWG sizes that harness wire is made in; common practice, no source.
func madeSizes() []string {
	return []string{"10", "12", "14", "16", "18", "20", "22", "24", "26", "28", "30"}
}

// IsMadeSize reports whether a cell is an AWG size alone that harness wire is made in.
func IsMadeSize(cell string) bool { return slices.Contains(madeSizes(), cell) }

// sizesAsWires takes a column headed "wire" for what it holds where that is sizes: every
// cell is one, and some has its unit or comes again, which a number of a wire does not. Two
// pins of "22" are not one wire. What a person said of a column holds.
func (h Headings) sizesAsWires(b *Block) {
	if b.Has(name.FieldGauge) {
		return
	}
	for i := range b.Cols {
		c := &b.Cols[i]
		if c.Field != name.FieldWire || h.Given(c.Head, i) || rising.ByOne(b.Rows, i) {
			continue
		}
		seen, n, sure := map[string]bool{}, 0, false
		for _, r := range b.Rows {
			if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || IsText(r) {
				continue
			}
			cell := table.Fold(r.Cells[i])
			plain := strings.Trim(cell, "0123456789") == ""
			if plain && !slices.Contains(madeSizes(), cell) {
				return // 6 or 101: the number of a wire, which may stand twice
			}
			if !value.SaysSize(cell, b.Lang, b.Mark) && cell != "?" {
				return
			}
			sure = sure || seen[cell] || !plain
			seen[cell] = true
			n++
		}
		if n > 1 && sure {
			c.Field, c.Sizes = name.FieldGauge, true
			return
		}
	}
}

// Given reports whether a recipe says what a column means.
func (h Headings) Given(head string, i int) bool {
	if h.Recipe == nil {
		return false
	}
	for key := range h.Recipe.Columns {
		if columnNumber(key) == i+1 || head != "" && table.Fold(key) == table.Fold(head) {
			return true
		}
	}
	return false
}
