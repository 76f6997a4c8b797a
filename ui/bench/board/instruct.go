package board

import (
	"fmt"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	wordsscreen "contralay/ui/bench/words"
	"contralay/ui/paper"
)

// What each step of a run says.

// instruction is one step in words: a title, what stands in large letters, and lines.
type instruction struct {
	title string
	large []string
	lines []string
}

func instruct(m *desk.Model, s run.RunStep) instruction {
	switch s.Kind {
	case run.CutStep:
		return sayCut(m, s)
	case run.MakeStep:
		return sayMake(m, s)
	case run.LayStep:
		return sayLay(m, s)
	case run.BuildUpStep:
		return sayBuildUp(m, s)
	case run.JoinStep:
		return sayJoin(m, s)
	case run.ThreadStep:
		i := instruction{title: "thread on", large: []string{"on: " + string(s.Put.What), s.Of},
			lines: []string{s.Put.Part + ", from " + s.Put.From}}
		if s.Put.CutMM > 0 {
			i.lines[0] += fmt.Sprintf(", cut %s %s", m.Sys.AtLeast(s.Put.CutMM), m.Sys.Name())
		}
		return i
	case run.WindStep:
		return instruction{title: "wind on", large: []string{"wind " + string(s.Put.What), s.Of},
			lines: []string{s.Put.Part + ", " + coverWhere(m, s)}}
	case run.PinStep:
		return sayPins(m, s)
	case run.ShrinkStep:
		i := instruction{title: "shrink", large: []string{"shrink " + string(s.Put.What), s.Of}, lines: []string{s.Put.Part}}
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
		return instruction{title: "adhesive", large: []string{s.Of},
			lines: []string{strings.Join(s.Joints, "; "), "Abrade, wipe, recover, let cure; " + life + "."}}
	}
	if s.Key == run.HoldStops {
		return instruction{title: "hold point", large: []string{"hold", "stops"},
			lines: []string{wordsscreen.Capital(m.Sys.Says(s.Says)) + ".", "Correct it, or sign that you build it anyway."}}
	}
	return instruction{title: "hold point", large: []string{"hold", s.Name},
		lines: []string{wordsscreen.Capital(m.Sys.Says(s.Says)) + ".", "Sign here before you continue."}}
}

