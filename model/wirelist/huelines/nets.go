package huelines

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugwires"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// isVehicleNet reports whether a text has a word for what the wires of vehicles and boats do, which no colour of paint does. From
// memory, no source.
func isVehicleNet(text string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		switch w {
		case "turn", "brake", "tail", "horn", "ignition", "starter", "beam", "headlight", "battery", "alternator", "indicator",
			"indicators",
			"fog", "reverse", "tacho", "throttle", "phase", "stator", "fuse", "wiper", "winker", "flasher", "klaxon", "clignotant",
			"phare", "feu", "stop", "contact", "batterie", "blinker", "masse", "bremslicht", "rucklicht", "schlusslicht", "fernlicht",
			"abblendlicht", "hupe", "zundung", "zundspule", "anlasser", "knipperlicht", "remlicht", "achterlicht", "accu", "claxon",
			"intermitente", "freno", "bateria", "faro", "freccia", "clacson", "batteria", "blinkers", "bromsljus", "bakljus", "batteri",
			"blinklys", "bremselys", "baglygte", "kierunkowskaz", "akumulator":
			return true
		}
		return strings.HasSuffix(w, "schlussleuchte") || strings.HasSuffix(w, "zundung")
	})
}

// isGround reports whether an end is a ground, or what vehicles have for one: as a name it could be what is painted.
func isGround(text string) bool {
	return plugwires.IsGroundLike(text) || slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		return w == "chassis" || w == "frame" || w == "negative" || w == "rahmen" || w == "telaio" || w == "chasis" || w == "karosserie"
	})
}

// isNet reports whether the name of a wire, or its end, is one that no colour of paint has.
func isNet(text string) bool { return text != "" && (point.IsNetLike(text) || isVehicleNet(text)) }
