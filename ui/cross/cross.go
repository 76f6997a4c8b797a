package cross

import (
	"math"
	"slices"
	"strconv"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// Of is the section of a branch: every piece where it lies, with the colours of its insulation,
// seen from the from end. A branch that is not laid has no discs.
func Of(s *sheet.Sheet, branch int) draw.Section {
	b := &s.Branches[branch]
	out := draw.Section{OverMM: b.OverMM, TapeMM: b.TapeMM}
	if len(b.Layers) > 0 && b.Layers[0].BuiltMM > 0 {
		out.BuiltMM = b.Layers[0].OverMM
	}
	if b.Sheath.Tube.Set && b.Sheath.Verdict.Wraps {
		out.SheathMM, out.WallMM = b.Sheath.Verdict.OverMM, b.Sheath.Verdict.WallMM
	}
	filler := 0
	for k, l := range b.Layers {
		for _, c := range l.Members {
			d := draw.Disc{ID: c.ID, Label: c.ID, X: c.X, Y: c.Y, D: c.D, Layer: k, Kind: KindOf(c.Kind),
				Tracer: c.ID == l.Tracer && k > 0}
			if i, is := s.Index.Wire[c.ID]; is {
				d.Code = s.H.Wires[i].Colour.V
			}
			if i, is := s.Index.Unit[c.ID]; is {
				d.Cores, d.Shielded = cores(s, i), s.H.Units[i].Shield.V
			}
			if c.Kind == sheet.OfFiller {
				filler++
				d.ID, d.Label = "filler "+strconv.Itoa(filler), "o"
			}
			out.Discs = append(out.Discs, d)
		}
	}
	return out
}

// KindOf is a member of a layer as it is drawn.
func KindOf(k sheet.Kind) draw.Kind {
	switch k {
	case sheet.OfUnit:
		return draw.Unit
	case sheet.OfSpare:
		return draw.Spare
	case sheet.OfFiller:
		return draw.Filler
	}
	return draw.Wire
}

// cores is the wires of a unit round its middle, each touching the next, the first at the left.
// Wires of different sizes stand as far apart as the thickest need.
func cores(s *sheet.Sheet, u int) []draw.Core {
	var out []draw.Core
	thickest := 0.0
	for _, id := range s.H.Units[u].Wires {
		i, is := s.Index.Wire[id]
		if !is || !s.Wires[i].Dia.Known() {
			return nil
		}
		d := s.Wires[i].Dia.Nominal
		thickest = max(thickest, float64(d))
		out = append(out, draw.Core{D: d, Code: s.H.Wires[i].Colour.V})
	}
	n := float64(len(out))
	if n < 2 {
		return out
	}
	r := thickest / 2 / math.Sin(math.Pi/n)
	for k := range out {
		angle := math.Pi - 2*math.Pi*float64(k)/n
		out[k].X, out[k].Y = unit.Millimetre(r*math.Cos(angle)), unit.Millimetre(r*math.Sin(angle))
	}
	return out
}

// TakeLayer takes a layer of a section in hand: its pieces carry their numbers, the others are
// dimmed, and the arrow shows its hand.
func TakeLayer(s *sheet.Sheet, branch int, out *draw.Section, layer int) {
	for i := range out.Discs {
		in := out.Discs[i].Layer == layer
		out.Discs[i].Dim, out.Discs[i].Numbered = !in, in
	}
	out.Turn, out.Says = turnOf(s, branch, layer)
}

// TakePiece takes one piece of a section in hand: it carries its number and so do the pieces on
// both sides of it in its layer. A piece that is not there changes nothing.
func TakePiece(s *sheet.Sheet, branch int, out *draw.Section, id string) {
	layers := s.Branches[branch].Layers
	for k := range layers {
		l := &layers[k]
		at := slices.IndexFunc(l.Members, func(c sheet.Member) bool { return c.ID == id })
		if at < 0 || id == "" {
			continue
		}
		n, first := len(l.Members), 0
		for _, earlier := range layers[:k] {
			first += len(earlier.Members)
		}
		for i := range out.Discs {
			d, j := &out.Discs[i], i-first
			d.Selected = j == at
			d.Neighbour = k > 0 && n > 2 && j >= 0 && j < n && j != at && ((at+1)%n == j || (at+n-1)%n == j)
			d.Numbered = d.Selected || d.Neighbour
			d.Dim = !d.Numbered
		}
		out.Turn, out.Says = turnOf(s, branch, k)
		return
	}
}

// turnOf is how the wires of a layer run over the top, and the layer in words.
func turnOf(s *sheet.Sheet, branch, layer int) (draw.Turn, string) {
	l := &s.Branches[branch].Layers[layer]
	name := model.LayerName(layer)
	if l.LayMM <= 0 {
		return 0, name
	}
	switch l.Hand {
	case model.HandLeft:
		return draw.ToLeft, name + "  ← LH"
	case model.HandRight:
		return draw.ToRight, name + "  RH →"
	}
	return 0, name
}
