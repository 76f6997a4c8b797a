package over

import (
	"fmt"
	"testing"

	"contralay/calc/formula/cover"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// oneBranch is a sheet of one branch from A to the breakout J, 500 mm long, 10 mm over (9.5 to 10.5), with what is said of it.
func oneBranch(change func(s *sheet.Sheet)) *sheet.Sheet {
	h := &model.Harness{Terminations: []model.Termination{{ID: "A"}}, Breakouts: []model.Breakout{{ID: "J"}},
		Branches: []model.Branch{{ID: "T", From: "A", To: "J", LengthMM: 500}}}
	s := &sheet.Sheet{H: h, Limits: model.Rules{}.Resolve(), Cat: &catalogue.Catalogue{}, Branches: []sheet.Branch{{OverMM: 10,
		OverMinMM: 9.5,
		OverMaxMM: 10.5, TapeMM: 9.8, TapeMinMM: 9.4}}}
	change(s)
	s.Index = model.NewIndex(h)
	return s
}

// What is said of a sheath that stops: its bore, what it is too small by, what it must pass; or what it recovers to, and what it lies on.
func TestWhatStopsASheath(t *testing.T) {
	for _, c := range []struct {
		name string
		v    cover.Verdict
		want string
	}{
		{"slides", cover.Verdict{}, "[]"},
		{"too tight", cover.Verdict{StopSlide: true, WorstSlideMM: -0.344},
			"[stop sheath.slide X cannot slide on: its bore of 9.53 mm is " +
				"0.34 mm too small to pass a contact]"},
		{"by a hair", cover.Verdict{StopSlide: true, WorstSlideMM: -0.001},
			"[stop sheath.slide X cannot slide on: its bore of 9.53 mm is " +
				"under 0.01 mm too small to pass a contact]"},
		{"loose", cover.Verdict{StopLoose: true}, "[stop sheath.loose X stays loose: it recovers to 9.60 mm, and the tape diameter of " +
			"the " +
			"bundle is 9.60 mm with every wire at its smallest]"},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.Branches[0].Sheath = sheet.Sheath{Part: "X", Tube: model.Some(catalogue.Tube{ID: "X", SuppliedMM: 9.53,
				RecoveredMM: 9.6}), Verdict: c.v,
				PassAt: "a contact", BeneathMinMM: 0.2, KindAll: true}
		})
		saySheath(s, 0)
		var got []string
		for _, g := range s.Snags {
			if c.v.Stops() {
				got = append(got, g.Level.String()+" "+g.Rule+" "+g.Says)
			}
		}
		if fmt.Sprint(got) != c.want {
			t.Errorf("%s: %v, want %s", c.name, got, c.want)
		}
	}
}

// Which tube can be proposed for a run, by hand from the rule: it bends, does not melt onto the wires, withstands the air and what wets
// it; one with a thin wall wants support where it shakes.
func TestWhatSuitsARun(t *testing.T) {
	good := catalogue.Tube{Kind: DefaultSheath, Flexible: true, ServiceMaxC: 135, Material: "polyolefin"}
	with := func(f func(x *catalogue.Tube)) catalogue.Tube { x := good; f(&x); return x }
	thin := with(func(x *catalogue.Tube) { x.Kind += thinKind })
	fuel := with(func(x *catalogue.Tube) { x.Kind = FuelSheath })
	other := with(func(x *catalogue.Tube) { x.Kind = "own" })
	for _, c := range []struct {
		name    string
		tube    catalogue.Tube
		wet     []model.Surrounding
		ambient unit.Celsius
		held    bool
		want    bool
	}{
		{"good", good, nil, 40, false, true}, {"stiff", with(func(x *catalogue.Tube) { x.Flexible = false }), nil, 40, false, false},
		{"melts", with(func(x *catalogue.Tube) { x.Material = "polyolefin, meltable liner" }), nil, 40, false, false},
		{"at its limit", good, nil, 135, false, true}, {"too warm", good, nil, 135.1, false, false},
		{"limit not known", with(func(x *catalogue.Tube) { x.ServiceMaxC = 0 }), nil, 500, false, true},
		{"oil", good, []model.Surrounding{model.Oil}, 40, false, true}, {"own in oil", other, []model.Surrounding{model.Oil}, 40, false,
			false},
		{"the fuel tube in oil", fuel, []model.Surrounding{model.Oil}, 40, false, true},
		{"fuel", good, []model.Surrounding{model.Fuel}, 40, false, false}, {"the fuel tube", fuel, []model.Surrounding{model.Fuel}, 40,
			false, true},
		{"own", other, nil, 40, false, true}, {"thin", thin, nil, 40, false, true},
		{"thin and shaken", thin, []model.Surrounding{model.Vibration}, 40, false, false},
		{"thin, shaken and held", thin, []model.Surrounding{model.Vibration}, 40, true, true},
		{"shaken", good, []model.Surrounding{model.Vibration}, 40, false, true},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.H.Branches[0].Environment, s.H.Branches[0].Supported, s.Branches[0].Ambient = c.wet, model.Some(c.held), c.ambient
		})
		if got := suitsRun(s, 0, c.tube); got != c.want {
			t.Errorf("%s: %v", c.name, got)
		}
	}
}

