package value

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// MadePlain is the key to the short forms of a column of colours that mean two colours, "bl" and "gr", where the other cells leave one of
// the two: beside "bk" stands blue, beside "gy" green; "br" is brown where nothing else is. A cable of four pairs has blue, orange,
// green and brown, each with a white one
// that has its stripe (common practice, no source). nil where no cell has such a form, or nothing says what it means.
func MadePlain(cells []string, lang string) ColourKey {
	words := map[string]bool{}
	open, striped := false, 0
	for _, c := range cells {
		if IsNothing(c) || len(c) > 12 {
			continue
		}
		if _, ok := ParseColour(c, lang); !ok {
			open = true
		}
		of := strings.FieldsFunc(table.Fold(c), func(r rune) bool { return strings.ContainsRune("/-+ ", r) })
		for _, w := range of {
			words[w] = true
		}
		if len(of) == 2 && slices.ContainsFunc(of, func(w string) bool { return isHue(w, 9) }) {
			striped++
		}
	}
	if !open {
		return nil
	}
	has := func(hue int) bool {
		for w := range words {
			if isHue(w, hue) {
				return true
			}
		}
		return false
	}
	pairs := striped > 1
	for w := range words {
		pairs = pairs && (w == "bl" || w == "br" || w == "gr" || isHue(w, 3) || isHue(w, 5) || isHue(w, 1) || isHue(w, 6) || isHue(w, 9))
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
		if _, ok := ParseColour(key.InEnglish(c), lang); !ok && !IsNothing(c) && len(c) < 4 {
			return nil
		}
	}
	if len(key) == 0 {
		return nil
	}
	return key
}

// isHue reports whether a word is one for a hue in every language that has it.
func isHue(w string, hue int) bool {
	of, ok := colourWord(w, "")
	return ok && of == hue
}
