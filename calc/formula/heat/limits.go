package heat

import (
	"cmp"
	"math"
	"slices"

	"contralay/model/unit"
)

// Limits is the current of each disc that brings its conductor to its rating, the others
// as entered; 0 where they alone do, or where nothing is asked of it.
//
// In a state of surface and air the balance is linear in the heats, so the network factored
// once answers for every disc: with Z the inverse of its matrix and T' the temperature
// without a current of its own,
//
//	I² R(rated) = (rated − T') / Z'    Z' = Z/(1 + βZ), its own growth β taken out
//
// That is done in some states, from the heat of the coolest disc at its limit to that of
// the warmest, and read off at the one that the disc's own heat leads to.
func (res Result) Limits(s Section) []unit.Ampere {
	r := res.rays
	out := make([]unit.Ampere, len(s.Discs))
	first := r.level(s, res.at, float64(res.Heat))
	least := math.Inf(1)
	for i, d := range s.Discs {
		if d.Rated > 0 && d.Ohm > 0 {
			least = math.Min(least, first.total[i])
		}
	}
	if math.IsInf(least, 1) {
		return out
	}
	least = math.Max(least, leastHeat)
	next := func(from level, q float64) level {
		at, _ := r.stateAt(s, q, from.meanAt(q))
		return r.level(s, at, q)
	}
	levels := []level{first} // exact for what adds little to what is there
	last := first
	if first.heat < least/2 {
		last = next(first, least) // a first look, from where the air in the gaps is told better
	}
	for q := least; len(levels) < mostLevels; q *= math.Exp(stride) {
		last = next(last, q)
		levels = append(levels, last)
		// A warmer surface gives off heat better, so that more is allowed than in the state
		// before: up to where no disc by itself leads further.
		if slices.Max(last.total) <= q {
			break
		}
	}
	slices.SortFunc(levels, func(a, b level) int { return cmp.Compare(a.heat, b.heat) })
	for i, d := range s.Discs {
		if d.Rated <= 0 || d.Ohm <= 0 {
			continue
		}
		out[i] = unit.Ampere(math.Sqrt(math.Max(0, ownAt(levels, i)) / (float64(d.Ohm) / 1000 * float64(Grows(d.Rated)))))
	}
	return out
}

// spare is how far below its rating a limit keeps a conductor, K. Reading between levels,
// with air in the gaps as warm as for the mean of all discs, misses by less.
const spare = 2.5

// level is what a state of heat q lets each disc make by itself, and what that leads to.
type level struct {
	heat  float64
	own   []float64 // W/m of the disc at its rating
	total []float64 // of all then
	mean  []float64 // of all conductors then, °C
	warms []float64 // by how much more for a watt more
}

// meanAt is the mean of the conductors where a disc at its rating leads to a heat q, the
// mean over all discs of that.
func (l level) meanAt(q float64) float64 {
	sum, n := 0.0, 0
	for i, t := range l.total {
		if t > 0 {
			sum, n = sum+l.mean[i]+l.warms[i]*(q-t), n+1
		}
	}
	return sum / float64(max(n, 1))
}

// level works a state out for every disc.
func (r *Rays) level(s Section, at state, q float64) level {
	n := r.discs
	makes, grows := make([]float64, n), make([]float64, n)
	conductors := 0
	for i, d := range s.Discs {
		p := float64(d.At20())
		makes[i], grows[i] = p*float64(Grows(s.Ambient)), p/(copperZero+20)
		if d.Ohm > 0 {
			conductors++
		}
	}
	m := r.matrix(at, grows)
	if !m.factor() { // only the state of the entered currents is known to be steady
		grows = make([]float64, n)
		m = r.matrix(at, nil)
		m.factor()
	}
	z := r.gather(m.inverse())
	column := func(of func(i int) float64) []float64 {
		y := make([]float64, len(r.place))
		for i := range n {
			y[r.place[i]] = of(i)
		}
		m.solve(y)
		return r.gather(y)
	}
	rises := column(func(i int) float64 { return makes[i] })
	ones := column(func(i int) float64 {
		if s.Discs[i].Ohm > 0 {
			return 1
		}
		return 0
	})
	grown := column(func(i int) float64 { return grows[i] })
	sum, made := 0.0, 0.0
	for i, d := range s.Discs {
		if d.Ohm > 0 {
			sum += rises[i]
		}
		made += makes[i] + grows[i]*rises[i]
	}
	out := level{heat: q, own: make([]float64, n), total: make([]float64, n), mean: make([]float64, n), warms: make([]float64, n)}
	for i, d := range s.Discs {
		if d.Rated <= 0 || d.Ohm <= 0 {
			continue
		}
		rated := float64(d.Rated - spare - s.Ambient)
		without := (rises[i] - makes[i]*z[i]) / (1 + grows[i]*z[i])
		out.own[i] = math.Max(0, (rated-without)/z[i]*(1+grows[i]*z[i]))
		more := out.own[i] - makes[i] - grows[i]*rated // heat in excess of what the solution has in it
		out.total[i] = made + more*(1+grown[i])
		out.mean[i] = float64(s.Ambient) + (sum+more*ones[i])/float64(max(conductors, 1))
		out.warms[i] = ones[i] / float64(max(conductors, 1)) / (1 + grown[i])
	}
	return out
}

