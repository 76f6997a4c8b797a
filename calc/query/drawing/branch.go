package drawing

import (
	"contralay/calc/phase/over"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// branch fills in what is known of a branch before it is laid on the board.
func (d *Drawing) branch(s *sheet.Sheet, i int) {
	b, mb, out := &s.Branches[i], &s.H.Branches[i], &d.Branches[i]
	*out = Branch{ID: mb.ID, LengthMM: mb.LengthMM, Measured: mb.Measured(), BundleMM: b.OverMM, WidthMM: over.Outermost(b)}
	if !out.Measured {
		out.LengthMM = unmeasured
	}
	if out.WidthMM <= 0 {
		out.WidthMM, out.Guess = thin, true
	}
	for end, place := range []string{mb.From, mb.To} {
		if k, ok := s.Index.Breakout[place]; ok {
			out.Zones[end] = min(s.H.Breakouts[k].ZoneMM.Or(s.Limits.ZoneMM), out.LengthMM/2)
		}
	}
	if out.Measured {
		out.Lay = laid(b, out)
		out.Covers = covers(b)
	}
	for _, v := range mb.Vias {
		radius := v.RadiusMM.Or(mb.BendMM.Or(b.Bend.MinMM) + b.OverMM/2)
		out.Bends = append(out.Bends, Bend{Station: v.AtMM, Turn: v.TurnDeg, Radius: radius})
	}
}

// laid is where the lay of a branch starts and stops: at a termination with the branch, at a
// breakout a diameter before its sorted zone.
func laid(b *sheet.Branch, out *Branch) [2]unit.Millimetre {
	if b.Make != model.MakeLaid && b.Make != model.MakeTwisted || b.LaidMM <= 0 {
		return [2]unit.Millimetre{}
	}
	lay := [2]unit.Millimetre{0, out.LengthMM}
	if out.Zones[0] > 0 {
		lay[0] = out.Zones[0] + b.OverMM
	}
	if out.Zones[1] > 0 {
		lay[1] -= out.Zones[1] + b.OverMM
	}
	return lay
}

// covers are the sheath and what else covers a branch, inside out.
func covers(b *sheet.Branch) []Cover {
	var out []Cover
	on := b.Sheath.Part == "" // it is on already, or there is none
	sheath := func() {
		if !on {
			out = append(out, Cover{string(model.CoverSheath), b.Sheath.Part, b.Sheath.FromMM, b.Sheath.ToMM, b.Sheath.Verdict.OverMM})
			on = true
		}
	}
	for _, c := range b.Covers {
		if !c.Under {
			sheath()
		}
		out = append(out, Cover{string(c.What), c.Part, c.FromMM, c.ToMM, c.OverMM})
	}
	sheath()
	return out
}
