package runs_test

import (
	"strings"
	"testing"

	"contralay/calc/query/run"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
)

// The step before layer 1 says what is wound to what, takes what is measured before and after
// apart, and says how much tape is missing.
func TestBuildUpStep(t *testing.T) {
	m := runOf(t, "built-up.toml", run.LayStep)
	for _, k := range []string{"3", "enter"} {
		benchtest.Press(m, k)
	}
	if v := benchtest.View(m); !strings.Contains(v, "the sheet has 3.0") || strings.Contains(v, "TOO SMALL") {
		t.Errorf("3.0 before the tape:\n%s", v)
	}
	benchtest.Press(m, "enter")
	if s := runs.RunSteps(m)[runs.At(m)]; s.Kind != run.BuildUpStep {
		t.Fatalf("after the centre comes %s", s.Key)
	}
	if v := benchtest.View(m); !strings.Contains(v, "K1 built up to 4.0 with 1.00 mm of PTFE tape") ||
		!strings.Contains(v, "measured 3.00 before: the tape adds 1.00") {
		t.Errorf("what is to be done:\n%s", v)
	}
	for _, k := range []string{"3", ".", "6", "enter"} {
		benchtest.Press(m, k)
	}
	if v := benchtest.View(m); !strings.Contains(v, "TOO SMALL: wind more tape") || !strings.Contains(v, "0.40 to go") {
		t.Errorf("3.6 after it:\n%s", v)
	}
	benchtest.Press(m, "enter")
	if s := runs.RunSteps(m)[runs.At(m)]; s.Kind != run.BuildUpStep || !m.Trouble {
		t.Errorf("Enter went on at once, to %s", s.Key)
	}
	r := runs.Build(m).ReadingOf("T1", 0)
	if r == nil || len(r.BareMM) != 1 || len(r.OverMM) != 1 || r.BareMM[0] != 3 || r.OverMM[0] != 3.6 {
		t.Errorf("kept: %+v", r)
	}
}
