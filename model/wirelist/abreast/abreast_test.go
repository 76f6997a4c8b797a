package abreast_test

import (
	"slices"
	"testing"

	"contralay/model/wirelist/abreast"
)

// Every row is done once, in whatever stretches, and what is made of it is found in its place.
func TestRows(t *testing.T) {
	for _, n := range []int{0, 1, 23, 24, 47, 48, 49, 100, 1001} {
		times := make([]int, n)
		abreast.Rows(n, func(from, to int) {
			for i := from; i < to; i++ {
				times[i]++
			}
		})
		if slices.ContainsFunc(times, func(k int) bool { return k != 1 }) {
			t.Errorf("%d rows: %v", n, times)
		}
		for i, k := range abreast.Each(n, func(i int) int { return 2 * i }) {
			if k != 2*i {
				t.Fatalf("row %d of %d: %d", i, n, k)
			}
		}
		for _, of := range []int{0, n - 1, n} {
			if got := abreast.Any(n, func(i int) bool { return i == of }); got != (n > 0 && of < n) {
				t.Errorf("row %d of %d: %v", of, n, got)
			}
		}
	}
}

// Both things are done when it comes back.
func TestBoth(t *testing.T) {
	for _, rows := range []int{0, 1, 1000} {
		one, other := 0, 0
		abreast.Both(rows, func() { one++ }, func() { other++ })
		if one != 1 || other != 1 {
			t.Errorf("%d rows: %d and %d", rows, one, other)
		}
	}
}
