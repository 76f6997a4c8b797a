package current

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc/formula/heat"
	"contralay/calc/formula/protect"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// line is a sheet of wires of lengths in m, "FROM TO LENGTH" each.
func line(wires ...string) *sheet.Sheet {
	h := &model.Harness{}
	s := &sheet.Sheet{H: h}
	for k, w := range wires {
		f := strings.Fields(w)
		long := 0.0
		_, _ = fmt.Sscan(f[2], &long) // a slip is a length of nought, and fails
		one := model.Wire{ID: fmt.Sprint("w", k), From: model.Some(f[0]), To: model.Some(f[1])}
		if f[1] == "-" {
			one.To = model.Opt[string]{}
		}
		h.Wires = append(h.Wires, one)
		s.Wires = append(s.Wires, sheet.Wire{Finished: unit.Millimetre(long * 1000), Known: true})
	}
	s.Index = model.NewIndex(h)
	return s
}

// A bus by hand: its line is the longest way between two of its ends; what hangs on that are stubs, of which the longest counts with all
// that leads to its end, and all of them together.
func TestBusAndItsStubs(t *testing.T) {
	tree := []string{"A:1 S1 10", "S1 S2 5", "S2 B:1 12", "S1 C:1 2", "S2 S3 1", "S3 D:1 1.5", "S3 E:1 0.5", "X:1 Y:1 99"}
	for first := range 7 {
		got, wires := bus(line(tree...), first)
		ways := got.Way
		for k := range ways {
			ways[k] = slices.Sorted(slices.Values(ways[k]))
		}
		if !got.Known || got.Wire != first || got.MM != 27_000 || got.StubMM != 2_500 || got.StubAt != "D:1" || got.AllMM != 5_000 ||
			fmt.Sprint(ways) != "[[0 1 2] [4 5] [3 4 5 6]]" || len(wires) != 7 || slices.Contains(wires, 7) || wires[0] != first {
			t.Errorf("from wire %d: %+v of %v", first, got, wires)
		}
	}
	// A line without stubs; one end that leads nowhere; a length that is not known.
	if got, _ := bus(line("A:1 S1 3", "S1 B:1 4"), 1); got.MM != 7_000 || got.StubMM != 0 || got.AllMM != 0 || got.StubAt != "" ||
		len(got.Way[1])+len(got.Way[2]) != 0 {
		t.Errorf("%+v", got)
	}
	if got, _ := bus(line("A:1 - 3"), 0); !got.Known || got.MM != 0 {
		t.Errorf("%+v", got)
	}
	if got, wires := bus(line("A:1 S1 3", "S1 B:1 0"), 0); got.Known || got.MM != 0 || len(wires) != 2 {
		t.Errorf("%+v %v", got, wires)
	}
	if got, _ := bus(line("A:1 B:1 3", "B:1 C:1 4"), 0); got.MM != 7_000 { // two wires in one cavity are one line
		t.Errorf("%+v", got)
	}
}

