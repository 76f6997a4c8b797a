package wires

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// sized is a sheet of wires by a catalogue of one wire, "own 22": 1.2 mm ± 0.1, 0.5 mm², 150 C.
func sized(wires ...model.Wire) *sheet.Sheet {
	h := &model.Harness{Wires: wires}
	e := catalogue.Wire{Spec: "own", Size: "22", OverMM: 1.2, TolMM: 0.1, AreaMM2: 0.5, RatedC: 150, GramPerM: 6,
		Origin: catalogue.Origin{Source: "a sheet", Standing: catalogue.Published}, OverStanding: catalogue.Practice}
	return &sheet.Sheet{H: h, Index: model.NewIndex(h), Limits: model.Rules{}.Resolve(),
		Cat: &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{e.Key(): e}}}
}

func said(s *sheet.Sheet) string {
	var out []string
	for _, g := range s.Snags {
		out = append(out, g.Level.String()+" "+g.Rule+" "+g.Where+": "+g.Says)
	}
	s.Snags = nil
	return strings.Join(out, "; ")
}

// What a wire is and what is said where it is not known, by hand: of the catalogue its band; of a reel that was measured no band.
func TestSizesOfWires(t *testing.T) {
	for _, c := range []struct {
		w    model.Wire
		reel bool
		dia  string
		want string
	}{
		{model.Wire{Spec: "own", Size: "22"}, false, "1.2 1.1 1.3 practice", ""},
		{model.Wire{Spec: "own", Size: "22"}, true, "1.25 1.25 1.25 house", ""},
		{model.Wire{Spec: "none", Size: "22"}, false, "0 0 0 ", "stop wire.size w: none size 22 is in no catalogue: put it into the " +
			"shop's catalogue, " +
			"or measure the reel"},
		{model.Wire{Spec: "own"}, false, "0 0 0 ", "stop wire.size w: It has no size: give it one"},
		{model.Wire{Spec: "rare", Size: "22"}, true, "2.5 2.5 2.5 house",
			"warn wire.spec w: rare size 22 is in no catalogue, so its mass and " +
				"voltage drop are not known"},
	} {
		c.w.ID = "w"
		s := sized(c.w)
		if c.reel {
			s.H.Reels = []model.Reel{{Spec: "own", Size: "22", OverMM: 1.25}, {Spec: "rare", Size: "22", OverMM: 2.5}}
		}
		SizeWires(s)
		d := s.Wires[0].Dia
		if got := fmt.Sprintf("%.4g %.4g %.4g %s", float64(d.Nominal), float64(d.Min), float64(d.Max), d.Standing); got != c.dia {
			t.Errorf("%+v is %s, want %s", c.w, got, c.dia)
		}
		if got := said(s); got != c.want {
			t.Errorf("%+v: %q, want %q", c.w, got, c.want)
		}
		if known := c.w.Spec == "own" && c.w.Size == "22"; s.Wires[0].Known != known || known && s.Wires[0].GramPerM != 6 {
			t.Errorf("%+v is known: %v, %v g/m", c.w, s.Wires[0].Known, s.Wires[0].GramPerM)
		}
	}
	for volts, want := range map[unit.Volt]string{60: "", 61: "stop supply harness: The supply is 61 V: this sheet rates nothing " +
		"above 60 V DC"} {
		s := sized()
		s.H.Head.SupplyV = model.Some(volts)
		SizeWires(s)
		if got := said(s); got != want {
			t.Errorf("%v V: %q", volts, got)
		}
	}
	for ratio, want := range map[unit.Ratio]string{0.5: "", 0: "stop lay.ratio rules: lay_ratio must be more than 0; 8 to 16 is usual"} {
		s := sized()
		s.Limits.LayRatio = ratio
		SizeWires(s)
		if got := said(s); got != want {
			t.Errorf("ratio %v: %q", ratio, got)
		}
	}
}

