package tree_test

import (
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/tree"
)

// row is the row in hand.
func row(m *desk.Model) desk.Row {
	p := m.Page(m.ListWidth())
	return p.Rows[m.At(p)]
}

// undone fails where one Backspace does not bring back what was.
func undone(t *testing.T, m *desk.Model, was *model.Harness) {
	t.Helper()
	benchtest.Press(m, "backspace")
	if !m.H.Same(was) {
		t.Errorf("one Backspace does not bring it back: %s", m.Says)
	}
}

// Lengths are typed one after the other: the cursor goes to the next branch by itself, over the
// rows of breakouts.
func TestLengthsOneAfterTheOther(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "branches")
	benchtest.GoTo(t, m, "@L1 to INJ1", "2", "1", "0", "enter", "2", "3", "0", "enter", "2", "5", "0", "enter", "2", "7", "0", "enter",
		"9", "5", "enter", "8", "1", "enter")
	for id, want := range map[string]float64{"L1": 210, "L2": 230, "L3": 250, "L4": 270, "R2": 95, "L5": 81} {
		if got := m.H.Branches[m.Sheet.Index.Branch[id]].LengthMM; float64(got) != want {
			t.Errorf("%s is %v long", id, got)
		}
	}
	if row(m).Key != "branch R3" {
		t.Errorf("the cursor is on %s", row(m).Key)
	}
	benchtest.Press(m, "0", "enter", "esc") // what is refused leaves the cursor where it is
	if row(m).Key != "branch R3" {
		t.Errorf("the cursor is on %s", row(m).Key)
	}
}

// A row of the map is removed by ".": the answer names the wires that lost an end, and one
// Backspace brings all back.
func TestRemoveOnTheMap(t *testing.T) {
	shorttest.Turn(t)
	for _, c := range []struct{ on, says, key string }{
		{"L5 to INJ2", "L5 removed; wires 102, 112 have lost an end at INJ2; INJ2 went with it", "branch R3"},
		{"J3  Injector rail, second", "3 branches meet at J3: remove or move all but two of them first", ""},
		{"P1 key", "P1 removed; wires", ""},
	} {
		m := benchtest.OpenAt(t, "demo.toml", "branches")
		was := m.H
		benchtest.GoTo(t, m, "@"+c.on, ".")
		if !strings.HasPrefix(m.Says, c.says) {
			t.Errorf("%s: %s", c.on, m.Says)
		}
		if m.Trouble != (m.H == was) {
			t.Errorf("%s: refused %v, changed %v", c.on, m.Trouble, m.H != was)
		}
		if benchtest.View(m); m.H != was {
			undone(t, m, was)
		}
	}
}

// A locked layer that would lose a wire keeps it; a branch with a locked layer goes as a whole,
// and one before it goes without a word about it.
func TestRemoveKeepsWhatIsLocked(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "branches")
	lock := func(id string) {
		k := m.Sheet.Index.Branch[id]
		of := m.Sheet.Branches[k].Components
		m.Change(m.H.EditBranch(k, func(b *model.Branch) { b.Layers = []model.Layer{{Of: of, Locked: model.Some(true)}} }), "")
	}
	lock("L22")
	was := m.H
	benchtest.GoTo(t, m, "@L5 to INJ2", ".")
	if m.Trouble || m.H == was {
		t.Errorf("a branch before the locked one stays: %s", m.Says)
	}
	was = m.H
	benchtest.GoTo(t, m, "@L22 to", ".")
	if m.Trouble || m.H == was {
		t.Errorf("the locked branch stays: %s", m.Says)
	}
}

