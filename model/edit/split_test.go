package edit_test

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
)

// A branch split in two runs on under a new breakout: every way goes through both parts, and
// the lengths add up.
func TestSplit(t *testing.T) {
	h := loom()
	h.Branches[0].AsBuilt = []model.AsBuilt{{Layer: 1, OverMM: []unit.Millimetre{5.1}}}
	before := text(h)
	n, j, err := edit.Split(h, "T1", 100)
	kept(t, h, before, n)
	if err != nil {
		t.Fatal(err)
	}
	a, b := branch(t, n, "T1"), &n.Branches[len(n.Branches)-1]
	if a.From != "P1" || a.To != j || b.From != j || b.To != "J1" || a.LengthMM != 100 || b.LengthMM != 350 {
		t.Errorf("%+v\n%+v", a, b)
	}
	if layers(a) != layers(&h.Branches[0]) || layers(b) != layers(a) {
		t.Errorf("other lay-ups: %s and %s", layers(a), layers(b))
	}
	if len(a.Asides) != 1 || len(b.Asides) != 0 || len(a.AsBuilt) != 1 || len(b.AsBuilt) != 0 {
		t.Error("what was set aside and measured is of the first part")
	}
	if way(n, "101") != "T1 "+b.ID+" R1 L1" || way(n, "401") != "T1 "+b.ID {
		t.Errorf("101 runs by %s, 401 by %s", way(n, "101"), way(n, "401"))
	}
	for _, at := range []unit.Millimetre{0, 450, 500, -1, 449.999} {
		if out, _, err := edit.Split(h, "T1", at); err == nil || out != h {
			t.Errorf("split at %v", at)
		}
	}
}

// A sleeve stays where it is, on whichever part of its branch that is, and the wires of its
// splice lie where they run. Stations by hand: S1 is at J2, so 30 mm toward R1 is 70 mm from J1.
func TestSplitKeepsSleeves(t *testing.T) {
	for _, c := range []struct {
		name       string
		at         unit.Millimetre
		where      string
		offset     unit.Millimetre
		way        string // of 202, from the splice to INJ1
		r1, second string
	}{
		{"nearer to its breakout", 60, "J2 toward R2", 30, "L1", "101,102,201", "101,102,201"},
		{"beyond the cut", 80, "J3 toward R1", 10, "R2 L1", "101,102,201", "101,102,202,203"},
		{"at the cut", 70, "J3 toward R1", 0, "R2 L1", "101,102,201", "101,102,202,203"},
	} {
		t.Run(c.name, func(t *testing.T) {
			h := loom()
			before := text(h)
			n, _, err := edit.Split(h, "R1", c.at)
			kept(t, h, before, n)
			s := n.Splices[0]
			if got := s.At + " toward " + s.Toward.V; err != nil || got != c.where || s.OffsetMM.V != c.offset {
				t.Errorf("%v: lies at %s, %v mm", err, got, s.OffsetMM.V)
			}
			if got := way(n, "202"); got != c.way {
				t.Errorf("202 runs by %s", got)
			}
			if got := layers(branch(t, n, "R1")); got != c.r1 {
				t.Errorf("R1 holds %s", got)
			}
			if got := layers(branch(t, n, "R2")); got != c.second {
				t.Errorf("R2 holds %s", got)
			}
		})
	}
	h := loom()
	h.Splices[0] = model.Splice{ID: "S1", At: "J1", Toward: model.Some("R1"), OffsetMM: model.Some[unit.Millimetre](60)}
	n, _, _ := edit.Split(h, "R1", 25)
	if s := n.Splices[0]; s.At != "J3" || s.Toward.V != "R2" || s.OffsetMM.V != 35 {
		t.Errorf("from the other end: %+v", s)
	}
	n, _, _ = edit.Split(h, "R1", 75)
	if s := n.Splices[0]; s.At != "J1" || s.Toward.V != "R1" || s.OffsetMM.V != 60 {
		t.Errorf("before the cut: %+v", s)
	}
}

// A cover is cut where its branch is; where it was told to stop it still does.
func TestSplitCutsCovers(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	h := loom()
	h.Branches[0].Covers = []model.Cover{{What: model.CoverTape}, {What: model.CoverSheath, FromMM: mm(0), ToMM: mm(450)},
		{What: model.CoverSleeve, FromMM: mm(10), ToMM: mm(90)}, {What: model.CoverBraid, FromMM: mm(200), ToMM: mm(300)}}
	n, _, _ := edit.Split(h, "T1", 100)
	first := []model.Cover{{What: model.CoverTape}, {What: model.CoverSheath, FromMM: mm(0)},
		{What: model.CoverSleeve, FromMM: mm(10), ToMM: mm(90)}}
	second := []model.Cover{{What: model.CoverTape}, {What: model.CoverSheath, ToMM: mm(350)},
		{What: model.CoverBraid, FromMM: mm(100), ToMM: mm(200)}}
	if got := branch(t, n, "T1").Covers; !slices.Equal(got, first) {
		t.Errorf("first %+v", got)
	}
	if got := branch(t, n, "R2").Covers; !slices.Equal(got, second) {
		t.Errorf("second %+v", got)
	}
}

