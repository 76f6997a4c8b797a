package point

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// IsNetLike reports whether a text has a word that names of nets have and things to do have not: a voltage, a ground, a
// colour, a state.
func IsNetLike(text string) bool {
	if name.StateOf(text) != name.Used || text == "" || strings.HasSuffix(text, "+") || strings.HasSuffix(text, "-") {
		return true
	}
	for _, w := range name.Words(table.Fold(text)) {
		switch w {
		case "v", "gnd", "ground", "supply", "feed", "signal", "data", "sense", "sensor", "can", "tx", "rx", "shield", "output",
			"input", "vcc",
			"return", "common", "lamp", "motor", "masse", "coil", "relay", "channel", "power", "earth":
			return true
		}
		if volts := strings.TrimSuffix(w, "v"); volts != w && volts != "" && strings.Trim(volts, "0123456789") == "" {
			return true
		}
		if _, ok := value.ParseColour(w, ""); ok && len(w) > 2 {
			return true
		}
	}
	return false
}
