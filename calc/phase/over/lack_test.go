package over

import (
	"testing"

	"contralay/model/unit"
)

// A bore that is too small by less than is printed is not said to be too small by nothing.
func TestLackIsNeverNothing(t *testing.T) {
	for v, want := range map[unit.Millimetre]string{0.0001: "under 0.01", 0.0049: "under 0.01", 0.006: "0.01", 1.234: "1.23"} {
		if got := lack(v); got != want {
			t.Errorf("%v: %q, want %q", v, got, want)
		}
	}
}
