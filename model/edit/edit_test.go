package edit_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/file"
	"contralay/model/unit"
)

// loom is a harness with something of everything that an edit of the tree must keep right:
//
//	P1 ─ T1 ─ J1 ─ R1 ─ J2 ─ L1 ─ INJ1
//	          └ L3 ─ SEN  └ L2 ─ INJ2
func loom() *model.Harness {
	some := model.Some[string]
	wire := func(id, from, to string) model.Wire {
		return model.Wire{ID: id, From: some(from), To: some(to), Spec: "AS22759/32", Size: "22"}
	}
	h := &model.Harness{
		Terminations: []model.Termination{{ID: "P1", Name: some("Bulkhead")}, {ID: "INJ1"}, {ID: "INJ2"},
			{ID: "SEN", Cavities: []string{"1", "2", "3"}, Contacts: map[string][]string{"20": {"1", "2", "3"}},
				Aliases: map[string][]string{"2": {"+", "B"}}, Reserved: []string{"3"}}},
		Breakouts: []model.Breakout{{ID: "J1", Name: some("Rail")}, {ID: "J2"}},
		Splices:   []model.Splice{{ID: "S1", At: "J2", Toward: some("R1"), OffsetMM: model.Some[unit.Millimetre](30)}},
		Wires: []model.Wire{wire("101", "P1:A", "INJ1:1"), wire("102", "P1:B", "INJ2:1"), wire("201", "P1:C", "S1"),
			wire("202", "S1", "INJ1:2"), wire("203", "S1", "INJ2:2"), wire("301", "P1:D", "SEN:1"), wire("302", "P1:E", "SEN:2"),
			{ID: "401", From: some("P1:G"), Spec: "AS22759/32", Size: "22", CappedAt: some("J1")}},
		Feeds: []model.Feed{{ID: "F1", Wires: []string{"201"}}},
		Units: []model.Unit{{ID: "C1", Wires: []string{"301", "302"}, DrainFrom: some("P1:F"), DrainTo: some("cut")}},
		Branches: []model.Branch{
			{ID: "T1", From: "P1", To: "J1", LengthMM: 450,
				Layers: []model.Layer{{Of: []string{"C1"}}, {Of: []string{"101", "102", "201", "401"}}},
				Asides: []model.Aside{{Name: "flat", Layers: []model.Layer{{Of: []string{"101", "C1"}, Pinned: []string{"101"}}}}}},
			{ID: "R1", From: "J1", To: "J2", LengthMM: 100, Layers: []model.Layer{{Of: []string{"101", "102", "201"}}}},
			{ID: "L1", From: "J2", To: "INJ1", LengthMM: 210}, {ID: "L2", From: "J2", To: "INJ2", LengthMM: 230},
			{ID: "L3", From: "J1", To: "SEN", LengthMM: 140},
		},
		Listed: []model.Listed{{Ends: []string{"P1:A", "INJ1:1"}}},
	}
	h.Wires[5].Return = some("302")
	return h
}

func text(h *model.Harness) string { return string(file.Encode(file.Document{Harness: *h})) }

// kept fails where an edit changed the harness that it was made of, or made one that cannot be.
func kept(t *testing.T, h *model.Harness, before string, n *model.Harness) {
	t.Helper()
	if text(h) != before {
		t.Error("the harness before the edit changed")
	}
	if f := n.Check(); len(f) > 0 {
		t.Errorf("cannot be: %+v", f)
	}
}

func branch(t *testing.T, h *model.Harness, id string) *model.Branch {
	t.Helper()
	i := slices.IndexFunc(h.Branches, func(b model.Branch) bool { return b.ID == id })
	if i < 0 {
		t.Fatalf("no branch %s", id)
	}
	return &h.Branches[i]
}

func wire(t *testing.T, h *model.Harness, id string) *model.Wire {
	t.Helper()
	i := slices.IndexFunc(h.Wires, func(w model.Wire) bool { return w.ID == id })
	if i < 0 {
		t.Fatalf("no wire %s", id)
	}
	return &h.Wires[i]
}

// way is the branches that a wire runs by.
func way(h *model.Harness, id string) string {
	x := model.NewIndex(h)
	from, to, _ := x.Places(&h.Wires[x.Wire[id]])
	path, ok := x.Between(from, to)
	if !ok {
		return "none"
	}
	var out []string
	for _, b := range path {
		out = append(out, h.Branches[b].ID)
	}
	return strings.Join(out, " ")
}

func layers(b *model.Branch) string {
	var parts []string
	for _, l := range b.Layers {
		parts = append(parts, strings.Join(l.Of, ","))
	}
	return strings.Join(parts, " | ")
}

