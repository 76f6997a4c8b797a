package model

import (
	"math"
	"strings"
	"testing"

	"contralay/model/unit"
)

func TestHang(t *testing.T) {
	h := &Harness{
		Terminations: []Termination{{ID: "P1"}, {ID: "X1"}, {ID: "X2"}},
		Breakouts:    []Breakout{{ID: "J1"}},
		Branches:     []Branch{{ID: "L1", From: "P1", To: "J1", LengthMM: 300}},
	}
	out, id, err := h.Hang("J1", "X1", 210)
	if err != nil || id != "L2" || len(h.Branches) != 1 || len(out.Branches) != 2 {
		t.Fatalf("%v %s %+v", err, id, out.Branches)
	}
	if b := out.Branches[1]; b.ID != "L2" || b.From != "J1" || b.To != "X1" || b.LengthMM != 210 {
		t.Errorf("%+v", b)
	}
	if out, id, err = out.Hang("X1", "X2", 0); err != nil || id != "L3" || len(out.Check()) > 0 {
		t.Errorf("on a termination: %v %s %+v", err, id, out.Check())
	}
	for _, tt := range []struct {
		at, termination string
		length          unit.Millimetre
		want            string
	}{
		{"J1", "X9", 10, `there is no termination "X9" to hang`},
		{"J9", "X1", 10, `there is no breakout and no termination "J9" to hang X1 on`},
		{"P1", "X2", 10, "P1 and X2 are joined already: a second way would close a loop"},
		{"X1", "X1", 10, "X1 and X1 are joined already: a second way would close a loop"},
		{"J1", "X1", -1, "a branch cannot be -1 mm long: 0 where it is not measured yet, or more"},
		{"J1", "X1", unit.Millimetre(math.NaN()), "a branch cannot be NaN mm long: 0 where it is not measured yet, or more"},
	} {
		if same, id, err := out.Hang(tt.at, tt.termination, tt.length); err == nil || !strings.HasPrefix(err.Error(), tt.want) ||
			same != out || id != "" {
			t.Errorf("%s on %s: %v, want %s", tt.termination, tt.at, err, tt.want)
		}
	}
}
