package current

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc/formula/heat"
	"contralay/calc/formula/protect"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// spliced is a line whose ends S1, S2 … are splices, of wires of 10 Ω/km at their rating.
func spliced(wires ...string) *sheet.Sheet {
	s := line(wires...)
	met := map[string]bool{}
	for k, w := range wires {
		for _, e := range strings.Fields(w)[:2] {
			if strings.HasPrefix(e, "S") && !met[e] {
				met[e] = true
				s.H.Splices = append(s.H.Splices, model.Splice{ID: e})
			}
		}
		s.Wires[k].Entry = catalogue.Wire{OhmPerKm: 10, RatedC: 20}
	}
	return s
}

// What a device feeds, by hand. Two legs; the first ends at a splice with three wires on it, of which one goes on to a second splice, and
// one belongs to another feed, which joins there. Each wire has 0.01 Ω a metre, and the supply 12 V/100 A = 0.12 Ω. A short at the
// end of a wire drives
// 12 V over the way there, the return of the last wire that names one, and the supply. A wire that is named twice, or that there is
// not, counts no more; a return that is a leg is not one that comes back beside it.
func TestWhatADeviceFeeds(t *testing.T) {
	sheetOf := func() *sheet.Sheet {
		s := spliced("A:1 S1 10", "S1 B:1 20", "S1 S2 5", "S2 C:1 10", "A:2 D:1 30", "C:2 G:1 40", "D:2 G:2 20", "S2 E:1 10", "S2 F:1 15",
			"H:1 K:1 1")
		for k, back := range map[int]string{3: "w5", 4: "w6", 8: "w0", 1: "w1"} { // w1 names itself: it has no return
			s.H.Wires[k].Return = model.Some(back)
		}
		s.H.Head.SupplyV, s.H.Head.ShortA = model.Some[unit.Volt](12), model.Some[unit.Ampere](100)
		s.H.Feeds = []model.Feed{{ID: "none", Wires: []string{"w9"}},
			{ID: "F", Device: model.Some(model.ProtectionBlade), Amps: model.Some[unit.Ampere](10), Wires: []string{"w0", "nope",
				"w0", "w4"},
				Outputs: model.Some(2)},
			{ID: "other", Device: model.Some(model.ProtectionElectronic), Amps: model.Some[unit.Ampere](3),
				TripS: model.Some[unit.Second](0.5),
				Wires: []string{"w7"}}}
		s.Wires[0].Heats, s.Wires[4].Heats = 3, 2
		s.Limits.FeedLoadMax = 0.75
		s.Index = model.NewIndex(s.H)
		return s
	}
	far := func(ohm ...float64) (out []unit.Ampere) {
		for _, o := range ohm {
			out = append(out, unit.Ampere(12/o))
		}
		return out
	}
	none := unit.Ampere(0)
	for _, c := range []struct {
		name    string
		change  func(s *sheet.Sheet)
		want    []unit.Ampere // far: w0 w4 w1 w2 w3 w8 w6 w5
		near    unit.Ampere
		outputs int
	}{
		// w8 comes back through w0: 0.1 + 0.05 + 0.15 and 0.1, and so does the weakest short on w0.
		{"as it is", func(*sheet.Sheet) {}, far(0.52, 0.62, 0.42, 0.27, 0.77, 0.52, 0.62, 0.77), 100, 1},
		{"no dead short", func(s *sheet.Sheet) { s.H.Head.ShortA = model.Opt[unit.Ampere]{} }, far(0.4, 0.5, 0.3, 0.15, 0.65, 0.4,
			0.5, 0.65), 0, 1},
		{"no supply", func(s *sheet.Sheet) { s.H.Head.SupplyV = model.Opt[unit.Volt]{} }, []unit.Ampere{0, 0, 0, 0, 0, 0, 0, 0}, 0, 1},
		{"half a volt", func(s *sheet.Sheet) { s.H.Head.SupplyV = model.Some[unit.Volt](0.5) }, []unit.Ampere{0.5 / 0.405, 0.5 / 0.505,
			0.5 / 0.305, 0.5 / 0.155, 0.5 / 0.655, 0.5 / 0.405, 0.5 / 0.505, 0.5 / 0.655}, 100, 1},
		{"a way that is not known", func(s *sheet.Sheet) { s.Wires[2].Finished = 0 },
			append(append(far(), none, unit.Ampere(12/0.62), unit.Ampere(12/0.42)), none, none, none, unit.Ampere(12/0.62), none),
			100, 1},
		{"a wire that is not", func(s *sheet.Sheet) { s.Wires[3].Known = false },
			append(append(far(0.52, 0.62, 0.42, 0.27), none), append(far(0.52, 0.62), none)...), 100, 1},
		{"a return of no length", func(s *sheet.Sheet) { s.Wires[6].Finished = 0 },
			append(append(far(0.52), none), append(far(0.42, 0.27, 0.77, 0.52), none, unit.Ampere(12/0.77))...), 100, 1},
		{"electronic, joined", func(s *sheet.Sheet) { s.H.Feeds[1].Device = model.Some(model.ProtectionElectronic) },
			far(0.52, 0.62, 0.42, 0.27, 0.77, 0.52, 0.62, 0.77), 100, 2},
		{"more outputs than legs", func(s *sheet.Sheet) {
			s.H.Feeds[1].Device, s.H.Feeds[1].Outputs = model.Some(model.ProtectionElectronic), model.Some(5)
		}, far(0.52, 0.62, 0.42, 0.27, 0.77, 0.52, 0.62, 0.77), 100, 2},
	} {
		s := sheetOf()
		c.change(s)
		FeedWires(s)
		f := &s.Feeds[1]
		if got := fmt.Sprint(f.Legs, f.Beyond, f.Back); got != "[0 4] [1 2 3 8] [6 5]" {
			t.Errorf("%s: it feeds %s", c.name, got)
			continue
		}
		for n, a := range f.Far {
			if math.Abs(float64(a-c.want[n])) > 1e-6 {
				t.Errorf("%s: a short on wire %d drives %v A, by hand %v", c.name, AllWires(f)[n], a, c.want[n])
			}
		}
		if all := 10 * unit.Ampere(c.outputs); f.Near != c.near || f.Outputs != c.outputs || f.All != all || f.Load != 5 ||
			f.Most != all*0.75 ||
			!f.Device.Set || f.Device.V.Rating != 10 {
			t.Errorf("%s: %+v", c.name, f)
		}
		for k := range s.Wires { // a leg bears what its output lets through; what lies beyond all of them, and what the other feed adds
			want := map[int]sheet.Guard{7: {Feed: 2, Amps: 3}, 0: {Feed: 1, Amps: 10}, 4: {Feed: 1, Amps: 10}}
			for _, b := range f.Beyond {
				want[b] = sheet.Guard{Feed: -1, Amps: f.All + 3}
			}
			if g, has := want[k]; s.Wires[k].Guard.Set != has || s.Wires[k].Guard.V != g {
				t.Errorf("%s: wire %d is guarded by %+v", c.name, k, s.Wires[k].Guard)
			}
		}
		if got := fmt.Sprint(s.Feeds[0].Legs, s.Feeds[0].Device.Set, s.Feeds[2].Legs,
			s.Feeds[2].Device.V.Trip); got != "[9] false [7] 0.5" {
			t.Errorf("%s: the others feed %s", c.name, got)
		}
	}
	none0 := line("A:1 B:1 1")
	if FeedWires(none0); none0.Feeds != nil {
		t.Error("feeds of a harness that has none")
	}
	if kinds := DeviceKinds; len(kinds) != 3 || kinds[model.ProtectionLargeBlade] != protect.LargeBlade {
		t.Errorf("%v", kinds)
	}
}

