package plan

import (
	"math"
	"slices"
	"testing"
)

// orders calls f with every order of 0 to n − 1.
func orders(n int, f func([]int)) {
	order := make([]int, 0, n)
	var next func()
	next = func() {
		if len(order) == n {
			f(order)
			return
		}
		for i := range n {
			if !slices.Contains(order, i) {
				order = append(order, i)
				next()
				order = order[:len(order)-1]
			}
		}
	}
	next()
}

// Whatever order they come in, stacks leave the queue by what they come to at least; of equal ones that of more layers first, of those
// the one that was met first. All 5,040 orders of seven.
func TestQueueInEveryOrder(t *testing.T) {
	all := []*stack{
		{label: &label{layers: 1}, least: 1, at: 5}, {label: &label{layers: 3}, least: 2, at: 1}, {label: &label{layers: 3}, least: 2,
			at: 4},
		{label: &label{layers: 2}, least: 2, at: 0}, {label: &label{layers: 9}, least: 3, at: 2}, {label: &label{layers: 1}, least: 4,
			at: 3},
		{label: &label{layers: 0}, least: 4, at: 6},
	}
	orders(len(all), func(order []int) {
		var q stacks
		for k, i := range order {
			q.push(all[i])
			if len(q) != k+1 {
				t.Fatalf("%d in the queue, %d were put there", len(q), k+1)
			}
			if first := slices.Min(order[:k+1]); q[0] != all[first] {
				t.Fatalf("%v: %+v is first of %v", order, q[0], order[:k+1])
			}
		}
		for i := range all {
			if got := q.pop(); got != all[i] || len(q) != len(all)-1-i {
				t.Fatalf("%v: %+v leaves at place %d, %d are left", order, got, i, len(q))
			}
		}
	})
}

// What has no room in the queue is the dearest half; the cheapest of it is a bound from then on, and a dearer one later on is none.
func TestQueueThatIsFull(t *testing.T) {
	s := newStacking(Ask{Sizes: []Size{{D: 1, N: 3}}, Rules: shop})
	s.now = &node{n: []int{1}}
	tr := newTree(s)
	tr.worth = func() float64 { return 1e9 }
	on := &label{}
	fill := func(from, step float64) {
		tr.queue = tr.queue[:0]
		for i := range mostStacks {
			tr.queue = append(tr.queue, &stack{label: on, least: from + step*float64(mostStacks-i), at: i})
		}
	}
	fill(1000, 1)
	tr.queued(on, 1000.5)
	// 1,001 to 101,000 were there: the first 50,000 stay, and 51,001 is the first that goes.
	if len(tr.queue) != mostStacks/2+1 || tr.lost != 51_001 || tr.queue[0].least != 1000.5 || tr.queue[0].n[0] != 1 {
		t.Fatalf("%d stay, %v is left out, %v is the first", len(tr.queue), tr.lost, tr.queue[0].least)
	}
	for _, o := range tr.queue {
		if o.least > 51_000 {
			t.Fatalf("%v stays", o.least)
		}
	}
	if least, open := tr.bound(); !open || least != 1000.5 {
		t.Errorf("at least %v, open %v", least, open)
	}
	fill(200_000, 1)
	tr.queued(on, 1)
	if tr.lost != 51_001 {
		t.Errorf("%v is left out, 51,001 was before", tr.lost)
	}
	fill(0, 0.5)
	tr.queued(on, 1)
	if tr.lost != 25_000.5 { // the 50,001st half
		t.Errorf("%v is left out of halves", tr.lost)
	}
}

// A bound is the first of the queue or what was left out, whichever is less, and none where the best plan costs no more.
func TestBoundOfAQueue(t *testing.T) {
	of := func(least float64) stacks { return stacks{{label: &label{}, least: least}} }
	for _, c := range []struct {
		name        string
		queue       stacks
		lost, worth float64
		least       float64
		open        bool
	}{
		{"nothing left", nil, 0, 9, 0, false},
		{"one in the queue", of(5), 0, 9, 5, true},
		{"one as dear as the best", of(9), 0, 9, 9, false},
		{"one a hair below the best", of(9 - 1e-10), 0, 9, 9 - 1e-10, false},
		{"what was left out is less", of(5), 4, 9, 4, true},
		{"what was left out is more", of(5), 6, 9, 5, true},
		{"only what was left out", nil, 6, 9, 6, true},
		{"left out, and dearer than the best", nil, 12, 9, 12, false},
		{"no plan yet", of(5), 0, math.Inf(1), 5, true},
	} {
		tr := &tree{queue: c.queue, lost: c.lost, worth: func() float64 { return c.worth }}
		if least, open := tr.bound(); least != c.least || open != c.open {
			t.Errorf("%s: at least %v, open %v", c.name, least, open)
		}
	}
}

// A queue whose first cannot become cheaper than the best is given up whole.
func TestQueueIsGivenUp(t *testing.T) {
	tr := &tree{queue: stacks{{label: &label{}, least: 9}, {label: &label{}, least: 10}}, worth: func() float64 { return 9 }}
	if tr.step() || tr.queue != nil {
		t.Errorf("%d are left", len(tr.queue))
	}
	if tr.step() {
		t.Error("there is more to do in an empty queue")
	}
}

// What is handed out is empty and nobody else's, one by one and by the piece.
func TestShelf(t *testing.T) {
	for _, piece := range []int{0, 1, 3, 128} {
		h := shelf{piece: piece}
		var counts [][]int
		labels, stacks := map[*label]bool{}, map[*stack]bool{}
		for k := range 300 {
			l, o := h.label(), h.stack()
			if labels[l] || stacks[o] || l.layers != 0 || o.at != 0 {
				t.Fatalf("by %d: the %dth was handed out before", piece, k)
			}
			labels[l], stacks[o] = true, true
			l.layers, o.at = k+1, k+1
			c := h.ints(k % 7)
			if len(c) != k%7 || cap(c) != len(c) || slices.ContainsFunc(c, func(n int) bool { return n != 0 }) {
				t.Fatalf("by %d: %v of %d, want %d noughts", piece, c, cap(c), k%7)
			}
			for i := range c {
				c[i] = k + 1
			}
			counts = append(counts, c)
		}
		for k, c := range counts {
			for _, n := range c {
				if n != k+1 {
					t.Fatalf("by %d: counts of %d were written by %d", piece, k+1, n)
				}
			}
		}
	}
}
