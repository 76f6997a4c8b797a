package derate

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/typedtest"
	"contralay/model/unit"
)

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if math.Abs(got-want) > tol {
		t.Errorf("%s: %v, want %v within %v", what, got, want, tol)
	}
}

func size(t *testing.T, text string) Size {
	t.Helper()
	out, ok := SizeOf(text, 0)
	if !ok {
		t.Fatalf("no row for %q", text)
	}
	return out
}

// Source: AC 43.13-1B CHG 1 table 11-9, p. 11-23; between its columns by hand, with the
// square root of the rise over 70 °C: 125 °C lies (√55 − √35)/(√80 − √35) = 0.4955 of the
// way from 105 to 150 °C, 3 to 5 A.
func TestTable(t *testing.T) {
	for _, c := range []struct {
		size     string
		rating   unit.Celsius
		n        int
		air      unit.Celsius
		amps     float64
		held, ok bool
	}{
		{"22", 150, 42, 70, 5, false, true}, {"20", 150, 42, 70, 7, false, true}, {"12", 150, 42, 70, 19, false, true},
		{"24", 105, 33, 25, 2.5, false, true}, {"8", 200, 9, 70, 71, false, true}, {"4/0", 150, 40, 70, 310, false, true},
		{"22", 125, 42, 70, 3.991, false, true},
		// Past its data the last point is held.
		{"22", 150, 42, 71, 5, true, true}, {"22", 260, 42, 70, 6, true, true}, {"26", 150, 42, 70, 4, true, true},
		// What it was not drawn up for it does not answer.
		{"22", 150, 32, 70, 0, false, false}, {"8", 150, 8, 70, 0, false, false}, {"22", 90, 42, 60, 0, false, false},
		{"22", 150, 42, 150, 0, false, false},
	} {
		got, held, ok := Table(size(t, c.size), c.rating, c.n, c.air)
		if math.Abs(float64(got)-c.amps) > 1e-3 || held != c.held || ok != c.ok {
			t.Errorf("%+v: %v %v %v", c, got, held, ok)
		}
	}
}

// A size that the tables lack is the next thinner one of them. Areas of AWG: ASTM B258.
func TestSizeOf(t *testing.T) {
	for _, c := range []struct {
		text string
		mm2  unit.SquareMM
		row  string
		held bool
	}{
		{"22", 0, "22", false}, {"1/0", 0, "1/0", false}, {"26", 0, "24", true}, {"21", 0, "22", true}, {"0.35mm2", 0.35, "22", true},
		{"0.5mm2", 0.5, "22", true}, {"2.5mm2", 2.5, "14", true}, {"0.13mm2", 0.13, "24", true}, {"150mm2", 150, "4/0", true},
	} {
		if got, ok := SizeOf(c.text, c.mm2); !ok || got.String() != c.row || got.Held != c.held {
			t.Errorf("%+v: %v %v", c, got, ok)
		}
	}
	if got, ok := SizeOf("thick", 0); ok {
		t.Errorf("thick is %v", got)
	}
}

