package wires

import (
	"fmt"
	"maps"
	"slices"

	"contralay/calc/sheet"
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
			{p.LipRecMM, &b.LipRecoveredMM, &b.Read.LipRecovered}, {p.LipSupMM, &b.LipSuppliedMM, &b.Read.LipSupplied},
			{p.LengthMM, &b.LengthMM, &b.Read.Length}} {
			if v.read.Set {
				*v.size, *v.is = v.read.V, true
			}
		}
		out.Boots[p.ID] = b
	}
	return &out
}

// OnShelf is the catalogue a sheet is made by: that of the prior sheet where it is the same.
func OnShelf(h *model.Harness, cat *catalogue.Catalogue, prior *sheet.Sheet) *catalogue.Catalogue {
	if prior != nil && prior.H != nil && sheet.Shares(prior.H.Parts, h.Parts) && (prior.Base == cat || prior.Cat == cat) {
		return prior.Cat
	}
	if len(cat.Corrections) > 0 {
		cat = learnedWalls(cat)
	}
	return withParts(cat, h.Parts)
}

// SayParts tells what was read off a part that nobody knows.
func SayParts(s *sheet.Sheet) {
	for _, p := range s.H.Parts {
		t, tube := s.Cat.Tube(p.ID)
		b, boot := s.Cat.Boot(p.ID)
		switch {
		case !tube && !boot:
			s.Say(sheet.Warn, "part.none", p.ID, "What you typed off this part is not used: no tube or boot of the catalogue has that name")
		case tube && p.WallMM.Set && p.WallMM.V > MostWall(t):
			s.Say(sheet.Stop, "part.size", p.ID,
				fmt.Sprintf("You typed a wall of %s mm, and it recovers to %s mm: a wall of %s mm at most is accepted",
					unit.Fixed(p.WallMM.V, 2), unit.Fixed(t.RecoveredMM, 2), unit.Fixed(MostWall(t), 2)))
		case boot:
			if says, ok := Shrinks(b); !ok {
				s.Say(sheet.Stop, "part.size", p.ID, says)
			}
		}
	}
}

// MostWall is more than any tube's recovered wall is: half of the bore it recovers to, and
// a millimetre for the smallest.
func MostWall(t catalogue.Tube) unit.Millimetre { return t.RecoveredMM/2 + 1 }

// Shrinks is ok where each bore of a boot recovers to less than it is supplied with, as far
// as both are known; else it says which does not.
func Shrinks(b catalogue.Boot) (says string, ok bool) {
	for _, two := range []struct {
		where          string
		least, biggest unit.Millimetre
	}{{"cable", b.CableRecoveredMM, b.CableSuppliedMM}, {"connector", b.LipRecoveredMM, b.LipSuppliedMM}} {
		if two.least > 0 && two.biggest > 0 && two.least >= two.biggest {
			return fmt.Sprintf("At the %s it would shrink to %s mm from %s mm: the recovered bore must be the smaller one", two.where,
				unit.Fixed(two.least, 2), unit.Fixed(two.biggest, 2)), false
		}
	}
	return "", true
}
