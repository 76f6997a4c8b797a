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

// melts is what a stock filler may be of, and where it melts: properties of the plastics
// as common practice has them, no source. Fluoropolymers, polyester and aramid stand the
// heat of any tube here.
var melts = map[string]unit.Celsius{"polyethylene": 110, "polypropylene": 160, "nylon": 200}

// FillerMaterials are what rules.filler_of may say.
var FillerMaterials = []string{"fluoropolymer", "polyester", "aramid", "nylon", "polypropylene", "polyethylene"}

// sayRecovery stops where a stock filler melts under the heat that the sheath is shrunk
// with. Wire of 150 °C under a tube that recovers at 175 °C is sound: it is hot for
// minutes; what melts is gone at once.
func (s *Sheet) sayRecovery(i int) {
	out := &s.Branches[i]
	what := s.Limits.FillerOf
	most, does := melts[what]
	var hot laidTube
	for _, t := range s.tubes(i) {
		if t.RecoveryC > hot.RecoveryC {
			hot = t
		}
	}
	if !does || hot.RecoveryC <= most {
		return
	}
	for _, l := range out.Layers {
		if l.Fillers == 0 {
			continue
		}
		if _, kind, _ := s.FillerC(i, l.FillerMM); kind == "stock" {
			s.sayLike(Stop, "filler.melts", s.H.Branches[i].ID, what, fmt.Sprintf("its %s filler melts at some %s C, and %s is shrunk at %s: lay fluoropolymer or polyester, or white wire", what, unit.Fixed(float64(most), 0), hot.Kind, unit.Fixed(float64(hot.RecoveryC), 0)))
			return
		}
	}
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