// Units by hand: a pair of 1.2 is 2.4 over, with braid and jacket 0.3 and 0.2 more (design, 6.9); one that is given is as given.
func TestSizesOfUnits(t *testing.T) {
	wire := func(id string) model.Wire { return model.Wire{ID: id, Spec: "own", Size: "22"} }
	two := []string{"a", "b"}
	for _, c := range []struct {
		name string
		u    model.Unit
		dia  string
		want string
	}{
		{"a pair", model.Unit{Wires: two}, "2.4 2.2 2.6 memory", ""},
		{"shielded", model.Unit{Wires: two, Shield: model.Some(true)}, "2.9 2.7 3.1 memory", ""},
		{"given", model.Unit{Wires: two, OverMM: model.Some(unit.Millimetre(3.3))}, "3.3 3.3 3.3 house", ""},
		{"a pair of three", model.Unit{Wires: []string{"a", "b", "c"}, Build: model.Some(model.BuildPair)}, "2.586 2.37 2.801 memory",
			"stop unit.build U: A pair has 2 wires; this one has 3"},
		{"a triple of two", model.Unit{Wires: two, Build: model.Some(model.BuildTriple)}, "2.4 2.2 2.6 memory",
			"stop unit.build U: A triple has 3 wires; this one has 2"},
		{"a quad", model.Unit{Wires: []string{"a", "b", "c", "d"}, Build: model.Some(model.BuildQuad)}, "2.897 2.656 3.138 memory", ""},
		{"no wires", model.Unit{}, "0 0 0 ", "stop unit.build U: It has no wires: name them"},
		{"one wire", model.Unit{Wires: []string{"a"}}, "0 0 0 ", "stop unit.size U: Its diameter is not known: measure it and give " +
			"over_mm, or make it " +
			"of two to four known wires"},
	} {
		c.u.ID = "U"
		s := sized(wire("a"), wire("b"), wire("c"), wire("d"))
		s.H.Units = []model.Unit{c.u}
		s.Index = model.NewIndex(s.H)
		SizeWires(s)
		SizeUnits(s)
		d := s.Units[0].Dia
		if got := fmt.Sprintf("%.4g %.4g %.4g %s", float64(d.Nominal), float64(d.Min), float64(d.Max), d.Standing); got != c.dia {
			t.Errorf("%s is %s, want %s", c.name, got, c.dia)
		}
		if got := said(s); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
		if u := s.Units[0]; u.Loss < 1 || len(c.u.Wires) < 2 && u.Loss != 1 || c.name == "a pair" &&
			(math.Abs(float64(u.LayMM)-28.8) > 1e-9 ||
				math.Abs(float64(u.Loss)-math.Sqrt(1+math.Pow(math.Pi*1.2/28.8, 2))) > 1e-9) { // lay 12 × 2.4, its wires on a circle of 1.2
			t.Errorf("%s: lay %v, loss %v", c.name, u.LayMM, u.Loss)
		}
	}
}

