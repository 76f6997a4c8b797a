package bench

import (
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/calc"
	"contralay/ui/draw"
)

// runOf begins a run and goes on to the first step of a kind.
func runOf(t *testing.T, name string, kind calc.StepKind) *Model {
	t.Helper()
	m := open(t, name)
	m.cfg.Now = func() time.Time { return time.Date(2026, 5, 11, 16, 40, 0, 0, time.UTC) }
	m.Run("")
	for range 400 {
		steps := m.runSteps()
		if m.run.at < len(steps) && steps[m.run.at].Kind == kind {
			return m
		}
		press(m, "enter")
		if m.entry != nil {
			press(m, "7")
			press(m, "enter")
		}
	}
	t.Fatalf("no step of kind %v:\n%s", kind, m.View())
	return nil
}

// A hold is passed by whoever signs, not by Enter, and what is signed carries day and hour.
func TestHoldIsSigned(t *testing.T) {
	m := runOf(t, "example.toml", calc.HoldStep)
	at := m.run.at
	press(m, "enter")
	press(m, "enter")
	if m.run.at != at || !m.trouble {
		t.Fatalf("passed without a name: %s", m.says)
	}
	press(m, "1")
	press(m, "4")
	press(m, "enter")
	b := m.build()
	if m.run.at != at+1 || len(b.Signed) != 1 || b.Signed[0].By != "14" || b.Signed[0].At.V != "2026-05-11 16:40" {
		t.Errorf("at %d, %+v", m.run.at, b.Signed)
	}
	// Back, and it is still signed; not done after all takes the signature off.
	press(m, "backspace")
	if !strings.Contains(m.View(), "signed by 14") {
		t.Errorf("a look back:\n%s", m.View())
	}
	p := m.page(m.listWidth())
	p.rows[slices.IndexFunc(p.rows, func(r row) bool { return r.key == "not done" })].enter(m)
	if b := m.build(); len(b.Signed) != 0 || slices.Contains(b.Done, calc.HoldBare) {
		t.Errorf("%+v", b)
	}
}

// A second one is built under the next serial, and the first keeps what was measured; a
// serial that is typed is gone on with.
func TestSerials(t *testing.T) {
	m := runOf(t, "example.toml", calc.LayStep)
	press(m, "5")
	press(m, "enter")
	h := m.h
	m.back()
	m.Run("2")
	if len(m.h.Builds) != 2 || m.h.Builds[0].Serial != "1" || len(m.h.Builds[0].Readings) != 1 || m.run.at != 0 {
		t.Errorf("%+v, at %d", m.h.Builds, m.run.at)
	}
	m.back()
	m.Run("1")
	if m.runSteps()[m.run.at].Kind != calc.LayStep || len(m.h.Builds) != 2 {
		t.Errorf("serial 1 goes on at %d", m.run.at)
	}
	if len(h.Branches) != len(m.h.Branches) {
		t.Error("a run changed the harness")
	}
}

// Every letter has its own shape, five rows by three, and a line that is too long is not
// drawn large.
func TestLetters(t *testing.T) {
	shapes := map[string]rune{}
	for r, g := range letterRows {
		if len(g) != 15 || strings.Trim(g, ".#") != "" {
			t.Errorf("%q: %q", r, g)
		}
		if o, twice := shapes[g]; twice {
			t.Errorf("%q and %q look alike", r, o)
		}
		shapes[g] = r
	}
	for _, ascii := range []bool{false, true} {
		for _, l := range letters("T1 LAYER 2 RH", 80, ascii) {
			if draw.Width(l) > 80 {
				t.Errorf("%d cells", draw.Width(l))
			}
		}
		if letters("T1 LAYER 2 RH", 51, ascii) != nil || letters("T1 LAYER 2 RH", 52, ascii) == nil {
			t.Error("thirteen letters take 52 cells")
		}
	}
}
