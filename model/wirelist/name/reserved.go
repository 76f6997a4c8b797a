package name

import "strings"

// saysReserved reports whether a text is a word for reserved and what for, with nothing between: "reserviert Ladedruck", "réservé
// launch". The accent counts: "reserve pump" is a pump. From memory, no source.
func saysReserved(cell string) bool {
	if strings.IndexByte(cell, ' ') < 0 {
		return false
	}
	cell = roundStates.Trim(cell)
	if !BeginsWith(cell, "", "rgzv") {
		return false
	}
	first, rest, ok := strings.Cut(cell, " ")
	if !ok || len(first) < len("reserved") || strings.TrimSpace(rest) == "" {
		return false
	}
	switch strings.ToLower(first) {
	case "reserved", "reserviert", "réservé", "réservée", "reservado", "reservada", "riservato", "riservata", "gereserveerd",
		"reserverad", "reserveret", "reservert", "zarezerwowane", "vyhrazeno":
		return true
	}
	return false
}
