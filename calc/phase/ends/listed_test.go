package ends

import (
	"slices"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// listedSheet is wires A and B from X to Y, cavity 1 to 1 and 2 to 2, beside an independent list.
func listedSheet(list ...model.Listed) *sheet.Sheet {
	h := &model.Harness{Terminations: []model.Termination{{ID: "X", Cavities: []string{"1", "2"}},
		{ID: "Y", Cavities: []string{"1", "2", "3"}}},
		Listed: list}
	for k, c := range []string{"1", "2"} {
		h.Wires = append(h.Wires, model.Wire{ID: "w" + c, From: model.Some("X:" + c), To: model.Some("Y:" + c),
			Signal: model.Some([]string{"A", "B"}[k])})
	}
	return &sheet.Sheet{H: h, Index: model.NewIndex(h)}
}

// What differs from the list stops, at the first cavity it is about; what agrees, and a harness without a list, says nothing. What was
// said before is taken over where list and signals are the same.
func TestWhatIsSaidOfTheList(t *testing.T) {
	a := model.Listed{Signal: model.Some("A"), Ends: []string{"X:1", "Y:1"}}
	b := model.Listed{Signal: model.Some("B"), Ends: []string{"X:2", "Y:2"}}
	wrong := model.Listed{Signal: model.Some("B"), Ends: []string{"X:2", "Y:3"}}
	for name, list := range map[string][]model.Listed{"no list": nil, "the same": {a, b}} {
		s := listedSheet(list...)
		Listed(s)
		if got := Disagreements(s); len(s.Snags) != 0 || len(got) != 0 || s.SaidListed != nil {
			t.Errorf("%s: %v, %v", name, said(s), got)
		}
	}
	s := listedSheet(a, wrong)
	Listed(s)
	want := []string{`stop list.joins Y:2: The independent list differs: Y:2 "B" is wired, not in the list`,
		`stop list.joins Y:3: The independent list differs: Y:3 "B" is in the list, not wired`}
	if got := said(s); len(got) < 2 || !slices.Equal(got[:2], want) || !slices.Equal(s.SaidListed, s.Snags) {
		t.Errorf("%q", got)
	}

	before := listedSheet(a, wrong)
	before.SaidListed = []sheet.Snag{{Rule: "list.joins", Says: "as before"}}
	h := *before.H
	next := &sheet.Sheet{H: &h, Index: before.Index, Reuse: sheet.Reuse{Prior: before, All: true}}
	if Listed(next); len(next.Snags) != 1 || next.Snags[0].Says != "as before" || len(next.SaidListed) != 1 {
		t.Errorf("not taken over: %q", said(next))
	}
	h.Wires = slices.Clone(h.Wires)
	h.Wires[1].Signal = model.Some("C")
	next = &sheet.Sheet{H: &h, Index: before.Index, Reuse: sheet.Reuse{Prior: before, All: true}}
	if Listed(next); len(next.Snags) == 0 || next.Snags[0].Says == "as before" {
		t.Errorf("another signal: %q", said(next))
	}
	next = &sheet.Sheet{H: before.H, Index: before.Index, Reuse: sheet.Reuse{Prior: before}}
	if Listed(next); len(next.Snags) == 0 || next.Snags[0].Says == "as before" {
		t.Errorf("the wires are not those of before: %q", said(next))
	}
}

// Two harnesses have one list and one set of signals, or not.
func TestSameList(t *testing.T) {
	list := []model.Listed{{Ends: []string{"X:1"}}}
	of := func(list []model.Listed, signals ...string) *model.Harness {
		h := &model.Harness{Listed: list}
		for _, s := range signals {
			h.Wires = append(h.Wires, model.Wire{Signal: model.Some(s)})
		}
		return h
	}
	one := of(list, "A", "B")
	for _, c := range []struct {
		b    *model.Harness
		want bool
	}{{of(list, "A", "B"), true}, {of(list, "A", "C"), false}, {of(list, "A"), false}, {of(slices.Clone(list), "A", "B"), false},
		{of(nil, "A", "B"), false}} {
		if got := sameListed(one, c.b); got != c.want {
			t.Errorf("%+v: %v", c.b, got)
		}
	}
}

// The splices of the catalogue: butt before parallel, and the smaller first.
func TestOrderOfSplices(t *testing.T) {
	s := &sheet.Sheet{Cat: &catalogue.Catalogue{Splices: map[string]catalogue.Splice{
		"a": {ID: "a", Build: "parallel", CMAMin: 1, CMAMax: 100}, "b": {ID: "b", Build: "butt", CMAMin: 2, CMAMax: 200},
		"c": {ID: "c", Build: "butt", CMAMin: 3, CMAMax: 50}, "d": {ID: "d", Build: "parallel", CMAMin: 4, CMAMax: 20},
		"e": {ID: "e", Build: "butt", CMAMin: 5, CMAMax: 70}}}}
	var got []string
	for _, p := range SpliceParts(s) {
		got = append(got, p.ID)
		if e := s.Cat.Splices[p.ID]; p.Parallel != (e.Build == "parallel") || p.Least != unit.CircularMil(e.CMAMin) ||
			p.Most != unit.CircularMil(e.CMAMax) {
			t.Errorf("%+v", p)
		}
	}
	if want := []string{"c", "e", "b", "d", "a"}; !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
}

// A part that no catalogue has is said once, and nothing is judged of it; nor of a splice that joins one wire or none.
func TestSpliceOfNoCatalogue(t *testing.T) {
	for _, c := range []struct {
		part  string
		wires []int
		want  []string
	}{
		{"nope", []int{0, 1}, []string{`warn splice.part S1: Part "nope" is in no catalogue: its barrel and its bulge are not known`}},
		{"", []int{0, 1}, nil}, // the copper of no wire is known
		{"nope", []int{0}, []string{"warn splice.one S1: It joins nothing: only wire w1 ends on it"}},
		{"nope", nil, []string{"warn splice.one S1: It joins nothing yet: no wire ends on it"}},
	} {
		h := &model.Harness{Wires: []model.Wire{{ID: "w1"}, {ID: "w2"}}, Splices: []model.Splice{{ID: "S1"}}}
		if c.part != "" {
			h.Splices[0].Part = model.Some(c.part)
		}
		s := &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{}, Index: model.NewIndex(h), Wires: make([]sheet.Wire, 2),
			Splices: []sheet.Splice{{Wires: c.wires}}}
		joinAt(s, 0, nil)
		sameSaid(t, c.part, said(s), c.want)
		if out := s.Splices[0]; out.Known || out.Fits {
			t.Errorf("%+v: %+v", c, out)
		}
	}
}

// The copper of a gauge is that of the first specification that has it; none where no catalogue does.
func TestCopperOfAGauge(t *testing.T) {
	key := func(spec string) catalogue.WireKey { return catalogue.WireKey{Spec: spec, Size: "22"} }
	of := func(a, b unit.SquareMM) *catalogue.Catalogue {
		out := &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{}}
		out.Wires[key("AS22759/41")], out.Wires[key("AS22759/44")] = catalogue.Wire{AreaMM2: a}, catalogue.Wire{AreaMM2: b}
		return out
	}
	for _, c := range []struct {
		cat  *catalogue.Catalogue
		want unit.SquareMM
	}{{of(0.4, 0.5), 0.4}, {of(0, 0.5), 0.5}, {of(0, 0), 0}, {&catalogue.Catalogue{}, 0}} {
		if got, ok := StrandedArea(c.cat, "22"); got != c.want || ok != (c.want > 0) {
			t.Errorf("%v %v, want %v", got, ok, c.want)
		}
	}
	if weaker("") != catalogue.Memory || weaker(catalogue.Published) != catalogue.Published {
		t.Error("what has no standing is from memory")
	}
}
