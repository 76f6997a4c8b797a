package shape

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// loom is two branches in a row with three wires, a shielded pair of two of them, a measured unit, and loops of 20 and 30 mm.
func loom() *sheet.Sheet {
	some, text := model.Some[unit.Millimetre], model.Some[string]
	h := &model.Harness{Terminations: []model.Termination{{ID: "P", LoopMM: some(20)}, {ID: "Q", LoopMM: some(30)}},
		Breakouts: []model.Breakout{{ID: "J"}}, Splices: []model.Splice{{ID: "S", At: "J", OffsetMM: some(7)}},
		Wires: []model.Wire{{ID: "a", Spec: "own", Size: "22", From: text("P:1"), To: text("Q:1")},
			{ID: "b", Spec: "own", Size: "20", From: text("P:2"), To: text("Q:2")}, {ID: "c", Spec: "own", Size: "22", From: text("P:3"),
				To: text("S")},
			{ID: "d", Spec: "other", Size: "22"}},
		Units: []model.Unit{{ID: "U", Wires: []string{"a", "b"}, Shield: model.Some(true)}, {ID: "V", Wires: []string{"c", "no", "d"}},
			{ID: "M", Wires: []string{"d"}, OverMM: some(2.5)}, {ID: "N", Wires: []string{"d"}}},
		Branches: []model.Branch{{ID: "T", From: "P", To: "J", LengthMM: 400, DataApart: model.Some(true)}, {ID: "L", From: "J", To: "Q",
			LengthMM: 100}}}
	dia := func(d unit.Millimetre) sheet.Dia {
		return sheet.Dia{Nominal: d, Min: d, Max: d, Origin: catalogue.Origin{Source: "own"}}
	}
	at := func(id string, loss unit.Ratio) sheet.Member { return sheet.Member{ID: id, Loss: loss} }
	s := &sheet.Sheet{H: h, Wires: []sheet.Wire{{Dia: dia(1.1), Finished: 600, Cut: 650, Path: []int{0, 1}, GramPerM: 4},
		{Dia: dia(1.3), Finished: 610, Cut: 660, Path: []int{0, 1}, GramPerM: 6}, {Dia: dia(1.1), Finished: 440, Cut: 470, Path: []int{0},
			GramPerM: 4}, {}},
		Units: []sheet.Unit{{Dia: dia(3.6), Loss: 1.02}, {Dia: dia(2.4)}, {Dia: dia(2.5)}, {}},
		Branches: []sheet.Branch{{OverMM: 6, LaidMM: 300, Gram: model.Some[unit.Gram](9),
			Layers: []sheet.Layer{{Members: []sheet.Member{at("c", 1)}},
				{Members: []sheet.Member{at("a", 1.1), at("b", 1.2), at("c", 1.1)}}}}, {LaidMM: 500}}}
	s.Totals.WireMM, s.Totals.Gram = 1780, model.Some[unit.Gram](9)
	s.Limits.TailFirstMM, s.Limits.TailSecondMM, s.Limits.CutStepMM = 5, 15, 10
	return s
}

