package planning

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What is certain of the best option, by hand: it leaves no limit, costs 5 and is 10 mm thick; another of 9.5 mm costs 6. What is
// buried weighs 2.
func TestWhatIsCertain(t *testing.T) {
	option := func(mm unit.Millimetre, cost unit.Ratio, relaxed plan.Relaxed) sheet.Option {
		return sheet.Option{Cost: cost, Plan: plan.Plan{Over: mm, Relaxed: relaxed}}
	}
	come := func(least unit.Ratio, relaxed plan.Relaxed, all bool) model.Opt[plan.Reach] {
		return model.Some(plan.Reach{Least: least, Relaxed: relaxed, All: all})
	}
	var none model.Opt[plan.Reach]
	five, nine := option(10, 5, 0), option(9.5, 6, 0)
	for _, c := range []struct {
		name    string
		options []sheet.Option
		found   []sheet.Option
		asks    []asking
		want    sheet.Reach
	}{
		{"the cheapest", nil, nil, []asking{{free: come(5, 0, false)}}, sheet.Reach{Least: 5, Proven: true}},
		{"one may be cheaper", nil, nil, []asking{{free: come(4.9, 0, false)}}, sheet.Reach{Least: 4.9}},
		{"nothing is left out", nil, nil, []asking{{free: come(4.9, 0, true)}}, sheet.Reach{Least: 4.9, Thinnest: true}},
		{"no plan", nil, nil, []asking{{free: none}}, sheet.Reach{}},
		{"the planner must leave a limit", nil, nil, []asking{{free: come(1, 1, true)}}, sheet.Reach{}},
		{"no plan, but one with spares", nil, nil, []asking{{free: none}, {free: come(4, 0, true)}}, sheet.Reach{Least: 4, Thinnest: true}},
		{"with spares a limit is left", nil, nil, []asking{{free: come(5, 0, true)}, {free: come(1, 1, false)}},
			sheet.Reach{Least: 5, Proven: true, Thinnest: true}},
		{"cheaper with spares", nil, nil, []asking{{free: come(5, 0, true)}, {free: come(4, 0, true)}}, sheet.Reach{Least: 4,
			Thinnest: true}},
		{"dearer with spares", nil, nil, []asking{{free: come(5, 0, true)}, {free: come(6, 0, true)}},
			sheet.Reach{Least: 5, Proven: true, Thinnest: true}},
		{"something left out without spares", nil, nil, []asking{{free: come(5, 0, false)}, {free: come(6, 0, true)}},
			sheet.Reach{Least: 5, Proven: true}},
		{"something left out with spares", nil, nil, []asking{{free: come(5, 0, true)}, {free: come(6, 0, false)}},
			sheet.Reach{Least: 5, Proven: true}},
		{"a bound below nought", nil, nil, []asking{{free: come(0, 0, false)}, {free: come(2, 0, false)}}, sheet.Reach{}},

		// Leavers: a plan that is free to bury costs 2 more where it does; one in their order may cost less than that.
		{"leavers, free to bury", nil, nil, []asking{{come(3, 0, true), none, true}}, sheet.Reach{Least: 5, Proven: true, Thinnest: true}},
		{"leavers, in order cheaper", nil, nil, []asking{{come(3, 0, true), come(4, 0, true), true}}, sheet.Reach{Least: 4,
			Thinnest: true}},
		{"leavers, in order dearer", nil, nil, []asking{{come(3, 0, true), come(9, 0, false), true}},
			sheet.Reach{Least: 5, Proven: true, Thinnest: true}},
		{"leavers, in order only with a limit left", nil, nil, []asking{{come(3, 0, true), come(1, 1, true), true}},
			sheet.Reach{Least: 5, Proven: true, Thinnest: true}},

		{"the thinnest has a letter", []sheet.Option{five, nine}, []sheet.Option{five, nine}, []asking{{free: come(5, 0, true)}},
			sheet.Reach{Least: 5, Proven: true, Thinnest: true}},
		{"a thinner one has none", []sheet.Option{five}, []sheet.Option{five, nine}, []asking{{free: come(5, 0, true)}},
			sheet.Reach{Least: 5, Proven: true}},
		{"as thin as written", []sheet.Option{five}, []sheet.Option{option(9.9999, 7, 0)}, []asking{{free: come(5, 0, true)}},
			sheet.Reach{Least: 5, Proven: true, Thinnest: true}},
		{"a thinner one leaves a limit", []sheet.Option{five}, []sheet.Option{option(8, 7, 1)}, []asking{{free: come(5, 0, true)}},
			sheet.Reach{Least: 5, Proven: true, Thinnest: true}},
		{"a thin option that leaves a limit is none to go by", []sheet.Option{five, option(8, 7, 1)}, []sheet.Option{nine},
			[]asking{{free: come(5, 0, true)}}, sheet.Reach{Least: 5, Proven: true}},
	} {
		if c.options == nil {
			c.options = []sheet.Option{five}
		}
		if got := certain(c.options, c.found, c.asks, 2); got != c.want {
			t.Errorf("%s: %+v, want %+v", c.name, got, c.want)
		}
	}
	if got := certain([]sheet.Option{option(10, 5, 1)}, nil, []asking{{free: come(1, 0, true)}}, 2); got != (sheet.Reach{}) {
		t.Errorf("the planner leaves fewer limits: %+v", got)
	}
}

