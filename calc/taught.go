package calc

import (
	"fmt"
	"math"
	"slices"

	"contralay/calc/learn"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What the shop has learned from what it measured, and what there is to learn from.

// Learned is a correction that is in use on a figure.
type Learned struct {
	catalogue.Correction
	PredictedMM unit.Millimetre // what geometry says
}

// raw is what geometry alone says of a bundle.
type raw struct{ over, least, most, tape, tapeLeast unit.Millimetre }

// learn corrects the diameters of branch i by what the shop measured of bundles of as many
// layers; where it has nothing of those, by what it measured of the reel most of it is of.
// The band is that of the wires, or twice the spread to each side where that is wider.
func (s *Sheet) learn(i int) {
	out := &s.Branches[i]
	out.raw = raw{out.OverMM, out.OverMinMM, out.OverMaxMM, out.TapeMM, out.TapeMinMM}
	out.Learned = Learned{}
	if len(s.Cat.Corrections) == 0 || len(out.Layers) == 0 || out.OverMM <= 0 {
		return
	}
	c, ok := s.overCorrection(i, len(out.Layers)-1)
	if !ok {
		return
	}
	out.Learned = Learned{c, out.OverMM}
	by := unit.Millimetre(1 + c.Bias)
	out.OverMM, out.OverMinMM, out.OverMaxMM, out.TapeMM, out.TapeMinMM = out.OverMM*by, out.OverMinMM*by, out.OverMaxMM*by, out.TapeMM*by, out.TapeMinMM*by
	wide := unit.Millimetre(2 * c.Spread)
	out.OverMinMM, out.OverMaxMM = min(out.OverMinMM, out.OverMM*(1-wide)), max(out.OverMaxMM, out.OverMM*(1+wide))
	out.TapeMinMM = min(out.TapeMinMM, out.TapeMM*(1-wide))
}

// overCorrection is what is known of bundles up to a layer of branch i.
func (s *Sheet) overCorrection(i, layer int) (catalogue.Correction, bool) {
	if c, ok := s.Cat.Correction(overGroup(layer + 1)); ok {
		return c, true
	}
	if k := s.commonest(i, layer); k >= 0 {
		return s.Cat.Correction("over, " + reelName(&s.H.Wires[k]))
	}
	return catalogue.Correction{}, false
}

func overGroup(layers int) string {
	if layers == 1 {
		return "over, 1 layer"
	}
	return fmt.Sprintf("over, %d layers", layers)
}

func reelName(w *model.Wire) string { return w.Spec + " " + catalogue.CanonicalSize(w.Size) }

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

// Measured is everything that was measured of this harness beside what geometry predicts:
// diameters by number of layers and by reel, recovered walls by kind of tube, wire used by
// reel. file names it in words.
func (s *Sheet) Measured(file string) []learn.Reading {
	var out []learn.Reading
	for i := range s.H.Branches {
		for _, a := range s.H.Branches[i].AsBuilt {
			out = append(out, s.overReadings(fmt.Sprintf("%s %s", file, s.H.Branches[i].ID), i, a.Layer, a.OverMM)...)
		}
	}
	for k := range s.H.Builds {
		b := &s.H.Builds[k]
		name := fmt.Sprintf("%s serial %s", file, b.Serial)
		for _, r := range b.Readings {
			if i, ok := s.X.Branch[r.Branch]; ok {
				out = append(out, s.overReadings(name+" "+r.Branch, i, r.Layer, r.OverMM)...)
			}
		}
		for _, r := range b.Tubes {
			if i, ok := s.X.Branch[r.Branch]; ok {
				out = append(out, s.wallReading(name, i, b, r)...)
			}
		}
		for _, u := range b.Used {
			for _, r := range s.ReelList() {
				if r.Spec == u.Spec && r.Size == catalogue.CanonicalSize(u.Size) {
					out = append(out, learn.Reading{Group: "wire used, " + r.Spec + " " + r.Size, Of: name, Predicted: float64(r.NeedMM), Measured: float64(u.UsedMM)})
				}
			}
		}
	}
	return out
}

func (s *Sheet) overReadings(name string, i, layer int, read []unit.Millimetre) []learn.Reading {
	b := &s.Branches[i]
	if layer >= len(b.Layers) || len(read) == 0 {
		return nil
	}
	mean := unit.Millimetre(0)
	for _, v := range read {
		mean += v / unit.Millimetre(len(read))
	}
	r := learn.Reading{Group: overGroup(layer + 1), Of: name + " " + model.LayerName(layer), Predicted: float64(b.Layers[layer].OverMM), Measured: float64(mean)}
	out := []learn.Reading{r}
	if k := s.commonest(i, layer); k >= 0 {
		r.Group = "over, " + reelName(&s.H.Wires[k])
		out = append(out, r)
	}
	return out
}

// wallReading is the recovered wall of a tube that a diameter over it comes to, on what was
// measured of the bundle beneath it where that was measured, else on what is predicted of
// it. The wall keeps its cross-section: over² = under² + 4·w·(bore + w), solved for w.
func (s *Sheet) wallReading(name string, i int, b *model.Build, r model.Recovered) []learn.Reading {
	out := &s.Branches[i]
	sh := &out.Sheath
	t, known := s.base.Tube(sh.Part) // before what was learned of it
	if !sh.Known || !known || t.WallMM <= 0 {
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
	measured := 0.0 // a diameter no larger than what it lies on is no wall
	if over > float64(under) {
		measured = (math.Sqrt(bore*bore+over*over-float64(under*under)) - bore) / 2
	}
	return []learn.Reading{{Group: "wall, " + sh.Tube.Kind, Of: name + " " + r.Branch, Predicted: float64(t.WallMM), Measured: measured}}
}

// MeasuredNowhere is how many readings are of a branch or a layer that is not there.
func (s *Sheet) MeasuredNowhere() int {
	n := 0
	for k := range s.H.Builds {
		for _, r := range s.H.Builds[k].Readings {
			if i, ok := s.X.Branch[r.Branch]; !ok || r.Layer >= len(s.Branches[i].Layers) {
				n += len(r.OverMM)
			}
		}
	}
	return n
}

// builtOver warns of what was measured of a layer and stands outside what its wires explain:
// it was built so, and somebody went on.
func (s *Sheet) builtOver() {
	for k := range s.H.Builds {
		b := &s.H.Builds[k]
		for _, r := range b.Readings {
			i, ok := s.X.Branch[r.Branch]
			if !ok || r.Layer >= len(s.Branches[i].Layers) || len(r.OverMM) == 0 || s.Branches[i].OverMM <= 0 {
				continue
			}
			out := &s.Branches[i]
			over := out.Layers[r.Layer].OverMM * s.learnedBy(i, r.Layer)
			least, most := over*out.OverMinMM/out.OverMM-2*readSame, over*out.OverMaxMM/out.OverMM+2*readSame
			mean := unit.Millimetre(0)
			for _, v := range r.OverMM {
				mean += v / unit.Millimetre(len(r.OverMM))
			}
			if mean < least || mean > most {
				s.sayLike(Warn, "built.over", r.Branch, b.Serial, fmt.Sprintf("serial %s: %s was measured at %s mm and stands %s by the sheet", b.Serial, model.LayerName(r.Layer), unit.Fixed(float64(mean), 2), unit.Fixed(float64(over), 1)))
			}
		}
	}
}
