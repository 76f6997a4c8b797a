package bundle

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/formula/lay"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Where the components of the trunk go on, by hand: its unit with its wires, on through A into C; b goes off into B; the others end
// behind A, in the order of their cavities. Tails are counted in the order in which they come off.
func TestRanksByHand(t *testing.T) {
	s := trunk()
	s.Index = model.NewIndex(s.H)
	for _, k := range []int{5, 6} {
		s.Wires[k].Path, s.H.Wires[k].To = []int{0, 1, 3}, model.Some(fmt.Sprint("X:", k))
	}
	s.Wires[1].Path, s.H.Wires[1].To = []int{0, 2}, model.Some("R:1")
	s.H.Wires[0].To, s.H.Wires[4].To = model.Some("Q:5"), model.Some("Q:1")
	r := RanksOf(s, 0)
	// Q comes after all splices and branches, so what ends there comes behind what goes on from A into C.
	for id, want := range map[string]struct {
		way         Way
		depth, next int
	}{"U": {Way{1, 0}, 2, 1}, "e": {Way{2, 0}, 1, 1}, "c": {Way{2, 1}, 1, 1}, "d": {Way{2, 2}, 1, 1}, "a": {Way{2, 3}, 1, 1},
		"b": {Way{3, 0}, 1, 2}} {
		if r.Way[id] != want.way || r.Depth[id] != want.depth || r.Next[id] != want.next {
			t.Errorf("%s: %v, %d deep, on into %d, want %v", id, r.Way[id], r.Depth[id], r.Next[id], want)
		}
	}
}

// For more spares the commonest size is taken that has cavities at both ends, of as many the thinner one; units and what has no
// diameter have no say.
func TestSizeOfMoreSpares(t *testing.T) {
	for _, c := range []struct {
		name      string
		diameters []unit.Millimetre // of a to e
		free      [2][]string
		most      int
		like      string // of the spares
		n         int
	}{
		{"all alike", []unit.Millimetre{1, 1, 1, 1, 1}, [2][]string{{"8", "9"}, {"8", "9"}}, 5, "a", 2},
		{"the commonest", []unit.Millimetre{1, 2, 2, 1, 2}, [2][]string{{"8", "9"}, {"8", "9"}}, 5, "b", 2},
		{"the commonest, met last", []unit.Millimetre{1, 3, 2, 2, 2}, [2][]string{{"8", "9"}, {"8", "9"}}, 5, "c", 2},
		{"of as many the thinner", []unit.Millimetre{3, 3, 2, 2, 1}, [2][]string{{"8", "9"}, {"8", "9"}}, 5, "c", 2},
		{"no diameter", []unit.Millimetre{0, 0, 0, 2, 1}, [2][]string{{"8", "9"}, {"8", "9"}}, 5, "e", 2},
		{"no diameter at all", []unit.Millimetre{0, 0, 0, 0, 0}, [2][]string{{"8", "9"}, {"8", "9"}}, 5, "", 0},
		{"one wanted", []unit.Millimetre{1, 1, 1, 1, 1}, [2][]string{{"8", "9"}, {"8", "9"}}, 1, "a", 1},
		{"none wanted", []unit.Millimetre{1, 1, 1, 1, 1}, [2][]string{{"8", "9"}, {"8", "9"}}, 0, "", 0},
		{"one cavity there", []unit.Millimetre{1, 1, 1, 1, 1}, [2][]string{{"8", "9"}, {"8"}}, 5, "a", 1},
		{"no cavity there", []unit.Millimetre{1, 1, 1, 1, 1}, [2][]string{{"8", "9"}, nil}, 5, "", 0},
	} {
		s := trunk()
		s.H.Units = []model.Unit{{ID: "U", Wires: []string{"f", "g"}}}
		s.Index = model.NewIndex(s.H)
		for k, d := range c.diameters {
			s.Wires[k].Dia.Nominal = d
		}
		s.Terms[0].Free, s.Terms[1].Free = c.free[0], c.free[1]
		got := SparesMore(s, 0, c.most)
		if len(got) != c.n {
			t.Errorf("%s: %d places, want %d", c.name, len(got), c.n)
		}
		for k, p := range got {
			if id := s.H.Wires[p.Like].ID; id != c.like || p.From != "P:"+c.free[0][k] || p.To != "Q:"+c.free[1][k] {
				t.Errorf("%s: like %s from %s to %s, want like %s", c.name, id, p.From, p.To, c.like)
			}
		}
	}
}

