package heat

import (
	"cmp"
	"math"
	"slices"

	"contralay/model/unit"
)

// order puts the nodes in a row across the bundle, so that those that see each other
// stand near each other in it: what is factored stays narrow. Of some directions across it
// takes the one in which that costs least.
func (r *Rays) order(s Section) {
	var best []int
	least := math.MaxFloat64
	for k := range directions {
		sin, cos := math.Sincos(math.Pi * float64(k) / directions)
		place, first := r.across(s, sin, cos)
		cost := 0.0
		for i, f := range first {
			cost += float64((i - f) * (i - f))
		}
		if cost < least {
			least, r.place, best = cost, place, first
		}
	}
	r.enter(best)
}

// directions are how many are tried, over half a turn.
const directions = 6

// across is the row in a direction: the place of each node in it, and of each place the
// first that it sees, or itself.
func (r *Rays) across(s Section, sin, cos float64) (place []int32, first []int) {
	at, row := make([]float64, r.nodes), make([]int32, r.nodes)
	for i := range row {
		row[i] = int32(i)
		if i < r.discs {
			at[i] = float64(s.Discs[i].X)*cos + float64(s.Discs[i].Y)*sin
			continue
		}
		turn := (float64((i-r.discs)%sectors)+0.5)*2*math.Pi/sectors - math.Pi
		at[i] = r.outer / 2 * (math.Cos(turn)*cos + math.Sin(turn)*sin)
	}
	slices.SortStableFunc(row, func(a, b int32) int { return cmp.Or(cmp.Compare(at[a], at[b]), cmp.Compare(a, b)) })
	place, first = make([]int32, r.nodes), make([]int, r.nodes)
	for k, i := range row {
		place[i], first[k] = int32(k), k
	}
	for _, l := range r.links {
		i, j := int(place[l.a]), int(place[l.b])
		first[max(i, j)] = min(first[max(i, j)], min(i, j))
	}
	return place, first
}

// state is what the network hangs on beside geometry: how well still air takes heat from
// the surface, W/(m² K), and what the air in the gaps conducts, W/(m K).
type state struct{ h, air float64 }

// leastHeat is what a coefficient of the surface is worked out for at least, W/m: without
// heat there is none.
const leastHeat = 0.01

// stateAt is that of a section that gives off so much heat and whose conductors have a
// mean temperature, and the mean temperature of its surface.
func (r *Rays) stateAt(s Section, heat, conductors float64) (state, float64) {
	p := s.Pressure
	if p <= 0 {
		p = seaLevel
	}
	ambient, q := float64(s.Ambient)+kelvin, math.Max(heat, leastHeat)
	surface := balance(r.outer/1000, ambient, p, q, ambient+10, 1e-7)
	at := state{q / (math.Pi * r.outer / 1000 * (surface - ambient)), gapAir(math.Max(conductors, float64(s.Ambient)), surface-kelvin)}
	if heat < q {
		surface = balance(r.outer/1000, ambient, p, heat, ambient+1e-3, 1e-9)
	}
	return at, surface - kelvin
}

// gapAir is what the air in the gaps conducts, W/(m K), at the mean of conductors and
// surface, °C.
func gapAir(conductors, surface float64) float64 {
	return airAt((math.Min(conductors, hottest)+surface)/2+kelvin, seaLevel).k
}

// outward is what a sector of the surface gives off, W/(m K).
func (r *Rays) outward(at state) float64 { return at.h * math.Pi * r.outer / 1000 / sectors }

// conducts is what a link carries, W/(m K): the parabola through what was worked out.
func (l *link) conducts(air float64) float64 {
	w := weights(air)
	return w[0]*l.known[0] + w[1]*l.known[1] + w[2]*l.known[2]
}

// weights are how much each of airs counts at what the air conducts.
func weights(air float64) (w [len(airs)]float64) {
	air = math.Min(math.Max(air, airs[0]/2), 2*airs[2])
	for k, a := range airs {
		w[k] = 1
		for j, b := range airs {
			if j != k {
				w[k] *= (air - b) / (a - b)
			}
		}
	}
	return w
}

// matrix fills in the balance of every node in a state: what flows off it for each kelvin above
// the air, less what its copper makes more for each kelvin (grows; nil: nothing).
func (r *Rays) matrix(m *matrix, at state, grows []float64) {
	clear(m.all)
	w := weights(at.air)
	for k := range r.links {
		l := &r.links[k]
		g := w[0]*l.known[0] + w[1]*l.known[1] + w[2]*l.known[2]
		m.all[l.own[0]] += g
		m.all[l.own[1]] += g
		m.all[l.entry] -= g
	}
	out := r.outward(at)
	for _, i := range r.place[r.nodes-sectors:] {
		m.diagonal[i] += out
	}
	for i, v := range grows {
		m.diagonal[r.place[i]] -= v
	}
}

