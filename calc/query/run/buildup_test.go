package run_test

import (
	"math"
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/learn"
	runquery "contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
)

// A centre that is built up is laid, wound and only then laid round; it is measured before and
// after. K1 of the harness is 3.0 mm, its tape adds 1.0: 4.0 mm.
func TestCentreIsBuiltUpInTheRun(t *testing.T) {
	s := calc.Build(calctest.Load(t, "built-up.toml"), calctest.Catalogue(t), nil)
	run := runquery.Run(s)
	at := func(key string) int {
		return slices.IndexFunc(run, func(r runquery.RunStep) bool { return r.Key == key })
	}
	lay, up, next := at("lay T1 0"), at("build up T1"), at("lay T1 1")
	if lay < 0 || up != lay+1 || next != up+1 {
		t.Fatalf("steps %d, %d, %d", lay, up, next)
	}
	for _, c := range []struct {
		step int
		read unit.Millimetre
		told runquery.Told
		of   unit.Millimetre
	}{
		{lay, 3.0, runquery.AsSheet, 3},
		{lay, 3.2, runquery.TooThick, 3},
		{lay, 4.0, runquery.TooThick, 3},
		{up, 4.0, runquery.AsSheet, 4},
		{up, 4.09, runquery.AsSheet, 4}, // half a turn of tape of 0.1 mm
		{up, 4.2, runquery.TooThick, 4},
		{up, 3.0, runquery.TooThin, 4},
	} {
		e, ok := runquery.Explain(s, nil, 0, run[c.step], []unit.Millimetre{c.read})
		if !ok || e.Told != c.told || math.Abs(float64(e.SheetMM-c.of)) > 1e-9 {
			t.Errorf("%s, read %v: %+v", run[c.step].Key, c.read, e)
		}
	}
	if _, ok := runquery.Explain(s, nil, 0, run[up], nil); ok {
		t.Error("nothing read is explained")
	}
}

// What is read before the tape teaches the shop about the centre; what is read after it was wound
// until it was right teaches nothing. Each is judged by the diameter of its own.
func TestReadingsOfABuiltUpCentre(t *testing.T) {
	with := func(bare, over []unit.Millimetre) *model.Harness {
		return calctest.Load(t, "built-up.toml").EditBuild("1", func(b *model.Build) {
			b.Readings = []model.Reading{{Branch: "T1", BareMM: bare, OverMM: over}}
		})
	}
	said := func(h *model.Harness) int {
		n := 0
		for _, g := range calc.Build(h, calctest.Catalogue(t), nil).Snags {
			if g.Rule == "built.over" {
				n++
			}
		}
		return n
	}
	mm := func(v ...unit.Millimetre) []unit.Millimetre { return v }
	for _, c := range []struct {
		bare, over []unit.Millimetre
		want       int
	}{{mm(3.0), mm(4.0), 0}, {nil, mm(4.05), 0}, {mm(2.95), nil, 0}, {mm(4.0), nil, 1}, {nil, mm(3.0), 1}, {mm(2.5), mm(5), 2}} {
		if got := said(with(c.bare, c.over)); got != c.want {
			t.Errorf("before %v, after %v: %d warnings, want %d", c.bare, c.over, got, c.want)
		}
	}
	var got []learn.Reading
	for _, r := range runquery.Measured(calc.Build(with(mm(3.06), mm(4.0)), calctest.Catalogue(t), nil), "file") {
		if r.Group == "over, 1 layer" {
			got = append(got, r)
		}
	}
	if len(got) != 1 || math.Abs(got[0].Predicted-3) > 1e-9 || math.Abs(got[0].Measured-3.06) > 1e-9 {
		t.Errorf("learned from %+v", got)
	}
}
