package plan

import (
	"cmp"
	"math"
	"slices"

	"contralay/calc/formula/lay"
)

// tree is the exact method: stacks are built outward, always on the one whose cost and what it will at
// least still cost come to least. Where none is left that could become cheaper than the best plan known,
// that plan is proven; until then the first of the queue is a bound for all.
//
// A ring is a surface and not a volume: of the thinnest kind of a layer only so many are tried as close on
// the bed and fill it as far as fillers cannot.
type tree struct {
	s       *stacking
	bounds  *bounds
	queue   stacks
	lost    float64                       // the least that a stack might come to that was left out for want of room; 0: none was
	floor   float64                       // what the stack being built on comes to at least: so does all that comes of it
	order   []int                         // kinds, deepest class first, thick to thin within
	left    []int                         // scratch: what is still to lay, by size
	take    func(l *label, least float64) // what becomes of a stack that may lead to a cheaper plan
	wants   func(least float64) bool      // whether take has a place for it; nil: always
	worth   func() float64                // what costs no less is not built
	mixed   int                           // sizes a layer may mix
	clean   bool                          // kinds are taken to their end, all but one of a layer
	near    bool                          // and no size is left out between two of a layer
	fillers int                           // places of an inner layer that may be filled
}

// stack is a label in the queue.
type stack struct {
	*label
	n     []int // of each kind laid
	least float64
	at    int // in the order they were met
}

type stacks []*stack

// push and pop keep the queue a heap, the first before all others.
func (q *stacks) push(o *stack) {
	h := append(*q, o)
	i := len(h) - 1
	for i > 0 && o.before(h[(i-1)/2]) {
		h[i] = h[(i-1)/2]
		i = (i - 1) / 2
	}
	h[i], *q = o, h
}

func (q *stacks) pop() *stack {
	h := *q
	first, o := h[0], h[len(h)-1]
	h[len(h)-1] = nil
	h = h[:len(h)-1]
	*q = h
	if len(h) == 0 {
		return first
	}
	i := 0
	for 2*i+1 < len(h) {
		c := 2*i + 1
		if c+1 < len(h) && h[c+1].before(h[c]) {
			c++
		}
		if !h[c].before(o) {
			break
		}
		h[i] = h[c]
		i = c
	}
	h[i] = o
	return first
}

// compare sets the more promising first, of equal ones the one with more layers.
func (o *stack) compare(p *stack) int {
	return cmp.Or(cmp.Compare(o.least, p.least), -cmp.Compare(o.layers, p.layers), cmp.Compare(o.at, p.at))
}

func (o *stack) before(p *stack) bool {
	if o.least != p.least {
		return o.least < p.least
	}
	return o.compare(p) < 0
}

// mostStacks bounds the queue, at some 30 MB; what is left out for it is remembered as a bound.
const mostStacks = 100_000

func newTree(s *stacking) *tree {
	t := &tree{s: s, bounds: newBounds(s), left: make([]int, len(s.d)), mixed: len(s.d), fillers: math.MaxInt}
	for i := range s.kinds {
		t.order = append(t.order, i)
	}
	slices.SortStableFunc(t.order, func(a, b int) int {
		return cmp.Or(cmp.Compare(s.kinds[a].class, s.kinds[b].class), -cmp.Compare(s.kinds[a].size, s.kinds[b].size))
	})
	return t
}

// hair keeps rounding from leaving out a plan as good as the best.
const hair = 1e-9

// begin queues every centre.
func (t *tree) begin() {
	s := t.s
	s.sink = func(l *label) { t.offer(l) }
	s.seed()
	s.sink = nil
}

// offer weighs a stack that holds what the search has in hand.
func (t *tree) offer(l *label) {
	if t.s.round > 0 && l.layers >= t.s.round {
		return
	}
	least := max(t.floor, t.s.soFar(l)+t.toCome(l.crown))
	if least < t.worth()-hair {
		t.take(l, least)
	}
}

// stackOf is a label that holds what the search has in hand.
func (s *stacking) stackOf(l *label, least float64) *stack {
	o := s.shelf.stack()
	*o = stack{label: l, n: s.shelf.ints(len(s.kinds)), least: least, at: s.met}
	for i := range o.n {
		o.n[i] = s.now.n[i] + s.take[i]
	}
	s.met++
	return o
}