// That shorts are not judged is told once of the harness, where the supply's voltage is not known; and that no feed protects a power
// wire with a current, which no other device's wire leads to.
func TestWhatFeedsLeaveOut(t *testing.T) {
	for _, volts := range []unit.Volt{0, 0.5, 12} {
		s := spliced("A:1 B:1 1", "C:1 D:1 1", "B:2 E:1 1", "F:1 G:1 1", "H:1 J:1 1")
		s.H.Head.SupplyV = model.Opt[unit.Volt]{V: volts, Set: volts > 0}
		for _, id := range []string{"A", "B", "C", "D", "E", "F", "G", "H", "J"} {
			s.H.Terminations = append(s.H.Terminations, model.Termination{ID: id})
		}
		s.H.Feeds = []model.Feed{{ID: "F1", Device: model.Some(model.ProtectionBlade), Amps: model.Some[unit.Ampere](10),
			Wires: []string{"w0"}}}
		for k, amps := range []unit.Ampere{4, 0.5, 2, 0, 3} {
			s.H.Wires[k].Role, s.H.Wires[k].Amps = model.Some(model.RolePower), model.Some(amps)
		}
		s.H.Wires[4].Role = model.Some(model.RoleSignal)
		s.Index = model.NewIndex(s.H)
		s.Limits.FeedLoadMax, s.Limits.BeforeMaxMM = 0.8, 180
		FeedWires(s)
		SayFeeds(s)
		said := map[string]int{}
		for _, g := range s.Snags {
			said[g.Rule+" "+g.Where]++
		}
		// w1 has a current and hangs on nothing; w2 begins at B, where w0 ends: it may lie behind its load; w3 has no current, w4
		// no power.
		want := "map[feed.none w1:1]"
		if volts == 0 {
			want = "map[feed.none w1:1 feed.supply harness:1]"
		}
		if fmt.Sprint(said) != want {
			t.Errorf("at %v V: %v, want %s", volts, said, want)
		}
	}
}

