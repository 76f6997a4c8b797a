package huekey

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// MadePlain is the key to the short forms of a column of colours that mean two colours, "bl" and "gr", where the other cells leave one of
// the two: beside "bk" stands blue, beside "gy" green; "br" is brown where nothing else is. A cable of four pairs has blue, orange,
// green and brown, each with a white one
// that has its stripe (common practice, no source). nil where no cell has such a form, or nothing says what it means.
func MadePlain(cells []string, lang string) ColourKey {
	words := map[string]bool{}
	open, striped := false, 0
	for _, c := range cells {
		if value.IsNothing(c) || len(c) > 12 {
			continue
		}
		if _, ok := value.ParseColour(c, lang); !ok {
			open = true
		}
		of := strings.FieldsFunc(table.Fold(c), func(r rune) bool { return strings.ContainsRune("/-+ ", r) })
		for _, w := range of {
			words[w] = true
		}
		if len(of) == 2 && slices.ContainsFunc(of, func(w string) bool { return value.IsHue(w, 9) }) {
			striped++
		}
	}
	if !open {
		return nil
	}
	has := func(hue int) bool {
		for w := range words {
			if value.IsHue(w, hue) {
				return true
			}
		}
		return false
	}
	pairs := striped > 1
	for w := range words {
		pairs = pairs && (w == "bl" || w == "br" || w == "gr" || value.IsHue(w, 3) || value.IsHue(w, 5) || value.IsHue(w,
			1) || value.IsHue(w, 6) || value.IsHue(w, 9))
	}
	key := ColourKey{}
	for _, short := range []struct {
		form       string
		hues       [2]int
		words      [2]string
		pairedWith string
	}{
		{"bl", [2]int{0, 6}, [2]string{"black", "blue"}, "blue"},
		{"gr", [2]int{8, 5}, [2]string{"grey", "green"}, "green"},
	} {
		switch first, second := has(short.hues[0]), has(short.hues[1]); {
		case !words[short.form]:
		case first && !second:
			key[short.form] = short.words[1]
		case second && !first:
			key[short.form] = short.words[0]
		case !first && !second && pairs:
			key[short.form] = short.pairedWith
		}
	}
	if words["br"] && !has(1) && lang != "de" {
		key["br"] = "brown"
	}
	for _, c := range cells { // another form that nobody reads may say how the shop writes
		if _, ok := value.ParseColour(key.InEnglish(c), lang); !ok && !value.IsNothing(c) && len(c) < 4 {
			return nil
		}
	}
	if len(key) == 0 {
		return nil
	}
	return key
}