// answered is a search whose questions have been answered by these plans, which their only wire names.
func answered(q *Search, runs map[asked][]sheet.Option) *Search {
	for of, options := range runs {
		q.runs = append(q.runs, &run{of: of, options: options, search: plan.Begin(plan.Ask{})})
	}
	return q
}

func letters(options []sheet.Option) (out string) {
	for _, o := range options {
		out += o.Layers[0].Of[0]
	}
	return out
}

// What a proposal is made of, by hand, from answers that are written down: A is 10 mm and costs 5, what is buried or parts costs 1.
func TestProposalByHand(t *testing.T) {
	free, ordered := asked{false, anyOrder, false}, asked{false, asTheyLeave, false}
	a := func() sheet.Option { return named("A", plan.Plan{Over: 10, Fillers: 2, Cost: 5}, 0) }
	of := func(name string, mm unit.Millimetre, fillers int, cost unit.Ratio, change ...func(*sheet.Option)) sheet.Option {
		o := named(name, plan.Plan{Over: mm, Fillers: fillers, Cost: cost}, 0)
		for _, f := range change {
			f(&o)
		}
		return o
	}
	buried := func(n int) func(*sheet.Option) { return func(o *sheet.Option) { o.Buried = n } }
	parts := func(n int) func(*sheet.Option) { return func(o *sheet.Option) { o.Parted = n } }
	spare := func(o *sheet.Option) { o.Spares = make([]sheet.SparePlace, 1) }
	relaxed := func(o *sheet.Option) { o.Plan.Relaxed = 1 }
	for _, c := range []struct {
		name    string
		q       *Search
		runs    map[asked][]sheet.Option
		want    string
		plain   int
		leavers [3]unit.Millimetre // with, free, the difference
		units   [3]unit.Millimetre
	}{
		{name: "nothing found", q: &Search{}, runs: map[asked][]sheet.Option{free: nil}, want: ""},
		{name: "two, the cheaper first", q: &Search{}, runs: map[asked][]sheet.Option{free: {of("B", 11, 1, 5.5), a()}}, want: "AB"},
		{name: "one that is beaten", q: &Search{}, runs: map[asked][]sheet.Option{free: {of("B", 11, 2, 5.5), a()}}, want: "A"},
		{name: "leavers: the weight of what is buried", q: &Search{leavers: true, weight: 1}, runs: map[asked][]sheet.Option{
			free: {of("C", 9.75, 9, 5.25, buried(3)), of("A", 10, 2, 5, buried(2))}, ordered: {of("B", 10.5, 3, 5.5)}}, want: "BA",
			leavers: [3]unit.Millimetre{10.5, 10, 0.5}},
		{name: "leavers: the cheapest plan that leaves fewest limits", q: &Search{leavers: true, weight: 1}, runs: map[asked][]sheet.Option{
			free: {of("C", 8, 9, 1, relaxed), of("A", 10, 2, 5, buried(2))}, ordered: {of("B", 10.5, 3, 5.5)}}, want: "BA",
			leavers: [3]unit.Millimetre{10.5, 10, 0.5}},
		{name: "leavers: nothing found", q: &Search{leavers: true, weight: 1}, runs: map[asked][]sheet.Option{free: nil, ordered: nil},
			want: ""},
		{name: "a fork: a whole lay-up is there", q: &Search{forks: true, weight: 1}, runs: map[asked][]sheet.Option{
			free: {of("B", 10, 1, 4.5, parts(1)), a()}}, want: "AB"},
		{name: "a fork: one branch round another", q: &Search{forks: true, weight: 1}, runs: map[asked][]sheet.Option{
			free: {of("B", 10, 1, 4.5, parts(1))}, {false, byTail, false}: {of("C", 10, 2, 5), of("D", 9, 3, 4, parts(1))}}, want: "CB"},
		{name: "a fork: asked before", q: &Search{forks: true, weight: 1}, runs: map[asked][]sheet.Option{
			free: {a()}, {false, byTail, false}: {of("C", 11, 1, 5.5)}}, want: "AC"},
		{name: "units in the centre", q: &Search{inCentre: []string{"U"}}, runs: map[asked][]sheet.Option{
			free: {a()}, {true, anyOrder, false}: {of("U", 10.75, 2, 6)}}, want: "U", units: [3]unit.Millimetre{10.75, 10, 0.75}},
		{name: "units in the centre only with a limit left", q: &Search{inCentre: []string{"U"}}, runs: map[asked][]sheet.Option{
			free: {a()}, {true, anyOrder, false}: {of("U", 10.75, 2, 4, relaxed)}}, want: "A"},
		{name: "units in the centre, a limit left without", q: &Search{inCentre: []string{"U"}}, runs: map[asked][]sheet.Option{
			free: {of("A", 10, 2, 5, relaxed)}, {true, anyOrder, false}: {of("U", 10.75, 2, 6)}}, want: "U",
			units: [3]unit.Millimetre{10.75, 10, 0.75}},
		{name: "no lay-up with units in the centre", q: &Search{inCentre: []string{"U"}}, runs: map[asked][]sheet.Option{
			free: {a()}, {true, anyOrder, false}: nil}, want: "A"},
		{name: "no lay-up at all", q: &Search{inCentre: []string{"U"}}, runs: map[asked][]sheet.Option{
			free: nil, {true, anyOrder, false}: nil}, want: ""},
		{name: "a spare costs more", q: &Search{spares: make([]sheet.SparePlace, 1)}, runs: map[asked][]sheet.Option{
			free: {a()}, {false, anyOrder, true}: {of("S", 11, 3, 6, spare)}}, want: "AS"},
		{name: "a spare costs less", q: &Search{spares: make([]sheet.SparePlace, 1)}, runs: map[asked][]sheet.Option{
			free: {a()}, {false, anyOrder, true}: {of("S", 11, 1, 4.5, spare)}}, want: "SA", plain: 1},
		{name: "all is better with a spare", q: &Search{spares: make([]sheet.SparePlace, 1)}, runs: map[asked][]sheet.Option{
			free: {a()}, {false, anyOrder, true}: {of("R", 11, 1, 4.5, spare), of("S", 9, 2, 4, spare)}}, want: "SRA", plain: 2},
	} {
		q := answered(c.q, c.runs)
		p := q.Proposal()
		if got := letters(p.Options); got != c.want || p.Shown != len(c.want) || p.Plain != c.plain {
			t.Errorf("%s: %q, %d shown, plain %d; want %q, plain %d", c.name, got, p.Shown, p.Plain, c.want, c.plain)
		}
		for _, w := range []struct {
			name       string
			with, free unit.Millimetre
			mm         model.Opt[unit.Millimetre]
			want       [3]unit.Millimetre
		}{
			{"leavers", p.LeaversWith, p.LeaversFree, p.LeaversMM, c.leavers},
			{"units", p.UnitsWith, p.UnitsFree, p.UnitsMM, c.units},
		} {
			if got := [3]unit.Millimetre{w.with, w.free, w.mm.V}; got != w.want || w.mm.Set != (w.want[0] > 0) {
				t.Errorf("%s: %s %v, set %v, want %v", c.name, w.name, got, w.mm.Set, w.want)
			}
		}
		if !p.Reach.Ended || p.Reach.Proven {
			t.Errorf("%s: a planner that has nothing to plan is at its end and proves nothing: %+v", c.name, p.Reach)
		}
	}
}

