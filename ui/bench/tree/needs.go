package tree

import (
	"fmt"
	"strings"

	"contralay/calc/query/missing"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// What is still missing, on the map: a row a kind, which leads to where it is given.

// The screens of what is missing.
const (
	NeedsKind desk.Kind = "still needed"
	WayKind   desk.Kind = "a branch to"
)

// mostNeeds is how many rows of needs stand on the map itself.
const mostNeeds = 3

// needRows are the worst of what is missing, and where there is more a row that lists it; none on an
// empty board, which says itself how to begin.
func needRows(m *desk.Model) []desk.Row {
	all := allNeeds(m)
	if len(all) <= mostNeeds+1 {
		return all
	}
	return append(all[:mostNeeds:mostNeeds], desk.Row{Key: "needs", Mark: all[mostNeeds].Mark,
		Text: fmt.Sprintf("And %d more things are missing", len(all)-mostNeeds), Detail: "Enter lists what is still needed",
		Enter: func(m *desk.Model) { m.Show(NeedsKind, "") }})
}

// allNeeds is a row for everything that is missing.
func allNeeds(m *desk.Model) []desk.Row {
	return m.Once("needs", func() []desk.Row {
		var out []desk.Row
		for _, n := range missing.Of(m.Sheet) {
			if n.Kind != missing.Anything {
				out = append(out, needRow(n))
			}
		}
		return out
	})
}

// needMarks are the marks of the ranks.
var needMarks = map[missing.Rank]string{missing.Builds: "!", missing.Judges: "?", missing.Prints: "-"}

func needRow(n missing.Need) desk.Row {
	r := desk.Row{Key: "need " + string(n.Kind), Mark: needMarks[n.Rank], Text: words.Capital(n.Says),
		Detail: needDetail(n), Does: "give it"}
	switch f := givenHere(n); {
	case f != nil:
		r.Enter = func(m *desk.Model) { m.OpenField(f(m), "") }
	default:
		r.Enter = func(m *desk.Model) { leadTo(m, n) }
	}
	return r
}

// needDetail says what Enter does, and names all that lack it.
func needDetail(n missing.Need) string {
	to := "Enter asks for it"
	if givenHere(n) == nil {
		to = "Enter goes to where it is given"
	}
	if len(n.IDs) > 1 {
		return fmt.Sprintf("%s, %s first. All: %s", to, n.IDs[0], strings.Join(n.IDs, ", "))
	}
	return to
}

// NeedsPage lists all that is missing.
func NeedsPage(m *desk.Model, _ int, _ string) desk.Page {
	return desk.Page{Lines: []string{"! it cannot be built without, ? something is not judged, - only the printed sheet lacks it"},
		Empty: "Nothing is missing. Esc goes back", Rows: allNeeds(m)}
}

// leadTo goes to the row where the first thing of a need is given.
func leadTo(m *desk.Model, n missing.Need) {
	id := n.IDs[0]
	wire := func(row string) {
		m.Show(desk.KindWire, id)
		m.PutOn(row)
	}
	switch n.Kind {
	case missing.Size, missing.Spec, missing.Current, missing.Colour:
		wire(string(n.Kind))
	case missing.Ends, missing.End:
		row := "to"
		if w := &m.H.Wires[m.Sheet.Index.Wire[id]]; w.From.V == "" {
			row = "from"
		}
		wire(row)
	case missing.Length:
		for len(m.Stack) > 0 && m.Top() != BranchesKind {
			m.Back()
		}
		m.PutOn("branch " + id)
		m.Tell("type the length of " + id)
	case missing.Way:
		m.Show(WayKind, id)
	case missing.UnitWires:
		m.Open(desk.ChooseScreen("a wire of unit "+id, func(m *desk.Model) bool { _, ok := m.Sheet.Index.Unit[id]; return ok },
			looseWires, func(*desk.Model) string { return "" }, func(m *desk.Model, v string) { putInUnit(m, id, v) }, nil))
	case missing.Device, missing.Trip:
		row := string(n.Kind)
		if n.Kind == missing.Device && m.H.Feeds[m.Sheet.Index.Feed[id]].Device.V != "" {
			row = "rating"
		}
		m.Show(desk.KindFeed, id)
		m.PutOn(row)
	case missing.Contacts, missing.Gender:
		m.Show(EndKind, id)
		m.PutOn(string(n.Kind))
	default:
		m.Show(EndKind, id)
		if t, ok := m.Sheet.Index.Termination[id]; ok && n.Kind == missing.Unwired && len(m.Sheet.Terms[t].Free) > 0 {
			m.PutOn("cavity " + m.Sheet.Terms[t].Free[0]) // Enter there runs wires from it
			m.Tell("Enter on a free cavity runs wires from it")
		}
	}
}

// looseWires are the wires that are in no unit, to choose from.
func looseWires(m *desk.Model) []desk.Choice {
	var out []desk.Choice
	for i := range m.H.Wires {
		w := &m.H.Wires[i]
		if _, in := m.Sheet.Index.UnitOf[w.ID]; !in {
			out = append(out, desk.Choice{Value: w.ID,
				Says: strings.TrimSpace(w.ID + "  " + w.From.V + " to " + w.To.V + "  " + w.Signal.V)})
		}
	}
	return out
}

// putInUnit puts a wire into a unit.
func putInUnit(m *desk.Model, unit, wire string) {
	m.Change(m.H.EditUnit(m.Sheet.Index.Unit[unit], func(u *model.Unit) { u.Wires = append(u.Wires[:len(u.Wires):len(u.Wires)], wire) }),
		"wire "+wire+" is in unit "+unit)
}
