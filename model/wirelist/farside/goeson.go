package farside

import (
	"slices"

	"contralay/model/wirelist/draft"
)

// GoesOn reports whether two wires with two names may well share a cavity, as both have both ends:
// the one comes to a strip or a plug between, and the other goes on from there in the same size and colour; or both leave one pole of
// a supply, each named after what it feeds.
//
//	Relay K1:87 -> Strip X3:4   yellow 2.5   work light
//	Strip X3:4  -> Lamp E10:1   yellow 2.5   LED bar left
func GoesOn(a, b *draft.Item, at draft.End) bool {
	if a.From.String() == "" || a.To.String() == "" || b.From.String() == "" || b.To.String() == "" {
		return false
	}
	if at.Pin == "+" || at.Pin == "-" {
		return a.From == at && b.From == at
	}
	through := a.From == at && b.To == at || a.To == at && b.From == at
	return through && a.Gauge.Size == b.Gauge.Size && len(a.Colour) > 0 && slices.Equal(a.Colour, b.Colour)
}
