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
	width
	groups []group // by what they hold: none to all
	at     int     // the group being built on
	whole  float64 // Σd² of everything

	same    map[uint64]int // scratch of thin: stacks that hold the same,
	lacking []int          // and that lack the same sizes
}

// width is how much a beam looks at.
type width struct {
	stacks  int  // built on, of a group
	each    int  // and of those that lack the same sizes at least so many
	mixed   int  // sizes a layer may mix
	fillers int  // places of an inner layer that may be filled
	effort  int  // that it may take, whatever it leaves out for that; 0: any
	clean   bool // layers take all of a size, but for one size of each
	near    bool // and leave out no size between two of theirs
}

// group is stacks that hold about as much.
type group struct {
	all    []*stack
	cut    float64         // where it has enough: what is dearer has no place in it
	cuts   map[int]float64 // unless too few of it lack the same sizes
	sorted bool
	built  int // how many have been built on
}

func newBeam(s *stacking, w width) *beam {
	b := &beam{tree: newTree(s), width: w, groups: make([]group, beamGroups+1), same: map[uint64]int{},
		lacking: make([]int, 1<<min(len(s.d), mostSet))}
	s.shelf.piece = beamPiece
	for i := range b.groups {
		b.groups[i].cuts = map[int]float64{}
	}
	b.tree.mixed, b.tree.fillers, b.tree.clean, b.tree.near = w.mixed, w.fillers, w.clean, w.near
	for _, k := range s.kinds {
		b.whole += float64(k.most) * s.d[k.size] * s.d[k.size]
	}
	b.tree.take, b.tree.wants = b.take, b.hasRoom
	return b
}

// beamGroups is how finely stacks are told apart by what they hold.
const beamGroups = 40

// lacks is the sizes that a stack still lacks, a set of bits.
func (s *stacking) lacks(n func(i int) int) (set int) {
	for i, k := range s.kinds {
		if n(i) < k.need && k.size < mostSet {
			set |= 1 << k.size
		}
	}
	return set
}

// place is the group of what the search has in hand.
func (b *beam) place() int {
	s := b.s
	laid := 0.0
	for i, k := range s.kinds {
		laid += float64(s.now.n[i]+s.take[i]) * s.d[k.size] * s.d[k.size]
	}
	return max(b.at, min(int(beamGroups*math.Sqrt(laid/b.whole)), beamGroups))
}

// hasRoom reports whether the group of what is in hand has not enough of better ones.
func (b *beam) hasRoom(least float64) bool {
	s, g := b.s, &b.groups[b.place()]
	if g.cut == 0 || least <= g.cut {
		return true
	}
	cut, full := g.cuts[s.lacks(func(i int) int { return s.now.n[i] + s.take[i] })]
	return b.each > 0 && (!full || least <= cut)
}

// take puts a stack into its group.
func (b *beam) take(l *label, least float64) {
	g := &b.groups[b.place()]
	g.all, g.sorted = append(g.all, b.s.stackOf(l, least)), false
	if len(g.all) >= 4*b.stacks+32 {
		b.thin(g)
	}
}

// thin keeps the most promising of a group, and of each set of sizes that is still lacking: a layer that takes
// all of a size leaves an easier question than the bound can see.
func (b *beam) thin(g *group) {
	s := b.s
	slices.SortFunc(g.all, (*stack).compare)
	clear(b.same)
	clear(b.lacking)
	keep, alike := g.all[:0], alikeOf(len(s.kinds))
	for _, o := range g.all {
		key := o.key()
		if b.same[key]++; b.same[key] > alike {
			continue
		}
		set := s.lacks(func(i int) int { return o.n[i] })
		if b.lacking[set]++; b.lacking[set] > b.each && len(keep) >= b.stacks {
			continue
		}
		if keep = append(keep, o); len(keep) == b.stacks {
			g.cut = o.least
		}
		if b.lacking[set] == b.each {
			g.cuts[set] = o.least
		}
	}
	clear(g.all[len(keep):])
	g.all, g.sorted = keep, true
}

// key is what a stack holds, as good as certainly told apart from whatever else one may hold.
func (o *stack) key() uint64 {
	key := uint64(0)
	for _, n := range o.n {
		key = (key ^ uint64(n)) * 0x9E3779B97F4A7C15 // odd, its bits well mixed: 2⁶⁴ over the golden ratio
		key ^= key >> 29
	}
	return key
}

// alikeOf is how many stacks that hold the same are kept: of few kinds many do.
func alikeOf(kinds int) int {
	if kinds <= 3 {
		return 6
	}
	return 2
}

// fewest is how many stacks of a group are built on, however late it is.
const fewest = 3

// late reports whether what this group may take is spent: each has as much as the others, and what those before
// it have left over. The last third is left out: what its stacks lack is mostly the one layer that ends them.
func (b *beam) late() bool {
	share := float64(b.at) / (0.65 * beamGroups)
	return b.effort > 0 && float64(math.MaxInt-b.s.effort) > float64(b.effort)*min(share, 1)
}

// step builds on one stack; false where none is left.
func (b *beam) step() bool {
	for ; b.at < len(b.groups); b.at++ {
		g := &b.groups[b.at]
		for {
			if !g.sorted {
				b.thin(g)
			}
			if len(g.all) == 0 || g.built > 4*b.stacks+16 || g.built >= fewest && b.late() {
				break
			}
			o := g.all[0]
			g.all = g.all[1:]
			if o.least >= b.worth()-hair {
				continue
			}
			if b.grow(o) {
				g.built++
			}
			return true
		}
		g.all = nil
	}
	return false
}
