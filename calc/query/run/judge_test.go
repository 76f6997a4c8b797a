package run_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	runquery "contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A judge of many layers has the same band for each as whoever asks of that layer alone, where a centre is built up
// among them, and where the shop has learned.
func TestJudgeIsAsEachAlone(t *testing.T) {
	for _, s := range judged(t) {
		b := &model.Build{Serial: "1", GoesBy: []string{"over, 2 layers: +3.0 %"}}
		j, n, told := runquery.NewJudge(s, b), 0, map[runquery.Told]int{}
		for _, r := range runquery.Run(s) {
			i, is := s.Index.Branch[r.Of]
			if !is || r.Kind != runquery.LayStep && r.Kind != runquery.BuildUpStep || r.Layer >= len(s.Branches[i].Layers) {
				continue
			}
			for _, by := range []unit.Millimetre{0.8, 0.97, 1, 1.03, 1.2} {
				read := []unit.Millimetre{s.Branches[i].Layers[r.Layer].BareMM() * by}
				one, ok := runquery.Explain(s, b, i, r, read)
				many, is := j.Explain(i, r, read)
				if ok != is || one.Told != many.Told || one.SheetMM != many.SheetMM || one.LeastMM != many.LeastMM ||
					one.MostMM != many.MostMM || one.ReadMM != many.ReadMM {
					t.Fatalf("%s, read %v: %+v, alone %+v", r.Key, read, many, one)
				}
				n, told[one.Told] = n+1, told[one.Told]+1
			}
		}
		if n < 5 || len(told) < 3 {
			t.Errorf("looked at %d readings: %v", n, told)
		}
		if _, ok := j.Explain(0, runquery.RunStep{Kind: runquery.LayStep}, nil); ok {
			t.Error("nothing read is judged")
		}
	}
}

func judged(t *testing.T) []*sheet.Sheet {
	demo := calctest.Laid(t, "example")
	return []*sheet.Sheet{calc.Build(runquery.Written(demo), demo.Base, demo),
		calc.Build(calctest.Load(t, "built-up.toml"), calctest.Catalogue(t), nil)}
}
