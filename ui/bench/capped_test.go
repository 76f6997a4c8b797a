package bench_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc/phase/ends"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/wires"
)

// A spare is capped at a breakout from its own page, says where its cap lies, and gets a
// cavity again; both are undone like anything else.
func TestCapASpare(t *testing.T) {
	m := open(t, "demo.toml")
	id := ""
	for _, w := range m.H.Wires {
		if w.Role.V == model.RoleSpare && w.To.V != "" {
			id = w.ID
			break
		}
	}
	if id == "" {
		t.Fatal("no spare")
	}
	was := m.H
	m.Show(desk.KindWire, id)
	choices := wires.EndChoices(m, id, false)
	at := slices.IndexFunc(choices, func(c desk.Choice) bool { return strings.HasPrefix(c.Value, wires.CapAt+"J1") })
	if at < 0 {
		t.Fatalf("no cap at J1 among %d choices", len(choices))
	}
	wires.PutEnd(m, id, false, choices[at].Value)
	w := m.H.Wires[m.Sheet.X.Wire[id]]
	if w.To.Set || w.CappedAt.V != "J1" || wires.End(m, id, false) != wires.CapAt+"J1" || len(ends.Caps(m.Sheet)) != 1 {
		t.Errorf("capped: %+v, caps %v", w, ends.Caps(m.Sheet))
	}
	p := m.Page(m.ListWidth())
	if !slices.ContainsFunc(p.Rows, func(r desk.Row) bool { return strings.HasPrefix(r.Line(), "folded back") }) {
		t.Error("its page does not say where it is folded back")
	}
	wires.PutEnd(m, id, false, "AUX1:"+m.Sheet.Terms[m.Sheet.X.Termination["AUX1"]].Free[0])
	if w := m.H.Wires[m.Sheet.X.Wire[id]]; w.CappedAt.Set || !w.To.Set {
		t.Errorf("with a cavity again: %+v", w)
	}
	press(m, "backspace")
	press(m, "backspace")
	if !m.H.Same(was) {
		t.Error("two steps back are not where it began")
	}
}
