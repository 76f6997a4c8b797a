package planning

import (
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
)

// Stale is the branches whose lay-up in the file does not hold what runs through them:
// something is in no layer, or lies there and runs elsewhere. They are left as they are
// until somebody lays them anew.
func Stale(s *sheet.Sheet) []int {
	var out []int
	for i := range s.Branches {
		if bundle.LayersOf(s, i) == nil {
			continue
		}
		var laid []string
		for _, l := range s.H.Branches[i].Layers {
			laid = append(laid, l.Of...)
		}
		if len(bundle.Without(s.Branches[i].Components, laid)) > 0 || len(bundle.Without(laid, s.Branches[i].Components)) > 0 {
			out = append(out, i)
		}
	}
	return out
}
