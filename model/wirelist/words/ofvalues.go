package words

import (
	"strings"

	"contralay/model/wirelist/table"
)

// IsOfValues reports whether a folded heading says that values stand below it, which are no places of wires: addresses, bits, limits.
//
//	Name  | Addr | Access        Signal | Min | Max
//	CTRL  | 00A  | R             SUPPLY | 3   | 5
func IsOfValues(folded string) bool {
	for _, w := range strings.Fields(folded) {
		switch strings.Trim(w, ".:()#[]") {
		case "min", "max", "typ", "avg", "addr", "address", "addresses", "adresse", "direccion", "indirizzo", "adres", "bit", "bits",
			"byte", "bytes", "register", "registers", "reg", "offset", "offsets", "opcode", "value", "values", "mask", "irq",
			"hex", "default", "baud", "voltage", "ohm", "ohms", "volt", "volts", "amps", "ma", "mm", "ms":
			return true
		}
	}
	return false
}

// AreOfValues reports whether two cells of a row or more are such headings.
func AreOfValues(cells []string) bool {
	n := 0
	for _, c := range cells {
		if c != "" && len(c) < 24 && IsOfValues(table.Fold(c)) {
			n++
		}
	}
	return n > 1
}
