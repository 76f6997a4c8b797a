package explain_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/why/explain"
	"contralay/calc/query/why/power"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// 42 wires of a 150 °C specification under a sheath in 70 °C: by table 11-9 22 AWG
// carries 5 A, 20 AWG 7 A, 12 AWG 19 A (AC 43.13-1B CHG 1, p. 11-23), so 3 A passes,
// 8 A and 25 A do not; and what the table assumes is said.
func TestTableDecides(t *testing.T) {
	wires := append(calctest.Repeated(39, "22 0.1"), "22 3.0", "20 8.0", "12 25.0")
	s := calctest.Carrying(t, 70, "", wires, nil, "")
	for k, want := range map[int]struct {
		most float64
		over bool
	}{39: {5, false}, 40: {7, true}, 41: {19, true}} {
		var table sheet.Limit
		for _, l := range power.LimitsOf(s, k) {
			if strings.HasPrefix(l.Where, "table 11-9") {
				table = l
			}
		}
		if float64(table.Amps) != want.most || !strings.Contains(table.Where, "33 wires or more at 70 C, 20 % of them loaded") {
			t.Errorf("w%d: %+v", k, table)
		}
		id, said := fmt.Sprintf("w%d", k), false
		for _, g := range s.Snags {
			said = said || g.Rule == "wire.current" && g.Where == id && g.Level >= sheet.Warn
		}
		if said != want.over {
			t.Errorf("w%d at %s: said %v, want %v", k, wires[k], said, want.over)
		}
	}
}

// A margin of 0.85: at the limit, alone raised to limit ÷ 0.85, a wire is at its
// rating, the others as entered.
func TestHeatLimitIsAtTheRating(t *testing.T) {
	wires := append(calctest.Repeated(18, "22 2.0"), "20 4.0")
	s := calctest.Carrying(t, 60, "", wires, nil, "")
	for _, k := range []int{0, 9, 18} {
		var limit unit.Ampere
		for _, l := range power.LimitsOf(s, k) {
			if l.Where == "heat in T1" {
				limit = l.Amps
			}
		}
		if limit <= 0 {
			t.Fatalf("w%d has no limit by heat: %+v", k, power.LimitsOf(s, k))
		}
		h := s.H.EditBranch(0, func(b *model.Branch) {
			b.Layers, b.Make = model.CloneLayers(s.Branches[0].As), model.Some(model.MakeLaid)
		})
		h = h.EditWire(k, func(w *model.Wire) { w.Amps = model.Some(limit / 0.85) })
		at := calc.Build(h, s.Cat, nil)
		for _, c := range at.Branches[0].Warm.Wires {
			if c.Wire == k && (c.C > 150 || c.C < 145) { // never above it, and no more than 5 K below
				t.Errorf("w%d at %.2f A comes to %.2f C", k, float64(limit/0.85), float64(c.C))
			}
		}
	}
}

