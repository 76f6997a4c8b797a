package offer

import (
	"fmt"
	"slices"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// wired is terminations with cavities, "NAME SIZE WIRE" each, the wire left out where it is free.
func wired(all ...[][3]string) *sheet.Sheet {
	s := &sheet.Sheet{H: &model.Harness{}}
	for k, cavities := range all {
		s.H.Terminations = append(s.H.Terminations, model.Termination{ID: fmt.Sprint("P", k)})
		t := sheet.Term{State: map[string]sheet.Cavity{}}
		for _, c := range cavities {
			t.Cavities = append(t.Cavities, c[0])
			state := sheet.Cavity{Size: c[1]}
			if c[2] != "" {
				state.Wires = []string{c[2]}
				t.Used++
			} else {
				t.Free = append(t.Free, c[0])
			}
			t.State[c[0]] = state
		}
		s.Terms = append(s.Terms, t)
	}
	return s
}

// Wired like another can be what has the same cavities in the same order with the same contacts, and those free that the other uses.
func TestWhatCouldBeWiredLikeIt(t *testing.T) {
	s := wired([][3]string{{"1", "20", "w"}, {"2", "16", ""}}, // like this
		[][3]string{{"1", "20", ""}, {"2", "16", "x"}}, [][3]string{{"1", "20", "y"}, {"2", "16", ""}}, // used there is free, or not
		[][3]string{{"1", "20", ""}, {"2", "20", ""}}, [][3]string{{"2", "16", ""}, {"1", "20", ""}}, // another contact, another order
		[][3]string{{"1", "20", ""}}, [][3]string{{"1", "20", ""}, {"2", "16", ""}}, [][3]string{{"1", "20", "z"}, {"2", "16", "z"}})
	if got := Like(s, 0); !slices.Equal(got, []int{1, 6}) {
		t.Errorf("%v, want [1 6]", got)
	}
	if got := Like(s, 6); got != nil {
		t.Errorf("nothing is wired there, and %v", got)
	}
}

// The bank beyond a branch counts each end once, where its branches lead in a ring, too.
func TestBankInARing(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "Q"}, {ID: "P"}, {ID: "R"}}, Splices: []model.Splice{{ID: "S", At: "K"},
		{ID: "T", At: "P"}},
		Breakouts: []model.Breakout{{ID: "J"}, {ID: "K"}}, Branches: []model.Branch{{ID: "a", From: "P", To: "J"}, {ID: "b", From: "J",
			To: "K"},
			{ID: "c", From: "J", To: "Q"}, {ID: "d", From: "K", To: "Q"}, {ID: "e", From: "R", To: "K"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	if terms, splices := Bank(s, 0); !slices.Equal(terms, []int{0, 2}) || !slices.Equal(splices, []int{0}) {
		t.Errorf("%v, %v", terms, splices)
	}
}

// Laid like another branch is only what has the same sizes, as often: size for size, a unit for a unit, pins and locks left out.
func TestLaidLikeBySize(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "A"}, {ID: "B"}}, Units: []model.Unit{{ID: "U", Wires: []string{"u"}}, {ID: "V",
		Wires: []string{"v"}}}}
	s := &sheet.Sheet{H: h}
	for _, w := range []string{"a1", "a2", "a3", "b1", "b2", "b3", "u", "v"} {
		h.Wires = append(h.Wires, model.Wire{ID: w})
		d := unit.Millimetre(1)
		if w == "a2" || w == "b3" {
			d = 2
		}
		s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Nominal: d}})
	}
	s.Units = []sheet.Unit{{Dia: sheet.Dia{Nominal: 1}}, {Dia: sheet.Dia{Nominal: 1}}}
	s.Index = model.NewIndex(h)
	for _, c := range []struct {
		name     string
		from, to []string
		want     string
	}{
		{"as many of each", []string{"a1", "a2", "a3"}, []string{"b1", "b2", "b3"}, "[b1] [b3 b2]"},
		{"one thick for a thin one", []string{"a1", "a2", "a3"}, []string{"b1", "b2", "a1"}, ""},
		{"a unit for a wire", []string{"a1", "a2", "a3"}, []string{"V", "b3", "b2"}, ""},
		{"a unit for a unit", []string{"U", "a2", "a3"}, []string{"b1", "b3", "V"}, "[V] [b3 b1]"},
		{"one less", []string{"a1", "a2", "a3"}, []string{"b1", "b3"}, ""},
	} {
		s.Branches = []sheet.Branch{{Make: model.MakeLaid, Components: c.from, As: []model.Layer{{Of: c.from[:1], Pinned: c.from[:1]},
			{Of: c.from[1:], Locked: model.Some(true)}}}, {Components: c.to}}
		got, ok := LaidLike(s, 0, 1)
		text := ""
		for k, l := range got {
			text += fmt.Sprint(l.Of)
			if k == 0 {
				text += " "
			}
			if l.Pinned != nil || l.Locked.Set {
				t.Errorf("%s: %+v", c.name, l)
			}
		}
		if text != c.want || ok != (c.want != "") {
			t.Errorf("%s: %q %v, want %q", c.name, text, ok, c.want)
		}
	}
	if _, ok := LaidLike(s, 0, 0); ok {
		t.Error("like itself")
	}
}

