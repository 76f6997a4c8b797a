package over

import (
	"fmt"

	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// sayRecovery stops where a stock filler melts under the heat that the sheath is shrunk
// with. Wire of 150 °C under a tube that recovers at 175 °C is sound: it is hot for
// minutes; what melts is gone at once.
func sayRecovery(s *sheet.Sheet, i int) {
	out := &s.Branches[i]
	what := s.Limits.FillerOf
	most, does := bundle.Melts[what]
	var hot laidTube
	for _, t := range Tubes(s, i) {
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
		if _, kind, _ := bundle.FillerC(s, i, l.FillerMM); kind == "stock" {
			s.SayLike(sheet.Stop, "filler.melts", s.H.Branches[i].ID, what,
				fmt.Sprintf("Its %s filler melts at about %s C, and %s is shrunk at %s C: use fluoropolymer, polyester, or white wire",
					what,
					unit.Fixed(most, 0), hot.Kind, unit.Fixed(hot.RecoveryC, 0)))
			return
		}
	}
}

// FillerStands is what the filler off the shelf in a branch stands, that which stands the
// least; false where there is none, or what it stands is not known.
func FillerStands(s *sheet.Sheet, i int) (least unit.Celsius, any bool) {
	for _, l := range s.Branches[i].Layers {
		if l.Fillers == 0 {
			continue
		}
		if c, kind, known := bundle.FillerC(s, i, l.FillerMM); known && kind == "stock" && (!any || c < least) {
			least, any = c, true
		}
	}
	return least, any
}
