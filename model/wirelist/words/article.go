package words

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/table"
)

// WithoutArticle takes an article in small letters off the front of a name, "the pump"; "a 3" and "A lamp" stay as they are.
func WithoutArticle(text string) string {
	const least = 3 // letters of the name behind it (no source)
	w, rest, ok := strings.Cut(text, " ")
	other := strings.IndexFunc(rest, func(r rune) bool { return !unicode.IsLetter(r) })
	if !ok || w != strings.ToLower(w) || !IsArticle(table.Fold(w)) || other >= 0 && other < least || len(rest) < least {
		return text
	}
	return rest
}
