package heat

import (
	"math"
	"math/rand/v2"
	"testing"

	"contralay/model/unit"
)

// mixed are discs of several sizes that do not overlap, in a bundle of 12 mm: most are conductors, some fillers, and one is a jacket
// with two wires in it.
func mixed(r *rand.Rand) Section {
	s := Section{InsideMM: 12, OutsideMM: 14, Ambient: 30}
	for range 4000 {
		d := Disc{X: unit.Millimetre(12*r.Float64() - 6), Y: unit.Millimetre(12*r.Float64() - 6),
			OverMM: unit.Millimetre(1 + r.Float64()), Rated: 150}
		ok := math.Hypot(float64(d.X), float64(d.Y)) < 6-float64(d.OverMM)/2-0.01
		for _, o := range s.Discs {
			ok = ok && math.Hypot(float64(d.X-o.X), float64(d.Y-o.Y)) > float64(d.OverMM+o.OverMM)/2+0.01
		}
		if !ok {
			continue
		}
		if d.CoreMM = d.OverMM * 0.7; len(s.Discs)%5 == 3 {
			d.CoreMM, d.Rated = 0, 0
		} else {
			d.Ohm, d.Amps = 40, unit.Ampere(3*r.Float64())
		}
		s.Discs = append(s.Discs, d)
	}
	j := s.Discs[0]
	s.Discs[0].CoreMM, s.Discs[0].Ohm, s.Discs[0].Amps, s.Discs[0].Rated = j.OverMM*0.9, 0, 0, 0
	for _, side := range []unit.Millimetre{-1, 1} {
		s.Discs = append(s.Discs, Disc{X: j.X + side*j.OverMM*0.225, Y: j.Y, OverMM: j.OverMM * 0.4, CoreMM: j.OverMM * 0.3, In: 1,
			Ohm:  300,
			Amps: 0.5, Rated: 150})
	}
	return s
}

// strike is how far along a ray from x, y by u, v it enters a circle round cx, cy, or leaves one that it begins in: the roots of
// |p + t u − c|² = r².
func strike(x, y, u, v, cx, cy, r float64) (in, out float64, ok bool) {
	b, c := u*(x-cx)+v*(y-cy), (x-cx)*(x-cx)+(y-cy)*(y-cy)-r*r
	if b*b-c < 0 {
		return 0, 0, false
	}
	return -b - math.Sqrt(b*b-c), -b + math.Sqrt(b*b-c), true
}

// Every slice of a disc looks at the first thing that a ray from its axis strikes, told by going through all discs: one that lies in
// the same jacket or in none, and behind them the bore. How wide the gap is to it by the formula of look, in the angle of the slice.
func TestEverySliceLooksStraightOut(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 2))
	discs, walls := 0, 0
	for range 4 {
		s := mixed(r)
		rays72 := &Rays{discs: len(s.Discs)}
		for i, d := range s.Discs {
			v := rays72.look(s, i)
			x, y, radius := float64(d.X), float64(d.Y), float64(d.OverMM)/2
			for k := range rays {
				angle := (float64(k) + 0.5) * 2 * math.Pi / rays
				u, w := math.Cos(angle), math.Sin(angle)
				best, reach, close := -1, math.Inf(1), false
				for j, o := range s.Discs {
					in, _, ok := strike(x, y, u, w, float64(o.X), float64(o.Y), float64(o.OverMM)/2)
					if j == i || o.In != d.In || !ok || in <= 0 {
						continue
					}
					close = close || math.Abs(in-reach) < 1e-9
					if in < reach {
						best, reach = j, in
					}
				}
				if close {
					continue
				}
				var gap float64
				if best >= 0 {
					o := s.Discs[best]
					far, size := math.Hypot(float64(o.X-d.X), float64(o.Y-d.Y)), float64(o.OverMM)/2
					tau := math.Acosh((far*far + radius*radius - size*size) / (2 * far * radius))
					theta := angle - math.Atan2(float64(o.Y-d.Y), float64(o.X-d.X))
					gap = tau * radius * (math.Cosh(tau) - math.Cos(theta)) / math.Sinh(tau)
					discs++
				} else {
					cx, cy, bore := 0.0, 0.0, 6.0
					if d.In > 0 {
						j := s.Discs[d.In-1]
						cx, cy, bore = float64(j.X), float64(j.Y), float64(j.CoreMM)/2
					}
					_, reach, _ = strike(x, y, u, w, cx, cy, bore)
					if best = d.In - 1; d.In == 0 {
						turn := math.Atan2(y+w*reach, x+u*reach) + math.Pi
						best = len(s.Discs) + int(turn/(2*math.Pi)*sectors)
					}
					off := math.Hypot(x-cx, y-cy)
					front := math.Acosh((bore*bore + radius*radius - off*off) / (2 * bore * radius))
					tau := math.Acosh((bore*bore - radius*radius - off*off) / (2 * off * radius))
					theta := angle - math.Atan2(y-cy, x-cx)
					gap = (front*radius*(math.Cosh(tau)-math.Cos(theta))/math.Sinh(tau) + reach - radius) / 2
					walls++
				}
				if int(v.meets[k]) != best || math.Abs(v.reach[k]-reach) > 1e-9 || math.Abs(v.gap[k]-gap) > 1e-6 {
					t.Fatalf("disc %d of %d, slice %d meets %d at %v over %v; by its ray %d at %v over %v", i, len(s.Discs), k,
						v.meets[k],
						v.reach[k], v.gap[k], best, reach, gap)
				}
			}
		}
	}
	if discs < 500 || walls < 500 {
		t.Errorf("%d slices meet a disc, %d the bore", discs, walls)
	}
}

