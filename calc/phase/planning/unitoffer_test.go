package planning_test

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
)

// Few thin wires among thick ones: whatever is offered as a unit is offered truly.
// Made up and planned afresh, the branch has the figures told, with fewer fillers or
// lumps than before; and some gain by it.
func TestUnitOffersHold(t *testing.T) {
	gained, filled := 0, 0
	for n := 6; n <= 20; n++ {
		h := calctest.Parse(t, calctest.OneSize(n, "22", "length_mm = 400.0\nunits_inside = false\n"))
		for k := n % 4; k < n-2; k++ {
			h = h.EditWire(k, func(w *model.Wire) { w.Size = "14" })
		}
		s := calc.Complete(h, calctest.Catalogue(t), nil)
		offers := planning.UnitOffers(s, 0)
		if len(offers) > 3 || !slices.IsSortedFunc(offers, func(a, b planning.UnitOffer) int {
			return cmp.Or(cmp.Compare(a.Fillers, b.Fillers), cmp.Compare(a.Over, b.Over))
		}) {
			t.Errorf("%d: %d offers, not the best first", n, len(offers))
		}
		for _, o := range offers {
			gained++
			// The wires that lie loose, the unit as one, and the fillers of the layers round the centre.
			told := 0
			for _, c := range o.Counts {
				told += c
			}
			if want := n - len(o.Wires) + 1 + o.Fillers; len(o.Counts) != len(o.Plan.Layers) ||
				o.Plan.Layers[0].Fillers == 0 && told != want || told > want {
				t.Errorf("%d: %s of %v: %v in layers, want %d", n, o.Build, o.Wires, o.Counts, want)
			}
			filled = max(filled, o.Fillers)
			with := calc.Complete(h.AddUnit(model.Unit{ID: "U1", Wires: o.Wires, Build: model.Some(o.Build)}), calctest.Catalogue(t), nil)
			best, ok := with.Proposals[bundle.PlanKey(with, 0)].Best()
			if !ok || best.Plan.Fillers != o.Fillers {
				t.Errorf("%d: %s of %v told %d fillers, laid %d", n, o.Build, o.Wires, o.Fillers, best.Plan.Fillers)
			}
			calctest.Near(t, fmt.Sprintf("%d: over", n), float64(best.Plan.Over), float64(o.Over), 1e-9)
			if was := o.Was(); best.Plan.Cost >= was.Cost || best.Plan.Fillers >= was.Fillers && best.Plan.Lumpy >= was.Lumpy {
				t.Errorf("%d: %s gains nothing: %+v", n, o.Build, o)
			}
		}
	}
	if gained == 0 || filled == 0 {
		t.Errorf("%d offers, and at most %d fillers in one: no count gains by a unit, or none has fillers", gained, filled)
	}
	t.Logf("%d offers", gained)
}

