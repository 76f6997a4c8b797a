package over

import (
	"fmt"

	"contralay/calc/sheet"
	"contralay/model/unit"
)

// sayMargins tells what a place is too warm for, wires and sheaths apart: those are said
// where they are judged.
func sayMargins(s *sheet.Sheet, i int) {
	air := s.Branches[i].Ambient
	id := s.H.Branches[i].ID
	if c, _, ok := AdhesiveC(s); ok && air > c {
		s.Say(sheet.Stop, "hot.adhesive", id, fmt.Sprintf("The air around it is %s C, and the adhesive is for %s C at most",
			unit.Fixed(air, 0),
			unit.Fixed(c, 0)))
	}
	for _, end := range []string{s.H.Branches[i].From, s.H.Branches[i].To} {
		t, ok := s.Index.Termination[end]
		if !ok {
			continue
		}
		if l := s.H.Terminations[t].LimitC; l.Set && air > l.V {
			s.Say(sheet.Stop, "hot.device", end, fmt.Sprintf("It withstands %s C, and the air is %s C around %s", unit.Fixed(l.V, 0),
				unit.Fixed(air, 0), id))
		}
	}
}
