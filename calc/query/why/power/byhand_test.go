package power

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc/formula/protect"
	"contralay/calc/phase/current"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// known is what each figure is that others are made from, whatever makes it.
var known = map[string]float64{"wire.heats": 3, "wire.drop": 0.2, "wire.finished": 900, "conductor.hot": 60, "wire.hottest": 50,
	"wire.limit": 7, "component.over": 1.2}

func asked(s *sheet.Sheet) why.Explainer {
	made := map[string]why.Maker{}
	for name, v := range known {
		made[name] = func(why.Explainer, why.Figure) (why.Why, bool) { return why.Why{Value: v, Formula: why.First}, true }
	}
	s.Index = model.NewIndex(s.H)
	return why.New(s, made)
}

// fed is a wire a of 2 A that b names as its return, c on a duty of 1 s in 4, d with nothing entered; feeds on them; a bus.
func fed() *sheet.Sheet {
	some, amps, sec := model.Some[string], model.Some[unit.Ampere], model.Some[unit.Second]
	h := &model.Harness{Wires: []model.Wire{{ID: "a", Amps: amps(2), Return: some("r"), DropV: model.Some[unit.Volt](0.35)},
		{ID: "r"}, {ID: "c", Amps: amps(4), OnS: sec(1), PeriodS: sec(4), RestA: amps(1)}, {ID: "d"},
		{ID: "e", Amps: amps(1), OnS: sec(900), PeriodS: sec(4000), RestA: amps(3), Return: some("e")}},
		Feeds: []model.Feed{{ID: "F"}, {ID: "G"}, {ID: "N"}}, Units: []model.Unit{{ID: "U", Wires: []string{"a", "r"}}, {ID: "V",
			Wires: []string{"a"}}},
		Branches: []model.Branch{{ID: "T", LengthMM: 300}, {ID: "L", LengthMM: 100, AmbientC: model.Some[unit.Celsius](40)}}}
	copper := catalogue.Wire{OhmPerKm: 30, AreaMM2: 0.6, RatedC: 150, Insulation: "ETFE"}
	copper.Source, copper.Standing = "own", catalogue.House
	s := &sheet.Sheet{H: h, Wires: []sheet.Wire{{Heats: 2, Entry: copper, Drop: model.Some[unit.Volt](0.2), Circuit: 0.4, Path: []int{0,
		1}, HottestIn: "T",
		HottestC: model.Some[unit.Celsius](71)}, {Heats: 2, Entry: copper, Drop: model.Some[unit.Volt](0.2), Circuit: 0.2}, {Heats: 2.18},
		{}, {Heats: 3,
			Drop: model.Some[unit.Volt](0.1), Circuit: 0.1}},
		Back: map[int][]int{1: {0, 4}},
		Feeds: []sheet.Feed{{Legs: []int{0, 2}, Load: 4, Most: 16, Outputs: 2, Device: model.Some(protect.Device{Kind: protect.Electronic,
			Rating: 10}),
			Far: []unit.Ampere{100, 0}, Short: 0.03}, {Legs: []int{0}, Load: 2, Most: 8, Outputs: 1,
			Device: model.Some(protect.Device{Kind: protect.Blade, Rating: 10}),
			Far:    []unit.Ampere{50}}, {}},
		Units: []sheet.Unit{{}, {}}, Branches: []sheet.Branch{{Ambient: 25}, {Ambient: 40}}}
	s.Units[0].Pair.Known, s.Units[0].Pair.Ohm, s.Units[0].Pair.Loop = true, 100, 61
	bus := &s.Units[0].Pair.Bus
	bus.Known, bus.MM, bus.StubMM, bus.AllMM, bus.Way = true, 1000, 100, 150, [3][]int{{0, 1}, {2}, {2, 3, 4}}
	s.H.Head.SupplyV = model.Some[unit.Volt](12)
	s.Limits.FeedLoadMax, s.Limits.AmbientC = 0.8, 20
	return s
}

