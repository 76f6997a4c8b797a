package row

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// unitOfLengths gives the column of lengths that names no unit the one that a text of the sheet says of all lengths, "Lengths in mm".
func unitOfLengths(im *draft.Importer, b *shape.Block) {
	at := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldLength && c.Unit == "" })
	if at < 0 || im.Opt.Unit != "" || !slices.ContainsFunc(b.Rows, func(r table.Row) bool {
		if at >= len(r.Cells) {
			return false
		}
		_, own := value.ParseLength(r.Cells[at], "", b.Mark)
		_, bare := value.ParseLength(r.Cells[at], "mm", b.Mark)
		return bare && !own
	}) {
		return
	}
	var said value.LengthUnit
	var where table.Row
	for _, r := range b.Table.Rows {
		_, text := r.Filled()
		u := column.LengthsIn(text)
		if !shape.IsText(r) || u == "" {
			continue
		}
		if said != "" && said != u {
			return // two units: a person reads which is of what
		}
		said, where = u, r
	}
	if said == "" {
		return
	}
	const rule = "a text says the unit of the lengths"
	place := table.Place{File: b.Table.File, Sheet: b.Table.Sheet, Row: where.Line}
	if !slices.ContainsFunc(im.Rep.Findings, func(f report.Finding) bool { return f.Rule == rule && f.Place == place }) {
		_, text := where.Filled()
		im.Say(report.Note, rule, place, text, "taken for those without one")
	}
	b.Cols = slices.Clone(b.Cols)
	b.Cols[at].Unit = said
}
