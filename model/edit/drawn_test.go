package edit_test

import (
	"testing"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
)

// drawn is the loom with a trunk that leaves P1 at 30 degrees and turns 90 to the left at 100 mm
// and 45 to the right at 300 mm.
func drawn(datum string) *model.Harness {
	h := loom()
	if datum != "" {
		h.Board.Datum = model.Some(datum)
	}
	h.Branches[0].LeavesDeg = model.Some[unit.Degree](30)
	h.Branches[0].Vias = []model.Via{{AtMM: 100, TurnDeg: 90, RadiusMM: model.Some[unit.Millimetre](50)}, {AtMM: 300, TurnDeg: -45}}
	return h
}

// turns is how far a branch turns in all, walked from
// its from end.
func turns(b *model.Branch) (sum unit.Degree) {
	for _, v := range b.Vias {
		sum += v.TurnDeg
	}
	return sum
}

// Both parts of a branch keep the bends that lie on them; the part that the datum is beyond
// keeps the turn into the branch, and the other goes straight on. By hand: 250 mm into 450.
func TestSplitKeepsTheDrawing(t *testing.T) {
	for _, c := range []struct {
		datum       string
		near, other int // which part leaves at 30 degrees: 0 the first, 1 the second
	}{{"", 0, 1}, {"P1", 0, 1}, {"INJ1", 1, 0}} {
		h := drawn(c.datum)
		n, _, err := edit.Split(h, "T1", 250)
		if err != nil {
			t.Fatal(err)
		}
		parts := []*model.Branch{branch(t, n, "T1"), &n.Branches[len(n.Branches)-1]}
		if l := parts[c.near].LeavesDeg; l != model.Some[unit.Degree](30) {
			t.Errorf("datum %q: the part at the datum leaves at %v", c.datum, l)
		}
		if l := parts[c.other].LeavesDeg; l != model.Some[unit.Degree](0) {
			t.Errorf("datum %q: the other part leaves at %v", c.datum, l)
		}
		if a, b := parts[0].Vias, parts[1].Vias; len(a) != 1 || len(b) != 1 || a[0].AtMM != 100 || a[0].RadiusMM.V != 50 ||
			b[0].AtMM != 50 || b[0].TurnDeg != -45 {
			t.Errorf("bends %v and %v", a, b)
		}
	}
}

// Split and joined again, a branch is drawn as it was.
func TestJoinKeepsTheDrawing(t *testing.T) {
	for _, datum := range []string{"", "P1", "INJ1"} {
		h := drawn(datum)
		n, j, _ := edit.Split(h, "T1", 250)
		back, _, err := edit.Join(n, j)
		if err != nil {
			t.Fatal(err)
		}
		was, is := branch(t, h, "T1"), branch(t, back, "T1")
		if is.LeavesDeg != was.LeavesDeg || len(is.Vias) != 2 || is.Vias[0] != was.Vias[0] || is.Vias[1] != was.Vias[1] {
			t.Errorf("datum %q: %v %v, was %v %v", datum, is.LeavesDeg, is.Vias, was.LeavesDeg, was.Vias)
		}
	}
}

// Where one branch turned against the other, the whole turns there. From P1, R1 leaves J1 20 to
// the left; drawn from the other end the same bend is to the right, and so stays 20 along the
// branch as it runs.
func TestJoinKeepsTheTurn(t *testing.T) {
	for _, c := range []struct {
		datum string
		turn  unit.Degree
	}{{"P1", 20}, {"INJ1", -15}} {
		h := drawn(c.datum)
		h, _, _ = edit.Remove(h, edit.Termination, "SEN")
		h, _, _ = edit.Remove(h, edit.Wire, "401")
		h.Branches[1].LeavesDeg = model.Some[unit.Degree](20)
		h.Branches[0].Layers, h.Branches[1].Layers = nil, nil
		want := model.Some[unit.Degree](30)
		if c.datum == "INJ1" { // from there T1 is reached over J1, and is what turns against R1
			h.Branches[0].LeavesDeg, want = model.Some[unit.Degree](15), model.Some[unit.Degree](20)
		}
		n, _, err := edit.Join(h, "J1")
		if err != nil {
			t.Fatal(err)
		}
		b := branch(t, n, "T1")
		if len(b.Vias) != 3 || b.Vias[2] != (model.Via{AtMM: 450, TurnDeg: c.turn}) || b.LeavesDeg != want {
			t.Errorf("datum %s: leaves at %v, bends %v", c.datum, b.LeavesDeg, b.Vias)
		}
	}
}

// Seen from its other end a branch has the same bends: the last first, left for right.
func TestTurnRoundTurnsTheBends(t *testing.T) {
	h := drawn("P1")
	n, err := edit.TurnRound(h, "T1")
	if err != nil {
		t.Fatal(err)
	}
	b := branch(t, n, "T1")
	if len(b.Vias) != 2 || b.Vias[0] != (model.Via{AtMM: 150, TurnDeg: 45}) || b.Vias[1].AtMM != 350 || b.Vias[1].TurnDeg != -90 ||
		turns(b) != -turns(branch(t, h, "T1")) || b.LeavesDeg.V != 30 {
		t.Errorf("leaves at %v, bends %v", b.LeavesDeg, b.Vias)
	}
}

// A branch hung elsewhere at the end that the datum is beyond turns by rule there; at its other
// end it keeps its turn.
func TestRehangForgetsTheTurn(t *testing.T) {
	h := drawn("P1")
	h.Branches[4].LeavesDeg = model.Some[unit.Degree](-60) // L3, J1 to SEN
	n, says, err := edit.Rehang(h, "L3", "J1", "J2")
	if err != nil || branch(t, n, "L3").LeavesDeg.Set || len(says) != 1 || says[0] != "L3 leaves J2 on the drawing by rule now" {
		t.Errorf("%v %q %v", branch(t, n, "L3").LeavesDeg, says, err)
	}
	h.Terminations = append(h.Terminations, model.Termination{ID: "X9"})
	n, says, err = edit.Rehang(h, "L3", "SEN", "X9")
	if err != nil || branch(t, n, "L3").LeavesDeg.V != -60 || len(says) == 1 && says[0] == "L3 leaves X9 on the drawing by rule now" {
		t.Errorf("%v %q %v", branch(t, n, "L3").LeavesDeg, says, err)
	}
}

// The datum is renamed with its place, and is none where its place goes.
func TestDatumFollowsItsPlace(t *testing.T) {
	h := drawn("J1")
	n, _, err := edit.Rename(h, edit.Breakout, "J1", "J9")
	if err != nil || n.Board.Datum.V != "J9" || h.Board.Datum.V != "J1" {
		t.Errorf("%v %v", n.Board.Datum, err)
	}
	h, _, _ = edit.Remove(drawn("SEN"), edit.Termination, "SEN")
	if h.Board.Datum.Set || len(h.Check()) > 0 {
		t.Errorf("%v %v", h.Board.Datum, h.Check())
	}
	h, _, _ = edit.Remove(drawn("J1"), edit.Termination, "SEN")
	h, _, _ = edit.Remove(h, edit.Wire, "401")
	h.Branches[1].Layers = h.Branches[0].Layers
	n, says, err := edit.Join(h, "J1")
	if err != nil || n.Board.Datum.Set || len(says) == 0 || len(n.Check()) > 0 {
		t.Errorf("%v %q %v", n.Board.Datum, says, err)
	}
	h = drawn("P1")
	h.Board.Datum = model.Some("P7")
	if f := h.Check(); len(f) != 1 || f[0].Table != "board" || f[0].Key != "datum" {
		t.Errorf("%v", f)
	}
}
