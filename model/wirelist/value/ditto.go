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
		"viz vyse", "то же", "тоже", "同上",
		"dgl", "desgl", "dsgl", "desgleichen", "ebenso", "w. v", "s. oben", "wie vorher", "gleich", "dasselbe",
		"meme", "le meme", "comme dessus", "voir dessus", "pareil", "mismo", "el mismo", "la misma", "lo mismo", "igual que el anterior",
		"o mesmo", "a mesma", "mesmo", "igual ao anterior", "lo stesso", "stesso", "uguale", "come prima", "come precedente",
		"hetzelfde", "dezelfde", "als vorige", "zie boven", "samma", "samma som ovan", "d:o", "se ovan", "samme", "samme som ovenfor",
		"se ovenfor", "to samo", "ten sam", "ta sama", "tak samo", "totez", "stejne", "jako vyse", "ugyanaz", "uaz", "u.a", "mint fent",
		"ayni", "la fel", "acelasi", "isto", "enako":
		return !strings.HasPrefix(f, "-") || strings.HasSuffix(f, "-")
	}
	if f == "id." || cell == "id" || cell == "íd" {
		return true // "ID" is a name
	}
	return f == "do." || cell == "do" // "DO" is a digital output
}