// stride is how far apart the logarithms of the heat of two levels are.
const (
	stride     = 0.35
	mostLevels = 12
)

// ownAt is what a disc may make by itself in the state that its own heat leads to: between
// two levels in a straight line over the logarithm of their heat. Below the least and
// above the most of them the end is held.
func ownAt(levels []level, i int) float64 {
	// What is left of a disc's total above the level's heat falls from level to level.
	left := func(l level) float64 { return math.Log(l.total[i] / l.heat) }
	for k := 1; k < len(levels); k++ {
		a, b := left(levels[k-1]), left(levels[k])
		if a <= 0 {
			return levels[k-1].own[i]
		}
		if b <= 0 {
			w := a / (a - b)
			return levels[k-1].own[i] + w*(levels[k].own[i]-levels[k-1].own[i])
		}
	}
	return levels[len(levels)-1].own[i]
}

// Meets is what a disc, or a sector of the sheath, gives heat to or takes it from.
type Meets struct {
	Disc     int // −1: the sheath, its sectors as one; −2: the air outside
	Conducts unit.Conductivity
	C        unit.Celsius // of it; of the sheath the mean by what each sector conducts
}

// Round is what lies round a disc and how well heat goes there, the best first: its
// temperature is their mean by what each conducts, and its own heat over the sum of it.
func (res Result) Round(s Section, disc int) []Meets { return res.round(s, disc, false) }

// Warmest is the same for the sector of the sheath that is warmest, where nothing is made;
// a ray of it to the sheath is to the sectors on either side.
func (res Result) Warmest(s Section) []Meets {
	r := res.rays
	at := r.discs
	for k := range sectors {
		if res.rises[r.discs+k] > res.rises[at] {
			at = r.discs + k
		}
	}
	return res.round(s, at, true)
}

func (res Result) round(s Section, node int, sector bool) []Meets {
	r := res.rays
	g, t := map[int]float64{}, map[int]float64{}
	meet := func(other int, conducts float64) {
		key := other
		if other >= r.discs {
			key = -1
		}
		g[key] += conducts
		t[key] += conducts * res.rises[other]
	}
	for i := range r.links {
		l := &r.links[i]
		switch node {
		case int(l.a):
			meet(int(l.b), l.conducts(res.at.air))
		case int(l.b):
			meet(int(l.a), l.conducts(res.at.air))
		}
	}
	if sector {
		k := node - r.discs
		if r.spread > 0 {
			meet(r.discs+(k+1)%sectors, r.spread*float64(SheathK))
			meet(r.discs+(k+sectors-1)%sectors, r.spread*float64(SheathK))
		}
		g[-2] = r.outward(res.at)
	}
	var out []Meets
	for key, conducts := range g {
		out = append(out, Meets{Disc: key, Conducts: unit.Conductivity(conducts), C: s.Ambient + unit.Celsius(t[key]/conducts)})
	}
	slices.SortFunc(out, func(a, b Meets) int {
		switch {
		case a.Conducts > b.Conducts:
			return -1
		case a.Conducts < b.Conducts:
			return 1
		}
		return a.Disc - b.Disc
	})
	return out
}
