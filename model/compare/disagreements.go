package compare

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/compare/side"
)

// Disagreements is where a harness and a list that somebody else made of it do not
// join the same cavities: a cavity that only one of them wires, cavities that one
// joins and the other does not, nets that changed places. Then what the two say of the
// wire in one cavity: its name, where the harness and the list have each other's;
// colour and size where both give them and the cavity holds one wire.
//
// A connector that the list does not name is not its subject: it is not compared. Nor
// is a spare that the harness has and the list does not: a shop lays in what it likes.
func Disagreements(harness, independent model.Harness) []Difference {
	was, is := side.Both(&harness, &independent)
	j := netComparison{wires: comparer{was: was, is: is, fields: fieldsOf(&List{Harness: harness}, &List{Harness: independent}),
		first: List{Harness: harness}, second: List{Harness: independent}}}
	j.harnessNets, j.netAt = netsOf(was)
	j.listNets, j.listNetAt = netsOf(is)
	j.onlyInOne()
	j.match()
	j.swapped()
	j.joinedOtherwise()
	j.values()
	return j.wires.found
}

// netComparison is a comparison of nets on its way.
type netComparison struct {
	wires                 comparer
	harnessNets, listNets []*net
	netAt, listNetAt      map[string]*net // by cavity
	listNet               map[*net]*net   // net of the harness → net of the list
	harnessNet            map[*net]*net
	said                  map[string]bool // cavities
}

// onlyInOne says which cavities only one of the two wires, at connectors both know.
func (j *netComparison) onlyInOne() {
	j.said = map[string]bool{}
	known := func(of map[string]*net) map[string]bool {
		all := map[string]bool{}
		for c := range of {
			all[termination(c)] = true
		}
		return all
	}
	mine, theirs := known(j.netAt), known(j.listNetAt)
	for _, n := range j.harnessNets {
		for _, c := range n.cavities {
			if j.listNetAt[c] == nil && theirs[termination(c)] && n.working {
				j.said[c] = true
				j.wires.say(Difference{Kind: Added, Of: "cavity", Cavities: []string{c}, Is: n.name,
					Says: c + named(n) + " is wired, not in the list"})
			}
		}
	}
	for _, n := range j.listNets {
		for _, c := range n.cavities {
			if j.netAt[c] == nil && mine[termination(c)] {
				j.said[c] = true
				j.wires.say(Difference{Kind: Removed, Of: "cavity", Cavities: []string{c}, Was: n.name,
					Says: c + named(n) + " is in the list, not wired"})
			}
		}
	}
}

func named(n *net) string {
	if n.name == "" {
		return ""
	}
	return fmt.Sprintf(" %q", n.name)
}

// match finds for each net of the harness the one of the list that it is: that which
// shares most cavities, then that of the same name, then that with more of a small
// connector than of a large one (what is swapped is more often in the large one, no
// source).
func (j *netComparison) match() {
	size := map[string]int{}
	for c := range j.netAt {
		size[termination(c)]++
	}
	type fit struct {
		mine, theirs *net
		cavities     int // that both have
		shared       float64
		name         bool
	}
	var all []fit
	for _, n := range j.harnessNets {
		shared, count := map[*net]float64{}, map[*net]int{}
		var order []*net
		for _, c := range n.cavities {
			if o := j.listNetAt[c]; o != nil {
				if shared[o] == 0 {
					order = append(order, o)
				}
				count[o]++
				shared[o] += 1 + 1/float64(1+size[termination(c)])
			}
		}
		for _, o := range order {
			same := slices.ContainsFunc(n.signals, func(s string) bool { return slices.Contains(o.signals, s) })
			all = append(all, fit{n, o, count[o], shared[o], same})
		}
	}
	slices.SortStableFunc(all, func(a, b fit) int {
		names := 0
		if a.name != b.name {
			names = 1
			if a.name {
				names = -1
			}
		}
		return cmp.Or(-cmp.Compare(a.cavities, b.cavities), names, -cmp.Compare(a.shared, b.shared))
	})
	j.listNet, j.harnessNet = map[*net]*net{}, map[*net]*net{}
	for _, f := range all {
		if j.listNet[f.mine] == nil && j.harnessNet[f.theirs] == nil {
			j.listNet[f.mine], j.harnessNet[f.theirs] = f.theirs, f.mine
		}
	}
}

// strays is the cavities that the list has on another net, in the order of the harness.
func (j *netComparison) strays() []string {
	var all []string
	for _, n := range j.harnessNets {
		for _, c := range n.cavities {
			if o := j.listNetAt[c]; o != nil && o != j.listNet[n] && !j.said[c] {
				all = append(all, c)
			}
		}
	}
	return all
}

