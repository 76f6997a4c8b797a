package bench_test

import (
	"strings"
	"testing"

	"contralay/ui/bench"

	"contralay/calc/phase/current"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
)

// Without colour a warmer wire has a higher digit in the section, and the key names each.
func TestTemperatureByDigits(t *testing.T) {
	m := benchtest.OpenAt(t, "feeds.toml", "wires")
	m.Change(m.H.EditWire(m.Sheet.Index.Wire["321"], func(w *model.Wire) { w.Amps = model.Some(unit.Ampere(14)) }), "")
	m = benchtest.Ready(m)
	bench.ByHeat(m)
	if v := benchtest.View(m); !strings.Contains(v, "1 ") || !strings.Contains(v, " C") {
		t.Errorf("no key of digits:\n%s", v)
	}
	last := map[string]float64{}
	_, b, _ := m.BranchHere()
	for _, d := range bench.Section(m, "").Discs {
		if c, ok := current.ConductorC(m.Sheet, m.Branch, d.ID); ok {
			if len(d.Label) != 1 || d.Label < "1" || d.Label > "8" {
				t.Errorf("%s at %.1f C is marked %q", d.ID, float64(c), d.Label)
			}
			last[d.Label] = max(last[d.Label], float64(c))
		}
	}
	for k := '2'; k <= '8'; k++ {
		if a, okA := last[string(k-1)]; okA {
			if c, okC := last[string(k)]; okC && c < a {
				t.Errorf("digit %c goes to %.1f C, %c to %.1f", k-1, a, k, c)
			}
		}
	}
	if len(last) < 2 {
		t.Errorf("one digit for all of %d layers", len(b.Layers))
	}
}
