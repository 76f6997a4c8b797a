package bundle

import (
	"fmt"

	"contralay/calc/sheet"
	"contralay/model/unit"
)

// FillerC is what filler of a diameter stands in branch i: filler off the shelf what the
// shop says, and no more than its plastic does; white wire off a reel of the branch what that
// wire does. known is false where neither tells.
func FillerC(s *sheet.Sheet, i int, d unit.Millimetre) (c unit.Celsius, what string, known bool) {
	if !sheet.Stocked(s, d) {
		for _, id := range s.Branches[i].Components {
			component, ok := s.Index.Component(id)
			if !ok || component.Unit {
				continue
			}
			if w := &s.Wires[component.At]; w.Known && w.Dia.Nominal-d < sheet.SameSize && d-w.Dia.Nominal < sheet.SameSize {
				return w.Entry.RatedC, "white " + s.H.Wires[component.At].Size, true
			}
		}
	}
	melts, does := Melts[s.Limits.FillerOf]
	switch {
	case !s.Limits.FillerC.Set:
		return melts, "stock", does
	case does:
		return min(s.Limits.FillerC.V, melts), "stock", true
	}
	return s.Limits.FillerC.V, "stock", true
}

// Melts is what a stock filler may be of, and where it melts: properties of the plastics
// as common practice has them, no source. Fluoropolymers, polyester and aramid stand the
// heat of any tube here.
var Melts = map[string]unit.Celsius{"polyethylene": 110, "polypropylene": 160, "nylon": 200}

// FillerMaterials are what rules.filler_of may say.
var FillerMaterials = []string{"fluoropolymer", "polyester", "aramid", "nylon", "polypropylene", "polyethylene"}

// sayFiller stops where filler stands less than the branch gets.
func sayFiller(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	for _, l := range out.Layers {
		if l.Fillers == 0 {
			continue
		}
		if c, _, known := FillerC(s, i, l.FillerMM); known && out.Ambient > c {
			s.Say(sheet.Stop, "filler.heat", b.ID, fmt.Sprintf("The filler of %s mm withstands %s C, and it gets %s C hot there",
				unit.Fixed(l.FillerMM, 2), unit.Fixed(c, 0), unit.Fixed(out.Ambient, 0)))
			return
		}
	}
}
