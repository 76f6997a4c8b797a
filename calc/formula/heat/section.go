package heat

import (
	"math"
	"slices"

	"contralay/model/unit"
)

// Disc is one round piece of a section.
type Disc struct {
	X, Y   unit.Millimetre // its axis, from that of the bundle
	OverMM unit.Millimetre // outside diameter
	// CoreMM is the diameter of what is of one temperature in it: a conductor, or the
	// bore of a jacket. 0: solid, a filler.
	CoreMM unit.Millimetre
	In     int // 1 + the place of the disc whose jacket holds it; 0: none does
	Ohm    unit.OhmPerKilometre
	Amps   unit.Ampere
	Rated  unit.Celsius // 0: nothing is asked for it
}

// At20 is the heat that its current makes in a metre at 20 °C.
func (d Disc) At20() unit.WattPerMetre {
	return unit.WattPerMetre(float64(d.Amps) * float64(d.Amps) * float64(d.Ohm) / 1000)
}

// Section is what is to be balanced: discs, and the circle that they lie in.
type Section struct {
	Discs     []Disc
	InsideMM  unit.Millimetre // the bore of the sheath, or the bundle's OD
	OutsideMM unit.Millimetre // over the sheath; InsideMM or less: there is none
	Ambient   unit.Celsius
	Pressure  float64 // pascal; 0: sea level
}

const (
	// rays leave each disc; sectors are the parts of the sheath. More of either moves no
	// conductor of the tests by a hundredth of its rise.
	rays    = 64
	sectors = 48
)

// airs are what the air in the gaps may conduct, W/(m K): links are worked out for these,
// some −50, 160 and 600 °C, and read between.
var airs = [3]float64{0.02, 0.034, 0.058}

// link is what goes between two nodes for each kelvin, W/(m K), for each of airs.
type link struct {
	a, b  int32
	known [len(airs)]float64
}

// Rays is the geometry of a section: what sees what, and how well heat goes there. It
// rests on diameters and places alone, so it holds as long as they do.
type Rays struct {
	discs   int
	links   []link
	place   []int32 // of each node in the order across the bundle
	first   []int   // of each in that order: the first that it sees, or itself
	spread  float64 // of one sector to the next ÷ conductivity of the sheath
	through float64 // of a sector out through the wall ÷ conductivity of the sheath; +Inf without wall
	outer   float64 // outside diameter, mm
}

// depth is how thick the wall between the surface of a disc and what is of one
// temperature in it is, as ln(r/r_c). A solid disc counts as one with a core of r/e²: that
// carries what flows across it within 4 % of what the whole disc would, since heat that
// varies as cos nθ round a solid disc meets n k/r, and round a core n k/r coth(n ln(r/r_c)).
func (d Disc) depth() float64 {
	r := float64(d.OverMM) / 2
	if d.CoreMM <= 0 {
		return 2
	}
	return math.Log(r / math.Min(float64(d.CoreMM)/2, 0.97*r))
}

// Trace finds what every disc of a section sees. False where a diameter is not known or
// a disc lies in one that comes after it.
func Trace(s Section) (*Rays, bool) {
	n := len(s.Discs)
	if n == 0 || !(s.InsideMM > 0) || !unit.Finite(float64(s.InsideMM)) || !unit.Finite(float64(s.OutsideMM)) {
		return nil, false
	}
	for i, d := range s.Discs {
		if !(d.OverMM > 0) || !unit.Finite(float64(d.OverMM)) || !unit.Finite(float64(d.X)) || !unit.Finite(float64(d.Y)) ||
			d.In < 0 || d.In > i || !(d.CoreMM >= 0) {
			return nil, false
		}
	}
	out := &Rays{discs: n, outer: float64(max(s.OutsideMM, s.InsideMM)), through: math.Inf(1)}
	if wall := float64(s.OutsideMM-s.InsideMM) / 2; wall > 0 {
		mean := float64(s.OutsideMM+s.InsideMM) / 4
		out.spread = wall * sectors / (2 * math.Pi * mean)
		out.through = 2 * math.Pi / sectors / math.Log(float64(s.OutsideMM)/float64(s.InsideMM))
	}
	seen := map[[2]int32]int{} // places in links
	for i := range s.Discs {
		out.see(s, i, seen)
	}
	out.order(s)
	return out, true
}

// view is where the heat of each slice of a disc goes, and through how much air: the
// length of a gap of even width that would carry as much, mm.
type view struct {
	meets [rays]int32
	gap   [rays]float64
}

