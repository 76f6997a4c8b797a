package wirelist

import (
	"slices"
	"strings"

	"contralay/model"
)

// drainWord: a folded word of the bare lead that takes a shield to ground, or of the shield
// itself where a cavity is named after it.
func drainWord(w string) bool {
	switch w {
	case "drain", "drainwire", "shld", "scrn", "beilauf", "beilaufdraht", "beilauflitze", "shield", "screen", "schirm", "schirmung", "blindage", "ecran", "pantalla", "schermo":
		return true
	}
	return false
}

// drainOf is what a signal says its shield is of, "CRANK" of "CRANK shield"; ok is false
// where the signal is of no drain.
func drainOf(signal string) (of []string, ok bool) {
	all := words(fold(signal))
	for i, w := range all {
		switch {
		case drainWord(w):
			ok = true
		case w == "wire" && i > 0:
		default:
			of = append(of, w)
		}
	}
	return of, ok && (drainWord(all[len(all)-1]) || all[len(all)-1] == "wire" || drainWord(all[0]))
}

// drains takes the rows that could be about the drain of a shield out of the wires.
func (im *importer) drains() []*item {
	var all []*item
	im.items = slices.DeleteFunc(im.items, func(it *item) bool {
		if !it.drain || it.from.String() == "" || it.state != used {
			return false
		}
		all = append(all, it)
		return true
	})
	return all
}

// drained gives each drain to the group that it is of: by the name of its cable, by what
// its signal says, or as the row beside the one shielded group. A drain of nothing that the
// lists make up is a wire after all.
func (im *importer) drained(drains []*item) {
	for _, d := range drains {
		k := im.groupOf(d)
		if k < 0 {
			at := slices.IndexFunc(im.items, func(it *item) bool { return it.order > d.order })
			if at < 0 {
				at = len(im.items)
			}
			im.items = slices.Insert(im.items, at, d)
			continue
		}
		g := &im.groups[k]
		g.gauge.Shielded = true
		g.drains = append(g.drains, d)
	}
}

// groupOf is the group that a drain is of; −1 where there is none, or more than one.
func (im *importer) groupOf(d *item) int {
	of, _ := drainOf(d.signal)
	one := func(is func(g *group) bool) int {
		found := -1
		for k := range im.groups {
			if is(&im.groups[k]) {
				if found >= 0 {
					return -1
				}
				found = k
			}
		}
		return found
	}
	if d.cable != "" || d.shield != "" {
		if k := one(func(g *group) bool {
			return d.cable != "" && g.name == d.cable || d.shield != "" && g.items[0].shield == d.shield
		}); k >= 0 {
			return k
		}
	}
	if len(of) > 0 {
		return one(func(g *group) bool {
			if key(g.name) == strings.Join(of, " ") || key(g.items[0].shield) == strings.Join(of, " ") {
				return true
			}
			return !slices.ContainsFunc(g.items, func(it *item) bool {
				w := words(fold(it.signal))
				return len(w) < len(of) || !slices.Equal(w[:len(of)], of)
			})
		})
	}
	// It stands behind its wires more often than before them (no source).
	for _, step := range []int{1, -1} {
		if k := one(func(g *group) bool {
			beside := func(it *item) bool { return it.block == d.block && it.order+step == d.order }
			return g.gauge.Shielded && slices.ContainsFunc(g.items, beside)
		}); k >= 0 {
			return k
		}
	}
	return -1
}

// ground writes where a shield is grounded into its unit.
func (im *importer) ground(u *model.Unit, g group, d *item) {
	from := g.items[0].from.term
	for _, e := range []end{d.from, d.to} {
		s := e.String()
		if s == "" || e.splice != "" {
			continue
		}
		to := &u.DrainFrom
		if e.term != from && e.term == g.items[0].to.term || to.Set {
			to = &u.DrainTo
		}
		if to.Set || e.term == from && u.DrainFrom.Set {
			im.say(Warn, "one more place for the drain of a shield", d.place, s, "left out")
			continue
		}
		*to = model.Some(s)
		im.say(Note, "drain of a shield", d.place, joinNonEmpty("; ", joinNonEmpty(" ", s, d.signal, d.gauge.String(), d.colour.String()), strings.Join(d.notes, "; ")), "no wire of its own: "+u.ID+" is grounded there")
	}
}
