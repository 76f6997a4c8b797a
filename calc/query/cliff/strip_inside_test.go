package cliff

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/formula/cover"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// pt is a point of some layers, the centre first; d of a tube is its name on the shelf.
func pt(over unit.Millimetre, tube string, layers ...int) Point {
	p := Point{OverMM: over, Branch: &sheet.Branch{}}
	if tube != "" {
		p.Tube = catalogue.Tube{ID: tube, ShelfLabel: tube + " (15.9 / 7.9)"}
	}
	for _, n := range layers {
		p.Branch.Layers = append(p.Branch.Layers, sheet.Layer{Members: make([]sheet.Member, n)})
	}
	return p
}

// stripOf is a strip of points from a count on; a point of 0 mm without layers is not worked out, of −1 has no lay-up.
func stripOf(what What, least, now int, ends string, points ...Point) *Strip {
	s := Begin(Ask{What: what, Size: "22", Least: least, Now: now, Most: least + len(points) - 1, Ends: ends})
	for k, p := range points {
		p.N = least + k
		switch {
		case p.OverMM < 0:
			s.Put(Point{N: p.N})
		case p.OverMM > 0:
			s.Put(p)
		}
	}
	return s
}

var (
	unknown = Point{}
	noLayUp = Point{OverMM: -1}
)

