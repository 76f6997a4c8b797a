package whatif

import (
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// bare is a branch T from P to Q with wires "a" and "b" of 22 and 20 AWG of a specification of this shop, its catalogue the sizes that are
// given: 20 is 0.6 mm², 22 0.4 and 24 0.25.
func bare(sizes ...string) *sheet.Sheet {
	area := map[string]unit.SquareMM{"20": 0.6, "22": 0.4, "24": 0.25}
	cat := &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{}}
	for _, z := range sizes {
		w := catalogue.Wire{Spec: "own", Size: z, AreaMM2: area[z]}
		cat.Wires[w.Key()] = w
	}
	h := &model.Harness{Branches: []model.Branch{{ID: "T", From: "P", To: "Q", LengthMM: 500}},
		Wires: []model.Wire{{ID: "a", Spec: "own", Size: "22"}, {ID: "b", Spec: "own", Size: "20"}}}
	return &sheet.Sheet{H: h, Cat: cat, Index: model.NewIndex(h), Branches: []sheet.Branch{{Components: []string{"a", "b"}}},
		Wires: []sheet.Wire{{Entry: catalogue.Wire{AreaMM2: 0.4}}, {Entry: catalogue.Wire{AreaMM2: 0.6}}}}
}

// Of what nothing can be asked: the hand of what is straight or one wire alone, the sheath of what has no diameter, the specification of
// what is no wire, the neighbours of a size that no catalogue has. And no centre is there where nothing is laid.
func TestNothingToAsk(t *testing.T) {
	s := bare("20", "22")
	b := &s.Branches[0]
	if b.Make = model.MakeTwisted; len(hands(s, 0)) != 1 || len(hands(s, 0)[0].Values) != len(model.Hands) {
		t.Errorf("two wires twisted: %v", hands(s, 0))
	}
	if b.Make = model.MakeStraight; hands(s, 0) != nil {
		t.Error("straight, and its hand is asked")
	}
	b.Make, b.Components = model.MakeTwisted, []string{"a"}
	if hands(s, 0) != nil {
		t.Error("one wire, and its hand is asked")
	}
	if sheaths(s, 0) != nil {
		t.Error("a sheath on no diameter")
	}
	if b.Components = []string{"nobody"}; specs(s, 0) != nil || near(s, 0, "22") != nil {
		t.Error("a specification, or a size, of nobody")
	}
	b.Components = []string{"a", "b"}
	if got := near(bare("20"), 0, "22"); got != nil {
		t.Errorf("beside a size that is not there: %v", got)
	}
	for _, kind := range []core{{Kind: planning.EqualCore, N: 1}, {Kind: planning.MixedCore}, {Kind: planning.BuiltCore}} {
		b.Make, b.As = model.MakeTwisted, []model.Layer{{Of: []string{"a"}, BindMM: model.Some[unit.Millimetre](1)}}
		if kind.present(s, 0) {
			t.Errorf("%+v of what is twisted", kind)
		}
		if b.Make, b.As = model.MakeLaid, nil; kind.present(s, 0) {
			t.Errorf("%+v of what is not laid", kind)
		}
	}
}

// Why nobody can tell whether a wire may be thinner: no current, or the sheet does not rate it. A thicker one always may.
func TestWhoJudgesAThinnerWire(t *testing.T) {
	for _, c := range []struct {
		size    string
		amps    bool
		safety  bool
		unrated bool
		want    string
	}{
		{"20", false, false, false, ""}, {"22", false, true, true, ""}, {"24", false, false, false, "no current is entered"},
		{"24", true, false, false, ""}, {"24", true, true, false, "the sheet does not rate it"}, {"24", true, false, true,
			"the sheet does not rate it"},
		{"26", true, true, true, ""}, // a size that no catalogue has is not known to be thinner
	} {
		s := bare("20", "22", "24")
		s.Unrated, s.H.Wires[0].Safety = c.unrated, model.Some(c.safety)
		if c.amps {
			s.H.Wires[0].Amps = model.Some[unit.Ampere](0)
		}
		if got := unjudged(s, 0, c.size); got != c.want {
			t.Errorf("%+v: %q", c, got)
		}
	}
}

