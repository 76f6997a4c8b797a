package over

import (
	"fmt"
	"maps"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What one branch and the next owe each other: layers that run on, connectors that could be
// swapped.

// RunThrough tells, at each breakout, where a lay-up goes on unbroken into another
// branch and would change its hand there: it runs through with its hand, or is laid
// anew; it cannot do both.
func RunThrough(s *sheet.Sheet) {
	for j := range s.H.Breakouts {
		id := s.H.Breakouts[j].ID
		meet := s.Index.Meeting(id)
		for x, a := range meet {
			for _, b := range meet[x+1:] {
				goesOn(s, id, a, b)
			}
		}
	}
}

func goesOn(s *sheet.Sheet, place string, a, b int) {
	x, y := &s.Branches[a], &s.Branches[b]
	if x.Make != model.MakeLaid || y.Make != model.MakeLaid {
		return
	}
	if len(x.Layers) < len(y.Layers) {
		a, b, x, y = b, a, y, x
	}
	n := len(y.Layers)
	if n < 2 || len(x.Layers) == n && sameMembers(&x.Layers[n-1], &y.Layers[n-1]) && x.Layers[n-1].Hand == y.Layers[n-1].Hand {
		return
	}
	for k := range n {
		if !sameMembers(&x.Layers[k], &y.Layers[k]) {
			return
		}
	}
	if out := &y.Layers[n-1]; out.Hand != x.Layers[n-1].Hand {
		thick, thin := s.H.Branches[a].ID, s.H.Branches[b].ID
		s.Say(sheet.Note, "through.hand", thin,
			fmt.Sprintf("%s of %s goes on into %s at %s and would turn from %s to %s there: run it through with %s outside, or lay it "+
				"again %s",
				sheet.Capital(model.LayerName(n-1)), thick, thin, place, x.Layers[n-1].Hand, out.Hand, x.Layers[n-1].Hand, out.Hand))
	}
}

// sameMembers reports whether two layers hold the same components.
func sameMembers(a, b *sheet.Layer) bool {
	if len(a.Members) != len(b.Members) || a.Fillers != b.Fillers {
		return false
	}
	ids := func(l *sheet.Layer) []string {
		var out []string
		for _, m := range l.Members {
			out = append(out, m.ID)
		}
		slices.Sort(out)
		return out
	}
	return slices.Equal(ids(a), ids(b))
}

// reach is how near two like connectors can be swapped on a vehicle: an arm's length,
// common practice, no source.
const reach unit.Millimetre = 1000

// Twins tells which connectors could be put on each other's place, and where two wires
// of a small connector cannot be told apart by colour.
func Twins(s *sheet.Sheet) {
	type kind struct{ insert, gender, key string }
	kindOf := func(t *model.Termination) kind { return kind{t.Insert.V, string(t.Gender.V), t.Key.V} }
	like := map[kind]int{} // how many there are
	for i := range s.H.Terminations {
		like[kindOf(&s.H.Terminations[i])]++
	}
	for i := range s.H.Terminations {
		a := &s.H.Terminations[i]
		if a.Insert.V != "" && like[kindOf(a)] > 1 {
			for _, n := range near(s, a.ID, reach) {
				b := &s.H.Terminations[n.term]
				if n.term >= i || kindOf(a) != kindOf(b) {
					continue
				}
				level := sheet.Warn
				if a.Gender.V == "" || a.Key.V == "" {
					level = sheet.Note // they may differ in what is not entered
				}
				s.SayLike(level, "twins", a.ID, "",
					fmt.Sprintf("It is like %s, %s from it along the harness: same insert, gender and key, so the two can be swapped. "+
						"Give one of them a different keying", b.ID, unit.Fixed(n.far, 0)+" mm"))
			}
		}
		if t := &s.Terms[i]; a.Insert.V == "" && len(t.Cavities) <= smallConnector {
			seen := map[string]string{}
			for _, c := range t.Cavities {
				here := map[string]string{} // wires of one cavity are one to the device
				for _, id := range t.State[c].Wires {
					w := &s.H.Wires[s.Index.Wire[id]]
					key := w.Colour.V + " " + w.Spec + " " + w.Size
					if other := seen[key]; other != "" && w.Colour.V != "" {
						s.Say(sheet.Note, "colour.same", a.ID, fmt.Sprintf("Wires %s and %s look alike there: mark one", other, id))
					}
					here[key] = id
				}
				maps.Copy(seen, here)
			}
		}
	}
}

// smallConnector is how many cavities are wired by colour alone.
const smallConnector = 4
