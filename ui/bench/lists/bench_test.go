package lists_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/ui/bench/benchtest"
)

// A list of 20,000 rows: from a key that changes what a column means to the page with its wires.
func BenchmarkColumnOfALargeList(b *testing.B) {
	var list strings.Builder
	list.WriteString("Wire,From,To,AWG,Colour\n")
	for n := range 20_000 {
		fmt.Fprintf(&list, "%d,P%d:%d,J%d:%d,22,red\n", n+1, n/50, n%50+1, n/50, n%50+1)
	}
	m := benchtest.Open(b, "example.toml")
	m.Cfg.ListBytes = func(string) ([]byte, error) { return []byte(list.String()), nil }
	if err := taken(m, "large.csv"); err != nil {
		b.Fatal(err)
	}
	for _, r := range m.Page(m.ListWidth()).Rows {
		if strings.HasPrefix(r.Key, "table ") {
			r.Enter(m)
			break
		}
	}
	b.Run("step", func(b *testing.B) {
		for b.Loop() {
			for _, r := range m.Page(m.ListWidth()).Rows {
				if strings.Contains(r.Line(), "column Colour") {
					r.Step(m, 1)
					break
				}
			}
			benchtest.View(m)
		}
	})
	b.Run("down", func(b *testing.B) {
		for b.Loop() {
			benchtest.Press(m, "down")
			benchtest.View(m)
		}
	})
}
