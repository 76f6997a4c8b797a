package calc

import (
	"fmt"
	"math"

	"contralay/calc/lay"
	"contralay/model/unit"
)

// bend is what the branch can be bent to: the larger of 10 × its thickest
// component (AS50881 as quoted; TM 1-1500-204-23-4) and 6 × over (NASA
// workmanship sheet 4.03).
func (s *Sheet) bend(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	thick := unit.Millimetre(0)
	for _, l := range out.Layers {
		for _, m := range l.Members {
			thick = max(thick, m.D)
		}
	}
	out.Bend.MinMM, out.Bend.Rule = 10*thick, "10 x thickest component"
	if six := 6 * out.OverMM; six > out.Bend.MinMM {
		out.Bend.MinMM, out.Bend.Rule = six, "6 x over"
	}
	if !b.BendMM.Set {
		return
	}
	if b.BendMM.V < out.Bend.MinMM {
		s.say(Warn, "bend", b.ID, fmt.Sprintf("is bent to %s mm inside; %s mm is the least (%s)", unit.Fixed(float64(b.BendMM.V), 0), unit.Fixed(float64(out.Bend.MinMM), 0), out.Bend.Rule))
	}
	if !b.BendDeg.Set {
		return
	}
	axis := b.BendMM.V + out.OverMM/2
	for _, l := range out.Layers {
		for _, m := range l.Members {
			r := unit.Millimetre(math.Hypot(float64(m.X), float64(m.Y)))
			out.Bend.MismatchMM = max(out.Bend.MismatchMM, lay.Mismatch(r, l.LayMM, axis, b.BendDeg.V))
		}
	}
	out.Bend.MismatchKnown = true
}
