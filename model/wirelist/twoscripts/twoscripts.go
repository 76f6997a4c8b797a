// Package twoscripts parts what a text says twice, once in each of two scripts, as lists for two countries do.
//
//	赤 Red          線色 Color          красный / red
package twoscripts

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Part gives both halves of a text whose words are of another script first and Latin behind, or the other way round. ok is false
// where the script changes more than once, or never, and where it changes within a word.
func Part(text string) (front, back string, ok bool) {
	if isPlain(text) {
		return "", "", false // most texts
	}
	before, apart := 0, 0 // +1 Latin, −1 another script, 0 no letter yet; where the second half begins
	for i, r := range text {
		script := scriptOf(r)
		if script == 0 || script == before {
			continue
		}
		if before != 0 {
			if apart > 0 {
				return "", "", false
			}
			if last, _ := utf8.DecodeLastRuneInString(text[:i]); last != ' ' && last != '/' {
				return "", "", false
			}
			apart = i
		}
		before = script
	}
	if apart == 0 {
		return "", "", false
	}
	return strings.TrimRight(text[:apart], " /"), text[apart:], true
}

// isPlain reports whether a text has no letter but plain ones.
func isPlain(text string) bool {
	for i := range len(text) {
		if text[i] >= utf8.RuneSelf {
			return false
		}
	}
	return true
}

// scriptOf is +1 for a Latin letter, −1 for one of another script that lists are written in, 0 for all else.
func scriptOf(r rune) int {
	switch {
	case r < utf8.RuneSelf && unicode.IsLetter(r), unicode.Is(unicode.Latin, r):
		return 1
	case r >= utf8.RuneSelf && unicode.In(r, unicode.Han, unicode.Hiragana, unicode.Katakana, unicode.Hangul, unicode.Cyrillic,
		unicode.Greek):
		return -1
	}
	return 0
}
