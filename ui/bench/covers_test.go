package bench

import (
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/unit"
)

// covered is a bench on the first branch with these covers.
func covered(t *testing.T, covers ...model.Cover) *Model {
	t.Helper()
	m := open(t, "demo.toml")
	m.change(m.h.EditBranch(m.branch, func(b *model.Branch) { b.Covers = covers }), "covers")
	return m
}

// What goes under the sheath goes over what is there where there is no sheath, and a
// second sheath is offered where there is a first.
func TestAddACover(t *testing.T) {
	m := covered(t, model.Cover{What: "tape"})
	m.addCover(m.branch, "braid", true)
	if all := m.h.Branches[m.branch].Covers; len(all) != 2 || all[0].What != "tape" || all[1].What != "braid" {
		t.Errorf("a braid was added to a tape: %+v", all)
	}
	m.open(addCoverScreen(m.h.Branches[m.branch].ID))
	if slices.ContainsFunc(m.page(m.listWidth()).rows, func(r row) bool { return strings.Contains(r.line(), "second sheath") }) {
		t.Error("a second sheath is offered and there is no first")
	}
	m = covered(t, model.Cover{What: "sheath"})
	m.addCover(m.branch, "tape", true)
	if all := m.h.Branches[m.branch].Covers; len(all) != 2 || all[0].What != "tape" || all[1].What != "sheath" {
		t.Errorf("a tape was added under a sheath: %+v", all)
	}
}

// The page of a cover is that of one cover: once it is undone, or another comes under it,
// the page is closed and takes nothing off.
func TestCoverPageGoesStale(t *testing.T) {
	m := covered(t, model.Cover{What: "tape"}, model.Cover{What: "sheath"})
	m.addCover(m.branch, "tape", true)
	if p := m.page(m.listWidth()); len(p.rows) == 0 {
		t.Fatal("its page is not open")
	}
	press(m, "backspace")
	if p := m.page(m.listWidth()); m.top() == "cover" && len(p.rows) > 0 {
		t.Errorf("the added tape is undone and its page shows %q", p.rows[0].line())
	}
	if n := len(m.h.Branches[m.branch].Covers); n != 2 {
		t.Errorf("%d covers", n)
	}
}

// Stations stay in order and inside the branch, and stop there rather than refuse; a
// thickness is written as it is read.
func TestStationsAndThickness(t *testing.T) {
	m := covered(t, model.Cover{What: "sheath"}, model.Cover{What: "sleeve", FromMM: model.Some[unit.Millimetre](3), ToMM: model.Some[unit.Millimetre](9), ThickMM: model.Some[unit.Millimetre](0.35)})
	i := m.branch
	m.open(coverScreen(&m.h.Branches[i], 1))
	row := func(key string) row {
		p := m.page(m.listWidth())
		return p.rows[slices.IndexFunc(p.rows, func(r row) bool { return r.key == key })]
	}
	row("start").step(m, -1)
	if v := m.h.Branches[i].Covers[1].FromMM.V; v != 0 {
		t.Errorf("start %v", v)
	}
	row("start").step(m, 3)
	if v := m.h.Branches[i].Covers[1].FromMM.V; v != 8 {
		t.Errorf("start %v, the stop is 9", v)
	}
	if err := row("stop").field.set(m, "4"); err == nil {
		t.Error("a stop before the start was taken")
	}
	for range 4 {
		row("thick").step(m, 1)
	}
	if v := m.h.Branches[i].Covers[1].ThickMM.V; v != 0.55 {
		t.Errorf("thickness %v", v)
	}
	for range 5 {
		m.stepWall("AS23053/16 12.7", 1)
	}
	if v := m.h.Parts[0].WallMM.V; v != unit.Millimetre(unit.RoundHalfUp(float64(v), 0.01)) {
		t.Errorf("wall %v", v)
	}
}

// A size of a boot that is taken back is tested like one that is put in: what is left must
// still shrink.
func TestBootSizesTakenBack(t *testing.T) {
	m := open(t, "demo.toml")
	m.open(bootScreen("boot-straight-18"))
	field := func(key string) *field {
		p := m.page(m.listWidth())
		return p.rows[slices.IndexFunc(p.rows, func(r row) bool { return r.key == key })].field
	}
	if err := field("cable least").set(m, "40"); err == nil {
		t.Fatal("a bore recovered of 40 was taken, supplied is 31")
	}
	for key, v := range map[string]string{"cable most": "60"} {
		if err := field(key).set(m, v); err != nil {
			t.Fatal(err)
		}
	}
	if err := field("cable least").set(m, "40"); err != nil {
		t.Fatal(err)
	}
	if err := field("cable most").set(m, ""); err == nil {
		t.Errorf("supplied is back to 31 with a bore recovered of 40: %+v", m.h.Parts)
	}
}

// One more like a capped spare is capped where that is.
func TestOneMoreLikeACappedSpare(t *testing.T) {
	m := open(t, "demo.toml")
	k := slices.IndexFunc(m.h.Wires, func(w model.Wire) bool { return w.Role.V == "spare" && w.To.V != "" })
	id := m.h.Wires[k].ID
	if err := m.setEnd(id, false, capAt+"J1"); err != nil {
		t.Fatal(err)
	}
	if err := m.setEnd(id, false, capAt+"J1"); err != nil {
		t.Errorf("typed again as it stands: %v", err)
	}
	if err := m.setEnd(id, false, capAt+"nowhere"); err == nil {
		t.Error("capped at a place that is not there")
	}
	if err := m.setEnd(id, true, capAt+"J1"); err == nil {
		t.Error("capped at both ends")
	}
	n := len(m.h.Wires)
	m.addLike(id, 1)
	if len(m.h.Wires) != n+1 {
		t.Fatalf("none was added:\n%s", m.View())
	}
	if w := m.h.Wires[n]; w.CappedAt.V != "J1" || w.To.Set || w.From.V == "" || w.From.V == m.h.Wires[k].From.V {
		t.Errorf("%+v", w)
	}
}
