package tree_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/calc/phase/planning"
	"contralay/model"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
)

// The tree is made at the bench: a leg on a breakout, a branch split, a length typed;
// each undone by one key.
func TestTreeByKeys(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "branches")
	was := m.H
	benchtest.GoTo(t, m, "@R1 to J2", "+", "@a bare leg", "enter", "1", "2", "0", "enter")
	if n := len(m.H.Branches); n != len(was.Branches)+1 || m.H.Branches[n-1].From != "J2" {
		t.Fatalf("%d branches: %s", n, m.Says)
	}
	leg := m.H.Branches[len(m.H.Branches)-1]
	if row := m.Page(m.ListWidth()).Rows[m.At(m.Page(m.ListWidth()))]; row.Key != "branch "+leg.ID {
		t.Errorf("the cursor is on %q, not on the new leg", row.Line())
	}
	benchtest.Press(m, "1", "8", "0", "enter")
	if got := m.H.Branches[len(m.H.Branches)-1].LengthMM; got != 180 {
		t.Errorf("the leg is %v long", got)
	}
	benchtest.Press(m, "backspace", "backspace")
	if d := cmp.Diff(was, m.H); d != "" {
		t.Errorf("two Backspaces leave %s", d)
	}
	benchtest.GoTo(t, m, "@T1 to J1", "-", "@split", "enter", "1", "0", "0", "enter")
	if n := len(m.H.Branches); n != len(was.Branches)+1 || m.H.Branches[0].LengthMM != 100 ||
		m.H.Branches[n-1].LengthMM != was.Branches[0].LengthMM-100 {
		t.Fatalf("split: %+v, %s", m.H.Branches[0].LengthMM, m.Says)
	}
	if s := planning.Stale(m.Sheet); len(s) > 0 {
		t.Errorf("after a split %v hold not what runs there", s)
	}
	benchtest.GoTo(t, m, "@L1 to INJ1", "+")
	if v := benchtest.View(m); strings.Contains(v, "leg") {
		t.Errorf("a leg is offered on a termination:\n%s", v)
	}
}

// A wire's end moved leaves every lay-up as it is and marks those it spoils; one key
// takes those away, so that new ones are proposed, and one brings them back.
func TestMovedEndMarksWhatItSpoils(t *testing.T) {
	m := benchtest.OpenAt(t, "example.toml", "wires")
	if len(planning.Stale(m.Sheet)) > 0 {
		t.Fatal("something is spoilt from the start")
	}
	k := m.Sheet.Index.Wire["101"]
	h := m.H.EditWire(k, func(w *model.Wire) { w.From = model.Some("INJ2:1") }) // no longer through the trunk
	laid := m.H.Branches[0].Layers
	m.Change(h, "")
	stale := planning.Stale(m.Sheet)
	if len(stale) == 0 || cmp.Diff(laid, m.H.Branches[0].Layers) != "" {
		t.Fatalf("%v are spoilt; the lay-up changed: %v", stale, cmp.Diff(laid, m.H.Branches[0].Layers))
	}
	benchtest.Press(m, "esc")
	if !strings.Contains(benchtest.View(m), "again: its wires") {
		t.Fatalf("the map offers nothing:\n%s", benchtest.View(m))
	}
	benchtest.GoTo(t, m, "@again: its wires", "enter")
	if got := planning.Stale(m.Sheet); len(got) > 0 {
		t.Errorf("%v still", got)
	}
	for _, i := range stale {
		if !m.Sheet.Branches[i].Proposed {
			t.Errorf("%s is not proposed", m.H.Branches[i].ID)
		}
	}
	benchtest.Press(m, "backspace")
	if cmp.Diff(laid, m.H.Branches[0].Layers) != "" {
		t.Error("Backspace does not bring the lay-up back")
	}
}

// A cavity is reserved and given free by one key each.
func TestReserve(t *testing.T) {
	m := benchtest.OpenAt(t, "demo.toml", "end")
	benchtest.GoTo(t, m, "@ free", "+")
	if n := len(m.H.Terminations[0].Reserved); n != 3 {
		t.Fatalf("%d reserved: %s", n, m.Says)
	}
	benchtest.Press(m, "-")
	if n := len(m.H.Terminations[0].Reserved); n != 2 {
		t.Errorf("%d reserved: %s", n, m.Says)
	}
}
