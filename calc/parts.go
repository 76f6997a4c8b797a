package calc

import (
	"maps"
	"slices"

	"contralay/model"
	"contralay/model/catalogue"
)

// readOff is where a value comes from that somebody read off the part in hand.
var readOff = catalogue.Origin{Source: "read off the part, given in the file", Standing: catalogue.House}

// withParts is the catalogue with what the file has read off parts in place of its own
// values; the same catalogue where it has nothing. cat is not changed.
func withParts(cat *catalogue.Catalogue, parts []model.Part) *catalogue.Catalogue {
	if len(parts) == 0 {
		return cat
	}
	out := *cat
	out.Tubes, out.Boots = slices.Clone(cat.Tubes), maps.Clone(cat.Boots)
	for _, p := range parts {
		for k := range out.Tubes {
			if t := &out.Tubes[k]; t.ID == p.ID && p.WallMM.Set {
				t.WallMM, t.WallStanding = p.WallMM.V, catalogue.House
			}
		}
		b, is := out.Boots[p.ID]
		if !is {
			continue
		}
		if b.LengthStanding == "" {
			b.LengthStanding = b.Standing
		}
		if len(p.CableMM) == 2 {
			b.CableRecoveredMM, b.CableSuppliedMM, b.Origin = p.CableMM[0], p.CableMM[1], readOff
		}
		if len(p.LipMM) == 2 {
			b.LipRecoveredMM, b.LipSuppliedMM = p.LipMM[0], p.LipMM[1]
		}
		if p.LengthMM.Set {
			b.LengthMM, b.LengthStanding = p.LengthMM.V, catalogue.House
		}
		out.Boots[p.ID] = b
	}
	return &out
}

// onShelf is the catalogue a sheet is made by: that of the prior sheet where it is the same.
func onShelf(h *model.Harness, cat *catalogue.Catalogue, prior *Sheet) *catalogue.Catalogue {
	if prior != nil && prior.H != nil && shares(prior.H.Parts, h.Parts) && (prior.base == cat || prior.Cat == cat) {
		return prior.Cat
	}
	return withParts(cat, h.Parts)
}

// sayParts tells what was read off a part that nobody knows.
func (s *Sheet) sayParts() {
	for _, p := range s.H.Parts {
		_, tube := s.Cat.Tube(p.ID)
		_, boot := s.Cat.Boot(p.ID)
		if !tube && !boot {
			s.say(Warn, "part.none", p.ID, "what was read off it helps nothing: no tube and no boot of the catalogue has that name")
		}
	}
}
