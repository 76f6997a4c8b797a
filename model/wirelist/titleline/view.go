package titleline

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/table"
)

// A title may go on with the side that the plug is seen from. That is no part of the name.
//
//	Plug A (8 way), seen from the wire side:        Stecker B, Blick auf die Leitungsseite        Prise C - vue côté fils

// beforeView parts such a piece off a line; view is "" where the line has none.
func beforeView(text string) (front, view string) {
	for at := range len(text) {
		rest := ""
		switch {
		case text[at] == ',' && strings.HasPrefix(text[at:], ", "):
			rest = text[at+2:]
		case text[at] == ' ' && strings.HasPrefix(text[at:], " - "):
			rest = text[at+3:]
		case text[at] == ' ' && strings.HasPrefix(text[at:], " – "):
			rest = text[at+len(" – "):]
		default:
			continue
		}
		if w := fieldsOf(text[:at]); at > 0 && isView(rest) && slices.ContainsFunc(w, IsPlug) && !isPicture[w[0]] {
			return strings.TrimRight(text[:at], " ,"), strings.TrimRight(strings.TrimSpace(rest), " :")
		}
	}
	return text, ""
}

// isView reports whether a piece begins with a word for looking and says where from.
func isView(piece string) bool {
	w := fieldsOf(piece)
	return len(w) > 1 && isLooking[w[0]] && slices.ContainsFunc(w[1:], func(s string) bool {
		return isSeen[s] || strings.HasSuffix(s, "seite") || strings.HasSuffix(s, "zijde")
	})
}

// beforeDate parts a whole date at the front or the end of a line off it; date is "" where none stands there, or nothing else.
func beforeDate(text string) (front, date string) {
	w := strings.Fields(text)
	if len(w) < 2 {
		return text, ""
	}
	switch first, last := w[0], w[len(w)-1]; {
	case isWholeDate(first):
		return strings.TrimLeft(text[strings.Index(text, first)+len(first):], " -–,:"), first
	case isWholeDate(last):
		return strings.TrimRight(text[:strings.LastIndex(text, last)], " -–,:("), last
	}
	return text, ""
}

// hasDateWithin reports whether a whole date stands between other words.
func hasDateWithin(text string) bool {
	w := strings.Fields(text)
	return len(w) > 2 && slices.ContainsFunc(w[1:len(w)-1], isWholeDate)
}

// isWholeDate reports whether a word is day, month and year in figures: "12/03/2024", "2024-03-12", "12.3.24".
func isWholeDate(w string) bool {
	w = strings.Trim(w, "(),:;")
	if len(w) < 6 || !unicode.IsDigit(rune(w[0])) {
		return false
	}
	parts := strings.FieldsFunc(w, func(r rune) bool { return r == '.' || r == '/' || r == '-' })
	return len(parts) == 3 && isDateWord(table.Fold(w))
}

// The words for looking, and those for the side that is looked at, folded. Common words, from memory, no source.
var (
	isLooking = set("seen|viewed|view|looking|look|shown|drawn|blick|ansicht|gesehen|gezeigt|draufsicht|vue|vu|vus|vues|vista|visto|viste",
		"visti|aanzicht|gezien|sedd|vy|set|widok|pohled|nakymä")
	isPicture = set("sketch|drawing|picture|photo|view|figure|fig|skizze|bild|foto|abbildung|abb|ansicht|croquis|dessin|figura",
		"dibujo|disegno|schizzo|desenho|schets|tekening|skiss|tegning|szkic|rysunek|nakres|vue|vista|image|diagram")
	isSeen = set("side|wire|wires|cable|cables|back|rear|front|face|mating|pin|pins|contact|contacts|behind|outside|inside|end|entry",
		"kabel|leitungen|hinten|vorn|vorne|stifte|kontakte|cote|fils|arriere|avant|dos|lato|fili|dietro|fronte|innesto|lado|cables|detras",
		"frente|atras|contactos|fios|tras|achteren|voren|draden|baksida|framsida|sidan|bagside|przodu|tylu|zezadu")
)
