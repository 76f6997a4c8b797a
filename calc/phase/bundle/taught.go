package bundle

import (
	"fmt"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// learn corrects the diameters of branch i by what the shop measured of bundles of as many
// layers; where it has nothing of those, by what it measured of the reel most of it is of.
// The band is that of the wires, or twice the spread to each side where that is wider.
func learn(s *sheet.Sheet, i int) {
	out := &s.Branches[i]
	out.Predicted = sheet.Predicted{Over: out.OverMM, Least: out.OverMinMM, Most: out.OverMaxMM, Tape: out.TapeMM, TapeLeast: out.TapeMinMM}
	out.Learned = sheet.Learned{}
	if len(s.Cat.Corrections) == 0 || len(out.Layers) == 0 || out.OverMM <= 0 {
		return
	}
	c, ok := overCorrection(s, i, len(out.Layers)-1)
	if !ok {
		return
	}
	out.Learned = sheet.Learned{Correction: c, PredictedMM: out.OverMM}
	factor := unit.Millimetre(1 + c.Bias)
	out.OverMM, out.OverMinMM, out.OverMaxMM, out.TapeMM, out.TapeMinMM = out.OverMM*factor, out.OverMinMM*factor, out.OverMaxMM*factor,
		out.TapeMM*factor,
		out.TapeMinMM*factor
	wide := unit.Millimetre(2 * c.Spread)
	out.OverMinMM, out.OverMaxMM = min(out.OverMinMM, out.OverMM*(1-wide)), max(out.OverMaxMM, out.OverMM*(1+wide))
	out.TapeMinMM = min(out.TapeMinMM, out.TapeMM*(1-wide))
}

// overCorrection is what is known of bundles up to a layer of branch i.
func overCorrection(s *sheet.Sheet, i, layer int) (catalogue.Correction, bool) {
	if c, ok := s.Cat.Correction(OverGroup(layer + 1)); ok {
		return c, true
	}
	if k := Commonest(s, i, layer); k >= 0 {
		return s.Cat.Correction("over, " + ReelName(&s.H.Wires[k]))
	}
	return catalogue.Correction{}, false
}

// OverGroup names the bundles that one correction of the diameter is for: those of as many layers.
func OverGroup(layers int) string {
	if layers == 1 {
		return "over, 1 layer"
	}
	return fmt.Sprintf("over, %d layers", layers)
}

// ReelName names the reel a wire is cut from: its specification and size as the catalogue writes it.
func ReelName(w *model.Wire) string { return w.Spec + " " + catalogue.CanonicalSize(w.Size) }

// BuiltOver warns of what was measured of a layer and stands outside what its wires explain:
// it was built so, and somebody went on.
func BuiltOver(s *sheet.Sheet) {
	for k := range s.H.Builds {
		b := &s.H.Builds[k]
		for _, r := range b.Readings {
			i, ok := s.Index.Branch[r.Branch]
			if !ok || r.Layer >= len(s.Branches[i].Layers) || len(r.OverMM) == 0 || s.Branches[i].OverMM <= 0 {
				continue
			}
			out := &s.Branches[i]
			over := out.Layers[r.Layer].OverMM * LearnedBy(s, i, r.Layer)
			least, most := over*out.OverMinMM/out.OverMM-2*ReadSame, over*out.OverMaxMM/out.OverMM+2*ReadSame
			mean := unit.Millimetre(0)
			for _, v := range r.OverMM {
				mean += v / unit.Millimetre(len(r.OverMM))
			}
			if mean < least || mean > most {
				s.SayLike(sheet.Warn, "built.over", r.Branch, b.Serial,
					fmt.Sprintf("Serial %s: %s was measured at %s mm; the sheet says %s", b.Serial, model.LayerName(r.Layer),
						unit.Fixed(mean, 2), unit.Fixed(over, 1)))
			}
		}
	}
}
