package sheet

import (
	"contralay/model/unit"
)

// Pair is what is worked out of a unit of two like wires as a line for signals. The zero value
// is a unit that is no such line, or of whose wires too little is known.
type Pair struct {
	Known    bool
	Ohm      unit.Ohm             // characteristic impedance, alone and without its shield
	Twist    unit.Degree          // too little for the formula, in a harness
	Loop     unit.OhmPerKilometre // both conductors, at 20 °C at most
	Shielded bool
	Bus      Bus
}

// Bus is the line a unit belongs to, over splices and shared cavities: its longest way
// from end to end, and what hangs on that.
type Bus struct {
	Known  bool
	Wire   int // the wire of the unit it was followed along
	MM     unit.Millimetre
	StubMM unit.Millimetre // the longest
	StubAt string          // where that ends
	AllMM  unit.Millimetre // of all stubs
	Way    [3][]int        // wires of the bus, of the longest stub, of all stubs
}
