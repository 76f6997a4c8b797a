package paper

import (
	"strings"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Plans as text, by hand: each with what it would be as a branch of a metre, what was relaxed for it, and below what is proven, how much
// less another could cost, and each kind of sheath once.
func TestPlansAsBranches(t *testing.T) {
	one := func(relaxed plan.Relaxed, centre unit.Millimetre) plan.Plan {
		return plan.Plan{Cost: 8, Over: 7.5, Fillers: 2, Spares: 1, Lumpy: 3, Relaxed: relaxed,
			Layers: []plan.Layer{{Sizes: []unit.Millimetre{1},
				N: []int{1}, CentreMM: centre, Fillers: 1}, {N: []int{3, 2}, Fillers: 1}}}
	}
	branch := func(part string, gram float64, bend unit.Millimetre) *sheet.Branch {
		b := &sheet.Branch{Sheath: sheet.Sheath{Part: part}}
		if gram > 0 {
			b.Gram = model.Some(unit.Gram(gram))
		}
		b.Bend.MinMM = bend
		return b
	}
	ps := []plan.Plan{one(plan.Keeps, 0), one(plan.Gaps, 0), one(plan.GapLift, 1.25), one(plan.Nothing, 0), one(0, 1.25), one(0, 0)}
	as := []*sheet.Branch{branch("RNF 9.5", 101.6, 30.4), branch("odd", 0, 9), branch("", 7, 8), nil, branch("AS 3 12.7", 1, 2)}
	ps[0].Least = 6
	got := strings.Split(Plans(ps, as), "\n")
	want := []string{
		"lay-up spares filler lumpy  over mm     cost sheath   g/m  bend",
		"1 · 6       1      2     3    7.500    8.000    9.5   102    30",
		"1 · 6       1      2     3    7.500    8.000    odd     -     9  has gaps over the limit",
		"1 · 6       1      1     3    7.500    8.000   none     7     8  centre built up to 1.2 with 0.25 mm of tape, tight, and has " +
			"gaps over the limit",
		"1 · 6       1      2     3    7.500    8.000      -     -     -  will not close as it is",
		"1 · 6       1      1     3    7.500    8.000   12.7     1     2  centre built up to 1.2 with 0.25 mm of tape",
		"1 · 6       1      2     3    7.500    8.000      -     -     -",
		"Not proven: a lay-up could cost up to 25.0 % less than the first.", "--effort N searches longer.",
		"Sheath: RNF, AS 3, on a straight branch of 1000 mm. The g/m do not count it.", "bend: the least radius in mm.", "",
	}
	for k := range max(len(got), len(want)) {
		if k >= len(got) || k >= len(want) || got[k] != want[k] {
			t.Errorf("line %d of %d:\n%q, want\n%q", k, len(got), got[min(k, len(got)-1)], want[min(k, len(want)-1)])
		}
	}
	if text := Plans(nil, nil); text != "There is no such lay-up.\n" {
		t.Error(text)
	}
	for part, want := range map[string][2]string{"": {"none", ""}, "X": {"X", ""}, "A B 1": {"1", "A B"}, " X": {" X", ""}} {
		if size, kind := sheathSize(part); size != want[0] || kind != want[1] {
			t.Errorf("%q: %q of %q", part, size, kind)
		}
	}
}
