package compare

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/wirelist/value"
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
	c := comparer{was: was, is: is, a: a, b: b, fields: fieldsOf(&a, &b), part: oneEnded(&a.Harness) || oneEnded(&b.Harness),
		shared: sharedBy(was, is)}
	named := a.hasIDs() && b.hasIDs()
	pairs, gone, added := match(c.strands(was), c.strands(is), named)
	c.ids = named && idsMean(pairs)
	c.pairs(pairs)
	for _, s := range gone {
		c.say(Difference{Kind: Removed, Of: "wire", Wires: []string{s.w.ID}, Cavities: s.list(), Says: c.called(s) + " removed"})
	}
	for _, s := range added {
		c.say(Difference{Kind: Added, Of: "wire", Wires: []string{s.w.ID}, Cavities: s.list(), Says: c.called(s) + " added"})
	}
	c.rest(pairs)
	return c.out
}

type comparer struct {
	was, is *side
	a, b    List
	fields  []field
	ids     bool            // the ids mean the same in both
	part    bool            // one of the lists gives no far ends: only what is at connectors of both is compared
	shared  map[string]bool // terminations of both, by common names
	out     []Difference
}

func (c *comparer) say(d Difference) { c.out = append(c.out, d) }

// oneEnded: a pin table without a column of far ends.
func oneEnded(h *model.Harness) bool {
	return len(h.Wires) > 0 && !slices.ContainsFunc(h.Wires, func(w model.Wire) bool { return w.From.V != "" && w.To.V != "" })
}

// sharedBy is the terminations that both lists know.
func sharedBy(was, is *side) map[string]bool {
	mine := map[string]bool{}
	for _, name := range was.term {
		mine[name] = true
	}
	both := map[string]bool{}
	for _, name := range is.term {
		both[name] = mine[name]
	}
	return both
}