// What the strip says, by hand: what still fits, what comes then and after it, what fewer save, what comes out thicker than more.
func TestSentencesByHand(t *testing.T) {
	a := pt(5, "1/4", 1, 6)
	built := pt(6, "1/4", 1, 7)
	built.Branch.Layers[0].BuiltMM = 0.3
	rings := pt(4.8, "1/4", 1, 6)
	rings.Rings = 2
	few := pt(4.8, "1/4", 1, 6)
	few.Rings = 1
	for _, c := range []struct {
		name  string
		s     *Strip
		want  string
		short string // the longest
	}{
		{"nothing is known", stripOf(Wires, 5, 6, "", a, unknown, a), "", ""},
		{"no lay-up", stripOf(Wires, 5, 6, "", a, noLayUp, a), "No lay-up of 6 wires of size 22 keeps what is locked.", "no lay-up"},
		{"nothing changes", stripOf(Wires, 6, 6, "Both ends are full", a, a, a), "2 more still fit. Both ends are full.", "2 still fit"},
		{"one more, and it ends", stripOf(Wires, 6, 6, "", a, a), "One more still fits.", "1 still fits"},
		{"none can be added", stripOf(Wires, 6, 6, "It is full", a), "It is full.", "none can be added"},
		{"the next is not known", stripOf(Wires, 6, 6, "", a, a, unknown, a), "One more still fits.", ""},
		{"no lay-up takes the next", stripOf(Wires, 6, 6, "", a, a, noLayUp), "One more still fits. No lay-up takes the 8th.",
			"1 still fits, then no lay-up"},
		{"thicker", stripOf(Wires, 6, 6, "", a, a, a, pt(5.3, "1/4", 1, 6)), "2 more still fit. The 9th makes it thicker: OD 5.3 mm.",
			"2 still fit, then OD 5.3 mm"},
		{"thicker at once", stripOf(Wires, 6, 6, "", a, pt(5.3, "1/4", 1, 6)), "The 7th makes it thicker: OD 5.3 mm.", "OD 5.3 mm"},
		{"thinner", stripOf(Wires, 6, 6, "", a, pt(4.8, "1/4", 1, 6)), "The 7th makes it thinner: OD 4.8 mm. " +
			"6 wires of size 22 come out thicker than 7: 5.0 mm against 4.8 mm.", "OD 4.8 mm"},
		{"thinner, with fillers", stripOf(Spares, 1, 1, "", a, noLayUp, rings), "No lay-up takes the 2nd spare. " +
			"1 spare comes out thicker than 3: 5.0 mm against 4.8 mm. With 2 fillers more, 1 is as thin as 3.", "no lay-up"},
		{"thinner, too few round it", stripOf(Spares, 2, 2, "", a, noLayUp, few), "No lay-up takes the 3rd spare. " +
			"2 spares come out thicker than 4: 5.0 mm against 4.8 mm.", "no lay-up"},
		{"thinner, one filler", stripOf(Spares, 2, 2, "", a, rings), "The 3rd spare makes it thinner: OD 4.8 mm. " +
			"2 spares come out thicker than 3: 5.0 mm against 4.8 mm. With 1 filler more, 2 are as thin as 3.", "OD 4.8 mm"},
		{"a layer and a tube", stripOf(Wires, 6, 6, "", a, pt(7, "3/8", 1, 6, 12)),
			"The 7th starts a new layer: OD 7.0 mm and the next tube, 3/8.",
			"a new layer, OD 7.0 mm"},
		{"a layer, then a tube", stripOf(Wires, 6, 6, "", a, pt(7, "1/4", 1, 6, 12), pt(7, "1/4", 1, 6, 12), pt(7.2, "3/8", 1, 6, 12),
			pt(9, "1/2", 1, 6, 12, 18)),
			"The 7th starts a new layer: OD 7.0 mm. The 9th makes it thicker: OD 7.2 mm and the next tube, 3/8.",
			"a new layer, OD 7.0 mm"},
		{"a tube, then a layer", stripOf(Wires, 6, 6, "Full", a, pt(5.01, "3/8", 1, 6), pt(5.3, "3/8", 1, 6), pt(7, "3/8", 1, 6, 12)),
			"The 7th needs the next tube, 3/8. The 9th starts a new layer: OD 7.0 mm. Full.", "tube 3/8"},
		{"no tube", stripOf(Wires, 6, 6, "", a, pt(5.01, "", 1, 6)), "With the 7th no tube holds any more.", "no tube"},
		{"thicker, and no tube", stripOf(Wires, 6, 6, "", a, pt(5.2, "", 1, 6)),
			"The 7th makes it thicker: OD 5.2 mm and no tube that holds.", "no tube, OD 5.2 mm"},
		{"the first tube", stripOf(Wires, 6, 6, "", pt(5, "", 1, 6), pt(5.2, "1/4", 1, 6)),
			"The 7th makes it thicker: OD 5.2 mm and tube 1/4.",
			"tube 1/4, OD 5.2 mm"},
		{"another centre", stripOf(Wires, 6, 6, "", a, pt(5.2, "1/4", 2, 6)), "The 7th needs a centre of 2: OD 5.2 mm.", "OD 5.2 mm"},
		{"a built-up centre", stripOf(Wires, 6, 6, "", a, built), "The 7th needs a built-up centre: OD 6.0 mm.", "OD 6.0 mm"},
		{"fewer save a layer", stripOf(Wires, 4, 6, "", pt(4.6, "1/8", 5), a, a), "With 2 fewer it is 4.6 mm, a layer less, in tube 1/8.",
			"none can be added"},
		{"fewer are thinner", stripOf(Wires, 5, 6, "", pt(4.6, "1/4", 1, 5), a), "With 1 fewer it is 4.6 mm.", "none can be added"},
		{"fewer of the same OD", stripOf(Wires, 5, 6, "", pt(5.01, "1/8", 1, 5), a), "With 1 fewer it has the same OD, in tube 1/8.",
			"none can be added"},
		{"fewer, and no tube", stripOf(Wires, 5, 6, "", pt(4.6, "", 1, 5), a), "With 1 fewer it is 4.6 mm, and no tube holds.",
			"none can be added"},
		{"no lay-up of fewer", stripOf(Wires, 4, 6, "", pt(4.6, "1/4", 1, 5), noLayUp, a), "With 2 fewer it is 4.6 mm.",
			"none can be added"},
		{"fewer is not known", stripOf(Wires, 4, 6, "", pt(4.6, "1/4", 1, 5), unknown, a), "", "none can be added"},
	} {
		if got := strings.Join(c.s.Says(unit.MM), " "); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
		got := ""
		if short := c.s.Short(unit.MM); len(short) > 0 {
			got = short[0]
		}
		if got != c.short {
			t.Errorf("%s, in short: %q, want %q", c.name, got, c.short)
		}
	}
	// As it is laid it is thicker, with room for three.
	laid := pt(5.6, "1/4", 1, 6)
	laid.Branch.Layers[1].Room, laid.Branch.Layers[0].Room = 2, 1
	s := stripOf(Wires, 6, 6, "", a, a, pt(5.3, "1/4", 1, 6))
	s.Laid = laid
	if got, want := strings.Join(s.Says(unit.MM), " "), "As it is laid: OD 5.6 mm, room for 3. Laid as proposed: 5.0 mm. "+
		"One more still fits. The 8th makes it thicker: OD 5.3 mm."; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if got := s.Short(unit.MM); len(got) != 3 || got[0] != "room 3; 1 if laid as proposed, then OD 5.3 mm" ||
		got[1] != "room 3; 1 if laid as proposed" ||
		got[2] != "1 still fits" {
		t.Errorf("%q", got)
	}
	s.Laid.OverMM = 5.01
	if got := strings.Join(s.Says(unit.MM), " "); got != "One more still fits. The 8th makes it thicker: OD 5.3 mm." {
		t.Errorf("laid as proposed: %q", got)
	}
	laid.Branch.Layers[1].Room, laid.Branch.Layers[0].Room = 0, 0
	s.Laid = laid
	if got := s.Says(unit.MM)[0]; got != "As it is laid: OD 5.6 mm." {
		t.Errorf("no room: %q", got)
	}
	for n, want := range map[int]string{6: "", 7: "", 8: "The 8th makes it thicker: OD 5.3 mm.", 9: "", 5: ""} {
		if got := s.Comes(n, unit.MM); got != want {
			t.Errorf("with %d comes %q, want %q", n, got, want)
		}
	}
}

