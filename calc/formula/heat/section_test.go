package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/unit"
)

// round is so many discs on each of some circles, evenly, as a bundle of one size is laid.
func round(d, core unit.Millimetre, counts ...int) []Disc {
	var out []Disc
	for k, n := range counts {
		for j := range n {
			turn := 2 * math.Pi * float64(j) / float64(n)
			out = append(out, Disc{X: unit.Millimetre(float64(k)*math.Sin(turn)) * d, Y: unit.Millimetre(float64(k)*math.Cos(turn)) * d,
				OverMM: d, CoreMM: core, Ohm: 53.15, Rated: 150})
		}
	}
	return out
}

// someSection is a bundle of one size or two, with a filler or a made-up pair in it
// perhaps, in a sheath or bare.
func someSection(t *rapid.T) Section {
	layers := rapid.SampledFrom([][]int{{1}, {1, 6}, {1, 6, 12}, {1, 5, 11}, {1, 6, 12, 18}}).Draw(t, "layers")
	d := unit.Millimetre(rapid.SampledFrom([]float64{0.81, 1.09, 1.73}).Draw(t, "d"))
	s := Section{Discs: round(d, d*0.7, layers...), Ambient: unit.Celsius(rapid.Float64Range(-40, 120).Draw(t, "ambient")),
		Pressure: Pressure(unit.Millimetre(rapid.SampledFrom([]float64{0, 3e6}).Draw(t, "height")))}
	s.InsideMM = d * unit.Millimetre(2*len(layers)-1)
	if rapid.Bool().Draw(t, "sheath") {
		s.OutsideMM = s.InsideMM + unit.Millimetre(rapid.Float64Range(0.6, 2.6).Draw(t, "walls"))
	}
	for i := range s.Discs {
		s.Discs[i].Amps = unit.Ampere(rapid.SampledFrom([]float64{0, 0, 0, 0.5, 2, 6}).Draw(t, "amps"))
		if len(s.Discs) > 1 && rapid.IntRange(0, 9).Draw(t, "filler") == 0 {
			s.Discs[i] = Disc{X: s.Discs[i].X, Y: s.Discs[i].Y, OverMM: d}
		}
	}
	if rapid.Bool().Draw(t, "jacket") {
		// The last becomes a jacket round two thin wires.
		last := &s.Discs[len(s.Discs)-1]
		x, y := last.X, last.Y
		*last = Disc{X: x, Y: y, OverMM: d, CoreMM: d * 0.9}
		jacket := len(s.Discs)
		for _, side := range []unit.Millimetre{-1, 1} {
			s.Discs = append(s.Discs, Disc{X: x + side*d*0.225, Y: y, OverMM: d * 0.45, CoreMM: d * 0.3, In: jacket, Ohm: 300, Amps: 0.5,
				Rated: 150})
		}
	}
	return s
}

// One wire in its sheath has a closed form: its heat across insulation and sheath, both
// of them cylinders, and from the surface.
func TestOneWire(t *testing.T) {
	s := Section{Discs: []Disc{{OverMM: 2, CoreMM: 1.4, Ohm: 20, Amps: 12}}, InsideMM: 2, OutsideMM: 3.2, Ambient: 40}
	rays, _ := Trace(s)
	r, ok := rays.Solve(s)
	if !ok {
		t.Fatal("no balance")
	}
	q := 12 * 12 * 0.020 * (234.5 + float64(r.Discs[0])) / 254.5
	near(t, "heat", float64(r.Heat), q, 1e-4)
	near(t, "surface", float64(Surface(3.2, r.Surface, 40, Emissivity, seaLevel)), q, 1e-3)
	want := float64(r.Surface) + q*math.Log(3.2/2)/(2*math.Pi*0.2) + q*math.Log(2/1.4)/(2*math.Pi*0.24)
	near(t, "conductor", float64(r.Discs[0]), want, 1e-3)
	// In a jacket of its own, a cylinder more.
	s.Discs = []Disc{{OverMM: 2, CoreMM: 1.4}, {OverMM: 1.4, CoreMM: 1, Ohm: 20, Amps: 12, In: 1}}
	rays, _ = Trace(s)
	r, _ = rays.Solve(s)
	q = float64(r.Heat)
	near(t, "jacket", float64(r.Discs[0]), float64(r.Surface)+q*math.Log(3.2/2)/(2*math.Pi*0.2)+q*math.Log(2/1.4)/(2*math.Pi*0.24), 1e-3)
	near(t, "inside", float64(r.Discs[1]-r.Discs[0]), q*math.Log(1.4)/(2*math.Pi*0.24), 1e-3)
}

