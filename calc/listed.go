package calc

import (
	"strings"

	"contralay/model/compare"
)

// listed stops where the harness joins otherwise than an independent list has it: the worst
// harness is the one built faithfully from a wrong list.
func (s *Sheet) listed() {
	if len(s.H.Listed) == 0 {
		return
	}
	if s.same.all && shares(s.H.Listed, s.same.prior.H.Listed) {
		s.kept(s.same.prior.saidListed)
		s.saidListed = s.same.prior.saidListed
		return
	}
	mark := len(s.Snags)
	for _, d := range s.Disagreements() {
		where := s.H.Head.Number.V
		if len(d.Cavities) > 0 {
			where = d.Cavities[0]
		} else if len(d.Wires) > 0 {
			where = d.Wires[0]
		}
		s.say(Stop, "list.joins", where, "the independent list has it otherwise: "+strings.TrimSpace(d.Says))
	}
	s.saidListed = s.since(mark)
}

// Disagreements is where the harness and its independent list join otherwise; nil without
// a list.
func (s *Sheet) Disagreements() []compare.Difference {
	if len(s.H.Listed) == 0 {
		return nil
	}
	return compare.Joins(compare.Disagreements(*s.H, compare.Listing(s.H.Listed, s.H.Terminations)))
}
