package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// WithoutZeros reads the whole numbers of a column as they are where a program wrote them all
// with a decimal, "22.0": cavities, ids, and gauges where one of them can be no cross section.
func (b *Block) WithoutZeros() {
	for i, c := range b.Cols {
		if !slices.Contains([]name.Field{name.FieldWire, name.FieldPin, name.FieldFromPin, name.FieldToPin, name.FieldGauge}, c.Field) {
			continue
		}
		n, gauge := 0, c.Said && c.Bare == value.BareAWG
		for _, r := range b.Rows {
			if i >= len(r.Cells) || r.Cells[i] == "" || strings.Trim(r.Cells[i], "0123456789.") != "" {
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

// IsOnlyAWG reports whether a cell is a whole number that is a gauge and no cross section in
// mm² that is made.
func IsOnlyAWG(cell string) bool {
	return cell == "8" || len(cell) == 2 && cell >= "12" && cell <= "40" && cell != "16" && cell != "25" && cell != "35"
}