// Pairs are worked out for each unit of two like wires that are known, whatever stands before it; and of two units on one bus the
// first alone tells of its length.
func TestPairsOneByOne(t *testing.T) {
	pairs := func(wires []string, units ...model.Unit) *sheet.Sheet {
		s := line(wires...)
		s.H.Units, s.Units = units, make([]sheet.Unit, len(units))
		for k := range s.Wires {
			s.Wires[k].Entry = catalogue.Wire{Spec: "own", Size: "24", Insulation: "ETFE", ConductorMM: 0.6, OhmPerKm: 60}
			s.Wires[k].Dia.Nominal = 1
		}
		s.Index = model.NewIndex(s.H)
		return s
	}
	fast := model.Some[unit.KilobitPerSec](1000)
	long := []string{"A:1 S1 15", "A:2 S2 15", "S1 B:1 15", "S2 B:2 15", "C:1 D:1 26", "C:2 D:2 26"}
	s := pairs(long, model.Unit{ID: "U", Wires: []string{"w0", "w1"}, Kbit: fast}, model.Unit{ID: "V", Wires: []string{"w2", "w3"},
		Kbit: fast},
		model.Unit{ID: "W", Wires: []string{"w4", "w5"}, Kbit: fast})
	Pairs(s)
	var told []string
	for _, g := range s.Snags {
		if g.Rule == "unit.bus" {
			told = append(told, g.Where+": "+g.Says)
		}
	}
	want := "[U: Its bus is 30 m long; at 1000 kbit/s the limit is 25 m W: Its bus is 26 m long; at 1000 kbit/s the limit is 25 m]"
	if fmt.Sprint(told) != want {
		t.Errorf("%v", told)
	}
	for n, want := range []unit.Millimetre{30_000, 30_000, 26_000} {
		if p := s.Units[n].Pair; !p.Known || p.Loop != 120 || !p.Bus.Known || p.Bus.MM != want {
			t.Errorf("unit %d: %+v", n, p)
		}
	}
	for name, change := range map[string]func(s *sheet.Sheet){
		"the first wire is not there":  func(s *sheet.Sheet) { s.H.Units[0].Wires[0] = "nope" },
		"the second wire is not there": func(s *sheet.Sheet) { s.H.Units[0].Wires[1] = "nope" },
		"the first is not known":       func(s *sheet.Sheet) { s.Wires[0].Known = false },
		"the second is not known":      func(s *sheet.Sheet) { s.Wires[1].Known = false },
		"they are unlike":              func(s *sheet.Sheet) { s.Wires[1].Entry.Size = "22" },
		"no permittivity": func(s *sheet.Sheet) {
			s.Wires[0].Entry.Insulation, s.Wires[1].Entry.Insulation = "felt",
				"felt"
		},
		"no resistance": func(s *sheet.Sheet) { s.Wires[0].Entry.OhmPerKm, s.Wires[1].Entry.OhmPerKm = 0, 0 },
		"no conductor":  func(s *sheet.Sheet) { s.Wires[0].Entry.ConductorMM, s.Wires[1].Entry.ConductorMM = 0, 0 },
		"one wire":      func(s *sheet.Sheet) { s.H.Units[0].Wires = s.H.Units[0].Wires[:1] },
		"sound":         func(*sheet.Sheet) {},
	} {
		s := pairs([]string{"A:1 B:1 1", "A:2 B:2 1", "C:1 D:1 1", "C:2 D:2 1"}, model.Unit{ID: "U", Wires: []string{"w0", "w1"}},
			model.Unit{ID: "V", Wires: []string{"w2", "w3"}})
		change(s)
		Pairs(s)
		if first := s.Units[0].Pair; first.Known != (name == "sound") || first.Known != (first.Ohm > 0) || !s.Units[1].Pair.Known {
			t.Errorf("%s: %+v, then %+v", name, first, s.Units[1].Pair)
		}
	}
}

