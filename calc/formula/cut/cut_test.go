package cut_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/cut"
	"contralay/model/unit"
)

// tol is for figures worked out by hand to a thousandth.
const tol = 5e-4

func near(t *testing.T, what string, got unit.Millimetre, want float64) {
	t.Helper()
	if !(math.Abs(float64(got)-want) <= tol) {
		t.Errorf("%s = %.4f, want %.4f", what, got, want)
	}
}

var (
	// The defaults of the shop rules: loops of 16 mm at an insert and 8 mm at a plain
	// end, tails of 100 and 75 mm, steps of 10 mm.
	bulkhead = cut.End{LoopMM: 16, TailMM: 100}
	injector = cut.End{LoopMM: 8, TailMM: 75}

	// 450 mm of trunk with one breakout: zone 25, over 5.4, so 450 − 30.4 = 419.6 laid.
	trunk = cut.Piece{LengthMM: 450, LaidMM: 419.6, Loss: 1.0151}
	// 120 mm of leg that runs straight.
	leg = cut.Piece{LengthMM: 120, LaidMM: 0, Loss: 1}
)

func TestOf(t *testing.T) {
	rows := []struct {
		name                string
		wire                cut.Wire
		path, finished, cut float64
	}{
		{
			// 419.6·1.0151 + 30.4 + 120 = 425.93596 + 150.4 = 576.336
			// + 16 + 8 = 600.336; + 175 = 775.336, up to 780
			"two branches",
			cut.Wire{Pieces: []cut.Piece{trunk, leg}, From: bulkhead, To: injector, StepMM: 10},
			576.336, 600.336, 780,
		},
		{
			// 576.33596·1.00853 = 581.25211; + 24 = 605.25211; + 175 + 100 = 880.252, up to 890.
			// The unit's loss counts in zones and in the straight leg too.
			"the same in a pair",
			cut.Wire{Pieces: []cut.Piece{trunk, leg}, InUnit: true, UnitLoss: 1.00853, From: bulkhead, To: injector, StepMM: 10},
			581.252, 605.252, 890,
		},
		{
			// Ends on a splice at the breakout, its sleeve 55 mm along a branch that is not
			// on the path: 456.33596 + 55 = 511.336; one loop of 16; 100 + 75; 702.336
			"to a splice that lies further on",
			cut.Wire{Pieces: []cut.Piece{trunk}, From: bulkhead, To: cut.End{TailMM: 75}, OffsetMM: 55, StepMM: 10},
			511.336, 527.336, 710,
		},
		{
			// From that splice down the leg its sleeve lies on: 120 − 55 = 65; + 8 = 73;
			// + 100 + 75 = 248, up to 250
			"from a splice that lies on the way",
			cut.Wire{Pieces: []cut.Piece{leg}, From: cut.End{TailMM: 100}, To: injector, OffsetMM: -55, StepMM: 10},
			65, 73, 250,
		},
		{
			// 65 + 8 + 177 = 250 exactly: no further step
			"on the step already",
			cut.Wire{Pieces: []cut.Piece{leg}, From: cut.End{TailMM: 102}, To: injector, OffsetMM: -55, StepMM: 10},
			65, 73, 250,
		},
		{
			"unrounded",
			cut.Wire{Pieces: []cut.Piece{trunk, leg}, From: bulkhead, To: injector},
			576.336, 600.336, 775.336,
		},
		{
			// Laid cannot be more than there is: 100·1.02 = 102
			"laid longer than its branch",
			cut.Wire{Pieces: []cut.Piece{{LengthMM: 100, LaidMM: 130, Loss: 1.02}}, StepMM: 1},
			102, 102, 102,
		},
		{
			// A unit's loss is read only where there is a unit.
			"unit loss without a unit",
			cut.Wire{Pieces: []cut.Piece{leg}, UnitLoss: 1.5},
			120, 120, 120,
		},
		{
			// A pair of splices at one breakout: no branch between them, a sleeve's way only.
			"no branch at all",
			cut.Wire{OffsetMM: 40, StepMM: 10, From: cut.End{TailMM: 100}, To: cut.End{TailMM: 75}},
			40, 40, 220,
		},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			got, ok := cut.Of(r.wire)
			if !ok {
				t.Fatal("no answer")
			}
			near(t, "path", got.PathMM, r.path)
			near(t, "finished", got.FinishedMM, r.finished)
			near(t, "cut", got.CutMM, r.cut)
		})
	}
}

func TestOfRefuses(t *testing.T) {
	nan := math.NaN()
	for name, w := range map[string]cut.Wire{
		"shorter than its branch":          {Pieces: []cut.Piece{{LengthMM: 100, LaidMM: 50, Loss: 0.99}}},
		"negative branch":                  {Pieces: []cut.Piece{{LengthMM: -1, Loss: 1}}},
		"negative laid":                    {Pieces: []cut.Piece{{LengthMM: 1, LaidMM: -1, Loss: 1}}},
		"loss that is no number":           {Pieces: []cut.Piece{{LengthMM: 1, Loss: unit.Ratio(nan)}}},
		"unit without a loss":              {Pieces: []cut.Piece{leg}, InUnit: true},
		"splice beyond the end of the leg": {Pieces: []cut.Piece{leg}, OffsetMM: -121},
		"negative loop":                    {Pieces: []cut.Piece{leg}, From: cut.End{LoopMM: -1}},
		"negative tail":                    {Pieces: []cut.Piece{leg}, To: cut.End{TailMM: -1}},
		"offset without end":               {Pieces: []cut.Piece{leg}, OffsetMM: unit.Millimetre(math.Inf(1))},
	} {
		if got, ok := cut.Of(w); ok || got != (cut.Length{}) {
			t.Errorf("%s: %+v", name, got)
		}
	}
}

