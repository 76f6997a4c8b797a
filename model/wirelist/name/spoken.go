package name

import (
	"strings"

	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/table"
)

// SpokenConnector finds the connector that a sentence names, "Connector B" of "The small plug is Connector B, 16 ways"; "" where
// it names none: a word for a connector, and behind it a designator, one capital letter or a number.
func SpokenConnector(text string) string {
	all := strings.Fields(text)
	for i := 1; i+1 < len(all) && i < 5; i++ {
		if w := table.Fold(all[i+1]); IsConnectorWord(table.Fold(all[i])) && (w == "is" || w == "has" || w == "ist" || w == "est") {
			if first := table.Fold(all[0]); first == "the" || first == "my" || first == "this" || first == "der" || first == "le" {
				all = all[1:]
				i--
			}
			if next := strings.Trim(all[min(i+2, len(all)-1)], ".,:;"); IsDesignator(next) && next == strings.ToUpper(next) {
				return next // "the motor plug is P12"
			}
			if i > 0 && !isPlainAdjective(table.Fold(all[0])) {
				return strings.Join(all[:i+1], " ") // "controller plug is the white one"
			}
			break
		}
	}
	for i := 0; i+1 < len(all); i++ {
		word, comma := strings.CutSuffix(strings.Trim(table.Fold(all[i]), "\"'(*_"), ",")
		if !IsConnectorWord(word) {
			continue
		}
		next := strings.Trim(all[i+1], "\"'.,:;()*_")
		switch {
		case IsDesignator(next) && next == strings.ToUpper(next):
			return next // also behind "one connector, J1, with 12 pins"
		case comma:
		case len(next) == 1 && (next[0] >= 'A' && next[0] <= 'Z' || next[0] >= '0' && next[0] <= '9') && next != "A" ||
			next == "A" && (i+2 == len(all) || !strings.HasSuffix(all[i+1], "A") || isVerb(table.Fold(all[i+2]))): // "plug A long way off"
			return strings.Trim(all[i], "\"'(*_") + " " + next
		}
	}
	return ""
}

// isVerb reports whether a folded word says something of the plug before it.
func isVerb(w string) bool {
	switch w {
	case "is", "has", "was", "looks", "goes", "sits", "ist", "hat", "est", "es", "tiene":
		return true
	}
	return false
}

// isPlainAdjective reports whether a word says which of several plugs is meant, and not how it is called.
func isPlainAdjective(w string) bool {
	switch w {
	case "big", "small", "large", "little", "long", "short", "white", "black", "grey", "gray", "green", "blue", "red", "other", "first",
		"second", "third", "same", "round", "new", "old", "each", "every", "this", "that":
		return true
	}
	return false
}

// IsConnectorWord reports whether a folded word is one for a connector.
func IsConnectorWord(w string) bool { return plugword.Is(w) }
