package wirelist

import (
	"regexp"
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// Lists that this program wrote say in their last column which build sheet they belong to.
// That is said of the list, once, and is nothing of a wire.

// sheetHead is the head of that column, as ui/paper writes it.
const sheetHead = "build sheet"

// ofSheet is what stands below it: number, revision and identity.
var ofSheet = regexp.MustCompile(`^'?.* rev .*, identity [0-9a-f]{4}(-[0-9a-f]{4}){3}$`)

// withoutSheetColumns is the tables without that column. One that holds anything else is
// somebody else's, and stays.
func withoutSheetColumns(im *draft.Importer, tables []table.Table) []table.Table {
	out := slices.Clone(tables)
	for k := range out {
		t := &out[k]
		if len(t.Rows) < 2 || len(t.Rows[0].Cells) < 2 || table.Fold(t.Rows[0].Cells[len(t.Rows[0].Cells)-1]) != sheetHead {
			continue
		}
		last, sheets := len(t.Rows[0].Cells)-1, []string{}
		for _, r := range t.Rows[1:] {
			if len(r.Cells) > last && !slices.Contains(sheets, r.Cells[last]) {
				sheets = append(sheets, r.Cells[last])
			}
		}
		if slices.ContainsFunc(sheets, func(s string) bool { return s != "" && !ofSheet.MatchString(s) }) {
			continue
		}
		t.Rows = slices.Clone(t.Rows)
		for i, r := range t.Rows {
			t.Rows[i].Cells = r.Cells[:min(last, len(r.Cells))]
		}
		for _, s := range sheets {
			if s != "" {
				im.Say(report.Note, "list of a build sheet", table.Place{File: t.File, Sheet: t.Sheet}, s, "the column is left out")
			}
		}
	}
	return out
}
