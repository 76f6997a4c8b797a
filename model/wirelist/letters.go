package wirelist

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/row"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// takeLetters takes the letters of a column of colours for what they mean on old British vehicles, where no key in the lists says
// what they are and no other code has them: a person should look.
//
//	From    | To      | Colour
//	Dynamo  | Box     | NY
//	Switch  | Lamp    | UW
//
// all are the colours of all tables of the list, each once: a small one among them may hold too few to tell.
func takeLetters(im *draft.Importer, b *shape.Block, all []string, place table.Place) {
	if b.Key = im.Colours; len(im.Colours) > 0 || im.Opt.Recipe != nil && len(im.Opt.Recipe.Colours) > 0 {
		return
	}
	i := colourColumn(b)
	if i < 0 {
		return
	}
	cells := colourCells(b, i)
	if k := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldStripe }); k >= 0 {
		cells = append(cells, colourCells(b, k)...)
	}
	key := huekey.LettersOf(cells)
	if key == nil {
		key = huekey.LettersOf(all)
	}
	if key == nil {
		return
	}
	b.Key, im.Colours = key, key
	place.Row = b.Head
	im.Doubt(noKey, place, shape.At(b.Cols, i), asOldLetters, row.DataRows(b))
}

// What the report says of such letters.
const (
	noKey        = "one letter for each colour, and no key to them"
	asOldLetters = "taken as N brown, U blue, P purple, S grey, K pink; say what they mean if they are others"
)
