package ends

import (
	"strings"

	"contralay/calc/sheet"
	"contralay/model/compare"
)

// Listed stops where the harness joins otherwise than an independent list has it: the worst
// harness is the one built faithfully from a wrong list.
func Listed(s *sheet.Sheet) {
	if len(s.H.Listed) == 0 {
		return
	}
	if s.Reuse.All && sameListed(s.Reuse.Prior.H, s.H) {
		s.Kept(s.Reuse.Prior.SaidListed)
		s.SaidListed = s.Reuse.Prior.SaidListed
		return
	}
	mark := len(s.Snags)
	for _, d := range Disagreements(s) {
		where := s.H.Head.Number.V
		if len(d.Cavities) > 0 {
			where = d.Cavities[0]
		} else if len(d.Wires) > 0 {
			where = d.Wires[0]
		}
		s.Say(sheet.Stop, "list.joins", where, "The independent list differs: "+strings.TrimSpace(d.Says))
	}
	s.SaidListed = s.Since(mark)
}

// Disagreements is where the harness and its independent list join otherwise; nil without
// a list.
func Disagreements(s *sheet.Sheet) []compare.Difference {
	if len(s.H.Listed) == 0 {
		return nil
	}
	return compare.Joins(compare.Disagreements(*s.H, compare.Listing(s.H.Listed, s.H.Terminations)))
}
