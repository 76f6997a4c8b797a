package current

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/formula/heat"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// The wires of a unit as discs, by hand: one lies where the unit does; two of 1 mm lie half a millimetre to either side, the first away
// from the axis; four lie 0.5/sin 45° = 0.7071 from it. A jacket is drawn where the unit is over 2 % thicker than its wires made up.
func TestWiresOfAUnitInASection(t *testing.T) {
	for _, c := range []struct {
		wires int
		d     unit.Millimetre
		want  string
	}{
		{0, 3, "3:0:0@4.000,0.000"},
		{1, 1.02, "1:0.5:0@4.000,0.000"},
		{1, 1.03, "1.03:1:0@4.000,0.000 1:0.5:1@4.000,0.000"},
		{2, 2.04, "1:0.5:0@4.500,0.000 1:0.5:0@3.500,0.000"},
		{2, 2.05, "2.05:2:0@4.000,0.000 1:0.5:1@4.500,0.000 1:0.5:1@3.500,0.000"},
		{4, 2, "1:0.5:0@4.707,0.000 1:0.5:0@4.000,0.707 1:0.5:0@3.293,0.000 1:0.5:0@4.000,-0.707"},
	} {
		h := &model.Harness{Units: []model.Unit{{ID: "U"}}}
		s := &sheet.Sheet{H: h, Units: []sheet.Unit{{Loss: 1}}}
		for k := range c.wires {
			h.Wires = append(h.Wires, model.Wire{ID: fmt.Sprint("w", k)})
			h.Units[0].Wires = append(h.Units[0].Wires, fmt.Sprint("w", k))
			w := sheet.Wire{Known: true, Entry: catalogue.Wire{ConductorMM: 0.5, OhmPerKm: 10}}
			w.Dia.Nominal = 1
			s.Wires = append(s.Wires, w)
		}
		s.Index = model.NewIndex(h)
		var sec heat.Section
		var wires []Conductor
		if !addUnit(s, &sec, &wires, sheet.Member{ID: "U", X: 4, D: c.d, Loss: 1}, 2, 0) {
			t.Errorf("%d wires: not known", c.wires)
		}
		var got []string
		for _, d := range sec.Discs {
			at := strings.ReplaceAll(fmt.Sprintf("%.3f,%.3f", float64(d.X), float64(d.Y)), "-0.000", "0.000")
			got = append(got, fmt.Sprintf("%v:%v:%v@%s", float64(d.OverMM), float64(d.CoreMM), d.In, at))
		}
		if strings.Join(got, " ") != c.want || len(wires) != c.wires {
			t.Errorf("%d wires of %v: %s, want %s", c.wires, c.d, strings.Join(got, " "), c.want)
		}
		for n, w := range wires {
			if w.Wire != n || w.Disc != len(sec.Discs)-c.wires+n || w != (Conductor{n, 2, w.Disc}) {
				t.Errorf("%d wires: %+v", c.wires, w)
			}
		}
	}
}

// What the rays of a section rest on, and what its heat does: whatever has a shape changes both, what warms it changes only the second.
func TestWhatASectionIsToldBy(t *testing.T) {
	base := func() heat.Section {
		return heat.Section{InsideMM: 10, OutsideMM: 11, Ambient: 40, Discs: []heat.Disc{{X: 1, Y: 2, OverMM: 3, CoreMM: 1, In: 0, Ohm: 5,
			Amps: 6, Rated: 150}}}
	}
	shape, all := sectionKeys(&sheet.Sheet{}, base())
	if a, b := sectionKeys(&sheet.Sheet{}, base()); a != shape || b != all {
		t.Error("the same section is told apart")
	}
	for name, change := range map[string]func(s *heat.Section){
		"shape: bore": func(s *heat.Section) { s.InsideMM = 10.1 }, "shape: outside": func(s *heat.Section) { s.OutsideMM = 11.1 },
		"shape: x": func(s *heat.Section) { s.Discs[0].X = 1.1 }, "shape: y": func(s *heat.Section) { s.Discs[0].Y = 2.1 },
		"shape: over": func(s *heat.Section) { s.Discs[0].OverMM = 3.1 }, "shape: core": func(s *heat.Section) { s.Discs[0].CoreMM = 1.1 },
		"shape: in": func(s *heat.Section) { s.Discs[0].In = 1 }, "heat: ambient": func(s *heat.Section) { s.Ambient = 41 },
		"heat: ohm": func(s *heat.Section) { s.Discs[0].Ohm = 5.1 }, "heat: amps": func(s *heat.Section) { s.Discs[0].Amps = 6.1 },
		"heat: rated":    func(s *heat.Section) { s.Discs[0].Rated = 151 },
		"heat: pressure": func(s *heat.Section) { s.Pressure = 90_000 },
	} {
		s := base()
		change(&s)
		if a, b := sectionKeys(&sheet.Sheet{}, s); (a != shape) != strings.HasPrefix(name, "shape") || b == all {
			t.Errorf("%s: shape %v, all %v", name, a != shape, b != all)
		}
	}
}

