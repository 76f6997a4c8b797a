package bench

import (
	"cmp"
	"fmt"

	"contralay/calc"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper"
)

// What a wire's values are chosen from.

// sizeChoices are the sizes of the wire's specification.
func (m *Model) sizeChoices(id string) func(m *Model) []choice {
	return func(m *Model) []choice {
		w := &m.h.Wires[m.sheet.X.Wire[id]]
		used := map[string]int{}
		for k := range m.h.Wires {
			if m.h.Wires[k].Spec == w.Spec {
				used[m.h.Wires[k].Size]++
			}
		}
		var out []choice
		for _, s := range m.sheet.Cat.Sizes(w.Spec) {
			c := choice{value: s, says: paper.Size(&model.Wire{Size: s}), used: used[s]}
			if e, ok := m.sheet.Cat.Wire(w.Spec, s); ok {
				c.says, c.why = c.says+m.overOf(e), looked(e)
				c.more = func() string { return m.sizeSays(id, s) }
			}
			out = append(out, c)
		}
		return out
	}
}

// sizeSays is whether a size does for a wire, and what it costs.
func (m *Model) sizeSays(id, size string) string {
	i := m.sheet.X.Wire[id]
	text := "Enter takes it"
	if m.sheet.Carries(i) {
		if says := m.sheet.Doubt(i, size); says != "" {
			text = "does not do: " + says + "; Enter takes it all the same"
		} else {
			text = "does; Enter takes it"
		}
	}
	if size == m.h.Wires[i].Size {
		return text
	}
	t := m.try("size "+id+size, func() *model.Harness {
		return m.h.EditWire(i, func(w *model.Wire) { w.Size = size })
	})
	if _, b, ok := t.b(); ok && !b.Waiting && len(b.Layers) > 0 {
		text += ": " + m.differs(m.tally(), t.tally())
	}
	return text
}

// overOf is a catalogue diameter in a list, and looked why it is so.
func (m *Model) overOf(e catalogue.Wire) string {
	mem := ""
	if overStanding(e) == catalogue.Memory {
		mem = "~"
	}
	return fmt.Sprintf("   over %s%s %s", m.sys.Fine(e.OverMM), mem, m.sys.Name())
}

func looked(e catalogue.Wire) []reason {
	return []reason{{made: func() (calc.Why, bool) {
		return calc.LookedUp("over of "+e.Spec+" "+e.Size, float64(e.OverMM), calc.Diameter, catalogue.Origin{Source: e.Source, Standing: overStanding(e)}), true
	}}}
}

func overStanding(e catalogue.Wire) catalogue.Standing { return cmp.Or(e.OverStanding, e.Standing) }

// specChoices are the specifications that have the wire's size.
func (m *Model) specChoices(id string) func(m *Model) []choice {
	return func(m *Model) []choice {
		size := m.h.Wires[m.sheet.X.Wire[id]].Size
		used := map[string]int{}
		for k := range m.h.Wires {
			used[m.h.Wires[k].Spec]++
		}
		var out []choice
		for _, s := range m.sheet.Cat.Specs() {
			if e, ok := m.sheet.Cat.Wire(s, size); ok {
				out = append(out, choice{value: s, says: s + m.overOf(e), used: used[s], why: looked(e)})
			}
		}
		return out
	}
}

func colourChoices(m *Model) []choice {
	var all []string
	for k := range m.h.Wires {
		if c := m.h.Wires[k].Colour.V; c != "" {
			all = append(all, c)
		}
	}
	used := counted(all)
	for a := range 10 {
		all = append(all, fmt.Sprint(a))
	}
	for a := range 9 {
		all = append(all, fmt.Sprint(90+a)) // white with one stripe
	}
	var out []choice
	seen := map[string]bool{}
	for _, c := range all {
		if !seen[c] {
			seen[c] = true
			out = append(out, choice{value: c, says: paper.Colour(c), used: used[c]})
		}
	}
	return out
}

