package value

import (
	"strings"

	"contralay/model/wirelist/table"
)

// IsDitto reports whether a cell is a mark that says "as above": quotes alone, with dashes round them or not, or the words that
// clerks write in their place. From memory, no source.
func IsDitto(cell string) bool {
	if len(cell) > 24 || HasDigit(cell) {
		return false // most cells
	}
	const quotes = `"'„“”″〃´` + "`"
	if strings.ContainsAny(cell, quotes) && strings.Trim(cell, quotes+"-–—_.,: ") == "" {
		return true
	}
	if cell == ",," {
		return true // the German mark, as keyboards without it have it
	}
	f := table.Fold(cell)
	switch strings.Trim(f, `."-–() `) {
	case "ditto", "dito", "dto", "dtto", "idem", "ibid", "same", "same as above", "as above", "see above",
		"wie oben", "siehe oben", "wie vor", "s.o", "s. o", "w.o", "w. o", "w.v",
		"comme ci-dessus", "voir ci-dessus", "come sopra", "c.s", "igual", "igual que arriba", "como arriba",
		"samoin", "kuten ylla", "sama", "som ovan", "som over", "som ovenfor", "als boven", "zelfde", "j.w", "jw", "jak wyzej",
		"viz vyse", "то же", "тоже", "同上":
		return !strings.HasPrefix(f, "-") || strings.HasSuffix(f, "-")
	}
	return f == "do." || cell == "do" // "DO" is a digital output
}
