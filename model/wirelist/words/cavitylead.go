package words

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/table"
)

// IsCavityLead reports whether a folded word stands before the cavity that a line begins with: those of name.IsPinWord, and two that are
// another word within a line, "via 3: horn", "weg 3: claxon". From memory, no source.
func IsCavityLead(w string) bool {
	return w == "via" || w == "weg" || name.IsPinWord(w) || pinword.Is(w)
}

// isPlaceLead reports whether a folded word stands before a cavity where colours or sizes stand behind it, and before anything that is
// counted elsewhere: "position 1: off". From memory, no source.
func isPlaceLead(w string) bool {
	switch w {
	case "pos", "position", "platz", "hole", "slot", "contact", "contato", "pen", "poot", "bein":
		return true
	}
	return false
}

// BehindCavityWord is a text without the word for a cavity that it begins with; ok is false where it begins with none, or names no cavity
// behind it.
func BehindCavityWord(text string) (rest string, ok bool) { return behindWord(text, IsCavityLead) }

// BehindPlaceWord is BehindCavityWord for lines of which something else says that they tell wires.
func BehindPlaceWord(text string) (rest string, ok bool) {
	return behindWord(text, func(w string) bool { return IsCavityLead(w) || isPlaceLead(w) })
}

func behindWord(text string, leads func(w string) bool) (rest string, ok bool) {
	word, rest, found := strings.Cut(strings.TrimSpace(text), " ")
	if hash := strings.IndexByte(word, '#'); hash > 0 { // "pin#4"
		word, rest, found = word[:hash], word[hash:]+" "+rest, true
	}
	rest = strings.TrimLeft(rest, " #.")
	if !found || !leads(strings.TrimRight(table.Fold(word), ".")) || rest == "" {
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
