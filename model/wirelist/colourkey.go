package wirelist

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// colourKey takes in the lines of the lists that say what their short forms of colours mean.
func colourKey(im *draft.Importer, tables []table.Table) {
	for _, t := range tables {
		for _, r := range t.Rows {
			if len(r.Cells) > 1 && t.Marked {
				continue
			}
			text := shape.RowText(r.Cells)
			key := huekey.ReadColourKey(text)
			if key == nil && strings.Contains(text, "=") {
				key = huekey.KeyOfLegend(r.Cells)
			}
			if key == nil {
				continue
			}
			takeKey(im, t.File, key)
			im.Say(report.Note, "key to the colours", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}, strings.TrimSpace(text),
				readByKey)
		}
	}
}
