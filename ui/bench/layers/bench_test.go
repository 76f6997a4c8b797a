package layers_test

import (
	"testing"
	"time"

	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/layers"
)

// From a key that changes a branch of 38 pieces: until the first ways have their figures, and until every row that the
// table shows has. The works are run one after another, as the bench does.
func BenchmarkTableFills(b *testing.B) {
	m := benchtest.Open(b, "demo.toml")
	benchtest.Ways(m)
	m.Step = layers.Step
	benchtest.Ready(m)
	var first, all time.Duration
	for n := 0; b.Loop(); n++ {
		from := time.Now()
		layers.Shift(m, 1+n%2, 1-2*(n%2)) // one piece out, and in again
		cmd := m.Plan()
		for k := 0; cmd != nil; k++ {
			cmd = benchtest.Update(m, cmd())
			benchtest.View(m)
			if k == 0 {
				first += time.Since(from)
			}
			if !layers.Working(m) {
				break
			}
		}
		all += time.Since(from)
		clear(m.Pending)
	}
	b.ReportMetric(float64(first.Milliseconds())/float64(b.N), "first-ms")
	b.ReportMetric(float64(all.Milliseconds())/float64(b.N), "table-ms")
}

// A key that moves along the table, with the frame that follows.
func BenchmarkKeyOnTable(b *testing.B) {
	m := benchtest.Ways(benchtest.Open(b, "demo.toml"))
	m.Step = layers.Step
	benchtest.Ready(m)
	benchtest.OnRow(b, m, "as it is")
	for n := 0; b.Loop(); n++ {
		benchtest.Update(m, benchtest.Message([]string{"down", "up"}[n%2]))
		benchtest.View(m)
	}
}
