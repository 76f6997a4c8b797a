package wirelist

import (
	"slices"
	"strings"
)

// madeSizes are the AWG sizes that harness wire is made in; common practice, no source.
func madeSizes() []string {
	return []string{"10", "12", "14", "16", "18", "20", "22", "24", "26", "28", "30"}
}

// sizesAsWires takes a column headed "wire" for what it holds where that is sizes: every
// cell is one, and some has its unit or comes again, which a number of a wire does not. Two
// pins of "22" are not one wire. What a person said of a column holds.
func (h headings) sizesAsWires(b *block) {
	if b.has(FieldGauge) {
		return
	}
	for i := range b.cols {
		c := &b.cols[i]
		if c.field != FieldWire || h.given(c.head, i) {
			continue
		}
		seen := map[string]bool{}
		n, sure := 0, false
		for _, r := range b.rows {
			if i >= len(r.Cells) || isNothing(r.Cells[i]) || isText(r) {
				continue
			}
			cell := fold(r.Cells[i])
			plain := strings.Trim(cell, "0123456789") == ""
			if plain && !slices.Contains(madeSizes(), cell) {
				return // 6 or 101: the number of a wire, which may stand twice
			}
			if g, ok := ParseGauge(cell, BareAWG, b.mark); !ok || g.Size == "" {
				return
			}
			sure = sure || seen[cell] || !plain
			seen[cell] = true
			n++
		}
		if n > 1 && sure {
			c.field, c.sizes = FieldGauge, true
			return
		}
	}
}

// given reports whether a recipe says what a column means.
func (h headings) given(head string, i int) bool {
	if h.recipe == nil {
		return false
	}
	for key := range h.recipe.Columns {
		if columnNumber(key) == i+1 || head != "" && fold(key) == fold(head) {
			return true
		}
	}
	return false
}
