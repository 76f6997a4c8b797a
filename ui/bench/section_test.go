package bench_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/ui/bench"

	"contralay/calc/phase/current"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// Without colour a warmer wire has a higher digit in the section, and the key names each.
func TestTemperatureByDigits(t *testing.T) {
	m := benchtest.OpenAt(t, "feeds.toml", "wires")
	m.Change(m.H.EditWire(m.Sheet.Index.Wire["321"], func(w *model.Wire) { w.Amps = model.Some(unit.Ampere(14)) }), "")
	m = benchtest.Ready(m)
	bench.ByHeat(m)
	if v := benchtest.View(m); !strings.Contains(v, "1 ") || !strings.Contains(v, " C") {
		t.Errorf("no key of digits:\n%s", v)
	}
	last := map[string]float64{}
	_, b, _ := m.BranchHere()
	for _, d := range bench.Section(m, "").Discs {
		if c, ok := current.ConductorC(m.Sheet, m.Branch, d.ID); ok {
			if len(d.Label) != 1 || d.Label < "1" || d.Label > "8" {
				t.Errorf("%s at %.1f C is marked %q", d.ID, float64(c), d.Label)
			}
			last[d.Label] = max(last[d.Label], float64(c))
		}
	}
	for k := '2'; k <= '8'; k++ {
		if a, okA := last[string(k-1)]; okA {
			if c, okC := last[string(k)]; okC && c < a {
				t.Errorf("digit %c goes to %.1f C, %c to %.1f", k-1, a, k, c)
			}
		}
	}
	if len(last) < 2 {
		t.Errorf("one digit for all of %d layers", len(b.Layers))
	}
}

// coloured is the bench on the demonstration, in all colours.
func coloured(t testing.TB, w, h int) *desk.Model {
	m := benchtest.Open(t, "demo.toml")
	m.ShownOn(draw.NewPalette(draw.TrueColour, true), false)
	benchtest.Size(m, w, h)
	return m
}

// The section is drawn once for a branch, what is in hand, a way of colouring and a size, and kept.
func TestSectionIsDrawnOnce(t *testing.T) {
	m := coloured(t, 120, 40)
	benchtest.Update(m, benchtest.Message("right")) // what the step wants worked out beside it is not looked at
	drawn := bench.Drawn(m)
	benchtest.View(m)
	first := bench.Drawn(m)
	if first != drawn+1 {
		t.Errorf("the first frame draws %d sections", first-drawn)
	}
	for range 3 {
		benchtest.View(m)
	}
	benchtest.Update(m, benchtest.Message("down"))
	benchtest.View(m)
	benchtest.Update(m, benchtest.Message("up"))
	benchtest.View(m)
	if n := bench.Drawn(m) - first; n != 1 {
		t.Errorf("a row down and up draws %d sections, want 1", n)
	}
	benchtest.Update(m, benchtest.Message("*"))
	benchtest.View(m)
	benchtest.Size(m, 100, 30)
	benchtest.View(m)
	if n := bench.Drawn(m) - first; n != 3 {
		t.Errorf("another way of colouring and another size draw %d sections more, want 2", n-1)
	}
	benchtest.Press(m, "left", "end", "up", "up")
	m.Change(m.H.EditWire(0, func(w *model.Wire) { w.Colour = model.Some("5") }), "")
	was := bench.Drawn(m)
	if benchtest.View(m); bench.Drawn(m) != was+1 {
		t.Error("another colour of a wire does not draw the section again")
	}
}

// * goes on to destination first, and says what the colours tell apart; the title says it too.
func TestWaysOfColouring(t *testing.T) {
	shorttest.Turn(t)
	m := coloured(t, 80, 24)
	benchtest.Press(m, "right")
	ways := []string{"wire colour", "destination", "size", "role", "temperature", "tightness"}
	for n, way := range append(ways, "closer", "wire colour") {
		title := "From P1, by " + way
		if way == "closer" {
			title = "From P1, closer"
		}
		if v := benchtest.View(m); !strings.Contains(v, title) {
			t.Errorf("after %d: no title %q", n, title)
		}
		if n > 0 && !strings.Contains(m.Says, way) {
			t.Errorf("after %d: it says %q", n, m.Says)
		}
		benchtest.Press(m, "*")
	}
}

// At Layers the layer of the row in hand carries its numbers, all of them, at 80×24 too; among
// wires, the wire in hand and the two beside it.
func TestWhatIsInHandIsNumbered(t *testing.T) {
	shorttest.Turn(t)
	for _, size := range [][2]int{{80, 24}, {120, 40}} {
		m := coloured(t, size[0], size[1])
		benchtest.Press(m, "right")
		_, b, _ := m.BranchHere()
		for k, l := range b.Layers {
			text := bench.SectionText(m)
			for _, c := range l.Members {
				if !strings.Contains(text, c.ID) {
					t.Errorf("%v, layer %d: %s is not on the section:\n%s", size, k, c.ID, text)
				}
			}
			benchtest.Press(m, "down")
		}
		benchtest.Press(m, "left")
		_, r := m.Hand()
		out := b.Layers[len(b.Layers)-1].Members
		at := slices.IndexFunc(out, func(c sheet.Member) bool { return c.ID == r.Id })
		if at < 0 {
			t.Fatalf("%s is not in the outer layer", r.Id)
		}
		text := bench.SectionText(m)
		for _, k := range []int{at, (at + 1) % len(out), (at + len(out) - 1) % len(out)} {
			if !strings.Contains(text, out[k].ID) {
				t.Errorf("%v: %s beside %s is not on the section:\n%s", size, out[k].ID, r.Id, text)
			}
		}
	}
}

// BenchmarkSection is a frame with the section kept, and one for which it is drawn.
func BenchmarkSection(b *testing.B) {
	for _, size := range [][2]int{{80, 24}, {120, 40}} {
		m := coloured(b, size[0], size[1])
		benchtest.Press(m, "right", "down", "down")
		b.Run(fmt.Sprintf("kept/%dx%d", size[0], size[1]), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				benchtest.View(m)
			}
		})
		b.Run(fmt.Sprintf("drawn/%dx%d", size[0], size[1]), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				bench.ForgetSection(m)
				benchtest.View(m)
			}
		})
	}
}
