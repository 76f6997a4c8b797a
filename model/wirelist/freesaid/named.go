package freesaid

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// Named is Cavities of a sentence that names their connector as well, before them or behind; "" and nil where it says anything else.
//
//	helm box pins 8 to 12 nothing in them
//	Pins 3 and 4 of the lamp plug are empty.
func Named(text string) (of string, all []string) {
	const most = 6 // words of a name (no source)
	w := strings.Fields(strings.TrimRight(strings.TrimSpace(text), ". "))
	for k := 1; k < min(len(w)-1, most); k++ {
		if !IsCavityWord(table.Fold(w[k])) {
			continue
		}
		if all = Cavities(strings.Join(w[k:], " ")); all != nil {
			return withoutArticle(w[:k]), all
		}
	}
	at := slices.IndexFunc(w, func(s string) bool {
		return slices.Contains([]string{"of", "on", "in", "at", "von", "am", "an", "du", "de", "del", "di", "van", "av", "af"},
			table.Fold(s))
	})
	if at < 2 {
		return "", nil
	}
	for end := at + 2; end < min(len(w), at+most); end++ {
		if all = Cavities(strings.Join(slices.Concat(w[:at], w[end:]), " ")); all != nil {
			return withoutArticle(w[at+1 : end]), all
		}
	}
	return "", nil
}

// withoutArticle is the words of a name without the one for "the" before them.
func withoutArticle(w []string) string {
	if len(w) > 1 && slices.Contains(articles(), table.Fold(w[0])) {
		w = w[1:]
	}
	return strings.TrimRight(strings.Join(w, " "), ":,")
}

// articles are words for "the", folded.
func articles() []string {
	return []string{"the", "die", "der", "das", "den", "dem", "les", "la", "las", "los", "i", "il", "le", "de", "el", "het"}
}

// IsNamed reports whether a text is such a sentence.
func IsNamed(text string) bool {
	_, all := Named(text)
	return all != nil
}