// Whatever currents, sizes, ambients, duties and devices a file gives: no panic, no
// number that is none, nothing colder than the air, and nothing cooler for more current
// in one wire.
func TestAnyCurrents(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		var wires []string
		for range rapid.IntRange(1, 24).Draw(r, "wires") {
			size := rapid.SampledFrom([]string{"30", "26", "22", "20", "16", "12"}).Draw(r, "size")
			amps := rapid.SampledFrom([]float64{0, 0.01, 0.5, 2, 8, 30, 200, 1e9}).Draw(r, "amps")
			w := fmt.Sprintf("%s %f", size, amps)
			if rapid.Bool().Draw(r, "duty") {
				w += fmt.Sprintf("\non_s = %f\nperiod_s = %f\nrest_a = %f", rapid.SampledFrom([]float64{0, 0.001, 1, 100}).Draw(r, "on"),
					rapid.SampledFrom([]float64{0, 0.002, 5, 1e9}).Draw(r, "period"),
					rapid.SampledFrom([]float64{0, 1, 1e9}).Draw(r, "rest"))
			}
			wires = append(wires, w)
		}
		ambient := rapid.SampledFrom([]float64{-273.15, -40, 20, 85, 150, 400, 1e9}).Draw(r, "ambient")
		more := fmt.Sprintf("[[feed]]\nid = \"F1\"\ndevice = %q\namps = %f\noutputs = %d\ntrip_s = %f\nwires = [\"w0\"]\n",
			rapid.SampledFrom([]string{"blade", "large blade", "electronic"}).Draw(r, "device"),
			rapid.SampledFrom([]float64{0, 0.5, 5, 40, 1e9}).Draw(r, "rating"), rapid.IntRange(1, 9).Draw(r, "outputs"),
			rapid.SampledFrom([]float64{0, 0.01, 1e9}).Draw(r, "trip"))
		s := calctest.Carrying(t, ambient, rapid.SampledFrom([]string{"", "20"}).Draw(r, "contact"), wires, nil, more)
		h := *s.H
		h.Head.SupplyV = model.Some(unit.Volt(rapid.SampledFrom([]float64{0, 13.8, 60, 1e9}).Draw(r, "supply")))
		h.Head.ShortA = model.Some(unit.Ampere(rapid.SampledFrom([]float64{0, 1, 900, 1e9}).Draw(r, "short")))
		h.Rules.AltitudeM = model.Some(unit.Metre(rapid.SampledFrom([]float64{0, 2000, 19_000, 1e9}).Draw(r, "altitude")))
		s = calc.Complete(&h, s.Cat, nil)
		for k := range s.Wires {
			w := &s.Wires[k]
			if w.HottestC.Set && !(float64(w.HottestC.V) >= ambient-1e-3) {
				r.Fatalf("w%d at %v in air of %v", k, w.HottestC.V, ambient)
			}
			for _, v := range []float64{float64(w.HottestC.V), float64(w.Heats), float64(w.Bound.V.Amps), float64(w.Drop.V),
				float64(w.Circuit),
				float64(w.Guard.V.Amps)} {
				if !unit.Finite(v) {
					r.Fatalf("w%d: %+v", k, w)
				}
			}
		}
		e := explain.Of(s)
		for _, f := range everyFigure(s) {
			if w, ok := e.Why(f); ok && (!unit.Finite(w.Value) || !unit.Finite(w.Made())) {
				r.Fatalf("%s: %v, %v", w.Name, w.Value, w.Made())
			}
		}
		k := rapid.IntRange(0, len(wires)-1).Draw(r, "more in")
		t := calc.Build(s.H.EditWire(k, func(w *model.Wire) { w.Amps.V = w.Amps.V*1.1 + 0.1 }), s.Cat, s)
		for j := range t.Wires {
			a, b := &s.Wires[j], &t.Wires[j]
			if a.HottestC.Set && b.HottestC.Set && b.HottestC.V < a.HottestC.V-0.01 && j == k {
				r.Fatalf("w%d cools from %v to %v with more current in it", j, a.HottestC.V, b.HottestC.V)
			}
		}
	})
}

// A limit says how far it can be trusted: the table was read, the free-air points but
// three are recalled or worked back, and the heat balance rests on recalled constants.
// What is recalled warns and never stops.
func TestLimitsSayTheirStanding(t *testing.T) {
	for _, c := range []struct {
		name, size string
		wires      int
		by         string
		want       catalogue.Standing
	}{
		{"table", "22", 40, "table 11-9", catalogue.Published},
		{"quoted point", "22", 12, "free air", catalogue.Published}, // MIL-W-5088L 6.7, second hand
		{"recalled point", "20", 12, "free air", catalogue.Memory},
		{"worked back from the table", "16", 12, "free air", catalogue.Memory},
		{"read point and chart", "14", 12, "free air", catalogue.Published},
		{"beyond the chart that was read", "14", 25, "free air", catalogue.Memory},
		{"balance", "22", 12, "heat in", catalogue.Memory},
	} {
		s := calctest.Carrying(t, 70, "", calctest.Repeated(c.wires, c.size+" 0.1"), nil, "")
		found := false
		for _, l := range power.LimitsOf(s, 0) {
			if strings.HasPrefix(l.Where, c.by) {
				found = true
				if l.Standing != c.want {
					t.Errorf("%s: %s, want %s", c.name, l.Standing, c.want)
				}
			}
		}
		if !found {
			t.Errorf("%s: no such limit among %+v", c.name, power.LimitsOf(s, 0))
		}
	}
	for _, g := range calctest.Carrying(t, 70, "", calctest.Repeated(12, "20 30.0"), nil, "").Snags {
		if g.Rule == "wire.current" && g.Level > sheet.Warn {
			t.Errorf("a recalled limit stops: %+v", g)
		}
	}
}
