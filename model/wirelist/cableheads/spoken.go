package cableheads

import (
	"cmp"
	"strings"
	"unicode"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// A heading may say in words what the cable is, and how many cores it has apart from their size:
//
//	## Coiled cord (6 core, 0.25 mm² each)

// spokenName is the name of a cable that some words say, a word for a cable among them; "" where they say none.
func spokenName(text string) string {
	const most = 4 // words (no source)
	w := strings.Fields(text)
	if len(w) < 2 || len(w) > most || !words.NamesCable(w) || strings.ContainsFunc(text, unicode.IsDigit) {
		return ""
	}
	return text
}

// spokenKind is the kind that two pieces behind such a name say together, the number of the cores and the size of each; "" where they
// say none.
func spokenKind(count, size string, mark value.Mark) string {
	w := strings.Fields(size)
	for len(w) > 1 && words.SaysEach(table.Fold(w[len(w)-1])) {
		w = w[:len(w)-1]
	}
	for len(w) > 1 && words.SaysEach(table.Fold(w[0])) {
		w = w[1:]
	}
	count = strings.Join(strings.FieldsFunc(count, func(r rune) bool { return r == ' ' || r == '-' }), " ")
	kind := strings.TrimSpace(count + " " + strings.Join(w, " "))
	if g, ok := value.ParseGauge(kind, value.BareAWG, mark); ok && g.Conductors > 1 && g.Size != "" {
		return kind
	}
	return ""
}

// kindOf is the kind that some pieces say, and the length; kind is "" where they say none.
func kindOf(pieces []string, mark value.Mark) (kind, length string) {
	for k, p := range pieces {
		if kind == "" {
			kind = spokenKind("", p, mark)
		}
		if kind == "" && k+1 < len(pieces) {
			kind = cmp.Or(spokenKind(p, pieces[k+1], mark), spokenKind(pieces[k+1], p, mark)) // "1.5 mm², 4-core"
		}
		if _, is := value.ParseLength(p, "", mark); is && length == "" {
			length = p
		}
	}
	return kind, length
}

// spoken reads the pieces of a heading that has its cable in words.
func spoken(pieces []string, mark value.Mark) (of said, ok bool) {
	front := pieces[0]
	if at := strings.IndexFunc(front, unicode.IsDigit); at > 0 && front[at-1] == ' ' { // "Coiled cord 6 x 0.25 mm²"
		pieces = append([]string{front[:at], front[at:]}, pieces[1:]...)
	}
	if of.name = spokenName(strings.TrimSpace(pieces[0])); of.name == "" {
		return said{}, false
	}
	of.kind, of.length = kindOf(pieces[1:], mark)
	return of, of.kind != ""
}
