package pads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// SaysSupply reports whether the name of a net is one of a supply.
func SaysSupply(signal string) bool {
	if strings.HasSuffix(strings.TrimSpace(signal), "+") || strings.HasPrefix(signal, "+") {
		return true
	}
	return slices.ContainsFunc(name.Words(table.Fold(signal)), func(w string) bool {
		volts := strings.TrimSuffix(w, "v")
		return volts != w && volts != "0" && volts != "" && strings.Trim(volts, "0123456789") == "" || w == "supply" || w == "vcc" ||
			w == "vbat" || w == "vin" || w == "power" || w == "feed" || w == "live"
	})
}
