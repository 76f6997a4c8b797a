package bundle_test

import (
	"cmp"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
)

// wandering is a drawn tree of breakouts and terminations, with splices, whose wires run from
// any end to any other.
func wandering(r *rand.Rand) string {
	var b strings.Builder
	b.WriteString("format = 1\n[harness]\n")
	var branches, ends []string
	joints, terms := 2+r.IntN(5), 3+r.IntN(5)
	for k := range joints {
		fmt.Fprintf(&b, "[[breakout]]\nid = \"J%d\"\n[[splice]]\nid = \"S%d\"\nat = \"J%d\"\n", k, k, k)
		ends = append(ends, fmt.Sprintf("S%d", k))
		if k > 0 {
			branches = append(branches, fmt.Sprintf("from = \"J%d\"\nto = \"J%d\"", r.IntN(k), k))
		}
	}
	for k := range terms {
		fmt.Fprintf(&b, "[[termination]]\nid = \"P%d\"\ncavities = [\"a\", \"b\", \"c\"]\n", k)
		branches = append(branches, fmt.Sprintf("from = \"P%d\"\nto = \"J%d\"", k, r.IntN(joints)))
		for _, c := range []string{"c", "a", "b"} {
			ends = append(ends, fmt.Sprintf("P%d:%s", k, c))
		}
	}
	r.Shuffle(len(branches), func(i, j int) { branches[i], branches[j] = branches[j], branches[i] })
	for k, br := range branches {
		fmt.Fprintf(&b, "[[branch]]\nid = \"B%d\"\n%s\nlength_mm = 200.0\n", k, br)
	}
	for k := range 4 + r.IntN(20) {
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, ends[r.IntN(len(ends))],
			ends[r.IntN(len(ends))])
	}
	return b.String()
}

// spelled is the way of a wire beyond the to end of a branch in letters that sort as it should:
// branch by branch, then where it ends, then by its cavity.
func spelled(s *sheet.Sheet, i int, id string) (tail, whole string) {
	k := s.Index.Wire[id]
	w, path := &s.H.Wires[k], slices.Clone(s.Wires[k].Path)
	at, _, _ := s.Index.Places(w)
	last := w.To.V
	n := slices.Index(path, i)
	for _, b := range path[:n] {
		at = s.Index.Other(b, at)
	}
	if at != s.H.Branches[i].From { // it comes from beyond
		slices.Reverse(path)
		n, last = len(path)-1-n, w.From.V
	}
	for _, b := range path[n+1:] {
		tail += fmt.Sprintf("%05d.", b+1)
	}
	term, cavity, plugged := strings.Cut(last, ":")
	if !plugged {
		tail += fmt.Sprintf("%05d", s.Index.Splice[last])
		return tail, tail + "/"
	}
	t := s.Index.Termination[term]
	tail += fmt.Sprintf("%05d", 50000+t)
	return tail, tail + fmt.Sprintf("/%05d", slices.Index(s.Terms[t].Cavities, cavity)+1)
}

// The numbers that stand for the ways of a branch's wires sort them, and part them, as the ways
// themselves do when they are spelled out.
func TestRanksAgainstWays(t *testing.T) {
	compared := 0
	for seed := range uint64(60) {
		s := calctest.Built(t, wandering(rand.New(rand.NewPCG(seed, 3))))
		for i := range s.Branches {
			r := bundle.RanksOf(s, i)
			for _, a := range s.Branches[i].Components {
				for _, b := range s.Branches[i].Components {
					tailA, wholeA := spelled(s, i, a)
					tailB, wholeB := spelled(s, i, b)
					want := cmp.Or(cmp.Compare(tailA, tailB), cmp.Compare(wholeA, wholeB))
					if got := r.Way[a].Compare(r.Way[b]); got != want {
						t.Fatalf("seed %d, branch %d: %s against %s is %d, want %d (%s, %s)", seed, i, a, b, got, want, wholeA, wholeB)
					}
					if (r.Way[a].Tail == r.Way[b].Tail) != (tailA == tailB) {
						t.Fatalf("seed %d, branch %d: %s and %s part otherwise than %s and %s", seed, i, a, b, tailA, tailB)
					}
					compared++
				}
			}
		}
	}
	if compared < 1000 {
		t.Errorf("only %d pairs were compared", compared)
	}
}