// What passes a contact or splice while it is on, by hand: only of a load that comes and goes, and only over what is rated there.
func TestPeaksByHand(t *testing.T) {
	for _, c := range []struct {
		on, amps unit.Ampere
		where    string
		want     unit.Ampere
	}{{2, 10, "contact A:1", 7.5}, {2, 10, "splice S", 7.5}, {2, 10, "bundle T", 0}, {2, 7.5, "contact A:1", 0}, {0, 10,
		"contact A:1", 0},
		{2, 7.6, "contact A:1", 7.5}} {
		s := line("A:1 B:1 1")
		w := &s.H.Wires[0]
		w.Amps, w.OnS, w.PeriodS = model.Some(c.amps), model.Opt[unit.Second]{V: unit.Second(c.on), Set: c.on > 0},
			model.Some[unit.Second](100)
		s.Wires[0].Limits = []sheet.Limit{{Amps: 1, Where: "heat"}, {Amps: 7.5, Where: c.where}}
		if l, ok := peaks(s, 0); ok != (c.want > 0) || l.Amps != c.want {
			t.Errorf("%+v: %+v %v", c, l, ok)
		}
	}
}

// What is kept of a branch's heat is what its section comes to: its surface, under the sheath, its heat, its warmest filler, each
// conductor, and the hottest of them by name.
func TestWarmIsItsSection(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}}}
	s := &sheet.Sheet{H: h, Branches: make([]sheet.Branch, 1)}
	b := &s.Branches[0]
	b.Ambient, b.OverMM = 40, 3
	b.Layers = make([]sheet.Layer, 2)
	members := []sheet.Member{{ID: "w0", D: 1, Loss: 1}}
	for k := range 6 {
		sin, cos := math.Sincos(math.Pi / 3 * float64(k))
		members = append(members, sheet.Member{ID: fmt.Sprint("w", k+1), X: unit.Millimetre(cos), Y: unit.Millimetre(sin), D: 1, Loss: 1})
	}
	members[4].ID, members[5].ID = "filler", "filler"
	for k, amps := range []unit.Ampere{1, 2, 5, 0, 0, 0, 3} {
		h.Wires = append(h.Wires, model.Wire{ID: fmt.Sprint("w", k)})
		w := sheet.Wire{Known: true, Heats: amps, Entry: catalogue.Wire{ConductorMM: 0.6, OhmPerKm: 60, RatedC: 150}}
		w.Dia.Nominal = 1
		s.Wires = append(s.Wires, w)
	}
	s.Index = model.NewIndex(h)
	s.Limits.BundleMargin = 0.5
	b.Layers[0].Members, b.Layers[1].Members = members[:1], members[1:]
	sec, wires, ok := SectionOf(s, 0)
	rays, traced := heat.Trace(sec)
	r, solved := rays.Solve(sec)
	if !ok || !traced || !solved || len(wires) != 5 || len(sec.Discs) != 7 {
		t.Fatalf("%d wires, %d discs: %v %v %v", len(wires), len(sec.Discs), ok, traced, solved)
	}
	warm(s, 0, nil)
	w := &b.Warm
	if !w.Known || w.SurfaceC != r.Surface || w.UnderC != r.Under || w.WattPerM != r.Heat || !w.FillerC.Set ||
		w.FillerC.V != max(r.Discs[4], r.Discs[5]) || w.Hottest != "w2" || w.HottestC != r.Discs[2] {
		t.Errorf("%+v, its section %+v", w, r)
	}
	limits := r.Limits(sec)
	for n, c := range wires {
		got := w.Wires[n]
		if got.C != r.Discs[c.Disc] || got.Wire != c.Wire || got.Layer != c.Layer || !got.Limit.Set || got.Limit.V != limits[c.Disc]/2 {
			t.Errorf("wire %d: %+v", n, got)
		}
		if at := ConductorIn(s, c.Wire, 0); at != got.C {
			t.Errorf("wire %d is at %v", c.Wire, at)
		}
		if at, ok := ConductorC(s, 0, h.Wires[c.Wire].ID); !ok || at != got.C {
			t.Errorf("wire %d is at %v, %v", c.Wire, at, ok)
		}
	}
	if at := ConductorIn(s, 4, 0); at != 40 { // not in it: the air
		t.Errorf("a wire that lies elsewhere is at %v", at)
	}
	// A build in which nothing changed takes it over; one with another current keeps the rays alone.
	prior := &sheet.Sheet{Branches: []sheet.Branch{{Warm: *w}}}
	warm(s, 0, prior)
	if w.WattPerM != r.Heat || w.Rays != prior.Branches[0].Warm.Rays || w.Hottest != "w2" {
		t.Errorf("taken over: %+v", w)
	}
	// So does one in which another wire stands before them in the file: the figures go with the wires, and the prior keeps its own.
	moved := &model.Harness{Branches: h.Branches, Wires: append([]model.Wire{{ID: "new"}}, h.Wires...)}
	after := &sheet.Sheet{H: moved, Index: model.NewIndex(moved), Limits: s.Limits, Wires: append([]sheet.Wire{{}}, s.Wires...),
		Branches: []sheet.Branch{*b}}
	warm(after, 0, prior)
	for n, c := range after.Branches[0].Warm.Wires {
		if was := prior.Branches[0].Warm.Wires[n]; c.Wire != was.Wire+1 || c.C != was.C || was.Wire != wires[n].Wire {
			t.Errorf("wire %d is now %+v, was %+v", n, c, was)
		}
	}
	if got := after.Branches[0].Warm; got.Hottest != "w2" || got.Rays != w.Rays || got.WattPerM != r.Heat {
		t.Errorf("moved: %+v", got)
	}
	s.Wires[0].Heats = 2
	warm(s, 0, prior)
	if w.WattPerM <= r.Heat || w.Rays != prior.Branches[0].Warm.Rays {
		t.Errorf("with another current: %+v", w)
	}
	for _, change := range []func(){func() { s.Unrated = true }, func() { s.Unrated, b.OverMM = false, 0 }} {
		change()
		warm(s, 0, prior)
		if w.Known || w.Rays != nil {
			t.Errorf("nothing is known, and yet %+v", w)
		}
	}
}

