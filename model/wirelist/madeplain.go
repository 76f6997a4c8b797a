package wirelist

import (
	"maps"
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/huecodes"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/row"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// takePlain takes the short forms of a column of colours for what they mean in the language of the list, and those that mean two colours
// for the one that the other cells leave, where no key in the lists says what they are: where nothing else says the language, a person
// should look.
//
//	Pin | Colour
//	1   | bk
//	2   | bl
//
// all are the colours of all tables of the list, each once: they have one set of short forms.
func takePlain(im *draft.Importer, b *shape.Block, all []string, place table.Place) {
	if im.Opt.Recipe != nil && len(im.Opt.Recipe.Colours) > 0 {
		return
	}
	i := colourColumn(b)
	if i < 0 {
		return
	}
	cells := colourCells(b, i)
	if len(im.Colours) > 0 {
		addPlain(im, b, cells)
		return
	}
	langs := []string{b.Lang}
	if own := words.Vocabulary()[strings.Join(name.Words(table.Fold(b.Cols[i].Head)), " ")].Lang; own != "" && own != b.Lang {
		langs = []string{own, b.Lang} // a word for colours is of fewer languages than the others
	}
	key, of, sure := huecodes.Of(all, langs...)
	if key == nil {
		key, of, sure = huecodes.Of(cells, langs...)
	}
	if key == nil {
		key = huekey.MadePlain(cells, b.Lang)
	}
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
	switch said := "taken as " + strings.Join(says, ", "); {
	case sure && !headsMade(b):
		im.Say(report.Note, "short forms of colours in the language of the headings", place, shape.At(b.Cols, i), said)
	case of != "":
		im.Doubt("short forms of colours that one language has, and no key to them", place, shape.At(b.Cols, i),
			said+"; say what they mean if they are others", row.DataRows(b))
	default:
		im.Doubt("short forms of colours that mean two, and no key to them", place, shape.At(b.Cols, i),
			said+" by the other colours; say what they mean if they are others", row.DataRows(b))
	}
}

// headsMade reports whether the headings of a table are none of the list: the reader wrote them above its lines, on that of the first one,
// and says the language by the lines themselves.
func headsMade(b *shape.Block) bool { return len(b.Rows) > 0 && b.Rows[0].Line == b.Head }

// addPlain adds to a key that the lists give what the other short forms of a column mean beside it.
func addPlain(im *draft.Importer, b *shape.Block, cells []string) {
	said := make([]string, len(cells))
	for i, c := range cells {
		said[i] = im.Colours.InEnglish(c)
	}
	more := huekey.MadePlain(said, b.Lang)
	if len(more) == 0 {
		return
	}
	key := maps.Clone(im.Colours)
	for short, means := range more {
		if key[short] == "" {
			key[short] = means
		}
	}
	b.Key, im.Colours = key, key
}

// colourColumn is the index of the column of colours; −1 where there is none.
func colourColumn(b *shape.Block) int {
	return slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldColour })
}

// colourCells are the cells of a column of colours.
func colourCells(b *shape.Block, col int) (cells []string) {
	for _, r := range b.Rows {
		if col < len(r.Cells) && !shape.IsText(r) {
			cells = append(cells, r.Cells[col])
		}
	}
	return cells
}

// coloursOf are the cells of the columns of colours of some tables, each text once.
func coloursOf(blocks []*shape.Block) (cells []string) {
	met := map[string]bool{}
	for _, b := range blocks {
		if i := colourColumn(b); i >= 0 {
			for _, c := range colourCells(b, i) {
				if !met[c] {
					met[c] = true
					cells = append(cells, c)
				}
			}
		}
	}
	return cells
}
