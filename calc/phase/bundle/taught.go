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
			if !ok || r.Layer >= len(s.Branches[i].Layers) || s.Branches[i].OverMM <= 0 {
				continue
			}
			l, within := &s.Branches[i].Layers[r.Layer], 2*ReadSame
			if l.BuiltMM > 0 {
				within = max(within, BuiltWithin(s)) // it is wound by whole turns of tape
			}
			sayBuiltOver(s, i, b.Serial, model.LayerName(r.Layer), r.OverMM, l.OverMM*LearnedBy(s, i, r.Layer), within)
			sayBuiltOver(s, i, b.Serial, model.LayerName(r.Layer)+" before the tape", r.BareMM, l.BareMM(), 2*ReadSame)
		}
	}
}

// sayBuiltOver warns where what was read of a layer differs from the sheet by more than the
// band of the branch and what is allowed beyond it.
func sayBuiltOver(s *sheet.Sheet, i int, serial, what string, read []unit.Millimetre, over, within unit.Millimetre) {
	if len(read) == 0 {
		return
	}
	out := &s.Branches[i]
	mean := unit.Millimetre(0)
	for _, v := range read {
		mean += v / unit.Millimetre(len(read))
	}
	if mean < over*out.OverMinMM/out.OverMM-within || mean > over*out.OverMaxMM/out.OverMM+within {
		s.SayLike(sheet.Warn, "built.over", s.H.Branches[i].ID, serial,
			fmt.Sprintf("Serial %s: %s was measured at %s mm; the sheet says %s", serial, what, unit.Fixed(mean, 2), unit.Fixed(over, 1)))
	}
}

// BuiltWithin is how near a centre that is built up comes to its diameter: it is wound by whole
// turns of tape, and each adds its thickness twice.
func BuiltWithin(s *sheet.Sheet) unit.Millimetre { return max(s.Limits.TapeMM, ReadSame) }
