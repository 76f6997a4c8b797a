package wirelist

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model/wirelist/block"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Explain says of each table in some lists how it can be read, the way that is taken first, with the share of the table that
// the way explains and what it takes each column for. A recipe may be nil.
func Explain(tables []table.Table, recipe *name.Recipe) (lines []string) {
	if l := quotedIn(tables, nil); l != nil && !slices.ContainsFunc(Tables(tables, recipe), func(f Found) bool {
		return f.Wires() && slices.ContainsFunc(tables, func(t table.Table) bool { return hasLine(t.Rows, f.Place.Row) })
	}) {
		return Explain(l.tables, recipe)
	}
	h, tables, keys := prepared(tables, recipe)
	for _, t := range tables {
		if recipe.LeavesOut(t.Sheet) {
			lines = append(lines, table.Place{File: t.File, Sheet: t.Sheet}.String()+": left out by the recipe")
			continue
		}
		if recipe.Passes(&t) {
			lines = append(lines, table.Place{File: t.File, Sheet: t.Sheet}.String()+
				": hidden in its workbook, not read; hidden_sheets_read in a recipe has it read")
			continue
		}
		h.Colours = keys[t.File]
		found, over := tablesIn(h, recipe, &t)
		for i := range found {
			if !found[i].Loose {
				lines = append(lines, found[i].explain()...)
			}
		}
		for _, r := range over {
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
			lines = append(lines, at.String()+": of no table: "+table.Short(shape.RowText(r.Cells)))
		}
	}
	return lines
}

// explain says how one table can be read.
func (f *Found) explain() []string {
	lines := []string{f.Place.String() + ": " + headsOf(&f.Block)}
	say := func(lead string, k int) {
		r := f.Readings[k]
		lines = append(lines, fmt.Sprintf("%s %s, %.0f %%; %s", lead, f.Names[k], 100*min(r.Score, 1), strings.Join(r.Because, "; ")))
	}
	lead := "  taken for"
	switch {
	case f.Said.LeftOut:
		lead = "  left out by the recipe, else for"
	case f.Joined():
		lead = "  read with the table above it, else for"
	case !f.Reading().Wires:
		lead = "  left out, taken for"
	}
	say(lead, f.Chosen)
	for k := range f.Readings {
		if k != f.Chosen {
			say("  else for", k)
		}
	}
	for _, odd := range f.Odd {
		lines = append(lines, "  the recipe does not fit: "+odd)
	}
	return lines
}

// headsOf names a table: its title and its headings.
func headsOf(b *block.Block) string {
	called := ""
	if n := len(b.Titles); n > 0 {
		_, called = b.Titles[n-1].Filled()
	}
	var heads []string
	for _, h := range b.Head {
		for _, c := range h.Cells {
			if c != "" {
				heads = append(heads, c)
			}
		}
	}
	return value.JoinNonEmpty(": ", called, strings.Join(heads, " | "))
}
