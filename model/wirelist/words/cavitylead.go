package words

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// IsCavityLead reports whether a folded word stands before the cavity that a line begins with: those of name.IsPinWord, and some that are
// another word within a line, "via 3: horn", "weg 3: claxon". From memory, no source.
func IsCavityLead(w string) bool {
	switch w {
	case "via", "weg", "pos", "position", "platz", "hole", "slot", "contact", "contato", "pen", "poot", "bein":
		return true
	}
	return name.IsPinWord(w)
}

// BehindCavityWord is a text without the word for a cavity that it begins with; ok is false where it begins with none, or names no cavity
// behind it.
func BehindCavityWord(text string) (rest string, ok bool) {
	word, rest, found := strings.Cut(strings.TrimSpace(text), " ")
	if hash := strings.IndexByte(word, '#'); hash > 0 { // "pin#4"
		word, rest, found = word[:hash], word[hash:]+" "+rest, true
	}
	rest = strings.TrimLeft(rest, " #.")
	if !found || !IsCavityLead(strings.TrimRight(table.Fold(word), ".")) || rest == "" {
		return text, false
	}
	pin := rest
	if end := strings.IndexAny(rest, " :=.),;|–\t"); end >= 0 {
		pin = rest[:end]
	}
	if !name.IsCavity(strings.TrimRight(pin, "-")) {
		return text, false
	}
	return rest, true
}
