package cover_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/cover"
)

func TestRankOfOneKind(t *testing.T) {
	kind := []cover.Tube{elastomer64, elastomer95, elastomer127, elastomer190}
	for i := range kind {
		kind[i].Density = 1.3 // from memory of the class, not verified; the same for all, so it decides nothing
	}
	rows := []struct {
		name   string
		bundle cover.Bundle
		pass   cover.Pass
		want   []int
	}{
		// 9.5 and 12.7 keep all, 9.5 is lighter. 6.4 is too narrow and 19.0 (recovered 9.53) too
		// wide; of those two 19.0 keeps stretch and slide, 6.4 only the grip.
		{"lightest of those that keep all", tight(7.6, 7.4), cover.Pass{}, []int{1, 2, 3, 0}},
		// Nothing below 10.3 passes; 12.7 keeps all. 9.5 (stretch, grip) and 6.4 (grip), 19.0
		// (stretch, slide) stop; kept 2, 1, 2, of the twos 9.5 is lighter.
		{"past a connector", tight(7.6, 7.4), cover.Pass{NominalMM: 10.2, MaxMM: 10.3}, []int{2, 1, 3, 0}},
		// 7.2 tape: 12.7 keeps all, 9.5 misses 0.80.
		{"more advice before less weight", tight(7.9, 7.2), cover.Pass{}, []int{2, 1, 3, 0}},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			cs := cover.Candidates(kind, r.bundle, r.pass, 200)
			if got := cover.Rank(cs); !slices.Equal(got, r.want) {
				t.Errorf("order %v, want %v", got, r.want)
			}
		})
	}
}

func TestRankTies(t *testing.T) {
	good := cover.Verdict{Stretch: cover.Advice{Kept: true}}
	at := func(bore mm, grams float64, known bool) cover.Candidate {
		return cover.Candidate{Tube: cover.Tube{SuppliedMM: bore}, Verdict: good, GramPerM: gram(grams), MassKnown: known}
	}
	cs := []cover.Candidate{at(19, 5, true), at(12, 5, true), at(6, 0, false), at(12, 5, true), at(25, 4, true)}
	// Lightest first; equal ones by bore, then as given; what has no mass last.
	if got, want := cover.Rank(cs), []int{4, 1, 3, 0, 2}; !slices.Equal(got, want) {
		t.Errorf("order %v, want %v", got, want)
	}
	if got := cover.Rank(nil); len(got) != 0 {
		t.Errorf("nothing ranks as %v", got)
	}
}

func TestTubeThatCannotBeJudgedStops(t *testing.T) {
	cs := cover.Candidates([]cover.Tube{{}, elastomer95}, tight(7, 6.8), cover.Pass{}, 200)
	if !cs[0].Verdict.Stops() || cs[1].Verdict.Stops() {
		t.Errorf("%+v", cs)
	}
}

func TestRankIsAnOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cs := make([]cover.Candidate, rapid.IntRange(0, 12).Draw(t, "n"))
		for i := range cs {
			kept := func(name string) cover.Advice { return cover.Advice{Kept: rapid.Bool().Draw(t, name)} }
			cs[i] = cover.Candidate{
				Tube:      cover.Tube{SuppliedMM: mm(rapid.IntRange(1, 3).Draw(t, "bore"))},
				Verdict:   cover.Verdict{StopLoose: rapid.Bool().Draw(t, "stop"), Stretch: kept("a"), Grips: kept("b"), Slides: kept("c")},
				GramPerM:  gram(rapid.IntRange(1, 3).Draw(t, "g")),
				MassKnown: true,
			}
		}
		order := cover.Rank(cs)
		for i := 1; i < len(order); i++ {
			a, b := cs[order[i-1]].Verdict, cs[order[i]].Verdict
			if a.Stops() && !b.Stops() {
				t.Fatal("one that stops ranks before one that does not")
			}
			if a.Stops() == b.Stops() && a.Kept() < b.Kept() {
				t.Fatal("one that keeps less ranks before one that keeps more")
			}
		}
		slices.Sort(order)
		for i, v := range order {
			if i != v {
				t.Fatalf("position %d is missing or twice", i)
			}
		}
	})
}

func ExampleRank() {
	tubes := []cover.Tube{
		{SuppliedMM: 6.35, RecoveredMM: 3.18, WallMM: 0.89, Density: 1.3},
		{SuppliedMM: 9.53, RecoveredMM: 4.75, WallMM: 0.99, Density: 1.3},
		{SuppliedMM: 12.70, RecoveredMM: 6.35, WallMM: 1.19, Density: 1.3},
	}
	cs := cover.Candidates(tubes, cover.Bundle{OverMM: 7.6, TapeMM: 7.4}, cover.Pass{}, 200)
	for _, i := range cover.Rank(cs) {
		fmt.Printf("%.2f keeps %d, stops %v\n", cs[i].Tube.SuppliedMM, cs[i].Verdict.Kept(), cs[i].Verdict.Stops())
	}
	// Output:
	// 9.53 keeps 3, stops false
	// 12.70 keeps 3, stops false
	// 6.35 keeps 1, stops true
}