// The colour of a spare, by hand: the first that no wire in the branch has, of one stripe before two, whether the sheet has that wire in
// the branch or the harness that is being edited; white alone where all are taken.
func TestColourOfASpare(t *testing.T) {
	var one, two []string
	for a := range 9 {
		one = append(one, fmt.Sprint("9", a))
		for b := a + 1; b < 9; b++ {
			two = append(two, fmt.Sprintf("9%d%d", a, b))
		}
	}
	all := append(slices.Clone(one), two...)
	for _, c := range []struct {
		used []string
		want string
	}{
		{nil, "90"}, {[]string{"90"}, "91"}, {[]string{"91", "90", "93"}, "92"}, {one[:8], "98"}, {one, "901"}, {all[:10], "902"},
		{all[:17], "912"},
		{all[:44], "978"}, {all, "9"},
	} {
		for laid := range len(c.used) + 1 {
			h := &model.Harness{Wires: []model.Wire{{ID: "elsewhere", Colour: model.Some("90")}}, Branches: []model.Branch{{}, {}}}
			s := &sheet.Sheet{H: h, Branches: make([]sheet.Branch, 2)}
			s.Branches[0].Components = []string{"elsewhere"}
			var layer []string
			for k, colour := range c.used {
				id := fmt.Sprint("w", k)
				h.Wires = append(h.Wires, model.Wire{ID: id, Colour: model.Some(colour)})
				if k < laid {
					layer = append(layer, id)
				} else {
					s.Branches[1].Components = append(s.Branches[1].Components, id)
				}
			}
			h.Branches[1].Layers = []model.Layer{{}, {Of: layer}}
			if got := freeColour(s, h, 1); got != c.want {
				t.Errorf("%d of %v in layers: %s, want %s", laid, c.used, got, c.want)
			}
		}
	}
}