// enter finds where the links stand in a matrix.
func (r *Rays) enter(first []int) {
	r.front = newFront(first)
	for k := range r.links {
		l := &r.links[k]
		i, j := r.place[l.a], r.place[l.b]
		l.own = [2]int32{i, j}
		l.entry = int32(r.front.entry(int(max(i, j)), int(min(i, j))))
	}
}

// Result is a section in balance.
type Result struct {
	Surface unit.Celsius   // mean of the outside of the sheath, or of the bundle
	Under   unit.Celsius   // the sheath where it is warmest; the surface there, without sheath
	Discs   []unit.Celsius // of each: its conductor, a filler as a whole, a jacket inside
	Heat    unit.WattPerMetre

	rays  *Rays
	at    state
	rises []float64 // of every node over the air
}

// hottest is where the balance gives up: no insulation here lives above it, and a
// current that heats further has no steady state worth naming.
const hottest = 600.0

// settled is when a balance is found, K.
const settled = 1e-3

// Solve balances a section whose rays were traced: temperatures agree to 10⁻³ K from one
// round to the next. Heat rises with the resistance, (234.5 + T)/254.5; that is part of
// what is solved, the surface and the air in the gaps are settled in rounds. False where
// something is not known, or there is no steady state below 600 °C.
//
// Source: conduction in cylinders and between them; any textbook. The network is a
// derivation of the project's own; see package heattest for what it is held against.
func (r *Rays) Solve(s Section) (Result, bool) {
	if r == nil || len(s.Discs) != r.discs || !unit.Finite(float64(s.Ambient)) || s.Ambient <= -kelvin {
		return Result{}, false
	}
	makes, grows := s.heats()
	for _, p := range makes {
		if !(p >= 0) || !unit.Finite(p) {
			return Result{}, false
		}
	}
	out := Result{rays: r, rises: make([]float64, r.nodes)}
	rises := make([]float64, r.nodes)
	w := r.work()
	for range 200 {
		var surface float64
		out.at, surface = r.stateAt(s, r.made(makes, grows, out.rises), float64(s.Ambient)+r.mean(s, out.rises))
		ok := r.settle(w, out.at, makes, grows, out.rises, rises)
		moved := 0.0
		for i, v := range rises {
			moved = math.Max(moved, math.Abs(v-out.rises[i]))
		}
		out.rises, rises = rises, out.rises
		warmest := slices.Max(out.rises)
		if !ok && warmest > hottest-float64(s.Ambient) {
			return Result{}, false
		}
		if moved >= settled {
			continue
		}
		if !(warmest < hottest-float64(s.Ambient)) {
			return Result{}, false
		}
		out.Surface, out.Heat = unit.Celsius(surface), unit.WattPerMetre(r.made(makes, grows, out.rises))
		out.Under = s.Ambient + unit.Celsius(slices.Max(out.rises[r.discs:r.discs+sectors]))
		out.Discs = make([]unit.Celsius, r.discs)
		for i := range out.Discs {
			out.Discs[i] = s.Ambient + unit.Celsius(out.rises[i])
		}
		return out, true
	}
	return Result{}, false
}

// made is the heat of all discs at their rises.
func (r *Rays) made(makes, grows, rises []float64) float64 {
	sum := 0.0
	for i := range makes {
		sum += makes[i] + grows[i]*math.Min(rises[i], 2*hottest)
	}
	return sum
}

// mean is the mean rise of the conductors; of all discs where there is none.
func (r *Rays) mean(s Section, rises []float64) float64 {
	sum, n := 0.0, 0
	for i, d := range s.Discs {
		if d.Ohm > 0 {
			sum, n = sum+rises[i], n+1
		}
	}
	return sum / float64(max(n, 1))
}

// settle writes the rise of every node in a state to rises. Where the heat grows faster with the
// temperature than the state takes it away, it goes one step up from the last rises and
// says false.
func (r *Rays) settle(w *work, at state, makes, grows, last, rises []float64) bool {
	r.matrix(w.m, at, grows)
	y := w.z
	clear(y)
	ok := w.m.factor()
	if ok {
		for i, v := range makes {
			y[r.place[i]] = v
		}
	} else {
		r.matrix(w.m, at, nil)
		w.m.factor() // positive definite: every node leads to the air
		for i, v := range makes {
			y[r.place[i]] = v + grows[i]*math.Min(last[i], 2*hottest)
		}
	}
	w.m.solve(y)
	for i, p := range r.place {
		rises[i] = y[p]
	}
	return ok
}

// heats is what the current of each disc makes at the air's temperature, W/m, and how that grows, W/(m K).
func (s Section) heats() (makes, grows []float64) {
	n := len(s.Discs)
	both := make([]float64, 2*n)
	makes, grows = both[:n:n], both[n:]
	at := float64(Grows(s.Ambient))
	for i := range s.Discs {
		p := float64(s.Discs[i].At20())
		makes[i], grows[i] = p*at, p/(copperZero+20)
	}
	return makes, grows
}
