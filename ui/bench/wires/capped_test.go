package wires_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc/phase/ends"
	"contralay/model"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/wires"
)

// A spare is capped at a breakout from its own page, says where its cap lies, and gets a
// cavity again; both are undone like anything else.
func TestCapASpare(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.Open(t, "demo.toml")
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
	w := m.H.Wires[m.Sheet.Index.Wire[id]]
	if w.To.Set || w.CappedAt.V != "J1" || wires.End(m, id, false) != wires.CapAt+"J1" || len(ends.Caps(m.Sheet)) != 1 {
		t.Errorf("capped: %+v, caps %v", w, ends.Caps(m.Sheet))
	}
	p := m.Page(m.ListWidth())
	if !slices.ContainsFunc(p.Rows, func(r desk.Row) bool { return strings.HasPrefix(r.Line(), "folded back") }) {
		t.Error("its page does not say where it is folded back")
	}
	wires.PutEnd(m, id, false, "AUX1:"+m.Sheet.Terms[m.Sheet.Index.Termination["AUX1"]].Free[0])
	if w := m.H.Wires[m.Sheet.Index.Wire[id]]; w.CappedAt.Set || !w.To.Set {
		t.Errorf("with a cavity again: %+v", w)
	}
	benchtest.Press(m, "backspace")
	benchtest.Press(m, "backspace")
	if !m.H.Same(was) {
		t.Error("two steps back are not where it began")
	}
}

// One more like a capped spare is capped where that is.
func TestOneMoreLikeACappedSpare(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.Open(t, "demo.toml")
	k := slices.IndexFunc(m.H.Wires, func(w model.Wire) bool { return w.Role.V == "spare" && w.To.V != "" })
	id := m.H.Wires[k].ID
	if err := wires.SetEnd(m, id, false, wires.CapAt+"J1"); err != nil {
		t.Fatal(err)
	}
	if err := wires.SetEnd(m, id, false, wires.CapAt+"J1"); err != nil {
		t.Errorf("typed again as it stands: %v", err)
	}
	if err := wires.SetEnd(m, id, false, wires.CapAt+"nowhere"); err == nil {
		t.Error("capped at a place that is not there")
	}
	if err := wires.SetEnd(m, id, true, wires.CapAt+"J1"); err == nil {
		t.Error("capped at both ends")
	}
	n := len(m.H.Wires)
	wires.AddLike(m, id, 1)
	if len(m.H.Wires) != n+1 {
		t.Fatalf("none was added:\n%s", benchtest.View(m))
	}
	if w := m.H.Wires[n]; w.CappedAt.V != "J1" || w.To.Set || w.From.V == "" || w.From.V == m.H.Wires[k].From.V {
		t.Errorf("%+v", w)
	}
}
