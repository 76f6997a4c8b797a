package sheet

import (
	"contralay/calc/formula/cover"
	"contralay/model/unit"
)

// Passing is the largest thing a tube must get over on its way from the easier end.
type Passing struct {
	cover.Pass
	Over      string // what that is, in words
	StationMM unit.Millimetre
	AddMM     unit.Millimetre // covers of the branch it passes there
	BulgeMM   unit.Millimetre // and what stands out of the bundle there
	Lumped    bool            // it is the sorted zone of a breakout
	Ends      [2]bool         // it may come on from the branch's from end, from its to end
}
