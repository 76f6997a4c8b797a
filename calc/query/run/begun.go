package run

import (
	"fmt"

	"contralay/calc"
	"contralay/calc/phase/built"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// AsBegun is the sheet by the figures that a serial was begun with, where the catalogue or what the shop has
// learned has others since: the limits of its layers, of its sheaths and of the tests that are not made yet go by
// it. The sheet itself where nothing has changed, for no serial, and for a record that does not say. What the file
// has, it has as it is now.
func AsBegun(s *sheet.Sheet, b *model.Build) *sheet.Sheet {
	if b == nil {
		return s
	}
	cat := built.Begun(s.Base, b)
	if cat == s.Base {
		return s
	}
	return calc.Build(s.H, cat, s)
}

// mostMoved is how many layers are named of those whose limits would move.
const mostMoved = 2

// Moved says what the limits of the layers of a serial are and would be by the catalogue of today: "T1 layer 2 was
// 9.9 to 10.5 mm, would be 10.4 to 11.0". The first few by name; "" where none moves by what anybody reads.
func Moved(s *sheet.Sheet, b *model.Build) []string {
	was := AsBegun(s, b)
	if was == s {
		return nil
	}
	before, now, learned := bandOf(was), bandOf(s), *b
	var out []string
	more := 0
	for i := range s.Branches {
		for l := range s.Branches[i].Layers {
			read := []unit.Millimetre{s.Branches[i].Layers[l].OverMM}
			x, ok := before.judge(&learned, i, l, read)
			y, is := now.judge(&learned, i, l, read)
			if !ok || !is || unit.Fixed(x.LeastMM, 1) == unit.Fixed(y.LeastMM, 1) && unit.Fixed(x.MostMM, 1) == unit.Fixed(y.MostMM, 1) {
				continue
			}
			if len(out) == mostMoved {
				more++
				continue
			}
			out = append(out, fmt.Sprintf("%s was %s to %s mm, would be %s to %s", built.LayerAt(s.H.Branches[i].ID, l),
				unit.Fixed(x.LeastMM, 1), unit.Fixed(x.MostMM, 1), unit.Fixed(y.LeastMM, 1), unit.Fixed(y.MostMM, 1)))
		}
	}
	switch {
	case more == 1:
		out = append(out, "and the limits of 1 more layer")
	case more > 1:
		out = append(out, fmt.Sprintf("and the limits of %d more layers", more))
	}
	return out
}
