package protect

import (
	"math"
	"slices"

	"contralay/model/unit"
)

// Kind is what a device is.
type Kind int

// The kinds of device.
const (
	Blade      Kind = iota // the small blade fuse of ISO 8820-3
	LargeBlade             // the large one, which has another table
	Electronic             // an output that switches itself off above a set current
)

// Device protects what it feeds.
type Device struct {
	Kind   Kind
	Rating unit.Ampere // what a fuse is marked; the current an electronic one is set to
	Trip   unit.Second // electronic: how long it takes to open; 0: not known
}

// point is one row of a fuse's table: at so many times its rating it opens within
// these times. most is forever where it may carry that for ever, as far as is known.
type point struct {
	times       float64
	least, most float64 // s
}

// forever is a time that never ends.
var forever = math.Inf(1)

// The tables. Source: makers' sheets of the small blade, p. 3, and of the large one, p. 3, quoted
// row by row in a note on fuses: second hand, not read in ISO 8820-3. A small blade carries
// 110 % for 100 h; those of 35 and 40 A are quoted for 100 %, and for 0.15 s at 600 % in place of
// 0.1 s, with no shortest time there. The micro and mini series is quoted with 120 s at 135 % and
// 0.3 s at 160 %: faster than the small blade's, whose times are used for it.
var (
	small = [...]point{{1.10, 360_000, forever}, {1.35, 0.75, 600}, {1.60, 0.25, 50}, {2.00, 0.15, 5}, {3.50, 0.08, 0.5},
		{6.00, 0.03, 0.1}}
	smallThick = [...]point{{1.00, 360_000, forever}, {1.35, 0.75, 600}, {1.60, 0.25, 50}, {2.00, 0.15, 5}, {3.50, 0.08, 0.5},
		{6.00, 0.03, 0.15}}
	large = [...]point{{1.00, 360_000, forever}, {1.35, 60, 1800}, {2.00, 2, 50}, {3.50, 0.2, 7}, {6.00, 0.04, 1}}
)

// thickFrom is where the small blades' second table begins.
const thickFrom unit.Ampere = 35

// ratings are those that are made; from memory of ISO 8820-3 and makers' lists.
var ratings = [...][]unit.Ampere{
	Blade:      {1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40},
	LargeBlade: {20, 30, 40, 50, 60, 70, 80},
	Electronic: nil,
}

// Ratings are those a kind is made in, least first; none for an electronic limit,
// which is set.
func Ratings(k Kind) []unit.Ampere {
	if k < 0 || int(k) >= len(ratings) {
		return nil
	}
	return slices.Clone(ratings[k])
}

func (d Device) table() []point {
	switch {
	case d.Kind == LargeBlade:
		return large[:]
	case d.Rating >= thickFrom:
		return smallThick[:]
	}
	return small[:]
}

// Opens is within what times a device opens at a current. most is false where it may
// never open: a fuse up to the last current for which no longest time is stated, a
// limit that is not passed, one whose time is not known. Between rows of a fuse's
// table both times are read on logarithmic paper, as such curves are printed (common
// practice, no source); above its last row they stay what they are there, which is the
// longest they can be.
func (d Device) Opens(i unit.Ampere) (least, most unit.Second, ok bool) {
	if !(d.Rating > 0) || !unit.Finite(float64(i)) {
		return 0, 0, false
	}
	x := float64(i / d.Rating)
	if d.Kind == Electronic {
		if x <= 1 {
			return unit.Second(forever), 0, false
		}
		return d.Trip, d.Trip, d.Trip > 0
	}
	t := d.table()
	if x < t[0].times {
		return unit.Second(forever), 0, false
	}
	for k := 1; k < len(t); k++ {
		if a, b := t[k-1], t[k]; x < b.times {
			w := math.Log(x/a.times) / math.Log(b.times/a.times)
			least := unit.Second(math.Exp(math.Log(a.least) + w*math.Log(b.least/a.least)))
			if a.most == forever {
				return least, 0, false
			}
			return least, unit.Second(math.Exp(math.Log(a.most) + w*math.Log(b.most/a.most))), true
		}
	}
	last := t[len(t)-1]
	return unit.Second(last.least), unit.Second(last.most), true
}

// NeedsToOpen is the current from which a device is sure to open at all: the least for
// which its table states a longest time, or the limit it is set to.
func (d Device) NeedsToOpen() unit.Ampere {
	if d.Kind == Electronic {
		return d.Rating
	}
	t := d.table()
	sure := slices.IndexFunc(t, func(p point) bool { return p.most != forever })
	return d.Rating * unit.Ampere(t[sure].times)
}

// LetThrough is the most that a short of any current from least to most lets through,
// in A²s, and at which current that is; shorts that take longer than AdiabaticFor to
// open are left out, the wire's steady limit judges those. False where all are.
//
// Along a fuse's table the product falls, so that the slowest short that counts lets the most through.
// Above its table's last row a fuse lets no more through than there: its element melts
// before heat can leave it, so that the product stays (from memory of how fuses are
// rated). An electronic limit goes on passing whatever the supply drives until it opens.
func (d Device) LetThrough(least, most unit.Ampere) (unit.AmpereSqSecond, unit.Ampere, bool) {
	if !(least <= most) {
		return 0, 0, false
	}
	at, top := []unit.Ampere{least, most}, most
	if d.Kind != Electronic {
		t := d.table()
		top = d.Rating * unit.Ampere(t[len(t)-1].times)
		if i, ok := d.opensIn(AdiabaticFor); ok {
			at = []unit.Ampere{least, max(least, min(i, most)), most}
		}
	}
	worst, where := unit.AmpereSqSecond(0), unit.Ampere(0)
	for _, i := range at {
		if _, t, ok := d.Opens(i); ok && t <= AdiabaticFor*(1+1e-9) {
			j := min(i, top)
			if v := unit.AmpereSqSecond(float64(j) * float64(j) * float64(t)); v > worst {
				worst, where = v, i
			}
		}
	}
	return worst, where, where > 0
}

// opensIn is the least current at which a fuse opens within a time.
func (d Device) opensIn(t unit.Second) (unit.Ampere, bool) {
	p := d.table()
	lo, hi := d.NeedsToOpen(), d.Rating*unit.Ampere(p[len(p)-1].times)
	if _, most, ok := d.Opens(hi); !ok || most > t {
		return 0, false
	}
	for range 60 {
		mid := (lo + hi) / 2
		if _, most, ok := d.Opens(mid); ok && most <= t {
			hi = mid
		} else {
			lo = mid
		}
	}
	return hi, true
}
