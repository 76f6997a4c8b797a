package length

import (
	"fmt"
	"math"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// way is a trunk of 1,000 mm of which 900 are laid, and a leg of 300 that is straight, with wires of every kind of end.
func way(change func(s *sheet.Sheet)) *sheet.Sheet {
	some, spare := model.Some[string], model.Some(model.RoleSpare)
	h := &model.Harness{
		Terminations: []model.Termination{{ID: "A", Insert: some("18-32")}, {ID: "B"}, {ID: "C", LoopMM: model.Some(unit.Millimetre(30))}},
		Breakouts:    []model.Breakout{{ID: "J"}},
		Splices:      []model.Splice{{ID: "S", At: "J"}, {ID: "O", At: "J", Toward: some("L"), OffsetMM: model.Some(unit.Millimetre(55))}},
		Branches: []model.Branch{{ID: "T", From: "A", To: "J", LengthMM: 1000}, {ID: "L", From: "J", To: "B", LengthMM: 300},
			{ID: "M", From: "J", To: "C", LengthMM: 300}},
		Units: []model.Unit{{ID: "U", Wires: []string{"u"}}},
		Wires: []model.Wire{
			{ID: "1", From: some("A:1"), To: some("B:1")}, {ID: "2", From: some("A:2"), To: some("S")}, {ID: "3", From: some("O"),
				To: some("B:3")},
			{ID: "4", From: some("A:4"), To: some("O")}, {ID: "5", From: some("A:5"), CappedAt: some("J"), Role: spare},
			{ID: "6", To: some("C:6"), CappedAt: some("J"), Role: spare, FoldMM: model.Some(unit.Millimetre(60))},
			{ID: "u", From: some("A:7"), To: some("B:7")}, {ID: "8", From: some("A:8")}},
	}
	s := &sheet.Sheet{H: h, Limits: model.Rules{}.Resolve(), Wires: make([]sheet.Wire, len(h.Wires)), Units: []sheet.Unit{{Loss: 1.05}},
		Branches: []sheet.Branch{{LaidMM: 900}, {}, {}}}
	s.Branches[0].Layers = []sheet.Layer{{Members: []sheet.Member{{ID: "1", Loss: 1.02}, {ID: "2", Loss: 1.02}, {ID: "4", Loss: 1}}},
		{Members: []sheet.Member{{ID: "U", Loss: 1.04}, {ID: "5", Loss: 1.03}, {ID: "1", Loss: 9}}}}
	s.Branches[1].Layers = []sheet.Layer{{}}
	s.Branches[2].Layers = []sheet.Layer{{}}
	for k, path := range [][]int{{0, 1}, {0}, {1}, {0}, {0}, {2}, {0, 1}, nil} {
		s.Wires[k].Path, s.Wires[k].HasPath = path, k < 7
	}
	change(s)
	s.Index = model.NewIndex(h)
	return s
}

// Lengths by hand (design, section 6.6): what is laid by its loss, the rest once; loops of 16 mm at an insert, 8 elsewhere and 30 where
// they
// are given; tails of 100 and 75, 50 more each in a unit; a capped end is folded and has no tail; up to the next 10.
func TestLengthsByHand(t *testing.T) {
	s := way(func(*sheet.Sheet) {})
	CutWires(s)
	for k, want := range []struct{ finished, cut float64 }{
		{900*1.02 + 100 + 300 + 16 + 8, 1520}, // 1342, and tails 175: 1517
		{900*1.02 + 100 + 16, 1210},           // 1034 + 175: 1209
		{300 - 55 + 8, 430},                   // 253 + 175: 428
		{1000 + 55 + 16, 1250},                // 1071 + 175: 1246
		{900*1.03 + 100 + 16 + 100, 1250},     // 1143 + 100: 1243
		{300 + 60 + 30, 470},                  // 390 + 75: 465
		{(900*1.04+100+300)*1.05 + 16 + 8, 0}, {0, 0},
	} {
		w := &s.Wires[k]
		if k == 6 { // its tails are 50 longer each
			want.cut = math.Ceil((want.finished+275)/10) * 10
		}
		if math.Abs(float64(w.Finished)-want.finished) > 1e-6 || math.Abs(float64(w.Cut)-want.cut) > 1e-6 {
			t.Errorf("wire %s is %v and cut %v, want %v and %v", s.H.Wires[k].ID, w.Finished, w.Cut, want.finished, want.cut)
		}
	}
	if len(s.Snags) > 0 {
		t.Errorf("%+v", s.Snags)
	}
	// A branch that is not measured stops, and what runs through it has no length; so has a wire shorter than its splice is off.
	s = way(func(s *sheet.Sheet) {
		s.H.Branches[0].LengthMM, s.H.Splices[1].OffsetMM = 0, model.Some(unit.Millimetre(310))
	})
	CutWires(s)
	said := ""
	for _, g := range s.Snags {
		said += g.Level.String() + " " + g.Rule + " " + g.Where + ": " + g.Says + "; "
	}
	if said != "stop branch.length T: Its length is not known yet: measure it before you cut a wire that runs through it; "+
		"stop wire.length 3: Its splice is further away than the wire is long; " {
		t.Errorf("%s", said)
	}
	for k := range s.Wires {
		if known := k == 5; (s.Wires[k].Finished > 0) != known || (s.Wires[k].Cut > 0) != known {
			t.Errorf("wire %s is %v and cut %v", s.H.Wires[k].ID, s.Wires[k].Finished, s.Wires[k].Cut)
		}
	}
	s = way(func(s *sheet.Sheet) { s.Branches[1].Layers = nil })
	CutWires(s)
	if s.Wires[0].Cut != 0 || s.Wires[1].Cut == 0 {
		t.Error("a wire through a branch that is not laid has a length, or another has none")
	}
}

// Masses by hand: wires of 10 g/m, 900 mm of them laid; a filler of 2 mm of ETFE 1.70 · π/4 · 4 = 5.34 g/m, one of a wire's size that wire;
// braid and jacket 2.5 · π/4 · (3² − 2²) on a unit.
func TestMassesByHand(t *testing.T) {
	s := way(func(s *sheet.Sheet) {
		for k := range s.Wires {
			s.Wires[k].GramPerM, s.Wires[k].Cut = 10, 100
		}
		s.H.Units[0].Shield = model.Some(true)
		s.Units[0].BareMM, s.Units[0].Dia = 2, sheet.Dia{Nominal: 3}
		s.Branches[0].Layers = []sheet.Layer{{Fillers: 2, Members: []sheet.Member{{ID: "1", D: 1.2, Loss: 1.02}, {ID: "U", D: 3, Loss: 1},
			{ID: "filler", Kind: sheet.OfFiller, D: 2, Loss: 1.1}, {ID: "filler", Kind: sheet.OfFiller, D: 1.2, Loss: 1}}}}
		s.Branches[1].Layers = []sheet.Layer{{Members: []sheet.Member{{ID: "1", D: 1.2, Loss: 1}, {ID: "gone", D: 1.2, Loss: 1}}}}
		s.Branches[1].Components = []string{"1"}
		s.Branches[2].Layers, s.Branches[2].Components = nil, nil
	})
	Weigh(s)
	braid := 2.5 * math.Pi / 4 * (9 - 4)
	want := 10*(0.9*1.02+0.1) + (10*1.05 + braid) + 1.7*math.Pi*(0.9*1.1+0.1) + 10
	b := s.Branches
	if math.Abs(float64(b[0].Gram.V)-want) > 1e-9 || !b[0].Gram.Set || b[1].Gram.Set || b[2].Gram.Set || s.Totals.Gram.Set {
		t.Errorf("%+v, want %v; %+v %+v", b[0].Gram, want, b[1].Gram, s.Totals.Gram)
	}
	if got := fmt.Sprint(s.Totals.Wires, s.Totals.Units, s.Totals.Spares, s.Totals.Fillers, s.Totals.WireMM); got != "8 1 2 2 800" {
		t.Errorf("%s", got)
	}
	s.Branches[1].Layers[0].Members = s.Branches[1].Layers[0].Members[:1]
	s.Totals = sheet.Totals{}
	Weigh(s)
	if !s.Totals.Gram.Set || math.Abs(float64(s.Totals.Gram.V)-(want+3)) > 1e-9 {
		t.Errorf("in all %+v, want %v", s.Totals.Gram, want+3)
	}
	// One that is laid nowhere and through which something runs is not known; nor is one of no length.
	s.Branches[2].Components = []string{"6"}
	if Weigh(s); s.Totals.Gram.Set {
		t.Error("what waits for its lay-up is known")
	}
}
