package wires

import (
	"slices"

	"contralay/model/catalogue"
	"contralay/model/unit"
)

// learnedWalls is the catalogue with the walls of each kind of tube as the shop measured
// them; the same where it measured none. What was read off a reel stands over it.
func learnedWalls(cat *catalogue.Catalogue) *catalogue.Catalogue {
	walls := map[string]catalogue.Correction{}
	for _, t := range cat.Tubes {
		if _, met := walls[t.Kind]; !met {
			if c, ok := cat.Correction("wall, " + t.Kind); ok {
				walls[t.Kind] = c
			}
		}
	}
	if len(walls) == 0 {
		return cat
	}
	out := *cat
	out.Tubes = slices.Clone(cat.Tubes)
	for k := range out.Tubes {
		if c, ok := walls[out.Tubes[k].Kind]; ok {
			out.Tubes[k].WallMM *= unit.Millimetre(1 + c.Bias)
			out.Tubes[k].WallStanding = catalogue.House
		}
	}
	return &out
}
