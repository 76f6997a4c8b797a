package calc

import (
	"maps"
	"slices"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

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
		for _, v := range []struct {
			read model.Opt[unit.Millimetre]
			size *unit.Millimetre
			is   *bool
		}{{p.CableRecMM, &b.CableRecoveredMM, &b.Read.CableRecovered}, {p.CableSupMM, &b.CableSuppliedMM, &b.Read.CableSupplied},
			{p.LipRecMM, &b.LipRecoveredMM, &b.Read.LipRecovered}, {p.LipSupMM, &b.LipSuppliedMM, &b.Read.LipSupplied}, {p.LengthMM, &b.LengthMM, &b.Read.Length}} {
			if v.read.Set {
				*v.size, *v.is = v.read.V, true
			}
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