// A spare that is added, by hand: like its fellow in all that is bought, of its own colour, without current; to its other end, or capped
// on the way. It lies in the layer that is asked for, and outermost elsewhere.
func TestSpareThatIsAdded(t *testing.T) {
	h := &model.Harness{
		Wires: []model.Wire{{ID: "w", Spec: "fine", Size: "20", Colour: model.Some("90"), From: model.Some("P:1"), To: model.Some("Q:1")}},
		Branches: []model.Branch{{ID: "A", Layers: []model.Layer{{Of: []string{"w"}}, {Of: []string{"x"}}}},
			{ID: "B", Layers: []model.Layer{{Of: []string{"w"}}, {Of: []string{"x"}}}},
			{ID: "C", Layers: []model.Layer{{Of: []string{"x"}}}}}}
	s := &sheet.Sheet{H: h, Branches: []sheet.Branch{{Components: []string{"w"}}, {Components: []string{"w"}}, {}}}
	for _, capped := range []string{"", "K"} {
		got, w := AddSpare(s, h, 0, 0, sheet.SparePlace{Like: 0, From: "P:2", To: "Q:2", CappedAt: capped, Path: []int{0, 1}})
		want := model.Wire{ID: "SP1", Signal: model.Some("Spare"), From: model.Some("P:2"), To: model.Some("Q:2"), Spec: "fine", Size: "20",
			Colour: model.Some("91"), Amps: model.Some(unit.Ampere(0)), Role: model.Some(model.RoleSpare)}
		if capped != "" {
			want.To, want.CappedAt = model.Opt[string]{}, model.Some("K")
		}
		if a, b := fmt.Sprintf("%+v", w), fmt.Sprintf("%+v", want); a != b {
			t.Errorf("%s, want\n%s", a, b)
		}
		var layers []string
		for _, b := range got.Branches {
			for _, l := range b.Layers {
				layers = append(layers, strings.Join(l.Of, " "))
			}
		}
		if all := strings.Join(layers, ", "); all != "w SP1, x, w, x SP1, x" || len(h.Wires) != 1 || len(got.Wires) != 2 {
			t.Errorf("%s; %d wires", all, len(got.Wires))
		}
	}
}

// Two searches that go on from one proposal do not write into each other's options.
func TestExtendSharesNothing(t *testing.T) {
	shown := sheet.Proposal{Options: append(make([]sheet.Option, 0, 9), named("A", plan.Plan{Over: 10, Cost: 5}, 0)), Shown: 1}
	one, _ := Extend(shown, sheet.Proposal{Options: []sheet.Option{named("B", plan.Plan{Over: 9, Cost: 4}, 0)}})
	other, _ := Extend(shown, sheet.Proposal{Options: []sheet.Option{named("C", plan.Plan{Over: 8, Cost: 3}, 0)}})
	if got := letters(one.Options) + letters(other.Options); got != "ABAC" {
		t.Error(got)
	}
}

