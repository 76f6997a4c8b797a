package run

import (
	"math"
	"testing"

	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/unit"
)

// A wire of half a millimetre, 0.48 to 0.52, is judged like any other: as far as callipers tell beyond that. What is no diameter is not.
func TestReadingOfAThinWire(t *testing.T) {
	s := calctest.Ringed(t, 0.5, 0.02, 400, []int{1, 6}, "", "")
	for _, c := range []struct {
		read unit.Millimetre
		told Told
	}{{0.5, AsSheet}, {0.56, AsWire}, {0.44, AsWire}, {0.58, TooThick}, {0.42, TooThin}, {0.01, TooThin}} {
		e, ok := bandOf(s).judge(nil, 0, 0, []unit.Millimetre{c.read})
		if !ok || e.Told != c.told || e.SheetMM != 0.5 || math.Abs(float64(e.LeastMM)-0.48) > 1e-9 ||
			math.Abs(float64(e.MostMM)-0.52) > 1e-9 || e.ReadMM != c.read || e.HighMM != c.read {
			t.Errorf("%v mm: %v %+v", c.read, ok, e)
		}
	}
	inf := unit.Millimetre(math.Inf(1))
	for _, read := range [][]unit.Millimetre{nil, {0}, {-0.5}, {inf}, {-inf}, {unit.Millimetre(math.NaN())}, {0.5, -0.5}} {
		if e, ok := bandOf(s).judge(nil, 0, 0, read); ok {
			t.Errorf("%v is judged: %+v", read, e)
		}
	}
	for _, at := range [][2]int{{-1, 0}, {1, 0}, {0, -1}, {0, 2}} {
		if _, ok := bandOf(s).judge(nil, at[0], at[1], []unit.Millimetre{0.5}); ok {
			t.Errorf("branch %d, layer %d is judged", at[0], at[1])
		}
	}
}

// A harness of one wire is weighed, one of none is not.
func TestOneWireIsWeighed(t *testing.T) {
	for _, wires := range []int{0, 1, 2} {
		s := calctest.Carrying(t, 20, "", calctest.Repeated(wires, "22 1"), nil, "")
		for _, steps := range [][]RunStep{Run(s), For(s, &model.Build{EachTest: model.Some(true)})} {
			n := 0
			for _, step := range steps {
				if step.Kind == WeighStep {
					n++
				}
			}
			if n != min(wires, 1) {
				t.Errorf("%d wires: weighed %d times", wires, n)
			}
		}
	}
}

// A wire that measures as much as its tolerance allows, or a hundredth less, is at its end: of one alone the reading is its diameter. It is
// 1.09 mm, 0.99 to 1.19.
func TestWireAtTheEndOfItsTolerance(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.1, 400, []int{1, 6}, "", "")
	for _, c := range []struct {
		read        unit.Millimetre
		top, bottom bool
	}{{1.1795, false, false}, {1.1805, true, false}, {1.19, true, false}, {1.0005, false, false}, {0.9995, false, true},
		{0.99, false, true}, {1.15, false, false}} {
		e, ok := ExplainReading(s, nil, 0, 0, []unit.Millimetre{c.read})
		if !ok || e.Told != AsWire || e.Top != c.top || e.Bottom != c.bottom || math.Abs(float64(e.AsIfMM-c.read)) > 1e-6 {
			t.Errorf("%v: %v %+v", c.read, ok, e)
		}
	}
}

// What is cut off one spool goes together up to the last step, where nothing follows it too.
func TestGroupUpToTheLastStep(t *testing.T) {
	s := calctest.Carrying(t, 20, "", []string{"22 1", "20 1", "22 1"}, nil, "")
	var cuts []RunStep
	for _, step := range Run(s) {
		if step.Kind == CutStep {
			cuts = append(cuts, step)
		}
	}
	for at := range cuts {
		p := Pieces(s, cuts[at])[0]
		want := 1
		if s.H.Wires[s.Index.Wire[p.ID]].Size == "22" {
			want = 2
		}
		if got := Group(s, cuts, &model.Build{}, at, p); len(cuts) != 2 || len(got) != want {
			t.Errorf("of %d cuts %d go with %s: %+v", len(cuts), len(got), p.ID, got)
		}
	}
}
