package titleline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// The prose above a table may say which connector the table is of, while the heading has the name of the whole board.
//
//	## Ferry desk Mk 2
//
//	The white lamp connector is wired like the table below says. It is
//	keyed.

// TableBelow is the connector that the sentence that begins in a row says the table below is of, "white lamp connector"; "" where it
// says of none.
func TableBelow(rows []table.Row, i int) string {
	_, text := rows[i].Filled()
	if rows[i].Level > 0 {
		return ""
	}
	if i+1 < len(rows) && rows[i+1].Line == rows[i].Line+1 && rows[i+1].Level == 0 && !rows[i+1].Point {
		_, next := rows[i+1].Filled()
		text += " " + next // where it goes on
	}
	first, _, _ := strings.Cut(text, ". ")
	w := strings.Fields(strings.TrimRight(first, ".:"))
	if len(w) < 5 || !isTheArticle(table.Fold(w[0])) || !saysBelow(table.Fold(first)) {
		return ""
	}
	for n := 1; n < min(len(w), mostName+1); n++ {
		f := table.Fold(w[n])
		switch {
		case strings.ContainsAny(w[n], ",;:()") || isVerb[f] || isNoName[f]:
			return ""
		case IsPlug(f) && n > 1 && more(foldedWords(w[1:n])):
			if next := w[min(n+1, len(w)-1)]; isDesignator(table.Fold(next)) && next == strings.ToUpper(next) {
				return next
			}
			return strings.Join(w[1:n+1], " ")
		}
	}
	return ""
}

// isNoName are words that no name of a connector has: before one of them the sentence speaks of something else. Common words, from memory,
// no source.
var isNoName = set("a|an|the|of|on|in|at|for|with|to|from|and|uses|use|needs|table|below|following|each|both|two|which|that|list|pins",
	"der|die|das|des|dem|den|ein|eine|mit|von|tabelle|le|la|les|un|une|du|de|avec|tableau|el|con|tabla|il|tabella|met|van|tabel")

// isTheArticle reports whether a folded word is the article before the one thing that is meant.
func isTheArticle(w string) bool {
	return slices.Contains([]string{"the", "this", "der", "die", "das", "dieser", "diese", "le", "la", "el", "il", "de", "het"}, w)
}

// saysBelow reports whether a folded sentence points at the table below it. Common words, from memory, no source.
func saysBelow(text string) bool {
	for _, s := range []string{"table below", "below table", "following table", "table that follows", "listed below", "tabelle unten",
		"folgenden tabelle", "folgende tabelle", "tableau ci-dessous", "tableau suivant", "tabla siguiente", "siguiente tabla",
		"tabella sotto", "seguente tabella", "tabel hieronder", "volgende tabel"} {
		if strings.Contains(text, s) {
			return true
		}
	}
	return false
}

// foldedWords are some words, folded.
func foldedWords(all []string) (out []string) {
	for _, w := range all {
		out = append(out, table.Fold(w))
	}
	return out
}
