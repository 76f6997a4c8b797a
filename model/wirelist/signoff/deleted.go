package signoff

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
)

// IsDeleted reports whether a cell says that its row is not to be built: "DELETED", "deleted
// rev C", "obsolete", "entfällt". "Removed" alone, as it is also said of sleeves and seals.
func IsDeleted(cell string) bool {
	if !name.BeginsWith(cell, " .:!*()[]", "abcdegioprstuvwz") {
		return false
	}
	f := roundDeleted.Trim(table.Fold(cell))
	if strings.Contains(f, " if ") || strings.Contains(f, " unless ") {
		return false // somebody is to decide
	}
	word, rest, _ := name.CutWord(f)
	switch word {
	case "deleted", "delete", "cancelled", "canceled", "obsolete", "superseded", "entfallt", "entfallen", "gestrichen", "geloscht",
		"supprime", "supprimee", "annule", "annulee", "eliminado", "eliminada", "anulado", "eliminato", "eliminata", "annullato":
		return true
	}
	if goneWords[word] && endsThere(rest) {
		return true
	}
	if removedWords[f] {
		return true
	}
	return f == "removed" || f == "remove" || strings.HasPrefix(f, "removed rev") || strings.HasPrefix(f, "removed in rev") || f == "del"
}

// goneWords say so where hardly more stands behind them: with words behind them they may be about anything else, "utgår från X5" where
// a wire begins. From memory, no source.
var goneWords = map[string]bool{
	"withdrawn": true, "scrapped": true, "storniert": true, "wegfall": true, "weggefallen": true, "abandonne": true, "soppresso": true,
	"soppressa": true, "suprimido": true, "suprimida": true, "cancelado": true, "cancelada": true, "vervalt": true, "vervallen": true,
	"geschrapt": true, "utgar": true, "utgatt": true, "utgick": true, "struken": true, "slopas": true, "slopad": true, "udgar": true,
	"udgaet": true, "bortfaller": true, "bortfalder": true, "strykes": true, "poistuu": true, "poistettu": true, "skreslono": true,
	"skreslony": true, "wykreslono": true, "anulowano": true, "odpada": true, "zruseno": true, "zrusen": true, "vypusteno": true,
	"torolve": true, "elmarad": true, "ukinuto": true, "opusceno": true, "iptal": true,
}

// removedWords say so alone, as "removed" does: with more behind them they may be said of a sleeve. From memory, no source.
var removedWords = map[string]bool{
	"ausgebaut": true, "retire": true, "enleve": true, "depose": true, "rimosso": true, "retirado": true, "quitado": true,
	"verwijderd": true, "borttagen": true, "slettet": true, "fjernet": true, "usuniety": true, "usunieto": true, "odstraneno": true,
}

// endsThere reports whether a text ends behind such a word, at a sign or with the revision that it is said for: "UTGÅR, ersatt av 21",
// "vervalt vanaf rev C".
func endsThere(rest string) bool {
	word, more, _ := strings.Cut(strings.TrimSpace(rest), " ")
	if word == "" || strings.ContainsAny(word[:1], ",;.:!-–(/)]") {
		return true
	}
	isRev := func(w string) bool { return w == "rev" || w == "rev." || w == "revision" }
	next, _, _ := strings.Cut(more, " ")
	return isRev(word) || isRev(next)
}

// IsRemoved reports whether a text says that its wire was taken out, and more behind a sign, "REMOVED - old fan", "ausgebaut: Hupe". Beside
// both ends of a wire it may be said of a sleeve: whoever asks looks at those.
func IsRemoved(cell string) bool {
	if !name.BeginsWith(cell, " .:!*()[]", "radegsvubwnlti") || strings.Contains(cell, " ") && !strings.ContainsAny(cell, ":,;-–.!()") {
		return false
	}
	f := roundDeleted.TrimLeft(table.Fold(cell))
	for _, w := range []string{"removed", "left out", "taken out", "ripped out", "cut out", "deleted", "no longer fitted", "no longer used",
		"not used any more", "ausgebaut", "entfernt", "weggefallen", "retire", "retiree", "enleve", "enlevee", "depose", "deposee",
		"rimosso", "rimossa", "retirado", "retirada", "quitado", "quitada", "verwijderd", "vervallen", "borttagen", "slopad", "slettet",
		"fjernet", "usuniety", "usunieto", "odstraneno", "zruseno", "poistettu"} {
		if rest, ok := strings.CutPrefix(f, w); ok {
			return rest == "" || strings.ContainsAny(rest[:1], ":,;.!)]") || strings.HasPrefix(rest, " - ") || strings.HasPrefix(rest, " (")
		}
	}
	return false
}

// roundDeleted are signs round such a text.
var roundDeleted = signs.Of(" .:!*()[]")