// What a removal takes along and what it leaves open, worked out by hand for each thing of the
// loom.
func TestRemove(t *testing.T) {
	for _, c := range []struct {
		noun edit.Noun
		id   string
		says string
		left map[edit.Noun]string // the ids that stay; what is not named stays whole
	}{
		{edit.Termination, "INJ2", "wires 102, 203 have lost an end at INJ2; L2 went with it",
			map[edit.Noun]string{edit.Branch: "T1 R1 L1 L3", edit.Termination: "P1 INJ1 SEN"}},
		{edit.Termination, "SEN", "wires 301, 302 have lost an end at SEN; L3 went with it",
			map[edit.Noun]string{edit.Branch: "T1 R1 L1 L2", edit.Termination: "P1 INJ1 INJ2"}},
		{edit.Breakout, "J1", "3 branches meet at J1: remove or move all but two of them first", nil},
		{edit.Splice, "S1", "wires 201, 202, 203 have lost an end at S1",
			map[edit.Noun]string{edit.Splice: ""}},
		{edit.Wire, "302", "wire 301 has lost its return 302; unit C1 has one wire left",
			map[edit.Noun]string{edit.Wire: "101 102 201 202 203 301 401"}},
		{edit.Wire, "201", "feed F1 has no wire left",
			map[edit.Noun]string{edit.Wire: "101 102 202 203 301 302 401"}},
		{edit.Unit, "C1", "", map[edit.Noun]string{edit.Unit: ""}},
		{edit.Feed, "F1", "", map[edit.Noun]string{edit.Feed: ""}},
		{edit.Branch, "R1", "wire 101 has lost an end at INJ1; wire 102 has lost an end at INJ2; wire 201 has lost an end at S1; " +
			"L1, L2, INJ1, INJ2, J2, S1 went with it; wires 202, 203 went with it",
			map[edit.Noun]string{edit.Branch: "T1 L3", edit.Termination: "P1 SEN", edit.Breakout: "J1", edit.Splice: "",
				edit.Wire: "101 102 201 301 302 401"}},
		{edit.Wire, "999", `no wire has the id "999". There are 101, 102, 201, 202, 203, 301, 302, 401`, nil},
	} {
		t.Run(c.id, func(t *testing.T) {
			h := loom()
			before := text(h)
			n, says, err := edit.Remove(h, c.noun, c.id)
			if err != nil {
				says = []string{err.Error()}
				if n != h {
					t.Error("an edit that cannot be made gave another harness")
				}
			}
			if got := strings.Join(says, "; "); got != c.says {
				t.Errorf("says\n%s\nwant\n%s", got, c.says)
			}
			kept(t, h, before, n)
			for _, noun := range edit.Nouns {
				want, given := c.left[noun]
				if got := strings.Join(edit.IDs(n, noun), " "); given && got != want || !given &&
					got != strings.Join(edit.IDs(h, noun), " ") {
					t.Errorf("%ss left: %s", noun, got)
				}
			}
		})
	}
}

// The details of a removal: what names the thing names it no more, and layers hold what is left.
func TestRemoveLeavesNoMention(t *testing.T) {
	h := loom()
	n, _, _ := edit.Remove(h, edit.Unit, "C1")
	if got := layers(branch(t, n, "T1")); got != "301,302 | 101,102,201,401" {
		t.Errorf("the wires of a unit taken apart lie in %s", got)
	}
	n, _, _ = edit.Remove(h, edit.Wire, "101")
	if got := layers(branch(t, n, "T1")) + " / " + layers(branch(t, n, "R1")); got != "C1 | 102,201,401 / 102,201" {
		t.Errorf("without 101: %s", got)
	}
	if got := branch(t, n, "T1").Asides[0].Layers[0].Of; !slices.Equal(got, []string{"101", "C1"}) {
		t.Errorf("what was set aside changed: %v", got)
	}
	n, _, _ = edit.Remove(h, edit.Wire, "301")
	n, _, _ = edit.Remove(n, edit.Wire, "302")
	if len(n.Units) > 0 || layers(branch(t, n, "T1")) != "101,102,201,401" {
		t.Errorf("a unit without wires stays: %+v, %s", n.Units, layers(branch(t, n, "T1")))
	}
	n, says, _ := edit.RemoveBranch(h, "T1", "J1")
	if got := strings.Join(says, "; "); !strings.Contains(got, "P1 went with it") ||
		!strings.Contains(got, "wire 401 went with it") ||
		!strings.Contains(got, "unit C1 has lost an end of the drain") {
		t.Errorf("without the trunk and its connector: %s", got)
	}
	if w := wire(t, n, "101"); w.From.Set || w.To.V != "INJ1:1" {
		t.Errorf("%+v", w)
	}
	n, says, err := edit.Remove(h, edit.Termination, "P1")
	if err != nil || len(n.Breakouts) != 2 || !strings.Contains(strings.Join(says, "; "), "T1 went with it") {
		t.Errorf("%v %v", says, err)
	}
}

