package length

import (
	"math"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Weigh adds up wire, units and fillers of each branch, and the whole.
func Weigh(s *sheet.Sheet) {
	s.Totals.Gram = model.Some[unit.Gram](0)
	for i := range s.Branches {
		out := &s.Branches[i]
		whole := s.H.Branches[i].LengthMM
		known, total := len(out.Layers) > 0 && s.H.Branches[i].Measured(), 0.0
		for _, l := range out.Layers {
			for _, m := range l.Members {
				long := float64(out.LaidMM)*float64(m.Loss) + float64(whole-out.LaidMM)
				g := GramPerM(s, m, l)
				known = known && g > 0
				total += float64(g) * long / 1000
			}
			s.Totals.Fillers += l.Fillers
		}
		out.Gram = model.Opt[unit.Gram]{V: unit.Gram(total), Set: known}
		s.Totals.Gram.Set = s.Totals.Gram.Set && (out.Gram.Set || len(out.Components) == 0)
		s.Totals.Gram.V += out.Gram.V
	}
	s.Totals.Wires, s.Totals.Units = len(s.H.Wires), len(s.H.Units)
	for i := range s.H.Wires {
		if s.H.Wires[i].Role.V == model.RoleSpare {
			s.Totals.Spares++
		}
		s.Totals.WireMM += s.Wires[i].Cut
	}
}

// fillerDensity is that of a solid ETFE rod, 1.70 g/cm³ (a polymer maker's
// ETFE sheet). A filler of a wire's own size is that wire, unless it comes off the shelf.
const fillerDensity = 1.70

// GramPerM is the mass of a member of a layer along itself; 0 where it is not known.
func GramPerM(s *sheet.Sheet, m sheet.Member, l sheet.Layer) unit.GramPerMetre {
	if m.Kind == sheet.OfFiller {
		for _, o := range l.Members {
			if c, ok := s.Index.Component(o.ID); ok && !c.Unit && !sheet.Stocked(s, m.D) &&
				math.Abs(float64(o.D-m.D)) < float64(sheet.SameSize) {
				return s.Wires[c.At].GramPerM
			}
		}
		return unit.GramPerMetre(fillerDensity * math.Pi / 4 * float64(m.D) * float64(m.D))
	}
	c, ok := s.Index.Component(m.ID)
	switch {
	case !ok:
		return 0
	case c.Unit:
		return unitGramPerM(s, c.At)
	}
	return s.Wires[c.At].GramPerM
}

// unitGramPerM is the mass of a unit: its wires with their lay loss, and where it
// is shielded the ring of braid and jacket.
func unitGramPerM(s *sheet.Sheet, i int) unit.GramPerMetre {
	// Braid and jacket together, half metal by volume at best. From memory, not
	// verified; it weighs some 3 g/m on a small pair.
	const braidAndJacket = 2.5
	total := 0.0
	for _, id := range s.H.Units[i].Wires {
		if k, ok := s.Index.Wire[id]; ok {
			total += float64(s.Wires[k].GramPerM) * float64(s.Units[i].Loss)
		}
	}
	if s.H.Units[i].Shield.V && s.Units[i].BareMM > 0 {
		o, b := float64(s.Units[i].Dia.Nominal), float64(s.Units[i].BareMM)
		total += braidAndJacket * math.Pi / 4 * math.Max(0, o*o-b*b)
	}
	return unit.GramPerMetre(total)
}