// How a wire comes and goes, and what is said of it where that is none (5 s: IEC 60364-5-54 as quoted, reference, wire); what comes back
// through a return adds up.
func TestDutiesAreSaid(t *testing.T) {
	amps, s1 := model.Some[unit.Ampere], model.Some[unit.Second]
	for _, c := range []struct {
		name  string
		w     model.Wire
		heats float64
		want  string
	}{
		{"always on", model.Wire{Amps: amps(4)}, 4, ""},
		{"a quarter of the time", model.Wire{Amps: amps(4), OnS: s1(1), PeriodS: s1(4)}, 2, ""},
		{"how often is not given", model.Wire{Amps: amps(4), OnS: s1(2)}, 4,
			"warn wire.duty w: It is on for 2 s, but how often is not given: it counts as always on"},
		{"how long is not given", model.Wire{Amps: amps(4), PeriodS: s1(2)}, 4,
			"warn wire.duty w: It comes on every 2 s, but for how long is not given: it counts as always on"},
		{"all the time", model.Wire{Amps: amps(4), OnS: s1(3), PeriodS: s1(3)}, 4,
			"warn wire.duty w: It is on for 3 s in every 3 s, which is all the time"},
		{"long", model.Wire{Amps: amps(4), OnS: s1(60), PeriodS: s1(240)}, 4,
			"note wire.duty w: It is on for 60 s at a time: above 5 s it counts as " +
				"always on"},
		{"life hangs on it", model.Wire{Safety: model.Some(true)}, 0,
			"stop wire.safety w: Marked safety-critical: this sheet gives no rating for " +
				"it. Have it designed by a licensed engineer"},
	} {
		c.w.ID = "w"
		s := sized(c.w)
		s.Wires = make([]sheet.Wire, 1)
		Duties(s)
		if got := float64(s.Wires[0].Heats); math.Abs(got-c.heats) > 1e-9 {
			t.Errorf("%s heats as %v A, want %v", c.name, got, c.heats)
		}
		got := said(s)
		if got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
		if Rates(s, 0) == c.w.Safety.V || Carries(s, 0) != (c.heats > 0) {
			t.Errorf("%s: rated %v, carries %v", c.name, Rates(s, 0), Carries(s, 0))
		}
	}
	s := sized()
	s.H.Head.Use = model.Some(model.UseAircraft)
	Duties(s)
	if got := said(s); got != "stop use harness: It is for an aircraft: this sheet approves nothing that flies, and gives no "+
		"electrical figures" ||
		!s.Unrated {
		t.Errorf("%q", got)
	}
	// Two loads come back through r, r and another through q: 3 + 2, and 5 + 1.
	w := func(id, back string, a float64) model.Wire {
		out := model.Wire{ID: id, Return: model.Some(back)}
		if a > 0 {
			out.Amps = amps(unit.Ampere(a))
		}
		return out
	}
	s = sized(w("1", "r", 3), w("2", "r", 2), w("r", "q", 0), w("3", "q", 1), w("q", "", 0), w("o", "o", 0))
	s.Wires = make([]sheet.Wire, 6)
	Duties(s)
	for k, want := range []float64{3, 2, 5, 1, 6, 0} {
		if got := float64(s.Wires[k].Heats); got != want {
			t.Errorf("wire %s heats as %v A, want %v", s.H.Wires[k].ID, got, want)
		}
	}
	if fmt.Sprint(s.Back) != "map[2:[0 1] 4:[2 3]]" || ComesBack(s, 2) != 5 || ComesBack(s, 4) != 1 || len(Serves(s, 2)) != 2 {
		t.Errorf("%v", s.Back)
	}
}

// What was measured beside what the wire drops: 0.1 V for its two ends and a tenth of that is no matter; half of it was not measured.
func TestMeasuredDropsAreSaid(t *testing.T) {
	for read, want := range map[unit.Volt]string{0.54: "", 0.4: "", 0.2: "",
		0.56: "warn wire.measured w: You measured 0.56 V, and the wire accounts for 0.40 V at 5 A. The other 0.16 V are lost in " +
			"contacts, crimps, " +
			"splices or the ground point, which get 1 W of heat",
		0.19: "note wire.measured w: You measured 0.19 V, but the wire alone drops 0.40 V at 5 A: did it carry that current?"} {
		s := sized(model.Wire{ID: "w", DropV: model.Some(read), Amps: model.Some(unit.Ampere(5))})
		s.Wires = []sheet.Wire{{Drop: model.Some(unit.Volt(0.4))}}
		Measured(s, 0)
		if got := said(s); got != want {
			t.Errorf("%v V: %q, want %q", read, got, want)
		}
	}
}