func roleChoices(m *Model) []choice {
	var out []choice
	for _, r := range roles {
		n := 0
		for k := range m.h.Wires {
			if m.h.Wires[k].Role.V == r {
				n++
			}
		}
		out = append(out, choice{value: r, says: r, used: n})
	}
	return out
}

var roles = [...]string{"power", "ground", "signal", "data", "spare"}

// endChoices are the free cavities and splices a wire could end in, those of its own
// connector first, then of connectors by how many wires they have.
func (m *Model) endChoices(id string, from bool) []choice {
	now, _ := m.sheet.X.End(m.end(id, from))
	w := m.h.Wires[m.sheet.X.Wire[id]]
	var out []choice
	if now.Termination != "" && now.Cavity != "" { // where it ends already, so that Enter at once leaves it there
		v := now.Termination + ":" + now.Cavity
		out = append(out, choice{value: v, says: v, rank: 2*len(m.h.Wires) + 2})
	}
	for t := range m.h.Terminations {
		term := &m.h.Terminations[t]
		rank := m.sheet.Terms[t].Used
		if term.ID == now.Termination {
			rank += len(m.h.Wires) + 1
		}
		for _, c := range m.freeFor(t, w) {
			out = append(out, choice{value: term.ID + ":" + c, says: term.ID + ":" + c + "   " + term.Name.V, rank: rank})
		}
	}
	if w.Role.V == "spare" {
		out = append(out, m.capChoices(id, from)...)
	}
	for k := range m.h.Splices {
		n := 0
		for j := range m.h.Wires {
			if m.h.Wires[j].From.V == m.h.Splices[k].ID || m.h.Wires[j].To.V == m.h.Splices[k].ID {
				n++
			}
		}
		out = append(out, choice{value: m.h.Splices[k].ID, says: m.h.Splices[k].ID + "   splice", rank: n})
	}
	return out
}

// capChoices are the places a spare could be capped at: those on the way it has now, and
// where it could go from its one end.
func (m *Model) capChoices(id string, from bool) []choice {
	w := &m.h.Wires[m.sheet.X.Wire[id]]
	other := w.From.V
	if from {
		other = w.To.V
	}
	e, ok := m.sheet.X.End(other)
	if !ok || e.Termination == "" {
		return nil
	}
	var out []choice
	for j := range m.h.Breakouts {
		b := &m.h.Breakouts[j]
		if _, ok := m.sheet.X.Between(e.Termination, b.ID); ok {
			out = append(out, choice{value: capAt + b.ID, says: capAt + b.ID + "   " + b.Name.V})
		}
	}
	for t := range m.h.Terminations {
		b := &m.h.Terminations[t]
		if _, ok := m.sheet.X.Between(e.Termination, b.ID); ok && b.ID != e.Termination {
			out = append(out, choice{value: capAt + b.ID, says: capAt + b.ID + "   " + b.Name.V})
		}
	}
	return out
}

// foldRow is how much of a capped spare is folded back, and where its cap lies.
func (m *Model) foldRow(id string) (row, bool) {
	for _, c := range m.sheet.Caps() {
		if w := &m.h.Wires[c.Wire]; w.ID == id {
			fold := c.FoldMM
			return row{key: "fold", id: id, text: fmt.Sprintf("%-12s %s %s, its cap %s", "folded back", m.sys.Length(fold), m.sys.Name(), m.capText(c)), detail: "+ - changes how much is folded back at its capped end",
				step: func(m *Model, by int) {
					v := min(max(0, fold+unit.Millimetre(10*by)), longestBranch)
					m.change(m.h.EditWire(m.sheet.X.Wire[id], func(w *model.Wire) { w.FoldMM = model.Some(v) }), fmt.Sprintf("%s %s folded back", m.sys.Length(v), m.sys.Name()))
				}}, true
		}
	}
	return row{}, false
}

// capText is where a cap lies.
func (m *Model) capText(c calc.Cap) string {
	if c.Branch < 0 {
		return "at " + c.Place
	}
	b := &m.h.Branches[c.Branch]
	return fmt.Sprintf("%s %s from %s on %s", m.sys.Length(c.AtMM), m.sys.Name(), b.From, b.ID)
}
