package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/commas"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// GroupValues is the size and the colour of the rows below a heading that says nothing else, in a table of two ends that has no
// column for them; a size may stand in brackets behind the name of the group.
//
//	Red (16 AWG)
//	From      | To             | For
//	Battery + | Fuse box pin 1 | main feed
func GroupValues(b *shape.Block, heading string) (of value.Gauge, ok bool) {
	if of, ok = valuesOf(b, heading); !ok || b.IsPinTable() || b.Has(name.FieldSpec) || of.Size != "" && isFilled(b, name.FieldGauge) ||
		len(of.Colour) > 0 && isFilled(b, name.FieldColour) {
		return value.Gauge{}, false
	}
	return of, true
}

// isFilled reports whether a column of a field has something in it: lines have columns for all that they may say, and none may say it.
func isFilled(b *shape.Block, f name.Field) bool {
	return b.Has(f) && slices.ContainsFunc(b.Rows, func(r table.Row) bool { return !shape.IsText(r) && b.Cell(r.Cells, f) != "" })
}

// valuesOf reads a text that is a size, a colour or both, beside words for wires.
func valuesOf(b *shape.Block, heading string) (of value.Gauge, ok bool) {
	var words []string
	for _, w := range commas.Parts(heading, " ()[],:") {
		switch table.Fold(w) {
		case "wire", "wires", "all", "cable", "cables", "leitungen", "adern", "kabel", "fils", "cables rojos", "fili", "hilos":
		default:
			words = append(words, w)
		}
	}
	text := strings.Join(words, " ")
	if g, both := value.SizeAndColour(text, value.BareAWG, b.Lang, b.Mark); both {
		return g, true
	}
	if open := strings.LastIndexByte(heading, '('); open > 0 && strings.HasSuffix(heading, ")") {
		// "LIGHTS (1 mm²)": the size behind the name of the group
		g, is := value.ParseGauge(heading[open+1:len(heading)-1], value.BareAWG, b.Mark)
		if is && g.Size != "" && strings.Trim(heading[open+1:], "0123456789.,) ") != "" {
			return value.Gauge{Size: g.Size}, true
		}
	}
	if c, is := value.ParseColour(text, b.Lang); is && strings.Trim(text, "0123456789/- ") != "" {
		return value.Gauge{Colour: c}, true
	}
	g, is := value.ParseGauge(text, value.BareAWG, b.Mark)
	return g, is && g.Size != "" && strings.Trim(text, "0123456789., ") != ""
}

// TakenForRows is what is done with such a heading.
const TakenForRows = "taken for the rows below it"

// TakeGroup gives a row the size and the colour that the heading of its group says. A row of which one cell alone says something is a free
// cavity and no wire.
func TakeGroup(b *shape.Block, it *draft.Item, cells []string) {
	says := 0
	for _, c := range cells {
		if !value.IsNothing(c) {
			says++
		}
	}
	if says < 2 {
		return
	}
	if it.Gauge.Size == "" && it.Gauge.Spec == "" {
		it.Gauge.Size = b.Group.Size
	}
	if len(it.Colour) == 0 {
		it.Colour = b.Group.Colour
	}
}
