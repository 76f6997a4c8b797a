package join

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
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
		if it.From.String() == "" || it.To.String() == "" || saysSupply(it.Signal) {
			return false
		}
	}
	return true
}

// saysSupply reports whether the name of a net is one of a supply.
func saysSupply(signal string) bool {
	if strings.HasSuffix(strings.TrimSpace(signal), "+") || strings.HasPrefix(signal, "+") {
		return true
	}
	return slices.ContainsFunc(name.Words(table.Fold(signal)), func(w string) bool {
		volts := strings.TrimSuffix(w, "v")
		return volts != w && volts != "0" && volts != "" && strings.Trim(volts, "0123456789") == "" || w == "supply" || w == "vcc" ||
			w == "vbat" || w == "vin" || w == "power" || w == "feed" || w == "live"
	})
}