// Everything on the page of a branch and on that of a place is done by Enter, and undone by one
// Backspace.
func TestChangePages(t *testing.T) {
	shorttest.Turn(t)
	for _, c := range []struct {
		name string
		keys []string
		want func(h *model.Harness) bool
		says string
	}{
		{"hang elsewhere", []string{"@L1 to INJ1", "-", "@from", "enter", "@J3  ", "enter"},
			func(h *model.Harness) bool { return h.Branches[branchAt(h, "L1")].From == "J3" }, "L1 hangs on J3 now"},
		{"a name of the trade", []string{"@L1 to INJ1", "-", "@name", "enter", "@Spur", "enter"},
			func(h *model.Harness) bool { return h.Branches[branchAt(h, "L1")].Name.V == "Spur" }, "L1 is called Spur"},
		{"no name", []string{"@L1 to INJ1", "-", "@name", "."},
			func(h *model.Harness) bool { return !h.Branches[branchAt(h, "L1")].Name.Set }, "L1 has no name now"},
		{"a name that is typed", []string{"@L1 to INJ1", "-", "@name", "enter", "@another", "enter", "end",
			"x", "enter"}, func(h *model.Harness) bool { return strings.HasSuffix(h.Branches[branchAt(h, "L1")].Name.V, "x") },
			"L1 is called"},
		{"another id", []string{"@L1 to INJ1", "-", "@rename", "enter", "@LEG1", "enter"},
			func(h *model.Harness) bool { return branchAt(h, "LEG1") >= 0 && branchAt(h, "L1") < 0 }, "L1 is LEG1 now, everywhere"},
		{"a leg on a station", []string{"@T1 to J1", "-", "@hang a leg", "2", "0", "0", "enter"},
			func(h *model.Harness) bool {
				return h.Branches[branchAt(h, "T1")].LengthMM == 200 && branchAt(h, "L23") > 0
			},
			"leg L23 to X1 hangs"},
		{"turned", []string{"@T1 to J1", "-", "@turn round", "enter"},
			func(h *model.Harness) bool { return h.Branches[branchAt(h, "T1")].From == "J1" }, "T1 runs from J1 to P1 now"},
		{"removed on its page", []string{"@L1 to INJ1", "-", "@remove", "enter"},
			func(h *model.Harness) bool { return branchAt(h, "L1") < 0 }, "L1 removed; wires"},
		{"a breakout taped", []string{"@J2  Injector rail, first", "enter", "@closed", "+"},
			func(h *model.Harness) bool { return h.Breakouts[1].Build.V == model.ClosureTaped }, "J2 is taped"},
		{"its zone", []string{"@J2  Injector rail, first", "-", "@sorted zone", "3", "0", "enter"},
			func(h *model.Harness) bool { return h.Breakouts[1].ZoneMM.V == 30 }, "J2 is sorted over 30 mm"},
		{"its id", []string{"@J2  Injector rail, first", "-", "@rename", "enter", "@BR1", "enter"},
			func(h *model.Harness) bool { return h.Breakouts[1].ID == "BR1" }, "J2 is BR1 now, everywhere"},
		{"a breakout of a termination", []string{"@terminations", "enter", "@INJ1", "enter", "@make it", "enter"},
			func(h *model.Harness) bool { return h.Breakouts[len(h.Breakouts)-1].ID == "INJ1" }, "INJ1 is a breakout now"},
		{"the id of a termination", []string{"@terminations", "enter", "@INJ1", "enter", "@rename", "enter", "@COIL5", "enter"},
			func(h *model.Harness) bool { return h.Branches[branchAt(h, "L1")].To == "COIL5" }, "INJ1 is COIL5 now, everywhere"},
		{"the id of a splice", []string{"@splices", "enter", "@S1", "enter", "@rename", "enter", "@SP", "enter"},
			func(h *model.Harness) bool { return strings.HasPrefix(h.Splices[0].ID, "SP") }, "S1 is SP"},
		{"a splice removed", []string{"@splices", "enter", "@S1", "enter", "@remove", "enter"},
			func(h *model.Harness) bool { return h.Splices[0].ID == "S2" },
			"S1 removed; wires 110, 111, 112, 113, 114 have lost an end at S1"},
		{"a splice removed on the list", []string{"@splices", "enter", "@S1", "."},
			func(h *model.Harness) bool { return h.Splices[0].ID == "S2" }, "S1 removed; wires"},
		{"a termination removed on the list", []string{"@terminations", "enter", "@INJ1", "."},
			func(h *model.Harness) bool { return branchAt(h, "L1") < 0 }, "INJ1 removed; wires"},
		{"a termination removed", []string{"@terminations", "enter", "@INJ1", "enter", "@remove", "."},
			func(h *model.Harness) bool { return branchAt(h, "L1") < 0 }, "INJ1 removed; wires"},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := benchtest.OpenAt(t, "demo.toml", "branches")
			was := m.H
			benchtest.GoTo(t, m, c.keys...)
			if m.Trouble || !c.want(m.H) || !strings.HasPrefix(m.Says, c.says) {
				t.Errorf("%v %s\n%s", m.Trouble, m.Says, benchtest.View(m))
			}
			if v := benchtest.View(m); strings.Contains(v, "is gone") {
				t.Errorf("a page of what is gone stays open:\n%s", v)
			}
			undone(t, m, was)
			if v := benchtest.View(m); strings.Contains(v, "is gone") {
				t.Errorf("undone, a page of what is gone stays open:\n%s", v)
			}
		})
	}
}

