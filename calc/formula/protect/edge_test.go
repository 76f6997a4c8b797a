package protect

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// Where a conductor bears nothing that can be told the figure is 0, not what the arithmetic left there.
func TestWithstandOfNothing(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	for _, c := range [][3]float64{{0, 20, 150}, {-1, 20, 150}, {nan, 20, 150}, {inf, 20, 150}, {1e200, 20, 150}, {1, 150, 150}, {1,
		151, 150},
		{1, -234.5, 150}, {1, -300, 150}, {1, -300, -400}, {1, nan, 150}, {1, 20, nan}, {1, 20, inf}, {1, -inf, 20}} {
		if v, ok := Withstand(unit.SquareMM(c[0]), unit.Celsius(c[1]), unit.Celsius(c[2])); v != 0 || ok {
			t.Errorf("%v: %v, %v", c, v, ok)
		}
	}
	if v, ok := Withstand(0.5, -234, -233.5); !ok || !(v > 0) {
		t.Errorf("half a square, just above the zero of its resistance: %v, %v", v, ok)
	}
}

// The rows of each table where it has one, the times between two rows, and what stands where a device never opens. Between rows
// the paper is logarithmic: half way from one current to another by their product is half way between the times by theirs.
func TestRowsOfTheTables(t *testing.T) {
	inf := unit.Second(math.Inf(1))
	type row struct {
		times       unit.Ampere
		least, most unit.Second
	}
	// The doc comment of the tables: those from 35 A are those of the small blade, but 100 % in place of 110 %, and 0.15 s at 600 %.
	common := []row{{1.35, 0.75, 600}, {1.6, 0.25, 50}, {2, 0.15, 5}, {3.5, 0.08, 0.5}}
	near := func(a, b unit.Second) bool { return a == b || math.Abs(float64(a-b)) <= 1e-9*float64(b) }
	for _, c := range []struct {
		d    Device
		rows []row
	}{
		{Device{Kind: Blade, Rating: 10}, append(append([]row{{1.1, 360_000, inf}}, common...), row{6, 0.03, 0.1})},
		{Device{Kind: Blade, Rating: 35}, append(append([]row{{1, 360_000, inf}}, common...), row{6, 0.03, 0.15})},
		{Device{Kind: LargeBlade, Rating: 60}, []row{{1, 360_000, inf}, {1.35, 60, 1800}, {2, 2, 50}, {3.5, 0.2, 7}, {6, 0.04, 1}}},
	} {
		if least, most, ok := c.d.Opens(c.rows[0].times * c.d.Rating * 0.9999); least != inf || most != 0 || ok {
			t.Errorf("%+v carries it for ever, not %v to %v, %v", c.d, least, most, ok)
		}
		for n, r := range c.rows {
			i := r.times * c.d.Rating
			least, most, ok := c.d.Opens(i * (1 + 1e-13))
			want := r.most
			if n == 0 {
				want = 0
			}
			if math.Abs(float64(least-r.least)) > 1e-6*float64(r.least) || math.Abs(float64(most-want)) > 1e-6*float64(want) ||
				ok != (n > 0) {
				t.Errorf("%+v at %v A: %v to %v, %v; want %v to %v", c.d, i, least, most, ok, r.least, want)
			}
			if n == 0 {
				continue
			}
			l := c.rows[n-1]
			least, most, ok = c.d.Opens(c.d.Rating * unit.Ampere(math.Sqrt(float64(l.times*r.times))))
			want = unit.Second(math.Sqrt(float64(l.most * r.most)))
			if n == 1 {
				want = 0
			}
			if !near(least, unit.Second(math.Sqrt(float64(l.least*r.least)))) || !near(most, want) || ok != (n > 1) {
				t.Errorf("%+v between %v and %v times: %v to %v, %v", c.d, l.times, r.times, least, most, ok)
			}
			// What is let through falls along the table, so that its rows need no looking at.
			if n > 1 && !(r.times*r.times*unit.Ampere(r.most) < l.times*l.times*unit.Ampere(l.most)) {
				t.Errorf("%+v lets more through at %v times than at %v", c.d, r.times, l.times)
			}
		}
		if got, want := c.d.NeedsToOpen(), c.d.Rating*1.35; math.Abs(float64(got-want)) > 1e-9 {
			t.Errorf("%+v opens from %v A", c.d, got)
		}
	}
	// Exactly at 110 %: 11 A over 10 A is the 1.1 of the table to the last bit.
	if least, _, _ := (Device{Kind: Blade, Rating: 10}).Opens(11); math.Abs(float64(least)-360_000) > 1e-3 {
		t.Errorf("at 110 %% %v s", least)
	}
	limit := Device{Kind: Electronic, Rating: 0.5, Trip: 0.25}
	for i, want := range map[unit.Ampere]struct {
		least, most unit.Second
		ok          bool
	}{0.4: {inf, 0, false}, 0.5: {inf, 0, false}, 0.51: {0.25, 0.25, true}, unit.Ampere(math.NaN()): {}, unit.Ampere(inf): {}} {
		if least, most, ok := limit.Opens(i); least != want.least || most != want.most || ok != want.ok {
			t.Errorf("a limit of 0.5 A at %v A: %v to %v, %v", i, least, most, ok)
		}
	}
	if least, most, ok := (Device{}).Opens(5); least != 0 || most != 0 || ok {
		t.Errorf("a device without a rating: %v to %v, %v", least, most, ok)
	}
	if limit.NeedsToOpen() != 0.5 {
		t.Errorf("a limit opens from %v A", limit.NeedsToOpen())
	}
	for n, r := range Ratings(LargeBlade) { // from 20 to 80 A by tens
		if r != unit.Ampere(20+10*n) {
			t.Errorf("a large blade of %v A", r)
		}
	}
}