// swapped tells pairs of cavities, at one connector first, that have each other's net,
// and pairs of cavities whose nets, of one cavity each, have each other's name.
func (j *netComparison) swapped() {
	type way struct{ from, to *net } // nets of the list: where a stray should be, where it is
	strays := j.strays()
	of := map[way][]string{}
	for _, c := range strays {
		w := way{j.listNet[j.netAt[c]], j.listNetAt[c]}
		of[w] = append(of[w], c)
	}
	for _, one := range []bool{true, false} {
		for _, a := range strays {
			from, to := j.listNet[j.netAt[a]], j.listNetAt[a]
			if j.said[a] || from == nil {
				continue
			}
			for _, b := range of[way{to, from}] {
				if !j.said[b] && one == (termination(a) == termination(b)) {
					j.swap(a, b)
					break
				}
			}
		}
	}
	by := map[string][]string{} // plain signal of a net of the list → cavities
	for _, n := range j.listNets {
		for _, s := range n.signals {
			by[s] = append(by[s], n.cavities...)
		}
	}
	for _, n := range j.harnessNets {
		for _, a := range n.cavities {
			o := j.listNetAt[a]
			if o == nil || j.said[a] || slices.ContainsFunc(n.cavities, func(c string) bool { return j.said[c] }) || len(n.signals) == 0 ||
				len(o.signals) == 0 || o.signals[0] == n.signals[0] {
				continue
			}
			for _, b := range by[n.signals[0]] {
				m := j.netAt[b]
				if m != nil && b != a && !j.said[b] && termination(a) == termination(b) && len(m.signals) > 0 &&
					m.signals[0] == o.signals[0] {
					j.swap(a, b)
					break
				}
			}
		}
	}
}

func (j *netComparison) swap(a, b string) {
	j.said[a], j.said[b] = true, true
	says := fmt.Sprintf("%s and %s swapped", a, b)
	if termination(a) == termination(b) {
		says = fmt.Sprintf("%s and %s swapped at %s", cavity(a), cavity(b), termination(a))
	}
	if x, y := j.netAt[a], j.netAt[b]; x.name != "" && y.name != "" {
		says += fmt.Sprintf(" (%q and %q)", x.name, y.name)
	}
	j.wires.say(Difference{Kind: Swapped, Of: "net", Cavities: []string{a, b}, Says: says})
}

// joinedOtherwise says what else the list joins otherwise.
func (j *netComparison) joinedOtherwise() {
	for _, c := range j.strays() {
		mine, theirs := j.netAt[c], j.listNetAt[c]
		d := Difference{Kind: Moved, Of: "net", Cavities: []string{c}, Was: others(theirs, c), Is: others(mine, c)}
		d.Says = fmt.Sprintf("%s%s is joined to %s, in the list to %s", c, named(mine), d.Is, d.Was)
		j.said[c] = true
		j.wires.say(d)
	}
	// What the list leaves out of a net that it has: joined here, open there.
	for _, n := range j.harnessNets {
		o := j.listNet[n]
		if o == nil {
			continue
		}
		for _, c := range o.cavities {
			if j.netAt[c] != nil && j.netAt[c] != n && !j.said[c] {
				j.said[c] = true
				j.wires.say(Difference{Kind: Moved, Of: "net", Cavities: []string{c}, Was: others(o, c), Is: others(j.netAt[c], c),
					Says: fmt.Sprintf("%s%s is joined to %s, in the list to %s", c, named(j.netAt[c]), others(j.netAt[c], c),
						others(o, c))})
			}
		}
	}
}

// others is the rest of a net, "nothing" where there is none.
func others(n *net, but string) string {
	all := slices.DeleteFunc(slices.Clone(n.cavities), func(c string) bool { return c == but })
	if len(all) == 0 {
		return "nothing"
	}
	return strings.Join(all, ", ")
}

// values compares what both say of the one wire in a cavity: colour and size.
func (j *netComparison) values() {
	one := func(s *side.Side) map[string]*model.Wire {
		all, twice := map[string]*model.Wire{}, map[string]bool{}
		for i := range s.Harness.Wires {
			w := &s.Harness.Wires[i]
			for _, text := range []string{w.From.V, w.To.V} {
				if e, ok := s.Index.End(text); ok && e.Splice == "" {
					c := s.Cavity(e)
					twice[c] = all[c] != nil
					all[c] = w
				}
			}
		}
		maps.DeleteFunc(all, func(c string, _ *model.Wire) bool { return twice[c] })
		return all
	}
	mine, theirs := one(j.wires.was), one(j.wires.is)
	said := map[string]bool{}
	for _, n := range j.harnessNets {
		for _, c := range n.cavities {
			w, o := mine[c], theirs[c]
			if w == nil || o == nil || j.said[c] {
				continue
			}
			for _, f := range []change{{"colour", j.wires.second.Colour(o), j.wires.first.Colour(w)},
				{"size", catalogue.CanonicalSize(o.Size), catalogue.CanonicalSize(w.Size)}} {
				if f.was == f.is || j.wires.same(f.what, f.was, f.is) || f.was == "" || f.is == "" || said[w.ID+"\x00"+f.what] {
					continue
				}
				said[w.ID+"\x00"+f.what] = true // once, not at each end
				j.wires.say(Difference{Kind: Changed, Of: "wire", Wires: []string{w.ID}, Cavities: []string{c}, What: f.what, Was: f.was,
					Is:   f.is,
					Says: fmt.Sprintf("%s%s: %s is %s, in the list %s", c, named(n), f.what, f.is, f.was)})
			}
		}
	}
}
