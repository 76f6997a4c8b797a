package prose

import "contralay/model/wirelist/table"

// IsCounted reports whether a word is for things that are counted from one number to another, "inputs 1-8": what stands behind it is
// no insert.
func IsCounted(w string) bool {
	switch table.Fold(w) {
	case "input", "inputs", "output", "outputs", "channel", "channels", "ch", "pins", "ways", "cavities", "zones", "rows", "lines",
		"terminals", "cores", "pairs", "wires", "sheets", "pages", "stations", "cylinders", "cells", "kanale", "eingange", "ausgange",
		"klemmen", "adern", "entrees", "sorties", "bornes", "entradas", "salidas", "canales", "ingressi", "uscite", "canali":
		return true
	}
	return false
}
