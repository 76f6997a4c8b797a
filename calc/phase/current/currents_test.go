package current_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

func span(from, to int) []int {
	var out []int
	for k := from; k < to; k++ {
		out = append(out, k)
	}
	return out
}

// A fan of 32 A on contacts of size 16: the contact governs at 13 A, whatever the wire.
// Source: contact rating table of MIL-DTL-38999, as in the catalogue.
func TestContactGoverns(t *testing.T) {
	for _, size := range []string{"16", "12", "10"} {
		s := calctest.Carrying(t, 25, "16", []string{size + " 32.0"}, nil, "")
		w := s.Wires[0]
		if !w.Known {
			continue // the specification ends at 12
		}
		if w.Bound.V.Amps != 13 || !strings.HasPrefix(w.Bound.V.Where, "contact A:0") {
			t.Errorf("%s AWG: %v by %s", size, w.Bound.V.Amps, w.Bound.V.Where)
		}
		found := false
		for _, g := range s.Snags {
			found = found || g.Rule == "wire.current" && g.Level == sheet.Stop &&
				strings.Contains(g.Says, "carries 32 A but may carry only 13")
		}
		if !found {
			t.Errorf("%s AWG: nothing stops it: %+v", size, s.Snags)
		}
	}
}

// The inner seven of 37 × 22 AWG at 5 A, or the outer eighteen at 3.118 A: the same
// squared current, and between their hottest wires what finite volumes over the circles
// find, to a tenth.
func TestWhereTheLoadLies(t *testing.T) {
	lay := [][]int{{0}, span(1, 7), span(7, 19), span(19, 37)}
	inner := append(calctest.Repeated(7, "22 5.0"), calctest.Repeated(30, "22 0.0")...)
	outer := append(calctest.Repeated(19, "22 0.0"), calctest.Repeated(18, "22 3.118")...)
	var got, want [2]float64
	for n, wires := range [][]string{inner, outer} {
		s := calctest.Carrying(t, 25, "", wires, lay, "")
		got[n] = float64(s.Branches[0].Warm.HottestC)
		for _, c := range calctest.Volumes(t, s, 0, 0.1, -1, 0) {
			want[n] = max(want[n], float64(c))
		}
	}
	if a, b := got[0]-got[1], want[0]-want[1]; math.Abs(a-b) > 0.1*b || b < 5 {
		t.Errorf("inside %.1f, outside %.1f: %.1f apart, by finite volumes %.1f", got[0], got[1], a, b)
	}
}

// The prior's heat is the heat that a fresh sheet has, and an allocation bound keeps
// it off the path of a key.
func TestWarmFromPrior(t *testing.T) {
	s := calctest.Carrying(t, 70, "", append(calctest.Repeated(30, "22 1.0"), calctest.Repeated(9, "20 3.0")...), nil, "")
	h := s.H.EditWire(3, func(w *model.Wire) { w.Note = model.Some("x") })
	again, fresh := calc.Build(h, s.Cat, s), calc.Build(h, s.Cat, &sheet.Sheet{Proposals: s.Proposals})
	if a, b := again.Branches[0].Warm, fresh.Branches[0].Warm; a.HottestC != b.HottestC || a.WattPerM != b.WattPerM || !a.Known {
		t.Errorf("%+v, fresh %+v", a, b)
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	if n := testing.AllocsPerRun(5, func() { calc.Build(h, cat, s) }); n > 3000 {
		t.Errorf("%v allocations for a build in which nothing changed", n)
	}
}

// heavy is a branch of 130 wires, of three sizes and thirteen currents, laid.
func heavy(t testing.TB) *sheet.Sheet {
	var wires []string
	for k := range 130 {
		size := "22"
		if k%5 == 0 {
			size = "20"
		}
		if k%11 == 0 {
			size = "16"
		}
		wires = append(wires, fmt.Sprintf("%s %.1f", size, 0.1+0.2*float64(k%13)))
	}
	s := calctest.Carrying(t, 60, "", wires, nil, "")
	return calc.Build(s.H.EditBranch(0, func(b *model.Branch) {
		b.Layers, b.Make = model.CloneLayers(s.Branches[0].As),
			model.Some(model.MakeLaid)
	}), s.Cat, s)
}

// BenchmarkHeat is heavy built anew with one current changed; p95 is the time that 95
// of 100 builds stay below.
func BenchmarkHeat(b *testing.B) {
	s := heavy(b)
	b.ReportAllocs()
	var took []float64
	for b.Loop() {
		h := s.H.EditWire(7, func(w *model.Wire) { w.Amps = model.Some(unit.Ampere(1 + len(took)%2)) })
		at := time.Now()
		calc.Build(h, s.Cat, s)
		took = append(took, float64(time.Since(at).Microseconds())/1000)
	}
	slices.Sort(took)
	b.ReportMetric(took[len(took)*95/100], "p95-ms")
}

// A build of heavy with one current changed allocates for its sheet and its heat, some
// thousand things, and not for each wire in each layer again.
func TestHeatAllocates(t *testing.T) {
	s := heavy(t)
	n := 0
	if got := testing.AllocsPerRun(5, func() {
		n++
		calc.Build(s.H.EditWire(7, func(w *model.Wire) { w.Amps = model.Some(unit.Ampere(1 + n%2)) }), s.Cat, s)
	}); got > 3500 {
		t.Errorf("%v allocations", got)
	}
}
