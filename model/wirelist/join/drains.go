package join

import (
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// takeDrains takes the rows that could be about the drain of a shield out of the wires. One with a number and a size of its own, or
// with both ends and a length, is a wire that the list wants cut and marked.
func takeDrains(im *draft.Importer) []*draft.Item {
	var all []*draft.Item
	im.Items = slices.DeleteFunc(im.Items, func(it *draft.Item) bool {
		if !it.Drain || it.From.String() == "" || it.State != name.Used {
			return false
		}
		if cut := it.Length.Set && it.To.String() != ""; it.OwnID != "" && (it.Gauge.Size != "" || cut) {
			given := map[bool]string{true: "a size", false: "a length"}[it.Gauge.Size != ""]
			im.Say(report.Note, "drain of a shield", it.Place, value.JoinNonEmpty(" ", it.OwnID, it.Signal, it.Gauge.String()),
				"a wire, as the list gives it a number and "+given+"; no shield is grounded there")
			return false
		}
		all = append(all, it)
		return true
	})
	return all
}

// giveDrains gives each drain to the group that it is of: by the name of its cable, by what
// its signal says, or as the row beside the one shielded group. A drain of nothing that the
// lists make up is a wire after all.
func giveDrains(im *draft.Importer, drains []*draft.Item) {
	for _, d := range drains {
		k := groupOfDrain(im, d)
		if k < 0 {
			at := slices.IndexFunc(im.Items, func(it *draft.Item) bool { return it.Order > d.Order })
			if at < 0 {
				at = len(im.Items)
			}
			im.Items = slices.Insert(im.Items, at, d)
			continue
		}
		g := &im.Groups[k]
		g.Gauge.Shielded = true
		g.Drains = append(g.Drains, d)
	}
}

// groupOfDrain is the group that a drain is of; −1 where there is none, or more than one.
func groupOfDrain(im *draft.Importer, d *draft.Item) int {
	of, _ := name.DrainOf(d.Signal)
	one := func(is func(g *draft.Group) bool) int {
		found := -1
		for k := range im.Groups {
			if is(&im.Groups[k]) {
				if found >= 0 {
					return -1
				}
				found = k
			}
		}
		return found
	}
	if d.Cable != "" || d.Shield != "" {
		if k := one(func(g *draft.Group) bool {
			return d.Cable != "" && g.Name == d.Cable || d.Shield != "" && g.Items[0].Shield == d.Shield
		}); k >= 0 {
			return k
		}
	}
	if len(of) > 0 {
		return one(func(g *draft.Group) bool {
			if name.Key(g.Name) == strings.Join(of, " ") || name.Key(g.Items[0].Shield) == strings.Join(of, " ") {
				return true
			}
			return !slices.ContainsFunc(g.Items, func(it *draft.Item) bool {
				w := name.Words(table.Fold(it.Signal))
				return len(w) < len(of) || !slices.Equal(w[:len(of)], of)
			})
		})
	}
	// It stands behind its wires more often than before them (no source).
	for _, step := range []int{1, -1} {
		if k := one(func(g *draft.Group) bool {
			beside := func(it *draft.Item) bool { return it.Block == d.Block && it.Order+step == d.Order }
			return g.Gauge.Shielded && slices.ContainsFunc(g.Items, beside)
		}); k >= 0 {
			return k
		}
	}
	return -1
}

// groundShield writes where a shield is grounded into its unit.
func groundShield(im *draft.Importer, u *model.Unit, g draft.Group, d *draft.Item) {
	from := g.Items[0].From.Term
	for _, e := range []draft.End{d.From, d.To} {
		s := e.String()
		if s == "" || e.Splice != "" {
			continue
		}
		to := &u.DrainFrom
		if e.Term != from && e.Term == g.Items[0].To.Term || to.Set {
			to = &u.DrainTo
		}
		if to.Set || e.Term == from && u.DrainFrom.Set {
			im.Say(report.Warn, "one more place for the drain of a shield", d.Place, s, "left out")
			continue
		}
		*to = model.Some(s)
		im.Say(report.Note, "drain of a shield", d.Place,
			value.JoinNonEmpty("; ", value.JoinNonEmpty(" ", s, d.OwnID, d.Signal, d.Gauge.String(), d.Colour.String()),
				strings.Join(d.Notes, "; ")), "no wire of its own: "+u.ID+" is grounded there")
	}
}
