package plan

import (
	"math"

	"contralay/model/unit"
)

// Search is one planning question being worked on. It is taken up in slices: Run spends some effort and
// returns, and what has been found so far is there at any time. What it does does not depend on how it is
// sliced, so that the same effort finds the same plans on every machine, and more effort never worse ones.
type Search struct {
	ask    Ask
	levels []*level
	spent  int
}

// level is the question with some limits left.
type level struct {
	relaxed Relaxed
	s       *stacking // of the exact method; its front is everybody's
	quick   []stage   // what gives an answer at once
	prove   stage     // what proves it
	proving int       // effort spent on that
	beam    func(w width) stage
	beams   int   // begun after the first
	first   int   // effort of the first
	beaming stage // the beam in hand
	turn    int   // what is spent on proving before the next beam
	tree    *tree
	ties    *tree     // looks for plans that cost the same as the cheapest and are to be preferred
	tied    int       // effort spent on that
	wide    *stacking // looks for every plan worth having, once the cheapest is proven
	done    bool      // there is no plan, or its cheapest is proven
	all     bool      // nor is any plan left out that no other beats
}

// stage does a little more at each call; it says what that took, and whether there is more to do.
type stage func() (effort int, more bool)

// Begin takes up a question.
func Begin(a Ask) *Search {
	q := &Search{ask: a}
	if len(merge(a.Sizes, a.InOrder)) > 0 {
		for relaxed := Keeps; relaxed <= Nothing; relaxed++ {
			if l := newLevel(a, relaxed); l != nil {
				q.levels = append(q.levels, l)
			}
		}
	}
	return q
}

// counted is a stage over a stacking of its own.
func counted(s *stacking, step func() bool) stage {
	s.effort = math.MaxInt
	return func() (int, bool) {
		before := s.effort
		more := step()
		return before - s.effort + 1, more
	}
}

func newLevel(a Ask, relaxed Relaxed) *level {
	s, ok := setUp(a, relaxed)
	if !ok {
		return nil
	}
	l := &level{relaxed: relaxed, s: s, turn: firstTurn}
	worth := func() float64 {
		if s.found.least == nil {
			return math.Inf(1)
		}
		return s.found.least.cost
	}
	l.tree = newTree(s)
	l.tree.take, l.tree.worth = l.tree.queued, worth
	l.quick = append(l.quick, counted(s, func() bool { l.tree.begin(); return false }))
	another := func() *stacking {
		t, _ := setUp(a, relaxed)
		t.found = s.found
		return t
	}
	l.beam = func(w width) stage {
		t := another()
		b := newBeam(t, w)
		b.worth = worth
		begun := false
		return counted(t, func() bool {
			if !begun {
				begun = true
				b.begin()
			}
			return b.step()
		})
	}
	first := l.beam(firstBeam)
	l.quick = append(l.quick, func() (int, bool) {
		used, more := first()
		l.first += used
		return used, more
	})
	l.prove = counted(s, l.tree.step)
	return l
}

// How the effort is shared out. A first, narrow beam gives something to beat, and says what a beam of the
// question takes; a short turn of the exact method proves what is easily proven; then a second beam is as wide as
// an answer at once allows. From there on the exact method and ever wider beams take turns, each as long as the
// one before. Measured on the kept questions, and on sixty others.
const (
	firstTurn   = 20_000
	secondLeast = 50_000    // of effort, for a second beam that comes late
	lastOfOnce  = 10_000    // left of an answer at once when it ends
	widest      = 1_500_000 // by what the first took: how many stacks the second builds on, up to four times the least
)

var (
	firstBeam  = width{stacks: 4, each: 1, mixed: 3, fillers: 12, clean: true, near: true, effort: 30_000}
	secondBeam = width{stacks: 80, each: 6, mixed: 3, fillers: 12, clean: true, near: true}
	furtherOn  = []width{
		{stacks: 16, each: 2, mixed: 2, fillers: 2}, {stacks: 200, each: 4, mixed: 4, fillers: 12, clean: true},
		{stacks: 40, each: 2, mixed: 3, fillers: 3}, {stacks: 800, each: 8, mixed: 4, fillers: 12, clean: true},
		{stacks: 120, each: 4, mixed: 3, fillers: 4}, {stacks: 400, each: 8, mixed: 4, fillers: 6},
	}
)

// better does a little more to find a cheaper plan, or to prove that there is none.
func (l *level) better(spent int) (used int) {
	if l.beaming == nil && l.proving >= l.turn && l.beams <= len(furtherOn) {
		if l.beams == 0 {
			second := secondBeam
			second.stacks = min(max(second.stacks, widest/max(1, l.first)), 4*second.stacks)
			second.effort = max(AtOnce-spent-lastOfOnce, secondLeast)
			l.beaming = l.beam(second)
		} else {
			l.beaming = l.beam(furtherOn[l.beams-1])
		}
		l.beams++
	}
	if l.beaming != nil {
		used, more := l.beaming()
		l.turn += used
		if !more {
			l.beaming = nil
		}
		return used
	}
	used, more := l.prove()
	l.proving += used
	l.done = !more
	return used
}

