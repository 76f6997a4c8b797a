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
	}
	used := map[string]*use{}
	var parts []string
	guess := false
	add := func(part string, long unit.Millimetre, where string) {
		if used[part] == nil {
			used[part], parts = &use{}, append(parts, part)
		}
		used[part].long += long
		used[part].where = append(used[part].where, where)
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
				TapeMM(l.OverMM, l.OverMM-bind, s.H.Branches[i].LengthMM, s.Limits.TapeMM, s.Limits.TapeWideMM), where)
		}
		for c := range b.Covers {
			if c := &b.Covers[c]; isTape(c) {
				thick := min(s.Limits.TapeMM, c.ThickMM) // a cover that is thinner than the tape is one pass
				add(cmp.Or(c.Part, "as stocked"), TapeMM(c.OverMM, c.UnderMM, c.ToMM-c.FromMM, thick, s.Limits.TapeWideMM),
					"over "+s.H.Branches[i].ID)
				guess = guess || c.ThickGuess
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
		if r := s.H.Rules; guess || !r.TapeMM.Set || !r.TapeWideMM.Set {
			row.Standing = catalogue.Memory
		}
		out = append(out, row)
	}
	return out
}

// isTape reports whether a cover is wound of tape.
func isTape(c *sheet.Covered) bool { return c.What == model.CoverTape && !c.Tube.Set }
