package endtext

import (
	"strings"

	"contralay/model/wirelist/table"
)

// SaysOpen reports whether the text of an end says that the wire ends nowhere: "not joined at the sensor end".
func SaysOpen(text string) bool {
	words := strings.Fields(table.Fold(text))
	if len(words) < 2 {
		return false
	}
	if words[0] == "left" { // "left open", and no "left motor"
		return isLeftOpen(words[1])
	}
	if first := strings.Fields(text)[0]; words[0] != "not" && words[0] != "no" && len(first) > 1 && first == strings.ToUpper(first) &&
		text != strings.ToUpper(text) {
		return false // "PAS sensor" is called by its first letters
	}
	switch words[0] {
	case "not", "no", "nicht", "kein", "keine", "pas", "non", "aucun", "sin", "inte", "ej", "ikke", "nie", "bez", "niet", "geen", "nao",
		"sem", "senza", "sans", "unterminated", "cut", "open", "floating", "offen", "stays",
		"taped", "coiled", "capped", "tied", "stowed", "rolled", "looped", "folded", "tucked", "parked", "sleeved", "insulated", "sealed",
		"aufgerollt", "isoliert", "zuruckgebunden", "enroule", "isole", "replie", "enrollado", "aislado", "arrotolato", "isolato",
		"opgerold",
		"upprullad", "oprullet", "zwiniety", "stoceno", "enrolado":
		return !strings.ContainsAny(words[1], "0123456789") && (len(words) > 2 || words[1] != "1" && words[0] != "no" && words[0] != "open")
	}
	return false
}

// isLeftOpen reports whether the word behind "left" says that the wire ends nowhere: "left open at the tail",
// "left long, taped". What stands behind the side is a device: "left motor".
func isLeftOpen(w string) bool {
	switch w {
	case "open", "loose", "free", "long",
		"coiled", "taped", "unconnected", "unterminated", "hanging", "floating", "off", "out", "bare", "in",
		"as", "for", "with", "until", "at", "behind", "inside", "under", "blank", "empty", "unused", "disconnected", "capped":
		return true
	}
	return false
}