// What was split is whole again when it is joined.
func TestJoinMakesASplitWhole(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	h := loom()
	h.Branches[0].Covers = []model.Cover{{What: model.CoverTape}, {What: model.CoverSheath, FromMM: mm(0), ToMM: mm(450)},
		{What: model.CoverSleeve, FromMM: mm(10), ToMM: mm(90)}, {What: model.CoverBraid, FromMM: mm(200), ToMM: mm(300)}}
	before := text(h)
	for _, at := range []unit.Millimetre{0.01, 50, 100, 250, 449.9} {
		n, j, _ := edit.Split(h, "T1", at)
		again, says, err := edit.Join(n, j)
		if err != nil || len(says) > 0 {
			t.Errorf("%v: %v %v", at, says, err)
		}
		kept(t, h, before, again)
		if text(again) != before {
			t.Errorf("at %v: %s", at, text(again))
		}
		turned, _ := edit.TurnRound(n, "R2") // joined to a part that runs the other way
		again, says, err = edit.Join(turned, j)
		if err != nil || len(says) > 0 || text(again) != before {
			t.Errorf("turned, at %v: %v %v\n%s", at, says, err, text(again))
		}
	}
}

// All that two branches say otherwise is said when they are joined, and the harder holds.
func TestJoinSaysWhatDiffers(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	h := loom()
	h, _, _ = edit.Remove(h, edit.Termination, "SEN")
	h, _, _ = edit.Remove(h, edit.Wire, "401")
	a, b := branch(t, h, "T1"), branch(t, h, "R1")
	a.Environment, b.Environment = []model.Surrounding{model.Oil}, []model.Surrounding{model.Oil, model.Heat}
	a.AmbientC, b.AmbientC = model.Some[unit.Celsius](60), model.Some[unit.Celsius](95)
	a.Supported = model.Some(true)
	a.ToleranceMM, b.ToleranceMM = []unit.Millimetre{0, 10}, []unit.Millimetre{2, 5}
	a.BendMM, b.BendMM, b.BendDeg = mm(40), mm(30), model.Some[unit.Degree](90)
	b.Name = model.Some("Rail")
	a.Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some("x")}}
	before := text(h)
	n, says, err := edit.Join(h, "J1")
	kept(t, h, before, n)
	if err != nil {
		t.Fatal(err)
	}
	one := branch(t, n, "T1")
	if one.From != "P1" || one.To != "J2" || one.LengthMM != 550 || way(n, "101") != "T1 L1" || len(edit.IDs(n, edit.Breakout)) != 1 {
		t.Errorf("%+v", one)
	}
	if s := n.Splices[0]; s.Toward.V != "T1" || s.OffsetMM.V != 30 {
		t.Errorf("the sleeve: %+v", s)
	}
	if !slices.Equal(one.Environment, []model.Surrounding{model.Oil, model.Heat}) || one.AmbientC.V != 95 || one.Supported.V ||
		!slices.Equal(one.ToleranceMM, []unit.Millimetre{2, 15}) || one.BendMM.V != 30 || one.BendDeg.V != 90 {
		t.Errorf("%+v", one)
	}
	if want := []model.Cover{{What: model.CoverSheath, Part: model.Some("x"), ToMM: mm(450)}}; !slices.Equal(one.Covers, want) {
		t.Errorf("%+v", one.Covers)
	}
	for _, want := range []string{"R1 had no cover in the file", "heat is all along it now", "the whole lies in 95 C",
		"only one of them is supported", "the tighter of the two is kept", "T1 and R1 are laid otherwise: the lay-up of T1 is kept",
		`the name "Rail" is left out`} {
		if !slices.ContainsFunc(says, func(s string) bool { return strings.Contains(s, want) }) {
			t.Errorf("not said: %s", want)
		}
	}
	if len(says) != 7 {
		t.Errorf("%d things said: %s", len(says), strings.Join(says, "\n"))
	}
}

func TestJoinRefuses(t *testing.T) {
	h := loom()
	for j, want := range map[string]string{
		"J1": "wire 401 is capped at J1: cap it somewhere else first",
		"J2": "splice S1 is at J2: move it to another breakout first",
		"Q":  `no breakout has the id "Q". There are J1, J2`,
	} {
		if n, _, err := edit.Join(h, j); err == nil || err.Error() != want || n != h {
			t.Errorf("%s: %v", j, err)
		}
	}
	h, _, _ = edit.Remove(h, edit.Wire, "401")
	if _, _, err := edit.Join(h, "J1"); err == nil || err.Error() != "T1, R1, L3 meet at J1: only two that meet alone can be joined" {
		t.Error(err)
	}
	h, _, _ = edit.Remove(h, edit.Termination, "SEN")
	branch(t, h, "R1").Layers[0].Locked = model.Some(true)
	if _, _, err := edit.Join(h, "J1"); err == nil ||
		err.Error() != "the centre of R1 is locked or pinned, and T1 is laid otherwise: unlock it first" {
		t.Error(err)
	}
}

// Every field of a branch was thought of when branches are split, joined and turned: whoever
// adds one adds it here, after looking at those three.
func TestBranchHasNoFieldUnthought(t *testing.T) {
	known := strings.Fields("ID Name From To LengthMM ToleranceMM BendMM BendDeg LeavesDeg Environment Supported AmbientC Make Outer " +
		"LeaversOut UnitsIn DataApart Vias Layers Covers AsBuilt Asides")
	for f := range reflect.TypeFor[model.Branch]().Fields() {
		if !slices.Contains(known, f.Name) {
			t.Errorf("Branch.%s: see Split, Join and TurnRound, then name it here", f.Name)
		}
	}
}
