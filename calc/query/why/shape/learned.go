package shape

import (
	"fmt"
	"math"
	"strconv"

	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How what the shop has learned enters a figure.

// asLearned is a diameter of a bundle with what the shop has learned of such bundles: the
// prediction, and so much on it.
func asLearned(e why.Explainer, b *sheet.Branch, w why.Why) why.Why {
	l := &b.Learned
	if l.Of == "" {
		return w
	}
	w.Says += fmt.Sprintf(". The correction of this shop is added: %s readings, spread %s %%, accepted %s",
		strconv.Itoa(l.Readings), unit.Fixed(100*float64(l.Spread), 1), l.On)
	w.In = append(w.In, learned(e, l))
	w.Formula = func(in []float64) float64 { return in[0] * (1 + in[1]) }
	return w
}

// learned is the correction as an input, with where it comes from.
func learned(e why.Explainer, l *sheet.Learned) why.Input {
	return why.LookUp("measured is more than predicted by", float64(l.Bias), why.Percent,
		catalogue.Origin{Source: fmt.Sprintf("%s: %d readings of this shop, %s to %s %%, from %s", l.Of, l.Readings,
			unit.Fixed(100*l.Low, 1), unit.Fixed(100*l.High, 1), l.From), Standing: catalogue.House})
}

// learnedBand is an end of the band: that of the wires with the correction, or twice the
// spread from over where that is wider.
func learnedBand(e why.Explainer, b *sheet.Branch, f why.Figure, value unit.Millimetre, word string) why.Why {
	l := &b.Learned
	name, was, mid, sign := "OD", b.Predicted.Least, b.OverMM, -1.0
	switch f.What {
	case "branch.most":
		was, sign = b.Predicted.Most, 1
	case "branch.tapeleast":
		name, was, mid = "tape diameter", b.Predicted.TapeLeast, b.TapeMM
	}
	wires := why.LookUp("with every wire at its "+word, float64(was), why.Diameter,
		catalogue.Origin{Source: "laid again", Standing: b.Standing})
	over := why.LookUp("corrected value", float64(mid), why.Diameter,
		catalogue.Origin{Source: "prediction and correction", Standing: b.Standing})
	spread := why.LookUp("spread", float64(l.Spread), why.Percent, catalogue.Origin{Source: l.Of, Standing: catalogue.House})
	return why.Why{Name: name + " of " + f.Of + " with every wire at its " + word, Value: float64(value), Measure: why.Diameter,
		Says: "Take the wires at that end of their tolerance, and correct it. " +
			"If twice the spread that the shop measured is wider, take that",
		In: []why.Input{wires, learned(e, l), over, spread}, Formula: func(in []float64) float64 {
			a, b := in[0]*(1+in[1]), in[2]*(1+sign*2*in[3])
			if sign < 0 {
				return math.Min(a, b)
			}
			return math.Max(a, b)
		}}
}