// What is said of a pair, by its rule: the limits of ISO 11898-2 as quoted, 95 to 140 ohm and 70 mohm per metre; at 1,000 kbit/s a line
// of 25 m, a stub of 1.5 m, stubs of 7.5 m together (a maker's manual). At a limit nothing is said; of lines what is worst, once a line.
func TestWhatIsSaidOfAPair(t *testing.T) {
	const of = " at 1000 kbit/s the limit is "
	for _, c := range []struct {
		name             string
		ohm              unit.Ohm
		perKm            unit.OhmPerKilometre
		kbit             unit.KilobitPerSec
		line, stub, all  unit.Millimetre
		first, isUnknown bool
		want             string
	}{
		{"sound", 120, 60, 1000, 25_000, 1_500, 7_500, true, false, ""},
		{"least", 95, 70, 1000, 1, 0, 0, true, false, ""}, {"most", 140, 70, 1000, 1, 0, 0, true, false, ""},
		{"low", 94.4, 60, 1000, 1, 0, 0, true, false,
			"unit.impedance: A pair of own 24 has about 94 ohm alone in air; a bus of ISO 11898-2 needs 95 to 140"},
		{"high", 141, 60, 1000, 1, 0, 0, true, false,
			"unit.impedance: A pair of own 24 has about 141 ohm alone in air; a bus of ISO 11898-2 needs 95 to 140"},
		{"thin", 120, 84, 1000, 1, 0, 0, true, false, "unit.resistance: Each conductor has 84 mohm per metre; a bus of ISO 11898-2 needs " +
			"70 mohm or less, which matters on tens of metres"},
		{"long", 120, 60, 1000, 26_000, 9_000, 9_000, true, false, "unit.bus: Its bus is 26 m long;" + of + "25 m"},
		{"stub", 120, 60, 1000, 20_000, 2_500, 9_000, true, false, "unit.stub: The stub to D:1 is 2.5 m long;" + of + "1.5 m"},
		{"stubs", 120, 60, 1000, 20_000, 1_000, 8_000, true, false, "unit.stub: Its stubs are 8 m long together;" + of + "7.5 m"},
		{"too fast", 120, 60, 1001, 1, 0, 0, true, false, "unit.rate: No lengths are published for 1001 kbit/s: they end at 1000 kbit/s"},
		{"told before", 120, 60, 1000, 26_000, 9_000, 9_000, false, false, ""},
		{"not known", 120, 60, 1000, 26_000, 9_000, 9_000, true, true, ""},
	} {
		s := line("A:1 B:1 1")
		s.H.Units = []model.Unit{{ID: "U", Kbit: model.Some(c.kbit)}}
		s.Wires[0].Entry = catalogue.Wire{Spec: "own", Size: "24", OhmPerKm: c.perKm}
		s.Units = []sheet.Unit{{Pair: sheet.Pair{Ohm: c.ohm, Bus: sheet.Bus{Known: !c.isUnknown, MM: c.line, StubMM: c.stub, StubAt: "D:1",
			AllMM: c.all}}}}
		sayPair(s, 0, c.first)
		got := ""
		for _, g := range s.Snags {
			got += g.Rule + ": " + g.Says
			if g.Level != sheet.Note || g.Where != "U" {
				t.Errorf("%s: %+v", c.name, g)
			}
		}
		if got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// A section by hand. A pair of wires of 1 mm at (0, 5) lies in its jacket of 2.9 mm, its wires 0.5 mm either side of that, the first
// outward; each is as long as the unit's lay and the layer's make it: 100 ohm/km × 1.1 × 1.2 are 132. Without a jacket thicker than
// 2 per cent of the pair there is no disc round them. A filler and what is not known are solid.
func TestSectionByHand(t *testing.T) {
	h := &model.Harness{Wires: []model.Wire{{ID: "a"}, {ID: "b"}, {ID: "c"}},
		Units:    []model.Unit{{ID: "U", Wires: []string{"a", "b"}}, {ID: "E"}},
		Branches: []model.Branch{{ID: "T"}}}
	entry := catalogue.Wire{OhmPerKm: 100, ConductorMM: 0.6, RatedC: 150}
	one := sheet.Wire{Known: true, Dia: sheet.Dia{Nominal: 1}, Entry: entry, Heats: 3}
	thin := one
	thin.Entry.ConductorMM = 2 // more than the wire: 95 % of it
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: []sheet.Wire{one, one, thin}, Units: []sheet.Unit{{Loss: 1.2}, {}}}
	s.Limits = model.Rules{}.Resolve()
	layers := func(unitD unit.Millimetre) []sheet.Layer {
		return []sheet.Layer{{Members: []sheet.Member{{ID: "U", D: unitD, Y: 5, Loss: 1.1}}}, {Members: []sheet.Member{{ID: "c", D: 1, X: 7,
			Loss: 1.1}, {ID: "filler", D: 1.5, X: -7}, {ID: "E", D: 2, X: 9}}}}
	}
	s.Branches = []sheet.Branch{{Layers: layers(2.9), OverMM: 12, Ambient: 85}}
	s.Branches[0].Sheath.Verdict.Wraps, s.Branches[0].Sheath.Verdict.OverMM = true, 13.5
	sec, wires, ok := SectionOf(s, 0)
	near := func(a, b unit.Millimetre) bool { return math.Abs(float64(a-b)) < 1e-9 }
	if !ok || len(sec.Discs) != 6 || sec.OutsideMM != 0 || sec.InsideMM != 12 || sec.Ambient != 85 ||
		fmt.Sprint(wires) != "[{0 0 1} {1 0 2} {2 1 3}]" {
		t.Fatalf("%v %+v %v", ok, sec, wires)
	}
	for k, want := range []heat.Disc{{Y: 5, OverMM: 2.9, CoreMM: 2}, {Y: 5.5, OverMM: 1, CoreMM: 0.6, Ohm: 132, Amps: 3, Rated: 150, In: 1},
		{Y: 4.5, OverMM: 1, CoreMM: 0.6, Ohm: 132, Amps: 3, Rated: 150, In: 1}, {X: 7, OverMM: 1, CoreMM: 0.95, Ohm: 110, Amps: 3,
			Rated: 150},
		{X: -7, OverMM: 1.5}, {X: 9, OverMM: 2}} {
		d := sec.Discs[k]
		if !near(d.X, want.X) || !near(d.Y, want.Y) || !near(d.OverMM, want.OverMM) || !near(d.CoreMM, want.CoreMM) ||
			math.Abs(float64(d.Ohm-want.Ohm)) > 1e-9 || d.Amps != want.Amps || d.Rated != want.Rated || d.In != want.In {
			t.Errorf("disc %d is %+v, want %+v", k, d, want)
		}
	}
	s.Branches[0].Sheath.Tube = model.Some(catalogue.Tube{ID: "own"})
	if sec, _, _ := SectionOf(s, 0); sec.OutsideMM != 13.5 {
		t.Errorf("over its sheath %v", sec.OutsideMM)
	}
	for d, discs := range map[unit.Millimetre]int{2.04: 5, 2.05: 6} {
		s.Branches[0].Layers = layers(d)
		if sec, _, _ := SectionOf(s, 0); len(sec.Discs) != discs {
			t.Errorf("a jacket of %v: %d discs", d, len(sec.Discs))
		}
	}
	for what, spoil := range map[string]func(){"a wire of the unit": func() { s.Wires[1].Known = false }, "its copper": func() {
		s.Wires[1], s.Wires[2].Entry.OhmPerKm = one, 0
	}, "its diameter": func() { s.Wires[2] = one; s.Wires[2].Dia.Nominal = 0 }} {
		s.Wires = []sheet.Wire{one, one, thin}
		spoil()
		if what != "a wire of the unit" {
			s.Wires[1] = one
		}
		if _, _, ok := SectionOf(s, 0); ok {
			t.Errorf("%s is not known, and the section is", what)
		}
	}
	s.Branches[0].Layers = layers(2.9)[1:]
	s.Branches[0].Layers[0].Members = s.Branches[0].Layers[0].Members[1:]
	if _, _, ok := SectionOf(s, 0); ok {
		t.Error("a section without a wire is known")
	}
	// How warm a piece gets: its hottest conductor; a unit by its wires.
	s.Branches[0].Warm.Wires = []sheet.WarmWire{{Wire: 0, C: 90}, {Wire: 1, C: 95}, {Wire: 2, C: 88}}
	for id, want := range map[string]unit.Celsius{"U": 95, "c": 88, "a": 0, "filler": 0} {
		if got, ok := ConductorC(s, 0, id); got != want || ok != (want > 0) {
			t.Errorf("%s: %v %v", id, got, ok)
		}
	}
}

// The least limit but those of its feed; the short at the far end, where it is known; names in few words.
func TestLimitsBesideTheFeed(t *testing.T) {
	s := &sheet.Sheet{Wires: []sheet.Wire{{Limits: []sheet.Limit{{Amps: 9, Where: "a"}, {Amps: 3, Feed: true}, {Amps: 7, Where: "b"},
		{Amps: 7,
			Where: "c"}}}, {Limits: []sheet.Limit{{Amps: 3, Feed: true}}}, {}}}
	if l, ok := BoundBeside(s, 0); !ok || l.Amps != 7 || l.Where != "b" {
		t.Errorf("%+v %v", l, ok)
	}
	for k := 1; k < 3; k++ {
		if l, ok := BoundBeside(s, k); ok || l.Amps != 0 {
			t.Errorf("%+v", l)
		}
	}
	s.Feeds = []sheet.Feed{{Far: []unit.Ampere{50, 0}, Device: model.Some(protect.Device{})}, {Far: []unit.Ampere{50}}}
	for _, c := range []struct {
		feed, n int
		want    unit.Ampere
		ok      bool
	}{{0, 0, 50, true}, {0, 1, 0, false}, {0, 2, 0, false}, {1, 0, 0, false}} {
		if got, ok := ShortA(s, c.feed, c.n); got != c.want || ok != c.ok {
			t.Errorf("wire %d of feed %d: %v %v", c.n, c.feed, got, ok)
		}
	}
	names := strings.Fields("a b c d e f g h")
	for n, want := range map[int]string{0: "", 1: "a", 6: "a, b, c, d, e, f", 7: "a, b, c, d, e and 2 more",
		8: "a, b, c, d, e and 3 more"} {
		if got := listText(names[:n]); got != want {
			t.Errorf("%d: %q", n, got)
		}
	}
	if got := ratingsText([]unit.Ampere{1, 7.5, 10}); got != "1, 7.5, 10 A" {
		t.Error(got)
	}
}
