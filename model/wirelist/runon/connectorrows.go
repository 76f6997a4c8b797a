package runon

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
)

// ConnectorRows writes a connector that stands alone in a row of its own into the rows of its cavities below, which leave its column
// empty, and takes that row out.
//
//	Connector | Pin | Function
//	P1        |     |
//	          | 1   | Injector 1
//	          | 2   | Injector 2
func ConnectorRows(im *draft.Importer, b *shape.Block, here func(int) table.Place) {
	of, pins := name.FieldConnector, name.FieldPin
	if !b.IsPinTable() {
		of, pins = name.FieldFrom, name.FieldFromPin
	}
	i := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == of })
	if i < 0 || !b.Has(pins) || b.Has(name.FieldRun) {
		return
	}
	alone := func(k int) bool {
		r := b.Rows[k]
		n, _ := r.Filled()
		return n == 1 && i < len(r.Cells) && r.Cells[i] != ""
	}
	below := func(k int) bool {
		r := b.Rows[k]
		return i < len(r.Cells) && r.Cells[i] == "" && !value.IsNothing(b.Cell(r.Cells, pins))
	}
	// A remark stands alone too: it names no connector where one is named already and the cavities go on below it.
	names := func(k int, seen map[string]bool) bool {
		text := b.Rows[k].Cells[i]
		return name.SaysConnector(text) || name.IsDesignator(strings.Fields(text)[0]) || seen[b.Cell(b.Rows[k+1].Cells, pins)] ||
			len(seen) == 0 && !titleline.IsSentence(text)
	}
	var out []table.Row
	heading := ""             // of the rows below
	seen := map[string]bool{} // cavities since the last connector
	found := false
	for k, r := range b.Rows {
		if pin := b.Cell(r.Cells, pins); pin != "" {
			if i < len(r.Cells) && r.Cells[i] != "" {
				clear(seen)
			}
			seen[pin] = true
		}
		switch {
		case alone(k) && k+1 < len(b.Rows) && below(k+1) && names(k, seen):
			clear(seen)
			if !found {
				out = slices.Clone(b.Rows[:k]) // no row is another up to here
			}
			heading, found = r.Cells[i], true
			im.Say(report.Note, "heading between the rows", here(r.Line), heading, "taken as the connector of the rows below it")
			continue
		case heading != "" && below(k):
			r.Cells = slices.Clone(r.Cells)
			r.Cells[i] = heading
		default:
			heading = ""
		}
		if found {
			out = append(out, r)
		}
	}
	if found {
		b.Rows = out
	}
}
