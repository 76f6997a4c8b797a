package compare

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/model"
)

// termination is the part of an end before its cavity; of a splice, itself.
func termination(end string) string {
	if i := strings.LastIndexByte(end, ':'); i >= 0 {
		return end[:i]
	}
	return end
}

// cavity is the part behind it.
func cavity(end string) string {
	if i := strings.LastIndexByte(end, ':'); i >= 0 {
		return end[i+1:]
	}
	return end
}

// Lists is every difference from a to b: swaps, moves, changes, what is gone and what
// is new of the wires, in the order of a; then cavities without wire, units, fuses, terminations
// and lengths. Equal lists give none.
func Lists(a, b model.Harness) []Difference { return Between(List{Harness: a}, List{Harness: b}) }

// Between is Lists with what each list has a place for: what has one in both is compared
// where only one fills it.
func Between(a, b List) []Difference {
	was, is := bothByContent(&a.Harness, &b.Harness)
	c := comparer{was: was, is: is, first: a, second: b, fields: fieldsOf(&a, &b), sharedOnly: oneEnded(&a.Harness) || oneEnded(&b.Harness),
		shared: sharedBy(was, is)}
	named := a.hasIDs() && b.hasIDs()
	pairs, gone, added := match(c.placed(was), c.placed(is), named)
	c.sameIDs = named && idsMean(pairs)
	c.pairs(pairs)
	for _, s := range gone {
		c.say(Difference{Kind: Removed, Of: "wire", Wires: []string{s.wire.ID}, Cavities: s.list(), Says: c.called(s) + " removed"})
	}
	for _, s := range added {
		c.say(Difference{Kind: Added, Of: "wire", Wires: []string{s.wire.ID}, Cavities: s.list(), Says: c.called(s) + " added"})
	}
	c.others(pairs)
	return c.found
}

// comparer is a comparison of two lists on its way.
type comparer struct {
	was, is       *side
	first, second List
	fields        []field
	sameIDs       bool            // the ids mean the same in both
	sharedOnly    bool            // one of the lists gives no far ends: only what is at connectors of both is compared
	shared        map[string]bool // terminations of both, by common names
	found         []Difference
}

func (c *comparer) say(d Difference) { c.found = append(c.found, d) }

// oneEnded reports whether no wire has two ends: a pin table without a column of far ends.
func oneEnded(h *model.Harness) bool {
	return len(h.Wires) > 0 && !slices.ContainsFunc(h.Wires, func(w model.Wire) bool { return w.From.V != "" && w.To.V != "" })
}

// sharedBy is the terminations that both lists know.
func sharedBy(was, is *side) map[string]bool {
	mine := map[string]bool{}
	for _, name := range was.nameOf {
		mine[name] = true
	}
	both := map[string]bool{}
	for _, name := range is.nameOf {
		both[name] = mine[name]
	}
	return both
}

// placed is the wires of a list, where only a part is compared with their ends at
// connectors of both alone; a wire that has none left is not the subject.
func (c *comparer) placed(s *side) []*placed {
	all := placedWires(s)
	if !c.sharedOnly {
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
	return slices.DeleteFunc(all, func(w *placed) bool { return w.one == "" })
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
