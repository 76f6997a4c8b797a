package sheath_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/sheath"
)

// covered is a bench on the first branch with these covers.
func covered(t *testing.T, covers ...model.Cover) *desk.Model {
	t.Helper()
	m := benchtest.Open(t, "demo.toml")
	m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Covers = covers }), "covers")
	return m
}

// What goes under the sheath goes over what is there where there is no sheath, and a
// second sheath is offered where there is a first.
func TestAddACover(t *testing.T) {
	m := covered(t, model.Cover{What: model.CoverTape})
	sheath.AddCover(m, m.Branch, model.CoverBraid)
	if all := m.H.Branches[m.Branch].Covers; len(all) != 2 || all[0].What != model.CoverTape || all[1].What != model.CoverBraid {
		t.Errorf("a braid was added to a tape: %+v", all)
	}
	m.Show(sheath.AddCoverKind, m.H.Branches[m.Branch].ID)
	if slices.ContainsFunc(m.Page(m.ListWidth()).Rows,
		func(r desk.Row) bool { return strings.Contains(r.Line(), "second sheath") }) {
		t.Error("a second sheath is offered and there is no first")
	}
	m = covered(t, model.Cover{What: model.CoverSheath})
	sheath.AddCover(m, m.Branch, model.CoverTape)
	if all := m.H.Branches[m.Branch].Covers; len(all) != 2 || all[0].What != model.CoverTape || all[1].What != model.CoverSheath {
		t.Errorf("a tape was added under a sheath: %+v", all)
	}
}

// The page of a cover is that of one cover: once it is undone, or another comes under it,
// the page is closed and takes nothing off.
func TestCoverPageGoesStale(t *testing.T) {
	m := covered(t, model.Cover{What: model.CoverTape}, model.Cover{What: model.CoverSheath})
	sheath.AddCover(m, m.Branch, model.CoverTape)
	if p := m.Page(m.ListWidth()); len(p.Rows) == 0 {
		t.Fatal("its page is not open")
	}
	benchtest.Press(m, "backspace")
	if p := m.Page(m.ListWidth()); m.Top() == "cover" && len(p.Rows) > 0 {
		t.Errorf("the added tape is undone and its page shows %q", p.Rows[0].Line())
	}
	if n := len(m.H.Branches[m.Branch].Covers); n != 2 {
		t.Errorf("%d covers", n)
	}
}

// Stations stay in order and inside the branch, and stop there rather than refuse; a
// thickness is written as it is read.
func TestStationsAndThickness(t *testing.T) {
	m := covered(t, model.Cover{What: model.CoverSheath},
		model.Cover{What: model.CoverSleeve, FromMM: model.Some[unit.Millimetre](3), ToMM: model.Some[unit.Millimetre](9),
			ThickMM: model.Some[unit.Millimetre](0.35)})
	i := m.Branch
	m.Step = sheath.Step
	row := func(key string) desk.Row {
		p := m.Page(m.ListWidth())
		return p.Rows[slices.IndexFunc(p.Rows, func(r desk.Row) bool { return r.Key == key })]
	}
	row("cover 1").Enter(m)
	row("start").Step(m, -1)
	if v := m.H.Branches[i].Covers[1].FromMM.V; v != 0 {
		t.Errorf("start %v", v)
	}
	row("start").Step(m, 3)
	if v := m.H.Branches[i].Covers[1].FromMM.V; v != 8 {
		t.Errorf("start %v, the stop is 9", v)
	}
	if err := row("stop").Field.Set(m, "4"); err == nil {
		t.Error("a stop before the start was taken")
	}
	for range 4 {
		row("thick").Step(m, 1)
	}
	if v := m.H.Branches[i].Covers[1].ThickMM.V; v != 0.55 {
		t.Errorf("thickness %v", v)
	}
	for range 5 {
		sheath.StepWall(m, "AS23053/16 12.7", 1)
	}
	if v := m.H.Parts[0].WallMM.V; v != unit.Millimetre(unit.RoundHalfUp(float64(v), 0.01)) {
		t.Errorf("wall %v", v)
	}
}

// A size of a boot that is taken back is tested like one that is put in: what is left must
// still shrink.
func TestBootSizesTakenBack(t *testing.T) {
	m := benchtest.Open(t, "demo.toml")
	m.Show(sheath.BootKind, "boot-straight-18")
	field := func(key string) *desk.Field {
		p := m.Page(m.ListWidth())
		return p.Rows[slices.IndexFunc(p.Rows, func(r desk.Row) bool { return r.Key == key })].Field
	}
	if err := field("cable least").Set(m, "40"); err == nil {
		t.Fatal("a bore recovered of 40 was taken, supplied is 31")
	}
	for key, v := range map[string]string{"cable most": "60"} {
		if err := field(key).Set(m, v); err != nil {
			t.Fatal(err)
		}
	}
	if err := field("cable least").Set(m, "40"); err != nil {
		t.Fatal(err)
	}
	if err := field("cable most").Set(m, ""); err == nil {
		t.Errorf("supplied is back to 31 with a bore recovered of 40: %+v", m.H.Parts)
	}
}
