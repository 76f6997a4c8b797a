package compare

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
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
	of := func(s *side) (all []string) {
		for i := range s.harness.Terminations {
			t := &s.harness.Terminations[i]
			for _, p := range t.Reserved {
				all = append(all, s.cavity(model.End{Termination: t.ID, Cavity: t.CavityOf(p)}))
			}
		}
		return all
	}
	was, is := of(c.was), of(c.is)
	if !c.first.states("reserved", len(was) > 0) || !c.second.states("reserved", len(is) > 0) {
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
	if !c.first.states("unit", len(c.was.harness.Units) > 0) || !c.second.states("unit", len(c.is.harness.Units) > 0) {
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
	for i := range c.is.harness.Units {
		u := &c.is.harness.Units[i]
		is[key(u.Wires, first)] = u
	}
	shielded := func(u *model.Unit) string {
		if u.Shield.V {
			return "shielded"
		}
		return "not shielded"
	}
	for i := range c.was.harness.Units {
		u := &c.was.harness.Units[i]
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
			if was, is := c.was.drains(u), c.is.drains(o); was != is {
				d.Kind, d.What, d.Was, d.Is = Changed, "drain", was, is
				d.Says = fmt.Sprintf("%s: its shield is grounded %s, was %s", name, where(is), where(was))
				break
			}
			continue
		}
		c.say(d)
	}
	for i := range c.is.harness.Units {
		u := &c.is.harness.Units[i]
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
func (s *side) drains(u *model.Unit) string {
	var all []string
	for _, text := range []string{u.DrainFrom.V, u.DrainTo.V} {
		if e := s.end(text); e != "" {
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
	if !c.first.states("fuse", len(c.was.harness.Feeds) > 0) || !c.second.states("fuse", len(c.is.harness.Feeds) > 0) {
		return
	}
	rating := func(s *side, id string) string {
		f, ok := s.index.FeedOf[id]
		switch {
		case !ok:
			return ""
		case !s.harness.Feeds[f].Amps.Set:
			return "no rating"
		}
		return value.FormatCurrent(s.harness.Feeds[f].Amps.V)
	}
	for _, p := range pairs {
		was, is := rating(c.was, p.was.wire.ID), rating(c.is, p.is.wire.ID)
		if was != is {
			c.say(Difference{Kind: Changed, Of: "fuse", Wires: []string{p.was.wire.ID}, What: "fuse", Was: was, Is: is,
				Says: fmt.Sprintf("%s: fuse is %s, was %s", c.called(p.was), quoted(is), quoted(was))})
		}
	}
}

// terminations compares which there are, and insert and gender where both say.
func (c *comparer) terminations() {
	is := map[string]*model.Termination{}
	for i := range c.is.harness.Terminations {
		t := &c.is.harness.Terminations[i]
		is[c.is.nameOf[t.ID]] = t
	}
	for i := range c.was.harness.Terminations {
		t := &c.was.harness.Terminations[i]
		o := is[t.ID]
		delete(is, t.ID)
		if o == nil && c.sharedOnly {
			continue
		}
		if o == nil {
			c.say(Difference{Kind: Removed, Of: "termination", Was: t.ID, Says: "termination " + t.ID + " removed"})
			continue
		}
		if c.is.renamed[o.ID] {
			c.say(Difference{Kind: Changed, Of: "termination", What: "id", Was: t.ID, Is: o.ID,
				Says: fmt.Sprintf("termination %s is called %s now: it holds the same", t.ID, o.ID)})
		}
		for _, f := range []struct{ what, was, is string }{{"insert", t.Insert.V, o.Insert.V},
			{"gender", string(t.Gender.V), string(o.Gender.V)}} {
			if f.was != f.is && f.was != "" && f.is != "" {
				c.say(Difference{Kind: Changed, Of: "termination", What: f.what, Was: f.was, Is: f.is,
					Says: fmt.Sprintf("termination %s: %s is %s, was %s", t.ID, f.what, f.is, f.was)})
			}
		}
	}
	for i := range c.is.harness.Terminations {
		t := &c.is.harness.Terminations[i]
		if is[c.is.nameOf[t.ID]] == t && !c.sharedOnly {
			c.say(Difference{Kind: Added, Of: "termination", Is: t.ID, Says: "termination " + t.ID + " added"})
		}
	}
}
