package words

import (
	"strings"

	"contralay/model/wirelist/table"
)

// otherEnds are the words behind which the other end of a wire stands, whichever way the list says that it runs. Common words of each
// language, from memory, no source.
var otherEnds = phrasesOf(`from|comes from|coming from|fed from|fed by|goes to|going to|runs to|leads to
	von|vom|kommt von|kommt vom|kommt von der|kommt aus|geht an|geht zu|geht zum|geht zur|geht nach
	depuis|vient de|vient du|vient de la|vient des|va a|va a la|va au|va vers
	desde|viene de|viene del|viene de la|viene desde|va a|va al|va a la
	dal|dalla|dallo|viene da|viene dal|viene dalla|viene dallo|arriva da|arriva dal|arriva dalla|va al|va alla|va allo
	vem de|vem do|vem da|vem dos|vem das|vai para|vai ao|vai a|vai para o|vai para a
	van|vanaf|komt van|komt uit|gaat naar|fran|kommer fran|gar till|fra|kommer fra|gar til
	od|idzie od|idzie do|pochazi z|vede z|vede do|jde z|jde do`)

// phrasesOf is the set of the phrases of a text, a bar or the end of a line between two.
func phrasesOf(text string) map[string]bool {
	all := map[string]bool{}
	for p := range strings.FieldsFuncSeq(text, func(r rune) bool { return r == '|' || r == '\n' }) {
		all[strings.TrimSpace(p)] = true
	}
	return all
}

// OtherEnd takes words off the front of a text that say that the other end of a wire follows, with the article behind them: "comes from
// the fuse box F4"; ok is false where it begins with none.
func OtherEnd(text string) (end string, ok bool) {
	const most = 4 // words of such a phrase
	w := strings.Fields(text)
	for n := min(most, len(w)-1); n > 0; n-- {
		if !otherEnds[table.Fold(strings.Join(w[:n], " "))] {
			continue
		}
		if rest := w[n:]; len(rest) > 1 && isArticle(table.Fold(rest[0])) {
			return strings.Join(rest[1:], " "), true
		}
		return strings.Join(w[n:], " "), true
	}
	return text, false
}

// isArticle reports whether a folded word is an article that stands before the name of a thing.
func isArticle(w string) bool {
	switch w {
	case "the", "der", "dem", "den", "die", "das", "la", "le", "les", "el", "il", "lo", "het":
		return true
	}
	return false
}