// Run spends about so much effort more; it reports whether anything is left to do. The first answer is
// given whatever it takes.
func (q *Search) Run(effort int) (more bool) {
	for target := q.spent + effort; q.spent < target || q.answer() == nil; {
		used, more := q.step()
		q.spent += used
		if !more {
			return false
		}
	}
	return true
}

// AtOnce spends what an answer at once takes: less where the cheapest is proven before.
func (q *Search) AtOnce() {
	proven := math.MaxInt // what had been spent when the cheapest was proven
	for q.spent < AtOnce && q.spent-restOfFront <= proven {
		if !q.Run(min(onceSlice, AtOnce-q.spent)) {
			return
		}
		if q.proven() {
			proven = min(proven, q.spent)
		}
	}
}

// restOfFront is what an answer at once spends on the plans that cost more, once the cheapest is proven;
// onceSlice how often it looks whether it is.
const (
	restOfFront = 100_000
	onceSlice   = 4_000
)

// step does the next little piece of work.
func (q *Search) step() (used int, more bool) {
	for _, l := range q.levels {
		if len(l.quick) > 0 {
			used, more := l.quick[0]()
			if !more {
				l.quick = l.quick[1:]
			}
			return used, true
		}
		if l.s.found.least != nil {
			break // nobody needs to leave more limits
		}
	}
	for _, l := range q.levels {
		if !l.done {
			return l.better(q.spent), true
		}
		if l.s.found.least != nil {
			return l.allOf(q.ask)
		}
	}
	return 0, false
}

// mostLabels bounds what the search for every plan keeps in hand.
const mostLabels = 500_000

// tiesEffort bounds the search for plans of the same cost.
const tiesEffort = 60_000

// allOf looks for plans as cheap as the first that come before it by the rule of equal figures, and then for
// the plans that cost more and yet no other beats.
func (l *level) allOf(a Ask) (used int, more bool) {
	if l.all {
		return 0, false
	}
	if l.ties == nil {
		t, _ := setUp(a, l.relaxed)
		t.found, t.effort = l.s.found, math.MaxInt
		l.ties = newTree(t)
		l.ties.take, l.ties.worth = l.ties.queued, func() float64 { return t.found.least.cost + 3*hair }
		l.ties.begin()
	}
	if l.tied < tiesEffort && len(l.ties.queue) > 0 {
		before := l.ties.s.effort
		l.ties.step()
		l.tied += before - l.ties.s.effort + 1
		return before - l.ties.s.effort + 1, true
	}
	if l.wide == nil {
		l.wide, _ = setUp(a, l.relaxed)
		l.wide.found, l.wide.effort = l.s.found, math.MaxInt
		l.wide.seed()
	}
	before := l.wide.effort
	if l.wide.step() {
		return before - l.wide.effort + 1, l.wide.kept < mostLabels
	}
	l.all = true
	return before - l.wide.effort + 1, false
}

// answer is the level whose plans are the answer so far.
func (q *Search) answer() *level {
	for _, l := range q.levels {
		if l.s.found.least != nil {
			return l
		}
	}
	return nil
}

// Spent is the effort so far.
func (q *Search) Spent() int { return q.spent }

// Finds counts what was found so far: where it has grown, Plans may give others than before.
func (q *Search) Finds() (n int) {
	for _, l := range q.levels {
		n += l.s.found.finds
	}
	return n
}

// Reach is how far a search has come.
type Reach struct {
	Relaxed Relaxed    // what its plans leave
	Least   unit.Ratio // no plan that leaves no more costs less, as far as is known
	Proven  bool       // none costs less than the first, nor leaves fewer limits
	All     bool       // nor is any left out that no other beats
}

// Reach says how far the search has come; false where it has no plan.
func (q *Search) Reach() (Reach, bool) {
	l := q.answer()
	if l == nil {
		return Reach{}, false
	}
	least, open := l.least()
	proven := !open && q.none(l.relaxed)
	return Reach{Relaxed: l.relaxed, Least: unit.Ratio(least), Proven: proven, All: proven && l.all}, true
}

// Plans is every plan worth having that has been found so far, best first; where no plan keeps every
// limit, the one that leaves the fewest and costs least.
func (q *Search) Plans() []Plan {
	for _, l := range q.levels {
		if l.s.found.least == nil {
			continue
		}
		least, _ := l.least()
		out := l.s.plans(l.relaxed, l.all)
		for i := range out {
			out[i].Least = unit.Ratio(least)
		}
		out[0].Proven = q.proven()
		if l.relaxed != Keeps {
			out = out[:1]
		}
		return out
	}
	return nil
}

// proven reports whether no plan is cheaper than the first, nor leaves fewer limits.
func (q *Search) proven() bool {
	l := q.answer()
	if l == nil {
		return false
	}
	_, open := l.least()
	return !open && q.none(l.relaxed)
}

// none reports whether it is certain that no plan keeps more limits.
func (q *Search) none(relaxed Relaxed) bool {
	for _, l := range q.levels {
		if l.relaxed < relaxed && !l.done {
			return false
		}
	}
	return true
}

// least is a bound for the cost of every plan; open says that one below the best known is not ruled out.
func (l *level) least() (least float64, open bool) {
	if least, open = l.tree.bound(); open {
		return least, true
	}
	return l.s.found.least.cost, false
}
