package row

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
)

// isFreePlace reports whether a row of a list of both ends says but one place of a device, a note and a number of its own at most, where
// other rows have a wire in other places of that device: it is a place that is free.
//
//	No | Circuit | From    | To   | Colour      Panel    | Pin | Switch | Board | Colour | Remark
//	8  | Horn    | Panel 8 | Horn | red         Pedestal | 7   | Flap   | D10   | violet |
//	9  |         | Panel 9 |      |             Pedestal | 8   |        |       |        | nothing here
func isFreePlace(b *shape.Block, froms, tos []draft.End, it *draft.Item) bool {
	own := *it
	own.OwnID = ""
	if it.State != name.Used || len(froms)+len(tos) != 1 || !b.Has(name.FieldFrom) || !b.Has(name.FieldTo) ||
		!saysNothing(&own) && !saysANote(b, &own) {
		return false
	}
	e := append(froms, tos...)[0]
	return column.HasOtherPlaces(b, e.Text, e.Pin)
}

// saysANote reports whether a row says nothing of a wire but a note, which does not tell where one goes, where other rows have a colour
// or a size; it is said where it does.
func saysANote(b *shape.Block, it *draft.Item) bool {
	bare := *it
	bare.Notes = nil
	return len(it.Notes) > 0 && len(it.With) == 0 && !it.Drain && saysNothing(&bare) && b.Has(name.FieldColour, name.FieldGauge) &&
		!slices.ContainsFunc(it.Notes, joins)
}

// sayNoteAlone says of a cavity that it is kept free, for all that its row says is a note.
func sayNoteAlone(im *draft.Importer, it *draft.Item) {
	if len(it.Notes) > 0 {
		im.Say(report.Warn, "a cavity with a note and nothing else", it.Place, strings.Join(it.Notes, "; "), "the cavity is kept free")
	}
}
