package runline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	lexicon "contralay/model/wirelist/words"
)

// WithoutFrom takes the word for "from" off the front of a near end, with an article behind it: "från Regulator 3", "from the pump". Some
// of these words begin names too, "van battery": those count only where the line has the word for "to" of the same language.
func WithoutFrom(near, line string) string {
	lead, rest, ok := strings.Cut(near, " ")
	shout := lead == strings.ToUpper(lead) // "VAN" names a thing
	lead = table.Fold(lead)
	far := farWords(lead)
	if !ok || shout && !lexicon.ComesFrom(lead) {
		return near
	}
	pair := func(w string) bool { return slices.Contains(far, table.Fold(w)) }
	_, behind, _ := strings.Cut(line, near)
	if !lexicon.ComesFrom(lead) && !slices.ContainsFunc(strings.Fields(behind), pair) {
		return near
	}
	return lexicon.WithoutArticle(strings.TrimSpace(rest))
}
