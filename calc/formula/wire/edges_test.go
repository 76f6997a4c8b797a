package wire_test

import (
	"math"
	"testing"

	"contralay/calc/formula/wire"
	"contralay/model/unit"
)

// What each function still takes and what it refuses beside it. What is refused comes with 0. Expected by hand.
func TestEdgesOfWhatIsTaken(t *testing.T) {
	inf := math.Inf(1)
	of := func(v float64, ok bool) [2]float64 {
		if ok {
			return [2]float64{v, 1}
		}
		return [2]float64{v, 0}
	}
	ideal := func(a unit.SquareMM) [2]float64 { v, ok := wire.IdealResistance(a); return of(float64(v), ok) }
	at := func(r unit.OhmPerKilometre, c unit.Celsius) [2]float64 {
		v, ok := wire.ResistanceAt(r, c)
		return of(float64(v), ok)
	}
	run := func(l unit.Millimetre, c unit.Celsius) [2]float64 {
		v, ok := wire.EquivalentLength(l, c)
		return of(float64(v), ok)
	}
	drop := func(i unit.Ampere, r unit.OhmPerKilometre, l unit.Millimetre) [2]float64 {
		v, ok := wire.Drop(i, r, 20, l)
		return of(float64(v), ok)
	}
	mass := func(a unit.SquareMM, d, over unit.Millimetre, rho unit.GramPerCC) [2]float64 {
		v, ok := wire.EstimateMass(a, d, over, rho)
		return of(float64(v), ok)
	}
	area := func(n int, d unit.Millimetre) [2]float64 { v, ok := wire.StrandedArea(n, d); return of(float64(v), ok) }
	loss := func(p, l unit.Millimetre) [2]float64 {
		v, ok := wire.LayLoss(p, l)
		return of(float64(v), ok)
	}
	no := [2]float64{}
	for _, c := range []struct {
		name      string
		got, want [2]float64
	}{
		{"no section", ideal(0), no}, {"a section below 0", ideal(-1), no},
		{"0.5 mm²: 1000 × 0.017241 ÷ 0.5", ideal(0.5), of(34.482, true)},
		{"no resistance has none", at(0, 20), of(0, true)}, {"below 0 Ω", at(-1, 20), no}, {"0.5 Ω/km", at(0.5, 20), of(0.5, true)},
		{"below where copper's line ends", at(10, -300), no}, {"at -234 °C: 10 × 0.5 ÷ 254.5", at(10, -234), of(5/254.5, true)},
		{"no run", run(0, 20), of(0, true)}, {"half a millimetre", run(0.5, 20), of(0.5, true)}, {"a run below 0", run(-1, 20), no},
		{"a run at the end of copper's line", run(1, -234.5), no}, {"a run colder than that", run(1, -300), no},
		{"a run at -234 °C: 254.5 ÷ 0.5", run(1, -234), of(509, true)},
		{"no current drops nothing", drop(0, 10, 1000), of(0, true)}, {"no length drops nothing", drop(1, 10, 0), of(0, true)},
		{"0.5 A over 1 m of 10 Ω/km", drop(0.5, 10, 1000), of(0.005, true)}, {"1 A over 0.5 mm", drop(1, 10, 0.5), of(5e-6, true)},
		{"a current below 0", drop(-1, 10, 1000), no}, {"a length below 0", drop(1, 10, -1), no},
		{"a resistance below 0", drop(1, -1, 1000), no},
		// 8.89 × 1.03 = 9.1567 g/m of copper for each mm²; a wall from 1 to 2 mm is π/4 × 3 = 2.35619 mm².
		{"0.5 mm² of copper without a wall", mass(0.5, 1, 1, 2), of(4.57835, true)},
		{"a wall of 2 g/cm³", mass(1, 1, 2, 2), of(13.86909, true)},
		{"a wall of 0.5 g/cm³", mass(1, 1, 2, 0.5), of(10.334797, true)},
		{"a wall that weighs nothing", mass(1, 1, 2, 0), of(9.1567, true)},
		{"0.5 mm over no conductor's diameter", mass(1, 0, 0.5, 1), of(9.1567+math.Pi/16, true)},
		{"0.5 mm of diameter", mass(1, 0.5, 0.5, 1), of(9.1567, true)},
		{"no copper", mass(0, 1, 2, 2), no}, {"a diameter below 0", mass(1, -1, 2, 2), no},
		{"thinner than its conductor", mass(1, 2, 1.9, 2), no},
		{"a density below 0", mass(1, 1, 2, -1), no},
		{"one strand of 2 mm", area(1, 2), of(math.Pi, true)}, {"no strand", area(0, 2), no}, {"strands below 0", area(-1, 2), no},
		{"strands of 0.5 mm: 16 × π/4 ÷ 4", area(16, 0.5), of(math.Pi, true)}, {"strands of no diameter", area(19, 0), no},
		{"straight", loss(0, 30), of(1, true)}, {"pitch and lay as π to 1: √(1 + π⁴)", loss(math.Pi/2, 0.5),
			of(math.Sqrt(1+math.Pow(math.Pi, 4)), true)},
		{"a pitch below 0", loss(-1, 30), no}, {"a lay below 0", loss(1, -30), no}, {"no lay and no pitch", loss(0, 0), no},
		{"an endless lay", loss(1, unit.Millimetre(inf)), no}, {"a lay that is no number", loss(1, unit.Millimetre(math.NaN())), no},
	} {
		if c.got[1] != c.want[1] || !(math.Abs(c.got[0]-c.want[0]) <= 1e-6*c.want[0]) {
			t.Errorf("%s: %v, want %v", c.name, c.got, c.want)
		}
	}
	if v, ok := wire.StrandedAreaAWG(19, 44); ok || v != 0 {
		t.Errorf("strands thinner than the gauge have %v mm²", v)
	}
	if m, ok := wire.MakeUp([]unit.Millimetre{math.MaxFloat64, 1}, false); ok || m != (wire.MadeUp{}) {
		t.Errorf("a pair beyond all numbers: %+v", m)
	}
}

// The gauge at its ends: 43 is 0.005 × 92^(−7/39) = 0.0022207 in, 44 is none; sizes from 1/0 on print with their nought.
func TestEndsOfTheGauge(t *testing.T) {
	near(t, "43, in", must[unit.Millimetre](t, "43")(wire.AWG(43).Diameter())/25.4, 0.0022207, 1e-6)
	for a, want := range map[wire.AWG]string{-3: "4/0", -2: "3/0", -1: "2/0", 0: "1/0", 1: "1", 43: "43", -4: "-4"} {
		if got := a.String(); got != want {
			t.Errorf("%d prints as %q, want %q", int(a), got, want)
		}
	}
	for text, want := range map[string]wire.AWG{"9": 9, "10": 10, "19": 19, "1/0": 0, "4/0": -3} {
		if a, err := wire.ParseAWG(text); err != nil || a != want {
			t.Errorf("ParseAWG(%q) = %d, %v; want %d", text, a, err, want)
		}
	}
	for _, text := range []string{"", "44", "x", ":", "5/0", "0/0"} {
		if a, err := wire.ParseAWG(text); err == nil || a != 0 {
			t.Errorf("ParseAWG(%q) = %d, %v", text, a, err)
		}
	}
	for _, a := range []wire.AWG{-4, 44} {
		if m, ok := a.CircularMils(); ok || m != 0 {
			t.Errorf("%d: %v circular mils", int(a), m)
		}
	}
}