// What a disc may make by itself in a state, entered, brings it to its rating less what is kept spare, in the same state: then all
// make the total that is told, and the conductors have the mean that is told.
func TestWhatADiscMayMake(t *testing.T) {
	s := mixed(rand.New(rand.NewPCG(7, 7)))
	r, _ := Trace(s)
	c, w, at := s.carried(), r.work(), state{h: 14, air: 0.03}
	n := len(s.Discs)
	got := level{own: make([]float64, n), total: make([]float64, n)}
	r.allows(w, s, c, at, got)
	mean := append([]float64(nil), w.mean...)
	conductors, rises := 0, make([]float64, r.nodes)
	for _, d := range s.Discs {
		if d.Ohm > 0 {
			conductors++
		}
	}
	if c.conductors != conductors || c.rated != 150 {
		t.Errorf("%d conductors, rated %v", c.conductors, c.rated)
	}
	asked := 0
	for i, d := range s.Discs {
		if !d.asks() {
			continue
		}
		asked++
		makes, grows := s.heats()
		makes[i], grows[i] = got.own[i], 0 // what it makes at its rating, however warm it is
		if !r.settle(r.work(), at, makes, grows, make([]float64, r.nodes), rises) {
			t.Fatal("no balance")
		}
		total, sum := 0.0, 0.0
		for k, o := range s.Discs {
			total += makes[k] + grows[k]*rises[k]
			if o.Ohm > 0 {
				sum += rises[k]
			}
		}
		near(t, "its rating", rises[i], 150-2-30, 1e-6)
		near(t, "the total", got.total[i], total, 1e-6*total)
		near(t, "the mean", mean[i], 30+sum/float64(conductors), 1e-6*sum)
	}
	if asked < 5 {
		t.Errorf("%d discs are asked", asked)
	}
}

// Of a section in which one disc alone is asked, among fillers and wires without a rating, the limit brings that one to its rating;
// at little and at much heat from the others.
func TestLimitOfOneAmongOthers(t *testing.T) {
	s := mixed(rand.New(rand.NewPCG(9, 9)))
	for i := range s.Discs {
		s.Discs[i].Amps /= 4
		if i != 1 {
			s.Discs[i].Rated = 0
		}
	}
	for _, times := range []unit.Ampere{0, 1, 8} {
		at := s
		at.Discs = append([]Disc{}, s.Discs...)
		for i := range at.Discs {
			at.Discs[i].Amps *= times
		}
		r, _ := Trace(at)
		b, ok := r.Solve(at)
		if !ok {
			t.Fatalf("times %v: no balance", times)
		}
		limits := b.Limits(at)
		for i, a := range limits {
			if (a > 0) != (i == 1) {
				t.Errorf("times %v: disc %d may carry %v", times, i, a)
			}
		}
		at.Discs[1].Amps = limits[1]
		if b, ok := r.Solve(at); !ok || b.Discs[1] > 150.01 || b.Discs[1] < 145 {
			t.Errorf("times %v: at its limit of %v A it comes to %v", times, limits[1], b.Discs)
		}
	}
}

