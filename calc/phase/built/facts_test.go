package built

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// bench is a sheet that is written down and not built: a trunk T from P to J, legs A to Q and B to R. The trunk holds the unit U in a
// centre that is built up, and round it a and b with a filler; a runs on in A, where the splice S lies, b in B.
func bench() *sheet.Sheet {
	text := model.Some[string]
	h := &model.Harness{
		Terminations: []model.Termination{{ID: "P"}, {ID: "Q", Boot: text("bt")}, {ID: "R"}},
		Breakouts:    []model.Breakout{{ID: "J", Transition: text("own")}},
		Splices:      []model.Splice{{ID: "S", At: "J", Toward: text("A"), OffsetMM: mm(50)}},
		Units:        []model.Unit{{ID: "U", Wires: []string{"d", "e"}, Shield: model.Some(true), DrainFrom: text("P:3")}},
		Branches: []model.Branch{{ID: "T", From: "P", To: "J", LengthMM: 500}, {ID: "A", From: "J", To: "Q", LengthMM: 300.004},
			{ID: "B", From: "J", To: "R", LengthMM: 200}},
	}
	s := &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{}, Limits: model.Limits{Adhesive: "epoxy", PackJoints: 4},
		Units: []sheet.Unit{{LayMM: 40, Dia: sheet.Dia{Nominal: 2.2}}}, Splices: []sheet.Splice{{Part: "sp", Wires: []int{0}}}}
	for k, id := range []string{"a", "b", "c", "d", "e"} {
		h.Wires = append(h.Wires, model.Wire{ID: id, Spec: "fine", Size: "00", Colour: text(fmt.Sprint(k))})
		s.Wires = append(s.Wires, sheet.Wire{})
	}
	s.Wires[0] = sheet.Wire{Cut: 812.346, Finished: 700, Path: []int{0, 1}}
	s.Wires[1] = sheet.Wire{Cut: 0.5, Finished: 0.25}
	of := func(ids ...string) (out []sheet.Member) {
		for _, id := range ids {
			out = append(out, sheet.Member{ID: id})
		}
		return out
	}
	filler := sheet.Member{ID: "filler", Kind: sheet.OfFiller}
	s.Branches = []sheet.Branch{
		{Layers: []sheet.Layer{{Members: of("U"), Hand: model.HandStraight, OverMM: 2.7, BuiltMM: 0.5, BuiltOf: "tp"},
			{Members: append(of("a", "b"), filler), Hand: model.HandRight, OverMM: 5, Fillers: 1, FillerMM: 1.1, LayMM: 0.9}},
			As: []model.Layer{{BindMM: mm(0.5)}, {BindMM: mm(0.2)}}, Sheath: sheet.Sheath{Part: "S1", FromMM: 10, ToMM: 480, CutMM: 500},
			Covers: []sheet.Covered{{What: model.CoverTape, Under: true, ToMM: 500}, {What: model.CoverSleeve, Part: "S2", FromMM: 100,
				ToMM: 200}}},
		{Layers: []sheet.Layer{{Members: of("a"), Hand: model.HandStraight, OverMM: 1, Fillers: 1}}},
		{Layers: []sheet.Layer{{Members: append(of("b"), filler), Hand: model.HandStraight, OverMM: 1, FillerMM: 1}},
			Sheath: sheet.Sheath{Part: "S3"}},
	}
	s.Terms = []sheet.Term{
		{Cavities: []string{"1", "2", "3", "4"}, State: map[string]sheet.Cavity{"1": {Wires: []string{"a", "b"}}, "3": {Drain: "U"}}},
		{Cavities: []string{"1"}, State: map[string]sheet.Cavity{"1": {Wires: []string{"a"}}}}, {}}
	s.Snags = []sheet.Snag{{Level: sheet.Stop, Rule: "r", Where: "T"}, {Level: sheet.Warn, Rule: "w", Where: "T"},
		{Level: sheet.Stop, Rule: "r", Where: "T", Says: "again"}, {Level: sheet.Stop, Rule: "r", Where: "A"}}
	s.Index = model.NewIndex(h)
	return s
}

