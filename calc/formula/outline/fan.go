package outline

import "contralay/model/unit"

// fan lays a tree in sectors: each run gets one, inside that of what it leaves, as wide as the
// number of ends beyond it asks for, and lies in it. A sector is a cone of less than half a turn;
// a cone whose tip lies in another, and whose directions are among those of the other, lies in
// it whole. So nothing of one sector meets anything of its neighbour, as long as runs are
// straight. The longest way goes straight on still.
func (l *layout) fan(root int, at map[int]unit.Degree) {
	type sector struct {
		run                int
		low, high, heading unit.Degree // of its directions, and of the run
	}
	var open []sector
	put := func(place int, low, high, straight unit.Degree, set func(run int, heading unit.Degree)) {
		order := l.order[place]
		if len(order) == 0 {
			return
		}
		var sides [2][]int // left, right
		var ends [2]int
		for _, k := range order[1:] {
			s := 0
			if l.side[k] < 0 {
				s = 1
			}
			sides[s] = append(sides[s], k)
			ends[s] += l.leaves[k]
		}
		main := order[0]
		mine := float64(l.leaves[main])
		// the middle keeps of each side what half of its ends ask for
		left := (high - straight) * unit.Degree(share(mine/2, float64(ends[0])))
		right := (straight - low) * unit.Degree(share(mine/2, float64(ends[1])))
		set(main, straight)
		open = append(open, sector{main, straight - right, straight + left, straight})
		for s, from := range []unit.Degree{straight + left, straight - right} {
			to := []unit.Degree{high, low}[s]
			for _, k := range sides[s] {
				next := from + (to-from)*unit.Degree(float64(l.leaves[k])/float64(ends[s]))
				ends[s] -= l.leaves[k]
				set(k, (from+next)/2)
				open = append(open, sector{k, min(from, next), max(from, next), (from + next) / 2})
				from = next
			}
		}
	}
	turn := func(k int, from, to unit.Degree) unit.Degree {
		if l.Runs[k].Told {
			return l.Runs[k].Turn
		}
		return to - from
	}
	put(root, -85, 85, 0, func(k int, heading unit.Degree) { at[k] = turn(k, 0, heading) })
	for len(open) > 0 {
		s := open[len(open)-1]
		open = open[:len(open)-1]
		put(l.other(s.run, l.near[s.run]), s.low, s.high, s.heading, func(k int, heading unit.Degree) {
			l.turns[k] = turn(k, s.heading, heading)
		})
	}
}

// share is what one of two gets.
func share(a, b float64) float64 {
	if a+b == 0 {
		return 1
	}
	return a / (a + b)
}