// The row that the nodes are put in is the narrowest of those across the bundle in six directions over half a turn, worked out from
// where discs lie and from the middles of sectors: they lie half way from the middle to the outside. To a
// hundredth: sectors on either side of a direction lie equally far across, and either may come first.
func TestNarrowestOrder(t *testing.T) {
	s := mixed(rand.New(rand.NewPCG(5, 5)))
	r, _ := Trace(s)
	cost := func(place func(node int) int) (sum float64) {
		first := make([]int, r.nodes)
		for k := range first {
			first[k] = k
		}
		for _, l := range r.links {
			a, b := place(int(l.a)), place(int(l.b))
			first[max(a, b)] = min(first[max(a, b)], min(a, b))
		}
		for k, f := range first {
			sum += float64((k - f) * (k - f))
		}
		return sum
	}
	least := math.Inf(1)
	for n := range 6 {
		turn := math.Pi * float64(n) / 6
		across := func(node int) float64 {
			if node < len(s.Discs) {
				return float64(s.Discs[node].X)*math.Cos(turn) + float64(s.Discs[node].Y)*math.Sin(turn)
			}
			return 7 * math.Cos((float64((node-len(s.Discs))%24)+0.5)/24*2*math.Pi-math.Pi-turn)
		}
		least = math.Min(least, cost(func(node int) (before int) {
			for o := range r.nodes {
				if a, b := across(o), across(node); a < b-1e-9 || math.Abs(a-b) <= 1e-9 && o < node {
					before++
				}
			}
			return before
		}))
	}
	if got := cost(func(node int) int { return int(r.place[node]) }); got > least*1.01 {
		t.Errorf("the row costs %v, the narrowest of six %v", got, least)
	}
}

// Where heat grows faster than it is taken away the rises go one step up from the last ones: as without growth, at what is made at
// those.
func TestOneStepTowardsRunaway(t *testing.T) {
	s := mixed(rand.New(rand.NewPCG(3, 3)))
	for i := range s.Discs {
		s.Discs[i].Amps *= 20
	}
	r, _ := Trace(s)
	makes, grows := s.heats()
	last := make([]float64, r.nodes)
	for i := range last {
		last[i] = float64(100 + 7*i)
	}
	last[1] = 5000 // beyond any temperature that counts
	at := state{h: 12, air: 0.03}
	up, plain := make([]float64, r.nodes), make([]float64, r.nodes)
	if r.settle(r.work(), at, makes, grows, last, up) {
		t.Fatal("a balance at 20 times the current")
	}
	more := make([]float64, len(makes))
	for i := range more {
		more[i] = makes[i] + grows[i]*math.Min(last[i], 1200)
	}
	if !r.settle(r.work(), at, more, make([]float64, len(makes)), last, plain) {
		t.Fatal("no balance without growth")
	}
	for i := range up {
		near(t, "a step", up[i], plain[i], 1e-6*plain[i])
	}
	// The mean of conductors is that of those alone.
	sum, n := 0.0, 0
	for i, d := range s.Discs {
		if d.Ohm > 0 {
			sum, n = sum+last[i], n+1
		}
	}
	near(t, "mean", r.mean(s, last), sum/float64(n), 1e-9)
}

// The warmest sector of the sheath's inside is as warm as what lies round it makes it, since nothing is made there; bare, what it
// gives off goes to the air.
func TestWarmestSector(t *testing.T) {
	for _, outside := range []unit.Millimetre{14, 0} {
		s := mixed(rand.New(rand.NewPCG(11, 11)))
		s.OutsideMM = outside
		r, _ := Trace(s)
		b, ok := r.Solve(s)
		if !ok {
			t.Fatal("no balance")
		}
		sum, conducts, sheath, air := 0.0, 0.0, 0, 0
		last := unit.Conductivity(math.Inf(1))
		for _, m := range b.Warmest(s) {
			sum, conducts = sum+float64(m.Conducts)*float64(m.C), conducts+float64(m.Conducts)
			if m.Conducts > last {
				t.Errorf("%v conducts more than what stands before it", m)
			}
			switch last = m.Conducts; {
			case m.Disc == -1:
				sheath++
			case m.Disc == -2:
				air++
				near(t, "the air", float64(m.C), 30, 1e-9)
				// A twenty-fourth of the heat of the whole surface for each kelvin of its mean.
				near(t, "off the surface", float64(m.Conducts), float64(b.Heat)/float64(b.Surface-30)/24, 1e-3*float64(m.Conducts))
			case m.Disc < 0 || m.Disc >= len(s.Discs):
				t.Errorf("it meets %d", m.Disc)
			}
		}
		if want := [2]int{1, 0}; outside > 0 && want != [2]int{sheath, air} || outside == 0 && air != 1 {
			t.Errorf("over %v: the sheath %d times, the air %d times", outside, sheath, air)
		}
		near(t, "the warmest sector", float64(b.Under), sum/conducts, 2e-3)
	}
}