// written is a fact in one line: its key, what it is ticked with where that is another, what it is about, its kind, what it makes, and
// behind a bar the steps it goes over.
func written(f Fact) string {
	var of []string
	v := reflect.ValueOf(f.What)
	for k := range v.NumField() {
		if x := v.Field(k); !x.IsZero() {
			if x.Kind() == reflect.Struct {
				x = x.FieldByName("V")
			}
			of = append(of, fmt.Sprint(v.Type().Field(k).Name, " ", x))
		}
	}
	step := f.Step
	if step == f.Key {
		step = ""
	}
	return fmt.Sprintf("%s; %s; %s; %s; %d; %s | %s", f.Key, step, f.At, f.Of, f.Kind, strings.Join(of, ", "), strings.Join(f.On, ", "))
}

// Every fact of that bench, by hand, with all it goes over.
func TestFactsByHand(t *testing.T) {
	onT := "lay T 1, wind tape T as stocked"
	overJ := onT + ", thread sheath T S1, thread sleeve T S2, lay A 0, lay B 0, thread sheath B S3"
	work := "cut a, cut b, make U, lay T 0, build up T, lay T 1, lay A 0, lay B 0, join S"
	pins := "pin P, pin Q, pin R"
	threads := "wind tape T as stocked, thread sheath T S1, thread sleeve T S2, thread sheath B S3, " +
		"thread transition J own, thread boot Q bt"
	shrinks := "shrink sheath T S1, shrink sleeve T S2, shrink sheath B S3, shrink transition J own, shrink boot Q bt"
	want := []string{
		"cut a; cut fine 2/0 812; a; a; 0; Spec fine, Size 00, Colour 0, MM 812.35, FinishedMM 700, Path [T A], PathMM [500 300] | ",
		"cut b; cut fine 2/0 1; b; b; 0; Spec fine, Size 00, Colour 1, MM 0.5, FinishedMM 0.25 | ",
		"make U; ; U; U; 1; Members [d e], Ends [drain P:3 drain -], LayMM 40, OverMM 2.2 | cut d, cut e",
		"lay T 0; ; T centre; T; 2; Hand straight, Members [U], Fillers 0, OverMM 2.2, Path [T], PathMM [500] | make U",
		"build up T; ; T centre; T; 2; Part tp, BindMM 0.5, OverMM 2.7, Path [T], PathMM [500] | lay T 0",
		"lay T 1; ; T layer 1; T; 2; Hand RH, Members [a b], Fillers 1, FillerMM 1.1, BindMM 0.2, LayMM 0.9, OverMM 5, Path [T], " +
			"PathMM [500] | cut a, cut b, build up T",
		"lay A 0; ; A centre; A; 2; Hand straight, Members [a], Fillers 1, OverMM 1, Path [A], PathMM [300] | cut a, join S",
		"lay B 0; ; B centre; B; 2; Hand straight, Members [b], Fillers 0, OverMM 1, Path [B], PathMM [200] | cut b",
		"join S; ; S; S; 3; Part sp, Place J along A, Members [a], MM 50 | cut a",
		"wind tape T as stocked; ; T tape as stocked; T; 4; Part as stocked, FromMM 0, ToMM 500, Path [T], PathMM [500] | lay T 1",
		"thread sheath T S1; ; T sheath S1; T; 4; Part S1, MM 500, FromMM 10, ToMM 480, Path [T], PathMM [500] | " + onT,
		"thread sleeve T S2; ; T sleeve S2; T; 4; Part S2, FromMM 100, ToMM 200, Path [T], PathMM [500] | " + onT + ", thread sheath T S1",
		"thread sheath B S3; ; B sheath S3; B; 4; Part S3, FromMM 0, ToMM 0, Path [B], PathMM [200] | lay B 0",
		"thread transition J own; ; J transition own; J; 4; Part own | " + overJ,
		"thread boot Q bt; ; Q boot bt; Q; 4; Part bt | lay A 0",
		"pin P; ; P; P; 5; Ends [1 a+b 3 drain U] | cut a, cut b, make U, thread sheath T S1, thread sleeve T S2",
		"pin Q; ; Q; Q; 5; Ends [1 a] | cut a, thread boot Q bt, thread transition J own",
		"pin R; ; R; R; 5;  | thread sheath B S3, thread transition J own",
		"shrink sheath T S1; ; T sheath S1; T; 4; Part S1, MM 500, FromMM 10, ToMM 480, Path [T], PathMM [500] | thread sheath T S1, " +
			"wind tape T as stocked",
		"shrink sleeve T S2; ; T sleeve S2; T; 4; Part S2, FromMM 100, ToMM 200, Path [T], PathMM [500] | thread sleeve T S2, " +
			"wind tape T as stocked, shrink sheath T S1",
		"shrink sheath B S3; ; B sheath S3; B; 4; Part S3, FromMM 0, ToMM 0, Path [B], PathMM [200] | thread sheath B S3",
		"shrink transition J own; ; J transition own; J; 4; Part own | thread transition J own, " +
			"wind tape T as stocked, shrink sheath T S1, " +
			"shrink sleeve T S2, shrink sheath B S3",
		"shrink boot Q bt; ; Q boot bt; Q; 4; Part bt | thread boot Q bt",
		"glue 1; ; mix 1; ; 6; Members [J T, A, B] | shrink transition J own",
		"glue 2; ; mix 2; ; 6; Members [Q lip, cable] | shrink boot Q bt",
		"hold stops; ; stops; ; 7; Members [T r A r] | ",
		"hold bare; ; hold bare; ; 7;  | " + work,
		"hold pinned; ; hold pinned; ; 7;  | " + work + ", " + pins,
		"hold fit; ; hold fit; ; 7;  | " + work + ", " + threads + ", " + pins,
		"weigh; ; the harness; ; 7;  | " + work + ", " + threads + ", " + pins + ", " + shrinks + ", glue 1, glue 2",
		"hold loaded; ; hold loaded; ; 7;  | " + work + ", " + pins,
	}
	got := Facts(bench())
	for k := range max(len(got), len(want)) {
		var g, w string
		if k < len(got) {
			g = written(got[k])
		}
		if k < len(want) {
			w = want[k]
		}
		if g != w {
			t.Errorf("%d:\n%s, want\n%s", k, g, w)
		}
	}
	calm := bench()
	calm.Snags = calm.Snags[1:2]
	for _, f := range Facts(calm) {
		if f.Key == HoldStops {
			t.Error("there is a hold on stops, and there are no stops")
		}
	}
	// Of what is not known of unit and splice nothing is on record.
	bare := bench()
	bare.Units[0], bare.Splices[0].Part = sheet.Unit{}, ""
	bare.H.Units[0].Shield, bare.H.Splices[0].Toward = model.Opt[bool]{}, model.Opt[string]{}
	for _, f := range Facts(bare) {
		switch w := written(f); {
		case f.Kind == Make && w != "make U; ; U; U; 1; Members [d e] | cut d, cut e",
			f.Kind == Join && w != "join S; ; S; S; 3; Place J, Members [a] | cut a":
			t.Error(w)
		}
	}
}