// Of stubs equally long the first by the name of where it leaves is told, every time.
func TestStubsEquallyLong(t *testing.T) {
	for range 20 {
		if got, _ := bus(line("A:1 S1 10", "S1 S2 5", "S2 S3 5", "S3 B:1 12", "S3 E:1 2", "S1 C:1 2", "S2 D:1 2"), 0); got.StubAt != "C:1" {
			t.Fatalf("%+v", got)
		}
	}
}

// What bounds a wire at its ends: a contact and a splice of a known rating, each by its name; one without a rating bounds nothing.
func TestLimitsAtItsEnds(t *testing.T) {
	for _, c := range []struct {
		contact, splice unit.Ampere
		want            string
	}{
		{7.5, 11, "[7.5 contact A:1, size 20, 11 splice S]"}, {0, 11, "[11 splice S]"}, {7.5, 0, "[7.5 contact A:1, size 20]"},
		{0, 0, "[]"},
	} {
		h := &model.Harness{Terminations: []model.Termination{{ID: "A"}}, Splices: []model.Splice{{ID: "S", Part: model.Some("P")}},
			Wires: []model.Wire{{ID: "w", From: model.Some("A:1"), To: model.Some("S")}}}
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: []sheet.Wire{{Known: true}}, Terms: []sheet.Term{{
			State: map[string]sheet.Cavity{"1": {Size: "20"}}}}, Cat: &catalogue.Catalogue{
			Contacts: map[string]catalogue.Contact{"20": {Size: "20", MaxA: c.contact}},
			Splices:  map[string]catalogue.Splice{"P": {ID: "P", MaxA: c.splice}}}}
		var got []string
		for _, l := range limits(s, 0, nil, nil, nil, nil) {
			got = append(got, sheet.PlainAmps(l.Amps)+" "+l.Where)
		}
		if text := "[" + strings.Join(got, ", ") + "]"; text != c.want {
			t.Errorf("%+v: %s", c, text)
		}
	}
}

// Several feeds that join are told of the wire that they can burn: what bounds it apart from a feed is less than what it must bear.
func TestSeveralFeedsCanBurnAWire(t *testing.T) {
	for _, c := range []struct {
		feed    int
		bears   unit.Ampere
		limited []sheet.Limit
		want    string
	}{
		{-1, 20, []sheet.Limit{{Amps: 3, Feed: true}, {Amps: 19.5}, {Amps: 30}},
			"[warn feed.joined w1 Several feeds together can pass 20 A all the time, but it may carry only 19.5 A]"},
		{-1, 19.5, []sheet.Limit{{Amps: 30}, {Amps: 19.5}}, "[]"},
		{0, 20, []sheet.Limit{{Amps: 19.5}}, "[]"}, {-1, 20, []sheet.Limit{{Amps: 3, Feed: true}}, "[]"},
	} {
		s := line("A:1 B:1 1", "C:1 B:2 1", "C:2 B:3 1")
		s.H.Head.SupplyV = model.Some(unit.Volt(12))
		s.H.Feeds, s.Feeds = []model.Feed{{ID: "F"}}, make([]sheet.Feed, 1)
		s.Wires[1].Guard, s.Wires[1].Limits = model.Some(sheet.Guard{Feed: c.feed, Amps: c.bears}), c.limited
		SayFeeds(s)
		var got []string
		for _, g := range s.Snags {
			if g.Rule == "feed.joined" {
				got = append(got, g.Level.String()+" "+g.Rule+" "+g.Where+" "+g.Says)
			}
		}
		if fmt.Sprint(got) != c.want || s.Wires[1].FeedBurns != (c.want != "[]") {
			t.Errorf("%v: %v, want %s", c.bears, got, c.want)
		}
	}
}
