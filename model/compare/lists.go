package compare

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/model"
	"contralay/model/compare/side"
)

// List is a list with what its import reports, or a harness.
type List = side.List

// termination is the part of an end before its cavity; of a splice, itself.
func termination(end string) string {
	if i := strings.IndexByte(end, ':'); i >= 0 {
		return end[:i]
	}
	return end
}

// cavity is the part behind it.
func cavity(end string) string {
	if i := strings.IndexByte(end, ':'); i >= 0 {
		return end[i+1:]
	}
	return end
}

// Lists is every difference from a to b.
func Lists(a, b model.Harness) []Difference {
	r := Between(List{Harness: a}, List{Harness: b})
	return r.Differences
}

// Between is every difference from a to b: terminations with other names, swaps, moves, changes, what is
// gone and what is new of the wires, in the order of a; then cavities without wire, units, fuses,
// terminations and lengths. What both have a place for is compared where only one fills it; what is not
// compared the result names.
func Between(a, b List) Result {
	a.Harness, a.Report = Bare(a.Harness, a.Report)
	b.Harness, b.Report = Bare(b.Harness, b.Report)
	was, is := side.Revisions(&a, &b)
	c := comparer{was: was, is: is, first: a, second: b, fields: fieldsOf(&a, &b), shared: sharedBy(was, is), only: map[*side.Side]bool{}}
	// Of two lists one gives no far ends: of the other only what is at connectors of both is compared.
	if mine, theirs := oneEnded(was), oneEnded(is); mine != theirs {
		c.only[was], c.only[is] = theirs, mine
	}
	c.endless = map[*side.Side]bool{was: endless(was) && !endless(is), is: endless(is) && !endless(was)}
	c.notes()
	c.renamed()
	named := a.HasIDs() && b.HasIDs()
	pairs, gone, added := match(c.placed(was), c.placed(is), named)
	c.sameIDs = named && idsMean(pairs)
	c.pairs(pairs)
	c.sizeUnits(pairs)
	for _, s := range gone {
		c.say(Difference{Kind: Removed, Of: "wire", Wires: []string{s.wire.ID}, Cavities: s.list(), Says: c.called(s) + " removed"})
	}
	for _, s := range added {
		c.say(Difference{Kind: Added, Of: "wire", Wires: []string{s.wire.ID}, Cavities: s.list(), Says: c.called(s) + " added"})
	}
	c.others(pairs)
	return c.result(pairs)
}

// comparer is a comparison of two lists on its way.
type comparer struct {
	was, is       *side.Side
	first, second List
	fields        []field
	sameIDs       bool                           // the ids mean the same in both
	only          map[*side.Side]bool            // of this list only what is at connectors of both is compared
	endless       map[*side.Side]bool            // this list alone names no end of any wire
	shared        map[string]bool                // terminations of both, by common names
	left          map[*side.Side][]string        // wires that are not compared: no end of theirs is at a connector of both
	noted         bool                           // what people noted is compared
	lacks         map[*side.Side]map[string]bool // headings of kept columns that the other list does not have
	unsaidSpec    [2]bool                        // of a pair, only the other list says the specification
	apart         []Apart
	calls         []string
	found         []Difference
}

// files reports whether both are files of a harness.
func (c *comparer) files() bool { return c.first.Whole && c.second.Whole }

func (c *comparer) say(d Difference) { c.found = append(c.found, d) }

// oneEnded reports whether no wire has two ends: a pin table without a column of far ends.
func oneEnded(s *side.Side) bool {
	return len(s.Harness.Wires) > 0 && !slices.ContainsFunc(s.Harness.Wires, func(w model.Wire) bool {
		from, to := s.Ends(&w)
		return from != "" && to != ""
	})
}

// endless reports whether no wire has an end: a list of wires by their ids or signals.
func endless(s *side.Side) bool {
	return len(s.Harness.Wires) > 0 && !slices.ContainsFunc(s.Harness.Wires, func(w model.Wire) bool {
		from, to := s.Ends(&w)
		return from != "" || to != ""
	})
}

// sharedBy is the terminations that both lists know.
func sharedBy(was, is *side.Side) map[string]bool {
	mine := map[string]bool{}
	for _, name := range was.NameOf {
		mine[name] = true
	}
	both := map[string]bool{}
	for _, name := range is.NameOf {
		both[name] = mine[name]
	}
	return both
}

