package cable_test

import (
	"testing"

	"contralay/model/wirelist/cable"
)

// A remark names a pair where nothing else can be meant by it.
func TestMarked(t *testing.T) {
	for _, c := range []struct {
		remark, called, rest string
		twisted, shielded    bool
	}{
		{"TP1", "TP1", "", true, false}, {"(TP1)", "TP1", "", true, false}, {"TP1 shielded", "TP1", "", true, true},
		{"twisted TP12", "TP12", "", true, false}, {"twisted pair 1", "twisted pair 1", "", true, false},
		{"pair A", "pair A", "", false, false},
		{"twist B", "twist B", "", true, false}, {"TP1; 40 turns/m", "TP1", "40 turns/m", true, false}, {"TSP3", "TSP3", "", true, true},
		{"yellow sleeve; TP1", "TP1", "yellow sleeve", true, false},
		{"Paar 3", "Paar 3", "", false, false}, {"pair 22", "", "", false, false}, {"twisted 3", "", "", false, false},
		{"twisted wire 3", "", "", false, false}, {"TP1 TP2", "", "", false, false}, {"shorten", "", "", false, false},
		{"twisted pair", "", "", false, false}, {"P1", "", "", false, false}, {"", "", "", false, false}, {"A", "", "", false, false},
		{"pair with 4", "", "", false, false}, {"TP1 to the left", "", "", false, false},
	} {
		called, kind, rest := cable.Marked(c.remark)
		if called != c.called || rest != c.rest || kind.Twisted != c.twisted || kind.Shielded != c.shielded {
			t.Errorf("%q: %q %q %+v", c.remark, called, rest, kind)
		}
	}
}

// A small or odd number without a unit counts pairs; a gauge has its unit, or is even.
func TestSizeIn(t *testing.T) {
	for remark, c := range map[string][2]string{"twisted 1": {"1", ""}, "twisted 23": {"23", ""}, "twisted 22": {"22", "22"},
		"2 AWG shielded": {"2", "2"}, "shielded 0.5mm2": {"0.5mm2", "0.5mm2"}, "shielded": {"", ""}} {
		if got := cable.SizeIn(remark, c[0]); got != c[1] {
			t.Errorf("%q: %q", remark, got)
		}
	}
}