// Six of 14 AWG lie round two of 22 made up into a pair, and round neither of them loose: the pair is offered whichever
// way its wires are written. It is not offered where one of them is a spare, runs elsewhere, is pinned or is in no catalogue, nor where
// the branch is not laid, and of seven pieces only where seven are laid.
func TestUnitOfferByHand(t *testing.T) {
	h := calctest.Parse(t, calctest.OneSize(8, "22", "length_mm = 400.0\nmake = \"laid\"\nunits_inside = false\n"))
	for k := range 6 {
		h = h.EditWire(k, func(w *model.Wire) { w.Size = "14" })
	}
	wire := func(f func(w *model.Wire)) func(*model.Harness) *model.Harness {
		return func(h *model.Harness) *model.Harness { return h.EditWire(7, f) }
	}
	for _, c := range []struct {
		name   string
		change func(h *model.Harness) *model.Harness
		sheet  func(s *sheet.Sheet)
		want   string
	}{
		{name: "as it is", want: "[6 7] pair [1 6] 0"},
		{name: "one the other way round", change: wire(func(w *model.Wire) { w.From, w.To = w.To, w.From }), want: "[6 7] pair [1 6] 0"},
		{name: "one before them is a spare", change: func(h *model.Harness) *model.Harness {
			return h.EditWire(0, func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) })
		}, want: "[6 7] pair [1 6] 0"},
		{name: "a spare", change: wire(func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) })},
		{name: "in no catalogue", change: wire(func(w *model.Wire) { w.Spec = "of nobody" })},
		{name: "of another size", change: wire(func(w *model.Wire) { w.Size = "24" })},
		{name: "pinned", change: func(h *model.Harness) *model.Harness {
			return h.EditBranch(0, func(b *model.Branch) { b.Layers = []model.Layer{{Of: []string{"6"}, Pinned: []string{"6"}}} })
		}},
		{name: "twisted", sheet: func(s *sheet.Sheet) { s.Branches[0].Make = model.MakeTwisted }},
		{name: "laid from seven", sheet: func(s *sheet.Sheet) { s.Limits.LaidFrom = 7 }, want: "[6 7] pair [1 6] 0"},
		{name: "laid from eight", sheet: func(s *sheet.Sheet) { s.Limits.LaidFrom = 8 }},
	} {
		of := h
		if c.change != nil {
			of = c.change(h)
		}
		s := calc.Build(of, calctest.Catalogue(t), nil)
		if c.sheet != nil {
			c.sheet(s)
		}
		got := ""
		for _, o := range planning.UnitOffers(s, 0) {
			got += fmt.Sprint(o.Wires, " ", o.Build, " ", o.Counts, " ", o.Fillers)
			// Two circles of d touch in one of 2 d.
			calctest.Near(t, "the pair in the centre", float64(o.Plan.Layers[0].Sizes[0]), 2*float64(s.Dia("6").Nominal), 1e-9)
		}
		if got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// A centre that is asked for is what lies there; and what a search says of more to come is what its proposal says.
func TestCentreThatIsAskedFor(t *testing.T) {
	s := calc.Build(calctest.Parse(t, calctest.OneSize(12, "22", "length_mm = 400.0\nmake = \"laid\"\n")), calctest.Catalogue(t), nil)
	for n := 1; n <= 5; n++ {
		o, ok := planning.Best(s, 0, planning.Core{Kind: planning.EqualCore, N: n})
		if !ok || len(o.Layers[0].Of) != n {
			t.Errorf("%d asked for, %d lie there", n, len(o.Layers[0].Of))
		}
	}
	if _, ok := planning.Best(s, 0, planning.Core{Kind: planning.UnitCore}); ok {
		t.Error("no unit runs there, and units lie in the centre")
	}
	locked := s.H.EditBranch(0, func(b *model.Branch) { b.Layers = []model.Layer{{Of: []string{"0"}, Locked: model.Some(true)}} })
	if o, ok := planning.Best(calc.Build(locked, s.Base, nil), 0, planning.Core{Kind: planning.EqualCore, N: 3}); ok {
		t.Errorf("one is locked in the centre, and three lie there: %v", o.Layers)
	}
	if o, ok := planning.Best(calc.Build(locked, s.Base, nil), 0, planning.Core{Kind: planning.CountCore, N: 1}); !ok ||
		len(o.Layers[0].Of) != 1 {
		t.Errorf("one is locked in the centre, and one was asked for: %v, %v", ok, o.Layers)
	}
	q := planning.Begin(s, 0)
	for range 3 {
		if _, more := q.Run(1000); more == q.Proposal().Reach.Ended {
			t.Errorf("more to come: %v, at its end: %v", more, !more)
		}
	}
}

// A search and its questions, by hand: the pair lies in the centre of every answer to those questions that want it there, and what
// is buried costs nothing where nobody minds.
func TestQuestionsOfASearch(t *testing.T) {
	text := strings.Replace(calctest.OneSize(21, "22", "length_mm = 400.0\nmake = \"laid\"\n%s"), "[[branch]]",
		"[[unit]]\nid = \"U\"\nwires = [\"0\", \"1\"]\nbuild = \"pair\"\n[[branch]]", 1)
	for _, c := range []struct {
		keys    string
		inside  bool
		minding bool
	}{{"", true, true}, {"units_inside = false\n", false, true}, {"leavers_outside = false\n", true, false}} {
		s := calctest.Built(t, fmt.Sprintf(text, c.keys))
		inCentre, weight, ask := planning.NewSearch(s, 0)
		if got := len(inCentre) == 1; got != c.inside || (weight == s.Limits.LeaverWeight) != c.minding || !c.minding && weight != 0 {
			t.Errorf("%q: %v inside, a weight of %v", c.keys, inCentre, weight)
		}
		if !c.inside {
			continue
		}
		for _, in := range []bool{true, false} {
			options, n := ask(in), 0
			for _, o := range options {
				if slices.Contains(o.Layers[0].Of, "U") {
					n++
				}
			}
			if len(options) == 0 || in != (n == len(options)) {
				t.Errorf("wanted in the centre %v: it is there in %d of %d", in, n, len(options))
			}
		}
	}
}

// What is kept of proposals, by hand: 200 that no branch has, and one for each branch; one more, and only those of the branches stay.
func TestHowManyProposalsAreKept(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(9, "22", "length_mm = 400.0\nmake = \"laid\"\n"))
	planning.Adopt(s, bundle.PlanKey(s, 0), sheet.Proposal{Shown: 7})
	for k := range 200 {
		if planning.Adopt(s, fmt.Sprint("tried ", k), sheet.Proposal{}); len(s.Proposals) != k+2 {
			t.Fatalf("after %d tried, %d are kept", k+1, len(s.Proposals))
		}
	}
	if planning.Adopt(s, "one more", sheet.Proposal{Shown: 3}); len(s.Proposals) != 2 || s.Proposals["one more"].Shown != 3 ||
		s.Proposals[bundle.PlanKey(s, 0)].Shown != 7 {
		t.Errorf("%d are kept", len(s.Proposals))
	}
}
