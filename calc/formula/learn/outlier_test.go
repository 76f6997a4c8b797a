package learn

import (
	"fmt"
	"math"
	"testing"
)

// The limits on either side at 0.05 (0.025 a side), from memory of the table that goes back
// to Grubbs and Beck, Technometrics 14 (1972). Some of them are off by one in the last place.
func TestGrubbsTable(t *testing.T) {
	for n, want := range map[int]float64{
		3: 1.155, 4: 1.481, 5: 1.715, 6: 1.887, 7: 2.020, 8: 2.126, 9: 2.215, 10: 2.290, 15: 2.549, 20: 2.709,
	} {
		if got, ok := Grubbs(n); !ok || !(math.Abs(got-want) <= 0.001) { // a last place: 3 is 1.1543
			t.Errorf("%d readings: %.4f, want %v", n, got, want)
		}
	}
	for _, n := range []int{2, 1, 0, -5} {
		if got, ok := Grubbs(n); ok || got != 0 {
			t.Errorf("%d readings: %v, %v", n, got, ok)
		}
	}
}

// mass is the example of the e-Handbook 1.3.5.17.1, eight readings of a mass spectrometer,
// the last one odd: G = 2.4687, and the limit of the one-sided test at 0.05 is 2.032. From
// memory.
var mass = []float64{199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57}

func TestGrubbsExample(t *testing.T) {
	var list []Reading
	for k, v := range mass {
		list = append(list, Reading{"mass", fmt.Sprint("no ", k+1), 200, v})
	}
	l := Lessons(list, Options{})[0]
	if len(l.Outliers) != 1 || l.Outliers[0].Of != "no 8" || !(math.Abs(l.Outliers[0].Z-2.4687) <= 0.0001) {
		t.Fatalf("outliers %+v, want no 8 at 2.4687", l.Outliers)
	}
	if limit, ok := grubbs(8, 0.05/8); !ok || !(math.Abs(limit-2.032) <= 0.00051) {
		t.Errorf("the limit on one side: %v, want 2.032", limit)
	}
	if l.N != 8 || !(math.Abs(l.Limit-2.1266) <= 0.0001) {
		t.Errorf("counts %d, limit %v", l.N, l.Limit)
	}
}

// Two readings equally far are both named; of two that are not, the farther one alone. Two
// among few hide one another.
func TestOutlierTwins(t *testing.T) {
	list := make([]Reading, 0, 22)
	for k := range 20 {
		list = append(list, Reading{"g", fmt.Sprint("no ", k), 10, 10 + 0.01*float64(k%5)})
	}
	list = append(list, Reading{"g", "first odd", 10, 11}, Reading{"g", "second odd", 20, 22})
	var names []string
	for _, o := range Lessons(list, Options{})[0].Outliers {
		names = append(names, o.Of)
		if math.Abs(o.Ratio-1.1) > 1e-12 { // 11 of 10 and 22 of 20
			t.Errorf("%s: %v of what was predicted", o.Of, o.Ratio)
		}
	}
	if got := fmt.Sprint(names); got != "[first odd second odd]" {
		t.Errorf("named: %s", got)
	}
	list[21].Measured = 21.9
	if l := Lessons(list, Options{})[0]; len(l.Outliers) != 1 || l.Outliers[0].Of != "first odd" {
		t.Errorf("two that are not equally far: %+v", l.Outliers)
	}
	if l := Lessons(append(list[:6:6], list[20:]...), Options{})[0]; len(l.Outliers) != 0 {
		t.Errorf("two of eight: %+v", l.Outliers)
	}
}
