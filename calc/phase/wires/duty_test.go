package wires_test

import (
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/wires"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A run of 12 A through 5 m of 16 AWG in air of 20 °C with 2.8 V measured along it: the
// wire explains 0.95 V at 20 °C (4.81 Ω/1000 ft, AC 43.13-1B table 11-9: 15.78 mΩ/m × 5 m
// × 12 A = 0.947 V), some 6 % more at the temperature of its conductor; the rest is
// elsewhere.
func TestMeasuredDrop(t *testing.T) {
	s := calctest.Carrying(t, 20, "", []string{"16 12.0\nmeasured_drop_v = 2.8"}, nil, "")
	h := s.H.EditBranch(0, func(b *model.Branch) { b.LengthMM = 5000 - 16 }) // two loops of 8 mm
	s = calc.Complete(h, s.Cat, nil)
	warm := 0.947 * (234.5 + float64(s.Wires[0].HottestC.V)) / 254.5
	if got := float64(s.Wires[0].Drop.V); math.Abs(got-warm) > 0.002 || warm < 0.98 || warm > 1.03 {
		t.Errorf("the wire explains %v V", got)
	}
	g, ok := calctest.Snag(s, "wire.measured", "w0")
	if !ok || g.Level != sheet.Warn || !strings.HasPrefix(g.Says,
		"You measured 2.80 V, and the wire accounts for 1.01 V at 12 A. The other 1.79 V are lost in contacts") ||
		!strings.Contains(g.Says, "22 W") {
		t.Errorf("%+v", g)
	}
	for v, says := range map[unit.Volt]bool{0.9: false, 1.1: false, 1.3: true, 0.3: true} {
		s := calc.Build(h.EditWire(0, func(w *model.Wire) { w.DropV = model.Some(v) }), s.Cat, s)
		if _, ok := calctest.Snag(s, "wire.measured", "w0"); ok != says {
			t.Errorf("%v V measured: said %v", v, ok)
		}
	}
}

// A load that comes and goes heats by its r.m.s., drops by its peak, a little less than a
// steady one because its conductor is cooler, against the limit
// for such, and one pulse of it stays within what the conductor bears.
func TestDuty(t *testing.T) {
	steady := calctest.Carrying(t, 60, "", []string{"18 20.0"}, nil, "")
	comes := calctest.Carrying(t, 60, "", []string{"18 20.0\non_s = 1.0\nperiod_s = 4.0"}, nil, "")
	if a, b := steady.Wires[0], comes.Wires[0]; a.Heats != 20 || b.Heats != 10 || !(a.Drop.V > b.Drop.V) || b.Drop.V < a.Drop.V*0.75 ||
		!(b.HottestC.V < a.HottestC.V) ||
		math.Abs(float64(a.Bound.V.Amps-b.Bound.V.Amps)) > 0.01 {
		t.Errorf("steady %v A, %v V, %v °C; comes %v A, %v V, %v °C", a.Heats, a.Drop.V, a.HottestC.V, b.Heats, b.Drop.V, b.HottestC.V)
	}
	// At ten metres 0.66 V: too much always, not for a load that comes and goes.
	for k, s := range []*sheet.Sheet{steady, comes} {
		s = calc.Build(s.H.EditBranch(0, func(b *model.Branch) { b.LengthMM = 1400 }), s.Cat, nil)
		if _, said := calctest.Snag(s, "wire.drop", "w0"); said != (k == 0) {
			t.Errorf("%d: %v V, said %v", k, s.Wires[0].Circuit, said)
		}
	}
	// 60 A for 5 s is 18,000 A²s; 22 AWG bears some 1,800 from 60 to 150 °C.
	s := calctest.Carrying(t, 60, "", []string{"22 60.0\non_s = 5.0\nperiod_s = 6000.0"}, nil, "")
	if g, ok := calctest.Snag(s, "wire.pulse", "w0"); !ok || g.Level < sheet.Warn || !strings.Contains(g.Says, "60 A for 5 s") {
		t.Errorf("heats as %v A, %+v", s.Wires[0].Heats, s.Snags)
	}
	for text, want := range map[string]string{"on_s = 4.0\nperiod_s = 3.0": "which is all the time",
		"on_s = 30.0\nperiod_s = 60.0": "above 5 s it counts as always on", "on_s = 1.0": "how often is not given"} {
		s := calctest.Carrying(t, 60, "", []string{"22 1.0\n" + text}, nil, "")
		if g, ok := calctest.Snag(s, "wire.duty", "w0"); !ok || !strings.Contains(g.Says, want) || s.Wires[0].Heats != 1 {
			t.Errorf("%q: %+v, %v A", text, g, s.Wires[0].Heats)
		}
	}
}

// Half a minute of a minute is no coming and going: that it counts as always on is said where it rests at less than it carries, and not
// where it always carries the same.
func TestRestOfALongDuty(t *testing.T) {
	for rest, want := range map[string]bool{"": true, "rest_a = 0.99\n": true, "rest_a = 1.0\n": false} {
		s := calctest.Carrying(t, 60, "", []string{"22 1.0\non_s = 30.0\nperiod_s = 60.0\n" + rest}, nil, "")
		if _, said := calctest.Snag(s, "wire.duty", "w0"); said != want || s.Wires[0].Heats != 1 {
			t.Errorf("%q: said %v, %v A", rest, said, s.Wires[0].Heats)
		}
	}
}

// What comes back through a return for which no current is entered heats it, and is
// judged; one that is entered stands.
func TestReturnCarries(t *testing.T) {
	s := calctest.Carrying(t, 60, "", []string{"14 6.0\nreturn = \"w2\"", "14 6.0\nreturn = \"w2\"", "22 0.0"}, nil, "")
	if s.Wires[2].Heats != 0 {
		t.Errorf("0 A is entered, %v counted", s.Wires[2].Heats)
	}
	s = calc.Build(s.H.EditWire(2, func(w *model.Wire) { w.Amps = model.Opt[unit.Ampere]{} }), s.Cat, nil)
	if g, ok := calctest.Snag(calc.Complete(s.H, s.Cat, s), "wire.current", "w2"); !ok || s.Wires[2].Heats != 12 {
		t.Errorf("%v A, %+v", s.Wires[2].Heats, g)
	}
}

// A stop, not a number: above 60 V, for an aircraft, where life hangs on a wire.
func TestRefusals(t *testing.T) {
	plain := calctest.Carrying(t, 60, "20", []string{"22 1.0", "22 1.0"}, nil, "")
	if w := plain.Wires[0]; !w.Bound.Set || !w.Drop.Set || !w.HottestC.Set {
		t.Fatalf("a plain wire: %+v", w)
	}
	for _, c := range []struct {
		name, rule, where string
		edit              func(h *model.Harness)
		wire              bool // only that wire
	}{
		{"61 V", "supply", "harness", func(h *model.Harness) { h.Head.SupplyV = model.Some[unit.Volt](61) }, false},
		{"an aircraft", "use", "harness", func(h *model.Harness) { h.Head.Use = model.Some(model.UseAircraft) }, false},
		{"brakes", "wire.safety", "w0", func(h *model.Harness) {
			*h = *h.EditWire(0, func(w *model.Wire) { w.Safety = model.Some(true) })
		}, true},
	} {
		h := *plain.H
		c.edit(&h)
		s := calc.Complete(&h, plain.Cat, nil)
		if g, ok := calctest.Snag(s, c.rule, c.where); !ok || g.Level != sheet.Stop {
			t.Errorf("%s: %+v", c.name, s.Snags)
		}
		for k, w := range s.Wires {
			figures := w.Bound.Set || w.Drop.Set || w.HottestC.Set
			if want := c.wire && k == 1; figures != want {
				t.Errorf("%s: %s has figures: %v", c.name, s.H.Wires[k].ID, figures)
			}
		}
		if _, ok := offer.SmallestThatDoes(s, 0); ok {
			t.Errorf("%s: a size is advised", c.name)
		}
	}
	h := *plain.H
	h.Head.SupplyV, h.Head.Use = model.Some[unit.Volt](60), model.Some(model.UseVehicle)
	if s := calc.Complete(&h, plain.Cat, nil); !s.Wires[0].Bound.Set {
		t.Errorf("60 V in a vehicle: %+v", s.Snags)
	}
}

// A wire starts a pulse from its hottest point, where that is known; else from the warmest air on its way, colder than the shop's or not;
// and where it has none from the shop's.
func TestWhereAPulseStarts(t *testing.T) {
	s := &sheet.Sheet{Branches: []sheet.Branch{{Ambient: 20}, {Ambient: 70}, {Ambient: -10}, {Ambient: 30}}}
	s.Limits.AmbientC = 40
	for _, c := range []struct {
		path []int
		want unit.Celsius
	}{{nil, 40}, {[]int{0}, 20}, {[]int{1}, 70}, {[]int{2, 0}, 20}, {[]int{0, 1, 3}, 70}, {[]int{3, 0}, 30}, {[]int{2}, -10}} {
		s.Wires = []sheet.Wire{{Path: c.path}, {Path: c.path, HottestC: model.Some[unit.Celsius](95)}}
		if got, hot := wires.Warmest(s, 0), wires.Warmest(s, 1); got != c.want || hot != 95 {
			t.Errorf("by %v it starts at %v, want %v; hot it starts at %v", c.path, got, c.want, hot)
		}
	}
}
