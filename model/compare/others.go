package compare

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/compare/side"
	"contralay/model/wirelist/value"
)

// others compares what is no wire: reserved cavities, units, fuses, terminations, lengths. What
// one list gives none of is not compared.
func (c *comparer) others(pairs []pair) {
	same := map[string]string{} // wire of the second list → wire of the first
	for _, p := range pairs {
		same[p.is.wire.ID] = p.was.wire.ID
	}
	c.reserved()
	c.units(same)
	c.fuses(pairs)
	c.terminations()
	c.lengths(pairs)
}

// reserved compares which cavities are kept free.
func (c *comparer) reserved() {
	of := func(s *side.Side) (all []string) {
		for i := range s.Harness.Terminations {
			t := &s.Harness.Terminations[i]
			for _, p := range t.Reserved {
				all = append(all, s.Cavity(model.End{Termination: t.ID, Cavity: t.CavityOf(p)}))
			}
		}
		return all
	}
	was, is := of(c.was), of(c.is)
	if !c.first.Gives("reserved", len(was) > 0) || !c.second.Gives("reserved", len(is) > 0) {
		return
	}
	for _, p := range was {
		if !slices.Contains(is, p) {
			c.say(Difference{Kind: Changed, Of: "cavity", Cavities: []string{p}, What: "reserved", Was: "reserved",
				Says: p + " is not reserved any more"})
		}
	}
	for _, p := range is {
		if !slices.Contains(was, p) {
			c.say(Difference{Kind: Changed, Of: "cavity", Cavities: []string{p}, What: "reserved", Is: "reserved",
				Says: p + " is reserved now"})
		}
	}
}

// units compares which wires are made up together, and shielded.
func (c *comparer) units(same map[string]string) {
	if !c.gives("unit") {
		return
	}
	key := func(wires []string, name func(string) string) string {
		all := make([]string, len(wires))
		for i, w := range wires {
			all[i] = name(w)
		}
		slices.Sort(all)
		return strings.Join(all, "\x00")
	}
	own := func(w string) string { return w }
	first := func(w string) string {
		if o := same[w]; o != "" {
			return o
		}
		return "\x01" + w // the second list alone has it
	}
	is := map[string]*model.Unit{}
	for i := range c.is.Harness.Units {
		u := &c.is.Harness.Units[i]
		is[key(u.Wires, first)] = u
	}
	shielded := func(u *model.Unit) string {
		if u.Shield.V {
			return "shielded"
		}
		return "not shielded"
	}
	for i := range c.was.Harness.Units {
		u := &c.was.Harness.Units[i]
		k := key(u.Wires, own)
		o := is[k]
		delete(is, k)
		d := Difference{Of: "unit", Wires: u.Wires}
		switch name := "unit of wires " + strings.Join(u.Wires, ", "); {
		case o == nil:
			d.Kind, d.Says = Removed, name+" is not made up any more"
		case o.Shield.V != u.Shield.V:
			d.Kind, d.What, d.Was, d.Is = Changed, "shield", shielded(u), shielded(o)
			d.Says = fmt.Sprintf("%s: %s, was %s", name, d.Is, d.Was)
		default:
			if was, is := drains(c.was, u), drains(c.is, o); was != is {
				d.Kind, d.What, d.Was, d.Is = Changed, "drain", was, is
				d.Says = fmt.Sprintf("%s: its shield is grounded %s, was %s", name, where(is), where(was))
				break
			}
			if was, is := c.first.Cables[u.ID], c.second.Cables[o.ID]; side.Plain(was) != side.Plain(is) && c.first.Cables != nil &&
				c.second.Cables != nil {
				d.Kind, d.What, d.Was, d.Is = Changed, "name", was, is
				d.Says = fmt.Sprintf("%s: it is called %s, was %s", name, quoted(is), quoted(was))
				break
			}
			if was, is := c.first.Kinds[u.ID], c.second.Kinds[o.ID]; was != "" && is != "" && was != is {
				d.Kind, d.What, d.Was, d.Is = Changed, "kind", was, is
				d.Says = fmt.Sprintf("%s: it is a %s, was a %s", name, is, was)
				break
			}
			continue
		}
		c.say(d)
	}
	for i := range c.is.Harness.Units {
		u := &c.is.Harness.Units[i]
		if is[key(u.Wires, first)] == u {
			c.say(Difference{Kind: Added, Of: "unit", Wires: u.Wires, Says: "unit of wires " + strings.Join(u.Wires, ", ") +
				" is made up now"})
		}
	}
}

