package bundle

import (
	"fmt"
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// shop is a branch of a centre and one layer, 4 mm predicted over it, 3.8 to 4.3 with its wires at their limits: a, b and c are of
// one reel, d of another.
func shop(corrections ...catalogue.Correction) *sheet.Sheet {
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}}}
	s := &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{Corrections: corrections}}
	var members []sheet.Member
	for k, id := range []string{"a", "b", "c", "d"} {
		h.Wires = append(h.Wires, model.Wire{ID: id, Spec: "fine", Size: [4]string{"22", "22", "22", "20"}[k]})
		s.Wires = append(s.Wires, sheet.Wire{})
		members = append(members, sheet.Member{ID: id})
	}
	s.Base = &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{{Spec: "fine", Size: "22"}: {Spec: "fine", Size: "22",
		OverMM: 1}}}
	s.Index = model.NewIndex(h)
	s.Branches = []sheet.Branch{{OverMM: 4, OverMinMM: 3.8, OverMaxMM: 4.3, TapeMM: 3.6, TapeMinMM: 3.5,
		Layers: []sheet.Layer{{Members: members[3:], OverMM: 2}, {Members: members[:3], OverMM: 4}}}}
	return s
}

func corrected(of string, bias, spread unit.Ratio) catalogue.Correction {
	return catalogue.Correction{Of: of, Bias: bias, Spread: spread}
}

// What a shop has learned moves a branch, by hand: a quarter more of 4 mm is 5, of 3.8 to 4.3 it is 4.75 to 5.375, of the tape
// 4.5 and 4.375. Twice a spread of an eighth to each side is wider: 3.75 to 6.25, and 3.375 under tape.
func TestLearnedByHand(t *testing.T) {
	type figures struct{ over, least, most, tape, tapeLeast unit.Millimetre }
	predicted := figures{4, 3.8, 4.3, 3.6, 3.5}
	two, other, reel := corrected("over, 2 layers", 0.25, 0), corrected("over, 3 layers", 0.5, 0.1), corrected("over, fine 22", 0.5, 0)
	wide := corrected("over, 2 layers", 0.25, 0.125)
	back := two
	back.Withdrawn = true
	for _, c := range []struct {
		name        string
		corrections []catalogue.Correction
		want        figures
		by          catalogue.Correction
	}{
		{"nothing learned", nil, predicted, catalogue.Correction{}},
		{"of other bundles", []catalogue.Correction{other}, predicted, catalogue.Correction{}},
		{"a quarter more", []catalogue.Correction{two}, figures{5, 4.75, 5.375, 4.5, 4.375}, two},
		{"with a spread", []catalogue.Correction{wide}, figures{5, 3.75, 6.25, 4.5, 3.375}, wide},
		{"of the reel", []catalogue.Correction{reel}, figures{6, 5.7, 6.45, 5.4, 5.25}, reel},
		{"of the layers before the reel", []catalogue.Correction{two, reel}, figures{5, 4.75, 5.375, 4.5, 4.375}, two},
		{"withdrawn", []catalogue.Correction{two, back}, predicted, catalogue.Correction{}},
		{"a tenth less", []catalogue.Correction{corrected("over, 2 layers", -0.1, 0)}, figures{3.6, 3.42, 3.87, 3.24, 3.15},
			corrected("over, 2 layers", -0.1, 0)},
	} {
		s := shop(c.corrections...)
		b := &s.Branches[0]
		b.Learned = sheet.Learned{PredictedMM: 99}
		learn(s, 0)
		got := figures{b.OverMM, b.OverMinMM, b.OverMaxMM, b.TapeMM, b.TapeMinMM}
		g, w := reflect.ValueOf(got), reflect.ValueOf(c.want)
		for k := range g.NumField() {
			if math.Abs(g.Field(k).Float()-w.Field(k).Float()) > 1e-9 {
				t.Errorf("%s: %+v, want %+v", c.name, got, c.want)
			}
		}
		learned := sheet.Learned{}
		if c.by.Of != "" {
			learned = sheet.Learned{Correction: c.by, PredictedMM: 4}
		}
		if b.Learned != learned || b.Predicted != (sheet.Predicted{Over: 4, Least: 3.8, Most: 4.3, Tape: 3.6, TapeLeast: 3.5}) {
			t.Errorf("%s: learned %+v, predicted %+v", c.name, b.Learned, b.Predicted)
		}
	}
	for _, change := range []func(b *sheet.Branch){func(b *sheet.Branch) { b.Layers = nil }, func(b *sheet.Branch) { b.OverMM = 0 }} {
		s := shop(two)
		change(&s.Branches[0])
		if learn(s, 0); s.Branches[0].Learned != (sheet.Learned{}) || s.Branches[0].OverMinMM != 3.8 {
			t.Errorf("nothing lies there: %+v", s.Branches[0])
		}
	}
	s := shop(two)
	s.Branches[0].OverMM = 0.8
	if learn(s, 0); s.Branches[0].OverMM != 1 {
		t.Errorf("a thin branch: %v", s.Branches[0].OverMM)
	}
	// Each layer goes by what is known of as many; one correction is told once.
	one := corrected("over, 1 layer", 0.1, 0)
	for _, c := range []struct{ have, want []catalogue.Correction }{
		{nil, nil}, {[]catalogue.Correction{other}, nil}, {[]catalogue.Correction{two, one}, []catalogue.Correction{one, two}},
		{[]catalogue.Correction{reel}, []catalogue.Correction{reel}}, {[]catalogue.Correction{reel, two}, []catalogue.Correction{two}},
		{[]catalogue.Correction{corrected("over, fine 20", 1, 0), reel}, []catalogue.Correction{corrected("over, fine 20", 1, 0), reel}},
	} {
		if got := Corrections(shop(c.have...), 0); !slices.Equal(got, c.want) {
			t.Errorf("%v: %v, want %v", c.have, got, c.want)
		}
	}
	same := shop(reel)
	same.Branches[0].Layers[0].Members[0].ID = "a"
	if got := Corrections(same, 0); len(got) != 1 {
		t.Errorf("one for both layers: %v", got)
	}
}