// Each figure of wires, units and the whole by hand, as in TestEachFigureFromItsInputs.
func TestEachFigureOfTheWires(t *testing.T) {
	for _, c := range []struct {
		f      why.Figure
		change func(s *sheet.Sheet)
		value  float64
		in     string
		made   float64
	}{
		{why.Figure{What: "component.over", Part: "a"}, nil, 1.1, "own 22 1.1", 1.1},
		{why.Figure{What: "component.over", Part: "d"}, nil, 0, "none", 0}, {why.Figure{What: "component.over", Part: "no"}, nil, 0,
			"none", 0},
		{why.Figure{What: "component.over", Part: "N"}, nil, 0, "none", 0},
		{why.Figure{What: "component.over", Part: "M"}, nil, 2.5, "OD 2.5", 2.5},
		// Twice 1.2, and what braid and jacket add: 0.3 and 0.2, from memory.
		{why.Figure{What: "component.over", Part: "U"}, nil, 3.6,
			"thickest wire, b 1.2, factor of the circle round 2 equal wires 2, braid 0.3, jacket 0.2", 2.9},
		{why.Figure{What: "component.over", Part: "V"}, nil, 2.4, "thickest wire, c 1.2, factor of the circle round 3 equal wires 2.155",
			1.2 * (1 + 2/math.Sqrt(3))},
		// Of two as thick the first of the unit is named.
		{why.Figure{What: "component.over", Part: "V"}, func(s *sheet.Sheet) { s.H.Units[1].Wires = []string{"c", "a"} }, 2.4,
			"thickest wire, c 1.2, factor of the circle round 2 equal wires 2", 2.4},
		{why.Figure{What: "wire.finished", Of: "a"}, nil, 600, "twist in unit U 1.02, loop at P:1 20, loop at Q:1 30, " +
			"way to splices away from their breakout 0, run in T 300, run in L 300", 1.02*600 + 50},
		{why.Figure{What: "wire.finished", Of: "c"}, func(s *sheet.Sheet) { s.H.Units = s.H.Units[:1] }, 440,
			"twist in the unit 1, loop at P:3 20, loop at S 0, way to splices away from their breakout 7, run in T 300", 327},
		{why.Figure{What: "wire.finished", Of: "d"}, nil, 0, "none", 0}, {why.Figure{What: "wire.finished", Of: "no"}, nil, 0, "none", 0},
		{why.Figure{What: "wire.cut", Of: "a"}, nil, 650, "finished length 900, tail at the start 5, tail at the end 15, " +
			"extra at each end of a wire in a unit 50, step 10", 1020},
		{why.Figure{What: "wire.cut", Of: "c"}, func(s *sheet.Sheet) { s.H.Units = s.H.Units[:1] }, 470,
			"finished length 900, tail at the start 5, " +
				"tail at the end 15, extra at each end of a wire in a unit 0, step 10", 920},
		{why.Figure{What: "wire.cut", Of: "d"}, nil, 0, "none", 0}, {why.Figure{What: "wire.cut", Of: "no"}, nil, 0, "none", 0},
		// a and c, alike: 300·1.1 + 100 each, and c once straight: 1,260 mm of 4 g/m; b: 460 mm of 6 g/m.
		{why.Figure{What: "branch.mass", Of: "T"}, nil, 9, "own 22 4, run of all 3 together 1260, own 20 6, run of all 1 together 460",
			1.26*4 + 0.46*6},
		{why.Figure{What: "branch.mass", Of: "T"}, func(s *sheet.Sheet) { s.Branches[0].LaidMM = 900 }, 9, // no more than the branch has
			"own 22 4, run of all 3 together 1280, own 20 6, run of all 1 together 480", 1.28*4 + 0.48*6},
		{why.Figure{What: "branch.mass", Of: "L"}, nil, 0, "none", 0},
		{why.Figure{What: "branch.wire", Of: "L"}, nil, 1310, "a 950, b 950", 1900},
		{why.Figure{What: "branch.wire", Of: "T"}, func(s *sheet.Sheet) { s.Wires[1].Cut = 0 }, 1120, "a 950, c 950", 1900},
		{why.Figure{What: "branch.wire", Of: "L"}, func(s *sheet.Sheet) { s.Wires[0].Cut, s.Wires[1].Cut = 0, 0 }, 0, "refused", 0},
		{why.Figure{What: "branch.wire", Of: "no"}, nil, 0, "none", 0},
		{why.Figure{What: "loom.wire"}, nil, 1780, "a 950, b 950, c 950", 2850},
		{why.Figure{What: "loom.wire"}, func(s *sheet.Sheet) { s.Wires = make([]sheet.Wire, 4) }, 0, "refused", 0},
		{why.Figure{What: "loom.mass"}, nil, 9, "T 12", 12},
		{why.Figure{What: "loom.mass"}, func(s *sheet.Sheet) { s.Totals.Gram.Set = false }, 0, "refused", 0},
		{why.Figure{What: "loom.mass"}, func(s *sheet.Sheet) { s.Branches[0].Gram.Set = false }, 0, "refused", 0},
		{why.Figure{What: "reel.need", Of: "own", Part: "22"}, nil, 1120, "a 950, c 950", 1900},
		{why.Figure{What: "reel.need", Of: "own", Part: "20"}, nil, 660, "b 950", 950},
		{why.Figure{What: "reel.need", Of: "other", Part: "22"}, nil, 0, "refused", 0},
		// 600 less loops of 50 and a way of 500: 50; a fifth of 500 is 100.
		{why.Figure{What: "wire.takeup", Of: "a"}, nil, 50, "finished length 900, loops 50, its way, branch by branch 500", 350},
		{why.Figure{What: "wire.flat", Of: "a"}, nil, 100, "its way, branch by branch 500, share 0.2", 100},
		{why.Figure{What: "wire.takeup", Of: "c"}, nil, 13, "finished length 900, loops 20, its way, branch by branch 407", 473},
		{why.Figure{What: "wire.takeup", Of: "d"}, nil, 0, "none", 0}, {why.Figure{What: "wire.flat", Of: "no"}, nil, 0, "none", 0},
		{why.Figure{What: "wish.apart", Of: "T"}, nil, 0, "none", 0}, {why.Figure{What: "wish.apart", Of: "L"}, nil, 0, "none", 0},
	} {
		s := loom()
		if c.change != nil {
			c.change(s)
		}
		w, ok := Makers[c.f.What](asked(s), c.f)
		if c.in == "none" || c.in == "refused" {
			if ok || c.in == "none" && (w.Formula != nil || w.Name != "") {
				t.Errorf("%+v: %v %+v", c.f, ok, w)
			}
			continue
		}
		var in []string
		for _, x := range w.In {
			in = append(in, fmt.Sprintf("%s %.4g", x.Name, x.Value))
			if x.From == nil && (x.Source == "" || x.Name == "") {
				t.Errorf("%+v: %+v says too little", c.f, x)
			}
		}
		if got := strings.Join(in, ", "); !ok || math.Abs(w.Value-c.value) > 1e-9 || got != c.in || math.Abs(w.Made()-c.made) > 1e-6 ||
			w.Says == "" ||
			w.Name == "" {
			t.Errorf("%+v: %s is %v from %s, made %v; want %v from %s, %v", c.f, w.Name, w.Value, got, w.Made(), c.value, c.in, c.made)
		}
	}
}

