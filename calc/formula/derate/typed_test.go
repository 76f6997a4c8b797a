package derate

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"contralay/model/typedtest"
	"contralay/model/unit"
)

// TestTableTypedTwice compares all 51 cells of table 11-9 with those typed by another hand.
func TestTableTypedTwice(t *testing.T) {
	typed, n := typedtest.Must(t, "table_11_9"), 0
	if len(typed.Rows) != len(table) {
		t.Fatalf("%d sizes typed, %d here", len(typed.Rows), len(table))
	}
	for _, row := range typed.Rows {
		for _, rating := range []unit.Celsius{105, 150, 200} {
			want, ok := typed.Number(row, strconv.Itoa(int(rating)))
			got, held, fits := Table(size(t, row), rating, 33, 70)
			if n++; !ok || !fits || held || float64(got) != want {
				t.Errorf("%s AWG at %v: %v, typed %v", row, rating, got, want)
			}
		}
	}
	if n != 51 {
		t.Errorf("%d cells", n)
	}
}

// TestChartTypedTwice compares the 95 cells of the bundle chart, the 20th wire at 20 %, and the
// one remembered for 35 wires.
func TestChartTypedTwice(t *testing.T) {
	typed, n := typedtest.Must(t, "bundle_chart"), 0
	for _, row := range typed.Rows {
		wires, _ := strconv.Atoi(row)
		for _, column := range typed.Columns {
			want, ok := typed.Number(row, column)
			if !ok {
				continue
			}
			percent, _ := strconv.Atoi(column)
			got, held := Bundle(wires, unit.Ratio(percent)/100)
			if n++; held || math.Abs(float64(got)-want) > 1e-12 {
				t.Errorf("%d wires at %d %%: %v, typed %v", wires, percent, got, want)
			}
		}
	}
	if n != 97 {
		t.Errorf("%d cells", n)
	}
	// The circular's own words, and its example from memory: 0.6 is 0.595 rounded.
	text := typedtest.Must(t, "bundle_text")
	for row, at := range map[string]struct {
		n     int
		share unit.Ratio
	}{"8 wires, 60 %": {8, 0.6}, "12 wires, 100 %": {12, 1}, "35 wires, 20 %": {35, 0.2}} {
		want, _ := text.Number(row, "factor")
		if got, _ := Bundle(at.n, at.share); math.Abs(float64(got)-want) > 0.00501 {
			t.Errorf("%s: %v, in words %v", row, got, want)
		}
	}
}

// judged are heights at which the curve and a second reading of it differ by more than 0.01, and
// why ours stays. Both are hand readings of one figure; ours goes through what the circular says
// in words.
var judged = map[string]string{
	"50000": "0.82 here, 0.80 there: both hand readings",
	"60000": "0.79 here, 0.77 there: both hand readings; the circular's example works with 0.79, from memory",
}

// TestAltitudeTypedTwice compares the curve with its points, and with a chart that was digitised
// elsewhere.
func TestAltitudeTypedTwice(t *testing.T) {
	typed := typedtest.Must(t, "altitude")
	for _, row := range typed.Rows {
		ft, _ := strconv.ParseFloat(row, 64)
		got, held := Altitude(unit.Millimetre(ft * 304.8))
		if want, ok := typed.Number(row, "text"); ok && (held || math.Abs(float64(got)-want) > 1e-12) {
			t.Errorf("%s ft: %v, typed %v", row, got, want)
		}
		if want, ok := typed.Number(row, "chart"); ok && (math.Abs(float64(got)-want) > 0.0101) != (judged[row] != "") {
			t.Errorf("%s ft: %.4f, the chart %v; judged: %q", row, float64(got), want, judged[row])
		}
	}
}

// TestFreeAirTypedTwice compares the points that were read or remembered: each is what is used,
// or within half a per cent of it, the point of 12 AWG that is remembered following from the
// quoted one by the square root of the rise. And a chart digitised elsewhere at a rise of 210 °C, of which the sizes
// from 24 to 10 AWG lie within 6.5 % on either side, 8 AWG and thicker up to 11 % above ours. Ours
// stays: it is worked back from table 11-9, which was read, and the chart is a hand reading.
func TestFreeAirTypedTwice(t *testing.T) {
	points := typedtest.Must(t, "free_air_points")
	for _, row := range points.Rows {
		text, rise, _ := strings.Cut(row, " ")
		k, _ := strconv.ParseFloat(rise, 64)
		want, _ := points.Number(row, "amps")
		tol := 1e-9
		if row == "12 140" {
			tol = 0.005 * want
		}
		if got, held := FreeAir(size(t, text), unit.Celsius(k)); held || math.Abs(float64(got)-want) > tol {
			t.Errorf("%s: %v, typed %v", row, got, want)
		}
	}
	chart := typedtest.Must(t, "free_air_chart")
	for _, row := range chart.Rows {
		if row == "26" {
			continue // no size of the tables here
		}
		want, _ := chart.Number(row, "amps_rise_210")
		least, most := -0.065, 0.065
		if size(t, row).row >= firstThick {
			least, most = -0.11, 0
		}
		at200, _ := FreeAir(size(t, row), 200)
		if off := float64(at200)*math.Sqrt(210.0/200)/want - 1; off < least || off > most {
			t.Errorf("%s AWG: %.1f A, the chart %v, %+.1f %%", row, float64(at200), want, 100*off)
		}
	}
}