// Trigger and data away from power, by hand: what lies all the way round is sorted, with the neutral ones half on each side; what
// comes off as another tail stays in its place, and is turned round where that helps. Of each wire: l listens, s shouts, n neither.
func TestApartByHand(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{}}
	role := map[byte]model.Role{'l': model.RoleData, 's': model.RolePower, 'n': ""}
	for _, id := range []string{"l1", "l2", "l3", "n1", "n2", "n3", "s1", "s2", "s3"} {
		s.H.Wires = append(s.H.Wires, model.Wire{ID: id, Role: model.Opt[model.Role]{V: role[id[0]], Set: id[0] != 'n'}})
	}
	s.Index = model.NewIndex(s.H)
	for _, c := range []struct{ tails, want string }{
		{"l1 s1 l2 s2", "l1 l2 s1 s2"},
		{"l1 s1 n1 l2 s2 n2", "l1 l2 n1 s1 s2 n2"},
		{"n1 s1 l1", "n1 s1 l1"}, // one place is all that can be left
		{"l1 n1 s1 n2", "l1 n1 s1 n2"},
		{"l1 l2, s1 n1, l3", "l1 l2, s1 n1, l3"},
		{"s1 n1, l1 n2", "s1 n1, l1 n2"},
		{"n1 s1, l1 n2", "s1 n1, l1 n2"},
		{"s1, l1, n1", "s1, l1, n1"},
		{"n2 l2 l1 n1 s1, l3 s3", "s1 n1 l1 l2 n2, l3 s3"}, // turned round, and nothing else of it changed
		{"n1 n2 n3", "n1 n2 n3"},
	} {
		var tails [][]string
		for _, t := range strings.Split(c.tails, ", ") {
			tails = append(tails, strings.Fields(t))
		}
		was := besides(s, slices.Concat(tails...))
		setApart(s, tails)
		var got []string
		for _, t := range tails {
			got = append(got, strings.Join(t, " "))
		}
		if is := besides(s, slices.Concat(tails...)); is > was || strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %s, want %s; %d places were bad, %d are", c.tails, strings.Join(got, ", "), c.want, was, is)
		}
	}
}

// How sharp a branch may be bent, by hand: 2 mm thick in 5 mm, 30 mm by six times its OD; in 3 mm, 20 mm by ten times its piece.
// One that is
// bent sharper is told, with its figures.
func TestBendByHand(t *testing.T) {
	for _, c := range []struct {
		over  unit.Millimetre
		bend  model.Opt[unit.Millimetre]
		least unit.Millimetre
		rule  string
		says  string
	}{
		{5, model.Opt[unit.Millimetre]{}, 30, "6 x OD", ""},
		{3, model.Opt[unit.Millimetre]{}, 20, "10 x thickest piece", ""},
		{5, model.Some[unit.Millimetre](30), 30, "6 x OD", ""},
		{5, model.Some[unit.Millimetre](29.4), 30, "6 x OD", "The inside bend radius is 29 mm; it must be at least 30 mm (6 x OD)"},
		{5.07, model.Some[unit.Millimetre](29), 30.42, "6 x OD", "The inside bend radius is 29 mm; it must be at least 30 mm (6 x OD)"},
		{3, model.Some[unit.Millimetre](12), 20, "10 x thickest piece",
			"The inside bend radius is 12 mm; it must be at least 20 mm (10 x thickest piece)"},
	} {
		s := &sheet.Sheet{H: &model.Harness{Branches: []model.Branch{{ID: "T", BendMM: c.bend}}}, Branches: []sheet.Branch{{OverMM: c.over,
			Layers: []sheet.Layer{{Members: []sheet.Member{{D: 1}}}, {Members: []sheet.Member{{D: 2}, {D: 1.5}}}, {}}}}}
		bend(s, 0)
		got := ""
		for _, g := range s.Snags {
			got += g.Says
			if g.Level != sheet.Warn || g.Rule != "bend" || g.Where != "T" {
				t.Errorf("%+v", g)
			}
		}
		b := s.Branches[0].Bend
		if d := b.MinMM - c.least; got != c.says || b.Rule != c.rule || d > 1e-9 || d < -1e-9 || b.MismatchMM.Set {
			t.Errorf("%v over, bent to %v: %+v, %q", c.over, c.bend, b, got)
		}
	}
}

