package catalogue

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// maxCavities is a stop against a slip of the finger: the largest arrangement of
// the chart has 187.
const maxCavities = 1000

func (b *builder) insert(e *entry) {
	i := Insert{
		ID:      e.text("id", true),
		Aliases: e.list("aliases"),
		Shell:   e.whole("shell", false, 8, 24),
		Rating:  e.text("rating", false),
	}
	i.Contacts = e.groups()
	i.Cavities = e.list("cavities")
	i.NotQualified = e.list("not_qualified")
	for _, series := range i.NotQualified {
		if series != "II" && series != "I/III" {
			e.wrong("not_qualified", shown(series)+" is no series", `"II", "I/III"`)
		}
	}
	i.Origin = e.origin()
	total := 0
	for _, g := range i.Contacts {
		total += g.Count
	}
	named := i.Cavities != nil
	if !named && total <= maxCavities {
		i.Cavities = cavityNames(i.Contacts)
	}
	source, standing := ruleOfNames, Memory
	if named {
		source, standing = i.Source, i.Standing
	}
	i.NamesSource = cmp.Or(e.text("names_source", false), source)
	i.NamesStanding = e.standing("names_standing", false, standing)
	switch {
	case total > maxCavities:
		e.wrong("contacts", fmt.Sprintf("there are %d contacts", total), fmt.Sprintf("at most %d", maxCavities))
	case named && len(i.Cavities) != total:
		e.wrong("cavities", fmt.Sprintf("there are %d names", len(i.Cavities)), fmt.Sprintf("%d, one for each contact", total))
	default:
		checkGroups(e, i)
	}
	for _, name := range i.Names() {
		key := "id"
		if name != i.ID {
			key = "aliases"
		}
		b.claim(e, "insert", key, name)
		b.c.Inserts[name] = i
	}
}

// groups reads contacts = [{ size = "20", count = 32 }]; a group may say which
// cavities it means, instead of a count or beside it.
func (e *entry) groups() []InsertContacts {
	const key, allowed = "contacts", `[{ size = "20", count = 32 }]`
	v, ok := e.get(key, true, allowed)
	if !ok {
		return nil
	}
	rows, isList := tableRows(v)
	if !isList || len(rows) == 0 {
		e.wrong(key, shown(v)+" is not a list of groups", allowed)
		return nil
	}
	out := make([]InsertContacts, len(rows))
	for n, row := range rows {
		sub := &entry{file: e.file, lines: e.lines, path: fmt.Sprintf("%s.contacts[%d]", e.path, n),
			name: fmt.Sprintf("%s: contacts %d", e.name, n+1), vals: row}
		g := InsertContacts{Size: sub.text("size", true), Cavities: sub.list("cavities")}
		if _, counted := row["count"]; counted || g.Cavities == nil {
			g.Count = sub.whole("count", true, 1, maxCavities)
		} else {
			sub.asked = append(sub.asked, "count")
			g.Count = len(g.Cavities)
		}
		if g.Cavities != nil && len(g.Cavities) != g.Count && g.Count != 0 {
			sub.wrong("cavities", fmt.Sprintf("there are %d names", len(g.Cavities)), fmt.Sprintf("%d, as count says", g.Count))
		}
		e.errs = append(e.errs, sub.done()...)
		out[n] = g
	}
	return out
}

// checkGroups sees that cavities named in groups are those of the insert, each in
// one group, and that all groups name theirs or none does.
func checkGroups(e *entry, i Insert) {
	var named []string
	without := 0
	for _, g := range i.Contacts {
		if g.Cavities == nil {
			without++
		}
		named = append(named, g.Cavities...)
	}
	if len(named) == 0 {
		return
	}
	if without > 0 {
		e.wrong("contacts", "some groups name their cavities and some do not", "all of them or none")
		return
	}
	for n, name := range named {
		switch {
		case slices.Contains(named[:n], name):
			e.wrong("contacts", fmt.Sprintf("cavity %q is in two groups", name), "each cavity once")
		case !i.Has(name):
			e.wrong("contacts", fmt.Sprintf("the insert has no cavity %q", name), strings.Join(i.Cavities, " "))
		}
	}
}
