package hue

import (
	"fmt"
	"slices"
)

// Ask is what is to be coloured.
type Ask struct {
	Wires   int
	Colours int // in the stock; the first is taken first
	// Lacking is how many colours more are made up, behind those of the stock: a wire that is
	// given one of them gets none in truth, and is no tracer.
	Lacking int
	Apart   [][2]int // wires that must differ
	Barred  [][]int  // by wire: the colours that it must not have
	Rings   []Ring
}

// Ring is a layer: the wires of it that are to be coloured, and what colours of the stock the
// other pieces have.
type Ring struct {
	Wires []int
	Once  []int // that exactly one of the others has: it is the tracer where no wire gets that colour too
	Often []int // that several have
}

// Answer is a colour for each wire.
type Answer struct {
	Colours []int
	Found   bool
	Spent   bool // the steps ran out: where none was found there may be one
}

// Solve gives every wire a colour, in at most so many steps. The same question always has the
// same answer.
func Solve(a Ask, steps int) Answer {
	s := open(a, steps)
	found := s.ready && (s.inOrder() || s.rings(0))
	out := Answer{Found: found, Spent: s.steps < 0}
	if found {
		out.Colours = slices.Clone(s.got)
	}
	return out
}

// Holds reports whether colours are an answer: no two wires that must differ are alike, none has
// a colour that is barred to it, and every ring has its tracer.
func (a Ask) Holds(colours []int) bool {
	for _, p := range a.Apart {
		if colours[p[0]] == colours[p[1]] {
			return false
		}
	}
	for w, barred := range a.Barred {
		if slices.Contains(barred, colours[w]) {
			return false
		}
	}
	return !slices.ContainsFunc(a.Rings, func(r Ring) bool { return !r.traced(colours, a.Colours) })
}

// traced reports whether one piece of a ring has a colour that no other has.
func (r Ring) traced(colours []int, stock int) bool {
	has := make([]int, stock)
	for _, c := range r.Once {
		has[c]++
	}
	for _, c := range r.Often {
		has[c] += 2
	}
	for _, w := range r.Wires {
		if colours[w] < stock {
			has[colours[w]]++
		}
	}
	return slices.Contains(has, 1)
}

// search goes through the colourings: first it takes a tracer for each ring, then it gives the
// wire that has the fewest colours left its first, and goes back where one has none left.
//
// Once the tracers are taken it first tries to colour the rest in one go, see swaps.
//
// Colours that nothing tells apart yet (kin) are as good as each other: only the first of them is
// tried.
type search struct {
	ask   Ask
	order []Ring
	next  [][]int // by wire, those that must differ from it
	bar   [][]int // by wire and colour, how many reasons forbid it
	left  []int   // by wire, how many colours are not forbidden
	got   []int   // by wire; −1 none yet
	kin   []int   // by colour, which are told apart by nothing that is given
	named []int   // by colour, how many decisions name it
	trail []step
	steps int
	ready bool
}

// step is one thing that a decision did; colour −1 where it gave the wire its colour.
type step struct{ wire, colour int }

const none = -1

func open(a Ask, steps int) *search {
	all := a.Colours + a.Lacking
	s := &search{ask: a, steps: steps, next: make([][]int, a.Wires), bar: make([][]int, a.Wires), left: make([]int, a.Wires),
		got: make([]int, a.Wires), kin: make([]int, all), named: make([]int, all), ready: true}
	for w := range a.Wires {
		s.bar[w], s.left[w], s.got[w] = make([]int, all), all, none
	}
	for _, p := range a.Apart {
		s.ready = s.ready && p[0] != p[1]
		s.next[p[0]], s.next[p[1]] = append(s.next[p[0]], p[1]), append(s.next[p[1]], p[0])
	}
	for w, barred := range a.Barred {
		for _, c := range barred {
			s.forbid(w, c)
		}
	}
	for w := range a.Wires {
		s.ready = s.ready && s.left[w] > 0
	}
	s.order = slices.Clone(a.Rings)
	slices.SortStableFunc(s.order, func(x, y Ring) int { return len(x.Wires) - len(y.Wires) })
	s.kindred()
	return s
}