// What comes off as one tail lies thick beside thin where its sizes differ, each tail by itself; where they do not, in the order of its
// cavities. The order in which thick and thin lie is that of the formula.
func TestZigZagOfATail(t *testing.T) {
	s := trunk()
	s.Index = model.NewIndex(s.H)
	for k, d := range []unit.Millimetre{1, 1, 2, 2, 1} {
		s.Wires[k].Dia.Nominal = d
	}
	ids := []string{"a", "b", "c", "d", "e"}
	zz := lay.ZigZag([]unit.Millimetre{1, 1, 2, 2, 1})
	var want []string
	for _, k := range zz {
		want = append(want, ids[k])
	}
	if slices.Equal(want, ids) {
		t.Fatal("the formula leaves two thin ones side by side")
	}
	got := slices.Clone(ids)
	if zigzagGroup(s, got); !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
	alike := []string{"e", "a", "b"}
	if zigzagGroup(s, alike); !slices.Equal(alike, []string{"e", "a", "b"}) {
		t.Errorf("of one size: %v", alike)
	}
	// All five come off as one tail, and cavities tell their order; with fillers between as evenly as they go.
	all, filler := order(s, model.Layer{Of: ids}, Ranks{Way: map[string]Way{"a": {1, 0}, "b": {1, 1}, "c": {2, 0}, "d": {2, 1}, "e": {1,
		2}}}, false)
	if !slices.Equal(all, []string{"a", "b", "e", "c", "d"}) || slices.Contains(filler, true) {
		t.Errorf("two tails of one size each: %v", all)
	}
	mixed, _ := order(s, model.Layer{Of: ids}, Ranks{Way: map[string]Way{"a": {1, 0}, "b": {1, 1}, "c": {1, 2}, "d": {1, 3}, "e": {2,
		0}}}, false)
	head := []string{"a", "b", "c", "d"}
	for k, at := range lay.ZigZag([]unit.Millimetre{1, 1, 2, 2}) {
		if mixed[k] != head[at] {
			t.Errorf("two of each size in one tail: %v", mixed)
			break
		}
	}
	if mixed[4] != "e" {
		t.Errorf("the tail of one: %v", mixed)
	}
}

