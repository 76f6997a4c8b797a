package manywires

import (
	"strings"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/toldcells"
	"contralay/model/wirelist/value"
)

// byColour reads lines that begin with a colour and tell all wires of it.
//
//	red: batt + to starter 30 (35); starter 30 to ammeter 1 (6)
//	green: coil 1 to distributor (1.5)
func byColour(texts []string, unit string) (told toldcells.Told, ok bool) {
	told.Unit = unit
	lines, several := 0, 0
	for i, text := range texts {
		hue, behind, ok := strings.Cut(text, ": ")
		if _, is := value.ParseColour(hue, ""); !ok || !is || strings.Trim(hue, "0123456789") == "" {
			continue
		}
		lines++
		parts := strings.Split(behind, "; ")
		if len(parts) == 1 {
			parts = strings.Split(behind, ", ")
		}
		if len(parts) > 1 {
			several++
		}
		for _, part := range parts {
			from, to, size, ok := run(part)
			if !ok {
				return told, false
			}
			told.Wires = append(told.Wires, toldcells.Wire{Row: i, From: from, To: to, Colour: strings.TrimSpace(hue), Size: size})
		}
	}
	return told, lines > 1 && several > 0 && len(told.Wires) >= least && told.HasCavities()
}

// run parts "starter 30 to ammeter 1 (6)".
func run(text string) (from, to, size string, ok bool) {
	const most = 6 // words of an end (no source)
	text = strings.TrimSpace(text)
	if front, behind, open := strings.Cut(text, "("); open && strings.HasSuffix(behind, ")") {
		text, size = strings.TrimSpace(front), strings.TrimSuffix(behind, ")")
		if strings.Trim(size, "0123456789.,") != "" && !point.IsSize(size) {
			return "", "", "", false
		}
	}
	w := strings.Fields(text)
	for i := 1; i+1 < len(w) && i <= most; i++ {
		if place, leads := toldcells.BehindLead(strings.Join(w[i:], " ")); leads {
			return point.WithPole(strings.Join(w[:i], " ")), point.WithPole(place), size, true
		}
	}
	return "", "", "", false
}
