package protect

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"contralay/model/typedtest"
	"contralay/model/unit"
)

// judged are times that are quoted otherwise, and why ours stays.
var judged = map[string]string{
	"small 35 and 40 A 600 shortest": "no shortest time is quoted; 0.03 s is that of the small ones, and decides nothing",
}

// TestFusesTypedTwice compares the times of the three tables with those typed by another hand from
// quotations of makers' sheets; the micro and mini series has a table of its own there, which
// no kind of device here has: it is held to be no slower than the small one.
func TestFusesTypedTwice(t *testing.T) {
	typed, n := typedtest.Must(t, "fuse"), 0
	tables := map[string][]point{"small": small[:], "small 35 and 40 A": smallThick[:], "large": large[:]}
	for _, row := range typed.Rows {
		k := strings.LastIndexByte(row, ' ')
		percent, _ := strconv.ParseFloat(row[k+1:], 64)
		times, known := tables[row[:k]]
		if !known {
			_, most, opens := Device{Kind: Blade, Rating: 10}.Opens(unit.Ampere(percent / 10))
			if want, ok := typed.Number(row, "longest_s"); ok && (!opens || float64(most) < want-1e-9) {
				t.Errorf("%s: %v s at the most here, quoted %v", row, most, want)
			}
			continue
		}
		found := false
		for _, p := range times {
			if math.Abs(p.times*100-percent) > 1e-9 {
				continue
			}
			found = true
			for column, got := range map[string]float64{"shortest": p.least, "longest": p.most} {
				want, ok := typed.Number(row, column+"_s")
				n++
				if same := ok && got == want || !ok && math.IsInf(got, 1); same == (judged[row+" "+column] != "") {
					t.Errorf("%s, %s: %v s, typed %v", row, column, got, want)
				}
			}
		}
		if !found {
			t.Errorf("%s is not in the table", row)
		}
	}
	if n != 2*(6+5+5) {
		t.Errorf("%d times compared", n)
	}
	ratings := typedtest.Must(t, "fuse_colour") // from memory, as the list of ratings is
	if len(ratings.Rows) != len(Ratings(Blade)) {
		t.Errorf("ratings %v, typed %v", Ratings(Blade), ratings.Rows)
	}
	for k, row := range ratings.Rows {
		if a, _ := strconv.ParseFloat(row, 64); float64(Ratings(Blade)[k]) != a {
			t.Errorf("rating %v, typed %s", Ratings(Blade)[k], row)
		}
	}
}

// TestAdiabaticTypedTwice compares the constants of copper, and k from and to every temperature
// that is printed. They are printed in whole numbers; 180 to 350 °C as 132, and 226 gives 132.6.
func TestAdiabaticTypedTwice(t *testing.T) {
	typed := typedtest.Must(t, "adiabatic_constants")
	k, _ := typed.Number("copper", "k")
	beta, _ := typed.Number("copper", "beta")
	if k != copper || beta != zero {
		t.Errorf("%v and %v, typed %v and %v", copper, zero, k, beta)
	}
	printed := typedtest.Must(t, "adiabatic_k")
	for _, row := range printed.Rows {
		a, b, _ := strings.Cut(row, " ")
		from, _ := strconv.ParseFloat(a, 64)
		to, _ := strconv.ParseFloat(b, 64)
		want, _ := printed.Number(row, "k")
		got, _ := Withstand(1, unit.Celsius(from), unit.Celsius(to))
		if math.Abs(math.Sqrt(float64(got))-want) > 0.65 {
			t.Errorf("%s to %s °C: %.2f, printed %v", a, b, math.Sqrt(float64(got)), want)
		}
	}
}