// strands is the wires of a list, where only a part is compared with their ends at
// connectors of both alone; a wire that has none left is not the subject.
func (c *comparer) strands(s *side) []*strand {
	all := strands(s)
	if !c.part {
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
	return slices.DeleteFunc(all, func(w *strand) bool { return w.one == "" })
}

// list is the ends that are given, as the wire runs.
func (s *strand) list() []string {
	if s.turned {
		return slices.DeleteFunc([]string{s.two, s.one}, func(e string) bool { return e == "" })
	}
	return slices.DeleteFunc([]string{s.one, s.two}, func(e string) bool { return e == "" })
}

// called is a wire as a person finds it: its id, its signal, its ends.
func (c *comparer) called(s *strand) string {
	name := "wire " + s.w.ID
	if s.w.Signal.V != "" {
		name += " " + strconv.Quote(s.w.Signal.V)
	}
	if ends := s.list(); len(ends) > 0 {
		name += " " + strings.Join(ends, " to ")
	}
	return name
}

// idsMean: most wires that are the same by their ends have one id in both lists.
// Where one of them numbers as it likes, another id is no difference.
func idsMean(pairs []twin) bool {
	same, n := 0, 0
	for _, p := range pairs {
		if p.was.ends() == p.is.ends() {
			n++
			if p.was.w.ID == p.is.w.ID {
				same++
			}
		}
	}
	return 2*same > n
}

// field is something a wire may have, as text that compares.
type field struct {
	name string
	of   func(*model.Wire) string
}

// fieldsOf is what both lists give of any wire.
func fieldsOf(a, b *List) []field {
	all := wireFields(a.Whole && b.Whole)
	if !a.Whole || !b.Whole {
		// An import knows roles by the signals, but for that of a spare.
		all[len(all)-1].of = func(w *model.Wire) string {
			if w.Role.V == model.RoleSpare {
				return "spare"
			}
			return ""
		}
	}
	return slices.DeleteFunc(all, func(f field) bool {
		return !a.states(f.name, a.has(f)) || !b.states(f.name, b.has(f)) || f.name == "specification" && (a.guesses() || b.guesses()) &&
			assumed(&a.Harness) != assumed(&b.Harness)
	})
}

// wireFields is what a wire may have, its role last. Of two files the note is compared as it
// is; else a value that was not understood is looked for there.
func wireFields(files bool) []field {
	orNoted := func(w *model.Wire, stated, what string) string {
		if files {
			return stated
		}
		return orNoted(w, stated, what)
	}
	return []field{
		{"signal", func(w *model.Wire) string { return w.Signal.V }},
		{"size", func(w *model.Wire) string { return orNoted(w, catalogue.CanonicalSize(w.Size), "size") }},
		{"specification", func(w *model.Wire) string { return w.Spec }},
		{"colour", func(w *model.Wire) string { return orNoted(w, Colour(w.Colour.V), "colour") }},
		{"current", func(w *model.Wire) string {
			if !w.Amps.Set {
				return orNoted(w, "", "current")
			}
			return value.FormatCurrent(w.Amps.V)
		}},
		{"role", func(w *model.Wire) string { return string(w.Role.V) }},
	}
}

// orNoted is a value, or where there is none the text of it that an import did not understand
// and left in the note: "mauve" of "colour: mauve; at the board".
func orNoted(w *model.Wire, stated, what string) string {
	if stated != "" || w.Note.V == "" {
		return stated
	}
	for piece := range strings.SplitSeq(w.Note.V, "; ") {
		if text, ok := strings.CutPrefix(piece, what+": "); ok {
			return text
		}
	}
	return ""
}

// assumed: every wire has the specification that an import gives to those without, so
// that the list may not state any.
func assumed(h *model.Harness) bool {
	usual := model.Rules{}.Resolve().Spec
	return !slices.ContainsFunc(h.Wires, func(w model.Wire) bool { return w.Spec != usual && w.Spec != "ISO 6722 thin" })
}

// Colour is a colour in words, so that "29", "RDWH" and "red/white" are one; what is
// none stays as it is.
func Colour(code string) string {
	if c, ok := value.ParseColour(code, ""); ok {
		return c.String()
	}
	return code
}

// change is one field of one pair that is not the same.
type change struct{ what, was, is string }

func (c *comparer) changes(p twin) []change {
	var all []change
	for _, f := range c.fields {
		was, is := f.of(p.was.w), f.of(p.is.w)
		if f.name == "specification" && (c.a.Taken[p.was.w.ID] || c.b.Taken[p.is.w.ID]) {
			continue // one of the two was only taken for it
		}
		if was != is && (f.name != "signal" || plain(was) != plain(is)) {
			all = append(all, change{f.name, was, is})
		}
	}
	if c.ids && p.was.w.ID != p.is.w.ID {
		all = append(all, change{"id", p.was.w.ID, p.is.w.ID})
	}
	return all
}

// pairs says what became of each wire that both lists have.
func (c *comparer) pairs(pairs []twin) {
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
			c.say(Difference{Kind: Changed, Of: "wire", Wires: []string{p.was.w.ID}, Cavities: p.was.list(), What: ch.what, Was: ch.was,
				Is:   ch.is,
				Says: fmt.Sprintf("%s: %s is %s, was %s", c.called(p.was), ch.what, quoted(ch.is), quoted(ch.was))})
		}
	}
}

// moved says which end is elsewhere.
func (c *comparer) moved(p twin) {
	was, is := p.was.list(), p.is.list()
	stays := func(e string) bool { return slices.Contains(was, e) && slices.Contains(is, e) }
	from := slices.DeleteFunc(slices.Clone(was), stays)
	to := slices.DeleteFunc(slices.Clone(is), stays)
	d := Difference{Kind: Moved, Of: "wire", Wires: []string{p.was.w.ID}, Cavities: was, Was: strings.Join(from, " and "),
		Is: strings.Join(to, " and ")}
	name := "wire " + p.was.w.ID
	if p.was.w.Signal.V != "" {
		name += " " + strconv.Quote(p.was.w.Signal.V)
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

// known: an end at a connector of both lists, or on a splice.
func (c *comparer) known(end string) bool {
	at := termination(end)
	return c.shared[at] || at == end
}
