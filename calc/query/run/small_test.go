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
