package plan

import (
	"cmp"
	"math"
	"slices"

	"contralay/calc/formula/lay"
	"contralay/calc/formula/plan/ring"
	"contralay/model/unit"
)

// stacking is one run over the layers of one question, in plain numbers. Lengths in
// mm.
//
// A node is how many of each kind lie already; a label is one stack that holds
// them. Nodes are taken from few to many, so that a node is complete when it is
// reached. Every layer adds at least one, so the search ends.
type stacking struct {
	d                    []float64 // sizes, thin to thick
	kinds                []kind    // what is to be laid and not held, deepest class first, then thin to thick
	spare                int       // index of the kind spares are of; −1 none
	rules                Rules
	centres              Centres
	only                 Only
	gapIn                float64
	gapOut               float64
	lift                 float64
	held                 map[int]*held
	lastHeld, layersLike int
	centreN, round       int // 0: any

	fillerMost int
	noFiller   bool
	mayLose    bool

	effort   int
	sink     func(l *label) // takes stacks in place of nodes, where given
	met      int            // stacks the sink has met
	bucket   int            // of the node to build on
	inBucket int            // where it is in that
	kept     int            // labels pushed

	nodes   map[string]*node
	buckets [][]*node
	found   *front
	fit     fit
	shelf   shelf
	scratch
}

// kind is components of one size that leave together.
type kind struct {
	size       int
	class      int // 0 runs furthest; all 0 where the order of leaving is free
	need, most int // they differ for spares only
}

// held is Held in plain numbers.
type held struct {
	n        []int // per size
	locked   bool
	fillers  int
	fillerMM float64
	how      lay.Laying
}

// node is how many of each kind are laid.
type node struct {
	n      []int
	labels []*label
	kept   bool // those that matter are chosen; no more come
}

// label is a stack of layers that holds some of the components: everything that
// decides what can follow, and what it has cost.
type label struct {
	crown, tape float64
	fillers     int
	fillerMM    float64
	lumpy       int
	spread      float64
	layers      int // 0: the centre alone
	centreN     int
	parent      *label
	pick        pick
}

// pick is what one layer was given.
type pick struct {
	n        []int // per size
	fillers  int
	fillerMM float64
	builtMM  float64
}

// scratch is used again and again, so that trying costs no memory.
type scratch struct {
	take, cnt []int
	key       []byte
	now       *node
	on        *label
}

func newStacking(a Ask) *stacking {
	s := &stacking{rules: a.Rules, centres: a.Centres, spare: -1, nodes: map[string]*node{}, found: &front{}, layersLike: a.Layers,
		centreN: a.CentreN, only: a.Only, round: a.Round}
	sizes := merge(a.Sizes, a.InOrder)
	for _, z := range sizes {
		if !slices.Contains(s.d, float64(z.D)) {
			s.d = append(s.d, float64(z.D))
		}
	}
	slices.Sort(s.d)
	slices.SortFunc(sizes, func(a, b Size) int { return cmp.Or(-cmp.Compare(a.Leaves, b.Leaves), cmp.Compare(a.D, b.D)) })
	for i, z := range sizes {
		k := kind{size: s.sizeOf(z.D), need: z.N, most: z.N}
		if i > 0 {
			k.class = s.kinds[i-1].class
			if z.Leaves != sizes[i-1].Leaves {
				k.class++
			}
		}
		s.kinds = append(s.kinds, k)
	}
	s.addSpares(a)
	s.gapIn, s.gapOut, s.lift = float64(a.Rules.GapInner), float64(a.Rules.GapOuter), float64(a.Rules.LiftMax)
	if len(s.d) > 0 {
		s.mayLose = s.d[0] < 0.2501*s.d[len(s.d)-1]
	}
	s.take, s.cnt = make([]int, len(s.kinds)), make([]int, len(s.d))
	s.fit.Fit = ring.New(s.d, lay.Laying{Ratio: a.Rules.LayRatio})
	return s
}

func (s *stacking) sizeOf(d unit.Millimetre) int { return slices.Index(s.d, float64(d)) }

// addSpares lets the kind that spares are of grow: of its size the one that runs
// furthest, for a spare runs from end to end.
func (s *stacking) addSpares(a Ask) {
	if a.Spares <= 0 || len(s.kinds) == 0 {
		return
	}
	size := s.sizeOf(a.SpareD)
	if size < 0 {
		count := make([]int, len(s.d))
		for _, k := range s.kinds {
			count[k.size] += k.need
		}
		size = 0
		for i := range count {
			if count[i] > count[size] {
				size = i
			}
		}
	}
	for i, k := range s.kinds {
		if k.size == size {
			s.spare = i
			s.kinds[i].most += a.Spares
			return
		}
	}
}