func branchAt(h *model.Harness, id string) int {
	for k := range h.Branches {
		if h.Branches[k].ID == id {
			return k
		}
	}
	return -1
}

// What was split is joined again by one key, and a locked lay-up may be renamed.
func TestJoinAndRenameByKeys(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "branches")
	benchtest.GoTo(t, m, "@T1 to J1", "-", "@split", "enter", "enter", "@T1 to", "-", "@join", "enter")
	if m.Trouble || m.H.Branches[0].LengthMM != 560 || m.H.Branches[0].To != "J1" || m.Top() != tree.BranchesKind {
		t.Errorf("%v %s", m.H.Branches[0], m.Says)
	}
	k := m.Sheet.Index.Branch["L1"]
	m.Change(m.H.EditBranch(k, func(b *model.Branch) {
		b.Layers = []model.Layer{{Of: []string{"101", "111"}, Locked: model.Some(true)}}
	}),
		"")
	h, _, err := edit.Rename(m.H, edit.Wire, "101", "901")
	if err != nil {
		t.Fatal(err)
	}
	desk.Renamed(m, h, "renamed")
	if m.Trouble || m.H.Branches[k].Layers[0].Of[0] != "901" {
		t.Errorf("%+v %s", m.H.Branches[k].Layers, m.Says)
	}
}

// A part of a branch on which none of its covers lies gets one proposed, which is said.
func TestSplitSaysWhatIsUncovered(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "branches")
	for _, to := range []unit.Millimetre{100, 500} {
		h := m.H.EditBranch(0, func(b *model.Branch) { b.Covers = []model.Cover{{What: model.CoverTape, ToMM: model.Some(to)}} })
		m.Change(h, "")
		benchtest.GoTo(t, m, "@T1 to J1", "-", "@split", "enter", "2", "0", "0", "enter")
		if got := strings.Contains(m.Says, "No cover lies on R7: a sheath is proposed there"); m.Trouble || got != (to == 100) {
			t.Errorf("a tape up to %v: %s", to, m.Says)
		}
		benchtest.Press(m, "backspace")
	}
}

// A place where no branch leads has a row of its own: it is not lost from the map.
func TestBarePlacesAreOnTheMap(t *testing.T) {
	m := benchtest.OpenAt(t, "demo.toml", "branches")
	h := *m.H
	h.Terminations = append(h.Terminations[:len(h.Terminations):len(h.Terminations)], model.Termination{ID: "NEW"})
	m.Change(&h, "")
	benchtest.GoTo(t, m, "@NEW  no branch leads here", "-")
	if m.Subject() != "NEW" || m.Top() != tree.PlaceKind {
		t.Errorf("%s %s", m.Top(), m.Subject())
	}
	benchtest.Press(m, "backspace")
	if m.Top() != tree.BranchesKind {
		t.Errorf("the page of what undo took away stays: %s", benchtest.View(m))
	}
}
