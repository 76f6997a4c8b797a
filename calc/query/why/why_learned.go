package why

import (
	"fmt"
	"math"
	"strconv"

	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How what the shop has learned enters a figure.

// asLearned is a diameter of a bundle with what the shop has learned of such bundles: the
// prediction, and so much on it.
func (e Explainer) asLearned(b *sheet.Branch, w Why) Why {
	l := &b.Learned
	if l.Of == "" {
		return w
	}
	w.Says += fmt.Sprintf(", and what the shop has measured of it: %s readings, spread %s %%, accepted %s",
		strconv.Itoa(l.Readings), unit.Fixed(100*l.Spread, 1), l.On)
	w.In = append(w.In, e.learned(l))
	w.make = func(in []float64) float64 { return in[0] * (1 + in[1]) }
	return w
}

// learned is the correction as an input, with where it comes from.
func (e Explainer) learned(l *sheet.Learned) Input {
	return known("measured stands over predicted by", float64(l.Bias), Percent,
		catalogue.Origin{Source: fmt.Sprintf("%s: %d readings of this shop, %s to %s %%, of %s", l.Of, l.Readings,
			unit.Fixed(100*l.Low, 1), unit.Fixed(100*l.High, 1), l.From), Standing: catalogue.House})
}

// learnedBand is an end of the band: that of the wires with the correction, or twice the
// spread from over where that is wider.
func (e Explainer) learnedBand(b *sheet.Branch, f Figure, value unit.Millimetre, word string) Why {
	l := &b.Learned
	name, was, mid, sign := "over", b.Raw.Least, b.OverMM, -1.0
	switch f.What {
	case "branch.most":
		was, sign = b.Raw.Most, 1
	case "branch.tapeleast":
		name, was, mid = "tape diameter", b.Raw.TapeLeast, b.TapeMM
	}
	wires := known("with every wire at its "+word, float64(was), Diameter, catalogue.Origin{Source: "laid once more", Standing: b.Standing})
	over := known("as corrected", float64(mid), Diameter, catalogue.Origin{Source: "prediction and what was learned", Standing: b.Standing})
	spread := known("spread", float64(l.Spread), Percent, catalogue.Origin{Source: l.Of, Standing: catalogue.House})
	return Why{Name: name + " of " + f.Of + " with every wire at its " + word, Value: float64(value), Measure: Diameter,
		Says: "the wires at that end of their tolerance, corrected; or twice the spread the shop measured, where that is wider",
		In:   []Input{wires, e.learned(l), over, spread}, make: func(in []float64) float64 {
			a, b := in[0]*(1+in[1]), in[2]*(1+sign*2*in[3])
			if sign < 0 {
				return math.Min(a, b)
			}
			return math.Max(a, b)
		}}
}