// A termination where branches meet becomes a breakout; a breakout with two branches makes one
// of them, and what is at it goes.
func TestRemoveAPlaceOnTheWay(t *testing.T) {
	h := loom()
	h.Branches = append(h.Branches, model.Branch{ID: "L4", From: "SEN", To: "X", LengthMM: 50})
	h.Terminations = append(h.Terminations, model.Termination{ID: "X"})
	before := text(h)
	n, says, err := edit.Remove(h, edit.Termination, "SEN")
	kept(t, h, before, n)
	if want := "SEN is a breakout now, because L3, L4 meet there; wires 301, 302 have lost an end at SEN"; err != nil ||
		strings.Join(says, "; ") != want {
		t.Errorf("%v %v", says, err)
	}
	h, _, _ = edit.Remove(h, edit.Termination, "INJ2")
	before = text(h)
	n, says, err = edit.Remove(h, edit.Breakout, "J2")
	kept(t, h, before, n)
	if err != nil || len(n.Splices) != 0 || way(n, "101") != "T1 R1" || branch(t, n, "R1").LengthMM != 310 {
		t.Errorf("%v %v, 101 runs by %s", says, err, way(n, "101"))
	}
}

// Legs hang on breakouts and on stations; no branch closes a loop.
func TestHang(t *testing.T) {
	h := loom()
	before := text(h)
	n, leg, err := edit.AddLegAt(h, "T1", 150, 260, 2)
	kept(t, h, before, n)
	if hung := branch(t, n, leg.Branch); err != nil || branch(t, n, "T1").To != leg.Breakout || hung.From != leg.Breakout ||
		hung.To != leg.Termination || hung.LengthMM != 260 || way(n, "101") != "T1 R2 R1 L1" {
		t.Errorf("%v: 101 runs by %s", err, way(n, "101"))
	}
	if _, _, err := edit.AddLegAt(h, "T1", 450, 260, 2); err == nil ||
		err.Error() != "T1 is 450 mm long: split it between its ends, not 450 mm from P1" {
		t.Error(err)
	}
	h.Terminations = append(h.Terminations, model.Termination{ID: "NEW"})
	n, b, err := edit.AddBranch(h, "J2", "NEW", 90)
	kept(t, h, text(h), n)
	if len(b) < 2 || b[0] != 'L' {
		t.Errorf("a leg to a termination is called %s", b)
	}
	for from, letter := range map[string]byte{"NEW": 'T', "J2": 'R'} { // to a new breakout
		out, id, err := edit.AddBranch(h, from, "", 0)
		if err != nil || id[0] != letter || branch(t, out, id).From != from || len(out.Breakouts) != len(h.Breakouts)+1 ||
			branch(t, out, id).To != out.Breakouts[len(h.Breakouts)].ID || branch(t, out, id).Measured() {
			t.Errorf("from %s: %s %v", from, id, err)
		}
	}
	if err != nil || branch(t, n, b).LengthMM != 90 {
		t.Error(b, err)
	}
	for _, c := range []struct{ from, to, says string }{
		{"J2", "SEN", "J2 and SEN are joined already, and a second way would close a loop: take a place that nothing joins to J2"},
		{"J2", "J2", "a branch cannot run from J2 to itself: take two different places"},
		{"J2", "Q", `no termination or breakout has the id "Q". There are P1, INJ1, INJ2, SEN, NEW, J1, J2`},
	} {
		if out, _, err := edit.AddBranch(h, c.from, c.to, 90); err == nil || err.Error() != c.says || out != h {
			t.Errorf("%s to %s: %v", c.from, c.to, err)
		}
	}
	if _, _, err := edit.AddBranch(h, "J2", "NEW", -1); err == nil {
		t.Error("a branch of less than nothing")
	}
	if out, _, err := edit.AddBranch(h, "J2", "NEW", 0); err != nil || out.Branches[len(out.Branches)-1].Measured() {
		t.Errorf("a branch that is not measured yet: %v", err)
	}
}