// Wires that come back through one are as weak there as the weakest of them, whichever stands first. By hand: legs of 0.1 and 0.5 Ω, a
// return of 0.2 Ω, 12 V: 40 A and 17.14 A.
func TestReturnOfTwo(t *testing.T) {
	for _, long := range [][2]int{{10, 50}, {50, 10}} {
		s := spliced(fmt.Sprintf("A:1 B:1 %d", long[0]), fmt.Sprintf("A:2 B:2 %d", long[1]), "B:3 G:1 20")
		s.H.Wires[0].Return, s.H.Wires[1].Return = model.Some("w2"), model.Some("w2")
		s.H.Head.SupplyV = model.Some[unit.Volt](12)
		s.H.Feeds = []model.Feed{{ID: "F", Wires: []string{"w0", "w1"}}}
		s.Index = model.NewIndex(s.H)
		FeedWires(s)
		f := &s.Feeds[0]
		if len(f.Far) != 3 || math.Abs(float64(f.Far[2])-12/0.7) > 1e-9 || math.Abs(float64(max(f.Far[0], f.Far[1]))-40) > 1e-9 {
			t.Errorf("%v m: %v", long, f.Far)
		}
	}
}

// The limit that a wire passes and that weighs most, by hand: what a feed leaves it does not count here, one that is published goes
// before one from memory, and of the same standing the least.
func TestPassedByHand(t *testing.T) {
	limit := func(amps unit.Ampere, standing catalogue.Standing, feed bool) sheet.Limit {
		return sheet.Limit{Amps: amps, Feed: feed, Origin: catalogue.Origin{Standing: standing}}
	}
	pub, mem := catalogue.Published, catalogue.Memory
	for n, c := range []struct {
		limits []sheet.Limit
		want   unit.Ampere
	}{
		{[]sheet.Limit{limit(1, pub, true), limit(12, pub, false), limit(7, pub, false)}, 7},
		{[]sheet.Limit{limit(5, mem, false), limit(8, pub, false), limit(9, pub, false)}, 8},
		{[]sheet.Limit{limit(8, pub, false), limit(5, mem, false), limit(6, pub, false)}, 6},
		{[]sheet.Limit{limit(10, pub, false), limit(0.5, mem, false), limit(0.4, mem, false)}, 0.4},
		{[]sheet.Limit{limit(10, pub, false), limit(11, mem, false)}, 0}, {nil, 0},
	} {
		s := line("A:1 B:1 1")
		s.Wires[0].Heats, s.Wires[0].Limits = 10, c.limits
		if got, ok := passed(s, 0); got.Amps != c.want || ok != (c.want > 0) {
			t.Errorf("%d: %+v %v, want %v", n, got, ok, c.want)
		}
	}
}

