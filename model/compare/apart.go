package compare

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/compare/side"
	"contralay/model/wirelist/report"
)

// leave says what is not compared, as lacks has no place for it: "A", "B", or "" for neither.
func (c *comparer) leave(lacks, format string, args ...any) {
	c.apart = append(c.apart, Apart{What: fmt.Sprintf(format, args...), Lacks: lacks})
}

// each calls f for either list with the other, and with the letter of the other.
func (c *comparer) each(f func(mine, other *List, s *side.Side, lacks string)) {
	f(&c.first, &c.second, c.was, "B")
	f(&c.second, &c.first, c.is, "A")
}

// result is what was found, and what of both lists it was found in.
func (c *comparer) result(pairs []pair) Result {
	r := Result{Differences: c.found, Of: "cavities"}
	a, b := allCavities(c.was), allCavities(c.is)
	both := 0
	for name := range a {
		if _, too := b[name]; too {
			both++
		}
	}
	r.A, r.B = Count{both, len(a)}, Count{both, len(b)}
	wires, others := len(c.first.Harness.Wires), len(c.second.Harness.Wires)
	nowhere := 0 // pairs of wires in no cavity that the other list has
	for _, p := range pairs {
		if !holds(b, p.was) || !holds(a, p.is) {
			nowhere++
		}
	}
	switch {
	case len(a) == 0 && len(b) == 0 && wires+others > 0:
		r.Of, r.A, r.B = "wires", Count{len(pairs), wires}, Count{len(pairs), others}
	case nowhere > 0:
		r.Called = append(r.Called, report.Counted(nowhere, "wire", "wires")+" by id, signal or the rest of their rows")
	}
	r.Called = append(r.Called, c.calls...)
	r.Empty = !c.files() && wires+others+len(a)+len(b)+len(c.was.Harness.Terminations)+len(c.is.Harness.Terminations) == 0
	r.Nothing = wires > 0 && others > 0 && both == 0 && len(pairs) == 0 && !c.sharesNames()
	if r.Nothing {
		r.Called = nil
		return r
	}
	if wires+len(a) > 0 && others+len(b) > 0 { // of an empty list nothing is left to compare
		c.unstated()
		c.otherIDs(pairs)
		c.farEnds()
		c.blanks(a, b)
	}
	c.leftOut()
	r.Unlike = c.apart
	return r
}

// holds reports whether an end of a wire is in one of the cavities.
func holds(cavities map[string]bool, w *placed) bool {
	_, one := cavities[w.one]
	_, two := cavities[w.two]
	return one || two
}

// allCavities is every cavity that a list names, by common names: true where a wire is in it.
func allCavities(s *side.Side) map[string]bool {
	all := map[string]bool{}
	add := func(t, cavity string, wired bool) {
		if name := s.Cavity(model.End{Termination: t, Cavity: cavity}); name != s.NameOf[t] {
			all[name] = all[name] || wired
		}
	}
	for i := range s.Harness.Terminations {
		t := &s.Harness.Terminations[i]
		for _, c := range slices.Concat(t.Cavities, t.Reserved) {
			add(t.ID, t.CavityOf(c), false)
		}
	}
	for t, cavities := range s.Wired() {
		for c := range cavities {
			add(t, c, true)
		}
	}
	return all
}

// sharesNames reports whether a wire id or a signal of either list is in the other.
func (c *comparer) sharesNames() bool {
	ids, signals := map[string]bool{}, map[string]bool{}
	for i := range c.first.Harness.Wires {
		w := &c.first.Harness.Wires[i]
		ids[c.first.OwnID(w)], signals[side.Plain(w.Signal.V)] = c.first.HasIDs(), w.Signal.V != ""
	}
	return slices.ContainsFunc(c.second.Harness.Wires, func(w model.Wire) bool {
		return c.second.HasIDs() && c.second.OwnID(&w) != "" && ids[w.ID] || w.Signal.V != "" && signals[side.Plain(w.Signal.V)]
	})
}

// unstated leaves what one list gives and the other has no place for.
func (c *comparer) unstated() {
	if c.files() {
		return
	}
	c.each(func(l, o *List, s *side.Side, lacks string) {
		add := func(what string, has, other bool) {
			if has && !o.Gives(what, other) {
				c.leave(lacks, "%s", what)
			}
		}
		if !o.Whole && l.HasIDs() && !o.HasIDs() {
			c.leave(lacks, "wire ids")
		}
		for _, f := range wireFields(false) {
			if f.name != "role" && f.name != "specification" {
				add(f.name, has(l, f), has(o, f))
			}
		}
		switch k := map[string]int{"A": 0, "B": 1}[lacks]; {
		case saysSpec(l) && !saysSpec(o):
			c.leave(lacks, "specification")
		case c.unsaidSpec[k]:
			c.leave(lacks, "the specification of some wires")
		}
		add("fuse", len(l.Harness.Feeds) > 0, len(o.Harness.Feeds) > 0)
		add("unit", len(l.Harness.Units) > 0, len(o.Harness.Units) > 0)
		if len(l.Lengths) > 0 && (o.Whole || !o.Gives("length", len(o.Lengths) > 0)) {
			c.leave(lacks, "length")
		}
		reserved := func(h *model.Harness) bool {
			return slices.ContainsFunc(h.Terminations, func(t model.Termination) bool { return len(t.Reserved) > 0 })
		}
		if reserved(&l.Harness) && !o.Gives("reserved", reserved(&o.Harness)) {
			c.leave(lacks, "reserved cavities")
		}
		if l.Whole {
			c.leave(lacks, "everything of a harness file but wires, cavities, units and fuses")
			return
		}
		if !o.Whole {
			c.headings(s, lacks)
		}
	})
}

