package huekey

import (
	"strings"

	"contralay/model/wirelist/table"
)

// A manual has the key to its colours below its tables, often in several lines. They are no rows of a table.
//
//	B: Black  Br: Brown  G: Green
//	R: Red    Y: Yellow

// keyOfWords reads a text that holds short forms with the word of each behind it and nothing else, behind a word that leads to a key or
// none. nil where it is anything else.
func keyOfWords(text string) ColourKey {
	text = strings.TrimRight(withoutSentence(text), ". ")
	text = strings.TrimLeft(withoutOtherWords(text), partsOfKey)
	first := text
	if i := strings.IndexAny(text, partsOfKey); i >= 0 {
		first = text[:i]
	}
	if !isShortForm(first) && !isLeadOfKey(first) {
		return nil // most lines are none: they are not parted
	}
	parts := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(partsOfKey, r) })
	key := ColourKey{}
	for len(parts) > 0 && !isShortForm(parts[0]) { // "Colours: W white …"
		if len(key) > 0 || !isLeadOfKey(parts[0]) {
			return nil
		}
		parts = parts[1:]
	}
	for i := 0; i+1 < len(parts); {
		word, n := wordOfKey(parts[i+1:])
		if !isShortForm(parts[i]) || n == 0 {
			return nil
		}
		key[table.Fold(parts[i])] = word
		if i += 1 + n; i == len(parts)-1 {
			return nil
		}
	}
	return key
}

// withoutSentence leaves out the sentence behind a key that says how its letters are put together: "W white, B black. Second letter is the
// tracer." It has no numbers, and no short form begins it.
func withoutSentence(text string) string {
	const most = 12 // words of it (no source)
	front, behind, ok := strings.Cut(text, ". ")
	w := strings.Fields(behind)
	if !ok || len(w) < 2 || len(w) > most || IsKeyPair(w[0], w[1]) || strings.ContainsAny(behind, "0123456789:=/") {
		return text
	}
	return front
}

// OnlyKey reads a line that is a key to colours and nothing else: most of its short forms are letters of their words, "A red, B blue" are
// as likely cavities. One that goes on with a key above has one short form or more, any other one three.
func OnlyKey(text string, goesOn bool) ColourKey {
	const shortest = 5 // bytes: "R red"
	if len(text) < shortest {
		return nil
	}
	key := keyOfWords(text)
	letters := 0
	for short, word := range key {
		if IsShortOf(short, word) {
			letters++
		}
	}
	if len(key) < leastPieces && !goesOn || 4*letters < 3*len(key) {
		return nil
	}
	return key
}