// toCome is the least that what the stack in hand lacks adds on a crown, whatever spares are taken.
func (t *tree) toCome(crown float64) float64 {
	s := t.s
	clear(t.left)
	for i, k := range s.kinds {
		if c := s.now.n[i] + s.take[i]; c < k.need {
			t.left[k.size] += k.need - c
		}
	}
	if s.spare < 0 {
		return t.bounds.toCome(t.left, crown)
	}
	k := s.kinds[s.spare]
	gain := float64(s.rules.SpareGain) * s.d[k.size]
	have := max(0, s.now.n[s.spare]+s.take[s.spare]-k.need)
	least := t.bounds.toCome(t.left, crown) - gain*float64(have)
	for more := have + 1; more <= k.most-k.need; more++ {
		t.left[k.size]++
		least = min(least, t.bounds.toCome(t.left, crown)-gain*float64(more))
	}
	return least
}

// queued puts a stack into the queue; of too many the dearest half is left out.
func (t *tree) queued(l *label, least float64) {
	if len(t.queue) >= mostStacks {
		slices.SortFunc(t.queue, (*stack).compare)
		if out := t.queue[mostStacks/2].least; t.lost == 0 || out < t.lost {
			t.lost = out
		}
		clear(t.queue[mostStacks/2:])
		t.queue = t.queue[:mostStacks/2] // sorted, it is a heap
	}
	t.queue.push(t.s.stackOf(l, least))
}

// step builds on the most promising stack; false where none is left that could be cheaper.
func (t *tree) step() bool {
	for len(t.queue) > 0 {
		o := t.queue.pop()
		if o.least >= t.worth()-hair {
			t.queue = nil
			return false
		}
		if t.grow(o) {
			return true
		}
	}
	return false
}

// bound is the least any plan of the question costs, as far as is known; ok is false where that is the best plan's own.
func (t *tree) bound() (least float64, ok bool) {
	if len(t.queue) > 0 {
		least, ok = t.queue[0].least, true
	}
	if t.lost > 0 && (!ok || t.lost < least) {
		least, ok = t.lost, true
	}
	return least, ok && least < t.worth()-hair
}

// grow lays every next layer that could lead to a cheaper plan; false where the stack turns out dearer
// than it looked, and is queued again.
func (t *tree) grow(o *stack) bool {
	s := t.s
	s.now, t.floor = &node{n: o.n}, o.least
	clear(s.take)
	if o.tape == 0 { // its bed is still to be worked out
		s.on = o.parent
		s.bedOf(o.parent)
		s.lay(o.label)
		if least := s.soFar(o.label) + t.toCome(o.crown); least > o.least+hair {
			if least < t.worth()-hair {
				t.take(o.label, least)
			}
			return false
		}
	}
	s.on = o.label
	h := s.bedOf(o.label)
	clear(s.cnt)
	if h != nil {
		copy(s.cnt, h.n)
	}
	s.effort--
	if h != nil && h.locked {
		s.sink = func(l *label) { t.offer(l) }
		s.asHeld(h)
		s.sink = nil
		return true
	}
	t.last()
	clear(s.take)
	sizes := 0
	for _, c := range s.cnt {
		if c > 0 {
			sizes++
		}
	}
	if t.clean {
		t.cleanly(0, sizes)
	} else {
		t.fill(0, sizes)
	}
	return true
}

// bedOf takes up the bed of a stack for the layer that follows, and says what is held there.
func (s *stacking) bedOf(l *label) *held {
	h := s.held[l.layers+1]
	how := lay.Laying{Ratio: s.rules.LayRatio}
	if h != nil {
		how.Lay, how.Bind = h.how.Lay, h.how.Bind
	}
	s.fit.Take(l.crown, l.tape, how)
	return h
}

// last tries what is left as the outermost layer, with each number of spares.
func (t *tree) last() {
	s := t.s
	if !s.mayEnd(s.on.layers + 1) {
		return
	}
	for i, k := range s.kinds {
		if c := k.need - s.now.n[i]; c > 0 {
			s.take[i] = c
			s.cnt[k.size] += c
		}
	}
	for {
		if s.total(s.cnt) > 0 {
			s.outermost()
		}
		if s.spare < 0 || s.now.n[s.spare]+s.take[s.spare] >= s.kinds[s.spare].most {
			break
		}
		s.take[s.spare]++
		s.cnt[s.kinds[s.spare].size]++
	}
	for i, k := range s.kinds {
		s.cnt[k.size] -= s.take[i]
	}
}

func (s *stacking) total(cnt []int) int {
	n := 0
	for _, c := range cnt {
		n += c
	}
	return n
}

// outermost offers cnt as the last layer.
func (s *stacking) outermost() {
	l := s.on
	s.effort--
	lo, hi, n := s.span(s.cnt)
	st := s.fits(s.cnt, lo, hi, n)
	if !st.shut {
		return
	}
	lumpy, spread := s.lumps(lo, hi)
	least := l.crown + 2*s.d[hi] + float64(s.fit.How.Bind)
	if f, open, ok := s.fillers(st, s.cnt, lo, hi, n, s.gapOut, s.fillerMost-l.fillers); ok {
		spares, _ := s.complete(s.now.n, s.take)
		s.finish(s.stack(f, s.d[lo], l.lumpy+lumpy, spread, s.crown(open, f, lo, least)), spares)
	}
}

