package current_test

import (
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/current"
	wiresphase "contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A return bears what its wire does: the pulse, the fuse, the whole of what comes back.
func TestReturnsAreJudged(t *testing.T) {
	pulse := calctest.Carrying(t, 40, "", []string{"12 60.0\non_s = 5.0\nperiod_s = 6000.0\nreturn = \"w1\"", "22 0.0"}, nil, "")
	open := calc.Complete(pulse.H.EditWire(1, func(w *model.Wire) { w.Amps = model.Opt[unit.Ampere]{} }), pulse.Cat, nil)
	if g, ok := calctest.Snag(open, "wire.pulse", "w1"); !ok || !strings.Contains(g.Says, "60 A for 5 s") {
		t.Errorf("60 A for 5 s back through 22 AWG: %+v", g)
	}
	fused := fed(t, []string{"12 10.0\nreturn = \"w1\"", "24 1.0"}, feed("device = \"blade\"\namps = 20.0\nwires = [\"w0\"]\n"))
	if g, ok := calctest.Snag(fused, "feed.wire", "F1"); !ok || !strings.Contains(g.Says, "w1 (") {
		t.Errorf("24 AWG brings 20 A back: %+v", g)
	}
	if g, ok := calctest.Snag(fused, "feed.short", "F1"); !ok || !strings.Contains(g.Says, "w1") {
		t.Errorf("and its short: %+v", g)
	}
	// Four wires of 10 A come back through one: it drops at 40 A.
	four := calctest.Carrying(t, 40, "", []string{"14 10.0\nreturn = \"w4\"", "14 10.0\nreturn = \"w4\"", "14 10.0\nreturn = \"w4\"",
		"14 10.0\nreturn = \"w4\"", "8 0.0"}, nil, "")
	_ = four
	h := fedBack(four.H)
	s := calc.Complete(h, four.Cat, nil)
	if got, want := s.Wires[0].Circuit-s.Wires[0].Drop.V, current.DropAt(s, 4, 40); got != want {
		t.Errorf("the return drops %v V, want %v", got, want)
	}
	// A return of a return carries on what comes back, whichever stands first in the file.
	for _, wires := range [][]string{
		{"14 10.0\nreturn = \"w1\"", "14 0.0\nreturn = \"w2\"", "14 0.0"},
		{"14 0.0\nreturn = \"w2\"", "14 10.0\nreturn = \"w0\"", "14 0.0"},
	} {
		s := calctest.Carrying(t, 40, "", wires, nil, "")
		h := s.H
		for k := range h.Wires {
			if h.Wires[k].Amps.V == 0 {
				h = h.EditWire(k, func(w *model.Wire) { w.Amps = model.Opt[unit.Ampere]{} })
			}
		}
		if s = calc.Build(h, s.Cat, nil); s.Wires[2].Heats != 10 {
			t.Errorf("%q: w2 carries %v", wires, s.Wires[2].Heats)
		}
	}
	// A drop measured along a return is set against it.
	m := calctest.Carrying(t, 20, "", []string{"16 5.0\nreturn = \"w1\"", "16 5.0\nmeasured_drop_v = 2.8"}, nil, "")
	if _, ok := calctest.Snag(m, "wire.measured", "w1"); !ok {
		t.Error("2.8 V along a return are not told")
	}
}

// fedBack takes the current off the last wire, so that it carries what comes back.
func fedBack(h *model.Harness) *model.Harness {
	k := len(h.Wires) - 1
	return h.EditWire(k, func(w *model.Wire) { w.Amps, w.Size = model.Opt[unit.Ampere]{}, "12" })
}

// What is not judged is told; what joined feeds let through is told once, all together.
func TestShortsThatAreNotJudged(t *testing.T) {
	for _, c := range []struct {
		feed, rule string
	}{
		{"device = \"electronic\"\namps = 2.0\nwires = [\"w0\"]\n", "feed.trip"},
		{"device = \"electronic\"\namps = 2.0\ntrip_s = 0.001\nwires = [\"w0\"]\n", "feed.near"},
		{"device = \"electronic\"\namps = 2.0\ntrip_s = 6.0\nwires = [\"w0\"]\n", "feed.short"},
	} {
		if _, ok := calctest.Snag(fed(t, []string{"24 1.0"}, feed(c.feed)), c.rule, "F1"); !ok {
			t.Errorf("%q: nothing says %s", c.feed, c.rule)
		}
	}
	// A load that comes and goes below the limit opens nothing.
	quiet := fed(t, []string{"12 5.0\non_s = 2.0\nperiod_s = 100.0"},
		feed("device = \"electronic\"\namps = 20.0\ntrip_s = 0.1\nwires = [\"w0\"]\n"))
	if g, ok := calctest.Snag(quiet, "feed.start", ""); ok {
		t.Error(g.Says)
	}
	// At 130 °C around, a conductor of which the heat is not known starts from there.
	s := calctest.Carrying(t, 130, "", []string{"24 1.0"}, nil, "")
	s.Wires[0].HottestC.Set = false
	if got := wiresphase.Warmest(s, 0); got != 130 {
		t.Errorf("it starts from %v", got)
	}
}

// A published limit that is passed stops, whatever one from memory says beside it.
func TestTheWorstLimitSpeaks(t *testing.T) {
	s := calctest.Carrying(t, 149, "20", []string{"20 9.0"}, nil, "") // heat leaves it almost nothing
	g, ok := calctest.Snag(s, "wire.current", "w0")
	if !ok || g.Level != sheet.Stop || !strings.Contains(g.Says, "contact A:0") {
		t.Errorf("%+v", g)
	}
	peak := calctest.Carrying(t, 40, "20", []string{"20 24.0\non_s = 1.0\nperiod_s = 100.0"}, nil, "")
	if g, ok := calctest.Snag(peak, "wire.peak", "w0"); !ok || g.Level != sheet.Note {
		t.Errorf("24 A now and then through a contact of 7.5: %+v", peak.Snags)
	}
}
