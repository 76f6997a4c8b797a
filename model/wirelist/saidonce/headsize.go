package saidonce

import (
	"strings"

	"contralay/model/wirelist/commas"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// TakeHeadSize takes the size that the heading of the sizes says of the rows that have none.
//
//	Wire | From | To   | Size (20 unless noted)
//	1    | P1:1 | X4:2 |
//	2    | P1:2 | X4:3 | 16
func TakeHeadSize(im *draft.Importer, b *shape.Block, at table.Place) {
	for _, c := range b.Cols {
		_, in, ok := strings.Cut(c.Head, "(")
		in, _, closed := strings.Cut(in, ")")
		if c.Field != name.FieldGauge || !ok || !closed || b.Group.Size != "" || !saysUnlessNoted(in) && !saysOfEmpty(in) {
			continue
		}
		size := value.SizeWithin(in, b.Mark)
		for _, w := range commas.Parts(in, " =,;:") {
			if g, is := value.ParseGauge(w, c.Bare, b.Mark); size == "" && is && g.Size != "" && strings.Trim(w, "0123456789.,") == "" {
				size = g.Size
			}
		}
		if size == "" {
			continue
		}
		b.Group.Size, at.Column = size, c.Head
		im.Say(report.Note, "a size in a heading", at, c.Head, TakenForRows)
		return
	}
}

// saysOfEmpty reports whether a text speaks of the cells that are empty, "blank = 20".
func saysOfEmpty(text string) bool {
	for _, w := range name.Words(table.Fold(text)) {
		switch w {
		case "blank", "empty", "leer", "vide", "vacio", "vuoto", "leeg", "tom", "puste":
			return true
		}
	}
	return false
}
