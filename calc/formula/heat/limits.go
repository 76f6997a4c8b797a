package heat

import (
	"math"
	"slices"
	"sync"

	"contralay/model/unit"
)

// Limits is the current of each disc that brings its conductor to its rating, the others
// as entered; 0 where they alone do, or where nothing is asked of it. What the disc itself
// carries as entered does not count.
//
// In a state of surface and air the balance is linear in the heats, so the network factored
// once answers for every disc: with Z the inverse of its matrix and T' the temperature
// without a current of its own,
//
//	I² R(rated) = (rated − T') / Z'    Z' = Z/(1 + βZ), its own growth β taken out
//
// That is done in steps of heat that are the same for every section, from that of the
// coolest disc at its limit to that of the warmest, and read off at the one that the disc's
// own heat leads to.
func (res Result) Limits(s Section) []unit.Ampere {
	return res.rays.limits(s, math.Max(float64(res.Heat), 1))
}

// Limits is the same for a section that has no steady temperature at the currents entered. A disc
// whose own current is what it fails by has its limit still; one that the others leave no steady
// temperature has 0: the states beyond the hottest that Solve gives are none.
func (r *Rays) Limits(s Section) []unit.Ampere {
	out := r.limits(s, someHeat)
	at := s
	at.Discs = slices.Clone(s.Discs)
	for i, a := range out {
		if a <= 0 {
			continue
		}
		at.Discs[i].Amps = a
		if _, steady := r.Solve(at); !steady {
			out[i] = 0
		}
		at.Discs[i].Amps = s.Discs[i].Amps
	}
	return out
}

// limits begins its steps at a heat, W/m, and goes down and up from there as far as it must.
func (r *Rays) limits(s Section, begin float64) []unit.Ampere {
	out := make([]unit.Ampere, len(s.Discs))
	if len(s.Discs) == 1 && s.Discs[0].Rated > 0 {
		out[0] = s.single()
		return out
	}
	asked := 0
	for i := range s.Discs {
		if s.Discs[i].asks() {
			asked++
		}
	}
	// Down from where the first step is above no disc, then up to where the last is above all.
	low := stepOf(begin)
	c := s.carried()
	two := [2]*work{r.work(), r.work()} // for all of them
	var levels []level
	for k := low; asked > 0 && k > low-mostLevels; k-- {
		levels = append(levels, r.level(two, s, c, heatOf(k)))
		if levels[len(levels)-1].within(s, 1) == asked {
			break
		}
	}
	slices.Reverse(levels)
	next := low + 1
	if len(levels) == 1 {
		// A colder surface gives off heat worse, so no disc leads to less than it does in a step
		// below its own: from one that is below all of them it is a leap to the least of them.
		if to := stepOf(levels[0].least(s)); to > low {
			levels, next = nil, to
		}
	}
	for k := next; asked > 0 && len(levels) < mostLevels; k++ {
		if n := len(levels); n > 0 && levels[n-1].within(s, -1) == asked {
			break
		}
		levels = append(levels, r.level(two, s, c, heatOf(k)))
	}
	for i, d := range s.Discs {
		if d.asks() {
			out[i] = unit.Ampere(math.Sqrt(math.Max(0, ownAt(levels, i)) / (float64(d.Ohm) / 1000 * float64(Grows(d.Rated)))))
		}
	}
	return out
}

// asks reports whether a limit is asked of a disc.
func (d *Disc) asks() bool { return d.Rated > 0 && d.Ohm > 0 }

const (
	// endless is the heat of a section that has no steady state, W/m.
	endless = 1e9
	// stride is how far apart the logarithms of the heat of two levels are.
	stride     = 0.4
	mostLevels = 12
	// someHeat is what a bundle gives off at common ratings, W/m: where no balance says what it gives.
	someHeat = 20.0
	// spare is how far below its rating a limit keeps a conductor, K: reading between levels
	// misses by less.
	spare = 2.0
)

// heatOf is the heat of step k, W/m; stepOf the last step below a heat.
func heatOf(k int) float64 { return math.Exp(float64(k) * stride) }

func stepOf(heat float64) int { return int(math.Floor(math.Log(heat) / stride)) }

// level is what a state of some heat lets each disc make by itself, and what that leads to.
type level struct {
	heat  float64
	own   []float64 // W/m of the disc at its rating
	total []float64 // of all then
}

// least is the least that a disc asked leads to.
func (l level) least(s Section) float64 {
	least := math.MaxFloat64
	for i := range s.Discs {
		if s.Discs[i].asks() {
			least = math.Min(least, l.total[i])
		}
	}
	return least
}

// within is how many of the discs asked lead to no less than the heat of a level, or (−1)
// to no more.
func (l level) within(s Section, sign float64) int {
	n := 0
	for i := range s.Discs {
		if s.Discs[i].asks() && sign*(l.total[i]-l.heat) >= 0 {
			n++
		}
	}
	return n
}

// carried is what the currents as entered make of a section, once for all its levels.
type carried struct {
	makes, grows, none []float64 // of each disc; none: noughts
	conductors         int
	rated              float64 // the highest rating
}

