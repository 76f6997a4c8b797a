package built

import (
	"slices"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
)

// When a splice is made. One that lies inside a run is covered by the layers laid over it:
// it is made before the layer that its wires lie in. One at the centre of a fork stays open
// until the branch that leads there is laid.

// Made is when a splice is made: before a layer of a branch is laid.
type Made struct {
	Branch int  // none: -1
	Layer  int  // as many as the branch has: once it is laid
	Inside bool // it lies in that layer, and what is laid over it covers it
}

// MadeWhen is when each splice is made.
func MadeWhen(s *sheet.Sheet) []Made {
	walk := wires.Walked(s)
	out := make([]Made, len(s.H.Splices))
	for i := range out {
		out[i] = madeWhen(s, walk, i)
	}
	return out
}

// madeWhen is when splice i is made. One toward a branch lies inside that, one at a station
// of its own in a run (a breakout that two branches meet at) inside the branch of the two
// that is laid first.
func madeWhen(s *sheet.Sheet, walk []wires.Walk, i int) Made {
	sp := &s.H.Splices[i]
	in, _, toward := ends.StationOf(s, i)
	toward = toward && sp.OffsetMM.V > 0
	for _, k := range walk {
		if toward && k.Branch == in || !toward && len(s.Index.Meeting(sp.At)) == 2 && (k.From == sp.At || k.To == sp.At) {
			for l := range s.Branches[k.Branch].Layers {
				if holdsOneOf(s, &s.Branches[k.Branch].Layers[l], i) {
					return Made{k.Branch, l, true}
				}
			}
		}
	}
	for _, k := range walk {
		switch sp.At {
		case k.From: // where the laying starts
			return Made{Branch: k.Branch}
		case k.To:
			return Made{Branch: k.Branch, Layer: len(s.Branches[k.Branch].Layers)}
		}
	}
	return Made{Branch: -1}
}

// holdsOneOf reports whether a layer holds something that ends on splice i: a wire, the unit
// that it is in, or a unit whose drain ends there.
func holdsOneOf(s *sheet.Sheet, l *sheet.Layer, i int) bool {
	ends := func(id string) bool {
		k, ok := s.Index.Wire[id]
		return ok && slices.Contains(s.Splices[i].Wires, k)
	}
	for _, m := range l.Members {
		if ends(m.ID) {
			return true
		}
		if u, ok := s.Index.Unit[m.ID]; ok {
			of, id := &s.H.Units[u], s.H.Splices[i].ID
			if of.DrainFrom.V == id || of.DrainTo.V == id || slices.ContainsFunc(of.Wires, ends) {
				return true
			}
		}
	}
	return false
}
