package saidonce

import (
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/sentence"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// TakeTitleSize takes the size of wire that the title of a table of cavities says for its rows, where no column has sizes. What a text
// says of all wires of the list counts only for the other tables.
//
//	### FAN (relay coil, 2 way, 20 AWG)
//	Way | Signal    | Colour | ECU
//	85  | Fan drive | brown  | B-9
func TakeTitleSize(im *draft.Importer, b *shape.Block, titles []table.Row, here func(int) table.Place) {
	if b.Has(name.FieldGauge, name.FieldSpec) {
		return
	}
	for k := len(titles) - 1; k >= 0; k-- {
		_, text := titles[k].Filled()
		if titles[k].Point || saysAll(text) || saysUnlessNoted(text) {
			continue
		}
		if size := sentence.SizeOfHeading(text, b.Mark); size != "" {
			b.Group.Size = size
			im.Say(report.Note, "a size in a heading", here(titles[k].Line), text, TakenForRows)
			return
		}
	}
}