// What the conductors make at their temperatures, the air takes from the surface; nothing
// is colder than the air; what lies round each disc explains its temperature; and more
// current in a wire never cools it.
func TestBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := someSection(t)
		rays, ok := Trace(s)
		if !ok {
			t.Fatalf("not traced: %+v", s)
		}
		r, ok := rays.Solve(s)
		if !ok {
			t.Skip("no steady state")
		}
		made := 0.0
		for i, d := range s.Discs {
			q := float64(d.At20()) * float64(Grows(r.Discs[i]))
			made += q
			if r.Discs[i] < s.Ambient-1e-6 {
				t.Errorf("disc %d at %v in air of %v", i, r.Discs[i], s.Ambient)
			}
			sum, conducts := q, 0.0
			for _, m := range r.Round(s, i) {
				sum, conducts = sum+float64(m.Conducts)*float64(m.C), conducts+float64(m.Conducts)
			}
			near(t, "disc by its neighbours", float64(r.Discs[i]), sum/conducts, 2e-3)
		}
		outside := max(s.OutsideMM, s.InsideMM)
		near(t, "heat taken", float64(Surface(outside, r.Surface, s.Ambient, Emissivity, s.Pressure)), made, 1e-3*made+1e-4)
		if r.Under < r.Surface-0.05 {
			t.Errorf("the sheath at its warmest %v, its surface %v", r.Under, r.Surface)
		}
		at := rapid.IntRange(0, len(s.Discs)-1).Draw(t, "more in")
		more := s
		more.Discs = append([]Disc{}, s.Discs...)
		more.Discs[at].Amps += 0.5
		if m, ok := rays.Solve(more); ok && m.Discs[at] < r.Discs[at]-1e-3 {
			t.Errorf("disc %d cools from %v to %v", at, r.Discs[at], m.Discs[at])
		}
	})
}

// A limit, entered, brings its conductor to its rating: never above, and no more than 5 K
// below. Where it is 0 the others alone come to the rating.
func TestLimits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := someSection(t)
		rays, _ := Trace(s)
		r, ok := rays.Solve(s)
		if !ok {
			t.Skip("no steady state")
		}
		for i, a := range r.Limits(s) {
			d := s.Discs[i]
			if d.Ohm <= 0 {
				if a != 0 {
					t.Errorf("disc %d without conductor may carry %v", i, a)
				}
				continue
			}
			at := s
			at.Discs = append([]Disc{}, s.Discs...)
			at.Discs[i].Amps = a
			b, ok := rays.Solve(at)
			if !ok {
				t.Fatalf("disc %d has no steady state at its limit of %v", i, a)
			}
			if c := b.Discs[i]; a > 0 && (c > 150+1e-2 || c < 145) || a == 0 && c < 145 {
				t.Errorf("disc %d comes to %.2f at its limit of %.3f A", i, float64(c), float64(a))
			}
		}
	})
}

// A section turned round is as warm: the rays and the sectors have no side of their own
// that weighs more than a hundredth of a rise.
func TestTurned(t *testing.T) {
	base := Section{Discs: round(1.09, 0.76, 1, 6, 12), InsideMM: 5.45, OutsideMM: 7, Ambient: 20}
	base.Discs[15].Amps, base.Discs[2].Amps = 8, 5
	rays, _ := Trace(base)
	want, _ := rays.Solve(base)
	for _, deg := range []float64{1, 3.7, 11, 45, 77, 180} {
		s := base
		s.Discs = append([]Disc{}, base.Discs...)
		sin, cos := math.Sincos(deg * math.Pi / 180)
		for i, d := range s.Discs {
			s.Discs[i].X = d.X*unit.Millimetre(cos) - d.Y*unit.Millimetre(sin)
			s.Discs[i].Y = d.X*unit.Millimetre(sin) + d.Y*unit.Millimetre(cos)
		}
		rays, _ := Trace(s)
		got, _ := rays.Solve(s)
		for i := range got.Discs {
			near(t, "turned", float64(got.Discs[i]-20), float64(want.Discs[i]-20), 0.02*float64(want.Discs[i]-20))
		}
	}
}

// Nonsense gives no number.
func TestNonsense(t *testing.T) {
	nan := unit.Millimetre(math.NaN())
	for _, s := range []Section{
		{}, {Discs: []Disc{{}}, InsideMM: 1}, {Discs: []Disc{{OverMM: nan}}, InsideMM: 1}, {Discs: []Disc{{OverMM: 1}}},
		{Discs: []Disc{{OverMM: 1, X: nan}}, InsideMM: 1}, {Discs: []Disc{{OverMM: 1, In: 1}}, InsideMM: 1},
		{Discs: []Disc{{OverMM: 1}}, InsideMM: unit.Millimetre(math.Inf(1))},
	} {
		if _, ok := Trace(s); ok {
			t.Errorf("%+v is traced", s)
		}
	}
	good := Section{Discs: round(1.09, 0.76, 1, 6), InsideMM: 3.27}
	rays, _ := Trace(good)
	for _, change := range []func(s *Section){
		func(s *Section) { s.Ambient = unit.Celsius(math.NaN()) }, func(s *Section) { s.Ambient = -300 },
		func(s *Section) { s.Discs[3].Amps = unit.Ampere(math.Inf(1)) }, func(s *Section) { s.Discs[3].Amps = unit.Ampere(math.NaN()) },
		func(s *Section) { s.Discs[3].Amps = 1e9 }, func(s *Section) { s.Discs = s.Discs[:3] }, func(s *Section) { s.Discs[0].Amps = 90 },
	} {
		s := good
		s.Discs = append([]Disc{}, good.Discs...)
		change(&s)
		if r, ok := rays.Solve(s); ok {
			t.Errorf("%+v comes to %+v", s, r)
		}
	}
}
