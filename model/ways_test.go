package model

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"
)

// scattered is several trees of so many branches each, whose places and directions are drawn.
func scattered(r *rand.Rand, trees, branches int) *Harness {
	h := &Harness{}
	for t := range trees {
		for k := 1; k <= branches; k++ {
			a, b := fmt.Sprintf("%d/%d", t, r.IntN(k)), fmt.Sprintf("%d/%d", t, k)
			if r.IntN(2) == 0 {
				a, b = b, a
			}
			h.Branches = append(h.Branches, Branch{ID: "b" + a + b, From: a, To: b})
		}
	}
	r.Shuffle(len(h.Branches), func(i, j int) { h.Branches[i], h.Branches[j] = h.Branches[j], h.Branches[i] })
	return h
}

// The way that is found by climbing is the one that is found by trying every branch.
func TestWaysAgree(t *testing.T) {
	for seed := range uint64(40) {
		r := rand.New(rand.NewPCG(seed, 1))
		h := scattered(r, 1+r.IntN(3), 1+r.IntN(12))
		x := NewIndex(h)
		if x.up == nil {
			t.Fatal("a tree counts as a loop")
		}
		var places []string
		for _, b := range h.Branches {
			places = append(places, b.From, b.To)
		}
		for _, a := range append(places, "nowhere") {
			for _, b := range append(places, "nowhere") {
				got, ok := x.Between(a, b)
				want, there := x.search(a, b)
				if ok != there || !slices.Equal(got, want) {
					t.Fatalf("seed %d, %s to %s: %v %v, want %v %v", seed, a, b, got, ok, want, there)
				}
			}
		}
	}
}

// Branches that close a loop, which no file that loads has, still give a way.
func TestWaysOfALoop(t *testing.T) {
	for _, two := range [][2]string{{"A", "C"}, {"A", "A"}, {"A", "B"}} {
		h := &Harness{Branches: []Branch{{From: "A", To: "B"}, {From: "B", To: "C"}, {From: two[0], To: two[1]}}}
		if path, ok := NewIndex(h).Between("A", "C"); !ok || len(path) == 0 {
			t.Errorf("loop %v: %v %v", two, path, ok)
		}
	}
}