// A spare of an option runs by the numbers of its branches, so where those are others it is another question.
func TestQuestionHasTheWayOfASpare(t *testing.T) {
	question := func(swapped bool, more int) string {
		s := trunk()
		for range more { // of the same size: the spare is like another number
			s.H.Wires = append([]model.Wire{{ID: "elsewhere"}}, s.H.Wires...)
			s.Wires = append([]sheet.Wire{{}}, s.Wires...)
		}
		b := s.H.Branches
		b[1].To, b[2], b[3] = "Q2", model.Branch{ID: "B", From: "J", To: "R", LengthMM: 200}, model.Branch{ID: "C", From: "Q2", To: "Q"}
		last := 3
		if swapped {
			b[2], b[3], last = b[3], b[2], 2
		}
		for k := range s.Wires {
			s.Wires[k].Path = []int{0, 1, last}
		}
		s.Units[0].Path = []int{0, 1, last}
		s.Limits.SparesWanted = 1
		s.Terms[0].Free, s.Terms[1].Free = []string{"9"}, []string{"9"}
		s.Index = model.NewIndex(s.H)
		if len(SparesFor(s, 0)) != 1 {
			t.Fatal("no place for a spare")
		}
		return Question(s, 0)
	}
	if question(false, 0) == question(true, 0) || question(true, 0) == question(true, 1) {
		t.Error("one question of two ways, or of two wires that it is like")
	}
	if once, again := question(true, 0), question(true, 0); once != again {
		t.Error("two questions of one way")
	}
}

// How many branches a component still runs through where its branch parts: beyond its to end; beyond its from end where only that is a
// breakout; the larger between two. What a unit goes on into is what its wires go on into.
func TestDepthByHand(t *testing.T) {
	for _, c := range []struct {
		from, to string
		want     int
	}{{"P", "Q", 2}, {"P", "J", 2}, {"J", "P", 5}, {"J", "K", 5}} {
		h := &model.Harness{Terminations: []model.Termination{{ID: "P"}, {ID: "Q"}}, Breakouts: []model.Breakout{{ID: "J"}, {ID: "K"}},
			Branches: []model.Branch{{From: c.from, To: c.to}}}
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
		if got := depth(s, 0, 2, 5); got != c.want {
			t.Errorf("%s to %s: %d, want %d", c.from, c.to, got, c.want)
		}
	}
	s := trunk()
	s.Units[0].Path = []int{0, 3}
	s.Index = model.NewIndex(s.H)
	if next, ok := NextAt(s, 0, "J", "U"); next != 3 || !ok {
		t.Errorf("the unit goes on into %d, %v", next, ok)
	}
	if next, ok := NextAt(s, 0, "P", "U"); next != -1 || !ok {
		t.Errorf("at its end the unit goes on into %d, %v", next, ok)
	}
	if next, ok := NextAt(s, 0, "J", "a"); next != 1 || !ok {
		t.Errorf("a goes on into %d, %v", next, ok)
	}
}

// The room of a layer is that for its thinnest piece, and a filler is none.
func TestRoomIsForTheThinnest(t *testing.T) {
	bed, how := lay.Bed{Crown: 6, Tape: 6}, lay.Laying{Ratio: 12}
	d := []unit.Millimetre{2, 0.5, 1, 3}
	kinds := []sheet.Kind{sheet.OfWire, sheet.OfFiller, sheet.OfUnit, sheet.OfSpare}
	s := &sheet.Sheet{Limits: model.Limits{LiftMax: 0.05}}
	l := &sheet.Layer{FillerMM: 0.5}
	for k := range d {
		l.Members = append(l.Members, sheet.Member{Kind: kinds[k], D: d[k]})
	}
	want := lay.Room(d, 1, bed, how, 0.05)
	if want == lay.Room(d, 0.5, bed, how, 0.05) || want == lay.Room(d, 2, bed, how, 0.05) || want == lay.Room(d, 3, bed, how, 0.05) {
		t.Fatal("the room is the same for each")
	}
	if room(s, l, d, bed, how); l.Room != want || l.Takes != 4+want {
		t.Errorf("room for %d, takes %d; want %d", l.Room, l.Takes, want)
	}
	only := &sheet.Layer{FillerMM: 0.5, Members: []sheet.Member{{Kind: sheet.OfFiller, D: 0.5}}}
	if room(s, only, d[1:2], bed, how); only.Room != lay.Room(d[1:2], 0.5, bed, how, 0.05) {
		t.Errorf("of filler alone: room for %d", only.Room)
	}
}
