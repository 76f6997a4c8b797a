package over

import (
	"fmt"
	"maps"
	"slices"
	"strings"

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
	like := map[string]int{} // how many there are of an insert
	for i := range s.H.Terminations {
		like[s.H.Terminations[i].Insert.V]++
	}
	for i := range s.H.Terminations {
		a := &s.H.Terminations[i]
		if a.Insert.V != "" && like[a.Insert.V] > 1 {
			for _, n := range near(s, a.ID, reach) {
				if n.term < i {
					sayTwins(s, a, &s.H.Terminations[n.term], n.far)
				}
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

// sayTwins says of two connectors on one harness, so far apart along it, that they could be swapped: for sure where insert,
// gender and key of both are the same, perhaps where one of those is not entered.
func sayTwins(s *sheet.Sheet, a, b *model.Termination, far unit.Millimetre) {
	if a.Insert.V != b.Insert.V {
		return
	}
	where := fmt.Sprintf("It is like %s, %s mm from it along the harness: ", b.ID, unit.Fixed(far, 0))
	same, open := []string{"insert"}, []string{}
	for _, x := range []struct{ what, a, b string }{{"gender", string(a.Gender.V), string(b.Gender.V)}, {"key", a.Key.V, b.Key.V}} {
		switch {
		case x.a == "" || x.b == "":
			open = append(open, x.what)
		case x.a == x.b:
			same = append(same, x.what)
		default:
			return
		}
	}
	if len(open) == 0 {
		s.SayLike(sheet.Warn, "twins", a.ID, "",
			where+"same insert, gender and key, so the two can be swapped. Give one of them a different keying")
		return
	}
	s.SayLike(sheet.Note, "twins", a.ID, "", fmt.Sprintf("%ssame %s, so the two may be swapped. Enter the %s of both", where,
		strings.Join(same, " and "), strings.Join(open, " and the ")))
}

// smallConnector is how many cavities are wired by colour alone.
const smallConnector = 4