func (s Section) carried() carried {
	c := carried{none: make([]float64, len(s.Discs))}
	c.makes, c.grows = s.heats()
	for i := range s.Discs {
		c.rated = math.Max(c.rated, float64(s.Discs[i].Rated))
		if s.Discs[i].Ohm > 0 {
			c.conductors++
		}
	}
	return c
}

// level works a heat out for every disc: with the air in the gaps at the surface's
// temperature, and at the highest rating's, and between the two where the mean of the
// conductors then lies.
func (r *Rays) level(two [2]*work, s Section, c carried, q float64) level {
	cool, surface := r.stateAt(s, q, float64(s.Ambient))
	warm := cool
	cool.air, warm.air = gapAir(math.Max(surface, float64(s.Ambient)), surface), gapAir(math.Max(c.rated, float64(s.Ambient)), surface)
	n := r.discs
	of := make([]float64, 4*n)
	a := level{q, of[:n:n], of[n : 2*n : 2*n]}
	if !(warm.air > cool.air) {
		r.allows(two[0], s, c, cool, a)
		return a
	}
	b := level{q, of[2*n : 3*n : 3*n], of[3*n:]}
	var both sync.WaitGroup // side by side: this is most of what a key that changes a current costs
	both.Go(func() { r.allows(two[1], s, c, warm, b) })
	r.allows(two[0], s, c, cool, a)
	both.Wait()
	for i := range s.Discs {
		if !s.Discs[i].asks() {
			continue
		}
		w, from, to := 0.0, two[0].mean[i], two[1].mean[i]
		for range 4 { // it hardly moves after the second
			w = (gapAir(from+w*(to-from), surface) - cool.air) / (warm.air - cool.air)
			w = math.Min(math.Max(w, 0), 1)
		}
		a.own[i] += w * (b.own[i] - a.own[i])
		a.total[i] += w * (b.total[i] - a.total[i])
	}
	return a
}

// allows finds, for each disc, what it may make by itself in a state and what all make then, and
// leaves the mean temperature of the conductors in the work.
func (r *Rays) allows(w *work, s Section, c carried, at state, out level) {
	grows := c.grows
	r.matrix(w.m, at, grows)
	below, ok := w.m.factorBelow(1)
	if !ok {
		// In this state the entered currents have no steady temperature, whichever disc carries another. Towards
		// it all that they lead to grows without end, and what a disc may make itself falls to nothing.
		for i := range s.Discs {
			out.own[i], out.total[i], w.mean[i] = 0, endless, hottest
		}
		return
	}
	w.m.inverse(w.z)
	// The rises from what is entered, from one watt in every conductor, and from the growth.
	clear(w.y)
	for i, p := range r.place[:r.discs] {
		one := 0.0
		if s.Discs[i].Ohm > 0 {
			one = 1
		}
		w.y[p] = [sides]float64{c.makes[i], one, grows[i]}
	}
	w.m.solveAll(w.y)
	sum, made := 0.0, 0.0
	for i, p := range r.place[:r.discs] {
		rise := w.y[p][0]
		if s.Discs[i].Ohm > 0 {
			sum += rise
		}
		made += c.makes[i] + grows[i]*rise
	}
	for i := range s.Discs {
		d := &s.Discs[i]
		if !d.asks() {
			continue
		}
		p := r.place[i]
		z, rise, one, grown := w.z[p], w.y[p][0], w.y[p][1], w.y[p][2]
		if below == 1 && !(grows[i]*z < -1) {
			// Nor have they a steady temperature without the growth of this disc. Where they have, the one
			// eigenvalue below 0 comes above it, so that det(Y + β e eᵀ) = det Y (1 + βZ) changes its sign.
			out.own[i], out.total[i], w.mean[i] = 0, endless, hottest
			continue
		}
		rated := float64(d.Rated - spare - s.Ambient)
		without := (rise - c.makes[i]*z) / (1 + grows[i]*z)
		// Less than nothing where the others alone bring it above its rating: between two levels it is
		// read along the same line.
		out.own[i] = (rated - without) / z * (1 + grows[i]*z)
		reaches := math.Max(rated, without)
		more := math.Max(0, out.own[i]) - c.makes[i] - grows[i]*reaches // heat in excess of what the solution has in it
		out.total[i] = made + more*(1+grown)
		w.mean[i] = float64(s.Ambient) + (sum+more*one)/float64(max(c.conductors, 1))
	}
}

// ownAt is what a disc may make by itself in the state that its own heat leads to: between
// two levels in a straight line over the logarithm of their heat. Below the least and
// above the most of them the end is held.
func ownAt(levels []level, i int) float64 {
	// What is left of a disc's total above the level's heat falls from level to level.
	left := func(l level) float64 { return math.Log(math.Max(l.total[i], leastHeat) / l.heat) }
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

// Warmest is the same for the sector of the sheath's inside that is warmest, where nothing is
// made; its sheath is what lies on either side and outside of it.
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
		if node >= r.nodes-sectors {
			g[-2] = r.outward(res.at)
		}
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
