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
	sorted := slices.Clone(wires)
	for some := min(2, last); some <= last; some++ {
		// The lowest curve of so many wires, for the choice of them that is loaded worst. Only
		// curves below what was found matter: whether the one before them is passed comes first.
		k := slices.IndexFunc(shares[:], func(s unit.Ratio) bool { a, _ := Bundle(some, s); return a < f })
		past := func(k int) bool { return exceeds(sorted, some, some == last && all > last, shares[k]) }
		if k < 0 || k > 0 && !past(k-1) {
			continue
		}
		for k < len(shares)-1 && past(k) {
			k++
		}
		f, held = Bundle(some, shares[k])
		n, share = some, shares[k]
	}
	if n == last {
		n = all
		_, held = Bundle(n, share)
	}
	return f, n, share, held
}

// exceeds reports whether some choice of n wires, or of n or more, carries more than a
// share of their capacity. It leaves the wires in the order of what they carry in excess of
// it, which is nearly that of the next question.
func exceeds(wires []Loaded, n int, orMore bool, share unit.Ratio) bool {
	f, _ := Bundle(n, share)
	excess := func(w Loaded) float64 { return float64(w.Used) - float64(w.Free)*float64(f*share) }
	slices.SortFunc(wires, func(a, b Loaded) int { return cmp.Compare(excess(b), excess(a)) })
	sum := 0.0
	for _, w := range wires {
		take, amps := min(n, w.Count), excess(w)
		if n -= take; orMore && amps > 0 {
			take = w.Count
		}
		sum += amps * float64(take)
	}
	return sum > 1e-9
}
