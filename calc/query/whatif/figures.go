package whatif

import (
	"slices"

	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Figures is what a person compares the ways of a branch by. Each is what the command figures prints of the branch,
// unrounded; what is not known there is unset here.
type Figures struct {
	Laid            []int // pieces in each layer with fillers, from the centre outward: "1 · 6 · 12"
	Layers          int
	Pieces          int // without fillers
	Spares, Fillers int
	BuiltUp         bool // its centre is built up with tape

	Over, OverMin, OverMax unit.Millimetre            // outside diameter of the bundle, with its band; 0 where it is not laid
	Sheath                 string                     // part; "" where there is none
	ShelfLabel             string                     // its size off the shelf: "5/8 (15.9 / 7.9)"; "" where the catalogue lacks it
	Sheathed               model.Opt[unit.Millimetre] // outside diameter with the sheath
	SlideMM                model.Opt[unit.Millimetre] // room to slide the sheath on; below 0 it does not pass
	MinBend                unit.Millimetre            // least inside radius
	Gram                   model.Opt[unit.Gram]       // of the bundle without covers
	SheathGram             model.Opt[unit.Gram]       // of the sheath as it is cut
	Hottest                model.Opt[unit.Celsius]

	Parted int // layers that part at the breakouts of the branch
	Buried int // pieces that leave with a later one further out
	Stops  int // open points that stop, about the branch, its pieces or the cavities where they end
}

// FiguresOf is the figures of branch i of a built sheet; of one that waits for its lay-up only those that do not hang
// on it.
func FiguresOf(s *sheet.Sheet, i int) Figures {
	b := &s.Branches[i]
	f := Figures{Layers: len(b.Layers), Over: b.OverMM, OverMin: b.OverMinMM, OverMax: b.OverMaxMM, Sheath: b.Sheath.Part,
		MinBend: b.Bend.MinMM, Gram: b.Gram, Buried: b.Buried, Parted: offer.Broken(s, i, b.As), Stops: stops(s, i)}
	for k := range b.Layers {
		l := &b.Layers[k]
		n := len(l.Members)
		if k == 0 && l.Fillers > 0 && n == 6 {
			n-- // the rod in the middle of five
		}
		f.Laid = append(f.Laid, n)
		f.Pieces += len(l.Members) - l.Fillers
		f.Spares, f.Fillers, f.BuiltUp = f.Spares+l.Spares, f.Fillers+l.Fillers, f.BuiltUp || l.BuiltMM > 0
	}
	if sh := &b.Sheath; sh.Tube.Set {
		f.ShelfLabel, f.SlideMM, f.SheathGram = sh.Tube.V.ShelfLabel, model.Some(sh.Verdict.SlideMM), model.Some(sh.Gram)
		if sh.Verdict.Wraps {
			f.Sheathed = model.Some(sh.Verdict.OverMM)
		}
	}
	if b.Warm.Known {
		f.Hottest = model.Some(b.Warm.HottestC)
	}
	return f
}

// stops is how many open points stop the branch: about it, what runs through it, or where that ends.
func stops(s *sheet.Sheet, i int) int {
	n, about := 0, map[string]bool(nil)
	for _, g := range s.Snags {
		if g.Level != sheet.Stop {
			continue
		}
		if about == nil {
			about = concerns(s, i)
		}
		if about[g.Where] {
			n++
		}
	}
	return n
}

// concerns is the ids of a branch, its wires and units, and the cavities where they end.
func concerns(s *sheet.Sheet, i int) map[string]bool {
	out := map[string]bool{s.H.Branches[i].ID: true}
	for k := range s.Wires {
		if !slices.Contains(s.Wires[k].Path, i) {
			continue
		}
		w := &s.H.Wires[k]
		out[w.ID] = true
		for _, end := range []string{w.From.V, w.To.V} {
			if e, _ := s.Index.End(end); e.Termination != "" {
				out[end] = true
			}
		}
		if u, in := s.Index.UnitOf[w.ID]; in {
			out[s.H.Units[u].ID] = true
		}
	}
	return out
}
