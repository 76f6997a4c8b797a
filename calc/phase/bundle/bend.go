package bundle

import (
	"fmt"
	"math"
	"slices"

	"contralay/calc/formula/lay"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A bend shorter than one turn of a layer leaves its wires nearly as far apart as
// if they ran straight, so that is noted; over whole turns they even out.
//
// bend is what the branch can be bent to: the larger of 10 × its thickest
// component (AS50881 as quoted; TM 1-1500-204-23-4) and 6 × over (NASA
// workmanship sheet 4.03).
func bend(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	thick := unit.Millimetre(0)
	for _, l := range out.Layers {
		for _, m := range l.Members {
			thick = max(thick, m.D)
		}
	}
	straighten(out)
	out.Bend.MinMM, out.Bend.Rule = 10*thick, "10 x thickest piece"
	if six := 6 * out.OverMM; six > out.Bend.MinMM {
		out.Bend.MinMM, out.Bend.Rule = six, "6 x OD"
	}
	if !b.BendMM.Set {
		return
	}
	if b.BendMM.V < out.Bend.MinMM {
		s.Say(sheet.Warn, "bend", b.ID, fmt.Sprintf("The inside bend radius is %s mm; it must be at least %s mm (%s)",
			unit.Fixed(b.BendMM.V, 0),
			unit.Fixed(out.Bend.MinMM, 0), out.Bend.Rule))
	}
	if !b.BendDeg.Set {
		return
	}
	axis := b.BendMM.V + out.OverMM/2
	arc := axis * unit.Millimetre(float64(b.BendDeg.V)*math.Pi/180)
	long := -1 // the outermost layer of which not one whole turn fits in the bend
	out.Layers = slices.Clone(out.Layers)
	out.Bend.MismatchMM = model.Some[unit.Millimetre](0)
	for k := range out.Layers {
		l := &out.Layers[k]
		for _, m := range l.Members {
			r := unit.Millimetre(math.Hypot(float64(m.X), float64(m.Y)))
			l.BentMM = max(l.BentMM, lay.Mismatch(r, l.LayMM, axis, b.BendDeg.V))
			l.FlatMM = max(l.FlatMM, lay.Mismatch(r, 0, axis, b.BendDeg.V))
		}
		out.Bend.MismatchMM = model.Some(max(out.Bend.MismatchMM.V, l.BentMM))
		// Within a tenth of a whole turn what remains is less than a tenth, too: no one
		// at the board could tell.
		if l.LayMM > arc && l.BentMM > 0.1*l.FlatMM && len(l.Members) > 1 {
			long = k
		}
	}
	if long >= 0 && out.Make == model.MakeLaid {
		l := &out.Layers[long]
		s.Say(sheet.Note, "bend.turn", b.ID,
			fmt.Sprintf("It bends before layer %d has made one turn: the bend takes %s mm of its length. Wires on the outside need %s mm "+
				"more than those inside, %s mm if laid straight",
				long, unit.Fixed(arc, 0), unit.Fixed(l.BentMM, 1), unit.Fixed(l.FlatMM, 1)))
	}
}

// straighten takes off the layers what a bend made of them that the branch had before: they
// may be the prior's, taken over for the sake of what they lie by.
func straighten(out *sheet.Branch) {
	if !slices.ContainsFunc(out.Layers, func(l sheet.Layer) bool { return l.BentMM != 0 || l.FlatMM != 0 }) {
		return
	}
	out.Layers = slices.Clone(out.Layers) // the prior keeps its own
	for k := range out.Layers {
		out.Layers[k].BentMM, out.Layers[k].FlatMM = 0, 0
	}
}