// Layers that stay whole, by hand: a, b and c go on into one branch, d and e into another. What is held keeps its layer, and the layer
// follows it; two that are held in one layer and part make it impossible.
func TestWholeLayersByHand(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{}}}
	s := &sheet.Sheet{H: h}
	for _, id := range []string{"a", "b", "c", "d", "e"} {
		h.Wires = append(h.Wires, model.Wire{ID: id})
		s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Nominal: 1}})
	}
	s.Index, s.Branches = model.NewIndex(h), make([]sheet.Branch, 1)
	r := bundle.Ranks{Next: map[string]int{"a": 1, "b": 1, "c": 1, "d": 2, "e": 2}, Depth: map[string]int{}}
	of := func(n ...int) (p plan.Plan) {
		for _, n := range n {
			p.Layers = append(p.Layers, plan.Layer{Sizes: []unit.Millimetre{1}, N: []int{n}})
		}
		return p
	}
	hold := func(layer int, ids ...string) bundle.Holding {
		var out bundle.Holding
		out.Layer, out.Ids = layer, ids
		return out
	}
	for _, c := range []struct {
		name string
		p    plan.Plan
		held []bundle.Holding
		want string
	}{
		{"nothing held", of(1, 2, 2), nil, "a de bc"}, {"one inside", of(1, 2, 2), []bundle.Holding{hold(1, "b")}, "a bc de"},
		{"one of the other branch inside", of(1, 2, 2), []bundle.Holding{hold(1, "e")}, "a ed bc"},
		{"in the centre, of the other branch", of(1, 2, 2), []bundle.Holding{hold(0, "d")}, ""},
		{"in the centre", of(1, 2, 2), []bundle.Holding{hold(0, "c")}, "c"},
		{"two that part", of(1, 2, 2), []bundle.Holding{hold(1, "b", "d")}, ""},
		{"two that do not", of(1, 2, 2), []bundle.Holding{hold(2, "e", "d")}, "a bc ed"},
		{"layers that must part", of(1, 4), nil, ""}, {"two of three and two", of(3, 2), nil, "abc de"},
	} {
		isHeld := map[string]bool{}
		for _, h := range c.held {
			for _, id := range h.Ids {
				isHeld[id] = true
			}
		}
		ids := slices.DeleteFunc([]string{"a", "b", "c", "d", "e"}, func(id string) bool { return isHeld[id] })
		layers, _, ok := whole(s, 0, c.p, ids, r, c.held)
		var got []string
		all := 0
		for _, l := range layers {
			got, all = append(got, strings.Join(l.Of, "")), all+len(l.Of)
		}
		if ok != (c.want != "") || ok && (parted(layers, r) != 0 || all != 5) {
			t.Errorf("%s: %q, %v", c.name, got, ok)
		}
		if len(c.want) > 1 && c.name != "nothing held" && strings.Join(got, " ") != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
		for _, h := range c.held {
			if ok && !strings.HasPrefix(got[h.Layer], strings.Join(h.Ids, "")) {
				t.Errorf("%s: %q", c.name, got)
			}
		}
	}
}

