package sheet

import (
	"strings"

	"contralay/calc/formula/protect"
	"contralay/model"
	"contralay/model/unit"
)

// Feed is what is worked out of a fuse or an electronic limit: what its wires carry, in amperes
// r.m.s., and what a short on them does. Near, Short and Far are 0 where they are not known.
type Feed struct {
	Device  model.Opt[protect.Device] // unset where it has no kind or no rating
	Load    unit.Ampere               // Σ of what its wires carry, r.m.s.
	Most    unit.Ampere               // what it may carry
	Outputs int                       // that are joined: each needs a leg of its own
	All     unit.Ampere               // rating × outputs
	Legs    []int                     // its wires
	Beyond  []int                     // wires that hang on them by splices, and on no feed of their own
	Back    []int                     // returns of all of these: a short comes back through them
	Near    unit.Ampere               // a short right behind it
	Short   unit.Ohm                  // of the supply, from short_a
	Far     []unit.Ampere             // a short at the far end of each of Legs, Beyond and Back; 0: not known
}

// Guard is the feed that protects a wire, and the current in amperes that the feed lets pass for
// ever. The zero value would be feed 0 at 0 A: a wire that nothing protects has none.
type Guard struct {
	Feed int         // feed; -1 where several join
	Amps unit.Ampere // what the wire must bear for ever
}

// Plain writes a number as short as it is.
func Plain(v float64) string {
	t := unit.Fixed(v, 3)
	return strings.TrimSuffix(strings.TrimRight(t, "0"), ".")
}
