package ring

import (
	"math"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

const turn = 2 * math.Pi

// Table is θ by size, size of a layer whose thickest is hi and that stands on radius r with lay length L: into is
// len(d)² long, of which what concerns sizes up to hi is written.
func Table(d []float64, hi int, r, L float64, into []float64) {
	k := len(d)
	for i := 0; i <= hi; i++ {
		for j := 0; j <= i; j++ {
			t := angle(d[i], d[j], r, L)
			into[i*k+j], into[j*k+i] = t, t
		}
	}
}

func angle(d, e, r, L float64) float64 {
	return float64(lay.NeighbourAngle(unit.Millimetre(d), unit.Millimetre(e), unit.Millimetre(r), unit.Millimetre(L)))
}

// Fit tests layers on one bed after another, and keeps the angles of the bed it is on.
type Fit struct {
	Bed lay.Bed
	How lay.Laying

	d        []float64 // sizes, thin to thick
	on, off  []float64 // θ by largest size, size, size: on the bed, and as far off it as the thickest alone could stand
	isOn     []bool    // by largest size
	isOff    []bool
	standing []float64 // by size, size: scratch of Off
}

// New is a fit of sizes, thin to thick.
func New(d []float64, how lay.Laying) Fit {
	n := len(d)
	return Fit{d: d, How: how, on: make([]float64, n*n*n), off: make([]float64, n*n*n), isOn: make([]bool, n), isOff: make([]bool, n),
		standing: make([]float64, n*n)}
}

// Take takes up another bed.
func (f *Fit) Take(crown, tape float64, how lay.Laying) {
	f.Bed, f.How = lay.Bed{Crown: unit.Millimetre(crown), Tape: unit.Millimetre(tape)}, how
	clear(f.isOn)
	clear(f.isOff)
}

// length is L of a layer that stands on r and whose thickest is hi.
func (f *Fit) length(r float64, hi int) float64 {
	if f.How.Lay > 0 {
		return float64(f.How.Lay)
	}
	return float64(f.How.Ratio) * (math.Max(float64(f.Bed.Crown), 2*r) + 2*f.d[hi] + float64(f.How.Bind))
}

// onBed is θ by size, size on the bed, in a layer whose thickest is hi.
func (f *Fit) onBed(hi int) []float64 {
	n := len(f.d)
	if !f.isOn[hi] {
		f.isOn[hi] = true
		r := float64(f.Bed.Tape) / 2
		Table(f.d, hi, r, f.length(r, hi), f.on[hi*n*n:])
	}
	return f.on[hi*n*n:]
}

// offBed is θ by size, size as far off the bed as lift times the thickest.
func (f *Fit) offBed(lift float64, hi int) []float64 {
	n := len(f.d)
	if !f.isOff[hi] {
		f.isOff[hi] = true
		r := float64(f.Bed.Tape)/2 + lift*f.d[hi]
		Table(f.d, hi, r, f.length(r, hi), f.off[hi*n*n:])
	}
	return f.off[hi*n*n:]
}

// Theta is θ of two sizes side by side on the bed, in a layer whose thickest is hi.
func (f *Fit) Theta(hi, i, j int) float64 { return f.onBed(hi)[i*len(f.d)+j] }

// Sum is Σθ of n components of sizes lo to hi on the bed, in zig-zag.
func (f *Fit) Sum(cnt []int, lo, hi, n int) float64 {
	if lo == hi {
		return float64(n) * f.Theta(hi, hi, hi)
	}
	return ZigZag(cnt, n, f.onBed(hi))
}

// Beyond reports whether a layer whose Σθ on the bed is sum takes more than most, in rad, even at lift times its
// mean diameter off the bed: θ falls no faster than 1/r, whatever the sizes and the lay.
func (f *Fit) Beyond(sum, most, lift float64, hi int) bool {
	r := float64(f.Bed.Tape) / 2
	return sum*r > most*(1+1e-9)*(r+lift*f.d[hi])
}

// Off is Σθ of n components of sizes lo to hi at lift times their mean diameter off the bed. Where it is clearly
// more than a turn it may be told for farther off than that.
func (f *Fit) Off(cnt []int, lo, hi, n int, lift float64) float64 {
	// As far off as the thickest alone would be they take the least: where that is too much, so is any.
	if lo != hi {
		if sum := ZigZag(cnt, n, f.offBed(lift, hi)); sum > 1.001*turn {
			return sum
		}
	}
	sum := 0.0
	for i, k := range cnt {
		sum += float64(k) * f.d[i]
	}
	r := float64(f.Bed.Tape)/2 + lift*sum/float64(n)
	L := f.length(r, hi)
	if lo == hi {
		return float64(n) * angle(f.d[hi], f.d[hi], r, L)
	}
	k := len(cnt)
	for i := lo; i <= hi; i++ {
		for j := lo; j <= i && cnt[i] > 0; j++ {
			if cnt[j] > 0 {
				t := angle(f.d[i], f.d[j], r, L)
				f.standing[i*k+j], f.standing[j*k+i] = t, t
			}
		}
	}
	return ZigZag(cnt, n, f.standing)
}
