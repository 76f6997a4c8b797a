package join

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/table"
)

// shareGround reports whether two wires with two names share a place that is called as a ground: the minus sides of several things are
// taken to one. A wire that is called as a supply does not belong there, and is told.
//
//	PUL- | Step -      | GND
//	DIR- | Direction - | GND
func shareGround(e draft.End, a, b *draft.Item) bool {
	switch strings.TrimRight(table.Fold(e.Pin), "0123456789") {
	case "gnd", "ground", "agnd", "dgnd", "com", "common", "earth", "masse", "massa", "masa", "pe":
	default:
		if f := table.Fold(e.Pin); f != "0v" && f != "v-" && f != "0 v" {
			return false
		}
	}
	for _, it := range []*draft.Item{a, b} {
		if it.From.String() == "" || it.To.String() == "" || pads.SaysSupply(it.Signal) {
			return false
		}
	}
	return true
}
