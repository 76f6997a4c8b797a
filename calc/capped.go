package calc

import (
	"fmt"

	"contralay/model"
	"contralay/model/unit"
)

// Dead-ended spares: wires with a cavity at one end only. The other is capped, folded
// back along the bundle and written down, so that it is found when it is wanted.

// foldMM is how much of a capped spare is folded back where the file does not say:
// enough to end in a splice or in a contact near by. Common practice, no source.
const foldMM unit.Millimetre = 100

// Capped reports whether a wire is capped at one end.
func Capped(w *model.Wire) bool {
	return w.CappedAt.V != "" && (w.From.V == "") != (w.To.V == "")
}

// Cap is where the end of a capped spare lies.
type Cap struct {
	Wire   int
	Place  string          // it runs as far as this breakout or termination
	Branch int             // and lies along this branch, folded back; −1 where it runs through none
	AtMM   unit.Millimetre // its cap, from the branch's from end
	FoldMM unit.Millimetre
}

// Caps are the capped spares, in file order.
func (s *Sheet) Caps() []Cap {
	var out []Cap
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		if !Capped(w) || !s.Wires[k].HasPath {
			continue
		}
		c := Cap{Wire: k, Place: w.CappedAt.V, Branch: -1, FoldMM: w.FoldMM.Or(foldMM)}
		if path := s.Wires[k].Path; len(path) > 0 {
			c.Branch = path[len(path)-1]
			if w.From.V == "" {
				c.Branch = path[0]
			}
			b := &s.H.Branches[c.Branch]
			c.AtMM = c.FoldMM
			if b.To == c.Place {
				c.AtMM = b.LengthMM - c.FoldMM
			}
			c.AtMM = min(max(c.AtMM, 0), b.LengthMM)
		}
		out = append(out, c)
	}
	return out
}

// capped tells what is capped and should not be.
func (s *Sheet) capped() {
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		switch {
		case w.CappedAt.V == "":
		case w.From.V != "" && w.To.V != "":
			s.say(Warn, "wire.capped", w.ID, fmt.Sprintf("has two ends and is capped at %s: one of the three is wrong", w.CappedAt.V))
		case Capped(w) && w.Role.V != "spare":
			s.say(Warn, "wire.capped", w.ID, fmt.Sprintf("is capped at %s and is no spare: its circuit ends there", w.CappedAt.V))
		case Capped(w) && s.Wires[k].HasPath && len(s.Wires[k].Path) == 0:
			s.say(Warn, "wire.capped", w.ID, fmt.Sprintf("is capped at %s, where it begins: it runs nowhere", w.CappedAt.V))
		}
	}
	for _, c := range s.Caps() {
		if c.Branch >= 0 && c.FoldMM > s.H.Branches[c.Branch].LengthMM {
			s.say(Note, "wire.fold", s.H.Wires[c.Wire].ID, fmt.Sprintf("is folded back %s mm along %s, which is %s mm long", unit.Fixed(float64(c.FoldMM), 0), s.H.Branches[c.Branch].ID, unit.Fixed(float64(s.H.Branches[c.Branch].LengthMM), 0)))
		}
	}
}

// DeadEnd is a place for a spare through branch i that has a cavity at one end only: at
// a termination of the branch's own, or of one on the way to it, with most cavities
// free; it is capped at the other end of the branch. Asked where no spare finds two.
func (s *Sheet) DeadEnd(i, like int) (SparePlace, bool) {
	best, most := SparePlace{}, 0
	for t := range s.Terms {
		id := s.H.Terminations[t].ID
		b := &s.H.Branches[i]
		for _, end := range []string{b.From, b.To} {
			way, ok := s.X.Between(id, end)
			if !ok || len(way) == 0 || way[len(way)-1] != i {
				continue // the branch lies on the far side
			}
			n, first := 0, ""
			for _, c := range s.Terms[t].Free {
				if s.Takes(t, c, s.H.Wires[like].Spec, s.H.Wires[like].Size) {
					if n++; n == 1 {
						first = c
					}
				}
			}
			if n > most {
				best, most = SparePlace{From: id + ":" + first, CappedAt: end, Path: way, Like: like}, n
			}
		}
	}
	return best, most > 0
}
