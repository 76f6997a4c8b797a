package pair

import (
	"strconv"
	"testing"

	"contralay/model/typedtest"
	"contralay/model/unit"
)

// TestBusTypedTwice compares what a bus wants of its pair, the lengths by bit rate and the
// permittivities with the tables typed by another hand. Of the lengths of three makers those of
// the first are used, which are neither the longest nor the shortest.
func TestBusTypedTwice(t *testing.T) {
	bus := typedtest.Must(t, "can")
	for _, c := range []struct {
		row, column string
		got         float64
	}{{"impedance ohm", "least", float64(LeastOhm)}, {"impedance ohm", "most", float64(MostOhm)},
		{"resistance mohm/m", "nominal", float64(ConductorMax)}} {
		if want, ok := bus.Number(c.row, c.column); !ok || c.got != want {
			t.Errorf("%s, %s: %v, typed %v", c.row, c.column, c.got, want)
		}
	}
	lengths, n := typedtest.Must(t, "can_length"), 0
	for _, row := range lengths.Rows {
		want, ok := lengths.Number(row, "a_m")
		if !ok {
			continue
		}
		rate, _ := strconv.ParseFloat(row, 64)
		l, _ := At(unit.KilobitPerSec(rate))
		stub, has := lengths.Number(row, "stub_a_m")
		if n++; float64(l.Bus) != want*1000 || has && float64(l.Stub) != stub*1000 {
			t.Errorf("%s kbit/s: %v and %v mm, typed %v and %v m", row, l.Bus, l.Stub, want, stub)
		}
	}
	if n != len(rates) {
		t.Errorf("%d rates, %d here", n, len(rates))
	}
	values := typedtest.Must(t, "permittivity")
	for row, name := range map[string]string{"ETFE": "cross-linked ETFE, light wall", "PTFE": "PTFE", "PE": "cross-linked polyethylene"} {
		want, _ := values.Number(row, "value")
		if got, _, ok := Permittivity(name); !ok || float64(got) != want {
			t.Errorf("%s: %v, typed %v", row, got, want)
		}
	}
}