// Options and wishes of a branch by hand: what the planner found with a preference and without it.
func TestOptionsAndWishes(t *testing.T) {
	s := loom()
	s.Branches[0].PlanKey, s.Branches[1].PlanKey = "of T", "of L"
	e := asked(s)
	some := model.Some[unit.Millimetre]
	p := sheet.Proposal{Options: []sheet.Option{{Plan: plan.Plan{Over: 3, Layers: []plan.Layer{{Over: 3}}}}, {}}, Shown: 2,
		LeaversMM: some(0.4), UnitsMM: some(0.5),
		LeaversWith: 6.4, LeaversFree: 6, UnitsWith: 7.5, UnitsFree: 7}
	s.Proposals = map[string]sheet.Proposal{bundle.PlanKey(s, 0): p}
	for _, c := range []struct {
		f     why.Figure
		value float64
		in    []float64
		name  string
	}{{why.Figure{What: "option.over", Of: "T"}, 3, []float64{3}, "OD of option A of T"}, {why.Figure{What: "option.over", Of: "T", K: 1},
		0, nil, ""},
		{why.Figure{What: "option.over", Of: "T", K: 2}, 0, nil, ""}, {why.Figure{What: "option.over", Of: "T", K: -1}, 0, nil, ""},
		{why.Figure{What: "wish.leavers", Of: "T"}, 0.4, []float64{6.4, 6}, "what the preference for early leavers on the outside costs"},
		{why.Figure{What: "wish.units", Of: "T"}, 0.5, []float64{7.5, 7}, "what the preference for units in the centre costs"},
		{why.Figure{What: "wish.units", Of: "L"}, 0, nil, ""}, {why.Figure{What: "wish.leavers", Of: "L"}, 0, nil, ""}} {
		w, ok := Makers[c.f.What](e, c.f)
		if ok != (c.in != nil) || w.Name != c.name || w.Value != c.value || len(w.In) != len(c.in) || ok &&
			(math.Abs(w.Made()-c.value) > 1e-9 || w.Says == "") {
			t.Errorf("%+v: %v %+v", c.f, ok, w)
			continue
		}
		for k, v := range c.in {
			if float64(w.In[k].Value) != v {
				t.Errorf("%+v: %+v", c.f, w.In[k])
			}
		}
	}
}