// merge adds up what is equal; what is not a positive diameter or count is left
// out.
func merge(in []Size, inOrder bool) []Size {
	var out []Size
	for _, z := range in {
		if z.N <= 0 || z.D <= 0 || !unit.Finite(float64(z.D)) {
			continue
		}
		if !inOrder {
			z.Leaves = 0
		}
		if i := slices.IndexFunc(out, func(o Size) bool { return o.D == z.D && o.Leaves == z.Leaves }); i >= 0 {
			out[i].N += z.N
		} else {
			out = append(out, z)
		}
	}
	return out
}

// complete reports whether counts hold everything, and how many are spares.
func (s *stacking) complete(n, take []int) (spares int, ok bool) {
	for i, k := range s.kinds {
		c := n[i] + take[i]
		if c < k.need {
			return 0, false
		}
		spares += c - k.need
	}
	return spares, true
}

// mayEnd reports whether a stack of that many layers over its centre may be the
// whole: nothing held lies further out, no hand turns, and it has as many as are asked for.
func (s *stacking) mayEnd(layers int) bool {
	return layers >= s.lastHeld && (s.layersLike == 0 || (layers+1-s.layersLike)%2 == 0) && (s.round == 0 || s.round == layers)
}

// push keeps a stack for the node it leads to.
func (s *stacking) push(l *label, n, take []int) {
	if s.round > 0 && l.layers >= s.round {
		return
	}
	if s.sink != nil {
		s.sink(l)
		return
	}
	s.key = s.key[:0]
	sum := 0
	for i := range n {
		c := n[i] + take[i]
		sum += c
		s.key = append(s.key, byte(c), byte(c>>8))
	}
	if len(s.held) > 0 || s.layersLike > 0 || s.round > 0 {
		sum += l.layers
		s.key = append(s.key, byte(l.layers))
	}
	nd := s.nodes[string(s.key)]
	if nd == nil {
		nd = &node{n: make([]int, len(n))}
		for i := range n {
			nd.n[i] = n[i] + take[i]
		}
		s.nodes[string(s.key)] = nd
		for len(s.buckets) <= sum {
			s.buckets = append(s.buckets, nil)
		}
		s.buckets[sum] = append(s.buckets[sum], nd)
	}
	nd.labels = append(nd.labels, l)
	s.kept++
}

// step builds on one more stack, from few components to many, and gathers the plans that no other beats; false where none is left.
func (s *stacking) step() bool {
	for ; s.bucket < len(s.buckets); s.bucket, s.inBucket = s.bucket+1, 0 {
		for ; s.inBucket < len(s.buckets[s.bucket]); s.inBucket++ {
			nd := s.buckets[s.bucket][s.inBucket]
			if !nd.kept {
				nd.labels, nd.kept = s.keep(nd.labels), true
			}
			if len(nd.labels) > 0 {
				l := nd.labels[0]
				nd.labels = nd.labels[1:]
				s.grow(l, nd)
				return true
			}
			nd.labels = nil
		}
	}
	return false
}

// keep drops stacks that another on the same bed beats.
func (s *stacking) keep(ls []*label) []*label {
	slices.SortStableFunc(ls, func(a, b *label) int {
		return cmp.Or(cmp.Compare(s.soFar(a), s.soFar(b)), cmp.Compare(a.tape, b.tape), cmp.Compare(a.layers, b.layers),
			cmp.Compare(a.centreN, b.centreN))
	})
	out := ls[:0:0]
	for _, l := range ls {
		beaten := false
		for _, o := range out {
			if math.Abs(o.crown-l.crown) < 1e-9 && math.Abs(o.tape-l.tape) < 1e-9 &&
				o.fillers <= l.fillers && o.lumpy <= l.lumpy && s.soFar(o) <= s.soFar(l) {
				beaten = true
				break
			}
		}
		if beaten {
			continue
		}
		out = append(out, l)
	}
	return out
}

func (s *stacking) soFar(l *label) float64 {
	return l.crown + float64(s.rules.FillerWeight)*l.fillerMM + l.spread
}

func (s *stacking) lumps(lo, hi int) (lumpy int, cost float64) {
	w := 0.3
	if s.d[hi] > float64(s.rules.LumpyAt)*s.d[lo] {
		lumpy, w = 1, 1.0
	}
	return lumpy, w * (s.d[hi] - s.d[lo])
}
