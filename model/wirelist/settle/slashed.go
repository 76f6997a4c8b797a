package settle

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// slashed finds columns of cavities that are named by a row and a column, "3/A": there a stroke parts no two cavities.
func (l *Look) slashed() {
	for i := range l.Cols {
		c, n := &l.Cols[i], 0
		if c.Field != name.FieldPin && c.Field != name.FieldFromPin && c.Field != name.FieldToPin && !l.EndsInPin(c.Head) {
			continue
		}
		for _, r := range l.Src.Rows {
			if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
				continue
			}
			if a, b, ok := strings.Cut(r.Cells[i], "/"); !ok || !name.IsCavity(a) || !name.IsCavity(b) {
				n = 0
				break
			}
			n++
		}
		c.Slashed = n > 2 || pads.StrokeNames(l.Src.Rows, i)
	}
}
