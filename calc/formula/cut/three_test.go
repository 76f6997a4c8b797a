package cut_test

import (
	"math"
	"testing"

	"contralay/calc/formula/cut"
	"contralay/model/unit"
)

// Paths of 300, 650 and 3000 mm without zones, lay loss 2.2 %, loops 16 and 8, tails 100
// and 75, steps of 10: cut 510, 870, 3270, worked out by hand.
func TestCutOfThree(t *testing.T) {
	for path, want := range map[unit.Millimetre]unit.Millimetre{300: 510, 650: 870, 3000: 3270} {
		l, ok := cut.Of(cut.Wire{Pieces: []cut.Piece{{LengthMM: path, LaidMM: path, Loss: 1.022}}, From: cut.End{LoopMM: 16, TailMM: 100},
			To: cut.End{LoopMM: 8, TailMM: 75}, StepMM: 10})
		if !ok || l.CutMM != want {
			t.Errorf("%v mm: cut %v, want %v", path, l.CutMM, want)
		}
	}
}

// The edges of what a wire may be, by hand: pieces of no length, of half a millimetre, a loss of exactly 1 outside and inside a unit,
// and a path that its offset takes off to nothing. A unit adds 50 mm to each tail.
func TestEdgesOfACut(t *testing.T) {
	piece := func(long, laid unit.Millimetre, loss unit.Ratio) []cut.Piece {
		return []cut.Piece{{LengthMM: long, LaidMM: laid, Loss: loss}}
	}
	for _, c := range []struct {
		name string
		w    cut.Wire
		want cut.Length
	}{
		{"nothing", cut.Wire{}, cut.Length{}},
		{"no length", cut.Wire{Pieces: piece(0, 0, 1)}, cut.Length{}},
		{"half a millimetre", cut.Wire{Pieces: piece(0.5, 0.25, 2)}, cut.Length{PathMM: 0.75, FinishedMM: 0.75, CutMM: 0.75}},
		{"a unit without a loss", cut.Wire{Pieces: piece(100, 0, 1), InUnit: true, UnitLoss: 1}, cut.Length{PathMM: 100, FinishedMM: 100,
			CutMM: 200}},
		{"all taken off", cut.Wire{Pieces: piece(100, 0, 1), OffsetMM: -100, From: cut.End{LoopMM: 3}}, cut.Length{FinishedMM: 3,
			CutMM: 3}},
		{"nearly all taken off", cut.Wire{Pieces: piece(100, 0, 1), OffsetMM: -99.5}, cut.Length{PathMM: 0.5, FinishedMM: 0.5,
			CutMM: 0.5}},
		{"half a millimetre at each end", cut.Wire{From: cut.End{LoopMM: 0.5, TailMM: 0.25}, To: cut.End{LoopMM: 0.125, TailMM: 0.5}},
			cut.Length{FinishedMM: 0.625, CutMM: 1.375}},
	} {
		if got, ok := cut.Of(c.w); !ok || got != c.want {
			t.Errorf("%s: %+v %v, by hand %+v", c.name, got, ok, c.want)
		}
	}
	for name, w := range map[string]cut.Wire{"a loss below 1": {Pieces: piece(9, 9, 0.99)}, "below nothing": {Pieces: piece(9, 9, 1),
		OffsetMM: -9.5}, "a unit's loss below 1": {InUnit: true, UnitLoss: 0.99}, "a negative length": {Pieces: piece(-0.5, 0, 1)},
		"a negative laid length": {Pieces: piece(9, -0.5, 1)}, "a negative tail": {To: cut.End{TailMM: -0.5}}} {
		if got, ok := cut.Of(w); ok || got != (cut.Length{}) {
			t.Errorf("%s: %+v", name, got)
		}
	}
}

// What is laid and how often it turns, at the edges: of no length nothing is laid, half a millimetre may be, and where a figure is
// unknown or a lay is 0 there is neither.
func TestEdgesOfLaying(t *testing.T) {
	nan := unit.Millimetre(math.NaN())
	for _, c := range []struct {
		long  unit.Millimetre
		zones []unit.Millimetre
		over  unit.Millimetre
		want  unit.Millimetre
		ok    bool
	}{{0, nil, 0, 0, true}, {0.5, []unit.Millimetre{0.125}, 0.25, 0.125, true}, {0.5, []unit.Millimetre{0.25, -9}, 0, 0.25, true},
		{9, []unit.Millimetre{5, 5}, 1, 0, true}, {-0.5, nil, 1, 0, false}, {9, nil, -0.5, 0, false}, {9, []unit.Millimetre{1, nan},
			1, 0, false},
		{nan, nil, 1, 0, false}, {9, nil, nan, 0, false}} {
		if got, ok := cut.LaidLength(c.long, c.zones, c.over); got != c.want || ok != c.ok {
			t.Errorf("%+v: %v %v", c, got, ok)
		}
	}
	for _, c := range []struct {
		laid, lay unit.Millimetre
		want      unit.Ratio
		ok        bool
	}{{0, 5, 0, true}, {0.25, 0.5, 0.5, true}, {5, 0, 0, false}, {0, 0, 0, false}, {-0.5, 5, 0, false}, {5, -0.5, 0, false}, {nan,
		5, 0, false}} {
		if got, ok := cut.Turns(c.laid, c.lay); got != c.want || ok != c.ok {
			t.Errorf("%v over %v: %v %v", c.laid, c.lay, got, ok)
		}
	}
}
