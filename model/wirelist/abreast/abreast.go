// Package abreast does work on many rows on all processors at once, where what is done with one row asks nothing of another. Whoever calls
// it keeps what each stretch finds apart and enters it in the order of the rows, so that nothing shows how many processors there are.
package abreast

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// least is how many rows are worth another processor: fewer are done before it is awake (no source).
const least = 24

// Rows calls do for stretches that together are n rows, each from one row up to another that is not of it, several stretches at once.
func Rows(n int, do func(from, to int)) {
	workers := min(runtime.GOMAXPROCS(0), n/least)
	if workers < 2 {
		if n > 0 {
			do(0, n)
		}
		return
	}
	const each = 4 // stretches of one worker: who is held up leaves the rest of its rows to others (no source)
	size := max(least, (n+each*workers-1)/(each*workers))
	var next atomic.Int64
	work := func() {
		for {
			to := int(next.Add(int64(size)))
			from := to - size
			if from >= n {
				return
			}
			do(from, min(to, n))
		}
	}
	var others sync.WaitGroup
	for range workers - 1 {
		others.Go(work)
	}
	work()
	others.Wait()
}

// Each gives what is made of each of n rows, in their order.
func Each[T any](n int, of func(i int) T) []T {
	all := make([]T, n)
	Rows(n, func(from, to int) {
		for i := from; i < to; i++ {
			all[i] = of(i)
		}
	})
	return all
}

// Any reports whether something is so of one of n rows or more.
func Any(n int, is func(i int) bool) bool {
	var found atomic.Bool
	Rows(n, func(from, to int) {
		for i := from; i < to && !found.Load(); i++ {
			if is(i) {
				found.Store(true)
			}
		}
	})
	return found.Load()
}

// Both does two things with some rows that ask nothing of each other.
func Both(rows int, one, other func()) {
	if rows < 2*least || runtime.GOMAXPROCS(0) < 2 {
		one()
		other()
		return
	}
	var side sync.WaitGroup
	side.Go(other)
	one()
	side.Wait()
}
