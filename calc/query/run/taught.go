package run

import (
	"fmt"
	"math"

	"contralay/calc/formula/learn"
	"contralay/calc/phase/bundle"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What the shop has learned from what it measured, and what there is to learn from.

// Measured is everything that was measured of this harness beside what geometry predicts:
// diameters by number of layers and by reel, recovered walls by kind of tube, wire used by
// reel. file names it in words.
func Measured(s *sheet.Sheet, file string) []learn.Reading {
	var out []learn.Reading
	for i := range s.H.Branches {
		for _, a := range s.H.Branches[i].AsBuilt {
			out = append(out, overReadings(s, fmt.Sprintf("%s %s", file, s.H.Branches[i].ID), i, a.Layer, a.OverMM)...)
		}
	}
	for k := range s.H.Builds {
		b := &s.H.Builds[k]
		name := fmt.Sprintf("%s serial %s", file, b.Serial)
		for _, r := range b.Readings {
			if i, ok := s.Index.Branch[r.Branch]; ok {
				out = append(out, overReadings(s, name+" "+r.Branch, i, r.Layer, r.OverMM)...)
				out = append(out, bareReadings(s, name+" "+r.Branch, i, r)...)
			}
		}
		for _, r := range b.Tubes {
			if i, ok := s.Index.Branch[r.Branch]; ok {
				out = append(out, wallReading(s, name, i, b, r)...)
			}
		}
		for _, u := range b.Used {
			for _, r := range lists.ReelList(s) {
				if r.Spec == u.Spec && r.Size == catalogue.CanonicalSize(u.Size) {
					out = append(out, learn.Reading{Group: "wire used, " + r.Spec + " " + r.Size, Of: name, Predicted: float64(r.NeedMM),
						Measured: float64(u.UsedMM)})
				}
			}
		}
	}
	return out
}

// overReadings are those of a layer as it is laid. A centre that is built up was wound until it
// measured what the sheet has: that teaches nothing.
func overReadings(s *sheet.Sheet, name string, i, layer int, read []unit.Millimetre) []learn.Reading {
	if b := &s.Branches[i]; layer >= len(b.Layers) || b.Layers[layer].BuiltMM > 0 {
		return nil
	}
	return layerReadings(s, name, i, layer, read)
}

// bareReadings are those of a centre before it was built up.
func bareReadings(s *sheet.Sheet, name string, i int, r model.Reading) []learn.Reading {
	if r.Layer >= len(s.Branches[i].Layers) {
		return nil
	}
	return layerReadings(s, name, i, r.Layer, r.BareMM)
}

func layerReadings(s *sheet.Sheet, name string, i, layer int, read []unit.Millimetre) []learn.Reading {
	if len(read) == 0 {
		return nil
	}
	b := &s.Branches[i]
	mean := unit.Millimetre(0)
	for _, v := range read {
		mean += v / unit.Millimetre(len(read))
	}
	r := learn.Reading{Group: bundle.OverGroup(layer + 1), Of: name + " " + model.LayerName(layer),
		Predicted: float64(b.Layers[layer].BareMM()), Measured: float64(mean)}
	out := []learn.Reading{r}
	if k := bundle.Commonest(s, i, layer); k >= 0 {
		r.Group = "over, " + bundle.ReelName(&s.H.Wires[k])
		out = append(out, r)
	}
	return out
}

// wallReading is the recovered wall of a tube that a diameter over it comes to, on what was
// measured of the bundle beneath it where that was measured, else on what is predicted of
// it. The wall keeps its cross-section: over² = under² + 4·w·(bore + w), solved for w.
func wallReading(s *sheet.Sheet, name string, i int, b *model.Build, r model.Recovered) []learn.Reading {
	out := &s.Branches[i]
	sh := &out.Sheath
	t, known := s.Base.Tube(sh.Part) // before what was learned of it
	if !sh.Tube.Set || !known || t.WallMM <= 0 {
		return nil
	}
	for _, p := range s.H.Parts {
		if p.ID == t.ID && p.WallMM.Set {
			t.WallMM = p.WallMM.V
		}
	}
	under := out.OverMM
	if rd := b.ReadingOf(r.Branch, len(out.Layers)-1); rd != nil && len(rd.OverMM) > 0 {
		under = 0
		for _, v := range rd.OverMM {
			under += v / unit.Millimetre(len(rd.OverMM))
		}
	}
	under += sh.BeneathMM
	bore, over := float64(t.RecoveredMM), float64(r.OverMM)
	// A diameter no larger than what it lies on is no wall.
	measured := max(0, (math.Sqrt(max(0, bore*bore+over*over-float64(under*under)))-bore)/2)
	return []learn.Reading{{Group: "wall, " + sh.Tube.V.Kind, Of: name + " " + r.Branch, Predicted: float64(t.WallMM), Measured: measured}}
}

// MeasuredNowhere is how many readings are of a branch or a layer that is not there.
func MeasuredNowhere(s *sheet.Sheet) int {
	n := 0
	for k := range s.H.Builds {
		for _, r := range s.H.Builds[k].Readings {
			if i, ok := s.Index.Branch[r.Branch]; !ok || r.Layer >= len(s.Branches[i].Layers) {
				n += len(r.OverMM) + len(r.BareMM)
			}
		}
	}
	return n
}