// A correction in words, and what a serial that was begun with such words goes by: the shop's own, the newest of those that read so, as
// long as it was not withdrawn; else what the words say.
func TestBegunByHand(t *testing.T) {
	const of = "over, 2 layers"
	for bias, want := range map[unit.Ratio]string{0.02: of + ": +2.0 %", -0.0126: of + ": -1.3 %", 0: of + ": +0.0 %",
		0.25: of + ": +25.0 %"} {
		if got := InWords(of, bias); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if got := []string{OverGroup(1), OverGroup(2), OverGroup(11)}; !slices.Equal(got, []string{"over, 1 layer", of, "over, 11 layers"}) {
		t.Errorf("%q", got)
	}
	early, late, other := corrected(of, 0.0201, 0.1), corrected(of, 0.0199, 0.2), corrected(of, 0.03, 0.3)
	back := late
	back.Withdrawn = true
	elsewhere := corrected("over, 1 layer", 0.0201, 0.4)
	for _, c := range []struct {
		name   string
		goesBy []string
		shop   []catalogue.Correction
		want   catalogue.Correction
		ok     bool
	}{
		{"no words", []string{}, []catalogue.Correction{early}, catalogue.Correction{}, false},
		{"of others", []string{"over, 1 layer: +2.0 %"}, []catalogue.Correction{early}, catalogue.Correction{}, false},
		{"the shop has it", []string{"over, 1 layer: +2.0 %", of + ": +2.0 %"}, []catalogue.Correction{early, other, elsewhere}, early,
			true},
		{"the newest that reads so", []string{of + ": +2.0 %"}, []catalogue.Correction{early, late, other}, late, true},
		{"one was withdrawn", []string{of + ": +2.0 %"}, []catalogue.Correction{early, back}, early, true},
		{"the shop has it no more", []string{of + ": +2.5 %"}, []catalogue.Correction{early}, corrected(of, 0.025, 0), true},
		{"less", []string{of + ": -2.5 %"}, nil, corrected(of, -0.025, 0), true},
		{"no number", []string{of + ": some %"}, nil, catalogue.Correction{}, false},
		{"no number to reckon with", []string{of + ": Inf %"}, nil, catalogue.Correction{}, false},
		{"no number, then one", []string{of + ": some %", of + ": +4.0 %"}, nil, corrected(of, 0.04, 0), true},
	} {
		got, ok := Begun(&catalogue.Catalogue{Corrections: c.shop}, &model.Build{GoesBy: c.goesBy}, of)
		if got != c.want || ok != c.ok {
			t.Errorf("%s: %+v %v, want %+v", c.name, got, ok, c.want)
		}
		// The same through a layer of the branch, and as its share.
		s := shop(c.shop...)
		if got, ok := correctionFor(s, &model.Build{GoesBy: c.goesBy}, 0, 1); got != c.want || ok != c.ok {
			t.Errorf("%s, of a layer: %+v %v, want %+v", c.name, got, ok, c.want)
		}
		if share := LearnedBy(s, &model.Build{GoesBy: c.goesBy}, 0, 1); share != unit.Millimetre(1+c.want.Bias) {
			t.Errorf("%s: a share of %v", c.name, share)
		}
	}
	// A serial of which nothing was kept, and none at all, go by what is known today; a centre that is built up by nothing.
	s := shop(corrected("over, 1 layer", 0.5, 0), early)
	for _, b := range []*model.Build{nil, {}} {
		if got, ok := correctionFor(s, b, 0, 1); !ok || got != early {
			t.Errorf("%+v", got)
		}
		if a, b := LearnedBy(s, b, 0, 0), LearnedBy(s, b, 0, 1); a != 1.5 || b != 1.0201 {
			t.Errorf("shares of %v and %v", a, b)
		}
	}
	s.Branches[0].Layers[0].BuiltMM = 0.5
	s.Branches[0].Layers[1].BuiltMM = 0.5
	if a, b := LearnedBy(s, nil, 0, 0), LearnedBy(s, nil, 0, 1); a != 1 || b != 1.0201 {
		t.Errorf("built up: shares of %v and %v", a, b)
	}
}

// What a wire was on the shelf of a serial over what it is today, by hand: 1.1 over 1.
func TestShareOfTheShelf(t *testing.T) {
	shelf := func(spec, size string, mm unit.Millimetre) model.Shelved {
		return model.Shelved{Spec: model.Some(spec), Size: model.Some(size), OverMM: model.Some(mm)}
	}
	for _, c := range []struct {
		name   string
		change func(s *sheet.Sheet)
		shelf  []model.Shelved
		layer  int
		want   unit.Millimetre
	}{
		{"nothing kept", nil, nil, 1, 1},
		{"kept", nil, []model.Shelved{shelf("fine", "22", 1.1)}, 1, 1.1},
		{"kept behind others", nil, []model.Shelved{shelf("fine", "20", 2), shelf("coarse", "22", 3), shelf("fine", "22", 0),
			shelf("fine", "22", 0.9)}, 1, 0.9},
		{"the centre is of another", nil, []model.Shelved{shelf("fine", "22", 1.1)}, 0, 1},
		{"measured on a reel", func(s *sheet.Sheet) { s.H.Reels = []model.Reel{{Spec: "fine", Size: "22"}} },
			[]model.Shelved{shelf("fine", "22", 1.1)}, 1, 1},
		{"another reel measured", func(s *sheet.Sheet) {
			s.H.Reels = []model.Reel{{Spec: "fine", Size: "20"}, {Spec: "coarse", Size: "22"}}
		}, []model.Shelved{shelf("fine", "22", 1.1)}, 1, 1.1},
		{"in no catalogue today", func(s *sheet.Sheet) { s.Base = &catalogue.Catalogue{} }, []model.Shelved{shelf("fine", "22", 1.1)},
			1, 1},
		{"of no diameter today", func(s *sheet.Sheet) {
			s.Base.Wires[catalogue.WireKey{Spec: "fine", Size: "22"}] = catalogue.Wire{Spec: "fine", Size: "22"}
		}, []model.Shelved{shelf("fine", "22", 1.1)}, 1, 1},
		{"no wire", func(s *sheet.Sheet) { s.Branches[0].Layers[0].Members, s.Branches[0].Layers[1].Members = nil, nil },
			[]model.Shelved{shelf("fine", "22", 1.1)}, 1, 1},
	} {
		s := shop()
		if c.change != nil {
			c.change(s)
		}
		if got := begunShare(s, &model.Build{Shelf: c.shelf}, 0, c.layer); got != c.want {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
	s := shop()
	for tape, want := range map[unit.Millimetre]unit.Millimetre{0.04: 0.05, 0.05: 0.05, 0.1: 0.1} {
		if s.Limits.TapeMM = tape; BuiltWithin(s) != want {
			t.Errorf("tape of %v: within %v", tape, BuiltWithin(s))
		}
	}
}

// What was measured and is not as the sheet says, by hand. The branch goes from 0.95 to 1.075 of what is predicted, and callipers
// repeat to 0.05 mm, twice of which is allowed: of 4 mm, 3.70 to 4.40 by the mean of the readings.
func TestBuiltOverByHand(t *testing.T) {
	read := func(layer int, mm ...unit.Millimetre) model.Reading {
		return model.Reading{Branch: "T", Layer: layer, OverMM: mm}
	}
	said := func(mm, over string, what ...string) string {
		return fmt.Sprintf("warn built.over T 1: Serial 1: %s was measured at %s mm; the sheet says %s", append(what, "layer 1")[0], mm,
			over)
	}
	built := func(s *sheet.Sheet) { s.Branches[0].Layers[0].BuiltMM, s.Limits.TapeMM = 0.5, 0.3 }
	for _, c := range []struct {
		name     string
		change   func(s *sheet.Sheet)
		readings []model.Reading
		want     string
	}{
		{"as it should", nil, []model.Reading{read(1, 4)}, ""},
		{"nothing read", nil, []model.Reading{read(1)}, ""},
		{"just thick enough", nil, []model.Reading{read(1, 3.71)}, ""},
		{"thinner", nil, []model.Reading{read(1, 3.69)}, said("3.69", "4.0")},
		{"just thin enough", nil, []model.Reading{read(1, 4.39)}, ""},
		{"thicker", nil, []model.Reading{read(1, 4.41)}, said("4.41", "4.0")},
		{"the mean is", nil, []model.Reading{read(1, 3.6, 4.4)}, ""},
		{"the mean is not", nil, []model.Reading{read(1, 4, 5)}, said("4.50", "4.0")},
		{"another branch, then this", nil, []model.Reading{{Branch: "no", Layer: 1, OverMM: []unit.Millimetre{9}}, read(1, 5)},
			said("5.00", "4.0")},
		{"no such layer, then this", nil, []model.Reading{read(2, 9), read(1, 5)}, said("5.00", "4.0")},
		{"a branch that is not laid", func(s *sheet.Sheet) { s.Branches[0].OverMM = 0 }, []model.Reading{read(1, 5)}, ""},
		// Of 2 mm in the centre: 1.80 to 2.25.
		{"the centre", nil, []model.Reading{read(0, 1.81), read(0, 2.24)}, ""},
		{"the centre, thinner", nil, []model.Reading{read(0, 1.79)}, said("1.79", "2.0", "the centre")},
		// Built up, it may be off by a turn of tape of 0.3 mm: 1.60 to 2.45; what lies beneath, 1.5 mm, from 1.325 to 1.7125.
		{"built up", built, []model.Reading{read(0, 1.61), read(0, 2.44)}, ""},
		{"built up, thinner", built, []model.Reading{read(0, 1.59)}, said("1.59", "2.0", "the centre")},
		{"built up by thin tape", func(s *sheet.Sheet) { built(s); s.Limits.TapeMM = 0.02 }, []model.Reading{read(0, 1.81)}, ""},
		{"beneath the tape", built, []model.Reading{{Branch: "T", BareMM: []unit.Millimetre{1.33}}, {Branch: "T",
			BareMM: []unit.Millimetre{1.71}}}, ""},
		{"beneath the tape, thinner", built, []model.Reading{{Branch: "T", BareMM: []unit.Millimetre{1.32}}},
			said("1.32", "1.5", "the centre before the tape")},
		{"beneath the tape, thicker", built, []model.Reading{{Branch: "T", BareMM: []unit.Millimetre{1.72}}},
			said("1.72", "1.5", "the centre before the tape")},
	} {
		s := shop()
		s.Branches[0].Predicted = sheet.Predicted{Over: 4, Least: 3.8, Most: 4.3}
		if c.change != nil {
			c.change(s)
		}
		s.H.Builds = []model.Build{{Serial: "1", Readings: c.readings}}
		BuiltOver(s)
		if got := shopSays(s); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
	// With what was learned, twice a spread of 0.1 is a band of 0.8 to 1.2: of 4 mm and a quarter, 5, from 3.90 to 6.10. A serial that was
	// begun when the wire was 1.1 mm stands a tenth more: 5.5, 4.30 to 6.70.
	for _, c := range []struct {
		shelf []model.Shelved
		mm    unit.Millimetre
		want  string
	}{
		{nil, 3.91, ""}, {nil, 3.89, said("3.89", "5.0")}, {nil, 6.09, ""}, {nil, 6.11, said("6.11", "5.0")},
		{[]model.Shelved{{Spec: model.Some("fine"), Size: model.Some("22"), OverMM: model.Some[unit.Millimetre](1.1)}}, 4.29,
			said("4.29", "5.5")},
		{[]model.Shelved{{Spec: model.Some("fine"), Size: model.Some("22"), OverMM: model.Some[unit.Millimetre](1.1)}}, 6.69, ""},
	} {
		s := shop(corrected("over, 2 layers", 0.25, 0.1))
		s.Branches[0].Predicted = sheet.Predicted{Over: 4, Least: 3.8, Most: 4.3}
		s.H.Builds = []model.Build{{Serial: "1", Shelf: c.shelf, Readings: []model.Reading{read(1, c.mm)}}}
		BuiltOver(s)
		if got := shopSays(s); got != c.want {
			t.Errorf("learned, %v: %q, want %q", c.mm, got, c.want)
		}
	}
}

func shopSays(s *sheet.Sheet) string {
	var out []string
	for _, g := range s.Snags {
		out = append(out, fmt.Sprintf("%s %s %s %s: %s", g.Level, g.Rule, g.Where, g.Like, g.Says))
	}
	return strings.Join(out, "\n")
}
