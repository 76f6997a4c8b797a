package arrow

import (
	"strings"
	"unicode/utf8"
)

// In finds the first arrow in a text: strokes of any number and a head, "->", "---->", "<=>", "......>", or one sign of
// its own, "→". to is 0 where there is none.
func In(text string) (from, to int) {
	for i := 0; i < len(text); {
		r, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case strings.ContainsRune("→⇒↔⇔⟶⟷➔➜➝►▶", r):
			return before(text, i), i + size
		case r == '>' && before(text, i) < i:
			end := i + size
			for end < len(text) && text[end] == '>' {
				end++
			}
			return before(text, i), end
		}
		i += size
	}
	return 0, 0
}

// before is where the strokes that stand right before a place begin, with the head of an arrow of two heads.
func before(text string, at int) int {
	from := at
	for from > 0 {
		r, size := utf8.DecodeLastRuneInString(text[:from])
		if !strings.ContainsRune("-=~.–—─", r) {
			break
		}
		from -= size
	}
	if from < at && from > 0 && text[from-1] == '<' {
		from--
	}
	return from
}

// Cut parts a text at the one arrow in it; ok is false where it has none, or several.
func Cut(text string) (front, back string, ok bool) {
	from, to := In(text)
	if to == 0 {
		return text, "", false
	}
	if _, again := In(text[to:]); again > 0 {
		return text, "", false // a chain of three
	}
	return strings.TrimSpace(text[:from]), strings.TrimSpace(text[to:]), true
}
