package derate

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// Which choice of wires gives the factor, by hand with the curves of figure 11-5: of so many wires, at which share of use.
func TestWhichChoiceGivesTheFactor(t *testing.T) {
	for _, c := range []struct {
		name  string
		wires []Loaded
		f     unit.Ratio
		n     int
		share unit.Ratio
		held  bool
	}{
		{"idle", []Loaded{{3, 0, 10}}, 0.935, 3, 0.2, false},
		{"one alone", []Loaded{{1, 9, 10}}, 1, 1, 0.2, false},
		// At 0.87 × 0.8 × 10 = 6.96 A each the two pass their curve; the third, which may carry 100 A and carries none, makes up for
		// both on every curve of three, where a share of 0.187 or more of its 100 A is left.
		{"two beside a thick idle one", []Loaded{{2, 9.5, 10}, {1, 0, 100}}, 0.825, 2, 1, false},
		{"nothing loaded to a fifth", []Loaded{{5, 0.1, 10}}, 0.875, 5, 0.2, false},
		{"all of 40, as 19 of them", []Loaded{{40, 10, 10}}, 0.3425, 19, 1, false},
		// A fifth is 0.525 × 0.2 × 10 = 1.05 A each for 34, and 1.04 for 35 or more.
		{"more than the chart has", []Loaded{{40, 1.045, 10}}, 0.495, 40, 0.4, true},
		{"more than the chart has, below a fifth", []Loaded{{40, 1.035, 10}}, 0.52, 40, 0.2, true},
		// 30 at 1.076 A are 30 × 0.036 = 1.08 A over that for 35, and 5 idle ones of 2 A leave 5 × 0.208 = 1.04; for 34 it is 0.78 over
		// and 0.84 left.
		{"ten idle of 40, the worst 35 counted", []Loaded{{30, 1.076, 10}, {10, 0, 2}}, 0.495, 40, 0.4, true},
	} {
		f, n, share, held := Factor(c.wires)
		if math.Abs(float64(f-c.f)) > 1e-12 || n != c.n || share != c.share || held != c.held {
			t.Errorf("%s: %v of %d at %v, held %v; want %v of %d at %v", c.name, f, n, share, held, c.f, c.n, c.share)
		}
	}
	// Between two curves, and a foot above the sea: 1 − 0.09 × 0.5 ÷ 20,000.
	if f, held := Bundle(5, 0.3); math.Abs(float64(f)-(0.875+0.760)/2) > 1e-12 || held {
		t.Errorf("five at three tenths: %v", f)
	}
	for ft, want := range map[float64]float64{0.5: 1 - 0.09*0.5/20_000, 10_000: 0.955, 40_000: 0.85, -5: 1} {
		if f, held := Altitude(unit.Millimetre(ft * 304.8)); math.Abs(float64(f)-want) > 1e-12 || held {
			t.Errorf("%v ft: %v", ft, f)
		}
	}
}

// What was read in the documents: 22, 14 and 12 AWG themselves, up to the 19 wires of the chart.
func TestWhatWasRead(t *testing.T) {
	for _, c := range []struct {
		size string
		mm2  unit.SquareMM
		n    int
		want bool
	}{
		{"22", 0, 1, true}, {"22", 0, 19, true}, {"22", 0, 20, false}, {"14", 0, 19, true}, {"12", 0, 19, true}, {"12", 0, 20, false},
		{"20", 0, 5, false}, {"24", 0, 5, false}, {"10", 0, 5, false}, {"0.35mm2", 0.35, 5, false}, {"2.5mm2", 2.5, 5, false},
	} {
		size, ok := SizeOf(c.size, c.mm2)
		if got := Read(size, c.n); !ok || got != c.want {
			t.Errorf("%d of %s: read %v", c.n, c.size, got)
		}
	}
}