func TestLaidLengthAndTurns(t *testing.T) {
	type mm = unit.Millimetre
	rows := []struct {
		name   string
		length mm
		zones  []mm
		over   mm
		laid   float64
		lay    mm
		turns  float64
	}{
		{"trunk, one breakout: 450 − (25 + 5.4)", 450, []mm{25}, 5.4, 419.6, 64.8, 419.6 / 64.8},
		{"between two breakouts: 300 − (25 + 6) − (30 + 6)", 300, []mm{25, 30}, 6, 233, 72, 233. / 72},
		{"between two terminations", 300, nil, 6, 300, 60, 5},
		{"shorter than its zones", 50, []mm{25, 25}, 4, 0, 48, 0},
		{"a zone below zero counts as none, its diameter does not", 100, []mm{-10}, 5, 95, 60, 95. / 60},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			laid, ok := cut.LaidLength(r.length, r.zones, r.over)
			if !ok {
				t.Fatal("no answer")
			}
			near(t, "laid", laid, r.laid)
			turns, ok := cut.Turns(laid, r.lay)
			if !ok || math.Abs(float64(turns)-r.turns) > 1e-12 {
				t.Errorf("turns = %g, %v; want %g", turns, ok, r.turns)
			}
		})
	}
	if _, ok := cut.LaidLength(-1, nil, 5); ok {
		t.Error("a branch of negative length is laid")
	}
	if _, ok := cut.LaidLength(100, []mm{25}, -5); ok {
		t.Error("a bundle of negative diameter is laid")
	}
	if _, ok := cut.Turns(100, 0); ok {
		t.Error("a lay of no length makes turns")
	}
}

func anything(t *rapid.T, name string) float64 {
	return rapid.OneOf(rapid.Float64Range(-10, 1e4), rapid.Float64(),
		rapid.SampledFrom([]float64{0, 1, math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64})).Draw(t, name)
}

func TestNothingReturnsNaNOrInf(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := func(name string) unit.Millimetre { return unit.Millimetre(anything(t, name)) }
		p := cut.Piece{LengthMM: mm("length"), LaidMM: mm("laid"), Loss: unit.Ratio(anything(t, "loss"))}
		w := cut.Wire{
			Pieces: []cut.Piece{p, leg}, InUnit: rapid.Bool().Draw(t, "unit"), UnitLoss: unit.Ratio(anything(t, "unit loss")),
			From: cut.End{LoopMM: mm("loop"), TailMM: mm("tail")}, To: injector, OffsetMM: mm("offset"), StepMM: mm("step"),
		}
		got, ok := cut.Of(w)
		laid, okLaid := cut.LaidLength(p.LengthMM, []unit.Millimetre{p.LaidMM, 25}, w.StepMM)
		turns, okTurns := cut.Turns(p.LaidMM, p.LengthMM)
		for what, v := range map[string]float64{
			"path": float64(got.PathMM), "finished": float64(got.FinishedMM), "cut": float64(got.CutMM),
			"laid": float64(laid), "turns": float64(turns),
		} {
			if !unit.Finite(v) || v < 0 {
				t.Fatalf("%s = %g", what, v)
			}
		}
		if !ok && got != (cut.Length{}) || !okLaid && laid != 0 || !okTurns && turns != 0 {
			t.Fatal("refused, but returned something")
		}
	})
}

func TestCutHoldsWhatIsNeeded(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
		w := cut.Wire{
			Pieces: []cut.Piece{{
				LengthMM: unit.Millimetre(draw("length", 10, 3000)),
				LaidMM:   unit.Millimetre(draw("laid", 0, 3000)),
				Loss:     unit.Ratio(draw("loss", 1, 1.1)),
			}},
			From: bulkhead, To: injector, StepMM: 10,
		}
		got, ok := cut.Of(w)
		if !ok {
			t.Fatal("no answer")
		}
		// 1e-5 of a step is what rounding up forgives, and no person measures it.
		if short := got.FinishedMM + 175 - got.CutMM; short > 1e-4 {
			t.Fatalf("cut %g is %g short", got.CutMM, short)
		}
		if got.CutMM >= got.FinishedMM+175+10 {
			t.Fatalf("cut %g wastes a whole step", got.CutMM)
		}
		if got.PathMM < w.Pieces[0].LengthMM-1e-9 {
			t.Fatalf("path %g is shorter than its branch", got.PathMM)
		}
		w.InUnit, w.UnitLoss = true, unit.Ratio(draw("unit loss", 1, 1.1))
		if unit, ok := cut.Of(w); !ok || unit.CutMM < got.CutMM+100 {
			t.Fatalf("in a unit %g, outside %g", unit.CutMM, got.CutMM)
		}
	})
}

func ExampleOf() {
	laid, _ := cut.LaidLength(450, []unit.Millimetre{25}, 5.4)
	l, _ := cut.Of(cut.Wire{
		Pieces: []cut.Piece{{LengthMM: 450, LaidMM: laid, Loss: 1.0151}, {LengthMM: 120, Loss: 1}},
		From:   cut.End{LoopMM: 16, TailMM: 100},
		To:     cut.End{LoopMM: 8, TailMM: 75},
		StepMM: 10,
	})
	fmt.Printf("cut %.0f, finished %.0f mm\n", l.CutMM, l.FinishedMM)
	// Output: cut 780, finished 600 mm
}

func ExampleTurns() {
	turns, _ := cut.Turns(419.6, 64.8)
	fmt.Printf("%.1f turns\n", turns)
	// Output: 6.5 turns
}
