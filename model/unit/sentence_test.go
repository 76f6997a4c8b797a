package unit

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Sentences as they are written, and as they stand on a screen in inches; worked out by hand
// with 25.4 mm to the inch.
func TestSays(t *testing.T) {
	for _, c := range []struct{ mm, in string }{
		{"its bore of 3.18 mm is 0.10 mm too small", "its bore of 0.125 in is 0.004 in too small"},
		{"from 0 to 1000 mm of T1", "from 0 to 39 3/8 in of T1"}, // 39.37
		{"Wire 101 of 0.94 mm: the seal takes 1.02 to 2.11 mm", "Wire 101 of 0.037 in: the seal takes 0.040 to 0.083 in"},
		{"it must be at least 60 mm (6 x OD)", "it must be at least 2 3/8 in (6 x OD)"},            // 2.362, up
		{"it must be at least 61 mm (6 x OD)", "it must be at least 2 7/16 in (6 x OD)"},           // 2.402: nearest is 2 3/8
		{"a lead of 61 mm; 50 mm at most", "a lead of 2 3/8 in; 1 15/16 in at most"},               // 1.969: nearest is 2
		{"bare tails gathered at 7, 8.8 mm, with", "bare tails gathered at 7, 0.346 in, with"},     // 7 is a name
		{"from 0 to 100 mm and 300 to 400 mm,", "from 0 to 3 15/16 in and 11 13/16 to 15 3/4 in,"}, // 3.937, 11.811, 15.748
		{"size 0.35 mm² of 0.35mm2", "size 0.35 mm² of 0.35mm2"},
		{"give its thickness (thick_mm)", "give its thickness (thick_mm)"},
		{`Boot "stub 5 mm" is in no catalogue, 5 mm long`, `Boot "stub 5 mm" is in no catalogue, 3/16 in long`},
		{"nothing of a length", "nothing of a length"},
		{"L6 mm", "L6 mm"},
		{"0 mm and -3 mm", "0 in and -1/8 in"},
	} {
		if got := Inch.Says(c.mm); got != c.in {
			t.Errorf("%q becomes\n%q, want\n%q", c.mm, got, c.in)
		}
		if got := MM.Says(c.mm); got != c.mm {
			t.Errorf("in mm %q becomes %q", c.mm, got)
		}
	}
}

// A least bend and a length to cut are never shown shorter in inches than they are, and by
// less than a sixteenth longer; in mm they are shown to the nearest, as lengths are.
func TestAtLeastIsNeverLess(t *testing.T) {
	for _, c := range []struct {
		mm     Millimetre
		in, mk string
	}{{61, "2 7/16", "61"}, {61.4, "2 7/16", "61"}, {25.4, "1", "25"}, {50.8, "2", "51"}, {450, "17 3/4", "450"}, {0, "0", "0"}} {
		if got := Inch.AtLeast(c.mm); got != c.in {
			t.Errorf("%v mm: at least %s in, want %s", c.mm, got, c.in)
		}
		if got := MM.AtLeast(c.mm); got != c.mk {
			t.Errorf("%v mm: at least %s mm, want %s", c.mm, got, c.mk)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(0, 20000).Draw(t, "mm")
		shown, err := Inch.Parse(Inch.AtLeast(Millimetre(v)))
		const step, read = MillimetrePerInch / 16, 0.0005 // what is read back is kept to 0.001 mm
		if err != nil || float64(shown) < v-2e-6*step-read || float64(shown) >= v+step+read {
			t.Fatalf("%v mm is shown as at least %s in", v, Inch.AtLeast(Millimetre(v)))
		}
	})
}

// Whatever whole millimetres a sentence names, it is off by no more than half a sixteenth.
func TestSaysIsNear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := rapid.IntRange(0, 20000).Draw(t, "mm")
		got, found := strings.CutSuffix(Inch.Says("It is "+strconv.Itoa(mm)+" mm"), " in")
		got, _ = strings.CutPrefix(got, "It is ")
		v, err := Inch.Parse(got)
		if !found || err != nil || math.Abs(float64(v)-float64(mm)) > MillimetrePerInch/32+1e-9 {
			t.Fatalf("%d mm is %q", mm, got)
		}
	})
}
