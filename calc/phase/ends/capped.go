package ends

import (
	"fmt"

	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Dead-ended spares: wires with a cavity at one end only. The other is capped, folded
// back along the bundle and written down, so that it is found when it is wanted.

// Cap is where the end of a capped spare lies.
type Cap struct {
	Wire   int
	Place  string          // it runs as far as this breakout or termination
	Branch int             // and lies along this branch, folded back; −1 where it runs through none
	AtMM   unit.Millimetre // its cap, from the branch's from end
	FoldMM unit.Millimetre
}

// Caps are the capped spares, in file order.
func Caps(s *sheet.Sheet) []Cap {
	var out []Cap
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		if !wires.Capped(w) || !s.Wires[k].HasPath {
			continue
		}
		c := Cap{Wire: k, Place: w.CappedAt.V, Branch: -1, FoldMM: w.FoldMM.Or(wires.FoldMM)}
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

// Capped tells what is capped and should not be.
func Capped(s *sheet.Sheet) {
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		switch {
		case w.CappedAt.V == "":
		case w.From.V != "" && w.To.V != "":
			s.Say(sheet.Warn, "wire.capped", w.ID, fmt.Sprintf("It has two ends and is also capped at %s: one of the three is wrong",
				w.CappedAt.V))
		case wires.Capped(w) && w.Role.V != model.RoleSpare:
			s.Say(sheet.Warn, "wire.capped", w.ID, fmt.Sprintf("It is capped at %s but is no spare: its circuit ends there", w.CappedAt.V))
		case wires.Capped(w) && s.Wires[k].HasPath && len(s.Wires[k].Path) == 0:
			s.Say(sheet.Warn, "wire.capped", w.ID, fmt.Sprintf("It is capped at %s, where it begins: it runs nowhere", w.CappedAt.V))
		}
	}
	for _, c := range Caps(s) {
		if c.Branch >= 0 && s.H.Branches[c.Branch].Measured() && c.FoldMM > s.H.Branches[c.Branch].LengthMM {
			s.Say(sheet.Note, "wire.fold", s.H.Wires[c.Wire].ID,
				fmt.Sprintf("It is folded back %s mm along %s, which is only %s mm long", unit.Fixed(c.FoldMM, 0),
					s.H.Branches[c.Branch].ID, unit.Fixed(s.H.Branches[c.Branch].LengthMM, 0)))
		}
	}
}
