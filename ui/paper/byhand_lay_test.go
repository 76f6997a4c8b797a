package paper

import "testing"

// Where each piece of the small loom runs to, seen from the end its branch is laid from: read off the ends of the
// wires in byhand.toml. A pair names the end of its first wire.
func TestLaidPiecesLeadByHand(t *testing.T) {
	s := handLoom(t)
	want := []map[string]string{
		{"C1": "LOG1:A", "101": "splice S1", "109": "LMP1:3", "110": "GND1:1", "111": "LMP1:4", "112": "LMP2:3", "113": "capped at J1"},
		{"102": "LMP1:1", "105": "LMP1:2", "109": "LMP1:3", "111": "LMP1:4"},
		{"103": "LMP2:1", "106": "LMP2:2", "112": "LMP2:3"},
		{"C1": "LOG1:A", "104": "LOG1:C"},
		{"105": "GND1:1", "106": "GND1:1", "110": "GND1:1"},
	}
	for i, leads := range want {
		id, met := s.H.Branches[i].ID, 0
		for _, l := range makerOf(s).card(i).Layers {
			for _, m := range l.Members {
				if m.ID == "filler" {
					continue
				}
				met++
				if m.Leads != leads[m.ID] {
					t.Errorf("%s: %s leads to %q, by hand %q", id, m.ID, m.Leads, leads[m.ID])
				}
			}
		}
		if met != len(leads) {
			t.Errorf("%s has %d pieces, by hand %d", id, met, len(leads))
		}
	}
}