// saysSpec reports whether the list says the specification of a wire.
func saysSpec(l *List) bool {
	if l.Guesses() {
		return !assumed(&l.Harness)
	}
	return l.Whole || slices.ContainsFunc(l.Harness.Wires, func(w model.Wire) bool { return !l.Taken[w.ID] })
}

// headings leaves what stands over the table of a connector in one list alone.
func (c *comparer) headings(s *side.Side, lacks string) {
	o := c.is
	if s == c.is {
		o = c.was
	}
	other := map[string]*model.Termination{}
	for i := range o.Harness.Terminations {
		t := &o.Harness.Terminations[i]
		other[o.NameOf[t.ID]] = t
	}
	for i := range s.Harness.Terminations {
		t := &s.Harness.Terminations[i]
		p := other[s.NameOf[t.ID]]
		if p == nil {
			continue
		}
		for _, f := range headed(t, p) {
			if f.was != "" && f.is == "" && !(f.what == "name" && (s.List.Unsaid[t.ID] || o.List.Unsaid[p.ID])) {
				c.leave(lacks, "the %s of %s", f.what, s.NameOf[t.ID])
			}
		}
	}
}

// headed is what a list may say of two terminations that are the same.
func headed(t, o *model.Termination) []change {
	return []change{{"name", t.Name.V, o.Name.V}, {"device", t.Device.V, o.Device.V}, {"insert", t.Insert.V, o.Insert.V},
		{"gender", string(t.Gender.V), string(o.Gender.V)}}
}

// otherIDs leaves the ids of lists that number their wires as they like.
func (c *comparer) otherIDs(pairs []pair) {
	if c.first.HasIDs() && c.second.HasIDs() && !c.sameIDs &&
		slices.ContainsFunc(pairs, func(p pair) bool { return c.first.OwnID(p.was.wire) != c.second.OwnID(p.is.wire) }) {
		c.leave("", "wire ids, as most of them are others")
	}
}

// farEnds leaves what a list without far ends cannot have.
func (c *comparer) farEnds() {
	c.each(func(_, _ *List, s *side.Side, lacks string) {
		switch {
		case c.endless[s]:
			c.leave(map[string]string{"A": "B", "B": "A"}[lacks], "ends")
			return
		case !c.only[s] || c.endless[c.was] || c.endless[c.is]:
			return
		}
		c.leave(lacks, "far ends")
		if left := c.left[s]; len(left) > 0 {
			word := "wires "
			if len(left) == 1 {
				word = "wire "
			}
			c.leave("", "%s, with no end at a connector of %s", word+few(left), lacks)
		}
	})
}

// leftOut names what an import could not put into a harness, where the other list does not say it
// word for word.
func (c *comparer) leftOut() {
	type text struct{ rule, what string }
	of := func(s *side.Side) map[text][]report.Finding {
		all := map[text][]report.Finding{}
		for _, f := range s.List.Findings {
			if !f.LeavesOut() || f.Rule == "total" && f.What == "" { // a total that holds says nothing new
				continue
			}
			t := text{f.Rule, inCommon(s, f.What)}
			all[t] = append(all[t], f)
		}
		return all
	}
	a, b := of(c.was), of(c.is)
	var where []string
	for k, all := range []map[text][]report.Finding{a, b} {
		var places []string
		for t, found := range all {
			same := min(len(a[t]), len(b[t]))
			if t.what == "" {
				same = 0 // a sheet, or a whole table: what it holds is not known
			}
			for _, f := range found[same:] {
				place := f.Rule
				if f.Row > 0 {
					place = fmt.Sprintf("row %d", f.Row)
				}
				if f.Sheet != "" {
					place = "sheet " + f.Sheet + ", " + place
				}
				places = append(places, place)
			}
		}
		if len(places) > 0 {
			slices.SortFunc(places, func(a, b string) int {
				if after(strings.TrimPrefix(a, "row "), strings.TrimPrefix(b, "row ")) {
					return 1
				}
				return -1
			})
			where = append(where, []string{"A ", "B "}[k]+few(slices.Compact(places)))
		}
	}
	if len(where) > 0 {
		c.leave("", "what the import left out (%s)", strings.Join(where, "; "))
	}
}