// sayCut is the wires of a batch that are still to be cut: one that is cut again stands alone.
func sayCut(m *desk.Model, s run.RunStep) instruction {
	b := build(m)
	var ids, cut []string
	for n, k := range s.Cut.Wires {
		w := &m.H.Wires[k]
		if b.Did(s.Marks()[n]) && !s.In(b) {
			cut = append(cut, w.ID)
			continue
		}
		ids = append(ids, strings.TrimSpace(w.ID+" "+model.ColourWords(w.Colour.V)))
	}
	out := instruction{title: "cut", large: []string{fmt.Sprintf("cut %d x %s %s", len(ids), m.Sys.AtLeast(s.Cut.CutMM), m.Sys.Name()),
		sizeOf(s.Cut.Size)},
		lines: []string{fmt.Sprintf("%s %s. Flag both ends as you cut", s.Cut.Spec, sizeOf(s.Cut.Size)),
			"Wire and colour: " + strings.Join(ids, ", ")}}
	if len(cut) > 0 {
		out.lines = append(out.lines, "Cut already: "+strings.Join(cut, ", "))
	}
	return out
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
	out := instruction{title: "make up", large: []string{"twist " + u.ID},
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

// sayLay is one layer: which, which way, how long a turn, how many.
func sayLay(m *desk.Model, s run.RunStep) instruction {
	i := m.Sheet.Index.Branch[s.Of]
	mb, b := &m.H.Branches[i], &m.Sheet.Branches[i]
	l := &b.Layers[s.Layer]
	name := "layer " + fmt.Sprint(s.Layer)
	if s.Layer == 0 {
		name = "centre"
	}
	out := instruction{title: fmt.Sprintf("lay %s, %s", strings.TrimSpace(mb.ID+" "+mb.Name.V), model.LayerName(s.Layer)),
		large: []string{strings.TrimSpace(mb.ID + " " + name + " " + wordsscreen.Either(l.Hand == model.HandStraight, "", string(l.Hand))),
			wordsscreen.Plural(len(l.Members), "piece", "pieces") + " straight"}}
	how := fmt.Sprintf("Start at %s, straight", mb.From)
	if l.LayMM > 0 {
		turn := paper.Turn(l.LayMM)
		out.large[1] = fmt.Sprintf("%d pieces lay %s", len(l.Members), m.Sys.Length(turn))
		how = fmt.Sprintf("Start at %s, %s, lay %s %s, %s turns", mb.From, l.Hand, m.Sys.Length(turn), m.Sys.Name(),
			unit.Fixed(l.Turns, 1))
	}
	var ids []string
	for k, c := range l.Members {
		id := c.ID
		if k == 0 && c.ID == l.Tracer && s.Layer > 0 {
			id = "*" + id
		}
		ids = append(ids, id)
	}
	if e, ok := explained(m, s, build(m).ReadingOf(s.Of, s.Layer)); ok {
		out.lines = append(out.lines, readingSays(m, e)...) // the verdict first: a low screen shows that much
	}
	over, _ := sheetOver(m, s)
	how += fmt.Sprintf("; OD %s %s when it is laid", m.Sys.Diameter(over), m.Sys.Name())
	switch bind := b.As[s.Layer].BindMM.V; {
	case s.Bare:
		how += ". The next step builds it up"
	case bind > 0:
		how += fmt.Sprintf(" and bound: the binder adds %s", m.Sys.Fine(bind))
	}
	out.lines = append(out.lines, how)
	for k, made := range built.MadeWhen(m.Sheet) {
		if made.Branch == i && made.Layer == s.Layer && made.Inside {
			out.lines = append(out.lines, "In this layer lies "+paper.Becomes(m.Sheet, m.Sys, k))
		}
	}
	out.lines = append(out.lines, "Clockwise, seen from "+mb.From+": "+strings.Join(ids, " "))
	return out
}

// sayBuildUp is the tape round a centre: how thick it was, and what it is wound to.
func sayBuildUp(m *desk.Model, s run.RunStep) instruction {
	i := m.Sheet.Index.Branch[s.Of]
	mb, l := &m.H.Branches[i], &m.Sheet.Branches[i].Layers[s.Layer]
	out := instruction{title: fmt.Sprintf("build up %s, %s", strings.TrimSpace(mb.ID+" "+mb.Name.V), model.LayerName(s.Layer)),
		large: []string{mb.ID + " build up", "to " + m.Sys.Diameter(l.OverMM)}}
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
	out := instruction{title: "splice", large: []string{"splice " + s.Of},
		lines: []string{wordsscreen.OrDash(c.Part) + ", its sleeve " + lies, "Barrels: " + desk.JoinText(m, i)}}
	if made := built.MadeWhen(m.Sheet)[i]; made.Inside {
		out.lines = append(out.lines, fmt.Sprintf("Make it now: %s of %s covers it.", model.LayerName(made.Layer),
			m.H.Branches[made.Branch].ID))
	}
	return out
}

// sayPins is which wire goes into which cavity.
func sayPins(m *desk.Model, s run.RunStep) instruction {
	t := m.Sheet.Index.Termination[s.Of]
	c := &m.Sheet.Terms[t]
	var wired, shut []string
	for _, name := range c.Cavities {
		switch cav := c.State[name]; {
		case len(cav.Wires) > 0:
			wired = append(wired, name+" "+strings.Join(cav.Wires, "+"))
		case cav.Drain != "":
			wired = append(wired, name+" drain of "+cav.Drain)
		case c.Sealed:
			shut = append(shut, name)
		}
	}
	out := instruction{title: "contacts", large: []string{"contacts", s.Of},
		lines: []string{"Seen from the wire side. Cavity and wire: " + strings.Join(wired, ", ")}}
	if len(shut) > 0 {
		out.lines = append(out.lines, "Contact and plug: "+strings.Join(shut, " "))
	}
	return out
}
