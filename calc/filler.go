package calc

import (
	"fmt"

	"contralay/model/unit"
)

// SameSize is the difference below which two diameters are one size: half the last
// place a reel is measured to.
const SameSize unit.Millimetre = 0.005

// FillerC is what filler of a diameter stands in branch i: white wire off a reel of
// the branch stands what that wire does, filler off the shelf what the shop says.
// known is false where neither tells.
func (s *Sheet) FillerC(i int, d unit.Millimetre) (c unit.Celsius, what string, known bool) {
	for _, id := range s.Branches[i].Components {
		at, ok := s.X.Component(id)
		if !ok || at.Unit {
			continue
		}
		if w := &s.Wires[at.At]; w.Known && w.Dia.Nominal-d < SameSize && d-w.Dia.Nominal < SameSize {
			return w.Entry.RatedC, "white " + s.H.Wires[at.At].Size, true
		}
	}
	return s.Limits.FillerC.V, "stock", s.Limits.FillerC.Set
}

// sayFiller stops where filler stands less than the branch gets.
func (s *Sheet) sayFiller(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	for _, l := range out.Layers {
		if l.Fillers == 0 {
			continue
		}
		if c, _, known := s.FillerC(i, l.FillerMM); known && out.Ambient > c {
			s.say(Stop, "filler.heat", b.ID, fmt.Sprintf("its filler of %s mm stands %s C, and it is %s C hot there", unit.Fixed(float64(l.FillerMM), 2), unit.Fixed(float64(c), 0), unit.Fixed(float64(out.Ambient), 0)))
			return
		}
	}
}
