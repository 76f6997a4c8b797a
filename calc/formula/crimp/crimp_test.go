package crimp

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// Strip is depth and gap. Depths: a connector maker's catalogue; gaps: NASA-STD-8739.4
// p. 53; the sums to a tenth as worked out by hand.
func TestStrip(t *testing.T) {
	for _, c := range []struct {
		size        string
		well        unit.Millimetre
		awg         int
		least, most float64
	}{{"22D", 3.58, 22, 3.8, 4.3}, {"20", 5.31, 20, 5.6, 6.1}, {"16", 5.31, 16, 5.6, 6.6}, {"16", 5.31, 18, 5.6, 6.6},
		{"10", 9.02, 10, 9.3, 10.3}} {
		a, b, ok := Strip(c.well, c.awg)
		if !ok || math.Abs(float64(a)-c.least) > 0.05 || math.Abs(float64(b)-c.most) > 0.05 {
			t.Errorf("size %s, %d AWG: %.2f to %.2f", c.size, c.awg, float64(a), float64(b))
		}
	}
	if _, _, ok := Strip(0, 22); ok {
		t.Error("no well")
	}
}

// Newtons as the sources print them beside pounds, to half their last digit: UL 486A and
// AS7928 from a crimp application specification. 18 AWG shows the two regimes, 38 and 20.
func TestPull(t *testing.T) {
	for _, c := range []struct {
		kind   Kind
		awg    int
		newton float64
		tol    float64
	}{
		{Commercial, 28, 8.9, 0.05}, {Commercial, 22, 35.6, 0.05}, {Commercial, 20, 57.9, 0.1}, {Commercial, 18, 89.0, 0.05},
		{Commercial, 10, 356, 0.5}, {Commercial, 8, 400.5, 0.5},
		{Terminal, 26, 31.1, 0.05}, {Terminal, 22, 66.7, 0.05}, {Terminal, 18, 169, 0.5}, {Terminal, 12, 489.3, 0.1},
	} {
		f, from, ok := Pull(c.kind, c.awg, false)
		if !ok || math.Abs(float64(f)-c.newton) > c.tol || from.Text == "" {
			t.Errorf("%d AWG: %.1f N, want %v", c.awg, float64(f), c.newton)
		}
	}
	for awg, memory := range map[int]bool{22: false, 12: false, 10: true, 8: true} {
		if _, from, _ := Pull(Contact, awg, false); from.Memory != memory {
			t.Errorf("%d AWG: %+v", awg, from)
		}
	}
	for awg, k := range map[int]Kind{30: Terminal, 2: Terminal, 21: Terminal, 6: Contact, -2: Commercial} {
		if f, _, ok := Pull(k, awg, false); ok || f != 0 {
			t.Errorf("%d AWG: %v", awg, f)
		}
	}
	last := unit.Newton(math.Inf(1))
	for _, awg := range []int{8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28} { // thinner holds less
		f, _, ok := Pull(Contact, awg, false)
		if !ok || f >= last {
			t.Errorf("%d AWG: %v after %v", awg, f, last)
		}
		last = f
	}
}

// Source: AC 43.13-1B table 11-13.
func TestDamage(t *testing.T) {
	for awg, want := range map[int][2]int{24: {2, 0}, 14: {2, 0}, 12: {4, 0}, 10: {4, 0}, 8: {6, 6}, 4: {6, 6}, 0: {6, 6}, -3: {6, 6}} {
		if n, b, ok := Damage(awg); !ok || n != want[0] || b != want[1] {
			t.Errorf("%d AWG: %d nicked, %d broken", awg, n, b)
		}
	}
	if _, _, ok := Damage(26); ok {
		t.Error("26 AWG is not in the table")
	}
}

// 22 AWG at step 3 of M22520/1-01 is published; nothing else is.
func TestSetting(t *testing.T) {
	if n, memory, ok := Setting("M22520/1-01", 22); n != 3 || memory || !ok {
		t.Errorf("%d %v %v", n, memory, ok)
	}
	if _, memory, ok := Setting("M22520/2-01", 22); !memory || !ok {
		t.Errorf("%v %v", memory, ok)
	}
	if _, _, ok := Setting("M22520/1-01", 30); ok {
		t.Error("30 AWG has a step")
	}
	if a, _ := ToolFor("22D", "pin"); a.Positioner != "M22520/2-09" {
		t.Errorf("%+v", a)
	}
	if _, ok := ToolFor("8", "pin"); ok {
		t.Error("size 8 has a tool")
	}
}

// The edges of what Strip takes: 4/0 and 40 AWG are the last sizes, and any well above nought has a length. What is refused has none.
func TestEdgesOfStrip(t *testing.T) {
	for _, c := range []struct {
		well        unit.Millimetre
		awg         int
		least, most unit.Millimetre
		ok          bool
	}{
		{0.5, 22, 0.75, 1.25, true}, {5, 40, 5.25, 5.75, true}, {5, -3, 5.25, 6.25, true}, {5, 20, 5.25, 5.75, true},
		{5, 19, 5.25, 6.25, true},
		{5, 41, 0, 0, false}, {5, -4, 0, 0, false}, {0, 22, 0, 0, false}, {-1, 22, 0, 0, false},
		{unit.Millimetre(math.NaN()), 22, 0, 0, false},
	} {
		if a, b, ok := Strip(c.well, c.awg); ok != c.ok || math.Abs(float64(a-c.least)) > 1e-9 || math.Abs(float64(b-c.most)) > 1e-9 {
			t.Errorf("a well of %v, %d AWG: %v to %v, %v; want %v to %v", c.well, c.awg, a, b, ok, c.least, c.most)
		}
	}
}
