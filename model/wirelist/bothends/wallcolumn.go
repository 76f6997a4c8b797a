package bothends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/words"
)

// WallColumn takes the cavities of a bulkhead between two ends for those that each wire passes: their column is headed by the bulkhead,
// or stands below its name in the row above the headings. Where that row names a bulkhead alone, the first column is its own that a word
// for cavities heads.
//
//	From | Pin | Bulkhead BH1 | To      | Pin          Bulkhead plate X20
//	PDM  | 3   | 1            | Starter | 86           Pos | Engine side | Cabin side
//	                                                   1   | CKP pin 1   | ECU A12
func WallColumn(cols []shape.Column, prof []column.Profile, titles []table.Row) {
	has := func(f name.Field) bool {
		return slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Field == f })
	}
	if !has(name.FieldFrom) || !has(name.FieldTo) || has(name.FieldVia) {
		return
	}
	var above []string // of the row above the headings
	alone := ""        // or its one text, where it is no name of a paper
	if len(titles) > 0 {
		row := titles[len(titles)-1]
		switch n, text := row.Filled(); {
		case n != 1 || row.Cells[0] == "":
			above = row.Cells
		case !words.SaysPaper(text):
			alone = text
		}
	}
	for i := range cols {
		c := &cols[i]
		if i >= len(prof) || c.Given || !prof[i].All(prof[i].Cavities) || !prof[i].Unique() ||
			!slices.Contains([]name.Field{name.FieldKeep, name.FieldWire, name.FieldNumber, name.FieldPin, name.FieldConnector}, c.Field) {
			continue
		}
		of := c.Head
		switch w := table.Fold(c.Head); {
		case i < len(above) && above[i] != "":
			of = above[i]
		case i == 0 && alone != "" && (name.IsPinWord(w) || slices.Contains(places, w) && !isNumber(w)):
			of = alone
		}
		if slices.ContainsFunc(name.Words(table.Fold(of)), titleline.IsWall) && strings.ContainsAny(of, "0123456789 ") {
			c.Field, c.Of = name.FieldVia, shape.DeviceOf(of)
			return
		}
	}
}

// isNumber reports whether a folded heading is a word for a number, which may be the wire's.
func isNumber(w string) bool {
	switch w {
	case "no", "nr", "num", "number", "nummer", "numero", "idx", "index":
		return true
	}
	return false
}
