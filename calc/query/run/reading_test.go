package run_test

import (
	"math"
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	runquery "contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
)

// Nineteen of 22 AWG, 1.04 to 1.14, laid 1 · 6 · 12: after layer 1 the sheet has 3.3. A
// reading of 3.45 is what wire at the top of its tolerance gives; layer 2 stays at 12 and
// nothing is moved.
func TestReadingIsExplained(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", "")
	was := s.H
	e, ok := runquery.ExplainReading(s, nil, 0, 1, []unit.Millimetre{3.45})
	t.Logf("%+v", e)
	if !ok || e.Told != runquery.AsWire || !e.Top || e.NextHolds != 12 || e.NextTakes < 12 {
		t.Errorf("%v %+v", ok, e)
	}
	if unit.Fixed(e.SheetMM, 1) != "3.3" || unit.Fixed(e.AsIfMM, 2) != "1.14" {
		t.Errorf("the sheet has %v, as if the wire were %v", e.SheetMM, e.AsIfMM)
	}
	if s.H != was {
		t.Error("the harness was changed")
	}
	for read, want := range map[unit.Millimetre]runquery.Told{3.28: runquery.AsSheet, 3.9: runquery.TooThick, 2.9: runquery.TooThin,
		3.15: runquery.AsWire} {
		if e, ok := runquery.ExplainReading(s, nil, 0, 1, []unit.Millimetre{read}); !ok || e.Told != want {
			t.Errorf("%v: %+v", read, e)
		}
	}
	two, _ := runquery.ExplainReading(s, nil, 0, 1, []unit.Millimetre{3.40, 3.50})
	if math.Abs(float64(two.ReadMM)-3.45) > 1e-12 || two.HighMM != 3.50 {
		t.Errorf("mean %v, highest %v", two.ReadMM, two.HighMM)
	}
	for _, bad := range [][]unit.Millimetre{nil, {0}, {-1}, {unit.Millimetre(math.NaN())}, {unit.Millimetre(math.Inf(1))}} {
		if e, ok := runquery.ExplainReading(s, nil, 0, 1, bad); ok {
			t.Errorf("%v was explained: %+v", bad, e)
		}
	}
	for _, at := range [][2]int{{-1, 0}, {1, 0}, {0, 3}, {0, -1}} {
		if _, ok := runquery.ExplainReading(s, nil, at[0], at[1], []unit.Millimetre{3}); ok {
			t.Errorf("%v is there", at)
		}
	}
}

// A bundle that comes out too thick for its sheath says so at the first layer that shows
// it, and names a tube that does.
func TestReadingAndSheath(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", calctest.CoverText("sheath", "  part = \"AS23053/16 6.4\"\n"))
	e, ok := runquery.ExplainReading(s, nil, 0, 1, []unit.Millimetre{3.9})
	if !ok || e.Sheath != "AS23053/16 6.4" || e.SheathFits || e.OtherSheath == "" {
		t.Errorf("%+v", e)
	}
	if e, _ := runquery.ExplainReading(s, nil, 0, 1, []unit.Millimetre{3.28}); !e.SheathFits || e.OtherSheath != "" {
		t.Errorf("as the sheet has it: %+v", e)
	}
}

// Every step of a run has a key of its own, everything of the harness has its step, holds
// stand between what they part, and nothing is shrunk before it is threaded on.
func TestRunIsWhole(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "feeds", "example") {
		s := calctest.Laid(t, name)
		h := runquery.Written(s)
		n := calc.Build(h, s.Base, s)
		for i := range n.Branches {
			if n.Branches[i].Proposed && len(n.Branches[i].Layers) > 0 || n.Branches[i].OverMM != s.Branches[i].OverMM {
				t.Errorf("%s: %s is still proposed, or changed", name, h.Branches[i].ID)
			}
		}
		run := runquery.Run(n)
		at := map[string]int{}
		cut, layers := 0, 0
		for k, r := range run {
			if _, twice := at[r.Key]; twice || r.Key == "" {
				t.Errorf("%s: key %q twice", name, r.Key)
			}
			at[r.Key] = k
			cut += len(r.Cut.Wires)
			if r.Kind == runquery.LayStep {
				layers++
			}
			if r.Kind == runquery.ShrinkStep {
				if p, ok := at["thread "+r.Key[len("shrink "):]]; !ok || p > k {
					t.Errorf("%s: %s comes before it is threaded on", name, r.Key)
				}
			}
		}
		want, wires := 0, 0
		for i := range n.Branches {
			want += len(n.Branches[i].Layers)
		}
		for i := range n.Wires {
			if n.Wires[i].Cut > 0 {
				wires++
			}
		}
		if layers != want || cut != wires {
			t.Errorf("%s: %d layers of %d, %d wires of %d", name, layers, want, cut, wires)
		}
		holds := []int{at[runquery.HoldBare], at[runquery.HoldPinned], at[runquery.HoldFit], at[runquery.HoldLoaded]}
		if !slices.IsSorted(holds) {
			t.Errorf("%s: holds at %v", name, holds)
		}
		for k, r := range run {
			switch {
			case (r.Kind == runquery.LayStep || r.Kind == runquery.CutStep || r.Kind == runquery.JoinStep || r.Kind == runquery.MakeStep) &&
				k > holds[0],
				(r.Kind == runquery.ThreadStep || r.Kind == runquery.PinStep) && (k < holds[0] || k > holds[1]),
				(r.Kind == runquery.ShrinkStep || r.Kind == runquery.GlueStep) && (k < holds[2] || k > holds[3]):
				t.Errorf("%s: %s stands at %d, holds at %v", name, r.Key, k, holds)
			}
		}
	}
	var none model.Harness
	if run := runquery.Run(calc.Build(&none, calctest.Laid(t, "demo").Cat, nil)); len(run) != 4 {
		t.Errorf("of nothing: %v", run)
	}
}
