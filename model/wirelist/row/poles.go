package row

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/saidonce"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// sayPoles says what SettlePoles found of a block.
func sayPoles(im *draft.Importer, b *shape.Block, at table.Place) {
	switch at.Column = b.PinsOf(); {
	case len(b.Poles) > 0:
		im.Say(report.Note, "several wires in a row", at, strings.Join(b.Poles, ", "), saidonce.TakenForRows)
	case b.EachColour:
		im.Doubt("a colour for each cavity of a row", at, "", "taken so, as every row has as many colours as cavities", DataRows(b))
	}
}

// eachPole makes the wires of a row that tells one for each of its cavities; false where the block has no such rows.
func eachPole(im *draft.Importer, b *shape.Block, cells []string, it draft.Item, froms, tos []draft.End, place table.Place) bool {
	if len(froms) < 2 || len(b.Poles) == 0 && !b.EachColour || len(b.Poles) > 0 && len(b.Poles) != len(froms) {
		return false
	}
	colours := value.ColoursOf(im.Colours.InEnglish(b.Cell(cells, name.FieldColour)), b.Lang, value.PartsColours)
	for k, from := range froms {
		one, far := it, tos
		if len(b.Poles) > 0 {
			one.Signal = value.JoinNonEmpty(" ", it.Signal, b.Poles[k])
		}
		if len(tos) == len(froms) {
			far = tos[k : k+1]
		}
		if one.Signal != "" && len(tos) == 0 {
			one.Net = strings.Join(append(name.Words(table.Fold(one.Signal)), name.PlusMinus(one.Signal)...), " ")
		}
		if b.EachColour && len(colours) == len(froms) {
			one.Colour, one.Each = colours[k], nil
		}
		betweenEnds(im, one, []draft.End{from}, far, place)
	}
	return true
}