// Which count is worked out next: the one in hand, then by ones, more first; for the short form the one in hand, those above up to the
// first
// change, and one below.
func TestWhatIsWorkedOutNext(t *testing.T) {
	s := stripOf(Wires, 3, 5, "", make([]Point, 6)...)
	var got []int
	for n, more := s.Next(); more; n, more = s.Next() {
		got = append(got, n)
		s.Put(Point{N: n})
	}
	if fmt.Sprint(got) != "[5 6 4 7 3 8]" {
		t.Errorf("%v", got)
	}
	s = stripOf(Wires, 3, 8, "", make([]Point, 6)...)
	got = nil
	for n, more := s.Next(); more; n, more = s.Next() {
		got = append(got, n)
		s.Put(Point{N: n})
	}
	if fmt.Sprint(got) != "[8 7 6 5 4 3]" {
		t.Errorf("all below: %v", got)
	}
	for _, c := range []struct {
		least, change int
		want          string
	}{{3, 7, "[5 6 7 4]"}, {3, 99, "[5 6 7 8 4]"}, {5, 6, "[5 6]"}, {3, 6, "[5 6 4]"}} {
		s := stripOf(Wires, c.least, 5, "", make([]Point, 9-c.least)...)
		got = nil
		for n, more := s.Near(); more && len(got) < 20; n, more = s.Near() {
			got = append(got, n)
			p := pt(5, "1/4", 1, 6)
			if n >= c.change {
				p.OverMM = 6
			}
			p.N = n
			s.Put(p)
		}
		if fmt.Sprint(got) != c.want {
			t.Errorf("from %d, a change at %d: %v, want %s", c.least, c.change, got, c.want)
		}
	}
	if _, ok := s.Point(2); ok || s.has(9) || !s.has(3) || !s.has(8) {
		t.Error("what lies beyond the strip is known")
	}
	s.Put(Point{N: 2})
	s.Put(Point{N: 9})
	asked := 0
	f := Begin(Ask{Least: 1, Now: 2, Most: 4, at: func(n int) Point { asked++; return Point{N: n} }})
	if f.Fill(); asked != 4 || !f.has(1) || !f.has(4) {
		t.Errorf("%d are asked", asked)
	}
	if none := Begin(Ask{Least: 5, Most: 3}); len(none.points) != 0 {
		t.Error("a strip of nothing")
	}
}

