package protect

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// From 35 A on a small blade goes by the second table: it may open from its rating on, a smaller one from 1.10 of it on; so does a
// large one.
func TestWhereTheSecondTableBegins(t *testing.T) {
	for _, c := range []struct {
		d    Device
		want bool
	}{{Device{Kind: Blade, Rating: 30}, false}, {Device{Kind: Blade, Rating: 34.9}, false}, {Device{Kind: Blade, Rating: 35}, true},
		{Device{Kind: Blade, Rating: 38}, true}, {Device{Kind: Blade, Rating: 40}, true}, {Device{Kind: LargeBlade, Rating: 20}, true}} {
		least, _, _ := c.d.Opens(1.05 * c.d.Rating)
		if may := !math.IsInf(float64(least), 1); may != c.want {
			t.Errorf("%+v may open at 1.05 of its rating: %v", c.d, may)
		}
	}
	for k, want := range map[Kind]unit.Ampere{Blade: 13.5, LargeBlade: 13.5} {
		if got := (Device{Kind: k, Rating: 10}).NeedsToOpen(); math.Abs(float64(got-want)) > 1e-9 {
			t.Errorf("10 A of kind %d is sure to open from %v A on, want %v", k, got, want)
		}
	}
}
