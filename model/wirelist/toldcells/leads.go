package toldcells

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// BehindLead is the place behind the word or the arrow at the front of a cell that says where a wire goes, or comes from:
// "to M3 pin 1", "from the deck box", "-> X4.2".
func BehindLead(c string) (place string, ok bool) {
	if from, to := arrow.In(c); to > 0 && strings.TrimSpace(c[:from]) == "" {
		place = strings.TrimSpace(c[to:])
		return place, place != ""
	}
	low := strings.ToLower(c)
	for _, w := range words.ToWords() {
		if len(low) == len(c) && strings.HasPrefix(low, w+" ") {
			return withoutArticle(c[len(w):])
		}
	}
	if first, rest, cut := strings.Cut(c, " "); cut && words.ComesFrom(table.Fold(first)) {
		return withoutArticle(rest)
	}
	return "", false
}

// withoutArticle is a place without its article; ok is false for a text that is too long for one.
func withoutArticle(text string) (place string, ok bool) {
	const most = 6 // words (no source)
	w := strings.Fields(text)
	if len(w) > 1 && len(w[0]) > 1 && words.IsArticle(strings.ToLower(w[0])) {
		w = w[1:]
	}
	return strings.Join(w, " "), len(w) > 0 && len(w) <= most
}
