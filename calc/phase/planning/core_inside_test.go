package planning

import (
	"slices"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What each kind of centre asks of the planner; one that is asked for nothing leaves the question as it was.
func TestWhatACentreAsks(t *testing.T) {
	held := []bundle.Holding{{Layer: 1, Ids: []string{"x"}}, {Layer: 0, Ids: []string{"a", "b"}}, {Layer: 2, Ids: []string{"c", "d", "e"}}}
	for _, c := range []struct {
		core    Core
		centres plan.Centres
		n       int
		only    plan.Only
	}{
		{Core{}, plan.BuiltCentres, 0, plan.AnyCentre}, {Core{CountCore, 3}, plan.UnequalCentres, 3, plan.AnyCentre},
		{Core{EqualCore, 4}, plan.EqualCentres, 4, plan.AnyCentre}, {Core{UnitCore, 9}, plan.UnequalCentres, 2, plan.AnyCentre},
		{Core{MixedCore, 9}, plan.UnequalCentres, 0, plan.OnlyUnequal}, {Core{BuiltCore, 9}, plan.BuiltCentres, 0, plan.OnlyBuilt},
	} {
		q := question{held: held}
		q.ask.Centres = plan.BuiltCentres
		if c.core.put(&q); q.ask.Centres != c.centres || q.ask.CentreN != c.n || q.ask.Only != c.only {
			t.Errorf("%+v: centres %d of %d, only %d", c.core, q.ask.Centres, q.ask.CentreN, q.ask.Only)
		}
	}
}

// A lay-up that is taken: its layers are the branch's own copy, and the branch is laid.
func TestLaidTakesALayUp(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "A", Make: model.Some(model.MakeTwisted)}, {ID: "B",
		Make: model.Some(model.MakeTwisted)}}}
	o := sheet.Option{Layers: []model.Layer{{Of: []string{"1"}}, {Of: []string{"2", "3"}}}}
	got := Laid(&sheet.Sheet{H: h}, h, 1, o)
	if b := got.Branches[1]; b.Make != model.Some(model.MakeLaid) || len(b.Layers) != 2 || b.Layers[1].Of[1] != "3" {
		t.Errorf("%+v", b)
	}
	got.Branches[1].Layers[0].Of[0] = "other"
	if o.Layers[0].Of[0] != "1" || h.Branches[1].Make.V != model.MakeTwisted || h.Branches[1].Layers != nil ||
		got.Branches[0].Make.V != model.MakeTwisted {
		t.Error("what was there before is changed")
	}
}

// How far each runs, where one branch lies round another: by its place among the branches, that with most first and those with
// fewest last, of as many the one that is met first.
func TestOneBranchRoundAnother(t *testing.T) {
	r := bundle.Ranks{Next: map[string]int{"a": 7, "b": 7, "c": 7, "d": 3, "e": 3, "f": 9, "g": 9, "h": 9, "i": 5}}
	ids := []string{"d", "a", "b", "e", "c", "f", "g", "h", "i"}
	tails := nexts(ids, r)
	if !slices.Equal(tails, []int{3, 7, 9, 5}) {
		t.Fatalf("branches in the order they are met: %v", tails)
	}
	got := byBranch(ids, r, tails)
	for id, want := range map[string]int{"a": 0, "b": 0, "c": 0, "f": 1, "h": 1, "d": 2, "e": 2, "i": 3} {
		if got[id] != want {
			t.Errorf("%s runs %d, want %d", id, got[id], want)
		}
	}
	if !slices.Equal(tails, []int{3, 7, 9, 5}) {
		t.Error("the order of the branches is changed")
	}
	// Layers that part: of those of one branch none, of two one.
	for _, c := range []struct {
		of   [][]string
		want int
	}{{[][]string{{"a", "b"}, {"d"}, {}}, 0}, {[][]string{{"a", "d"}, {"f", "g"}}, 1}, {[][]string{{"a", "b", "d"}, {"f", "i"}, {"c"}},
		2}} {
		var layers []model.Layer
		for _, ids := range c.of {
			layers = append(layers, model.Layer{Of: ids})
		}
		if got := parted(layers, r); got != c.want {
			t.Errorf("%v: %d part, want %d", c.of, got, c.want)
		}
	}
	// Buried is what leaves before something that lies further out.
	r.Depth = map[string]int{"a": 3, "b": 1, "c": 2, "d": 0}
	for _, c := range []struct {
		of   [][]string
		want int
	}{{[][]string{{"a"}, {"b", "c"}}, 0}, {[][]string{{"b"}, {"a", "c"}}, 1}, {[][]string{{"d", "b"}, {"c"}, {"a"}}, 3}, {[][]string{{"b"},
		{"c", "d"}}, 1},
		{[][]string{{"d"}, {"d"}}, 0}, {[][]string{{"d", "a"}, {"d"}}, 0}} {
		var layers []model.Layer
		for _, ids := range c.of {
			layers = append(layers, model.Layer{Of: ids})
		}
		if got := buriedIn(layers, r); got != c.want {
			t.Errorf("%v: %d are buried, want %d", c.of, got, c.want)
		}
	}
	for end, want := range map[string]string{"P1:A": "P1", "P1": "P1", ":x": "", "": "", "P1:A:B": "P1"} {
		if got := place(end); got != want {
			t.Errorf("%s is at %s, want %s", end, got, want)
		}
	}
	h := &model.Harness{Wires: []model.Wire{{From: model.Some("B:1"), To: model.Some("A:7")}, {From: model.Some("A:2"),
		To: model.Some("B:9")},
		{From: model.Some("A:2"), To: model.Some("C:9")}}}
	s := &sheet.Sheet{H: h}
	if a, b, c := endsOf(s, 0), endsOf(s, 1), endsOf(s, 2); a != b || a == c {
		t.Errorf("%q, %q and %q", a, b, c)
	}
}