// Components dealt out to the layers of a plan, by hand: what is held first, then in the order they are given; a place that none is left
// for is a spare's. Tape makes a centre up to its diameter; fillers lie in layers alone. A locked layer stays as it is, and another keeps
// its pins and its lay.
func TestDealtByHand(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	h := &model.Harness{Branches: []model.Branch{{Layers: []model.Layer{{Of: []string{"x"}}, {LayMM: mm(70), Pinned: []string{"c"}},
		{Of: []string{"g"}, Locked: model.Some(true), BindMM: mm(0.3)}}}}}
	s := &sheet.Sheet{H: h, Branches: make([]sheet.Branch, 1)}
	for k, id := range []string{"a", "b", "c", "d", "e", "f", "g"} {
		h.Wires = append(h.Wires, model.Wire{ID: id})
		s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Nominal: []unit.Millimetre{1, 1, 1, 1, 2, 2, 1}[k]}})
	}
	s.Index = model.NewIndex(h)
	held := []bundle.Holding{{Layer: 1, Ids: []string{"c", "f"}}}
	size := func(mm ...unit.Millimetre) []unit.Millimetre { return mm }
	p := plan.Plan{Layers: []plan.Layer{
		{Sizes: size(1), N: []int{1}, CentreMM: 1.8, Fillers: 2},
		{Sizes: size(1, 2), N: []int{3, 2}, Fillers: 1, FillerMM: 0.9},
		{Sizes: size(1), N: []int{1}},
		{Sizes: size(1), N: []int{2}, Fillers: 3, FillerMM: 1.1},
	}}
	layers, spareIn := deal(s, 0, p, []string{"d", "a", "b", "e"}, bundle.Ranks{}, held, nil)
	want := []model.Layer{{Of: []string{"d"}, BindMM: mm(0.8)},
		{Of: []string{"c", "f", "a", "b", "e"}, Fillers: model.Some(1), FillerMM: mm(0.9), LayMM: mm(70), Pinned: []string{"c"}},
		{Of: []string{"g"}, Locked: model.Some(true), BindMM: mm(0.3)},
		{Fillers: model.Some(3), FillerMM: mm(1.1)}}
	if a, b := fmt.Sprintf("%+v", layers), fmt.Sprintf("%+v", want); a != b || !slices.Equal(spareIn, []int{2, 3, 3}) {
		t.Errorf("%s, want\n%s; spares in %v", a, b, spareIn)
	}
	centre := plan.Plan{Layers: []plan.Layer{{Sizes: size(1), N: []int{2}, Fillers: 2, FillerMM: 1}, {Sizes: size(2), N: []int{1},
		CentreMM: 0.9}}}
	h.Branches[0].Layers = nil
	if layers, spareIn := deal(s, 0, centre, []string{"a", "b", "e"}, bundle.Ranks{}, nil, nil); layers[0].Fillers.Set ||
		strings.Join(layers[0].Of, "") != "ab" || strings.Join(layers[1].Of, "") != "e" || spareIn != nil {
		t.Errorf("%+v, spares in %v", layers, spareIn)
	}
}

// What is certain is asked of each question there is: where nothing is found without spares, of that with spares; and what was found and
// has no letter is looked at, of the question that decides alone.
func TestReachAsksEachQuestion(t *testing.T) {
	rules := bundle.PlanRules(&sheet.Sheet{Limits: model.Rules{}.Resolve()})
	seven := plan.Begin(plan.Ask{Sizes: []plan.Size{{D: 1, N: 7}}, Rules: rules})
	seven.AtOnce()
	for range 50 {
		seven.Run(100_000)
	}
	reach, ok := seven.Reach()
	if !ok || !reach.All || !reach.Proven || reach.Relaxed != plan.Keeps {
		t.Fatalf("six round one are not planned to the end: %+v", reach)
	}
	best := seven.Plans()[0]
	shown := []sheet.Option{named("A", best, 0)}
	thinner := best
	thinner.Over -= 1
	free, spares := asked{false, anyOrder, false}, asked{false, anyOrder, true}
	none := plan.Begin(plan.Ask{})
	for _, c := range []struct {
		name   string
		spares int
		runs   []*run
		want   sheet.Reach
	}{
		{"without spares", 0, []*run{{of: free, search: seven}}, sheet.Reach{Ended: true, Proven: true, Thinnest: true,
			Least: reach.Least}},
		{"with one", 1, []*run{{of: free, search: none}, {of: spares, search: seven}},
			sheet.Reach{Ended: true, Proven: true, Thinnest: true, Least: reach.Least}},
		{"nothing planned", 1, []*run{{of: free, search: none}, {of: spares, search: none}}, sheet.Reach{Ended: true}},
		{"a thinner one was found", 0, []*run{{of: free, search: seven, options: []sheet.Option{named("B", thinner, 0)}}},
			sheet.Reach{Ended: true, Proven: true, Least: reach.Least}},
		{"a thinner one was found of another question", 0, []*run{{of: free, search: seven}, {of: asked{true, anyOrder, false},
			search:  none,
			options: []sheet.Option{named("B", thinner, 0)}}}, sheet.Reach{Ended: true, Proven: true, Thinnest: true, Least: reach.Least}},
	} {
		q := &Search{runs: c.runs, spares: make([]sheet.SparePlace, c.spares)}
		if got := q.reach(false, shown); got != c.want {
			t.Errorf("%s: %+v, want %+v", c.name, got, c.want)
		}
	}
	if got := (&Search{runs: []*run{{of: free, search: seven}}}).reach(false, nil); got != (sheet.Reach{Ended: true}) {
		t.Errorf("no option: %+v", got)
	}
}

