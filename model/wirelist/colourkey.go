package wirelist

import (
	"strings"

	"contralay/model/wirelist/abreast"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// colourKey takes in the lines of the lists that say what their short forms of colours mean.
func colourKey(im *draft.Importer, tables []table.Table) {
	for _, t := range tables {
		for i, key := range abreast.Each(len(t.Rows), func(i int) huekey.ColourKey { return keyIn(&t, i) }) {
			if key == nil {
				continue
			}
			r := &t.Rows[i]
			takeKey(im, t.File, key)
			im.Say(report.Note, "key to the colours", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line},
				strings.TrimSpace(shape.RowText(r.Cells)), readByKey)
		}
	}
}

// keyIn is what a row of a table says of short forms of colours; nil of most.
func keyIn(t *table.Table, i int) huekey.ColourKey {
	r := &t.Rows[i]
	if len(r.Cells) > 1 && t.Marked {
		return nil
	}
	text := shape.RowText(r.Cells)
	key := huekey.ReadColourKey(text)
	if key == nil && strings.Contains(text, "=") {
		key = huekey.KeyOfLegend(r.Cells)
	}
	return key
}
