package lists

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// TapeMM is how much tape takes a bundle from one diameter to another over a length, edge to
// edge: passes × turns of a pass × the mean circumference,
//
//	(D − d) / 2t  ×  L / w  ×  π (D + d) / 2  =  π (D² − d²) L / 4 t w
//
// D, d diameters after and before, t and w thickness and width of the tape, L length, all mm.
// Whoever laps it takes more. 0 where one of them is not above zero.
func TapeMM(after, before, length, thick, wide unit.Millimetre) unit.Millimetre {
	if !(after > before) || !(before >= 0) || !(length > 0) || !(thick > 0) || !(wide > 0) {
		return 0
	}
	return math.Pi / 4 * (after*after - before*before) * length / (thick * wide)
}

// billTape is the tape that binds layers, builds centres up and is wound over branches, by its name; how thick and wide it is
// says the shop, else it is from memory.
func billTape(s *sheet.Sheet) []BillRow {
	type use struct {
		long  unit.Millimetre
		where []string
		guess bool // some of it is as thick as memory says
	}
	used := map[string]*use{}
	var parts []string
	add := func(part string, long unit.Millimetre, where string, guess bool) {
		if used[part] == nil {
			used[part], parts = &use{}, append(parts, part)
		}
		u := used[part]
		u.long, u.where, u.guess = u.long+long, append(u.where, where), u.guess || guess
	}
	for i := range s.Branches {
		b := &s.Branches[i]
		for k := range b.Layers {
			if k >= len(b.As) || b.As[k].BindMM.V <= 0 {
				continue
			}
			l, bind := &b.Layers[k], b.As[k].BindMM.V
			where := "binder of " + s.H.Branches[i].ID + " layer " + fmt.Sprint(k)
			switch {
			case l.BuiltMM > 0:
				where = "centre of " + s.H.Branches[i].ID + " " + unit.Fixed(l.BareMM(), 1) + " to " + unit.Fixed(l.OverMM, 1) + " mm"
			case k == 0:
				where = "binder of " + s.H.Branches[i].ID
			}
			add(cmp.Or(b.As[k].BindPart.V, "as stocked"),
				TapeMM(l.OverMM, l.OverMM-bind, s.H.Branches[i].LengthMM, s.Limits.TapeMM, s.Limits.TapeWideMM), where, false)
		}
		for c := range b.Covers {
			if c := &b.Covers[c]; isTape(c) {
				add(cmp.Or(c.Part, "as stocked"), woundMM(c, &s.Limits), "over "+s.H.Branches[i].ID, c.ThickGuess)
			}
		}
	}
	slices.Sort(parts)
	var out []BillRow
	for _, part := range parts {
		u := used[part]
		row := BillRow{Group: "tape", Part: part, Need: metres(u.long), Order: metres(u.long * (1 + orderMore)), Metres: true,
			Says: fmt.Sprintf("%s mm thick, %s mm wide, edge to edge: %s", unit.Fixed(s.Limits.TapeMM, 2),
				unit.Fixed(s.Limits.TapeWideMM, 1),
				strings.Join(u.where, "; "))}
		if r := s.H.Rules; u.guess || !r.TapeMM.Set || !r.TapeWideMM.Set {
			row.Standing = catalogue.Memory
		}
		out = append(out, row)
	}
	return out
}

// woundMM is how much tape a cover of it takes: one pass where it is named thinner than the tape.
func woundMM(c *sheet.Covered, l *model.Limits) unit.Millimetre {
	if c.ThickMM < l.TapeMM {
		return math.Pi * (c.UnderMM + c.ThickMM) * (c.ToMM - c.FromMM) / l.TapeWideMM
	}
	return TapeMM(c.OverMM, c.UnderMM, c.ToMM-c.FromMM, l.TapeMM, l.TapeWideMM)
}

// isTape reports whether a cover is wound of tape.
func isTape(c *sheet.Covered) bool { return c.What == model.CoverTape && !c.Tube.Set }
