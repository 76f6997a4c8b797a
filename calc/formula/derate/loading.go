package derate

import (
	"cmp"
	"slices"

	"contralay/model/unit"
)

// Loaded is so many wires alike: what each carries, and what one may in free air at the
// height and in the air that it lies in.
type Loaded struct {
	Count int
	Used  unit.Ampere
	Free  unit.Ampere
}

// Factor is the bundle factor for wires loaded so: that of the lowest curve whose share
// of the capacity is enough for what they carry,
//
//	Σ used ≤ share · F · Σ free
//
// and of all choices of some of the wires, the least. An idle wire more, or one that
// begins to carry a little, has capacity of its own, which lowers the share of the
// others; it never lifts their factor so. That is the circular's method (11-67, 11-69)
// with the worst of readings where it leaves open which wires count.
func Factor(wires []Loaded) (f unit.Ratio, n int, share unit.Ratio, held bool) {
	all, idle := 0, true
	for _, w := range wires {
		all += w.Count
		idle = idle && !(w.Used > 0)
	}
	f, held = Bundle(all, shares[0])
	n, share = all, shares[0]
	if idle {
		return f, n, share, held
	}
	last := min(all, MostWires)
	scratch := make([]excess, len(wires))
	for some := min(2, last); some <= last; some++ {
		// The lowest curve of so many wires, for the choice of them that is loaded worst.
		k := 0
		for k < len(shares)-1 && exceeds(wires, scratch, some, some == last && all > last, shares[k]) {
			k++
		}
		if a, h := Bundle(some, shares[k]); a < f {
			f, n, share, held = a, some, shares[k], h
		}
	}
	if n == last {
		n = all
		_, held = Bundle(n, share)
	}
	return f, n, share, held
}

type excess struct {
	amps  float64
	count int
}

// exceeds reports whether some choice of n wires, or of n or more, carries more than a
// share of their capacity.
func exceeds(wires []Loaded, scratch []excess, n int, orMore bool, share unit.Ratio) bool {
	f, _ := Bundle(n, share)
	for i, w := range wires {
		scratch[i] = excess{float64(w.Used) - float64(w.Free)*float64(f*share), w.Count}
	}
	slices.SortFunc(scratch, func(a, b excess) int { return cmp.Compare(b.amps, a.amps) })
	sum := 0.0
	for _, e := range scratch {
		take := min(n, e.count)
		if n -= take; orMore && e.amps > 0 {
			take = e.count
		}
		sum += e.amps * float64(take)
	}
	return sum > 1e-9
}
