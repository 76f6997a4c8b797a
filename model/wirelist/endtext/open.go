package endtext

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// SaysOpen reports whether the text of an end says that the wire ends nowhere: "not joined at the sensor end".
func SaysOpen(text string) bool {
	words := strings.Fields(table.Fold(text))
	for i := range words {
		words[i] = strings.TrimRight(words[i], ",;")
	}
	if len(words) < 2 {
		return len(words) == 1 && isPutAway(words[0])
	}
	if saysWireOpen(words) {
		return true
	}
	if n := leadsLength(words); n > 0 && n < len(words) && isCoiled(words[n]) {
		return true // "300 mm coiled"
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
		"isolieren", "aufrollen", "isoler", "enrouler", "replier", "aislar", "enrollar", "isolare", "arrotolare",
		"aufgerollt", "isoliert", "zuruckgebunden", "enroule", "isole", "replie", "enrollado", "aislado", "arrotolato", "isolato",
		"opgerold",
		"upprullad", "oprullet", "zwiniety", "stoceno", "enrolado":
		if !strings.ContainsAny(words[1], "0123456789") {
			return len(words) > 2 || words[0] != "no" && words[0] != "open"
		}
	}
	return isCoiled(words[0]) && putsAway(words[1:])
}

// isPutAway reports whether a word alone says that an end is rolled up or closed and goes nowhere, as no device is called.
func isPutAway(w string) bool {
	switch w {
	case "coiled", "stowed", "tucked", "aufgerollt", "zuruckgebunden", "enroule", "love", "replie", "enrollado", "arrotolato", "opgerold",
		"opgebonden", "upprullad", "oprullet", "kveilet", "zwiniety", "stoceno", "enrolado", "kerattyna", "feltekerve":
		return true
	}
	return false
}

// leadsLength is how many words of a text a length at its head has, "300 mm", "300mm"; 0 where none stands there.
func leadsLength(words []string) int {
	for n := range min(2, len(words)) {
		text := strings.TrimRight(strings.Join(words[:n+1], " "), ",;:")
		if _, ok := value.ParseLength(text, "", value.MarkUnknown); ok && strings.Trim(text, "0123456789.,") != "" {
			return n + 1
		}
	}
	return 0
}

// isCoiled reports whether a folded word says what is done with an end that goes nowhere: "coil", "coiled". "Coil 85" is of a relay, so
// that more must say it.
func isCoiled(w string) bool {
	switch w {
	case "coil", "cap", "tape", "tie", "stow", "fold", "tuck", "park", "insulate", "seal", "roll", "leave",
		"coiled", "capped", "taped", "tied", "stowed", "folded", "tucked", "parked", "insulated", "sealed", "rolled",
		"spare", "free", "loose", "aufrollen", "aufgerollt", "isolieren", "isoliert", "zuruckbinden",
		"enrouler", "enroule", "isoler", "isole", "enrollar", "enrollado", "arrotolare", "arrotolato":
		return true
	}
	return false
}

// putsAway reports whether what stands behind such a word says how, or what length: "back", "and stow", "300 mm".
func putsAway(words []string) bool {
	switch strings.TrimRight(words[0], ",;:") {
	case "back", "up", "and", "off", "over", "away", "und", "et", "y", "e":
		return true
	case "long", "loose", "open", "free":
		return true
	}
	return leadsLength(words) > 0
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
