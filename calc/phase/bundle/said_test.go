package bundle

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// told is all that a sheet says, "LEVEL RULE: SENTENCE", in order; it must be of the branch T.
func told(t *testing.T, s *sheet.Sheet) string {
	t.Helper()
	var out []string
	for _, g := range s.Snags {
		if g.Where != "T" {
			t.Errorf("it is said of %s", g.Where)
		}
		out = append(out, g.Level.String()+" "+g.Rule+": "+g.Says)
	}
	return strings.Join(out, "; ")
}

// oneBranch is a branch T of pieces as they are laid.
func oneBranch(b model.Branch, out sheet.Branch) *sheet.Sheet {
	b.ID = "T"
	h := &model.Harness{Branches: []model.Branch{b}, Wires: []model.Wire{{ID: "1"}, {ID: "2"}, {ID: "3"}, {ID: "4"}, {ID: "nowhere"}},
		Units: []model.Unit{{ID: "U", Wires: []string{"3", "4"}}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Limits: model.Rules{}.Resolve(), Branches: []sheet.Branch{out},
		Wires: make([]sheet.Wire, 5), Units: make([]sheet.Unit, 1)}
	for k := range 4 {
		s.Wires[k].HasPath = true
	}
	return s
}

// What runs through and is not laid, or is laid and does not run through, by hand.
func TestWhatIsMissingIsSaid(t *testing.T) {
	laid := func(ids ...string) model.Branch { return model.Branch{Layers: []model.Layer{{Of: ids}}} }
	for _, c := range []struct {
		b    model.Branch
		runs []string
		want string
	}{
		{model.Branch{}, []string{"1"}, ""}, {laid("1", "2"), []string{"2", "1"}, ""},
		{laid("1"), []string{"1", "2"}, "stop layer.missing: 2 is in no layer"},
		{laid("1"), []string{"1", "2", "U"}, "stop layer.missing: 2, U are in no layer"},
		{laid("1"), []string{"a", "b", "c", "d", "e", "f", "g", "1"}, "stop layer.missing: a, b, c, d, e and 2 more are in no layer"},
		{laid("1"), []string{"a", "b", "c", "d", "e", "f", "1"}, "stop layer.missing: a, b, c, d, e, f are in no layer"},
		{laid("1", "2"), []string{"1"}, "stop layer.stray: 2 is laid in this branch, but does not run through it"},
		{laid("1", "2", "U"), []string{"1"}, "stop layer.stray: 2, U are laid in this branch, but do not run through it"},
		{laid("1", "3"), []string{"1", "U"}, "stop layer.missing: U is in no layer; stop layer.unit: 3 belongs to unit U: lay the " +
			"unit instead"},
		{laid("1", "nowhere"), []string{"1"}, ""},
	} {
		s := oneBranch(c.b, sheet.Branch{Components: c.runs})
		sayMissing(s, 0)
		if got := told(t, s); got != c.want {
			t.Errorf("%v of %v: %q, want %q", c.b.Layers, c.runs, got, c.want)
		}
	}
	if got := fmt.Sprint(Without([]string{"b", "a", "c", "a"}, []string{"a", "x"})); got != "[b c]" {
		t.Error(got)
	}
	for relaxed, want := range map[plan.Relaxed]string{plan.Keeps: "",
		plan.Gaps:    "warn plan.gaps: No lay-up keeps the gap limits. The best one has gaps",
		plan.GapLift: "warn plan.tight: No lay-up closes easily. The best one is tight and has gaps",
		plan.Nothing: "warn plan.none: No lay-up closes. This one will not close either"} {
		s := oneBranch(model.Branch{}, sheet.Branch{})
		sayRelaxed(s, 0, sheet.Option{Plan: plan.Plan{Relaxed: relaxed}})
		if got := told(t, s); got != want {
			t.Errorf("%v: %q", relaxed, got)
		}
	}
}

// What is said of layers at each limit of the shop, 0.05, 0.08 and 0.12 of lift, gaps of 0.10 inside and 0.15 outside, and past it.
func TestWhatIsSaidOfLayers(t *testing.T) {
	layer := func(f func(l *sheet.Layer)) sheet.Layer {
		l := sheet.Layer{Closes: true, Tracer: "1", ProudMM: 0.123, LayMM: 40, Members: make([]sheet.Member, 7), Takes: 6, Room: 2}
		f(&l)
		return l
	}
	centre := sheet.Layer{Members: []sheet.Member{{D: 1}}}
	fine := layer(func(*sheet.Layer) {})
	for _, c := range []struct {
		name   string
		layers []sheet.Layer
		buried int
		want   string
	}{
		{"sound", []sheet.Layer{fine, fine}, 0, ""},
		{"too short a lay", []sheet.Layer{layer(func(l *sheet.Layer) { l.Closes, l.Lift = false, 1 })}, 0,
			"stop layer.lay: Layer 1 cannot close with a lay length of 40 mm: the lay is too short"},
		{"full", []sheet.Layer{fine, layer(func(l *sheet.Layer) { l.Lift = 0.1201 })}, 0,
			"stop layer.full: Layer 2 has 7 pieces and room for 6: it would stand 0.12 mm proud"},
		{"at that limit", []sheet.Layer{layer(func(l *sheet.Layer) { l.Lift = 0.12 })}, 0,
			"warn layer.close: Layer 1 will not close: it stands 0.12 mm proud, and has room for 6 of its 7 pieces"},
		{"at the next", []sheet.Layer{layer(func(l *sheet.Layer) { l.Lift = 0.08 })}, 0,
			"note layer.tight: Layer 1 is tight: it stands 0.12 mm proud"},
		{"at the first", []sheet.Layer{layer(func(l *sheet.Layer) { l.Lift = 0.05 })}, 0, ""},
		{"open inside", []sheet.Layer{layer(func(l *sheet.Layer) { l.Gap = 0.13 }), fine}, 0,
			"note layer.gap: Layer 1 is 13 % open and has room for 2 more"},
		{"as open outside", []sheet.Layer{fine, layer(func(l *sheet.Layer) { l.Gap = 0.15 })}, 0, ""},
		{"open outside", []sheet.Layer{fine, layer(func(l *sheet.Layer) { l.Gap = 0.16 })}, 0,
			"note layer.gap: Layer 2 is 16 % open and has room for 2 more"},
		{"at the gap inside", []sheet.Layer{layer(func(l *sheet.Layer) { l.Gap = 0.10 }), fine}, 0, ""},
		{"in zig-zag", []sheet.Layer{layer(func(l *sheet.Layer) { l.ZigZag = true })}, 0,
			"note layer.order: Layer 1 is laid thick beside thin, because it would not close in the order in which its wires leave"},
		{"without a tracer", []sheet.Layer{layer(func(l *sheet.Layer) { l.Tracer = "" })}, 0,
			"note layer.tracer: No colour occurs only once in layer 1: mark one wire as its tracer"},
		{"of two", []sheet.Layer{layer(func(l *sheet.Layer) { l.Tracer, l.Members = "", l.Members[:2] })}, 0, ""},
		{"buried", []sheet.Layer{fine}, 3, "note layer.buried: Pieces that leave early lie under others that run on: 3 of them"},
	} {
		s := oneBranch(model.Branch{}, sheet.Branch{Make: model.MakeLaid, Buried: c.buried, Layers: append([]sheet.Layer{centre},
			c.layers...)})
		sayLayers(s, 0)
		if got := told(t, s); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
	for _, c := range []struct {
		name string
		b    model.Branch
		out  sheet.Branch
		want string
	}{
		{"made otherwise", model.Branch{Make: model.Some(model.MakeTwisted)}, sheet.Branch{Make: model.MakeLaid,
			Layers: []sheet.Layer{centre}},
			"note branch.make: It has layers, so it is laid and not twisted"},
		{"as it is asked", model.Branch{Make: model.Some(model.MakeLaid)}, sheet.Branch{Make: model.MakeLaid,
			Layers: []sheet.Layer{centre}}, ""},
		{"filler in a twist", model.Branch{Layers: []model.Layer{{Fillers: model.Some(2)}}}, sheet.Branch{Make: model.MakeTwisted},
			"note branch.filler: It is made twisted, which takes no filler: its fillers are left out (2)"},
		{"no filler", model.Branch{Layers: []model.Layer{{}}}, sheet.Branch{Make: model.MakeTwisted, Layers: []sheet.Layer{{Gap: 1},
			{Lift: 1}}}, ""},
		{"a centre of six", model.Branch{}, sheet.Branch{Make: model.MakeLaid, Layers: []sheet.Layer{{Members: []sheet.Member{{D: 1},
			{D: 1}, {D: 1}, {D: 1},
			{D: 1}, {D: 1}}}}}, "warn layer.centre: A centre of these 6 pieces is not round: use one, two to five of one size, or two " +
			"or three of " +
			"different sizes"},
		{"five and a rod", model.Branch{}, sheet.Branch{Make: model.MakeLaid, Layers: []sheet.Layer{{Members: []sheet.Member{{D: 1},
			{D: 1}, {D: 1}, {D: 1},
			{D: 1}, {D: 0.7, Kind: sheet.OfFiller}}}}}, ""},
		{"four of two sizes", model.Branch{}, sheet.Branch{Make: model.MakeLaid, Layers: []sheet.Layer{{Members: []sheet.Member{{D: 1},
			{D: 1}, {D: 1},
			{D: 2}}}}}, "warn layer.centre: A centre of these 4 pieces is not round: use one, two to five of one size, or two or " +
			"three of different sizes"},
	} {
		s := oneBranch(c.b, c.out)
		sayLayers(s, 0)
		if got := told(t, s); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// What filler stands, by hand: white wire what the wire does; off the shelf what the shop says and no more than its plastic melts at.
func TestWhatFillerStands(t *testing.T) {
	c := func(v float64) model.Opt[unit.Celsius] { return model.Some(unit.Celsius(v)) }
	for _, x := range []struct {
		d     unit.Millimetre
		of    string
		c     model.Opt[unit.Celsius]
		stock []unit.Millimetre
		want  string
	}{
		{1.2, "", model.Opt[unit.Celsius]{}, nil, "150 white 22 true"}, {1.204, "", model.Opt[unit.Celsius]{}, nil, "150 white 22 true"},
		{1.206, "", model.Opt[unit.Celsius]{}, nil, "0 stock false"}, {2, "nylon", model.Opt[unit.Celsius]{}, nil, "200 stock true"},
		{1.2, "nylon", model.Opt[unit.Celsius]{}, nil, "200 stock true"}, {1.2, "nylon", c(180), nil, "180 stock true"},
		{1.2, "nylon", c(260), nil, "200 stock true"}, {1.2, "aramid", c(260), nil, "260 stock true"}, {1.2, "", c(90), nil,
			"90 stock true"},
		{1.2, "nylon", c(180), []unit.Millimetre{2}, "150 white 22 true"}, {1.2, "nylon", c(180), []unit.Millimetre{2, 1.2},
			"180 stock true"},
	} {
		s := oneBranch(model.Branch{}, sheet.Branch{Components: []string{"U", "gone", "1"}, Ambient: 151,
			Layers: []sheet.Layer{{FillerMM: x.d}, {Fillers: 1, FillerMM: x.d}, {Fillers: 1, FillerMM: x.d}}})
		s.H.Wires[0].Size = "22"
		s.Wires[0].Known, s.Wires[0].Dia.Nominal, s.Wires[0].Entry = true, 1.2, catalogue.Wire{RatedC: 150}
		s.Limits.FillerOf, s.Limits.FillerC, s.Limits.FillerStock = x.of, x.c, x.stock
		got, what, known := FillerC(s, 0, x.d)
		if says := fmt.Sprint(float64(got), " ", what, " ", known); says != x.want {
			t.Errorf("%v of %q: %s, want %s", x.d, x.of, says, x.want)
		}
		sayFiller(s, 0)
		want := ""
		if known && got < 151 {
			want = fmt.Sprintf("stop filler.heat: The filler of %.2f mm withstands %.0f C, and it gets 151 C hot there", float64(x.d),
				float64(got))
		}
		if says := told(t, s); says != want {
			t.Errorf("%q, want %q", says, want)
		}
		s.Branches[0].Ambient, s.Snags = got, nil
		if sayFiller(s, 0); len(s.Snags) > 0 {
			t.Errorf("at its limit: %+v", s.Snags)
		}
	}
}

// What listens and what shouts, and how often they lie beside one another, by hand; a filler between them parts them.
func TestListeningBesideShouting(t *testing.T) {
	h := &model.Harness{Units: []model.Unit{{ID: "Us", Wires: []string{"s", "n"}}, {ID: "Up", Wires: []string{"d", "p"}}, {ID: "Un",
		Wires: []string{"n",
			"none"}}}}
	for id, role := range map[string]model.Role{"p": model.RolePower, "d": model.RoleData, "s": model.RoleSignal, "g": model.RoleGround,
		"n": ""} {
		h.Wires = append(h.Wires, model.Wire{ID: id, Role: model.Opt[model.Role]{V: role, Set: role != ""}})
	}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	for id, want := range map[string]kin{"p": shouts, "d": listens, "s": neutral, "g": neutral, "n": neutral, "Us": listens,
		"Up": shouts, "Un": neutral,
		"filler": neutral} {
		if got := kinOf(s, id); got != want {
			t.Errorf("%s is %d, want %d", id, got, want)
		}
	}
	for ids, want := range map[string]int{"p d": 2, "p": 0, "d": 0, "p p d": 2, "p n d": 1, "p n d n": 0, "p filler d filler": 0,
		"p d p d": 4, "Us Up": 2,
		"p s g": 0, "d d": 0, "": 0} {
		if got := besides(s, strings.Fields(ids)); got != want {
			t.Errorf("%s: %d, want %d", ids, got, want)
		}
	}
	if got := fmt.Sprint(between(s, strings.Fields("d n g s p p"))); got != "[d n p p g s]" {
		t.Error(got)
	}
	for _, c := range []struct {
		tails [][]string
		least int
	}{{[][]string{{"p", "d", "n", "n"}}, 0}, {[][]string{{"p", "d"}, {"d", "p"}}, 2}, {[][]string{{"p", "n"}, {"d", "n"}}, 0},
		{[][]string{{"d"}, {"p"}}, 2}} {
		before := fmt.Sprint(len(c.tails))
		setApart(s, c.tails)
		var all []string
		for _, x := range c.tails {
			all = append(all, x...)
		}
		if got := besides(s, all); got != c.least || fmt.Sprint(len(c.tails)) != before {
			t.Errorf("%v: %d beside one another, want %d", c.tails, got, c.least)
		}
	}
}