// What a wire drops, by hand: 10 A over 3 m of 10 Ω/km at 20 °C are 0.3 V; over two branches of 1 and 2 m at 20 and at 274.5 °C, where
// copper has twice the resistance, 0.1 + 0.4 V; without a way in the harness it is as warm as the shop's air; unknown it drops nothing.
func TestDropByHand(t *testing.T) {
	s := spliced("A:1 B:1 3")
	s.H.Branches = []model.Branch{{ID: "T", LengthMM: 1000}, {ID: "U", LengthMM: 2000}}
	s.Branches = make([]sheet.Branch, 2)
	s.Branches[0].Ambient, s.Branches[1].Ambient, s.Limits.AmbientC = 20, 274.5, 274.5
	for _, c := range []struct {
		path   []int
		change func(w *sheet.Wire)
		want   float64
	}{{[]int{0}, nil, 0.3}, {[]int{0, 1}, nil, 0.5}, {[]int{1, 0}, nil, 0.5}, {nil, nil, 0.6},
		{[]int{0}, func(w *sheet.Wire) { w.Known = false }, 0}, {[]int{0}, func(w *sheet.Wire) { w.Finished = 0 }, 0},
		{nil, func(w *sheet.Wire) { w.Finished = 0.5 }, 0.0001}} {
		w := &s.Wires[0]
		w.Path, w.Known, w.Finished = c.path, true, 3000
		if c.change != nil {
			c.change(w)
		}
		if got := DropAt(s, 0, 10); math.Abs(float64(got)-c.want) > 1e-12 {
			t.Errorf("over %v: %v V, by hand %v", c.path, got, c.want)
		}
	}
}

