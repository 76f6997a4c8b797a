package lists

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Splices, by hand: two of one part, with three samples to pull, and one without a part with its own three. Of three shielded units the
// ends that are not cut take a solder sleeve by the diameter of the unit: 1.7 mm size 1, 2.8 mm size 3; no sleeve holds 7.1 mm.
func TestBillOfJoints(t *testing.T) {
	some := model.Some[string]
	h := &model.Harness{Splices: []model.Splice{{ID: "S1"}, {ID: "S2"}, {ID: "S3"}}, Units: []model.Unit{
		{ID: "U", Shield: model.Some(true), DrainFrom: some("shell"), DrainTo: some("P:1")},
		{ID: "V", Shield: model.Some(true), DrainFrom: some("cut"), DrainTo: some("P:2")},
		{ID: "W", Shield: model.Some(true), DrainFrom: some("shell")}, {ID: "X", DrainFrom: some("shell")}}}
	s := &sheet.Sheet{H: h, Splices: []sheet.Splice{{Part: "M"}, {}, {Part: "M"}}}
	for _, d := range []unit.Millimetre{1.7, 2.8, 7.1, 2} {
		s.Units = append(s.Units, sheet.Unit{Dia: sheet.Dia{Nominal: d}})
	}
	got := billJoints(s)
	want := `splice of S2 1/4 "" "no part is chosen for it"
splice M 2/5 "and samples to pull" ""
solder sleeve size 1 2/2 "with its lead" ""
solder sleeve size 3 1/1 "with its lead" ""`
	if rowsSay(got) != want {
		t.Errorf("%s\nwant\n%s", rowsSay(got), want)
	}
	for _, r := range got {
		if sleeve := r.Group == "solder sleeve"; (r.Standing == catalogue.Memory) != sleeve {
			t.Errorf("%+v", r)
		}
	}
}

// A branch weighs its sheath and its covers, and counts those whose mass is not known: 5 + 2 g and one without; a sheath of 3 g alone;
// nothing at all.
func TestMassesOfCovers(t *testing.T) {
	s := &sheet.Sheet{Branches: []sheet.Branch{
		{Gram: model.Some[unit.Gram](10), Sheath: sheet.Sheath{Part: "A", Gram: 5}, Covers: []sheet.Covered{{Gram: 2}, {}}},
		{Gram: model.Some[unit.Gram](20), Sheath: sheet.Sheath{Part: "A", Gram: 3}},
		{Gram: model.Some[unit.Gram](30), Sheath: sheet.Sheath{Gram: 3}}, {Sheath: sheet.Sheath{Part: "B"}}}}
	var got []string
	for _, r := range Masses(s) {
		got = append(got, fmt.Sprint(r.Branch, r.Covers.V, r.Covers.Set, r.Without, r.Whole().V, r.Whole().Set))
	}
	want := "0 7 false 1 17 false; 1 3 true 0 23 true; 2 0 true 0 30 true; 3 0 false 1 0 false"
	if strings.Join(got, "; ") != want {
		t.Errorf("%s, want %s", strings.Join(got, "; "), want)
	}
}

// Tape by hand: of a branch of 1,000 mm with tape 0.1 by 10 mm, whose centre is built up from 3 to 4 mm (π/4·(16 − 9)·1000 = 5,498 mm)
// and whose layer 1 is bound by 0.2 to 8 mm (π/4·(64 − 60.84)·1000 = 2,482 mm); and the binder of a centre that is not built up.
func TestBillOfBinders(t *testing.T) {
	bind := func(v unit.Millimetre) model.Layer { return model.Layer{BindMM: model.Some(v)} }
	s := &sheet.Sheet{H: &model.Harness{Branches: []model.Branch{{ID: "T", LengthMM: 1000}, {ID: "L", LengthMM: 1000}}},
		Branches: []sheet.Branch{{Layers: []sheet.Layer{{OverMM: 4, BuiltMM: 1}, {OverMM: 8}, {OverMM: 9}},
			As: []model.Layer{bind(1), bind(0.2), {}}}, {Layers: []sheet.Layer{{OverMM: 4}}, As: []model.Layer{bind(0.2)}}}}
	s.Limits.TapeMM, s.Limits.TapeWideMM = 0.1, 10
	s.H.Rules.TapeMM, s.H.Rules.TapeWideMM = model.Some[unit.Millimetre](0.1), model.Some[unit.Millimetre](10)
	rows := billTape(s)
	if len(rows) != 1 {
		t.Fatalf("%+v", rows)
	}
	r := rows[0]
	// 5,498 + 2,482 + π/4·(16 − 14.44)·1000 = 1,225: 9,205 mm, up to the next tenth of a metre
	if r.Part != "as stocked" || r.Need != 9.3 || r.Standing != "" || r.Says != "0.10 mm thick, 10.0 mm wide, edge to edge: "+
		"centre of T 3.0 to 4.0 mm; binder of T layer 1; binder of L" {
		t.Errorf("%+v", r)
	}
}

