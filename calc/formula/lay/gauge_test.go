package lay

import (
	"testing"

	"contralay/model/unit"
)

// A gauge is LayZigZag with less to keep: the same bits, on any bed, whatever it
// measured before.
func TestGaugeIsLayZigZag(t *testing.T) {
	rng := newRand(23)
	var g Gauge
	for range 400 {
		var up []unit.Millimetre
		for n := 1 + int(rng.between(0, 30)); n > 0; n-- {
			up = append(up, []unit.Millimetre{0.4, 1.09, 1.27, 1.73, 2.7}[int(rng.between(0, 5))])
		}
		sortUp(up)
		tape := unit.Millimetre(rng.between(1, 12))
		bed := Bed{Crown: tape * unit.Millimetre(rng.between(1, 1.1)), Tape: tape}
		how := Laying{Ratio: unit.Ratio(rng.between(8, 16)), Bind: unit.Millimetre(rng.between(0, 0.3))}
		want := LayZigZag(up, bed, how)
		if got := g.Bed(up, bed, how); got.Crown != want.Over || got.Tape != want.Tape {
			t.Errorf("%v on %v: %v, laid %v %v", up, bed, got, want.Over, want.Tape)
		}
		if got := g.Over(up, bed, how); got != want.Over {
			t.Errorf("%v on %v: over %v, laid %v", up, bed, got, want.Over)
		}
		if len(up) > 2 {
			lift := unit.Ratio(rng.between(0, 0.1))
			if got := g.Turn(up, bed, how, lift) <= twoPi; got != Closes(up, bed, how, lift) {
				t.Errorf("%v on %v: closes %v at lift %v, needs %v", up, bed, got, lift, want.Lift)
			}
		}
	}
}