// fill chooses how many of each kind from place at on lie in the layer in hand, thick ones first; in it lie
// so many sizes already.
func (t *tree) fill(at, sizes int) {
	s := t.s
	if at == len(t.order) || !s.reached(s.kinds[t.order[at]].class) {
		if sizes > 0 {
			t.inner()
		}
		return
	}
	i := t.order[at]
	k := s.kinds[i]
	t.fill(at+1, sizes)
	if s.cnt[k.size] == 0 {
		sizes++
	}
	most := k.most - s.now.n[i]
	if most <= 0 || sizes > t.mixed {
		return
	}
	set := func(c int) {
		s.cnt[k.size] += c - s.take[i]
		s.take[i] = c
	}
	defer set(0)
	// Nothing follows in this layer, or only what may lie in it once all of this class does.
	end := at == len(t.order)-1 || sizes == t.mixed && !t.again(at)
	class := !end && s.kinds[t.order[at+1]].class > k.class
	c := 1
	if end {
		if c = max(1, t.dense(i)); c <= most {
			c = max(c, t.enough(most, set))
		}
	} else if class {
		c = max(1, min(t.enough(most, set), k.need-s.now.n[i]))
	}
	for ; c <= most; c++ {
		set(c)
		if end || class && !s.reached(s.kinds[t.order[at+1]].class) {
			if t.inner() {
				return
			}
			continue
		}
		if t.full() {
			return
		}
		t.fill(at+1, sizes)
	}
}

// partFilled is how many fillers lie beside a kind of which more could lie there.
const partFilled = 2

// cleanly chooses layers that take kinds to their end, from place at on, and of one kind as many as fill
// the ring: what is left is an easier question.
func (t *tree) cleanly(at, sizes int) {
	s := t.s
	if sizes > 0 && t.inner() {
		return
	}
	if sizes == t.mixed {
		return
	}
	for part, j := range t.order {
		k := s.kinds[j]
		if s.take[j] > 0 || s.now.n[j] >= k.most || !s.reached(k.class) || t.near && t.apart(j) {
			continue
		}
		set := func(c int) {
			s.cnt[k.size] += c - s.take[j]
			s.take[j] = c
		}
		most, fillers := k.most-s.now.n[j], t.fillers
		t.fillers = min(fillers, partFilled) // more of the same instead
		c := max(1, t.dense(j))
		if c <= most {
			c = max(c, t.enough(most, set))
		}
		for ; c <= most; c++ {
			if set(c); s.now.n[j]+c == k.need && part >= at {
				continue // to its end: below
			}
			if t.inner() {
				break
			}
		}
		t.fillers = fillers
		if all := k.need - s.now.n[j]; part >= at && all > 0 {
			if set(all); !t.full() {
				t.cleanly(part+1, sizes+1)
			}
		}
		set(0)
	}
}

// apart reports whether the layer in hand would, with a kind more, leave out a size between its own: what such
// a layer costs for its unequal sizes it would cost with that one too.
func (t *tree) apart(j int) bool {
	s := t.s
	size := s.kinds[j].size
	lo, hi := size, size
	for i, k := range s.kinds {
		if s.take[i] > 0 {
			lo, hi = min(lo, k.size), max(hi, k.size)
		}
	}
	if lo < size && size < hi {
		return true
	}
	for i, k := range s.kinds {
		if lo < k.size && k.size < hi && s.take[i] == 0 && s.now.n[i] < k.need && s.reached(k.class) {
			return true
		}
	}
	return false
}

// again reports whether a size of the layer in hand comes again after place at.
func (t *tree) again(at int) bool {
	for _, i := range t.order[at+1:] {
		if t.s.cnt[t.s.kinds[i].size] > 0 || t.s.kinds[i].size == t.s.kinds[t.order[at]].size {
			return true
		}
	}
	return false
}

// full reports whether the layer in hand does not close, nor would it with anything more in it.
func (t *tree) full() bool {
	s := t.s
	lo, hi, n := s.span(s.cnt)
	if n < 3 {
		return false
	}
	s.effort--
	sum := s.sum(s.cnt, lo, hi, n)
	if sum <= twoPi {
		return false
	}
	s.effort--
	if s.far(sum, hi) {
		return true
	}
	sum = s.lifted(s.cnt, lo, hi, n)
	return s.full(sum)
}

