package offer_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/offer"
)

// tree is a drawn tree of joints three deep and more, with ends and splices on every joint.
func tree(r *rand.Rand) string {
	var b strings.Builder
	b.WriteString("format = 1\n")
	joints := 3 + r.IntN(5)
	var branches []string
	for k := range joints {
		fmt.Fprintf(&b, "[[breakout]]\nid = \"J%d\"\n", k)
		if k > 0 {
			branches = append(branches, fmt.Sprintf("from = \"J%d\"\nto = \"J%d\"", max(0, k-1-r.IntN(2)), k))
		}
		if r.IntN(2) == 0 {
			fmt.Fprintf(&b, "[[splice]]\nid = \"S%d\"\nat = \"J%d\"\n", k, k)
		}
	}
	for k := range joints + 1 {
		fmt.Fprintf(&b, "[[termination]]\nid = \"P%d\"\ncavities = [\"1\", \"2\"]\n", k)
		branches = append(branches, fmt.Sprintf("from = \"J%d\"\nto = \"P%d\"", k%joints, k))
	}
	r.Shuffle(len(branches), func(i, j int) { branches[i], branches[j] = branches[j], branches[i] })
	for k, t := range branches {
		fmt.Fprintf(&b, "[[branch]]\nid = \"B%d\"\n%s\nlength_mm = 100.0\n", k, t)
	}
	return b.String()
}

// The bank beyond a branch is found a second time: all from which the way to its from end goes through its to end. That is so
// for each place
// that hangs together with the to end when the branch is taken out.
func TestBankByCutting(t *testing.T) {
	for seed := range uint64(40) {
		s := calctest.Built(t, tree(rand.New(rand.NewPCG(seed, 5))))
		for i := range s.H.Branches {
			side := map[string]string{} // by place, the one that stands for its part
			var part func(p string) string
			part = func(p string) string {
				if side[p] == "" || side[p] == p {
					return p
				}
				return part(side[p])
			}
			for k := range s.H.Branches {
				if k != i {
					side[part(s.H.Branches[k].From)] = part(s.H.Branches[k].To)
				}
			}
			beyond := part(s.H.Branches[i].To)
			var terms, splices []int
			for k := range s.H.Terminations {
				if part(s.H.Terminations[k].ID) == beyond {
					terms = append(terms, k)
				}
			}
			for k := range s.H.Splices {
				if part(s.H.Splices[k].At) == beyond {
					splices = append(splices, k)
				}
			}
			gotTerms, gotSplices := offer.Bank(s, i)
			if !slices.Equal(gotTerms, terms) || !slices.Equal(gotSplices, splices) {
				t.Fatalf("seed %d: beyond %s lie %v and %v, want %v and %v", seed, s.H.Branches[i].ID, gotTerms, gotSplices,
					terms, splices)
			}
		}
	}
}

// deep is two banks of two joints each, in a row; of the left one the far leg is wired, and a spare is folded at its far joint.
const deep = `format = 1
[[termination]]
id = "P"
cavities = ["1", "2", "3", "4", "5", "6", "7", "8"]
[[termination]]
id = "A1"
cavities = ["1", "2"]
[[termination]]
id = "A2"
cavities = ["1", "2"]
[[termination]]
id = "B1"
cavities = ["1", "2"]
[[termination]]
id = "B2"
cavities = ["1", "2"]
[[breakout]]
id = "J"
[[breakout]]
id = "JA"
[[breakout]]
id = "JAA"
[[breakout]]
id = "JB"
[[breakout]]
id = "JBB"
[[splice]]
id = "SA"
at = "JAA"
[[splice]]
id = "SB"
at = "JBB"
[[wire]]
id = "1"
signal = "One"
from = "P:1"
to = "A1:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "2"
from = "P:2"
to = "SA"
spec = "AS22759/32"
size = "20"
[[wire]]
id = "3"
from = "SA"
to = "A2:2"
spec = "AS22759/32"
size = "22"
return = "1"
[[wire]]
id = "4"
from = "A2:1"
capped_at = "JAA"
spec = "AS22759/32"
size = "22"
role = "spare"
[[branch]]
id = "T"
from = "P"
to = "J"
length_mm = 100
[[branch]]
id = "A"
from = "J"
to = "JA"
length_mm = 100
[[branch]]
id = "AA"
from = "JA"
to = "JAA"
length_mm = 100
[[branch]]
id = "LA1"
from = "JA"
to = "A1"
length_mm = 100
[[branch]]
id = "LA2"
from = "JAA"
to = "A2"
length_mm = 100
[[branch]]
id = "B"
from = "J"
to = "JB"
length_mm = 100
[[branch]]
id = "BB"
from = "JB"
to = "JBB"
length_mm = 100
[[branch]]
id = "LB1"
from = "JB"
to = "B1"
length_mm = 100
[[branch]]
id = "LB2"
from = "JBB"
to = "B2"
length_mm = 100
`

