package outline

import (
	"math"

	"contralay/model/unit"
)

// The angles of what is found by rule. A run with all that hangs on it is built from its end
// inward, as one stiff piece that is then tried at its place at one angle after another.

// stiff is a run with all beyond it, from the near end at (0, 0) along x.
type stiff struct {
	segs      []segment
	low, high Point
}

// tried are the angles of a side way, the best first; the second list is for both sides.
var tried = []unit.Degree{45, 60, 30, 75, 90, 105, 120, 135}

// leastApart is the least angle between two runs that leave one place, in degrees.
const leastApart = 20

// root finds all turns of a tree, and gives those of what leaves its root. Where the angles do
// not keep it apart it takes sectors.
func (l *layout) root(root int) func(run int) unit.Degree {
	at := map[int]unit.Degree{}
	if !l.crowded {
		base := stiff{}
		var hung []unit.Degree
		for n, k := range l.order[root] {
			if l.crowded {
				break
			}
			whole := l.stiff(k)
			var turn unit.Degree
			switch {
			case l.Runs[k].Told:
				turn = l.Runs[k].Turn
			case n == 0: // the first lies along x
			case n == 1: // the datum lies on the way: its other half goes the other way
				turn = l.choose(base, whole, hung, Point{}, 0, []unit.Degree{180}, 1)
			default:
				turn = l.choose(base, whole, hung, Point{}, 0, nil, l.side[k])
			}
			at[k] = turn
			hung = append(hung, turn)
			base = base.with(whole, Point{}, turn)
		}
	}
	if l.crowded {
		l.fan(root, at)
	}
	return func(run int) unit.Degree { return at[run] }
}

// stiff builds a run with all beyond it. It goes from the ends inward without calling itself:
// a harness may be thousands of runs in a row.
func (l *layout) stiff(run int) stiff {
	built := map[int]stiff{}
	order := []int{run}
	for n := 0; n < len(order); n++ {
		order = append(order, l.order[l.other(order[n], l.near[order[n]])]...)
	}
	for n := len(order) - 1; n >= 0; n-- {
		i := order[n]
		if l.crowded {
			return stiff{}
		}
		built[i] = l.joined(i, built)
	}
	return built[run]
}

// joined hangs what is beyond a run on it: what is told as told, then the longest way straight
// on, then the others where they keep clear.
func (l *layout) joined(i int, built map[int]stiff) stiff {
	line := l.shapes[i]
	end, heading := line.At(line.Length())
	if last := line[len(line)-1]; last.Length == 0 {
		heading = last.Heading
	}
	out := ofLine(line, i, l.Runs[i].Width)
	place := l.other(i, l.near[i])
	hung := []unit.Degree{180}
	for _, told := range []bool{true, false} {
		for n, k := range l.order[place] {
			if l.Runs[k].Told != told {
				continue
			}
			whole := built[k]
			delete(built, k)
			turn := l.Runs[k].Turn
			switch {
			case told:
			case n == 0:
				turn = l.choose(out, whole, hung, end, heading, []unit.Degree{0}, 1)
			default:
				turn = l.choose(out, whole, hung, end, heading, nil, l.side[k])
			}
			l.turns[k] = turn
			hung = append(hung, turn)
			out = out.with(whole, end, heading+turn)
		}
	}
	return out
}

// choose is the first turn at which a stiff piece keeps clear of what is there already; best are
// tried first. Where none does the tree is crowded, or crosses what was told.
func (l *layout) choose(there, whole stiff, hung []unit.Degree, at Point, heading unit.Degree, best []unit.Degree,
	side unit.Degree) unit.Degree {
	all := append([]unit.Degree(nil), best...)
	for _, s := range []unit.Degree{side, -side} {
		for _, a := range tried {
			all = append(all, s*a)
		}
	}
	for a := unit.Degree(leastApart); a <= 180-leastApart; a += 8 {
		all = append(all, side*a, -side*a)
	}
	for _, room := range []unit.Millimetre{l.Room, l.Room / 3, 1} {
		for _, turn := range all {
			free := true
			for _, h := range hung {
				if d := math.Abs(math.Remainder(float64(turn-h), 360)); d < leastApart {
					free = false
				}
			}
			if free && l.clear(there, whole, at, heading+turn, room) {
				return turn
			}
			if l.tests > mostTests {
				l.crowded = true
				return 0
			}
		}
	}
	if l.told { // sectors help straight runs alone: what crosses is named
		return all[0]
	}
	l.crowded = true
	return 0
}

// clear reports whether a stiff piece at a place keeps its distance from what is there. What
// touches the place itself is not looked at: there the angle decides.
func (l *layout) clear(there, whole stiff, at Point, heading unit.Degree, room unit.Millimetre) bool {
	moved := stiff{}.with(whole, at, heading)
	if len(there.segs) == 0 || apart(there, moved, room) {
		return true
	}
	l.tests += len(moved.segs)
	for _, a := range moved.segs {
		low, high := a.box(room)
		if low.X > there.high.X || high.X < there.low.X || low.Y > there.high.Y || high.Y < there.low.Y {
			continue
		}
		l.tests += len(there.segs)
		touches := a.touches(at)
		for _, b := range there.segs {
			blow, bhigh := b.bounds()
			if low.X > bhigh.X || high.X < blow.X || low.Y > bhigh.Y || high.Y < blow.Y {
				continue
			}
			if touches && b.touches(at) {
				continue
			}
			if a.to(b) < room+(a.width+b.width)/2 {
				return false
			}
		}
	}
	return true
}
