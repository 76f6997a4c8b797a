package value

import (
	"strings"

	"contralay/model/wirelist/hueword"
)

// isShade is "light" or "dark" in any of the languages, else ""; behind says that the
// language puts it behind the colour.
func isShade(word string) (shade string, behind bool) {
	switch word {
	case "light", "lt", "lite", "pale", "sky", "hell", "licht", "ljus", "ljust", "lys", "lyse", "jasny", "jasna", "jasne", "jasno",
		"svetle", "svetly", "svetla", "svetlo", "svijetlo", "blede", "vaalea", "vaalean", "vilagos", "halvany", "acik":
		return "light", false
	case "clair", "claire", "claro", "clara", "chiaro", "chiara", "ciel", "cielo", "deschis":
		return "light", true
	case "dark", "dk", "navy", "dunkel", "donker", "mork", "morkt", "morke", "ciemny", "ciemna", "ciemne", "ciemno", "tmave", "tmavy",
		"tmava", "temno", "tamno", "tumma", "tumman", "sotet", "koyu":
		return "dark", false
	case "fonce", "foncee", "oscuro", "oscura", "scuro", "scura", "escuro", "escura", "marine", "marino", "marinho", "inchis":
		return "dark", true
	}
	return "", false
}

// compoundShade takes the shade off a word that has it in front, "hellblau", or is a
// word of its own, "azzurro".
func compoundShade(word string) (shade, rest string) {
	switch word {
	case "azzurro", "azzurra", "celeste", "himmelblau", "hemelsblauw", "himmelbla", "himmelsbla", "blekitny", "blekitna", "blekitne",
		"blekitno", "skyblue":
		return "light", "blue"
	case "navy", "marineblau", "marineblauw", "marinbla", "marinebla", "granatowy", "granatowa", "granatowe", "granatowo", "lacivert":
		return "dark", "blue"
	case "lyserod", "lyserodt", "vaaleanpunainen": // pink, and no light red
		return "", word
	}
	for _, s := range [][2]string{{"hell", "light"}, {"dunkel", "dark"}, {"light", "light"}, {"dark", "dark"},
		{"licht", "light"}, {"donker", "dark"}, {"ljus", "light"}, {"morke", "dark"}, {"mork", "dark"}, {"lyse", "light"},
		{"jasno", "light"}, {"ciemno", "dark"}, {"svetle", "light"}, {"svetlo", "light"}, {"tmave", "dark"}, {"tmavo", "dark"},
		{"svijetlo", "light"}, {"temno", "dark"}, {"tamno", "dark"},
		{"vilagos", "light"}, {"sotet", "dark"}, {"vaalean", "light"}, {"tumman", "dark"}, {"lt", "light"}, {"dk", "dark"}} {
		if rest, ok := strings.CutPrefix(word, s[0]); ok && len(rest) > 2 {
			return s[1], rest
		}
	}
	return "", word
}

// colourWord is the hue that one folded word names in English, German, French,
// Spanish or Italian, or that a short form stands for in the language of the list.
//
// Short forms of any language are those that only one colour can have. "b", "bl",
// "br" and "gr" are left out: black or blue, brown, grey or green, depending on who
// writes. Short forms of German are those of DIN 47100, from memory; single letters
// are common practice, no source.
func colourWord(word, lang string) (int, bool) {
	if lang == "fr" && word == "or" {
		return 12, true
	}
	if lang == "de" {
		switch word {
		case "sw":
			return 0, true
		case "br":
			return 1, true
		case "rt":
			return 2, true
		case "or":
			return 3, true
		case "ge":
			return 4, true
		case "bl":
			return 6, true
		case "vi", "li":
			return 7, true
		case "gr":
			return 8, true
		case "ws":
			return 9, true
		case "rs":
			return 10, true
		}
	}
	switch word {
	case "black", "blk", "bk", "sw", "schwarz", "noir", "noire", "negro", "negra", "nero", "nera":
		return 0, true
	case "brown", "brn", "bn", "braun", "brun", "brune", "marron", "marrone":
		return 1, true
	case "red", "rd", "rt", "r", "rot", "rouge", "rojo", "roja", "rosso", "rossa":
		return 2, true
	case "orange", "orn", "org", "og", "or", "o", "naranja", "arancione", "arancio":
		return 3, true
	case "yellow", "yel", "ye", "yl", "y", "gelb", "jaune", "amarillo", "amarilla", "giallo", "gialla":
		return 4, true
	case "green", "grn", "gn", "g", "grun", "gruen", "vert", "verte", "verde":
		return 5, true
	case "blue", "blu", "bu", "blau", "bleu", "bleue", "azul":
		return 6, true
	case "violet", "vio", "vi", "vt", "purple", "pur", "ppl", "prp", "violett", "lila", "violeta", "morado", "viola":
		return 7, true
	case "grey", "gray", "gry", "gy", "slate", "grau", "gris", "grigio", "grigia":
		return 8, true
	case "white", "wht", "wh", "wt", "ws", "w", "weiss", "blanc", "blanche", "blanco", "blanca", "bianco", "bianca":
		return 9, true
	case "pink", "pnk", "pk", "rosa", "rose":
		return 10, true
	case "turquoise", "tq", "trq", "turkoois", "tk", "aqua", "turkis", "tuerkis", "turquesa", "turchese":
		return 11, true
	case "gold", "gd", "oro":
		return 12, true
	case "silver", "sr", "silber", "argent", "plata", "argento":
		return 13, true
	case "clear", "transparent", "transparente", "trasparente":
		return 14, true
	}
	return hueword.Of(word)
}

// IsHue reports whether a folded word is one for a hue, by its place in hues, in every language that has it.
func IsHue(w string, hue int) bool {
	of, ok := colourWord(w, "")
	return ok && of == hue
}
