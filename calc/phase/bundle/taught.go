package bundle

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

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
	for _, of := range overGroups(s, i, layer) {
		if c, ok := s.Cat.Correction(of); ok {
			return c, true
		}
	}
	return catalogue.Correction{}, false
}

// overGroups are the groups whose correction a layer of branch i goes by, the first of them that has one.
func overGroups(s *sheet.Sheet, i, layer int) []string {
	out := []string{OverGroup(layer + 1)}
	if k := Commonest(s, i, layer); k >= 0 {
		out = append(out, "over, "+ReelName(&s.H.Wires[k]))
	}
	return out
}

// Corrections are those that the layers of branch i go by.
func Corrections(s *sheet.Sheet, i int) []catalogue.Correction {
	var out []catalogue.Correction
	if len(s.Cat.Corrections) == 0 {
		return nil
	}
	for layer := range s.Branches[i].Layers {
		if c, ok := overCorrection(s, i, layer); ok && !slices.Contains(out, c) {
			out = append(out, c)
		}
	}
	return out
}

// InWords is a correction as a record keeps it: "over, 3 layers: +2.0 %".
func InWords(of string, bias unit.Ratio) string {
	return fmt.Sprintf("%s: %s%s %%", of, map[bool]string{true: "-", false: "+"}[bias < 0], unit.Fixed(100*max(bias, -bias), 1))
}

// correctionFor is overCorrection of one serial: one that says what it was begun with keeps that, whatever
// the shop has learned since. The shop's history has it in full; what is not there any more is as the
// record has it, to a tenth of a per cent.
func correctionFor(s *sheet.Sheet, b *model.Build, i, layer int) (catalogue.Correction, bool) {
	if b == nil || b.GoesBy == nil {
		return overCorrection(s, i, layer)
	}
	for _, of := range overGroups(s, i, layer) {
		if c, ok := Begun(s.Cat, b, of); ok {
			return c, true
		}
	}
	return catalogue.Correction{}, false
}

// Begun is the correction of a group that a serial was begun with, by a catalogue that has the shop's history.
func Begun(cat *catalogue.Catalogue, b *model.Build, of string) (catalogue.Correction, bool) {
	for _, says := range b.GoesBy {
		rest, is := strings.CutPrefix(says, of+": ")
		if !is {
			continue
		}
		for _, c := range slices.Backward(cat.Corrections) {
			if c.Of == of && !c.Withdrawn && InWords(of, c.Bias) == says {
				return c, true
			}
		}
		if v, err := strconv.ParseFloat(strings.TrimSuffix(rest, " %"), 64); err == nil && unit.Finite(v) {
			return catalogue.Correction{Of: of, Bias: unit.Ratio(v / 100)}, true
		}
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
			share := begunShare(s, b, i, r.Layer)
			over := l.OverMM * LearnedBy(s, b, i, r.Layer)
			if l.BuiltMM <= 0 { // one that is built up is wound to its diameter, whatever the wire
				over *= share
			}
			sayBuiltOver(s, i, b, model.LayerName(r.Layer), r.OverMM, over, within)
			sayBuiltOver(s, i, b, model.LayerName(r.Layer)+" before the tape", r.BareMM, l.BareMM()*share, 2*ReadSame)
		}
	}
}

// begunShare is what a layer of a serial stands by the catalogue that it was begun with, over what it stands by that
// of today: near enough for a warning as the diameters of its commonest wire. 1 where the file has measured that.
func begunShare(s *sheet.Sheet, b *model.Build, i, layer int) unit.Millimetre {
	k := Commonest(s, i, layer)
	if k < 0 {
		return 1
	}
	w := &s.H.Wires[k]
	size := catalogue.CanonicalSize(w.Size)
	is, known := s.Base.Wire(w.Spec, w.Size)
	if !known || is.OverMM <= 0 || slices.ContainsFunc(s.H.Reels, func(r model.Reel) bool {
		return r.Spec == w.Spec && catalogue.CanonicalSize(r.Size) == size
	}) {
		return 1
	}
	for _, v := range b.Shelf {
		if v.Spec.V == w.Spec && v.Size.V == size && v.OverMM.V > 0 {
			return v.OverMM.V / is.OverMM
		}
	}
	return 1
}

// sayBuiltOver warns where what was read of a layer differs from the sheet by more than the
// band of the branch and what is allowed beyond it.
func sayBuiltOver(s *sheet.Sheet, i int, b *model.Build, what string, read []unit.Millimetre, over, within unit.Millimetre) {
	if len(read) == 0 {
		return
	}
	c, _ := correctionFor(s, b, i, len(s.Branches[i].Layers)-1)
	p, wide := &s.Branches[i].Predicted, unit.Millimetre(2*c.Spread)
	least, most := min(p.Least/p.Over, 1-wide), max(p.Most/p.Over, 1+wide)
	mean := unit.Millimetre(0)
	for _, v := range read {
		mean += v / unit.Millimetre(len(read))
	}
	if mean < over*least-within || mean > over*most+within {
		s.SayLike(sheet.Warn, "built.over", s.H.Branches[i].ID, b.Serial,
			fmt.Sprintf("Serial %s: %s was measured at %s mm; the sheet says %s", b.Serial, what, unit.Fixed(mean, 2), unit.Fixed(over, 1)))
	}
}

// BuiltWithin is how near a centre that is built up comes to its diameter: it is wound by whole
// turns of tape, and each adds its thickness twice.
func BuiltWithin(s *sheet.Sheet) unit.Millimetre { return max(s.Limits.TapeMM, ReadSame) }
