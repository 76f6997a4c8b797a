package runs_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/query/run"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
)

// On the lowest screen, too, a piece that is laid has its neighbours, and the tracer that one starts with
// it at the key; nothing is scrolled for that.
func TestLowScreenHasNeighbours(t *testing.T) {
	m := runOf(t, "demo.toml", run.CutStep)
	benchtest.Size(m, 40, 12)
	tracers, looked := 0, 0
	for at, s := range runs.RunSteps(m) {
		if s.Kind != run.LayStep {
			continue
		}
		all := runs.Pieces(m, at)
		for k, p := range all {
			runs.Stand(m, at, k)
			screen := benchtest.View(m)
			l, _ := runs.LayerAt(m, s)
			var want []string
			if s.Layer > 0 && l.Tracer != "" && l.Members[0].ID == l.Tracer && k == 0 {
				tracers++
				want = append(want, "tracer: start at the key")
			} else if k > 0 {
				want = append(want, all[k-1].ID+" <")
			}
			switch {
			case k > 0 && k+1 < len(all):
				want = append(want, "< > "+all[k+1].ID)
			case k+1 < len(all):
				want = append(want, "then "+all[k+1].ID)
			}
			for _, text := range want {
				if looked++; !strings.Contains(screen, text) {
					t.Fatalf("%s, %s: no %q on\n%s", s.Key, p.Key, text, screen)
				}
			}
			if !strings.Contains(screen, fmt.Sprintf("%d of %d", k+1, len(all))) {
				t.Fatalf("%s, %s: which of how many is not on\n%s", s.Key, p.Key, screen)
			}
		}
	}
	if tracers < 3 || looked < 200 {
		t.Errorf("%d tracers, %d looked at", tracers, looked)
	}
}
