package wires

import (
	"cmp"
	"fmt"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/wires"
	"contralay/calc/query/offer"
	"contralay/calc/query/why"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/paper"
)

// What a wire's values are chosen from.

// sizeChoices are the sizes of the wire's specification.
func sizeChoices(m *desk.Model, id string) func(m *desk.Model) []desk.Choice {
	return func(m *desk.Model) []desk.Choice {
		w := &m.H.Wires[m.Sheet.Index.Wire[id]]
		used := map[string]int{}
		for k := range m.H.Wires {
			if m.H.Wires[k].Spec == w.Spec {
				used[m.H.Wires[k].Size]++
			}
		}
		var out []desk.Choice
		for _, s := range m.Sheet.Cat.Sizes(w.Spec) {
			c := desk.Choice{Value: s, Says: paper.Size(&model.Wire{Size: s}), Used: used[s]}
			if e, ok := m.Sheet.Cat.Wire(w.Spec, s); ok {
				c.Says, c.Why = c.Says+overOf(m, e), looked(e)
				c.More = func() string { return sizeSays(m, id, s) }
			}
			out = append(out, c)
		}
		return out
	}
}

// sizeSays is whether a size does for a wire, and what it costs.
func sizeSays(m *desk.Model, id, size string) string {
	i := m.Sheet.Index.Wire[id]
	text := "Enter takes it"
	if wires.Carries(m.Sheet, i) {
		if says := offer.Doubt(m.Sheet, i, size); says != "" {
			text = "it does not work: " + says + ". Enter takes it anyway"
		} else {
			text = "it works. Enter takes it"
		}
	}
	if size == m.H.Wires[i].Size {
		return text
	}
	t := m.Try("size "+id+size, func() *model.Harness {
		return m.H.EditWire(i, func(w *model.Wire) { w.Size = size })
	})
	if _, b, ok := t.BranchHere(); ok && !b.Waiting && len(b.Layers) > 0 {
		text += ": " + t.Tally().Differs(m.Tally(), m.Sys)
	}
	return text
}

// overOf is a catalogue diameter in a list, and looked why it is so.
func overOf(m *desk.Model, e catalogue.Wire) string {
	mem := ""
	if overStanding(e) == catalogue.Memory {
		mem = "~"
	}
	return fmt.Sprintf("   OD %s%s %s", m.Sys.Fine(e.OverMM), mem, m.Sys.Name())
}

func looked(e catalogue.Wire) []desk.Reason {
	return []desk.Reason{{Made: func() (why.Why, bool) {
		return why.LookedUp("OD of "+e.Spec+" "+e.Size, float64(e.OverMM), why.Diameter,
			catalogue.Origin{Source: e.Source, Standing: overStanding(e)}), true
	}}}
}

func overStanding(e catalogue.Wire) catalogue.Standing { return cmp.Or(e.OverStanding, e.Standing) }

// specChoices are the specifications that have the wire's size.
func specChoices(m *desk.Model, id string) func(m *desk.Model) []desk.Choice {
	return func(m *desk.Model) []desk.Choice {
		size := m.H.Wires[m.Sheet.Index.Wire[id]].Size
		used := map[string]int{}
		for k := range m.H.Wires {
			used[m.H.Wires[k].Spec]++
		}
		var out []desk.Choice
		for _, s := range m.Sheet.Cat.Specs() {
			if e, ok := m.Sheet.Cat.Wire(s, size); ok {
				out = append(out, desk.Choice{Value: s, Says: s + overOf(m, e), Used: used[s], Why: looked(e)})
			}
		}
		return out
	}
}

func colourChoices(m *desk.Model) []desk.Choice {
	var all []string
	for k := range m.H.Wires {
		if c := m.H.Wires[k].Colour.V; c != "" {
			all = append(all, c)
		}
	}
	used := desk.Counted(all)
	all = append(all, m.Sheet.Limits.ColourStock...)
	var out []desk.Choice
	seen := map[string]bool{}
	for _, c := range all {
		if !seen[c] {
			seen[c] = true
			out = append(out, desk.Choice{Value: c, Says: paper.Colour(c), Used: used[c]})
		}
	}
	return out
}