// A bank of two joints in a row is mirrored by hand: each wire to the like end, of the same size, from the next free cavities
// of the plug; onto
// the like splice; its return the copy of its return; its spare folded at the like joint, the second.
func TestMirroredTwoDeep(t *testing.T) {
	s := calctest.Built(t, deep)
	a, b := s.Index.Branch["A"], s.Index.Branch["B"]
	if got := offer.LikeBanks(s, b); !slices.Equal(got, []int{a}) {
		t.Errorf("like B are %v, want A, %d", got, a)
	}
	h, ids, err := offer.Mirrored(s, a, b)
	if err != nil || len(ids) != 4 {
		t.Fatalf("%v %v", ids, err)
	}
	id := map[string]string{"": ""}
	for k, was := range []string{"1", "2", "3", "4"} {
		id[was] = ids[k]
	}
	var got []string
	for k := len(s.H.Wires); k < len(h.Wires); k++ {
		w := &h.Wires[k]
		got = append(got, fmt.Sprintf("%s %s-%s %s %s return %q capped %q", w.ID, w.From.V, w.To.V, w.Size, w.Role.V,
			w.Return.V, w.CappedAt.V))
	}
	want := []string{id["1"] + ` P:3-B1:1 22  return "" capped ""`, id["2"] + ` P:4-SB 20  return "" capped ""`,
		id["3"] + fmt.Sprintf(` SB-B2:2 22  return %q capped ""`, id["1"]), id["4"] + ` B2:1- 22 spare return "" capped "JBB"`}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want\n%q", got, want)
	}
	for k := range s.H.Wires {
		if h.Wires[k].ID != s.H.Wires[k].ID || h.Wires[k].From != s.H.Wires[k].From || h.Wires[k].To != s.H.Wires[k].To {
			t.Errorf("wire %s was changed", s.H.Wires[k].ID)
		}
	}
}

// What cannot be repeated changes nothing and says why.
func TestRepeatedRefusals(t *testing.T) {
	s := calctest.Built(t, deep)
	term := func(id string) int { return s.Index.Termination[id] }
	for _, c := range []struct {
		what string
		do   func() (same bool, n int, err error)
		says string
	}{
		{"of nothing", func() (bool, int, error) {
			h, ids, err := offer.Repeated(s, term("B1"), term("B2"))
			return h == s.H, len(ids), err
		}, "there is no wire to repeat"},
		{"onto a bank of another kind", func() (bool, int, error) {
			h, ids, err := offer.Mirrored(s, s.Index.Branch["A"], s.Index.Branch["LB1"])
			return h == s.H, len(ids), err
		}, "the banks of A and LB1 are not alike"},
	} {
		same, n, err := c.do()
		if fmt.Sprint(err) != c.says || !same || n != 0 {
			t.Errorf("%s: %v, the harness is the same %v, %d wires", c.what, err, same, n)
		}
	}
}