// kindred numbers the colours so that two have one number where nothing that is given tells them
// apart.
func (s *search) kindred() {
	known := map[string]int{}
	for c := range s.kin {
		sign := fmt.Sprint(c < s.ask.Colours)
		for w := range s.bar {
			if s.bar[w][c] > 0 {
				sign += fmt.Sprint(" w", w)
			}
		}
		for k, r := range s.ask.Rings {
			if slices.Contains(r.Once, c) {
				sign += fmt.Sprint(" o", k)
			}
			if slices.Contains(r.Often, c) {
				sign += fmt.Sprint(" m", k)
			}
		}
		if _, is := known[sign]; !is {
			known[sign] = len(known)
		}
		s.kin[c] = known[sign]
	}
}

// forbid bars a colour from a wire; false where the wire has none left then, or has that one.
func (s *search) forbid(w, c int) bool {
	s.trail = append(s.trail, step{w, c})
	s.bar[w][c]++
	if s.bar[w][c] > 1 {
		return s.got[w] != c
	}
	s.left[w]--
	return s.got[w] != c && (s.got[w] != none || s.left[w] > 0)
}

// give gives a wire a colour and bars it from those that must differ.
func (s *search) give(w, c int) bool {
	s.got[w] = c
	s.trail = append(s.trail, step{w, none})
	fits := true
	for _, x := range s.next[w] {
		fits = s.forbid(x, c) && fits
	}
	return fits
}

// back takes back what was done since a mark.
func (s *search) back(mark int) {
	for len(s.trail) > mark {
		t := s.trail[len(s.trail)-1]
		s.trail = s.trail[:len(s.trail)-1]
		if t.colour == none {
			s.got[t.wire] = none
		} else if s.bar[t.wire][t.colour]--; s.bar[t.wire][t.colour] == 0 {
			s.left[t.wire]++
		}
	}
}

// try does a decision about a colour, goes on, and takes it back where that leads nowhere.
func (s *search) try(c int, do func() bool, on func() bool) bool {
	if s.steps--; s.steps < 0 {
		return false
	}
	mark := len(s.trail)
	s.named[c]++
	if do() && on() {
		return true
	}
	s.named[c]--
	s.back(mark)
	return false
}

// inOrder gives each wire, one after the other, its first free colour. Where that happens to be an
// answer it is the one that reads best.
func (s *search) inOrder() bool {
	got, own := append([]int(nil), s.got...), s.ownBars()
	for w := range got {
		if got[w] = s.firstFree(got, own, w); got[w] == none {
			return false
		}
	}
	if !s.ask.Holds(got) {
		return false
	}
	copy(s.got, got)
	return true
}

// rings takes a tracer for each ring from the k-th on, then colours the rest.
func (s *search) rings(k int) bool {
	if k == len(s.order) {
		return s.swaps() || s.wires()
	}
	r := s.order[k]
	on := func() bool { return s.rings(k + 1) }
	bars := func(c, but int) bool {
		fits := true
		for _, x := range r.Wires {
			if x != but {
				fits = s.forbid(x, c) && fits
			}
		}
		return fits
	}
	for _, c := range r.Once {
		if s.try(c, func() bool { return bars(c, none) }, on) {
			return true
		}
	}
	for _, w := range r.Wires {
		tried := map[int]bool{}
		for c := range s.ask.Colours {
			has := s.got[w] == c
			if !has && (s.got[w] != none || s.bar[w][c] > 0 || s.tried(c, tried)) || slices.Contains(r.Once, c) ||
				slices.Contains(r.Often, c) {
				continue
			}
			if s.try(c, func() bool { return (has || s.give(w, c)) && bars(c, w) }, on) {
				return true
			}
		}
	}
	return false
}

// tried reports whether a colour as good as this one was tried already, and remembers this one.
func (s *search) tried(c int, kin map[int]bool) bool {
	if s.named[c] > 0 {
		return false
	}
	was := kin[s.kin[c]]
	kin[s.kin[c]] = true
	return was
}

// wires colours what is left, the wire with the fewest colours left first.
func (s *search) wires() bool {
	w := none
	for x := range s.got {
		if s.got[x] == none && (w == none || s.left[x] < s.left[w]) {
			w = x
		}
	}
	if w == none {
		return true
	}
	tried := map[int]bool{}
	for c := range s.bar[w] {
		if s.bar[w][c] > 0 || s.tried(c, tried) {
			continue
		}
		if s.try(c, func() bool { return s.give(w, c) }, s.wires) {
			return true
		}
	}
	return false
}
