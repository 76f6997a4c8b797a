package work

import (
	"fmt"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/board/work/card"
	"contralay/ui/bench/desk"
	wordsscreen "contralay/ui/bench/words"
	"contralay/ui/paper"
)

// What a step of one act says.

// actCard is a step that is done in one act.
func actCard(m *desk.Model, s run.RunStep) card.Card {
	i := instruct(m, s)
	c := card.Card{Title: stepName(m, s), Lines: i.lines, Low: []string{stepName(m, s)}}
	if len(i.large) > 0 {
		c.Number = i.large[0]
	}
	if len(i.large) > 1 {
		c.Second = i.large[1]
	}
	return c
}

// instruction is one step in words: what stands in large letters, and lines.
type instruction struct {
	large []string
	lines []string
}

func instruct(m *desk.Model, s run.RunStep) instruction {
	switch s.Kind {
	case run.MakeStep:
		return sayMake(m, s)
	case run.BuildUpStep:
		return sayBuildUp(m, s)
	case run.JoinStep:
		return sayJoin(m, s)
	case run.ThreadStep:
		i := instruction{large: []string{"on: " + string(s.Put.What), s.Of},
			lines: []string{s.Put.Part + ", from " + s.Put.From}}
		if s.Put.CutMM > 0 {
			i.lines[0] += fmt.Sprintf(", cut %s %s", m.Sys.AtLeast(s.Put.CutMM), m.Sys.Name())
		}
		return i
	case run.WindStep:
		return instruction{large: []string{"wind " + string(s.Put.What), s.Of},
			lines: []string{s.Put.Part + ", " + coverWhere(m, s)}}
	case run.ShrinkStep:
		i := instruction{large: []string{"shrink " + string(s.Put.What), s.Of}, lines: []string{s.Put.Part}}
		if at := coverWhere(m, s); at != "" {
			i.lines[0] += ", " + at
		}
		i.lines = append(i.lines, "Work in fresh air, away from fuel. Recover it fully all round. Let it cool before you bend it.")
		return i
	case run.GlueStep:
		life := "see its sheet for its working life"
		if n := m.Sheet.Limits.PotLifeMin; n > 0 {
			life = fmt.Sprintf("use it within %d minutes", n)
		}
		return instruction{large: []string{s.Of},
			lines: []string{strings.Join(s.Joints, "; "), "Abrade, wipe, recover, let cure; " + life + "."}}
	}
	if s.Key == run.HoldStops {
		return instruction{large: []string{"hold", "stops"},
			lines: []string{wordsscreen.Capital(m.Sys.Says(s.Says)) + ".", "Correct it, or sign that you build it anyway."}}
	}
	return instruction{large: []string{"hold", s.Name},
		lines: []string{wordsscreen.Capital(m.Sys.Says(s.Says)) + ".", "Sign here before you continue."}}
}

func sayMake(m *desk.Model, s run.RunStep) instruction {
	i := m.Sheet.Index.Unit[s.Of]
	u, c := &m.H.Units[i], &m.Sheet.Units[i]
	var wires []string
	for _, id := range u.Wires {
		if k, ok := m.Sheet.Index.Wire[id]; ok {
			wires = append(wires, strings.TrimSpace(id+" "+paper.Size(&m.H.Wires[k])+" "+model.ColourWords(m.H.Wires[k].Colour.V)))
		}
	}
	out := instruction{large: []string{"twist " + u.ID},
		lines: []string{strings.TrimSpace(u.Name.V + "  " + strings.Join(wires, ", "))}}
	if c.LayMM > 0 {
		out.large = append(out.large, "lay "+m.Sys.Length(paper.Turn(c.LayMM)))
	}
	if u.Shield.V {
		out.lines = append(out.lines, "Shielded, drain "+wordsscreen.OrDash(u.DrainFrom.V)+" and "+wordsscreen.OrDash(u.DrainTo.V)+"; "+
			desk.ShieldText(m, i))
	}
	return out
}

// sayBuildUp is the tape round a centre: how thick it was, and what it is wound to.
func sayBuildUp(m *desk.Model, s run.RunStep) instruction {
	i := m.Sheet.Index.Branch[s.Of]
	mb, l := &m.H.Branches[i], &m.Sheet.Branches[i].Layers[s.Layer]
	out := instruction{large: []string{mb.ID + " build up", "to " + m.Sys.Diameter(l.OverMM)}}
	r := build(m).ReadingOf(s.Of, s.Layer)
	if e, ok := explained(m, s, r); ok {
		out.lines = append(out.lines, builtSays(m, e)...)
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
	out.lines = append(out.lines, l.BuiltUp(m.Sys)+".", wind+".")
	return out
}

func sayJoin(m *desk.Model, s run.RunStep) instruction {
	i := m.Sheet.Index.Splice[s.Of]
	sp, c := &m.H.Splices[i], &m.Sheet.Splices[i]
	lies := "at the centre of " + sp.At
	if sp.Toward.V != "" {
		lies = fmt.Sprintf("%s %s from %s along %s", m.Sys.Length(sp.OffsetMM.V), m.Sys.Name(), sp.At, sp.Toward.V)
	}
	out := instruction{large: []string{"splice " + s.Of},
		lines: []string{wordsscreen.OrDash(c.Part) + ", its sleeve " + lies, "Barrels: " + desk.JoinText(m, i)}}
	if made := built.MadeWhen(m.Sheet)[i]; made.Inside {
		out.lines = append(out.lines, fmt.Sprintf("Make it now: %s of %s covers it.", model.LayerName(made.Layer),
			m.H.Branches[made.Branch].ID))
	}
	return out
}
