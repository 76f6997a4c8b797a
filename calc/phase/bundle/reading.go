package bundle

import (
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// ReadSame is how near a reading comes to a figure and is that figure: what callipers in
// gloved hands repeat to over a round of wires. Common practice, no source.
const ReadSame unit.Millimetre = 0.05

// LearnedBy is what a layer of a serial stands over its prediction by what the shop had learned when it was
// begun; of no serial, b nil, by what the shop has learned by now. A
// centre that is built up is wound until it measures what it should: nothing is learned of it.
func LearnedBy(s *sheet.Sheet, b *model.Build, i, layer int) unit.Millimetre {
	if layer == 0 && layer < len(s.Branches[i].Layers) && s.Branches[i].Layers[0].BuiltMM > 0 {
		return 1
	}
	c, ok := correctionFor(s, b, i, layer)
	if !ok {
		return 1
	}
	return unit.Millimetre(1 + c.Bias)
}

// Commonest is a wire of the size that most of a branch is made of up to a layer; −1 where
// it is made of none.
func Commonest(s *sheet.Sheet, i, layer int) int {
	n := map[[2]string]int{}
	best, index := 0, -1
	for _, l := range s.Branches[i].Layers[:layer+1] {
		for _, m := range l.Members {
			k, ok := s.Index.Wire[m.ID]
			if !ok {
				continue
			}
			size := [2]string{s.H.Wires[k].Spec, catalogue.CanonicalSize(s.H.Wires[k].Size)}
			if n[size]++; n[size] > best {
				best, index = n[size], k
			}
		}
	}
	return index
}