// dense is the fewest of a kind, the last of the layer in hand, that leave no more area to be laid than a
// cheaper plan can take: toCome says so of all fewer ones.
func (t *tree) dense(of int) int {
	s, k := t.s, t.s.kinds[of]
	lo, hi, n := s.span(s.cnt)
	if n == 0 {
		lo, hi = k.size, k.size
	}
	lo, hi = min(lo, k.size), max(hi, k.size)
	_, spread := s.lumps(lo, hi)
	l := s.on
	crown := l.crown + 2*s.d[hi] + float64(s.fit.How.Bind)
	room := t.worth() - (crown + float64(s.rules.FillerWeight)*l.fillerMM + l.spread + spread)
	if s.spare >= 0 {
		z := s.kinds[s.spare]
		room += float64(s.rules.SpareGain) * s.d[z.size] * float64(z.most-z.need)
	}
	area, thin, thick := 0.0, -1, 0
	for i, z := range s.kinds {
		if c := z.need - s.now.n[i] - s.take[i]; c > 0 {
			area += float64(c) * s.d[z.size] * s.d[z.size]
			thick = max(thick, z.size)
			if thin < 0 || z.size < thin {
				thin = z.size
			}
		}
	}
	if thin < 0 || math.IsInf(room, 1) {
		return 0
	}
	if room <= 0 {
		return math.MaxInt
	}
	d := s.d[k.size]
	return int(math.Ceil((area-t.bounds.holds(crown, room, thin, thick))/(d*d) - 1e-6))
}

// enough is the fewest of the last kind that leave no more open than fillers may close.
func (t *tree) enough(most int, set func(int)) int {
	s := t.s
	free := min(s.fillerMost-s.on.fillers, t.fillers)
	// A filler of the layer's thinnest costs at least that of the thinnest of all.
	if w := float64(s.rules.FillerWeight) * s.d[0]; w > 0 {
		if room := t.worth() - s.soFar(s.on); room < w*float64(free) {
			free = int(room / w)
		}
	}
	if s.noFiller {
		return 0
	}
	open := func(c int) (left, each float64) {
		set(c)
		a, b, n := s.span(s.cnt)
		s.effort--
		switch {
		case n == 0:
			return math.Inf(1), 0
		case n < 3: // no two take more than two of the thickest
			return twoPi*(1-s.gapIn) - float64(free+n)*s.fit.Theta(b, b, b), s.fit.Theta(a, a, a)
		}
		return twoPi*(1-s.gapIn) - float64(free)*s.fit.Theta(b, b, b) - s.sum(s.cnt, a, b, n), s.fit.Theta(a, a, a)
	}
	// Each takes at most about as much as two of it side by side: guess from below, and go on from there.
	lo, hi := 0, most
	left, each := open(0)
	if left <= 0 {
		return 0
	}
	lo = 1
	for guess := int(min(left/each, float64(most))); lo < hi; {
		c := max(lo, min(guess, hi-1))
		if left, each = open(c); left > 0 {
			lo = c + 1
			guess = c + int(left/each)
		} else {
			hi = c
			guess = c - 1
		}
	}
	return lo
}

// inner takes cnt as a layer with more to come; it reports whether the ring is full.
func (t *tree) inner() (full bool) {
	s := t.s
	l := s.on
	lo, hi, n := s.span(s.cnt)
	s.effort--
	st := s.fits(s.cnt, lo, hi, n)
	if !st.shut {
		return st.full
	}
	free := min(s.fillerMost-l.fillers, t.fillers)
	if !s.noFiller && n > 2 && st.open > s.gapIn+float64(free)*s.fit.Theta(hi, hi, hi)/twoPi {
		return false
	}
	more := s.lastHeld > l.layers+1
	for i, k := range s.kinds {
		more = more || s.now.n[i]+s.take[i] < k.most
	}
	if !more {
		return false // nothing could follow
	}
	lumpy, spread := s.lumps(lo, hi)
	crown := l.crown + 2*s.d[hi] + float64(s.fit.How.Bind)
	toCome := t.toCome(crown)
	room := t.worth() - (crown + float64(s.rules.FillerWeight)*l.fillerMM + l.spread + spread + toCome) - hair
	if room <= 0 {
		return false
	}
	if w := float64(s.rules.FillerWeight) * s.d[lo]; w > 0 && room < w*float64(free) {
		free = int(room / w)
	}
	if s.round > 0 && l.layers+1 >= s.round {
		return false
	}
	if f, _, ok := s.fillers(st, s.cnt, lo, hi, n, s.gapIn, free); ok {
		// Where the layer is lifted, its crown shows when it is laid.
		least := crown + float64(s.rules.FillerWeight)*(l.fillerMM+float64(f)*s.d[lo]) + l.spread + spread + toCome
		if least = max(t.floor, least); least < t.worth()-hair && (t.wants == nil || t.wants(least)) {
			t.take(s.stack(f, s.d[lo], l.lumpy+lumpy, spread, crown), least)
		}
	}
	return false
}
