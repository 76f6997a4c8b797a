package sheet

import (
	"strings"

	"contralay/calc/formula/protect"
	"contralay/model/unit"
)

// Feed is what is worked out of a protective device.
type Feed struct {
	Device  protect.Device
	Known   bool          // it has a kind and a rating
	Load    unit.Ampere   // Σ of what its wires carry, r.m.s.
	Most    unit.Ampere   // what it may carry
	Outputs int           // that are joined: each needs a leg of its own
	All     unit.Ampere   // rating × outputs
	Legs    []int         // its wires
	Beyond  []int         // wires that hang on them by splices, and on no feed of their own
	Back    []int         // returns of all of these: a short comes back through them
	Near    unit.Ampere   // a short right behind it
	Short   unit.Ohm      // of the supply, from short_a
	Far     []unit.Ampere // a short at the far end of each of Legs, Beyond and Back; 0: not known
}

// Guard is what protects a wire.
type Guard struct {
	By   int         // feed; -1 where several join
	Amps unit.Ampere // what the wire must bear for ever
}

// Plain writes a number as short as it is.
func Plain(v float64) string {
	t := unit.Fixed(v, 3)
	return strings.TrimSuffix(strings.TrimRight(t, "0"), ".")
}
