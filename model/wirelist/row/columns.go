package row

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// columnsTwice says which columns are read only where the one before them is empty.
func columnsTwice(b *shape.Block, im *draft.Importer, at table.Place) {
	for _, f := range shape.Once() {
		if f == name.FieldPin || f == name.FieldFromPin || f == name.FieldToPin || f == name.FieldColour {
			continue // that is a doubt of the reading, and said as one
		}
		var heads []string
		for _, c := range b.Cols {
			if c.Field == f {
				heads = append(heads, c.Head)
			}
		}
		if len(heads) < 2 {
			continue
		}
		for _, r := range b.Rows {
			if len(b.Beside(r.Cells)) > 0 {
				at.Column = heads[0]
				im.Say(report.Note, "two columns of one kind", at, strings.Join(heads, " | "),
					"the first that is filled counts, the other is kept in the notes")
				break
			}
		}
	}
}

// columnsGiven notes what a block has a place for.
func columnsGiven(im *draft.Importer, b *shape.Block, pinTable bool) {
	all := map[name.Field]string{name.FieldWire: "id", name.FieldSignal: "signal", name.FieldGauge: "size",
		name.FieldSpec: "specification", name.FieldColour: "colour", name.FieldCurrent: "current",
		name.FieldFuse: "fuse", name.FieldLength: "length", name.FieldCable: "unit",
		name.FieldNote: "note"}
	for _, c := range b.Cols {
		if what := all[c.Field]; what != "" {
			im.Rep.States[what] = true
		}
	}
	if pinTable {
		im.Rep.States["reserved"] = true // each cavity has a row
	}
}
