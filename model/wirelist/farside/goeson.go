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
	is := func(e draft.End) bool { return e.String() == at.String() } // a list writes one cavity in several ways
	if at.Pin == "+" || at.Pin == "-" {
		return is(a.From) && is(b.From)
	}
	through := is(a.From) && is(b.To) || is(a.To) && is(b.From)
	return through && a.Gauge.Size == b.Gauge.Size && len(a.Colour) > 0 && slices.Equal(a.Colour, b.Colour)
}
