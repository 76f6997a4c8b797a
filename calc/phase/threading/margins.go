package threading

import (
	"cmp"
	"fmt"
	"slices"

	"contralay/calc/phase/over"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Margin is how far something is from the temperature it stands.
type Margin struct {
	What   string // "wire 101", "sheath AS23053/16 9.5", "device P1", "adhesive", "filler"
	LimitC unit.Celsius
	AtC    unit.Celsius // what it meets here
	catalogue.Origin
}

// Left is what is left, below 0 where it is passed.
func (m Margin) Left() unit.Celsius { return m.LimitC - m.AtC }

// Margins is everything with a limit in a branch, the least left first: the hottest
// conductor of each specification, filler, sheath, adhesive, the devices at its ends. A
// device and an adhesive meet the air; the rest the bundle in balance, where its heat is
// known.
func Margins(s *sheet.Sheet, i int) []Margin {
	b := &s.Branches[i]
	inside := b.Ambient
	if b.Warm.Known {
		inside = max(inside, b.Warm.UnderC)
	}
	var out []Margin
	hot := map[string]Margin{}
	var specs []string
	for _, k := range over.WiresOf(s, i) {
		e := s.Wires[k].Entry
		if e.RatedC <= 0 {
			continue
		}
		warmest := b.Ambient
		for _, c := range b.Warm.Wires {
			if c.Wire == k {
				warmest = c.C
			}
		}
		m, met := hot[e.Spec]
		if !met {
			specs = append(specs, e.Spec)
		}
		if !met || warmest > m.AtC {
			hot[e.Spec] = Margin{fmt.Sprintf("wire %s, %s", s.H.Wires[k].ID, e.Spec), e.RatedC, warmest,
				catalogue.Origin{Source: e.Source, Standing: wires.RatedStanding(e)}}
		}
	}
	for _, spec := range specs {
		out = append(out, hot[spec])
	}
	given := catalogue.Origin{Source: "given in the file", Standing: catalogue.House}
	fillers := 0
	for _, l := range b.Layers {
		fillers += l.Fillers
	}
	if fillers > 0 && s.Limits.FillerC.Set {
		out = append(out, Margin{"filler in stock", s.Limits.FillerC.V, max(inside, b.Warm.FillerC.V), given})
	}
	for _, t := range over.Tubes(s, i) {
		if t.ServiceMaxC > 0 {
			out = append(out, Margin{string(t.What) + " " + t.ID, t.ServiceMaxC, inside, t.Origin})
		}
	}
	if c, from, ok := over.AdhesiveC(s); ok {
		out = append(out, Margin{"adhesive", c, b.Ambient, from})
	}
	for _, end := range []string{s.H.Branches[i].From, s.H.Branches[i].To} {
		if t, ok := s.Index.Termination[end]; ok && s.H.Terminations[t].LimitC.Set {
			out = append(out, Margin{"device at " + end, s.H.Terminations[t].LimitC.V, b.Ambient, given})
		}
	}
	slices.SortStableFunc(out, func(a, b Margin) int { return cmp.Compare(a.Left(), b.Left()) })
	return out
}