// look finds the view of disc i. Between two circles heat runs along arcs that meet both
// squarely, and what a slice carries has a closed form:
//
//	k/g,  g = τ r (cosh τ − cos θ)/sinh τ
//
// r the disc's radius, θ the angle from where the two are nearest, and τ how far the disc
// is from a plane between them, cosh τ = (D² + r² − s²)/(2 D r) for a disc of radius s at D.
// In a circle of radius R round it, D off its middle, cosh τ = (R² − r² − D²)/(2 D r), and
// the τ in front is cosh⁻¹((R² + r² − D²)/(2 R r)). Of all that lies round a disc each
// slice goes to what leads it best.
// Source: the conduction between two cylinders in bipolar coordinates, any handbook of
// heat conduction.
func (r *Rays) look(s Section, i int) view {
	d := &s.Discs[i]
	x, y, radius := float64(d.X), float64(d.Y), float64(d.OverMM)/2
	var v view
	// The circle round it, to which goes what nothing else leads better.
	cx, cy, bore, ring := 0.0, 0.0, float64(s.InsideMM)/2, -1
	if d.In > 0 {
		j := &s.Discs[d.In-1]
		cx, cy, bore, ring = float64(j.X), float64(j.Y), float64(j.CoreMM)/2, d.In-1
	}
	off := math.Hypot(x-cx, y-cy)
	bore = math.Max(bore, off+radius+leastGap)
	round := math.Acosh((bore*bore + radius*radius - off*off) / (2 * bore * radius))
	v.fill(int32(ring), round, radius, (bore*bore-radius*radius-off*off)/(2*radius), off, x-cx, y-cy)
	if ring < 0 {
		for k := range rays {
			ux, uy := compass[k][0], compass[k][1]
			along, across := (x-cx)*ux+(y-cy)*uy, (x-cx)*uy-(y-cy)*ux
			reach := math.Sqrt(math.Max(0, bore*bore-across*across)) - along
			v.meets[k] = int32(r.discs + sectorAt(x+ux*reach, y+uy*reach))
		}
	}
	// The near ones first: most that lies behind them is hidden.
	open := slices.Max(v.gap[:])
	for _, near := range []bool{true, false} {
		for j := range s.Discs {
			other := &s.Discs[j]
			if j == i || other.In != d.In {
				continue
			}
			dx, dy, size := float64(other.X)-x, float64(other.Y)-y, float64(other.OverMM)/2
			if dx*dx+dy*dy < square(2*radius+2*size) != near || dx*dx+dy*dy > square(open+radius+size) {
				continue
			}
			apart := math.Hypot(dx, dy)
			if apart < 1e-9 {
				continue
			}
			far := math.Max(apart, radius+size+leastGap)
			of := (far*far + radius*radius - size*size) / (2 * radius)
			v.fill(int32(j), math.Acosh(math.Max(1, of/far)), radius, of, far, dx, dy)
		}
		open = slices.Max(v.gap[:])
	}
	return v
}

func square(v float64) float64 { return v * v }

// fill gives to one in a direction each slice that it leads better than any before. The
// hyperbolic cosine of look is of ÷ apart; apart may be 0, in the middle of a circle.
func (v *view) fill(to int32, tau, radius, of, apart, dx, dy float64) {
	long := math.Hypot(dx, dy)
	if long > 0 {
		dx, dy = dx/long, dy/long
	}
	// τ r (cosh τ − cos θ)/sinh τ with both sides of the fraction times apart.
	scale := tau * radius / math.Sqrt(math.Max(of*of-apart*apart, 1e-12))
	for k := range rays {
		gap := scale * (of - apart*(dx*compass[k][0]+dy*compass[k][1]))
		if v.gap[k] == 0 || gap < v.gap[k] {
			v.gap[k], v.meets[k] = gap, to
		}
	}
}

// see adds what disc i gives to each that its heat goes to. To another disc that is as far
// as the middle between them, where two discs alike have a surface of one temperature; the
// other gives the rest, and the two are in series.
func (r *Rays) see(s Section, i int, seen map[[2]int32]int) {
	v := r.look(s, i)
	d := &s.Discs[i]
	ring := int32(d.In - 1)
	// Where each slice goes, as a place in a short list.
	var goes []int32
	var slot [rays]int
	for k, j := range v.meets {
		if slot[k] = slices.Index(goes, j); slot[k] < 0 {
			slot[k], goes = len(goes), append(goes, j)
		}
	}
	var at []int // in links
	for _, j := range goes {
		pair := [2]int32{min(int32(i), j), max(int32(i), j)}
		k, met := seen[pair]
		if !met {
			k = len(r.links)
			seen[pair], r.links = k, append(r.links, link{a: int32(i), b: j})
		}
		at = append(at, k)
	}
	width := math.Pi * float64(d.OverMM) / rays
	sum := make([]float64, len(goes))
	for n, air := range airs {
		var outside, gives [rays]float64
		for k, gap := range v.gap {
			outside[k] = width * air / gap
		}
		wall(d.depth(), &outside, &gives)
		clear(sum)
		for k, g := range gives {
			sum[slot[k]] += g
		}
		for k, j := range goes {
			l := &r.links[at[k]]
			switch {
			case int(j) >= r.discs || j == ring || l.known[n] == 0:
				l.known[n] = sum[k]
			default:
				l.known[n] = 1 / (1/l.known[n] + 1/sum[k])
			}
		}
	}
}

// leastGap is what two circles that touch are apart at least, mm.
const leastGap = 1e-5

// sectorAt is the sector that a place on the circle lies in.
func sectorAt(x, y float64) int {
	k := int(math.Floor((math.Atan2(y, x) + math.Pi) / (2 * math.Pi) * sectors))
	return min(max(k, 0), sectors-1)
}

// compass is the direction of each ray.
var compass = func() (c [rays][2]float64) {
	for k := range c {
		a := (float64(k) + 0.5) * 2 * math.Pi / rays
		c[k] = [2]float64{math.Cos(a), math.Sin(a)}
	}
	return c
}()
