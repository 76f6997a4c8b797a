package huekey

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// keyOfSentences reads a text in which two or more short sentences say each what a short form means, among others or not: "20 ga solid. Bl
// is blue, S is slate". nil where it has none, or one.
func keyOfSentences(text string) ColourKey {
	const longest = 200 // bytes (no source)
	if len(text) > longest || strings.Count(text, " ") < 5 {
		return nil
	}
	key := ColourKey{}
	for _, sep := range []string{". ", ", ", "; ", " and ", " und ", " et ", " y ", " e ", " en "} {
		text = strings.ReplaceAll(text, sep, "\n")
	}
	for piece := range strings.SplitSeq(strings.TrimRight(text, ". "), "\n") {
		short, rest, ok := strings.Cut(strings.TrimSpace(piece), " ")
		verb, called, more := strings.Cut(rest, " ")
		if !ok || !more || !isShortForm(short) || len(called) < 3 || !isMeans(verb) {
			continue
		}
		if c, is := value.ParseColour(called, ""); is && len(c) == 1 && short[0] >= 'A' && short[0] <= 'Z' {
			key[table.Fold(short)] = called
		}
	}
	if len(key) < 2 {
		return nil
	}
	return key
}

// isMeans reports whether a word stands between a short form and what it means.
func isMeans(w string) bool {
	switch table.Fold(w) {
	case "is", "=", "means", "ist", "heisst", "est", "es", "e", "betekent", "betyder", "ar", "er", "on":
		return true
	}
	return false
}
