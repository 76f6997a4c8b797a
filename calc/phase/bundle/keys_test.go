package bundle

import (
	"fmt"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// trunk is a sheet that is written down and not built: wires a to e, 1 mm each, and a unit U of f and g, 2 mm, from P along T to J, from
// there along A to Q. Another branch B goes on from J to R and a branch C from Q to X.
func trunk() *sheet.Sheet {
	mm, text := model.Some[unit.Millimetre], model.Some[string]
	h := &model.Harness{
		Terminations: []model.Termination{{ID: "P"}, {ID: "Q"}, {ID: "R"}, {ID: "X"}},
		Breakouts:    []model.Breakout{{ID: "J", ZoneMM: mm(40)}, {ID: "Q2"}},
		Units:        []model.Unit{{ID: "U", Wires: []string{"f", "g"}, Build: model.Some(model.BuildPair)}},
		Branches: []model.Branch{
			{ID: "T", From: "P", To: "J", LengthMM: 500, Layers: []model.Layer{{Of: []string{"a"}}, {Of: []string{"b", "c", "d", "e"},
				Fillers: model.Some(1), FillerMM: mm(1), BindMM: mm(0.1), BindPart: text("tape"), LayMM: mm(60)}, {Of: []string{"U"}}}},
			{ID: "A", From: "J", To: "Q", LengthMM: 300}, {ID: "B", From: "J", To: "R", LengthMM: 200}, {ID: "C", From: "J", To: "X"}},
	}
	s := &sheet.Sheet{H: h, Base: &catalogue.Catalogue{}, Cat: &catalogue.Catalogue{}, Limits: model.Limits{LayRatio: 12, LiftMax: 0.05,
		LeaverWeight: 0.2, Outer: model.HandRight}, Terms: make([]sheet.Term, 4), Units: []sheet.Unit{{Dia: sheet.Dia{Nominal: 2,
		Min: 1.9, Max: 2.1},
		Path: []int{0, 1}, HasPath: true}}}
	for k, id := range []string{"a", "b", "c", "d", "e", "f", "g"} {
		at := fmt.Sprint(k + 1)
		h.Wires = append(h.Wires, model.Wire{ID: id, Spec: "s", Size: "22", Colour: text("9"), From: text("P:" + at), To: text("Q:" + at)})
		s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Nominal: 1, Min: 0.9, Max: 1.1}, Path: []int{0, 1}, HasPath: true})
		for t := range s.Terms {
			s.Terms[t].Cavities = append(s.Terms[t].Cavities, at)
		}
	}
	s.Branches = make([]sheet.Branch, len(h.Branches))
	s.Branches[0] = sheet.Branch{Components: []string{"U", "a", "b", "c", "d", "e"}, Make: model.MakeLaid}
	return s
}