// Each figure of feeds and drops by hand: its value is that of the sheet, its inputs are those named, and its formula of them comes to what
// stands last.
func TestEachFigureFromItsInputs(t *testing.T) {
	for _, c := range []struct {
		what  string // figure, of, part
		value float64
		in    string
		made  float64
	}{
		{"wire.heats a", 2, "current 2", 2}, {"wire.heats r", 2, "a 3, e 3", 6}, {"wire.heats d", 0, "none", 0}, {"wire.heats no", 0,
			"none", 0},
		// 16·1 + 1·3 of 4: 4.75
		{"wire.heats c", 2.18, "current 4, on for 1, repeated every 4, current between pulses 1", math.Sqrt(4.75)},
		{"wire.heats e", 3, "current between pulses 3", 3},
		{"wire.lost a", 0.15, "measured 0.35, voltage drop of the wire 0.2", 0.15}, {"wire.lost c", 0, "none", 0}, {"wire.lost r", 0,
			"none", 0},
		{"feed.load F", 4, "a 3, c 3", 6}, {"feed.load G", 2, "a 3", 3}, {"feed.load N", 0, "none", 0}, {"feed.load no", 0, "none", 0},
		{"feed.most F", 16, "rating 10, outputs 2, share that may be used 0.8", 16}, {"feed.most N", 0, "none", 0},
		{"feed.opens F", 10, "limit 10", 10}, {"feed.opens N", 0, "none", 0},
		// 12 V by 100 A are 0.12 ohm, of which the supply has 0.03; by 50 A 0.24.
		{"short.far F a", 100, "supply 12, the supply itself, from its dead short 0.03, the wires on the way 0.09", 100},
		{"short.far G a", 50, "supply 12, the wires on the way 0.24", 50},
		{"short.far F c", 0, "none", 0}, {"short.far G c", 0, "none", 0}, {"short.far F no", 0, "none", 0}, {"short.far N a", 0, "none", 0},
		{"short.lets N a", 0, "none", 0}, {"short.bears G d", 0, "none", 0},
		{"wire.hottest a", 71, "its conductor in T 60", 60}, {"wire.hottest r", 0, "none", 0}, {"wire.bound a", 0, "none", 0},
		{"wire.limit a", 0, "none", 0}, {"wire.limit no", 0, "none", 0},
		{"unit.loop U", 61, "one conductor 30, conductors 2", 60}, {"unit.loop V", 0, "none", 0}, {"unit.ohm V", 0, "none", 0},
		{"unit.ohm no", 0, "none", 0},
		{"unit.bus U", 1000, "a 900, r 900", 1800}, {"unit.stub U", 100, "c 900", 900}, {"unit.stubs U", 150, "c 900, d 900, e 900", 2700},
		{"unit.bus V", 0, "none", 0}, {"unit.bus no", 0, "none", 0},
		// 2 A, 30 mohm/m, 0.9 m: three quarters at 25 °C, a quarter at 40: (0.75·259.5 + 0.25·274.5) ÷ 254.5.
		{"wire.drop a", -1,
			"current 2, highest resistance at 20 C 30, finished length 900, length of T 300, air around T 25, length of L 100, " +
				"air around L 40", 0.054 * (0.75*259.5 + 0.25*274.5) / 254.5},
		{"wire.drop r", -1, "current 0, highest resistance at 20 C 30, finished length 900, temperature 20", 0}, {"wire.drop d", 0,
			"none", 0},
		{"wire.circuit e", 0.1, "voltage drop of e 0.2", 0.2}, {"wire.circuit d", 0, "none", 0},
		{"branch.hottest T", 0, "none", 0}, {"branch.under T", 0, "none", 0}, {"branch.surface T", 0, "none", 0}, {"conductor.hot T a", 0,
			"none", 0},
		{"branch.hottest no", 0, "none", 0}, {"branch.surface no", 0, "none", 0},
	} {
		var f why.Figure
		fmt.Sscan(c.what, &f.What, &f.Of, &f.Part)
		w, ok := Makers[f.What](asked(fed()), f)
		if !ok || c.in == "none" {
			if ok || c.in != "none" || w.Formula != nil || w.Name != "" {
				t.Errorf("%s: %v %+v, want %s", c.what, ok, w, c.in)
			}
			continue
		}
		var in []string
		for _, x := range w.In {
			in = append(in, fmt.Sprintf("%s %.4g", x.Name, x.Value))
			if x.From == nil && (x.Source == "" || x.Name == "") {
				t.Errorf("%s: %+v says too little", c.what, x)
			}
		}
		if got := strings.Join(in, ", "); c.value >= 0 && math.Abs(w.Value-c.value) > 1e-9 || got != c.in ||
			math.Abs(w.Made()-c.made) > 1e-9 ||
			w.Says == "" || !strings.Contains(w.Name, f.Of) && !strings.Contains(w.Name, f.Part) {
			t.Errorf("%s: %s is %v from %s, made %v; want %v from %s, %v: %s", c.what, w.Name, w.Value, got, w.Made(), c.value, c.in,
				c.made, w.Says)
		}
	}
	// A fuse opens for sure at more than its rating only; with the return's drop behind its own.
	e := asked(fed())
	if w, ok := feedOpens(e, why.Figure{Of: "G"}); !ok || w.Value <= 10 || w.Value > 20 || math.Abs(w.Made()-w.Value) > 1e-9 ||
		len(w.In) != 2 {
		t.Errorf("%+v", w)
	}
	if w, ok := wireCircuit(e, why.Figure{Of: "a"}); !ok || w.Value != 0.4 || len(w.In) != 2 ||
		w.In[1].Name != "voltage drop of its return r" ||
		// what is entered for a and e comes back, 2 and 1 A, through 0.9 m of 30 mohm/m in air of 20 °C
		math.Abs(w.In[1].Value-3*0.027) > 1e-9 {
		t.Errorf("%+v", w)
	}
}

