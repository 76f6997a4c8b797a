package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// Squares finds the text of a sheet that says that its sizes are cross sections in mm², "all sizes in mm²", and takes it for the columns of
// sizes whose numbers have no unit.
func Squares(im *draft.Importer, t *table.Table, blocks []*shape.Block) {
	for _, r := range t.Rows {
		_, text := r.Filled()
		if !shape.IsText(r) || !SaysSquares(text) || isData(blocks, r.Line) {
			continue
		}
		took := false
		for _, b := range blocks {
			took = takeSquares(b) || took
		}
		if took {
			im.Say(report.Note, "a text says the unit of the sizes", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}, text,
				"taken for those without one")
		}
		return
	}
}

// SaysSquares reports whether a text has a word for sizes and right behind it that they are in mm².
func SaysSquares(text string) bool {
	w := name.Words(table.Fold(text))
	for i := range w {
		if !words.IsSizes(w[i]) {
			continue
		}
		for k := i + 1; k < len(w) && k < i+4; k++ {
			if w[k] == "mm2" || w[k] == "mmq" || w[k] == "qmm" || w[k] == "sqmm" || w[k] == "sq" && k+1 < len(w) && w[k+1] == "mm" {
				return true
			}
			if strings.ContainsAny(w[k], "0123456789") {
				break
			}
		}
	}
	return false
}

// takeSquares makes the numbers without unit of the columns of sizes mm²; false where no column has any. One with a size that only AWG has
// stays as it is.
func takeSquares(b *shape.Block) (took bool) {
	b.Cols = slices.Clone(b.Cols)
	for i := range b.Cols {
		c := &b.Cols[i]
		bare, gauges := 0, 0
		for _, r := range b.Rows {
			if c.Field != name.FieldGauge || c.Said || i >= len(r.Cells) || r.Cells[i] == "" ||
				strings.Trim(r.Cells[i], "0123456789.,") != "" {
				continue
			}
			if bare++; shape.IsOnlyAWG(r.Cells[i]) {
				gauges++
			}
		}
		if bare > 0 && gauges == 0 {
			c.Bare, c.Said, took = value.BareMM2, true, true
		}
	}
	return took
}
