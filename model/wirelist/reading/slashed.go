package reading

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// slashed finds columns of cavities that are named by a row and a column, "3/A": there a stroke parts no two cavities.
func (l *look) slashed() {
	for i := range l.cols {
		c, n := &l.cols[i], 0
		if c.Field != name.FieldPin && c.Field != name.FieldFromPin && c.Field != name.FieldToPin && !l.endsInPin(c.Head) {
			continue
		}
		for _, r := range l.src.Rows {
			if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
				continue
			}
			if a, b, ok := strings.Cut(r.Cells[i], "/"); !ok || !name.IsCavity(a) || !name.IsCavity(b) {
				n = 0
				break
			}
			n++
		}
		c.Slashed = n > 2 || l.namesWithStroke(i)
	}
}

// namesWithStroke reports whether the cells of a column are names of pads, and those with a stroke in them two words of letters:
// "D/C" beside "CLK" and "RESET" is one pad, and no two cavities.
func (l *look) namesWithStroke(i int) bool {
	names, strokes := 0, 0
	for _, r := range l.src.Rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		a, b, ok := strings.Cut(r.Cells[i], "/")
		switch {
		case !ok && !name.IsCavity(r.Cells[i]):
			names++
		case !ok:
			names--
		case strings.ContainsFunc(a+b, func(r rune) bool { return !unicode.IsLetter(r) }) || len(a) > 4 || len(b) > 4:
			return false
		default:
			strokes++
		}
	}
	return strokes > 0 && names > 1
}
