package words

// IsLight reports whether a folded word is one for a shade of a colour and for a lamp as well, "light".
func IsLight(w string) bool {
	switch w {
	case "light", "licht", "ljus", "lys":
		return true
	}
	return false
}

// IsOfLamp reports whether a folded word says before "light" which lamp it is: "shift light" is a lamp, "fuel pump light blue" a shade.
// From memory, no source.
func IsOfLamp(w string) bool {
	switch w {
	case "shift", "rain", "brake", "tail", "stop", "head", "fog", "reverse", "reversing", "backup", "park", "parking", "turn", "dome",
		"courtesy", "map", "cab", "cabin", "cargo", "bed", "warning", "warn", "indicator", "pilot", "alarm", "strobe", "beacon", "flood",
		"spot", "driving", "running", "marker", "plate", "license", "number", "anchor", "masthead", "nav", "navigation", "steaming", "deck",
		"bow", "stern", "interior", "dash", "gear", "neutral", "check", "status", "ready", "hazard", "side", "work",
		"third", "reading", "cockpit", "rem", "mist", "achter", "rij", "parkeer", "broms", "dim", "bak", "back", "halv", "hel", "fjern",
		"naer", "brems", "take", "tak", "varsel", "styr", "top":
		return true
	}
	return false
}