// What a longer search has found comes behind what is shown: not what is there already, not what is beaten, unless it is the cheapest
// of all.
func TestExtendByHand(t *testing.T) {
	option := func(id string, cost float64, over unit.Millimetre, relaxed plan.Relaxed, spares int) sheet.Option {
		return sheet.Option{Cost: unit.Ratio(cost), Plan: plan.Plan{Over: over, Relaxed: relaxed},
			Layers: []model.Layer{{Of: []string{id}}},
			Spares: make([]sheet.SparePlace, spares)}
	}
	a := option("a", 10, 9, 1, 0)
	for _, c := range []struct {
		name string
		o    sheet.Option
		news bool
	}{
		{"the same", a, false}, {"the same with a spare", option("a", 9, 9, 1, 1), true}, {"cheaper, and no better in any figure",
			option("b", 9, 9, 1, 0), true},
		{"as dear", option("b", 10, 9, 1, 0), false}, {"dearer and thinner", option("b", 11, 8, 1, 0), true}, {"dearer and thicker",
			option("b", 11, 9.5, 1, 0), false},
		{"dearer, and it keeps more", option("b", 11, 9.5, 0, 0), true}, {"cheaper, and it keeps less", option("b", 9, 9.5, 2, 0), false},
	} {
		shown := sheet.Proposal{Options: []sheet.Option{a}, Shown: 1, Plain: 0}
		found := sheet.Proposal{Options: []sheet.Option{c.o}, Reach: sheet.Reach{Proven: true}, UnitsMM: model.Some[unit.Millimetre](1),
			LeaversMM: model.Some[unit.Millimetre](2), UnitsWith: 3, UnitsFree: 4, LeaversWith: 5, LeaversFree: 6}
		out, news := Extend(shown, found)
		if news != c.news || len(out.Options) != 1+map[bool]int{true: 1}[c.news] || len(shown.Options) != 1 {
			t.Errorf("%s: news %v, %d options", c.name, news, len(out.Options))
		}
		if !out.Reach.Proven || out.UnitsMM != found.UnitsMM || out.LeaversMM != found.LeaversMM || out.UnitsWith != 3 ||
			out.UnitsFree != 4 ||
			out.LeaversWith != 5 || out.LeaversFree != 6 || out.Shown != 1 {
			t.Errorf("%s: %+v", c.name, out)
		}
	}
	// Only the first of what is found is the cheapest.
	shown := sheet.Proposal{Options: []sheet.Option{a}, Shown: 1}
	out, _ := Extend(shown, sheet.Proposal{Options: []sheet.Option{option("b", 8, 9, 1, 0), option("c", 7, 9, 1, 0)}})
	if len(out.Options) != 2 || out.Options[1].Layers[0].Of[0] != "b" {
		t.Errorf("%d options", len(out.Options))
	}
}