func TestRehang(t *testing.T) {
	h := loom()
	before := text(h)
	n, says, err := edit.Rehang(h, "L3", "J1", "J2")
	kept(t, h, before, n)
	if err != nil || len(says) > 0 || way(n, "301") != "T1 R1 L3" {
		t.Errorf("%v %v: 301 runs by %s", says, err, way(n, "301"))
	}
	if got := edit.MayHang(h, "R1", "J1"); !slices.Equal(got, []string{"P1", "SEN"}) {
		t.Errorf("R1 could hang on %v", got)
	}
	_, _, err = edit.Rehang(h, "R1", "J1", "INJ2")
	if err == nil || err.Error() != "R1 cannot hang on INJ2, which hangs on it: that would close a loop. Allowed: P1, SEN" {
		t.Error(err)
	}
	n, says, err = edit.Rehang(h, "R1", "J2", "J2")
	if n != h || err != nil || len(says) > 0 {
		t.Errorf("to where it hangs: %v %v", says, err)
	}
	// its other end: what hung there is cut off, and the sleeve that lay along it has no branch to lie along
	h.Terminations = append(h.Terminations, model.Termination{ID: "END"})
	n, says, err = edit.Rehang(h, "R1", "J2", "END")
	kept(t, h, text(h), n)
	if want := "wires 101, 102, 201 have no way; splice S1 lies at the centre of the breakout now"; err != nil ||
		strings.Join(says, "; ") != want {
		t.Errorf("%v %v", says, err)
	}
	if n.Splices[0].Toward.Set || n.Splices[0].OffsetMM.Set {
		t.Errorf("%+v", n.Splices[0])
	}
	n, says, _ = edit.Rehang(h, "T1", "P1", "END")
	if got := strings.Join(says, "; "); got != "wires 101, 102, 201, 301, 302, 401 have no way; no branch leads to P1" {
		t.Errorf("%s", got)
	}
	kept(t, h, text(h), n)
}

func TestTurnRound(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	h := loom()
	b := &h.Branches[0]
	b.Covers = []model.Cover{{What: model.CoverTape}, {What: model.CoverSheath, FromMM: mm(0), ToMM: mm(430)},
		{What: model.CoverSleeve, FromMM: mm(100)}, {What: model.CoverSleeve, ToMM: mm(60.25)}}
	before := text(h)
	n, err := edit.TurnRound(h, "T1")
	kept(t, h, before, n)
	got := branch(t, n, "T1")
	if err != nil || got.From != "J1" || got.To != "P1" || layers(got) != layers(b) || way(n, "101") != "T1 R1 L1" {
		t.Errorf("%+v %v", got, err)
	}
	want := []model.Cover{{What: model.CoverTape}, {What: model.CoverSheath, FromMM: mm(20), ToMM: mm(450)},
		{What: model.CoverSleeve, ToMM: mm(350)}, {What: model.CoverSleeve, FromMM: mm(389.75)}}
	if !slices.Equal(got.Covers, want) {
		t.Errorf("%+v", got.Covers)
	}
	if again, _ := edit.TurnRound(n, "T1"); text(again) != before {
		t.Error("turned twice it is not what it was")
	}
}

func TestPlacesBecomeOthers(t *testing.T) {
	h := loom()
	before := text(h)
	n, err := edit.ToBreakout(h, "SEN", false)
	if err == nil || err.Error() != "wires 301, 302 end at SEN: take them off it first, or let them lose that end" || n != h {
		t.Error(err)
	}
	n, err = edit.ToBreakout(h, "SEN", true)
	kept(t, h, before, n)
	if err != nil || !slices.Contains(edit.IDs(n, edit.Breakout), "SEN") || wire(t, n, "301").To.Set || wire(t, n, "301").From.V != "P1:D" {
		t.Errorf("%+v %v", wire(t, n, "301"), err)
	}
	n, err = edit.ToTermination(n, "SEN")
	if err != nil || !slices.Contains(edit.IDs(n, edit.Termination), "SEN") || branch(t, n, "L3").To != "SEN" {
		t.Error(err)
	}
	n, err = edit.ToBreakout(h, "P1", true) // a wire that ends there alone goes; one that is capped stays capped
	kept(t, h, before, n)
	if err != nil || slices.Contains(edit.IDs(n, edit.Wire), "401") || n.Units[0].DrainFrom.Set || n.Breakouts[2].Name.V != "Bulkhead" {
		t.Errorf("%+v %v", n.Units[0], err)
	}
	if _, err := edit.ToTermination(h, "J1"); err == nil || err.Error() != "T1, R1, L3 meet at J1: a termination is the end of one" {
		t.Error(err)
	}
	if _, err := edit.ToTermination(h, "J2"); err == nil {
		t.Error("a breakout where three meet")
	}
}