// When a splice is made, by hand: one that lies in a branch, or at a station between two, before what is laid over it in the first
// layer that has something ending on it; one at a fork once the branch that leads there is laid; one where the laying starts at once.
func TestWhenASpliceIsMade(t *testing.T) {
	two := func(s *sheet.Sheet) { // A comes first, and J is a station between it and T
		s.H.Branches[2].From, s.H.Splices[0].Toward = "Q", model.Opt[string]{}
	}
	for _, c := range []struct {
		name   string
		change func(s *sheet.Sheet)
		want   Made
	}{
		{"in a leg", nil, Made{1, 0, true}},
		{"in a leg, at its very start", func(s *sheet.Sheet) { s.H.Splices[0].OffsetMM = mm(0) }, Made{0, 2, false}},
		{"in a leg that has nothing of it", func(s *sheet.Sheet) { s.Splices[0].Wires = []int{1} }, Made{0, 2, false}},
		{"at the fork", func(s *sheet.Sheet) { s.H.Splices[0].Toward = model.Opt[string]{} }, Made{0, 2, false}},
		{"toward the trunk", func(s *sheet.Sheet) { s.H.Splices[0].Toward = model.Some("T") }, Made{0, 1, true}},
		{"of a unit's wire", func(s *sheet.Sheet) {
			s.H.Splices[0].Toward, s.Splices[0].Wires = model.Some("T"), []int{4}
		}, Made{0, 0, true}},
		{"of a drain", func(s *sheet.Sheet) {
			s.H.Splices[0].Toward, s.Splices[0].Wires, s.H.Units[0].DrainTo = model.Some("T"), nil, model.Some("S")
		}, Made{0, 0, true}},
		{"of the drain's other end", func(s *sheet.Sheet) {
			s.H.Splices[0].Toward, s.Splices[0].Wires, s.H.Units[0].DrainFrom = model.Some("T"), nil, model.Some("S")
		}, Made{0, 0, true}},
		{"at a station of its own", two, Made{0, 1, true}},
		{"at a station, in the second alone", func(s *sheet.Sheet) { two(s); s.Branches[0].Layers[1].Members = nil }, Made{1, 0, true}},
		{"where the laying starts", func(s *sheet.Sheet) {
			s.H.Splices[0].At, s.H.Splices[0].Toward = "P", model.Opt[string]{}
		}, Made{0, 0, false}},
		{"at an end", func(s *sheet.Sheet) {
			s.H.Splices[0].At, s.H.Splices[0].Toward = "R", model.Opt[string]{}
		}, Made{2, 1, false}},
		{"nowhere", func(s *sheet.Sheet) {
			s.H.Splices[0].At, s.H.Splices[0].Toward = "no", model.Opt[string]{}
		}, Made{-1, 0, false}},
	} {
		s := bench()
		if c.change != nil {
			c.change(s)
		}
		s.Index = model.NewIndex(s.H)
		if got := MadeWhen(s); !slices.Equal(got, []Made{c.want}) {
			t.Errorf("%s: %+v, want %+v", c.name, got, c.want)
		}
	}
}

