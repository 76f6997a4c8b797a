package outline

import (
	"cmp"
	"slices"

	"contralay/model/unit"
)

// Tree is what is to be laid flat.
type Tree struct {
	Places int
	Runs   []Run           // none closes a loop, and none runs from a place to itself
	Datum  int             // the place to start from; -1: the end of the longest way that comes first
	Room   unit.Millimetre // what runs keep from each other where that can be had
}

// Plan is a tree laid flat.
type Plan struct {
	Places  []Point       // (0, 0) where no run leads
	Lines   []Line        // of each run, from its From to its To
	Near    []int         // of each run, the place nearer the datum
	Turns   []unit.Degree // how each run leaves its near end
	Datum   int           // where it starts; -1 in a tree without runs
	Cross   [][2]int
	Trouble []Trouble
	Fanned  bool // angles did not keep the runs apart, and sectors do
}

// layout is a tree on its way to the board.
type layout struct {
	Tree
	meet    [][]int           // runs at each place
	near    []int             // near end of each run; -1 before it is reached
	deep    []unit.Millimetre // of each run, the longest way from its near end outward
	shapes  []Line            // of each run from its near end, at (0, 0) along x
	turns   []unit.Degree
	side    []unit.Degree // of each run, the side that it would leave to: 1 or -1
	leaves  []int         // ends beyond each run
	order   [][]int       // of each place, the runs that leave it outward, the longest way first
	told    bool          // some run is told how to leave or bends on its way
	tests   int
	crowded bool
}

// mostRuns is the most for which angles are looked for: building stiff pieces of them costs the square
// of their number.
const mostRuns = 800

// mostTests bounds the work of finding angles: two segments against each other, so many times.
// Above it sectors are taken, which need none. It is some tenths of a second.
const mostTests = 60_000_000

// Lay lays a tree flat.
func Lay(t Tree) Plan {
	l := &layout{Tree: t, meet: make([][]int, t.Places), near: make([]int, len(t.Runs)), deep: make([]unit.Millimetre, len(t.Runs)),
		shapes: make([]Line, len(t.Runs)), turns: make([]unit.Degree, len(t.Runs)), side: make([]unit.Degree, len(t.Runs)),
		leaves: make([]int, len(t.Runs)), order: make([][]int, t.Places)}
	p := Plan{Places: make([]Point, t.Places), Lines: make([]Line, len(t.Runs)), Near: l.near, Turns: make([]unit.Degree, len(t.Runs)),
		Datum: -1}
	forward := make([]Line, len(t.Runs))
	for i, r := range t.Runs {
		l.meet[r.From], l.meet[r.To] = append(l.meet[r.From], i), append(l.meet[r.To], i)
		l.near[i] = -1
		l.told = l.told || r.Told || len(r.Bends) > 0
		var said []Trouble
		forward[i], said = r.shape(i)
		p.Trouble = append(p.Trouble, said...)
	}
	l.crowded = len(t.Runs) > mostRuns
	roots := l.roots()
	for _, root := range roots {
		l.outward(root, forward)
	}
	var below unit.Millimetre
	for n, root := range roots {
		if n == 0 {
			p.Datum = root
		}
		angles := l.root(root)
		low, high := l.draw(&p, root, angles)
		if n > 0 { // a tree that hangs on nothing lies under the last one
			l.shift(&p, root, Point{0, below - high})
			low += below - high
		}
		below = low - max(l.Room, 100)
	}
	for i := range p.Lines {
		if l.near[i] == t.Runs[i].To {
			p.Lines[i] = p.Lines[i].Back()
		}
	}
	p.Cross = crossings(t, p.Lines)
	p.Fanned = l.crowded
	return p
}

func (l *layout) other(run, place int) int {
	if l.Runs[run].From == place {
		return l.Runs[run].To
	}
	return l.Runs[run].From
}

// roots are the places to start from, one for each tree: the datum first.
func (l *layout) roots() []int {
	seen := make([]bool, l.Places)
	var out []int
	mark := func(root int) {
		out = append(out, root)
		l.each(root, func(place, _ int) { seen[place] = true })
	}
	if l.Datum >= 0 && l.Datum < l.Places && len(l.meet[l.Datum]) > 0 {
		mark(l.Datum)
	}
	for _, r := range l.Runs {
		if !seen[r.From] {
			a, _ := l.farthest(r.From)
			b, _ := l.farthest(a)
			mark(min(a, b))
		}
	}
	return out
}

