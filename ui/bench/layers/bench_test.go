package layers_test

import (
	"slices"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"

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

// Keys that move along the table, each with its frame, while a change is worked out beside the screen. What a work brings in
// holds up the key behind it, so that counts as one.
func BenchmarkKeyWhileItFills(b *testing.B) {
	m := benchtest.Open(b, "demo.toml")
	benchtest.Ways(m)
	m.Step = layers.Step
	benchtest.Ready(m)
	benchtest.OnRow(b, m, "as it is")
	var keys []time.Duration
	timed := func(msg tea.Msg) tea.Cmd {
		from := time.Now()
		cmd := benchtest.Update(m, msg)
		benchtest.View(m)
		keys = append(keys, time.Since(from))
		return cmd
	}
	for n := 0; b.Loop(); n++ {
		layers.Shift(m, 1+n%2, 1-2*(n%2))
		for cmd := m.Plan(); cmd != nil && layers.Working(m); {
			done, work := make(chan tea.Msg, 1), cmd
			go func() { done <- work() }()
			for cmd = nil; cmd == nil; {
				select {
				case msg := <-done:
					if cmd = timed(msg); cmd == nil {
						cmd = m.Plan()
					}
				case <-time.After(5 * time.Millisecond):
					timed(benchtest.Message([]string{"down", "up"}[len(keys)%2]))
				}
				if !layers.Working(m) {
					break
				}
			}
		}
		clear(m.Pending)
	}
	slices.Sort(keys)
	for name, share := range map[string]float64{"p50-ms": 0.5, "p95-ms": 0.95} {
		b.ReportMetric(float64(keys[int(share*float64(len(keys)-1))].Microseconds())/1000, name)
	}
}