// Convection by the formula as it is written, with powers; and what gives off nothing.
func TestConvectionByPowers(t *testing.T) {
	for _, c := range [][4]float64{{1, 80, 20, 101_325}, {12, 150, -40, 101_325}, {30, 60, 50, 26_000}, {0.3, 400, 20, 101_325}} {
		k, a := c[1]+273.15, c[2]+273.15
		air := airAt((k+a)/2, c[3])
		d := c[0] / 1000
		nu, alpha := air.mu/air.rho, air.k/(air.rho*air.cp)
		ra := 9.80665 / ((k + a) / 2) * (k - a) * math.Pow(d, 3) / (nu * alpha)
		nusselt := math.Pow(0.60+0.387*math.Pow(ra, 1.0/6)/math.Pow(1+math.Pow(0.559/(nu/alpha), 9.0/16), 8.0/27), 2)
		want := nusselt*air.k*math.Pi*(k-a) + math.Pi*d*0.9*5.670374419e-8*(math.Pow(k, 4)-math.Pow(a, 4))
		near(t, "what air takes", float64(Surface(unit.Millimetre(c[0]), unit.Celsius(c[1]), unit.Celsius(c[2]), Emissivity, c[3])),
			want, 1e-9*want)
	}
	for _, c := range [][4]float64{{0, 80, 20, 1e5}, {-1, 80, 20, 1e5}, {5, 20, 20, 1e5}, {5, 10, 20, 1e5}, {5, 80, 20, 0}, {5, 80,
		20, -1},
		{math.NaN(), 80, 20, 1e5}} {
		if got := Surface(unit.Millimetre(c[0]), unit.Celsius(c[1]), unit.Celsius(c[2]), Emissivity, c[3]); got != 0 {
			t.Errorf("%v: %v", c, got)
		}
	}
	if !(Surface(0.5, 20.5, 20, Emissivity, 0.5) > 0) {
		t.Error("half a degree takes nothing")
	}
}

// One wire alone at its limit, by its layers: what it makes at its rating goes through insulation and sheath, each a cylinder, and off
// the surface; also where the copper is nearly as thick as the insulation is told to be, which then counts as 0.97 of it, and high up.
func TestLimitOfOneWireByLayers(t *testing.T) {
	for _, c := range []struct {
		over, core, inside, outside unit.Millimetre
		ohm                         unit.OhmPerKilometre
		pressure                    float64
	}{{2, 1.4, 2, 3.2, 20, 0}, {2, 1.4, 2, 0, 20, 0}, {2, 1.99, 2, 2.6, 20, 26_000}, {0.6, 0.3, 0.6, 0.9, 0.5, 101_325}, {2, 1.4,
		2.2, 4, 900, 0.5}} {
		s := Section{Discs: []Disc{{OverMM: c.over, CoreMM: c.core, Ohm: c.ohm, Rated: 150}}, InsideMM: c.inside,
			OutsideMM: c.outside, Ambient: 40,
			Pressure: c.pressure}
		pressure, outside, core := c.pressure, max(c.outside, c.inside), min(c.core, 0.97*c.over)
		if pressure == 0 {
			pressure = 101_325
		}
		i := float64(s.single())
		q := i * i * float64(c.ohm) / 1000 * (234.5 + 150) / 254.5
		surface := 150 - q*math.Log(float64(c.over/core))/(2*math.Pi*0.24) - q*math.Log(float64(outside/c.inside))/(2*math.Pi*0.2)
		near(t, "what the air takes", float64(Surface(outside, unit.Celsius(surface), 40, Emissivity, pressure)), q, 1e-6*q)
		if q <= 0 {
			t.Errorf("%+v carries nothing", c)
		}
	}
}

// A section that makes next to no heat has a surface that gives off just that, and air of half a pascal takes less than that at sea
// level; a pressure that is not known is that at sea level.
func TestFaintHeat(t *testing.T) {
	s := Section{Discs: []Disc{{OverMM: 2, CoreMM: 1.4, Ohm: 20, Amps: 0.5}}, InsideMM: 2, OutsideMM: 3.2, Ambient: 40}
	r, _ := Trace(s)
	b, ok := r.Solve(s)
	if q := 0.25 * 0.020 * (234.5 + float64(b.Discs[0])) / 254.5; !ok || math.Abs(float64(b.Heat)-q) > 1e-9 {
		t.Errorf("%v, by hand %v", b.Heat, q)
	}
	near(t, "given off", float64(Surface(3.2, b.Surface, 40, Emissivity, seaLevel)), float64(b.Heat), 1e-6)
	s.Discs[0].Amps = 12
	warm := map[float64]unit.Celsius{}
	for _, p := range []float64{0, -1, seaLevel, 0.5} {
		s.Pressure = p
		b, _ := r.Solve(s)
		warm[p] = b.Surface
		if p > 0 {
			near(t, "given off", float64(Surface(3.2, b.Surface, 40, Emissivity, p)), float64(b.Heat), 1e-3)
		}
	}
	if warm[0] != warm[seaLevel] || warm[-1] != warm[seaLevel] || warm[0.5] < warm[0]+1 {
		t.Errorf("%v", warm)
	}
}