// placed is the wires of a list, where only a part is compared with their ends at
// connectors of both alone; a wire that has none left is not the subject.
func (c *comparer) placed(s *side.Side) []*placed {
	all := placedWires(s)
	if c.endless[c.was] || c.endless[c.is] {
		for _, w := range all {
			w.one, w.two = "", ""
		}
		return all
	}
	if !c.only[s] {
		return all
	}
	for _, w := range all {
		if !c.shared[termination(w.two)] {
			w.two = ""
		}
		if !c.shared[termination(w.one)] {
			w.one, w.two = w.two, ""
		}
	}
	return slices.DeleteFunc(all, func(w *placed) bool {
		if w.one == "" {
			c.left[s] = append(c.left[s], w.wire.ID)
		}
		return w.one == ""
	})
}

// list is the ends that are given, as the wire runs.
func (s *placed) list() []string {
	if s.turned {
		return slices.DeleteFunc([]string{s.two, s.one}, func(e string) bool { return e == "" })
	}
	return slices.DeleteFunc([]string{s.one, s.two}, func(e string) bool { return e == "" })
}

// called is a wire as a person finds it: its id, its signal, its ends.
func (c *comparer) called(s *placed) string {
	name := "wire " + s.wire.ID
	if s.wire.Signal.V != "" {
		name += " " + strconv.Quote(s.wire.Signal.V)
	}
	if ends := s.list(); len(ends) > 0 {
		name += " " + strings.Join(ends, " to ")
	}
	return name
}

// idsMean: most wires that are the same by their ends have one id in both lists.
// Where one of them numbers as it likes, another id is no difference.
func idsMean(pairs []pair) bool {
	same, n := 0, 0
	for _, p := range pairs {
		if p.was.ends() == p.is.ends() {
			n++
			if p.was.wire.ID == p.is.wire.ID {
				same++
			}
		}
	}
	return 2*same > n
}

// pairs says what became of each wire that both lists have.
func (c *comparer) pairs(pairs []pair) {
	swapped := c.swaps(pairs)
	for k, p := range pairs {
		s := swapped[k]
		if s != nil && s.first == k {
			c.say(s.says)
		}
		if p.was.ends() != p.is.ends() && (s == nil || !s.ends) {
			c.moved(p)
		}
		for _, ch := range c.changes(p) {
			if s != nil && slices.Contains(s.fields, ch.what) {
				continue
			}
			c.say(Difference{Kind: Changed, Of: "wire", Wires: []string{p.was.wire.ID}, Cavities: p.was.list(), What: ch.what, Was: ch.was,
				Is:   ch.is,
				Says: fmt.Sprintf("%s: %s is %s, was %s", c.called(p.was), ch.what, quoted(ch.is), quoted(ch.was))})
		}
	}
}

// moved says which end is elsewhere.
func (c *comparer) moved(p pair) {
	was, is := p.was.list(), p.is.list()
	stays := func(e string) bool { return slices.Contains(was, e) && slices.Contains(is, e) }
	from := slices.DeleteFunc(slices.Clone(was), stays)
	to := slices.DeleteFunc(slices.Clone(is), stays)
	d := Difference{Kind: Moved, Of: "wire", Wires: []string{p.was.wire.ID}, Cavities: was, Was: strings.Join(from, " and "),
		Is: strings.Join(to, " and ")}
	name := "wire " + p.was.wire.ID
	if p.was.wire.Signal.V != "" {
		name += " " + strconv.Quote(p.was.wire.Signal.V)
	}
	// An end at a connector that the other list does not have is told with the connector.
	if len(to) == 0 && !slices.ContainsFunc(from, c.known) || len(from) == 0 && !slices.ContainsFunc(to, c.known) {
		return
	}
	switch {
	case len(to) == 0:
		d.Kind, d.What, d.Says = Changed, "end", name+" has no end at "+d.Was+" any more"
	case len(from) == 0:
		d.Kind, d.What, d.Says = Changed, "end", name+" ends at "+d.Is+" as well"
	default:
		d.Says = name + " moved from " + d.Was + " to " + d.Is
	}
	c.say(d)
}

// known reports whether an end is at a connector of both lists, or on a splice.
func (c *comparer) known(end string) bool {
	at := termination(end)
	return c.shared[at] || at == end
}
