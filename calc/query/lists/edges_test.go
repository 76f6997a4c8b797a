package lists

import (
	"math"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Resistance goes on as long as each wire on the way has a known one and a length: 30 and 20 mohm/m over half a metre and two are 15 and 40
// milliohm. Behind one that lacks either it is not known, however far one goes on.
func TestResistanceOnTheWay(t *testing.T) {
	h := &model.Harness{Wires: []model.Wire{{ID: "a"}, {ID: "b"}, {ID: "c"}}}
	leads := map[string][]lead{"P:1": {{0, "P:2"}}, "P:2": {{1, "P:3"}}, "P:3": {{2, "P:4"}, {1, "P:2"}, {0, ""}}}
	for _, c := range []struct {
		ohm  [3]float64
		long [3]unit.Millimetre
		want [3]float64 // milliohm; below 0 is not known
	}{{[3]float64{30, 20, 10}, [3]unit.Millimetre{500, 2000, 1000}, [3]float64{15, 55, 65}},
		{[3]float64{30, 20, 10}, [3]unit.Millimetre{500, 0, 1000}, [3]float64{15, -1, -1}},
		{[3]float64{0, 20, 10}, [3]unit.Millimetre{500, 2000, 1000}, [3]float64{-1, -1, -1}},
		{[3]float64{0.5, 0.5, 10}, [3]unit.Millimetre{500, 0.5, 1000}, [3]float64{0.25, 0.25025, 10.25025}}} {
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
		for k := range 3 {
			s.Wires = append(s.Wires, sheet.Wire{Finished: c.long[k], Entry: catalogue.Wire{OhmPerKm: unit.OhmPerKilometre(c.ohm[k])}})
		}
		got := rungFrom(s, "P:1", leads, nil)
		if len(got) != 3 {
			t.Fatalf("%+v", got)
		}
		for k, to := range got {
			if to.Ohm.Set != (c.want[k] >= 0) || to.Ohm.Set && math.Abs(1000*float64(to.Ohm.V)-c.want[k]) > 1e-9 ||
				to.End != []string{"P:2", "P:3", "P:4"}[k] || strings.Join(to.Via, " ") != []string{"a", "a b", "a b c"}[k] {
				t.Errorf("%+v: %+v", c, to)
			}
		}
	}
}

// Tape by its formula with every figure below 1 but the diameter: π/4·4·0.5/(0.1·0.5) = 10π; nothing where one of them is nothing.
func TestTapeOfLittle(t *testing.T) {
	if got := float64(TapeMM(2, 0, 0.5, 0.1, 0.5)); math.Abs(got-10*math.Pi) > 1e-9 {
		t.Errorf("%v", got)
	}
	for _, c := range [][5]unit.Millimetre{{2, 2, 1, 1, 1}, {2, -1, 1, 1, 1}, {2, 1, 0, 1, 1}, {2, 1, 1, 0, 1}, {2, 1, 1, 1, 0}} {
		if got := TapeMM(c[0], c[1], c[2], c[3], c[4]); got != 0 {
			t.Errorf("%v: %v", c, got)
		}
	}
}

// Insulation is between a wire and its shield, too; one wire without a shield has nothing to be kept apart from.
func TestInsulationOfOneShieldedWire(t *testing.T) {
	text := calctest.OneSize(1, "22", "length_mm = 500.0\n")
	if got := Isolations(calctest.Built(t, text)); got != nil {
		t.Errorf("%+v", got)
	}
	text = strings.Replace(text, "[[branch]]", "[[unit]]\nid = \"C1\"\nwires = [\"0\"]\nshield = true\n[[branch]]", 1)
	got := Isolations(calctest.Built(t, text))
	if len(got) != 2 || len(got[0].Nets) != 1 || len(got[1].Nets) != 1 || got[1].Group != GroupShield ||
		got[1].Nets[0] != "shield of C1" {
		t.Errorf("%+v", got)
	}
}

// A pull that is known from memory alone is told so, one that is published is not: of contacts 10 AWG is remembered, 20 AWG is not.
func TestPullFromMemory(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(1, "22", "length_mm = 500.0\n"))
	for size, want := range map[string]catalogue.Standing{"10": catalogue.Memory, "20": catalogue.Published} {
		r := &CrimpRow{Size: size, Circular: true}
		if howToCrimp(s, r, ""); r.PullBy.Standing != want || !(r.PullN > 0) {
			t.Errorf("%s: %+v", size, r)
		}
	}
}
