package run_test

import (
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	runquery "contralay/calc/query/run"
	"contralay/model/unit"
)

// A centre that is built up to 4.0 mm is as the sheet has it up to half a turn of tape to either side, that very figure among it, and not a
// thousandth beyond. The tape is 0.1 mm thick, so half a turn is 0.1 on the diameter.
func TestBuiltUpToItsEdge(t *testing.T) {
	s := calc.Build(calctest.Load(t, "built-up.toml"), calctest.Catalogue(t), nil)
	all := runquery.Run(s)
	up := all[slices.IndexFunc(all, func(r runquery.RunStep) bool { return r.Key == "build up T1" })]
	e, ok := runquery.Explain(s, nil, 0, up, []unit.Millimetre{4})
	if !ok {
		t.Fatal("it is not explained")
	}
	calctest.Near(t, "least", float64(e.LeastMM), 3.9, 1e-9)
	calctest.Near(t, "most", float64(e.MostMM), 4.1, 1e-9)
	for read, want := range map[unit.Millimetre]runquery.Told{e.LeastMM: runquery.AsSheet, e.MostMM: runquery.AsSheet,
		e.LeastMM - 0.001: runquery.TooThin, e.MostMM + 0.001: runquery.TooThick} {
		if got, ok := runquery.Explain(s, nil, 0, up, []unit.Millimetre{read}); !ok || got.Told != want {
			t.Errorf("%v is told as %v, want %v", read, got.Told, want)
		}
	}
	for _, bad := range [][]unit.Millimetre{{0}, {-1}, nil} {
		if _, ok := runquery.Explain(s, nil, 0, up, bad); ok {
			t.Errorf("%v is explained", bad)
		}
	}
}
