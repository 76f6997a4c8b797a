package wirelist

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/printed"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// withoutPrints is the tables without what a script put into them as it printed them. known are the headings that are known.
func withoutPrints(im *draft.Importer, known map[string]name.Meaning, recipe *name.Recipe, tables []table.Table) []table.Table {
	out := slices.Clone(tables)
	kept := func(heading string) bool { return speaksOf(recipe, heading) }
	for i := range out {
		plain, told := printed.Plain(known, kept, out[i])
		out[i] = plain
		for _, d := range told {
			im.Say(report.Note, d.Rule, table.Place{File: plain.File, Sheet: plain.Sheet, Row: d.Rows[0]}, d.What, d.Did)
			im.Rep.Findings[len(im.Rep.Findings)-1].Rows = d.Rows
		}
	}
	return out
}

// speaksOf reports whether a recipe says what the column below a heading is.
func speaksOf(recipe *name.Recipe, heading string) bool {
	if recipe == nil {
		return false
	}
	is := func(columns map[string]name.Field) bool {
		for head := range columns {
			if table.Fold(head) == table.Fold(heading) {
				return true
			}
		}
		return false
	}
	return is(recipe.Columns) || slices.ContainsFunc(recipe.Tables, func(s name.TableSaid) bool { return is(s.Columns) })
}
