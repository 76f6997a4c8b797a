package heat

import (
	"math"
	"slices"
)

// view is where the heat of each slice of a disc goes: to what it sees straight out first,
// and through how much air, as the length of a gap of even width that would carry as much,
// mm.
type view struct {
	meets [rays]int32
	gap   [rays]float64
	reach [rays]float64 // how far out that stands, from the disc's axis
}

// leastGap is what two circles that touch are apart at least, mm.
const leastGap = 1e-5

// look finds the view of disc i. Between two circles heat runs along arcs that meet both
// squarely, and what a slice carries has a closed form:
//
//	k/g,  g = τ r (cosh τ − cos θ)/sinh τ
//
// r the disc's radius, θ the angle from where the two are nearest, and τ how far the disc
// is from a plane between them, cosh τ = (D² + r² − s²)/(2 D r) for a disc of radius s at D.
// In a circle of radius R round it, D off its middle, cosh τ = (R² − r² − D²)/(2 D r), and
// the τ in front is cosh⁻¹((R² + r² − D²)/(2 R r)).
// Source: the conduction between two cylinders in bipolar coordinates, any handbook of
// heat conduction.
func (r *Rays) look(s Section, i int) (v view) {
	d := &s.Discs[i]
	v.round(r, s, d)
	x, y, radius := float64(d.X), float64(d.Y), float64(d.OverMM)/2
	// The near ones first, because they hide most of the rest.
	for _, near := range []bool{true, false} {
		open := slices.Max(v.reach[:])
		for j := range s.Discs {
			other := &s.Discs[j]
			dx, dy, size := float64(other.X)-x, float64(other.Y)-y, float64(other.OverMM)/2
			away := dx*dx + dy*dy
			if close := 2 * (radius + size); j == i || other.In != d.In || away < close*close != near || away > (open+size)*(open+size) {
				continue
			}
			v.meet(j, dx, dy, math.Sqrt(away), radius, size)
		}
	}
	return v
}

// meet gives to disc j, dx and dy from the disc of the view, each slice that sees it before
// anything else.
func (v *view) meet(j int, dx, dy, apart, radius, size float64) {
	if apart < 1e-9 {
		return
	}
	// Only rays within the angle that the other fills can meet it.
	mid, wide := math.Atan2(dy, dx), math.Pi/2
	if apart > size {
		wide = math.Asin(size / apart)
	}
	const step = 2 * math.Pi / rays
	var gap between
	for k := int(math.Ceil((mid-wide)/step - 0.5)); k <= int(math.Floor((mid+wide)/step-0.5)); k++ {
		at := (k + 2*rays) % rays
		ux, uy := compass[at][0], compass[at][1]
		along, across := dx*ux+dy*uy, dx*uy-dy*ux
		reach := along - math.Sqrt(math.Max(0, size*size-across*across))
		if along <= 0 || reach >= v.reach[at] {
			continue
		}
		if gap.scale == 0 {
			far := math.Max(apart, radius+size+leastGap)
			of := (far*far + radius*radius - size*size) / (2 * radius)
			gap = gapOf(math.Acosh(math.Max(1, of/far)), radius, of, far, dx/apart, dy/apart)
		}
		v.gap[at], v.meets[at], v.reach[at] = gap.at(at), int32(j), reach
	}
}

// round begins a view with the circle that a disc lies in, which every ray meets at last:
// the sheath, or its jacket. The arcs are those of a disc alone in it, which is too good
// among others whose heat wants the same room, and straight out is too poor: the gap is the
// mean of the two.
func (v *view) round(r *Rays, s Section, d *Disc) {
	x, y, radius, bore := float64(d.X), float64(d.Y), float64(d.OverMM)/2, float64(s.InsideMM)/2
	if d.In > 0 {
		jacket := &s.Discs[d.In-1]
		x, y, bore = x-float64(jacket.X), y-float64(jacket.Y), float64(jacket.CoreMM)/2
	}
	off := math.Hypot(x, y)
	ux, uy := x/math.Max(off, leastGap), y/math.Max(off, leastGap) // in the middle no side is nearer
	bore = math.Max(bore, off+radius+leastGap)
	gap := gapOf(math.Acosh((bore*bore+radius*radius-off*off)/(2*bore*radius)), radius, (bore*bore-radius*radius-off*off)/(2*radius), off,
		ux, uy)
	for k := range rays {
		rx, ry := compass[k][0], compass[k][1]
		along, across := x*rx+y*ry, x*ry-y*rx
		v.reach[k] = math.Sqrt(math.Max(0, bore*bore-across*across)) - along
		v.gap[k] = (gap.at(k) + math.Max(v.reach[k]-radius, 0)) / 2
		if v.meets[k] = int32(d.In - 1); d.In == 0 {
			v.meets[k] = int32(r.discs + sectorAt(x+rx*v.reach[k], y+ry*v.reach[k]))
		}
	}
}

// between is the gap between two circles, slice by slice: scale (of − apart cos θ), which
// is τ r (cosh τ − cos θ)/sinh τ with cosh τ = of/apart; apart is 0 in the middle of a
// circle. ux, uy is the direction in which the two are nearest.
type between struct{ scale, of, apart, ux, uy float64 }

func gapOf(tau, radius, of, apart, ux, uy float64) between {
	return between{tau * radius / math.Sqrt(math.Max(of*of-apart*apart, 1e-12)), of, apart, ux, uy}
}

// at is the gap of slice k.
func (b *between) at(k int) float64 {
	return b.scale * (b.of - b.apart*(b.ux*compass[k][0]+b.uy*compass[k][1]))
}

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