// A plan whose centre is built up from 2 to 3.4 mm is bound by the 1.4 mm that the tape adds; fillers stand in the layers round it alone.
func TestPlannedWithTape(t *testing.T) {
	p := plan.Plan{Layers: []plan.Layer{{Sizes: []unit.Millimetre{2}, N: []int{1}, CentreMM: 3.4},
		{Sizes: []unit.Millimetre{2}, N: []int{7}, Fillers: 1, FillerMM: 2}}}
	cat := &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{}}
	b, ok := Planned(p, []Piece{{OverMM: 2, N: 8}}, model.Rules{}, cat)
	if !ok || len(b.As) != 2 {
		t.Fatalf("%v %+v", ok, b)
	}
	if bind := b.As[0].BindMM.V; bind < 1.4-1e-9 || bind > 1.4+1e-9 || b.As[0].Fillers.Set {
		t.Errorf("%+v", b.As[0])
	}
	if l := b.As[1]; l.BindMM.Set || l.Fillers.V != 1 || l.FillerMM.V != 2 || len(l.Of) != 7 {
		t.Errorf("%+v", l)
	}
	if _, ok := Planned(p, []Piece{{OverMM: 1, N: 8}}, model.Rules{}, cat); ok {
		t.Error("a plan of other pieces")
	}
}

// A substitute is a spare between the same two connectors, either way round, as thick or thicker.
func TestSubstitutesOfAWire(t *testing.T) {
	some := model.Some[string]
	h := &model.Harness{Terminations: []model.Termination{{ID: "P"}, {ID: "Q"}, {ID: "R"}}}
	s := &sheet.Sheet{H: h}
	add := func(id, from, to string, role model.Role, area unit.SquareMM) {
		h.Wires = append(h.Wires, model.Wire{ID: id, From: model.Opt[string]{V: from, Set: from != ""}, To: some(to),
			Role: model.Some(role)})
		s.Wires = append(s.Wires, sheet.Wire{Entry: catalogue.Wire{AreaMM2: area}})
	}
	add("w", "P:1", "Q:1", model.RoleSignal, 0.4)
	add("like", "P:2", "Q:2", model.RoleSpare, 0.4)
	add("thin", "P:3", "Q:3", model.RoleSpare, 0.3)
	add("used", "P:4", "Q:4", model.RoleSignal, 0.4)
	add("away", "P:5", "R:1", model.RoleSpare, 0.4)
	add("open", "", "Q:6", model.RoleSpare, 0.4)
	add("back", "Q:5", "P:6", model.RoleSpare, 0.6)
	s.Index = model.NewIndex(h)
	want := []Substitute{{1, "P:1", "Q:1", "P:2", "Q:2"}, {6, "P:1", "Q:1", "P:6", "Q:5"}}
	if got := Substitutes(s, 0); !slices.Equal(got, want) {
		t.Errorf("%+v, want %+v", got, want)
	}
	if got := Substitutes(s, 5); got != nil {
		t.Errorf("of a wire that starts nowhere: %+v", got)
	}
}
