package farheads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

const (
	leastLines  = 3   // that name both ends (no source)
	leastGroups = 2   // headings that have such lines, where no text names the plug: below one, its pins are the list (no source)
	mostText    = 300 // rows before the first such line (no source)
)

// heads are the headings of the table.
var heads = []string{"From", "From pin", "To", "To pin", "Signal", "Colour", "Size", "Cable", "Note"}

// group is a heading and the lines below it.
type group struct {
	part  string // what the heading names
	cable string // what its brackets say of a cable of the wires
	aside string // what else they say
	first int    // its first line, by the number of its row
	lines []line
}

// Rows makes rows of a table of such lines, below a row of headings for each part; they are as they were where any line below such a
// heading is no such line. Texts stay where they are.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows // a person has said where its columns are
	}
	plugs := map[string]bool{}
	var all []group
	n, others := 0, 0 // lines, and those whose wire goes elsewhere
	for i := 0; i < len(t.Rows); i++ {
		text := textOf(t.Rows[i])
		if len(all) == 0 && i > mostText || len(t.Rows[i].Cells) > 1 && t.Rows[i].Ruled {
			return t.Rows
		}
		part, ok := partOf(t.Rows, i)
		if !ok {
			if len(all) == 0 {
				addPlugs(plugs, text)
			}
			continue
		}
		g := group{part: part, first: i + 1}
		g.part, g.cable, g.aside = withoutAside(part)
		for k := i + 1; k < len(t.Rows) && t.Rows[k].Level == 0 && !isHeading(t.Rows, k); k++ {
			l, ok := lineOf(textOf(t.Rows[k]), plugs)
			if !ok {
				break
			}
			g.lines = append(g.lines, l)
			if l.elsewhere {
				others++
			}
		}
		if len(g.lines) == 0 {
			if len(all) == 0 {
				addPlugs(plugs, text)
			}
			continue
		}
		all = append(all, g)
		n += len(g.lines)
		i += len(g.lines)
		if i+1 < len(t.Rows) && t.Rows[i+1].Point {
			return t.Rows // a point of the same list is no such line
		}
	}
	if n-others < leastLines || 4*others > n || !oneOrder(all) || len(all) < leastGroups && !named(all, plugs) {
		return t.Rows
	}
	return spread(t, all)
}

// named reports whether the plug of every line is one that a text names, and the heading names a part and no list.
func named(all []group, plugs map[string]bool) bool {
	return !slices.ContainsFunc(all, func(g group) bool {
		return name.IsGeneric(g.part) || name.SaysConnector(g.part) || slices.ContainsFunc(g.lines, func(l line) bool {
			return !l.free && !l.elsewhere && !plugs[l.plug]
		})
	})
}

// oneOrder reports whether every line has the pin of the part on the same side, and no cavity of a plug comes twice.
func oneOrder(all []group) bool {
	seen := map[string]bool{}
	var first *line
	for _, g := range all {
		for k := range g.lines {
			l := &g.lines[k]
			if l.free || l.elsewhere {
				continue
			}
			if first == nil {
				first = l
			}
			if end := l.plug + ":" + l.cavity; l.turned != first.turned || seen[end] {
				return false
			} else {
				seen[end] = true
			}
		}
	}
	return first != nil
}

// spread puts the cells of the lines in the place of their rows, and headings above those of each part.
func spread(t *table.Table, all []group) []table.Row {
	rows, at := make([]table.Row, 0, len(t.Rows)+len(all)), 0
	for _, g := range all {
		rows = append(rows, t.Rows[at:g.first]...)
		rows = append(rows, table.Row{Line: t.Rows[g.first].Line, Cells: slices.Clone(heads), First: true, Ruled: t.Marked})
		for k, l := range g.lines {
			r := t.Rows[g.first+k]
			r.First, r.Prose, r.Point, r.Deep, r.Gap, r.Drawn = false, false, false, 0, nil, nil
			note := strings.Join(slices.DeleteFunc([]string{g.aside, l.note}, func(s string) bool { return s == "" }), "; ")
			r.Cells = []string{l.plug, l.cavity, g.part, l.pin, l.signal, l.colour, l.size, g.cable, note}
			rows = append(rows, r)
		}
		at = g.first + len(g.lines)
	}
	return append(rows, t.Rows[at:]...)
}
