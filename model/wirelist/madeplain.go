package wirelist

import (
	"maps"
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/row"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// takePlain takes the short forms of a column of colours that mean two colours for the one that the other cells leave, where no key in
// the lists says what they are: a person should look.
//
//	Pin | Colour
//	1   | bk
//	2   | bl
func takePlain(im *draft.Importer, b *shape.Block, place table.Place) {
	if len(b.Key) > 0 || len(im.Colours) > 0 || im.Opt.Recipe != nil && len(im.Opt.Recipe.Colours) > 0 {
		return
	}
	i := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldColour })
	if i < 0 {
		return
	}
	var cells []string
	for _, r := range b.Rows {
		if i < len(r.Cells) && !shape.IsText(r) {
			cells = append(cells, r.Cells[i])
		}
	}
	key := value.MadePlain(cells, b.Lang)
	if len(key) == 0 {
		return
	}
	b.Key = key
	im.Colours = key
	var says []string
	for _, short := range slices.Sorted(maps.Keys(key)) {
		says = append(says, short+" "+key[short])
	}
	place.Row = b.Head
	im.Doubt("short forms of colours that mean two, and no key to them", place, shape.At(b.Cols, i),
		"taken as "+strings.Join(says, ", ")+" by the other colours; say what they mean if they are others", row.DataRows(b))
}
