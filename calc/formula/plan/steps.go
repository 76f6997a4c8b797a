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
	beams   []stage   // what betters it
	prove   stage     // what proves it
	spent   int       // on proving
	turn    int       // what is spent on proving before the next beam
	beaming int       // spent on the beam in hand
	tree    *tree
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
	another := func() *stacking {
		t, _ := setUp(a, relaxed)
		t.found = s.found
		return t
	}
	l.tree = newTree(s)
	l.tree.take, l.tree.worth = l.tree.queued, worth
	l.quick = append(l.quick, counted(s, func() bool { l.tree.begin(); return false }))
	l.quick = append(l.quick, func() (int, bool) {
		t := another()
		t.blocks, t.width, t.inner, t.effort = true, 1, 0, math.MaxInt
		t.inLine()
		t.run()
		return math.MaxInt - t.effort, false
	})
	for _, b := range beams {
		t := another()
		l.beams = append(l.beams, counted(t, beamOf(t, b, worth)))
	}
	l.quick, l.beams = append(l.quick, l.beams[0]), l.beams[1:]
	l.prove = counted(s, l.tree.step)
	return l
}

// firstTurn is the effort that the exact method has before the second beam.
const firstTurn = 60_000

// beams are the quick method with more and more room, each after the exact one has had as much effort as
// the one before.
var beams = []struct{ width, mixed, fillers int }{{4, 2, 1}, {16, 2, 2}, {50, 3, 3}, {150, 3, 4}, {500, 4, 6}}

func beamOf(s *stacking, of struct{ width, mixed, fillers int }, worth func() float64) func() bool {
	b := newBeam(s, of.width, of.mixed, of.fillers)
	b.worth = worth
	begun := false
	return func() bool {
		if !begun {
			begun = true
			b.begin()
		}
		return b.step()
	}
}

// better does a little more to find a cheaper plan, or to prove that there is none.
func (l *level) better() (used int) {
	if len(l.beams) > 0 && l.spent > l.turn {
		used, more := l.beams[0]()
		l.beaming += used
		if !more {
			l.beams = l.beams[1:]
			l.turn, l.beaming = l.spent+l.beaming, 0
		}
		return used
	}
	used, more := l.prove()
	l.spent += used
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
			return l.better(), true
		}
		if l.s.found.least != nil {
			return l.allOf(q.ask)
		}
	}
	return 0, false
}

// mostLabels bounds what the search for every plan keeps in hand.
const mostLabels = 500_000

// allOf looks for the plans that cost more and yet no other beats.
func (l *level) allOf(a Ask) (used int, more bool) {
	if l.all {
		return 0, false
	}
	if l.wide == nil {
		l.wide, _ = setUp(a, l.relaxed)
		l.wide.found, l.wide.width, l.wide.effort = l.s.found, math.MaxInt, math.MaxInt
		l.wide.seed()
	}
	before := l.wide.effort
	if l.wide.step() {
		return before - l.wide.effort + 1, l.wide.kept < mostLabels
	}
	l.all = true
	return before - l.wide.effort, false
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

// Plans is every plan worth having that has been found so far, best first; where no plan keeps every
// limit, the one that leaves the fewest and costs least.
func (q *Search) Plans() []Plan {
	for _, l := range q.levels {
		if l.s.found.least == nil {
			continue
		}
		least, open := l.least()
		out := l.s.plans(l.relaxed, l.all)
		for i := range out {
			out[i].Least = unit.Ratio(least)
		}
		out[0].Proven = !open && q.none(l.relaxed)
		if l.relaxed != Keeps {
			out = out[:1]
		}
		return out
	}
	return nil
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