// A wire that life hangs on is not rated: what its feed lets through is not judged, but that of the wires behind it in the list is.
func TestSafetyIsNotJudgedByItsFeed(t *testing.T) {
	for _, safety := range []bool{false, true} {
		s := spliced("A:1 B:1 1", "A:2 B:2 1")
		s.H.Wires[0].Safety = model.Some(safety)
		s.H.Feeds = []model.Feed{{ID: "F", Device: model.Some(model.ProtectionBlade), Amps: model.Some[unit.Ampere](10),
			Wires: []string{"w0", "w1"}}}
		s.Index = model.NewIndex(s.H)
		s.Limits.FeedLoadMax = 0.8
		FeedWires(s)
		for k := range s.Wires {
			s.Wires[k].Limits = []sheet.Limit{{Amps: 4 + unit.Ampere(k)}}
		}
		sayGuards(s, 0)
		want := "[At 10 A it can pass more current all the time than these wires may carry: w0 (4 A), w1 (5 A)]"
		if safety {
			want = "[At 10 A it can pass more current all the time than these wires may carry: w1 (5 A)]"
		}
		var got []string
		for _, g := range s.Snags {
			got = append(got, g.Says)
		}
		if fmt.Sprint(got) != want || s.Wires[0].FeedBurns == safety || !s.Wires[1].FeedBurns {
			t.Errorf("safety %v: %v", safety, got)
		}
	}
}

// Drops by hand: of 3 m of 10 Ω/km 1 A drops 0.03 V. A wire is told with its return, a return by itself is not, and one that stands
// behind both in the file is told alone.
func TestDropsOneByOne(t *testing.T) {
	s := spliced("A:1 B:1 3", "B:2 A:2 3", "A:3 B:3 3", "A:4 B:4 3")
	s.H.Wires[0].Return = model.Some("w1")
	for k, a := range []unit.Ampere{1, 200, 100, 30} {
		s.H.Wires[k].Amps = model.Some(a)
	}
	s.Branches, s.Limits.AmbientC, s.Limits.DropMaxV = nil, 20, 1
	Drops(s)
	var got []string
	for _, g := range s.Snags {
		if g.Rule == "wire.drop" && g.Level == sheet.Warn {
			got = append(got, g.Where+" "+g.Says)
		}
	}
	want := "[w0 It drops 6.03 V at 1.00 A (with its return); the shop allows 1.00 V w2 It drops 3.00 V at 100.00 A (this wire alone); " +
		"the shop allows 1.00 V]"
	if fmt.Sprint(got) != want {
		t.Errorf("%v", got)
	}
	for k, want := range []float64{6.03, 6, 3, 0.9} {
		if c := float64(s.Wires[k].Circuit); math.Abs(c-want) > 1e-9 {
			t.Errorf("the circuit of w%d drops %v V, by hand %v", k, c, want)
		}
	}
}