// A trial that does not close is laid anew, or says why it cannot be: a piece has no OD; there is nothing that could be such a centre;
// and so
// few wires are twisted where nobody asked for anything else.
func TestLaidAnewOrWhyNot(t *testing.T) {
	laid := func() (*sheet.Sheet, trial) {
		s, tr := nineteen(t)
		tr.h = written(s, s.H, 0)
		return s, tr
	}
	s, tr := laid()
	tr.core = planning.Core{Kind: planning.UnitCore}
	if err := tr.layAnew(s, 0); err == nil || err.Error() != "nothing can be laid so here" {
		t.Errorf("no unit for the centre: %v", err)
	}
	s, tr = laid()
	tr.built.Wires = slices.Clone(tr.built.Wires)
	k := s.Index.Wire[tr.built.Branches[0].Components[3]]
	tr.built.Wires[k].Dia, tr.core = sheet.Dia{}, planning.Core{Kind: planning.EqualCore, N: 2}
	if err := tr.layAnew(s, 0); err == nil || err.Error() != "the OD of "+s.H.Wires[k].ID+" is not known" {
		t.Errorf("a wire of no OD: %v", err)
	}
	for _, c := range []struct {
		n      int
		asked  bool
		pinned bool
		few    bool
	}{{2, false, false, true}, {2, true, false, false}, {19, false, false, false}, {2, false, true, false}} {
		s, tr = laid()
		is := &tr.built.Branches[0]
		is.Make, is.Components = model.MakeTwisted, is.Components[:c.n]
		h := *s.H
		h.Branches = slices.Clone(h.Branches)
		h.Branches[0].Make = model.Opt[model.Make]{V: model.MakeLaid, Set: c.asked}
		was := *s
		was.H = &h
		if c.pinned {
			tr.built.H = tr.h.EditBranch(0, func(b *model.Branch) { b.Layers[0].Pinned = b.Layers[0].Of[:1] })
		}
		err := tr.layAnew(&was, 0)
		b := &tr.h.Branches[0]
		if few := err == nil && !b.Make.Set && b.Layers == nil; few != c.few {
			t.Errorf("%+v: %v, %+v", c, err, b)
		}
	}
}

// Taken up, a variant that says how a branch is made and nothing of its layers leaves them to be proposed; one with covers gives those.
func TestTakenUpByMakeAndCovers(t *testing.T) {
	s, _ := nineteen(t)
	s = calc.Build(written(s, s.H, 0), s.Base, s)
	if len(s.H.Branches[0].Layers) != 3 {
		t.Fatal("no lay-up stands in the file")
	}
	h, gone, err := Taken(s, 0, model.Aside{Letter: model.Some(model.Letter("A")), Make: model.Some(model.MakeTwisted)})
	if b := h.Branches[0]; err != nil || len(gone) != 0 || b.Layers != nil || b.Make != model.Some(model.MakeTwisted) {
		t.Errorf("%v %v %+v", err, gone, b)
	}
	h, _, err = Taken(s, 0, model.Aside{Letter: model.Some(model.Letter("A")), Make: model.Some(model.MakeLaid),
		Outer: model.Some(model.HandLeft)})
	if b := h.Branches[0]; err != nil || b.Make != s.H.Branches[0].Make || b.Outer != model.Some(model.HandLeft) {
		t.Errorf("made as it is: %v %+v", err, b)
	}
	covers := []model.Cover{{What: model.CoverTape, ThickMM: model.Some[unit.Millimetre](0.2)}}
	h, _, err = Taken(s, 0, model.Aside{Letter: model.Some(model.Letter("A")), Covers: covers})
	if got := h.Branches[0].Covers; err != nil || len(got) != 1 || got[0].What != model.CoverTape || got[0].ThickMM.V != 0.2 {
		t.Errorf("%v %+v", err, got)
	}
	same := model.Aside{Letter: model.Some(model.Letter("A")), Spec: model.Some(s.H.Wires[0].Spec)}
	if h, _, err = Taken(s, 0, same); err != nil || h != s.H {
		t.Errorf("the specification that it has: %v", err)
	}
	for _, i := range []int{-1, 1} {
		if _, _, err := Taken(s, i, same); err == nil || err.Error() != "there is no such branch" {
			t.Errorf("branch %d: %v", i, err)
		}
	}
}
