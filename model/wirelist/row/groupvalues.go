package row

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// groupValues is the size and the colour of the rows below a heading that says nothing else, in a table of two ends that has no
// column for them.
//
//	Red (16 AWG)
//	From      | To             | For
//	Battery + | Fuse box pin 1 | main feed
func groupValues(b *shape.Block, heading string) (of value.Gauge, ok bool) {
	if b.IsPinTable() || b.Has(name.FieldGauge, name.FieldColour, name.FieldSpec) {
		return value.Gauge{}, false
	}
	var words []string
	for w := range strings.FieldsFuncSeq(heading, func(r rune) bool { return strings.ContainsRune(" ()[],:", r) }) {
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
	if c, is := value.ParseColour(text, b.Lang); is && strings.Trim(text, "0123456789/- ") != "" {
		return value.Gauge{Colour: c}, true
	}
	g, is := value.ParseGauge(text, value.BareAWG, b.Mark)
	return g, is && g.Size != "" && strings.Trim(text, "0123456789., ") != ""
}

// takenForRows is what is done with such a heading.
const takenForRows = "taken for the rows below it"

// takeGroup gives a row the size and the colour that the heading of its group says.
func takeGroup(b *shape.Block, it *draft.Item) {
	if it.Gauge.Size == "" && it.Gauge.Spec == "" {
		it.Gauge.Size = b.Group.Size
	}
	if len(it.Colour) == 0 {
		it.Colour = b.Group.Colour
	}
}
