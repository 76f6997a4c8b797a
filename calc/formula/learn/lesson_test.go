package learn

import (
	"fmt"
	"math"
	"reflect"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// of makes readings of one group, all predicted 1.
func of(group string, ratios ...float64) []Reading {
	var list []Reading
	for k, v := range ratios {
		list = append(list, Reading{group, fmt.Sprint(group, " ", k), 1, v})
	}
	return list
}

// Worked by hand: mean of 1.00 1.02 1.04 1.02 is 1.02, the squares add up to 0.0008, and t
// at 3 degrees is 3.182.
func TestByHand(t *testing.T) {
	l := Lessons(of("g", 1, 1.02, 1.04, 1.02), Options{Least: 4})[0]
	s := math.Sqrt(0.0008 / 3)
	for name, c := range map[string][2]float64{
		"bias": {l.Bias, 0.02}, "spread": {l.Spread, s},
		"low": {l.Low, 0.02 - 3.1824*s/2}, "high": {l.High, 0.02 + 3.1824*s/2},
	} {
		if !(math.Abs(c[0]-c[1]) <= 1e-6) { // t to four places
			t.Errorf("%s: %v, want %v", name, c[0], c[1])
		}
	}
	if !l.Enough || l.Matters || l.Confidence != 0.95 {
		t.Errorf("%+v", l)
	}
}

// A bias that is the same everywhere but for rounding has no spread and no outlier, and
// one that is rounding alone is none.
func TestDust(t *testing.T) {
	for _, ratio := range []float64{1.1, 1} {
		var list []Reading
		for k := range 12 {
			p := 0.7 + 1.3*float64(k)
			list = append(list, Reading{"g", fmt.Sprint(k), p, math.Nextafter(p*ratio, 99)})
		}
		l := Lessons(list, Options{})[0]
		if l.Spread != 0 || l.Low != l.High || len(l.Outliers) != 0 || l.Matters != (ratio > 1) || (l.Bias == 0) != (ratio == 1) {
			t.Errorf("a ratio of %v: %+v", ratio, l)
		}
	}
}

func TestCorrection(t *testing.T) {
	up := []float64{1.02, 1.03, 1.025, 1.02, 1.03, 1.025, 1.02, 1.03}
	none := []float64{0.99, 1.01, 1, 0.99, 1.01, 1, 0.98, 1.02}
	for _, c := range []struct {
		name        string
		ratios      []float64
		o           Options
		ok, spreads bool
	}{
		{"eight that agree", up, Options{}, true, true},
		{"seven of them", up[:7], Options{}, false, false},
		{"seven are enough for this shop", up[:7], Options{Least: 7}, true, true},
		{"one of them left out", up, Options{Without: []string{"g 3"}}, false, false},
		{"no bias", none, Options{}, false, true},
		{"one, and least is one", up[:1], Options{Least: 1}, false, false},
		{"two, and least is one", []float64{1.02, 1.02}, Options{Least: 1}, true, false},
		{"all alike", slices.Repeat([]float64{1.1}, 9), Options{}, true, false},
		{"all as predicted", slices.Repeat([]float64{1}, 9), Options{}, false, false},
	} {
		l := Lessons(of("g", c.ratios...), c.o)[0]
		bias, spread, ok := Correction(l)
		if ok != c.ok || (bias != 0) != c.ok || (spread > 0) != c.spreads {
			t.Errorf("%s: %v, %v, %v of %+v", c.name, bias, spread, ok, l)
		}
	}
	if bias, spread, ok := Correction(Lesson{}); bias != 0 || spread != 0 || ok {
		t.Errorf("no lesson corrects: %v, %v, %v", bias, spread, ok)
	}
}

// Odd sizes are counted and do nothing else, and their group is told even if it has no
// others. One in another unit is an odd reading, not an odd size.
func TestOdd(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	list := of("g", 1.02, 1.03, 1.025, 1.02, 1.03, 1.025, 1.02, 1.03)
	list[2].Of = ""
	want := Lessons(list, Options{})[0]
	bad := [][2]float64{{0, 1}, {1, 0}, {-1, 1}, {1, -1}, {nan, 1}, {1, nan}, {inf, 1}, {1, inf}, {-inf, -inf}, {1e-300, 1e300},
		{1e300, 1e-300}}
	for _, v := range bad {
		list = append(list, Reading{"g", "odd", v[0], v[1]}, Reading{"odd alone", "odd", v[0], v[1]})
	}
	want.Skipped = len(bad)
	got := Lessons(list, Options{Without: []string{"", "nobody"}})
	alone := Lesson{Group: "odd alone", Skipped: len(bad), Confidence: 0.95, Least: 8}
	if d := cmp.Diff([]Lesson{want, alone}, got); d != "" {
		t.Error(d)
	}
	slip := Lessons(append(of("g", 1, 1.01, 0.99, 1, 1.01, 0.99, 1), Reading{"g", "in inch", 25.4, 1}), Options{})[0]
	if len(slip.Outliers) != 1 || slip.Outliers[0].Of != "in inch" || slip.Skipped != 0 {
		t.Errorf("an inch among millimetres: %+v", slip)
	}
	if l := Lessons(list, Options{Least: 1})[0]; l.Least != 2 {
		t.Errorf("one reading is told to correct: %d", l.Least)
	}
	if Lessons(nil, Options{}) != nil {
		t.Error("no readings teach something")
	}
	for _, c := range []float64{0, 1, -1, 95, nan, inf} {
		if l := Lessons(of("g", 1, 1.1), Options{Confidence: c, Least: -3})[0]; l.Confidence != 0.95 || l.Least != 8 {
			t.Errorf("a confidence of %v: %+v", c, l)
		}
	}
}

// A bias as large as the spread, read eight times at their usual scatter, is just beyond
// the interval; one of 0.8 is not: what UsualLeast rests on.
func TestUsualLeast(t *testing.T) {
	unit := []float64{-1, 1, -1, 1, -1, 1, -1, 1}
	s := math.Sqrt(8.0 / 7)
	for bias, want := range map[float64]bool{1: true, 0.8: false} {
		ratios := make([]float64, len(unit))
		for k, v := range unit {
			ratios[k] = 1 + 0.01*(bias+v/s)
		}
		if l := Lessons(of("g", ratios...), Options{})[0]; l.Matters != want {
			t.Errorf("a bias of %v spreads: %+v", bias, l)
		}
	}
}

var sizes = rapid.OneOf(
	rapid.Float64Range(0.1, 50), rapid.Float64(), rapid.Just(7.5),
	rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64, 5e-324, 1e-6, 1e6}),
)