// begunOn is a serial on which all of a bench is done but what is left out.
func begunOn(s *sheet.Sheet, without ...string) *model.Build {
	b := &model.Build{Serial: "1"}
	for _, f := range Facts(s) {
		if !slices.Contains(without, f.Key) {
			b.Tick(model.Ticked{Key: f.Key, What: model.Some(f.What)})
		}
	}
	return b
}

// Two tubes are others now: each is one difference, of the step that threaded it on and the one that shrank it, with all that goes over
// either. A sleeve lies over the one, and not over the other.
func TestTubesThatAreOthersNow(t *testing.T) {
	b := begunOn(bench())
	s := bench()
	s.Branches[0].Sheath.Part, s.Branches[2].Sheath.Part = "S9", "S8"
	got := Since(s, b).Differences
	if len(got) != 2 {
		t.Fatalf("%+v", got)
	}
	for k, want := range []struct {
		says, part string
		pin        string
		over       bool // the sleeve goes over it
	}{{"sheath of T is S9, was S1", "sheath T S1", "pin P", true}, {"sheath of B is S8, was S3", "sheath B S3", "pin R", false}} {
		d := got[k]
		if d.Says != want.says || !slices.Equal(d.Steps, []string{"thread " + want.part, "shrink " + want.part}) {
			t.Errorf("%s: steps %q, want %s", d.Says, d.Steps, want.says)
		}
		for _, key := range []string{"thread " + want.part, "shrink " + want.part, want.pin, "thread transition J own",
			"shrink transition J own"} {
			if !slices.Contains(d.Again, key) {
				t.Errorf("%s: %s is not done again: %q", d.Says, key, d.Again)
			}
		}
		for _, key := range []string{"shrink sleeve T S2", "thread sleeve T S2"} {
			if slices.Contains(d.Again, key) != want.over {
				t.Errorf("%s: %s is done again: %v", d.Says, key, !want.over)
			}
		}
		if slices.Contains(d.Again, "cut a") || slices.Contains(d.Again, "shrink boot Q bt") {
			t.Errorf("%s: what does not lie over it is done again: %q", d.Says, d.Again)
		}
	}
}

// A wire that was laid, was never on record as cut and is in the sheet no more, is named by itself, with the steps that had it.
func TestPieceThatIsGone(t *testing.T) {
	b := begunOn(bench(), "cut b")
	s := bench()
	s.H.Wires[1].ID = "x"
	s.Wires[1].Cut = 0
	s.Branches[0].Layers[1].Members = []sheet.Member{{ID: "a"}}
	s.Branches[2].Layers[0].Members = nil
	s.Terms[0].State = map[string]sheet.Cavity{"1": {Wires: []string{"a"}}, "3": {Drain: "U"}}
	s.Branches[0].Layers[1].Fillers = 1
	s.Index = model.NewIndex(s.H)
	got := Since(s, b).Differences
	if len(got) != 1 || got[0].At != "b" || got[0].Says != "b is no longer in the sheet" || got[0].Built != "built with it" ||
		!slices.Equal(got[0].Steps, []string{"lay T 1", "lay B 0", "pin P"}) {
		t.Errorf("%+v", got)
	}
}