// What an outlet gets over, by hand: the bare branch at its largest, 10.5; gathered where it parts 1.2 times that, 12.6; in a sheath of
// 12.4 over it 12.4 and half a millimetre of the band, 12.9.
func TestWhatAnOutletGetsOver(t *testing.T) {
	to := func(place string) wires.Walk {
		return wires.Walk{Branch: 0, From: map[string]string{"J": "A", "A": "J"}[place], To: place}
	}
	for _, c := range []struct {
		name   string
		to     string
		sheath unit.Millimetre
		cover  sheet.Covered
		want   unit.Millimetre
		says   string
	}{
		{"bare", "A", 0, sheet.Covered{}, 10.5, "T bare"},
		{"gathered", "J", 0, sheet.Covered{}, 12.6, "the bare tails gathered at J"},
		{"in its sheath", "J", 12.4, sheet.Covered{}, 12.9, "T in its sheath"},
		{"in a thin one", "J", 11, sheet.Covered{}, 12.6, "the bare tails gathered at J"},
		{"a cover beneath", "A", 0, sheet.Covered{OverMM: 11.2, Under: true}, 11.7, "T in its sheath"},
		{"a cover over it that lies clear", "A", 0, sheet.Covered{OverMM: 14}, 10.5, "T bare"},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			b := &s.Branches[0]
			if c.sheath > 0 {
				b.Sheath.Tube, b.Sheath.Verdict.Wraps, b.Sheath.Verdict.OverMM = model.Some(catalogue.Tube{ID: "X"}), true, c.sheath
			}
			if c.cover.OverMM > 0 {
				b.Covers = []sheet.Covered{c.cover}
			}
		})
		got, says := Tails(s, to(c.to))
		if d := float64(got - c.want); d > 1e-9 || d < -1e-9 || says != c.says {
			t.Errorf("%s: %v, %s; want %v, %s", c.name, got, says, c.want, c.says)
		}
	}
}

// Stations of covers: those given stand; one that is left open gives way to the one that is set; beyond the branch nothing is left.
func TestWhereACoverIsPlaced(t *testing.T) {
	mm := func(v float64) model.Opt[unit.Millimetre] { return model.Some(unit.Millimetre(v)) }
	none := model.Opt[unit.Millimetre]{}
	for _, c := range []struct {
		name       string
		from, to   model.Opt[unit.Millimetre]
		dFrom, dTo unit.Millimetre // where it would lie by itself
		wantFrom   unit.Millimetre
		wantTo     unit.Millimetre
		ok         bool
	}{
		{"as it would", none, none, 100, 400, 100, 400, true}, {"given", mm(20), mm(30), 100, 400, 20, 30, true},
		{"from", mm(200), none, 100, 400, 200, 400, true}, {"to", none, mm(200), 100, 400, 100, 200, true},
		{"from behind its end", mm(450), none, 100, 400, 450, 475, true}, // as a sheath would stop: 25 mm of zone before the breakout
		{"from in the zone", mm(480), none, 100, 400, 480, 500, true}, {"to before its start", none, mm(50), 100, 400, 0, 50, true},
		{"from beyond", mm(500), none, 100, 400, 500, 500, false}, {"to the wrong way", mm(300), mm(200), 100, 400, 0, 0, false},
	} {
		s := oneBranch(func(*sheet.Sheet) {})
		from, to, ok := placed(s, 0, model.CoverTape, &model.Cover{FromMM: c.from, ToMM: c.to}, c.dFrom, c.dTo)
		if ok != c.ok || ok && (from != c.wantFrom || to != c.wantTo) || !ok && len(s.Snags) != 1 {
			t.Errorf("%s: %v to %v %v, want %v to %v %v; %+v", c.name, from, to, ok, c.wantFrom, c.wantTo, c.ok, s.Snags)
		}
	}
	for v, want := range map[unit.Millimetre]string{100: "100", 99.96: "100", 99.94: "99.9", 12.5: "12.5", 12.04: "12", 0: "0"} {
		if got := station(v); got != want {
			t.Errorf("station %v is %s, want %s", v, got, want)
		}
	}
	// Two clocks, each seen from its own side: 3 at one end lies where 9 is at the other.
	for _, c := range [][3]int{{3, 9, 0}, {12, 12, 0}, {3, 3, 6}, {1, 12, 1}, {6, 6, 0}, {10, 1, 1}, {9, 9, 6}, {2, 3, 5}} {
		if got := hoursApart(c[0], c[1]); got != c[2] {
			t.Errorf("%d and %d are %d hours apart, want %d", c[0], c[1], got, c[2])
		}
	}
}
