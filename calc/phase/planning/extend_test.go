package planning

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// named is an option whose only layer holds a wire of its name.
func named(name string, p plan.Plan, spares int) sheet.Option {
	return sheet.Option{Plan: p, Cost: p.Cost, Layers: []model.Layer{{Of: []string{name}}}, Spares: make([]sheet.SparePlace, spares)}
}

// Which options of a longer search are news, by hand: shown are A, of 10 mm with 2 fillers at a cost of 5, and B, of 11 mm with none at 6.
// One is news that neither is as good as in everything; the best of all found is, whatever else it is; none is told twice.
func TestWhatALongerSearchAdds(t *testing.T) {
	a, b := named("A", plan.Plan{Over: 10, Fillers: 2, Cost: 5, Lumpy: 1}, 0), named("B", plan.Plan{Over: 11, Cost: 6, Lumpy: 1}, 0)
	p := func(over unit.Millimetre, fillers int, cost unit.Ratio) plan.Plan {
		return plan.Plan{Over: over, Fillers: fillers, Cost: cost, Lumpy: 1}
	}
	relaxed := p(12, 3, 1)
	relaxed.Relaxed = 1
	smooth := p(12, 3, 9)
	smooth.Lumpy = 0
	for _, c := range []struct {
		name  string
		found []sheet.Option
		want  string
	}{
		{"nothing", nil, "AB"}, {"what is shown", []sheet.Option{a, b}, "AB"},
		{"thinner", []sheet.Option{a, named("C", p(9.9, 3, 7), 0)}, "ABC"},
		{"fewer fillers", []sheet.Option{a, named("C", p(10.5, 1, 7), 0)}, "ABC"},
		{"as thick with more fillers", []sheet.Option{a, named("C", p(10, 3, 7), 0)}, "AB"},
		{"thicker, as many", []sheet.Option{a, named("C", p(10.5, 2, 7), 0)}, "AB"},
		{"alike in all", []sheet.Option{a, named("C", p(10, 2, 7), 0)}, "AB"},
		{"cheaper, not first", []sheet.Option{a, named("C", p(12, 3, 4), 0)}, "AB"},
		{"best of all", []sheet.Option{named("C", p(12, 3, 4.9), 0)}, "ABC"},
		{"as good as the best", []sheet.Option{named("C", p(12, 3, 5), 0)}, "AB"},
		{"cheaper, but a rule is relaxed", []sheet.Option{named("C", relaxed, 0)}, "AB"},
		{"smoother", []sheet.Option{a, named("C", smooth, 0)}, "ABC"},
		{"more spares", []sheet.Option{a, named("C", p(12, 3, 9), 1)}, "ABC"},
		{"the same layers with a spare", []sheet.Option{named("A", p(10, 2, 5), 1)}, "ABA"},
		{"one that another of them is as good as", []sheet.Option{a, named("C", p(9, 3, 7), 0), named("D", p(9.5, 3, 8), 0)}, "ABC"},
		{"two", []sheet.Option{a, named("C", p(9, 3, 7), 0), named("D", p(8, 4, 8), 0)}, "ABCD"},
	} {
		shown := sheet.Proposal{Options: []sheet.Option{a, b}, Shown: 2}
		found := sheet.Proposal{Options: c.found, LeaversWith: 1, LeaversFree: 2, UnitsWith: 3, UnitsFree: 4,
			UnitsMM:   model.Some(unit.Millimetre(5)),
			LeaversMM: model.Some(unit.Millimetre(6)), Reach: sheet.Reach{Proven: true}}
		out, news := Extend(shown, found)
		got := ""
		for _, o := range out.Options {
			got += o.Layers[0].Of[0]
		}
		if got != c.want || news != (c.want != "AB") || len(shown.Options) != 2 {
			t.Errorf("%s: %s, news %v; want %s", c.name, got, news, c.want)
		}
		if out.Shown != 2 || out.LeaversWith != 1 || out.LeaversFree != 2 || out.UnitsWith != 3 || out.UnitsFree != 4 ||
			out.UnitsMM.V != 5 ||
			out.LeaversMM.V != 6 || !out.Reach.Proven {
			t.Errorf("%s: %+v", c.name, out)
		}
	}
}

// There are letters for 26 options, and no more are taken.
func TestOptionsHaveLetters(t *testing.T) {
	var all []sheet.Option
	for k := range 40 {
		all = append(all, named(fmt.Sprint(k), plan.Plan{Over: unit.Millimetre(50 - k), Fillers: k}, 0))
	}
	out, news := Extend(sheet.Proposal{Options: all[:2:2], Shown: 2}, sheet.Proposal{Options: all})
	if len(out.Options) != 26 || !news || out.Letter(25) != 'Z' {
		t.Error(len(out.Options), news)
	}
	if again, more := Extend(out, sheet.Proposal{Options: all}); len(again.Options) != 26 || more {
		t.Error(len(again.Options), more)
	}
}

// Which of two options is as good as the other in everything, by hand.
func TestOptionThatBeats(t *testing.T) {
	base := sheet.Option{Plan: plan.Plan{Over: 10, Fillers: 2, Lumpy: 1}, Buried: 1, Parted: 1, Spares: make([]sheet.SparePlace, 1)}
	with := func(change string, by int) sheet.Option {
		o := base
		switch change {
		case "over":
			o.Plan.Over += unit.Millimetre(by)
		case "hair": // less than is written
			o.Plan.Over += 0.001 * unit.Millimetre(by)
		case "fillers":
			o.Plan.Fillers += by
		case "lumpy":
			o.Plan.Lumpy += by
		case "buried":
			o.Buried += by
		case "parted":
			o.Parted += by
		case "spares":
			o.Spares = make([]sheet.SparePlace, 1-by)
		}
		return o
	}
	for _, change := range strings.Fields("over fillers lumpy buried parted spares") {
		if !beats(base, with(change, 1)) || beats(with(change, 1), base) || beats(base, with(change, -1)) || !beats(with(change, -1),
			base) {
			t.Errorf("%s: fewer do not beat more", change)
		}
	}
	if !beats(base, base) || !beats(base, with("hair", -1)) || !beats(with("hair", 1), base) {
		t.Error("of options alike each is as good as the other")
	}
	// one that parts more may be as good where it is thinner
	thin := with("over", -1)
	thin.Parted = 2
	if !beats(thin, base) || beats(base, thin) {
		t.Error("thinner, and parts more")
	}
}
