package run_test

import (
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/run"
)

// The pieces of pinning an end are its wires by cavity, and then the cavities that take a plug: of the example each end has as many
// as its sheet has wired cavities, counted from the wires of the file.
func TestPiecesOfAnEnd(t *testing.T) {
	s := calctest.Laid(t, "example")
	ends := 0
	for _, r := range run.Run(s) {
		if r.Kind != run.PinStep {
			continue
		}
		ends++
		want := map[string]bool{}
		for k := range s.H.Wires {
			for _, text := range []string{s.H.Wires[k].From.V, s.H.Wires[k].To.V} {
				if e, ok := s.Index.End(text); ok && e.Termination == r.Of {
					want[s.H.Wires[k].ID] = true
				}
			}
		}
		for _, p := range run.Pieces(s, r) {
			if p.ID != "" && !want[p.ID] {
				t.Errorf("%s: %s is pinned there", r.Key, p.ID)
			}
			delete(want, p.ID)
		}
		for id := range want {
			t.Errorf("%s: wire %s is no piece", r.Key, id)
		}
	}
	if ends < 3 {
		t.Errorf("only %d ends", ends)
	}
}