// five is a sheet of five wires of 1 mm in one branch; a, b and c go on into one branch, d and e into another.
func five() (*sheet.Sheet, bundle.Ranks) {
	h := &model.Harness{Branches: []model.Branch{{}}}
	s := &sheet.Sheet{H: h, Limits: model.Rules{}.Resolve(), Branches: make([]sheet.Branch, 1)}
	for k, id := range []string{"a", "b", "c", "d", "e"} {
		h.Wires = append(h.Wires, model.Wire{ID: id})
		s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Nominal: 1 + unit.Millimetre(k)/10}})
		s.Branches[0].Components = append(s.Branches[0].Components, id)
	}
	s.Index = model.NewIndex(h)
	return s, bundle.Ranks{Next: map[string]int{"a": 1, "b": 1, "c": 1, "d": 2, "e": 2}, Depth: map[string]int{"d": 7, "e": 8}}
}

// What is held in the centre is held beside what is there already, wherever among the layers that stands; where nothing is there the
// centre comes last. The planner is told the sizes of all that is held, and what was given stays as it was.
func TestHeldInTheCentre(t *testing.T) {
	s, r := five()
	hold := func(layer int, ids ...string) bundle.Holding {
		return bundle.Holding{Layer: layer, Ids: append(make([]string, 0, 9), ids...), Held: plan.Held{At: layer}}
	}
	for _, c := range []struct {
		held []bundle.Holding
		want string
	}{
		{nil, "0:de"}, {[]bundle.Holding{hold(0, "a")}, "0:ade"}, {[]bundle.Holding{hold(1, "a")}, "1:a 0:de"},
		{[]bundle.Holding{hold(1, "a"), hold(0, "b"), hold(2, "c")}, "1:a 0:bde 2:c"},
	} {
		q := questionOf(s, 0, r, c.held)
		if len(q.ask.Held) != len(c.held) || len(q.ask.Sizes) != 5 {
			t.Errorf("%v: %+v", c.held, q.ask)
		}
		q.hold(s, r, []string{"d", "e"})
		var got []string
		for k, h := range q.held {
			got = append(got, fmt.Sprint(h.Layer, ":", strings.Join(h.Ids, "")))
			var want []plan.Size
			for _, id := range h.Ids {
				want = append(want, plan.Size{D: s.Dia(id).Nominal, N: 1, Leaves: r.Depth[id]})
			}
			if told := q.ask.Held[k]; told.At != h.Layer || !slices.Equal(told.Sizes, want) {
				t.Errorf("%s: the planner is told %+v", c.want, told)
			}
		}
		if strings.Join(got, " ") != c.want || len(q.ask.Held) != len(q.held) {
			t.Errorf("%q, want %q", got, c.want)
		}
		for _, h := range c.held {
			if len(h.Ids) != 1 || slices.Contains(h.Ids[:9], "d") {
				t.Errorf("%s: what was given is changed: %v", c.want, h.Ids[:9])
			}
		}
	}
}

// Where layers must part, the places for spares are those of the lay-up as it was dealt; where they need not, those of the one that
// stays whole; and without a fork nothing is looked for.
func TestPlacesOfSparesAtAFork(t *testing.T) {
	s, r := five()
	for k := range s.Wires {
		s.Wires[k].Dia.Nominal = 1
	}
	r.Depth = nil
	for _, c := range []struct {
		name   string
		n      []int
		forks  bool
		parted int
		spare  int // layer of the one place
	}{
		{"must part", []int{1, 5}, true, 1, 1}, {"must part in the centre too", []int{5, 1}, true, 1, 1},
		{"no fork", []int{2, 4}, false, 2, 1},
		{"whole", []int{2, 2, 2}, true, 0, -1}, {"whole, four and two", []int{4, 2}, true, 0, 0},
	} {
		p := plan.Plan{Spares: 1}
		for _, n := range c.n {
			p.Layers = append(p.Layers, plan.Layer{Sizes: []unit.Millimetre{1}, N: []int{n}})
		}
		layers, spareIn := name(s, 0, p, r, nil, c.forks)
		all := 0
		for k, l := range layers {
			all += len(l.Of)
			if slices.Contains(spareIn, k) != (len(l.Of) < c.n[k]) {
				t.Errorf("%s: layer %d of %v, spares in %v", c.name, k, l.Of, spareIn)
			}
		}
		if all != 5 || len(spareIn) != 1 || c.spare >= 0 && spareIn[0] != c.spare || c.forks && (parted(layers, r) > 0) != (c.parted > 0) {
			t.Errorf("%s: %+v, spares in %v", c.name, layers, spareIn)
		}
	}
}

