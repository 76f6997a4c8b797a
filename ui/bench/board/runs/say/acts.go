package say

import (
	"fmt"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// Act is a step of one act: what stands in large letters, and lines.
type Act struct{ Large, Lines []string }

// Of is what a step of one act says; a centre that is built up hangs on what was measured, and is not
// said here.
func Of(m *desk.Model, s run.RunStep) Act {
	switch s.Kind {
	case run.MakeStep:
		return makeUp(m, s)
	case run.JoinStep:
		return join(m, s)
	case run.ThreadStep:
		i := Act{Large: []string{"on: " + string(s.Put.What), s.Of},
			Lines: []string{s.Put.Part + ", from " + s.Put.From}}
		if s.Put.CutMM > 0 {
			i.Lines[0] += fmt.Sprintf(", cut %s %s", m.Sys.AtLeast(s.Put.CutMM), m.Sys.Name())
		}
		return i
	case run.WindStep:
		return Act{Large: []string{"wind " + string(s.Put.What), s.Of},
			Lines: []string{s.Put.Part + ", " + CoverWhere(m, s)}}
	case run.ShrinkStep:
		i := Act{Large: []string{"shrink " + string(s.Put.What), s.Of}, Lines: []string{s.Put.Part}}
		if at := CoverWhere(m, s); at != "" {
			i.Lines[0] += ", " + at
		}
		i.Lines = append(i.Lines, "Work in fresh air, away from fuel. Recover it fully all round. Let it cool before you bend it.")
		return i
	case run.WeighStep:
		says := "The mass of its wires is not known"
		if g := m.Sheet.Totals.Gram; g.Set {
			says = "The sheet has " + words.Grams(g.V, true) + " without its covers"
		}
		return Act{Large: []string{"weigh it"}, Lines: []string{
			"Put the finished harness on the scale, without what only holds it. " + says + "."}}
	case run.GlueStep:
		life := "see its sheet for its working life"
		if n := m.Sheet.Limits.PotLifeMin; n > 0 {
			life = fmt.Sprintf("use it within %d minutes", n)
		}
		return Act{Large: []string{s.Of},
			Lines: []string{strings.Join(s.Joints, "; "), "Abrade, wipe, recover, let cure; " + life + "."}}
	}
	if s.Key == run.HoldStops {
		return Act{Large: []string{"hold", "stops"},
			Lines: []string{words.Capital(m.Sys.Says(s.Says)) + ".", "Correct it, or sign that you build it anyway."}}
	}
	return Act{Large: []string{"hold", s.Name},
		Lines: []string{words.Capital(m.Sys.Says(s.Says)) + ".", "Sign here before you continue."}}
}

func makeUp(m *desk.Model, s run.RunStep) Act {
	i := m.Sheet.Index.Unit[s.Of]
	u, c := &m.H.Units[i], &m.Sheet.Units[i]
	var wires []string
	for _, id := range u.Wires {
		if k, ok := m.Sheet.Index.Wire[id]; ok {
			wires = append(wires, strings.TrimSpace(id+" "+paper.Size(&m.H.Wires[k])+" "+model.ColourWords(m.H.Wires[k].Colour.V)))
		}
	}
	out := Act{Large: []string{"twist " + u.ID},
		Lines: []string{strings.TrimSpace(u.Name.V + "  " + strings.Join(wires, ", "))}}
	if c.LayMM > 0 {
		out.Large = append(out.Large, "lay "+m.Sys.Length(paper.Turn(c.LayMM)))
	}
	if u.Shield.V {
		out.Lines = append(out.Lines, "Shielded, drain "+words.OrDash(u.DrainFrom.V)+" and "+words.OrDash(u.DrainTo.V)+"; "+
			desk.ShieldText(m, i))
	}
	return out
}

func join(m *desk.Model, s run.RunStep) Act {
	i := m.Sheet.Index.Splice[s.Of]
	sp, c := &m.H.Splices[i], &m.Sheet.Splices[i]
	lies := "at the centre of " + sp.At
	if sp.Toward.V != "" {
		lies = fmt.Sprintf("%s %s from %s along %s", m.Sys.Length(sp.OffsetMM.V), m.Sys.Name(), sp.At, sp.Toward.V)
	}
	out := Act{Large: []string{"splice " + s.Of},
		Lines: []string{words.OrDash(c.Part) + ", its sleeve " + lies, "Barrels: " + desk.JoinText(m, i)}}
	if made := built.MadeWhen(m.Sheet)[i]; made.Inside {
		out.Lines = append(out.Lines, fmt.Sprintf("Make it now: %s of %s covers it.", model.LayerName(made.Layer),
			m.H.Branches[made.Branch].ID))
	}
	return out
}