func someReadings(group string, n int) *rapid.Generator[[]Reading] {
	return rapid.SliceOfN(rapid.Custom(func(r *rapid.T) Reading {
		return Reading{group, fmt.Sprint("no ", rapid.IntRange(0, 9).Draw(r, "of")), sizes.Draw(r, "predicted"), sizes.Draw(r, "measured")}
	}), 0, n)
}

// finite walks through a lesson and fails at a number that is none.
func finite(r *rapid.T, v reflect.Value) {
	switch v.Kind() {
	case reflect.Float64:
		if f := v.Float(); math.IsNaN(f) || math.IsInf(f, 0) {
			r.Fatalf("%v", f)
		}
	case reflect.Struct:
		for k := range v.NumField() {
			finite(r, v.Field(k))
		}
	case reflect.Slice:
		for k := range v.Len() {
			finite(r, v.Index(k))
		}
	}
}

// Whatever is read: every number is one, every reading is counted once, and the bias lies
// within its interval.
func TestAlwaysNumbers(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		list := someReadings("g", 40).Draw(r, "readings")
		o := Options{rapid.Float64().Draw(r, "confidence"), rapid.Int().Draw(r, "least"), []string{"no 3"}}
		for _, l := range Lessons(list, o) {
			finite(r, reflect.ValueOf(l))
			if l.N+l.Skipped+len(l.LeftOut) != len(list) {
				r.Fatalf("%d readings, %+v", len(list), l)
			}
			if l.Bounded != (l.N > 1) || l.Bounded && !(l.Low <= l.Bias && l.Bias <= l.High) {
				r.Fatalf("%+v", l)
			}
			if bias, spread, ok := Correction(l); spread < 0 || bias <= -1 || ok && bias == 0 {
				r.Fatalf("corrects by %v, %v", bias, spread)
			}
		}
	})
}

// What other groups read, and where they stand in the list, changes nothing of a group.
func TestGroupsApart(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		own := someReadings("own", 20).Draw(r, "own")
		others := someReadings("others", 20).Draw(r, "others")
		want := Lessons(own, Options{})
		var mixed []Reading
		for len(own)+len(others) > 0 {
			if len(others) == 0 || len(own) > 0 && rapid.Bool().Draw(r, "own next") {
				mixed, own = append(mixed, own[0]), own[1:]
				continue
			}
			k := rapid.IntRange(0, len(others)-1).Draw(r, "which")
			mixed = append(mixed, others[k])
			others = slices.Delete(slices.Clone(others), k, k+1)
		}
		got := Lessons(mixed, Options{})
		if len(mixed) > 0 && got[0].Group != mixed[0].Group {
			r.Fatalf("%s stands first, %s in the list", got[0].Group, mixed[0].Group)
		}
		got = slices.DeleteFunc(got, func(l Lesson) bool { return l.Group != "own" })
		if len(want)+len(got) > 0 && !reflect.DeepEqual(want, got) {
			r.Fatal(cmp.Diff(want, got))
		}
	})
}

// In inch the lesson is that of millimetres, to rounding; by a power of two, exactly.
func TestScale(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		ratios := rapid.SliceOfN(rapid.Float64Range(0.5, 2), 2, 30).Draw(r, "ratios")
		var mm, inch, twice []Reading
		for k, v := range ratios {
			p := rapid.Float64Range(0.5, 60).Draw(r, "predicted")
			name := fmt.Sprint(k)
			mm = append(mm, Reading{"g", name, p, p * v})
			inch = append(inch, Reading{"g", name, p / 25.4, p * v / 25.4})
			twice = append(twice, Reading{"g", name, p * 2, p * v * 2})
		}
		a, b := Lessons(mm, Options{})[0], Lessons(inch, Options{})[0]
		if d := cmp.Diff(a, Lessons(twice, Options{})[0]); d != "" {
			r.Fatal(d)
		}
		for _, c := range [][2]float64{{a.Bias, b.Bias}, {a.Spread, b.Spread}, {a.Low, b.Low}, {a.High, b.High}} {
			if !(math.Abs(c[0]-c[1]) <= 1e-9) {
				r.Fatalf("in mm %+v, in inch %+v", a, b)
			}
		}
		if off := min(math.Abs(a.Low), math.Abs(a.High)); off > 1e-9 && a.Matters != b.Matters {
			r.Fatalf("in mm %+v, in inch %+v", a, b)
		}
	})
}