// What is let through, by hand. A limit of 0.1 A that opens in 0.01 s passes 0.5² × 0.01 of a short of 0.5 A; one that takes 5 s
// still counts, one that takes longer does not. A 10 A blade passes 60² × 0.1 = 360 of any short of more than 60 A, and the least
// such short is the one that is named; of one short alone it passes what it passes of that: 35² × 0.5 = 612.5.
func TestLetThroughByHand(t *testing.T) {
	blade := Device{Kind: Blade, Rating: 10}
	for _, c := range []struct {
		d           Device
		least, most unit.Ampere
		lets        float64
		at          unit.Ampere
		ok          bool
	}{
		{Device{Kind: Electronic, Rating: 0.1, Trip: 0.01}, 0.5, 0.5, 0.0025, 0.5, true},
		{Device{Kind: Electronic, Rating: 0.1, Trip: 0.01}, 0.2, 0.5, 0.0025, 0.5, true},
		{Device{Kind: Electronic, Rating: 2, Trip: 5}, 3, 4, 80, 4, true},
		{Device{Kind: Electronic, Rating: 2, Trip: 5.1}, 3, 4, 0, 0, false},
		{Device{Kind: Electronic, Rating: 2}, 3, 4, 0, 0, false},
		{Device{Kind: Electronic, Rating: 2, Trip: 1}, 1, 2, 0, 0, false},
		{blade, 70, 90, 360, 70, true}, {blade, 35, 35, 612.5, 35, true}, {blade, 10, 15, 0, 0, false}, {blade, 90, 70, 0, 0, false},
		{blade, 10, 500, 2000, 20, true}, {Device{Kind: Blade}, 10, 500, 0, 0, false},
	} {
		lets, at, ok := c.d.LetThrough(c.least, c.most)
		if math.Abs(float64(lets)-c.lets) > 1e-6*c.lets || math.Abs(float64(at-c.at)) > 1e-6*float64(c.at) || ok != c.ok {
			t.Errorf("%+v from %v to %v A: %v at %v, %v; want %v at %v", c.d, c.least, c.most, lets, at, ok, c.lets, c.at)
		}
	}
}

// The edges of what comes and goes: on for exactly 5 s it still does, for as long as its period it is always on, and without a
// time on nothing comes. On for 1 of 4 s at 10 A and at 4 A in between heats as √((100 + 3·16)/4) = √37 A.
func TestDutyEdges(t *testing.T) {
	for _, c := range []struct {
		d     Duty
		comes bool
		rms   float64
		pulse unit.AmpereSqSecond
	}{
		{Duty{On: 5, Period: 20, Amps: 10}, true, 5, 500}, {Duty{On: 5.01, Period: 20, Amps: 10}, false, 10, 0},
		{Duty{On: 2, Period: 2, Amps: 3, Rest: 7}, false, 7, 0}, {Duty{On: 0, Period: 2, Amps: 9, Rest: 1}, false, 9, 0},
		{Duty{On: -1, Period: 2, Amps: 9}, false, 9, 0}, {Duty{On: 0.5, Period: 2, Amps: 10}, true, 5, 50},
		{Duty{On: 1, Period: 4, Amps: 10, Rest: 4}, true, math.Sqrt(37), 100},
	} {
		if got := c.d.RMS(); c.d.Comes() != c.comes || math.Abs(float64(got)-c.rms) > 1e-9 || c.d.Pulse() != c.pulse {
			t.Errorf("%+v: comes %v, %v A, %v A²s", c.d, c.d.Comes(), got, c.d.Pulse())
		}
	}
}