// Whatever a bundle is worked out of makes another key of it, and whatever a plan hangs on another question; no two of these
// changes make the same one, but that a bundle does not ask which branch it is that a wire goes on into. What neither hangs on,
// and nothing at all, changes none. Of each change: k for the key, q for the question.
func TestEachInputIsInItsKey(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	wire := func(f func(w *model.Wire)) func(s *sheet.Sheet) { return func(s *sheet.Sheet) { f(&s.H.Wires[2]) } }
	layer := func(f func(l *model.Layer)) func(s *sheet.Sheet) {
		return func(s *sheet.Sheet) { f(&s.H.Branches[0].Layers[1]) }
	}
	locked := func(f func(l *model.Layer)) func(s *sheet.Sheet) {
		return layer(func(l *model.Layer) { l.Locked = model.Some(true); f(l) })
	}
	rename := func(s *sheet.Sheet) {
		s.H.Wires[2].ID, s.H.Branches[0].Layers[1].Of[1], s.Branches[0].Components[3] = "cc", "cc", "cc"
	}
	base := trunk()
	base.Index = model.NewIndex(base.H)
	keys, questions := map[string]string{key(base, 0, LayersOf(base, 0), RanksOf(base, 0)): "nothing"},
		map[string]string{Question(base, 0): "nothing"}
	for _, c := range []struct {
		name, in string
		change   func(s *sheet.Sheet)
	}{
		{"nothing", "", func(s *sheet.Sheet) {}},
		{"the air", "", func(s *sheet.Sheet) { s.H.Branches[0].AmbientC = model.Some[unit.Celsius](90) }},
		{"a note", "", wire(func(w *model.Wire) { w.Note = model.Some("x") })},
		{"the make", "k", func(s *sheet.Sheet) { s.Branches[0].Make = model.MakeTwisted }},
		{"the hand", "k", func(s *sheet.Sheet) { s.H.Branches[0].Outer = model.Some(model.HandLeft) }},
		{"the length", "k", func(s *sheet.Sheet) { s.H.Branches[0].LengthMM = 501 }},
		{"the lay ratio", "kq", func(s *sheet.Sheet) { s.Limits.LayRatio = 13 }},
		{"the lift", "kq", func(s *sheet.Sheet) { s.Limits.LiftMax = 0.06 }},
		{"the weight", "q", func(s *sheet.Sheet) { s.Limits.LeaverWeight = 0.3 }},
		{"the zone", "k", func(s *sheet.Sheet) { s.H.Breakouts[0].ZoneMM = mm(41) }},
		{"fillers", "k", layer(func(l *model.Layer) { l.Fillers = model.Some(2) })},
		{"the filler", "k", layer(func(l *model.Layer) { l.FillerMM = mm(1.1) })},
		{"the binder", "k", layer(func(l *model.Layer) { l.BindMM = mm(0.2) })},
		{"the tape", "k", layer(func(l *model.Layer) { l.BindPart = model.Some("other tape") })},
		{"the lay", "kq", layer(func(l *model.Layer) { l.LayMM = mm(61) })},
		{"the order", "k", layer(func(l *model.Layer) { l.Of[1], l.Of[2] = l.Of[2], l.Of[1] })},
		{"a name", "kq", rename},
		{"the diameter", "kq", func(s *sheet.Sheet) { s.Wires[2].Dia.Nominal = 1.01 }},
		{"the least diameter", "k", func(s *sheet.Sheet) { s.Wires[2].Dia.Min = 0.91 }},
		{"the largest diameter", "k", func(s *sheet.Sheet) { s.Wires[2].Dia.Max = 1.11 }},
		{"the unit's diameter", "kq", func(s *sheet.Sheet) { s.Units[0].Dia.Nominal = 2.1 }},
		{"a spare", "k", wire(func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) })},
		{"power", "k", wire(func(w *model.Wire) { w.Role = model.Some(model.RolePower) })},
		{"data", "k", wire(func(w *model.Wire) { w.Role = model.Some(model.RoleData) })},
		{"the colour", "k", wire(func(w *model.Wire) { w.Colour = model.Some("8") })},
		{"data apart", "k", func(s *sheet.Sheet) { s.H.Branches[0].DataApart = model.Some(true) }},
		{"a cavity", "kq", wire(func(w *model.Wire) { w.To = model.Some("Q:2") })},
		{"further on", "kq", func(s *sheet.Sheet) { s.Wires[2].Path = []int{0, 1, 3} }},
		{"another branch", "kq", func(s *sheet.Sheet) { s.Wires[2].Path, s.H.Wires[2].To = []int{0, 2}, model.Some("R:3") }},
		{"a third branch", "q", func(s *sheet.Sheet) { s.Wires[2].Path, s.H.Wires[2].To = []int{0, 3}, model.Some("X:3") }},
		{"pinned", "q", layer(func(l *model.Layer) { l.Pinned = []string{"c"} })},
		{"pinned elsewhere", "q", func(s *sheet.Sheet) { s.H.Branches[0].Layers[0].Pinned = []string{"c"} }},
		{"another pinned", "q", layer(func(l *model.Layer) { l.Pinned = []string{"d"} })},
		{"locked", "q", locked(func(*model.Layer) {})},
		{"locked with fillers", "kq", locked(func(l *model.Layer) { l.Fillers = model.Some(3) })},
		{"locked with filler", "kq", locked(func(l *model.Layer) { l.FillerMM = mm(1.2) })},
		{"locked in tape", "kq", locked(func(l *model.Layer) { l.BindMM = mm(0.3) })},
		{"locked with a lay", "kq", locked(func(l *model.Layer) { l.LayMM = mm(62) })},
		{"locked in four layers", "kq", func(s *sheet.Sheet) {
			l := &s.H.Branches[0].Layers
			(*l)[1].Locked = model.Some(true)
			*l = append(*l, model.Layer{Fillers: model.Some(7), FillerMM: mm(1)})
		}},
		{"leavers", "q", func(s *sheet.Sheet) { s.H.Branches[0].LeaversOut = model.Some(false) }},
		{"units", "q", func(s *sheet.Sheet) { s.H.Branches[0].UnitsIn = model.Some(false) }},
	} {
		s := trunk()
		c.change(s)
		s.Index = model.NewIndex(s.H)
		for _, of := range []struct {
			is   string
			key  string
			seen map[string]string
		}{{"k", key(s, 0, LayersOf(s, 0), RanksOf(s, 0)), keys}, {"q", Question(s, 0), questions}} {
			was, met := of.seen[of.key]
			if !met {
				of.seen[of.key] = c.name
			}
			in := false
			for _, r := range c.in {
				in = in || string(r) == of.is
			}
			if met == in || c.in == "" && was != "nothing" {
				t.Errorf("%s, %s: met before %v, with %q", c.name, of.is, met, was)
			}
		}
	}
}

