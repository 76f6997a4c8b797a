package value

import "strings"

// signHue is the hue of a square, a dot or a heart that a screen shows in its colour. Grey, pink and turquoise have none.
func signHue(r rune) (hue int, ok bool) {
	switch r {
	case '⬛', '⚫', '◼', '🖤':
		return 0, true
	case '🟫', '🟤', '🤎':
		return 1, true
	case '🟥', '🔴':
		return 2, true
	case '🟧', '🟠', '🧡':
		return 3, true
	case '🟨', '🟡', '💛':
		return 4, true
	case '🟩', '🟢', '💚':
		return 5, true
	case '🟦', '🔵', '💙':
		return 6, true
	case '🟪', '🟣', '💜':
		return 7, true
	case '⬜', '⚪', '◻', '🤍':
		return 9, true
	}
	return 0, false
}

// signed reads a colour with such signs before or behind its words, or of signs alone; is reports whether a text has any. ok is false where
// a sign shows another colour than the words say.
//
//	🟥 red
//	🟩🟨
func signed(text, lang string) (c Colour, is, ok bool) {
	if !strings.Contains(text, "\xf0\x9f") && !strings.Contains(text, "\xe2\xac") && !strings.Contains(text, "\xe2\x9a") &&
		!strings.Contains(text, "\xe2\x97") {
		return nil, false, false // the bytes that each of them begins with
	}
	var signs Colour
	rest := strings.Map(func(r rune) rune {
		if h, ok := signHue(r); ok {
			signs = append(signs, Hue{Of: h})
			return -1
		}
		if r == '\ufe0f' || r == '\ufe0e' { // how the sign before it is shown
			return -1
		}
		return r
	}, text)
	if len(signs) == 0 || len(signs) > MostHues {
		return nil, len(signs) > 0, false
	}
	if rest = strings.Trim(rest, " /-+"); rest == "" {
		return signs, true, true
	}
	if c, ok = ParseColour(rest, lang); !ok {
		return nil, true, false
	}
	for k, s := range signs {
		if k < len(c) && c[k].Of != s.Of && hasSign(c[k].Of) {
			return nil, true, false
		}
	}
	return c, true, true
}

// hasSign reports whether a hue has a sign of its own.
func hasSign(hue int) bool { return hue < 10 && hue != 8 }
