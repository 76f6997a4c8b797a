package fuseways

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// coloursOfBlades takes the colours of fuses for none of wires: the heading says whose they are.
//
//	No | Rating | Blade colour | Feeds
//	1  | 10 A   | red          | Radio
func coloursOfBlades(cols []shape.Column) {
	for i := range cols {
		c := &cols[i]
		if c.Field == name.FieldColour && !c.Given && slices.ContainsFunc(name.Words(table.Fold(c.Head)), func(w string) bool {
			return w == "blade" || w == "fuse" || w == "fusible" || w == "fusibile" || strings.HasPrefix(w, "sicherung")
		}) {
			c.Field = name.FieldNote // by its cells an unknown column would be one of colours
		}
	}
}