// What a net is for: power before ground before signals and data before spares; a drain alone is a shield, anything else is not known.
func TestGroupOfANet(t *testing.T) {
	roles := []model.Role{model.RolePower, model.RoleGround, model.RoleSignal, model.RoleData, model.RoleSpare, ""}
	s := &sheet.Sheet{H: &model.Harness{}}
	for _, r := range roles {
		s.H.Wires = append(s.H.Wires, model.Wire{Role: model.Opt[model.Role]{V: r, Set: r != ""}})
	}
	for _, c := range []struct {
		wires []int
		want  Group
	}{{[]int{4, 3, 1, 0}, GroupPower}, {[]int{4, 2, 1}, GroupGround}, {[]int{4, 2}, GroupSignal}, {[]int{5, 3}, GroupSignal}, {[]int{4, 5},
		GroupSpare},
		{[]int{5}, GroupUnknown}, {nil, GroupShield}} {
		if got := groupOf(s, Net{Wires: c.wires}); got != c.want {
			t.Errorf("%v: %v, want %v", c.wires, got, c.want)
		}
	}
}

// The shells that shields end on: each once, with its shields. A unit without wires, one whose wire is nowhere, and a shield that ends at
// a splice add nothing.
func TestShellsOfShields(t *testing.T) {
	some := model.Some[string]
	shielded := func(id string, from, to string, wires ...string) model.Unit {
		return model.Unit{ID: id, Wires: wires, Shield: model.Some(true), DrainFrom: some(from), DrainTo: some(to)}
	}
	h := &model.Harness{Terminations: []model.Termination{{ID: "P"}, {ID: "Q"}}, Splices: []model.Splice{{ID: "S"}},
		Wires: []model.Wire{{ID: "a", From: some("P:1"), To: some("Q:1")}, {ID: "b", From: some("Q:2"), To: some("S")},
			{ID: "c", From: some("S"), To: some("P:3")}},
		Units: []model.Unit{shielded("U", "shell", "shell", "a"), shielded("V", "shell", "shell", "b"), shielded("W", "shell", "cut"),
			shielded("X", "shell", "cut", "nowhere"), shielded("Y", "cut", "shell", "a"), shielded("R", "shell", "shell", "c"), {ID: "Z",
				Wires:     []string{"a"},
				DrainFrom: some("shell")}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	var got []string
	for _, n := range shells(s) {
		got = append(got, n.From+":")
		for _, to := range n.To {
			got = append(got, to.End)
		}
		if n.Group != GroupShield {
			t.Errorf("%+v", n)
		}
	}
	if want := "shell of P: shield of U shield of R shell of Q: shield of U shield of V shield of Y"; strings.Join(got, " ") != want {
		t.Errorf("%s, want %s", strings.Join(got, " "), want)
	}
}

// The braid of a unit: its way through the branches with its loops, less both strips. By hand: a wire of 1,080 mm with loops of 20 and
// 10, of which 1,050 lie in the branch, 5 % longer than the unit there: 1,000 + 30 − 2·25 = 980 mm. Nothing is said of a unit without
// wires,
// of a wire that is not there, is not measured, or whose take-up is not known; and none is shorter than nothing.
func TestLengthOfAShield(t *testing.T) {
	some := model.Some[string]
	loop := func(v unit.Millimetre) model.Opt[unit.Millimetre] { return model.Some(v) }
	h := &model.Harness{Terminations: []model.Termination{{ID: "P", LoopMM: loop(20)}, {ID: "Q", LoopMM: loop(10)}},
		Wires: []model.Wire{{ID: "a", From: some("P:1"), To: some("Q:1")}, {ID: "b", From: some("P:2"), To: some("Q:2")}},
		Units: []model.Unit{{ID: "U", Wires: []string{"a"}, StripMM: loop(25)}, {ID: "V"}, {ID: "W", Wires: []string{"nowhere"}},
			{ID: "X", Wires: []string{"b"}}, {ID: "Y", Wires: []string{"a"}}, {ID: "Z", Wires: []string{"a"}, StripMM: loop(600)}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: []sheet.Wire{{Finished: 1080}, {}}, Units: []sheet.Unit{{Loss: 1.05},
		{Loss: 1},
		{Loss: 1}, {Loss: 1}, {Loss: 0.99}, {Loss: 1.05}}}
	for i, want := range []unit.Millimetre{980, -1, -1, -1, -1, 0} {
		got, ok := shieldMM(s, i)
		if ok != (want >= 0) || ok && (got < want-1e-9 || got > want+1e-9) || !ok && got != 0 {
			t.Errorf("%s: %v %v, want %v", h.Units[i].ID, got, ok, want)
		}
	}
}