// The make of a branch, by hand, of wires of 1 mm: one runs straight, two to four are twisted, seven are laid; of five, on a run shorter
// than 75 mm or than two turns, none is twisted. Five in a circle are 2.70 mm over (1 + 1 / sin 36°), so two turns of 15 times that are 81.
// What was not measured may be long, and what the file says holds.
func TestMakeByHand(t *testing.T) {
	for _, c := range []struct {
		n      int
		length unit.Millimetre
		ratio  unit.Ratio
		given  model.Make
		layers int
		want   model.Make
	}{
		{0, 10, 1, "", 0, model.MakeStraight}, {1, 10, 1, "", 0, model.MakeStraight}, {2, 10, 1, "", 0, model.MakeTwisted},
		{4, 10, 1, "", 0, model.MakeTwisted}, {5, 74.9, 1, "", 0, model.MakeStraight}, {5, 75, 1, "", 0, model.MakeTwisted},
		{5, 80.9, 15, "", 0, model.MakeStraight}, {5, 81.1, 15, "", 0, model.MakeTwisted}, {5, 0, 15, "", 0, model.MakeTwisted},
		{6, 60, 1, "", 0, model.MakeStraight}, {6, 500, 12, "", 0, model.MakeTwisted}, {7, 10, 1, "", 0, model.MakeLaid},
		{7, 10, 1, model.MakeTwisted, 1, model.MakeTwisted}, {2, 10, 1, model.MakeStraight, 1, model.MakeStraight},
		{5, 500, 1, model.MakeTwisted, 2, model.MakeLaid},
	} {
		h := &model.Harness{Branches: []model.Branch{{LengthMM: c.length, Make: model.Opt[model.Make]{V: c.given, Set: c.given != ""}}}}
		s := &sheet.Sheet{H: h, Limits: model.Limits{LaidFrom: 7, LayRatio: c.ratio}, Branches: make([]sheet.Branch, 1)}
		for k := range c.n {
			h.Wires = append(h.Wires, model.Wire{ID: fmt.Sprint(k)})
			s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Nominal: 1}})
			s.Branches[0].Components = append(s.Branches[0].Components, fmt.Sprint(k))
		}
		s.Index = model.NewIndex(h)
		if got := makeOf(s, 0, make([]model.Layer, c.layers), packs{}); got != c.want {
			t.Errorf("%d wires on %v mm with a lay of %v: %s, want %s", c.n, c.length, c.ratio, got, c.want)
		}
	}
}
