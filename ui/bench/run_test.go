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

// A reading may begin with its point; one far off the sheet is asked for twice, and what
// is out of tolerance is gone on from only when that is asked twice.
func TestReadingsAreSure(t *testing.T) {
	m := runOf(t, "example.toml", calc.LayStep)
	for m.runSteps()[m.run.at].Layer == 0 {
		press(m, "enter")
	}
	s := m.runSteps()[m.run.at]
	l, _ := m.layerAt(s)
	read := func() int {
		if r := m.build().ReadingOf(s.Of, s.Layer); r != nil {
			return len(r.OverMM)
		}
		return 0
	}
	for _, k := range []string{".", "9", "enter"} {
		press(m, k)
	}
	if read() != 0 || m.entry == nil || m.entry.draft != "0.9" || !m.trouble {
		t.Fatalf("0.9 beside %v was taken at once: %s", l.OverMM, m.says)
	}
	press(m, "enter")
	if read() != 1 || m.build().ReadingOf(s.Of, s.Layer).OverMM[0] != 0.9 {
		t.Fatalf("asked twice: %s", m.says)
	}
	at := m.run.at
	press(m, "enter")
	if m.run.at != at || !m.trouble {
		t.Errorf("went on from what is out of tolerance: %s", m.says)
	}
	press(m, "enter")
	if m.run.at != at+1 {
		t.Errorf("asked twice, and it stays: %s", m.says)
	}
	warned := false
	for _, g := range m.sheet.Snags {
		warned = warned || g.Rule == "built.over" && g.Level == calc.Warn
	}
	if !warned {
		t.Error("nothing is said of it afterwards")
	}
	// On a screen of 40 x 12 everything can be read by the arrows.
	m.w, m.height = 40, 12
	m.runBack()
	p := m.page(m.listWidth())
	text := ""
	for _, r := range p.rows {
		text += r.line() + " "
	}
	for _, id := range m.sheet.Branches[m.branch].Layers[s.Layer].Members {
		if !strings.Contains(text, id.ID) {
			t.Errorf("%s is nowhere: %s", id.ID, text)
		}
	}
	// Esc leaves it at Build, where no digit changes a wire.
	h := m.h
	press(m, "esc")
	press(m, "1")
	if m.step != Build || m.entry != nil && m.entry.number || m.h != h {
		t.Errorf("after Esc: step %v, entry %+v", m.step, m.entry)
	}
}

// What is cut is cut: a reel taken as measured makes other lengths and other batches, and
// neither the step in hand nor what is done moves by it; a stop that comes up puts a hold
// first and leaves the hand where it is.
func TestStepInHandStays(t *testing.T) {
	m := runOf(t, "demo.toml", calc.LayStep)
	hand, at := m.runSteps()[m.run.at].Key, m.run.at
	var lengths []string
	for _, s := range m.runSteps()[:at] {
		lengths = append(lengths, s.Key)
	}
	m.change(m.h.SetReel("AS22759/32", "22", 1.35), "measured")
	var now []string
	for _, s := range m.runSteps()[:m.run.at] {
		now = append(now, s.Key)
		if s.Kind == calc.CutStep && !s.In(m.build().Done) {
			t.Errorf("%s is to be cut again", s.Key)
		}
	}
	if slices.Equal(lengths, now) {
		t.Fatal("no length changed: the test shows nothing")
	}
	if got := m.runSteps()[m.run.at].Key; got != hand {
		t.Errorf("in hand %s, was %s", got, hand)
	}
	stops := m.runSteps()[0].Key == calc.HoldStops
	m.back()
	m.Run("")
	if k := m.runSteps()[m.run.at]; !stops && k.Key != hand || stops && k.Key != calc.HoldStops {
		t.Errorf("gone on with %s, was %s", k.Key, hand)
	}
}
