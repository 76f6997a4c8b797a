package compare

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/unit"
	"contralay/model/wirelist"
)

// stretch is the way between two groups of terminations that both harnesses have: one
// branch, or several where only what the other does not have hangs between them.
type stretch struct {
	far   []string // the terminations beyond it, by common names
	mm    unit.Millimetre
	real  bool // it is more than the trunk of an import
	given bool // every length of it is: an import sets a stand-in where its list has none
}

// lengths compares the branches: one is the same in both where it parts the terminations
// that both have in the same way. A length that either does not give is not compared.
//
// The legs of an import carry the whole lengths of its list, a harness those of its branches:
// of the two nothing is compared.
func (c *comparer) lengths() {
	if whole(c.was.h) != whole(c.is.h) && len(c.was.h.Branches) > 1 && len(c.is.h.Branches) > 1 {
		return
	}
	was, _ := c.stretches(c.was)
	is, total := c.stretches(c.is)
	var keys []string
	for k := range was {
		if is[k] != nil {
			keys = append(keys, k)
		}
	}
	slices.SortFunc(keys, func(a, b string) int {
		if d := len(was[a].far) - len(was[b].far); d != 0 {
			return d
		}
		return strings.Compare(a, b)
	})
	const alike = 0.5 // mm: what is left of a length said in another unit
	for _, k := range keys {
		a, b := was[k], is[k]
		if !a.given || !b.given || !a.real || !b.real || math.Abs(float64(a.mm-b.mm)) <= alike {
			continue
		}
		to := "the others"
		switch {
		case total > 2 && len(a.far) == total-1:
			to = c.reference()
		case len(a.far) <= 3:
			to = strings.Join(a.far, ", ")
		default:
			to = fmt.Sprintf("%s and %d more", strings.Join(a.far[:2], ", "), len(a.far)-2)
		}
		c.say(Difference{Kind: Changed, Of: "branch", What: "length", Was: millimetres(a.mm), Is: millimetres(b.mm),
			Says: fmt.Sprintf("length to %s is %s, was %s", to, millimetres(b.mm), millimetres(a.mm))})
	}
}

func millimetres(mm unit.Millimetre) string {
	return wirelist.FormatLength(unit.Millimetre(math.Round(float64(mm)*10) / 10))
}

// reference is the termination of both that the branches are followed from: the first by
// name; "" where there is none.
func (c *comparer) reference() string {
	first := ""
	for name, both := range c.shared {
		if both && (first == "" || name < first) {
			first = name
		}
	}
	return first
}

// stretches follows the branches of a side from the reference. total is how many
// terminations of both it comes to.
func (c *comparer) stretches(s *side) (all map[string]*stretch, total int) {
	all = map[string]*stretch{}
	name := map[string]string{} // node → common name
	start := ""
	for i := range s.h.Terminations {
		if t := &s.h.Terminations[i]; c.shared[s.term[t.ID]] {
			name[t.ID] = s.term[t.ID]
			if s.term[t.ID] == c.reference() {
				start = t.ID
			}
		}
	}
	at := map[string][]*model.Branch{}
	for i := range s.h.Branches {
		b := &s.h.Branches[i]
		at[b.From], at[b.To] = append(at[b.From], b), append(at[b.To], b)
	}
	if start == "" {
		return all, 0
	}
	seen := map[string]bool{start: true}
	var walk func(node string) []string
	walk = func(node string) (far []string) {
		if n := name[node]; n != "" {
			far = append(far, n)
		}
		for _, b := range at[node] {
			next := b.To
			if next == node {
				next = b.From
			}
			if seen[next] {
				continue
			}
			seen[next] = true
			beyond := walk(next)
			far = append(far, beyond...)
			if len(beyond) == 0 {
				continue
			}
			slices.Sort(beyond)
			k := strings.Join(beyond, "\x00")
			if all[k] == nil {
				all[k] = &stretch{far: beyond, given: true}
			}
			if wirelist.IsStandIn(b) && b.ID == trunk {
				continue // the legs have it in their lengths
			}
			all[k].mm += b.LengthMM + lead(b, at)
			all[k].real = true
			all[k].given = all[k].given && !wirelist.IsStandIn(b)
		}
		return far
	}
	return all, len(walk(start))
}

// whole: some length is a stand-in, as that of the trunk of an import is.
func whole(h *model.Harness) bool {
	return slices.ContainsFunc(h.Branches, func(b model.Branch) bool { return wirelist.IsStandIn(&b) })
}

// trunk is the id of the branch that an import hangs its legs on.
const trunk = "T1"

// lead is the stand-in of the trunk that an import takes off the lengths of its list.
func lead(b *model.Branch, at map[string][]*model.Branch) (mm unit.Millimetre) {
	if wirelist.IsStandIn(b) {
		return 0
	}
	for _, node := range []string{b.From, b.To} {
		for _, o := range at[node] {
			if o != b && wirelist.IsStandIn(o) && o.ID == trunk {
				return o.LengthMM
			}
		}
	}
	return 0
}
