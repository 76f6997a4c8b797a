package explain_test

import (
	"math"
	"slices"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
	"contralay/calc/query/why/power"
	"contralay/calc/query/why/shape"
	"contralay/calc/sheet"
)

// bare is a loom of which nothing is known: sizes of no catalogue, a branch without length, a splice and a feed of nothing, a unit.
const bare = `format = 1
[[termination]]
id = "P"
[[termination]]
id = "Q"
[[breakout]]
id = "J"
[[splice]]
id = "S"
at = "J"
[[wire]]
id = "w"
from = "P:1"
to = "Q:1"
spec = "own"
size = "3"
amps = 1.0
[[wire]]
id = "v"
from = "P:2"
to = "S"
spec = "own"
size = "3"
[[wire]]
id = "x"
from = "P:3"
to = "Q:3"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "u0"
from = "P:4"
to = "Q:4"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "u1"
from = "P:5"
to = "Q:5"
spec = "AS22759/32"
size = "22"
[[unit]]
id = "U"
wires = ["u0", "u1"]
build = "pair"
[[feed]]
id = "F"
device = "electronic"
amps = 5.0
wires = ["w"]
[[branch]]
id = "T"
from = "P"
to = "J"
length_mm = 0.0
[[branch]]
id = "L"
from = "J"
to = "Q"
length_mm = 100.0
`

// A maker of a figure gives a whole explanation or none, asked alone: what it is, how it is worked out, and from inputs that come to its
// value. It is asked of everything that a harness names, right or wrong: looms of which much is known and of which nothing is.
func TestMakersGiveAllOrNothing(t *testing.T) {
	all := map[string]why.Maker{}
	for _, part := range []map[string]why.Maker{shape.Makers, power.Makers} {
		for name, m := range part {
			all[name] = m
		}
	}
	if len(all) != len(explain.FigureNames()) {
		t.Errorf("%d makers, %d names", len(all), len(explain.FigureNames()))
	}
	given, refused := map[string]int{}, map[string]int{}
	looms := small(t)
	for _, s := range []*sheet.Sheet{calctest.Laid(t, "example"), calctest.Built(t, bare), calctest.Built(t, calctest.LacksNothing),
		looms["fed"], looms["covered"], looms["long loop"], looms["corrected"]} {
		ids := first(s.H.Branches, 3, func(k int) string { return s.H.Branches[k].ID })
		for _, more := range [][]string{first(s.H.Terminations, 2, func(k int) string { return s.H.Terminations[k].ID }),
			first(s.H.Wires, 3, func(k int) string { return s.H.Wires[k].ID }), first(s.H.Feeds, 2,
				func(k int) string { return s.H.Feeds[k].ID }),
			first(s.H.Units, 1, func(k int) string { return s.H.Units[k].ID }), {"no such", ""}} {
			ids = append(ids, more...)
		}
		parts := []string{"", "no such", "filler"}
		parts = append(parts, first(s.H.Wires, 2, func(k int) string { return s.H.Wires[k].ID })...)
		for _, b := range s.Branches {
			if b.Sheath.Part != "" {
				parts = append(parts, b.Sheath.Part)
				break
			}
		}
		e := explain.Of(s)
		for name, m := range all {
			for _, id := range ids {
				for _, part := range parts {
					for _, k := range []int{-1, 0, 1, 2, 99} {
						w, ok := m(e, why.Figure{What: name, Of: id, Part: part, K: k})
						if !ok {
							refused[name]++
							continue
						}
						given[name]++
						if w.Formula == nil || w.Name == "" || len(w.In) == 0 {
							t.Fatalf("%s of %q, %q, %d: half an explanation: %+v", name, id, part, k, w)
						}
						var in []float64
						for _, x := range w.In {
							in = append(in, x.Value)
						}
						if v := w.Formula(in); !math.IsNaN(v) && math.Abs(v-w.Value) > 1e-6*math.Max(1, math.Abs(w.Value)) {
							t.Fatalf("%s of %q, %q, %d is %v, its inputs come to %v", name, id, part, k, w.Value, v)
						}
					}
				}
			}
		}
	}
	for name := range all {
		if refused[name] == 0 && !slices.Contains([]string{"loom.wire", "loom.mass"}, name) {
			t.Errorf("%s is refused nowhere", name)
		}
	}
	if len(given) < len(all)/2 {
		t.Errorf("only %d of %d were given anywhere", len(given), len(all))
	}
}

func first[T any](all []T, n int, id func(k int) string) (out []string) {
	for k := range min(n, len(all)) {
		out = append(out, id(k))
	}
	return out
}