func roleChoices(m *desk.Model) []desk.Choice {
	var out []desk.Choice
	for _, r := range model.Roles {
		n := 0
		for k := range m.H.Wires {
			if m.H.Wires[k].Role.V == r {
				n++
			}
		}
		out = append(out, desk.Choice{Value: string(r), Says: string(r), Used: n})
	}
	return out
}

// endChoices are the free cavities and splices a wire could end in, those of its own
// connector first, then of connectors by how many wires they have.
func endChoices(m *desk.Model, id string, from bool) []desk.Choice {
	now, _ := m.Sheet.Index.End(endOf(m, id, from))
	w := m.H.Wires[m.Sheet.Index.Wire[id]]
	var out []desk.Choice
	if now.Termination != "" && now.Cavity != "" { // where it ends already, so that Enter at once leaves it there
		v := now.Termination + ":" + now.Cavity
		out = append(out, desk.Choice{Value: v, Says: v, Rank: 2*len(m.H.Wires) + 2})
	}
	for t := range m.H.Terminations {
		term := &m.H.Terminations[t]
		rank := m.Sheet.Terms[t].Used
		if term.ID == now.Termination {
			rank += len(m.H.Wires) + 1
		}
		for _, c := range desk.FreeFor(m.Sheet, t, w) {
			out = append(out, desk.Choice{Value: term.ID + ":" + c, Says: term.ID + ":" + c + "   " + term.Name.V, Rank: rank})
		}
	}
	if w.Role.V == model.RoleSpare {
		out = append(out, capChoices(m, id, from)...)
	}
	for k := range m.H.Splices {
		n := 0
		for j := range m.H.Wires {
			if m.H.Wires[j].From.V == m.H.Splices[k].ID || m.H.Wires[j].To.V == m.H.Splices[k].ID {
				n++
			}
		}
		out = append(out, desk.Choice{Value: m.H.Splices[k].ID, Says: m.H.Splices[k].ID + "   splice", Rank: n})
	}
	return out
}

// capChoices are the places a spare could be capped at: those on the way it has now, and
// where it could go from its one end.
func capChoices(m *desk.Model, id string, from bool) []desk.Choice {
	w := &m.H.Wires[m.Sheet.Index.Wire[id]]
	other := w.From.V
	if from {
		other = w.To.V
	}
	e, ok := m.Sheet.Index.End(other)
	if !ok || e.Termination == "" {
		return nil
	}
	var out []desk.Choice
	for j := range m.H.Breakouts {
		b := &m.H.Breakouts[j]
		if _, ok := m.Sheet.Index.Between(e.Termination, b.ID); ok {
			out = append(out, desk.Choice{Value: capAt + b.ID, Says: capAt + b.ID + "   " + b.Name.V})
		}
	}
	for t := range m.H.Terminations {
		b := &m.H.Terminations[t]
		if _, ok := m.Sheet.Index.Between(e.Termination, b.ID); ok && b.ID != e.Termination {
			out = append(out, desk.Choice{Value: capAt + b.ID, Says: capAt + b.ID + "   " + b.Name.V})
		}
	}
	return out
}

// foldRow is how much of a capped spare is folded back, and where its cap lies.
func foldRow(m *desk.Model, id string) (desk.Row, bool) {
	for _, c := range ends.Caps(m.Sheet) {
		if w := &m.H.Wires[c.Wire]; w.ID == id {
			fold := c.FoldMM
			return desk.Row{Key: "fold", Id: id, Text: fmt.Sprintf("%-12s %s %s, its cap %s", "folded back", m.Sys.Length(fold),
				m.Sys.Name(), desk.CapText(m, c)), Detail: "+ - changes how much is folded back at its capped end",
				Step: func(m *desk.Model, by int) {
					v := min(max(0, unit.Written(fold+unit.Millimetre(10*by))), desk.LongestBranch)
					m.Change(m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) { w.FoldMM = model.Some(v) }),
						fmt.Sprintf("%s %s folded back", m.Sys.Length(v), m.Sys.Name()))
				}}, true
		}
	}
	return desk.Row{}, false
}