// each visits the places that hang together with one, each with the run that it is reached by.
func (l *layout) each(root int, visit func(place, by int)) {
	type step struct{ place, by int }
	open := []step{{root, -1}}
	for len(open) > 0 {
		s := open[len(open)-1]
		open = open[:len(open)-1]
		visit(s.place, s.by)
		for _, k := range l.meet[s.place] {
			if k != s.by {
				open = append(open, step{l.other(k, s.place), k})
			}
		}
	}
}

// farthest is the place that the longest way from one leads to, the first of several.
func (l *layout) farthest(from int) (place int, far unit.Millimetre) {
	at := map[int]unit.Millimetre{from: 0}
	place = from
	l.each(from, func(p, by int) {
		if by >= 0 {
			at[p] = at[l.other(by, p)] + l.Runs[by].Length + l.Runs[by].Out
		}
		if at[p] > far || at[p] == far && p < place {
			place, far = p, at[p]
		}
	})
	return place, far
}

// outward finds near ends, depths, sides and the order of what leaves each place.
func (l *layout) outward(root int, forward []Line) {
	var reached []int // runs, each after those nearer the datum
	l.each(root, func(place, by int) {
		if by < 0 {
			return
		}
		l.near[by] = l.other(by, place)
		l.shapes[by] = forward[by]
		if l.near[by] == l.Runs[by].To {
			l.shapes[by] = forward[by].Back().fromStart()
		}
		l.order[l.near[by]] = append(l.order[l.near[by]], by)
		reached = append(reached, by)
	})
	for n := len(reached) - 1; n >= 0; n-- {
		i := reached[n]
		beyond, ends := unit.Millimetre(0), 0
		for _, k := range l.order[l.other(i, l.near[i])] {
			beyond, ends = max(beyond, l.deep[k]), ends+l.leaves[k]
		}
		l.deep[i], l.leaves[i] = l.Runs[i].Length+l.Runs[i].Out+beyond, max(1, ends)
	}
	for place := range l.order {
		slices.SortStableFunc(l.order[place], func(a, b int) int {
			return cmp.Or(cmp.Compare(l.deep[b], l.deep[a]), cmp.Compare(a, b))
		})
	}
	// Along what goes straight on, side ways leave to the left and to the right in turn.
	next := map[int]unit.Degree{root: 1} // of each place, the side of its first side way
	open := []int{root}
	for len(open) > 0 {
		place := open[0]
		open = open[1:]
		side := next[place]
		for n, k := range l.order[place] {
			to := l.other(k, place)
			next[to] = 1
			if n > 0 {
				l.side[k] = side
				side = -side
			}
			open = append(open, to)
		}
		if len(l.order[place]) > 0 {
			next[l.other(l.order[place][0], place)] = side
		}
	}
}

// draw draws a tree from its root, and gives how low and how high it comes.
func (l *layout) draw(p *Plan, root int, first func(run int) unit.Degree) (low, high unit.Millimetre) {
	type step struct {
		place   int
		heading unit.Degree
	}
	p.Places[root] = Point{}
	open := []step{{root, 0}}
	for len(open) > 0 {
		s := open[len(open)-1]
		open = open[:len(open)-1]
		for _, k := range l.order[s.place] {
			turn := l.turns[k]
			if s.place == root {
				turn = first(k)
			}
			p.Turns[k] = turn
			line := l.shapes[k].moved(p.Places[s.place], s.heading+turn)
			p.Lines[k] = line
			for _, at := range line.Points(1) {
				low, high = min(low, at.Y), max(high, at.Y)
			}
			end, heading := line.At(line.Length())
			if last := line[len(line)-1]; last.Length == 0 {
				heading = last.Heading
			}
			to := l.other(k, s.place)
			p.Places[to] = end
			open = append(open, step{to, heading})
		}
	}
	return low, high
}

// shift moves a tree.
func (l *layout) shift(p *Plan, root int, by Point) {
	l.each(root, func(place, run int) {
		p.Places[place] = p.Places[place].Plus(by)
		if run >= 0 {
			for k := range p.Lines[run] {
				p.Lines[run][k].From = p.Lines[run][k].From.Plus(by)
			}
		}
	})
}
