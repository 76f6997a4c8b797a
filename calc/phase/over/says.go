package over

import (
	"contralay/calc/sheet"
	"contralay/model/catalogue"
)

// Standing says once for each specification that its diameters rest on memory.
func Standing(s *sheet.Sheet) {
	seen := map[string]bool{}
	for i := range s.Wires {
		w := &s.Wires[i]
		if w.Dia.Standing == catalogue.Memory && !seen[s.H.Wires[i].Spec] {
			seen[s.H.Wires[i].Spec] = true
			s.SayLike(sheet.Note, "standing", s.H.Wires[i].Spec, "diameters",
				"Its diameters are from memory: measure the reels before you cut")
		}
	}
	for i := range s.Branches {
		for _, t := range Tubes(s, i) {
			if t.WallStanding == catalogue.Memory && !seen[t.ID] {
				seen[t.ID] = true
				s.SayLike(sheet.Note, "standing", t.ID, "wall", "Its wall is from memory: type it from the maker's sheet")
			}
		}
	}
}