// A point by hand: the tube that holds, the OD over it, what lies round the centre where a filler could, counts and centre.
func TestPointByHand(t *testing.T) {
	member := func(kind sheet.Kind, d unit.Millimetre, n int) (out []sheet.Member) {
		for range n {
			out = append(out, sheet.Member{Kind: kind, D: d})
		}
		return out
	}
	fresh := func() sheet.Branch {
		return sheet.Branch{OverMM: 6, Layers: []sheet.Layer{{Members: append(member(sheet.OfFiller, 0.7, 1), member(sheet.OfWire, 1,
			5)...)},
			{Members: append(member(sheet.OfWire, 1, 4), member(sheet.OfWire, 2, 3)...)},
			{Members: append(append(member(sheet.OfSpare, 1, 2), member(sheet.OfUnit, 1, 1)...), member(sheet.OfFiller, 1, 3)...),
				Fillers: 3, FillerMM: 1},
			{Members: append(member(sheet.OfWire, 1, 9), member(sheet.OfFiller, 2, 1)...), Fillers: 1, FillerMM: 2}},
			Sheath: sheet.Sheath{Tube: model.Some(catalogue.Tube{ID: "A"}), Verdict: cover.Verdict{Wraps: true, OverMM: 7}}}
	}
	p := pointOf(12, fresh(), 1, 1)
	// 4 in the first layer, 2 spares in the second; the third has fillers of 2 mm already.
	if p.N != 12 || p.Relaxed != 1 || p.OverMM != 6 || p.Tube.ID != "A" || p.Sheath != 7 || p.Rings != 6 || p.Round() != 3 ||
		p.Centre() != 5 ||
		fmt.Sprint(p.Counts()) != "[5 7 6 10]" {
		t.Errorf("%+v, %d round %d, %v", p, p.Round(), p.Centre(), p.Counts())
	}
	stops := func(over unit.Millimetre) cover.Verdict {
		return cover.Verdict{StopLoose: true, Wraps: true, OverMM: over}
	}
	for _, c := range []struct {
		name   string
		change func(b *sheet.Branch)
		tube   string
		sheath unit.Millimetre
	}{
		{"it does not hold, another does", func(b *sheet.Branch) {
			b.Sheath.Verdict = stops(7)
			b.Sheath.Others = []sheet.Choice{{Tube: catalogue.Tube{ID: "B"}, Verdict: stops(8)}, {Tube: catalogue.Tube{ID: "C"},
				Verdict: cover.Verdict{Wraps: true, OverMM: 9}},
				{Tube: catalogue.Tube{ID: "D"}}}
		}, "C", 9},
		{"none holds", func(b *sheet.Branch) {
			b.Sheath.Verdict = stops(7)
			b.Sheath.Others = []sheet.Choice{{Tube: catalogue.Tube{ID: "B"}, Verdict: stops(8)}}
		}, "", 0},
		{"it is only proposed", func(b *sheet.Branch) { b.Sheath.Verdict, b.Sheath.Proposed = stops(7), true }, "A", 7},
		{"it is not known how thick", func(b *sheet.Branch) { b.Sheath.Verdict.Wraps = false }, "A", 0},
		{"no tube", func(b *sheet.Branch) { b.Sheath = sheet.Sheath{} }, "", 0},
	} {
		b := fresh()
		c.change(&b)
		if p := pointOf(12, b, 0, 1); p.Tube.ID != c.tube || p.Sheath != c.sheath {
			t.Errorf("%s: tube %q, %v over it", c.name, p.Tube.ID, p.Sheath)
		}
	}
	for _, none := range []sheet.Branch{{}, {OverMM: 3}, {Layers: make([]sheet.Layer, 1)}} {
		if p := pointOf(3, none, 2, 1); p.Branch != nil || p.N != 3 || p.Relaxed != 2 || p.Round() != 0 || p.Centre() != 0 ||
			p.built() != 0 || p.Counts() != nil {
			t.Errorf("%+v of nothing", p)
		}
	}
	if empty := (Point{Branch: &sheet.Branch{}}); empty.Round() != 0 || empty.Centre() != 0 || empty.built() != 0 {
		t.Error("a branch without layers has some")
	}
	a := Ask{with: func(Point) *model.Harness { return &model.Harness{} }}
	if a.Harness(Point{}) != nil || a.Harness(p) == nil || (&Ask{}).Harness(p) != nil {
		t.Error("the harness of a point")
	}
	for n, want := range map[int]string{1: "1st", 2: "2nd", 3: "3rd", 4: "4th", 10: "10th", 11: "11th", 12: "12th", 13: "13th", 14: "14th",
		21: "21st", 22: "22nd",
		23: "23rd", 101: "101st", 111: "111th", 112: "112th", 113: "113th"} {
		if got := (&Strip{}).nth(n); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}