func where(at string) string {
	if at == "" {
		return "nowhere"
	}
	return "at " + at
}

// drains is where the shield of a unit is grounded, by common names, in no order.
func drains(s *side.Side, u *model.Unit) string {
	var all []string
	for _, text := range []string{u.DrainFrom.V, u.DrainTo.V} {
		if e := s.End(text); e != "" {
			text = e
		}
		if text != "" {
			all = append(all, text)
		}
	}
	slices.Sort(all)
	return strings.Join(all, " and ")
}

// fuses compares the rating in front of each wire.
func (c *comparer) fuses(pairs []pair) {
	if !c.gives("fuse") {
		return
	}
	rating := func(s *side.Side, id string) string {
		f, ok := s.Index.FeedOf[id]
		switch {
		case !ok:
			return ""
		case !s.Harness.Feeds[f].Amps.Set:
			return "no rating"
		}
		return value.FormatCurrent(s.Harness.Feeds[f].Amps.V)
	}
	called := func(s *side.Side, id, rating string) string { // with what the list calls the fuse
		if name := s.List.Fuses[id]; name != "" && !c.first.Whole && !c.second.Whole {
			return strings.TrimSpace(rating + " (" + name + ")")
		}
		return rating
	}
	for _, p := range pairs {
		was, is := rating(c.was, p.was.wire.ID), rating(c.is, p.is.wire.ID)
		was, is = called(c.was, p.was.wire.ID, was), called(c.is, p.is.wire.ID, is)
		if was != is {
			c.say(Difference{Kind: Changed, Of: "fuse", Wires: []string{p.was.wire.ID}, What: "fuse", Was: was, Is: is,
				Says: fmt.Sprintf("%s: fuse is %s, was %s", c.called(p.was), quoted(is), quoted(was))})
		}
	}
}

// terminations compares which there are, and insert and gender where both say.
func (c *comparer) terminations() {
	is := map[string]*model.Termination{}
	for i := range c.is.Harness.Terminations {
		t := &c.is.Harness.Terminations[i]
		is[c.is.NameOf[t.ID]] = t
	}
	for i := range c.was.Harness.Terminations {
		t := &c.was.Harness.Terminations[i]
		o := is[t.ID]
		delete(is, t.ID)
		if o == nil && (c.only[c.was] || c.is.Bare[t.ID]) {
			continue
		}
		if o == nil {
			c.say(Difference{Kind: Removed, Of: "termination", Was: t.ID, Says: "termination " + t.ID + " removed"})
			continue
		}
		for _, f := range headed(t, o) {
			words := f.what == "name" || f.what == "device"
			if c.first.Whole != c.second.Whole && words || f.what == "device" && c.files() {
				continue // a person's words in the one, the heading of a list in the other
			}
			if f.was != f.is && f.was != "" && f.is != "" && !(words && side.Plain(f.was) == side.Plain(f.is)) {
				c.say(Difference{Kind: Changed, Of: "termination", What: f.what, Was: f.was, Is: f.is,
					Says: fmt.Sprintf("termination %s: %s is %s, was %s", t.ID, f.what, f.is, f.was)})
			}
		}
	}
	for i := range c.is.Harness.Terminations {
		t := &c.is.Harness.Terminations[i]
		if name := c.is.NameOf[t.ID]; is[name] == t && !c.only[c.is] && !c.was.Bare[name] {
			c.say(Difference{Kind: Added, Of: "termination", Is: t.ID, Says: "termination " + t.ID + " added"})
		}
	}
}