// A plan that is there already is not added again, whatever else was found since.
func TestGatheredOnce(t *testing.T) {
	s, r := five()
	q := &Search{s: s, ranks: r}
	as := questionOf(s, 0, r, nil)
	one := &run{search: plan.Begin(as.ask)}
	one.search.AtOnce()
	if !q.gather(one) || len(one.options) == 0 {
		t.Fatal("nothing is gathered")
	}
	n := len(one.options)
	if q.gather(one) || len(one.options) != n {
		t.Errorf("%d options, then %d", n, len(one.options))
	}
	one.finds = 0 // as if something had been found
	if q.gather(one) || len(one.options) != n {
		t.Errorf("%d options, then %d of the same plans", n, len(one.options))
	}
}

// A search that has nothing to look for finds nothing, and has no more.
func TestNothingToSearch(t *testing.T) {
	if found, more := (&Search{}).Run(1000); found || more {
		t.Errorf("found %v, more %v", found, more)
	}
}

// Two plans are alike where every layer takes the same: sizes, numbers, fillers, the diameter its centre is made up to; and the limits.
func TestPlansThatAreAlike(t *testing.T) {
	of := func(change func(p *plan.Plan)) plan.Plan {
		p := plan.Plan{Over: 9, Layers: []plan.Layer{{Sizes: []unit.Millimetre{1}, N: []int{1}},
			{Sizes: []unit.Millimetre{1, 2}, N: []int{3, 4}, Fillers: 1}}}
		change(&p)
		return p
	}
	same := of(func(*plan.Plan) {})
	for name, c := range map[string]struct {
		change func(p *plan.Plan)
		alike  bool
	}{
		"the same":         {func(*plan.Plan) {}, true},
		"its price":        {func(p *plan.Plan) { p.Cost, p.Over = 7, 8 }, true},
		"sizes":            {func(p *plan.Plan) { p.Layers[1].Sizes = []unit.Millimetre{1, 3} }, false},
		"numbers":          {func(p *plan.Plan) { p.Layers[1].N = []int{4, 3} }, false},
		"fillers":          {func(p *plan.Plan) { p.Layers[1].Fillers = 2 }, false},
		"a made-up centre": {func(p *plan.Plan) { p.Layers[0].CentreMM = 2 }, false},
		"a layer more":     {func(p *plan.Plan) { p.Layers = append(p.Layers, plan.Layer{}) }, false},
		"limits":           {func(p *plan.Plan) { p.Relaxed = 1 }, false},
	} {
		if p := of(c.change); alike(same, p) != c.alike || alike(p, same) != c.alike {
			t.Errorf("%s: alike %v", name, !c.alike)
		}
	}
}

// A thin centre is made up with tape as a thick one is: of 0.5 mm to 0.8 by 0.3.
func TestThinCentreMadeUp(t *testing.T) {
	s, r := five()
	for k := range s.Wires {
		s.Wires[k].Dia.Nominal = 0.5
	}
	p := plan.Plan{Layers: []plan.Layer{{Sizes: []unit.Millimetre{0.5}, N: []int{1}, CentreMM: 0.8, Fillers: 1},
		{Sizes: []unit.Millimetre{0.5}, N: []int{4}}}}
	layers, spareIn := deal(s, 0, p, s.Branches[0].Components, r, nil, nil)
	if layers[0].BindMM != model.Some[unit.Millimetre](0.3) || layers[0].Fillers.Set || layers[1].BindMM.Set || spareIn != nil {
		t.Errorf("%+v, spares in %v", layers, spareIn)
	}
}
