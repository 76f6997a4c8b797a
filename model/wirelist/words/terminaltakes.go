package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// takenStems begin the words of a heading over the sizes that a terminal takes: no wire has one of them because its terminal takes it.
// Common words of data sheets, from memory, no source.
var takenStems = [...]string{"clamp", "connectable", "terminable", "accept", "admissib", "permit", "permiss", "allow", "range", "capacity",
	"klemmbereich", "klemmverm", "klemmbar", "anschliessbar", "anschlussbereich", "anschlussverm", "zulassig", "bereich",
	"serrage", "raccordable", "plage", "admisib", "apriete", "rango", "conectable", "embornable", "serraggio", "ammess", "ammissib",
	"collegabil", "klembereik", "aansluitbereik", "aansluitbaar", "toegestaan", "zakres", "dopuszczaln", "klamomrade", "klemomrade",
	"klemmeomrade", "tillaten", "tilladt", "aperto", "admissivel", "rozsah", "пределы", "допустим"}

// SaysTerminalTakes reports whether a heading is of the sizes of wire that a terminal takes: "Clamping range", "Max. cross-section". The
// least size that a manual asks for is the one that is laid.
func SaysTerminalTakes(head string) bool {
	all := name.Words(table.Fold(head))
	for k, w := range all {
		if w == "takes" && len(all) < 3 || k == 0 && len(all) > 1 && isMost(w) {
			return true
		}
		if slices.ContainsFunc(takenStems[:], func(stem string) bool { return strings.HasPrefix(w, stem) }) {
			return true
		}
	}
	return len(all) > 1 && isMost(all[len(all)-1])
}

// isMost reports whether a word says that a size is the largest one.
func isMost(w string) bool {
	switch w {
	case "max", "maximum", "maximal", "maximale", "maximaler", "largest", "biggest", "grosster", "maximo", "maxima", "massimo", "massima",
		"maks", "maksymalny":
		return true
	}
	return false
}

// SaysStripping reports whether a heading is of how far a wire is stripped for its terminal, which is no length of the wire. Common words
// of data sheets, from memory, no source.
func SaysStripping(head string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(head)), func(w string) bool {
		return slices.ContainsFunc([]string{"strip", "abisolier", "abmantel", "denud", "pelado", "pelar", "spellat", "spelat", "odizol",
			"avisoler", "skalning", "skallangd", "kuorinta", "desnud", "descarn", "blankezas"}, func(stem string) bool {
			return strings.HasPrefix(w, stem)
		})
	})
}

// TellsNoWire reports whether a heading is of what a cavity takes, needs or could be used for.
func TellsNoWire(head string) bool {
	return SaysTerminalTakes(head) || SaysStripping(head) || SaysFurtherFunction(head)
}
