package wires_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/wires"
)

// The list of the Wires step keeps the file's order; behind its first row the same
// wires stand worst first, and Enter opens one.
func TestWorstFirst(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "worst first")
	last := 10.0
	seen := 0
	for _, r := range m.Page(m.ListWidth()).Rows {
		i, ok := m.Sheet.Index.Wire[r.Key]
		if !ok {
			continue
		}
		seen++
		share, known := wires.Share(m, i)
		if !known {
			share = -1
		}
		if share > last+1e-9 {
			t.Errorf("%s at %.2f after %.2f", r.Key, share, last)
		}
		last = share
	}
	if seen != len(m.WiresHere()) {
		t.Errorf("%d of %d wires", seen, len(m.WiresHere()))
	}
	first := m.Page(m.ListWidth()).Rows[0].Key
	benchtest.Press(m, "enter")
	if m.Top() != "wire" || !strings.Contains(benchtest.View(m), "wire "+first) {
		t.Errorf("Enter opens %s", m.Top())
	}
}

// What another size would do for all wires is taken by one key and undone by one.
func TestSizesForAllAtOnce(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "sizes")
	was := m.H
	p := m.Page(m.ListWidth())
	if len(p.Rows) < 3 || !strings.Contains(p.Rows[0].Line(), "take all: ") {
		t.Fatalf("%d rows", len(p.Rows))
	}
	benchtest.Press(m, "enter")
	changed := 0
	for k := range m.H.Wires {
		if m.H.Wires[k].Size != was.Wires[k].Size {
			changed++
		}
	}
	if changed == 0 || m.History.Steps() != 1 || m.Top() == "sizes" {
		t.Errorf("%d changed in %d steps, on %s", changed, m.History.Steps(), m.Top())
	}
	benchtest.Press(m, "backspace")
	if d := cmp.Diff(was, m.H); d != "" {
		t.Errorf("one Backspace leaves\n%s", d)
	}
}

// A wire gets a new fuse on its own page, of the least rating that its current leaves
// a share of; there the rating steps through what is made, and the wire comes off by
// the point.
func TestFeedByKeys(t *testing.T) {
	m := benchtest.OpenAt(t, "example.toml", "wires")
	id := m.H.Wires[m.WiresHere()[0]].ID
	m.Change(m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) { w.Amps = model.Some(unit.Ampere(4.5)) }), "")
	benchtest.GoTo(t, m, "enter", "@feed  ", "enter", "@a new feed, blade", "enter")
	if len(m.H.Feeds) != 1 || m.H.Feeds[0].Amps.V != 7.5 || m.H.Feeds[0].Wires[0] != id {
		t.Fatalf("%+v: %s", m.H.Feeds, m.Says)
	}
	benchtest.GoTo(t, m, "esc", "@protection", "enter", "enter", "@rating", "+")
	if m.H.Feeds[0].Amps.V != 10 {
		t.Errorf("+ gives %v A", m.H.Feeds[0].Amps.V)
	}
	benchtest.Press(m, "-", "-")
	if m.H.Feeds[0].Amps.V != 5 {
		t.Errorf("- - gives %v A", m.H.Feeds[0].Amps.V)
	}
	if !strings.Contains(benchtest.View(m), "carries 4.5 A of 5 A: at most 4 A, 80 % of its rating") {
		t.Errorf("nothing is said of 4.5 A on 5\n%s", benchtest.View(m))
	}
	benchtest.GoTo(t, m, "@device", "+", "+", "@rating", "1", "2", "enter")
	if f := m.H.Feeds[0]; f.Device.V != model.ProtectionElectronic || f.Amps.V != 12 {
		t.Errorf("%+v: %s", f, m.Says)
	}
	benchtest.GoTo(t, m, "@direct", ".")
	if len(m.H.Feeds[0].Wires) != 0 {
		t.Errorf("on it are %v", m.H.Feeds[0].Wires)
	}
	benchtest.GoTo(t, m, "@remove this feed", "enter")
	if len(m.H.Feeds) != 0 || m.Top() != "feeds" {
		t.Errorf("%d feeds, on %s", len(m.H.Feeds), m.Top())
	}
}

// A size in the list says whether it does, why not, and what it costs.
func TestSizesSayWhatTheyDo(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "wires")
	benchtest.GoTo(t, m, "@Injector feed", "enter", "@size  ", "enter")
	said := map[string]string{}
	for _, r := range m.Page(m.ListWidth()).Rows {
		if r.More != nil {
			said[r.Key] = r.More()
		}
	}
	for size, want := range map[string]string{"20": "it works. Enter takes it", "28": "it does not work: thinner than the shop uses, 24",
		"22": "it works. Enter takes it: ", "12": "it does not work: P1:E does not take it"} {
		if !strings.HasPrefix(said[size], want) {
			t.Errorf("%s: %q, want %q", size, said[size], want)
		}
	}
}

// In a list to choose from, Enter at once takes what there is; Backspace leaves it, and
// undoes nothing that was done elsewhere. Another wire's page begins at its own first row.
func TestListsAreSafe(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "wires")
	benchtest.GoTo(t, m, "@Lambda feed", "enter", "@feed  ", "enter")
	was := m.H
	benchtest.Press(m, "enter")
	if !was.Same(m.H) {
		t.Errorf("Enter twice moves the wire: %s", m.Says)
	}
	benchtest.GoTo(t, m, "@to  ", "enter", "enter")
	if !was.Same(m.H) {
		t.Errorf("Enter twice moves the wire's end: %s", m.Says)
	}
	benchtest.GoTo(t, m, "@size  ", "+", "@feed  ", "enter")
	was = m.H
	benchtest.Press(m, "backspace")
	if m.H != was || m.Top() != "wire" {
		t.Errorf("Backspace in a list undoes: on %s, %s", m.Top(), m.Says)
	}
	benchtest.Press(m, "backspace")
	if m.H == was || !strings.Contains(m.Says, `wire 150: size is "20"`) {
		t.Errorf("what was undone is not named: %q", m.Says)
	}
	benchtest.GoTo(t, m, "@to  ", "esc", "@Lambda ground", "enter")
	if p := m.Page(m.ListWidth()); m.At(p) != 0 {
		t.Errorf("another wire opens on %q", p.Rows[m.At(p)].Line())
	}
}