// What was read off parts, and ways that are none.
func TestPartsAndWaysAreSaid(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	for _, c := range []struct {
		p    model.Part
		want string
	}{
		{model.Part{ID: "tube", WallMM: mm(2.5)}, ""},
		{model.Part{ID: "tube", WallMM: mm(2.51)}, "stop part.size tube: You typed a wall of 2.51 mm, and it recovers to 3.00 mm: a " +
			"wall of 2.50 mm at " +
			"most is accepted"},
		{model.Part{ID: "none"}, "warn part.none none: What you typed off this part is not used: no tube or boot of the catalogue has " +
			"that name"},
		{model.Part{ID: "boot"}, ""},
		{model.Part{ID: "boot", CableRecMM: mm(9)}, "stop part.size boot: At the cable it would shrink to 9.00 mm from 9.00 mm: the " +
			"recovered bore " +
			"must be the smaller one"},
		{model.Part{ID: "boot", LipSupMM: mm(4)}, "stop part.size boot: At the connector it would shrink to 5.00 mm from 4.00 mm: the " +
			"recovered bore " +
			"must be the smaller one"},
	} {
		s := sized()
		s.Cat.Tubes = []catalogue.Tube{{ID: "tube", RecoveredMM: 3, WallMM: 0.5}, {ID: "other", WallMM: 0.7}}
		s.Cat.Boots = map[string]catalogue.Boot{"boot": {ID: "boot", CableRecoveredMM: 4, CableSuppliedMM: 9, LipRecoveredMM: 5,
			LipSuppliedMM: 12}}
		s.H.Parts = []model.Part{c.p}
		was := s.Cat
		s.Cat = withParts(s.Cat, s.H.Parts)
		SayParts(s)
		if got := said(s); got != c.want {
			t.Errorf("%+v: %q, want %q", c.p, got, c.want)
		}
		if c.p.WallMM.Set && (s.Cat.Tubes[0].WallMM != c.p.WallMM.V || s.Cat.Tubes[0].WallStanding != catalogue.House) ||
			s.Cat.Tubes[1].WallMM != 0.7 ||
			was.Tubes[0].WallMM != 0.5 {
			t.Errorf("%+v: %+v", c.p, s.Cat.Tubes)
		}
		if b := s.Cat.Boots["boot"]; b.Read.CableRecovered != c.p.CableRecMM.Set || b.Read.LipSupplied != c.p.LipSupMM.Set ||
			b.Read.Length ||
			was.Boots["boot"].CableRecoveredMM != 4 {
			t.Errorf("%+v: %+v", c.p, b)
		}
	}
	if cat := (&catalogue.Catalogue{}); withParts(cat, nil) != cat {
		t.Error("of nothing another catalogue was made")
	}
	end := func(id, from, to string) model.Wire {
		w := model.Wire{ID: id}
		for _, e := range []struct {
			text string
			to   *model.Opt[string]
		}{{from, &w.From}, {to, &w.To}} {
			if e.text != "" {
				*e.to = model.Some(e.text)
			}
		}
		return w
	}
	s := sized(end("1", "A:1", "B:1"), end("2", "B:2", "A:2"), end("3", "A:3", ""), end("4", "", ""), end("5", "A:5", "C:1"), end("6",
		"A:6", "D:1"))
	s.H.Terminations = []model.Termination{{ID: "A"}, {ID: "B"}, {ID: "C"}, {ID: "D"}}
	s.H.Breakouts = []model.Breakout{{ID: "J"}}
	s.H.Branches = []model.Branch{{ID: "T", From: "A", To: "J"}, {ID: "L", From: "J", To: "B"}, {ID: "M", From: "D", To: "J"}}
	s.H.Units = []model.Unit{{ID: "U", Wires: []string{"1", "2"}}, {ID: "V", Wires: []string{"1", "6"}}, {ID: "W", Wires: []string{"3",
		"1"}}}
	s.Index = model.NewIndex(s.H)
	s.Wires, s.Units = make([]sheet.Wire, 6), make([]sheet.Unit, 3)
	FindPaths(s)
	if got, want := said(s), "stop wire.path 3: It has one end only: give the cavity or splice at the other. A spare may be capped at "+
		"a place on "+
		"its way (capped_at); stop wire.path 4: It has no ends yet: give the cavity or splice at both; stop wire.path 5: No branch "+
		"leads from A:5 to "+
		"C:1; stop unit.path V: Its wires 1 and 6 do not run the same way"; got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	for k, want := range []string{"[0 1]", "[1 0]", "[]", "[]", "[]", "[0 2]"} {
		if got := fmt.Sprint(s.Wires[k].Path); got != want {
			t.Errorf("wire %s runs %s, want %s", s.H.Wires[k].ID, got, want)
		}
	}
	if !s.Units[0].HasPath || fmt.Sprint(s.Units[0].Path) != "[0 1]" || s.Units[2].HasPath {
		t.Errorf("%+v", s.Units)
	}
	for _, c := range []struct {
		a, b []int
		want bool
	}{{[]int{1, 2, 3}, []int{3, 2, 1}, true}, {[]int{1, 2}, []int{1, 2}, true}, {[]int{1, 2}, []int{1, 3}, false}, {nil, nil, true},
		{[]int{1}, nil, false}} {
		if SamePath(c.a, c.b) != c.want {
			t.Errorf("%v and %v are one way: %v", c.a, c.b, !c.want)
		}
	}
}
