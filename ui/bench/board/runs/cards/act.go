package cards

import (
	"fmt"

	"contralay/calc/query/run"
	"contralay/model/unit"
	"contralay/ui/bench/board/runs/card"
	"contralay/ui/bench/board/runs/say"
)

// What a step of one act says.

// actCard is a step that is done in one act.
func actCard(m Hand, s run.RunStep) card.Card {
	act := say.Of(m.Model, s)
	if s.Kind == run.BuildUpStep {
		act = buildUp(m, s)
	}
	c := card.Card{Title: say.Step(m.Model, s), Lines: act.Lines, Low: []string{say.Step(m.Model, s)}}
	if len(act.Large) > 0 {
		c.Number = act.Large[0]
	}
	if len(act.Large) > 1 {
		c.Second = act.Large[1]
	}
	return c
}

// buildUp is the tape round a centre: how thick it was, and what it is wound to.
func buildUp(m Hand, s run.RunStep) say.Act {
	i := m.Sheet.Index.Branch[s.Of]
	mb, l := &m.H.Branches[i], &m.Sheet.Branches[i].Layers[s.Layer]
	out := say.Act{Large: []string{mb.ID + " build up", "to " + m.Sys.Diameter(l.OverMM)}}
	r := m.Build.ReadingOf(s.Of, s.Layer)
	if e, ok := m.Explained(s); ok {
		out.Lines = append(out.Lines, say.BuiltUp(m.Model, e)...)
	}
	wind := fmt.Sprintf("Wind it from %s to %s, edge to edge, until it measures %s %s everywhere", mb.From, mb.To,
		m.Sys.Diameter(l.OverMM), m.Sys.Name())
	if r != nil && len(r.BareMM) > 0 {
		bare := unit.Millimetre(0)
		for _, v := range r.BareMM {
			bare += v / unit.Millimetre(len(r.BareMM))
		}
		wind += fmt.Sprintf(". It measured %s before: the tape adds %s", m.Sys.Fine(bare), m.Sys.Fine(max(0, l.OverMM-bare)))
	}
	out.Lines = append(out.Lines, l.BuiltUp(m.Sys)+".", wind+".")
	return out
}
