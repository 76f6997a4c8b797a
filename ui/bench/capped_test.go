package bench

import (
	"slices"
	"strings"
	"testing"
)

// A spare is capped at a breakout from its own page, says where its cap lies, and gets a
// cavity again; both are undone like anything else.
func TestCapASpare(t *testing.T) {
	m := open(t, "demo.toml")
	id := ""
	for _, w := range m.h.Wires {
		if w.Role.V == "spare" && w.To.V != "" {
			id = w.ID
			break
		}
	}
	if id == "" {
		t.Fatal("no spare")
	}
	was := m.h
	m.open(wireScreen(id))
	choices := m.endChoices(id, false)
	at := slices.IndexFunc(choices, func(c choice) bool { return strings.HasPrefix(c.value, capAt+"J1") })
	if at < 0 {
		t.Fatalf("no cap at J1 among %d choices", len(choices))
	}
	m.putEnd(id, false, choices[at].value)
	w := m.h.Wires[m.sheet.X.Wire[id]]
	if w.To.Set || w.CappedAt.V != "J1" || m.end(id, false) != capAt+"J1" || len(m.sheet.Caps()) != 1 {
		t.Errorf("capped: %+v, caps %v", w, m.sheet.Caps())
	}
	p := m.page(m.listWidth())
	if !slices.ContainsFunc(p.rows, func(r row) bool { return strings.HasPrefix(r.line(), "folded back") }) {
		t.Error("its page does not say where it is folded back")
	}
	m.putEnd(id, false, "AUX1:"+m.sheet.Terms[m.sheet.X.Termination["AUX1"]].Free[0])
	if w := m.h.Wires[m.sheet.X.Wire[id]]; w.CappedAt.Set || !w.To.Set {
		t.Errorf("with a cavity again: %+v", w)
	}
	press(m, "backspace")
	press(m, "backspace")
	if !m.h.Same(was) {
		t.Error("two steps back are not where it began")
	}
}
