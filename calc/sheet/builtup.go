package sheet

import (
	"cmp"
	"fmt"
	"strings"

	"contralay/model/unit"
)

// BareMM is the diameter of a layer before it is built up.
func (l *Layer) BareMM() unit.Millimetre { return l.OverMM - l.BuiltMM }

// BuiltUp is what is built up, in words: "C1 built up to 4.8 with 1.89 mm of tape"; "" for a
// layer that is not. It is said this way on every screen and page.
func (l *Layer) BuiltUp(sys unit.System) string {
	if l.BuiltMM <= 0 {
		return ""
	}
	var ids []string
	for _, m := range l.Members {
		if m.Kind != OfFiller {
			ids = append(ids, m.ID)
		}
	}
	return BuiltUp(sys, ids, l.OverMM, l.BuiltMM, l.BuiltOf)
}

// BuiltUp says what a centre of ids is built up to, and how much of which tape that takes.
func BuiltUp(sys unit.System, ids []string, to, by unit.Millimetre, of string) string {
	return fmt.Sprintf("%s built up to %s with %s %s of %s", strings.Join(ids, " + "), sys.Diameter(to), sys.Fine(by), sys.Name(),
		cmp.Or(of, "tape"))
}