// The method's worked examples. Source: AC 43.13-1B p. 11-27 (B) and 11-69 (C, D; from
// memory), the circular rounding each step as a person reads a chart.
func TestWorkedExamples(t *testing.T) {
	free := func(text string, rise unit.Celsius) float64 {
		v, held := FreeAir(size(t, text), rise)
		if held {
			t.Fatalf("no free-air value for %s", text)
		}
		return float64(v)
	}
	bundle := func(n int, share unit.Ratio) float64 {
		v, held := Bundle(n, share)
		if held {
			t.Fatalf("no factor for %d at %v", n, share)
		}
		return float64(v)
	}
	high := func(ft float64) float64 {
		v, held := Altitude(unit.Millimetre(ft * feet))
		if held {
			t.Fatalf("no factor for %v ft", ft)
		}
		return float64(v)
	}
	// B: 14 AWG, 200 °C wire in 50 °C, 20,000 ft, 8 wires at 60 %: 47, 42.77, 26 A.
	near(t, "B free", free("14", 150), 47, 0.01)
	near(t, "B altitude", free("14", 150)*high(20_000), 42.77, 0.01)
	near(t, "B", free("14", 150)*high(20_000)*bundle(8, 0.6), 26, 0.6) // 25.45 with the chart's 0.595, 25.66 with 0.6
	// C: 10 × 20 and 25 × 22 AWG at 60,000 ft, 20 %: 8.8 and 6.6 A, 50.6 A together.
	twenty, twentyTwo := free("20", 140)*bundle(35, 0.2)*high(60_000), free("22", 140)*bundle(35, 0.2)*high(60_000)
	near(t, "C 20 AWG", twenty, 8.8, 0.05)
	near(t, "C 22 AWG", twentyTwo, 6.6, 0.07)
	near(t, "C together", (10*twenty+25*twentyTwo)*0.2, 50.6, 0.5)
	// D: 12 × 12 AWG near full load, sea level at 25 °C and 20,000 ft at 60 °C.
	near(t, "D at sea level", free("12", 175)*bundle(12, 1), 29.2, 0.15)
	near(t, "D at 20,000 ft", free("12", 140)*bundle(12, 1)*high(20_000), 23.8, 0.1)
	// C again by what they carry: 7 of the 35 wires at their limit are on the 20 % curve,
	// 8 are past it.
	for n, want := range map[int]unit.Ratio{7: 0.2, 8: 0.4} {
		loads := []Loaded{{n, unit.Ampere(twentyTwo), unit.Ampere(free("22", 140) * high(60_000))},
			{35 - n, 0, unit.Ampere(free("22", 140) * high(60_000))}}
		if f, all, share, _ := Factor(loads); share != want && all == 35 || f > 0.52 {
			t.Errorf("%d of 35: factor %v of %d at %v", n, f, all, share)
		}
	}
}

// Table and method agree where both have a value of their own: 33 wires at 20 %, 60,000 ft. For 22,
// 20, 14 and 12 AWG the method begins at points of figure 11-4a, and comes within half an ampere
// of the 200 °C column, which is in whole amperes. The other sizes begin at that column: there the
// columns of 105 and 150 °C say whether the square root of the rise is right, to a tenth or, where
// that is less, the 0.6 A by which whole amperes and a tenth of the thinnest lie apart.
func TestTableAndMethodAgree(t *testing.T) {
	h, _ := Altitude(60_000 * feet)
	own := 0
	for _, r := range table {
		n := 33
		if r.amps[2] > 50 {
			n = 9
		}
		f, _ := Bundle(n, 0.2)
		for _, rating := range []unit.Celsius{105, 150, 200} {
			isRead := slices.Contains([]string{"22", "20", "14", "12"}, r.size)
			if rating == 200 && !isRead {
				continue // the method's own beginning
			}
			want, _, ok := Table(size(t, r.size), rating, n, 70)
			free, held := FreeAir(size(t, r.size), rating-70)
			within := math.Max(0.1*float64(want), 0.6)
			if rating == 200 {
				own++
				within = 0.56
			}
			if got := free * unit.Ampere(f*h); !ok || held || math.Abs(float64(got-want)) > within {
				t.Errorf("%s AWG at %v: method %.2f, table %v", r.size, rating, float64(got), want)
			}
		}
	}
	if own != 4 {
		t.Errorf("%d sizes begin at a point that was read", own)
	}
}

// Past the data the last point is held, and factors only fall.
func TestHeldBeyondTheData(t *testing.T) {
	for _, c := range []struct {
		n     int
		share unit.Ratio
		like  unit.Ratio
		held  bool
	}{{20, 0.4, 0.495, true}, {36, 0.2, 0.52, true}, {400, 0.2, 0.52, true}, {400, 1, 0.3425, true}, {19, 1.5, 0.3425, false},
		{0, 0.2, 1, false}, {5, -1, 0.875, false}, {5, unit.Ratio(math.NaN()), 0.875, false}} {
		if f, held := Bundle(c.n, c.share); f != c.like || held != c.held {
			t.Errorf("%+v: %v %v", c, f, held)
		}
	}
	for _, share := range []unit.Ratio{0, 0.2, 0.3, 0.4, 0.55, 0.8, 1} {
		for n := 2; n <= 60; n++ {
			a, _ := Bundle(n-1, share)
			b, _ := Bundle(n, share)
			if b > a || share <= 0.2 && n <= MostWires && b == a {
				t.Errorf("%d wires at %v: %v after %v", n, share, b, a)
			}
			if more, _ := Bundle(n, share+0.1); more > b {
				t.Errorf("%d wires: %v at %v, %v at more", n, b, share, more)
			}
		}
	}
	if f, held := Altitude(70_000 * feet); f != 0.79 || !held {
		t.Errorf("70,000 ft: %v %v", f, held)
	}
	if a, held := FreeAir(size(t, "22"), 0); a != 0 || held {
		t.Errorf("no rise: %v %v", a, held)
	}
	if a, _ := FreeAir(size(t, "22"), 300); a != must(FreeAir(size(t, "22"), 200)) {
		t.Errorf("a rise of 300: %v", a)
	}
}