// Limits by hand: the least of those on the way; what a contact or a splice allows is looked up.
func TestLimitsByHand(t *testing.T) {
	s := fed()
	s.Wires[0].Limits = []sheet.Limit{{Amps: 7, Where: "contact P:1"}, {Amps: 5, Where: "splice S"}, {Amps: 9, Where: "F", Feed: true},
		{Amps: unit.Ampere(math.Inf(1)), Where: "splice"}}
	s.Wires[0].Bound = model.Some(sheet.Limit{Amps: 5})
	s.Wires[0].Guard = model.Some(sheet.Guard{Feed: 1})
	s.Wires[0].Path = nil
	e := asked(s)
	w, ok := wireBound(e, why.Figure{Of: "a"})
	if !ok || w.Value != 5 || len(w.In) != 4 || w.In[1].Name != "splice S" || w.Formula([]float64{7, 5, 9}) != 5 || w.Says == "" {
		t.Errorf("%+v", w)
	}
	for k, want := range []string{"one contact", "for the splice", "its fuse"} {
		w, ok := wireLimit(e, why.Figure{Of: "a", K: k})
		if !ok || !strings.Contains(w.Says, want) || w.Value != []float64{7, 5, 9}[k] || k < 2 && w.Made() != w.Value ||
			!strings.HasPrefix(w.Name, "what wire a may carry: ") {
			t.Errorf("%d: %+v", k, w)
		}
	}
	for _, k := range []int{-1, 3, 4} {
		if _, ok := wireLimit(e, why.Figure{Of: "a", K: k}); ok {
			t.Errorf("limit %d is explained", k)
		}
	}
}

// What the public tables give, told by hand: the table itself, or free air by the factor of a bundle, and by that of thin air where it
// counts; what was held or taken in place of another is said, and how many of the wires count.
func TestPublishedByHand(t *testing.T) {
	e := asked(fed())
	for _, c := range []struct {
		in      current.Derating
		p       current.Bound
		through int
		made    float64
		inputs  int
		says    []bool // held, another size, fewer count
	}{
		{current.Derating{N: 5, F: 0.8, High: 1}, current.Bound{Amps: 7, Table: true}, 5, 7, 1, []bool{false, false, false}},
		{current.Derating{N: 5, F: 0.8, High: 1}, current.Bound{Amps: 7, Table: true, Held: true}, 5, 7, 1, []bool{true, false, false}},
		{current.Derating{N: 5, F: 0.8, High: 1}, current.Bound{Free: 9}, 5, 7.2, 2, []bool{false, false, false}},
		{current.Derating{N: 5, F: 0.8, High: 1}, current.Bound{Free: 9, Held: true}, 6, 7.2, 2, []bool{true, false, true}},
		{current.Derating{N: 5, F: 0.8, High: 0.9}, current.Bound{Free: 9}, 9, 6.48, 3, []bool{false, false, true}},
	} {
		w := published(e, 0, 0, c.through, c.in, c.p, why.Why{})
		if len(w.In) != c.inputs || math.Abs(w.Made()-c.made) > 1e-9 {
			t.Errorf("%+v: %v from %+v", c.p, w.Made(), w.In)
		}
		for k, words := range []string{"their last point is held", "is taken for it", "that are loaded most give the lowest factor"} {
			if strings.Contains(w.Says, words) != c.says[k] || len(w.Says) < 40 {
				t.Errorf("%+v: %q", c.p, w.Says)
			}
		}
	}
}

// What is said beside the figures: whether a return counts, how long a load is on before it warms up, that a wire rests at more than it
// carries only where it is more; how much of a bundle is in use and how far the rating lies over the air, in whole numbers.
func TestWhatIsSaidOfThem(t *testing.T) {
	e := asked(fed())
	for of, want := range map[string]string{"a": "the drop of its return", "e": "no return is named"} {
		if w, _ := wireCircuit(e, why.Figure{Of: of}); !strings.Contains(w.Says, want) {
			t.Errorf("circuit of %s: %q", of, w.Says)
		}
	}
	for of, want := range map[string]string{"a": "always on", "c": "on for 5 s at a time", "r": "name it as their return"} {
		if w, _ := wireHeats(e, why.Figure{Of: of}); !strings.Contains(w.Says, want) {
			t.Errorf("heat of %s: %q", of, w.Says)
		}
	}
	s := fed()
	for rest, want := range map[unit.Ampere]string{1: "current", 1.5: "current between pulses", 0.5: "current"} {
		s.H.Wires[4].Amps, s.H.Wires[4].RestA = model.Some[unit.Ampere](1), model.Some(rest)
		if w, _ := wireHeats(asked(s), why.Figure{Of: "e"}); w.In[0].Name != want || w.In[0].Value != max(1, float64(rest)) {
			t.Errorf("resting at %v: %+v", rest, w.In)
		}
	}
	// Rated 150 °C in air of 25 °C; 0.456 of its capacity is 46 %.
	s.Limits.AltitudeM = 1234.4
	w := published(asked(s), 0, 0, 5, current.Derating{N: 5, F: 0.8, High: 0.9, Share: 0.456}, current.Bound{Free: 9}, why.Why{})
	var names []string
	for _, in := range w.In {
		names = append(names, in.Name)
	}
	if got := strings.Join(names, "; "); got != "one wire in free air, 125 C over the air; factor of 5 wires, 46 % in use; "+
		"factor for thin air at 1234 m" {
		t.Error(got)
	}
}
