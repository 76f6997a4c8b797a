package threading

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

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
	if c, any := over.FillerStands(s, i); any {
		out = append(out, Margin{"filler in stock", c, max(inside, b.Warm.FillerC.V), given})
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

// SayMargins tells what the currents make too hot that stands the air: a tube and a filler on
// the bundle, and a wire that carries nothing itself and is warmed by the others. What a wire
// carries is judged by its own limit. The balance rests on conductivities and an emissivity
// from memory, so no more than a warning comes of it.
func SayMargins(s *sheet.Sheet) {
	for i := range s.Branches {
		b := &s.Branches[i]
		if !b.Warm.Known {
			continue
		}
		say := func(what string, limit, at unit.Celsius) {
			if limit > 0 && at > limit && b.Ambient <= limit {
				s.SayLike(sheet.Warn, "hot.inside", s.H.Branches[i].ID, what,
					fmt.Sprintf("Its currents heat the %s to %s C, and it withstands %s C at most", what, unit.Fixed(at, 0),
						unit.Fixed(limit, 0)))
			}
		}
		seen := map[string]bool{}
		for _, c := range b.Warm.Wires {
			e := s.Wires[c.Wire].Entry
			if s.Wires[c.Wire].Heats == 0 && c.C > e.RatedC && !seen[e.Spec] {
				seen[e.Spec] = true
				say(fmt.Sprintf("wire %s of %s, which carries nothing,", s.H.Wires[c.Wire].ID, e.Spec), e.RatedC, c.C)
			}
		}
		for _, m := range Margins(s, i) {
			if m.Left() < 0 && m.AtC > b.Ambient && !strings.HasPrefix(m.What, "wire ") {
				say(m.What, m.LimitC, m.AtC)
			}
		}
	}
}
