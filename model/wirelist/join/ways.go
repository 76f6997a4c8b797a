package join

import (
	"strings"

	"contralay/model/wirelist/table"
)

// saysWay reports whether the name of a net says in brackets that its cavity is an input or an output of its device, "TX (OUT)": two
// outputs are no ends of one wire, though they have one name. Common words, from memory, no source.
func saysWay(signal string) bool {
	open := strings.LastIndexByte(signal, '(')
	if open < 1 || !strings.HasSuffix(signal, ")") {
		return false
	}
	switch strings.TrimSpace(table.Fold(signal[open+1 : len(signal)-1])) {
	case "in", "out", "i", "o", "input", "output", "eingang", "ausgang", "entree", "sortie", "entrada", "salida", "saida", "ingresso",
		"uscita", "ingang", "uitgang", "wejscie", "wyjscie", "vstup", "vystup", "utgang", "indgang", "udgang",
		"вход", "выход":
		return true
	}
	return false
}