// inCommon is a text with the terminations that it names under their common names.
func inCommon(s *side.Side, text string) string {
	if !strings.Contains(text, ":") {
		return text
	}
	for id, name := range s.NameOf {
		if id != name {
			text = strings.ReplaceAll(text, id+":", name+":")
		}
	}
	return text
}

// blanks names cavities without wire of connectors of both that one list does not have.
func (c *comparer) blanks(a, b map[string]bool) {
	for k, all := range []map[string]bool{a, b} {
		other := []map[string]bool{b, a}[k]
		var names []string
		for name, wired := range all {
			if _, known := other[name]; !known && !wired && c.shared[termination(name)] {
				names = append(names, name)
			}
		}
		if len(names) > 0 {
			slices.SortFunc(names, func(a, b string) int {
				if termination(a) != termination(b) {
					return strings.Compare(a, b)
				}
				if after(cavity(a), cavity(b)) {
					return 1
				}
				return -1
			})
			c.leave([]string{"B", "A"}[k], "empty cavities %s", few(names))
		}
	}
}

// few names six at most, and how many more there are (no source).
func few(all []string) string {
	const most = 6
	if len(all) > most {
		return strings.Join(all[:most], ", ") + fmt.Sprintf(" and %d more", len(all)-most)
	}
	return listed(all)
}

// notes settles what of the notes is compared: of columns that both lists have, and what is under no
// heading where both have a column for it or neither has.
func (c *comparer) notes() {
	c.lacks, c.left = map[*side.Side]map[string]bool{}, map[*side.Side][]string{}
	if c.files() || len(c.first.Harness.Wires) == 0 || len(c.second.Harness.Wires) == 0 {
		return
	}
	said := map[string]bool{}
	c.each(func(l, o *List, s *side.Side, lacks string) {
		c.lacks[s] = map[string]bool{}
		if o.Whole || o.States == nil {
			return
		}
		theirs := map[string]bool{}
		for h := range o.Kept {
			theirs[side.Plain(h)] = true
		}
		for i := range l.Harness.Wires {
			for _, p := range l.Pieces(&l.Harness.Wires[i]) {
				if head, _, ok := strings.Cut(p, ": "); ok && l.Kept[head] && !theirs[side.Plain(head)] {
					c.lacks[s][head] = true
					if !said[lacks+head] {
						said[lacks+head] = true
						c.leave(lacks, "column %s", strconv.Quote(head))
					}
				}
			}
		}
	})
	if c.noted = c.first.HasNotes() == c.second.HasNotes(); c.noted {
		return
	}
	c.each(func(l, _ *List, s *side.Side, lacks string) {
		if slices.ContainsFunc(l.Harness.Wires, func(w model.Wire) bool { return len(l.Texts(&w, c.lacks[s])) > 0 }) {
			if !l.HasNotes() {
				lacks = ""
			}
			c.leave(lacks, "notes")
		}
	})
}

// renamed says which terminations have other names now. One that no list names is called after its file:
// that is no difference, and the last line says who is who.
func (c *comparer) renamed() {
	for i := range c.is.Harness.Terminations {
		id := c.is.Harness.Terminations[i].ID
		because, renamed := c.is.Renamed[id]
		if !renamed {
			continue
		}
		was := c.is.NameOf[id]
		switch a, b := c.first.Unsaid[was], c.second.Unsaid[id]; {
		case a && b:
			c.calls = append(c.calls, fmt.Sprintf("connector %s is %s in B", was, id))
		case a || b:
			c.calls = append(c.calls, fmt.Sprintf("connector %s is %s in B", was, id))
			c.leave(map[bool]string{true: "A", false: "B"}[a], "the name of the connector")
		default:
			c.say(Difference{Kind: Changed, Of: "termination", What: "id", Was: was, Is: id,
				Says: fmt.Sprintf("termination %s is called %s now: %s", was, id, because)})
		}
	}
}

// sizeUnits says once, for all wires, that a size is the same in another unit.
func (c *comparer) sizeUnits(pairs []pair) {
	of := map[string][]string{}
	for _, p := range pairs {
		was, is := catalogue.CanonicalSize(p.was.wire.Size), catalogue.CanonicalSize(p.is.wire.Size)
		if was != is && catalogue.SameSize(was, is) {
			_, metric := catalogue.MetricArea(is)
			to := map[bool]string{true: "mm²", false: "AWG"}[metric]
			of[to] = append(of[to], p.was.wire.ID)
		}
	}
	for _, to := range []string{"mm²", "AWG"} {
		if wires := of[to]; len(wires) > 0 {
			from := map[string]string{"mm²": "AWG", "AWG": "mm²"}[to]
			c.say(Difference{Kind: Changed, Of: "wire", Wires: wires, What: "unit of size", Was: from, Is: to,
				Says: fmt.Sprintf("the unit of size is %s, was %s: %s, of the same size within 1 %%", to, from,
					report.Counted(len(wires), "wire", "wires"))})
		}
	}
}