func must(a unit.Ampere, _ bool) unit.Ampere { return a }

// The factor is the least over all choices of some of the wires, looked for one by one;
// and it never rises with an idle wire, with a load, or where less is free.
func TestFactorIsTheLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 9).Draw(t, "wires")
		wires := make([]Loaded, n)
		for i := range wires {
			wires[i] = Loaded{Count: 1, Free: unit.Ampere(rapid.SampledFrom([]float64{0, 5, 12, 16, 40}).Draw(t, "free")),
				Used: unit.Ampere(rapid.SampledFrom([]float64{0, 0, 0.1, 1, 4, 10, 30}).Draw(t, "used"))}
		}
		got, _, _, _ := Factor(wires)
		want := unit.Ratio(1)
		for set := 1; set < 1<<n; set++ {
			count, used, free := 0, 0.0, 0.0
			for i, w := range wires {
				if set>>i&1 == 1 {
					count, used, free = count+1, used+float64(w.Used), free+float64(w.Free)
				}
			}
			for _, share := range shares {
				f, _ := Bundle(count, share)
				if used <= free*float64(f*share)+1e-9 || share == 1 {
					want = min(want, f)
					break
				}
			}
		}
		if math.Abs(float64(got-want)) > 1e-12 {
			t.Fatalf("%+v: %v, one by one %v", wires, got, want)
		}
		idle, _, _, _ := Factor(append(wires[:n:n], Loaded{Count: 1, Free: 40}))
		at := rapid.IntRange(0, n-1).Draw(t, "where")
		more := append([]Loaded{}, wires...)
		more[at].Used += unit.Ampere(rapid.Float64Range(0, 20).Draw(t, "more"))
		loaded, _, _, _ := Factor(more)
		less := append([]Loaded{}, wires...)
		for i := range less {
			less[i].Free *= 0.9
		}
		warm, _, _, _ := Factor(less)
		if idle > got || loaded > got || warm > got {
			t.Fatalf("%+v: %v, with an idle wire %v, with more in %d %v, with a tenth less free %v", wires, got, idle, at, loaded, warm)
		}
	})
}

// space is the bundle factor of MIL-STD-975M, appendix A, 3.16: round single wires in a
// helical bundle, in vacuum. Source: published audit notes on that appendix.
//
//	(29 − N)/28 for 2 ≤ N ≤ 15, 0.5 for more
func space(n int) float64 {
	if n > 15 {
		return 0.5
	}
	return (29 - float64(n)) / 28
}

// Another agency's formula against the chart: it asks how many wires there are, not how much of
// them is in use. Its points lie between the chart's 20 and 80 % curves from three wires to
// fifteen.
func TestAgainstSpaceFormula(t *testing.T) {
	for n := 3; n <= 15; n++ {
		high, _ := Bundle(n, 0.2)
		low, _ := Bundle(n, 0.8)
		if f := space(n); f > float64(high) || f < float64(low) {
			t.Errorf("%d wires: %.3f, the chart %.3f to %.3f", n, f, float64(low), float64(high))
		}
	}
}

// A second opinion, size by size: MIL-STD-975M allows one wire of 200 °C in 70 °C less than free air
// does here, as nothing but its own heat radiation cools it in vacuum; and it allows a thicker wire
// more, as here.
func TestAgainstSpaceCurrents(t *testing.T) {
	typed := typedtest.Must(t, "mil_std_975m")
	last, lastFree, n := 0.0, unit.Ampere(0), 0
	for _, row := range typed.Rows {
		vacuum, _ := typed.Number(row, "amps")
		if slices.Contains([]string{"30", "28", "26"}, row) {
			continue // thinner than the tables here
		}
		free, held := FreeAir(size(t, row), 130)
		if n++; held || float64(free) <= vacuum || free <= lastFree || vacuum <= last {
			t.Errorf("%s AWG: %.1f A in free air after %.1f, %v in vacuum after %v", row, float64(free), float64(lastFree), vacuum, last)
		}
		last, lastFree = vacuum, free
	}
	if n != 14 {
		t.Errorf("%d sizes compared", n)
	}
}