// Where a sheath begins and ends, and which cable a boot holds: a boot of 40 mm at one end, none at the other; a breakout has a zone. Of
// its length a tenth counts not, and the overlap is taken off.
func TestWhereASheathEnds(t *testing.T) {
	cat := &catalogue.Catalogue{Boots: map[string]catalogue.Boot{"boot": {ID: "boot", CableRecoveredMM: 5, CableSuppliedMM: 20,
		LengthMM: 40}}}
	text := strings.Replace(calctest.OneSize(7, "22",
		"length_mm = 400.0\nmake = \"laid\"\n[[branch.layer]]\nof = [\"0\"]\n[[branch.layer]]\n"+
			"of = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\"]\n[[branch.cover]]\nwhat = \"sheath\"\n"), "id = \"A\"\n",
		"id = \"A\"\nboot = \"boot\"\n", 1)
	h := calctest.Parse(t, text)
	s := calc.Build(h, catalogue.Merge(calctest.Catalogue(t), cat), nil)
	e := why.New(s, Makers)
	id := h.Branches[0].ID
	from, ok1 := sheathEnd(e, why.Figure{What: "sheath.from", Of: id})
	to, ok2 := sheathEnd(e, why.Figure{What: "sheath.to", Of: id})
	if !ok1 || !ok2 || from.Value != float64(s.Branches[0].Sheath.FromMM) || to.Value != 400 || math.Abs(from.Made()-from.Value) > 1e-9 ||
		to.Made() != 400 ||
		from.Says == "" || to.Says == "" || len(from.In) != 4 || len(to.In) != 2 || !strings.HasSuffix(from.Name, " starts") ||
		!strings.HasSuffix(to.Name, " stops") {
		t.Errorf("%+v\n%+v", from, to)
	}
	for _, c := range []struct {
		w    why.Why
		in   []float64
		want float64
	}{{from, []float64{400, 40, 0.9, 10}, 26}, {from, []float64{20, 40, 0.9, 10}, 20}, {from, []float64{400, 5, 0.9, 10}, 0}, {to,
		[]float64{400, 40, 0.9, 10}, 374},
		{to, []float64{400, 30}, 370}, {to, []float64{20, 30}, 0}, {from, []float64{400, 30}, 30}} {
		if got := c.w.Formula(c.in); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%s of %v: %v, want %v", c.w.Name, c.in, got, c.want)
		}
	}
	// A tenth over 5 mm, four fifths of 20 mm.
	least, _ := bootCable(e, why.Figure{What: "boot.least", Of: "A"})
	most, _ := bootCable(e, why.Figure{What: "boot.most", Of: "A"})
	if math.Abs(least.Value-5.5) > 1e-9 || math.Abs(least.Made()-5.5) > 1e-9 || most.Value != 16 || most.Made() != 16 ||
		!strings.HasPrefix(least.Name, "thinnest cable") || !strings.HasPrefix(most.Name, "thickest cable") || least.Says == "" {
		t.Errorf("%+v\n%+v", least, most)
	}
	for _, what := range []string{"boot.least", "boot.most", "boot.holds", "boot.fills"} {
		for _, of := range []string{"Z", "no"} {
			if _, ok := Makers[what](e, why.Figure{What: what, Of: of, Part: id}); ok {
				t.Errorf("%s of %s", what, of)
			}
		}
	}
	// A loop that the file gives is given; one that it does not is a rule.
	for _, c := range []struct {
		text, source string
		mm           float64
	}{{text, "rule, common practice", 0}, {strings.Replace(text, "id = \"A\"\n", "id = \"A\"\nloop_mm = 33.0\n", 1), "given in the file",
		33}} {
		at := calc.Build(calctest.Parse(t, c.text), s.Base, nil)
		w, ok := loopOf(why.New(at, Makers), why.Figure{What: "loop.length", Of: "A"})
		if !ok || w.In[0].Source != c.source || c.mm > 0 && w.Value != c.mm || w.Made() != w.Value || w.Says == "" {
			t.Errorf("%+v, want %s", w, c.source)
		}
	}
	b := &s.Branches[0]
	holds, ok1 := bootUnder(e, why.Figure{What: "boot.holds", Of: "A", Part: id})
	fills, ok2 := bootUnder(e, why.Figure{What: "boot.fills", Of: "A", Part: id})
	if !ok1 || !ok2 || math.Abs(holds.Made()-holds.Value) > 1e-9 || math.Abs(fills.Made()-fills.Value) > 1e-9 ||
		holds.In[0].Value != float64(b.OverMinMM) ||
		fills.In[0].Value != float64(b.OverMaxMM) || holds.Value >= fills.Value || holds.Says == "" {
		t.Errorf("%+v\n%+v", holds, fills)
	}
	if _, ok := bootUnder(e, why.Figure{What: "boot.holds", Of: "A", Part: "no"}); ok {
		t.Error("a boot on no branch")
	}
}
