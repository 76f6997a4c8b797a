package plan

import (
	"math"
	"slices"
)

// beam is the quick method: it lays one layer more on each of the most promising stacks. Only stacks that
// hold about as much are held against each other, for of those the thinner is the better however rough the
// guess of what is still to come; of each such group so many are built on.
type beam struct {
	*tree
	width  int
	groups [][]*stack // by what they hold: none to all
	at     int        // the group being built on
	cut    []float64  // of a group that has enough: what is dearer has no place in it
	built  int        // how many of it have been built on
	whole  float64    // Σd² of everything
}

// newBeam builds on width stacks of a group, mixes up to so many sizes in a layer and fills up to so many
// places of an inner layer.
func newBeam(s *stacking, width, mixed, fillers int) *beam {
	b := &beam{tree: newTree(s), width: width, groups: make([][]*stack, beamGroups+1), cut: make([]float64, beamGroups+1)}
	b.mixed, b.fillers = mixed, fillers
	for _, k := range s.kinds {
		b.whole += float64(k.most) * s.d[k.size] * s.d[k.size]
	}
	b.tree.take = b.take
	return b
}

// beamGroups is how finely stacks are told apart by what they hold.
const beamGroups = 40

// take puts a stack into its group, unless that has enough of better ones.
func (b *beam) take(l *label, least float64) {
	s := b.s
	laid := 0.0
	for i, k := range s.kinds {
		laid += float64(s.now.n[i]+s.take[i]) * s.d[k.size] * s.d[k.size]
	}
	g := max(b.at, min(int(beamGroups*math.Sqrt(laid/b.whole)), beamGroups))
	if b.cut[g] > 0 && least > b.cut[g] {
		return
	}
	b.groups[g] = append(b.groups[g], s.stackOf(l, least))
	if len(b.groups[g]) >= 8*b.width+64 {
		b.thin(g)
	}
}

// thin keeps the most promising of a group, few that hold the same.
func (b *beam) thin(g int) {
	slices.SortFunc(b.groups[g], (*stack).compare)
	same := map[string]int{}
	keep := b.groups[g][:0]
	for _, o := range b.groups[g] {
		key := make([]byte, 0, 2*len(o.n))
		for _, n := range o.n {
			key = append(key, byte(n), byte(n>>8))
		}
		if same[string(key)]++; same[string(key)] <= alike && len(keep) < b.width {
			keep = append(keep, o)
		}
	}
	clear(b.groups[g][len(keep):])
	if b.groups[g] = keep; len(keep) == b.width {
		b.cut[g] = keep[len(keep)-1].least
	}
}

// alike is how many stacks that hold the same are kept.
const alike = 2

// step builds on one stack; false where none is left.
func (b *beam) step() bool {
	for ; b.at < len(b.groups); b.at, b.built = b.at+1, 0 {
		b.thin(b.at)
		for len(b.groups[b.at]) > 0 && b.built < b.width {
			o := b.groups[b.at][0]
			b.groups[b.at] = b.groups[b.at][1:]
			if o.least >= b.worth()-hair {
				continue
			}
			if b.grow(o) {
				b.built++
			}
			return true
		}
		b.groups[b.at] = nil
	}
	return false
}
